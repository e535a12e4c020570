"""`export` and `import`: everything there and back, and nothing lost on the way."""

from __future__ import annotations

import json
import sqlite3
import zipfile
from contextlib import closing
from pathlib import Path

import pytest

from assistant.store.log import Log
from assistant.store.migrations import VERSION

from .conftest import HOUSEHOLD, Command
from .test_cli import AT, one_line


@pytest.fixture
def full(run: Command) -> Command:
    """A data folder with a household and two events on record."""
    for text in ("start east tank", "moved out"):
        assert run("ask", text, *AT).code == 0
    return run


@pytest.fixture
def packed(full: Command, tmp_path: Path) -> Path:
    assert full("export", str(tmp_path / "all.zip"), *AT).code == 0
    return tmp_path / "all.zip"


def elsewhere(run: Command, tmp_path: Path) -> Command:
    """The same command on an empty folder."""
    run.home = tmp_path / "other"
    return run


def steps(home: Path) -> set[str]:
    with Log.open(home / "record.sqlite") as log:
        return set(log.state().rounds["east tank"].done)


def test_everything_comes_back_on_an_empty_machine(full: Command, packed: Path, tmp_path: Path) -> None:
    other = elsewhere(full, tmp_path)
    ran = other("import", str(packed), *AT)
    assert (ran.code, ran.err) == (0, "")
    assert "keeping.toml and a record of" in ran.out
    assert (other.home / "keeping.toml").read_bytes() == HOUSEHOLD.read_bytes()
    assert steps(other.home) == {"move out"}


def test_what_an_import_replaces_can_itself_be_brought_back(full: Command, packed: Path) -> None:
    assert full("ask", "cleared", *AT).code == 0
    (full.home / "keeping.toml").write_text('room.name = "den"\n', encoding="utf-8")
    assert full("import", str(packed), *AT).code == 0
    assert steps(full.home) == {"move out"}
    (before,) = (full.home / "backups").iterdir()
    assert full("import", str(before), *AT).code == 0
    assert steps(full.home) == {"move out", "clear"}
    assert (full.home / "keeping.toml").read_text(encoding="utf-8") == 'room.name = "den"\n'


def test_without_a_name_it_goes_to_the_backups_folder(full: Command) -> None:
    ran = full("export", "--json", *AT)
    (written,) = (full.home / "backups").iterdir()
    assert json.loads(ran.out) == {"file": str(written), "keeping": True, "events": 2}
    assert full("export", *AT).code == 0
    assert len(list((full.home / "backups").iterdir())) == 2


def test_it_is_written_while_another_shell_has_the_record_open(full: Command, tmp_path: Path) -> None:
    with Log.open(full.home / "record.sqlite"):
        assert full("export", str(tmp_path / "all.zip"), *AT).code == 0


def test_it_is_not_put_in_place_while_another_shell_has_the_record_open(full: Command, packed: Path) -> None:
    assert full("ask", "cleared", *AT).code == 0
    with Log.open(full.home / "record.sqlite") as log:
        log.state()
        ran = full("import", str(packed), *AT)
    assert ran.code == 2
    assert one_line(ran.err)
    assert "another rinseback has it open" in ran.err
    assert steps(full.home) == {"move out", "clear"}


def test_a_damaged_record_and_a_faulty_keeping_file_are_replaced_and_kept_aside(full: Command, packed: Path) -> None:
    (full.home / "record.sqlite").write_bytes(b"not a database at all, by far")
    (full.home / "keeping.toml").write_text("[room\n", encoding="utf-8")
    ran = full("import", str(packed), *AT)
    assert (ran.code, ran.err) == (0, "")
    assert steps(full.home) == {"move out"}
    (aside,) = full.home.glob("record.sqlite.damaged-*")
    assert aside.read_bytes().startswith(b"not a database")
    with zipfile.ZipFile(next((full.home / "backups").iterdir())) as archive:
        assert archive.read("keeping.toml") == b"[room\n"


# ---------------------------------------------------------------- what is refused, with nothing changed


def _rewritten(packed: Path, name: str, content: bytes | None) -> None:
    with zipfile.ZipFile(packed) as archive:
        files = {each: archive.read(each) for each in archive.namelist()}
    if content is None:
        del files[name]
    else:
        files[name] = content
    with zipfile.ZipFile(packed, "w") as archive:
        for each, body in files.items():
            archive.writestr(each, body)


@pytest.mark.parametrize(
    ("name", "content", "says"),
    [
        ("keeping.toml", b"[room]\n", "keeping.toml in it is damaged"),
        ("record.sqlite", None, "something is missing"),
        ("about.json", None, "no file that export wrote"),
        ("about.json", b"[]", "about.json can't be read"),
        ("about.json", b'{"format": 2, "files": {}}', "newer version of rinseback; update rinseback"),
        ("../outside.toml", b"", "no file that export wrote"),
    ],
)
def test_a_file_that_is_not_whole_is_refused_and_nothing_changes(
    full: Command, packed: Path, name: str, content: bytes | None, says: str
) -> None:
    _rewritten(packed, name, content)
    assert full("ask", "cleared", *AT).code == 0
    ran = full("import", str(packed), *AT)
    assert ran.code == 2
    assert one_line(ran.err)
    assert says in ran.err
    assert steps(full.home) == {"move out", "clear"}
    assert not (full.home / "backups").exists()


def test_some_other_file_is_refused(full: Command, tmp_path: Path) -> None:
    (tmp_path / "other.zip").write_text("hello", encoding="utf-8")
    for name in ("other.zip", "none.zip", "."):
        ran = full("import", str(tmp_path / name), *AT)
        assert ran.code == 2
        assert one_line(ran.err)


@pytest.mark.parametrize(
    ("statement", "says"),
    [
        (f"PRAGMA user_version = {VERSION + 1}", "newer version of rinseback"),
        ("UPDATE events SET kind = 'TeaMade'", "TeaMade"),
    ],
)
def test_a_record_of_a_newer_version_is_refused_by_its_own_name(
    full: Command, tmp_path: Path, statement: str, says: str
) -> None:
    from datetime import UTC, datetime

    from assistant.store.bundle import _pack

    place = tmp_path / "newer"
    place.mkdir()
    with Log.open(full.home / "record.sqlite") as log:
        log.copy_to(place / "record.sqlite")
    with closing(sqlite3.connect(place / "record.sqlite", isolation_level=None)) as database:
        database.execute(statement)
    packed = _pack(place, datetime(2026, 1, 5, tzinfo=UTC))
    ran = full("import", str(packed), *AT)
    assert ran.code == 2
    assert one_line(ran.err)
    assert says in ran.err
    assert f"{packed}, record.sqlite" in ran.err
    assert steps(full.home) == {"move out"}


def test_a_file_that_is_there_is_never_written_over(full: Command, packed: Path) -> None:
    before = packed.read_bytes()
    ran = full("export", str(packed), *AT)
    assert ran.code == 2
    assert one_line(ran.err)
    assert packed.read_bytes() == before


def test_nothing_to_export_is_one_line(run: Command, tmp_path: Path) -> None:
    ran = elsewhere(run, tmp_path)("export", *AT)
    assert ran.code == 2
    assert one_line(ran.err)
    assert "nothing to write" in ran.err
