"""A text with the places of its parts, for the rules of harm by parts."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from assistant.understand.harm.words import (
    ANIMALS,
    GENERAL,
    HAZARDS,
    HOMES_AFTER,
    MINE,
    OWNERS,
    PEOPLE,
    PLACES,
    USED,
    Place,
)


@dataclass(frozen=True, slots=True)
class Found:
    """What the parts add up to."""

    place: Place | None
    animal: bool


class Said:
    """A text with the places of its parts."""

    def __init__(self, text: str) -> None:
        self.text = text
        self.words = text.split()
        self.present = frozenset(self.words)
        self.general = GENERAL.search(text) is not None
        self.hazard = not self.present.isdisjoint(HAZARDS)
        self.used = self.hazard or not self.present.isdisjoint(USED)
        named = not self.present.isdisjoint(ANIMALS) or re.search(r"(?<!the )\bENCLOSURE\b", text) is not None
        person = not self.present.isdisjoint(PEOPLE) or re.search(r"\b(?:my|me) \w*", text) is not None
        self.animal = named
        self.of_animal = named and (self.present.isdisjoint(PEOPLE - {"me"}))
        self.person = person

    def at(self, kind: frozenset[str]) -> Iterator[int]:
        return (place for place, word in enumerate(self.words) if word in kind)

    def near(self, place: int, kind: frozenset[str], before: int, after: int) -> bool:
        return not kind.isdisjoint(self.words[max(0, place - before) : place + after + 1])

    def bodies(self) -> Iterator[tuple[int, Place, bool]]:
        """Each place of somebody's body that is named: where in the text, what, and whether it is a person's."""
        for at, word in enumerate(self.words):
            if self.words[at + 1 : at + 2] and self.words[at + 1] in (HOMES_AFTER | {"-", "level"}) - {
                "'s",
                "hide",
                "lid",
            }:
                continue
            if word in PLACES and not (OWNERS | ({"the"} if "eye" in word else set())).isdisjoint(
                self.words[max(0, at - 3) : at]
            ):
                before = self.words[max(0, at - 4) : at]
                animal = not ANIMALS.isdisjoint(before) or "ENCLOSURE" in before
                own = not MINE.isdisjoint(before) and not animal
                yield at, PLACES[word], own or (not animal and not self.of_animal)


def before(words: Sequence[str], at: int, kind: frozenset[str]) -> int | None:
    """Where the word of a kind stands that leads to a place, over whose it is: "into his left eye"."""
    for back in range(at - 1, max(-1, at - 5), -1):
        if words[back] in kind:
            return back
        if words[back] not in OWNERS | ANIMALS | PEOPLE | {
            "ENCLOSURE",
            "a",
            "the",
            "one",
            "bad",
            "of",
            "contact",
            "poor",
            "little",
        }:
            return None
    return None
