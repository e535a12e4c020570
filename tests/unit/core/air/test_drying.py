"""Drying: what the forecast refuses, and how rewetting is counted."""

from __future__ import annotations

import pytest

from assistant.core.air.drying import Air, Film, carrier, evaporation, forecast, rewets_needed
from assistant.core.facts import Facts
from assistant.core.quantities.errors import OutOfRange

ROOM = Air(25, 0.5)


@pytest.mark.parametrize("celsius", [-21, 51])
def test_a_temperature_outside_the_fit_is_refused(celsius: float, facts: Facts) -> None:
    with pytest.raises(OutOfRange):
        forecast(Film(50), Air(celsius, 0.5), facts)


@pytest.mark.parametrize("humidity", [-0.01, 1.01])
def test_a_humidity_that_cannot_be_is_refused(humidity: float, facts: Facts) -> None:
    with pytest.raises(OutOfRange):
        evaporation(Film(50), Air(25, humidity), facts)


def test_a_film_of_nothing_is_refused(facts: Facts) -> None:
    with pytest.raises(OutOfRange):
        forecast(Film(0), ROOM, facts)


def test_air_does_not_move_backwards_and_holds_no_more_than_all(facts: Facts) -> None:
    with pytest.raises(OutOfRange):
        carrier(1, -0.1, 2450, facts)
    with pytest.raises(OutOfRange):
        carrier(-0.1, 0, 2450, facts)


@pytest.mark.parametrize(
    ("wet", "now", "each", "count"),
    [
        (10, 14.4, 14.4, 0),  # lasts by itself
        (10, 10, 10, 0),  # just lasts
        (10, 4, 4, 2),  # 4, 8, 12
        (10, 5, 5, 1),  # 5, 10
        (10, 0, 4, 3),  # dry already
        (0, 0, 4, 0),  # nothing left to serve
        (10, 4, None, 1),  # one film of what won't dry is enough
    ],
)
def test_rewets_are_the_films_that_it_takes_beside_the_one_on_it(
    wet: float, now: float, each: float | None, count: int
) -> None:
    assert rewets_needed(wet, now, each) == count
