"""Noise of a keeper's room laid over speech, made by numpy and the same every time.

A fan is pink noise with the hum of its blades; water is a hiss of high pitches whose strength wanders; a mask is no
noise but takes the high pitches out of the speech, and a fan runs behind it. None is a recording.
"""

from __future__ import annotations

from typing import Literal

import numpy as np
from numpy.typing import NDArray

RATE_HZ = 16_000

Kind = Literal["fan", "water", "mask"]
Samples = NDArray[np.float64]

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
    return np.clip(np.rint(speech + noise * level), -32768, 32767).astype("<i2").tobytes()


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
