"""Times as they are said aloud."""

from __future__ import annotations

from datetime import UTC, datetime

import pytest

from assistant.say.wording.plain import clock_aloud

NOW = datetime(2026, 5, 4, 12, tzinfo=UTC)


@pytest.mark.parametrize(
    ("hour", "minute", "said"),
    [
        (16, 0, "4 o'clock"),
        (16, 10, "10 past 4"),
        (8, 30, "half past 8"),
        (11, 40, "20 to 12"),
        (12, 1, "1 past 12"),
        (12, 59, "1 to 1"),
        (0, 5, "5 past 12"),
        (23, 45, "15 to 12"),
    ],
)
def test_a_time_of_day_is_said_without_a_colon(hour: int, minute: int, said: str) -> None:
    assert clock_aloud(datetime(2026, 5, 4, hour, minute, tzinfo=UTC), NOW) == said


def test_another_day_is_named() -> None:
    assert clock_aloud(datetime(2026, 5, 3, 16, 10, tzinfo=UTC), NOW) == "10 past 4 in the afternoon on Sunday 3 May"
