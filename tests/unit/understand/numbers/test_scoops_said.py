"""What a cap, a spoon or a syringe holds is kept apart from what is mixed."""

from __future__ import annotations

from fractions import Fraction

import pytest
from talk import _reader

from assistant.understand.numbers.scoops_said import scoops_in


def _scoops(text: str) -> tuple[str, Fraction | None, Fraction | None] | None:
    found, _ = scoops_in(_reader()._parse(text))
    return (found.tool, found.holds.amount if found.holds is not None else None, found.count) if found else None


@pytest.mark.parametrize(
    ("said", "tool", "holds", "count"),
    [
        ("a cap is 10 mils", "cap", 10, None),
        ("my lid holds about 8 mils", "cap", 8, None),
        ("it's 5 mils a capful", "cap", 5, None),
        ("with a 5 mil syringe", "syringe", 5, None),
        ("two 15 mil spoons", "spoon", 15, 2),
        ("3 capfuls of bleach", "cap", None, 3),
        ("half a cap of bleach", "cap", None, Fraction(1, 2)),
        ("how many scoops", "scoop", None, None),
        ("with a 50 mil cup", "cup", 50, None),
    ],
)
def test_a_tool_is_heard_with_what_it_holds(said: str, tool: str, holds: int | None, count: Fraction | None) -> None:
    assert _scoops(said) == (tool, holds, count)


@pytest.mark.parametrize(
    "said",
    [
        "bleach for a 500 mil jug",
        "bleach for a 2 litre bottle at one in 32",
        "20 mils of bleach in a litre",
        "how much for the yellow bottle",
        "two cups of water",
    ],
)
def test_what_is_filled_is_no_tool(said: str) -> None:
    assert _scoops(said) is None
