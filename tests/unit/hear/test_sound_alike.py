"""Names that one may be taken for another, and names that may not."""

from __future__ import annotations

import tomllib
from itertools import combinations
from pathlib import Path

import pytest

from assistant.hear.sound_alike import sounds_like

DEMO = Path(__file__).parents[3] / "assistant" / "demo" / "keeping.toml"


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("river tank", "liver tank"),
        ("green bottle", "cream bottle"),
        ("blue bottle", "glue bottle"),
        ("tub fifteen", "tub fifty"),
        ("desert box", "dessert box"),
        ("Milo", "Nilo"),
        ("tank left", "left tank"),
    ],
)
def test_these_sound_alike(one: str, other: str) -> None:
    assert sounds_like(one, ["pepper", other]) == other
    assert sounds_like(other, [one]) == one


@pytest.mark.parametrize(
    ("one", "other"),
    [("yellow bottle", "pink bottle"), ("tub one", "tub two"), ("north rack", "south rack"), ("pepper", "basil")],
)
def test_these_do_not(one: str, other: str) -> None:
    assert sounds_like(one, [other]) is None


def test_a_name_does_not_sound_like_itself() -> None:
    assert sounds_like("River tank", ["river tank"]) is None


def test_a_name_without_letters_is_like_no_word() -> None:
    assert sounds_like("壱", ["river tank"]) is None


def test_no_two_names_of_the_demo_sound_alike() -> None:
    content = tomllib.loads(DEMO.read_text(encoding="utf-8"))
    things = [thing for kind in ("bottle", "stock", "measure", "enclosure") for thing in content[kind]]
    names = [name for thing in things for name in (thing["name"], *thing.get("also", ()))]
    assert [pair for pair in combinations(names, 2) if sounds_like(pair[0], pair[1:])] == []
