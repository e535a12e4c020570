"""Everything of a data folder in one file, and back: keeping.toml and the record.

The file is a zip archive with `about.json` beside the two, which names its format and their checksums. It is looked
through as a whole before anything is put in place, and what it replaces is written to such a file first.
"""

from __future__ import annotations

import json
import sqlite3
import tempfile
import zipfile
import zlib
from contextlib import closing, suppress
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import Any

from assistant.core.facts import Facts
from assistant.store.keeping import household_of, text_of
from assistant.store.keeping_file import put_file
from assistant.store.log import Log, StoreFault
from assistant.store.unpacking import sha256

FORMAT = 1
ABOUT, KEEPING, RECORD = "about.json", "keeping.toml", "record.sqlite"
LARGEST = 4 << 30
"""Bytes unpacked; a million events are a few hundred megabytes."""


@dataclass(eq=False)
class BadBundle(Exception):
    """A file that isn't taken, or can't be written. One line: what is wrong, where, what to do. Nothing was changed."""

    what: str
    where: Path
    fix: str

    def __str__(self) -> str:
        return f"{self.where}: {self.what}; {self.fix}"


@dataclass(frozen=True)
class Held:
    """What a file holds; None: it isn't in there."""

    events: int | None
    keeping: bool


def write_bundle(target: Path, keeping: Path, record: Path, at: datetime) -> Held:
    """Writes both into one file, which is there as a whole or not at all.

    Fails: BadBundle if there is such a file or nothing to put in; StoreFault.
    """
    if target.exists():
        raise BadBundle("there is such a file already", target, "choose another name")
    try:
        target.parent.mkdir(parents=True, exist_ok=True)
        with tempfile.TemporaryDirectory(prefix=".writing-", dir=target.parent) as name:
            place = Path(name)
            held = Held(_copied(record, place / RECORD), keeping.exists())
            if keeping.exists():
                (place / KEEPING).write_bytes(keeping.read_bytes())
            if held == Held(None, False):
                raise BadBundle("there is nothing to write", keeping.parent, "set up a household first, or see --home")
            _pack(place, at).replace(target)
    except OSError as error:
        raise BadBundle(_why(error), target, "see whether its folder is writable and its disk has room") from error
    return held


def _copied(record: Path, target: Path) -> int | None:
    if not record.exists():
        return None
    with Log.open(record) as log:
        log.copy_to(target)
        return len(log.record())


def _pack(place: Path, at: datetime) -> Path:
    names = [name for name in (KEEPING, RECORD) if (place / name).exists()]
    about = {"format": FORMAT, "written": at.isoformat(), "files": {name: sha256(place / name) for name in names}}
    packed = place / "packed"
    with zipfile.ZipFile(packed, "w", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr(ABOUT, json.dumps(about, indent=1))
        for name in names:
            archive.write(place / name, name)
    return packed


def read_bundle(source: Path, place: Path, facts: Facts) -> Held:
    """Looks the file through and unpacks it into an empty folder, its record brought up to date.

    Fails: BadBundle; KeepingFault and StoreFault of what is in it.
    """
    try:
        with zipfile.ZipFile(source) as archive:
            _unpack(archive, source, place)
    except (zipfile.BadZipFile, zlib.error, EOFError, RuntimeError, NotImplementedError) as error:
        raise BadBundle("this is no file that export wrote, or it is damaged", source, "give another copy") from error
    except OSError as error:
        raise BadBundle(_why(error), source, "check the name") from error
    text = text_of(place / KEEPING)
    if text is not None:
        household_of(text, Path(f"{source}, {KEEPING}"), facts)
    return Held(_events(place / RECORD, source), text is not None)


def _unpack(archive: zipfile.ZipFile, source: Path, place: Path) -> None:
    names = archive.namelist()
    sizes = sum(info.file_size for info in archive.infolist())
    if ABOUT not in names or not set(names) <= {ABOUT, KEEPING, RECORD} or len(set(names)) < len(names):
        raise BadBundle("this is no file that export wrote", source, "give one that `rinseback export` wrote")
    if sizes > LARGEST or archive.getinfo(ABOUT).file_size > 1 << 16:
        raise BadBundle("it is larger than any household", source, "give another copy")
    try:
        about: Any = json.loads(archive.read(ABOUT))
        version, sums = about["format"], dict(about["files"])
    except (ValueError, KeyError, TypeError) as error:
        raise BadBundle(f"its {ABOUT} can't be read", source, "give another copy") from error
    if not isinstance(version, int) or version > FORMAT:
        raise BadBundle("it was written by a newer version of rinseback", source, "update rinseback")
    if set(sums) != set(names) - {ABOUT}:
        raise BadBundle("something is missing in it", source, "give another copy")
    for name, digest in sums.items():
        archive.extract(name, place)
        if sha256(place / name) != digest:
            raise BadBundle(f"{name} in it is damaged", source, "give another copy")


def _events(record: Path, source: Path) -> int | None:
    """Reads every event, so that none is found unreadable later."""
    if not record.exists():
        return None
    try:
        with Log.open(record) as log:
            count = len(log.record())
        _alone(record)
    except StoreFault as fault:
        raise StoreFault(str(fault).replace(str(record), f"{source}, {RECORD}")) from fault
    return count


def put_in_place(place: Path, keeping: Path, record: Path) -> None:
    """Puts what `read_bundle` unpacked where it is used, each file in one step.

    Fails: BadBundle while another program has the record open; OSError.
    """
    new = place / RECORD
    if new.exists():
        if record.exists():
            try:
                _alone(record)
            except StoreFault:
                raise BadBundle(
                    "another rinseback has it open", record, "close that one and call again; nothing was changed"
                ) from None
        new.replace(record)
    if (place / KEEPING).exists():
        put_file(keeping.resolve(), (place / KEEPING).read_bytes())


def set_aside(record: Path, at: datetime) -> Path:
    """Moves a record that can't be read out of the way, with what SQLite keeps beside it."""
    target = record.with_name(f"{record.name}.damaged-{at:%Y-%m-%d-%H%M%S}")
    for tail in ("-wal", "-shm", ""):
        with suppress(FileNotFoundError):
            record.with_name(record.name + tail).rename(target.with_name(target.name + tail))
    return target


def _alone(record: Path) -> None:
    """Takes the file out of the mode in which several share it, which works only for the last who has it open."""
    try:
        with closing(sqlite3.connect(record, isolation_level=None, timeout=1)) as database:
            database.execute("PRAGMA journal_mode = DELETE").fetchone()
    except sqlite3.OperationalError as error:
        raise StoreFault(f"{record}: another program has it open") from error


def _why(error: OSError) -> str:
    return (error.strerror or "it can't be used").lower()
