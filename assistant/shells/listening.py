"""Live listening: a thread that turns the microphone's sound into turns, and keeps the tool from hearing itself.

It decides what was meant for the tool: after the key, after the call word, or all of it; an answer to what was just
asked, "hush" over a reply and a cry need neither. Turns go out by `deliver`, which must be safe to call from another
thread. The turn itself, its record and its reply belong to the shell's own thread.
"""

from __future__ import annotations

import threading
import time
from collections.abc import Callable
from dataclasses import dataclass
from typing import Literal, TypeAlias

from assistant.contract import Heard, Outcome, Reply
from assistant.hear.call_word import called
from assistant.hear.echo import Echo, own_words
from assistant.hear.loudness import QUIETEST_DB, level_db
from assistant.hear.microphone import Back, Lost, Microphone
from assistant.hear.recogniser import PIECE_MS, CannotListen, Recogniser
from assistant.hear.turns import Said, Turns
from assistant.shells.mouth import Mouth

When: TypeAlias = Literal["key", "call", "always"]

ANSWER_MS = 12_000
"""How long an answer to what was asked is taken without key or call word, from the end of the question."""
CALLED_MS = 8_000
"""How long the question is waited for when only the call word was said."""
HUSH = ("hush", "be quiet", "quiet", "stop", "stop it", "stop talking", "shush", "silence", "shut up")
"""Said while it speaks, these need no call word."""
METER = 10
METER_DB = 3.0
"""Loudness above the room's noise that each mark of the meter stands for."""


@dataclass(frozen=True)
class HeardTurn:
    """Something was said to the tool."""

    heard: Heard
    ended: float
    """When the turn was found to have ended, on the monotonic clock."""


@dataclass(frozen=True)
class Began:
    """The first sound has come: from now on it hears."""


@dataclass(frozen=True)
class Note:
    """Something about listening itself that the keeper must know."""

    say: str
    lost: bool = False
    """The microphone is gone: this ends only with another note."""


News: TypeAlias = HeardTurn | Note | Began


class Ears:
    """Listens until closed."""

    def __init__(
        self,
        recogniser: Recogniser,
        mouth: Mouth,
        when: When,
        call_word: str = "",
        cries: Callable[[Heard], bool] = lambda heard: False,
    ) -> None:
        """cries: whether what nobody addressed to the tool is a cry that it must answer; asked in its own thread."""
        self._recogniser = recogniser
        self._cries = cries
        self._turns = Turns(recogniser)
        self._echo = Echo()
        self._mouth = mouth
        self._when = when
        self._call_word = call_word
        self._open_ms = 0
        """Time left in which anything said is taken as meant for the tool."""
        self._pressed = threading.Event()
        self._over_reply = False
        """The turn that is going on began while the tool spoke."""
        self._lost = False
        self._microphone: Microphone | None = None
        self._thread: threading.Thread | None = None

    # ------------------------------------------------------------ for the shell's thread

    def start(self, microphone: Microphone, deliver: Callable[[News], None]) -> None:
        """Begin to listen."""
        self._microphone = microphone
        self._thread = threading.Thread(target=self._listen, args=(microphone, deliver), daemon=True, name="ears")
        self._thread.start()

    def close(self) -> None:
        """Listen no more."""
        if self._microphone is not None:
            self._microphone.close()
        if self._thread is not None:
            self._thread.join(timeout=3)

    def press(self) -> None:
        """The key: what is being said stops, and what comes now is a turn."""
        self._mouth.stop()
        self._pressed.set()

    def replied(self, reply: Reply) -> None:
        """Told of each reply, so that an answer to a question needs no call word."""
        if reply.outcome in (Outcome.ASK, Outcome.CONFIRM) or reply.say.rstrip().endswith("?"):
            self._open_ms = ANSWER_MS

    @property
    def busy(self) -> bool:
        """True while the keeper is speaking: nothing is said unasked."""
        return self._turns.in_turn

    def line(self) -> str:
        """How it listens just now, with a meter of the level, for the bottom of the screen."""
        if self._lost:
            return "no microphone"
        if self._turns.in_turn:
            return f"{self._meter()} hearing: {self._turns.text}"
        if self._when == "always" or self._open_ms:
            return f"{self._meter()} listening"
        return f'{self._meter()} say "{self._call_word}"' if self._when == "call" else f"{self._meter()} space: talk"

    def _meter(self) -> str:
        marks = min(METER, int(self._turns.loudness.above_noise / METER_DB))
        return "#" * marks + "." * (METER - marks)

    # ------------------------------------------------------------ the listening thread

    def _listen(self, microphone: Microphone, deliver: Callable[[News], None]) -> None:
        heard_any = False
        try:
            for piece in microphone.listen():
                if not heard_any:
                    heard_any = True
                    deliver(Began())
                if isinstance(piece, Lost):
                    self._lost = True
                    self._turns.drop()
                    deliver(Note(f"The microphone is gone: {piece.why}. Timers run on; type meanwhile.", lost=True))
                elif isinstance(piece, Back):
                    self._lost = False
                    self._turns = Turns(self._recogniser)
                    deliver(Note("The microphone is back."))
                else:
                    news = self.take(piece)
                    if news is not None:
                        deliver(news)
        except CannotListen as fault:
            self._lost = True
            deliver(Note(f"I can't listen. {fault}", lost=True))

    def take(self, piece: bytes) -> News | None:
        """One piece of sound; what it brought about, if anything."""
        if self._pressed.is_set():
            self._pressed.clear()
            self._turns.expect()
            self._open_ms = ANSWER_MS
        sounding = self._mouth.now_playing()
        playing = level_db(sounding) if sounding else QUIETEST_DB
        before = self._turns.in_turn
        said = self._turns.take(piece, lambda speech: self._someone_else(speech, playing))
        if self._turns.in_turn and not before:
            self._over_reply = self._echo.own_voice
            if self._mouth.speaking:
                self._mouth.stop()
        if not self._turns.in_turn and not self._mouth.speaking:
            self._open_ms = max(0, self._open_ms - PIECE_MS)
        return self._meant(said) if said is not None else None

    def _someone_else(self, speech: bool, playing: float) -> bool:
        loudness = self._turns.loudness
        over_it = self._echo.take(loudness.level, loudness.noise, playing)
        if not self._echo.own_voice:
            return speech
        return over_it or (speech and self._turns.in_turn)

    def _meant(self, said: Said) -> News | None:
        heard = said.heard
        if not heard.text or (self._over_reply and own_words(heard.text, self._mouth.lately)):
            return None
        addressed = self._addressed(said)
        if addressed is None:
            return None
        if not addressed.text:
            self._open_ms = CALLED_MS
            return Note("Yes?")
        self._open_ms = 0
        return HeardTurn(addressed, time.monotonic())

    def _addressed(self, said: Said) -> Heard | None:
        """What was said to the tool; None: it was said to somebody else."""
        heard = said.heard
        if self._call_word:
            found = called(heard, self._call_word)
            if found is not None and (found.sure or self._recogniser.spots(self._call_word, said.sound)):
                return found.heard
        if self._when == "always" or self._open_ms or (self._over_reply and heard.text in HUSH):
            return heard
        return heard if self._cries(heard) else None
