"""What can happen to bottles, waiting tubs and things in a soak; see `events`, where all are listed."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from assistant.core.quantities.amounts import Amount


@dataclass(frozen=True, slots=True)
class BottleMixed:
    """A bottle was filled with a mix, ready to spray."""

    bottle: str
    agent: str
    stock: str | None = None
    """Which stock it was drawn from; None: not known, so that none is drawn down."""
    mix: str | None = None
    """As `quantity.read_mix` reads it, a colon read already; None: not known."""
    total: Amount | None = None
    """The finished mix in the bottle."""
    concentrate: Amount | None = None
    """What was drawn from the stock for it; None: not known."""
    left: Amount | None = None
    """What keeping.toml said then was left of the stock: what is drawn counts against that figure alone."""
    kept_until: datetime | None = None
    """Good until then; None: no limit is known."""
    basis: str = "unknown"
    """On what that rests: "label", "published", "made today", "no limit" or "unknown"."""
    topped_up: bool = False
    """Poured onto what was left of the same mix: the older fill's end counts."""
    mixed_at: datetime | None = None
    """When it was filled, where that was told later: the earliest that it may have been. None: when it was told."""
    to_the: str = "minute"
    """How closely that was said: "minute", "part" (of a day), "day" or "week"."""


@dataclass(frozen=True, slots=True)
class AgentPoured:
    """An agent was said to be in a bottle, where that is no fill: one that is refused, or that isn't settled yet."""

    bottle: str
    agent: str


@dataclass(frozen=True, slots=True)
class AgentsMet:
    """Two agents that make no gas were said to have met in a bottle: still an unknown mix, don't use."""

    bottle: str
    agents: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class BottleRinsed:
    """A bottle was emptied, rinsed out and pumped through with clean water."""

    bottle: str


@dataclass(frozen=True, slots=True)
class BottleUnsettled:
    """A bottle was filled with water, or a product that nobody knows: no fill counts, nor is it rinsed out."""

    bottle: str


@dataclass(frozen=True, slots=True)
class BottleDoubted:
    """Nobody knows what a bottle holds any more: unknown, don't use, until it is rinsed out."""

    bottle: str


@dataclass(frozen=True, slots=True)
class SprayerMeasured:
    """The keeper measured what one stroke of a bottle's trigger lays down, and wanted it kept."""

    bottle: str
    ml_a_stroke: float
    was: float | None
    """What keeping.toml said then; once the line says something else, the line counts again."""


@dataclass(frozen=True, slots=True)
class TubUsed:
    """An animal was put into a tub to wait."""

    tub: str
    enclosure: str
    group: str = "healthy"
    """The animal's group at that time: what the tub must be cleaned of before it is used again."""


@dataclass(frozen=True, slots=True)
class TubLeft:
    """An animal that waited in a tub while no clean was open is back home, as told."""

    enclosure: str


@dataclass(frozen=True, slots=True)
class TubCleaned:
    """A waiting tub was washed and disinfected, rinsed and dried."""

    tub: str


@dataclass(frozen=True, slots=True)
class TubUnclean:
    """A waiting tub was said not to be disinfected, whatever was told of it before."""

    tub: str


@dataclass(frozen=True, slots=True)
class ItemBegun:
    """A bowl, branch or cloth was put to soak, boil, bake or wash, by the clock."""

    item: str
    """As the keeper calls it."""
    way: str
    seconds: float
    enclosure: str = ""
