"""The walk for newcomers says what really comes out."""

from __future__ import annotations

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
from first_ten_minutes import WALK, blocks, played


def test_the_first_ten_minutes_are_as_recorded() -> None:
    recorded = blocks(WALK.read_text(encoding="utf-8"))
    assert played(recorded) == recorded
