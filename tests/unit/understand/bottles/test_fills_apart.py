"""Several fills in one breath, and what only looks like it."""

from __future__ import annotations

import pytest
from talk import _reader

from assistant.understand.bottles.fills_apart import fills_apart


@pytest.mark.parametrize(
    ("said", "many"),
    [
        ("filled yellow with bleach and pink with chlorhexidine", 2),
        ("I mixed bleach in the yellow bottle and vinegar in the green bottle", 2),
        ("yellow's filled with bleach, green's filled with vinegar", 2),
        ("refilled both yellow and green", 2),
        ("filled yellow, pink and green", 3),
        ("put 20 mils of bleach in yellow and 12 mils of chlorhexidine in pink", 2),
        ("filled pink with chlorhexidine one in 40 and yellow with bleach one in 50", 2),
    ],
)
def test_each_bottle_has_a_text_of_its_own(said: str, many: int) -> None:
    assert len(fills_apart(_reader()._parse(said))) == many


@pytest.mark.parametrize(
    "said",
    [
        "I put bleach in yellow and vinegar in yellow",
        "mixed bleach and vinegar in the yellow bottle",
        "mixed bleach in the yellow bottle and vinegar",
        "I mixed bleach and vinegar in yellow and pink",
        "I poured bleach from yellow and vinegar from green together",
        "I poured the yellow bottle into the green bottle",
        "filled yellow with bleach and then put vinegar in it and in green",
        "filled yellow with bleach and green",
        "did I fill yellow with bleach and green with vinegar?",
    ],
)
def test_what_may_have_met_is_not_taken_apart(said: str) -> None:
    assert fills_apart(_reader()._parse(said)) == ()
