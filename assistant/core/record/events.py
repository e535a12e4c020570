"""What can happen: the events that make up the record.

Past tense, frozen, and complete in themselves: what a step needed (its wet time, the air changes) is written into the
event, so that a later change of keeping.toml or of a fact can't rewrite what was required then. When and in which turn
it happened is the envelope's (`Recorded`). Names of things are the household's own, agents and organisms are ids.

To add one: a dataclass here, its line in `EVENTS`, its case in `fold`, and a test. A field is never removed or renamed;
a new one gets a default, so that old records still read.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import TypeAlias

from assistant.core.quantities.amounts import Amount


@dataclass(frozen=True, slots=True)
class RoundStarted:
    """A clean of one enclosure was begun; one that was open is replaced."""

    enclosure: str
    agent: str
    steps: tuple[str, ...]
    """What it takes, in order, from `rounds.STEPS`."""
    hold_s: float | None
    """Wet time in seconds; None: no figure, so it can't be served."""
    air_changes_per_hour: float
    """Airing as the room usually is."""
    air_changes: float
    """Air changes that the airing needs in all."""
    stock: str | None = None
    bottle: str | None = None
    organism: str | None = None
    basis: str = "published"
    """On what a claim to have disinfected rests: "label", "published", or "none" where nothing vouches for it."""
    job: str = ""
    """From `jobs.JOBS`; empty: nothing was said of it."""


@dataclass(frozen=True, slots=True)
class StepDone:
    """A step of an open round, in order and its time served."""

    enclosure: str
    step: str
    agent: str | None = None
    """For `apply`: with what."""
    bottle: str | None = None
    hold_s: float | None = None
    """For `apply`: the wet time that starts now, in seconds; None: no figure."""
    basis: str = "published"
    """For `apply`: as in `RoundStarted`."""
    steps: tuple[str, ...] | None = None
    """For `apply` with another agent than the round's: the steps that the round takes now."""
    wiped: bool = False
    """For `rinse`: wiped twice with clean water instead."""


@dataclass(frozen=True, slots=True)
class StayedWet:
    """The keeper vouched that the surface stayed wet for the whole hold."""

    enclosure: str


@dataclass(frozen=True, slots=True)
class StepReopened:
    """A step on record was said not to be so after all: it and all that comes after it are to be done again."""

    enclosure: str
    step: str


@dataclass(frozen=True, slots=True)
class DriedEarly:
    """The surface dried, or was rinsed, before its wet time was over; it is to be sprayed again."""

    enclosure: str


@dataclass(frozen=True, slots=True)
class KeptWet:
    """During the wet time the surface was seen still wet, or was sprayed again from the same bottle to keep it so."""

    enclosure: str
    agent: str | None = None
    """What it was sprayed with again; None: it was only looked at."""


@dataclass(frozen=True, slots=True)
class HoldDoubted:
    """Something was said that fits no surface kept wet, so the hold counts only once the keeper vouches for it."""

    enclosure: str


@dataclass(frozen=True, slots=True)
class Sensed:
    """What the keeper's nose and hand found, whatever the clocks say. None: nothing was said of it."""

    enclosure: str
    smell: bool | None = None
    """True: it smells of product; False: no smell now."""
    wet: bool | None = None
    """True: there is a wet patch. That it dried is `StepDone`."""


@dataclass(frozen=True, slots=True)
class Paused:
    """The keeper left a round for later; it stays open and goes on blocking."""

    enclosure: str


@dataclass(frozen=True, slots=True)
class Resumed:
    """The keeper went on with a paused round."""

    enclosure: str


@dataclass(frozen=True, slots=True)
class CleanOnly:
    """The keeper gave up the disinfection: the round ends as a clean."""

    enclosure: str
    steps: tuple[str, ...]
    """What it takes now, in order."""


@dataclass(frozen=True, slots=True)
class BackTooSoon:
    """The animal was put back before the round was over; it is to come out again."""

    enclosure: str


@dataclass(frozen=True, slots=True)
class AgentTouched:
    """An agent was claimed to have touched a surface, where that is no step of a round."""

    enclosure: str
    agent: str
    steps: tuple[str, ...] = ()
    """What it takes to be rid of it again, of rinse, dry and air: an open round needs them from now on."""


@dataclass(frozen=True, slots=True)
class SurfaceRinsed:
    """A surface was rinsed outside the order of a round, to take agents off that must not meet."""

    enclosure: str
    wiped: bool = False


@dataclass(frozen=True, slots=True)
class SurfaceDried:
    """A surface dried outside the order of a round."""

    enclosure: str


@dataclass(frozen=True, slots=True)
class WindowsOpened:
    """Openings were said to be open; the airing goes at this rate from now on, or from when they were said to be so."""

    enclosure: str
    openings: int
    air_changes_per_hour: float
    since: datetime | None = None


@dataclass(frozen=True, slots=True)
class GasMade:
    """Two agents that make a gas were said to have met, in a bottle or on a surface: unknown mix, don't use."""

    agents: tuple[str, ...]
    bottle: str | None = None
    enclosure: str | None = None
    steps: tuple[str, ...] = ()
    """For an enclosure: as in `AgentTouched`."""


