"""The gate: may the animal go back, on the record alone, and what runs meanwhile.

Ready means that every step the round required is served, in order, as recorded. Unknown counts as not done, and
nothing here says "safe": the keeper's eyes, nose and hand decide.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Literal, TypeAlias

from assistant.core.record.state import Round, State
from assistant.core.round.rounds import (
    airing_ends,
    airing_left_s,
    hold_is_running,
    hold_left_s,
    is_open,
    outstanding,
    rinse_left_s,
)

ClaimMade: TypeAlias = Literal["disinfected_by_label", "disinfected_by_published", "cleaned_only"]


CLAIMS: Mapping[str, ClaimMade] = {"label": "disinfected_by_label", "published": "disinfected_by_published"}
"""What a served wet time amounts to, by what its figure rests on; on nothing, it was a clean."""


@dataclass(frozen=True, slots=True)
class Verdict:
    """Whether the animal may go back."""

    ready: bool
    blocked_by: tuple[str, ...]
    """Every outstanding step, in order, without `return`."""
    earliest: datetime | None
    """Not before then, by the clocks alone; None: no clock says so, or one can't be served."""
    claim: ClaimMade | None
    """What was done to the surface; None until the round is ready."""
    remarks: tuple[str, ...] = ()
    """With no step left: what was told of it and not understood, which has to be settled first."""


NO_ROUND = Verdict(False, (), None, None)
"""Nothing on record vouches for it."""


def may_go_back(round_: Round | None, now: datetime) -> Verdict:
    """The verdict on one enclosure's round."""
    if round_ is None or not is_open(round_):
        return NO_ROUND
    blocked_by = outstanding(round_, now)
    if blocked_by:
        return Verdict(False, blocked_by, _earliest(round_, blocked_by, now), None)
    if round_.remarks:
        return Verdict(False, (), None, None, round_.remarks)
    return Verdict(True, (), None, claim_of(round_))


def claim_of(round_: Round) -> ClaimMade:
    """What a finished round amounts to: a disinfection by the label or by published figures, or a clean."""
    if "hold" not in round_.steps or round_.basis not in CLAIMS:
        return "cleaned_only"
    return CLAIMS[round_.basis]


def _earliest(round_: Round, blocked_by: tuple[str, ...], now: datetime) -> datetime | None:
    """The soonest that the clocks allow, if every step by hand took no time at all."""
    earliest = now
    if "hold" in blocked_by:
        left = hold_left_s(round_.hold, now) if round_.hold is not None else round_.hold_s
        if left is None:
            return None
        earliest += timedelta(seconds=left)
    if "air" in blocked_by and "air" in round_.steps:
        running = airing_ends(round_) if "hold" not in blocked_by else None
        rate = round_.openings[-1].air_changes_per_hour if round_.openings else round_.air_changes_per_hour
        earliest = running if running is not None else earliest + timedelta(hours=round_.air_changes / rate)
    return earliest if earliest > now else None


# ---------------------------------------------------------------- clocks


@dataclass(frozen=True, slots=True)
class Timer:
    """A clock that runs."""

    enclosure: str | None
    """None: a splash being rinsed."""
    step: str
    """ "hold", "air", or the place being rinsed: "eye", "skin"."""
    seconds: float
    """Still to come, more than 0."""


DOING = {"soak": "soaking", "boil": "boiling", "bake": "baking", "wash hot": "washing"}
"""An item's way as what is being done to it."""


def timers(state: State, now: datetime) -> tuple[Timer, ...]:
    """Every running clock, the soonest to end first."""
    running = []
    for rinse in state.rinses:
        left = rinse_left_s(rinse, now)
        running.append(Timer(None, rinse.place, left))
    for item in state.items:
        left = item.seconds - max(0.0, (now - item.began).total_seconds())
        running.append(Timer(item.enclosure or None, f"{item.item} {DOING[item.way]}", left))
    for round_ in state.rounds.values():
        if not is_open(round_):
            continue
        if round_.hold is not None and round_.hold.seconds is not None and hold_is_running(round_, now):
            left = hold_left_s(round_.hold, now) or 0.0
            running.append(Timer(round_.enclosure, "hold", left))
        air_left = airing_left_s(round_, now)
        if air_left:
            running.append(Timer(round_.enclosure, "air", air_left))
    return tuple(sorted((t for t in running if t.seconds > 0), key=lambda t: (t.seconds, t.enclosure or "")))
