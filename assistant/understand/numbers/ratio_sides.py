"""Which side of a ratio is the water: "nine parts water to one part bleach", "40 to 1 water to chlorhexidine"."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal, TypeAlias

Side: TypeAlias = Literal["first", "second"]

PARTS_OF = frozenset({"part", "parts", "measure", "measures"})
WORDS_BEHIND = 6
"""Words behind the second number that may name what the two are of."""
_JOINS = frozenset({"to", "two", "too", "and", "with", "per", "into", "plus", ":", "+", ","})
_BARE = PARTS_OF | _JOINS | {"of", "the", "colon"}
_LONGEST_NAME = 3


def side_of_water(between: Sequence[str], behind: Sequence[str]) -> Side | None:
    """The side that is said to be the water; None: neither is said to be anything.

    between: the words from the first number to the second; behind: those after the second.
    """
    if "water" in between:
        return "first"
    if any(word not in _BARE and word.isalpha() for word in between):
        return "second"  # "three parts vinegar to one": the other is what it goes into
    named = [word for word in behind if word not in PARTS_OF and word != "of"]
    if named[:1] == ["water"]:
        return "first" if len(named) > 1 and named[1] in _JOINS else "second"
    joint = next((at for at, word in enumerate(named[: _LONGEST_NAME + 1]) if word in _JOINS), 0)
    return "second" if joint and named[joint + 1 : joint + 2] == ["water"] else None
