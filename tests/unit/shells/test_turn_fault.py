"""A fault of the program in one turn is one line; what is on record, and the next turn, stand."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path

import pytest

from assistant.contract import Heard, Reading, World
from assistant.shells.folder import Folder, TurnFault
from assistant.shells.sitting import open_sitting

NOW = datetime(2026, 1, 5, 9, tzinfo=UTC)


def test_a_turn_that_fails_records_nothing_and_the_next_one_is_answered(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    keeping = Path(__file__).parents[2] / "household.toml"
    (tmp_path / "keeping.toml").write_text(keeping.read_text(encoding="utf-8"), encoding="utf-8")
    with open_sitting(Folder(tmp_path)) as sitting:
        sitting.hear(Heard("start the east tank with the orange bottle"), NOW)
        before = sitting.state()
        well = sitting.read

        def fails(heard: Heard, world: World) -> Reading:
            raise ValueError("two\nlines")

        monkeypatch.setattr(sitting, "read", fails)
        with pytest.raises(TurnFault, match="nothing was recorded"):
            sitting.hear(Heard("cleared"), NOW)
        monkeypatch.setattr(sitting, "read", well)
        assert sitting.state() == before
        assert sitting.hear(Heard("what's next"), NOW).intent == "next"
