"""Fills told by two volumes: "24 mils of bleach in 726 of water", "12.5 mils of concentrate in half a litre"."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from assistant.contract import Reading
from assistant.core.quantities.amounts import Amount, SaidRatio
from assistant.core.quantities.units import in_ml


def as_one_mix(reading: Reading) -> Reading:
    """The same, with so much in so much as a mix and its whole; as it stands where it isn't plain which is which.

    What it went into is all of it, unless that was said to be water.
    """
    slots = reading.slots
    if len(slots.volumes) != 2 or len(slots.roles) != 2 or slots.mixes:
        return reading
    at = _concentrate(reading)
    if at is None:
        return reading
    part, other = in_ml(slots.volumes[at]), in_ml(slots.volumes[1 - at])
    if part >= other:
        return reading
    whole = part + other if slots.roles[1 - at] == "water" else other
    mix = SaidRatio(Fraction(1), whole / part, "in")
    return replace(reading, slots=replace(slots, mixes=(mix,), volumes=(Amount(whole, "mL"),), roles=("total",)))


def _concentrate(reading: Reading) -> int | None:
    """Which of the two is the concentrate: said to be, else the first where nothing is said of either."""
    roles = reading.slots.roles
    if roles.count("product") == 1:
        return roles.index("product")
    return 0 if roles[0] == "" and roles[1] in ("", "water", "total") else None
