"""A microphone that goes away and comes back, with a stand-in for the sound library."""

from __future__ import annotations

import sys
import threading
from types import SimpleNamespace
from typing import Any

import pytest

from assistant.hear import microphone
from assistant.hear.microphone import PIECE, Back, Lost, Microphone
from assistant.hear.recogniser import CannotListen


class Device:
    """Stands in for sounddevice: the streams that were opened, to hand sound over by."""

    PortAudioError = RuntimeError

    def __init__(self) -> None:
        self.there = True
        self.sounds = 3
        self.opened: list[Any] = []

    def RawInputStream(self, *, callback: Any, **settings: Any) -> Any:
        assert settings["samplerate"] == 16_000
        assert settings["channels"] == 1
        if not self.there:
            raise self.PortAudioError("no such device")
        sounds = self.sounds

        def start() -> None:
            for _ in range(sounds):
                callback(bytes(2 * PIECE), PIECE, None, None)

        stream = SimpleNamespace(start=start, abort=lambda **_: None, close=lambda **_: None)
        self.opened.append(stream)
        return stream


@pytest.fixture
def device(monkeypatch: pytest.MonkeyPatch) -> Device:
    made = Device()
    monkeypatch.setitem(sys.modules, "sounddevice", made)
    for name in ("FIRST_S", "NEXT_S", "TRIES_EVERY_S"):
        monkeypatch.setattr(microphone, name, 0.01)
    return made


def test_no_more_sound_is_told_and_it_is_tried_again_until_it_is_back(device: Device) -> None:
    listener = Microphone(source=lambda: None)
    came = []
    for piece in listener.listen():
        came.append(type(piece))
        if came.count(Back) == 1:
            listener.close()
    assert came == [bytes, bytes, bytes, Lost, Back]


def test_another_source_in_its_place_is_a_loss(device: Device) -> None:
    device.sounds = 200
    sources = iter(["mic", "mic", "room.monitor", "room.monitor", "mic", "mic", "mic", "mic", "mic", "mic"])
    listener = Microphone(source=lambda: next(sources))
    came = []
    for piece in listener.listen():
        came.append(piece)
        if isinstance(piece, Back):
            listener.close()
    losses = [piece for piece in came if isinstance(piece, Lost)]
    assert losses == [Lost("the system put another source in its place")]
    assert came.index(losses[0]) == 99, "it listened on to the wrong source"


def test_none_to_begin_with_is_one_line(device: Device) -> None:
    device.there = False
    with pytest.raises(CannotListen, match="no such device"):
        next(Microphone("left one").listen())


def test_closing_ends_it_from_another_thread(device: Device) -> None:
    listener = Microphone(source=lambda: None)
    device.there = True
    ended = threading.Event()

    def listen() -> None:
        for piece in listener.listen():
            if isinstance(piece, Lost):
                device.there = False
                listener.close()
        ended.set()

    threading.Thread(target=listen, daemon=True).start()
    assert ended.wait(5)
