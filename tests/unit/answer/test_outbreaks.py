"""Outbreaks: shut off, the vet first, the group changed only on "yes", and undone like anything else."""

from __future__ import annotations

from typing import Any

import pytest
from tool import Tool

from assistant.contract import Outcome, Reply
from assistant.core.household import Household
from assistant.core.record.as_recorded import as_recorded


@pytest.fixture
def tool(household: Household) -> Tool:
    return Tool(household)


def group_of(tool: Tool, name: str = "east tank") -> Any:
    home = as_recorded(tool.household, tool.state).enclosure(name)
    assert home is not None
    return home.group


def words(reply: Reply) -> str:
    assert len(reply.say.split()) <= 25, reply.say
    return reply.say.casefold()


@pytest.mark.parametrize("organism", ["mites", "cryptosporidium", "serpentovirus", "salmonella", None])
def test_an_outbreak_shuts_off_and_sends_to_the_vet(tool: Tool, organism: str | None) -> None:
    reply = tool.say("outbreak", enclosures=("east tank",), organisms=(organism,) if organism else ())
    assert (reply.outcome, reply.values["isolate"]) == (Outcome.ANSWER, True)
    assert "vet" in words(reply)
    assert "mark east tank sick" in words(reply)
    assert group_of(tool) == "healthy"


def test_yes_marks_it_sick_and_undo_takes_it_back(tool: Tool) -> None:
    tool.say("outbreak", enclosures=("east tank",), organisms=("mites",))
    tool.say("yes")
    assert group_of(tool) == "sick"
    assert tool.state.groups["east tank"].organism == "mites"
    tool.say("undo")
    assert group_of(tool) == "healthy"


def test_marking_asks_first_and_no_changes_nothing(tool: Tool) -> None:
    reply = tool.say("outbreak", enclosures=("pond tub",), groups=("sick",))
    assert reply.outcome is Outcome.CONFIRM
    assert reply.values == {"enclosure": "pond tub", "group": "sick", "was": "healthy"}
    tool.say("no")
    assert group_of(tool, "pond tub") == "healthy"


def test_back_to_healthy_waits_for_the_vet(tool: Tool) -> None:
    tool.say("outbreak", enclosures=("pond tub",), groups=("sick",))
    tool.say("yes")
    reply = tool.say("outbreak", enclosures=("pond tub",), groups=("healthy",))
    assert "vet" in words(reply)
    tool.say("yes")
    assert group_of(tool, "pond tub") == "healthy"


def test_which_enclosure_is_asked_and_the_name_alone_answers(tool: Tool) -> None:
    assert "which enclosure" in words(tool.say("outbreak", organisms=("mites",)))
    assert tool.talk.pending is not None
    assert tool.talk.pending.missing == ("enclosure",)
    assert tool.say("outbreak", groups=("sick",)).missing == ("enclosure",)


def test_the_one_spoken_of_before_is_the_one_meant(tool: Tool) -> None:
    tool.say("outbreak", enclosures=("pond tub",), organisms=("cryptosporidium",))
    tool.say("no")
    reply = tool.say("outbreak", groups=("sick",))
    assert reply.values["enclosure"] == "pond tub"


def test_bleach_is_not_called_enough_against_crypto(tool: Tool) -> None:
    reply = tool.say("outbreak", organisms=("cryptosporidium",), agents=("sodium hypochlorite",))
    assert reply.intent == "outbreak"
    assert reply.values["verdict"] == "fails"
    assert "vet" in words(reply)


def test_a_sick_one_is_not_asked_about_again(tool: Tool) -> None:
    tool.say("outbreak", enclosures=("pond tub",), groups=("sick",))
    tool.say("yes")
    reply = tool.say("outbreak", enclosures=("pond tub",), organisms=("mites",))
    assert "mark" not in words(reply)
    assert "already" in words(tool.say("outbreak", enclosures=("pond tub",), groups=("sick",)))


def test_a_changed_group_takes_the_longer_wet_time(tool: Tool) -> None:
    before = tool.say("hold_time", enclosures=("east tank",), agents=("sodium hypochlorite",)).values["minutes"]
    tool.say("outbreak", enclosures=("east tank",), groups=("sick",))
    tool.say("yes")
    after = tool.say("hold_time", enclosures=("east tank",), agents=("sodium hypochlorite",)).values["minutes"]
    assert after >= before
