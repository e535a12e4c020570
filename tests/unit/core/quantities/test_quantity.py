"""Written quantities: what is taken, exactly, and what is refused with what to write instead."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as some

from assistant.core.quantities.amounts import Amount, Neat, Percent, Ppm, SaidRatio
from assistant.core.quantities.quantity import BadQuantity, read_amount, read_mix, read_number


@pytest.mark.parametrize(
    ("text", "number", "unit"),
    [
        ("500 mL", "500", "mL"),
        ("500ml", "500", "mL"),
        ("1.5 litres", "3/2", "L"),
        (".5 L", "1/2", "L"),
        ("1/2 US gal", "1/2", "US gal"),
        ("1 1/2 cups", "3/2", "US cup"),
        ("16 fl oz", "16", "US fl oz"),
        ("28 m^3", "28", "m^3"),
        ("-4 degC", "-4", "degC"),
        ("0 degC", "0", "degC"),
        ("77 °F", "77", "degF"),
        ("0.06 percent", "3/50", "%"),
        ("500 ppm", "500", "ppm"),
        ("90 days", "90", "d"),
        ("24 hour", "24", "h"),
        ("36 in", "36", "in"),
    ],
)
def test_a_number_and_a_unit_are_an_exact_amount(text: str, number: str, unit: str) -> None:
    assert read_amount(text) == Amount(Fraction(number), unit)


def test_plain_gallons_quarts_pints_and_ounces_follow_the_keeper() -> None:
    for plain, name in (("gallon", "gal"), ("quart", "qt"), ("pint", "pt"), ("fl oz", "fl oz")):
        assert read_amount(f"2 {plain}", "US").unit == f"US {name}"
        assert read_amount(f"2 {plain}", "imperial").unit == f"imp {name}"
        assert read_amount(f"2 US {plain}", "imperial").unit == f"US {name}"


@pytest.mark.parametrize(
    ("text", "mix"),
    [
        ("1 in 32", SaidRatio(Fraction(1), Fraction(32), "in")),
        ("1 to 32", SaidRatio(Fraction(1), Fraction(32), "to")),
        ("1:32", SaidRatio(Fraction(1), Fraction(32), "colon")),
        ("1 : 32", SaidRatio(Fraction(1), Fraction(32), "colon")),
        ("0.5 to 10", SaidRatio(Fraction(1, 2), Fraction(10), "to")),
        ("0.06 percent", Percent(Fraction(3, 50))),
        ("0.06%", Percent(Fraction(3, 50))),
        ("500 ppm", Ppm(Fraction(500))),
        ("Neat", Neat()),
        ("undiluted", Neat()),
    ],
)
def test_a_mix_is_a_ratio_a_strength_or_neat(text: str, mix: object) -> None:
    assert read_mix(text) == mix


@pytest.mark.parametrize("text", ["", "mL", "5", "five mL", "1e3 mL", "5 5 mL", "5 mL 5", "0x5 mL", "inf mL", "5 mL²"])
def test_anything_else_is_no_amount(text: str) -> None:
    with pytest.raises(BadQuantity):
        read_amount(text)


@pytest.mark.parametrize(
    "text", ["5 ML", "5 T", "5 t", "5 oz", "0 mL", "-1 mL", "1000000 mL", "1/0 mL", "1234567890123 mL"]
)
def test_what_is_refused_says_what_to_write(text: str) -> None:
    with pytest.raises(BadQuantity) as caught:
        read_amount(text)
    assert "write" in caught.value.fix


@settings(derandomize=True)
@given(top=some.integers(1, 99999), under=some.integers(1, 99999))
def test_fractions_stay_exact(top: int, under: int) -> None:
    assert read_number(f"{top}/{under}") == Fraction(top, under)


@settings(derandomize=True)
@given(text=some.text(max_size=60))
def test_any_text_is_read_or_refused_at_once(text: str) -> None:
    for read in (read_number, read_amount, read_mix):
        try:
            read(text)
        except BadQuantity as fault:
            assert fault.fix  # noqa: PT017
