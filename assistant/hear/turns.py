"""From pieces of sound to turns: where one begins, where it ends, and what was said in it.

No thread and no device here: pieces are handed in one after the other, from a microphone or a file alike, and time is
counted in pieces.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Callable
from dataclasses import dataclass

from assistant.contract import Heard
from assistant.hear.end_of_turn import EndOfTurn
from assistant.hear.loudness import Loudness
from assistant.hear.recogniser import PIECE_MS, Recogniser
from assistant.hear.voice_activity import VoiceActivity

BEFORE_MS = 400
"""Sound before the beginning was noticed that still belongs to the turn: soft first sounds."""
TEXT_EVERY_MS = 100
"""How often the text so far is asked for."""
SETTLE_MS = 200
"""Silence after which the whole turn is worked out ahead, so that the reply needn't wait for it: a sentence of 3 s
takes 0.2 s when clean and 0.6 to 1 s in noise, on a small computer."""
WAITS_MS = 6000
"""How long a turn that was begun by a key waits for the first word."""


@dataclass(frozen=True)
class Said:
    """A turn that has ended."""

    heard: Heard
    sound: bytes
    """All of it, from shortly before its first sound."""


class Turns:
    """Cuts sound into turns. Not for use from two threads at once."""

    def __init__(self, recogniser: Recogniser) -> None:
        self.loudness = Loudness()
        self._activity = VoiceActivity()
        self._recogniser = recogniser
        self._before: deque[bytes] = deque(maxlen=BEFORE_MS // PIECE_MS)
        self._turn: EndOfTurn | None = None
        self._sound = bytearray()
        self._text = ""
        self._waiting_ms = 0
        self._settled = False

    @property
    def in_turn(self) -> bool:
        """True while someone speaks, or is expected to."""
        return self._turn is not None or self._waiting_ms > 0

    @property
    def text(self) -> str:
        """What was recognised so far."""
        return self._text

    def expect(self) -> None:
        """The keeper pressed the key: what comes now is a turn, however softly it begins."""
        self.drop()
        self._waiting_ms = WAITS_MS

    def drop(self) -> None:
        """Forget the turn that is going on."""
        self._turn, self._waiting_ms, self._text = None, 0, ""

    def take(self, piece: bytes, hears: Callable[[bool], bool] = bool) -> Said | None:
        """The turn that ended with this piece, or None.

        hears: may overrule what was taken for speech; for a tool that is speaking itself.
        """
        self.loudness.take(piece)
        speech = hears(self._activity.take(piece))
        if self._turn is None:
            self._before.append(piece)
            if speech:
                self._begin()
            elif self._waiting_ms:
                self._waiting_ms = max(0, self._waiting_ms - PIECE_MS)
            return None
        return self._go_on(piece, speech)

    def _begin(self) -> None:
        self._turn, self._waiting_ms, self._text, self._settled = EndOfTurn(), 0, "", False
        self._sound = bytearray(b"".join(self._before))
        self._before.clear()
        self._recogniser.start()
        self._recogniser.feed(bytes(self._sound))

    def _go_on(self, piece: bytes, speech: bool) -> Said | None:
        turn = self._turn
        assert turn is not None
        self._sound += piece
        self._recogniser.feed(piece)
        if speech and self._settled:
            self._recogniser.unsettle()
            self._settled = False
        if not self._settled and turn.total_ms % TEXT_EVERY_MS == 0:
            self._text = self._recogniser.partial()
        ended = turn.take(speech, self._text)
        if turn.silent_ms >= SETTLE_MS and not self._settled:
            self._recogniser.settle()
            self._settled = True
        if not ended:
            return None
        said = Said(self._recogniser.finish(), bytes(self._sound))
        self.drop()
        return said
