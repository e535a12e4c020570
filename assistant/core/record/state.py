"""The present: what the record of events amounts to.

Types only; `fold` makes one from the events, `gate` and `rounds` read it. Frozen, of plain fields, so that the store
can keep it as a row beside the events.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime

from assistant.core.quantities.amounts import Amount


@dataclass(frozen=True, slots=True)
class Counted:
    """So much of a wet time, an airing or a rinse had been counted by then."""

    since: datetime
    """When what it counts began; a count of anything else is stale."""
    at: datetime
    amount: float
    """Seconds, or air changes."""
    openings: int = 0
    """For an airing: how many openings had been said by then."""

    def amount_at(self, now: datetime) -> float:
        """Seconds counted by now; a clock set back adds none."""
        return self.amount + max(0.0, (now - self.at).total_seconds())


@dataclass(frozen=True, slots=True)
class Parting:
    """The wall's clock and the computer's own count have parted, and the keeper hasn't said which is true."""

    at: datetime
    ahead_s: float
    """By how much the wall's clock jumped ahead; below 0: it went back."""


@dataclass(frozen=True, slots=True)
class Hold:
    """One wet time."""

    began: datetime
    seconds: float | None
    """None: no figure, so it can't be served."""
    vouched: bool = False
    """The keeper said, when it was over, that it stayed wet throughout."""
    doubted: bool = False
    """It counts only if vouched: the program wasn't running for a while, or something was said that doesn't fit."""
    by_boot: Counted | None = None
    """What the computer's own clock counts, once the wall's has parted from it; the smaller counts."""
    wetted: datetime | None = None
    """When it was last sprayed again; None: not since it began."""
    seen_wet: datetime | None = None
    """When it was last seen wet; None: not since it began."""


@dataclass(frozen=True, slots=True)
class Opening:
    """From then on the room was aired at this rate."""

    at: datetime
    air_changes_per_hour: float


@dataclass(frozen=True, slots=True)
class Round:
    """One enclosure being cleaned once."""

    enclosure: str
    started_at: datetime
    agent: str
    steps: tuple[str, ...]
    """What it takes, in order."""
    hold_s: float | None
    air_changes_per_hour: float
    air_changes: float
    stock: str | None = None
    bottle: str | None = None
    organism: str | None = None
    basis: str = "published"
    """On what a claim to have disinfected rests: "label", "published" or "none"."""
    done: Mapping[str, datetime] = field(default_factory=dict)
    """Steps done, and when. A hold is here once its time was served and a later step was recorded on it."""
    hold: Hold | None = None
    """The wet time that `apply` began."""
    openings: tuple[Opening, ...] = ()
    put_back: bool = False
    """The animal was put back too soon and isn't out again on record."""
    air_from: Counted | None = None
    """The airing as the keeper settled it after the clocks had parted; it is counted on from there."""
    air_by_boot: Counted | None = None
    """As a hold's."""
    first_dry: datetime | None = None
    """When it was first dry since the rinse; a wet patch found later doesn't stop the airing that began then."""
    touched: bool = False
    """An agent was on the surface at some time during this round, whatever became of it."""
    smells: bool = False
    """A smell was reported, and not that it's gone."""
    remarks: tuple[str, ...] = ()
    """What was told of it and not understood, in the keeper's words, until it is settled."""
    paused_at: datetime | None = None
    """Left for later since then; it stays open."""
    job: str = ""
    """From `jobs.JOBS`; empty: nothing was said of it."""


@dataclass(frozen=True, slots=True)
class Touch:
    """An agent on a surface, until rinsed off and dried."""

    agent: str
    at: datetime
    rinsed: bool = False
    wiped: bool = False
    """Wiped with clean water, not rinsed: not enough for bleach, nor for an acid before bleach."""
    dried: bool = False
    """Dry after the rinse or wipe."""


@dataclass(frozen=True, slots=True)
class Fill:
    """What a bottle was last filled with."""

    at: datetime
    agent: str
    stock: str | None = None
    mix: str | None = None
    """As `quantity.read_mix` reads it; None: not known."""
    total: Amount | None = None
    concentrate: Amount | None = None
    kept_until: datetime | None = None
    """Of a topped-up bottle the oldest fill's; None: no limit is known."""
    basis: str = "unknown"
    """On what `kept_until` rests: "label", "published", "made today", "no limit" or "unknown"."""
    topped_up: bool = False
    to_the: str = "minute"
    """How closely `at` is known: "minute", "part" (of a day), "day" or "week"."""


@dataclass(frozen=True, slots=True)
class Holds:
    """What the record says of one bottle. A bottle that isn't on record has no `Holds`."""

    fill: Fill | None = None
    """None: rinsed out since, or never filled on record."""
    held: tuple[str, ...] = ()
    """Every agent in it since it was last rinsed out; no undo of a fill clears it."""
    rinsed_at: datetime | None = None
    """When it was last rinsed out; None: never on record."""


