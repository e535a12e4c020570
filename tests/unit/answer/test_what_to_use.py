"""What to use, whether it works, what it may touch, what to wear, and why: the keys of the reply and its one breath."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import UTC, datetime
from itertools import product
from typing import Any

import pytest

from assistant.answer.does_it_work import works_on
from assistant.answer.may_touch import surface
from assistant.answer.protecting import protect
from assistant.answer.talk import why
from assistant.answer.what_to_use import choose_agent
from assistant.contract import Answer, Outcome, Reading, Reply, Slots, Talk, Unknown, World
from assistant.core.facts import Facts
from assistant.core.household import Household, People
from assistant.say.wording import line_of
from assistant.store.packaged import packaged_facts

FACTS = packaged_facts()
NOW = datetime(2026, 3, 2, 9, tzinfo=UTC)
BLEACH, CHX = "sodium hypochlorite", "chlorhexidine"
NOT_SPOKEN = re.compile(r"[%/<>=+]|(?<!\d):(?! |$)|\bsafe\b|\bhold\b|\bapply\b|\bneat\b", re.IGNORECASE)


def nothing(*_: Any) -> Reading:
    raise AssertionError("nothing is read again")


@pytest.fixture
def world(household: Household, facts: Facts) -> World:
    return World(NOW, household, facts, {}, nothing)


def asked(intent: str, question: str = "what now", **slots: Any) -> Reading:
    return Reading(question, intent, Slots(**slots))


def spoken_well(answer: Answer) -> None:
    line = line_of(answer)
    assert len(line.say.split()) <= 25, line.say
    assert not NOT_SPOKEN.search(line.say), line.say


# ---------------------------------------------------------------- every answer in one breath


@pytest.mark.parametrize(("agent", "organism"), list(product((*FACTS.agents, *FACTS.methods), FACTS.organisms)))
def test_every_agent_against_every_germ_is_answered_in_one_breath(agent: str, organism: str, world: World) -> None:
    named = {"methods": (agent,)} if agent in FACTS.methods else {"agents": (agent,)}
    answer = works_on(asked("works_on", organisms=(organism,), **named), world)
    spoken_well(answer)
    assert {"minutes", "strength_percent", "verdict"} <= set(answer.values)
    assert answer.values["verdict"] in ("works", "fails", "unknown")
    if agent in ("acetic acid", "detergent"):
        assert answer.values["verdict"] == "fails"
    if answer.values["verdict"] != "works":
        assert answer.values["minutes"] is None
        assert answer.values["strength_percent"] is None


@pytest.mark.parametrize("organism", FACTS.organisms)
def test_every_germ_is_given_a_choice_in_one_breath(organism: str, world: World) -> None:
    answer = choose_agent(asked("choose_agent", organisms=(organism,)), world)
    spoken_well(answer)
    assert {"agent", "strength_percent", "minutes", "verdict", "ranked", "passed_over"} <= set(answer.values)


@pytest.mark.parametrize(("agent", "material"), list(product(FACTS.agents, FACTS.materials)))
def test_every_agent_on_every_material_is_answered_in_one_breath(agent: str, material: str, world: World) -> None:
    answer = surface(asked("surface", agents=(agent,), materials=(material,)), world)
    spoken_well(answer)
    assert answer.values["verdict"] in ("fine", "short", "wipe", "porous", "never", None, "unknown")


@pytest.mark.parametrize("job", ["scale", "dirt", "routine", "illness", "quarantine", "mites"])
def test_every_job_is_answered_in_one_breath(job: str, world: World) -> None:
    spoken_well(choose_agent(asked("choose_agent", job=job), world))


@pytest.mark.parametrize("agent", FACTS.agents)
@pytest.mark.parametrize("words", ["what do I wear", "is a mask enough", "the kitchen sink", "wash my hands", "my kid"])
def test_protection_is_told_in_one_breath(agent: str, words: str, world: World) -> None:
    spoken_well(protect(asked("protect", words, agents=(agent,)), world))


# ---------------------------------------------------------------- what they say


def test_no_fact_from_memory_is_spoken_as_one(world: World) -> None:
    for organism in FACTS.organisms:
        answer = choose_agent(asked("choose_agent", organisms=(organism,)), world)
        says = {FACTS[source.id].says for source in answer.sources if source.kind == "memory"}
        assert not any(text in line_of(answer).say for text in says)


def test_a_no_comes_with_what_does_work(world: World) -> None:
    answer = works_on(asked("works_on", agents=(BLEACH,), organisms=("cryptosporidium",)), world)
    say = line_of(answer).say
    assert answer.values["verdict"] == "fails"
    assert say.startswith("No. Undiluted bleach failed on a close relative")
    assert "Heat worked" in say
    assert say.endswith("Ask your vet for the plan.")


def test_the_wet_time_told_is_never_shorter_than_the_agents_own(world: World) -> None:
    answer = works_on(asked("works_on", agents=(BLEACH,), organisms=("adenovirus",)), world)
    assert (answer.values["minutes"], answer.values["wet_minutes"]) == (1.0, 10.0)
    assert "keep it wet 10 minutes" in line_of(answer).say


def test_a_refused_agent_stays_refused_however_well_it_kills(world: World) -> None:
    answer = works_on(asked("works_on", agents=("phenolic",), organisms=("mycobacterium",)), world)
    assert answer.outcome is Outcome.REFUSE
    assert "toxic to reptiles" in line_of(answer).say


def test_the_vets_agents_get_no_strength_and_no_time(world: World) -> None:
    answer = works_on(asked("works_on", agents=("ammonia",), organisms=("coccidia",)), world)
    assert (answer.values["strength_percent"], answer.values["minutes"]) == (None, None)
    assert "your vet's plan" in line_of(answer).say


def test_a_germ_spoken_of_before_is_still_meant(world: World) -> None:
    before = Reply("", "works_on", Outcome.ANSWER, "", "", values={"organism": "cryptosporidium"})
    talked = replace(world, talk=Talk(last=before))
    answer = works_on(asked("works_on", "how hot"), talked)
    assert (answer.values["degrees"], answer.values["minutes"]) == (72.4, 1.0)
    assert works_on(asked("works_on", agents=(CHX,)), world).missing == ("organism",)


def test_a_product_of_unknown_content_is_never_vouched_for(world: World) -> None:
    unknown = (Unknown("agent", "toilet cleaner"),)
    for answer in (
        works_on(asked("works_on", organisms=("salmonella",), unknown=unknown), world),
        surface(asked("surface", materials=("glass",), unknown=unknown), world),
    ):
        assert answer.values["agent"] == "other"
        assert line_of(answer).say.startswith("I don't know what is in the toilet cleaner")


def test_an_enclosure_stands_for_its_material(world: World) -> None:
    answer = surface(asked("surface", agents=(BLEACH,), enclosures=("east tank",)), world)
    assert (answer.values["material"], answer.values["verdict"]) == ("glass", "fine")


def test_what_is_missing_is_asked(world: World) -> None:
    assert choose_agent(asked("choose_agent"), world).outcome is Outcome.ASK
    assert works_on(asked("works_on", organisms=("salmonella",)), world).missing == ("agent",)
    assert surface(asked("surface", agents=(BLEACH,)), world).missing == ("material", "enclosure")
    assert surface(asked("surface", materials=("glass",)), world).missing == ("agent",)


def test_those_at_risk_at_home_are_named(world: World) -> None:
    home = replace(world.household, people=People(at_risk=("under 5", "immune")))
    shown = line_of(protect(asked("protect"), replace(world, household=home))).show
    assert "Children under five" in shown
    assert "defences are weak" in shown


def test_a_mask_is_never_said_to_stop_gas(world: World) -> None:
    answer = protect(asked("protect", "is my mask enough for bleach", agents=(BLEACH,)), world)
    assert answer.values["mask_stops_gas"] is False
    assert line_of(answer).say.startswith("A dust mask stops no gas.")


# ---------------------------------------------------------------- why


def after(answer: Answer, world: World) -> World:
    line = line_of(answer)
    reply = Reply("", answer.intent, answer.outcome, line.say, line.show, answer.values, sources=answer.sources)
    return replace(world, talk=Talk(last=reply))


def test_why_speaks_the_first_source_in_our_words_and_shows_the_rest(world: World) -> None:
    told = works_on(asked("works_on", agents=(BLEACH,), organisms=("adenovirus",)), world)
    answer = why(asked("why"), after(told, world))
    spoken_well(answer)
    assert line_of(answer).say.startswith("Bleach worked on human adenovirus in a minute.")
    assert "Rutala WA" in line_of(answer).show
    assert answer.values["of"] == "works_on"
    assert {source["kind"] for source in answer.values["sources"]} == {"published"}


def test_why_again_is_about_the_same_answer(world: World) -> None:
    told = works_on(asked("works_on", agents=(BLEACH,), organisms=("adenovirus",)), world)
    once = why(asked("why"), after(told, world))
    twice = why(asked("why"), after(once, world))
    assert (twice.values["of"], twice.values["said"]) == (once.values["of"], once.values["said"])
    assert twice.sources == once.sources


def test_why_owns_that_a_habit_has_no_source(world: World) -> None:
    habit = FACTS["wet-time-bleach-habit"].cited()
    last = Reply("", "hold_time", Outcome.ANSWER, "Half a minute.", "", sources=(habit,))
    say = line_of(why(asked("why"), replace(world, talk=Talk(last=last)))).say
    assert "common practice, no published source" in say


def test_why_never_speaks_a_memory_as_a_fact(world: World) -> None:
    memory = FACTS["together-bleach-iodine"].cited()
    last = Reply("", "together", Outcome.ANSWER, "Never.", "", sources=(memory,))
    say = line_of(why(asked("why"), replace(world, talk=Talk(last=last)))).say
    assert FACTS["together-bleach-iodine"].says not in say
    assert "from memory" in say


def test_why_of_nothing_said_or_of_no_figure_says_so(world: World) -> None:
    assert why(asked("why"), world).outcome is Outcome.UNSURE
    bare = Reply("", "status", Outcome.ANSWER, "Washed.", "")
    assert "no published figure" in line_of(why(asked("why"), replace(world, talk=Talk(last=bare)))).say
