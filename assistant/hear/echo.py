"""Telling the keeper's voice from the tool's own, while the tool speaks.

No echo is cancelled: how much of the loudspeaker comes back into the microphone is learned from the levels, and
somebody is speaking when it is clearly louder than that. The way from loudspeaker to microphone takes an unknown time,
so a piece is compared with the loudest that was played in the last second. What gets through all the same is
known by its words: see `own_words`.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Sequence
from difflib import SequenceMatcher

from assistant.hear.loudness import QUIETEST_DB
from assistant.hear.recogniser import PIECE_MS
from assistant.hear.spoken_form import words_of

LAG_MS = 1000
"""Longest way of the sound through the system that is reckoned with."""
LEARNS_MS = 500
"""Of the tool's speech, before it can tell; what is heard in that time is taken for its own."""
LOUDER_DB = 6.0
"""A keeper's voice stands above the echo by at least this much."""
LASTS = 8
"""Pieces of the last ten that must be louder: a cough or a dropped brush is shorter."""
OWN_SHARE = 0.6
"""Of the words heard that stand in the reply in the same order: then it was the reply."""


class Echo:
    """Follows what is played and what is heard. Pieces of both are handed in together."""

    def __init__(self) -> None:
        self._played: deque[float] = deque(maxlen=LAG_MS // PIECE_MS)
        self._louder: deque[bool] = deque(maxlen=10)
        self._came_back: deque[float] = deque(maxlen=3000 // PIECE_MS)
        """How much of what was played came back, dB; of the last three seconds of speech."""
        self._playing_ms = 0

    def take(self, heard_db: float, noise_db: float, played_db: float) -> bool:
        """Whether somebody else speaks.

        heard_db: level of this piece at the microphone.
        noise_db: the room's noise.
        played_db: level of what is being played; QUIETEST_DB: nothing.
        """
        self._played.append(played_db)
        loudest = max(self._played)
        if loudest <= QUIETEST_DB:
            self._playing_ms = 0
            self._louder.clear()
            return False
        self._playing_ms += PIECE_MS
        if self._playing_ms <= LEARNS_MS:
            self._came_back.append(heard_db - loudest)
            return False
        expected = max(noise_db, loudest + max(self._came_back))
        louder = heard_db > expected + LOUDER_DB
        self._louder.append(louder)
        if not louder:
            self._came_back.append(heard_db - loudest)
        return sum(self._louder) >= LASTS

    @property
    def own_voice(self) -> bool:
        """True while what the tool played may still be on its way to the microphone."""
        return max(self._played, default=QUIETEST_DB) > QUIETEST_DB


def own_words(heard: str, said: Sequence[str]) -> bool:
    """Whether what was heard is what the tool itself said lately: most of its words stand there in the same order."""
    words = heard.split()
    if len(words) < 2:
        return False
    for text in said:
        matcher = SequenceMatcher(None, words, list(words_of(text)), autojunk=False)
        same = sum(block.size for block in matcher.get_matching_blocks())
        if same >= OWN_SHARE * len(words):
            return True
    return False
