"""Turns cut out of a stream of sound, with a recogniser that tells what it was fed."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest
from audio.noises import clatter, spraying

from assistant.contract import Heard
from assistant.hear.recogniser import PIECE_MS, RATE_HZ, pieces
from assistant.hear.turns import BEFORE_MS, Said, Turns


class Scripted:
    """A recogniser that hears a fixed text, more of it as more is fed, and counts what it is told."""

    name = "scripted"

    def __init__(self, text: str = "what is next") -> None:
        self.text, self.fed, self.settled, self.asked = text, 0, 0, 0

    def start(self) -> None:
        self.fed = 0

    def feed(self, piece: bytes) -> None:
        self.fed += len(piece)

    def partial(self) -> str:
        self.asked += 1
        return " ".join([self.text] * (self.fed // RATE_HZ)) if self.text else ""

    def settle(self) -> None:
        self.settled += 1

    def unsettle(self) -> None:
        self.settled -= 1

    def spots(self, phrase: str, sound: bytes) -> bool:
        return False

    def finish(self) -> Heard:
        return Heard(self.text, spoken=True)


_CHANCE = np.random.default_rng(3)


def sound(ms: int, level: float) -> list[bytes]:
    size = RATE_HZ * PIECE_MS // 1000
    return [_CHANCE.normal(0, level, size).astype("<i2").tobytes() for _ in range(ms // PIECE_MS)]


def voice(ms: int, level: float, noise: float = 10) -> list[bytes]:
    """Something like a voice: a pitch with its overtones, strongest about 600 and 1,400 Hz, five syllables a second.

    level: its root mean square, in steps of 16-bit sound; noise: the same of what lies under it.
    """
    size = RATE_HZ * PIECE_MS // 1000
    at = np.arange(ms // PIECE_MS * size) / RATE_HZ
    peaks = {
        120.0 * n: np.exp(-(((120 * n - 600) / 250) ** 2)) + np.exp(-(((120 * n - 1400) / 250) ** 2))
        for n in range(1, 20)
    }
    tone = sum(strength * np.sin(2 * np.pi * hz * at) for hz, strength in peaks.items()) * np.sin(np.pi * 2.5 * at) ** 2
    samples = tone * level / np.sqrt((tone**2).mean()) + _CHANCE.normal(0, noise, len(at))
    return [samples[begin : begin + size].astype("<i2").tobytes() for begin in range(0, len(samples), size)]


def turns_in(turns: Turns, stream: list[bytes]) -> list[tuple[int, Said]]:
    """The turns of a stream, and when each ended, in milliseconds."""
    found = []
    for number, piece in enumerate(stream, start=1):
        said = turns.take(piece)
        if said is not None:
            found.append((number * PIECE_MS, said))
    return found


def test_speech_between_silences_is_one_turn() -> None:
    listener = Scripted()
    ((ended, said),) = turns_in(Turns(listener), sound(1000, 10) + voice(1200, 2000) + sound(2000, 10))
    assert said.heard.text == "what is next"
    assert 2200 + 560 <= ended <= 2200 + 800
    assert len(said.sound) / 2 / RATE_HZ * 1000 >= 1200 + BEFORE_MS - 120, "its first sounds are cut off"
    assert listener.settled == 1, "it isn't worked out ahead"


def test_under_a_fan_speech_is_what_stands_above_it() -> None:
    fan = 400
    stream = sound(3000, fan) + voice(2000, 1264, fan) + sound(2000, fan)  # ten dB above it
    ((ended, said),) = turns_in(Turns(Scripted()), stream)
    assert 5000 + 500 <= ended <= 5000 + 800
    assert len(said.sound) / 2 / RATE_HZ * 1000 >= 2000 + BEFORE_MS - 120


def test_a_click_is_no_turn() -> None:
    listener = Scripted()
    assert turns_in(Turns(listener), sound(1000, 10) + sound(40, 9000) + sound(2000, 10)) == []
    assert listener.fed == 0


@pytest.mark.parametrize("what", [spraying, clatter])
def test_neither_a_spray_bottle_nor_what_is_dropped_is_a_turn(what: Callable[..., bytes]) -> None:
    listener = Scripted()
    heard = list(pieces(what(20 * RATE_HZ, np.random.default_rng(1))))
    assert turns_in(Turns(listener), heard) == []
    assert listener.fed == 0


def test_a_fan_that_comes_on_is_given_up_and_then_taken_for_the_rooms_noise() -> None:
    turns = Turns(Scripted(""))
    found = turns_in(turns, sound(1000, 10) + sound(9000, 700))
    assert all(not said.heard.text for _, said in found)
    assert len(found) <= 2
    assert not turns.in_turn


def test_a_soft_word_after_half_a_second_still_belongs_to_the_turn() -> None:
    soft = [piece for _ in range(3) for piece in (*sound(120, 200), *voice(200, 1500))]
    stream = sound(1000, 10) + voice(800, 2000) + sound(480, 10) + soft + sound(1500, 10)
    ((_, said),) = turns_in(Turns(Scripted()), stream)
    assert len(said.sound) / 2 / RATE_HZ * 1000 >= 800 + 480 + 960


def test_a_pause_takes_back_what_was_worked_out_ahead() -> None:
    listener = Scripted()
    stream = sound(1000, 10) + voice(800, 2000) + sound(480, 10) + voice(800, 2000) + sound(1500, 10)
    assert len(turns_in(Turns(listener), stream)) == 1
    assert listener.settled == 1


def test_a_turn_that_was_asked_for_waits_for_its_first_word_and_then_no_longer() -> None:
    turns = Turns(Scripted())
    turns.expect()
    assert turns.in_turn
    turns_in(turns, sound(7000, 10))
    assert not turns.in_turn


def test_it_can_be_overruled_what_is_speech() -> None:
    turns = Turns(Scripted())
    assert all(turns.take(piece, lambda speech: False) is None for piece in sound(3000, 10) + voice(2000, 3000))
