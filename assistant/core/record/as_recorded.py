"""The household as it stands: keeping.toml, and over it what was changed by word of mouth.

A change lies over the file's line only while that line says what it said at the time: the file is the keeper's, and
whoever edits it has the last word.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Any, cast

from assistant.core.household import Bottle, Enclosure, Group, Household
from assistant.core.record.state import State

SETTINGS = ("ratio", "gallon")
"""Habits that can be set by word of mouth; each is one of the texts that keeping.toml allows."""


def as_recorded(household: Household, state: State) -> Household:
    """The household with the groups, habits and strokes that the record changed."""
    enclosures = tuple(_with_group(home, state) for home in household.enclosures)
    habits: Any = household.habits
    for name in SETTINGS:
        set_to = state.habits.get(name)
        if set_to is not None and (getattr(household.habits, name) or "") == set_to.was:
            habits = replace(habits, **{name: set_to.value})
    bottles = tuple(_with_stroke(bottle, state) for bottle in household.bottles)
    if (enclosures, habits, bottles) == (household.enclosures, household.habits, household.bottles):
        return household
    return replace(household, enclosures=enclosures, habits=habits, bottles=bottles)


def _with_stroke(bottle: Bottle, state: State) -> Bottle:
    now = state.sprayers.get(bottle.name)
    if now is None or now.was != bottle.ml_a_stroke:
        return bottle
    return replace(bottle, ml_a_stroke=now.ml_a_stroke)


def _with_group(home: Enclosure, state: State) -> Enclosure:
    now = state.groups.get(home.name)
    if now is None or now.was != home.group:
        return home
    return replace(home, group=cast(Group, now.group))
