"""Whole sittings against their golden files: what each reply means, exactly, and, apart from it, how it is worded."""

from __future__ import annotations

from pathlib import Path

import pytest
from conversations.remake import meaning_of, wording_of
from sitting import play

SCRIPTS = sorted(Path(__file__).parent.glob("*.txt"))


@pytest.mark.parametrize("script", SCRIPTS, ids=lambda script: script.stem)
def test_a_sitting_means_what_it_meant(script: Path) -> None:
    assert meaning_of(play(script)) == script.with_suffix(".jsonl").read_text(encoding="utf-8")


@pytest.mark.parametrize("script", SCRIPTS, ids=lambda script: script.stem)
def test_a_sitting_is_worded_as_it_was(script: Path) -> None:
    assert wording_of(play(script)) == script.with_suffix(".say").read_text(encoding="utf-8")
