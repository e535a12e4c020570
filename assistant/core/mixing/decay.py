"""How bleach weakens on the shelf: the rate law of the literature, and what of it a dose may lean on.

Undiluted bleach only. How long a mixed bottle keeps is another question with other sources.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from fractions import Fraction
from math import exp, log10
from typing import Literal, TypeAlias

from assistant.core.facts import Facts
from assistant.core.household import Stock
from assistant.core.mixing.chlorine import available_chlorine
from assistant.core.quantities.errors import OutOfRange
from assistant.core.quantities.units import convert

KELVIN = 273.15
SECONDS_A_DAY = 86_400

AgeVerdict: TypeAlias = Literal[
    "no date",  # nothing is known of its age
    "not yet made",  # its date lies ahead
    "no temperature",  # how warm it was kept isn't known, so its loss isn't either
    "corrected",  # within the law's range and the limits below: doses in percent or ppm are raised for it
    "too weak",  # more is lost than a dose may be raised for: buy fresh
    "too old",  # past the age up to which a dose is raised: buy fresh
    "outside the law",  # the law doesn't hold for its strength or temperature: buy fresh
]
BUY_FRESH: tuple[AgeVerdict, ...] = ("too weak", "too old", "outside the law")


@dataclass(frozen=True, slots=True)
class Age:
    """What is known of a stock's age."""

    verdict: AgeVerdict
    days: int | None = None
    left: float | None = None
    """Fraction of its strength left; None where it can't be known."""

    @property
    def correction(self) -> Fraction:
        """What a percent or ppm dose takes the stock's strength times; 1 where it is not corrected."""
        return Fraction(self.left) if self.verdict == "corrected" and self.left is not None else Fraction(1)


@dataclass(frozen=True, slots=True)
class Kept:
    """A time that a stock was kept so warm."""

    degrees: float
    """Degrees Celsius."""
    days: float
    """0 or more."""


def fraction_left(g_per_l: float, degrees: float, days: float, facts: Facts) -> float:
    """What is left of a bleach's strength, kept at one temperature.

    As `fraction_left_after`, for one time.
    """
    return fraction_left_after(g_per_l, (Kept(degrees, days),), facts)


def fraction_left_after(g_per_l: float, kept: Sequence[Kept], facts: Facts) -> float:
    """What is left of a bleach's strength, after times at temperatures of their own.

    Second order: C = C0 / (1 + C0 times the sum of k t), with log10 k = 0.149 mu + log10(A T exp(-E/RT) exp(S/R)). The
    ionic strength mu is taken as the hypochlorite, as much salt again, and the excess caustic; it stays the same as the
    bleach decays, so the order of the times doesn't matter.

    g_per_l: available chlorine when made, in g/L.
    kept: since it was made.
    Gives: above 0, at most 1.
    Fails: OutOfRange outside the range that the law was fitted on.
    Valid: 0.7 to 3 mol/L of hypochlorite when made, 15 to 55 degC, caustic, no metals, in the dark.
    Source: bleach-age-law and its range; the integral is from memory (bleach-age-second-order).
    """
    molar = g_per_l / float(facts["mixing-chlorine-masses"].value[1])
    low, high = facts["bleach-age-range-strength"].value
    if not low <= molar <= high:
        raise OutOfRange("the hypochlorite", f"{molar:.2f} mol/L", f"{low} to {high} mol/L")
    lost = sum(_rate(molar, one.degrees, facts) * _seconds(one.days) for one in kept)
    return float(1 / (1 + molar * lost))


def _rate(molar: float, degrees: float, facts: Facts) -> float:
    """k in L/(mol s)."""
    law = facts["bleach-age-law"].value
    cold, warm = facts["bleach-age-range-warmth"].value
    if not cold <= degrees <= warm:
        raise OutOfRange("the temperature", f"{degrees:g} degC", f"{cold} to {warm} degC")
    kelvin = degrees + KELVIN
    rate = law["factor"] * kelvin * exp(-law["enthalpy"] / (law["gas"] * kelvin)) * exp(law["entropy"] / law["gas"])
    return float(10 ** (law["salt"] * (2 * molar + _caustic(facts)) + log10(rate)))


def _seconds(days: float) -> float:
    if days < 0:
        raise OutOfRange("the age", f"{days:g} days", "0 or more days")
    return days * SECONDS_A_DAY


def age_of(stock: Stock, today: date, facts: Facts) -> Age:
    """What is known of a bleach's age, and whether a dose may be raised for it.

    stock: of sodium hypochlorite, its strength known. A basis that isn't known counts by the convention.
    Gives: at 80 percent left or more, a year old or less, and within the law's range, "corrected"; else why not.
    Source: `fraction_left`; the limits: bleach-age-least-left, bleach-age-oldest.
    """
    if stock.made is None or stock.strength is None:
        return Age("no date")
    days = (today - stock.made).days
    if days < 0:
        return Age("not yet made", days)
    if days > facts["bleach-age-oldest"].value:
        return Age("too old", days)
    if stock.kept_at is None:
        return Age("no temperature", days)
    chlorine = available_chlorine(stock.strength.amount, stock.basis, facts)
    degrees = convert(stock.kept_at, "degC").amount
    try:
        left = fraction_left(float(chlorine.ppm) / 1000, float(degrees), days, facts)
    except OutOfRange:
        return Age("outside the law", days)
    weak = left < float(facts["bleach-age-least-left"].value) / 100
    return Age("too weak" if weak else "corrected", days, left)


def _caustic(facts: Facts) -> float:
    """Excess caustic in mol/L, from the share by weight that is published."""
    percent, g_per_mol, g_per_l = facts["bleach-age-caustic"].value
    return float(percent / 100 * g_per_l / g_per_mol)
