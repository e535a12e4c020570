"""The keeper's call word: a turn counts when it begins with it, and what follows is the question.

It has to stand among the words that the recogniser heard, and to be sure: heard with a high posterior, or found as well
by a search for nothing but the call word in the same sound. The words alone would answer to chatter too often.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from difflib import SequenceMatcher

from assistant.contract import Heard
from assistant.hear.spoken_form import words_of

LEAST_SYLLABLES = 4
LOOKED_AT = 10
"""Alternatives that may hold the call word when the text doesn't."""
SURE = 0.95
"""Posterior of each of its words that needs no second search."""
LATEST = 3
"""Words that may come before it: "hey", "okay"."""
_VOWELS = re.compile(r"[aeiouy]+")


@dataclass(frozen=True)
class Called:
    """A turn that was meant for the tool."""

    heard: Heard
    """What came after the call word; an empty text: nothing yet."""
    sure: bool
    """The call word's own words were heard well; otherwise a search for it has the say."""


def called(heard: Heard, call_word: str) -> Called | None:
    """The rest of a turn that begins with the call word, in its text or in one of its alternatives; None: neither."""
    call = words_of(call_word)
    texts = (heard.text, *heard.alternatives[:LOOKED_AT])
    cut = [(text, _end_of(call, text.split())) for text in texts]
    ends = [(text, end) for text, end in cut if end is not None]
    if not call or not ends:
        return None
    rests = [" ".join(text.split()[end:]) for text, end in ends]
    first_end = ends[0][1] if ends[0][0] == heard.text else None
    others = tuple(dict.fromkeys(rest for rest in rests[1:] if rest and rest != rests[0]))
    if first_end is None:
        return Called(replace(heard, text=rests[0], alternatives=others, words=()), sure=False)
    own = heard.words[first_end - len(call) : first_end]
    sure = bool(own) and min(word.posterior for word in own) >= SURE
    rest = replace(heard, text=rests[0], alternatives=others, words=heard.words[first_end:])
    return Called(rest, sure)


def _end_of(call: tuple[str, ...], words: list[str]) -> int | None:
    for begin in range(min(LATEST, max(0, len(words) - len(call))) + 1):
        if tuple(words[begin : begin + len(call)]) == call:
            return begin + len(call)
    return None


def syllables(text: str) -> int:
    """How many syllables a name has, roughly: runs of vowels, without a silent final e."""
    return sum(_in_word(word) for word in words_of(text))


def _in_word(word: str) -> int:
    runs = len(_VOWELS.findall(word))
    silent = word.endswith("e") and not word.endswith(("le", "ee", "ie", "oe", "ye")) and runs > 1
    return max(1, runs - silent)


def unfit(call_word: str, names: tuple[str, ...]) -> str:
    """What is wrong with a call word, in one line; empty: nothing.

    names: the household's own, which it must not sound like.
    """
    if syllables(call_word) < LEAST_SYLLABLES:
        return f'"{call_word}" is a short call word; {LEAST_SYLLABLES} syllables or more are told apart better'
    alike = [name for name in names if SequenceMatcher(None, call_word.lower(), name.lower()).ratio() > 0.75]
    return f'"{call_word}" sounds like "{alike[0]}"; choose another call word' if alike else ""
