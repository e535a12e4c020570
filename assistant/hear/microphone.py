"""Live sound from the microphone, in pieces; told apart from a microphone that has gone away.

It is recorded by a program of its own, see `microphone_worker`. A device that is unplugged doesn't say so: it hands
over no more sound. Or the system puts another source in its place behind our back, at worst the loudspeaker's own, and
the tool would hear itself; where PulseAudio can be asked, it is.
"""

from __future__ import annotations

import json
import os
import queue
import shutil
import subprocess
import sys
import threading
from collections.abc import Callable, Generator, Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import IO, Any

from assistant.hear.recogniser import BYTES_A_SAMPLE, PIECE_MS, RATE_HZ, CannotListen

PIECE = RATE_HZ * PIECE_MS // 1000
"""Samples in one piece."""
STARTS_S = 10.0
"""For the program that records to open the device."""
FIRST_S, NEXT_S = 4.0, 1.0
"""No sound for so long: it is gone. A wireless one takes a while to begin."""
TRIES_EVERY_S = 1.0
ASKS_EVERY = 1000 // PIECE_MS
"""Pieces between two looks at which source the system hands over."""


@dataclass(frozen=True)
class Lost:
    """The microphone has gone away; sound comes again by itself when it is back."""

    why: str


@dataclass(frozen=True)
class Back:
    """The microphone is there again."""


def system_source() -> str | None:
    """The name of the source that PulseAudio (or what speaks its language) hands over; None: it can't be asked."""
    if shutil.which("pactl") is None:
        return None
    try:
        asked = subprocess.run(["pactl", "get-default-source"], capture_output=True, text=True, timeout=2, check=False)
    except (OSError, subprocess.TimeoutExpired):
        return None
    return asked.stdout.strip() if asked.returncode == 0 else None


class Microphone:
    """Sound from one device. `close` ends `listen`, from any thread."""

    def __init__(
        self,
        device: str | None = None,
        source: Callable[[], str | None] = system_source,
        command: tuple[str, ...] | None = None,
    ) -> None:
        """
        device: its name or part of it, as the system's list has it; None: the usual one.
        source: asked now and then which source the system hands over.
        command: starts the program that records; for tests.
        """
        named = (device,) if device is not None else ()
        self._command = command or (sys.executable, "-m", "assistant.hear.microphone_worker", *named)
        self._source = source
        self._wanted: str | None = None
        self._closed = threading.Event()

    def close(self) -> None:
        """Listen no more."""
        self._closed.set()

    def listen(self) -> Iterator[bytes | Lost | Back]:
        """Pieces of 20 ms as they are recorded, until closed. Fails: CannotListen when there is none to begin with."""
        recording: _Recording | None = _Recording(self._command)
        self._wanted = self._source()
        try:
            while recording is not None and not self._closed.is_set():
                why = yield from self._until_lost(recording)
                recording.end()
                recording = None
                if why:
                    yield Lost(why)
                    recording = self._again()
                    if recording is not None:
                        yield Back()
        finally:
            if recording is not None:
                recording.end()

    def _until_lost(self, recording: _Recording) -> Generator[bytes, None, str]:
        """Hands over pieces; gives why there are no more, or nothing when it was closed."""
        patience, count = FIRST_S, 0
        while not self._closed.is_set():
            piece = recording.next(patience)
            if piece is None:
                return "no sound comes from it"
            patience, count = NEXT_S, count + 1
            if count % ASKS_EVERY == 0 and not self._ours():
                return "the system put another source in its place"
            yield piece
        return ""

    def _ours(self) -> bool:
        now = self._source()
        return now is None or self._wanted is None or now == self._wanted

    def _again(self) -> _Recording | None:
        """Tries until it is there again, with sound coming; None: closed meanwhile."""
        while not self._closed.wait(TRIES_EVERY_S):
            if not self._ours():
                continue
            try:
                recording = _Recording(self._command)
            except CannotListen:
                continue
            if recording.next(FIRST_S) is not None:
                return recording
            recording.end()
        return None


class _Recording:
    """The program that records, running, and the sound that came from it and wasn't taken yet."""

    def __init__(self, command: tuple[str, ...]) -> None:
        """Fails: CannotListen."""
        here = str(Path(__file__).resolve().parents[2])
        paths = os.pathsep.join(path for path in (here, os.environ.get("PYTHONPATH")) if path)
        try:
            self._program = subprocess.Popen(
                command,
                stdin=subprocess.PIPE,
                stdout=subprocess.PIPE,
                stderr=subprocess.DEVNULL,
                env={**os.environ, "PYTHONPATH": paths},
            )
        except OSError as fault:
            raise CannotListen(
                f"the program that records doesn't start ({fault.strerror})", "microphone", "install rinseback again"
            ) from fault
        self._pieces: queue.Queue[bytes | None] = queue.Queue()
        hung = threading.Timer(STARTS_S, self._program.kill)
        hung.start()
        first = _pipe(self._program.stdout).readline()
        hung.cancel()
        told = (
            json.loads(first)
            if first
            else {"what": "the program that records stopped", "where": "microphone", "fix": "see `rinseback check`"}
        )
        if told:
            self.end()
            _pipe(self._program.stdout).close()
            raise CannotListen(told["what"], told["where"], told["fix"])
        threading.Thread(target=self._take, daemon=True, name="microphone").start()

    def next(self, patience_s: float) -> bytes | None:
        """The next piece; None: none came for so long, or none will come."""
        try:
            return self._pieces.get(timeout=patience_s)
        except queue.Empty:
            return None

    def end(self) -> None:
        """Stop recording."""
        self._program.kill()
        self._program.wait()
        _pipe(self._program.stdin).close()

    def _take(self) -> None:
        with _pipe(self._program.stdout) as sound:
            while len(piece := sound.read(PIECE * BYTES_A_SAMPLE)) == PIECE * BYTES_A_SAMPLE:
                self._pieces.put(piece)
        self._pieces.put(None)


def _pipe(pipe: IO[bytes] | None) -> IO[bytes]:
    assert pipe is not None
    return pipe


def sound_library() -> Any:
    """The library sounddevice. Fails: CannotListen with what to install."""
    try:
        import sounddevice
    except ImportError as fault:
        raise CannotListen("the package sounddevice is missing", "microphone", "pip install sounddevice") from fault
    except OSError as fault:
        raise CannotListen(
            "sound needs the system's library PortAudio",
            "microphone",
            "on Debian and its like: apt install libportaudio2; on Fedora: dnf install portaudio",
        ) from fault
    return sounddevice
