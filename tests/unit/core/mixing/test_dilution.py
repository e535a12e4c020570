"""Mixing: units of the parts, and what is refused. Published recipes are in tests/published."""

from __future__ import annotations

from fractions import Fraction

import pytest

from assistant.core.mixing.dilution import mix, parts_of_water, share_for, share_of, thinned
from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.errors import OutOfRange, WrongUnit


@pytest.mark.parametrize(
    ("unit", "poured"),
    [("mL", "mL"), ("L", "mL"), ("m^3", "mL"), ("US gal", "US fl oz"), ("tsp", "US fl oz"), ("imp pt", "imp fl oz")],
)
def test_concentrate_and_water_are_in_the_totals_own_system(unit: str, poured: str) -> None:
    total = Amount(Fraction(3), unit)
    made = mix(total, Fraction(1, 10))
    assert made.concentrate.unit == made.water.unit == poured
    assert made.total is total


def test_one_in_fifty_of_750_is_15() -> None:
    made = mix(Amount(Fraction(750), "mL"), Fraction(1, 50))
    assert (made.concentrate.amount, made.water.amount) == (15, 735)


def test_undiluted_takes_no_water() -> None:
    made = mix(Amount(Fraction(250), "mL"), Fraction(1))
    assert (made.concentrate.amount, made.water.amount) == (250, 0)


@pytest.mark.parametrize(("total", "share"), [("0", "1/2"), ("-1", "1/2"), ("1", "0"), ("1", "1.1"), ("1", "-1")])
def test_no_mix_of_nothing_nor_of_more_than_all(total: str, share: str) -> None:
    with pytest.raises(OutOfRange):
        mix(Amount(Fraction(total), "mL"), Fraction(share))


def test_a_length_is_no_volume() -> None:
    with pytest.raises(WrongUnit):
        mix(Amount(Fraction(30), "cm"), Fraction(1, 2))
    with pytest.raises(WrongUnit):
        share_of(Amount(Fraction(30), "cm"), Amount(Fraction(1), "L"))


def test_a_stock_weaker_than_the_target_is_refused_with_both() -> None:
    with pytest.raises(OutOfRange, match="5"):
        share_for(Fraction(6), Fraction(5))
    with pytest.raises(OutOfRange):
        parts_of_water(Fraction(0), Fraction(5))


def test_more_concentrate_than_mix_is_refused() -> None:
    with pytest.raises(OutOfRange):
        share_of(Amount(Fraction(2), "L"), Amount(Fraction(1), "L"))
    assert share_of(Amount(Fraction(1), "US fl oz"), Amount(Fraction(1), "US gal")) == Fraction(1, 128)


def test_a_mix_is_thinned_with_water_alone() -> None:
    made = thinned(Amount(Fraction(100), "mL"), Fraction(1, 10), Fraction(1, 100))
    assert (made.concentrate.amount, made.water.amount, made.total.amount) == (100, 900, 1000)


@pytest.mark.parametrize("wanted", [Fraction(1, 10), Fraction(1, 5), Fraction(0)])
def test_water_makes_nothing_stronger(wanted: Fraction) -> None:
    with pytest.raises(OutOfRange):
        thinned(Amount(Fraction(100), "mL"), Fraction(1, 10), wanted)
