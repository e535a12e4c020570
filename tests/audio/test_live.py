"""The live path as a keeper has it: speech into a microphone, the reply out of a loudspeaker, all in real time."""

from __future__ import annotations

import json
import os
import queue
import subprocess
import sys
import threading
import time
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from audio.sound_room import RATE_HZ, SoundRoom, loud, sound_room, wait_for
from audio.spoken_clips import Speaker, need, speak

from assistant.hear.wav import read_file

pytestmark = pytest.mark.audio
if os.environ.get("CI") != "true":
    pytest.importorskip("pocketsphinx")
    pytest.importorskip("sounddevice", exc_type=OSError)

SLT = Speaker("flite", "slt")
RMS = Speaker("flite", "rms")
CALL = "marigold lantern"
DEMO = Path(__file__).resolve().parents[2] / "assistant" / "demo" / "keeping.toml"


@pytest.fixture
def room(tmp_path: Path) -> Iterator[SoundRoom]:
    need("flite")
    (tmp_path / "room").mkdir()
    with sound_room(tmp_path / "room") as room:
        yield room


class Live:
    """`rinseback --voice --json`, running in the room."""

    def __init__(self, room: SoundRoom, home: Path, *options: str) -> None:
        home.mkdir(exist_ok=True)
        kept = DEMO.read_text("utf-8").replace("[habits]\n", f'[habits]\ncall_word = "{CALL}"\n')
        (home / "keeping.toml").write_text(kept, "utf-8")
        self.room = room
        self.replies: queue.Queue[dict[str, Any]] = queue.Queue()
        self.complaints: list[str] = []
        command = [sys.executable, "-m", "assistant", "chat", "--voice", "--json", "--home", str(home), *options]
        self._program = subprocess.Popen(
            command, env=room.environment, stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.PIPE
        )
        self._reading = [threading.Thread(target=read, daemon=True) for read in (self._read, self._complain)]
        for reading in self._reading:
            reading.start()

    def _read(self) -> None:
        assert self._program.stdout is not None
        for line in self._program.stdout:
            self.replies.put(json.loads(line))

    def _complain(self) -> None:
        assert self._program.stderr is not None
        for line in self._program.stderr:
            if line.startswith(b"rinseback:"):
                self.complaints.append(line.decode())

    def ready(self) -> None:
        """Listening: PulseAudio has a recording stream of it."""
        asked = ["pactl", "list", "short", "source-outputs"]
        recording = 2  # the room's own recorder, and the program

        def streams() -> int:
            out = subprocess.run(asked, env=self.room.environment, capture_output=True, check=False).stdout
            return len(out.splitlines())

        wait_for(lambda: streams() >= recording, 30, "the program to listen")
        time.sleep(0.5)

    def reply(self, seconds: float = 10) -> dict[str, Any]:
        return self.replies.get(timeout=seconds)

    def no_reply(self, seconds: float = 2.5) -> None:
        with pytest.raises(queue.Empty):
            self.replies.get(timeout=seconds)

    def type(self, text: str) -> None:
        assert self._program.stdin is not None
        self._program.stdin.write(f"{text}\n".encode())
        self._program.stdin.flush()

    def close(self) -> None:
        self._program.kill()
        self._program.wait()
        for reading in self._reading:
            reading.join()
        for pipe in (self._program.stdin, self._program.stdout, self._program.stderr):
            assert pipe is not None
            pipe.close()

    def __enter__(self) -> Live:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()


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
        assert reply["intent"] == "hold_time"
        assert reply["values"]["minutes"] == 10
        # 0.6 s of silence end the turn; the rest is the answer's own time. The bound is wide for a busy computer.
        assert 0.5 < sounded - ended < 3.0


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
        room.wait_for_sound(mark, 5)
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
