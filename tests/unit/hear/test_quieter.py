"""A steady noise taken out of a turn's sound."""

from __future__ import annotations

import numpy as np

from assistant.hear.quieter import is_noisy, without_noise
from assistant.hear.recogniser import RATE_HZ


def power(sound: np.ndarray) -> float:
    return float((sound.astype(np.float64) ** 2).mean())


def tone_in_noise(noise: float) -> tuple[np.ndarray, np.ndarray]:
    """Two seconds: silence, a tone in the middle, silence; and the same with noise over it."""
    at = np.arange(2 * RATE_HZ) / RATE_HZ
    tone = 4000 * np.sin(2 * np.pi * 700 * at) * ((at > 0.7) & (at < 1.3))
    return tone, tone + np.random.default_rng(2).normal(0, noise, len(tone))


def cleaned(samples: np.ndarray) -> np.ndarray:
    return np.frombuffer(without_noise(samples.astype("<i2").tobytes()), dtype="<i2")


def test_noise_falls_by_more_than_ten_decibels_and_what_was_said_stays() -> None:
    tone, noisy = tone_in_noise(800)
    out = cleaned(noisy)
    quiet, loud = slice(4000, 10_000), slice(13_000, 19_000)
    assert len(out) == len(noisy)
    assert power(out[quiet]) < power(noisy[quiet]) / 10
    assert 0.7 < power(out[loud]) / power(tone[loud]) < 1.2


def test_clean_sound_passes_nearly_unchanged() -> None:
    tone, _ = tone_in_noise(0)
    out = cleaned(tone)
    assert power(out - tone) < 0.03 * power(tone)


def test_a_moment_too_short_to_judge_is_left_alone() -> None:
    assert without_noise(b"\1\0" * 100) == b"\1\0" * 100


def test_only_noise_near_the_level_of_the_speech_counts_as_noisy() -> None:
    _, loud_fan = tone_in_noise(800)
    _, far_fan = tone_in_noise(100)
    silent, _ = tone_in_noise(0)
    assert is_noisy(loud_fan.astype("<i2").tobytes())
    assert not is_noisy(far_fan.astype("<i2").tobytes())
    assert not is_noisy(silent.astype("<i2").tobytes())
    assert not is_noisy(b"\1\0" * 100)
