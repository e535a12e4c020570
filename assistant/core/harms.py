"""The words by which harm is told of: where it got to, whom it hit, what is asked of it afterwards."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Literal, TypeAlias

Harm: TypeAlias = Literal["splash", "wound", "escape", "spill"]
HARMS: tuple[Harm, ...] = ("splash", "wound", "escape", "spill")
"""The questions that are harm; in this order the learned weights have them."""
ANSWERED_AT_ONCE = (*HARMS, "time_left")
"""Answered whatever the tool is asking: harm, and a look at the clocks."""
KEEPS_WAITING = (*ANSWERED_AT_ONCE, "hush", "slower")
"""What uses no question of the tool's up: the same, and a word about the voice."""
OF_SOMETHING_ELSE = ("splash", "spill", "together")
"""Alarms right after which "still in there" and "false alarm" are of them, and neither of a clean nor an escape."""
Place: TypeAlias = Literal["eye", "skin", "mouth", "lungs"]
Victim: TypeAlias = Literal["person", "animal", "either"]
""" "either": only he or she was said, and nothing tells whether a person or an animal is meant."""
AskedOfHarm: TypeAlias = Literal[
    "again", "give", "lens", "stop", "still", "number", "collapsed", "onto it", "over", "if", "fire", "bare", "help"
]
"""What is asked or told besides: all of it again, something by mouth, a lens, to stop rinsing, what if it goes on, a
number, that somebody collapsed, a product onto it, that the rinse is over or was a false alarm, what if it happened,
that something burns, a bare "rinsed", "done" that may be of the clean, or help, with nothing told besides."""

FUMES_LAST = timedelta(hours=12)
"""So long after fumes or a gas "may I go back in?" is about the room. Chosen: a working day and its evening."""
SWALLOWED_LASTS = timedelta(hours=12)
"""So long after something was swallowed "she's being sick" is about that. Chosen, as above."""
HARM_LASTS = timedelta(hours=1)
"""So long "he's drooling" and "in her eyes" go on from the harm told of; first-aid-eye-urgent has the same hour."""


@dataclass(frozen=True, slots=True)
class HarmTold:
    """A harm that was told of in this sitting."""

    place: Place
    victim: Victim
    at: datetime
    gas: bool = False
    """Agents that make gas were said to have met."""


def gas_or_fumes(told: tuple[HarmTold, ...], now: datetime) -> HarmTold | None:
    """What went wrong with the air of the room in the last hours, a gas before plain fumes; None: nothing."""
    recent = [harm for harm in told if harm.place == "lungs" and now - harm.at <= FUMES_LAST]
    return max(recent, key=lambda harm: (harm.gas, harm.at), default=None)


def latest(told: tuple[HarmTold, ...], now: datetime) -> HarmTold | None:
    """The harm last told of, while it is recent."""
    return told[-1] if told and now - told[-1].at <= HARM_LASTS else None
