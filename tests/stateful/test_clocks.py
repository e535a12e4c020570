"""One round to its end while the wall's clock is set and the computer sleeps: never ready before it is so."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from test_rounds import NAMES, Rounds

TUB = NAMES[0]
ACTS: dict[str, Callable[[Rounds], None]] = {
    "next": lambda keeper: keeper._do_next(TUB),
    "a minute": lambda keeper: keeper.time_passes(1),
    "nine": lambda keeper: keeper.time_passes(9),
    "five hours": lambda keeper: keeper.time_passes(300),
    "a window": lambda keeper: keeper.open_windows(1),
    "three windows": lambda keeper: keeper.open_windows(3),
    "back an hour": lambda keeper: keeper.the_clock_is_set(-60),
    "back a little": lambda keeper: keeper.the_clock_is_set(-4),
    "on a little": lambda keeper: keeper.the_clock_is_set(7),
    "on ten hours": lambda keeper: keeper.the_clock_is_set(600),
    "asleep": lambda keeper: keeper.the_computer_sleeps(30),
    "asked": lambda keeper: keeper.say("time_left"),
    "answered": lambda keeper: keeper.answer_the_question() if keeper.waiting is not None else None,
}
acts = st.lists(st.sampled_from(("next", "next", "next", *ACTS)), min_size=8, max_size=40)
READY: list[str] = []
ANSWERED: list[bool] = []


def _play(story: list[str]) -> None:
    keeper = Rounds()
    for _ in range(5):
        keeper._do_next(TUB)  # up to sprayed: before that no clock runs
    for act in story:
        ACTS[act](keeper)
        keeper.never_ahead_of_the_truth()
        keeper.the_state_is_the_whole_record_folded()
        if act == "answered" and keeper.tool.talk.last is not None:
            ANSWERED.append("longer time counts" in keeper.tool.talk.last.say)
        READY.extend(name for name in NAMES if not keeper.left(keeper.tool.state, name))


@settings(derandomize=True, deadline=None, max_examples=150)
@given(acts)
def _many(story: list[str]) -> None:
    _play(story)


def test_no_clock_that_is_set_makes_it_ready_too_soon() -> None:
    _many()
    assert len(READY) > 50, "a proof about rounds that never end would prove nothing"
    assert any(ANSWERED), "nor would one in which the longer span was never confirmed"


@pytest.mark.slow
@settings(derandomize=True, deadline=None, max_examples=3000)
@given(acts)
def test_no_clock_that_is_set_makes_it_ready_too_soon_in_long_runs(story: list[str]) -> None:
    _play(story)
