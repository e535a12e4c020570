"""The record's tables, and how an older file is brought up to date.

Each entry of MIGRATIONS takes a file from one version to the next; the file's version is SQLite's user_version.
An entry that was released is never changed: a new table or column is a new entry. All outstanding ones run in one
transaction.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager

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


def bring_up_to_date(database: sqlite3.Connection) -> None:
    """Runs the migrations that the file lacks; a file that is up to date isn't written to.

    Fails: ForeignFile or NewerFile, with nothing touched; sqlite3.Error.
    """
    if _version(database) == VERSION:
        return
    with transaction(database):
        for statements in MIGRATIONS[_version(database) :]:  # asked again: another shell may have been first
            for statement in statements:
                database.execute(statement)
        database.execute(f"PRAGMA application_id = {APPLICATION_ID}")
        database.execute(f"PRAGMA user_version = {VERSION}")


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
