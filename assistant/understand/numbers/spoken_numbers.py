"""Numbers out of words: "a hundred and five", "seven fifty", "nought point six", "two and three quarters", "1 1/2".

British and American habit alike. Gives exact fractions; what they count is read by `amounts`.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from assistant.understand.text.words import Token

ONES = {
    word: value
    for value, word in enumerate(
        [
            "zero",
            "one",
            "two",
            "three",
            "four",
            "five",
            "six",
            "seven",
            "eight",
            "nine",
            "ten",
            "eleven",
            "twelve",
            "thirteen",
            "fourteen",
            "fifteen",
            "sixteen",
            "seventeen",
            "eighteen",
            "nineteen",
        ]
    )
}
TENS = {
    word: 10 * value
    for value, word in enumerate(
        ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"], start=2
    )
} | {"fourty": 40, "fivety": 50}
ZEROS = {"zero": 0, "nought": 0, "naught": 0, "oh": 0, "o": 0, "nil": 0}
DIGITS = {word: value for word, value in ONES.items() if value < 10} | ZEROS
SIZES = {"hundred": 100, "thousand": 1000, "million": 1_000_000, "hundreds": 100}
PARTS = {
    "half": 2,
    "halves": 2,
    "third": 3,
    "thirds": 3,
    "quarter": 4,
    "quarters": 4,
    "fifths": 5,
    "eighth": 8,
    "eighths": 8,
    "tenth": 10,
    "tenths": 10,
    "hundredth": 100,
    "hundredths": 100,
}
NUMBER_WORDS = frozenset({*ONES, *TENS, *SIZES, "point", "nought", "naught", "half", "quarter", "quarters"})
"""Words that a name must not swallow."""


@dataclass(frozen=True, slots=True)
class Number:
    """A number in a text, tokens `start` up to `end`."""

    value: Fraction
    start: int
    end: int
    split: bool = False
    """ "one fifty" could be a ratio, one to fifty, as well as a hundred and fifty."""
    faulty: str = ""
    """Why it can't be taken; empty: it can."""


Words = Sequence[Token]
_LIKE_A_TEN = 13
"""From here on a number sounds like a ten: "fifteen fifty" may be a slip put right, so it stays two numbers."""


def number_at(tokens: Words, at: int) -> Number | None:
    """The number that begins at that token; None: none does."""
    sign, begin = _sign(tokens, at)
    found = _written(tokens, begin) or _spoken(tokens, begin)
    if found is None:
        return None
    return Number(sign * found.value, at, found.end, found.split, found.faulty)


def _word(tokens: Words, at: int) -> str:
    return tokens[at].text if 0 <= at < len(tokens) else ""


def _sign(tokens: Words, at: int) -> tuple[int, int]:
    if _word(tokens, at) == "minus":
        return -1, at + 1
    dash = _word(tokens, at) == "-" and at + 1 < len(tokens) and tokens[at + 1].glued and not tokens[at].glued
    return (-1, at + 1) if dash else (1, at)


# ---------------------------------------------------------------- in figures


def _written(tokens: Words, at: int) -> Number | None:
    """In figures: 12, 0.5, 1/2, 1 1/2, 2 thousand, 9**9 (which is faulty)."""
    if not _is_figure(_word(tokens, at)):
        return None
    end = _end_of_clutter(tokens, at)
    if end > at + 1:
        said = "".join(token.raw for token in tokens[at:end])
        return Number(Fraction(1), at, end, faulty=f'"{said}" is no number: write one like "0.5", "12" or "1/2"')
    value, faulty = _figure(tokens[at].text)
    end = at + 1
    following = _word(tokens, end)
    if "/" not in tokens[at].text and "/" in following and _is_figure(following) and not tokens[end].glued:
        more, faulty_too = _figure(following)
        return Number(value + more, at, end + 1, faulty=faulty or faulty_too)
    if following in ("hundred", "thousand", "million"):
        value, end = value * SIZES[following], end + 1
    return _with_part(tokens, Number(value, at, end, faulty=faulty))


