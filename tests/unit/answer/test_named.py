"""A bottle that is named stands for what the record says it holds, before what keeping.toml says it is for."""

from __future__ import annotations

from fractions import Fraction

import pytest
from tool import Tool

from assistant.contract import Reading, Slots
from assistant.core.household import Household
from assistant.core.quantities.amounts import SaidRatio

ONE_IN_40 = SaidRatio(Fraction(1), Fraction(40), "in")


@pytest.fixture
def tool(household: Household) -> Tool:
    """The white bottle, meant for vinegar, rinsed out and filled with chlorhexidine."""
    tool = Tool(household)
    tool.say("rinsed_out", bottles=("white bottle",))
    tool.say("mixed", bottles=("white bottle",), stocks=("blue concentrate",), mixes=(ONE_IN_40,))
    fill = tool.state.bottles["white bottle"].fill
    assert fill is not None
    assert fill.agent == "chlorhexidine"
    return tool


def ask(tool: Tool, intent: str, said: str) -> object:
    organisms = ("salmonella",) if intent == "works_on" else ()
    materials = ("glass",) if intent == "surface" else ()
    slots = Slots(bottles=("white bottle",), organisms=organisms, materials=materials)
    return tool.hear(Reading(said, intent, slots, confidence=1.0)).values["agent"]


@pytest.mark.parametrize(
    ("intent", "said"),
    [
        ("spill", "I spilled the white bottle"),
        ("wound", "can I put the white bottle on his burn"),
        ("store_it", "where do I keep the white bottle"),
        ("pour_away", "where do I pour the white bottle"),
        ("works_on", "does the white bottle work on salmonella"),
        ("surface", "may the white bottle touch glass"),
        ("protect", "what do I wear for the white bottle"),
    ],
)
def test_a_bottle_stands_for_its_fill_on_record(tool: Tool, household: Household, intent: str, said: str) -> None:
    assert ask(Tool(household), intent, said) == "acetic acid"
    assert ask(tool, intent, said) == "chlorhexidine"


def test_what_is_offered_is_the_mix_on_record_not_the_one_that_the_bottle_is_meant_for(household: Household) -> None:
    tool = Tool(household)
    before = tool.say("choose_agent", organisms=("salmonella",)).values["bottle"]
    tool.say("mixed", bottles=("orange bottle",), mixes=(SaidRatio(Fraction(1), Fraction(500), "in"),))
    after = tool.say("choose_agent", organisms=("salmonella",)).values["bottle"]
    assert before == "orange bottle"
    assert after is None
