"""Harm: what is said first, whom to call, the rinse's clock, and nothing on an animal."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from itertools import product
from typing import Any

import pytest

from assistant.answer.harm import FIRST_AID, splash, wound
from assistant.contract import Answer, Line, Outcome, Reading, Reply, Slots, Talk, World
from assistant.core.facts import Facts
from assistant.core.household import Household, People
from assistant.core.record.events import Recorded, RinseBegun, RinseEnded
from assistant.core.record.fold import fold_all
from assistant.say.wording import line_of

NOW = datetime(2026, 3, 2, 9, tzinfo=UTC)
SET = People(poison_centre="1-800 555 0142", emergency="555 0199", vet="0555 010 0123")
UNSET = People()
LONG = People(poison_centre="+00 5 5 5 0 1 4 2", emergency="call 5 5 5 0 1 9 9 please", vet="+00 (555) 0 1 0 1 2 3")

PLACES = tuple(FIRST_AID)


def no_reading(*_: Any) -> Reading:
    raise AssertionError("harm reads nothing again")


@pytest.fixture
def world(facts: Facts) -> World:
    return World(NOW, Household(people=SET), facts, {}, no_reading)


def said(question: str = "bleach in my eye", intent: str = "splash", **slots: Any) -> Reading:
    return Reading(question, intent, Slots(**slots))


def with_people(world: World, people: People) -> World:
    return replace(world, household=replace(world.household, people=people))


def later(world: World, answer: Answer, **span: float) -> World:
    """The world after what the answer records, some time on."""
    state = fold_all(Recorded(world.now, "t1", event) for event in answer.events)
    return replace(world, now=world.now + timedelta(**span), state=state)


def words(text: str) -> int:
    return len(text.split())


def first_sentence(line: Line) -> str:
    return re.split(r"(?<=[.?!])\s", line.say)[0]


# ---------------------------------------------------------------- in one breath


@pytest.mark.parametrize(("who", "people"), list(product(PLACES, (SET, UNSET, LONG))))
def test_every_first_aid_fits_one_breath_and_opens_in_ten_words(
    who: tuple[str, str], people: People, world: World
) -> None:
    victim, place = who
    answer = splash(said(place=place, victim=victim), with_people(world, people))
    line = line_of(answer)
    assert answer.outcome is Outcome.ANSWER
    assert words(line.say) <= 25, line.say
    assert words(first_sentence(line)) <= 10, line.say
    assert not re.search(r"[%/:+()\-–](?! )", line.say), line.say


OF_EITHER = [{"victim": "either", "place": place} for place in ("eye", "skin", "mouth", "lungs")]
FOLLOWED = [
    *OF_EITHER,
    {"victim": "either", "place": "eye", "places_too": ("skin",)},
    {"victim": "either", "place": "mouth", "places_too": ("eye",)},
    {"victim": "either", "place": "eye", "asked_of_harm": "number"},
    *({"victim": who, "place": "eye", "asked_of_harm": "onto it"} for who in ("person", "animal", "either")),
    *({"victim": who, "place": "mouth", "asked_of_harm": "collapsed"} for who in ("person", "animal", "either")),
    {"victim": "animal", "asked_of_harm": "collapsed"},
    *({"victim": who, "place": "eye", "asked_of_harm": "if"} for who in ("person", "animal")),
    {"victim": "person", "asked_of_harm": "over"},
    {"asked_of_harm": "fire"},
]


@pytest.mark.parametrize(("slots", "people"), list(product(FOLLOWED, (SET, UNSET, LONG))))
def test_what_follows_a_harm_fits_one_breath_too(slots: dict[str, Any], people: People, world: World) -> None:
    line = line_of(splash(said(**slots), with_people(world, people)))
    assert words(line.say) <= 25, line.say
    assert words(first_sentence(line)) <= 10, line.say


@pytest.mark.parametrize("place", ["eye", "skin"])
def test_a_rinse_of_him_or_her_is_said_again_in_one_breath(place: str, world: World) -> None:
    begun = splash(said(place=place, victim="either"), with_people(world, LONG))
    for asked in ("onto it", "give", "again", None):
        after = later(with_people(world, LONG), begun, minutes=2, seconds=29)
        line = line_of(splash(said("it hurts", place=place, victim="either", asked_of_harm=asked), after))
        assert words(line.say) <= 25, line.say


def test_him_or_her_may_be_a_person_or_an_animal_so_both_are_told(world: World) -> None:
    answer = splash(said(place="eye", victim="either"), world)
    assert answer.events == (RinseBegun("eye", "either", 900.0),)
    assert answer.values["victim"] == "either"
    assert line_of(answer).say == (
        "Running water on that eye now. 15 minutes. A person: the poison centre, 1 800 555 0142. "
        "An animal: your vet, 0555 010 0123."
    )
    assert "Nothing by mouth for a reptile" in line_of(answer).show


def test_the_rinse_of_him_or_her_is_the_snakes_once_that_is_told(world: World) -> None:
    after = later(world, splash(said(place="eye", victim="either"), world), minutes=5)
    answer = splash(said("the snake", place="eye", victim="animal"), after)
    assert answer.values["seconds"] == 600.0
    assert answer.events == ()


def test_what_is_asked_beforehand_starts_no_clock(world: World) -> None:
    answer = splash(said("what if", place="eye", victim="person", asked_of_harm="if"), world)
    assert answer.events == ()
    assert "counting" not in line_of(answer).say


def test_a_false_alarm_ends_the_rinse_begun_last(world: World) -> None:
    after = later(world, splash(said(place="skin", victim="person"), world), minutes=1)
    assert splash(said("false alarm", asked_of_harm="over"), after).events == (RinseEnded("skin", "person"),)
    assert splash(said("false alarm", asked_of_harm="over"), world).events == ()


def test_a_fire_is_left_and_never_watered(world: World) -> None:
    say = line_of(splash(said("fire", asked_of_harm="fire"), world)).say
    assert say == "Get out now, into fresh air. Call emergency, 555 0199. Never water on burning alcohol."


@pytest.mark.parametrize("who", PLACES)
def test_no_first_aid_says_safe_and_every_one_shows_the_label_and_its_limits(
    who: tuple[str, str], world: World
) -> None:
    victim, place = who
    line = line_of(splash(said(place=place, victim=victim), world))
    assert "safe" not in (line.say + line.show).casefold()
    assert "label or container in hand" in line.show
    assert "stands in for no label, vet or poison centre" in line.show


def test_first_aid_is_never_from_memory(facts: Facts) -> None:
    for ids in FIRST_AID.values():
        assert all(facts[fact].kind != "memory" for fact in ids)


# ---------------------------------------------------------------- place by place


def test_an_eye_is_rinsed_at_once_by_a_fifteen_minute_clock(world: World) -> None:
    answer = splash(said(place="eye", victim="person"), world)
    assert answer.events == (RinseBegun("eye", "person", 900.0),)
    assert dict(answer.values) == {"place": "eye", "victim": "person", "minutes": 15, "seconds": 900.0}
    assert line_of(answer).say == (
        "Rinse that eye now, running water. Lens out. 15 minutes, I'm counting. "
        "Then call the poison centre, 1 800 555 0142."
    )


def test_without_a_number_the_local_poison_centre_is_named(world: World) -> None:
    line = line_of(splash(said(place="eye"), with_people(world, UNSET)))
    assert line.say.endswith("Then call your local poison centre.")
    assert "set poison_centre in keeping.toml" in line.show


def test_skin_is_rinsed_by_the_clock_too(world: World) -> None:
    answer = splash(said(place="skin"), world)
    assert answer.events == (RinseBegun("skin", "person", 900.0),)
    assert line_of(answer).say.startswith("Running water on it now. Wet clothes off.")


def test_who_swallowed_calls_first_and_takes_nothing_more(world: World) -> None:
    answer = splash(said(place="mouth", victim="person"), world)
    assert answer.events == ()
    assert answer.values["minutes"] is None
    assert line_of(answer).say.startswith(
        "Call the poison centre, 1 800 555 0142, now. Take nothing more unless they say."
    )


def test_fumes_send_them_out_first(world: World) -> None:
    line = line_of(splash(said(place="lungs", victim="person"), world))
    assert line.say.startswith("Out now, into fresh air. Don't go back.")
    assert "Can't breathe: emergency, 555 0199." in line.say


@pytest.mark.parametrize("place", ["eye", "skin"])
def test_an_animal_gets_water_nothing_by_mouth_and_the_vet(place: str, world: World) -> None:
    answer = splash(said(place=place, victim="animal"), world)
    assert answer.events == (RinseBegun(place, "animal", 900.0),)
    say = line_of(answer).say
    assert "Nothing by mouth." in say
    assert say.endswith("Then call your vet, 0555 010 0123.")


def test_an_animal_that_drank_it_gets_the_vet_first(world: World) -> None:
    say = line_of(splash(said(place="mouth", victim="animal"), world)).say
    assert say.startswith("Call your vet, 0555 010 0123, now. Nothing by mouth")


def test_nobody_goes_back_into_a_gas_for_an_animal(world: World) -> None:
    gas = Reply("", "together", Outcome.REFUSE, "", "", values={"gas": True})
    after = replace(world, talk=Talk(last=gas))
    say = line_of(splash(said(place="lungs", victim="animal"), after)).say
    assert say == "Don't go back in. Call emergency, 555 0199: gas from mixed cleaners, animal inside."
    refused = replace(gas, values={"gas": False})
    assert splash(said(place="lungs", victim="animal"), replace(world, talk=Talk(last=refused))).message == "harm.lungs"


def test_a_splash_that_names_no_place_helps_at_once_and_asks_where(world: World) -> None:
    answer = splash(said("ow I spilt it on me"), world)
    assert answer.outcome is Outcome.ASK
    assert answer.missing == ("place",)
    assert answer.pending is not None
    assert answer.events == ()
    line = line_of(answer)
    assert words(first_sentence(line)) <= 10
    assert line.say.startswith("Running water on it now; from fumes, get out.")


def test_the_longer_rinse_is_used_and_the_shorter_is_shown(world: World) -> None:
    answer = splash(said(place="eye"), world)
    assert "5 minutes for an eye, 10 for skin" in line_of(answer).show
    assert {"first-aid-rinse", "first-aid-rinse-shorter"} <= {source.id for source in answer.sources}


# ---------------------------------------------------------------- the rinse's clock


def test_asked_again_the_clock_runs_on(world: World) -> None:
    first = splash(said(place="eye"), world)
    answer = splash(said("my eye, what do I do", place="eye"), later(world, first, minutes=3))
    assert answer.events == ()
    assert answer.values["seconds"] == 720
    assert line_of(answer).say.startswith("Keep rinsing: 12 minutes left.")


@pytest.mark.parametrize("question", ["I got it in my eye again", "another splash in my eye", "More in my eye"])
def test_a_new_splash_starts_the_clock_over(question: str, world: World) -> None:
    first = splash(said(place="eye"), world)
    answer = splash(said(question, place="eye"), later(world, first, minutes=14))
    assert answer.events == (RinseBegun("eye", "person", 900.0),)


def test_once_the_clock_has_run_out_a_splash_starts_a_new_one(world: World) -> None:
    first = splash(said(place="eye"), world)
    assert splash(said(place="eye"), later(world, first, minutes=14, seconds=59)).events == ()
    assert splash(said(place="eye"), later(world, first, minutes=15)).events != ()


def test_a_clock_set_back_lengthens_the_rinse_and_never_ends_it(world: World) -> None:
    first = splash(said(place="eye"), world)
    answer = splash(said(place="eye"), later(world, first, minutes=-30))
    assert answer.values["seconds"] == 900


@pytest.mark.parametrize(("place", "victim"), [("skin", "person"), ("eye", "animal")])
def test_another_place_or_another_victim_has_a_clock_of_its_own(place: str, victim: str, world: World) -> None:
    first = splash(said(place="eye", victim="person"), world)
    answer = splash(said(place=place, victim=victim), later(world, first, minutes=1))
    assert answer.events == (RinseBegun(place, victim, 900.0),)


# ---------------------------------------------------------------- nothing on an animal

AGENTS: list[str | None] = [None, "chlorhexidine", "sodium hypochlorite", "povidone-iodine", "other", "acetic acid"]


@pytest.mark.parametrize(("agent", "people"), list(product(AGENTS, (SET, UNSET, LONG))))
def test_every_wish_to_treat_is_refused_in_one_breath_and_sent_to_the_vet(
    agent: str | None, people: People, world: World
) -> None:
    reading = said("can I put it on his burn", "wound", agents=(agent,) if agent else ())
    answer = wound(reading, with_people(world, people))
    line = line_of(answer)
    assert answer.outcome is Outcome.REFUSE
    assert answer.events == ()
    assert words(line.say) <= 25, line.say
    assert line.say.startswith("No. ")
    assert "vet" in line.say
    assert "safe" not in line.show.casefold()


def test_the_reason_is_the_published_one(world: World) -> None:
    answer = wound(said(intent="wound", agents=("chlorhexidine",)), world)
    assert all(source.kind == "published" for source in answer.sources)
    assert "under 6 percent of skin, muscle and bone cells" in line_of(answer).show


def test_no_strength_is_spoken_and_none_that_vets_use_is_shown(world: World) -> None:
    line = line_of(wound(said(intent="wound", agents=("chlorhexidine",)), with_people(world, UNSET)))
    assert not re.search(r"\d", line.say)
    assert "0.05" not in line.show


def test_the_eye_has_a_reason_of_its_own(world: World) -> None:
    answer = wound(said(intent="wound", place="eye"), world)
    assert "cost people their sight" in line_of(answer).show


def test_of_iodine_it_is_said_that_it_did_no_better_than_salt_water(world: World) -> None:
    assert "no better than salt water" in line_of(wound(said(intent="wound", agents=("povidone-iodine",)), world)).show


def test_a_bottle_stands_for_what_is_in_it(world: World, household: Household) -> None:
    answer = wound(said(intent="wound", bottles=("orange bottle",)), replace(world, household=household))
    assert answer.values["agent"] == "sodium hypochlorite"
