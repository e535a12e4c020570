"""When a turn ends."""

from __future__ import annotations

import pytest

from assistant.hear.end_of_turn import LONGEST_MS, EndOfTurn, silence_needed
from assistant.hear.recogniser import PIECE_MS


def ends_after(steps: list[tuple[int, bool, str]]) -> int | None:
    """Milliseconds until it ended, of (milliseconds, speech, text so far) one after the other; None: it hasn't."""
    turn, passed = EndOfTurn(), 0
    for length, speech, text in steps:
        for _ in range(length // PIECE_MS):
            passed += PIECE_MS
            if turn.take(speech, text):
                return passed
    return None


def test_it_ends_after_six_tenths_of_silence() -> None:
    assert ends_after([(800, True, "what is"), (200, True, "what is next"), (2000, False, "what is next")]) == 1600


@pytest.mark.parametrize("last", ["at", "in", "to", "fifty", "thirty", "one", "hundred", "point"])
def test_it_waits_longer_where_a_number_may_go_on(last: str) -> None:
    assert silence_needed(f"bleach {last}") == 900
    assert ends_after([(800, True, "bleach"), (2000, False, f"bleach {last}")]) == 1700


def test_a_pause_of_half_a_second_doesnt_end_it() -> None:
    steps = [(600, True, "what is"), (500, False, "what is"), (600, True, "what is next"), (580, False, "what is next")]
    assert ends_after(steps) is None


def test_noise_that_adds_no_word_ends_it_after_a_second() -> None:
    assert ends_after([(400, True, "what is next"), (5000, True, "what is next")]) == 1020


def test_noise_without_any_word_ends_it_in_the_end() -> None:
    assert ends_after([(9000, True, "")]) == 3000


def test_it_never_lasts_longer_than_ten_seconds() -> None:
    steps = [(500, True, " ".join(["word"] * count)) for count in range(1, 40)]
    assert ends_after(steps) == LONGEST_MS == 10_000
