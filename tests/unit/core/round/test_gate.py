"""The gate, rule by rule; every way to "ready" has a twin that lacks one step."""

from __future__ import annotations

from datetime import timedelta

import pytest
from story import BLEACH_STEPS, CHLORHEXIDINE_STEPS, DETERGENT_STEPS, Story, ready_to_air

from assistant.core.record.events import (
    AgentTouched,
    Away,
    BackTooSoon,
    DriedEarly,
    HoldDoubted,
    StayedWet,
    StepDone,
    WindowsOpened,
)


def test_no_round_on_record_is_not_ready_and_blocked_by_nothing() -> None:
    verdict = Story().gate()
    assert (verdict.ready, verdict.blocked_by, verdict.earliest, verdict.claim) == (False, (), None, None)


def test_a_round_just_begun_is_blocked_by_every_step_but_return() -> None:
    assert Story().start().gate().blocked_by == BLEACH_STEPS[:-1]


def test_a_whole_round_is_ready_and_says_what_it_was() -> None:
    verdict = ready_to_air().after(hours=2).gate()
    assert verdict.ready
    assert verdict.claim == "disinfected_by_published"


@pytest.mark.parametrize("missing", ["move out", "clear", "wash", "apply", "rinse", "dry"])
def test_one_step_missing_is_not_ready(missing: str) -> None:
    story = Story().start()
    for step in ("move out", "clear", "wash", "apply", "rinse", "dry"):
        if step == "rinse":
            story.after(minutes=10)
        if step != missing:
            story.done(step)
    verdict = story.after(hours=5).gate()
    assert not verdict.ready
    assert missing in verdict.blocked_by


def test_the_airing_one_second_short_is_not_ready() -> None:
    assert ready_to_air().after(hours=2, seconds=-1).gate().blocked_by == ("air",)


def test_the_hold_one_second_short_is_not_served() -> None:
    story = Story().start().done("move out", "clear", "wash", "apply").after(minutes=9, seconds=59)
    assert story.gate().blocked_by[0] == "hold"
    assert story.after(seconds=1).gate().blocked_by[0] == "rinse"


def test_dried_early_reopens_apply_and_the_wet_time_starts_in_full() -> None:
    story = Story().start().done("move out", "clear", "wash", "apply").after(minutes=9).tell(DriedEarly("tub"))
    assert story.after(minutes=30).gate().blocked_by == ("apply", "hold", "rinse", "dry", "air")
    story.done("apply")
    assert story.timers()[0].seconds == 600


def test_sprayed_again_from_the_same_bottle_during_the_hold_runs_on() -> None:
    story = Story().start().done("move out", "clear", "wash", "apply").after(minutes=4).done("apply").after(minutes=5)
    assert story.timers()[0].seconds == 60


def test_sprayed_again_after_the_hold_reopens_everything_after_it() -> None:
    story = ready_to_air().done("apply")
    assert story.gate().blocked_by == ("hold", "rinse", "dry", "air")


def test_another_agent_during_the_hold_starts_it_again_in_full() -> None:
    story = Story().start().done("move out", "clear", "wash", "apply").after(minutes=9).done("apply", agent="quat")
    assert story.timers()[0].seconds == 600


def test_an_agent_claimed_to_have_touched_it_reopens_apply() -> None:
    assert ready_to_air().after(hours=2).tell(AgentTouched("tub", "vinegar")).gate().blocked_by[0] == "apply"


@pytest.mark.parametrize("doubt", [HoldDoubted("tub"), Away(Story().now)])
def test_a_doubted_hold_counts_only_once_vouched_for(doubt: HoldDoubted | Away) -> None:
    story = Story().start().done("move out", "clear", "wash", "apply").after(minutes=11).tell(doubt)
    assert story.gate().blocked_by[0] == "hold"
    assert story.tell(StayedWet("tub")).gate().blocked_by[0] == "rinse"


def test_away_after_the_wet_time_was_over_doubts_nothing() -> None:
    story = Story().start().done("move out", "clear", "wash", "apply").after(minutes=11)
    since = story.now
    assert story.after(hours=3).tell(Away(since)).gate().blocked_by[0] == "rinse"


def test_a_hold_without_a_figure_is_never_served() -> None:
    story = Story().start().done("move out", "clear", "wash")
    story.tell(_spray_without_figure())
    assert story.after(days=3).gate().blocked_by[0] == "hold"


