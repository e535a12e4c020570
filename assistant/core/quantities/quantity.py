"""A written quantity: one number and one unit, as keeping.toml holds it.

Our own pattern and our own list of spellings; pint's expression parser never sees the keeper's text (it reads "1 in 32"
as inches and "16 fl oz" as femtolitres). Reading amounts out of speech and sentences is `understand`'s; sizes of units
and their conversion are `units`'.
"""

from __future__ import annotations

import re
from fractions import Fraction
from typing import Literal

from assistant.core.quantities.amounts import Amount, Mix, Neat, Percent, Ppm, RatioWord, SaidRatio

Gallon = Literal["US", "imperial"]

MOST_DIGITS = 12
TOO_MUCH = 10**6


class BadQuantity(ValueError):
    """A quantity that can't be taken: what was given, why not, and what to write instead."""

    def __init__(self, given: str, why: str, fix: str) -> None:
        super().__init__(f"{why}; {fix}")
        self.given = given
        self.why = why
        self.fix = fix


# Each canonical unit with the ways to write it. Letters' case counts only where the table of refused spellings says so.
_SPELLINGS: dict[str, tuple[str, ...]] = {
    "mL": ("ml", "mil", "mils", "millilitre", "millilitres", "milliliter", "milliliters", "cc"),
    "cL": ("cl", "centilitre", "centilitres", "centiliter", "centiliters"),
    "dL": ("dl", "decilitre", "decilitres", "deciliter", "deciliters"),
    "L": ("l", "litre", "litres", "liter", "liters"),
    "cm^3": ("cm^3", "cm3", "cm³"),
    "m^3": ("m^3", "m3", "m³", "cubic metre", "cubic metres", "cubic meter", "cubic meters"),
    "ft^3": ("ft^3", "ft3", "ft³", "cubic foot", "cubic feet"),
    "tsp": ("tsp", "teaspoon", "teaspoons"),
    "tbsp": ("tbsp", "tablespoon", "tablespoons"),
    "US gal": ("us gal", "us gallon", "us gallons"),
    "US qt": ("us qt", "us quart", "us quarts"),
    "US pt": ("us pt", "us pint", "us pints"),
    "US cup": ("us cup", "us cups", "cup", "cups"),
    "US fl oz": ("us fl oz", "us fluid ounce", "us fluid ounces"),
    "imp gal": ("imp gal", "imperial gal", "imp gallon", "imperial gallon", "imperial gallons"),
    "imp qt": ("imp qt", "imperial quart", "imperial quarts"),
    "imp pt": ("imp pt", "imperial pint", "imperial pints"),
    "imp fl oz": ("imp fl oz", "imperial fl oz", "imperial fluid ounce", "imperial fluid ounces"),
    "mm": ("mm", "millimetre", "millimetres", "millimeter", "millimeters"),
    "cm": ("cm", "centimetre", "centimetres", "centimeter", "centimeters"),
    "m": ("m", "metre", "metres", "meter", "meters"),
    "in": ("in", "inch", "inches"),
    "ft": ("ft", "foot", "feet"),
    "degC": ("degc", "deg c", "°c", "celsius", "degrees celsius", "c"),
    "degF": ("degf", "deg f", "°f", "fahrenheit", "degrees fahrenheit", "f"),
    "s": ("s", "sec", "second", "seconds"),
    "min": ("min", "mins", "minute", "minutes"),
    "h": ("h", "hr", "hour", "hours"),
    "d": ("d", "day", "days"),
    "week": ("wk", "week", "weeks"),
    "%": ("%", "percent", "per cent"),
    "ppm": ("ppm", "parts per million", "mg/l"),
}

# Units whose size depends on the keeper's gallon, by the canonical name's second half.
_BY_GALLON: dict[str, tuple[str, ...]] = {
    "gal": ("gal", "gallon", "gallons"),
    "qt": ("qt", "quart", "quarts"),
    "pt": ("pt", "pint", "pints"),
    "fl oz": ("fl oz", "floz", "fluid ounce", "fluid ounces"),
}

# Spellings that mean something else than was likely meant.
_REFUSED: dict[str, str] = {
    "ML": '"ML" is megalitres: write "mL" for millilitres',
    "Ml": '"Ml" is megalitres: write "mL" for millilitres',
    "T": '"T" could be a tonne or a tablespoon: write "tbsp" for tablespoons or "tsp" for teaspoons',
    "t": '"t" could be a tonne or a teaspoon: write "tsp" for teaspoons or "tbsp" for tablespoons',
    "oz": '"oz" could be weight or volume: write "fl oz" for a volume',
}

_UNIT_OF: dict[str, str] = {spelling: unit for unit, spellings in _SPELLINGS.items() for spelling in spellings}
_SYSTEM_UNIT_OF: dict[str, str] = {spelling: unit for unit, spellings in _BY_GALLON.items() for spelling in spellings}

_NUMBER = re.compile(
    r"(?P<sign>-?)(?:(?P<whole>\d+) +)?(?P<top>\d+)/(?P<under>\d+)|(?P<minus>-?)(?P<decimal>\d*\.?\d+)"
)
_RATIO = re.compile(r"(\S+)(?:\s+(in|to)\s+|\s*(:)\s*)(\S+)", re.IGNORECASE)


