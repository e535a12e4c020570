"""The household: what the keeper owns, as read from keeping.toml.

Only types and look-ups here. Reading the file, with errors that name its line, is `store.keeping`.
A value that the keeper left out is None: not known, to be asked for when a question needs it.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from typing import Literal, TypeAlias

from assistant.core.quantities.amounts import Amount, Mix

Openings: TypeAlias = Literal["shut", "one opening", "two openings", "three openings"]
MeasureKind: TypeAlias = Literal["syringe", "spoon", "cup", "jug"]
Basis: TypeAlias = Literal["w/w", "w/v", "v/v"]
Group: TypeAlias = Literal["healthy", "new", "sick"]
Water: TypeAlias = Literal["dry", "part", "all"]
Claim: TypeAlias = Literal["sanitise", "disinfect"]


@dataclass(frozen=True)
class Room:
    """The room where the enclosures stand."""

    name: str = ""
    volume: Amount | None = None
    """Air in the room; from `volume`, or length x width x height."""
    airing: Openings | float | None = None
    """How it is usually aired; a number is air changes an hour."""
    temperature: Amount | None = None
    humidity: Amount | None = None
    """Relative humidity, percent."""


@dataclass(frozen=True)
class Habits:
    """How this keeper likes things."""

    ratio: Literal["to", "in"] | None = None
    """What a colon means; None when the keeper has set nothing (the shipped default is "to")."""
    gallon: Literal["US", "imperial"] | None = None
    """Which gallon, pint, quart, cup and fluid ounce are meant when unsaid; None: not set (shipped default: US)."""
    call_word: str = ""
    speak: bool = False
    tub_minutes: int = 60
    """How long an animal may wait before the tool asks after it."""


@dataclass(frozen=True)
class People:
    """Whom to call, and who at home is at risk."""

    poison_centre: str = ""
    emergency: str = ""
    vet: str = ""
    at_risk: tuple[str, ...] = ()


@dataclass(frozen=True)
class Measure:
    """A tool that measures a volume."""

    name: str
    capacity: Amount
    graduation: Amount | None = None
    """The finest mark; None: only full."""
    kind: MeasureKind = "syringe"
    tolerance: Amount | None = None
    """Percent of what is measured; None: the published tolerance of its kind."""
    also: tuple[str, ...] = ()


@dataclass(frozen=True)
class Stock:
    """A product on the shelf, as bought."""

    name: str
    agent: str
    """An agent's id in the facts."""
    strength: Amount | None = None
    """Percent."""
    basis: Basis | None = None
    made: date | None = None
    kept_at: Amount | None = None
    left: Amount | None = None
    label_minutes: int | float | None = None
    label_mix: Mix | None = None
    label_claim: Claim | None = None
    label_organisms: tuple[str, ...] = ()
    """Ids of the organisms that the label lists."""
    label_keeps: Amount | None = None
    pictograms: tuple[str, ...] = ()
    """Hazard signs that its own label carries, by the names in `core.choice.pictograms`; (): the keeper hasn't said."""
    also: tuple[str, ...] = ()


@dataclass(frozen=True)
class Bottle:
    """A labelled spray bottle: what it is for. What it holds is on the record of events alone."""

    name: str
    capacity: Amount
    colour: str = ""
    stock: str | None = None
    """Name of the stock it is meant for."""
    mix: Mix | None = None
    ml_a_stroke: float | None = None
    also: tuple[str, ...] = ()


@dataclass(frozen=True)
class Enclosure:
    """One animal's home."""

    name: str
    also: tuple[str, ...] = ()
    rack: str = ""
    animal: str = ""
    animals: int = 1
    material: str = ""
    length: Amount | None = None
    width: Amount | None = None
    height: Amount | None = None
    water: Water = "dry"
    """How aquatic its animal is."""
    group: Group = "healthy"
    arrived: date | None = None
    quarantine: Amount | None = None
    spot_clean_every: Amount | None = None
    deep_clean_every: Amount | None = None
    water_every: Amount | None = None


@dataclass(frozen=True)
class Household:
    """Everything in keeping.toml."""

    room: Room = field(default_factory=Room)
    habits: Habits = field(default_factory=Habits)
    people: People = field(default_factory=People)
    measures: tuple[Measure, ...] = ()
    stocks: tuple[Stock, ...] = ()
    bottles: tuple[Bottle, ...] = ()
    enclosures: tuple[Enclosure, ...] = ()

    def stock(self, name: str | None) -> Stock | None:
        """The stock of that name, or None."""
        return next((stock for stock in self.stocks if stock.name == name), None)

    def bottle(self, name: str | None) -> Bottle | None:
        """The bottle of that name, or None."""
        return next((bottle for bottle in self.bottles if bottle.name == name), None)

    def enclosure(self, name: str | None) -> Enclosure | None:
        """The enclosure of that name, or None."""
        return next((enclosure for enclosure in self.enclosures if enclosure.name == name), None)

    def stocks_of(self, agent: str) -> tuple[Stock, ...]:
        """The stocks of one agent, as listed."""
        return tuple(stock for stock in self.stocks if stock.agent == agent)
