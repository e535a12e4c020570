"""The unit that an amount is wanted in: "how many mils", "in fluid ounces", "to metric"."""

from __future__ import annotations

from assistant.core.quantities.quantity import Gallon
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
        if text.words[at : at + 2] in (["how", "many"], ["how", "much"]) or word in _BEFORE:
            begin = at + 2 if word == "how" else at + 1
            begin += text.word(begin) in ("the", "a", "an")
            if text.word(begin) in _SYSTEMS:
                return _SYSTEMS[text.word(begin)]
            unit = text.unit(begin)
            if unit is not None and (word == "how" or unit[1] - begin > 1 or text.word(begin) not in SYSTEM_WORDS):
                return unit[0]
    return None
