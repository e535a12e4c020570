"""Speech for tests, made on the spot by two speech programs, and noise laid over it. Nothing of it is kept."""

from __future__ import annotations

import os
import shutil
import subprocess
import wave
from dataclasses import dataclass
from pathlib import Path

import numpy as np
import pytest

RATE_HZ = 16_000
PACKAGES = {"flite": "flite", "espeak-ng": "espeak-ng", "sox": "sox"}
PEOPLE = Path("/usr/share/pocketsphinx/test/data")
"""Where Debian's package pocketsphinx-testdata puts recordings of people."""


@dataclass(frozen=True)
class Speaker:
    program: str
    voice: str


FLITE = tuple(Speaker("flite", voice) for voice in ("kal16", "awb", "rms", "slt"))
ESPEAK = tuple(Speaker("espeak-ng", voice) for voice in ("en-us", "en-us+f3", "en-gb"))


def absent(reason: str) -> None:
    """Skip for want of something; where it must be there, that is a failure."""
    if os.environ.get("CI") == "true":
        pytest.fail(f"needed here: {reason}")
    pytest.skip(reason)


def need(*programs: str) -> None:
    for program in programs:
        if shutil.which(program) is None:
            absent(f"the program {program} is not installed (Debian's package {PACKAGES[program]})")


def people(name: str) -> Path:
    """A recording of a person."""
    if not PEOPLE.is_dir():
        absent("Debian's package pocketsphinx-testdata is not installed")
    return PEOPLE / name


def speak(text: str, speaker: Speaker, path: Path, words_a_minute: int = 150, slower: float = 1.0) -> Path:
    """Say the text into a WAV file, at whatever rate the program writes.

    words_a_minute: of espeak-ng.
    slower: how much longer flite takes; below 1 it speaks faster.
    """
    path.unlink(missing_ok=True)
    if speaker.program == "flite":
        stretch = ["--setf", f"duration_stretch={slower}"]
        command = ["flite", "-voice", speaker.voice, *stretch, "-t", text, "-o", str(path)]
    else:
        command = ["espeak-ng", "-v", speaker.voice, "-s", str(words_a_minute), "-w", str(path), text]
    subprocess.run(command, check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    return path


def under_a_fan(sound: bytes, db: float, folder: Path) -> bytes:
    """The same 16 kHz sound with pink noise laid over it, so many dB below the speech."""
    samples = np.frombuffer(sound, dtype="<i2").astype(np.float64)
    noise_file = folder / "noise.wav"
    seconds = str(len(samples) / RATE_HZ + 0.1)
    make = [
        "sox",
        "-R",
        "-n",
        "-r",
        str(RATE_HZ),
        "-c",
        "1",
        "-b",
        "16",
        str(noise_file),
        "synth",
        seconds,
        "pinknoise",
    ]
    subprocess.run(make, check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    with wave.open(str(noise_file)) as opened:
        noise = np.frombuffer(opened.readframes(len(samples)), dtype="<i2").astype(np.float64)
    level = np.sqrt((samples**2).mean() / (noise**2).mean()) / 10 ** (db / 20)
    return np.clip(samples + noise * level, -32768, 32767).astype("<i2").tobytes()
