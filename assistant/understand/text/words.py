"""Text as words: what was typed or heard, evened out so that every later reading sees the same thing.

Here belong letters, signs, contractions and the split into words. What the words mean is read by the other modules.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from assistant.understand.text.short_for import SHORT_FOR


@dataclass(frozen=True, slots=True)
class Token:
    """One word, number or sign."""

    text: str
    """In small letters, contractions opened: "haven't" gives have and not."""
    raw: str
    """As typed; the case of a unit counts."""
    glued: bool = False
    """Nothing stood between it and the one before."""


_SIGNS = str.maketrans(
    {
        "’": "'",
        "‘": "'",
        "`": "'",
        "–": "-",
        "—": "-",
        "−": "-",
        "½": " 1/2 ",
        "¼": " 1/4 ",
        "¾": " 3/4 ",
        "⅓": " 1/3 ",
        "⅔": " 2/3 ",
        "⅛": " 1/8 ",
        "°": " degrees ",
        "%": " percent ",
        "\u2009": " ",
        "\u202f": " ",
        "\xa0": " ",
    }
)

_TOKEN = re.compile(
    r"(?P<slot>\{\w+\})"
    r"|(?P<number>\d{1,3}(?:,\d{3})+(?:\.\d+)?(?![\d,])|\d+/\d+|\d*\.\d+|\d+)"
    r"|(?P<unit>(?:cm|m|ft)(?:\^3|³|3(?!\d)))"
    r"|(?P<word>[^\W\d_]+(?:'[^\W\d_]+)*)"
    r"|(?P<ending>'s\b)"
    r"|(?P<sign>[:+?!.,;*^=/&-])"
)
_BETWEEN_WORDS = re.compile(r"(?<=[^\W\d_])[-/](?=[^\W\d_])")

_HAD = re.compile(r"'d (?=(?:(?:not|never|just|already) )*(?:had|been|got|gone|done)\b)", re.IGNORECASE)
""" "It'd not had its time" """
_TOO = re.compile(r"\bto (?=(?:early|soon|strong|weak)\b)", re.IGNORECASE)
""" "It dried to early" """
_INTO = re.compile(r"\bin to (?=(?:the|my|a|that|this|each|every)\b)", re.IGNORECASE)
""" "Poured it in to the clear bottle"."""
_AS_MANY = re.compile(r"\s*=\s*\?\s*([A-Za-z]+)")
""" "1 tsp = ? ml"."""
_SPOONS = re.compile(r"\b(table|tea|tee)[ -]spoon", re.IGNORECASE)
"""Measures that are written in two words."""
_ENDINGS = {"re": "are", "ve": "have", "ll": "will", "d": "would", "m": "am"}
_OPEN_S = frozenset({"he", "she", "it", "that", "there", "what", "where", "how", "who", "here", "when", "everything"})


def tokens_of(text: str) -> tuple[Token, ...]:
    """The words, numbers and signs of a text, in order."""
    text = _HAD.sub(" had ", text.translate(_SIGNS))
    text = _INTO.sub("into ", _AS_MANY.sub(r" is how many \1", _TOO.sub("too ", text)))
    plain = _SPOONS.sub(r"\1spoon", _BETWEEN_WORDS.sub(" ", text)).replace("teespoon", "teaspoon")
    found: list[Token] = []
    end = -1
    for match in _TOKEN.finditer(plain):
        raw = match.group()
        glued = match.start() == end
        end = match.end()
        if match.lastgroup == "word" or raw == "&":
            for place, word in enumerate(_opened(raw.lower())):
                found.append(Token(word, raw, glued and not place))
        else:
            found.append(Token(raw.replace(",", "") if match.lastgroup == "number" else raw.lower(), raw, glued))
    return tuple(found)


def _opened(word: str) -> tuple[str, ...]:
    """A word with its contraction opened: "she's" gives she and is, "tub's" gives tub and 's."""
    if word in SHORT_FOR:
        return tuple(SHORT_FOR[word].split())
    head, apostrophe, tail = word.rpartition("'")
    if not apostrophe or not head:
        return (word.strip("'"),)
    if tail == "t" and head.endswith("n"):
        return (*_opened(head[:-1]), "not")
    if tail == "s":
        return (head, "is") if head in _OPEN_S else (head, "'s")
    if tail in _ENDINGS:
        return (head, _ENDINGS[tail])
    return (word,)


SIGNS = frozenset(":+?!.,;*^=/-")

FILLERS = frozenset(
    {
        "um",
        "uh",
        "ugh",
        "phew",
        "er",
        "erm",
        "hmm",
        "mm",
        "ah",
        "please",
        "thanks",
        "hey",
        "like",
        "actually",
        "basically",
    }
)
"""Words that carry nothing; left out before a question is matched."""

OPENERS = frozenset({"ok", "right", "so", "well", "now", "and", "oh"})
"""Words that only open a sentence; alone they may be a "yes"."""

ARTICLES = frozenset({"the", "a", "an", "my", "our", "this", "that", "these", "those", "some"})
"""Words before a name that don't belong to it."""
