"""Recordings: a 16-bit PCM WAV file or stream, any rate, mono or stereo, as the sound that recognisers take.

Everything that can be wrong with a recording is one kind of error with one clear line.
"""

from __future__ import annotations

import io
import wave
from dataclasses import dataclass
from pathlib import Path
from typing import BinaryIO

import numpy as np

from assistant.hear.recogniser import RATE_HZ
from assistant.hear.resample import resample

LONGEST_S = 120
"""A turn is a sentence; a longer recording is a mistake, and would keep the keeper waiting."""
LOWEST_HZ, HIGHEST_HZ = 8_000, 192_000
_MOST_BYTES = LONGEST_S * HIGHEST_HZ * 4 + 1_000_000
_MEND = "give a 16-bit PCM WAV, mono or stereo"
_NAMES = {0x0001: "PCM", 0x0003: "floating-point", 0x0006: "A-law", 0x0007: "mu-law", 0x0011: "ADPCM", 0x0055: "MP3"}


@dataclass(eq=False)
class BadRecording(Exception):
    """A recording that can't be used. One line: where, what is wrong, what to do."""

    where: str
    what: str
    fix: str = _MEND

    def __str__(self) -> str:
        return f"{self.where}: {self.what}; {self.fix}"


def read_file(path: Path) -> bytes:
    """The sound of a WAV file: 16 kHz, 16-bit, one channel. Fails: BadRecording."""
    try:
        with path.open("rb") as opened:
            return read_stream(opened, str(path))
    except FileNotFoundError:
        raise BadRecording(str(path), "there is no such file", "check the name") from None
    except IsADirectoryError:
        raise BadRecording(str(path), "this is a folder", "name the recording in it") from None
    except PermissionError:
        # Windows says this of a folder as well.
        what = "this is a folder" if path.is_dir() else "it may not be read"
        raise BadRecording(str(path), what, "choose a file that you may read") from None
    except OSError as fault:
        raise BadRecording(str(path), f"it can't be read ({fault.strerror})", "check the disk and the name") from None


def read_stream(stream: BinaryIO, where: str = "standard input") -> bytes:
    """The same from an open stream, which may be a pipe."""
    content = stream.read(_MOST_BYTES + 1)
    if not content:
        raise BadRecording(where, "it is empty")
    if len(content) > _MOST_BYTES:
        raise BadRecording(where, f"it is longer than {LONGEST_S} s", "give one sentence")
    return read_bytes(content, where)


def read_bytes(content: bytes, where: str) -> bytes:
    """The same from a whole file in memory."""
    coded = _coding(content, where)
    if coded not in (0x0001, 0xFFFE):
        raise BadRecording(where, f"its sound is coded as {_NAMES.get(coded, f'format {coded}')}, not as 16-bit PCM")
    try:
        with wave.open(io.BytesIO(_with_true_sizes(_plain(content)))) as opened:
            channels, width, rate, frames = opened.getparams()[:4]
            _check(where, channels, width, rate)
            raw = opened.readframes(min(frames, LONGEST_S * rate + 1))
    except (wave.Error, EOFError, ValueError, RuntimeError) as fault:
        raise BadRecording(where, f"it isn't a whole WAV file ({fault or 'it breaks off in its header'})") from None
    whole = len(raw) // (channels * 2)
    if whole < frames and whole <= LONGEST_S * rate:
        raise BadRecording(where, f"it is cut off: {frames} samples announced, {whole} there", "record it again")
    if not whole:
        raise BadRecording(where, "it holds no sound", "record it again")
    if whole > LONGEST_S * rate:
        raise BadRecording(where, f"it is longer than {LONGEST_S} s", "give one sentence")
    samples = np.frombuffer(raw, dtype="<i2", count=whole * channels).reshape(whole, channels).mean(axis=1)
    at_rate = resample(samples, rate, RATE_HZ)
    return np.clip(np.rint(at_rate), -32768, 32767).astype("<i2").tobytes()


def _check(where: str, channels: int, width: int, rate: int) -> None:
    if width != 2:
        raise BadRecording(where, f"its samples have {width * 8} bits, not 16")
    if channels not in (1, 2):
        raise BadRecording(where, f"it has {channels} channels, not one or two")
    if not LOWEST_HZ <= rate <= HIGHEST_HZ:
        raise BadRecording(
            where, f"its rate is {rate} samples a second", f"give {LOWEST_HZ} to {HIGHEST_HZ}, best {RATE_HZ}"
        )


def _coding(content: bytes, where: str) -> int:
    """The code of how its sound is stored, from the format chunk."""
    if content[:4] != b"RIFF" or content[8:12] != b"WAVE":
        raise BadRecording(where, "it isn't a WAV file")
    at = content.find(b"fmt ", 12)
    if at < 0 or len(content) < at + 10:
        raise BadRecording(where, "it breaks off in its header", "record it again")
    coded = int.from_bytes(content[at + 8 : at + 10], "little")
    if coded == 0xFFFE and len(content) >= at + 34:
        # The extensible form names the true coding further on.
        return int.from_bytes(content[at + 32 : at + 34], "little")
    return coded


def _plain(content: bytes) -> bytes:
    """The same with the extensible form's code written as plain PCM; Python's reader knows no other before 3.12."""
    at = content.find(b"fmt ", 12)
    return content[: at + 8] + (1).to_bytes(2, "little") + content[at + 10 :]


_UNKNOWN_SIZES = (0x7FFFFFFF, 0xFFFFFFFF)


def _with_true_sizes(content: bytes) -> bytes:
    """A program that writes into a pipe can't go back and fill in the lengths; take what is there instead."""
    at = content.find(b"data", 12)
    if at < 0 or len(content) < at + 8:
        return content
    announced = int.from_bytes(content[at + 4 : at + 8], "little")
    if announced < _UNKNOWN_SIZES[0] - 0x1000:
        return content
    there = len(content) - at - 8
    whole = content[:4] + (len(content) - 8).to_bytes(4, "little") + content[8 : at + 4]
    return whole + there.to_bytes(4, "little") + content[at + 8 :]
