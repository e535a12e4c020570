"""What a fill records, what stands against one, and how the next word puts it right."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from fractions import Fraction

import pytest
from tool import Tool

from assistant.contract import Outcome
from assistant.core.household import Household
from assistant.core.quantities.amounts import Amount, Neat, SaidRatio
from assistant.core.record.events import BottleMixed
from assistant.core.shelf.bottles import left_of

NOW = datetime(2026, 3, 4, 15, tzinfo=UTC)
ONE_IN_50 = SaidRatio(Fraction(1), Fraction(50), "in")
BLEACH, VINEGAR = "sodium hypochlorite", "acetic acid"


@pytest.fixture
def tool(household: Household) -> Tool:
    return Tool(household, NOW)


def bleach_left(tool: Tool) -> Fraction:
    stock = tool.household.stock("shed bleach")
    assert stock is not None
    left = left_of(stock, tool.state)
    assert left is not None
    return left.amount


def test_a_fill_records_what_went_in_and_counts_the_shelf_down(tool: Tool) -> None:
    reply = tool.say("mixed", bottles=("violet bottle",), mixes=(ONE_IN_50,))
    assert reply.values["recorded"] is True
    assert reply.values["concentrate"] == Amount(Fraction(10), "mL")  # a fiftieth of 500 mL
    assert bleach_left(tool) == 1290


def test_a_part_fill_draws_only_its_part(tool: Tool) -> None:
    volumes = (Amount(Fraction(100), "mL"),)
    tool.say("mixed", bottles=("violet bottle",), mixes=(ONE_IN_50,), volumes=volumes, roles=("total",))
    assert bleach_left(tool) == 1298


def test_no_bottle_named_is_asked_and_nothing_recorded(tool: Tool) -> None:
    reply = tool.say("mixed", agents=(BLEACH,))
    assert (reply.outcome, reply.values["recorded"]) == (Outcome.ASK, False)
    assert tool.record == []


def test_vinegar_into_a_bottle_that_held_bleach_is_refused_as_gas(tool: Tool) -> None:
    tool.say("mixed", bottles=("violet bottle",))
    reply = tool.say("mixed", bottles=("violet bottle",), agents=(VINEGAR,), mixes=(Neat(),))
    assert reply.outcome is Outcome.REFUSE
    assert "violet bottle" in tool.state.unknown_mixes


def test_an_unknown_mix_is_not_filled_until_it_is_rinsed_out(tool: Tool) -> None:
    tool.say("mixed", bottles=("violet bottle",))
    tool.say("mixed", bottles=("violet bottle",), agents=(VINEGAR,), mixes=(Neat(),))
    assert tool.say("mixed", bottles=("violet bottle",)).outcome is Outcome.REFUSE
    tool.say("rinsed_out", bottles=("violet bottle",))
    assert tool.say("mixed", bottles=("violet bottle",)).values["recorded"] is True


def test_rinsed_and_filled_in_one_breath_records_both(tool: Tool) -> None:
    tool.say("mixed", bottles=("violet bottle",))
    reply = tool.say("mixed", bottles=("violet bottle",), agents=(VINEGAR,), mixes=(Neat(),), rinsed_first=True)
    assert reply.values["recorded"] is True
    assert tool.state.bottles["violet bottle"].held == (VINEGAR,)


def test_a_top_up_keeps_the_older_end(tool: Tool) -> None:
    tool.say("mixed", bottles=("violet bottle",))
    tool.after(hours=6)
    reply = tool.say("mixed", bottles=("violet bottle",), topped_up=True)
    assert reply.values["expires"] == NOW + timedelta(hours=24)


def test_undo_takes_the_fill_and_its_draw_back_but_not_that_the_agent_was_there(tool: Tool) -> None:
    tool.say("mixed", bottles=("violet bottle",), mixes=(ONE_IN_50,))
    tool.say("undo")
    assert bleach_left(tool) == 1300
    assert tool.state.bottles["violet bottle"].fill is None
    assert tool.state.bottles["violet bottle"].held == (BLEACH,)


# ---------------------------------------------------------------- put right by the next word


def test_a_fill_put_right_takes_the_place_of_the_one_before(tool: Tool) -> None:
    tool.say("mixed", bottles=("violet bottle",), mixes=(SaidRatio(Fraction(1), Fraction(10), "in"),))
    assert bleach_left(tool) == 1250
    reply = tool.say("mixed", bottles=("violet bottle",), mixes=(ONE_IN_50,), corrects=True)
    fill = tool.state.bottles["violet bottle"].fill
    assert fill is not None
    assert fill.mix == "1 in 50"
    assert reply.values["left"] == Amount(bleach_left(tool), "mL")
    assert bleach_left(tool) == 1290


def test_the_other_bottle_was_meant_so_the_first_holds_no_fill(tool: Tool) -> None:
    tool.say("mixed", bottles=("violet bottle",))
    tool.say("mixed", bottles=("orange bottle",), corrects=True)
    assert tool.state.bottles["violet bottle"].fill is None
    assert tool.state.bottles["orange bottle"].fill is not None
    assert len([entry for entry in tool.record if isinstance(entry.event, BottleMixed)]) == 2
