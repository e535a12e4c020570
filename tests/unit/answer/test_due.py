"""What the tool says by itself, and that the chat's bottom line shows it for as long as it waits for the keeper."""

from __future__ import annotations

from fractions import Fraction

import pytest
from tool import Tool

from assistant.answer.due import still_waits
from assistant.contract import Reply
from assistant.core.household import Bottle, Enclosure, Habits, Household, Room, Stock
from assistant.core.quantities.amounts import Amount, SaidRatio
from assistant.shells.chat import bottom_line

ROOM = Room(airing=2.0, temperature=Amount(Fraction(30), "degC"), humidity=Amount(Fraction(20), "percent"))


def tool_in(room: Room) -> Tool:
    return Tool(
        Household(
            room=room,
            habits=Habits(tub_minutes=60),
            stocks=(Stock("plain", "sodium hypochlorite", Amount(Fraction(6), "%"), label_minutes=10),),
            bottles=(
                Bottle(
                    "red", Amount(Fraction(500), "mL"), stock="plain", mix=SaidRatio(Fraction(1), Fraction(32), "in")
                ),
            ),
            enclosures=(Enclosure("oak box", animal="corn snake"),),
        )
    )


@pytest.fixture
def tool() -> Tool:
    """In a room of which nothing is set, so that no drying can be forecast."""
    return tool_in(Room(airing=2.0))


def done(tool: Tool, *steps: str, **slots: object) -> Reply:
    return tool.say("done", enclosures=("oak box",), steps=steps, **slots)


def sprayed(tool: Tool) -> Tool:
    tool.say("start", enclosures=("oak box",), bottles=("red",))
    done(tool, "move out", "clear", "wash", "apply")
    return tool


def rinsed(tool: Tool) -> Tool:
    sprayed(tool).after(minutes=10)
    done(tool, "hold", stayed_wet=True)
    done(tool, "rinse")
    return tool


def shown(tool: Tool) -> str:
    """The bottom line on a wide terminal."""
    return bottom_line(tool.state, tool.talk, tool.now, 200, still_waits(tool.world()))


def test_a_wet_time_that_is_over_is_told_once_and_stands_until_it_is_vouched_for(tool: Tool) -> None:
    assert "wet time is over" not in sprayed(tool).after(minutes=9, seconds=59)
    assert "wet time is over" in tool.after(seconds=1)
    assert tool.after(seconds=30) == ""
    assert "oak box: stayed wet?" in shown(tool)
    done(tool, "hold", stayed_wet=True)
    assert "stayed wet?" not in shown(tool)


def test_that_it_is_about_to_dry_is_told_before_it_may_be_and_stands_until_it_is_wetted_again() -> None:
    tool = sprayed(tool_in(ROOM))
    said = ""
    while not said and tool.say("time_left").values["seconds"] > 15:
        said = said or tool.after(seconds=15)
    assert "about to dry" in said
    assert "oak box: about to dry" in shown(tool)
    tool.say("rewet", steps=("apply",))
    assert "about to dry" not in shown(tool)


def test_with_no_forecast_it_is_asked_half_way_whether_it_is_still_wet(tool: Tool) -> None:
    assert sprayed(tool).after(minutes=5) == "Oak box: still wet?"
    assert "oak box: still wet?" in shown(tool)
    tool.say("rewet")
    assert "still wet?" not in shown(tool)


def test_rinse_now_is_told_where_it_is_left_after_the_wet_time(tool: Tool) -> None:
    sprayed(tool).after(minutes=10)
    done(tool, "hold", stayed_wet=True)
    assert tool.after(minutes=4) == ""
    assert "rinse now" in tool.after(minutes=1)
    assert "oak box: rinse now" in shown(tool)
    done(tool, "rinse")
    assert "rinse now" not in shown(tool)


def test_open_the_window_is_told_where_none_is_said_to_be_open_after_the_rinse(tool: Tool) -> None:
    assert "open a window" in rinsed(tool).after(minutes=5)
    assert "oak box: open a window" in shown(tool)
    done(tool, openings=1)
    assert "open a window" not in shown(tool)


def test_no_window_is_asked_for_that_is_open_already(tool: Tool) -> None:
    done(rinsed(tool), openings=1)
    assert "open a window" not in tool.after(minutes=5)


def test_an_airing_that_is_over_is_told_and_asks_for_dry_and_for_smell(tool: Tool) -> None:
    done(rinsed(tool), openings=2)
    said = ""
    for _ in range(18):
        said += tool.after(minutes=10)
    assert said.count("airing time is up. Dry? Any smell left?") == 1
    assert "oak box: airing is up" in shown(tool)


def test_an_animal_in_its_tub_is_asked_after_every_hour_until_it_is_back(tool: Tool) -> None:
    tool.say("start", enclosures=("oak box",), bottles=("red",))
    done(tool, "move out")
    assert "tub" not in tool.after(minutes=59)
    said = tool.after(minutes=1)
    assert "has waited 60 minutes in the tub. Shut in, warm enough, away from fumes?" in said
    assert "oak box: animal waits" in shown(tool)
    assert tool.after(minutes=59) == ""
    assert "2 hours" in tool.after(minutes=1)


def test_an_animal_that_is_back_is_asked_after_no_more(tool: Tool) -> None:
    done(rinsed(tool), "dry")
    tool.after(hours=4)
    assert done(tool, "return").values["recorded"] is True
    assert tool.after(hours=3) == ""
    assert "waits" not in shown(tool)


def test_a_mix_past_its_life_is_told_once_and_stands_until_the_bottle_is_rinsed_out(tool: Tool) -> None:
    tool.say("mixed", bottles=("red",), agents=("sodium hypochlorite",), rinsed_first=True)
    assert tool.after(hours=23, minutes=59) == ""
    assert "past its life" in tool.after(minutes=1)
    assert "red: past its life" in shown(tool)
    tool.say("rinsed_out", bottles=("red",))
    assert "past its life" not in shown(tool)
