"""Who got which chore, told in one sentence."""

from __future__ import annotations

import pytest

from assistant.core.household import Enclosure, Household
from assistant.understand.named.chores_apart import Apart, chores_apart

SPOT, DEEP, WATER = ("spot clean",), ("deep clean",), ("water",)


def home(name: str, group: str) -> Enclosure:
    return Enclosure(name, group=group)  # type: ignore[arg-type]


HOUSEHOLD = Household(enclosures=(home("a", "healthy"), home("b", "healthy"), home("c", "healthy"), home("d", "sick")))


@pytest.mark.parametrize(
    ("plain", "got"),
    [
        ("spot cleaned ENCLOSURE and gave ENCLOSURE water", (("a", SPOT), ("b", WATER))),
        ("deep cleaned the ENCLOSURE , spot cleaned the rest", (("a", DEEP), ("b", SPOT), ("c", SPOT), ("d", SPOT))),
        ("water for ENCLOSURE , spot clean for ENCLOSURE", (("a", WATER), ("b", SPOT))),
        ("spot cleaned ENCLOSURE and gave ENCLOSURE and ENCLOSURE water", (("a", SPOT), ("b", WATER), ("c", WATER))),
        ("ENCLOSURE got a deep clean and ENCLOSURE got water", (("a", DEEP), ("b", WATER))),
        ("spot clean and water for ENCLOSURE , just water for ENCLOSURE", (("a", (*WATER, *SPOT)), ("b", WATER))),
        ("spot cleaned ENCLOSURE but only watered ENCLOSURE", (("a", SPOT), ("b", WATER))),
        ("spot cleaned healthy ones , deep cleaned the sick one", (("a", SPOT), ("b", SPOT), ("c", SPOT), ("d", DEEP))),
        ("spot cleaned all but ENCLOSURE , just watered that", (("b", SPOT), ("c", SPOT), ("d", SPOT), ("a", WATER))),
    ],
)  # fmt: skip
def test_each_gets_what_was_told_of_it(plain: str, got: Apart) -> None:
    assert chores_apart(plain, ("a", "b", "c")[: plain.count("ENCLOSURE")], HOUSEHOLD) == got


@pytest.mark.parametrize(
    "plain",
    [
        "spot cleaned ENCLOSURE , ENCLOSURE and ENCLOSURE",
        "spot cleaned and watered ENCLOSURE",
        "spot cleaned ENCLOSURE , changed her water",
        "spot cleaned all the healthy ones , fresh water too",
        "spot cleaned ENCLOSURE but not ENCLOSURE",
    ],
)
def test_where_all_got_the_same_nothing_is_apart(plain: str) -> None:
    assert chores_apart(plain, ("a", "b", "c")[: plain.count("ENCLOSURE")], HOUSEHOLD) == ()


def test_what_can_be_told_in_two_ways_is_told_in_none() -> None:
    assert (
        chores_apart("spot cleaned ENCLOSURE , ENCLOSURE and ENCLOSURE got water", ("a", "b", "c"), HOUSEHOLD) is None
    )


def test_a_name_that_is_not_clear_is_left_to_be_asked_about() -> None:
    assert chores_apart("spot cleaned ENCLOSURE and gave ENCLOSURE water", ("a", ""), HOUSEHOLD) == ()
