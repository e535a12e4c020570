"""Unit definitions against the published exact values, and every conversion against pint's own full registry."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from pint import UnitRegistry

from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.units import UNITS, convert

HANDBOOK_44 = "NIST Handbook 44, Appendix C, units of capacity (through exact-value tables that name it)"
ACT_1985 = "UK Weights and Measures Act 1985, Schedule 1 (through secondary tables that name it)"

# source, unit, millilitres. Tolerance none: these are definitions, so the conversion has to be equal.
IN_MILLILITRES = [
    (HANDBOOK_44, "US gal", "3785.411784"),
    (HANDBOOK_44, "US qt", "946.352946"),
    (HANDBOOK_44, "US pt", "473.176473"),
    (HANDBOOK_44, "US cup", "236.5882365"),
    (HANDBOOK_44, "US fl oz", "29.5735295625"),
    (HANDBOOK_44, "tbsp", "14.78676478125"),
    (HANDBOOK_44, "tsp", "4.92892159375"),
    (ACT_1985, "imp gal", "4546.09"),
    (ACT_1985, "imp qt", "1136.5225"),
    (ACT_1985, "imp pt", "568.26125"),
    (ACT_1985, "imp fl oz", "28.4130625"),
    ("SI brochure, 9th edition, Table 8", "L", "1000"),
    ("SI brochure, 9th edition, Tables 7 and 8", "cL", "10"),
    ("SI brochure, 9th edition, Tables 7 and 8", "dL", "100"),
    ("International yard and pound agreement, 1959: 12 x 25.4 mm, cubed", "ft^3", "28316.846592"),
]

# SI brochure, 9th edition, 2.3.1 (the kelvin and degree Celsius); Fahrenheit: Handbook 44, Appendix C. All exact.
TEMPERATURES = [("212", "degF", "100", "degC"), ("32", "degF", "0", "degC"), ("-40", "degF", "-40", "degC")]

PINT_NAMES = {
    "mL": "milliliter",
    "L": "liter",
    "cL": "centiliter",
    "dL": "deciliter",
    "cm^3": "centimeter**3",
    "m^3": "meter**3",
    "ft^3": "foot**3",
    "US gal": "US_liquid_gallon",
    "US qt": "US_liquid_quart",
    "US pt": "US_pint",
    "US cup": "liquid_cup",
    "US fl oz": "US_fluid_ounce",
    "tbsp": "tablespoon",
    "tsp": "teaspoon",
    "imp gal": "imperial_gallon",
    "imp qt": "imperial_quart",
    "imp pt": "imperial_pint",
    "imp fl oz": "imperial_fluid_ounce",
}


_FULL: UnitRegistry[Any] = UnitRegistry()


@pytest.mark.parametrize(("source", "unit", "millilitres"), IN_MILLILITRES)
def test_a_unit_is_what_its_definition_says(source: str, unit: str, millilitres: str) -> None:
    assert convert(Amount(Fraction(1), unit), "mL") == Amount(Fraction(millilitres), "mL"), source


@pytest.mark.parametrize(("given_", "unit", "expected", "wanted"), TEMPERATURES)
def test_temperatures_are_points_on_their_scales(given_: str, unit: str, expected: str, wanted: str) -> None:
    assert convert(Amount(Fraction(given_), unit), wanted).amount == Fraction(expected)


def test_ounces_to_the_gallon_are_a_quarter_stronger_in_the_us() -> None:
    # Arithmetic from the definitions: 1/128 against 1/160.
    us = convert(Amount(Fraction(1), "US fl oz"), "US gal").amount
    imperial = convert(Amount(Fraction(1), "imp fl oz"), "imp gal").amount
    assert us / imperial == Fraction(5, 4)


@settings(derandomize=True, deadline=None, max_examples=300)
@given(
    st.fractions(min_value=Fraction(1, 1000), max_value=10**5, max_denominator=1000),
    st.sampled_from(sorted(PINT_NAMES)),
    st.sampled_from(sorted(PINT_NAMES)),
)
def test_conversions_agree_with_pints_own_units(amount: Fraction, have: str, want: str) -> None:
    # 1e-9: pint's registry reckons in floats.
    expected = _FULL.Quantity(float(amount), PINT_NAMES[have]).to(PINT_NAMES[want]).magnitude
    assert float(convert(Amount(amount, have), want).amount) == pytest.approx(expected, rel=1e-9)


def test_every_volume_of_the_list_was_compared() -> None:
    assert set(PINT_NAMES) == {name for name, unit in UNITS.items() if unit.dimension == "volume"}
