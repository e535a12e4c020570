"""Small words that stand for numbers, or numbers in an odd dress: "one in for hundred", "thirty too", "1/32", "5o".

Put right before names and amounts are looked for, and only where a number must stand: between the parts of a ratio,
behind a ten, before a unit. What was put right is a guess: a reading that rests on it says its number back and waits.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from assistant.understand.numbers.spoken_numbers import ONES, SIZES, TENS
from assistant.understand.text.patterns import Pattern
from assistant.understand.text.words import Token

_UNITS = frozenset(
    {"ml", "mil", "mils", "mls", "mills", "millilitre", "millilitres", "milliliter", "milliliters", "litre", "litres"}
    | {"liter", "liters", "gallon", "gallons", "pint", "pints", "quart", "quarts", "cup", "cups", "percent", "ppm"}
    | {"tablespoon", "tablespoons", "teaspoon", "teaspoons", "ounce", "ounces", "cc", "ccs"}
)
_PLURAL_UNITS = frozenset(unit for unit in _UNITS if unit.endswith("s")) | {"percent", "ppm"}
_JOINTS = frozenset({"in", "into", "to", "two", "too"})
_AFTER_TENS = {"to": "two", "too": "two", "for": "four", "fore": "four", "ate": "eight", "tree": "three", "sex": "six"}
_LEAST_PARTS = 9
"""Of a bare "1/32": from here on a fraction with one above is a dilution; "1/2" and "1/4" are parts of something."""


@dataclass(frozen=True, slots=True)
class PutRight:
    """Tokens with their numbers put right."""

    tokens: tuple[Token, ...]
    guessed: bool
    """A small word was taken for a number."""


def put_right(tokens: Sequence[Token]) -> PutRight:
    """A text's tokens with what only sounds like another word taken for a number."""
    out: list[Token] = []
    guessed = False
    at = 0
    while at < len(tokens):
        couple = _couple(tokens, at)
        figure = _figure(tokens, at)
        ratio = _slashed(tokens, at)
        number = _number_for(tokens, at)
        if couple:
            out.append(replace(tokens[at], text="2"))
            at += couple
        elif ratio is not None:
            out += ratio
            at += 1
        elif figure is not None:
            glued = tokens[at].glued
            text, at = figure
            out.append(Token(text, text, glued=glued))
            guessed = True
        else:
            guessed = guessed or number is not None
            out.append(tokens[at] if number is None else replace(tokens[at], text=number))
            at += 1
    return PutRight(tuple(out), guessed)


def _word(tokens: Sequence[Token], at: int) -> str:
    return tokens[at].text if 0 <= at < len(tokens) else ""


def _is_number(word: str) -> bool:
    return word in ONES or word in TENS or word in SIZES or word[:1].isdecimal()


def _number_for(tokens: Sequence[Token], at: int) -> str | None:
    """The number word that a small word stands for; None: it stands for itself."""
    word, before, after = tokens[at].text, _word(tokens, at - 1), _word(tokens, at + 1)
    if word == "won" and after in _JOINTS and _is_number(_word(tokens, at + 2)):
        return "one"
    converts = word == "to" and tokens[0].text in ("convert", "turn", "change")
    if word in _AFTER_TENS and before in TENS and not _is_number(after) and not converts:
        return _behind_ten(tokens, at)
    in_ratio = before in _JOINTS and _word(tokens, at - 2) in ("one", "1", "won")
    if word in ("for", "fore") and in_ratio and (after in SIZES or after in TENS or not after):
        return "four"
    if word in ("for", "fore") and after in _PLURAL_UNITS and not _is_number(before):
        return "four"
    return "ten" if word == "tin" and in_ratio else None


def _behind_ten(tokens: Sequence[Token], at: int) -> str | None:
    """ "Thirty too" always; "thirty to" and "thirty for" only where nothing follows that they could lead to."""
    word, after = tokens[at].text, _word(tokens, at + 1)
    if word in ("to", "for", "ate") and not (after in _UNITS or after in (".", ",", "?", "!", "for", "in", "")):
        return None
    if word == "for" and after not in _UNITS:
        return None
    return _AFTER_TENS[word]


def _couple(tokens: Sequence[Token], at: int) -> int:
    """How many tokens "a couple of" takes before a unit; 0: it isn't that."""
    article = _word(tokens, at) in ("a", "another")
    if _word(tokens, at + article) != "couple":
        return 0
    end = at + article + 1
    end += _word(tokens, end) == "of"
    return end - at if _word(tokens, end) in _UNITS else 0


def _figure(tokens: Sequence[Token], at: int) -> tuple[str, int] | None:
    """A number typed with letters or gaps in it, and where it ends; None: it is typed as it should be.

    "5o" and "o5" have letters for zeros, "l0" one for a one; "1 in 5 0" is said digit by digit. Of "1 in 3z" nobody
    knows whether it is all of the number.
    """
    end = at + 1
    while end < len(tokens) and tokens[end].glued and _OF_A_FIGURE.fullmatch(tokens[end].text):
        end += 1
    if tokens[end - 1].text == ".":
        end -= 1
    typed = "".join(token.text for token in tokens[at:end])
    if end > at + 1 and _WITH_LETTERS.fullmatch(typed):
        return typed.replace("o", "0").replace("l", "1"), end
    behind = _word(tokens, at - 1) in ("in", "to", ":") and _is_number(_word(tokens, at - 2))
    if not behind or not tokens[at].text.isdecimal():
        return None
    while end < len(tokens) and len(tokens[end].text) == 1 and tokens[end].text.isdecimal():
        end += 1
    if end > at + 1:
        return "".join(token.text for token in tokens[at:end]), end
    odd = _word(tokens, end)
    return (typed, end + 1) if odd.isalpha() and tokens[end].glued and odd not in _AFTER_A_FIGURE else None


_OF_A_FIGURE = Pattern(r"o+|l|[.]|\d+")
_WITH_LETTERS = Pattern(r"(?=\D*\d)(?=[\d.]*[ol])(?:[\do]+|l[\do]+|[\do]*[.][\do]+)")
_AFTER_A_FIGURE = _UNITS | {
    *("l", "g", "x", "h", "m", "s", "d", "w", "am", "pm", "st", "nd", "rd", "th", "c", "f", "k", "kg", "cm"),
}
"""What may follow a figure with no space between."""


def _slashed(tokens: Sequence[Token], at: int) -> list[Token] | None:
    """A bare "1/32" as "1:32", how it is meant by whoever mixes."""
    top, slash, under = tokens[at].text.partition("/")
    beside = _word(tokens, at - 1)[:1].isdecimal() or _word(tokens, at - 1) == "and"
    if top != "1" or not slash or not under.isdecimal() or int(under) < _LEAST_PARTS or beside:
        return None
    if _word(tokens, at + 1) in _UNITS or _word(tokens, at + 1) in ("of", "/", "inch"):
        return None
    part = tokens[at]
    return [replace(part, text=top, raw=top), Token(":", ":", glued=True), Token(under, under, glued=True)]
