"""Live sound from the microphone, in pieces, through PortAudio; told apart from a microphone that has gone away.

A device that is unplugged doesn't say so: it hands over no more sound. Or the system puts another source in its place
behind our back, at worst the loudspeaker's own, and the tool would hear itself; where PulseAudio can be asked, it is.
"""

from __future__ import annotations

import queue
import shutil
import subprocess
import threading
from collections.abc import Callable, Generator, Iterator
from dataclasses import dataclass
from typing import Any

from assistant.hear.recogniser import PIECE_MS, RATE_HZ, CannotListen

PIECE = RATE_HZ * PIECE_MS // 1000
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

    def __init__(self, device: str | None = None, source: Callable[[], str | None] = system_source) -> None:
        """
        device: its name or part of it, as the system's list has it; None: the usual one.
        source: asked now and then which source the system hands over.
        """
        self._device = device
        self._source = source
        self._wanted: str | None = None
        self._pieces: queue.Queue[bytes] = queue.Queue()
        self._closed = threading.Event()

    def close(self) -> None:
        """Listen no more."""
        self._closed.set()

    def listen(self) -> Iterator[bytes | Lost | Back]:
        """Pieces of 20 ms as they are recorded, until closed. Fails: CannotListen when there is none to begin with."""
        stream = self._opened()
        self._wanted = self._source()
        try:
            while not self._closed.is_set():
                why = yield from self._until_lost()
                _shut(stream)
                stream = None
                if why:
                    yield Lost(why)
                    stream = self._reopened()
                    if stream is not None:
                        yield Back()
        finally:
            _shut(stream)

    def _until_lost(self) -> Generator[bytes, None, str]:
        """Hands over pieces; gives why there are no more, or nothing when it was closed."""
        patience, count = FIRST_S, 0
        while not self._closed.is_set():
            try:
                piece = self._pieces.get(timeout=patience)
            except queue.Empty:
                return "no sound comes from it"
            patience, count = NEXT_S, count + 1
            if count % ASKS_EVERY == 0 and not self._ours():
                return "the system put another source in its place"
            yield piece
        return ""

    def _ours(self) -> bool:
        now = self._source()
        return now is None or self._wanted is None or now == self._wanted

    def _opened(self) -> Any:
        devices = sound_library()
        self._pieces = queue.Queue()
        pieces = self._pieces

        def take(sound: Any, _frames: int, _time: object, _status: object) -> None:
            pieces.put(bytes(sound))

        try:
            stream = devices.RawInputStream(
                samplerate=RATE_HZ, blocksize=PIECE, device=self._device, channels=1, dtype="int16", callback=take
            )
            stream.start()
        except (devices.PortAudioError, ValueError) as fault:
            raise CannotListen(
                f"the microphone can't be used ({fault})", self._device or "microphone", "see `rinseback check`"
            ) from fault
        return stream

    def _reopened(self) -> Any:
        """Tries until it is there again, with sound coming; None: closed meanwhile."""
        while not self._closed.wait(TRIES_EVERY_S):
            if not self._ours():
                continue
            try:
                stream = self._opened()
            except CannotListen:
                continue
            try:
                self._pieces.get(timeout=FIRST_S)
            except queue.Empty:
                _shut(stream)
                continue
            return stream
        return None


def _shut(stream: Any) -> None:
    if stream is not None:
        stream.abort(ignore_errors=True)
        stream.close(ignore_errors=True)


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
