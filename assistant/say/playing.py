"""Playing a WAV file so that it can be stopped at once. Making one is `voice`.

Needs the package sounddevice and, on Linux, the system's library libportaudio2. A computer without them, or without a
loudspeaker, gets one clear line, and everything else works.
"""

from __future__ import annotations

import threading
import wave
from dataclasses import dataclass
from pathlib import Path
from typing import Any


@dataclass(frozen=True, slots=True)
class NoSound:
    """Nothing can be played. One line: why, and what to do."""

    why: str
    fix: str

    def __str__(self) -> str:
        return f"{self.why}; {self.fix}"


def sound_devices() -> Any | NoSound:
    """The library sounddevice, or why it can't be used."""
    try:
        import sounddevice
    except ImportError:
        return NoSound("the package sounddevice is missing", "pip install sounddevice")
    except OSError:
        return NoSound(
            "sound needs the system's library PortAudio",
            "on Debian and its like: apt install libportaudio2; on Fedora: dnf install portaudio",
        )
    return sounddevice


def loudspeaker() -> str | NoSound:
    """The name of the loudspeaker that would be used, or why there is none."""
    devices = sound_devices()
    if isinstance(devices, NoSound):
        return devices
    try:
        return str(devices.query_devices(kind="output")["name"])
    except (devices.PortAudioError, ValueError):
        return NoSound("no loudspeaker is found", "plug one in, or choose one in the system's sound settings")


class Speaker:
    """Plays one file at a time. Any thread may start and stop it."""

    def __init__(self) -> None:
        self._stream: Any = None
        self._finished = threading.Event()
        self._finished.set()
        self._sounding = _Sounding()

    def play(self, path: Path) -> NoSound | None:
        """Begin to play, stopping what plays now; None: it has begun. Returns at once."""
        self.stop()
        devices = sound_devices()
        if isinstance(devices, NoSound):
            return devices
        try:
            with wave.open(str(path)) as opened:
                channels, width, rate, frames = opened.getparams()[:4]
                sound = opened.readframes(frames)
        except (OSError, EOFError, wave.Error) as fault:
            return NoSound(f"{path} can't be played ({fault or 'it is cut off'})", "make it again")
        if width != 2:
            return NoSound(f"{path} can't be played (samples of {width * 8} bits)", "make it as 16-bit PCM")
        self._finished.clear()
        self._sounding = _Sounding()
        try:
            self._stream = devices.RawOutputStream(
                samplerate=rate,
                channels=channels,
                dtype="int16",
                callback=_source(sound, channels * width, devices.CallbackStop, self._sounding),
                finished_callback=self._finished.set,
            )
            self._stream.start()
        except (devices.PortAudioError, ValueError) as fault:
            self._finished.set()
            self._stream = None
            return NoSound(f"the loudspeaker can't be used ({fault})", "see `rinseback check`")
        return None

    def stop(self) -> None:
        """Silence at once. Does nothing when nothing plays."""
        stream, self._stream = self._stream, None
        if stream is not None:
            stream.abort()
            stream.close()
        self._finished.set()

    def wait(self, seconds: float | None = None) -> bool:
        """Wait until it has finished or was stopped; False: it still plays after so many seconds."""
        return self._finished.wait(seconds)

    @property
    def playing(self) -> bool:
        """True while sound comes out."""
        return not self._finished.is_set()

    def now_playing(self) -> bytes:
        """The samples handed to the device last; nothing when nothing plays."""
        return self._sounding.piece if self.playing else b""


@dataclass
class _Sounding:
    """What the device was handed last."""

    piece: bytes = b""


def _source(sound: bytes, frame_bytes: int, ended: type[Exception], sounding: _Sounding | None = None) -> Any:
    """What hands the sound to the device, piece by piece, then ends the stream."""
    at = 0

    def give(out: Any, frames: int, _time: object, _status: object) -> None:
        nonlocal at
        wanted = frames * frame_bytes
        piece = sound[at : at + wanted]
        at += wanted
        if sounding is not None:
            sounding.piece = piece
        out[: len(piece)] = piece
        out[len(piece) :] = bytes(wanted - len(piece))
        if len(piece) < wanted:
            raise ended

    return give