def read_number(text: str) -> Fraction:
    """One decimal or simple fraction, exact: "0.5", "1/2", "1 1/2", "-3".

    Fails: BadQuantity if it is anything else or has over 12 digits.
    """
    found = _NUMBER.fullmatch(text.strip())
    if found is None:
        raise BadQuantity(text, f'"{_short(text)}" is no number', 'write one like "0.5", "12" or "1/2"')
    if sum(letter.isdigit() for letter in text) > MOST_DIGITS:
        raise BadQuantity(text, f'"{_short(text)}" has more than {MOST_DIGITS} digits', "write fewer digits")
    if found["decimal"]:
        value, minus = Fraction(found["decimal"]), found["minus"]
    else:
        if int(found["under"]) == 0:
            raise BadQuantity(text, f'"{_short(text)}" divides by zero', 'write a number like "0.5" or "1/2"')
        value, minus = int(found["whole"] or 0) + Fraction(int(found["top"]), int(found["under"])), found["sign"]
    return -value if minus else value


def read_amount(text: str, gallon: Gallon = "US") -> Amount:
    """One number and one unit: "500 mL", "1/2 US gal", "22 degC".

    gallon: which gallon, quart, pint and fluid ounce are meant when unsaid.
    Fails: BadQuantity if there is no number or no unit from the list, or the size isn't above 0 and below a million
    (temperatures may be zero or negative).
    """
    found = re.match(_NUMBER.pattern, text.strip())
    if found is None:
        raise BadQuantity(
            text, f'"{_short(text)}" doesn\'t begin with a number', 'write a number and a unit, as "500 mL"'
        )
    number, spelling = found.group(), " ".join(text.strip()[found.end() :].split())
    if not spelling:
        raise BadQuantity(text, f'"{_short(text)}" has no unit', 'write a number and a unit, as "500 mL"')
    amount = Amount(read_number(number), read_unit(spelling, gallon))
    _check_size(text, amount.amount, may_be_cold=amount.unit in ("degC", "degF"))
    return amount


def read_unit(spelling: str, gallon: Gallon = "US") -> str:
    """The unit's name as the reply contract spells it.

    Fails: BadQuantity if the spelling is unknown, or means something else than was likely meant ("ML", "T", "t").
    """
    if spelling in _REFUSED:
        raise BadQuantity(spelling, f'unit "{spelling}" is not taken', _REFUSED[spelling])
    lower = spelling.lower()
    if lower in _UNIT_OF:
        return _UNIT_OF[lower]
    if lower in _SYSTEM_UNIT_OF:
        return f"{'US' if gallon == 'US' else 'imp'} {_SYSTEM_UNIT_OF[lower]}"
    raise BadQuantity(
        spelling,
        f'"{_short(spelling)}" is no unit known here',
        'write a unit like "mL", "L", "US gal", "imp pt", "cm", "m^3", "degC", "percent", "minute", "hour" or "day"',
    )


def read_mix(text: str) -> Mix:
    """What a bottle's mix is: "1 in 32", "1 to 32", "1:32", "0.06 percent", "500 ppm" or "neat".

    Fails: BadQuantity if it is none of these, a part isn't above 0, the first is the greater, or a percentage is over
    100.
    """
    plain = text.strip()
    if plain.lower() in ("neat", "undiluted"):
        return Neat()
    ratio = _RATIO.fullmatch(plain)
    if ratio is not None:
        word: RatioWord = "colon" if ratio[3] else "in" if ratio[2].lower() == "in" else "to"
        said = SaidRatio(read_number(ratio[1]), read_number(ratio[4]), word)
        for part in (said.first, said.second):
            _check_size(text, part)
        if word == "in" and said.second < said.first:
            raise BadQuantity(text, f'"{_short(text)}" has more parts than the whole', 'write it as "1 in 32"')
        if said.may_be_turned:
            raise BadQuantity(
                text, f'"{_short(text)}" is more concentrate than water', 'write the water last: "1 to 32"'
            )
        return said
    try:
        amount = read_amount(plain)
    except BadQuantity as fault:
        raise BadQuantity(text, f'"{_short(text)}" is no mix', _WRITE_A_MIX) from fault
    if amount.unit == "ppm":
        return Ppm(amount.amount)
    if amount.unit != "%":
        raise BadQuantity(text, f'"{_short(text)}" is no mix', _WRITE_A_MIX)
    if amount.amount > 100:
        raise BadQuantity(text, f'"{_short(text)}" is over 100 percent', _WRITE_A_MIX)
    return Percent(amount.amount)


_WRITE_A_MIX = 'write it as "1 in 32", "1 to 32", "0.06 percent", "500 ppm" or "neat"'


def _check_size(text: str, size: Fraction, *, may_be_cold: bool = False) -> None:
    if size <= 0 and not may_be_cold:
        raise BadQuantity(text, f'"{_short(text)}" is not more than zero', "write a number above zero")
    if abs(size) >= TOO_MUCH:
        raise BadQuantity(text, f'"{_short(text)}" is too large', "write a number below a million")


def _short(text: str) -> str:
    return text if len(text) <= 40 else text[:37] + "..."
