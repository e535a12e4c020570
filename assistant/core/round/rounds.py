"""One enclosure's round: its steps, and which of them are served at a given moment.

A step that the keeper does is done when it is on record; the hold and the airing are served by their clocks. What is
required was fixed when the round began (`events.RoundStarted`). Whether the animal may go back is `gate`.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime, timedelta

from assistant.core.record.state import Counted, Hold, Opening, Rinse, Round

STEPS: tuple[str, ...] = ("move out", "clear", "wash", "apply", "hold", "rinse", "dry", "air", "return")
"""Every step there is, in the order of a round. `wipe` is a way of doing `rinse`."""


def in_order(steps: frozenset[str]) -> tuple[str, ...]:
    """The same steps in the order of a round."""
    return tuple(step for step in STEPS if step in steps)


def is_open(round_: Round | None) -> bool:
    """True while the animal hasn't been put back on record."""
    return round_ is not None and "return" not in round_.done


def elapsed_s(since: datetime, now: datetime) -> float:
    """Seconds from then to now; a clock set back counts 0."""
    return max(0.0, (now - since).total_seconds())


def hold_left_s(hold: Hold, now: datetime) -> float | None:
    """Seconds of wet time still to come, 0 or more; None: no figure, so it can't be served."""
    if hold.seconds is None:
        return None
    return max(0.0, hold.seconds - hold_elapsed_s(hold, now))


def hold_elapsed_s(hold: Hold, now: datetime) -> float:
    """Seconds that count for it: the smaller span, where the wall's and the computer's own clock have parted."""
    return min(hold_elapsed_by_wall_s(hold, now), hold_elapsed_by_boot_s(hold, now))


def hold_elapsed_by_wall_s(hold: Hold, now: datetime) -> float:
    """Seconds since it began by the wall's clock; one set back behind that counts 0."""
    return elapsed_s(hold.began, now)


def hold_elapsed_by_boot_s(hold: Hold, now: datetime) -> float:
    """Seconds since it began by the computer's own count; as the wall's where they never parted."""
    return hold.by_boot.amount_at(now) if hold.by_boot is not None else elapsed_s(hold.began, now)


def hold_ends(hold: Hold) -> datetime | None:
    """When it will be over by both clocks; None: no figure."""
    if hold.seconds is None:
        return None
    ends = hold.began + timedelta(seconds=hold.seconds)
    if hold.by_boot is None:
        return ends
    return max(ends, hold.by_boot.at + timedelta(seconds=max(0.0, hold.seconds - hold.by_boot.amount)))


def hold_is_running(round_: Round, now: datetime) -> bool:
    """True between spraying and the end of the wet time."""
    if round_.hold is None or "hold" in round_.done:
        return False
    left = hold_left_s(round_.hold, now)
    return left is None or left > 0


def is_sprayed(round_: Round) -> bool:
    """Open, and its product is on record as on the surface."""
    return is_open(round_) and "apply" in round_.done


def a_hold_runs(rounds: Iterable[Round], now: datetime) -> bool:
    """True while the wet time of any open one runs."""
    return any(is_open(round_) and hold_is_running(round_, now) for round_ in rounds)


def a_surface_is_touched(rounds: Iterable[Round]) -> bool:
    """True while a product is or was on the surface of any open one."""
    return any(is_open(round_) and round_.touched for round_ in rounds)


def waits_on_hold(round_: Round | None) -> bool:
    """Sprayed, and the wet time not served yet, whether it still runs or waits to be vouched for."""
    return round_ is not None and is_open(round_) and round_.hold is not None and "hold" not in round_.done


def hold_is_over(round_: Round, now: datetime) -> bool:
    """True once a wet time that was begun has run out and isn't recorded as done: whether it stayed wet is open."""
    return round_.hold is not None and "hold" not in round_.done and not hold_is_running(round_, now)


def hold_is_served(round_: Round, now: datetime) -> bool:
    """True once the wet time is over and, where it is in doubt, the keeper vouched that it stayed wet."""
    if "hold" in round_.done:
        return True
    hold = round_.hold
    if hold is None or hold_left_s(hold, now) != 0:
        return False
    return hold.vouched or not hold.doubted


def rinse_left_s(rinse: Rinse, now: datetime) -> float:
    """Seconds that a splash is still to be rinsed, 0 or more."""
    counted = elapsed_s(rinse.began, now)
    if rinse.by_boot is not None:
        counted = min(counted, rinse.by_boot.amount_at(now))
    return max(0.0, rinse.seconds - counted)


def rinse_ends(rinse: Rinse) -> datetime:
    """When a splash will have been rinsed long enough by both clocks."""
    ends = rinse.began + timedelta(seconds=rinse.seconds)
    if rinse.by_boot is None:
        return ends
    return max(ends, rinse.by_boot.at + timedelta(seconds=max(0.0, rinse.seconds - rinse.by_boot.amount)))


