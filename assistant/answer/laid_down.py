"""What the keeper says is sprayed on each square metre or square foot, in place of the figure of the trade."""

from __future__ import annotations

from fractions import Fraction

from assistant.contract import Slots
from assistant.core.household import Bottle
from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.units import convert, in_ml

LAID_DOWN = "laid down"


def ml_a_square_metre(slots: Slots, bottle: Bottle | None) -> Fraction | None:
    """As said, in a volume or in strokes of that bottle's own; None: nothing was said, or its stroke isn't known."""
    if slots.setting is None or slots.setting[0] != LAID_DOWN:
        return None
    if slots.strokes is not None:
        stroke = bottle.ml_a_stroke if bottle is not None else None
        return strokes_a_square_metre(slots) * Fraction(str(stroke)) if stroke else None
    return in_ml(slots.volumes[0]) / _square_metres(slots) if len(slots.volumes) == 1 else None


def strokes_a_square_metre(slots: Slots) -> Fraction:
    """As said of each square metre or foot; 0 where no strokes were said."""
    return (slots.strokes or Fraction(0)) / _square_metres(slots)


def _square_metres(slots: Slots) -> Fraction:
    """Of the square that an amount was said of."""
    side = slots.setting[1] if slots.setting is not None else "m"
    return convert(Amount(Fraction(1), side), "m").amount ** 2


def is_said_by_area(slots: Slots) -> bool:
    """Whether an amount was said of each square metre or foot."""
    return slots.setting is not None and slots.setting[0] == LAID_DOWN
