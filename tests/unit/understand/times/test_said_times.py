"""Dates and times of day as they are said, beside a Wednesday morning."""

from __future__ import annotations

from datetime import UTC, datetime

import pytest

from assistant.contract import SaidTime
from assistant.understand.text.words import tokens_of
from assistant.understand.times.moments import moment
from assistant.understand.times.said_times import when_in

NOW = datetime(2026, 5, 13, 10, 30, tzinfo=UTC)


def _said(text: str, bare: bool = False) -> SaidTime | None:
    said = when_in(tokens_of(text), bare)
    return moment(said, NOW) if said is not None else None


@pytest.mark.parametrize(
    ("text", "at", "to_the"),
    [
        ("cleaned it yesterday", "2026-05-12T12:00", "day"),
        ("yesterday at half past four in the afternoon", "2026-05-12T16:30", "minute"),
        ("last tuesday at four", "2026-05-12T16:00", "minute"),
        ("at four on tuesday", "2026-05-12T16:00", "minute"),
        ("on wednesday", "2026-05-06T12:00", "day"),
        ("tuesday morning", "2026-05-12T09:00", "part"),
        ("next tuesday", "2026-05-19T12:00", "day"),
        ("on the third of may", "2026-05-03T12:00", "day"),
        ("on the 3rd of May", "2026-05-03T12:00", "day"),
        ("may third", "2026-05-03T12:00", "day"),
        ("3 may", "2026-05-03T12:00", "day"),
        ("she came on the 28th of December", "2025-12-28T12:00", "day"),
        ("the twenty-first of april 2025", "2025-04-21T12:00", "day"),
        ("on the third", "2026-05-03T12:00", "day"),
        ("2026-05-03", "2026-05-03T12:00", "day"),
        ("the day before yesterday", "2026-05-11T12:00", "day"),
        ("two days ago", "2026-05-11T10:30", "day"),
        ("two and a half hours ago", "2026-05-13T08:00", "minute"),
        ("an hour and a half ago", "2026-05-13T09:00", "minute"),
        ("half an hour ago", "2026-05-13T10:00", "minute"),
        ("a couple of weeks ago", "2026-04-29T10:30", "day"),
        ("about ten minutes ago", "2026-05-13T10:20", "minute"),
        ("this morning", "2026-05-13T09:00", "part"),
        ("last night", "2026-05-12T21:00", "part"),
        ("earlier today", "2026-05-13T10:30", "day"),
        ("at 4pm yesterday", "2026-05-12T16:00", "minute"),
        ("at 9 a.m.", "2026-05-13T09:00", "minute"),
        ("twenty past ten", "2026-05-13T10:20", "minute"),
        ("at ten to ten", "2026-05-13T09:50", "minute"),
        ("at eight in the morning", "2026-05-13T08:00", "minute"),
        ("just now", "2026-05-13T10:30", "minute"),
        ("tomorrow at nine in the morning", "2026-05-14T09:00", "minute"),
        ("in three days", "2026-05-16T10:30", "day"),
        ("last week", "2026-05-06T12:00", "week"),
    ],
)
def test_a_date_or_time_is_taken_as_it_is_mostly_meant(text: str, at: str, to_the: str) -> None:
    said = _said(text)
    assert said is not None
    assert (said.at.isoformat(timespec="minutes"), said.to_the) == (f"{at}+00:00", to_the)


@pytest.mark.parametrize(
    "text",
    [
        "how much bleach at one in thirty two",
        "one to four",
        "ten to four",
        "bleach at 1:32",
        "fill the blue bottle at four percent",
        "may I put him back",
        "may one snake go back",
        "sat in the tub",
        "open the third window",
        "on the third window",
        "after four hours",
        "in ten minutes",
    ],
)
def test_ratios_and_ordinary_words_are_no_time(text: str) -> None:
    assert _said(text) is None


def test_what_may_be_two_times_gives_both() -> None:
    clock, figures = _said("yesterday at four"), _said("on 3/5/2026")
    assert clock is not None
    assert [other.hour for other in clock.others] == [4]
    assert figures is not None
    assert (figures.at.month, [other.month for other in figures.others]) == (5, [3])


def test_at_four_by_itself_counts_only_where_a_time_is_told() -> None:
    assert _said("rinsed it at four") is None
    said = _said("rinsed it at four", bare=True)
    assert said is not None
    assert said.at.hour == 4, "four in the afternoon is still to come"


def test_a_day_that_does_not_exist_is_none() -> None:
    assert _said("on the thirty-first of june") is None


@pytest.mark.parametrize(
    ("said", "at"),
    [
        ("yesterday at 9 at night", "2026-05-12T21:00"),
        ("last night at 11", "2026-05-12T23:00"),
        ("last night at 1", "2026-05-13T01:00"),
        ("last night at 12", "2026-05-13T00:00"),
    ],
)
def test_the_small_hours_of_a_night_are_of_the_day_after(said: str, at: str) -> None:
    found = _said(said)
    assert found is not None
    assert found.at.strftime("%Y-%m-%dT%H:%M") == at