@dataclass(frozen=True, slots=True)
class Draw:
    """One fill's share of a stock."""

    at: datetime
    amount: Amount


@dataclass(frozen=True, slots=True)
class Drawn:
    """What was drawn from one stock since keeping.toml last said how much is left."""

    left: Amount
    """What keeping.toml said; another figure there starts a new count."""
    draws: tuple[Draw, ...] = ()
    """The latest of them, oldest first."""
    before: Amount | None = None
    """What was drawn earlier than these, all together; None: nothing."""


@dataclass(frozen=True, slots=True)
class Rinse:
    """A splash being rinsed under running water."""

    place: str
    victim: str
    began: datetime
    seconds: float
    by_boot: Counted | None = None
    """As a hold's."""


@dataclass(frozen=True, slots=True)
class Loose:
    """An animal that got out and isn't found yet."""

    enclosure: str
    """Empty: not said whose home it is."""
    since: datetime


@dataclass(frozen=True, slots=True)
class TubUse:
    """The latest use of a waiting tub."""

    tub: str
    enclosure: str
    group: str
    since: datetime
    until: datetime | None = None
    """When its animal went back; None: it waits there still."""
    cleaned: bool = False
    """Washed and disinfected since."""


@dataclass(frozen=True, slots=True)
class GroupNow:
    """The group that an animal was moved to by word of mouth."""

    group: str
    was: str
    """What keeping.toml said then."""
    since: datetime
    organism: str | None = None


@dataclass(frozen=True, slots=True)
class Restart:
    """The day from which a quarantine counts again."""

    since: datetime
    why: str
    """As in `QuarantineRestarted`."""


@dataclass(frozen=True, slots=True)
class SprayerNow:
    """What one stroke of a bottle's trigger lays down, as the keeper measured it."""

    ml_a_stroke: float
    was: float | None
    """What keeping.toml said then."""


@dataclass(frozen=True, slots=True)
class HabitNow:
    """A habit that was set by word of mouth."""

    value: str
    was: str
    """What keeping.toml said then."""


@dataclass(frozen=True, slots=True)
class ItemTimer:
    """A bowl, branch or cloth being soaked, boiled, baked or washed."""

    item: str
    way: str
    began: datetime
    seconds: float
    enclosure: str = ""


@dataclass(frozen=True, slots=True)
class Deed:
    """One thing that a turn recorded, for saying what an undo took back."""

    event: str
    """Name of the event's class."""
    thing: str = ""
    """The enclosure or bottle."""
    step: str = ""


@dataclass(frozen=True, slots=True)
class PastTurn:
    """A turn that recorded something and isn't undone."""

    turn: str
    at: datetime
    deeds: tuple[Deed, ...]


@dataclass(frozen=True, slots=True)
class State:
    """Everything the record amounts to."""

    rounds: Mapping[str, Round] = field(default_factory=dict)
    """The latest round of each enclosure."""
    surfaces: Mapping[str, tuple[Touch, ...]] = field(default_factory=dict)
    """Agents on each enclosure's surface; no restart or undo clears it."""
    unknown_mixes: tuple[str, ...] = ()
    """Bottles that hold an unknown mix."""
    chores: Mapping[str, Mapping[str, datetime]] = field(default_factory=dict)
    """When each chore of each enclosure was last done; a finished clean counts as the deep clean."""
    bottles: Mapping[str, Holds] = field(default_factory=dict)
    """What each bottle on record holds and held."""
    drawn: Mapping[str, Drawn] = field(default_factory=dict)
    """What was drawn from each stock that keeping.toml gives an amount of."""
    rinses: tuple[Rinse, ...] = ()
    """Splashes being rinsed; the last of each place."""
    loose: tuple[Loose, ...] = ()
    """Animals that got out."""
    tubs: Mapping[str, TubUse] = field(default_factory=dict)
    """The latest use of each waiting tub."""
    groups: Mapping[str, GroupNow] = field(default_factory=dict)
    """Groups changed by word of mouth, by enclosure; `as_recorded` lays them over keeping.toml."""
    restarts: Mapping[str, Restart] = field(default_factory=dict)
    """Quarantines that began again, by enclosure; the latest of each."""
    sprayers: Mapping[str, SprayerNow] = field(default_factory=dict)
    """Strokes measured by the keeper, by bottle; `as_recorded` lays them over keeping.toml."""
    habits: Mapping[str, HabitNow] = field(default_factory=dict)
    """Habits set by word of mouth, by their key."""
    items: tuple[ItemTimer, ...] = ()
    """Items being soaked, boiled, baked or washed; the last of each."""
    turns: tuple[PastTurn, ...] = ()
    """The latest turns that can be undone, oldest first."""
    last_at: datetime | None = None
    """When the last event was recorded."""
    clock_offset_s: float | None = None
    """What the wall's clock was ahead of the computer's own count when they last parted."""
    parting: Parting | None = None
    """The clocks have parted, and it isn't settled which is true."""
