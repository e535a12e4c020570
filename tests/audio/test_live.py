"""The live path as a keeper has it: speech into a microphone, the reply out of a loudspeaker, all in real time."""

from __future__ import annotations

import os
import time
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from audio.live_program import CALL, Live
from audio.noises import fan
from audio.sound_room import RATE_HZ, SoundRoom, loud, sound_room, wait_for
from audio.spoken_clips import Speaker, need, speak

from assistant.hear.wav import read_file

pytestmark = pytest.mark.audio
if os.environ.get("CI") != "true":
    pytest.importorskip("pocketsphinx")
    pytest.importorskip("sounddevice", exc_type=OSError)

SLT = Speaker("flite", "slt")
RMS = Speaker("flite", "rms")


@pytest.fixture
def room(tmp_path: Path) -> Iterator[SoundRoom]:
    need("flite")
    (tmp_path / "room").mkdir()
    with sound_room(tmp_path / "room") as room:
        yield room


@pytest.fixture
def clip(tmp_path: Path) -> Any:
    def make(text: str, speaker: Speaker = SLT) -> bytes:
        return read_file(speak(text, speaker, tmp_path / "clip.wav"))

    return make


def test_a_spoken_question_is_answered_aloud_when_the_turn_has_ended(
    room: SoundRoom, tmp_path: Path, clip: Any
) -> None:
    with Live(room, tmp_path / "home", "--listen", "always") as live:
        live.ready()
        mark = len(room.recorded)
        ended = room.say(clip("how long does bleach have to stay wet"))
        reply = live.reply()
        sounded = room.wait_for_sound(mark, 10)
        assert reply["intent"] == "hold_time", reply["question"]
        assert reply["values"]["minutes"] == 10
        # 0.6 s of silence end the turn; the rest is the answer's own time. The bound is wide for a busy computer.
        assert 0.5 < sounded - ended < 3.0, reply["question"]


def test_by_the_call_word_only_what_follows_it_is_answered(room: SoundRoom, tmp_path: Path, clip: Any) -> None:
    with Live(room, tmp_path / "home") as live:
        live.ready()
        room.say(clip("how long does bleach have to stay wet"))
        live.no_reply()
        mark = len(room.recorded)
        room.say(clip(f"{CALL} how long does bleach have to stay wet"))
        assert live.reply()["intent"] == "hold_time"
        room.wait_until_said(mark)
        mark = len(room.recorded)
        room.say(clip(CALL))
        room.wait_until_said(mark)
        room.say(clip("what can i ask"))
        assert live.reply()["intent"] == "help"


def test_a_cry_is_answered_without_the_call_word(room: SoundRoom, tmp_path: Path, clip: Any) -> None:
    with Live(room, tmp_path / "home") as live:
        live.ready()
        mark = len(room.recorded)
        room.say(clip("i got bleach in my eye"))
        assert live.reply()["intent"] == "splash"
        room.wait_for_sound(mark, 10)


def test_under_a_fan_what_is_said_is_heard_whole(room: SoundRoom, tmp_path: Path, clip: Any) -> None:
    said = clip("how long does bleach have to stay wet", RMS)
    speech = np.frombuffer(said, dtype="<i2").astype(np.float64)
    room.noise = fan(10, seed=4) * np.sqrt((speech**2).mean()) / 10 ** (15 / 20)  # 15 dB below the voice
    with Live(room, tmp_path / "home", "--listen", "always") as live:
        live.ready()
        live.no_reply(4)
        room.say(said)
        assert live.reply()["question"].endswith("does bleach have to stay wet")


def test_an_answer_to_its_own_question_needs_no_call_word(room: SoundRoom, tmp_path: Path, clip: Any) -> None:
    with Live(room, tmp_path / "home") as live:
        live.ready()
        mark = len(room.recorded)
        live.type("how much bleach at one in thirty two")
        assert live.reply()["outcome"] == "ask"
        room.wait_until_said(mark)
        room.say(clip("the yellow bottle"))
        assert live.reply()["intent"] == "dose"


def test_talking_over_a_reply_stops_it(room: SoundRoom, tmp_path: Path, clip: Any) -> None:
    with Live(room, tmp_path / "home", "--listen", "always") as live:
        live.ready()
        mark = len(room.recorded)
        live.type("bleach in my eye")
        live.reply()
        room.wait_for_sound(mark, 10)
        time.sleep(1.0)
        began = time.monotonic()
        room.say(clip("how long does bleach have to stay wet"))
        assert room.wait_for_quiet(5, 0.3) - began < 2.5, "it talked on"
        assert live.reply()["intent"] == "hold_time"


@pytest.mark.parametrize("echo_db", [-20.0, -6.0])
def test_it_doesnt_hear_itself(room: SoundRoom, tmp_path: Path, echo_db: float) -> None:
    room.echo_db = echo_db
    with Live(room, tmp_path / "home", "--listen", "always") as live:
        live.ready()
        for text in ("how long does bleach have to stay wet", "bleach in my eye"):
            mark = len(room.recorded)
            live.type(text)
            live.reply()
            room.wait_for_sound(mark, 10)
            room.wait_for_quiet(25, 1.0)
            live.no_reply(2.0)
            said_s = len(room.heard_since(mark)) / 2 / RATE_HZ
            assert said_s > 3, "it stopped at its own voice"


@pytest.mark.parametrize("how", ["pull_out", "freeze"])
def test_a_lost_microphone_is_told_and_comes_back_by_itself(
    room: SoundRoom, tmp_path: Path, clip: Any, how: str
) -> None:
    with Live(room, tmp_path / "home", "--listen", "always") as live:
        live.ready()
        for text in ("start the river tank with the yellow bottle", "out, cleared and washed", "sprayed"):
            live.type(text)
            live.reply()
        mark = len(room.recorded)
        getattr(room, how)()
        wait_for(lambda: any("microphone is gone" in line for line in live.complaints), 6, "the note")
        wait_for(lambda: loud(room.heard_since(mark)), 15, f"the voice; it complains: {live.complaints}")
        live.type("how long is left")
        assert 570 < live.reply()["values"]["seconds"] < 600, "timers run on"
        room.wait_for_quiet(15, 1.0)
        mark = len(room.recorded)
        room.plug_in() if how == "pull_out" else room.thaw()
        wait_for(lambda: any("microphone is back" in line for line in live.complaints), 12, "the microphone")
        room.wait_until_said(mark)
        room.say(clip("how long is left"))
        assert live.reply()["intent"] == "time_left"


def test_without_any_microphone_it_says_so_and_typing_goes_on(room: SoundRoom, tmp_path: Path) -> None:
    with Live(room, tmp_path / "home", "--microphone", "no such thing") as live:
        wait_for(lambda: any("can't listen" in line for line in live.complaints), 20, "the note")
        live.type("how long does bleach have to stay wet")
        assert live.reply()["values"]["minutes"] == 10


def test_the_room_itself_is_silent_until_something_is_said(room: SoundRoom) -> None:
    time.sleep(0.3)
    assert not loud(bytes(room.recorded))
