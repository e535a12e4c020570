"""Sides of a thing: "90 by 45 by 45 cm"."""

from __future__ import annotations

from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.quantity import TOO_MUCH
from assistant.core.quantities.units import dimension
from assistant.understand.numbers.spoken_numbers import Number, number_at
from assistant.understand.numbers.unit_reader import UnitReader


def sides_from(text: UnitReader, first: Number) -> list[tuple[Amount, int, int]]:
    """Each side with its tokens, from and up to; none where there is no second one, or no unit of length at the end."""
    numbers, units, at = [first], [_length_unit(text, first.end)], first.end
    while len(numbers) < 3:
        at = units[-1][1] if units[-1] is not None else numbers[-1].end
        following = number_at(text.tokens, at + 1) if text.word(at) in ("by", "x", "times") else None
        if following is None or following.faulty:
            break
        numbers.append(following)
        units.append(_length_unit(text, following.end))
    last = units[-1]
    sane = all(0 < number.value < TOO_MUCH for number in numbers)
    if len(numbers) < 2 or last is None or not sane:
        return []
    named = [unit or (last[0], number.end) for number, unit in zip(numbers, units, strict=True)]
    return [(Amount(number.value, unit), number.start, end) for number, (unit, end) in zip(numbers, named, strict=True)]


def _length_unit(text: UnitReader, at: int) -> tuple[str, int] | None:
    unit = text.unit(at)
    return unit if unit is not None and dimension(unit[0]) == "length" else None
