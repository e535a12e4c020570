"""Two clocks that part: the smaller span counts until the keeper says how long it has been."""

from __future__ import annotations

from datetime import datetime, timedelta

import pytest
from story import BEGIN, Story, ready_to_air

from assistant.core.record.clocks import Difference, differences
from assistant.core.record.events import ClocksParted, ClocksSettled, RinseBegun, StepDone, WindowsOpened
from assistant.core.round.gate import timers
from assistant.core.round.rounds import hold_is_served


class Watched(Story):
    """A story in which the wall's clock can be set, while the other takes no notice."""

    offset_s = 0.0

    def clock_set(self, **span: float) -> Watched:
        ahead = timedelta(**span)
        self.now += ahead
        self.offset_s += ahead.total_seconds()
        self.tell(ClocksParted(ahead.total_seconds(), self.offset_s))
        return self

    def settle(self, passed: bool, step: str = "hold", thing: str = "tub") -> Watched:
        self.tell(ClocksSettled(thing, step, passed, self.offset_s))
        return self

    def left(self) -> float:
        return self.timers()[0].seconds if self.timers() else 0.0


def sprayed() -> Watched:
    story = Watched()
    story.start().done("move out", "clear", "wash", "apply")
    return story


def aired_for(minutes: float) -> Watched:
    """An airing that takes two hours, begun so long ago."""
    story = Watched()
    ready_to_air(story)
    story.after(minutes=minutes)
    return story


def test_a_clock_set_forward_serves_nothing() -> None:
    story = sprayed()
    story.after(minutes=4)
    story.clock_set(hours=1)
    assert story.left() == 6 * 60
    story.after(minutes=6)
    assert hold_is_served(story.round(), story.now)


def test_a_clock_set_back_counts_from_the_beginning_once_it_is_past_it_again() -> None:
    story = sprayed()
    story.after(minutes=4)
    story.clock_set(minutes=-30)
    assert story.left() == 10 * 60
    story.after(minutes=26)
    assert story.left() == 10 * 60
    story.after(minutes=7)
    assert story.left() == 3 * 60


@pytest.mark.parametrize(("minutes", "longer"), [(60, 64), (-30, 4)])
def test_the_difference_is_what_the_keeper_is_asked_about(minutes: float, longer: float) -> None:
    story = sprayed()
    story.after(minutes=4)
    story.clock_set(minutes=minutes)
    shorter = 4 if minutes > 0 else 0
    assert differences(story.state, story.now) == (Difference("tub", "hold", shorter * 60, longer * 60),)


def test_once_confirmed_the_longer_span_counts_from_then_on() -> None:
    back = sprayed()
    back.after(minutes=4)
    back.clock_set(minutes=-30).settle(passed=True)
    assert back.left() == 6 * 60
    back.after(minutes=6)
    assert hold_is_served(back.round(), back.now)
    asleep = sprayed()
    asleep.after(minutes=4)
    asleep.clock_set(minutes=5).settle(passed=True)
    assert asleep.left() == 60


def test_once_denied_the_shorter_span_counts_and_nothing_is_asked_again() -> None:
    story = sprayed()
    story.after(minutes=4)
    story.clock_set(hours=1).settle(passed=False)
    assert story.left() == 6 * 60
    assert differences(story.state, story.now) == ()
    assert story.state.parting is None


def test_a_few_seconds_are_taken_off_but_not_asked_about() -> None:
    story = sprayed()
    story.after(minutes=4)
    story.clock_set(seconds=20)
    assert story.left() == 6 * 60
    assert differences(story.state, story.now) == ()


def test_a_clock_put_right_again_counts_as_if_nothing_had_been() -> None:
    story = sprayed()
    story.after(minutes=4)
    story.clock_set(hours=-1)
    story.after(minutes=2)
    story.clock_set(hours=1)
    assert story.left() == 4 * 60
    assert differences(story.state, story.now) == ()


def test_what_another_shell_told_already_is_told_once() -> None:
    story = sprayed()
    story.after(minutes=4)
    story.clock_set(hours=1)
    story.tell(ClocksParted(3600.0 + 0.4, story.offset_s + 0.4))
    assert story.left() == 6 * 60
    assert story.state.parting is not None
    assert story.state.parting.ahead_s == 3600


