"""Words that stand where a name belongs but fit nothing that is known: "the turquoise bottle"."""

from __future__ import annotations

from collections.abc import Sequence

from assistant.contract import Slots, Unknown
from assistant.understand.named.names import HOMES
from assistant.understand.parsing import Parsed
from assistant.understand.text.known_words import COLOURS, ORDINARY, PRODUCT_ENDS
from assistant.understand.text.patterns import Pattern

_ALONE = 3
"""Words of a name that is all that was said: "the maple tub"."""
_OF_ONE_ROUND = (
    "start next done status time_left hold_time return_check dry_time air_time"
    " dried_early rewet still_smells leave_off clean_only"
)
ROUND = frozenset(_OF_ONE_ROUND.split())
"""Questions about an enclosure being cleaned."""

PRODUCT_QUESTIONS = frozenset({"together", "works_on", "surface", "protect"})
"""Questions where a product of unknown content is an answer."""

OF_WHAT_NOBODY_KNOWS = Pattern(
    r"\b(?:toilet(?: bowl)?|loo|lavatory|glass|window|mirror|oven|hob|stove|drain|sink|bathroom|shower|kitchen|floor"
    r"|carpet|surface|multi ?(?:purpose|surface)|all purpose|general purpose|antibacterial|anti bacterial|household"
    r"|lime ?scale|rust|mould|mold|mildew|grout|tile|tiles|wood|furniture|metal|brass|silver|grease|washing|laundry"
    r"|dishwasher|some other|another|any other|some random|foaming|citrus|degreasing) "
    r"(?:cleaners?|cleansers?|sprays?|wipes?|polish|removers?|unblockers?|liquid|gel|powder|tablets?|foam"
    r"|bleach free \w+|detergent|stuff|product)\b"
    r"|\b(?:fabric softener|fabric conditioner|air freshener|descaler|degreaser|drain unblocker|stain remover|"
    r"(?:essential|tea (?:tree|three)|eucalyptus|lavender|citronella|peppermint|clove|neem|cedar) oils?|"
    r"(?:disinfect\w+|cleaning|wet|baby|antiseptic|antibacterial|alcohol free|make ?up) wipes?|meths"
    r"|methylated spirits?|white spirits?|surgical spirits?|turps|turpentine|tea (?:tree|three)(?! oil)|baking soda"
    r"|bicarb(?:onate)?(?: of soda)?|washing soda|soda crystals|borax|fabric freshener|oven pads?|furniture polish"
    r"|weed ?killer|antifreeze|paint stripper|nail polish remover)\b"
)
"""Products as people call them, by what they are for: that says nothing about what is in them."""


_MAY_BE_USED = Pattern(
    r"^(?:so |and |but )*(?:can|could|may|should|is|are|what about|how about|does|do|will)\b"
    r"|\b(?:ok|okay|safe|allowed)\b.*\?"
)


def asks_of_the_unknown(plain: str) -> bool:
    """True when a masked text asks whether a product of which nobody knows what is in it may be used."""
    return OF_WHAT_NOBODY_KNOWS.search(plain) is not None and _MAY_BE_USED.search(plain) is not None


def unknown_names(parsed: Parsed, intent: str | None, slots: Slots) -> tuple[Unknown, ...]:
    """Words that stand where a name belongs, but fit nothing known: "the turquoise bottle"."""
    words = [word[1:-1].upper() if word[0] == "{" else word for word in parsed.as_said]
    found: list[Unknown] = []
    if intent in PRODUCT_QUESTIONS:
        found += [Unknown("agent", product.group()) for product in OF_WHAT_NOBODY_KNOWS.finditer(parsed.plain)]
    for at in range(1, len(words)):
        said, end = words[at - 1], words[at]
        if not said.isalpha() or said.isupper() or said in ORDINARY:
            continue
        if (
            end in ("bottle", "one")
            and (end == "bottle" or said in COLOURS)
            and intent not in ("done", "status", "next", "return_check")
        ):
            found.append(Unknown("bottle", said))
        elif (
            end in HOMES
            and intent in ROUND
            and not (slots.enclosures or slots.choices or _a_tub(said, end, slots, words))
        ):
            found.append(Unknown("enclosure", f"{said} {end}"))
        elif end in PRODUCT_ENDS and intent == "together" and not _in_a_product(f"{said} {end}", parsed.plain):
            found.append(Unknown("agent", f"{said} {end}"))
    last = words[-1] if words else ""
    if last in COLOURS and intent == "dose" and len(words) > 1 and words[-2] in ("the", "my") and not slots.bottles:
        found.append(Unknown("bottle", last))
    return tuple(found)


def _a_tub(said: str, end: str, slots: Slots, words: Sequence[str]) -> bool:
    """A waiting tub has no name that anybody gave it: "into the blue tub" names no enclosure; alone it may be one."""
    return len(words) > _ALONE and any(tub.endswith(f"{said} {end}") for tub in slots.tubs)


def _in_a_product(said: str, plain: str) -> bool:
    return any(said in product.group() for product in OF_WHAT_NOBODY_KNOWS.finditer(plain))
