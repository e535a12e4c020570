"""When the keeper has finished: by silence, by a text that stands still, or by sheer length.

Pure: it is told of each piece whether it is speech and what the text is so far. Waiting is longer where the text can't
be at its end: after "at", "in" and "to" a number comes, and after a number there may come more of it.
"""

from __future__ import annotations

from assistant.hear.recogniser import PIECE_MS
from assistant.hear.spoken_form import ONES, TENS

SILENCE_MS = 600
UNFINISHED_MS = 900
"""After a number, "at", "in" and "to"."""
STANDING_STILL_MS = 1000
"""The text hasn't changed for so long, though it isn't quiet: a fan came on, or somebody else is talking far off."""
LONGEST_MS = 10_000
NOTHING_HEARD_MS = 3000
"""Noise for so long without one word is no turn."""

_UNFINISHED = frozenset(
    (*ONES, *(word for word in TENS if word), "hundred", "thousand", "point", "and", "at", "in", "to", "a", "the", "of")
)


def silence_needed(text: str) -> int:
    """Milliseconds of silence after which a text so far is taken to be whole."""
    last = text.split()[-1:]
    return UNFINISHED_MS if last and last[0] in _UNFINISHED else SILENCE_MS


class EndOfTurn:
    """One turn's end. A new one for each turn."""

    def __init__(self) -> None:
        self.silent_ms = 0
        """Since the last speech."""
        self.total_ms = 0
        self._text = ""
        self._standing_ms = 0

    def take(self, speech: bool, text: str) -> bool:
        """Whether the turn has ended, with this piece taken into account.

        speech: whether the piece is speech.
        text: what was recognised so far.
        """
        self.total_ms += PIECE_MS
        self.silent_ms = 0 if speech else self.silent_ms + PIECE_MS
        if text != self._text:
            self._text, self._standing_ms = text, 0
        elif speech:
            self._standing_ms += PIECE_MS
        if self.total_ms >= LONGEST_MS or self.silent_ms >= silence_needed(text):
            return True
        return self._standing_ms >= (STANDING_STILL_MS if text else NOTHING_HEARD_MS)
