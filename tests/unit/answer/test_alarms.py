"""Escape and spill: what is said first, what is kept on record, and that no round is touched."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime
from typing import Any

import pytest
from tool import Tool

from assistant.answer.alarms import escape, spill
from assistant.contract import Answer, Outcome, Reading, Slots, World
from assistant.core.facts import Facts
from assistant.core.household import Household
from assistant.core.record.events import (
    AgentTouched,
    AnimalFound,
    AnimalLoose,
    GasMade,
    Recorded,
    RoundStarted,
    StepDone,
)
from assistant.core.record.fold import fold_all
from assistant.core.record.state import State
from assistant.core.round.rounds import STEPS
from assistant.say.wording import line_of

NOW = datetime(2026, 3, 2, 9, tzinfo=UTC)
BLEACH, VINEGAR = "sodium hypochlorite", "acetic acid"


def state_of(*events: Any) -> State:
    return fold_all(Recorded(NOW, f"t{place}", event) for place, event in enumerate(events))


@pytest.fixture
def world(facts: Facts, household: Household) -> World:
    return World(NOW, household, facts, {}, lambda *_: Reading("", None))


def being_cleaned(world: World, home: str = "east tank", *steps: str) -> World:
    done = [StepDone(home, step, agent=BLEACH if step == "apply" else None, hold_s=600.0) for step in steps]
    return replace(world, state=state_of(RoundStarted(home, BLEACH, STEPS, 600.0, 1.0, 2.0), *done))


def said(question: str, intent: str = "escape", **slots: Any) -> Reading:
    return Reading(question, intent, Slots(**slots))


def first_sentence(answer: Answer) -> str:
    return line_of(answer).say.split(".")[0]


# ---------------------------------------------------------------- an escape


def test_an_escape_says_first_to_stop_spraying(world: World) -> None:
    assert first_sentence(escape(said("he's escaped"), world)) == "Stop spraying"


def test_an_escape_never_records_a_step(world: World) -> None:
    busy = being_cleaned(world, "east tank", "move out", "clear", "wash", "apply")
    for question in ("he's escaped", "he's out of the tub!", "found him"):
        events = escape(said(question, found="found" in question), busy).events
        assert not any(isinstance(event, StepDone | RoundStarted) for event in events)


def test_the_only_animal_outside_is_the_one_meant(world: World) -> None:
    answer = escape(said("he's escaped"), being_cleaned(world, "east tank", "move out"))
    assert answer.events == (AnimalLoose("east tank"),)
    assert answer.values["enclosure"] == "east tank"


def test_whose_animal_it_is_stays_open_where_it_cannot_be_told(world: World) -> None:
    answer = escape(said("he's escaped"), world)
    assert answer.outcome is Outcome.ANSWER
    assert answer.values["enclosure"] is None
    assert answer.events == (AnimalLoose(""),)


@pytest.mark.parametrize("question", ["what if he escapes", "what do I do if he gets out", "has he escaped?"])
def test_a_question_about_an_escape_puts_none_on_record(world: World, question: str) -> None:
    answer = escape(said(question), world)
    assert answer.events == ()
    assert answer.values["loose"] is None
    assert first_sentence(answer) == "Stop spraying"


def test_an_animal_that_may_have_crossed_spray_is_to_be_rinsed(world: World) -> None:
    sprayed = being_cleaned(world, "east tank", "move out", "clear", "wash", "apply")
    line = line_of(escape(said("he's escaped"), sprayed))
    assert "lukewarm water" in line.say
    assert "bleach" in line.show


def test_one_found_while_its_home_is_cleaned_does_not_go_home(world: World) -> None:
    busy = being_cleaned(world, "east tank", "move out")
    busy = replace(busy, state=fold_all((Recorded(NOW, "x", AnimalLoose("east tank")),), onto=busy.state))
    answer = escape(said("found him", found=True), busy)
    assert answer.events == (AnimalFound("east tank"),)
    assert "not back home" in line_of(answer).say


# ---------------------------------------------------------------- a spill


@pytest.mark.parametrize(
    ("agent", "must", "never"),
    [
        (BLEACH, "plenty of water", "vinegar on"),
        ("isopropyl alcohol", "heat and flames off", "water, mop"),
        (VINEGAR, "keep bleach", "alcohol"),
        ("quaternary ammonium", "no other cleaner", "vinegar"),
        ("other", "no other cleaner", "vinegar"),
    ],
)
def test_a_spill_gets_everyone_out_then_says_what_soaks_it_up(world: World, agent: str, must: str, never: str) -> None:
    answer = spill(said("spilled it", "spill", agents=(agent,)), world)
    line = line_of(answer)
    assert line.say.startswith("Animals and people out")
    assert must in line.say.casefold()
    assert never not in line.say.casefold()
    assert answer.events == ()


def test_a_spill_of_no_named_product_sends_to_the_label(world: World) -> None:
    assert "label" in line_of(spill(said("spilled something", "spill"), world)).say


def test_a_spill_in_an_enclosure_is_kept_as_having_touched_it(world: World) -> None:
    answer = spill(said("spilled bleach in the east tank", "spill", agents=(BLEACH,), enclosures=("east tank",)), world)
    assert answer.events == (AgentTouched("east tank", BLEACH),)


def test_a_spill_onto_another_agent_is_gas(world: World) -> None:
    sprayed = being_cleaned(world, "east tank", "move out", "clear", "wash", "apply")
    reading = said("spilled vinegar in the east tank", "spill", agents=(VINEGAR,), enclosures=("east tank",))
    answer = spill(reading, sprayed)
    assert answer.outcome is Outcome.REFUSE
    assert any(isinstance(event, GasMade) for event in answer.events)


def test_a_spill_of_one_product_onto_another_is_gas_too(world: World) -> None:
    both = said("spilled bleach onto the vinegar", "spill", agents=(BLEACH, VINEGAR))
    assert spill(both, world).outcome is Outcome.REFUSE
    asked = said("can I put vinegar on spilled bleach", "spill", agents=(BLEACH, VINEGAR))
    assert "No vinegar" in line_of(spill(asked, world)).say


def test_a_spill_named_by_its_bottle_is_what_the_bottle_is_for(world: World) -> None:
    assert spill(said("leaking", "spill", bottles=("orange bottle",)), world).values["agent"] == BLEACH


def test_an_alarm_uses_up_no_question_of_the_tools(household: Household) -> None:
    tool = Tool(household)
    tool.say("dose", bottles=(), agents=(BLEACH,))
    waiting = tool.talk.pending
    tool.hear(said("he's escaped"))
    tool.hear(said("spilled bleach", "spill", agents=(BLEACH,)))
    assert waiting is not None
    assert tool.talk.pending == waiting
