"""`check`: a line a part; what text needs decides the exit code, the voice doesn't."""

from __future__ import annotations

import json

import pytest

from assistant.shells import check
from assistant.shells.check import Finding

from .conftest import Command


@pytest.fixture
def no_voice(monkeypatch: pytest.MonkeyPatch) -> None:
    """The voice's own checks are tested with the engines; here none of it works."""
    for part in ("recogniser", "microphone", "speech", "loudspeaker"):
        found = Finding(part, False, "not here", "type instead", needed=False)
        monkeypatch.setattr(check, f"_{part}", lambda folder, found=found: found)


def test_what_works_is_counted_and_missing_voice_is_no_fault(run: Command, no_voice: None) -> None:
    ran = run("check")
    assert ran.code == 0
    assert str(run.home) in ran.out
    assert "4 bottles, 3 stocks, 2 measures, 3 enclosures" in " ".join(ran.out.split())
    assert "--  microphone: not here; type instead" in ran.out


def test_each_part_is_an_object_with_json(run: Command, no_voice: None) -> None:
    found = [json.loads(line) for line in run("check", "--json").out.splitlines()]
    parts = [
        "data folder",
        "household",
        "names",
        "record",
        "files",
        "recogniser",
        "microphone",
        "speech",
        "loudspeaker",
    ]
    assert [finding["part"] for finding in found] == parts


def test_an_other_name_that_sounds_like_another_things_is_told_and_no_fault(run: Command, no_voice: None) -> None:
    (run.home / "keeping.toml").write_text(
        '[[bottle]]\nname = "copper bottle"\ncapacity = "1 L"\nalso = ["marl spray"]\n'
        '[[enclosure]]\nname = "slate hall"\nalso = ["marle spray"]\n',
        encoding="utf-8",
    )
    ran = run("check")
    assert ran.code == 0
    assert '-- names: "marl spray" and "marle spray" sound alike' in " ".join(ran.out.split())


def test_a_things_own_names_may_sound_alike(run: Command, no_voice: None) -> None:
    (run.home / "keeping.toml").write_text(
        '[[bottle]]\nname = "copper bottle"\ncapacity = "1 L"\nalso = ["coper bottle"]\n', encoding="utf-8"
    )
    assert "ok names: 2" in " ".join(run("check").out.split())


def test_a_broken_household_is_told_with_how_to_mend_it(run: Command, no_voice: None) -> None:
    (run.home / "keeping.toml").write_text("[habits]\nratio = 1\n", encoding="utf-8")
    ran = run("check")
    assert ran.code == 2
    assert "NO household: " in " ".join(ran.out.split())  # however long the path that is wrapped
    assert "line 2: " in " ".join(ran.out.split())


def test_a_broken_record_is_told_with_how_to_mend_it(run: Command, no_voice: None) -> None:
    (run.home / "record.sqlite").write_bytes(b"no record, and long enough to be looked at as one" * 30)
    ran = run("check")
    assert ran.code == 2
    assert "NO record: " in " ".join(ran.out.split())


def test_no_household_is_no_fault(run: Command, no_voice: None) -> None:
    (run.home / "keeping.toml").unlink()
    ran = run("check")
    assert ran.code == 0
    assert "-- household: no " in " ".join(ran.out.split())


def test_its_lines_are_as_narrow_as_the_terminal(run: Command, no_voice: None, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("COLUMNS", "50")
    (run.home / "keeping.toml").unlink()
    lines = run("check").out.splitlines()
    assert len(lines) > 8
    assert all(len(line) <= 50 or str(run.home) in line for line in lines)
