"""So many times an amount, or a part of one: "twice 400 mils", "two 500 mil bottles", "half of a quarter gallon".

Reckoned, never dropped: an amount without its "twice" is a wrong number. What is from one amount to another is no
amount at all, and is asked.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from assistant.core.quantities.units import dimension
from assistant.understand.numbers.spoken_numbers import Number, number_at
from assistant.understand.numbers.unit_reader import UnitReader

_TIMES = {"twice": 2, "double": 2, "triple": 3, "treble": 3, "thrice": 3, "quadruple": 4}
_DOZEN = 12
_OF_THEM = frozenset({"lots", "lot", "batches", "bottles", "jugs", "buckets", "sprayers", "fills", "loads", "sets"})
_SMALL = frozenset({"a", "an", "the", "my", "one"})
_HELD_IN = _OF_THEM | {"cups", "containers", "tubs", "sprays"}
MOST = 100
"""Times that an amount is taken at most: more is no count."""
RANGE = "that is from one amount to another: say one of them"


@dataclass(frozen=True, slots=True)
class Multiple:
    """By how much, and at which token the amount begins that is taken so many times."""

    times: Fraction
    begin: int


def multiple_at(text: UnitReader, at: int) -> Multiple | None:
    """What an amount is taken times from that token on; None: nothing of the kind, or no amount follows."""
    found = _times_at(text, at)
    if found is None:
        return None
    times, begin = found
    if text.word(begin) in _SMALL and number_at(text.tokens, begin + 1) is not None:
        begin += 1  # "half of a 500 mil bottle"
    return Multiple(times, begin)


def _times_at(text: UnitReader, at: int) -> tuple[Fraction, int] | None:
    word = text.word(at)
    if word in _TIMES:
        return Fraction(_TIMES[word]), at + 1
    if word in ("a", "one") and text.word(at + 1) == "dozen":
        return Fraction(_DOZEN), at + 2
    if word == "dozen":
        return Fraction(_DOZEN), at + 1
    number = number_at(text.tokens, at)
    if number is None or number.faulty or not 0 < number.value <= MOST:
        return None
    return _dozens(text, number) or _counted(text, number) or _part_of(text, number)


def _dozens(text: UnitReader, number: Number) -> tuple[Fraction, int] | None:
    """ "Half a dozen", "two dozen"."""
    end = number.end + (text.word(number.end) == "a")
    return (number.value * _DOZEN, end + 1) if text.word(end) == "dozen" else None


def _counted(text: UnitReader, number: Number) -> tuple[Fraction, int] | None:
    """ "Three times", "3 x", "three lots of", and "two" where bottles of a size follow."""
    end = number.end
    if number.value.denominator != 1:
        return None
    if text.word(end) in ("times", "x", "*"):
        return number.value, end + 1
    if text.word(end) in _OF_THEM and text.word(end + 1) == "of":
        return number.value, end + 2
    size = number_at(text.tokens, end)
    unit = text.unit(size.end + (text.word(size.end) == "-")) if size is not None else None
    held = unit is not None and dimension(unit[0]) == "volume" and text.word(unit[1]) in _HELD_IN
    return (number.value, end) if held and number.value > 1 else None


def _part_of(text: UnitReader, number: Number) -> tuple[Fraction, int] | None:
    """ "Half of", "two thirds of", "half a" where an amount of its own follows."""
    if number.value >= 1:
        return None
    if text.word(number.end) == "of":
        return number.value, number.end + 1
    return (number.value, number.end) if number.value == Fraction(1, 2) else None


def is_range(text: UnitReader, first: Number) -> int | None:
    """Where "one to two litres", "500 or 600 mils" ends; None: it is none."""
    end = first.end
    between = text.word(first.start - 1) == "between"
    if text.word(end) not in (("and", "to") if between else ("to", "or", "-")) or text.word(first.start - 1) == "from":
        return None
    second = number_at(text.tokens, end + 1)
    if second is None or second.faulty or first.value >= second.value:
        return None
    unit = text.unit(second.end)
    return unit[1] if unit is not None and dimension(unit[0]) == "volume" else None
