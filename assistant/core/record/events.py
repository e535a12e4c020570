"""What can happen: the events that make up the record.

Past tense, frozen, and complete in themselves: what a step needed (its wet time, the air changes) is written into the
event, so that a later change of keeping.toml or of a fact can't rewrite what was required then. When and in which turn
it happened is the envelope's (`Recorded`). Names of things are the household's own, agents and organisms are ids.

Bottles, tubs and things in a soak have theirs in `shelf_events`; all are looked up here.

To add one: a dataclass here or there, its line in `Event`, its case in `fold`, and a test. A field is never removed or
renamed; a new one gets a default, so that old records still read.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import TypeAlias

from assistant.core.record.shelf_events import (
    AgentPoured as AgentPoured,
)
from assistant.core.record.shelf_events import (
    AgentsMet as AgentsMet,
)
from assistant.core.record.shelf_events import (
    BottleDoubted as BottleDoubted,
)
from assistant.core.record.shelf_events import (
    BottleMixed as BottleMixed,
)
from assistant.core.record.shelf_events import (
    BottleRinsed as BottleRinsed,
)
from assistant.core.record.shelf_events import (
    BottleUnsettled as BottleUnsettled,
)
from assistant.core.record.shelf_events import (
    ItemBegun as ItemBegun,
)
from assistant.core.record.shelf_events import (
    SprayerMeasured as SprayerMeasured,
)
from assistant.core.record.shelf_events import (
    TubCleaned as TubCleaned,
)
from assistant.core.record.shelf_events import (
    TubLeft as TubLeft,
)
from assistant.core.record.shelf_events import (
    TubUnclean as TubUnclean,
)
from assistant.core.record.shelf_events import (
    TubUsed as TubUsed,
)


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
class Remarked:
    """Something was told of an enclosure in mid-clean and not understood; or that was settled since."""

    enclosure: str
    said: str = ""
    """In the keeper's words; empty: all that was remarked is settled."""
    settled: bool = False
    """That one is settled, and nothing else."""


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
class AnimalLoose:
    """An animal got out of where it was kept."""

    enclosure: str = ""
    """Whose home it is; empty where that wasn't said."""


@dataclass(frozen=True, slots=True)
class AnimalFound:
    """A loose animal was found and shut in again."""

    enclosure: str = ""


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
    | Remarked
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
    | BottleUnsettled
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
