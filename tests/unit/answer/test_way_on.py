"""Whatever was sprayed when, a keeper who does what "next" says gets to the end, and never puts a gas together."""

from __future__ import annotations

import pytest
from talk import Talk
from tool import FACTS, Tool

from assistant.contract import Outcome, Reply
from assistant.core.household import Enclosure, Household

HOME = Household(enclosures=(Enclosure("oak box"),))
SPRAYED = {agent.name: agent.id for agent in FACTS.agents.values()}
WHEN = ("instead", "in its wet time", "and rinsed", "after its wet time", "after the rinse", "when it was dry")
STARTS = [agent.id for agent in FACTS.agents.values() if agent.refused is None]


def spray(tool: Tool, agent: str) -> Reply:
    return tool.say("done", steps=("apply",), agents=(agent,), heat_cold=True)


def begun(first: str, second: str, when: str) -> Tool | None:
    """A clean begun with the first, and the second sprayed on at that moment."""
    tool = Tool(HOME)
    if tool.say("start", enclosures=("oak box",), agents=(first,)).outcome is not Outcome.ANSWER:
        return None
    for step in ("move out", "clear", "wash"):
        tool.say("done", steps=(step,))
    if when != "instead":
        spray(tool, first)
        tool.after(minutes=1)
    if when in WHEN[3:]:
        tool.after(minutes=30)
        tool.say("done", steps=("hold",), stayed_wet=True)
    if when in WHEN[4:]:
        tool.say("done", steps=("rinse",))
    if when == WHEN[5]:
        tool.say("done", steps=("dry",))
    spray(tool, second)
    if when == "and rinsed":
        tool.say("done", steps=("rinse",))
    return tool


def obeyed(tool: Tool) -> str:
    """Does what "next" says until the gate opens; else where it ended."""
    for _ in range(30):
        told = tool.say("next")
        step, seconds = told.values["step"], told.values["seconds"]
        if step == "return":
            return "ready" if tool.say("return_check").values["ready"] else told.say
        if seconds:
            tool.after(seconds=seconds + 1)
        elif "inish it as a clean" in told.say or "Did it stay wet" in told.say:
            tool.say("yes")
        elif step == "apply":
            agent = max((name for name in SPRAYED if f"spray {name}" in told.say), key=len)
            assert spray(tool, SPRAYED[agent]).outcome is not Outcome.REFUSE, told.say
        elif step in ("hold", "air"):
            return told.say
        else:
            tool.say("done", steps=(step,), shut_in=True)
    return "round and round"


@pytest.mark.parametrize("when", WHEN)
@pytest.mark.parametrize("first", STARTS)
def test_whoever_does_what_next_says_gets_to_the_end(first: str, when: str) -> None:
    for second in FACTS.agents:
        tool = begun(first, second, when)
        if tool is not None:
            assert obeyed(tool) == "ready", second


def in_wet_time() -> Talk:
    talk = Talk()
    talk.tells("start the river tank with bleach", "moved out, cleared and washed, soap rinsed off")
    return talk


def test_after_a_gas_the_next_step_is_never_to_spray() -> None:
    talk = in_wet_time()
    talk.tell("sprayed the yellow bottle")
    assert talk.tell("sprayed the green bottle on it").outcome is Outcome.REFUSE
    told = talk.tell("what's next")
    assert told.values["step"] == "rinse"
    assert "once the air is clear, rinse" in told.say
    rinsed = talk.tell("rinsed")
    assert rinsed.values["next"] == "dry"
    assert "before any bleach" in rinsed.say
    assert talk.tell("sprayed bleach").outcome is Outcome.REFUSE
    talk.tells("rinsed", "it's dry")
    assert talk.tell("what's next").values["step"] == "apply"


def test_a_cleaner_in_a_disinfection_is_no_spraying_and_comes_off_first() -> None:
    talk = in_wet_time()
    told = talk.tell("sprayed the green bottle")
    assert told.values["recorded"] is False
    assert "Rinse vinegar off" in told.say
    assert talk.tell("sprayed bleach").outcome is Outcome.REFUSE
    talk.tells("rinsed", "dry")
    assert talk.tell("sprayed bleach").values["recorded"] is True
    assert talk.tell("can he go back").values["ready"] is False


def test_a_wet_time_that_nobody_knows_is_given_up_with_a_yes() -> None:
    tool = Tool(HOME)
    tool.say("start", enclosures=("oak box",), agents=("hydrogen peroxide",))
    told = tool.say("done", steps=("move out", "clear", "wash", "apply"))
    assert "Finish it as a clean?" in told.say
    assert tool.say("yes").values["claim"] == "cleaned_only"
    assert tool.say("return_check").values["blocked_by"] == ("rinse", "dry", "air")


def test_a_wet_time_that_nobody_knows_is_rinsed_off_and_kept_for_what_meets() -> None:
    tool = Tool(HOME)
    tool.say("start", enclosures=("oak box",), agents=("hydrogen peroxide",))
    tool.say("done", steps=("move out", "clear", "wash", "apply"))
    rinsed = tool.say("done", steps=("rinse",))
    assert rinsed.values["recorded"] is False
    assert "noted" in rinsed.say
    assert tool.state.surfaces["oak box"][0].rinsed
    assert tool.say("return_check").values["blocked_by"][:2] == ("apply", "hold")
    assert spray(tool, "sodium hypochlorite").outcome is Outcome.REFUSE  # not dry yet
    tool.say("done", steps=("dry",))
    assert spray(tool, "sodium hypochlorite").values["recorded"] is True
