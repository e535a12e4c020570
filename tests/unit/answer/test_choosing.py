"""Whether agents may meet, asked; what to do when they have; and the refusal before they do."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from itertools import combinations, product
from typing import Any

import pytest

from assistant.answer.choosing import together
from assistant.answer.meeting import gas_made, refused_meeting
from assistant.contract import Answer, Choice, Outcome, Reading, Slots, Unknown, World
from assistant.core.choice.together import meet, uncleared
from assistant.core.facts import Facts
from assistant.core.household import Bottle, Household, People, Stock
from assistant.core.quantities.amounts import Amount
from assistant.core.record.events import (
    AgentTouched,
    Event,
    GasMade,
    Recorded,
    RoundStarted,
    SurfaceDried,
    SurfaceRinsed,
)
from assistant.core.record.fold import fold_all
from assistant.core.record.state import Touch
from assistant.core.round.rounds import STEPS
from assistant.say.wording import line_of

NOW = datetime(2026, 3, 2, 9, tzinfo=UTC)
BLEACH, VINEGAR, CHX = "sodium hypochlorite", "acetic acid", "chlorhexidine"
HOUSEHOLD = Household(
    people=People(poison_centre="555 0142", emergency="555 0199"),
    stocks=(Stock("shed bleach", BLEACH), Stock("spirit vinegar", VINEGAR)),
    bottles=(
        Bottle("orange bottle", Amount(500, "mL"), stock="shed bleach"),  # type: ignore[arg-type]
        Bottle("green bottle", Amount(500, "mL"), stock="spirit vinegar"),  # type: ignore[arg-type]
        Bottle("spare bottle", Amount(500, "mL")),  # type: ignore[arg-type]
    ),
)


def no_reading(*_: Any) -> Reading:
    raise AssertionError("nothing is read again")


@pytest.fixture
def world(facts: Facts) -> World:
    return World(NOW, HOUSEHOLD, facts, {}, no_reading)


def asked(*agents: str, question: str = "may they meet", **slots: Any) -> Reading:
    return Reading(question, "together", Slots(agents=agents, **slots))


def after(world: World, *events: Event) -> World:
    return replace(world, state=fold_all(Recorded(NOW - timedelta(hours=1), "t1", event) for event in events))


def bleached(world: World, enclosure: str = "maple tub", *more: Event) -> World:
    return after(world, AgentTouched(enclosure, BLEACH), *more)


def words(text: str) -> int:
    return len(text.split())


# ---------------------------------------------------------------- asked


@pytest.mark.parametrize(
    ("first", "second", "verdict", "gas"),
    [
        (BLEACH, VINEGAR, "never", True),
        (BLEACH, "ammonia", "never", True),
        (BLEACH, "isopropyl alcohol", "never", True),
        (BLEACH, "hydrogen peroxide", "never", True),
        (BLEACH, CHX, "never", False),
        (CHX, "detergent", "rinse_between", False),
        (CHX, "ethanol", "fine", False),
    ],
)
def test_a_pair_gets_its_verdict_in_either_order(
    first: str, second: str, verdict: str, gas: bool, world: World
) -> None:
    for one, other in ((first, second), (second, first)):
        answer = together(asked(one, other), world)
        assert answer.outcome is Outcome.ANSWER
        assert (answer.values["verdict"], answer.values["gas"]) == (verdict, gas)
        assert answer.events == ()


def test_every_pair_is_said_in_one_breath_without_calling_anything_safe(world: World) -> None:
    for one, other in combinations(world.facts.agents, 2):
        for met, surface in product((False, True), ((), ("maple tub",))):
            line = line_of(together(asked(one, other, met=met, enclosures=surface), world))
            assert words(line.say) <= 25, line.say
            assert "safe" not in (line.say + line.show).casefold()
            assert not re.search(r"[%/+()]", line.say), line.say


def test_what_is_from_memory_is_never_said_as_a_fact(world: World) -> None:
    for one, other in combinations(world.facts.agents, 2):
        pair = meet(world.facts.agents[one], world.facts.agents[other], world.facts)
        if pair is None or world.facts[pair.fact].kind != "memory":
            continue
        for met in (False, True):
            answer = together(asked(one, other, met=met), world)
            if answer.message != "choosing.gas_made":
                assert "without a published source" in line_of(answer).say
                assert world.facts[pair.fact].says not in line_of(answer).say


def test_bleach_with_vinegar_is_told_plainly(world: World) -> None:
    say = line_of(together(asked(BLEACH, VINEGAR), world)).say
    assert say == "Never. Bleach with any acid makes chlorine gas. On a surface, rinse and dry between."


@pytest.mark.parametrize("kind", ["agent", "stock", "bottle"])
def test_a_product_of_unknown_content_is_never_guessed_at(kind: str, world: World) -> None:
    answer = together(asked(BLEACH, unknown=(Unknown(kind, "toilet cleaner"),)), world)
    assert answer.outcome is Outcome.ANSWER
    assert answer.values["verdict"] is None
    say = line_of(answer).say
    assert say.startswith("Don't mix. I don't know what is in the toilet cleaner")
    assert "label" in say


def test_two_unknown_products_are_answered_the_same(world: World) -> None:
    unknown = (Unknown("agent", "toilet cleaner"), Unknown("agent", "window spray"))
    answer = together(asked(unknown=unknown), world)
    assert answer.values.get("verdict") is None
    assert "don't mix" in line_of(answer).say.casefold()


def test_stocks_and_bottles_stand_for_what_is_in_them(world: World) -> None:
    assert together(asked(stocks=("shed bleach", "spirit vinegar")), world).values["gas"] is True
    assert together(asked(VINEGAR, bottles=("orange bottle",)), world).values["gas"] is True
    assert together(asked(VINEGAR, bottles=("spare bottle",)), world).values["verdict"] is None


def test_a_word_that_fits_two_products_is_taken_as_the_worse(world: World) -> None:
    choice = Choice("bottle", "the bottle", ("orange bottle", "green bottle"))
    assert together(asked(VINEGAR, choices=(choice,)), world).values["gas"] is True


def test_one_agent_named_twice_meets_itself(world: World) -> None:
    answer = together(asked(BLEACH, bottles=("orange bottle",)), world)
    assert answer.values["verdict"] == "fine"
    met = together(asked(BLEACH, bottles=("orange bottle",), met=True), bleached(world, "maple tub"))
    assert (met.outcome, met.values["gas"]) == (Outcome.ANSWER, False)


def test_what_was_poured_into_a_bottle_has_not_met_what_is_on_a_surface(world: World) -> None:
    started = RoundStarted("maple tub", VINEGAR, STEPS, None, 1.0, 4.6)
    answer = together(asked(BLEACH, bottles=("orange bottle",), met=True), after(world, started))
    assert answer.values["gas"] is False


def test_of_three_the_worst_two_are_told(world: World) -> None:
    answer = together(asked("detergent", BLEACH, VINEGAR), world)
    assert answer.values["agents"] == (BLEACH, VINEGAR)


def test_one_agent_is_taken_with_what_is_on_the_only_open_round(world: World) -> None:
    started = RoundStarted("maple tub", BLEACH, STEPS, 600.0, 1.0, 4.6)
    answer = together(asked(VINEGAR), after(world, started))
    assert answer.values["agents"] == (BLEACH, VINEGAR)


def test_one_agent_is_taken_with_what_is_on_the_enclosure_named(world: World) -> None:
    answer = together(asked(VINEGAR, enclosures=("maple tub",)), bleached(world))
    assert answer.values["gas"] is True


@pytest.mark.parametrize("agents", [(), (BLEACH,)])
def test_with_nothing_to_go_by_it_asks_for_the_other(agents: tuple[str, ...], world: World) -> None:
    answer = together(asked(*agents), world)
    assert answer.outcome is Outcome.ASK
    assert answer.missing == ("agent",)
    assert answer.pending is not None
    assert line_of(answer).say.endswith("?") or "don't mix" in line_of(answer).say


# ---------------------------------------------------------------- they have met


def gas_answer(answer: Answer) -> str:
    assert answer.outcome is Outcome.REFUSE
    assert answer.values["gas"] is True
    line = line_of(answer)
    assert re.match(r"(Put it down|Leave it)\. Get out, shut the door, fresh air\.", line.say)
    assert words(line.say) <= 25
    return line.show


def test_told_that_a_gas_pair_met_it_opens_with_getting_out(world: World) -> None:
    answer = together(asked(VINEGAR, met=True, bottles=("orange bottle",)), world)
    shown = gas_answer(answer)
    assert answer.events == (GasMade((VINEGAR, BLEACH), "orange bottle", None),)
    assert "unknown mix, don't use" in shown
    assert "animal left inside: don't go back" in shown
    assert fold_all([Recorded(NOW, "t1", answer.events[0])]).unknown_mixes == ("orange bottle",)


@pytest.mark.parametrize("people", [People(), People(poison_centre="+00 5 5 5 0 1 4 2")])
def test_the_gas_line_stays_short_whatever_the_number(people: People, world: World) -> None:
    gas_answer(together(asked(BLEACH, VINEGAR, met=True), replace(world, household=Household(people=people))))


def test_a_gas_on_a_surface_is_kept_on_record(world: World) -> None:
    answer = together(asked(BLEACH, VINEGAR, met=True, enclosures=("maple tub",)), world)
    assert answer.events == (GasMade((BLEACH, VINEGAR), None, "maple tub", ("rinse", "dry", "air")),)
    state = fold_all([Recorded(NOW, "t1", answer.events[0])])
    assert {touch.agent for touch in state.surfaces["maple tub"]} == {BLEACH, VINEGAR}


def test_anything_that_met_a_product_of_unknown_content_is_answered_as_gas(world: World) -> None:
    gas_answer(together(asked(BLEACH, met=True, unknown=(Unknown("agent", "toilet cleaner"),)), world))
    gas_answer(together(asked(met=True), world))
    gas_answer(together(asked(VINEGAR, met=True), world))


def test_a_met_pair_that_makes_no_gas_says_what_is_lost_and_what_to_do(world: World) -> None:
    answer = together(asked(BLEACH, CHX, met=True, enclosures=("maple tub",)), world)
    assert answer.outcome is Outcome.REFUSE
    assert answer.values["gas"] is False
    assert set(answer.events) == {
        AgentTouched("maple tub", BLEACH, ("rinse", "dry", "air")),
        AgentTouched("maple tub", CHX, ("rinse", "dry")),
    }
    say = line_of(answer).say
    assert say.startswith("Don't use it. Bleach with chlorhexidine turns to brown sludge")
    assert "any fumes, get out" in say


def test_soap_and_chlorhexidine_that_met_are_rinsed_and_done_again(world: World) -> None:
    answer = together(asked(CHX, "detergent", met=True), world)
    assert answer.outcome is Outcome.ANSWER
    assert line_of(answer).say == "Rinse it off and do that step again. Soap undoes chlorhexidine."


def test_gas_is_only_claimed_of_a_gas_pair(world: World) -> None:
    assert gas_made("done", (CHX, BLEACH), None, "maple tub", world) is None
    assert gas_made("done", (BLEACH,), None, "maple tub", world) is None
    made = gas_made("done", (BLEACH, "something long gone"), None, "maple tub", world)
    assert made is not None
    assert made.intent == "done"


# ---------------------------------------------------------------- before they meet


def refusal(world: World, new: str, enclosure: str = "maple tub") -> Answer:
    agent = world.facts.agents[new]
    touch = uncleared(world.state.surfaces.get(enclosure, ()), agent, world.facts)
    assert touch is not None
    return refused_meeting("start", touch, agent, enclosure, world)


def test_vinegar_on_bleach_is_refused_until_rinsed_and_dry(world: World) -> None:
    answer = refusal(bleached(world), VINEGAR)
    assert answer.outcome is Outcome.REFUSE
    assert answer.values["recorded"] is False
    assert line_of(answer).say == "No. Bleach is still on it: that makes chlorine gas. Rinse and dry first."


def test_rinsed_but_wet_it_is_refused_still(world: World) -> None:
    rinsed = bleached(world, "maple tub", SurfaceRinsed("maple tub"))
    assert line_of(refusal(rinsed, VINEGAR)).say.endswith("Dry it first.")
    dry = after(world, AgentTouched("maple tub", BLEACH), SurfaceRinsed("maple tub"), SurfaceDried("maple tub"))
    assert uncleared(dry.state.surfaces.get("maple tub", ()), world.facts.agents[VINEGAR], world.facts) is None


def test_a_wipe_is_said_not_to_be_enough(world: World) -> None:
    wiped = bleached(world, "maple tub", SurfaceRinsed("maple tub", wiped=True), SurfaceDried("maple tub"))
    assert "a wipe isn't enough" in line_of(refusal(wiped, VINEGAR)).say


def test_chlorhexidine_on_bleach_is_refused_until_rinsed(world: World) -> None:
    say = line_of(refusal(bleached(world), CHX)).say
    assert say == "No. Bleach is still on it: that makes brown sludge and undoes both. Rinse first."


def test_every_refusal_fits_one_breath(world: World) -> None:
    for earlier, new in product(world.facts.agents, repeat=2):
        for touch in (Touch(earlier, NOW), Touch(earlier, NOW, rinsed=True), Touch(earlier, NOW, wiped=True)):
            agent = world.facts.agents[new]
            if uncleared((touch,), agent, world.facts) is None:
                continue
            line = line_of(refused_meeting("done", touch, agent, "maple tub", world))
            assert words(line.say) <= 25, line.say
            assert line.say.startswith("No. ")