def airing_began(round_: Round) -> datetime | None:
    """When the airing's clock began; None: not yet.

    From the first opening said or the rinse, whichever came later; when no opening was ever said, from dry.
    A round that takes no rinse airs from dry at the earliest.
    """
    if "air" not in round_.steps:
        return None
    if not round_.openings:
        return round_.first_dry
    wet_until = round_.done.get("rinse") if "rinse" in round_.steps else round_.first_dry
    return None if wet_until is None else max(wet_until, round_.openings[0].at)


def airing_ends(round_: Round) -> datetime | None:
    """When the airing will have brought its air changes, at the rates said so far; None: not begun.

    Each opening said sets the rate from then on; before the first, the room's usual rate holds. Where the wall's and
    the computer's own clock have parted, it is over when it is over by both.
    """
    began = airing_began(round_)
    if began is None:
        return None
    return max(_ends_from(round_, counted) for counted in _countings(round_, began))


def airing_left_s(round_: Round, now: datetime) -> float | None:
    """Seconds of airing still to come, 0 or more; None: not begun."""
    began = airing_began(round_)
    if began is None:
        return None
    left = ((_ends_from(round_, c) - max(now, c.at)).total_seconds() for c in _countings(round_, began))
    return max(0.0, *left)


def air_changes_by_wall(round_: Round, now: datetime) -> float:
    """Air changes so far by the wall's clock; 0 where the airing hasn't begun."""
    began = airing_began(round_)
    return 0.0 if began is None else _changes(round_, _countings(round_, began)[0], now)


def air_changes_by_boot(round_: Round, now: datetime) -> float:
    """Air changes so far by the computer's own count; as the wall's where they never parted."""
    began = airing_began(round_)
    return 0.0 if began is None else _changes(round_, _countings(round_, began)[-1], now)


def _countings(round_: Round, began: datetime) -> tuple[Counted, ...]:
    """From what the airing is counted on: by the wall's clock, and by the other where they have parted."""
    settled, by_boot = (
        counted if counted is not None and counted.since == began else None
        for counted in (round_.air_from, round_.air_by_boot)
    )
    by_wall = settled or Counted(began, began, 0.0)
    return (by_wall,) if by_boot is None else (by_wall, by_boot)


def _spells(round_: Round, counted: Counted) -> tuple[float, tuple[Opening, ...]]:
    """The rate at which it goes on from there, and the openings said after."""
    before, after = round_.openings[: counted.openings], round_.openings[counted.openings :]
    return (before[-1].air_changes_per_hour if before else round_.air_changes_per_hour), after


def _ends_from(round_: Round, counted: Counted) -> datetime:
    due, at = round_.air_changes - counted.amount, counted.at
    rate, openings = _spells(round_, counted)
    for opening in openings:
        if opening.at > at:
            changes = rate * (opening.at - at).total_seconds() / 3600
            if changes >= due:
                break
            due -= changes
            at = opening.at
        rate = opening.air_changes_per_hour
    return at + timedelta(hours=max(0.0, due) / rate)


def _changes(round_: Round, counted: Counted, now: datetime) -> float:
    changes, at = counted.amount, counted.at
    rate, openings = _spells(round_, counted)
    for opening in openings:
        if opening.at > at:
            changes += rate * elapsed_s(at, min(now, opening.at)) / 3600
            at = opening.at
        rate = opening.air_changes_per_hour
    return changes + rate * elapsed_s(at, now) / 3600


def is_served(round_: Round, step: str, now: datetime) -> bool:
    """True when that step of the round is done, or its clock has run out."""
    if step == "hold":
        return hold_is_served(round_, now)
    if step == "air":
        return not round_.smells and ("air" not in round_.steps or airing_left_s(round_, now) == 0)
    return step in round_.done


def outstanding(round_: Round, now: datetime) -> tuple[str, ...]:
    """Every step still to be served, in order, without `return`.

    A step counts only on the ones before it: after "it dried" everything from `apply` on is outstanding again, because
    the fold takes those steps off the round. A smell asks for airing even where the agent takes none.
    """
    steps = in_order(frozenset(round_.steps) | {"air"}) if round_.smells else round_.steps
    return tuple(step for step in steps if step != "return" and not is_served(round_, step, now))


def next_step(round_: Round, now: datetime) -> str:
    """The first step outstanding; `return` when none is."""
    left = outstanding(round_, now)
    return left[0] if left else "return"


def gap_before(round_: Round, step: str, now: datetime) -> str | None:
    """The first step before that one which isn't served; None: it may be done now."""
    before = STEPS[: STEPS.index(step)]
    return next((earlier for earlier in outstanding(round_, now) if earlier in before), None)
