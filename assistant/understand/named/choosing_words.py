"""What the questions of choosing name beside agents and germs: materials, heat and drying, droppings, the job."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Protocol

from assistant.understand.named.animal_words import ANIMALS
from assistant.understand.text.patterns import Pattern

CHOOSING = frozenset({"choose_agent", "works_on", "surface", "together", "protect"})
"""Questions that these are read for."""


class _Named(Protocol):
    @property
    def id(self) -> str: ...

    @property
    def name(self) -> str: ...

    @property
    def also(self) -> tuple[str, ...]: ...


_JOBS: tuple[tuple[str, Pattern], ...] = (
    ("mites", Pattern(r"\bmites?\b")),
    (
        "scale",
        Pattern(
            r"\b(?:lime ?scale|limescale|calcium|hard water|water ?(?:marks?|spots?|stains?)|mineral|descal\w*|"
            r"(?:white|chalky|crusty|water) (?:scale|crust|marks?|rings?|stains?|spots?|film|lines?)|scale|scaled up"
            r"|scaly)\b(?! rot)"
        ),
    ),
    (
        "illness",
        Pattern(
            r"\b(?:sick|ill|illness|infect\w*|disease\w*|died|dead|death|outbreak|tested positive|diagnosed|poorly"
            r"|contagious|virus|parasites?|respiratory|after (?:he|she|it|they) (?:was|were) ill)\b"
        ),
    ),
    (
        "quarantine",
        Pattern(rf"\b(?:quarantin\w*|new (?:arrivals?|one|animals?|{ANIMALS}|ANIMAL)|newcomers?|just arrived)\b"),
    ),
    (
        "dirt",
        Pattern(
            r"\b(?:dirt|dirty|dirtiest|grime|grimy|greas\w+|muck|mucky|mud|muddy|smears?|smeary|dust|dusty|poo|poop"
            r"|droppings|urates?|urine|dried on|caked|stuck on|stains?|gunk|fingerprints?|food|slime)\b"
        ),
    ),
    (
        "routine",
        Pattern(
            r"\b(?:routine|everyday|every day|daily|weekly|monthly|regular|normal|ordinary|general|deep clean\w*"
            r"|disinfect\w*|sanitis\w*|sanitiz\w*|germs?|bacteria|kill)\b"
        ),
    ),
)
_WATER = Pattern(
    r"\b(?:frogs?|toads?|newts?|salamanders?|axolotls?|tadpoles?|fish|aquatic|amphibians?|turtles?|terrapins?"
    r"|aquariums?|paludarium|pond|water animals?|dart frogs?|shrimps?|snails?)\b"
)


_HEATERS = Pattern(r"\bheat(?:ing)? (?:mats?|lamps?|cables?|pads?|source|bulbs?|is off|off|on)\b", "heat")


def methods_in(text: str, methods: Mapping[str, _Named]) -> tuple[str, ...]:
    """Ways without a product that a text names; a heat mat is none."""
    return of_facts(_HEATERS.sub(" ", text), methods)


def job_in(text: str) -> str | None:
    """What is to be done, by a word that says so; None: none does."""
    return next((job for job, pattern in _JOBS if pattern.search(text)), None)


def near_water(text: str) -> bool:
    """Whether water animals or amphibians are said to be near."""
    return _WATER.search(text) is not None


def of_facts(text: str, things: Mapping[str, _Named]) -> tuple[str, ...]:
    """The ids of those whose name or other name stands in a text, in the order said; a longer name wins."""
    found: list[tuple[int, str]] = []
    left = text
    names = sorted(((name, one.id) for one in things.values() for name in (one.id, one.name, *one.also)), key=_longest)
    for name, thing in names:
        for match in re.finditer(rf"\b{re.escape(name)}\b", left):
            found.append((match.start(), thing))
            left = left[: match.start()] + "_" * len(match.group()) + left[match.end() :]
    return tuple(dict.fromkeys(thing for _, thing in sorted(found)))


def _longest(named: tuple[str, str]) -> int:
    return -len(named[0])
