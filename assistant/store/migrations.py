"""The record's tables, and how an older file is brought up to date.

Each entry of MIGRATIONS takes a file from one version to the next; the file's version is SQLite's user_version.
An entry that was released is never changed: a new table or column is a new entry. All outstanding ones run in one
transaction, and the file as it was before is kept beside it.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path

APPLICATION_ID = 0x52425331
"""Marks a file as ours, so that some other program's database is never written to."""

MIGRATIONS: tuple[tuple[str, ...], ...] = (
    (
        """CREATE TABLE events (
            seq INTEGER PRIMARY KEY AUTOINCREMENT,
            at TEXT NOT NULL,
            turn TEXT NOT NULL,
            kind TEXT NOT NULL,
            body TEXT NOT NULL
        )""",
        # The present as of one event, so that opening costs the same at any length of history.
        """CREATE TABLE state (
            id INTEGER PRIMARY KEY CHECK (id = 1),
            fold_version INTEGER NOT NULL,
            last_seq INTEGER NOT NULL,
            body TEXT NOT NULL
        )""",
        # The present as it was now and then, so that an undo needn't go through the whole record.
        """CREATE TABLE checkpoints (
            seq INTEGER PRIMARY KEY,
            fold_version INTEGER NOT NULL,
            body TEXT NOT NULL
        )""",
        """CREATE TABLE last_seen (
            id INTEGER PRIMARY KEY CHECK (id = 1),
            at TEXT NOT NULL
        )""",
    ),
)

VERSION = len(MIGRATIONS)


class ForeignFile(Exception):
    """The database belongs to another program."""


class NewerFile(Exception):
    """The file was written by a newer version of the program."""


def bring_up_to_date(database: sqlite3.Connection, path: Path | None = None) -> None:
    """Runs the migrations that the file lacks; a file that is up to date isn't written to.

    path: the file; one of an older version is copied before anything is changed in it, to `copy_beside`. None: memory.
    Fails: ForeignFile or NewerFile, with nothing touched; sqlite3.Error.
    """
    if _version(database) == VERSION:
        return
    with transaction(database):
        version = _version(database)  # asked again: another shell may have been first
        if path is not None and 0 < version < VERSION:
            _copy(path, copy_beside(path, version))
        for statements in MIGRATIONS[version:]:
            for statement in statements:
                database.execute(statement)
        database.execute(f"PRAGMA application_id = {APPLICATION_ID}")
        database.execute(f"PRAGMA user_version = {VERSION}")


def copy_beside(path: Path, version: int) -> Path:
    """Where a file of that version is kept when it is brought up to date."""
    return path.with_name(f"{path.name}.version-{version}")


def _copy(path: Path, target: Path) -> None:
    """By SQLite itself, so that what still lies in the file's log is in the copy; whole, or not there."""
    part = target.with_name(f"{target.name}.part")
    part.unlink(missing_ok=True)
    # A second connection: it sees the file as it was committed.
    with closing(sqlite3.connect(path)) as source, closing(sqlite3.connect(part)) as copy:
        source.backup(copy)
    part.replace(target)


@contextmanager
def transaction(database: sqlite3.Connection) -> Iterator[None]:
    """All of it or nothing."""
    database.execute("BEGIN IMMEDIATE")
    try:
        yield
        database.execute("COMMIT")
    except BaseException:
        if database.in_transaction:  # a full disk rolls it back by itself
            database.execute("ROLLBACK")
        raise


def _version(database: sqlite3.Connection) -> int:
    version: int = database.execute("PRAGMA user_version").fetchone()[0]
    mark: int = database.execute("PRAGMA application_id").fetchone()[0]
    empty = database.execute("SELECT count(*) FROM sqlite_master").fetchone()[0] == 0
    if mark != APPLICATION_ID and not (mark == 0 and version == 0 and empty):
        raise ForeignFile
    if version > VERSION:
        raise NewerFile
    return version
