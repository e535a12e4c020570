"""Which side of a ratio is the water, by the words between and behind its numbers."""

from __future__ import annotations

from fractions import Fraction

import pytest

from assistant.core.quantities.amounts import SaidRatio
from assistant.understand.numbers.amounts import amounts_in
from assistant.understand.text.words import tokens_of


@pytest.mark.parametrize(
    ("said", "concentrate", "water", "sure"),
    [
        ("one to forty", 1, 40, False),
        ("forty to one", 40, 1, False),
        ("nine parts water to one part bleach", 1, 9, True),
        ("nine parts of water and one of bleach", 1, 9, True),
        ("nine parts water, one part bleach", 1, 9, True),
        ("one part bleach to nine parts water", 1, 9, True),
        ("three parts vinegar to one part water", 3, 1, True),
        ("40 to 1 water to chlorhexidine", 1, 40, True),
        ("40:1 water to concentrate", 1, 40, True),
        ("1 to 40 chlorhexidine to water", 1, 40, True),
        ("3 to 1 vinegar to water", 3, 1, True),
        ("3 to 1 water", 3, 1, False),
    ],
)
def test_the_water_is_where_it_is_said_to_be(said: str, concentrate: int, water: int, sure: bool) -> None:
    (found,) = amounts_in(tokens_of(said), "US", set()).found
    ratio = found.value
    assert isinstance(ratio, SaidRatio)
    assert (ratio.first, ratio.second, ratio.sides) == (Fraction(concentrate), Fraction(water), sure)
    assert ratio.may_be_turned == (concentrate > water and not sure)
