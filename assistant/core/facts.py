"""What the trade knows: cited figures and the tables built on them, as values.

Reading the TOML files is `store.packaged`; it hands a loader in here, so that a topic is read when it is first needed
and this room touches no file. A figure of kind "published" can't be made without its source and its place there.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property
from typing import Any, Literal, TypeAlias

FactKind: TypeAlias = Literal["published", "practice", "memory"]
SourceKind: TypeAlias = Literal["published", "practice", "memory", "label", "setting"]
PairVerdict: TypeAlias = Literal["never", "rinse_between", "fine"]
ContactVerdict: TypeAlias = Literal["fine", "short", "wipe", "porous", "never"]
"""fine; brief contact, then rinse; wiped, never sprayed; it soaks in; never."""

NO_SOURCE = {"practice": "common practice, no source", "memory": "from memory, no source"}


@dataclass(frozen=True, slots=True)
class Source:
    """Where an answer's figure comes from, as the reply shows it."""

    id: str
    kind: SourceKind
    text: str


class UncitedFact(ValueError):
    """A figure said to be published lacks its source or its place."""


class UnknownFact(KeyError):
    """No topic holds a fact of that id."""


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
        where = ", ".join(part for part in (self.source, self.place) if part) or NO_SOURCE[self.kind]
        return Source(self.id, self.kind, f"{self.says} ({where})")

    def exact(self) -> Fraction:
        """Its value as an exact number, as written in the file: 0.41 is 41/100.

        Fails: ValueError if the value is no number.
        """
        return Fraction(str(self.value))


@dataclass(frozen=True, slots=True)
class Agent:
    """A cleaning or disinfecting agent: what it is called and which rules it falls under."""

    id: str
    name: str
    """As spoken: "bleach", "chlorhexidine"."""
    also: tuple[str, ...]
    family: str
    """The row of the table of pairs it belongs to: chlorine, acid, ammonia, alcohol, peroxide, quat ...; "unknown"."""
    steps: tuple[str, ...]
    """The steps of a round with it, in order, from `rounds.STEPS`."""
    disinfects: bool
    """False for cleaners, which are never offered as disinfectants."""
    hold: str | None = None
    """Id of the fact that gives its default wet time in minutes; None: no default, its label decides."""
    hold_least: str | None = None
    """Id of the fact for the weakest mix, in percent, that its default wet time is for; None: none is stated."""
    habit: str | None = None
    """Id of the fact of what keepers commonly do instead; told beside the wet time, never used."""
    no_time: str | None = None
    """Id of the fact for why it is offered no wet time of its own: it only cleans, or it is the vet's plan."""
    refused: str | None = None
    """Id of the fact for refusing it near any reptile; None: not refused."""
    refused_in_water: str | None = None
    """Id of the fact for refusing it near amphibians and water animals."""
    vet_only: bool = False
    """No time offered: the vet's plan."""
    needs_cold: bool = False
    """Flammable: spraying waits until heat is off and cold."""
    acidic: bool = False
    """Its residue can free chlorine from bleach, so before bleach a wipe is not enough."""
    wipe_will_do: bool = True
    """Two wipes with clean water may stand for its rinse."""
    soiling: str | None = None
    """Id of the fact for washing first."""
    evaporates: str | None = None
    """Id of the fact for how fast it evaporates; None: it is mostly water, and dries as water."""


@dataclass(frozen=True, slots=True)
class Organism:
    """A germ, parasite or illness by the names people use."""

    id: str
    name: str
    also: tuple[str, ...]
    like: str | None = None
    """The wider kind that stands in where nothing was tried on it itself: "enveloped viruses"."""


@dataclass(frozen=True, slots=True)
class Method:
    """A way without a product: heat, drying. Nothing is mixed or sprayed with it."""

    id: str
    name: str
    also: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Material:
    """What a surface is made of, by the names people use."""

    id: str
    name: str
    also: tuple[str, ...] = ()
    porous: bool = False
    """It soaks things up, so that nothing disinfects it for sure."""
    fact: str | None = None
    """Id of the fact about it, whatever touches it."""


