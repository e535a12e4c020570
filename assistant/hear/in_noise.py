"""The features that the English model listens for, of speech under a steady noise, without the noise.

What clean speech is like is read from the recogniser's own acoustic model: a mixture of Gaussians over cepstra. With
the noise of the turn's quietest moments and the loudness and colour of the voice, it says what each of these Gaussians
would come out as in that noise, which of them was heard, and what it was without (a vector Taylor series: Moreno, Raj
and Stern, IEEE ICASSP 1996, 733-736). Better than weakening pitches: what drowned is filled in as speech mostly is.
"""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from assistant.hear.recogniser import RATE_HZ

Values = NDArray[np.float64]

FRAME, HOP, SPECTRUM = 410, 160, 512
BANDS, LOWEST_HZ, HIGHEST_HZ = 25, 130.0, 6800.0
CEPSTRA, LIFTER, EMPHASIS = 13, 22, 0.97
"""As in the model's own feat.params."""
BEGINNING = 1600
"""Samples mirrored at both ends, so that the first sound isn't cut off and its noise is that of the turn."""
HALVINGS = 4
"""How often the Gaussians of each sound are halved: 16 of 128 are left to go through."""
QUIET_SHARE, UPWARD = 0.15, 1.4
"""As in `quieter`."""
FLOOR = 0.003
"""Least share of a band's power that is voice, for the first guess of its loudness and colour; with 0.05, 67 of 128
clips at 10 dB were right or confirmed in place of 75."""
SPREAD = 1.6
"""Variance of a noise's loudness in a band, times the band's number of pitches."""
STEP = 0.7
"""How far voice and channel are moved towards what was found; a second time made it worse."""
KEPT = 5.0
"""Moments' worth of the beginning's belief in how often each Gaussian is heard."""


@dataclass(frozen=True)
class Speech:
    """Clean speech: Gaussians over cepstra."""

    means: Values
    variances: Values


def read_speech(model: Path) -> Speech:
    """From the folder of an acoustic model; the first of its streams is that of the cepstra themselves."""
    means, variances = (_read(model / name) for name in ("means", "variances"))
    spread = np.sqrt(variances.mean(axis=(0, 1)))
    merged: list[Values] = []
    within: list[Values] = []
    for own, wide in zip(means, variances, strict=True):
        groups = np.arange(len(own)).reshape(1, -1)
        for _ in range(HALVINGS):
            groups = np.concatenate([_halves(own / spread, group) for group in groups])
        merged.append(own[groups].mean(axis=1))
        within.append((wide[groups] + (own[groups] - merged[-1][:, None]) ** 2).mean(axis=1))
    return Speech(np.concatenate(merged), np.concatenate(within))


def _halves(means: Values, group: NDArray[np.int64]) -> NDArray[np.int64]:
    """Two groups of the same size, apart along the direction in which they differ most."""
    inside = means[group]
    order = group[inside[:, inside.var(axis=0).argmax()].argsort(kind="stable")]
    return order.reshape(2, -1)


def _read(path: Path) -> Values:
    """The first stream's vectors by sound, of a file of the model: a head, then sizes and numbers of 32 bits."""
    content = path.read_bytes()
    begin = content.index(b"endhdr\n") + len(b"endhdr\n")
    sounds, streams, many = np.frombuffer(content, "<i4", 3, begin + 4)
    values = np.frombuffer(content, "<f4", sounds * streams * many * CEPSTRA, begin + 4 * (5 + int(streams)))
    return np.asarray(values.reshape(sounds, streams, many, CEPSTRA)[:, 0], dtype=np.float64)


def mean_of(features: bytes) -> str:
    """The mean of each cepstrum of a turn, as the recogniser takes it: numbers with commas between."""
    mean = np.frombuffer(features, dtype="<f4").reshape(-1, CEPSTRA).mean(axis=0)
    return ",".join(f"{value:.3f}" for value in mean)


def cepstra(sound: bytes, speech: Speech) -> bytes:
    """What the recogniser takes in place of sound: cepstra of each moment, as if there were no noise.

    sound: a quarter of a second and more, as `is_noisy` has it.
    """
    samples = np.frombuffer(sound, dtype="<i2").astype(np.float64)
    padded = np.concatenate([samples[:BEGINNING][::-1], samples, samples[-BEGINNING:][::-1]])
    return np.ascontiguousarray(_without_noise(_bands_of(padded), speech), dtype="<f4").tobytes()


