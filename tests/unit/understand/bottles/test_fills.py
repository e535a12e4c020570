"""When a fill was made, as it is told: a said time is read, what the mix is for isn't one, and a while ago is asked."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime, timedelta

import pytest

from assistant.contract import Outcome, Reading, Reply, SaidTime, Slots, Talk
from assistant.core.quantities.quantity import read_mix

Ask = Callable[..., Reading]
NOW = datetime(2026, 1, 5, 9, tzinfo=UTC)


@pytest.mark.parametrize(
    ("said", "when"),
    [
        ("I mixed the orange bottle this morning", datetime(2026, 1, 5, 9, tzinfo=UTC)),
        ("I filled the orange bottle yesterday", datetime(2026, 1, 4, 12, tzinfo=UTC)),
        ("filled the orange bottle two hours ago", datetime(2026, 1, 5, 7, tzinfo=UTC)),
        ("I filled the orange bottle with bleach yesterday at four", datetime(2026, 1, 4, 16, tzinfo=UTC)),
        ("the orange bottle was filled last night", datetime(2026, 1, 4, 21, tzinfo=UTC)),
        ("topped up the orange bottle half an hour ago", datetime(2026, 1, 5, 8, 30, tzinfo=UTC)),
        ("last night I mixed the orange bottle", datetime(2026, 1, 4, 21, tzinfo=UTC)),
        ("forgot to tell you, I filled the orange bottle at eight", datetime(2026, 1, 5, 8, tzinfo=UTC)),
        ("made the orange bottle up on saturday", datetime(2026, 1, 3, 12, tzinfo=UTC)),
    ],
)
def test_the_time_of_a_fill_is_read(ask: Ask, said: str, when: datetime) -> None:
    reading = ask(said)
    assert reading.intent == "mixed"
    assert reading.slots.when is not None
    assert reading.slots.when.at == when


@pytest.mark.parametrize(
    "said",
    ["made up the orange bottle for today", "filled the orange bottle for tomorrow", "the orange bottle is filled"],
)
def test_what_a_mix_is_for_is_not_when_it_was_made(ask: Ask, said: str) -> None:
    reading = ask(said)
    assert reading.intent == "mixed"
    assert reading.slots.when is None
    assert not reading.slots.some_time_ago


@pytest.mark.parametrize(
    "said",
    [
        "I filled the orange bottle a while ago",
        "filled the orange bottle a few hours ago",
        "mixed the orange bottle before lunch",
        "I filled the orange bottle the other day",
        "filled the orange bottle some time ago",
    ],
)
def test_a_while_ago_is_no_time_to_count_from(ask: Ask, said: str) -> None:
    reading = ask(said)
    assert reading.intent == "mixed"
    assert reading.slots.when is None
    assert reading.slots.some_time_ago


@pytest.mark.parametrize(
    "said", ["filled it half an hour ago", "ok, filled half an hour ago", "mixed it 30 minutes ago"]
)
def test_a_dose_filled_half_an_hour_ago_counts_from_then(ask: Ask, said: str) -> None:
    dose = Reading("", "dose", Slots(bottles=("orange bottle",)))
    reading = ask(said, Talk(last=Reply("", "dose", Outcome.ANSWER, "", ""), last_reading=dose))
    assert (reading.intent, reading.slots.bottles) == ("mixed", ("orange bottle",))
    assert reading.slots.when is not None
    assert reading.slots.when.at == NOW - timedelta(minutes=30)


@pytest.mark.parametrize(
    ("said", "mix", "when"),
    [
        ("no, one in fifty", "1 in 50", None),
        ("no, fifty", "1 in 50", None),
        ("I said one in fifty", "1 in 50", None),
        ("it was at eight", "1 in 32", datetime(2026, 1, 4, 8, tzinfo=UTC)),
        ("no, it was at four in the afternoon", "1 in 32", datetime(2026, 1, 4, 16, tzinfo=UTC)),
        ("actually an hour ago", "1 in 32", datetime(2026, 1, 5, 8, tzinfo=UTC)),
    ],
)
def test_the_next_word_puts_a_recorded_fill_right(ask: Ask, said: str, mix: str, when: datetime | None) -> None:
    yesterday = SaidTime(datetime(2026, 1, 4, 12, tzinfo=UTC), "day") if when is not None else None
    fill = Reading("", "mixed", Slots(bottles=("orange bottle",), when=yesterday))
    last = Reply("", "mixed", Outcome.ANSWER, "", "", values={"recorded": True, "mix": "1 in 32"})
    slots = ask(said, Talk(last=last, last_reading=fill)).slots
    assert (slots.bottles, slots.mixes, slots.corrects) == (("orange bottle",), (read_mix(mix),), True)
    assert (slots.when.at if slots.when is not None else None) == when
