"""Does a claimed step fit the round? "Washed", "sprayed", "rinsed": each is judged before it may be recorded.

Only the order and the clocks are judged here; whether agents may meet is `together`, and what to say is the answer's.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import Literal, TypeAlias

from assistant.core.record.state import Round
from assistant.core.round.gate import may_go_back
from assistant.core.round.rounds import (
    STEPS,
    airing_left_s,
    gap_before,
    hold_is_running,
    hold_is_served,
    hold_left_s,
    is_served,
)

Fit: TypeAlias = Literal[
    "fits",  # it may be recorded
    "already",  # it is on record
    "not needed",  # this round doesn't take it; noted, no harm
    "gap",  # a step before it is missing
    "early",  # its clock still runs
    "smells",  # aired by the clock, but a smell is on record
    "vouch",  # the wet time is over; did it stay wet?
    "mid-hold",  # a later step while the wet time runs: then it didn't stay wet, or it wasn't done
    "no figure",  # no wet time is known, so it can't be served
    "too soon back",  # the animal was put back before the round was over
]


@dataclass(frozen=True, slots=True)
class Judgement:
    """How a claimed step fits."""

    fit: Fit
    step: str
    gap: str = ""
    """For "gap", "mid-hold" and "vouch": the step before it that is missing."""
    left_s: float | None = None
    """For "early" and "mid-hold": seconds still to come."""


def judge(round_: Round, step: str, now: datetime, *, stayed_wet: bool | None = None) -> Judgement:
    """How one claimed step fits an open round at this moment.

    step: from `rounds.STEPS`.
    stayed_wet: what the keeper said of the surface, in the same breath or just before; None: nothing.
    """
    if step == "return":
        blocked_by = may_go_back(round_, now).blocked_by  # what was only remarked is for the keeper's eyes
        return Judgement("fits" if not blocked_by else "too soon back", step)
    if step == "hold":
        return _judge_hold(round_, now, stayed_wet)
    if _comes_after_hold(step) and hold_is_running(round_, now):
        left = None if round_.hold is None else hold_left_s(round_.hold, now)
        return Judgement("no figure" if left is None else "mid-hold", step, gap="hold", left_s=left)
    if step == "air" and round_.smells:
        return Judgement("smells", step, left_s=airing_left_s(round_, now))
    if step not in round_.steps:
        return Judgement("not needed", step)
    gap = gap_before(round_, step, now)
    if step in round_.done and step != "apply":
        gap = None  # done again, whatever has come open before it: the animal put back doesn't unsay soap or water
    if gap == "hold" and _only_needs_vouching(round_, now):
        return Judgement("fits" if stayed_wet else "vouch", step, gap="hold")
    if gap is not None:
        return Judgement("gap", step, gap=gap)
    if step == "air":
        left = airing_left_s(round_, now)
        return Judgement("fits", step) if left == 0 else Judgement("early", step, left_s=left)
    # Spraying, rinsing and drying can be done again, and count from now; soap again undoes whatever came after it.
    again = step in ("apply", "rinse", "dry") or (step == "wash" and bool({"apply", "rinse", "dry"} & set(round_.done)))
    if step in round_.done and not again:
        return Judgement("already", step)
    return Judgement("fits", step)


def _judge_hold(round_: Round, now: datetime, stayed_wet: bool | None) -> Judgement:
    if "hold" not in round_.steps:
        return Judgement("not needed", "hold")
    if "hold" in round_.done:
        return Judgement("already", "hold")
    gap = gap_before(round_, "hold", now)
    if gap is not None:
        return Judgement("gap", "hold", gap=gap)
    left = None if round_.hold is None else hold_left_s(round_.hold, now)
    if left is None:
        return Judgement("no figure", "hold")
    if left > 0:
        return Judgement("early", "hold", left_s=left)
    return Judgement("fits" if stayed_wet else "vouch", "hold")


def _only_needs_vouching(round_: Round, now: datetime) -> bool:
    hold = round_.hold
    return hold is not None and hold_left_s(hold, now) == 0 and not hold_is_served(round_, now)


def _comes_after_hold(step: str) -> bool:
    return STEPS.index(step) > STEPS.index("hold")


def by_hand(round_: Round, now: datetime) -> str | None:
    """The first outstanding step that the keeper can do now, not wait for; None: only clocks are left before it."""
    for step in round_.steps:
        if step == "hold" and not is_served(round_, step, now):
            return None
        if step not in ("hold", "air", "return") and not is_served(round_, step, now):
            return step
    return None
