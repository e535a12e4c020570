"""Recipes: so much to so much, "one ounce to the gallon", "20 mils of bleach per litre of water"."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from assistant.core.quantities.amounts import Amount, RatioWord, SaidRatio
from assistant.core.quantities.quantity import Gallon
from assistant.core.quantities.units import convert, dimension
from assistant.understand.numbers.spoken_numbers import number_at
from assistant.understand.numbers.unit_reader import UnitReader
from assistant.understand.numbers.unit_words import HOLDERS, SYSTEM_WORDS
from assistant.understand.text.words import SIGNS


@dataclass(frozen=True, slots=True)
class Part:
    """A volume that may be the concentrate of a recipe."""

    amount: Amount
    unit_at: int
    end: int


@dataclass(frozen=True, slots=True)
class _Whole:
    """What a recipe's concentrate goes to."""

    word: RatioWord
    count: Fraction
    unit_at: int
    end: int


_ONE = ("the", "a", "an", "one", "1")
_LONGEST_PRODUCT = 6
"""Words from a recipe's part to its whole: "an ounce of the pink concentrate to the gallon"."""


def recipe_of(text: UnitReader, part: Part) -> tuple[SaidRatio, int] | None:
    """ "One ounce to the gallon", "20 mils of bleach per litre of water": so much to so much; None: it is none.

    Added to water it is "to"; "in a gallon" is in all; "per gallon" could be either, as a colon.
    """
    if dimension(part.amount.unit) != "volume":
        return None
    for at in range(part.end, min(part.end + _LONGEST_PRODUCT, len(text.words))):
        whole = _whole_of_recipe(text, at, straight=at == part.end)
        if whole is not None:
            return _as_recipe(text, part, whole)
        if text.words[at] in SIGNS or number_at(text.tokens, at) is not None:
            return None
    return None


def _whole_of_recipe(text: UnitReader, at: int, straight: bool) -> _Whole | None:
    """ "to the gallon", from that word on; `straight`: it stands right behind the part's unit."""
    joint = _recipe_joint(text, at, straight)
    if joint is None:
        return None
    word, begin, counted = joint
    number = number_at(text.tokens, begin) if counted else None
    if number is not None and (number.faulty or number.value <= 0):
        return None
    unit_at = number.end if number is not None else begin
    unit = text.unit(unit_at)
    if unit is None or dimension(unit[0]) != "volume" or text.word(unit[1]) in HOLDERS:
        return None
    return _Whole(word, number.value if number is not None else Fraction(1), unit_at, unit[1])


def _recipe_joint(text: UnitReader, at: int, straight: bool) -> tuple[RatioWord, int, bool] | None:
    """What stands between, where the rest begins, and whether a number may follow."""
    word, after, then = text.word(at), text.word(at + 1), text.word(at + 2)
    if word in ("per", "/"):
        return "colon", at + 1 + (after in ("a", "an", "each", "every")), True
    if word in ("to", "for", "in") and after in ("each", "every"):
        return "in" if word == "in" else "to", at + 2, True
    if word in ("to", "in", "into") and after in _ONE:
        return "to" if word == "to" else "in", at + 2, False
    if (word, after) == ("to", "make") and then in _ONE:
        return "in", at + 3, False
    if word in ("makes", "make") and after in _ONE:
        return "in", at + 2, False
    if straight and word in ("a", "an", "each", "every"):
        return "colon", at + 1, False
    if straight and word.isalpha() and word not in ("cup", "cups") and text.unit(at) is not None:
        # "a 50 mil cup" is a cup of that size
        return "colon", at, False  # "oz/gal"
    return None


def _as_recipe(text: UnitReader, part: Part, whole: _Whole) -> tuple[SaidRatio, int] | None:
    """The two as a ratio in the part's unit; where only one of them names its system, the other follows it."""
    systems = [_system(text, part.unit_at, part.end), _system(text, whole.unit_at, whole.end)]
    gallon = systems[0] or systems[1]
    ours, theirs = text.unit(part.unit_at, gallon=gallon), text.unit(whole.unit_at, gallon=gallon)
    if ours is None or theirs is None:
        return None
    end, word = whole.end, whole.word
    if text.words[end : end + 2] == ["of", "water"] or text.word(end) == "water":
        word, end = "to", end + 1 + (text.word(end) == "of")
    elif text.words[end : end + 2] in (["in", "all"], ["in", "total"]):
        word, end = "in", end + 2
    into, amount = Amount(whole.count, theirs[0]), Amount(part.amount.amount, ours[0])
    second = convert(into, amount.unit).amount
    if word == "in" and second < amount.amount:
        return None
    return SaidRatio(amount.amount, second, word, amount, into), end


def _system(text: UnitReader, start: int, end: int) -> Gallon | None:
    return next((SYSTEM_WORDS[word] for word in text.words[start:end] if word in SYSTEM_WORDS), None)
