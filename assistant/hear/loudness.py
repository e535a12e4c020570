"""How loud it is: a level for each piece, and the noise of the room. Whether there is speech is `voice_activity`.

The room's noise is the quietest that the last two seconds were. Pieces are pre-emphasised first, since fans are low and
speech is carried by what is high.
"""

from __future__ import annotations

from collections import deque

import numpy as np

from assistant.hear.recogniser import PIECE_MS

QUIETEST_DB, ROOM_DB = -90.0, -62.0
"""Digital silence; and the least noise that a room is taken to have, so that a click on a silent line is no speech."""
SMOOTHED = 5
"""Pieces over which the level is averaged: 100 ms, shorter than a syllable."""
REMEMBERED = 2000 // PIECE_MS // SMOOTHED
"""Averages that the room's noise is the least of."""


def level_db(piece: bytes) -> float:
    """How loud a piece is after pre-emphasis, in dB below full scale (0 is the loudest)."""
    samples = np.frombuffer(piece, dtype="<i2").astype(np.float64)
    if len(samples) < 2:
        return QUIETEST_DB
    high = samples[1:] - 0.95 * samples[:-1]
    power = float((high**2).mean()) / 32768**2
    return max(QUIETEST_DB, 10 * float(np.log10(power))) if power > 0 else QUIETEST_DB


class Loudness:
    """Follows the level of a microphone, piece by piece."""

    def __init__(self) -> None:
        self.level = QUIETEST_DB
        """Of the last piece, dB below full scale."""
        self._power: deque[float] = deque(maxlen=SMOOTHED)
        self._quietest: deque[float] = deque(maxlen=REMEMBERED)
        self._count = 0

    @property
    def noise(self) -> float:
        """The room's noise, in the same measure."""
        return max(ROOM_DB, min(self._quietest, default=ROOM_DB))

    @property
    def above_noise(self) -> float:
        """How far the last piece stands above the room's noise, 0 or more."""
        return max(0.0, self.level - self.noise)

    def take(self, piece: bytes) -> None:
        """Take the next piece into account."""
        self.level = level_db(piece)
        self._power.append(10 ** (self.level / 10))
        self._count += 1
        if self._count % SMOOTHED == 0:
            self._quietest.append(10 * float(np.log10(sum(self._power) / len(self._power))))
