"""How much ready mix a thing needs: an enclosure's inside surface that is sprayed, or a tub that is filled.

What keeps a surface wet, and for how long, is `drying`'s.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from math import ceil
from typing import Literal, TypeAlias

from assistant.core.facts import Facts
from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.errors import OutOfRange
from assistant.core.quantities.units import convert

Inside: TypeAlias = Literal["floor", "walls", "floor and walls", "all sides"]

FILM = "mixing-film"


@dataclass(frozen=True, slots=True)
class Box:
    """Inside measures of an enclosure or tub; lengths above 0."""

    length: Amount
    width: Amount
    height: Amount


def inside_area(box: Box, inside: Inside = "floor and walls") -> Amount:
    """The inside surface to be wetted.

    inside: floor and four walls, unless the keeper says otherwise.
    Gives: m^2, exact.
    Fails: OutOfRange if a side isn't above 0; WrongUnit if one is no length.
    Source: arithmetic.

    >>> side = Amount(Fraction(1), "m")
    >>> inside_area(Box(side, side, side))
    Amount(amount=Fraction(5, 1), unit='m^2')
    """
    length, width, height = _metres(box)
    floor, walls = length * width, 2 * height * (length + width)
    area = {"floor": floor, "walls": walls, "floor and walls": floor + walls, "all sides": 2 * floor + walls}[inside]
    return Amount(area, "m^2")


def filled(box: Box) -> Amount:
    """What a tub takes when it is filled to that height.

    Gives: L, exact.
    Fails: as `inside_area`.
    Source: arithmetic.

    >>> side = Amount(Fraction(10), "cm")
    >>> filled(Box(side, side, side))
    Amount(amount=Fraction(1, 1), unit='L')
    """
    length, width, height = _metres(box)
    return Amount(length * width * height * 1000, "L")


def spray_for(area: Amount, facts: Facts) -> Amount:
    """The ready mix that wets a smooth surface through, once.

    area: m^2, above 0.
    Gives: mL, by the upper end of what such a surface holds, so that it doesn't run short.
    Source: mixing-film (common practice).
    """
    most = Fraction(str(facts[FILM].value[1]))
    return Amount(convert(area, "m^2").amount * most, "mL")


def stroke_of(caught: Amount, strokes: Fraction) -> Amount:
    """What one stroke of a trigger lays down, from some strokes caught in a measure.

    caught: a volume above 0; strokes: above 0.
    Gives: mL, exact.
    Fails: OutOfRange, WrongUnit.
    Source: arithmetic; the way to do it: mixing-stroke-count.

    >>> stroke_of(Amount(Fraction(18), "mL"), Fraction(20))
    Amount(amount=Fraction(9, 10), unit='mL')
    """
    if caught.amount <= 0 or strokes <= 0:
        raise OutOfRange("what was caught, and the strokes", min(caught.amount, strokes), "more than 0")
    return Amount(convert(caught, "mL").amount / strokes, "mL")


def fills_of(solution: Amount, capacity: Amount) -> int:
    """How often a bottle is filled for so much, the last one perhaps in part.

    Source: arithmetic.
    """
    return ceil(convert(solution, "mL").amount / convert(capacity, "mL").amount)


def _metres(box: Box) -> tuple[Fraction, Fraction, Fraction]:
    sides = [convert(side, "m").amount for side in (box.length, box.width, box.height)]
    if min(sides) <= 0:
        raise OutOfRange("a side", min(sides), "more than 0")
    return sides[0], sides[1], sides[2]
