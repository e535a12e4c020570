"""How long a mix keeps, asked of a product in general and not of a bottle: "how long does diluted bleach keep"."""

from __future__ import annotations

from assistant.understand.parsing import Parsed
from assistant.understand.text.patterns import Pattern

KEPT = "kept"
_MIXED = Pattern(r"\b(?:mix|mixes|mixed|mixture|dilut\w*|made up|solution|ready made|in (?:a |the )?water)\b")
_HOW_LONG = Pattern(
    r"\bhow (?:long|many (?:days|hours|weeks))\b|\bshelf life\b|\b(?:until|till) when\b|\blife of\b|\bwhen does\b"
    r"|\bhow soon\b|\b(?:keeps?|last|stay good)(?: \w+){0,2} (?:overnight|until|till|for days|for long|tomorrow)\b"
)


def kept_mixed(parsed: Parsed) -> tuple[str, str] | None:
    """That it is asked of a mix, as a setting by word of mouth; None: of a product as bought, or of one made once."""
    asked = _MIXED.search(parsed.plain) is not None and _HOW_LONG.search(parsed.plain) is not None
    return (KEPT, "mixed") if asked else None
