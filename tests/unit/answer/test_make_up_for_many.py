"""How much to make up for a rack, a group, both, or the whole round: each enclosure, and the sum."""

from __future__ import annotations

from fractions import Fraction

import pytest
from talk import Talk

from assistant.contract import Outcome

LONG_WALL = ["river tank", "desert box"]
HEALTHY = [*LONG_WALL, "window cage"]


@pytest.mark.parametrize(
    ("said", "homes"),
    [
        ("how much for the long wall", LONG_WALL),
        ("how much mix do I need for the short wall", ["window cage"]),
        ("how much will the long wall take", LONG_WALL),
        ("how many bottles of bleach for the long wall", LONG_WALL),
        ("how much bleach for all the healthy ones", HEALTHY),
        ("how many yellow bottles for all the healthy ones", HEALTHY),
        ("how much for the whole rack", ["rack tub seven", "hospital tub"]),
        ("how much solution for the sick one", ["hospital tub"]),
        ("what do I need to make up for all the healthy ones", HEALTHY),
        ("how much mix for all of today's round", [*HEALTHY, "rack tub seven", "hospital tub"]),
    ],
)
def test_a_rack_or_a_group_is_every_enclosure_of_it(said: str, homes: list[str]) -> None:
    reply = Talk().tell(said)
    assert (reply.intent, reply.outcome) == ("make_up", Outcome.ANSWER)
    assert reply.values["enclosures"] == homes
    assert [one["enclosure"] for one in reply.values["each"]] == homes


def test_the_sum_is_that_of_each_and_so_are_the_bottles() -> None:
    # Floor and four walls of a box, by hand: 1.2 x 0.6 + 2 x 0.6 x (1.2 + 0.6) = 2.88; 0.9 x 0.45 + 2 x 0.45 x 1.35.
    values = Talk().tell("how much of the yellow bottle for the long wall").values
    assert [one["area"].amount for one in values["each"]] == [Fraction("2.88"), Fraction("1.62")]
    assert values["area"].amount == Fraction("4.5")
    assert values["solution"].amount == sum(one["solution"].amount for one in values["each"])
    assert values["bottles"] == 1


def test_more_than_a_bottle_holds_takes_another_one() -> None:
    values = Talk().tell("how many clear bottles for all the healthy ones").values
    assert values["solution"].amount > 250
    assert values["bottles"] == 2


def test_where_the_bottles_differ_each_is_shown() -> None:
    reply = Talk().tell("how much for all the healthy ones")
    assert reply.values["bottles"] is None
    assert "Yellow bottle 1 fill" in reply.show
    assert "clear bottle 2 fills" in reply.show


def test_both_are_the_two_in_work() -> None:
    talk = Talk()
    talk.tells("start the river tank with bleach", "start the window cage with bleach")
    reply = talk.tell("how much mix do I need for both")
    assert reply.values["enclosures"] == ["river tank", "window cage"]
    assert reply.values["bottle"] == "yellow bottle"


def test_both_are_the_two_just_spoken_of() -> None:
    talk = Talk()
    talk.tell("how much mix for the window cage and the hospital tub")
    assert talk.tell("and how much for both with the pink bottle").values["enclosures"] == [
        "window cage",
        "hospital tub",
    ]


def test_which_two_is_asked_where_nothing_tells_them() -> None:
    reply = Talk().tell("how much mix do I need for both")
    assert reply.outcome is Outcome.ASK
    assert "enclosure" in reply.missing


def test_two_soaks_are_a_sum() -> None:
    # 80 x 45 x 20 cm = 72 L; 70 x 50 x 40 cm = 140 L.
    values = Talk().tell("how much to soak things in tub seven and the hospital tub").values
    assert values["solution"].amount == 212
    assert [one["solution"].amount for one in values["each"]] == [72, 140]


@pytest.mark.parametrize("said", ["how much longer for both", "how much time for the long wall"])
def test_what_is_no_mix_is_none(said: str) -> None:
    assert Talk().tell(said).intent != "make_up"
