"""Very short answers and commands that came out misspelt or misheard: "yess", "hlep", "on do that".

A text of a few words counts only when, mended, it is a phrasing word for word: a slip never makes a yes of half a
sentence. Words that are known stay as they are; "know" is a no only where something was asked.
"""

from __future__ import annotations

from collections.abc import Container, Mapping, Sequence

from rapidfuzz.distance import OSA

from assistant.understand.text.patterns import Pattern

LONGEST = 5
"""Words of a text that is looked at."""
_ANCHORS = ("help", "undo", "next", "repeat", "status", "again", "what", "yes", "yeah", "nope", "please", "pardon")
_HEARD_AS = (
    (("on", "do"), ("undo",)),
    (("un", "do"), ("undo",)),
    (("undue",), ("undo",)),
    (("stay", "tus"), ("status",)),
    (("state", "us"), ("status",)),
    (("cane",), ("can",)),
    (("ewe",), ("you",)),
    (("yew",), ("you",)),
    (("necks",), ("next",)),
    (("knecks",), ("next",)),
    (("hell", "p"), ("help",)),
    (("knope",), ("no",)),
    (("dohnt",), ("do", "not")),
    (("rite",), ("right",)),
)
_RUN = Pattern(r"(.)\1{2,}")
_SHORTEST = 4


def mended(words: Sequence[str], known: Container[str], asked: bool) -> tuple[str, ...]:
    """A short text with slips put right; as it was when it holds none.

    words: as matched. asked: something waits for a yes or a no.
    """
    if not 0 < len(words) <= LONGEST:
        return tuple(words)
    said = list(words)
    for heard, meant in _HEARD_AS:
        for at in range(len(said) - len(heard) + 1):
            if tuple(said[at : at + len(heard)]) == heard:
                said[at : at + len(heard)] = meant
    if asked and set(said) <= {"know", "no", "now"} and "know" in said:
        return ("no",)
    return tuple(_word(word, known) for word in said)


def _word(word: str, known: Container[str]) -> str:
    if word in known or not word.isalpha():
        return word
    short = _RUN.sub(r"\1", word)
    if short != word and (short in known or short in _ANCHORS):
        return short
    if len(word) < _SHORTEST and word != "nxt":
        return word
    nearest = [anchor for anchor in _ANCHORS if word[:1] in anchor[:2] and OSA.distance(word, anchor) == 1]
    return nearest[0] if nearest else word


def told_apart(texts: Mapping[str, str], words: Sequence[str], known: Container[str], asked: bool) -> str | None:
    """The question that a short text is, once its slips are mended; None: it holds no slip, or is still none.

    texts: phrasings of the short questions, word for word, and their question.
    """
    said = mended(words, known, asked)
    return texts.get(" ".join(said)) if said != tuple(words) else None
