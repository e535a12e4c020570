"""The keeper's chores: which there are, when each was last done, when it is due again, and in what order to go round.

A chore on record never makes anything ready: that is the gate's, on the steps of a clean.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import datetime, timedelta

from assistant.core.household import Enclosure
from assistant.core.quantities.units import convert
from assistant.core.record.state import State

CHORES = ("water", "spot clean", "deep clean")
"""Every chore that a schedule can hold, the quickest first."""

CLEANS = ("spot clean", "deep clean")
"""Chores that clean an enclosure: fresh water doesn't."""

GROUPS = ("healthy", "new", "sick")
"""In the order of a day's work. Source: order-quarantine-last; sick last of all is common practice."""

_WET = {"all": 0, "part": 1, "dry": 2}
"""Homes of water animals go first in their group, before hands and tools carry product. Common practice, no source."""


@dataclass(frozen=True, slots=True)
class Due:
    """One chore of one enclosure, and when it is due."""

    enclosure: Enclosure
    chore: str
    last: datetime | None
    """None: never on record."""
    due: datetime | None
    """None: never on record, so it counts as due now."""
    overdue_days: int | None
    """Whole days since the day it was due; 0 on the day; below 0 still to come; None: never on record."""

    @property
    def is_due(self) -> bool:
        return self.overdue_days is None or self.overdue_days >= 0


def with_chore(state: State, enclosure: str, chore: str, done_at: datetime) -> State:
    """The state once a chore was done; one told later of an earlier day takes nothing back."""
    known = state.chores.get(enclosure, {})
    last = known.get(chore)
    if last is not None and last >= done_at:
        return state
    return replace(state, chores={**state.chores, enclosure: {**known, chore: done_at}})


def days_between(home: Enclosure) -> Mapping[str, float]:
    """How many days lie between two of each chore, of those that keeping.toml sets."""
    every = {"water": home.water_every, "spot clean": home.spot_clean_every, "deep clean": home.deep_clean_every}
    return {chore: float(convert(amount, "d").amount) for chore, amount in every.items() if amount is not None}


def due_of(home: Enclosure, state: State, now: datetime) -> tuple[Due, ...]:
    """When each of an enclosure's chores is due, by the keeper's intervals and by calendar days.

    now: aware; its zone is the keeper's, by which a day ends.
    Source: arithmetic; the intervals are the keeper's.
    """
    found = []
    for chore, days in days_between(home).items():
        last = state.chores.get(home.name, {}).get(chore)
        if last is None:
            found.append(Due(home, chore, None, None, None))
            continue
        due = last.astimezone(now.tzinfo) + timedelta(days=days)
        found.append(Due(home, chore, last, due, (now.date() - due.date()).days))
    return tuple(found)


def missed_first(dues: tuple[Due, ...]) -> tuple[Due, ...]:
    """Those missed longest first, then those never on record, then by when they come."""

    def place(one: Due) -> tuple[int, int, int]:
        days = one.overdue_days
        kind = 1 if days is None else 0 if days > 0 else 2
        return kind, -(days or 0), CHORES.index(one.chore)

    return tuple(sorted(dues, key=place))


def in_working_order(homes: tuple[Enclosure, ...]) -> tuple[Enclosure, ...]:
    """The order to go round in: healthy first, then new, sick last; water homes first in each, racks together.

    Source: order-quarantine-last, order-sick-last, order-water-first.
    """
    racks = {home.rack: place for place, home in reversed(tuple(enumerate(homes)))}
    return tuple(sorted(homes, key=lambda home: (GROUPS.index(home.group), _WET[home.water], racks[home.rack])))