def _spray_without_figure() -> StepDone:
    return StepDone("tub", "apply", agent="peroxide", hold_s=None)


def test_put_back_too_soon_reopens_move_out() -> None:
    assert ready_to_air().tell(BackTooSoon("tub")).gate().blocked_by == ("move out", "air")


def test_a_round_for_one_enclosure_never_clears_another() -> None:
    story = ready_to_air().start("vivarium").after(hours=3)
    assert story.gate("tub").ready
    assert not story.gate("vivarium").ready


def test_starting_over_begins_with_nothing_done() -> None:
    assert ready_to_air().after(hours=3).start().gate().blocked_by == BLEACH_STEPS[:-1]


def test_put_back_on_record_is_no_longer_ready() -> None:
    assert not ready_to_air().after(hours=2).done("return").gate().ready


def test_chlorhexidine_needs_no_airing() -> None:
    story = Story().start(steps=CHLORHEXIDINE_STEPS).done("move out", "clear", "wash", "apply").after(minutes=10)
    assert story.done("rinse").gate().blocked_by == ("dry",)
    assert story.done("dry").gate().ready


def test_a_detergent_round_is_a_clean_and_says_so() -> None:
    story = Story().start(agent="detergent", steps=DETERGENT_STEPS).done("move out", "clear", "wash", "dry")
    assert story.gate().claim == "cleaned_only"


# ---------------------------------------------------------------- the airing's clock


def test_airing_counts_from_dry_when_no_opening_was_said() -> None:
    story = Story().start().done("move out", "clear", "wash", "apply").after(minutes=10).done("rinse").after(hours=5)
    assert "air" in story.gate().blocked_by
    story.done("dry")
    assert story.timers()[0].seconds == 7200


def test_airing_counts_from_an_opening_said_after_the_rinse() -> None:
    story = Story().start().done("move out", "clear", "wash", "apply").after(minutes=10).done("rinse").after(minutes=20)
    story.tell(WindowsOpened("tub", 2, 4.0)).after(minutes=10).done("dry")
    assert story.timers()[0].seconds == 20 * 60  # two air changes at four an hour, ten minutes served


def test_an_opening_said_before_the_rinse_counts_from_the_rinse() -> None:
    story = Story().start().tell(WindowsOpened("tub", 1, 2.0)).done("move out", "clear", "wash", "apply")
    story.after(minutes=10).done("rinse")
    assert story.timers()[0].seconds == 3600


def test_a_second_opening_hastens_what_is_left() -> None:
    story = ready_to_air()
    story.tell(WindowsOpened("tub", 1, 1.0)).after(hours=1).tell(WindowsOpened("tub", 2, 4.0))
    assert story.timers()[0].seconds == 15 * 60  # one of two air changes served, the other at four an hour


def test_rinsed_again_is_wet_again_and_airs_again() -> None:
    story = ready_to_air().after(hours=2).done("rinse")
    assert story.gate().blocked_by == ("dry", "air")


# ---------------------------------------------------------------- clocks that jump


def test_a_clock_set_back_serves_nothing() -> None:
    story = Story().start().done("move out", "clear", "wash", "apply").after(hours=-2)
    assert story.timers()[0].seconds == 600
    assert story.gate().blocked_by[0] == "hold"


def test_a_clock_set_back_during_the_airing_serves_nothing() -> None:
    assert ready_to_air().after(days=-1).timers()[0].seconds == 7200


def test_a_hold_that_a_rinse_was_accepted_on_stays_served_when_the_clock_goes_back() -> None:
    story = ready_to_air().after(hours=-1)
    assert story.gate().blocked_by == ("air",)


# ---------------------------------------------------------------- the earliest time


def test_earliest_is_the_end_of_the_airing_that_runs() -> None:
    story = ready_to_air()
    assert story.gate().earliest == story.now + timedelta(hours=2)


def test_earliest_adds_the_airing_to_the_hold_that_runs() -> None:
    story = Story().start().done("move out", "clear", "wash", "apply")
    assert story.gate().earliest == story.now + timedelta(minutes=10, hours=2)


def test_no_earliest_where_the_hold_cannot_be_served() -> None:
    story = Story().start().done("move out", "clear", "wash")
    assert story.tell(_spray_without_figure()).gate().earliest is None
