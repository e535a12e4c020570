"""Drying: what must hold whatever the room is like."""

from __future__ import annotations

from hypothesis import given, settings
from hypothesis import strategies as st

from assistant.core.air.drying import Air, Film, forecast, rewets_needed
from assistant.store.packaged import packaged_facts

FACTS = packaged_facts()
fixed = settings(derandomize=True, deadline=None, max_examples=100)

warm = st.floats(5, 40)
humid = st.floats(0, 0.98)
speeds = st.floats(0, 3)
films = st.floats(1, 200)
steps = st.floats(0.01, 1)


def soonest(film: float, air: Air, volatility: float | None = None) -> float:
    minutes = forecast(Film(film, volatility), air, FACTS).soonest
    assert minutes is not None
    return minutes


@fixed
@given(films, warm, humid, speeds, steps)
def test_more_draught_dries_sooner(film: float, celsius: float, humidity: float, speed: float, more: float) -> None:
    assert soonest(film, Air(celsius, humidity, speed + more)) < soonest(film, Air(celsius, humidity, speed))


@fixed
@given(films, warm, humid, speeds, steps)
def test_a_warmer_room_dries_sooner(film: float, celsius: float, humidity: float, speed: float, more: float) -> None:
    assert soonest(film, Air(celsius + more, humidity, speed)) < soonest(film, Air(celsius, humidity, speed))


@fixed
@given(films, warm, humid, speeds)
def test_damper_air_dries_later(film: float, celsius: float, humidity: float, speed: float) -> None:
    damper = humidity + (1 - humidity) / 2
    assert soonest(film, Air(celsius, damper, speed)) > soonest(film, Air(celsius, humidity, speed))


@fixed
@given(films, warm, humid, speeds, st.floats(1, 10))
def test_a_film_so_many_times_as_thick_lasts_so_many_times_as_long(
    film: float, celsius: float, humidity: float, speed: float, times: float
) -> None:
    air = Air(celsius, humidity, speed)
    assert abs(soonest(film * times, air) / soonest(film, air) / times - 1) < 1e-9


@fixed
@given(films, warm, humid, speeds)
def test_alcohol_dries_sooner_than_water_and_takes_no_notice_of_humidity(
    film: float, celsius: float, humidity: float, speed: float
) -> None:
    air = Air(celsius, humidity, speed)
    assert soonest(film, air, 4.7) < soonest(film, air)
    assert soonest(film, air, 4.7) == soonest(film, Air(celsius, 0.0, speed), 4.7)


@fixed
@given(films, warm, humid, speeds)
def test_the_slow_end_comes_after_the_fast_one(film: float, celsius: float, humidity: float, speed: float) -> None:
    span = forecast(Film(film), Air(celsius, humidity, speed), FACTS)
    assert span.soonest is not None
    assert span.latest is not None
    assert span.soonest < span.latest


@fixed
@given(st.floats(0, 60), st.floats(0.1, 60), st.floats(0.1, 60))
def test_so_many_films_last_the_wet_time_and_one_less_would_not(wet: float, now: float, each: float) -> None:
    count = rewets_needed(wet, now, each)
    assert now + count * each >= wet - 1e-6
    assert count == 0 or now + (count - 1) * each < wet


def test_saturated_air_dries_nothing_and_needs_no_rewetting() -> None:
    span = forecast(Film(50), Air(25, 1.0), FACTS)
    assert span.soonest is None
    assert span.latest is None
    assert rewets_needed(10, span.soonest, span.soonest) == 0
