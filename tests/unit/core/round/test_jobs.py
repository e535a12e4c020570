"""What the sort of a clean changes, and that it changes nothing else."""

from __future__ import annotations

from dataclasses import replace

import pytest
from story import Story, ready_to_air

from assistant.core.facts import Facts
from assistant.core.household import Enclosure
from assistant.core.record.events import RoundStarted, StepDone
from assistant.core.record.history import entries
from assistant.core.round.jobs import JOBS, as_kept_for, chore_of
from assistant.core.round.rounds import STEPS
from assistant.core.shelf.chores import CHORES


def finished(job: str) -> Story:
    """A whole round with bleach, told to be of that sort."""
    story = ready_to_air()
    begun = story.record[0]
    assert isinstance(begun.event, RoundStarted)
    story.record[0] = replace(begun, event=replace(begun.event, job=job))
    return story.after(hours=2).done("return")


@pytest.mark.parametrize(
    ("job", "chores"),
    [("", ["deep clean"]), ("deep clean", ["deep clean"]), ("quarantine clean", ["deep clean"]),
     ("spot clean", ["spot clean"]), ("scale clean", [])],
)  # fmt: skip
def test_a_finished_clean_counts_in_the_schedule_as_what_it_was(job: str, chores: list[str]) -> None:
    assert list(finished(job).state.chores.get("tub", {})) == chores


@pytest.mark.parametrize(
    ("job", "day"),
    [("", "disinfected"), ("quarantine clean", "disinfected"), ("spot clean", "spot clean"), ("scale clean", "part")],
)
def test_a_spot_that_was_disinfected_makes_no_disinfected_day(job: str, day: str) -> None:
    last = entries(finished(job).record)[-1]
    assert isinstance(last.event, StepDone)
    assert last.done == day


@pytest.mark.parametrize("job", JOBS)
@pytest.mark.parametrize("missing", [step for step in STEPS if step not in ("hold", "air", "return")])
def test_no_sort_of_clean_is_ready_with_a_step_missing(job: str, missing: str) -> None:
    story = Story().tell(RoundStarted("tub", "bleach", STEPS, 600.0, 1.0, 2.0, job=job))
    for step in ("move out", "clear", "wash", "apply"):
        story.done(*({step} - {missing}))
    story.after(minutes=10).done(*({"rinse"} - {missing})).done(*({"dry"} - {missing})).after(hours=3)
    assert not story.gate().ready
    assert missing in story.gate().blocked_by


def test_for_quarantine_a_healthy_ones_home_counts_as_a_new_ones_and_a_sick_ones_stays_that() -> None:
    home = Enclosure("tub")
    assert as_kept_for(home, "quarantine clean") == replace(home, group="new")
    assert as_kept_for(replace(home, group="sick"), "quarantine clean") == replace(home, group="sick")
    assert as_kept_for(home, "spot clean") is home
    assert as_kept_for(None, "quarantine clean") is None


def test_every_sort_has_its_fact_and_a_chore_that_there_is(facts: Facts) -> None:
    for job in JOBS:
        assert facts[JOBS[job].fact].says
        assert chore_of(job) in (*CHORES, None)
