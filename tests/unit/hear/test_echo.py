"""The keeper's voice told from the tool's own."""

from __future__ import annotations

import pytest

from assistant.hear.echo import Echo, own_words
from assistant.hear.loudness import QUIETEST_DB

NOISE = -60.0


def run(echo: Echo, *, back_db: float, lag: int, keeper: dict[int, float], pieces: int = 150) -> list[int]:
    """Pieces at which somebody else was found while the tool speaks, its speech coming back by so much after a lag."""
    played = [-20.0 + 6 * (n % 7 > 3) for n in range(pieces)]
    found = []
    for n, level in enumerate(played):
        came = played[n - lag] + back_db if n >= lag else NOISE
        if echo.take(max(NOISE, came, keeper.get(n, NOISE)), NOISE, level):
            found.append(n)
    return found


@pytest.mark.parametrize("back_db", [-60.0, -20.0, -3.0, 6.0])
@pytest.mark.parametrize("lag", [0, 5, 20])
def test_its_own_voice_is_nobody_else(back_db: float, lag: int) -> None:
    assert run(Echo(), back_db=back_db, lag=lag, keeper={}) == []


def test_a_keeper_who_talks_over_it_is_found_within_a_third_of_a_second() -> None:
    found = run(Echo(), back_db=-30.0, lag=5, keeper=dict.fromkeys(range(80, 150), -20.0))
    assert 80 < found[0] <= 96


def test_a_cough_isnt() -> None:
    assert run(Echo(), back_db=-30.0, lag=5, keeper=dict.fromkeys(range(80, 86), -10.0)) == []


def test_what_it_learned_in_one_reply_serves_the_next() -> None:
    echo = Echo()
    run(echo, back_db=-10.0, lag=20, keeper={})
    for _ in range(100):
        echo.take(NOISE, NOISE, QUIETEST_DB)
    assert not echo.own_voice
    assert run(echo, back_db=-10.0, lag=20, keeper={}) == []


@pytest.mark.parametrize(
    ("heard", "own"),
    [
        ("ten minutes wet all the time", True),
        ("ten minutes what all the time by published", True),
        ("how long is left", False),
        ("hush", False),
        ("the yellow bottle", False),
    ],
)
def test_its_own_words_are_known_again(heard: str, own: bool) -> None:
    assert own_words(heard, ["10 minutes, wet all the time, by published figures."]) is own