def _is_figure(word: str) -> bool:
    return bool(word) and (word[0].isdecimal() or (word[0] == "." and len(word) > 1))


def _figure(text: str) -> tuple[Fraction, str]:
    if sum(letter.isdecimal() for letter in text) > 12:
        return Fraction(1), f'"{text[:20]}" has more than 12 digits: write fewer'
    top, _, under = text.partition("/")
    if under:
        if int(under) == 0:
            return Fraction(1), f'"{text}" divides by zero: write a number like "0.5" or "1/2"'
        return Fraction(int(top), int(under)), ""
    return Fraction(text), ""


def _end_of_clutter(tokens: Words, at: int) -> int:
    """Where a run of glued figures and signs ends that is no number: 9**9, 1e9, 1.2.3, 0,06."""
    end = at + 1
    while end < len(tokens) and tokens[end].glued:
        word = tokens[end].text
        sign_inside = word in ("*", "^", ",", "/", ".", "=") and end + 1 < len(tokens) and tokens[end + 1].glued
        power = word == "e" and _is_figure(_word(tokens, end + 1)) and tokens[end + 1].glued
        if not (_is_figure(word) or sign_inside or power):
            break
        end += 1
    return end


# ---------------------------------------------------------------- in words


def _spoken(tokens: Words, at: int) -> Number | None:
    word = _word(tokens, at)
    if word in ("a", "an") and _word(tokens, at + 1) in ("hundred", "thousand", "million"):
        return _with_part(tokens, _sized(tokens, at, 1, at + 1))
    if word in ("hundred", "thousand") and _word(tokens, at + 1) in _MILS:
        return _sized(tokens, at, 1, at)  # "for hundred mils"
    if word in ("a", "an", "one") or word in PARTS:
        part = _part_alone(tokens, at)
        if part is not None:
            return part
    if word == "point":
        return _decimals(tokens, at, Fraction(0), at)
    if word in ZEROS and _word(tokens, at + 1) == "point":
        return _decimals(tokens, at, Fraction(0), at + 1)
    digits = _digit_by_digit(tokens, at)
    if digits is not None:
        return digits
    small = _small(tokens, at)
    if small is None:
        return None
    value, end = small
    if _word(tokens, end) == "point":
        return _decimals(tokens, at, Fraction(value), end) or Number(Fraction(value), at, end)
    fractional = PARTS.get(_word(tokens, end), 0)
    if fractional > 2 and 0 < value < 20 and _word(tokens, end).endswith("s"):
        return Number(Fraction(value, fractional), at, end + 1)
    sized = _sized(tokens, at, value, end)
    if _word(tokens, sized.end) == "point":
        return _decimals(tokens, at, sized.value, sized.end) or sized
    return _with_part(tokens, sized)


_MILS = frozenset({"mils", "mil", "ml", "millilitres", "milliliters", "millilitre", "milliliter"})


def _small(tokens: Words, at: int) -> tuple[int, int] | None:
    """A number from 0 to 99 in words, and where it ends."""
    word = _word(tokens, at)
    if word in TENS:
        one = ONES.get(_word(tokens, at + 1), 0)
        return (TENS[word] + one, at + 2) if 0 < one < 10 else (TENS[word], at + 1)
    if word in ONES:
        return ONES[word], at + 1
    return (0, at + 1) if word in ("nought", "naught") else None


def _sized(tokens: Words, start: int, value: int, end: int) -> Number:
    """With hundreds and thousands after it: "five hundred and fifty", "seven fifty", "one oh five"."""
    split = False
    following = _word(tokens, end)
    below = _small(tokens, end)
    if following in ("hundred", "hundreds"):
        value, end = _plus_rest(tokens, value * 100, end + 1)
    elif 0 < value < _LIKE_A_TEN and below is not None and below[0] >= 10:
        split = value == 1
        value, end = value * 100 + below[0], below[1]
    elif 0 < value < 20 and following in ZEROS and 0 < DIGITS.get(_word(tokens, end + 1), 0) < 10:
        value, end = value * 100 + DIGITS[_word(tokens, end + 1)], end + 2
    if _word(tokens, end) in ("thousand", "million"):
        size = SIZES[_word(tokens, end)]
        value, end = value * size, end + 1
        begin = end + 1 if _word(tokens, end) == "and" else end
        rest = _small(tokens, begin)
        if rest is not None and _word(tokens, rest[1]) == "hundred":
            more, end = _plus_rest(tokens, rest[0] * 100, rest[1] + 1)
            value += more
        elif rest is not None:
            value, end = value + rest[0], rest[1]
    return Number(Fraction(value), start, end, split)


