"""How long to air the room, as asked and answered."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from fractions import Fraction
from typing import Any

import pytest
from story import CHLORHEXIDINE_STEPS, Story

from assistant.answer.airing import air_time
from assistant.contract import Answer, Outcome, Reading, Slots, World
from assistant.core.facts import Facts
from assistant.core.household import Household, Room
from assistant.core.quantities.amounts import Amount, Percent
from assistant.core.record.events import WindowsOpened
from assistant.core.record.state import State
from assistant.say.wording import line_of


@pytest.fixture
def world_of(household: Household, facts: Facts) -> Callable[..., World]:
    def world(room: Room | None = None, story: Story | None = None) -> World:
        read: Any = None
        state, now = (story.state, story.now) if story else (State(), Story().now)
        return World(now, replace(household, room=room or household.room), facts, {}, read, state)

    return world


def asked(world: World, **slots: Any) -> Answer:
    return air_time(Reading("", "air_time", Slots(**slots)), world)


@pytest.mark.parametrize(
    ("openings", "rate", "minutes"),
    # Rates as in facts; minutes by the formula in the footnote to CDC/HICPAC (2003), Table B.1: ln(100) / rate x 60.
    [(0, 0.41, 673.9), (1, 1.5, 184.2), (2, 2.3, 120.1), (3, 2.75, 100.5), (7, 2.75, 100.5)],
)
def test_by_how_many_windows_are_open(
    openings: int, rate: float, minutes: float, world_of: Callable[..., World]
) -> None:
    values = asked(world_of(), openings=openings).values
    assert values["air_changes_per_hour"] == rate
    assert values["minutes"] == pytest.approx(minutes, abs=0.1)
    assert values["air_changes"] == pytest.approx(4.605, abs=0.001)


def test_a_number_of_the_keepers_own_wins(world_of: Callable[..., World]) -> None:
    # CDC/HICPAC (2003), Table B.1: 6 an hour, 46 minutes for 99 percent.
    assert asked(world_of(), air_changes=Fraction(6), openings=1).values["minutes"] == pytest.approx(46, abs=0.5)
    assert asked(world_of(Room(airing=4.0))).values["minutes"] == pytest.approx(69, abs=0.5)


def test_another_share_may_be_asked_for(world_of: Callable[..., World]) -> None:
    # The same table: 6 an hour, 69 minutes for 99.9 percent.
    values = asked(world_of(), air_changes=Fraction(6), mixes=(Percent(Fraction("99.9")),)).values
    assert values["minutes"] == pytest.approx(69, abs=0.5)


def test_a_mixing_factor_multiplies_the_time(world_of: Callable[..., World]) -> None:
    plain = asked(world_of(), openings=1).values
    poor = asked(world_of(), openings=1, mixing=Fraction(3)).values
    assert poor["minutes"] == pytest.approx(3 * plain["minutes"])
    assert asked(world_of(), openings=1, mixing=Fraction(1, 2)).outcome is Outcome.ASK


@pytest.mark.parametrize("mixes", [(Percent(Fraction(100)),)])
def test_all_of_it_is_never_out(mixes: tuple[Percent, ...], world_of: Callable[..., World]) -> None:
    assert asked(world_of(), mixes=mixes).outcome is Outcome.ASK


def test_nothing_set_counts_as_shut(world_of: Callable[..., World]) -> None:
    assert asked(world_of(Room())).values["air_changes_per_hour"] == 0.41


def test_an_extractor_counts_by_the_rooms_volume(world_of: Callable[..., World]) -> None:
    slots = {"volumes": (Amount(Fraction(100), "m^3"),), "durations": (Amount(Fraction(1), "h"),)}
    room = Room(volume=Amount(Fraction(25), "m^3"))
    # t = V/Q ln(C1/C2): 25/100 h x 4.605 = 69 minutes, the table's row for 4 an hour.
    assert asked(world_of(room), **slots).values["minutes"] == pytest.approx(69, abs=0.5)
    unknown = asked(world_of(Room()), **slots)
    assert (unknown.outcome, unknown.missing) == (Outcome.ASK, ("amount",))


def test_an_open_round_is_aired_as_its_windows_are(world_of: Callable[..., World]) -> None:
    story = Story().start(agent="sodium hypochlorite").tell(WindowsOpened("tub", 2, 2.3))
    values = asked(world_of(story=story)).values
    assert (values["enclosure"], values["openings"]) == ("tub", 2)


@pytest.mark.parametrize(
    ("slots", "shorter"),
    [
        ({"openings": 0}, "one window open makes it 3 hours 5"),
        ({"openings": 1}, "a second makes it 2 hours 1"),
        ({"openings": 2}, "a third makes it"),
        ({"openings": 3}, None),
        ({"openings": 3, "mixing": Fraction(3)}, "a fan"),
        ({"air_changes": Fraction(2)}, "a second makes it"),
        ({"air_changes": Fraction(3)}, None),
    ],
)
def test_over_two_hours_one_way_to_shorten_it_is_named(
    slots: dict[str, Any], shorter: str | None, world_of: Callable[..., World]
) -> None:
    answer = asked(world_of(), **slots)
    said = line_of(answer).say
    assert (answer.values["minutes"] > 120) is (shorter is not None)
    assert (shorter in said) if shorter else ("makes it" not in said and "a fan" not in said)
    assert "nose decides" in said
    assert len(said.split()) <= 25


def test_what_needs_no_airing_is_said_so(world_of: Callable[..., World]) -> None:
    story = Story().start("tub", agent="chlorhexidine", steps=CHLORHEXIDINE_STEPS)
    assert "needs none" in line_of(asked(world_of(story=story), openings=1)).say
