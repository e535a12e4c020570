"""What a dose may lean on of a bleach's age."""

from __future__ import annotations

from datetime import date, timedelta
from fractions import Fraction

import pytest

from assistant.core.facts import Facts
from assistant.core.household import Stock
from assistant.core.mixing.decay import Age, age_of, fraction_left
from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.errors import OutOfRange

TODAY = date(2026, 1, 5)


def bleach(days: int | None, degrees: str | None = "22", percent: str = "6", unit: str = "degC") -> Stock:
    return Stock(
        "bleach",
        "sodium hypochlorite",
        Amount(Fraction(percent), "%"),
        made=None if days is None else TODAY - timedelta(days=days),
        kept_at=None if degrees is None else Amount(Fraction(degrees), unit),
    )


@pytest.mark.parametrize(
    ("stock", "verdict"),
    [
        (bleach(None), "no date"),
        (bleach(-1), "not yet made"),
        (bleach(30, None), "no temperature"),
        (bleach(0), "corrected"),
        (bleach(60), "corrected"),
        (bleach(365, "18"), "corrected"),
        (bleach(366, "18"), "too old"),
        (bleach(366, None), "too old"),
        (bleach(300, "30"), "too weak"),
        (bleach(60, "14"), "outside the law"),
        (bleach(60, "56"), "outside the law"),
        (bleach(60, percent="3"), "outside the law"),
    ],
)
def test_a_dose_is_raised_only_where_the_law_and_the_limits_allow(stock: Stock, verdict: str, facts: Facts) -> None:
    age = age_of(stock, TODAY, facts)
    assert age.verdict == verdict
    assert (age.correction == 1) == (verdict != "corrected" or age.days == 0)


def test_a_dose_is_raised_by_a_quarter_at_most(facts: Facts) -> None:
    corrections = [age_of(bleach(days, "24"), TODAY, facts).correction for days in range(0, 366, 5)]
    assert min(corrections) < Fraction("0.82")
    assert all(Fraction("0.8") <= correction <= 1 for correction in corrections)


def test_a_stock_of_unknown_strength_has_no_known_age(facts: Facts) -> None:
    assert age_of(Stock("bleach", "sodium hypochlorite", made=TODAY), TODAY, facts) == Age("no date")


def test_fahrenheit_is_taken_too(facts: Facts) -> None:
    assert age_of(bleach(60, "77", unit="degF"), TODAY, facts) == age_of(bleach(60, "25"), TODAY, facts)


def test_no_age_below_nothing(facts: Facts) -> None:
    with pytest.raises(OutOfRange):
        fraction_left(60, 20, -1, facts)
    assert fraction_left(60, 20, 0, facts) == 1
