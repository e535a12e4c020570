"""What is in a bottle, whether it is still good, and what is left: from the record, never from what it is for."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from fractions import Fraction

import pytest
from tool import Tool

from assistant.contract import Outcome, SaidTime
from assistant.core.household import Household
from assistant.core.quantities.amounts import Amount, SaidRatio

NOW = datetime(2026, 1, 5, 9, tzinfo=UTC)
ONE_IN_50 = SaidRatio(Fraction(1), Fraction(50), "in")


@pytest.fixture
def tool(household: Household) -> Tool:
    return Tool(household, NOW)


def test_what_a_bottle_is_for_is_not_what_is_in_it(tool: Tool) -> None:
    reply = tool.say("in_bottle", bottles=("orange bottle",))
    assert (reply.values["agent"], reply.values["meant_for"]) == (None, "sodium hypochlorite")
    assert "no fill on record" in reply.say


def test_a_recorded_fill_is_what_is_in_it(tool: Tool) -> None:
    tool.say("mixed", bottles=("orange bottle",), mixes=(ONE_IN_50,))
    values = tool.say("in_bottle", bottles=("orange bottle",)).values
    assert (values["agent"], values["mix"], values["mixed_at"]) == ("sodium hypochlorite", "1 in 50", NOW)


def test_a_bottle_with_no_fill_on_record_is_never_called_good(tool: Tool) -> None:
    assert tool.say("still_good", bottles=("orange bottle",)).values["ready"] is None


@pytest.mark.parametrize(("minutes", "ready"), [(24 * 60 - 1, True), (24 * 60, False), (24 * 60 + 1, False)])
def test_bleach_is_good_up_to_its_24_hours_and_not_at_them(tool: Tool, minutes: int, ready: bool) -> None:
    tool.say("mixed", bottles=("orange bottle",))
    tool.now += timedelta(minutes=minutes)
    values = tool.say("still_good", bottles=("orange bottle",)).values
    assert (values["ready"], values["expires"]) == (ready, NOW + timedelta(hours=24))


def test_vinegar_has_no_limit_that_is_known(tool: Tool) -> None:
    tool.say("mixed", bottles=("white bottle",))
    values = tool.say("still_good", bottles=("white bottle",)).values
    assert (values["ready"], values["expires"], values["basis"]) == (True, None, "no limit")


def test_with_one_bottle_filled_the_mix_is_that_one(tool: Tool) -> None:
    tool.say("mixed", bottles=("blue bottle",))
    assert tool.say("still_good").values["bottle"] == "blue bottle"


def test_with_two_bottles_filled_the_mix_is_asked(tool: Tool) -> None:
    tool.say("mixed", bottles=("blue bottle",))
    tool.say("mixed", bottles=("orange bottle",))
    assert tool.say("still_good").outcome is Outcome.ASK


@pytest.mark.parametrize(("hours", "ready"), [(3, True), (30, False)])
def test_a_mix_not_on_record_is_judged_by_when_it_was_said_to_be_made(tool: Tool, hours: int, ready: bool) -> None:
    said = SaidTime(NOW - timedelta(hours=hours))
    values = tool.say("still_good", bottles=("orange bottle",), when=said).values
    assert (values["ready"], values["mixed_at"]) == (ready, said.at)


def test_the_record_outranks_what_was_said_of_a_mix(tool: Tool) -> None:
    tool.say("mixed", bottles=("orange bottle",))
    tool.now += timedelta(hours=30)
    said = SaidTime(tool.now - timedelta(hours=1))
    assert tool.say("still_good", bottles=("orange bottle",), when=said).values["ready"] is False


def test_last_nights_mix_is_not_the_one_mixed_this_morning(tool: Tool) -> None:
    tool.say("mixed", bottles=("orange bottle",))
    assert tool.say("still_good", when=SaidTime(NOW - timedelta(hours=12), "part")).outcome is Outcome.ASK


def test_a_rinsed_bottle_holds_nothing(tool: Tool) -> None:
    tool.say("mixed", bottles=("orange bottle",))
    tool.say("rinsed_out", bottles=("orange bottle",))
    values = tool.say("in_bottle", bottles=("orange bottle",)).values
    assert (values["agent"], values["held"]) == (None, ())


# ---------------------------------------------------------------- what is left


def test_fills_left_are_whole_fills_of_the_usual_bottle(tool: Tool) -> None:
    tool.say("mixed", bottles=("violet bottle",), mixes=(ONE_IN_50,))
    values = tool.say("stock_left", stocks=("shed bleach",)).values
    assert (values["left"], values["fills_left"]) == (Amount(Fraction(1290), "mL"), 129)
    assert values["runs_out"] is None  # no pace from one fill


def test_it_runs_out_at_the_pace_of_the_fills_on_record(tool: Tool) -> None:
    for _ in range(3):
        tool.say("mixed", bottles=("violet bottle",), mixes=(ONE_IN_50,))
        tool.now += timedelta(days=2)
    values = tool.say("stock_left", stocks=("shed bleach",)).values
    # 20 mL over the 4 days from the first fill to the last; 1270 mL at 5 mL a day
    assert values["a_day"] == Amount(Fraction(5), "mL")
    assert values["runs_out"] == tool.now + timedelta(days=254)


def test_a_stock_whose_amount_is_not_set_is_not_guessed(tool: Tool) -> None:
    values = tool.say("stock_left", stocks=("spirit vinegar",)).values
    assert (values["left"], values["fills_left"], values["runs_out"]) == (None, None, None)
