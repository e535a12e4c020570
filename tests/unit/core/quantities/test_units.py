"""The list of units, exact conversion, and that pint is imported only when something is converted."""

from __future__ import annotations

import subprocess
import sys
from fractions import Fraction

import pytest

from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.errors import WrongUnit
from assistant.core.quantities.quantity import read_unit
from assistant.core.quantities.units import UNITS, convert, dimension, spoken, system


def test_an_amount_in_its_own_unit_is_handed_back_untouched() -> None:
    amount = Amount(Fraction(1, 3), "mL")
    assert convert(amount, "mL") is amount


@pytest.mark.parametrize("code", ["Amount(Fraction(750), 'mL'), 'mL'", "Amount(Fraction(25), 'degC'), 'degC'"])
def test_no_conversion_imports_no_pint(code: str) -> None:
    script = (
        "import sys; from fractions import Fraction; from assistant.core.quantities.amounts import Amount; "
        f"from assistant.core.quantities.units import convert; convert({code}); print('pint' in sys.modules)"
    )
    found = subprocess.run([sys.executable, "-c", script], capture_output=True, text=True, check=True)
    assert found.stdout.strip() == "False"


@pytest.mark.parametrize(
    ("have", "want"), [("mL", "cm"), ("cm", "mL"), ("degC", "min"), ("%", "ppm"), ("ppm", "%"), ("g", "mL")]
)
def test_what_measures_something_else_is_refused(have: str, want: str) -> None:
    with pytest.raises(WrongUnit):
        convert(Amount(Fraction(1), have), want)


@pytest.mark.parametrize("unit", ["gallon", "ml", "9**9**9 mL", "", "oz"])
def test_a_unit_not_on_the_list_is_refused(unit: str) -> None:
    with pytest.raises(WrongUnit) as refused:
        convert(Amount(Fraction(1), unit), "mL")
    assert refused.value.given == unit
    with pytest.raises(WrongUnit):
        convert(Amount(Fraction(1), "mL"), unit)


@pytest.mark.parametrize("unit", sorted(UNITS))
def test_every_unit_converts_within_its_dimension_and_back(unit: str) -> None:
    amount = Amount(Fraction(7, 3), unit)
    for other in UNITS:
        if dimension(other) == dimension(unit):
            assert convert(convert(amount, other), unit) == amount


@pytest.mark.parametrize("said", ["mil", "litre", "cubic foot", "US gallon", "imperial pint", "teaspoon", "week"])
def test_a_units_spoken_name_can_be_read_back(said: str) -> None:
    assert UNITS[read_unit(said)].one == said


@pytest.mark.parametrize(
    ("unit", "one", "many"), [("mL", "mil", "mils"), ("US fl oz", "US fluid ounce", "US fluid ounces")]
)
def test_one_is_spoken_otherwise_than_many(unit: str, one: str, many: str) -> None:
    assert spoken(unit, 1) == one
    assert spoken(unit, Fraction(3, 2)) == many


def test_us_and_imperial_are_told_apart() -> None:
    assert [system(unit) for unit in ("US pt", "imp pt", "L")] == ["US", "imperial", "metric"]


@pytest.mark.parametrize(("unit", "other", "gives"), [("L", "mL", 1300), ("mL", "L", Fraction(13, 10000))])
def test_litres_to_millilitres_need_no_library(unit: str, other: str, gives: Fraction) -> None:
    code = (
        "import sys; from fractions import Fraction; from assistant.core.quantities.amounts import Amount; "
        "from assistant.core.quantities.units import convert; "
        f"print(convert(Amount(Fraction(13, 10), {unit!r}), {other!r}).amount, 'pint' in sys.modules)"
    )
    ran = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert ran.stdout.split() == [str(gives), "False"]
