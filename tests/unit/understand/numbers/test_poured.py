"""What volumes are of, which unit is wanted, and other slots of the mixing questions."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from phrasings.said_as import written

from assistant.contract import Reading


@pytest.mark.parametrize(
    ("said", "roles"),
    [
        ("how much bleach in 500 mils of water at 1 to 32", ["water"]),
        ("how much bleach in 500 mils of cold tap water at 1 to 32", ["water"]),
        ("I put 20 mils of bleach in half a litre of water, how strong is it", ["product", "water"]),
        ("20 ml of the shed bleach made up to 500 ml, how strong", ["product", "total"]),
        ("there are 200 mils left in the orange bottle, can I top it up", ["left"]),
        ("the orange bottle has 200 mils left, can I top it up", ["left"]),
        ("how much bleach for a 500 mil bottle at 1 in 32", ["total"]),
        ("how much bleach for 500 mils of bleach solution at 1 in 32", ["total"]),
        ("how much bleach for 500 mils at 1 in 32", [""]),
    ],
)
def test_a_volumes_role(ask: Callable[[str], Reading], said: str, roles: list[str]) -> None:
    assert list(ask(said).slots.roles) == roles


@pytest.mark.parametrize(
    ("said", "unit"),
    [
        ("convert 3 cups to mils", "mL"),
        ("what's half a pint in us fluid ounces", "US fl oz"),
        ("how many teaspoons in 20 ml", "tsp"),
        ("what is a quart in metric", "mL"),
        ("what is 20 degrees in fahrenheit", "degF"),
        ("convert 3 cups", None),
    ],
)
def test_the_unit_wanted(ask: Callable[[str], Reading], said: str, unit: str | None) -> None:
    assert ask(said).slots.to_unit == unit


@pytest.mark.parametrize(
    ("said", "field", "expected"),
    [
        ("the orange bottle is half full, top it up", "share_left", "1/2"),
        ("the orange bottle is a quarter empty, can I top it up", "share_left", "3/4"),
        ("20 squirts of the orange bottle came to 18 mils", "strokes", "20"),
        ("I pumped the orange bottle twenty times and got 18 mils", "strokes", "20"),
        ("how much solution for just the floor of the east tank", "inside", "floor"),
        ("how much solution for the east tank with the lid", "inside", "all sides"),
        ("how much solution to soak bowls in a tub 40 by 30 by 10 cm", "soaks", True),
        ("I only have 10 mils of bleach left, what will it make at 1 in 32", "uses_up", True),
        ("how much water for 20 mils of bleach at 1 to 32", "uses_up", True),
        ("how much bleach for 20 mils at 1 to 32", "uses_up", False),
        ("I bought the bleach in june 2025, how strong is it now", "month", [2025, 6]),
        ("how strong is my bleach after two months", "month", None),
        ("how strong is my bleach after two months at 30", "temperatures", ["30 degC"]),
    ],
)
def test_what_else_is_said(ask: Callable[[str], Reading], said: str, field: str, expected: object) -> None:
    assert written(ask(said).slots, field) == expected


@pytest.mark.parametrize(
    ("said", "mixes", "volumes"),
    [
        ("how much bleach for 500 ml at one ounce to the gallon", ["1 to 160"], ["500 mL"]),
        ("how much bleach for 500 ml at half a cup per us gallon", ["1/2:16"], ["500 mL"]),
        ("20 mils to the litre, how much bleach for 500 ml", ["20 to 1000"], ["500 mL"]),
        ("how much bleach for a litre bottle at 1 in 32", ["1 in 32"], ["1 L"]),
    ],
)
def test_a_recipe_is_a_mix_and_no_second_volume(
    ask: Callable[[str], Reading], said: str, mixes: list[str], volumes: list[str]
) -> None:
    slots = ask(said).slots
    assert (written(slots, "mixes"), written(slots, "volumes")) == (mixes, volumes)
