"""The record: what happened, appended to an SQLite file and never changed.

The present is a fold over it. A state row, written in the same transaction as each append, keeps opening quick at any
length of history; it is rebuilt when the fold's version differs. Several shells may have the file open: each reads what
the others wrote before it answers, and an append that was overtaken by another's says so and writes nothing.
What an event means is `core.record.fold`; the tables are `migrations`.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Callable, Iterator, Sequence
from contextlib import closing, contextmanager
from datetime import UTC, datetime
from fractions import Fraction
from functools import cache
from pathlib import Path
from types import TracebackType
from typing import Any, Literal

import msgspec

from assistant.core.record.events import EVENTS, Event, Recorded, Voided
from assistant.core.record.fold import FOLD_VERSION, fold, fold_knowing
from assistant.core.record.state import State
from assistant.store.migrations import ForeignFile, NewerFile, bring_up_to_date, transaction

BUSY_MS = 5000
"""How long to wait for another shell's append."""

CHECKPOINT_EVERY = 500
"""Events between two kept states that an undo can start from."""
LONG_RECORD = 50_000
"""Events whose folding anew takes seconds."""
THIN_TO = 4
"""About how many of them are kept, of the latest and of the older ones each."""


_Row = tuple[int, str, str, str, str]


class StoreFault(Exception):
    """The record can't be read or written; its text is one line. Nothing was recorded."""


class Overtaken(Exception):
    """Another shell recorded something since this one last looked: take the turn again."""


