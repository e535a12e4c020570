"""Available chlorine: which way is taken. The figures are checked in tests/published."""

from __future__ import annotations

from fractions import Fraction

import pytest

from assistant.core.facts import Facts
from assistant.core.household import Basis
from assistant.core.mixing.chlorine import available_chlorine
from assistant.core.quantities.errors import OutOfRange


@pytest.mark.parametrize(
    ("percent", "basis", "way"),
    [
        ("6", None, "convention"),
        ("6", "v/v", "convention"),
        ("6", "w/v", "weight in volume"),
        ("6", "w/w", "weight in weight"),
        ("30", "w/w", "convention"),  # past the end of the density line
        ("100", "w/w", "convention"),  # past where the line has a meaning at all
    ],
)
def test_the_basis_decides_how_it_is_worked_out(percent: str, basis: Basis | None, way: str, facts: Facts) -> None:
    found = available_chlorine(Fraction(percent), basis, facts)
    assert found.way == way
    assert all(facts[fact] for fact in found.facts)


def test_the_convention_is_ten_thousand_a_percent(facts: Facts) -> None:
    assert available_chlorine(Fraction(6), None, facts).ppm == 60_000


@pytest.mark.parametrize("percent", ["0", "-1", "101"])
def test_a_percentage_is_above_nothing_and_at_most_all(percent: str, facts: Facts) -> None:
    with pytest.raises(OutOfRange):
        available_chlorine(Fraction(percent), None, facts)
