"""The unit that an amount is wanted in: "how many mils", "in fluid ounces", "to metric"."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from assistant.contract import Faulty, Slots
from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.quantity import Gallon
from assistant.core.quantities.units import dimension
from assistant.understand.numbers.unit_reader import UnitReader
from assistant.understand.numbers.unit_words import SYSTEM_WORDS
from assistant.understand.parsing import Parsed

_BEFORE = frozenset({"in", "to", "into", "as"})
_SYSTEMS = {"metric": "mL", "millilitre": "mL"}


def wanted_unit(parsed: Parsed, gallon: Gallon) -> str | None:
    """The unit's name as replies give it; None: none is named apart from those of the amounts themselves.

    gallon: which gallon, quart, pint and fluid ounce are meant when unsaid.
    """
    taken = frozenset(place for one in parsed.amounts.found for place in range(one.start, one.end))
    text = UnitReader(parsed.tokens, gallon, taken)
    for at, word in enumerate(text.words):
        if word == "what" and text.word(at + 1) in ("percent", "percentage"):
            return "%"
        if text.words[at : at + 2] in (["how", "many"], ["how", "much"]) or word in _BEFORE:
            begin = at + 2 if word == "how" else at + 1
            begin += text.word(begin) in ("the", "a", "an")
            if text.word(begin) in _SYSTEMS:
                return _SYSTEMS[text.word(begin)]
            unit = text.unit(begin)
            if unit is not None and (word == "how" or unit[1] - begin > 1 or text.word(begin) not in SYSTEM_WORDS):
                return unit[0]
    return None


_OPENS = frozenset(
    {"what", "is", "how", "much", "big", "the", "a", "an", "one", "convert", "turn", "'s", "so", "and", "ok"}
)


def one_of_a_unit(parsed: Parsed, gallon: Gallon) -> Amount | None:
    """ "Imperial gallon in litres": one of it; None: the text doesn't begin with a unit to be turned into another."""
    text = UnitReader(parsed.tokens, gallon, frozenset())
    at = next((at for at, word in enumerate(text.words) if word not in _OPENS), len(text.words))
    unit = text.unit(at)
    if unit is None or text.word(unit[1]) not in _BEFORE or text.unit(unit[1] + 1) is None:
        return None
    return (
        None
        if text.word(unit[1] - 1).endswith("s") and text.word(unit[1] - 1) != "us"
        else Amount(Fraction(1), unit[0])
    )


HOW_MANY = 'I have no number for how much: say it as "20 mils in teaspoons"'
"""Why an amount to be converted can't be taken, where its unit is named and no number with it."""


def to_be_converted(slots: Slots, parsed: Parsed, gallon: Gallon) -> Slots:
    """The slots with what a conversion is of: one of a unit that is named; faulty where no volume is wanted."""
    if not _WEIGHTS.isdisjoint(token.text for token in parsed.tokens) and wanted_unit(parsed, gallon) is None:
        return replace(slots, faulty=(*slots.faulty, Faulty(parsed.text, A_WEIGHT)))
    if parsed.amounts.found:
        return slots
    one = one_of_a_unit(parsed, gallon)
    if one is not None:
        return replace(slots, volumes=(one,), roles=("",))
    if names_two_units(parsed, gallon):  # so the last amount isn't meant
        return replace(slots, faulty=(*slots.faulty, Faulty(parsed.text, HOW_MANY)))
    return slots


_WEIGHTS = frozenset(
    {"gram", "grams", "gramme", "grammes", "kilo", "kilos", "kg", "kilogram", "kilograms"}
) | frozenset({"pound", "pounds", "lb", "lbs", "milligram", "milligrams", "mg"})
A_WEIGHT = "that is a weight, and I know volumes only: say it in mils"
"""Why nothing is turned into grams: what a mil weighs is another thing for every product."""


def names_two_units(parsed: Parsed, gallon: Gallon) -> bool:
    """ "How many teaspoons is some mils": what is to be converted is told, if not how much of it."""
    text = UnitReader(parsed.tokens, gallon, frozenset(at for m in parsed.mentions for at in range(m.start, m.end)))
    found: set[str] = set()
    at = 0
    while at < len(text.words):
        unit = text.unit(at)
        if unit is not None and dimension(unit[0]) == "volume":
            found.add(unit[0])
        at = unit[1] if unit is not None else at + 1
    return len(found) > 1
