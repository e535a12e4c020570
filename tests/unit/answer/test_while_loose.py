"""While an animal is loose, whoever asks how to go on hears of it first."""

from __future__ import annotations

import pytest
from tool import Tool

from assistant.contract import Reading, Slots
from assistant.core.household import Household


@pytest.fixture
def tool(household: Household) -> Tool:
    """The east tank washed, its animal in a tub."""
    tool = Tool(household)
    tool.say("start", enclosures=("east tank",), bottles=("orange bottle",))
    tool.say("done", enclosures=("east tank",), steps=("move out", "clear", "wash"))
    return tool


def lose_it(tool: Tool) -> None:
    tool.hear(Reading("he's escaped", "escape", Slots(enclosures=("east tank",)), confidence=1.0))
    assert tool.state.loose


@pytest.mark.parametrize("question", ["next", "status"])
def test_it_is_told_first_that_an_animal_is_loose(tool: Tool, question: str) -> None:
    before = tool.say(question).say
    lose_it(tool)
    assert "loose" not in before
    assert tool.say(question).say.startswith("Corn snake still loose: spray nothing")


def test_next_says_nothing_of_spraying_on_but_the_screen_still_shows_it(tool: Tool) -> None:
    lose_it(tool)
    reply = tool.say("next")
    assert "every surface wet" not in reply.say
    assert "every surface wet" in reply.show
    assert reply.values["step"] == "apply"


def test_spraying_all_the_same_is_recorded_for_the_surface_and_told_against(tool: Tool) -> None:
    lose_it(tool)
    reply = tool.say("done", enclosures=("east tank",), steps=("apply",))
    assert reply.say.startswith("Corn snake still loose: spray nothing")
    assert tool.state.surfaces["east tank"]


def test_once_it_is_found_the_work_goes_on_as_before(tool: Tool) -> None:
    before = tool.say("next").say
    lose_it(tool)
    tool.say("escape", found=True)
    assert tool.say("next").say == before
