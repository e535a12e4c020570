"""The unit that an amount is wanted in: "how many mils", "in fluid ounces", "to metric"."""

from __future__ import annotations

from fractions import Fraction

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
