"""What the trade knows: cited figures and the tables built on them, as values.

Reading the TOML files is `store.packaged`; it hands a loader in here, so that a topic is read when it is first needed
and this room touches no file. A figure of kind "published" can't be made without its source and its place there.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Any, Literal, TypeAlias

FactKind: TypeAlias = Literal["published", "practice", "memory"]
SourceKind: TypeAlias = Literal["published", "practice", "memory", "label", "setting"]


@dataclass(frozen=True, slots=True)
class Source:
    """Where an answer's figure comes from, as the reply shows it."""

    id: str
    kind: SourceKind
    text: str


class UncitedFact(ValueError):
    """A figure said to be published lacks its source or its place."""


@dataclass(frozen=True, slots=True)
class Fact:
    """One figure or statement with its source beside it."""

    id: str
    kind: FactKind
    says: str
    """What the source claims, in our words, as one would say it aloud."""
    value: Any = None
    unit: str = ""
    conditions: str = ""
    source: str = ""
    """Author, year, title."""
    place: str = ""
    """Page, table, equation: where in the source."""
    note: str = ""
    """Doubts and conflicts."""

    def __post_init__(self) -> None:
        if self.kind not in ("published", "practice", "memory"):
            raise UncitedFact(f"fact {self.id}: kind must be published, practice or memory, not {self.kind!r}")
        if self.kind == "published" and not (self.source and self.place):
            raise UncitedFact(f"fact {self.id}: published, but it names no source or no place in it")

    def cited(self) -> Source:
        """This figure as a line of a reply's sources."""
        where = ", ".join(part for part in (self.source, self.place) if part) or "common practice, no source"
        return Source(self.id, self.kind, f"{self.says} ({where})")


@dataclass(frozen=True, slots=True)
class Agent:
    """A cleaning or disinfecting agent: what it is called and which rules it falls under."""

    id: str
    name: str
    """As spoken: "bleach", "chlorhexidine"."""
    also: tuple[str, ...]
    family: str
    """The row of the table of pairs it belongs to: chlorine, acid, ammonia, alcohol, peroxide, quat ..."""
    steps: tuple[str, ...]
    """The steps of a round with it, in order, from `rounds.STEPS`."""
    disinfects: bool
    """False for cleaners, which are never offered as disinfectants."""
    hold: str | None
    """Id of the fact that gives its default wet time in minutes; None: no default, its label decides."""
    refused: str | None = None
    """Id of the fact for refusing it near any reptile; None: not refused."""
    refused_in_water: str | None = None
    """Id of the fact for refusing it near amphibians and water animals."""
    vet_only: bool = False
    """No time offered: the vet's plan."""
    needs_cold: bool = False
    """Flammable: spraying waits until heat is off and cold."""
    soiling: str | None = None
    """Id of the fact for washing first."""


@dataclass(frozen=True, slots=True)
class Organism:
    """A germ, parasite or illness by the names people use."""

    id: str
    name: str
    also: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Pair:
    """What happens when two families of agents meet."""

    first: str
    second: str
    verdict: Literal["never", "rinse_between", "fine"]
    gas: bool
    """True: meeting makes a gas; both a rinse and drying must lie between them."""
    fact: str
    """Id of the fact with the reason."""


@dataclass(frozen=True, slots=True)
class Efficacy:
    """One study's result of one agent against one organism."""

    fact: Fact
    agent: str
    organism: str
    outcome: Literal["works", "fails", "partly"]
    percent: Fraction | None
    """Strength tested, percent of active in the agent's usual terms; None: not stated or not comparable."""
    minutes: Fraction | None
    directness: str


Topic: TypeAlias = Mapping[str, Any]


class Facts:
    """All cited data, each topic read when first asked for.

    load: gives the parsed content of one topic's file, by its name without ending.
    topics: the names that `load` knows.
    """

    def __init__(self, load: Callable[[str], Topic], topics: tuple[str, ...]) -> None:
        self._load = load
        self.topics = topics

    # The rest (agents, organisms, pairs, efficacy, look-up of a fact by id) is filled in by the facts work.
