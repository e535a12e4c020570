"""A room made of software: PulseAudio with a microphone that is a pipe and a loudspeaker that is a null sink.

Clips go into the pipe in real time, 20 ms at a time, with silence or a noise in between; what the program says is
recorded from the loudspeaker. The pipe lags a steady 20 ms. Everything of it lives in a temporary folder.
"""

from __future__ import annotations

import os
import queue
import shutil
import subprocess
import threading
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

import numpy as np
from audio.spoken_clips import RATE_HZ, absent

PIECE = RATE_HZ // 50 * 2
"""Bytes of 20 ms."""
NOISE = 12.0
"""Of the microphone itself, in steps of 16-bit sound: no real one is ever silent."""
SOUND_HZ = 16_000

_START = """
load-module module-native-protocol-unix socket={socket} auth-anonymous=1
load-module module-null-sink sink_name=room rate={rate} channels=1
set-default-sink room
"""
_MICROPHONE = "source_name=mic file={pipe} format=s16le rate=16000 channels=1"


class SoundRoom:
    """One running room."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder
        self._socket = folder / "native"
        self._pipe = folder / "mic"
        self._said: queue.Queue[bytes] = queue.Queue()
        self._last_said = 0.0
        self._stop = threading.Event()
        self._feeding: threading.Thread | None = None
        self.noise: np.ndarray = np.zeros(0)
        """A noise of the room at the microphone, in steps of 16-bit sound, over and over; empty: none."""
        self.echo_db: float | None = None
        """How much of the loudspeaker comes back into the microphone; None: nothing."""
        self.recorded = bytearray()
        """All that came out of the loudspeaker."""
        self.began = 0.0
        """When recording began, on the monotonic clock."""
        self._recorder: subprocess.Popen[bytes] | None = None
        self._recording: threading.Thread | None = None
        self._server: subprocess.Popen[bytes] | None = None
        self._module = ""

    @property
    def environment(self) -> dict[str, str]:
        """For a program that is to sit in this room."""
        return {
            **os.environ,
            "HOME": str(self._folder),
            "PULSE_SERVER": f"unix:{self._socket}",
            "PULSE_LATENCY_MSEC": "30",
            "XDG_RUNTIME_DIR": str(self._folder),
        }

    def open(self) -> None:
        script = self._folder / "room.pa"
        script.write_text(_START.format(socket=self._socket, rate=SOUND_HZ))
        (self._folder / ".asoundrc").write_text("pcm.!default { type pulse }\nctl.!default { type pulse }\n")
        options = ("--exit-idle-time=-1", "--daemonize=no", "--use-pid-file=0", "--disallow-exit=1")
        self._server = subprocess.Popen(
            ["pulseaudio", "-n", "-F", str(script), *options],
            env={**os.environ, "HOME": str(self._folder), "XDG_RUNTIME_DIR": str(self._folder)},
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
        )
        wait_for(lambda: self._asked("info") is not None, 10, "PulseAudio")
        self.plug_in()
        self._recorder = subprocess.Popen(
            [
                "parec",
                "-d",
                "room.monitor",
                "--format=s16le",
                f"--rate={SOUND_HZ}",
                "--channels=1",
                "--latency-msec=20",
            ],
            env=self.environment,
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
        )
        self._recording = threading.Thread(target=self._record, daemon=True)
        self._recording.start()

    def close(self) -> None:
        self._stop_feeding()
        for program in (self._recorder, self._server):
            if program is not None:
                program.kill()
                program.wait()
        if self._recording is not None:
            self._recording.join()

    # ------------------------------------------------------------ the microphone

    def plug_in(self) -> None:
        """The microphone is there, and silent."""
        self._module = (
            self._asked("load-module", "module-pipe-source", _MICROPHONE.format(pipe=self._pipe)) or ""
        ).strip()
        assert self._module, "no pipe source"
        self._asked("set-default-source", "mic")
        if self._recorder is not None:
            # While the microphone was out, the monitor was the default; what records a default follows it.
            for line in (self._asked("list", "short", "source-outputs") or "").splitlines():
                self._asked("move-source-output", line.split()[0], "room.monitor")
        self._stop.clear()
        self._feeding = threading.Thread(target=self._feed, daemon=True)
        self._feeding.start()

    def pull_out(self) -> None:
        """The microphone is gone; PulseAudio hands over the loudspeaker's own monitor instead."""
        self._stop_feeding()
        self._asked("unload-module", self._module)

    def freeze(self) -> None:
        """The microphone stays, but no sound comes from it."""
        self._stop_feeding()

    def thaw(self) -> None:
        self._stop.clear()
        self._feeding = threading.Thread(target=self._feed, daemon=True)
        self._feeding.start()

    def say(self, sound: bytes) -> float:
        """Speak into the microphone; gives when it ends, on the monotonic clock. Returns when it has been said."""
        for begin in range(0, len(sound), PIECE):
            self._said.put(sound[begin : begin + PIECE].ljust(PIECE, b"\0"))
        wait_for(self._said.empty, len(sound) / 2 / RATE_HZ + 5, "the clip to be said")
        return self._last_said

    def _stop_feeding(self) -> None:
        self._stop.set()
        if self._feeding is not None:
            self._feeding.join()

    def _feed(self) -> None:
        chance = np.random.default_rng(5)
        # Never blocking: nobody reads while nobody records, and a real microphone doesn't wait either.
        pipe = os.open(self._pipe, os.O_RDWR | os.O_NONBLOCK)
        try:
            due, at = time.monotonic(), 0
            while not self._stop.is_set():
                piece = np.zeros(PIECE // 2)
                if len(self.noise):
                    piece += np.take(self.noise, range(at, at + len(piece)), mode="wrap")
                    at += len(piece)
                with suppress(queue.Empty):
                    piece += np.frombuffer(self._said.get_nowait(), dtype="<i2")
                    self._last_said = time.monotonic()
                piece += chance.normal(0, NOISE, len(piece)) + self._echo()
                with suppress(BlockingIOError):
                    os.write(pipe, np.clip(piece, -32768, 32767).astype("<i2").tobytes())
                due += 0.02
                time.sleep(max(0.0, due - time.monotonic()))
        finally:
            os.close(pipe)

    def _echo(self) -> np.ndarray | float:
        if self.echo_db is None or len(self.recorded) < 2 * PIECE:
            return 0.0
        latest = np.frombuffer(bytes(self.recorded[-PIECE:]), dtype="<i2").astype(np.float64)
        return latest * 10 ** (self.echo_db / 20)

    # ------------------------------------------------------------ the loudspeaker

    def _record(self) -> None:
        assert self._recorder is not None
        assert self._recorder.stdout is not None
        self.began = time.monotonic()
        with self._recorder.stdout as sound:
            while piece := sound.read(PIECE):
                self.recorded += piece

    def heard_since(self, mark: int) -> bytes:
        """What came out of the loudspeaker since `mark`, a length of `recorded`."""
        return bytes(self.recorded[mark:])

    def wait_for_sound(self, mark: int, seconds: float) -> float:
        """Until something comes out; gives when, on the monotonic clock."""
        wait_for(lambda: loud(self.heard_since(mark)), seconds, "a sound from the loudspeaker")
        return time.monotonic()

    def wait_for_quiet(self, seconds: float, quiet_s: float = 0.5) -> float:
        """Until nothing has come out for `quiet_s`; gives when the last sound was, on the monotonic clock."""
        size = int(quiet_s * SOUND_HZ) * 2
        wait_for(lambda: not loud(bytes(self.recorded[-size:])), seconds, "the loudspeaker to fall silent")
        return time.monotonic() - quiet_s

    def wait_until_said(self, mark: int) -> None:
        """Until something came out of the loudspeaker since `mark`, and has ended."""
        self.wait_for_sound(mark, 10)
        self.wait_for_quiet(25)

    def _asked(self, *what: str) -> str | None:
        asked = subprocess.run(["pactl", *what], env=self.environment, capture_output=True, text=True, check=False)
        return asked.stdout if asked.returncode == 0 else None


def loud(sound: bytes) -> bool:
    """Whether there is anything but silence in it."""
    samples = np.frombuffer(sound[: len(sound) // 2 * 2], dtype="<i2")
    return bool(len(samples)) and int(np.abs(samples.astype(np.int32)).max()) > 200


def wait_for(true: Callable[[], bool], seconds: float, what: str) -> None:
    """Real time passes here: the sound system has no other."""
    until = time.monotonic() + seconds
    while not true():
        if time.monotonic() > until:
            raise AssertionError(f"waited {seconds} s for {what}")
        time.sleep(0.01)


@contextmanager
def sound_room(folder: Path) -> Iterator[SoundRoom]:
    """An open room, or a skip where PulseAudio or its way from ALSA is missing."""
    for program in ("pulseaudio", "pactl", "parec"):
        if shutil.which(program) is None:
            absent(f"the program {program} is not installed (Debian's packages pulseaudio and pulseaudio-utils)")
    if not list(Path("/usr/lib").glob("*/alsa-lib/libasound_module_pcm_pulse.so")):
        absent("Debian's package libasound2-plugins is not installed")
    room = SoundRoom(folder)
    try:
        room.open()
        yield room
    finally:
        room.close()
