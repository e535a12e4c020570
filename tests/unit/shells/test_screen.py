"""The screen: nothing wider than the terminal, what came due first, long sources kept short."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as some

from assistant.contract import Outcome, Reply
from assistant.core.facts import Source
from assistant.shells.screen import NARROWEST, clock, screen_lines

SOURCES = tuple(Source(f"s-{i}", "published", f"words {i}") for i in range(3))


def test_what_came_due_stands_first_then_the_answer_cautions_and_two_sources() -> None:
    reply = Reply("", "dose", Outcome.ANSWER, "say", "15 mL\n485 mL water", (), (), ("gloves",), SOURCES, ("wet over",))
    assert screen_lines(reply) == [
        "* wet over",
        "15 mL",
        "485 mL water",
        "! gloves",
        "  from: words 0",
        "  from: words 1",
        "  and 1 more; --json lists them all",
    ]


def test_a_reminder_that_is_the_answer_is_shown_once() -> None:
    assert screen_lines(Reply("", None, Outcome.ANSWER, "due", "due", reminders=("due",))) == ["due"]


def test_long_lines_hang_below_their_beginning() -> None:
    reply = Reply("", None, Outcome.ANSWER, "", "x", cautions=("gloves and an open window " * 2,))
    assert screen_lines(reply, 30)[1:] == ["! gloves and an open window", "  gloves and an open window"]


@settings(derandomize=True)
@given(text=some.text(some.sampled_from("ab \n"), max_size=200), width=some.integers(NARROWEST, 200))
def test_no_line_is_wider_than_the_terminal(text: str, width: int) -> None:
    reply = Reply("", None, Outcome.ANSWER, "", text, cautions=(text,), sources=(Source("", "memory", text),))
    assert all(len(line) <= width for line in screen_lines(reply, width))


@pytest.mark.parametrize(
    ("seconds", "shown"), [(600, "10:00"), (599.2, "10:00"), (65, "1:05"), (0.2, "0:01"), (3729, "1:02:09")]
)
def test_a_clock_shows_what_is_left_and_never_nothing(seconds: float, shown: str) -> None:
    assert clock(seconds) == shown
