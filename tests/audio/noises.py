"""Noise of a keeper's room laid over speech, made by numpy and the same every time.

A fan is pink noise with the hum of its blades; water is a hiss of high pitches whose strength wanders; a mask is no
noise but takes the high pitches out of the speech, and a fan runs behind it. None is a recording.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Literal

import numpy as np
from numpy.typing import NDArray

RATE_HZ = 16_000

Kind = Literal["fan", "water", "mask"]
Samples = NDArray[np.float64]

MICROPHONE = 12.0
"""Its own noise, in steps of 16-bit sound: no real one is ever silent."""
BLADES_HZ = 87.0
MASK_HZ, MASK_DB_OCTAVE = 1500.0, 9.0
"""A cloth mask or respirator takes more away the higher the pitch; the figures are chosen, not measured."""


def with_noise(sound: bytes, kind: Kind, db: float, seed: int = 1) -> bytes:
    """The same 16 kHz sound with the noise so many dB below the speech's mean power."""
    speech = np.frombuffer(sound, dtype="<i2").astype(np.float64)
    if kind == "mask":
        speech = _shaped(speech, _behind_a_mask)
    chance = np.random.default_rng(seed)
    noise = _water(len(speech), chance) if kind == "water" else _fan(len(speech), chance)
    level = np.sqrt((speech**2).mean() / (noise**2).mean()) / 10 ** (db / 20)
    return _clipped(speech + noise * level)


def _fan(length: int, chance: np.random.Generator) -> Samples:
    noise = _shaped(chance.normal(size=length), lambda hz: 1 / np.sqrt(np.maximum(hz, 40.0)))
    noise /= noise.std()
    at = np.arange(length) / RATE_HZ
    hum = sum(np.sin(2 * np.pi * BLADES_HZ * n * at) / n for n in (1, 2, 3))
    return np.asarray(noise + 0.4 * hum)


def _water(length: int, chance: np.random.Generator) -> Samples:
    noise = _shaped(chance.normal(size=length), lambda hz: np.exp(-(np.log2(np.maximum(hz, 20.0) / 2500.0) ** 2) / 4))
    wander = _shaped(chance.normal(size=length), lambda hz: (hz < 8.0).astype(np.float64))
    return np.asarray(noise * np.clip(1 + 0.5 * wander / (wander.std() + 1e-9), 0.2, 2.0))


def _behind_a_mask(hz: Samples) -> Samples:
    octaves = np.log2(np.maximum(hz, MASK_HZ) / MASK_HZ)
    return np.asarray(10 ** (-MASK_DB_OCTAVE * octaves / 20))


def _shaped(samples: Samples, gain: object) -> Samples:
    """Filtered by a gain for each pitch."""
    assert callable(gain)
    spectrum = np.fft.rfft(samples)
    return np.fft.irfft(spectrum * gain(np.fft.rfftfreq(len(samples), 1 / RATE_HZ)), len(samples))


def fan(seconds: float, seed: int = 1) -> Samples:
    """A fan's noise of mean power 1."""
    noise = _fan(int(seconds * RATE_HZ), np.random.default_rng(seed))
    return np.asarray(noise / noise.std())


def in_a_noisy_room(
    sound: bytes, kind: Kind | None, db: float, before_s: float, after_s: float, seed: int = 1
) -> tuple[bytes, float]:
    """What a microphone hears from before something is said until after it, and when it ends, in seconds.

    kind: None: a quiet room.
    db: the noise lies so far below the mean power of what is said.
    """
    said = np.frombuffer(sound, dtype="<i2").astype(np.float64)
    loud = np.flatnonzero(np.abs(said) > 300)
    said = said[loud[0] : loud[-1] + 1]
    if kind == "mask":
        said = _shaped(said, _behind_a_mask)
    chance = np.random.default_rng(seed)
    whole = np.concatenate([np.zeros(int(before_s * RATE_HZ)), said, np.zeros(int(after_s * RATE_HZ))])
    if kind is None:
        noise = chance.normal(0, MICROPHONE, len(whole))
    else:
        noise = _water(len(whole), chance) if kind == "water" else _fan(len(whole), chance)
        noise *= np.sqrt((said**2).mean() / (noise**2).mean()) / 10 ** (db / 20)
    return _clipped(whole + noise), before_s + len(said) / RATE_HZ


def _clipped(samples: Samples) -> bytes:
    return np.clip(np.rint(samples), -32768, 32767).astype("<i2").tobytes()


# ---------------------------------------------------------------- what is no speech


def spraying(length: int, chance: np.random.Generator) -> bytes:
    """A spray bottle: a hiss of a third of a second, every 1.2 s."""
    quiet = chance.normal(0, MICROPHONE, length)
    size = int(0.35 * RATE_HZ)
    swell = np.minimum(1.0, np.minimum(np.arange(size), np.arange(size)[::-1]) / (0.02 * RATE_HZ))
    for begin in range(2 * RATE_HZ, length - size, int(1.2 * RATE_HZ)):
        hiss = _shaped(chance.normal(size=size), lambda hz: np.where(hz > 1500.0, 1.0, 0.1))
        quiet[begin : begin + size] += 1500 * hiss / hiss.std() * swell
    return _clipped(quiet)


def clatter(length: int, chance: np.random.Generator) -> bytes:
    """Something hard put down every two and a half seconds."""
    quiet = chance.normal(0, MICROPHONE, length)
    size = int(0.08 * RATE_HZ)
    for begin in range(2 * RATE_HZ, length - size, int(2.5 * RATE_HZ)):
        quiet[begin : begin + size] += chance.normal(0, 3000, size) * np.exp(-np.arange(size) / (0.015 * RATE_HZ))
    return _clipped(quiet)


def _on_and_off(noise: Samples, level: float, seconds: int, chance: np.random.Generator) -> bytes:
    on = np.arange(len(noise)) // (seconds * RATE_HZ) % 2 == 1
    return _clipped(chance.normal(0, MICROPHONE, len(noise)) + level * on * noise / noise.std())


def _steady(noise: Samples, level: float) -> bytes:
    return _clipped(level * noise / noise.std())


NO_SPEECH: dict[str, Callable[[int, np.random.Generator], bytes]] = {
    "a quiet room": lambda length, chance: _clipped(chance.normal(0, MICROPHONE, length)),
    "a fan": lambda length, chance: _steady(_fan(length, chance), 500),
    "running water": lambda length, chance: _steady(_water(length, chance), 500),
    "spraying": spraying,
    "clatter": clatter,
    "a tap, ten seconds on, ten off": lambda length, chance: _on_and_off(_water(length, chance), 600, 10, chance),
    "a fan, twenty seconds on, twenty off": lambda length, chance: _on_and_off(_fan(length, chance), 500, 20, chance),
}
