"""Tubs: who waits where and since when; a taken or unclean one is asked about."""

from __future__ import annotations

import pytest
from tool import Tool

from assistant.contract import Reply
from assistant.core.household import Household


@pytest.fixture
def tool(household: Household) -> Tool:
    made = Tool(household)
    for home in ("east tank", "new arrival box"):
        made.say("start", enclosures=(home,), bottles=("orange bottle",))
    return made


def out(tool: Tool, home: str, tub: str = "red tub") -> Reply:
    return tool.say("done", enclosures=(home,), steps=("move out",), tubs=(tub,))


def test_who_waits_where_and_since_when(tool: Tool) -> None:
    out(tool, "east tank")
    tool.after(minutes=12)
    reply = tool.say("tub")
    (waiting,) = reply.values["waiting"]
    assert (waiting["enclosure"], waiting["tub"], waiting["minutes"]) == ("east tank", "red tub", 12)
    assert reply.values["not_out"] == ("new arrival box",)
    assert "corn snake: red tub, 12 minutes" in reply.say.casefold()


def test_one_that_went_out_without_a_tub_named_is_out_all_the_same(tool: Tool) -> None:
    tool.say("done", enclosures=("east tank",), steps=("move out",))
    assert tool.say("tub", enclosures=("east tank",)).values["waiting"][0]["tub"] is None


def test_a_taken_tub_is_asked_about_and_the_move_is_kept(tool: Tool) -> None:
    out(tool, "east tank")
    reply = out(tool, "new arrival box")
    assert "corn snake" in reply.say
    assert "move out" in tool.state.rounds["new arrival box"].done
    assert tool.state.tubs["red tub"].enclosure == "east tank"
    assert "another tub" in tool.say("no").say
    assert tool.state.tubs["red tub"].enclosure == "east tank"


def test_a_taken_tub_that_is_free_after_all_is_taken_on_yes(tool: Tool) -> None:
    out(tool, "east tank")
    out(tool, "new arrival box")
    tool.say("yes")
    assert tool.state.tubs["red tub"].enclosure == "new arrival box"


def test_a_tub_after_quarantine_is_asked_about_until_it_is_clean(tool: Tool) -> None:
    out(tool, "new arrival box")
    out(tool, "new arrival box", "green tub")
    tool.state.tubs["red tub"]
    reply = out(tool, "east tank")
    assert "quarantine" in reply.say
    tool.say("yes")
    assert tool.state.tubs["red tub"].enclosure == "east tank"


def test_a_tub_that_was_cleaned_or_held_a_healthy_one_is_not_asked_about(tool: Tool) -> None:
    out(tool, "new arrival box")
    out(tool, "new arrival box", "green tub")
    tool.say("tub", tubs=("red tub",), cleaned="disinfected")
    assert "quarantine" not in out(tool, "east tank").say
    assert tool.state.tubs["red tub"].enclosure == "east tank"


def test_a_tub_with_an_animal_in_it_is_not_noted_as_clean(tool: Tool) -> None:
    out(tool, "new arrival box")
    assert "waits in red tub" in tool.say("tub", tubs=("red tub",), cleaned="disinfected").say
    assert not tool.state.tubs["red tub"].cleaned


def test_an_animal_in_a_tub_with_no_clean_open_is_noted(tool: Tool) -> None:
    assert "red tub, noted" in out(tool, "pond tub").say
    assert tool.state.tubs["red tub"].enclosure == "pond tub"


def test_nobody_waits_when_nobody_is_out(household: Household) -> None:
    assert Tool(household).say("tub").values["waiting"] == ()


def test_of_several_animals_all_are_told_to_be_out(tool: Tool) -> None:
    assert (
        "both out, one a tub"
        in tool.say("start", enclosures=("new arrival box",), bottles=("orange bottle",), start_over=True).say
    )
    assert "New arrival box: both out." in out(tool, "new arrival box").say
    assert "leopard gecko: red tub" in tool.say("tub", enclosures=("new arrival box",)).say.casefold()


def test_several_out_in_no_tub_that_was_named_are_told_as_all(tool: Tool) -> None:
    tool.say("done", enclosures=("new arrival box",), steps=("move out",))
    assert "leopard gecko, both: out" in tool.say("tub", enclosures=("new arrival box",)).say.casefold()
