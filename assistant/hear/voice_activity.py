"""Whether somebody speaks in a piece of sound, under a fan, a running tap or behind a mask too.

Loudness alone doesn't tell: beside a fan ten dB below the voice only the strongest vowels stand out of the whole. But a
voice is strong at a few pitches at a time, and noise wanders at all of them together. So each piece is taken apart into
bands of pitch, each band is held against its own noise, and what counts is how far the strongest bands stand above the
middle one. How far is far enough follows from how much that wanders while nobody speaks. To begin, a voice's own
pitches must rise, more than the rest: a bottle's hiss and a dropped brush have others. Measured by
`tests/bench/turns_in_noise.py`; the figures were chosen on half of its clips.
"""

from __future__ import annotations

from collections import deque

import numpy as np
from numpy.typing import NDArray

from assistant.hear.recogniser import PIECE_MS, RATE_HZ

Levels = NDArray[np.float64]

FRAME = 512
BANDS, LOWEST_HZ, HIGHEST_HZ = 20, 120.0, 6500.0
VOICED = 12
"""Of the bands, the lower ones, up to 2.3 kHz: the pitches of vowels."""
QUIETEST_DB = -75.0
"""Of a band, below full scale: a silent line isn't told from a quiet room."""
MOST_DB = 40.0
"""A band that stands further above its noise counts as this much."""
REMEMBERED = 4000 // PIECE_MS
"""Pieces that the noise of each band is taken from."""
NOISE_SHARE = 0.3
"""Of these pieces lie below a band's noise: a voice rests in each band for longer than that, even in mid-sentence."""
SMOOTHED = 5
"""Pieces that the median is taken of: 100 ms, shorter than a syllable and longer than a click."""
RESTING = 3000 // PIECE_MS
"""Pieces without speech that tell how much a rise wanders."""
BEGINNING, OF = 4, 6
"""Pieces of the last so many that must be speech before it begins."""
RESUMES = 900 // PIECE_MS
"""Pieces of silence after which it must begin anew; after fewer it goes on at any sound that stands out, so that the
softer beginning of a word after a pause isn't missed."""
RESUMING, RESUMING_OF = 2, 3
"""Pieces of the last so many that must stand out for that."""
SETTLES = 400 // PIECE_MS
"""Pieces before anything is taken for speech: the room has to be known first."""
LOOKS_EVERY = 5
"""Pieces between two looks at the noise."""
GIVES_UP = 10_000 // PIECE_MS
"""Nobody speaks for so many pieces without a rest: what goes on so long is the room."""


class _Rise:
    """How far the strongest of some bands stand above the middle one, against how far they usually do."""

    def __init__(self, bands: int, strongest: int, together: float) -> None:
        """
        bands: the lowest so many are looked at.
        strongest: so many of these count.
        together: how much of what the middle of all bands rises by is taken off.
        """
        self._bands, self._strongest, self._together = bands, strongest, together
        self._latest: deque[float] = deque(maxlen=SMOOTHED)
        self._resting: deque[float] = deque(maxlen=RESTING)
        self._usual, self._wanders = 0.0, 0.0
        self._now = 0.0

    def take(self, above: Levels) -> None:
        """above: dB of each band above its noise."""
        strongest = np.sort(above[: self._bands])[-self._strongest :].mean()
        self._latest.append(float(strongest - self._together * np.median(above)))
        self._now = sorted(self._latest)[len(self._latest) // 2]

    def by(self, times: float, least_db: float) -> bool:
        """Whether it is more than usual by so many times its usual wandering, and by so many dB at least."""
        known = len(self._resting) >= SETTLES // 2
        return known and self._now > self._usual + max(times * self._wanders, least_db)

    def rests(self) -> None:
        """Nobody spoke in the piece that was taken last."""
        self._resting.append(self._now)

    def look(self) -> None:
        """Judge anew what is usual."""
        if self._resting:
            resting = np.array(self._resting)
            self._usual = float(np.median(resting))
            # 1.48 median deviations are one standard deviation of normal chance, and heed no single bang.
            self._wanders = max(1.48 * float(np.median(np.abs(resting - self._usual))), 0.5)


class VoiceActivity:
    """Follows one microphone, piece by piece."""

    def __init__(self) -> None:
        self._samples = np.zeros(FRAME)
        self._bands: deque[Levels] = deque(maxlen=REMEMBERED)
        self._noise: Levels | None = None
        self._voice = _Rise(VOICED, 4, together=0.9)
        self._sound = _Rise(BANDS, 6, together=0.75)
        self._beginning: deque[bool] = deque(maxlen=OF)
        self._resuming: deque[bool] = deque(maxlen=RESUMING_OF)
        self._count = 0
        self._speaking_for, self._silent_for = 0, RESUMES

    def take(self, piece: bytes) -> bool:
        """Whether somebody speaks, with this piece (20 ms, 16 kHz, 16-bit) taken into account."""
        bands = self._levels(piece)
        if self._noise is not None:
            self._judge(np.clip(bands - self._noise, -10.0, MOST_DB))
        self._bands.append(bands)
        self._count += 1
        if self._count >= SETTLES and self._count % LOOKS_EVERY == 0:
            self._noise = np.quantile(np.array(self._bands), NOISE_SHARE, axis=0)
            self._voice.look()
            self._sound.look()
        return self._speaking_for > 0

    def _levels(self, piece: bytes) -> Levels:
        """dB below full scale of each band."""
        samples = np.frombuffer(piece, dtype="<i2").astype(np.float64)
        self._samples = np.concatenate([self._samples, samples])[-FRAME:]
        power = np.abs(np.fft.rfft(self._samples * _WINDOW)) ** 2
        return np.asarray(np.maximum(10 * np.log10(_IN_BANDS @ power + 1e-12), QUIETEST_DB))

    def _judge(self, above: Levels) -> None:
        self._voice.take(above)
        self._sound.take(above)
        self._beginning.append(self._voice.by(4.0, 2.0))
        self._resuming.append(self._sound.by(3.0, 2.0))
        if self._speaking_for:
            speaks = self._sound.by(2.0, 1.2)
        else:
            resumes = self._silent_for < RESUMES and sum(self._resuming) >= RESUMING
            speaks = resumes or sum(self._beginning) >= BEGINNING
        self._speaking_for = self._speaking_for + 1 if speaks else 0
        self._silent_for = 0 if speaks else self._silent_for + 1
        if not speaks or self._speaking_for > GIVES_UP:
            self._voice.rests()
            self._sound.rests()


def _in_bands() -> Levels:
    """What makes each band's mean power from that of each pitch. Spaced by mel, 1127 ln(1 + f/700): O'Shaughnessy,
    Speech Communication, 1987 (from memory)."""
    low, high = (1127 * np.log1p(hz / 700) for hz in (LOWEST_HZ, HIGHEST_HZ))
    edges = 700 * np.expm1(np.linspace(low, high, BANDS + 1) / 1127)
    pitches = np.fft.rfftfreq(FRAME, 1 / RATE_HZ)
    ends = np.maximum(edges[1:], edges[:-1] + RATE_HZ / FRAME)
    inside = (pitches >= edges[:-1, None]) & (pitches < ends[:, None])
    return np.asarray(inside / inside.sum(axis=1, keepdims=True) / FRAME / 32768**2)


_WINDOW = np.hanning(FRAME)
_IN_BANDS = _in_bands()
