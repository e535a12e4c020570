"""Bowls, branches, tongs: the way, its figure, the refusal of wet wood in the oven, and sharing by group."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from fractions import Fraction
from typing import Any

import pytest

from assistant.answer.items import share_tool, treat_item
from assistant.contract import Answer, Outcome, Reading, Slots, World
from assistant.core.facts import Facts
from assistant.core.household import Household
from assistant.core.quantities.amounts import Amount
from assistant.core.record.as_recorded import as_recorded
from assistant.core.record.events import GroupChanged, ItemBegun, Recorded, RoundStarted, StepDone
from assistant.core.record.fold import fold_all
from assistant.core.round.rounds import STEPS
from assistant.say.wording import line_of

NOW = datetime(2026, 3, 2, 9, tzinfo=UTC)


@pytest.fixture
def world(facts: Facts, household: Household) -> World:
    return World(NOW, household, facts, {}, lambda *_: Reading("", None))


def told(world: World, *events: Any, hours_ago: float = 0) -> World:
    at = NOW - timedelta(hours=hours_ago)
    state = fold_all(Recorded(at, f"t{place}", event) for place, event in enumerate(events))
    return replace(world, state=state, household=as_recorded(world.household, state))


def treat(world: World, *items: str, **slots: Any) -> Answer:
    return treat_item(Reading("", "treat_item", Slots(items=items, **slots)), world)


def share(world: World, *items: str, **slots: Any) -> Answer:
    return share_tool(Reading("", "share_tool", Slots(items=items, **slots)), world)


# ---------------------------------------------------------------- one item


@pytest.mark.parametrize(
    ("item", "way", "minutes", "degrees"),
    [
        ("bowl", "soak", None, None),
        ("stone", "boil", 30, None),
        ("tongs", "soak", None, None),
        ("branch", "bake", 120, 93),
        ("hide", "soak", None, None),
        ("fabric", "wash hot", None, 60),
        ("wiping cloth", "bin", None, None),
        ("substrate", "bin", None, None),
        ("plant", "bin", None, None),
        ("tub", "soak", None, None),
        ("electrics", "wipe", None, None),
        ("gloves", "bin", None, None),
    ],
)
def test_each_item_has_its_way(world: World, item: str, way: str, minutes: int | None, degrees: int | None) -> None:
    answer = treat(world, item)
    assert answer.outcome is Outcome.ANSWER
    assert (answer.values["way"], answer.values["minutes"]) == (way, minutes)
    assert answer.values["temperature"] == (Amount(Fraction(degrees), "degC") if degrees else None)
    assert len(line_of(answer).say.split()) <= 25


def test_an_unnamed_item_is_asked_for(world: World) -> None:
    answer = treat(world)
    assert (answer.outcome, answer.missing) == (Outcome.ASK, ("item",))


def test_a_soak_in_a_named_bottle_takes_that_agents_wet_time(world: World) -> None:
    answer = treat(world, "bowl", bottles=("orange bottle",))
    assert answer.values["minutes"] == 10  # weaker than the mix that the label's five minutes are for
    assert line_of(answer).say.startswith("10 minutes in bleach")


def test_a_figure_of_practice_is_said_to_be_one(world: World) -> None:
    answer = treat(world, "branch")
    assert "practice" in line_of(answer).say
    assert answer.sources[0].kind == "practice"


@pytest.mark.parametrize("ways", [("bake",), ("boil",), ("microwave",), ()])
def test_nothing_sprayed_goes_into_heat_before_it_is_rinsed_and_dry(world: World, ways: tuple[str, ...]) -> None:
    assert treat(world, "branch", ways=ways, still_wet=True).outcome is Outcome.REFUSE


def test_what_was_sprayed_may_be_soaked(world: World) -> None:
    assert treat(world, "bowl", ways=("soak",), still_wet=True).outcome is Outcome.ANSWER


@pytest.mark.parametrize("item", ["branch", "fabric", "substrate", "plant", "wiping cloth"])
def test_nothing_porous_outlives_an_illness(world: World, item: str) -> None:
    for sick in (told(world, GroupChanged("east tank", "sick", "healthy")), world):
        slots = {"enclosures": ("east tank",)} if sick is not world else {"organisms": ("mites",)}
        answer = treat(sick, item, **slots)
        assert (answer.values["way"], answer.values["infected"]) == ("bin", True)


def test_what_crypto_was_on_stays_with_its_animal(world: World) -> None:
    line = line_of(treat(world, "bowl", organisms=("cryptosporidium",)))
    assert "stays with that animal" in line.say


def test_a_way_that_nothing_vouches_for_is_not_passed_off(world: World) -> None:
    line = line_of(treat(world, "branch", ways=("microwave",)))
    assert "microwave: nothing i have vouches" in line.say.casefold()


def test_an_item_in_the_oven_runs_by_the_clock(world: World) -> None:
    answer = treat(world, "branch", ways=("bake",), begun=True)
    assert answer.events == (ItemBegun("branch or cork", "bake", 7200.0),)
    assert "2 hours" in line_of(answer).say


def test_an_item_without_a_figure_has_no_clock(world: World) -> None:
    answer = treat(world, "bowl", ways=("soak",), begun=True)
    assert answer.events == ()


# ---------------------------------------------------------------- from one to another


@pytest.mark.parametrize(
    ("item", "taken", "verdict"),
    [
        ("tongs", ("new", "east tank"), "disinfect_first"),
        ("tongs", ("new arrival box", "pond tub"), "disinfect_first"),
        ("tongs", ("sick", "healthy"), "never"),
        ("tongs", ("east tank", "pond tub"), "fine"),
        ("tongs", ("east tank", "new arrival box"), "fine"),
        ("tongs", ("east tank", "east tank"), "fine"),
        ("bowl", ("new arrival box", "east tank"), "never"),
        ("bowl", ("pond tub", "east tank"), "disinfect_first"),
        ("gloves", ("new arrival box", "east tank"), "never"),
        ("wiping cloth", ("new arrival box", "east tank"), "never"),
        ("wiping cloth", ("pond tub", "east tank"), "disinfect_first"),
    ],
)
def test_the_verdict_goes_by_the_groups(world: World, item: str, taken: tuple[str, str], verdict: str) -> None:
    answer = share(world, item, taken=taken)
    assert answer.values["verdict"] == verdict
    assert len(line_of(answer).say.split()) <= 25


def test_gloves_off_a_new_animal_are_changed_wherever_they_go(world: World) -> None:
    answer = share(world, "gloves", taken=("new arrival box", ""))
    assert answer.values["verdict"] == "never"
    assert line_of(answer).say.startswith("New gloves")


@pytest.mark.parametrize("item", [None, "tongs", "gloves", "wiping cloth", "bowl"])
@pytest.mark.parametrize("source", ["healthy", "new", "sick"])
def test_no_verdict_says_yes_or_no_for_it_may_be_asked_either_way_about(
    world: World, item: str | None, source: str
) -> None:
    answer = share(world, *filter(None, [item]), taken=(source, "east tank"))
    assert not line_of(answer).say.casefold().startswith(("yes", "no,", "no."))


def test_where_it_was_used_or_goes_is_asked(world: World) -> None:
    assert share(world, "tongs").missing == ("enclosure",)
    assert "used" in line_of(share(world, "tongs", taken=("", "east tank"))).say
    assert "go" in line_of(share(world, "tongs", taken=("new", ""))).say


def test_the_answer_to_where_it_was_used_completes_it(world: World) -> None:
    answer = share(world, "tongs", taken=("", "east tank"), enclosures=("new arrival box",))
    assert (answer.values["from"], answer.values["to"]) == ("new arrival box", "east tank")


def test_what_was_worked_on_last_stands_for_these_tongs_and_is_named(world: World) -> None:
    busy = told(
        world, RoundStarted("new arrival box", "bleach", STEPS, 600.0, 1.0, 2.0), StepDone("new arrival box", "clear")
    )
    answer = share(busy, "tongs", taken=("", "east tank"), enclosures=("east tank",))
    assert answer.values["from"] == "new arrival box"
    assert "new arrival box" in line_of(answer).show


def test_what_was_worked_on_yesterday_stands_for_nothing(world: World) -> None:
    old = told(world, StepDone("new arrival box", "clear"), hours_ago=20)
    assert share(old, "tongs", taken=("", "east tank")).outcome is Outcome.ASK


def test_a_group_changed_by_word_of_mouth_counts_at_once(world: World) -> None:
    sick = told(world, GroupChanged("pond tub", "sick", "healthy", "mites"))
    assert share(sick, "tongs", taken=("pond tub", "east tank")).values["verdict"] == "never"
