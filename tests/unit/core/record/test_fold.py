"""The fold: surfaces remember, undo takes back, and one by one comes to the same as all at once."""

from __future__ import annotations

import pytest
from story import Story, ready_to_air

from assistant.core.record.events import (
    AgentTouched,
    Away,
    BottleRinsed,
    GasMade,
    Recorded,
    RinseBegun,
    RinseEnded,
    StepDone,
    SurfaceDried,
    SurfaceRinsed,
    Voided,
)
from assistant.core.record.fold import UNDO_DEPTH, fold
from assistant.core.record.state import State


def test_folding_one_by_one_is_folding_all() -> None:
    story = ready_to_air().tell(AgentTouched("tub", "vinegar")).tell(GasMade(("bleach", "vinegar"), bottle="red"))
    assert story.folded_one_by_one == story.state


def test_an_undo_cannot_be_folded_alone() -> None:
    with pytest.raises(ValueError, match="fold_all"):
        fold(State(), Recorded(Story().now, "t", Voided("x")))


def test_undo_takes_back_the_latest_turn_and_again_the_one_before() -> None:
    story = Story().start().done("move out").done("clear").undo()
    assert set(story.round().done) == {"move out"}
    assert set(story.undo().round().done) == set()
    assert story.undo().state.rounds == {}


def test_what_touched_a_surface_is_kept_when_the_spraying_is_undone() -> None:
    story = Story().start().done("move out", "clear", "wash", "apply").undo()
    assert "apply" not in story.round().done
    assert [touch.agent for touch in story.state.surfaces["tub"]] == ["bleach"]


def test_starting_over_keeps_what_touched_the_surface() -> None:
    story = Story().start().done("move out", "clear", "wash", "apply").start()
    assert [touch.agent for touch in story.state.surfaces["tub"]] == ["bleach"]


def test_undo_of_a_rinse_leaves_the_agent_on_the_surface() -> None:
    story = Story().start().done("move out", "clear", "wash", "apply").after(minutes=10).done("rinse").undo()
    assert not story.state.surfaces["tub"][0].rinsed


def test_rinsed_and_dried_clears_the_surface() -> None:
    assert "tub" not in ready_to_air().state.surfaces


def test_dried_without_a_rinse_clears_nothing() -> None:
    story = Story().tell(AgentTouched("tub", "vinegar"), SurfaceDried("tub"))
    assert [(t.rinsed, t.dried) for t in story.state.surfaces["tub"]] == [(False, False)]


def test_wiped_and_dried_is_remembered_as_wiped() -> None:
    story = Story().tell(AgentTouched("tub", "bleach"), SurfaceRinsed("tub", wiped=True), SurfaceDried("tub"))
    assert [(t.wiped, t.rinsed, t.dried) for t in story.state.surfaces["tub"]] == [(True, False, True)]


def test_touched_again_after_the_rinse_counts_anew() -> None:
    story = Story().tell(AgentTouched("tub", "bleach"), SurfaceRinsed("tub"), AgentTouched("tub", "bleach"))
    assert not story.state.surfaces["tub"][0].rinsed


def test_a_gas_made_in_a_bottle_marks_it_until_it_is_rinsed_out() -> None:
    story = Story().tell(GasMade(("bleach", "vinegar"), bottle="red"))
    assert story.state.unknown_mixes == ("red",)
    assert story.tell(BottleRinsed("red")).state.unknown_mixes == ()


def test_undo_does_not_unmake_a_gas() -> None:
    story = Story().tell(GasMade(("bleach", "vinegar"), bottle="red", enclosure=None)).undo()
    assert story.state.unknown_mixes == ("red",)


def test_a_gas_made_on_a_surface_leaves_both_agents_on_it() -> None:
    story = Story().tell(GasMade(("bleach", "vinegar"), enclosure="tub"))
    assert {touch.agent for touch in story.state.surfaces["tub"]} == {"bleach", "vinegar"}


def test_undo_does_not_make_an_unwatched_hold_watched() -> None:
    story = Story().start().done("move out", "clear", "wash", "apply").after(minutes=11)
    story.tell(Away(story.now.replace(minute=1)), StepDone("tub", "rinse")).undo()
    assert story.round().hold is not None
    assert story.round().hold.doubted


def test_a_rinse_that_was_called_off_runs_no_more() -> None:
    story = Story().tell(RinseBegun("eye", "person", 900)).tell(RinseBegun("skin", "person", 900))
    assert [rinse.place for rinse in story.tell(RinseEnded("eye", "person")).state.rinses] == ["skin"]


def test_a_new_splash_restarts_its_own_clock_only() -> None:
    story = Story().tell(RinseBegun("eye", "person", 900)).after(minutes=5).tell(RinseBegun("skin", "person", 900))
    assert [(t.step, t.seconds) for t in story.timers()] == [("eye", 600), ("skin", 900)]
    story.after(minutes=1).tell(RinseBegun("eye", "person", 900))
    assert [(t.step, t.seconds) for t in story.timers()] == [("skin", 840), ("eye", 900)]


def test_the_undo_list_is_bounded() -> None:
    story = Story().start()
    for _ in range(UNDO_DEPTH + 20):
        story.tell(SurfaceRinsed("tub"))
    assert len(story.state.turns) == UNDO_DEPTH


def test_reminders_come_due_once_in_order() -> None:
    story = Story().start().done("move out", "clear", "wash", "apply")
    since = story.now
    assert story.after(minutes=4).due(since) == []
    assert story.after(minutes=5).due(since) == ["still wet"]
    assert story.after(minutes=1).due(since) == ["hold over"]
    assert story.after(minutes=5).due(story.now) == []
    assert story.after(hours=1).due(since) == ["hold over", "animal waits"]
