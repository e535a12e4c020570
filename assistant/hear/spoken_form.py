"""Written text as it is said: numbers and signs as words, small letters, no punctuation.

The recogniser hears words only, so names like "tub 2" and phrasings like "1 in 32" are spelled out for its vocabulary.
Reading numbers back out of words belongs to `understand`.
"""

from __future__ import annotations

import re

ONES = (
    *("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"),
    *("thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"),
)
TENS = ("", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")

_SIGNS = {
    "%": " percent ",
    "ml": " mils ",
    "°c": " degrees ",
    "&": " and ",
    "+": " plus ",
    "½": " a half ",
    "¼": " a quarter ",
    "¾": " three quarters ",
}
_SIGN = re.compile(r"%|°c|[&+½¼¾]|(?<![a-z])ml(?![a-z])")
_RATIO = re.compile(r"(?<=\d):(?=\d)")
_NUMBER = re.compile(r"\d+(?:\.\d+)?")
_WORD = re.compile(r"[^\W\d_]+(?:'[^\W\d_]+)*")


def words_of(text: str) -> tuple[str, ...]:
    """The words of a text as one would say it: "Tub 2, 1:32" gives tub two one to thirty two."""
    text = text.casefold().replace("’", "'")
    text = _RATIO.sub(" to ", text)
    text = _SIGN.sub(lambda sign: _SIGNS[sign[0]], text)
    text = _NUMBER.sub(lambda number: f" {_said(number[0])} ", text)
    return tuple(_WORD.findall(text))


def number_words(number: int) -> str:
    """A whole number below a million, without "and": 750 gives seven hundred fifty."""
    if number < 20:
        return ONES[number]
    if number < 100:
        return f"{TENS[number // 10]} {ONES[number % 10]}" if number % 10 else TENS[number // 10]
    size, name = (100, "hundred") if number < 1000 else (1000, "thousand")
    head, rest = f"{number_words(number // size)} {name}", number % size
    return f"{head} {number_words(rest)}" if rest else head


def _said(digits: str) -> str:
    whole, _, decimals = digits.partition(".")
    said = number_words(int(whole)) if len(whole) <= 6 else " ".join(ONES[int(digit)] for digit in whole)
    return f"{said} point {' '.join(ONES[int(digit)] for digit in decimals)}" if decimals else said
