"""One enclosure's round: its steps, and which of them are served at a given moment.

A step that the keeper does is done when it is on record; the hold and the airing are served by their clocks. What is
required was fixed when the round began (`events.RoundStarted`). Whether the animal may go back is `gate`.
"""

from __future__ import annotations

from datetime import datetime, timedelta

from assistant.core.state import Hold, Round

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
    return max(0.0, hold.seconds - elapsed_s(hold.began, now))


def hold_is_running(round_: Round, now: datetime) -> bool:
    """True between spraying and the end of the wet time."""
    if round_.hold is None or "hold" in round_.done:
        return False
    left = hold_left_s(round_.hold, now)
    return left is None or left > 0


def hold_is_served(round_: Round, now: datetime) -> bool:
    """True once the wet time is over and, where it is in doubt, the keeper vouched that it stayed wet."""
    if "hold" in round_.done:
        return True
    hold = round_.hold
    if hold is None or hold_left_s(hold, now) != 0:
        return False
    return hold.vouched or not hold.doubted


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

    Each opening said sets the rate from then on; before the first, the room's usual rate holds.
    """
    began = airing_began(round_)
    if began is None:
        return None
    due = round_.air_changes
    at, rate = began, round_.air_changes_per_hour
    for opening in round_.openings:
        if opening.at > at:
            changes = rate * (opening.at - at).total_seconds() / 3600
            if changes >= due:
                break
            due -= changes
            at = opening.at
        rate = opening.air_changes_per_hour
    return at + timedelta(hours=due / rate)


def airing_left_s(round_: Round, now: datetime) -> float | None:
    """Seconds of airing still to come, 0 or more; None: not begun."""
    began, ends = airing_began(round_), airing_ends(round_)
    if began is None or ends is None:
        return None
    return (ends - max(now, began)).total_seconds() if ends > max(now, began) else 0.0


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
