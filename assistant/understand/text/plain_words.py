"""The first word of a text that isn't known to leave what it tells as it is: a step done, a fill as usual.

Each rule has its own list of such words, and its own phrases that change nothing; names and amounts never do.
"""

from __future__ import annotations

from collections.abc import Container

from assistant.understand.text.known_words import words_of
from assistant.understand.text.patterns import Pattern

_NAMED = words_of("ENCLOSURE ANIMAL BOTTLE AGENT STOCK MEASURE MIX VOLUME NUMBER TEMPERATURE DURATION WHEN")
_WORD = Pattern(r"[A-Za-z']+")


def first_beside(text: str, plain: Container[str]) -> str | None:
    """The first word that may make it another thing than it seems; None: there is none.

    text: masked. plain: words that change nothing.
    """
    return next((word for word in _WORD.findall(text) if word not in plain and word not in _NAMED), None)
