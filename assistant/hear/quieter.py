"""Takes a steady noise out of a turn's sound, for finding the call word: a fan, running water.

The noise's spectrum is taken from the quietest moments of the turn itself. Each moment's spectrum is then weakened
where it hardly stands above that: the gain that errs least in the logarithm of the loudness, with a decision-directed
estimate (Ephraim and Malah, IEEE Transactions on Acoustics, Speech and Signal Processing 33, 1985; constants tried on
the even half of the clips in tests/bench/recognition.md). Sound that is clean already passes nearly unchanged. What is
said in noise is heard by `in_noise`.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from assistant.hear.recogniser import RATE_HZ

Samples = NDArray[np.float64]

FRAME, HOP = 512, 128
QUIET_SHARE = 0.15
"""The quietest part of the moments, of each pitch, that the noise is judged by."""
UPWARD = 1.4
"""The mean of a noise's power against that of its quietest moments."""
SMOOTH = 0.96
FLOOR = 0.05
"""Least gain: what is left of the noise hides the tones that the weakening makes."""
LEAST_ABOVE = 10**-2.5
"""Least that speech is taken to stand above the noise by."""


NOISY_DB = 28.0
"""A turn whose loud and quiet moments lie closer is noisy. 128 clips of four machine voices: 29 to 64 dB clean, 23 to
28 with a fan 20 dB below the speech, 14 to 18 with it 10 dB below."""
LOUD_NOISE_DB = 22.0
"""The same for the call word, which is looked for a second time without the noise only where that is loud."""
_MOMENT = RATE_HZ // 50


def is_noisy(sound: bytes, within_db: float = NOISY_DB) -> bool:
    """Whether a turn's quietest moments come near its loudest. A moment too short to judge: no."""
    samples = np.frombuffer(sound, dtype="<i2").astype(np.float64)
    moments = samples[: len(samples) // _MOMENT * _MOMENT].reshape(-1, _MOMENT)
    if len(moments) < RATE_HZ // 4 // _MOMENT:
        return False
    quiet, loud = np.quantile((moments**2).mean(axis=1) + 1.0, (0.1, 0.95))
    return bool(10 * np.log10(loud / quiet) < within_db)


def without_noise(sound: bytes) -> bytes:
    """The same sound with its steady noise weakened."""
    samples = np.frombuffer(sound, dtype="<i2").astype(np.float64)
    if len(samples) < RATE_HZ // 4:
        return sound
    padded = np.concatenate([np.zeros(FRAME), samples, np.zeros(2 * FRAME)])
    window = np.sqrt(np.hanning(FRAME + 1)[:-1])
    frames = np.lib.stride_tricks.sliding_window_view(padded, FRAME)[::HOP] * window
    spectrum = np.fft.rfft(frames, axis=1)
    spectrum *= _gains(np.abs(spectrum) ** 2 + 1e-3)
    back = np.fft.irfft(spectrum, FRAME, axis=1) * window
    out = np.zeros((len(frames) - 1) * HOP + FRAME)
    for n, frame in enumerate(back):
        out[n * HOP : n * HOP + FRAME] += frame
    out *= HOP / (window**2).sum()
    return np.clip(np.rint(out[FRAME : FRAME + len(samples)]), -32768, 32767).astype("<i2").tobytes()


def _gains(power: Samples) -> Samples:
    """How much of each pitch at each moment is kept."""
    smoothed = np.copy(power)
    for n in range(1, len(power)):
        smoothed[n] = 0.8 * smoothed[n - 1] + 0.2 * power[n]
    noise = np.quantile(smoothed[8:-8], QUIET_SHARE, axis=0) * UPWARD
    gains, before = np.empty_like(power), np.ones(power.shape[1])
    for n, now in enumerate(power):
        above = np.minimum(now / noise, 1000.0)
        likely = np.maximum(SMOOTH * before + (1 - SMOOTH) * np.maximum(above - 1, 0), LEAST_ABOVE)
        share = likely / (1 + likely)
        gains[n] = np.clip(share * np.exp(0.5 * exponential_integral(share * above)), FLOOR, 1.0)
        before = gains[n] ** 2 * above
    return gains


def exponential_integral(x: Samples) -> Samples:
    """E1 of numbers above 0. Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 5.1.53 and 5.1.54."""
    low, high = np.clip(x, 1e-6, 1.0), np.maximum(x, 1.0)
    series = (-0.57721566, 0.99999193, -0.24991055, 0.05519968, -0.00976004, 0.00107857)
    near = sum(part * low**n for n, part in enumerate(series)) - np.log(low)
    ratio = (high**2 + 2.334733 * high + 0.250621) / (high**2 + 3.330657 * high + 1.681534)
    return np.asarray(np.where(x < 1.0, near, ratio / (high * np.exp(np.minimum(high, 700.0)))))