@dataclass(frozen=True, slots=True)
class Contact:
    """What one family of agents does to one material."""

    material: str
    family: str
    """ "any": every family that isn't listed by itself."""
    verdict: ContactVerdict
    fact: str


@dataclass(frozen=True, slots=True)
class Pair:
    """What happens when two families of agents meet, in one bottle or one after the other."""

    first: str
    second: str
    verdict: PairVerdict
    """never: in no bottle, and on a surface only with a rinse between (and drying, when it makes gas)."""
    gas: bool
    """True: meeting makes a gas; both a rinse and drying must lie between them."""
    fact: str
    """Id of the fact with the reason."""
    because: str
    """The reason as the end of a sentence that begins with "that": "makes chlorine gas"."""


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
    """How far the organism tested is from the reptile's: "same organism", "surrogate, same genus" ..."""
    degrees: Fraction | None = None
    """For heat: degrees Celsius; None: not stated."""
    weaker: bool = False
    """It failed at less than what worked in the same study, where the strengths can't be compared with a mix."""


Topic: TypeAlias = Mapping[str, Any]

_FACT_FIELDS = ("id", "kind", "says", "value", "unit", "conditions", "source", "place", "note")


class Facts:
    """All cited data, each topic read when first asked for, and kept.

    load: gives the parsed content of one topic's file, by its name without ending.
    topics: the names that `load` knows.
    """

    def __init__(self, load: Callable[[str], Topic], topics: tuple[str, ...]) -> None:
        self._load = load
        self.topics = topics
        self._facts: dict[str, dict[str, Fact]] = {}
        self._content: dict[str, Topic] = {}

    def __getitem__(self, fact_id: str) -> Fact:
        """The fact of that id. Fails: UnknownFact if no topic holds it."""
        for topic in self._likely_first(fact_id):
            found = self._facts_of(topic).get(fact_id)
            if found is not None:
                return found
        raise UnknownFact(fact_id)

    def all(self) -> Iterator[Fact]:
        """Every fact of every topic, efficacy rows among them; reads all files."""
        for topic in self.topics:
            yield from self._facts_of(topic).values()

    @cached_property
    def agents(self) -> Mapping[str, Agent]:
        """Every agent by its id."""
        return {row["id"]: _agent(row) for row in self._rows("agents", "agent")}

    @cached_property
    def organisms(self) -> Mapping[str, Organism]:
        """Every organism by its id."""
        return {
            row["id"]: Organism(row["id"], row["name"], tuple(row.get("also", ())), row.get("like"))
            for row in self._rows("organisms", "organism")
        }

    @cached_property
    def methods(self) -> Mapping[str, Method]:
        """Every way without a product, by its id."""
        return {
            row["id"]: Method(row["id"], row["name"], tuple(row.get("also", ())))
            for row in self._rows("agents", "method")
        }

    @cached_property
    def materials(self) -> Mapping[str, Material]:
        """Every material by its id."""
        return {
            row["id"]: Material(**{**row, "also": tuple(row.get("also", ()))})
            for row in self._rows("materials", "material")
        }

    @cached_property
    def contacts(self) -> Mapping[tuple[str, str], Contact]:
        """What families do to materials, by material and family."""
        return {(row["material"], row["family"]): Contact(**row) for row in self._rows("materials", "touch")}

    @cached_property
    def residues(self) -> Mapping[str, Agent]:
        """What agents may meet that is no agent: droppings, what is left of a wash. By id, as agents without steps."""
        return {
            row["id"]: Agent(row["id"], row["name"], tuple(row.get("also", ())), row["family"], (), False)
            for row in self._rows("together", "residue")
        }

    @cached_property
    def pairs(self) -> Mapping[frozenset[str], Pair]:
        """What happens when two families meet, by the two; a family with itself is a set of one."""
        found: dict[frozenset[str], Pair] = {}
        for row in self._rows("together", "pair"):
            pair = Pair(row["first"], row["second"], row["verdict"], row.get("gas", False), row["fact"], row["because"])
            found[frozenset((pair.first, pair.second))] = pair
        return found

    def table(self, topic: str, name: str) -> tuple[Mapping[str, Any], ...]:
        """The rows of one table of one topic, for the types that are built on them elsewhere."""
        return self._rows(topic, name)

    def efficacy(self, agent: str, organism: str) -> tuple[Efficacy, ...]:
        """Every published result of that agent against that organism, in the file's order."""
        return self._efficacy.get((agent, organism), ())

    def agent_named(self, said: str) -> Agent | None:
        """The agent of that id, name or other name, whatever its case; None: no such."""
        return self._agent_names.get(_plain(said))

    def material_named(self, said: str) -> Material | None:
        """The material of that id, name or other name, whatever its case; None: no such."""
        return self._material_names.get(_plain(said))

    def organism_named(self, said: str) -> Organism | None:
        """The organism of that id, name or other name, whatever its case; None: no such."""
        return self._organism_names.get(_plain(said))

    @cached_property
    def _agent_names(self) -> Mapping[str, Agent]:
        return {_plain(name): agent for agent in self.agents.values() for name in (agent.id, agent.name, *agent.also)}

    @cached_property
    def _material_names(self) -> Mapping[str, Material]:
        return {_plain(name): one for one in self.materials.values() for name in (one.id, one.name, *one.also)}

    @cached_property
    def _organism_names(self) -> Mapping[str, Organism]:
        return {_plain(n): germ for germ in self.organisms.values() for n in (germ.id, germ.name, *germ.also)}

    @cached_property
    def _efficacy(self) -> Mapping[tuple[str, str], tuple[Efficacy, ...]]:
        found: dict[tuple[str, str], tuple[Efficacy, ...]] = {}
        for row in self._rows("efficacy", "efficacy"):
            key = (row["agent"], row["organism"])
            found[key] = (*found.get(key, ()), self._efficacy_of(row))
        return found

    def _efficacy_of(self, row: Mapping[str, Any]) -> Efficacy:
        fact = self._facts_of("efficacy")[row["id"]]
        percent, minutes, degrees = (
            Fraction(str(row[key])) if key in row else None for key in ("percent", "minutes", "degrees")
        )
        return Efficacy(
            fact,
            row["agent"],
            row["organism"],
            row["outcome"],
            percent,
            minutes,
            row["directness"],
            degrees,
            row.get("weaker", False),
        )

    def _likely_first(self, fact_id: str) -> list[str]:
        """The topic that its id begins with, topics read already, then the rest, so that few files are read."""

        def unlikely(topic: str) -> tuple[bool, bool]:
            return not fact_id.startswith(topic.rstrip("s").replace("_", "-")), topic not in self._facts

        return sorted(self.topics, key=unlikely)

    def _facts_of(self, topic: str) -> Mapping[str, Fact]:
        if topic not in self._facts:
            content = self._read(topic)
            studies = content.get("study", {})
            rows = (*content.get("fact", ()), *content.get("efficacy", ()))
            self._facts[topic] = {row["id"]: _fact(row, studies) for row in rows}
        return self._facts[topic]

    def _rows(self, topic: str, table: str) -> tuple[Mapping[str, Any], ...]:
        return tuple(self._read(topic).get(table, ()))

    def _read(self, topic: str) -> Topic:
        if topic not in self._content:
            self._content[topic] = self._load(topic)
        return self._content[topic]


def _fact(row: Mapping[str, Any], studies: Mapping[str, Any]) -> Fact:
    """A row as a fact; where it names a study, kind, source and place are that study's."""
    if "study" in row:
        row = {**studies[row["study"]], **row}
    return Fact(**{key: row[key] for key in _FACT_FIELDS if key in row})


def _agent(row: Mapping[str, Any]) -> Agent:
    return Agent(**{**row, "also": tuple(row.get("also", ())), "steps": tuple(row["steps"])})


def _plain(name: str) -> str:
    return " ".join(name.casefold().replace("-", " ").split())
