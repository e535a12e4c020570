"""Thousands of random conversions, each against two general libraries of units that know nothing of this project."""

from __future__ import annotations

from fractions import Fraction
from random import Random

import pytest
import quantities
from pint import UnitRegistry

from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.units import UNITS, convert

SEED, EACH = 20260105, 3000
FLOATS = 1e-9
"""Relative: both libraries reckon in floats."""

PINT = {
    **{
        "mL": "milliliter",
        "L": "liter",
        "cL": "centiliter",
        "dL": "deciliter",
        "cm^3": "cm**3",
        "m^3": "m**3",
        "ft^3": "foot**3",
        "US gal": "US_liquid_gallon",
    },
    **{"US qt": "US_liquid_quart", "US pt": "US_pint", "US cup": "liquid_cup", "US fl oz": "US_fluid_ounce"},
    **{"tbsp": "tablespoon", "tsp": "teaspoon", "imp gal": "imperial_gallon", "imp qt": "imperial_quart"},
    **{"imp pt": "imperial_pint", "imp fl oz": "imperial_fluid_ounce", "mm": "mm", "cm": "cm", "m": "m", "in": "inch"},
    **{"ft": "foot", "g": "gram", "kg": "kilogram", "s": "second", "min": "minute", "h": "hour", "d": "day"},
    **{"week": "week", "m^2": "m**2"},
}
QUANTITIES = {
    **{"mL": quantities.mL, "L": quantities.L, "cm^3": quantities.cm**3, "m^3": quantities.m**3},
    "cL": quantities.UnitQuantity("cL", quantities.L / 100, "cL"),
    "dL": quantities.UnitQuantity("dL", quantities.L / 10, "dL"),
    **{"ft^3": quantities.foot**3, "US gal": quantities.US_liquid_gallon, "US qt": quantities.US_liquid_quart},
    **{"US pt": quantities.US_liquid_pint, "US cup": quantities.US_liquid_cup, "US fl oz": quantities.US_fluid_ounce},
    **{"tbsp": quantities.tablespoon, "tsp": quantities.teaspoon, "imp gal": quantities.UK_liquid_gallon},
    **{"imp qt": quantities.UK_liquid_quart, "imp pt": quantities.UK_liquid_pint},
    **{"imp fl oz": quantities.UK_fluid_ounce, "mm": quantities.mm, "cm": quantities.cm, "m": quantities.m},
    **{"in": quantities.inch, "ft": quantities.foot, "g": quantities.g, "kg": quantities.kg, "s": quantities.s},
    **{"min": quantities.min, "h": quantities.hour, "d": quantities.day, "week": quantities.week},
    **{"m^2": quantities.m**2},
}


def random_conversions(names: list[str]) -> list[tuple[Fraction, str, str]]:
    random, found = Random(SEED), []
    while len(found) < EACH:
        have = random.choice(names)
        want = random.choice([name for name in names if UNITS[name].dimension == UNITS[have].dimension])
        found.append((Fraction(random.randint(1, 10**8), random.choice((1, 3, 7, 10, 64, 1000))), have, want))
    return found


def test_as_pints_own_registry() -> None:
    registry = UnitRegistry()
    for size, have, want in random_conversions(sorted(PINT)):
        theirs = registry.Quantity(float(size), PINT[have]).to(PINT[want]).magnitude
        assert float(convert(Amount(size, have), want).amount) == pytest.approx(theirs, rel=FLOATS), (size, have, want)


def test_as_the_quantities_library() -> None:
    for size, have, want in random_conversions(sorted(QUANTITIES)):
        theirs = float((float(size) * QUANTITIES[have]).rescale(QUANTITIES[want]))
        assert float(convert(Amount(size, have), want).amount) == pytest.approx(theirs, rel=FLOATS), (size, have, want)


def test_temperatures_as_pints_own_registry() -> None:
    # The quantities library has differences of temperature alone, no points on a scale.
    registry, random = UnitRegistry(autoconvert_offset_to_baseunit=True), Random(SEED)
    for _ in range(500):
        size = Fraction(random.randint(-4000, 30000), 100)
        theirs = registry.Quantity(float(size), "degF").to("degC").magnitude
        assert float(convert(Amount(size, "degF"), "degC").amount) == pytest.approx(theirs, abs=1e-9)


def test_every_unit_is_compared_with_both() -> None:
    compared = {name for name, unit in UNITS.items() if unit.dimension not in ("percent", "ppm", "temperature")}
    assert set(PINT) == set(QUANTITIES) == compared
