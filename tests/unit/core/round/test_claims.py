"""What may be recorded: each claim is judged by order and clock."""

from __future__ import annotations

import pytest
from story import CHLORHEXIDINE_STEPS, DETERGENT_STEPS, Story, ready_to_air

from assistant.core.record.events import HoldDoubted, StepDone
from assistant.core.round.claims import by_hand


def sprayed(minutes: float = 0) -> Story:
    return Story().start().done("move out", "clear", "wash", "apply").after(minutes=minutes)


def test_the_next_step_fits() -> None:
    assert Story().start().claim("move out").fit == "fits"


def test_a_step_ahead_names_the_first_one_missing() -> None:
    judgement = Story().start().done("move out").claim("apply")
    assert (judgement.fit, judgement.gap) == ("gap", "clear")


def test_done_holding_five_seconds_short_is_early() -> None:
    judgement = sprayed().after(minutes=9, seconds=55).claim("hold")
    assert (judgement.fit, judgement.left_s) == ("early", 5)


def test_done_holding_asks_whether_it_stayed_wet() -> None:
    assert sprayed(10).claim("hold").fit == "vouch"


def test_done_holding_and_it_stayed_wet_fits() -> None:
    assert sprayed(10).claim("hold", stayed_wet=True).fit == "fits"


def test_stayed_wet_said_too_early_is_still_early() -> None:
    assert sprayed(9).claim("hold", stayed_wet=True).fit == "early"


@pytest.mark.parametrize("step", ["rinse", "dry", "air"])
def test_a_later_step_while_the_wet_time_runs_is_mid_hold(step: str) -> None:
    judgement = sprayed(3).claim(step)
    assert (judgement.fit, judgement.left_s) == ("mid-hold", 420)


def test_rinsed_after_a_watched_hold_fits() -> None:
    assert sprayed(10).claim("rinse").fit == "fits"


def test_rinsed_after_a_doubted_hold_asks_whether_it_stayed_wet() -> None:
    story = sprayed(3).tell(HoldDoubted("tub")).after(minutes=8)
    assert story.claim("rinse").fit == "vouch"
    assert story.claim("rinse", stayed_wet=True).fit == "fits"


def test_dry_before_rinse_is_a_gap() -> None:
    judgement = sprayed(10).claim("dry")
    assert (judgement.fit, judgement.gap) == ("gap", "rinse")


def test_aired_before_time_is_early() -> None:
    judgement = ready_to_air().after(minutes=30).claim("air")
    assert (judgement.fit, judgement.left_s) == ("early", 90 * 60)


def test_aired_after_time_fits() -> None:
    assert ready_to_air().after(hours=2).claim("air").fit == "fits"


def test_back_in_before_everything_is_served_is_too_soon() -> None:
    assert ready_to_air().after(minutes=30).claim("return").fit == "too soon back"


def test_back_in_after_everything_is_served_fits() -> None:
    assert ready_to_air().after(hours=2).claim("return").fit == "fits"


def test_a_step_this_agent_does_not_take_is_not_needed() -> None:
    story = Story().start(steps=CHLORHEXIDINE_STEPS).done("move out", "clear", "wash", "apply").after(minutes=10)
    assert story.done("rinse").claim("air").fit == "not needed"
    assert Story().start(steps=DETERGENT_STEPS).claim("hold").fit == "not needed"


def test_an_early_step_again_is_on_record_already() -> None:
    assert Story().start().done("move out").claim("move out").fit == "already"


def test_a_hold_without_a_figure_cannot_be_claimed() -> None:
    story = Story().start().done("move out", "clear", "wash").tell(StepDone("tub", "apply", agent="peroxide"))
    assert story.after(hours=1).claim("hold").fit == "no figure"
    assert story.claim("rinse").fit == "no figure"


def test_by_hand_is_none_while_the_wet_time_runs() -> None:
    story = sprayed(3)
    assert by_hand(story.round(), story.now) is None
    story.after(minutes=8)
    assert by_hand(story.round(), story.now) == "rinse"
