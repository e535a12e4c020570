"""Slots as the files of this folder write them: amounts and mixes as short texts."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

from assistant.contract import Faulty, SaidTime, Slots, Unknown
from assistant.core.quantities.amounts import Amount, Neat, Percent, Ppm, SaidRatio


def written(slots: Slots, field: str) -> Any:
    """One slot, as a test file writes it."""
    value = getattr(slots, field)
    return [_text(one) for one in value] if isinstance(value, tuple) else _text(value)


def _text(value: Any) -> Any:
    if isinstance(value, SaidRatio):
        joint = ":" if value.word == "colon" else f" {value.word} "
        return f"{_number(value.first)}{joint}{_number(value.second)}"
    if isinstance(value, Amount):
        return f"{_number(value.amount)} {value.unit}"
    if isinstance(value, Percent):
        return f"{_number(value.percent)} percent"
    if isinstance(value, Ppm):
        return f"{_number(value.ppm)} ppm"
    if isinstance(value, Neat):
        return "neat"
    if isinstance(value, Fraction):
        return _number(value)
    if isinstance(value, SaidTime):
        return value.at.isoformat(timespec="minutes")
    if isinstance(value, Unknown | Faulty):
        return value.said
    return value


def _number(value: Fraction) -> str:
    return (
        str(value) if value.denominator in (1, 2, 4) and value.denominator != 1 and value < 2 else f"{float(value):g}"
    )