def _bands_of(samples: Values) -> Values:
    """Power in each band at each moment."""
    risen = np.concatenate([samples[:1], samples[1:] - EMPHASIS * samples[:-1]])
    frames = np.lib.stride_tricks.sliding_window_view(risen, FRAME)[::HOP] * np.hamming(FRAME)
    return np.asarray((np.abs(np.fft.rfft(frames, SPECTRUM, axis=1)) ** 2) @ _BANK + 1.0)


def _without_noise(power: Values, speech: Speech) -> Values:
    heard = np.log(power) @ _TO_CEPSTRA.T
    noise = _noise(power)
    quiet = np.log(noise) - 0.5 * _NOISE_VARIANCE
    voice = (np.log(np.maximum(power - noise, FLOOR * power)) @ _TO_CEPSTRA.T).mean(axis=0)
    weights = np.full(len(speech.means), 1 / len(speech.means))
    chances, clean, noisy = _estimate(heard, quiet, voice, weights, speech)
    voiced = 1 - chances @ noisy
    away = ((clean - chances @ speech.means) * voiced[:, None]).sum(axis=0) / max(float(voiced.sum()), 1e-9)
    weights = chances.sum(axis=0) + KEPT * weights
    return _estimate(heard, quiet, voice + STEP * (away - voice), weights / weights.sum(), speech)[1]


def _noise(power: Values) -> Values:
    smoothed = np.copy(power)
    for n in range(1, len(power)):
        smoothed[n] = 0.6 * smoothed[n - 1] + 0.4 * power[n]
    return np.asarray(np.quantile(smoothed[4:], QUIET_SHARE, axis=0) * UPWARD)


def _estimate(
    heard: Values, quiet: Values, voice: Values, weights: Values, speech: Speech
) -> tuple[Values, Values, Values]:
    """Each Gaussian's chance at each moment, the moments' clean cepstra, and how much of a Gaussian the noise drowns.

    quiet: logarithm of the noise in each band; voice: what the voice and its way to the microphone add to the cepstra.
    """
    means = speech.means + voice
    above = quiet - means @ _TO_BANDS.T
    drowned = 1 / (1 + np.exp(-np.clip(above, -60, 60)))
    come_out = means + np.logaddexp(0.0, above) @ _TO_CEPSTRA.T
    shown = np.einsum("ib,kb,bj->kij", _TO_CEPSTRA, 1 - drowned, _TO_BANDS, optimize=True)
    variances = np.einsum("kij,kj->ki", shown**2, speech.variances)
    variances += (drowned**2 * _NOISE_VARIANCE) @ (_TO_CEPSTRA**2).T
    sharp = 1 / np.maximum(variances, 0.1)
    far = heard**2 @ sharp.T - 2 * heard @ (come_out * sharp).T + (come_out**2 * sharp - np.log(sharp)).sum(axis=1)
    likely = np.log(weights) - 0.5 * far
    chances = np.exp(likely - likely.max(axis=1, keepdims=True))
    chances /= chances.sum(axis=1, keepdims=True)
    trust = np.einsum("kii,ki->ki", shown, speech.variances) * sharp
    clean = chances @ (means - trust * come_out) + heard * (chances @ trust)
    return chances, clean, drowned.mean(axis=1)


# ---------------------------------------------------------------- the model's own features


def _bank() -> Values:
    """Triangles of the same area, evenly apart in mel, each beginning and ending at a pitch of the spectrum."""
    lowest, highest = (2595 * np.log10(1 + hz / 700) for hz in (LOWEST_HZ, HIGHEST_HZ))
    width = RATE_HZ / SPECTRUM
    mels = np.linspace(lowest, highest, BANDS + 2)
    edges = np.floor(700 * (10 ** (mels / 2595) - 1) / width + 0.5) * width
    hz = (np.arange(SPECTRUM // 2 + 1) * width)[:, None]
    low, middle, high = edges[:-2], edges[1:-1], edges[2:]
    rising, falling = (hz - low) / (middle - low), (high - hz) / (high - middle)
    return np.asarray(np.maximum(0.0, np.minimum(rising, falling)) * 2 / (high - low))


_BANK = _bank()
_NOISE_VARIANCE = SPREAD / (_BANK > 0).sum(axis=0)
_COSINES = np.cos(np.pi / BANDS * np.outer(np.arange(CEPSTRA), np.arange(BANDS) + 0.5)) * np.sqrt(2 / BANDS)
_COSINES[0] = np.sqrt(1 / BANDS)
_LIFTED = 1 + LIFTER / 2 * np.sin(np.pi / LIFTER * np.arange(CEPSTRA))
_TO_CEPSTRA = np.asarray(_COSINES * _LIFTED[:, None])
_TO_BANDS = np.asarray((_COSINES / _LIFTED[:, None]).T)
