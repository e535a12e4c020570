"""What is due, in what order, what was done, and when a quarantine ends."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest
from tool import Tool

from assistant.contract import Outcome, SaidTime
from assistant.core.household import Household

NOW = datetime(2026, 1, 5, 9, tzinfo=UTC)


@pytest.fixture
def tool(household: Household) -> Tool:
    return Tool(household, NOW)


def test_what_was_never_done_on_record_is_due(tool: Tool) -> None:
    values = tool.say("due").values
    assert values["due_count"] == 3
    assert {one["enclosure"] for one in values["due"]} == {"east tank"}  # the only one with intervals
    assert {one["overdue_days"] for one in values["due"]} == {None}


def test_a_logged_chore_is_due_again_after_its_interval(tool: Tool) -> None:
    tool.say("log_clean", enclosures=("east tank",), chores=("water", "spot clean", "deep clean"))
    assert tool.say("due").values["due_count"] == 0
    assert tool.say("due").values["next"]["chore"] in ("water", "spot clean")
    tool.now += timedelta(days=3)
    due = tool.say("due").values["due"]
    assert [(one["chore"], one["overdue_days"]) for one in due] == [("water", 2), ("spot clean", 2)]


def test_healthy_goes_before_new(tool: Tool) -> None:
    values = tool.say("order", every_enclosure=True).values
    assert values["order"][-1] == "new arrival box"
    assert values["groups"] == ("healthy", "healthy", "new")
    assert values["order"][0] == "pond tub"  # the water animal first in its group


def test_a_chore_is_logged_for_the_time_said(tool: Tool) -> None:
    yesterday = SaidTime(NOW - timedelta(days=1), "day")
    values = tool.say("log_clean", groups=("healthy",), chores=("spot clean",), when=yesterday).values
    assert values["enclosures"] == ("east tank", "pond tub")
    assert values["at"] == yesterday.at
    last = tool.say("last_done", enclosures=("east tank",)).values
    assert (last["at"], last["days_ago"], last["chore"]) == (yesterday.at, 1, "spot clean")


def test_fresh_water_is_no_clean(tool: Tool) -> None:
    tool.say("log_clean", enclosures=("east tank",), chores=("water",))
    asked = tool.say("last_done", enclosures=("east tank",))
    assert (asked.values["at"], asked.values["done"]) == (None, ())
    watered = tool.say("last_done", enclosures=("east tank",), chores=("water",))
    assert (watered.values["at"], watered.values["chore"]) == (NOW, "water")


def test_a_chore_still_to_come_is_not_logged(tool: Tool) -> None:
    tomorrow = SaidTime(NOW + timedelta(days=1), "day")
    reply = tool.say("log_clean", enclosures=("east tank",), chores=("water",), when=tomorrow)
    assert (reply.outcome, reply.missing) == (Outcome.ASK, ("when",))
    assert tool.record == []


def test_a_logged_clean_makes_nothing_ready(tool: Tool) -> None:
    tool.say("log_clean", enclosures=("east tank",), chores=("deep clean",))
    assert tool.say("return_check", enclosures=("east tank",)).values["ready"] is False


def test_undo_takes_a_logged_chore_back(tool: Tool) -> None:
    tool.say("log_clean", enclosures=("east tank",), chores=("water",))
    tool.say("undo")
    assert tool.say("last_done", enclosures=("east tank",), chores=("water",)).values["at"] is None


def test_quarantine_ends_by_the_keepers_own_days_from_the_day_of_arrival(tool: Tool) -> None:
    values = tool.say("quarantine", enclosures=("new arrival box",)).values
    # arrived 28 December: 3 days of December, 31 of January, 28 of February, 28 of March
    assert values["ends"] == datetime(2026, 3, 28, tzinfo=UTC)
    assert (values["day"], values["of_days"], values["days_left"]) == (8, 90, 82)


def test_with_no_arrival_set_the_end_is_not_guessed(tool: Tool) -> None:
    values = tool.say("quarantine", enclosures=("pond tub",)).values
    assert (values["ends"], values["days_left"]) == (None, None)
