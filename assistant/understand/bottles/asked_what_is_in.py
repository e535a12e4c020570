"""What a bottle holds, with two products named: "is it bleach or vinegar in the pink one". Nothing meets there."""

from __future__ import annotations

from assistant.contract import Reading, Slots
from assistant.understand.look import BY_RULE, Look
from assistant.understand.text.patterns import Pattern

_P = r"(?:AGENT|STOCK|water)"
_WHAT_IS_IN = Pattern(
    rf"^(?:so |and |wait |ok )*(?:is|was) (?:it|that|there) {_P} or {_P} (?:that is |that was )?(?:in|inside) "
    rf"(?:the |my )?BOTTLE\b|^(?:so |and |wait |ok )*is (?:the |my )?BOTTLE {_P} or {_P}\b",
    "BOTTLE",
)


def asked_what_is_in(look: Look) -> Reading | None:
    """The question what the bottle holds; None: that isn't asked."""
    bottles = look.slots("in_bottle").bottles
    if len(bottles) != 1 or _WHAT_IS_IN.search(look.parsed.plain) is None:
        return None
    return look.reading("in_bottle", Slots(bottles=bottles), BY_RULE)
