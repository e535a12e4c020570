"""A bottle that is said to be empty, or rinsed in part: "the yellow bottle's empty", "rinsed its outside"."""

from __future__ import annotations

from assistant.contract import World
from assistant.core.round.rounds import is_open
from assistant.core.shelf.bottles import NOTHING
from assistant.understand.text.patterns import Pattern

_IS_EMPTY = Pattern(
    r"(?:(?:ok|oh|so|and|right|well|the|my|now) ,? ?)*BOTTLE(?: is| 's| has)? (?:(?:now|all|run|got) )*"
    r"(?:empty|finished|used up|run out|ran out|out)(?: now| already| again)*"
    r"|(?:(?:ok|oh|so|and|i|we|have|just) ,? ?)*(?:poured|tipped|chucked|threw|emptied|dumped) (?:the |my )?BOTTLE"
    r" (?:away|out|down the \w+)"
    r"|(?:(?:ok|oh|so|and|i|we|have|just) ,? ?)*(?:used|finished)(?: up)? (?:the last of )?(?:the |my )?BOTTLE(?: up)?",
    "BOTTLE",
)


def is_empty(plain: str, bottles: tuple[str, ...], world: World) -> bool:
    """Whether nothing is left of a bottle's fill on record; in the middle of a clean that is told, and no chore."""
    filled = len(bottles) == 1 and world.state.bottles.get(bottles[0], NOTHING).fill is not None
    if not filled or any(map(is_open, world.state.rounds.values())):
        return False
    return _IS_EMPTY.fullmatch(plain.strip(" .!,")) is not None


def rinsed_in_part(plain: str) -> bool:
    """Whether only the outside or a part of a bottle is said to be rinsed, or all of it hardly."""
    return _IN_PART.search(plain) is not None


_IN_PART = Pattern(
    r"\b(?:outsides?|exterior|caps?|lids?|tops?|nozzles?|triggers?|labels?|necks?|heads?|tubes?)\b(?!.*\binside)"
    r"|\b(?:half|partly|nearly|almost|sort of|kind of|quick(?:ly)?)[ -](?:\w+ )?(?:rins|wash|flush|swill|swish"
    r"|clean)\w*"
    r"|\b(?:a|one) (?:quick |little |good )?(?:swill|swish|swirl)\b"
    r"|\b(?:rinsed|washed|flushed|swilled|cleaned)(?: \w+){0,4}? (?:halfway|half way|a bit|partly|mostly)\b"
)
""" "Rinsed the outside of the pink bottle", "half rinsed it"."""
