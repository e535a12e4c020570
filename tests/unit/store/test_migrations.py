"""A record of an older version: brought up to date as a whole, with the file as it was kept beside it."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest

from assistant.core.record.events import TubCleaned
from assistant.store import migrations
from assistant.store.log import Log, StoreFault
from assistant.store.migrations import MIGRATIONS, VERSION, copy_beside

AT = datetime(2026, 1, 5, 9, tzinfo=UTC)
NEXT = ("CREATE TABLE labels (id INTEGER PRIMARY KEY)",)


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """A record of the version that is current, with one event."""
    with Log.open(tmp_path / "record.sqlite") as log:
        log.append([TubCleaned("blue tub")], "1", AT)
    return tmp_path / "record.sqlite"


def _asked(path: Path, question: str) -> list[Any]:
    with closing(sqlite3.connect(path)) as database:
        return database.execute(question).fetchall()


def _release(patch: pytest.MonkeyPatch, *statements: str) -> None:
    patch.setattr(migrations, "MIGRATIONS", (*MIGRATIONS, statements))
    patch.setattr(migrations, "VERSION", VERSION + 1)


def test_an_older_record_is_brought_up_to_date_with_a_copy_beside_it(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    _release(monkeypatch, *NEXT)
    with Log.open(path) as log:
        assert len(log.record()) == 1
    assert _asked(path, "PRAGMA user_version") == [(VERSION + 1,)]
    copy = copy_beside(path, VERSION)
    assert _asked(copy, "PRAGMA user_version") == [(VERSION,)]
    assert _asked(copy, "SELECT kind FROM events") == [("TubCleaned",)]
    assert _asked(copy, "SELECT name FROM sqlite_master WHERE name = 'labels'") == []


def test_an_upgrade_that_breaks_off_changes_nothing(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    _release(monkeypatch, *NEXT, "CREATE TABLE events (a)")
    with pytest.raises(StoreFault, match="nothing was recorded"):
        Log.open(path)
    assert _asked(path, "PRAGMA user_version") == [(VERSION,)]
    assert _asked(path, "SELECT name FROM sqlite_master WHERE name = 'labels'") == []
    monkeypatch.undo()
    with Log.open(path) as log:
        assert len(log.record()) == 1


def test_without_room_for_the_copy_nothing_is_changed(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    _release(monkeypatch, *NEXT)

    def full(*_: Path) -> None:
        raise sqlite3.OperationalError("database or disk is full")

    monkeypatch.setattr(migrations, "_copy", full)
    with pytest.raises(StoreFault, match="disk is full"):
        Log.open(path)
    assert _asked(path, "PRAGMA user_version") == [(VERSION,)]


def test_a_new_record_and_a_current_one_leave_no_copy(path: Path) -> None:
    Log.open(path).close()
    assert [file.name for file in path.parent.iterdir() if "version" in file.name] == []
