"""A bottle's label: by the record where a fill is on it, and never a label for what nobody may use."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from fractions import Fraction

import pytest
from tool import Tool

from assistant.answer.labelled import Label, NoLabel, Warned, label_of
from assistant.core.household import Bottle, Household, Stock
from assistant.core.quantities.amounts import Amount, Percent, SaidRatio
from assistant.core.record.events import AgentPoured, BottleDoubted, BottleMixed

BLEACH = Stock("shed bleach", "sodium hypochlorite", Amount(Fraction(6), "%"))
PINK = Stock("pink concentrate", "chlorhexidine", Amount(Fraction(2), "%"), label_minutes=7)
BOTTLE = Bottle(
    "red bottle", Amount(Fraction(500), "mL"), "red", "shed bleach", SaidRatio(Fraction(1), Fraction(32), "in")
)


def tool_with(bottle: Bottle = BOTTLE) -> Tool:
    return Tool(Household(stocks=(BLEACH, PINK), bottles=(bottle,)))


def label(tool: Tool) -> Label:
    made = label_of(tool.household.bottles[0], tool.world())
    assert isinstance(made, Label)
    return made


def test_without_a_fill_it_is_what_the_bottle_is_for() -> None:
    made = label(tool_with())
    assert made.fill is None
    assert made.mixed.concentrate == Amount(Fraction(500, 32), "mL")
    assert made.life.until == made.now + timedelta(hours=24)
    assert made.wet.minutes == 10


def test_with_a_fill_it_is_what_was_filled() -> None:
    tool = tool_with()
    until = tool.now + timedelta(hours=20)
    poured, total = Amount(Fraction(10), "mL"), Amount(Fraction(400), "mL")
    tool._append((BottleMixed("red bottle", "chlorhexidine", PINK.name, "1 in 40", total, poured, None, until),))
    made = label(tool)
    assert made.agent.id == "chlorhexidine"
    assert (made.mixed.concentrate, made.mixed.total) == (poured, total)
    assert made.fill is not None
    assert made.fill.kept_until == until
    assert made.wet.minutes == 7


def test_an_unknown_mix_gets_a_warning() -> None:
    tool = tool_with()
    tool._append((BottleDoubted("red bottle"),))
    made = label_of(BOTTLE, tool.world())
    assert isinstance(made, Warned)
    assert made.why == "unknown mix"


def test_a_bottle_that_held_something_and_was_not_rinsed_gets_a_warning() -> None:
    tool = tool_with()
    tool._append((AgentPoured("red bottle", "acetic acid"),))
    made = label_of(BOTTLE, tool.world())
    assert isinstance(made, Warned)
    assert (made.why, made.held) == ("rinse first", ("vinegar",))


@pytest.mark.parametrize("bottle", [replace(BOTTLE, mix=None), replace(BOTTLE, stock=None)])
def test_a_bottle_without_a_stock_or_a_mix_gets_none(bottle: Bottle) -> None:
    made = label_of(bottle, tool_with(bottle).world())
    assert isinstance(made, NoLabel)
    assert made.because is None


def test_a_mix_too_strong_for_a_surface_gets_none() -> None:
    bottle = replace(BOTTLE, mix=Percent(Fraction(5)))
    made = label_of(bottle, tool_with(bottle).world())
    assert isinstance(made, NoLabel)
    assert made.because is not None


def test_bleach_and_what_must_not_meet_it_say_so() -> None:
    assert any("Never mix bleach" in line for line in label(tool_with()).cautions)
    pink = replace(BOTTLE, stock=PINK.name)
    assert any("Never with bleach" in line for line in label(tool_with(pink)).cautions)
