"""When chores are due, and in what order to go round."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta, timezone
from fractions import Fraction

from assistant.core.household import Enclosure
from assistant.core.quantities.amounts import Amount
from assistant.core.record.state import State
from assistant.core.shelf.chores import due_of, in_working_order, missed_first, with_chore

NOW = datetime(2026, 3, 4, 15, tzinfo=UTC)
HOME = Enclosure("tank", spot_clean_every=Amount(Fraction(2), "d"), water_every=Amount(Fraction(1), "d"))


def test_a_chore_told_later_of_an_earlier_day_takes_nothing_back() -> None:
    state = with_chore(State(), "tank", "water", NOW)
    assert with_chore(state, "tank", "water", NOW - timedelta(days=2)) == state


def test_a_chore_is_due_by_the_day_and_not_by_the_hour() -> None:
    state = with_chore(State(), "tank", "water", NOW - timedelta(hours=20))  # seven in the evening before
    water = next(due for due in due_of(HOME, state, NOW) if due.chore == "water")
    assert (water.overdue_days, water.is_due) == (0, True)


def test_a_day_ends_by_the_keepers_own_zone() -> None:
    east = NOW.astimezone(timezone(timedelta(hours=10)))  # one in the morning of the fifth
    state = with_chore(State(), "tank", "water", NOW - timedelta(hours=20))  # five in the morning of the fourth
    water = next(due for due in due_of(HOME, state, east) if due.chore == "water")
    assert water.overdue_days == 0


def test_what_was_missed_comes_first_and_then_what_is_not_on_record() -> None:
    state = with_chore(State(), "tank", "spot clean", NOW - timedelta(days=5))
    assert [due.overdue_days for due in missed_first(due_of(HOME, state, NOW))] == [3, None]


def test_a_chore_without_an_interval_is_never_due() -> None:
    assert {due.chore for due in due_of(HOME, State(), NOW)} == {"water", "spot clean"}


def test_the_sick_come_last_and_water_homes_first_in_their_group() -> None:
    homes = (
        Enclosure("a", group="sick"),
        Enclosure("b", group="new"),
        Enclosure("c", group="healthy"),
        Enclosure("d", group="healthy", water="all"),
    )
    assert [home.name for home in in_working_order(homes)] == ["d", "c", "b", "a"]
