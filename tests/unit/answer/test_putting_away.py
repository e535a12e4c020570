"""Pouring away, unknown bottles, storage: never the kitchen sink, never a guess, never side by side what reacts."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime
from fractions import Fraction
from itertools import combinations
from typing import Any

import pytest

from assistant.answer.putting_away import NEVER_THERE, pour_away, store_it, unknown_bottle
from assistant.contract import Answer, Outcome, Reading, Slots, World
from assistant.core.choice.together import meet
from assistant.core.facts import Facts
from assistant.core.household import Household
from assistant.core.quantities.amounts import Amount
from assistant.core.record.events import BottleDoubted, GasMade, Recorded
from assistant.core.record.fold import fold_all
from assistant.say.wording import line_of

NOW = datetime(2026, 3, 2, 9, tzinfo=UTC)
BLEACH, VINEGAR, IPA = "sodium hypochlorite", "acetic acid", "isopropyl alcohol"
AGENTS = (BLEACH, VINEGAR, IPA, "chlorhexidine", "quaternary ammonium", "hydrogen peroxide", "ammonia", "detergent")


@pytest.fixture
def world(facts: Facts, household: Household) -> World:
    return World(NOW, household, facts, {}, lambda *_: Reading("", None))


def pour(world: World, question: str = "", **slots: Any) -> Answer:
    return pour_away(Reading(question, "pour_away", Slots(**slots)), world)


def words(answer: Answer) -> str:
    say = line_of(answer).say
    assert len(say.split()) <= 25
    return say.casefold()


# ---------------------------------------------------------------- pouring away


@pytest.mark.parametrize("agent", AGENTS)
@pytest.mark.parametrize("drain", sorted(NEVER_THERE))
def test_nothing_goes_into_the_kitchen_sink_or_outdoors(world: World, agent: str, drain: str) -> None:
    answer = pour(world, agents=(agent,), drains=(drain,))
    assert (answer.outcome, answer.values["verdict"]) == (Outcome.REFUSE, "never")


def test_a_weak_mix_goes_a_cup_at_a_time_with_water(world: World) -> None:
    answer = pour(world, bottles=("orange bottle",))
    assert answer.values["amount"] == Amount(Fraction(1), "US cup")
    assert "water running" in words(answer)
    assert "nothing acid" in words(answer)
    assert "kitchen" in words(answer)


def test_a_concentrate_and_alcohol_go_to_collection(world: World) -> None:
    assert pour(world, stocks=("shed bleach",)).values["verdict"] == "collection"
    assert pour(world, "undiluted bleach", agents=(BLEACH,)).values["verdict"] == "collection"
    assert "evaporate" in words(pour(world, agents=(IPA,)))


def test_a_septic_tank_gets_one_bucket_a_day(world: World) -> None:
    assert "septic" in words(pour(world, agents=(BLEACH,), drains=("septic",)))


def test_what_nobody_knows_is_not_poured(world: World) -> None:
    gas = fold_all((Recorded(NOW, "t", GasMade((BLEACH, VINEGAR), bottle="white bottle")),))
    for answer in (
        pour(replace(world, state=gas), bottles=("white bottle",)),
        pour(world, agents=("other",)),
    ):
        assert answer.outcome is Outcome.REFUSE
        assert words(answer).startswith("don't pour")


def test_what_to_pour_is_asked(world: World) -> None:
    assert pour(world).outcome is Outcome.ASK


# ---------------------------------------------------------------- a bottle that nobody knows


@pytest.mark.parametrize(
    "wish", ["sniffing", "tasting", "its colour", "mixing", "trying it out", "guessing", "shaking"]
)
def test_no_way_of_guessing_is_allowed(world: World, wish: str) -> None:
    answer = unknown_bottle(Reading("", "unknown_bottle", Slots(wish=wish)), world)
    assert answer.outcome is Outcome.REFUSE
    assert words(answer).startswith("no.")


def test_a_bottle_of_the_households_own_is_marked_unknown(world: World) -> None:
    answer = unknown_bottle(Reading("", "unknown_bottle", Slots(bottles=("blue bottle",))), world)
    assert answer.events == (BottleDoubted("blue bottle"),)
    assert "rinsed out" in line_of(answer).show


def test_a_stranger_is_left_shut(world: World) -> None:
    answer = unknown_bottle(Reading("", "unknown_bottle"), world)
    assert answer.outcome is Outcome.ANSWER
    assert answer.events == ()
    assert "don't open, sniff, shake, pour or use it" in words(answer)


# ---------------------------------------------------------------- where it is kept


def keep(world: World, **slots: Any) -> Answer:
    return store_it(Reading("", "store_it", Slots(**slots)), world)


@pytest.mark.parametrize("agent", AGENTS)
def test_every_product_is_kept_locked_in_its_own_bottle(world: World, agent: str) -> None:
    said = words(keep(world, agents=(agent,)))
    assert "own bottle" in said
    assert "locked" in said


def test_bleach_is_kept_below_a_figure(world: World) -> None:
    answer = keep(world, agents=(BLEACH,))
    assert answer.values["temperature"] == Amount(Fraction(25), "degC")
    assert words(answer).startswith("below 25 degrees")


@pytest.mark.parametrize(("first", "second"), list(combinations(AGENTS, 2)))
def test_what_must_not_meet_is_kept_apart(world: World, facts: Facts, first: str, second: str) -> None:
    answer = keep(world, agents=(first, second))
    pair = meet(facts.agents[first], facts.agents[second], facts)
    apart = pair is None or pair.verdict == "never"
    assert answer.values["verdict"] == ("apart" if apart else "fine")
    assert ("apart" in words(answer)) == apart
