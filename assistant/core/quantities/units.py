"""Units: the fixed list that replies use, what each measures, how it is spoken, and exact conversion.

US and imperial measures have names of their own throughout. Reading a unit out of text is `quantity`'s; percent and
ppm are strengths whose sizes depend on a convention, so turning one into the other is `chlorine`'s.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from typing import TYPE_CHECKING, Any, Literal, TypeAlias

from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.errors import WrongUnit

if TYPE_CHECKING:
    from pint import UnitRegistry

Dimension: TypeAlias = Literal["volume", "length", "area", "mass", "temperature", "time", "percent", "ppm"]
System: TypeAlias = Literal["metric", "US", "imperial"]


@dataclass(frozen=True, slots=True)
class Unit:
    """One unit of the list."""

    dimension: Dimension
    one: str
    """As spoken of one."""
    many: str
    symbol: str
    """What the definitions below call it."""
    system: System = "metric"


UNITS: Mapping[str, Unit] = {
    "mL": Unit("volume", "mil", "mils", "mL"),
    "cL": Unit("volume", "centilitre", "centilitres", "cL"),
    "dL": Unit("volume", "decilitre", "decilitres", "dL"),
    "L": Unit("volume", "litre", "litres", "L"),
    "cm^3": Unit("volume", "cubic centimetre", "cubic centimetres", "cubic_cm"),
    "m^3": Unit("volume", "cubic metre", "cubic metres", "cubic_m"),
    "ft^3": Unit("volume", "cubic foot", "cubic feet", "cubic_ft", "US"),
    "US gal": Unit("volume", "US gallon", "US gallons", "us_gal", "US"),
    "US qt": Unit("volume", "US quart", "US quarts", "us_qt", "US"),
    "US pt": Unit("volume", "US pint", "US pints", "us_pt", "US"),
    "US cup": Unit("volume", "cup", "cups", "us_cup", "US"),
    "US fl oz": Unit("volume", "US fluid ounce", "US fluid ounces", "us_floz", "US"),
    "tbsp": Unit("volume", "tablespoon", "tablespoons", "tbsp", "US"),
    "tsp": Unit("volume", "teaspoon", "teaspoons", "tsp", "US"),
    "imp gal": Unit("volume", "imperial gallon", "imperial gallons", "imp_gal", "imperial"),
    "imp qt": Unit("volume", "imperial quart", "imperial quarts", "imp_qt", "imperial"),
    "imp pt": Unit("volume", "imperial pint", "imperial pints", "imp_pt", "imperial"),
    "imp fl oz": Unit("volume", "imperial fluid ounce", "imperial fluid ounces", "imp_floz", "imperial"),
    "mm": Unit("length", "millimetre", "millimetres", "mm"),
    "cm": Unit("length", "centimetre", "centimetres", "cm"),
    "m": Unit("length", "metre", "metres", "m"),
    "in": Unit("length", "inch", "inches", "inch", "US"),
    "ft": Unit("length", "foot", "feet", "ft", "US"),
    "m^2": Unit("area", "square metre", "square metres", "square_m"),
    "g": Unit("mass", "gram", "grams", "g"),
    "kg": Unit("mass", "kilogram", "kilograms", "kg"),
    "degC": Unit("temperature", "degree", "degrees", "degC"),
    "degF": Unit("temperature", "degree Fahrenheit", "degrees Fahrenheit", "degF", "US"),
    "s": Unit("time", "second", "seconds", "s"),
    "min": Unit("time", "minute", "minutes", "min"),
    "h": Unit("time", "hour", "hours", "h"),
    "d": Unit("time", "day", "days", "d"),
    "week": Unit("time", "week", "weeks", "week"),
    "%": Unit("percent", "percent", "percent", "percent"),
    "ppm": Unit("ppm", "part per million", "parts per million", "ppm"),
}
"""Every unit by the name that replies give it."""

# All exact, by definition:
# - inch 25.4 mm: international yard and pound agreement (1959), carried in NIST Handbook 44, Appendix C.
# - US gallon 231 cubic inches = 3785.411784 mL, its 4 quarts, 8 pints, 16 cups, 128 fluid ounces, 256 tablespoons,
#   768 teaspoons: NIST Handbook 44, Appendix C, units of capacity.
# - imperial gallon 4.54609 L, its 4 quarts, 8 pints, 160 fluid ounces: UK Weights and Measures Act 1985, Schedule 1.
# - degree Celsius and Fahrenheit on the kelvin: SI brochure, 9th edition, 2.3.1; Handbook 44, Appendix C.
# Percent and ppm are bases of their own, so that nothing turns one into the other without naming its convention.
DEFINITIONS = (
    "mm = [length]",
    "cm = 10 * mm",
    "m = 1000 * mm",
    "inch = 25.4 * mm",
    "ft = 12 * inch",
    "square_m = m ** 2",
    "cubic_cm = cm ** 3",
    "cubic_m = m ** 3",
    "cubic_ft = ft ** 3",
    "mL = cm ** 3",
    "L = 1000 * mL",
    "cL = 10 * mL",
    "dL = 100 * mL",
    "us_gal = 3785.411784 * mL",
    "us_qt = us_gal / 4",
    "us_pt = us_gal / 8",
    "us_cup = us_gal / 16",
    "us_floz = us_gal / 128",
    "tbsp = us_gal / 256",
    "tsp = us_gal / 768",
    "imp_gal = 4546.09 * mL",
    "imp_qt = imp_gal / 4",
    "imp_pt = imp_gal / 8",
    "imp_floz = imp_gal / 160",
    "g = [mass]",
    "kg = 1000 * g",
    "K = [temperature]; offset: 0",
    "degC = K; offset: 273.15",
    "degF = 5 / 9 * K; offset: 233.15 + 200 / 9",
    "s = [time]",
    "min = 60 * s",
    "h = 60 * min",
    "d = 24 * h",
    "week = 7 * d",
    "percent = [percent]",
    "ppm = [ppm]",
)


def dimension(unit: str) -> Dimension:
    """What a unit measures.

    Fails: WrongUnit if it isn't on the list.
    """
    return _known(unit).dimension


def system(unit: str) -> System:
    """Whose measure a unit is.

    Fails: WrongUnit if it isn't on the list.
    """
    return _known(unit).system


def convert(amount: Amount, unit: str) -> Amount:
    """The same amount in another unit.

    amount: any size; a temperature is a point on its scale, not a difference.
    unit: one of `UNITS`, of the same dimension.
    Gives: exact.
    Fails: WrongUnit if either isn't on the list, or they measure different things.
    Source: the definitions above.

    >>> convert(Amount(Fraction(1), "US gal"), "US fl oz")
    Amount(amount=Fraction(128, 1), unit='US fl oz')
    """
    have, want = _known(amount.unit), _known(unit)
    if have.dimension != want.dimension:
        raise WrongUnit(amount.unit, want.dimension)
    if amount.unit == unit:
        return amount  # most amounts need no conversion, and then pint is never imported
    if unit in _METRIC and amount.unit in _METRIC:
        return Amount(amount.amount * _METRIC[amount.unit] / _METRIC[unit], unit)
    if have.dimension == "temperature":
        return Amount(_exact(_registry().Quantity(amount.amount, have.symbol).to(want.symbol).magnitude), unit)
    return Amount(amount.amount * _factor(have.symbol, want.symbol), unit)


_METRIC = {"mL": Fraction(1), "L": Fraction(1000)}
"""Stocks are kept in litres and dosed in millilitres; for that alone pint isn't imported. A test compares the two."""


