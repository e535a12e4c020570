"""Two clocks: the wall's, which can be set, and the computer's own count of seconds since it was started.

When they part, an open wet time, an airing and a splash being rinsed count whichever of the two gives less, until the
keeper says how long it has really been. The wall's count needs nothing kept: it is `began` until now. The other is kept
as so much counted by then, from the first parting on. Shells read the clocks; here are only the numbers.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from typing import Literal, TypeAlias

from assistant.core.record.events import ClocksSettled
from assistant.core.record.state import Counted, Hold, Parting, Rinse, Round, State
from assistant.core.round.rounds import (
    air_changes_by_boot,
    air_changes_by_wall,
    airing_began,
    airing_left_s,
    hold_elapsed_by_boot_s,
    hold_elapsed_by_wall_s,
    is_open,
)

PARTED_S = 5.0
"""Seconds by which the clocks may differ before it counts as parted."""
WORTH_ASKING_S = 60.0
"""Seconds between the two counts of a running clock from which on the keeper is asked; less is simply not counted."""

Running: TypeAlias = Literal["hold", "air", "rinse"]


@dataclass(frozen=True, slots=True)
class Difference:
    """A running clock that the two counts differ on."""

    thing: str
    """The enclosure, or the place being rinsed."""
    step: Running
    less_s: float
    more_s: float
    """Seconds since it began, by the one count and by the other."""


def parted(state: State, ahead_s: float, offset_s: float, at: datetime) -> State:
    """The state after the wall's clock moved by `ahead_s` against the other one, to the time `at`.

    offset_s: what the clocks differ by now; one that is on record already was told by another shell, and is the same.
    """
    known = state.clock_offset_s
    if known is not None and abs(offset_s - known) <= PARTED_S:
        return state
    was = at - timedelta(seconds=ahead_s)
    rounds = {name: _round_parted(round_, was, at) if is_open(round_) else round_ for name, round_ in _each(state)}
    rinses = tuple(replace(rinse, by_boot=_rinse_counted(rinse, was, at)) for rinse in state.rinses)
    before = state.parting.ahead_s if state.parting is not None else 0.0
    parting = Parting(at, before + ahead_s)
    return replace(state, rounds=rounds, rinses=rinses, clock_offset_s=offset_s, parting=parting)


def settled(state: State, event: ClocksSettled, at: datetime) -> State:
    """The state after the keeper said of one running clock whether the longer of its two counts is the true one.

    Only of that one: clocks that parted twice can have made the longer count of another the false one. And only if they
    haven't parted again since it was asked.
    """
    if event.offset_s != state.clock_offset_s:
        return state
    pick: Callable[[float, float], float] = max if event.passed else min
    rounds = dict(state.rounds)
    if event.step == "rinse":
        rinses = tuple(_rinse_settled(r, pick, at) if r.place == event.thing else r for r in state.rinses)
        state = replace(state, rinses=rinses)
    elif event.thing in rounds:
        settle = _hold_settled if event.step == "hold" else _airing_settled
        rounds[event.thing] = settle(rounds[event.thing], pick, at)
        state = replace(state, rounds=rounds)
    return state if _any_by_boot(state) else replace(state, parting=None)


def _any_by_boot(state: State) -> bool:
    rounds = [round_ for round_ in state.rounds.values() if is_open(round_)]
    return any(rinse.by_boot for rinse in state.rinses) or any(
        round_.air_by_boot or (round_.hold is not None and round_.hold.by_boot) for round_ in rounds
    )


def differences(state: State, now: datetime) -> tuple[Difference, ...]:
    """Every running clock that the two counts differ on by enough to ask, the largest difference first."""
    if state.parting is None:
        return ()
    found = []
    for round_ in state.rounds.values():
        if is_open(round_):
            found += _of_hold(round_, now) + _of_airing(round_, now)
    for rinse in state.rinses:
        if rinse.by_boot is not None:
            found += _difference(rinse.place, "rinse", _rinse_spans(rinse, now))
    return tuple(sorted(found, key=lambda d: d.less_s - d.more_s))


def _each(state: State) -> tuple[tuple[str, Round], ...]:
    return tuple(state.rounds.items())


# ---------------------------------------------------------------- when they part


def _round_parted(round_: Round, was: datetime, at: datetime) -> Round:
    hold = round_.hold
    if hold is not None and "hold" not in round_.done:
        hold = replace(hold, by_boot=Counted(hold.began, at, hold_elapsed_by_boot_s(hold, was)))
    began, air = airing_began(round_), round_.air_by_boot
    if began is not None:
        air = Counted(began, at, air_changes_by_boot(round_, was), len(round_.openings))
    return replace(round_, hold=hold, air_by_boot=air)


def _rinse_counted(rinse: Rinse, was: datetime, at: datetime) -> Counted:
    return Counted(rinse.began, at, _rinse_spans(rinse, was)[1])


def _rinse_spans(rinse: Rinse, now: datetime) -> tuple[float, float]:
    """By the wall's clock, and by the other."""
    by_wall = max(0.0, (now - rinse.began).total_seconds())
    return by_wall, rinse.by_boot.amount_at(now) if rinse.by_boot is not None else by_wall


# ---------------------------------------------------------------- when the keeper says which


def _hold_settled(round_: Round, pick: Callable[[float, float], float], at: datetime) -> Round:
    hold = round_.hold
    if hold is None or hold.by_boot is None:
        return round_
    seconds = pick(hold_elapsed_by_wall_s(hold, at), hold_elapsed_by_boot_s(hold, at))
    return replace(round_, hold=replace(hold, began=at - timedelta(seconds=seconds), by_boot=None))


def _airing_settled(round_: Round, pick: Callable[[float, float], float], at: datetime) -> Round:
    began = airing_began(round_)
    if began is None or round_.air_by_boot is None:
        return round_
    changes = pick(air_changes_by_wall(round_, at), air_changes_by_boot(round_, at))
    return replace(round_, air_from=Counted(began, at, changes, len(round_.openings)), air_by_boot=None)


def _rinse_settled(rinse: Rinse, pick: Callable[[float, float], float], at: datetime) -> Rinse:
    if rinse.by_boot is None:
        return rinse
    return replace(rinse, began=at - timedelta(seconds=pick(*_rinse_spans(rinse, at))), by_boot=None)


# ---------------------------------------------------------------- what they differ by


def _of_hold(round_: Round, now: datetime) -> list[Difference]:
    hold: Hold | None = round_.hold
    if hold is None or hold.by_boot is None or "hold" in round_.done:
        return []
    return _difference(round_.enclosure, "hold", (hold_elapsed_by_wall_s(hold, now), hold_elapsed_by_boot_s(hold, now)))


def _of_airing(round_: Round, now: datetime) -> list[Difference]:
    if round_.air_by_boot is None or not airing_left_s(round_, now):
        return []
    rate = round_.openings[-1].air_changes_per_hour if round_.openings else round_.air_changes_per_hour
    changes = (air_changes_by_wall(round_, now), air_changes_by_boot(round_, now))
    by_wall, by_boot = (count / rate * 3600 for count in changes)
    return _difference(round_.enclosure, "air", (by_wall, by_boot))


def _difference(thing: str, step: Running, spans: tuple[float, float]) -> list[Difference]:
    less, more = min(spans), max(spans)
    return [Difference(thing, step, less, more)] if more - less > WORTH_ASKING_S else []
