"""Who may import whom, and who may read a clock: checked by machine, so that no reviewer has to remember."""

from __future__ import annotations

import re
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
pytestmark = pytest.mark.skipif(not (ROOT / "assistant").is_dir(), reason="needs the source tree")

PURE = ("core", "understand", "answer", "say/wording")


def test_rooms_import_downwards_only() -> None:
    found = subprocess.run(
        [str(Path(sys.executable).parent / "lint-imports"), "--no-cache"], cwd=ROOT, capture_output=True, text=True
    )
    assert found.returncode == 0, found.stdout + found.stderr


def test_only_shells_read_a_clock() -> None:
    clock = re.compile(r"datetime\.now|datetime\.utcnow|time\.time\(|time\.monotonic\(|date\.today\(")
    for path in sorted((ROOT / "assistant").rglob("*.py")):
        if "shells" not in path.parts:
            assert not clock.search(path.read_text(encoding="utf-8")), f"{path.relative_to(ROOT)} reads a clock"


def test_understanding_answering_and_wording_never_meet() -> None:
    for room, others in {
        "understand": ("answer", "say"),
        "answer": ("understand", "say"),
        "say/wording": ("understand", "answer"),
    }.items():
        for path in sorted((ROOT / "assistant" / room).rglob("*.py")):
            text = path.read_text(encoding="utf-8")
            for other in others:
                assert f"assistant.{other}" not in text, f"{path.relative_to(ROOT)} imports {other}"


def test_no_file_is_longer_than_can_be_held_in_the_head() -> None:
    long = {
        str(path.relative_to(ROOT)): lines
        for path in sorted((ROOT / "assistant").rglob("*.py"))
        if (lines := len(path.read_text(encoding="utf-8").splitlines())) > 450
    }
    assert not long


def test_a_question_is_split_into_words_in_one_place_alone() -> None:
    again = re.compile(
        r"\.question\.(?:casefold|lower|split|endswith|startswith|replace)|(?:search|match)\(\w+\.question\)"
    )
    for room in ("understand", "answer"):
        for path in sorted((ROOT / "assistant" / room).rglob("*.py")):
            found = again.search(path.read_text(encoding="utf-8"))
            assert found is None, f"{path.relative_to(ROOT)}: take `words`, `said` or `asks` of the reading"