def in_ml(volume: Amount) -> Fraction:
    """A volume as millilitres.

    Fails: WrongUnit if it is none.
    """
    return convert(volume, "mL").amount


def spoken(unit: str, amount: Fraction | float) -> str:
    """The unit's name as said after that number: "mil" after 1, "mils" after any other."""
    return _known(unit).one if amount == 1 else _known(unit).many


def _known(unit: str) -> Unit:
    if unit not in UNITS:
        raise WrongUnit(unit, "unit known here")
    return UNITS[unit]


@cache
def _factor(have: str, want: str) -> Fraction:
    return _exact(_registry().Quantity(Fraction(1), have).to(want).magnitude)


@cache
def _registry() -> UnitRegistry[Any]:
    # Imported at the first conversion: importing pint takes about 200 ms, a third of a cold answer, and most answers
    # need none. Its own list of units isn't loaded: ours is short, names US and imperial apart, and reads in 5 ms.
    from pint import UnitRegistry

    registry: UnitRegistry[Any] = UnitRegistry(None, non_int_type=Fraction)
    registry.load_definitions(list(DEFINITIONS))
    return registry


def _exact(magnitude: Any) -> Fraction:
    if not isinstance(magnitude, int | Fraction):
        raise TypeError(f"pint gave {type(magnitude).__name__}, not an exact number")
    return Fraction(magnitude)