def _plus_rest(tokens: Words, value: int, end: int) -> tuple[int, int]:
    begin = end + 1 if _word(tokens, end) == "and" else end
    rest = _small(tokens, begin)
    if rest is None or rest[0] == 0 or _word(tokens, rest[1]) in ("point", "half"):
        return value, end
    return value + rest[0], rest[1]


def _digit_by_digit(tokens: Words, at: int) -> Number | None:
    """ "one five" is fifteen, "seven five zero" seven hundred and fifty: as numbers are said back in doubt."""
    end = at
    while _word(tokens, end) in DIGITS:
        end += 1
    count = end - at
    # "one oh five" reads the same either way; "oh" alone is a sigh, "one two thirty-two" a ratio misheard.
    if count < 2 or _word(tokens, at) in ("oh", "o") or _word(tokens, end) in TENS:
        return None
    if _word(tokens, end) in SIZES or _word(tokens, end) in PARTS or _teen(_word(tokens, end)):
        return None
    value = int("".join(str(DIGITS[tokens[place].text]) for place in range(at, end)))
    if _word(tokens, end) == "point":
        return _decimals(tokens, at, Fraction(value), end)
    return Number(Fraction(value), at, end)


def _teen(word: str) -> bool:
    return 10 <= ONES.get(word, 0) < 20


def _decimals(tokens: Words, start: int, whole: Fraction, point: int) -> Number | None:
    """What follows "point": digits one by one, or "twenty five"."""
    end = point + 1
    digits = ""
    while True:
        word = _word(tokens, end)
        if word in DIGITS:
            digits, end = digits + str(DIGITS[word]), end + 1
        elif not digits.strip("0") and (below := _small(tokens, end)) is not None:
            digits, end = digits + str(below[0]), below[1]
        elif word.isdecimal() and not digits:
            digits, end = word, end + 1
        else:
            break
    return Number(whole + Fraction(int(digits), 10 ** len(digits)), start, end) if digits else None


def _part_alone(tokens: Words, at: int) -> Number | None:
    """ "half", "a half", "a quarter", "one third"."""
    place = at if _word(tokens, at) in PARTS else at + 1
    if place > at and _word(tokens, at) not in ("a", "an", "one"):
        return None  # "three quarters" is counted, not a quarter
    word = _word(tokens, place)
    if word not in PARTS or word.endswith("s") or word == "halves":
        return None
    if place == at and word not in ("half", "quarter"):
        return None  # "third", "tenth" without an article are places in a row
    return Number(Fraction(1, PARTS[word]), at, place + 1)


def _with_part(tokens: Words, number: Number) -> Number:
    """With "and a half", "and three quarters", "and 1/2" after it."""
    end = number.end
    if _word(tokens, end) != "and":
        return number
    following = _word(tokens, end + 1)
    if "/" in following and _is_figure(following):
        more, faulty = _figure(following)
        return Number(number.value + more, number.start, end + 2, faulty=number.faulty or faulty)
    part = _part_alone(tokens, end + 1)
    if part is None and ONES.get(following, 0) and PARTS.get(_word(tokens, end + 2), 0) > 2:
        part = Number(Fraction(ONES[following], PARTS[_word(tokens, end + 2)]), end + 1, end + 3)
    if part is None or part.value >= 1:
        return number
    return Number(number.value + part.value, number.start, part.end, faulty=number.faulty)