def test_an_airing_goes_by_the_smaller_span_too() -> None:
    story = aired_for(30)
    story.clock_set(hours=5)
    assert story.left() == 90 * 60
    assert story.gate().blocked_by == ("air",)
    story.settle(passed=False, step="air")
    story.after(minutes=89, seconds=59)
    assert not story.gate().ready
    story.after(seconds=1)
    assert story.gate().ready


def test_an_airing_set_back_and_confirmed_is_over_when_it_has_been_long_enough() -> None:
    story = aired_for(110)
    story.clock_set(hours=-3)
    assert story.left() == 120 * 60
    story.settle(passed=True, step="air")
    assert story.left() == 10 * 60
    story.after(minutes=9, seconds=59)
    assert not story.gate().ready
    story.after(seconds=1)
    assert story.gate().ready


def test_openings_said_after_the_clock_was_set_back_set_the_rate_from_then_on() -> None:
    story = aired_for(30)
    story.clock_set(hours=-1)
    story.after(minutes=30)
    story.tell(WindowsOpened("tub", 1, 2.0))
    # By the other clock: an hour at one air change an hour, one of two left, at two an hour: half an hour.
    story.settle(passed=True, step="air")
    assert story.left() == pytest.approx(30 * 60)


def test_a_jump_at_a_fast_rate_is_not_made_good_at_a_slow_one() -> None:
    story = aired_for(0)
    story.tell(WindowsOpened("tub", 3, 4.0))
    story.after(minutes=10)
    story.clock_set(hours=1)
    story.tell(WindowsOpened("tub", 0, 0.5))
    # Ten minutes at four an hour are two thirds of a change; one and a third are left, at half a change an hour.
    assert story.left() == pytest.approx((2 - 4 / 6) / 0.5 * 3600)


def test_a_rinse_after_the_clocks_parted_begins_afresh() -> None:
    story = aired_for(60)
    story.clock_set(hours=4)
    story.after(minutes=1).tell(StepDone("tub", "rinse"), StepDone("tub", "dry"))
    assert story.left() == 120 * 60


def test_a_splash_is_rinsed_by_the_smaller_span() -> None:
    story = Watched()
    story.tell(RinseBegun("eye", "person", 900.0)).after(minutes=5)
    story.clock_set(hours=1)
    assert [(t.step, t.seconds) for t in timers(story.state, story.now)] == [("eye", 600.0)]
    assert differences(story.state, story.now)[0].step == "rinse"
    story.settle(passed=True, step="rinse", thing="eye")
    assert timers(story.state, story.now) == ()


def test_each_running_clock_is_settled_by_itself() -> None:
    """The first was sprayed before the clock was set forward, the second between that and its being set back."""
    story = sprayed()
    story.clock_set(minutes=90)
    story.start("box").done("move out", "clear", "wash", "apply", enclosure="box")
    story.after(minutes=3)
    story.clock_set(minutes=-60)
    assert [(d.thing, d.more_s) for d in differences(story.state, story.now)] == [("tub", 1980.0), ("box", 180.0)]
    story.settle(passed=True, thing="box")
    left = {timer.enclosure: timer.seconds for timer in story.timers()}
    assert left == {"box": 420.0, "tub": 420.0}
    story.settle(passed=False)
    assert {timer.enclosure: timer.seconds for timer in story.timers()} == left


def test_an_answer_from_before_the_clock_was_set_again_settles_nothing() -> None:
    story = sprayed()
    story.after(minutes=4)
    story.clock_set(minutes=5)
    asked = story.offset_s
    story.clock_set(hours=1)
    story.tell(ClocksSettled("tub", "hold", True, asked))
    assert story.left() == 6 * 60


def test_no_undo_takes_a_parting_back() -> None:
    story = sprayed()
    story.clock_set(hours=1)
    assert all(deed.event != "ClocksParted" for turn in story.state.turns for deed in turn.deeds)
    story.undo()
    assert story.state.parting is not None


def test_reminders_come_when_it_is_over_by_both_clocks() -> None:
    story = sprayed()
    story.after(minutes=4)
    before: datetime = story.now
    story.clock_set(minutes=30)
    assert story.due(before) == ["still wet"]
    jumped = story.now
    story.after(minutes=6)
    assert story.due(jumped) == ["hold over"]
    assert story.now == BEGIN + timedelta(minutes=40)
