"""So many times an amount, and what is from one amount to another."""

from __future__ import annotations

from fractions import Fraction

import pytest

from assistant.core.quantities.amounts import Amount
from assistant.understand.numbers.amounts import amounts_in
from assistant.understand.numbers.multiples import RANGE
from assistant.understand.text.words import tokens_of


@pytest.mark.parametrize(
    ("said", "amount", "unit"),
    [
        ("twice 400 mils", 800, "mL"),
        ("double a litre", 2, "L"),
        ("three times 250 ml", 750, "mL"),
        ("3 x 500 ml", 1500, "mL"),
        ("two 500 mil bottles", 1000, "mL"),
        ("two bottles of 500 mils", 1000, "mL"),
        ("a dozen mils", 12, "mL"),
        ("half a dozen tablespoons", 6, "tbsp"),
        ("two dozen mils", 24, "mL"),
        ("half of a quarter gallon", Fraction(1, 8), "US gal"),
        ("two thirds of 750 mils", 500, "mL"),
        ("half a litre", Fraction(1, 2), "L"),
        ("a 500 mil bottle", 500, "mL"),
    ],
)
def test_it_is_reckoned(said: str, amount: int | Fraction, unit: str) -> None:
    found = amounts_in(tokens_of(said), "US").found
    assert [one.value for one in found] == [Amount(Fraction(amount), unit)]


@pytest.mark.parametrize("said", ["one to two litres", "500 or 600 mils", "between one and two litres", "500-600 mils"])
def test_a_range_is_no_amount(said: str) -> None:
    amounts = amounts_in(tokens_of(said), "US")
    assert [fault.why for fault in amounts.faulty] == [RANGE]
    assert not amounts.found


@pytest.mark.parametrize(
    "said", ["twice a day", "half", "double", "a dozen", "half of it", "one to 32", "from 500 to 750 mils"]
)
def test_nothing_is_made_of_what_counts_no_volume(said: str) -> None:
    amounts = amounts_in(tokens_of(said), "US")
    assert not amounts.faulty
    assert all(one.kind != "volume" or one.value == Amount(Fraction(750), "mL") for one in amounts.found)
