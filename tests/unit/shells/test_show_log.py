"""`log`: a table, CSV, JSON and a month, filtered, with corrections in sight; bad input is one line."""

from __future__ import annotations

import csv
import io
import json
from datetime import UTC, datetime

import pytest

from assistant.core.record.events import AnimalLoose
from assistant.store.log import Log

from .conftest import Command

NOON = ("--at", "2026-05-20T12:00+00:00")
TURNS = ("start east tank", "moved out", "cleared", "undo", "cleared")


@pytest.fixture
def cleaned(run: Command, capsys: pytest.CaptureFixture[str]) -> Command:
    """With a clean begun on 4 May, one step of it taken back and told again."""
    for minute, turn in enumerate(TURNS):
        assert run("ask", turn, "--at", f"2026-05-04T09:{minute:02}+00:00").code == 0
    return run


def test_the_table_tells_what_was_done_where_and_when(cleaned: Command) -> None:
    ran = cleaned("log", *NOON)
    assert ran.code == 0
    assert "2026-05-04 09:00  east tank  clean begun with bleach" in ran.out
    assert max(map(len, ran.out.splitlines())) <= 80


def test_what_was_taken_back_stays_in_sight(cleaned: Command) -> None:
    said = " ".join(cleaned("log", *NOON).out.split())
    assert "cleared out [taken back 2026-05-04 09:03]" in said
    assert "took back: cleared out" in said


def test_csv_has_a_row_an_event_and_a_column_for_corrections(cleaned: Command) -> None:
    rows = list(csv.DictReader(io.StringIO(cleaned("log", "--csv", *NOON).out)))
    assert [row["what"] for row in rows].count("cleared out") == 2
    assert rows[0]["when"] == "2026-05-04T09:00:00+00:00"
    assert rows[0]["with"] == "bleach"
    assert rows[2]["correction"] == "taken back 2026-05-04 09:03"


def test_json_is_an_object_a_line_with_the_event_s_own_fields(cleaned: Command) -> None:
    found = [json.loads(line) for line in cleaned("log", "--json", *NOON).out.splitlines()]
    assert [one["event"] for one in found] == ["RoundStarted", "StepDone", "StepDone", "Voided", "StepDone"]
    assert found[2]["taken_back"] == "2026-05-04T09:03:00+00:00"
    assert found[0]["fields"]["agent"] == "sodium hypochlorite"


@pytest.mark.parametrize(
    ("narrowed", "rows"),
    [
        (("--enclosure", "Biscuit"), 5),
        (("--enclosure", "pond tub"), 0),
        (("--agent", "household bleach"), 5),
        (("--agent", "vinegar"), 0),
        (("--from", "2026-05-05"), 0),
        (("--to", "2026-05-04"), 5),
        (("--month", "2026-05"), 5),
        (("--month", "2026-04"), 0),
    ],
)
def test_it_narrows(cleaned: Command, narrowed: tuple[str, ...], rows: int) -> None:
    assert len(cleaned("log", "--json", *narrowed, *NOON).out.splitlines()) == rows


def test_a_month_has_a_row_an_enclosure_and_lists_corrections(cleaned: Command) -> None:
    lines = cleaned("log", "--month", "2026-05", *NOON).out.splitlines()
    row = next(line for line in lines if line.startswith("east tank"))
    assert row[18:].split() == [".", ".", ".", "P", *["."] * 16]
    assert any(line.startswith("pond tub") for line in lines)
    assert any("cleared out [taken back" in line for line in lines)


def test_days_are_those_of_the_zone_that_at_names(cleaned: Command) -> None:
    ran = cleaned("log", "--at", "2026-05-20T12:00+10:00")
    assert "2026-05-04 19:00" in ran.out


def test_an_empty_record_says_so(run: Command) -> None:
    ran = run("log", *NOON)
    assert (ran.code, ran.out) == (0, "Nothing on record yet.\n")
    assert not (run.home / "record.sqlite").exists()


@pytest.mark.parametrize(
    "bad",
    [
        ("--enclosure", "no such box"),
        ("--agent", "moonlight"),
        ("--from", "yesterday"),
        ("--to", "2026-02-30"),
        ("--month", "2026-13"),
        ("--month", "2026-05", "--to", "2026-05-04"),
        ("--from", "2026-05-04", "--to", "2026-05-03"),
        ("--json", "--csv"),
        ("--unheard-of",),
    ],
)
def test_bad_input_is_one_line(run: Command, bad: tuple[str, ...]) -> None:
    ran = run("log", *bad)
    assert (ran.code, ran.out) == (2, "")
    assert ran.err.startswith("rinseback: ")
    assert ran.err.count("\n") == 1


def test_no_cell_of_the_csv_is_a_formula(run: Command) -> None:
    with Log.open(run.home / "record.sqlite") as log:
        log.append((AnimalLoose("=1+1"),), log.next_turn(), datetime(2026, 5, 4, 9, tzinfo=UTC))
    rows = list(csv.DictReader(io.StringIO(run("log", "--csv", *NOON).out)))
    assert rows[0]["enclosure"] == "'=1+1"
