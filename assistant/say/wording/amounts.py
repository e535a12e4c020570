"""Numbers and amounts in words and on the screen: as many digits as a tool or an ear can tell, never an exponent."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from math import floor, log10

from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.units import convert, spoken

SAID, SHOWN = 3, 4
"""Significant figures of an amount that no tool rounds."""

LARGER: Mapping[str, tuple[int, str]] = {"mL": (1000, "L"), "US fl oz": (128, "US gal"), "imp fl oz": (160, "imp gal")}
"""From how many of a unit on an amount is given in the larger one: a whole one of it."""

SIMPLE: Mapping[Fraction, str] = {
    Fraction(1, 4): "a quarter of {a} {unit}",
    Fraction(1, 3): "a third of {a} {unit}",
    Fraction(1, 2): "half {a} {unit}",
    Fraction(2, 3): "two thirds of {a} {unit}",
    Fraction(3, 4): "three quarters of {a} {unit}",
}


def number(value: Fraction) -> str:
    """As said or marked: every digit if there are few, else rounded to what a tool or an ear can tell."""
    exact = f"{float(value):.10f}".rstrip("0").rstrip(".")
    return exact if len(exact.replace(".", "").lstrip("0")) <= 6 else rounded(value, SHOWN)


def rounded(value: Fraction, figures: int = SAID) -> str:
    """To so many significant figures, whole numbers whole."""
    if value == 0:
        return "0"
    places = max(0, figures - 1 - floor(log10(abs(value))))
    text = f"{float(value):.{places}f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


def said_whole(amount: Amount) -> str:
    """An amount that the keeper gave: "500 mils", "half a litre", "1.5 US gallons"."""
    if amount.amount in SIMPLE and amount.unit != "mL":
        unit = spoken(amount.unit, 1)
        return SIMPLE[amount.amount].format(a="an" if unit.startswith("imperial") else "a", unit=unit)
    if amount.unit == "L" and amount.amount < 1:
        return said_whole(convert(amount, "mL"))
    return f"{number(amount.amount)} {spoken(amount.unit, amount.amount)}"


def said_mark(amount: Amount) -> str:
    """What a tool's marks come to: "15.2 mils", "2 litres"."""
    amount = in_larger(amount)
    return f"{number(amount.amount)} {spoken(amount.unit, amount.amount)}"


def said_unmeasured(amount: Amount) -> str:
    """An amount that no tool rounds: three figures, and mils where it is less than an ounce."""
    small = amount.unit in ("US fl oz", "imp fl oz") and amount.amount < 1
    amount = convert(amount, "mL") if small else in_larger(amount)
    figures = rounded(amount.amount)
    return f"{figures} {spoken(amount.unit, Fraction(figures))}"


def shown(amount: Amount) -> str:
    """ "15.15 mL": four figures."""
    return f"{rounded(amount.amount, SHOWN)} {amount.unit}"


def shown_part(amount: Amount, total: Amount) -> str:
    """A part of a total, in its larger unit once there is a whole one of it; what is not metric in mL or L as well."""
    part = amount if total.unit == amount.unit else in_larger(amount)
    if amount.unit == "mL":
        return shown(part)
    return f"{shown(part)} ({shown(in_larger(convert(amount, 'mL')))})"


def in_larger(amount: Amount) -> Amount:
    """The same in the larger unit where it makes at least one of it."""
    if amount.unit not in LARGER or amount.amount < LARGER[amount.unit][0]:
        return amount  # and nothing is converted, which would import pint
    return convert(amount, LARGER[amount.unit][1])
