"""Whole sittings against their golden files: what each reply means, exactly, and, apart from it, how it is worded."""

from __future__ import annotations

import re
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


@pytest.mark.parametrize("script", SCRIPTS, ids=lambda script: script.stem)
def test_every_line_spoken_is_short_and_can_be_read_aloud(script: Path) -> None:
    for reply in play(script):
        say = reply["say"]
        assert 0 < len(say.split()) <= 25, say
        assert not re.search(r"[%/<>_\[\]{}°µ=+]|\d:\d", say), say
        assert not re.search(r"\b(?:mL|ppm|hold|neat|slot|intent|phase)\b", say), say
        assert "safe" not in say.split(), say
