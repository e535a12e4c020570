"""Available chlorine: what a bleach's percentage is in parts per million (milligrams of chlorine a litre).

Two ways, kept apart by name: exact, from the basis of the percentage; and the public-health convention, where only
"6 percent bleach" is known. Ageing is `decay`'s, mixing is `dilution`'s.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal, TypeAlias

from assistant.core.facts import Facts
from assistant.core.household import Basis
from assistant.core.quantities.errors import OutOfRange

Way: TypeAlias = Literal["convention", "weight in volume", "weight in weight"]


@dataclass(frozen=True, slots=True)
class Chlorine:
    """Available chlorine of a stock, and how it was worked out."""

    ppm: Fraction
    """Milligrams of available chlorine a litre."""
    way: Way
    facts: tuple[str, ...]
    """Ids of the facts it rests on."""
    off: tuple[Fraction, Fraction] | None = None
    """By the convention: how far the exact ways lie from it, as shares, by volume and by weight; None: not known."""


def available_chlorine(percent: Fraction, basis: Basis | None, facts: Facts) -> Chlorine:
    """Available chlorine of a hypochlorite of that percentage.

    By weight in volume it is the ratio of the masses of chlorine and hypochlorite; by weight it also takes the density,
    which is read off a straight line from water to a published value. Without a basis, by volume, or past the line's
    end, the convention: 1 percent is 10,000 ppm.

    percent: sodium hypochlorite, above 0 and at most 100.
    basis: "w/w", "w/v", or anything else where it isn't known.
    Gives: ppm in mg/L, exact arithmetic on the facts' figures.
    Fails: OutOfRange.
    Valid: by weight up to 150 g/L of available chlorine (the facts' figure); the density line within about 1 percent.
    Source: mixing-chlorine-masses, mixing-chlorine-density, mixing-chlorine-convention.
    """
    if not 0 < percent <= 100:
        raise OutOfRange("the strength", percent, "above 0 and at most 100 percent")
    if basis == "w/v":
        return Chlorine(percent * _MG_A_LITRE * _chlorine_share(facts), "weight in volume", ("mixing-chlorine-masses",))
    if basis == "w/w":
        by_weight = _by_weight(percent, facts)
        if by_weight is not None:
            return by_weight
    convention = facts["mixing-chlorine-convention"]
    ppm = percent * convention.exact()
    return Chlorine(ppm, "convention", (convention.id,), _off(percent, ppm, facts))


def _off(percent: Fraction, ppm: Fraction, facts: Facts) -> tuple[Fraction, Fraction] | None:
    """How far the percentage's exact meanings, by volume and by weight, lie from the convention's ppm."""
    by_weight = _by_weight(percent, facts)
    if by_weight is None:
        return None
    return percent * _MG_A_LITRE * _chlorine_share(facts) / ppm - 1, by_weight.ppm / ppm - 1


def _by_weight(percent: Fraction, facts: Facts) -> Chlorine | None:
    """With the density d = 1 + k c at c g/L available chlorine, c = a d gives c = a / (1 - k a); None: past its end."""
    density = facts["mixing-chlorine-density"]
    at_g_per_l, relative = (Fraction(str(value)) for value in density.value)
    slope = (relative - 1) / at_g_per_l
    at_unit_density = percent * _MG_A_LITRE * _chlorine_share(facts) / 1000
    left = 1 - slope * at_unit_density
    g_per_l = at_unit_density / left if left > 0 else None
    if g_per_l is None or g_per_l > facts["mixing-chlorine-density-end"].exact():
        return None
    return Chlorine(g_per_l * 1000, "weight in weight", ("mixing-chlorine-masses", density.id))


_MG_A_LITRE = 10_000
"""1 g in 100 mL, in mg/L: the definition of percent weight in volume."""


def _chlorine_share(facts: Facts) -> Fraction:
    """Mass of available chlorine for each of sodium hypochlorite."""
    hypochlorite, chlorine = (Fraction(str(value)) for value in facts["mixing-chlorine-masses"].value)
    return chlorine / hypochlorite
