"""How a word sounds, roughly, so that one spelled by ear is found: "nekst", "rong", "pawse", "torking".

Of a word's vowels only their places count, and an r that many don't speak counts as one: "talking" and "torking" are
alike, and so are "farst" and "fast". What is alike need not be the same word; whoever asks compares the letters too.
"""

from __future__ import annotations

import re
from functools import lru_cache

_SPELLED = tuple(
    (re.compile(pattern), sound)
    for pattern, sound in (
        (r"^(?:wr)", "r"),
        (r"^(?:kn|gn|pn)", "n"),
        (r"^wh(?=o)", "h"),
        (r"wh", "w"),
        (r"^rh", "r"),
        (r"ch(?=[lr])", "k"),
        (r"ph|gh(?=t?$)(?<=u..)", "f"),
        (r"gh(?=t)", ""),
        (r"tch", "ch"),
        (r"(?:ti|ci|si|ssi)(?=on)", "sh"),
        (r"x", "ks"),
        (r"qu", "kw"),
        (r"c(?=[eiy])", "s"),
        (r"c(?!h)|ck", "k"),
        (r"z", "s"),
        (r"(?<=[dn])g(?=[eiy])|dge?", "j"),
        (r"(?<=[bcdfgkpstz])le(?=s?$)", "al"),
        (r"mb$", "m"),
        (r"(?<=[a-z])al(?=[km])", "a"),
        (r"e(?=s?$)(?<=[^aeiou]e)", ""),
        (r"(.)\1+", r"\1"),
        (r"[aeiouy]+[wh]?r?(?![aeiouy])|[aeiouy]+", "a"),
    )
)


@lru_cache(maxsize=8000)
def sound_of(word: str) -> str:
    """A mark that words which sound alike share. word: in small letters.

    >>> sound_of("nekst") == sound_of("next"), sound_of("pawse") == sound_of("pause"), sound_of("rong")
    (True, True, 'rang')
    """
    for pattern, sound in _SPELLED:
        word = pattern.sub(sound, word)
    return word


def sound_alike(one: str, other: str) -> bool:
    """Whether two names sound the same, however they are split into words."""
    first, second = ("".join(map(sound_of, name.split())) for name in (one, other))
    return first == second
