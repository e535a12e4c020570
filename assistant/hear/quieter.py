"""Takes a steady noise out of a turn's sound: a fan, running water.

The noise's spectrum is taken from the quietest moments of the turn itself. Each moment's spectrum is then weakened
where it hardly stands above that (a Wiener gain with a decision-directed estimate, after Ephraim and Malah 1984; the
constants are the usual ones, from memory). Sound that is clean already passes nearly unchanged.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from assistant.hear.recogniser import RATE_HZ

Samples = NDArray[np.float64]

FRAME, HOP = 512, 128
QUIET_SHARE = 0.15
"""The quietest part of the moments, of each pitch, that the noise is judged by."""
UPWARD = 1.8
"""The mean of a noise's power against that of its quietest moments; one trial of the share and this."""
SMOOTH = 0.96
FLOOR = 0.15
"""Least gain: what is left of the noise hides the tones that the weakening makes."""


NOISY_DB = 22.0
"""A turn whose loud and quiet moments lie closer is noisy. 24 clips of seven machine voices: 29 to 77 dB clean, 23 to
26 with a fan 20 dB below the speech, where a second hearing gained nothing, 15 to 17 with it 10 dB below."""
_MOMENT = RATE_HZ // 50


def is_noisy(sound: bytes) -> bool:
    """Whether a turn's quietest moments come near its loudest. A moment too short to judge: no."""
    samples = np.frombuffer(sound, dtype="<i2").astype(np.float64)
    moments = samples[: len(samples) // _MOMENT * _MOMENT].reshape(-1, _MOMENT)
    if len(moments) < RATE_HZ // 4 // _MOMENT:
        return False
    quiet, loud = np.quantile((moments**2).mean(axis=1) + 1.0, (0.1, 0.95))
    return bool(10 * np.log10(loud / quiet) < NOISY_DB)


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
        above = now / noise
        likely = SMOOTH * before + (1 - SMOOTH) * np.maximum(above - 1, 0)
        gains[n] = np.maximum(likely / (1 + likely), FLOOR)
        before = gains[n] ** 2 * above
    return gains