@dataclass(frozen=True, slots=True)
class ChoreDone:
    """A spot clean, a deep clean or fresh water, for the record and the schedule; it never makes anything ready."""

    enclosure: str
    chore: str
    """From `chores.CHORES`."""
    done_at: datetime
    """As told: it may lie before the telling."""


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
    """An agent was said to be in a bottle, where that is no fill: one that is refused, or that isn't for surfaces."""

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
class BottleDoubted:
    """Nobody knows what a bottle holds any more: unknown, don't use, until it is rinsed out."""

    bottle: str


@dataclass(frozen=True, slots=True)
class AnimalLoose:
    """An animal got out of where it was kept."""

    enclosure: str = ""
    """Whose home it is; empty where that wasn't said."""


@dataclass(frozen=True, slots=True)
class AnimalFound:
    """A loose animal was found and shut in again."""

    enclosure: str = ""


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
class GroupChanged:
    """An animal went to another group: healthy, new or sick."""

    enclosure: str
    group: str
    was: str
    """What keeping.toml said then; once that line says something else, the line counts again."""
    organism: str | None = None
    """What it tested positive for, or what was seen on it."""


@dataclass(frozen=True, slots=True)
class QuarantineRestarted:
    """A quarantine began again from its first day."""

    enclosure: str
    why: str
    """ "newcomer", "test" (a positive one) or "sign" (of illness, or mites)."""


@dataclass(frozen=True, slots=True)
class HabitChanged:
    """The keeper set one of the habits of keeping.toml by word of mouth."""

    habit: str
    """Its key in keeping.toml."""
    value: str
    was: str
    """What keeping.toml said then, empty for nothing; once the line says something else, the line counts again."""


@dataclass(frozen=True, slots=True)
class SprayerMeasured:
    """The keeper measured what one stroke of a bottle's trigger lays down, and wanted it kept."""

    bottle: str
    ml_a_stroke: float
    was: float | None
    """What keeping.toml said then; once the line says something else, the line counts again."""


@dataclass(frozen=True, slots=True)
class ItemBegun:
    """A bowl, branch or cloth was put to soak, boil, bake or wash, by the clock."""

    item: str
    """As the keeper calls it."""
    way: str
    seconds: float
    enclosure: str = ""


@dataclass(frozen=True, slots=True)
class RinseBegun:
    """A splash is being rinsed under running water, by the clock."""

    place: str
    """ "eye" or "skin"."""
    victim: str
    """ "person", "animal", or "either" where that wasn't said."""
    seconds: float


@dataclass(frozen=True, slots=True)
class RinseEnded:
    """The keeper ended the rinsing of a splash: a false alarm, or somebody who knows called it off."""

    place: str
    victim: str


@dataclass(frozen=True, slots=True)
class Away:
    """No shell was running from then until now, so nobody was watched keeping anything wet."""

    since: datetime


@dataclass(frozen=True, slots=True)
class ClocksParted:
    """The wall's clock moved against the computer's own count of seconds: it was set, or the count stood still."""

    ahead_s: float
    """By how much the wall's clock is further on than it should be; below 0: it went back."""
    offset_s: float
    """What the two differ by from now on; by that two shells know that they saw the same."""


@dataclass(frozen=True, slots=True)
class ClocksSettled:
    """The keeper said, of one running clock, whether the longer of the two counts is the true one."""

    thing: str
    """The enclosure, or the place being rinsed."""
    step: str
    """ "hold", "air" or "rinse"."""
    passed: bool
    """True: the longer; False: the shorter."""
    offset_s: float
    """What the clocks differed by when it was asked; an answer from before they parted anew is none."""


@dataclass(frozen=True, slots=True)
class Voided:
    """Everything that one turn recorded was taken back."""

    turn: str


Event: TypeAlias = (
    RoundStarted
    | StepDone
    | StayedWet
    | DriedEarly
    | StepReopened
    | KeptWet
    | HoldDoubted
    | Sensed
    | Paused
    | Resumed
    | CleanOnly
    | BackTooSoon
    | AgentTouched
    | SurfaceRinsed
    | SurfaceDried
    | WindowsOpened
    | GasMade
    | ChoreDone
    | BottleMixed
    | AgentPoured
    | AgentsMet
    | BottleRinsed
    | BottleDoubted
    | AnimalLoose
    | AnimalFound
    | TubUsed
    | TubLeft
    | TubCleaned
    | TubUnclean
    | GroupChanged
    | QuarantineRestarted
    | HabitChanged
    | SprayerMeasured
    | ItemBegun
    | RinseBegun
    | RinseEnded
    | Away
    | ClocksParted
    | ClocksSettled
    | Voided
)

EVENTS: tuple[type, ...] = Event.__args__


@dataclass(frozen=True, slots=True)
class Recorded:
    """An event with its envelope."""

    at: datetime
    """Aware, UTC."""
    turn: str
    """The turn that recorded it; a turn's events are undone together."""
    event: Event
