"""What was heard badly, in a whole sitting: whatever is read back says nothing of having been recorded."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path

import pytest

from assistant.contract import Heard, Outcome, Word
from assistant.shells.folder import Folder
from assistant.shells.sitting import open_sitting
from assistant.store.packaged import read_questions

DEMO = Path(__file__).resolve().parents[3] / "assistant" / "demo" / "keeping.toml"
RECORDING = [question for question in read_questions().values() if question.records]
BEFORE = ("start the river tank with the yellow bottle", "out, cleared and washed", "sprayed")


def mumbled(text: str) -> Heard:
    return Heard(text, spoken=True, words=tuple(Word(word, 0.55) for word in text.split()))


@pytest.mark.parametrize("before", [(), BEFORE], ids=["nothing open", "in a wet time"])
def test_what_is_read_back_is_not_recorded_until_yes(tmp_path: Path, before: tuple[str, ...]) -> None:
    now = datetime(2026, 1, 5, 9, tzinfo=UTC)
    confirmed = 0
    for question in RECORDING:
        home = tmp_path / question.name
        home.mkdir()
        (home / "keeping.toml").write_text(DEMO.read_text("utf-8"), "utf-8")
        with open_sitting(Folder(home), ":memory:") as sitting:
            for text in before:
                sitting.hear(Heard(text), now)
            stood = sitting.state()
            reply = sitting.hear(mumbled(question.example), now)
            if reply.outcome is Outcome.CONFIRM:
                confirmed += 1
                assert reply.values.get("recorded") is not True, (question.name, reply.say)
                assert sitting.state().rounds == stood.rounds, question.name
    assert confirmed >= len(RECORDING) // 3, "too few are read back for this to be a test"