class Log:
    """One open record. Every method fails with StoreFault."""

    def __init__(self, database: sqlite3.Connection, name: str, tell: Callable[[str], None] | None = None) -> None:
        self._database = database
        self._name = name
        self._tell = tell
        self._seen = 0
        self._state = State()

    @classmethod
    def open(cls, path: Path | Literal[":memory:"], tell: Callable[[str], None] | None = None) -> Log:
        """The record in that file, made when there is none; ":memory:" keeps it nowhere.

        tell: is given one line when opening takes long, as it does once after an update.
        """
        name = str(path)
        with _one_line(name):
            database = sqlite3.connect(name, isolation_level=None, timeout=BUSY_MS / 1000)
        log = cls(database, name, tell)
        try:
            with _one_line(name):
                # Looked at before anything is set: a file of another program or version stays as it is.
                bring_up_to_date(database, None if path == ":memory:" else Path(path))
                database.execute("PRAGMA journal_mode = WAL")
                database.execute("PRAGMA synchronous = FULL")
                database.execute("PRAGMA fullfsync = ON")  # macOS: fsync alone leaves it in the drive's cache
                database.execute(f"PRAGMA busy_timeout = {BUSY_MS}")
                log._open_state()
        except BaseException:
            database.close()
            raise
        return log

    def close(self) -> None:
        """Closes the file."""
        self._database.close()

    def __enter__(self) -> Log:
        return self

    def __exit__(self, kind: type[BaseException] | None, error: BaseException | None, at: TracebackType | None) -> None:
        self.close()

    def state(self) -> State:
        """The present, with whatever another shell recorded meanwhile."""
        with _one_line(self._name):
            self._seen, self._state = self._caught_up(self._seen, self._state)
        return self._state

    def next_turn(self) -> str:
        """A name for a turn that no other has; it holds until the next append."""
        return str(self._seen + 1)

    def append(self, events: Sequence[Event], turn: str, at: datetime) -> State:
        """Records what one turn brought about, all or nothing, on disk before this returns.

        at: aware; kept as UTC.
        Fails: Overtaken when the record has grown since `state` or `append` was last called.
        """
        if not events:
            return self._state
        recorded = [Recorded(at.astimezone(UTC), turn, event) for event in events]
        with _one_line(self._name), transaction(self._database):
            if self._last_seq() != self._seen:
                raise Overtaken
            self._keep_checkpoint()
            seq = self._insert(recorded)
            if any(isinstance(event, Voided) for event in events):
                state = self._refolded()
            else:
                state = self._state
                for entry in recorded:
                    state = fold(state, entry)
            self._write_state(seq, state)
        self._seen, self._state = seq, state
        return state

    def record(self) -> tuple[Recorded, ...]:
        """Everything on record, oldest first, undone turns included."""
        with _one_line(self._name):
            return tuple(self._record())

    def last_seen(self) -> datetime | None:
        """When a shell was last running, as far as `touch` told."""
        with _one_line(self._name):
            row = self._database.execute("SELECT at FROM last_seen").fetchone()
        return None if row is None else datetime.fromisoformat(row[0])

    def touch(self, at: datetime) -> None:
        """Notes that a shell is running now."""
        with _one_line(self._name):
            self._database.execute("INSERT OR REPLACE INTO last_seen VALUES (1, ?)", (at.astimezone(UTC).isoformat(),))

    def copy_to(self, path: Path) -> None:
        """Writes the whole record into a new file, as it is at one moment, whoever else is appending."""
        with _one_line(self._name), closing(sqlite3.connect(path)) as copy:
            self._database.backup(copy)
            copy.execute("PRAGMA journal_mode = DELETE")  # one file, with nothing beside it

    # ------------------------------------------------------------ inside

    def _open_state(self) -> None:
        row = self._database.execute("SELECT fold_version, last_seq, body FROM state").fetchone()
        if row is not None and row[0] == FOLD_VERSION:
            try:
                self._seen, self._state = row[1], _state_decoder().decode(row[2])
            except msgspec.MsgspecError:
                row = None  # only a copy: the events are what counts
        if row is None or row[0] != FOLD_VERSION:
            self._rebuild()
        self._seen, self._state = self._caught_up(self._seen, self._state)

    def _caught_up(self, seen: int, state: State) -> tuple[int, State]:
        rows = self._rows(seen)
        if not rows:
            return seen, state
        entries = [_recorded(row) for row in rows]
        if any(isinstance(entry.event, Voided) for entry in entries):
            return rows[-1][0], self._refolded(up_to=rows[-1][0])
        for entry in entries:
            state = fold(state, entry)
        return rows[-1][0], state

    def _rebuild(self) -> None:
        """Folds the whole record anew, one event at a time, and keeps checkpoints on the way as appends would have."""
        if self._tell is not None and self._last_seq() > LONG_RECORD:
            self._tell("reading the whole record anew, once after an update; this takes a moment")
        undone, state, seq, turn = self._undone(0, None), State(), 0, ""
        passed: list[tuple[int, State]] = []
        for row in self._selected(0, None):
            between_turns, turn = row[2] != turn, row[2]
            if between_turns and seq - (passed[-1][0] if passed else 0) >= CHECKPOINT_EVERY:
                passed.append((seq, state))
                kept = set(_thinned([at for at, _ in passed]))
                passed = [point for point in passed if point[0] in kept]
            seq, state = row[0], fold_knowing(state, _recorded(row), undone)
        self._seen, self._state = seq, state
        if not seq:
            return
        with transaction(self._database):
            self._write_state(seq, state)
            self._database.execute("DELETE FROM checkpoints")
            for at, then in passed:
                self._write_checkpoint(at, then)

    def _undone(self, after: int, up_to: int | None) -> frozenset[str]:
        """The turns that were undone in that part of the record."""
        found = self._database.execute(
            "SELECT seq, at, turn, kind, body FROM events"
            " WHERE seq > ? AND (? IS NULL OR seq <= ?) AND kind = 'Voided'",
            (after, up_to, up_to),
        )
        return frozenset(row_.event.turn for row_ in map(_recorded, found) if isinstance(row_.event, Voided))

    def _turns(self, after: int) -> frozenset[str]:
        found = self._database.execute("SELECT DISTINCT turn FROM events WHERE seq > ?", (after,))
        return frozenset(row[0] for row in found)

    def _refolded(self, up_to: int | None = None) -> State:
        """The present after an undo: from the latest checkpoint before every turn undone since, else in full."""
        start, state = 0, State()
        for seq in self._checkpoints():
            if self._undone(seq, up_to) <= self._turns(seq):
                start, state = seq, self._checkpoint(seq)
                break
        undone = self._undone(start, up_to)
        for entry in self._record(start, up_to):
            state = fold_knowing(state, entry, undone)
        return state

    def _keep_checkpoint(self) -> None:
        """Now and then keeps the state as of the last event seen, and drops those that no undo needs."""
        latest = self._database.execute("SELECT max(seq) FROM checkpoints").fetchone()[0] or 0
        if self._seen - latest < CHECKPOINT_EVERY:
            return
        self._write_checkpoint(self._seen, self._state)
        self._database.execute("DELETE FROM checkpoints WHERE fold_version <> ?", (FOLD_VERSION,))
        points = self._checkpoints()
        kept = _thinned(self._needed(points)[::-1])
        self._database.executemany(
            "DELETE FROM checkpoints WHERE seq = ?", [(seq,) for seq in points if seq not in kept]
        )

    def _needed(self, points: Sequence[int]) -> Sequence[int]:
        """Checkpoints, the newest first, down to the first from before every turn that can still be undone."""
        oldest = self._state.turns[0].turn if self._state.turns else ""
        for place, seq in enumerate(points):
            if oldest in self._turns(seq):
                return points[: place + 1]
        return points

    def _checkpoints(self) -> list[int]:
        """Where the present was kept, the newest first."""
        found = self._database.execute(
            "SELECT seq FROM checkpoints WHERE fold_version = ? ORDER BY seq DESC", (FOLD_VERSION,)
        )
        return [row[0] for row in found]

    def _checkpoint(self, seq: int) -> State:
        body = self._database.execute("SELECT body FROM checkpoints WHERE seq = ?", (seq,)).fetchone()[0]
        return _state_decoder().decode(body)

    def _write_checkpoint(self, seq: int, state: State) -> None:
        self._database.execute("INSERT INTO checkpoints VALUES (?, ?, ?)", (seq, FOLD_VERSION, _as_text(state)))

    def _rows(self, after: int) -> list[_Row]:
        return list(self._selected(after, None))

    def _record(self, after: int = 0, up_to: int | None = None) -> Iterator[Recorded]:
        return map(_recorded, self._selected(after, up_to))

    def _selected(self, after: int, up_to: int | None) -> Iterator[_Row]:
        return self._database.execute(
            "SELECT seq, at, turn, kind, body FROM events WHERE seq > ? AND (? IS NULL OR seq <= ?) ORDER BY seq",
            (after, up_to, up_to),
        )

    def _last_seq(self) -> int:
        found: int | None = self._database.execute("SELECT max(seq) FROM events").fetchone()[0]
        return found or 0

    def _insert(self, recorded: Sequence[Recorded]) -> int:
        for entry in recorded:
            self._database.execute(
                "INSERT INTO events (at, turn, kind, body) VALUES (?, ?, ?, ?)",
                (entry.at.isoformat(), entry.turn, type(entry.event).__name__, _as_text(entry.event)),
            )
        return self._last_seq()

    def _write_state(self, seq: int, state: State) -> None:
        self._database.execute("INSERT OR REPLACE INTO state VALUES (1, ?, ?, ?)", (FOLD_VERSION, seq, _as_text(state)))


