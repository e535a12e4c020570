"""A bottle that is said to be empty: "the yellow bottle's empty", "used up the pink one"."""

from __future__ import annotations

from assistant.contract import World
from assistant.core.round.rounds import is_open
from assistant.core.shelf.bottles import NOTHING
from assistant.understand.text.patterns import Pattern

_IS_EMPTY = Pattern(
    r"(?:(?:ok|oh|so|and|right|well|the|my|now) ,? ?)*BOTTLE(?: is| 's| has)? (?:(?:now|all|run|got) )*"
    r"(?:empty|finished|used up|run out|ran out|out)(?: now| already| again)*"
    r"|(?:(?:ok|oh|so|and|i|we|have|just) ,? ?)*(?:used|finished)(?: up)? (?:the last of )?(?:the |my )?BOTTLE(?: up)?",
    "BOTTLE",
)


def is_empty(plain: str, bottles: tuple[str, ...], world: World) -> bool:
    """Whether nothing is left of a bottle's fill on record; in the middle of a clean that is told, and no chore."""
    filled = len(bottles) == 1 and world.state.bottles.get(bottles[0], NOTHING).fill is not None
    if not filled or any(map(is_open, world.state.rounds.values())):
        return False
    return _IS_EMPTY.fullmatch(plain.strip(" .!,")) is not None
