"""The interface that every recogniser keeps, and the one path by which sound reaches it.

A recogniser is fed 16 kHz, 16-bit, one-channel sound in small pieces and gives what it heard at the end. A file and a
microphone both hand over an iterable of pieces to `hear_all`, so they are recognised alike. Reading a file is `wav`,
the engines are `pocketsphinx_engine` and `vosk_engine`, and `choose` picks one.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Protocol

from assistant.contract import Heard

RATE_HZ = 16_000
"""Samples a second that both engines' models are made for."""
BYTES_A_SAMPLE = 2
PIECE_MS = 20
"""Length of one piece; the same as a microphone hands over."""


class Recogniser(Protocol):
    """Takes sound in pieces, gives what it heard. One turn at a time: `start`, `feed` often, `finish`."""

    @property
    def name(self) -> str:
        """The engine and its model, as `rinseback check` prints it."""
        ...

    def start(self) -> None:
        """Begin a turn, forgetting what was fed before."""
        ...

    def feed(self, piece: bytes) -> None:
        """Take the next piece: 16 kHz, 16-bit little-endian, one channel."""
        ...

    def partial(self) -> str:
        """The text so far; it may still change."""
        ...

    def settle(self) -> None:
        """It has gone quiet: work out now what `finish` will give if nothing but silence follows."""
        ...

    def unsettle(self) -> None:
        """It wasn't the end: the turn goes on."""
        ...

    def spots(self, phrase: str, sound: bytes) -> bool:
        """Whether a search for nothing but this phrase finds it in the sound; False where an engine has none."""
        ...

    def finish(self) -> Heard:
        """End the turn: the text, alternatives, and each word's posterior. No words: an empty text."""
        ...


@dataclass(eq=False)
class CannotListen(Exception):
    """No recogniser can be had. One line: what is wrong, where, and what to do."""

    what: str
    where: str
    fix: str

    def __str__(self) -> str:
        return f"{self.what} ({self.where}): {self.fix}"


def pieces(sound: bytes, piece_ms: int = PIECE_MS) -> Iterator[bytes]:
    """Cut sound into pieces of the length that a microphone would hand over; the last may be shorter."""
    size = RATE_HZ * piece_ms // 1000 * BYTES_A_SAMPLE
    for begin in range(0, len(sound), size):
        yield sound[begin : begin + size]


def hear_all(recogniser: Recogniser, sound: Iterable[bytes]) -> Heard:
    """One turn from first piece to last."""
    recogniser.start()
    for piece in sound:
        recogniser.feed(piece)
    return recogniser.finish()
