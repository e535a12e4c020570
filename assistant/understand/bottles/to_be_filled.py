"""A bottle that is to be filled: "fill the yellow bottle" asks how much goes in, and not what is in it."""

from __future__ import annotations

from assistant.contract import Reading
from assistant.core.shelf.bottles import NOTHING
from assistant.understand.look import BY_RULE, Look
from assistant.understand.text.patterns import Pattern

_FILL = Pattern(
    r"(?:(?:ok|now|then|next|so|and|please|i|we|want|need|am going|going|can you|let us|will|would like|time|to) ,? ?)*"
    r"(?:half )?(?:fill|refill|make up|mix up)(?P<up> up)? (?:the |my )?BOTTLE(?P<up_too> up)?"
    r"(?: (?:half way|halfway|half full|half|again|afresh|now|please|for today|then))*"
)


def to_be_filled(look: Look) -> Reading | None:
    """The dose for that bottle; None: no such wish. What is filled up while it has a fill on record is topped up."""
    found = _FILL.fullmatch(look.parsed.plain.strip(" .!?,"))
    slots = look.slots("dose")
    if found is None or len(slots.bottles) != 1:
        return None
    holds = look.world.state.bottles.get(slots.bottles[0], NOTHING).fill is not None
    if holds and (found["up"] or found["up_too"]):
        return None
    return look.reading("dose", slots, BY_RULE)
