"""A step that is being done: "still spraying", "rinsing it now". Nothing is done yet, and nothing is put right."""

from __future__ import annotations

from assistant.core.round.rounds import is_open
from assistant.understand.look import Look
from assistant.understand.text.patterns import Pattern

_DOING = Pattern(
    r"^(?:(?:ok|yes|no|right|well|just|i am|am|we are|i|still|now|halfway|half way|partway|busy|in the middle of"
    r"|through|about halfway|not done|,) ?)*(?:spraying|rinsing|drying|washing|wiping|scrubbing|clearing)"
    r"(?: (?:it|that|them|this|everything|out|off|down|the (?:walls?|lid|tank|box|cage|inside|rest)|now|still"
    r"|right now|just now|at the moment|as we speak|,|ok))*$",
    "ing",
)
_ALL_WET = Pattern(
    r"^(?:ok |so |now |right )*(?:it is |it 's |everything is |that is )?"
    r"(?:all|dripping|soaking|sopping|properly|nice and|good and) wet(?: now)?$",
    "wet",
)


def in_the_middle(look: Look) -> bool:
    """Whether a step is told as under way, or the surface as wet before any spraying is on record."""
    plain = look.parsed.plain.strip(" .!")
    rounds = [one for one in look.world.state.rounds.values() if is_open(one)]
    if not rounds or look.claims.done:
        return False
    unsprayed = all("apply" not in one.done for one in rounds)
    return _DOING.match(plain) is not None or (unsprayed and _ALL_WET.match(plain) is not None)
