"""So much to the square metre or square foot, as said of what is sprayed: "100 mL a square metre"."""

from __future__ import annotations

from assistant.understand.parsing import Parsed
from assistant.understand.text.patterns import Pattern

LAID_DOWN = "laid down"
_FEET = Pattern(r"\bf(?:ee|oo)?t\b|\bft2\b|ft²")
_TO_EACH = Pattern(
    r"(?:\b(?:per|a|to (?:the|a|each|every)|each|every|for (?:each|every|a)|on (?:each|every|a)) |/ ?)"
    r"(?:(?:square|sq)(?: ?\.)? ?(?:met(?:re|er)s?|m|foot|feet|ft)\b|(?:m|ft) ?(?:\^ ?)?[2²]"
    r"|(?:metre|meter|foot) squared\b)|\bml (?:m|ft) 2\b"  # a slash is no word
)


def per_area(parsed: Parsed) -> tuple[str, str] | None:
    """What a volume or the strokes are to each of, as a setting by word of mouth; None: nothing is said of it."""
    found = _TO_EACH.search(" ".join(token.text for token in parsed.tokens))
    if found is None:
        return None
    return LAID_DOWN, "ft" if _FEET.search(found[0]) else "m"
