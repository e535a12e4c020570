"""keeping.toml, and over it what was changed by word of mouth."""

from __future__ import annotations

from dataclasses import replace

from story import Story

from assistant.core.household import Bottle, Enclosure, Habits, Household
from assistant.core.quantities.quantity import read_amount
from assistant.core.record.as_recorded import as_recorded
from assistant.core.record.events import GroupChanged, HabitChanged, SprayerMeasured

HOME = Household(habits=Habits(gallon="US"), enclosures=(Enclosure("tub"), Enclosure("box", group="new")))


def test_a_household_without_changes_is_the_file() -> None:
    assert as_recorded(HOME, Story().state) is HOME


def test_a_changed_group_counts_for_that_enclosure_alone() -> None:
    there = as_recorded(HOME, Story().tell(GroupChanged("tub", "sick", "healthy")).state)
    assert [home.group for home in there.enclosures] == ["sick", "new"]


def test_whoever_edits_the_file_afterwards_has_the_last_word() -> None:
    state = Story().tell(GroupChanged("tub", "sick", "healthy")).state
    edited = replace(HOME, enclosures=(Enclosure("tub", group="new"), *HOME.enclosures[1:]))
    assert as_recorded(edited, state).enclosures[0].group == "new"


def test_a_measured_stroke_counts_until_its_line_is_edited() -> None:
    home = replace(HOME, bottles=(Bottle("amber", read_amount("500 mL"), ml_a_stroke=0.9),))
    state = Story().tell(SprayerMeasured("amber", 1.2, 0.9)).state
    assert as_recorded(home, state).bottles[0].ml_a_stroke == 1.2
    edited = replace(home, bottles=(replace(home.bottles[0], ml_a_stroke=0.8),))
    assert as_recorded(edited, state).bottles[0].ml_a_stroke == 0.8


def test_a_changed_habit_counts_until_its_line_is_edited() -> None:
    state = Story().tell(HabitChanged("gallon", "imperial", "US")).state
    assert as_recorded(HOME, state).habits.gallon == "imperial"
    assert as_recorded(replace(HOME, habits=Habits(gallon=None)), state).habits.gallon is None


def test_a_habit_that_was_not_set_in_the_file_can_be_set_by_word_of_mouth() -> None:
    state = Story().tell(HabitChanged("ratio", "in", "")).state
    assert as_recorded(HOME, state).habits.ratio == "in"


def test_no_other_habit_is_changed_so() -> None:
    state = Story().tell(HabitChanged("speak", "true", "")).state
    assert as_recorded(HOME, state) is HOME
