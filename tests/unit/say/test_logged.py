"""Every event has words of its own in the log; one without any is told by its name, and a month is drawn in letters."""

from __future__ import annotations

from dataclasses import MISSING, dataclass, fields
from datetime import UTC, date, datetime

import pytest

from assistant.core.record.events import EVENTS, Voided
from assistant.core.record.history import Entry
from assistant.say.wording.logged import correction, told, what_was_done
from assistant.say.wording.month_drawn import days_of, month_lines

AT = datetime(2026, 5, 4, 9, tzinfo=UTC)
OF_TYPE = {"float": 600.0, "float | None": 600.0, "int": 2, "bool": True, "datetime": AT, "tuple[str, ...]": ("a", "b")}


def plainest(kind: type) -> object:
    """One of that event, with an invented value in every field that needs one."""
    return kind(**{f.name: OF_TYPE.get(str(f.type), "word") for f in fields(kind) if f.default is MISSING})


@pytest.mark.parametrize("kind", [kind for kind in EVENTS if kind is not Voided])
def test_every_event_is_told_in_a_keepers_words(kind: type) -> None:
    said = told(plainest(kind), str)  # type: ignore[arg-type]
    assert said
    by_name = "".join(f" {letter.lower()}" if letter.isupper() else letter for letter in kind.__name__).strip()
    assert not said.startswith(f"{by_name}: "), "give it words of its own"
    for word in ("hold", "apply", "round", "None", "Fraction"):
        assert word not in said.split()


@dataclass(frozen=True)
class SplintMade:
    """Of no kind known here."""

    enclosure: str
    colour: str


def test_an_event_without_words_is_told_by_its_name_and_fields() -> None:
    assert told(SplintMade("tub", "blue"), str) == "splint made: colour blue"  # type: ignore[arg-type]


def test_an_undo_names_what_it_takes_back() -> None:
    splint = Entry(AT, AT, "1", SplintMade("tub", "blue"), undone_at=AT)  # type: ignore[arg-type]
    undo = Entry(AT, AT, "2", Voided("1"))
    assert what_was_done(undo, (splint, undo), str) == "took back: splint made: colour blue"
    assert correction(splint, lambda at: at) == "taken back 2026-05-04 09:00"
    assert correction(undo, lambda at: at) == ""


def test_a_month_is_a_row_an_enclosure_and_a_letter_a_day() -> None:
    rows = {"tub": {date(2026, 5, 4): frozenset({"disinfected", "part"}), date(2026, 5, 6): frozenset({"water"})}}
    lines = month_lines(date(2026, 5, 1), rows, date(2026, 5, 8))  # type: ignore[arg-type]
    assert lines[0] == "May 2026"
    row = next(line for line in lines if line.startswith("tub"))
    assert row[18:].split() == [".", ".", ".", "D", ".", "W", ".", "."]
    assert [line[0] for line in lines[-3:]] == ["D", "W", "."]


def test_more_than_one_thing_on_a_day_is_marked() -> None:
    rows = {"tub": {date(2026, 5, 4): frozenset({"spot clean", "water"})}}
    lines = month_lines(date(2026, 5, 1), rows, date(2026, 5, 8))  # type: ignore[arg-type]
    assert any("S+" in line for line in lines)
    assert lines[-1].startswith("+  ")


@pytest.mark.parametrize("month", [date(2026, 2, 1), date(2028, 2, 29), date(2026, 12, 31)])
def test_a_month_fits_eighty_columns_and_has_all_its_days(month: date) -> None:
    days = days_of(month)
    assert {(day.year, day.month) for day in days} == {(month.year, month.month)}
    assert len(days) == {2: 28 if month.year == 2026 else 29, 12: 31}[month.month]
    rows = {"a name that is longer than its column": {day: frozenset({"water", "part"}) for day in days}}
    assert max(map(len, month_lines(month, rows, days[-1]))) <= 80  # type: ignore[arg-type]
