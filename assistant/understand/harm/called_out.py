"""A cry that was called out in the room, and not to the tool by its call word: is it one that must be answered?

Somebody with bleach in the eye doesn't think of a call word. But ordinary talk, forced into the vocabulary, comes out
as a cry some thirty times an hour. What was heard fairly well and is short came out as one once in 3.3 hours of it; of
80 cries 58 pass, and 15 under a fan 20 dB below the voice (tests/bench/recognition.md; the limits were chosen on
these). Whoever isn't heard has the call word, the key, and a second breath.
"""

from __future__ import annotations

from collections.abc import Callable

from assistant.contract import Heard, Reading
from assistant.understand.numbers.number_doubts import mean_posterior

CRIES = ("splash", "escape")
HEARD_FAIRLY = 0.7
"""Least mean posterior."""
CHANCE = 0.95
"""Least chance of the reading: what is told by rule, not by likeness."""
MOST_WORDS = 9


def called_out(heard: Heard, read: Callable[[str], Reading]) -> bool:
    """Whether it is to be answered though nobody called the tool.

    read: what a text means, with nothing said before it.
    """
    if not heard.words or len(heard.words) > MOST_WORDS or mean_posterior(heard) < HEARD_FAIRLY:
        return False
    reading = read(heard.text)
    return reading.intent in CRIES and reading.confidence >= CHANCE
