"""A fill that is told later counts from when it was made, and from the earliest that was meant."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest
from tool import Tool

from assistant.answer.back_dated import earliest
from assistant.contract import Outcome, SaidTime
from assistant.core.household import Household
from assistant.core.record.events import AgentPoured
from assistant.core.record.state import Fill

NOW = datetime(2026, 3, 4, 15, tzinfo=UTC)


def at(day: int, hour: int, minute: int = 0) -> datetime:
    return datetime(2026, 3, day, hour, minute, tzinfo=UTC)


@pytest.fixture
def tool(household: Household) -> Tool:
    return Tool(household, NOW)


def fill_of(tool: Tool, bottle: str = "orange bottle") -> Fill:
    fill = tool.state.bottles[bottle].fill
    assert fill is not None
    return fill


# ---------------------------------------------------------------- the earliest that was meant


@pytest.mark.parametrize(
    ("said", "expected"),
    [
        (SaidTime(at(4, 13)), at(4, 13)),  # "two hours ago"
        (SaidTime(at(3, 16), "minute", (at(3, 4),)), at(3, 16)),  # "yesterday at four": not in the small hours
        (SaidTime(at(3, 18), "minute", (at(3, 6),)), at(3, 6)),  # "yesterday at six" may be either
        (SaidTime(at(4, 3)), at(4, 3)),  # "at three this morning", said so
        (SaidTime(at(4, 9), "part"), at(4, 5)),  # "this morning"
        (SaidTime(at(3, 21), "part"), at(3, 17)),  # "last night"
        (SaidTime(at(3, 12), "day"), at(3, 5)),  # "yesterday"
        (SaidTime(at(4, 12), "day"), at(4, 5)),  # "today"
        (SaidTime(datetime(2026, 2, 25, 12, tzinfo=UTC), "week"), datetime(2026, 2, 18, 5, tzinfo=UTC)),  # "last week"
    ],
)
def test_a_loose_time_is_taken_at_its_earliest(said: SaidTime, expected: datetime) -> None:
    assert earliest(said, NOW) == expected


def test_today_said_in_the_small_hours_is_no_later_than_now() -> None:
    assert earliest(SaidTime(at(4, 2), "day"), at(4, 2)) == at(4, 0)


def test_what_is_only_to_come_stays_to_come() -> None:
    assert earliest(SaidTime(at(5, 12), "day"), NOW) > NOW


# ---------------------------------------------------------------- the fill


@pytest.mark.parametrize(
    ("said", "mixed_at"),
    [
        (SaidTime(at(4, 13)), at(4, 13)),
        (SaidTime(at(4, 9), "part"), at(4, 5)),
        (SaidTime(at(3, 12), "day"), at(3, 5)),
    ],
)
def test_bleach_that_was_mixed_earlier_ends_earlier(tool: Tool, said: SaidTime, mixed_at: datetime) -> None:
    reply = tool.say("mixed", bottles=("orange bottle",), when=said)
    assert reply.values["mixed_at"] == mixed_at
    assert reply.values["expires"] == mixed_at + timedelta(hours=24)
    assert fill_of(tool).kept_until == mixed_at + timedelta(hours=24)


def test_a_fill_of_now_counts_from_now(tool: Tool) -> None:
    assert tool.say("mixed", bottles=("orange bottle",)).values["expires"] == NOW + timedelta(hours=24)
    assert fill_of(tool).at == NOW


def test_mixed_yesterday_morning_is_past_its_time_and_said_so(tool: Tool) -> None:
    reply = tool.say("mixed", bottles=("orange bottle",), when=SaidTime(at(3, 9), "part"))
    assert "past its time" in reply.say
    good = tool.say("still_good", bottles=("orange bottle",))
    assert good.values["ready"] is False


def test_a_fill_still_to_come_is_asked_about_and_not_recorded(tool: Tool) -> None:
    reply = tool.say("mixed", bottles=("orange bottle",), when=SaidTime(at(5, 12), "day"))
    assert (reply.outcome, reply.missing) == (Outcome.ASK, ("when",))
    assert reply.values["recorded"] is False
    assert tool.record == []


def test_some_time_ago_is_asked_about_and_not_counted_from_now(tool: Tool) -> None:
    reply = tool.say("mixed", bottles=("orange bottle",), some_time_ago=True)
    assert (reply.outcome, reply.missing) == (Outcome.ASK, ("when",))
    assert [type(recorded.event) for recorded in tool.record] == [AgentPoured]  # it is in there, however old
    assert tool.state.bottles["orange bottle"].fill is None


def test_a_top_up_told_later_keeps_the_older_end(tool: Tool) -> None:
    tool.say("mixed", bottles=("orange bottle",), when=SaidTime(at(4, 13)))
    tool.say("mixed", bottles=("orange bottle",), topped_up=True, when=SaidTime(at(4, 14)))
    assert (fill_of(tool).at, fill_of(tool).kept_until) == (at(4, 13), at(5, 13))


def test_a_top_up_told_of_before_the_fill_brings_the_end_forward(tool: Tool) -> None:
    tool.say("mixed", bottles=("orange bottle",))
    tool.say("mixed", bottles=("orange bottle",), topped_up=True, when=SaidTime(at(4, 8)))
    assert fill_of(tool).kept_until == at(5, 8)


def test_a_bottle_whose_fill_was_taken_back_is_not_topped_up(tool: Tool) -> None:
    tool.say("mixed", bottles=("orange bottle",))
    tool.say("undo")
    reply = tool.say("mixed", bottles=("orange bottle",), topped_up=True)
    assert (reply.outcome, reply.missing) == (Outcome.ASK, ("contents",))


def test_fills_told_out_of_order_are_drawn_in_order(tool: Tool) -> None:
    tool.say("mixed", bottles=("orange bottle",))
    tool.say("mixed", bottles=("orange bottle",), when=SaidTime(at(2, 9)))
    draws = tool.state.drawn["shed bleach"].draws
    assert [draw.at for draw in draws] == [at(2, 9), NOW]
