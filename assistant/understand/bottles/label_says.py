"""The minutes that a product's own label gives, as told: "the label says 5 minutes"."""

from __future__ import annotations

from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.units import convert
from assistant.understand.parsing import Parsed
from assistant.understand.text.patterns import Pattern

LABEL = "label minutes"
_SAYS = Pattern(
    r"\blabel(?: (?:of|on|for) (?:the |my )?(?:AGENT|STOCK|BOTTLE|bottle|product))?"
    r"(?: (?:says|said|reads|states|gives|is|wants|asks for|has|on it|it|to|keep|stay|leave|wet|for"
    r"|about))* DURATION\b(?! (?:ago|old|left))"
    r"|\b(?:bottle|product|packet|tin|can|back|instructions|leaflet|vet|BOTTLE|STOCK|AGENT)(?: \w+)? "
    r"(?:says?|said|reads|tells me|told me|wants?)(?: (?:it|to|needs|keep|stay|leave|wet|for|has|be|must|about"
    r"|that))* DURATION\b(?! (?:ago|old|left))"
    r"|\bDURATION(?: wet)?(?: ,)? (?:(?:is|it is|is what|what|says|say|said|by|on|as|according to) )+"
    r"(?:the |its |my )?label\b"
)
_OF_THE_MIX = Pattern(r"\b(?:keep|keeps|good for|old|expires?|once mixed|lasts?|not|until|ago|tub|air|airing)\b")


def minutes_by_label(parsed: Parsed) -> tuple[str, str] | None:
    """The label's minutes as a setting by word of mouth; None: none are told."""
    plain = parsed.plain.strip(" .!,")
    if _SAYS.search(plain) is None or _OF_THE_MIX.search(plain) or plain.endswith("?"):
        return None
    return one_span(parsed)


def one_span(parsed: Parsed) -> tuple[str, str] | None:
    """The only length of time in a text, as the label's minutes; None: there is none, or more."""
    spans = [one.value for one in parsed.amounts.found if one.kind == "duration"]
    if len(spans) != 1 or not isinstance(spans[0], Amount) or spans[0].unit not in ("min", "s"):
        return None
    return LABEL, str(convert(spans[0], "min").amount)
