"""How long a wet surface takes to dry, as asked and answered."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from fractions import Fraction
from typing import Any

import pytest
from story import Story

from assistant.answer.drying import dry_time
from assistant.answer.film import area_m2, dries_at
from assistant.contract import Answer, Outcome, Reading, Slots, World
from assistant.core.facts import Facts
from assistant.core.household import Household, Room
from assistant.core.quantities.amounts import Amount
from assistant.core.record.events import WindowsOpened
from assistant.core.record.state import State

ROOM = Room(temperature=Amount(Fraction(25), "degC"), humidity=Amount(Fraction(50), "%"), airing="shut")
Ask = Callable[..., Answer]


@pytest.fixture
def world_of(household: Household, facts: Facts) -> Callable[..., World]:
    def world(state: State | None = None, room: Room = ROOM, now: datetime | None = None) -> World:
        read: Any = None
        at = now or datetime(2026, 3, 2, 9, tzinfo=UTC)
        return World(at, replace(household, room=room), facts, {}, read, state or State())

    return world


def asked(world: World, **slots: Any) -> Answer:
    return dry_time(Reading("", "dry_time", Slots(**slots)), world)


BLEACH = ("sodium hypochlorite",)


def test_a_sprayed_film_of_bleach_outlasts_ten_minutes_in_a_mild_still_room(world_of: Callable[..., World]) -> None:
    answer = asked(world_of(), agents=("chlorhexidine",))
    # 50 mL/m2 at 207 g/(m2 h): 14.4 minutes, worked by hand from the equation.
    assert answer.values["minutes"] == pytest.approx(14.4, abs=0.1)
    assert answer.values["latest_minutes"] == pytest.approx(19.5, abs=0.1)
    assert answer.values["rewets"] == 0


def test_in_a_hot_dry_room_with_a_fan_it_needs_wetting_again(world_of: Callable[..., World]) -> None:
    slots = {"temperatures": (Amount(Fraction(35), "degC"),), "humidity": Fraction(20), "draught": "fan"}
    answer = asked(world_of(), agents=("quaternary ammonium",), **slots)
    minutes = answer.values["minutes"]
    assert minutes < 3
    assert answer.values["rewets"] == -(-answer.values["wet_minutes"] // minutes) - 1


def test_degrees_fahrenheit_are_taken_as_such(world_of: Callable[..., World]) -> None:
    celsius = asked(world_of(), temperatures=(Amount(Fraction(25), "degC"),))
    fahrenheit = asked(world_of(), temperatures=(Amount(Fraction(77), "degF"),))
    assert fahrenheit.values["minutes"] == pytest.approx(celsius.values["minutes"])


def test_alcohol_is_gone_sooner_than_its_wet_time(world_of: Callable[..., World]) -> None:
    answer = asked(world_of(), agents=("isopropyl alcohol",))
    assert answer.values["minutes"] < 2
    assert answer.values["rewets"] >= 1
    assert "drying-rate-isopropyl" in [source.id for source in answer.sources]


def test_no_temperature_is_asked_for_and_the_rest_has_stated_defaults(world_of: Callable[..., World]) -> None:
    answer = asked(world_of(room=Room()), agents=BLEACH)
    assert (answer.outcome, answer.missing) == (Outcome.ASK, ("temperature",))
    answer = asked(world_of(room=Room()), agents=BLEACH, temperatures=(Amount(Fraction(25), "degC"),))
    assert answer.outcome is Outcome.ANSWER
    assert {"drying-humidity", "drying-film", "drying-still-air"} <= {source.id for source in answer.sources}


def test_a_temperature_that_no_room_has_is_asked_again(world_of: Callable[..., World]) -> None:
    answer = asked(world_of(), temperatures=(Amount(Fraction(60), "degC"),))
    assert (answer.outcome, answer.missing) == (Outcome.ASK, ("temperature",))


def test_so_much_in_an_enclosure_of_known_size_is_a_film(world_of: Callable[..., World]) -> None:
    world = world_of()
    area = area_m2(world.household.enclosure("east tank"))
    assert area == pytest.approx(0.9 * 0.45 + 2 * 0.45 * (0.9 + 0.45))
    whole = asked(world, enclosures=("east tank",), volumes=(Amount(Fraction(81), "mL"),))
    half = asked(world, enclosures=("east tank",), volumes=(Amount(Fraction(81, 2), "mL"),))
    assert whole.values["minutes"] == pytest.approx(2 * half.values["minutes"])
    assert "drying-film" not in [source.id for source in whole.sources]


def test_without_an_agent_there_is_no_wet_time_to_compare_with(world_of: Callable[..., World]) -> None:
    answer = asked(world_of())
    assert answer.values["minutes"] > 0
    assert answer.values["rewets"] is None


def test_saturated_air_dries_nothing(world_of: Callable[..., World]) -> None:
    answer = asked(world_of(), agents=("chlorhexidine",), humidity=Fraction(100))
    assert answer.values["minutes"] is None
    assert answer.values["rewets"] == 0


# ---------------------------------------------------------------- an open round


def _sprayed() -> Story:
    return (
        Story()
        .start("east tank", agent=BLEACH[0])
        .done("move out", "clear", "wash", "apply", enclosure="east tank", agent=BLEACH[0])
    )


def test_while_the_wet_time_runs_it_is_what_is_left_of_the_film(world_of: Callable[..., World]) -> None:
    story = _sprayed().after(minutes=4)
    answer = asked(world_of(story.state, now=story.now))
    assert answer.values["enclosure"] == "east tank"
    assert answer.values["minutes"] == pytest.approx(14.4 - 4, abs=0.1)
    assert answer.values["wet_minutes"] == pytest.approx(6)
    assert answer.values["rewets"] == 0


def test_a_film_past_its_time_counts_as_dry_and_needs_wetting(world_of: Callable[..., World]) -> None:
    hot = replace(ROOM, temperature=Amount(Fraction(35), "degC"), humidity=Amount(Fraction(20), "%"))
    story = _sprayed().after(minutes=9)
    answer = asked(world_of(story.state, hot, story.now))
    assert answer.values["minutes"] == 0
    assert answer.values["rewets"] == 1


def test_after_the_rinse_it_is_counted_from_the_rinse(world_of: Callable[..., World]) -> None:
    story = _sprayed().after(minutes=10).done("rinse", enclosure="east tank").after(minutes=5)
    answer = asked(world_of(story.state, now=story.now))
    assert answer.values["minutes"] == pytest.approx(14.4 - 5, abs=0.1)
    assert answer.values["rewets"] is None


def test_the_film_on_an_open_round_dries_at_the_soonest_by_the_equation(world_of: Callable[..., World]) -> None:
    story = _sprayed()
    world = world_of(story.state, now=story.now)
    at = dries_at(story.round("east tank"), world)
    assert at is not None
    assert (at - story.now) / timedelta(minutes=1) == pytest.approx(14.4, abs=0.1)
    later = dries_at(story.round("east tank"), world, wetted_at=story.now + timedelta(minutes=3))
    assert later == at + timedelta(minutes=3)


def test_nothing_is_forecast_without_a_running_wet_time_or_a_temperature(world_of: Callable[..., World]) -> None:
    story = _sprayed()
    assert dries_at(story.round("east tank"), world_of(story.state, Room(), story.now)) is None
    served = _sprayed().after(minutes=10)
    assert dries_at(served.round("east tank"), world_of(served.state, now=served.now)) is None


def test_an_open_window_dries_it_sooner(world_of: Callable[..., World]) -> None:
    shut = _sprayed()
    opened = _sprayed().tell(WindowsOpened("east tank", 1, 1.5))
    still = dries_at(shut.round("east tank"), world_of(shut.state, now=shut.now))
    moving = dries_at(opened.round("east tank"), world_of(opened.state, now=opened.now))
    assert still is not None
    assert moving is not None
    assert moving < still


def test_asked_of_another_product_it_is_not_the_film_on_it(world_of: Callable[..., World]) -> None:
    story = _sprayed().after(minutes=4)
    answer = asked(world_of(story.state, now=story.now), agents=("isopropyl alcohol",))
    assert answer.values["enclosure"] is None
    assert answer.values["minutes"] > 1
