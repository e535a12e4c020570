"""A dose is also told in the unit that it was asked in."""

from __future__ import annotations

import pytest
from talk import Talk


@pytest.mark.parametrize(
    ("asked", "told"),
    [
        ("how many teaspoons of bleach for a litre at one in 32", "6.34 teaspoons"),
        ("how many tablespoons of bleach in the yellow bottle", "1.59 tablespoons"),
        ("how many ounces of bleach for a gallon at one in 32", "4 US fluid ounces"),
        ("how many capfuls of bleach for yellow, a cap is 10 mils", "2.34 caps of 10 mils"),
        ("chlorhexidine for pink with a 5 mil syringe", "the syringe of 5 mils twice full, then 2.5 mils"),
    ],
)
def test_it_is_told_in_the_unit_asked_for(asked: str, told: str) -> None:
    assert told in Talk().tell(asked).say


def test_in_mils_it_is_told_once() -> None:
    assert Talk().tell("how many mils of bleach for a litre at one in 32").say.count("mils") == 1
