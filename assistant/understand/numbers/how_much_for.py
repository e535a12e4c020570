""" "How much for the long wall", "how much mix do I need for both": ready mix, asked for many enclosures at once.

By rule, because a rack has whatever name the keeper gave it, and no phrasing can hold that.
"""

from __future__ import annotations

from assistant.core.household import Household
from assistant.understand.named.groups_said import homes_of
from assistant.understand.text.patterns import Pattern

_MIX = (
    r"(?:mix|solution|spray|ready mix|(?:made up )?stuff|liquid|product|disinfectant|(?:of )?(?:the )?"
    r"(?:BOTTLE|AGENT|STOCK))"
)
_ASKED = Pattern(
    r"^(?:(?:so|and|ok|right|now|then|well|um) ,? ?)*(?:(?:how much|what)(?: more)?(?: of)?(?: the)?"
    rf"(?: ready| made up)?(?: {_MIX})?|how many (?:bottles?|fills?|squirts|strokes|pulls|BOTTLE)"
    r"(?: of (?:the )?(?:BOTTLE|AGENT|STOCK))?|(?:is|will|would) (?:one|a|1|NUMBER|the)? ?(?:bottle|fill|BOTTLE)"
    r"(?: be)?(?: enough)?)(?: (?:do|will|would|should|shall|am|is|'ll|does|must|to|i|we|need|needs|needed|make|made"
    r"|mix|up|take|takes|want|have|use|going|get|spray|cover|prepare|enough|it|that|be))* "
    r"(?:for|to do|to spray|to cover|do|spray|cover|in)\b(?! (?:how|the concentrate))"
)
_TAKES = Pattern(
    rf"^(?:(?:so|and|ok|right|now) ,? ?)*(?:how much|how many (?:bottles?|fills?|squirts|strokes|pulls))(?: {_MIX})? "
    r"(?:will|would|does|do|is)\b.* (?:take|need|want|use)s?\b"
)
_OTHERWISE = Pattern(
    r"\b(?:longer|time|minutes|hours|days|water|food|heat|left|airing|concentrate|MIX|VOLUME|DURATION|syringes?)\b"
)
"""About a clock, a chore, a shelf or a dose."""
_A_DOSE = Pattern(r"\bhow much (?:AGENT|STOCK) (?:for|in|into|goes in) (?:the |my )?BOTTLE\b")
""" "How much bleach for the yellow one, stronger for the sick one": of the concentrate."""
_BOTH = Pattern(
    r"\b(?:both|all (?:of )?(?:them|it)|all (?:of )?today 's|the (?:whole )?(?:round|lot)|everybody|everyone)\b"
)


def mix_for_many(plain: str, household: Household) -> bool:
    """True when ready mix is asked for a rack, a group, both, or the whole round."""
    if not (_ASKED.search(plain) or _TAKES.search(plain)) or _OTHERWISE.search(plain):
        return False
    if _A_DOSE.search(plain) is not None:
        return False
    return bool(homes_of(plain, household)) or _BOTH.search(plain) is not None
