"""The command run in place, on the tests' household, with a table for an understanding.

What a sentence means is `understand`'s to test; here it is fixed, so that a shell's test fails for the shell alone.
"""

from __future__ import annotations

import io
import json
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest

from assistant.contract import Heard, Question, Reading, Slots, World
from assistant.shells import cli, sitting

HOUSEHOLD = Path(__file__).parents[2] / "household.toml"

_FAMILIES = {"the_round": ("start", "done", "next", "status", "time_left", "return_check")} | {
    "talk": ("yes", "no", "undo"),
    "harm": ("wound",),
}
QUESTIONS: Mapping[str, Question] = {
    name: Question(name, family, f"about {name}", f"example of {name}", (name,))
    for family, names in _FAMILIES.items()
    for name in names
}

_DONE = {"moved out": "move out", "cleared": "clear", "washed": "wash", "sprayed": "apply", "rinsed": "rinse"}


def table_reader(heard: Heard, world: World) -> Reading:
    """ "start NAME" with the first bottle, a step's word as done, a question's own name, else no reading."""
    text = heard.text.strip()
    if text.startswith("start "):
        return Reading(text, "start", Slots(enclosures=(text[6:],), bottles=(world.household.bottles[0].name,)), 1.0)
    if text in _DONE:
        return Reading(text, "done", Slots(steps=(_DONE[text],)), 1.0)
    if text in QUESTIONS:
        return Reading(text, text, Slots(), 1.0)
    return Reading(text, None, nearest=("start", "done"))


@pytest.fixture
def understood(monkeypatch: pytest.MonkeyPatch) -> None:
    """Understanding by the table above."""
    monkeypatch.setattr(sitting, "_reader", lambda household, facts, questions: table_reader)
    monkeypatch.setattr(sitting, "questions_at_hand", lambda: QUESTIONS)


@dataclass(frozen=True)
class Ran:
    """What one run of the command left behind."""

    code: int
    out: str
    err: str

    @property
    def replies(self) -> list[dict[str, Any]]:
        return [json.loads(line) for line in self.out.splitlines()]


class Command:
    """Runs `rinseback` in this process, on a data folder of the test's own."""

    def __init__(self, capture: pytest.CaptureFixture[str], patch: pytest.MonkeyPatch, home: Path) -> None:
        self._capture, self._patch, self.home = capture, patch, home

    def __call__(self, *arguments: str, stdin: bytes = b"") -> Ran:
        self._patch.setattr("sys.stdin", io.TextIOWrapper(io.BytesIO(stdin)))
        code = cli.main([*arguments, "--home", str(self.home)])
        out, err = self._capture.readouterr()
        return Ran(code, out, err)


@pytest.fixture
def run(
    understood: None, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> Command:
    home = tmp_path / "home"
    home.mkdir()
    (home / "keeping.toml").write_bytes(HOUSEHOLD.read_bytes())
    return Command(capsys, monkeypatch, home)
