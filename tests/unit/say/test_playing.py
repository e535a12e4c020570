from __future__ import annotations

import sys
import wave
from pathlib import Path
from types import SimpleNamespace
from typing import Any

import pytest

from assistant.say.playing import NoSound, Speaker, loudspeaker


class PortAudioError(Exception):
    pass


class CallbackStop(Exception):
    pass


class FakeStream:
    """A sound device that plays only when told to."""

    def __init__(self, callback: Any, finished_callback: Any, **settings: Any) -> None:
        self.callback, self.finished, self.settings = callback, finished_callback, settings
        self.played = b""
        self.closed = False

    def start(self) -> None:
        pass

    def abort(self) -> None:
        self.finished()

    def close(self) -> None:
        self.closed = True

    def ask_for(self, frames: int) -> None:
        out = bytearray(b"\xff" * (frames * 2))
        try:
            self.callback(memoryview(out), frames, None, None)
        except CallbackStop:
            self.finished()
        self.played += bytes(out)


@pytest.fixture
def streams(monkeypatch: pytest.MonkeyPatch) -> list[FakeStream]:
    made: list[FakeStream] = []

    def stream(**settings: Any) -> FakeStream:
        made.append(FakeStream(**settings))
        return made[-1]

    devices = SimpleNamespace(RawOutputStream=stream, PortAudioError=PortAudioError, CallbackStop=CallbackStop)
    monkeypatch.setitem(sys.modules, "sounddevice", devices)
    return made


@pytest.fixture
def clip(tmp_path: Path) -> Path:
    path = tmp_path / "clip.wav"
    with wave.open(str(path), "wb") as opened:
        opened.setparams((1, 2, 22_050, 0, "NONE", ""))
        opened.writeframes(bytes(range(200)))
    return path


def test_a_clip_is_played_to_its_end_and_then_it_is_quiet(streams: list[FakeStream], clip: Path) -> None:
    speaker = Speaker()
    assert speaker.play(clip) is None
    assert speaker.playing
    streams[0].ask_for(60)
    assert speaker.playing
    streams[0].ask_for(60)
    assert not speaker.playing
    assert streams[0].played == bytes(range(200)) + bytes(40)
    assert streams[0].settings["samplerate"] == 22_050


def test_stop_silences_at_once(streams: list[FakeStream], clip: Path) -> None:
    speaker = Speaker()
    speaker.play(clip)
    streams[0].ask_for(10)
    speaker.stop()
    assert not speaker.playing
    assert streams[0].closed
    assert speaker.wait(0)
    speaker.stop()


def test_a_second_clip_ends_the_first(streams: list[FakeStream], clip: Path) -> None:
    speaker = Speaker()
    speaker.play(clip)
    speaker.play(clip)
    assert streams[0].closed
    assert not streams[1].closed
    assert speaker.playing


def test_without_the_system_library_one_line_names_the_package(monkeypatch: pytest.MonkeyPatch, clip: Path) -> None:
    class NoLibrary:
        def find_spec(self, name: str, *_: object) -> None:
            if name == "sounddevice":
                raise OSError("PortAudio library not found")

    monkeypatch.delitem(sys.modules, "sounddevice", raising=False)
    monkeypatch.setattr(sys, "meta_path", [NoLibrary(), *sys.meta_path])
    for found in (loudspeaker(), Speaker().play(clip)):
        assert isinstance(found, NoSound)
        assert "libportaudio2" in str(found)


def test_without_the_package_one_line_says_so(monkeypatch: pytest.MonkeyPatch, clip: Path) -> None:
    monkeypatch.setitem(sys.modules, "sounddevice", None)
    assert "pip install sounddevice" in str(Speaker().play(clip))


def test_a_device_that_refuses_is_one_line(
    streams: list[FakeStream], clip: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def refuse(**_: Any) -> FakeStream:
        raise PortAudioError("no device")

    monkeypatch.setattr(sys.modules["sounddevice"], "RawOutputStream", refuse)
    speaker = Speaker()
    assert "no device" in str(speaker.play(clip))
    assert not speaker.playing


def test_a_file_that_is_no_recording_is_one_line(streams: list[FakeStream], tmp_path: Path) -> None:
    (tmp_path / "text.wav").write_text("hello")
    assert "can't be played" in str(Speaker().play(tmp_path / "text.wav"))