def _thinned(points: Sequence[int]) -> list[int]:
    """Some of the checkpoints, oldest first: the first, the latest few, and between them no more than leave small gaps.

    An undo starts from the checkpoint before the turn it undoes, so a gap is what it may have to fold in vain.
    """
    gap = (points[-1] - points[0]) / THIN_TO if points else 0.0
    kept = list(points[-THIN_TO:])
    for place in range(len(points) - THIN_TO - 1, -1, -1):
        if place == 0 or kept[0] - points[place - 1] > gap:
            kept.insert(0, points[place])
    return kept


# ---------------------------------------------------------------- values as text


def _encoded(value: Any) -> Any:
    if isinstance(value, Fraction):
        return str(value)
    raise NotImplementedError(f"can't record a {type(value).__name__}")


def _decoded(kind: type, value: Any) -> Any:
    if kind is Fraction:
        return Fraction(value)
    raise NotImplementedError(f"can't read a {kind.__name__} back")


_encoder = msgspec.json.Encoder(enc_hook=_encoded)


def _as_text(value: object) -> str:
    return _encoder.encode(value).decode()


_KINDS: dict[str, type] = {kind.__name__: kind for kind in EVENTS}


@cache
def _decoder(kind: str) -> msgspec.json.Decoder[Any]:
    return msgspec.json.Decoder(_KINDS[kind], dec_hook=_decoded)


@cache
def _state_decoder() -> msgspec.json.Decoder[State]:
    return msgspec.json.Decoder(State, dec_hook=_decoded)


def _recorded(row: _Row) -> Recorded:
    seq, at, turn, kind, body = row
    if kind not in _KINDS:
        raise _Unreadable(f"event {seq} is of a kind this version doesn't know ({kind}); update rinseback")
    try:
        return Recorded(datetime.fromisoformat(at), turn, _decoder(kind).decode(body))
    except (msgspec.MsgspecError, ValueError) as error:
        raise _Unreadable(f"event {seq} can't be read ({error}); restore the file from a copy") from error


class _Unreadable(Exception):
    pass


# ---------------------------------------------------------------- faults, in one line


@contextmanager
def _one_line(name: str) -> Iterator[None]:
    try:
        yield
    except NewerFile as error:
        raise StoreFault(
            f"{name} was written by a newer version of rinseback and was left as it is; update rinseback"
        ) from error
    except ForeignFile as error:
        raise StoreFault(
            f"{name} is another program's database and was left as it is; choose another folder with --home"
        ) from error
    except _Unreadable as error:
        raise StoreFault(f"{name}: {error}") from error
    except sqlite3.Error as error:
        raise StoreFault(f"{name}: {_plain(error)}; nothing was recorded") from error


def _plain(error: sqlite3.Error) -> str:
    said = str(error)
    for part, plain in _PLAIN.items():
        if part in said:
            return plain
    return said


_PLAIN = {
    "disk is full": "the disk is full; make room",
    "readonly": "the file or its folder is read-only; make it writable or choose another folder with --home",
    "unable to open": "can't be opened; make its folder writable or choose another folder with --home",
    "not a database": "this is not a record of rinseback's; move the file away",
    "malformed": "the file is damaged; restore it from a copy",
    "locked": "another program keeps it locked; close that one and try again",
    "disk I/O error": "the disk can't be written to; look whether it is full or failing",
}
