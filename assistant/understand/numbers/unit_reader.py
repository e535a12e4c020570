"""A text's words with the units among them: where one begins, what it is called, where it ends."""

from __future__ import annotations

from collections.abc import Sequence

from rapidfuzz import fuzz, process

from assistant.core.quantities.quantity import BadQuantity, Gallon, read_unit
from assistant.understand.numbers.spoken_numbers import NUMBER_WORDS
from assistant.understand.numbers.unit_words import (
    ENDS_A_UNIT,
    LONG_UNITS,
    LONGEST_UNIT,
    NO_UNIT,
    SAID,
    SLIPPED_UNIT,
    SYSTEM_WORDS,
)
from assistant.understand.text.words import Token

_ANOTHER_SYSTEM = frozenset({"in", "to", "into", "as", "and", "or", "from"})
"""Before the system that something is turned into."""


class UnitReader:
    """One text, looked into for units.

    gallon: which gallon, quart, pint and fluid ounce are meant when unsaid.
    taken: places of tokens that belong to a name, and so to no unit.
    """

    def __init__(self, tokens: Sequence[Token], gallon: Gallon, taken: frozenset[int]) -> None:
        self.tokens = tokens
        self.words = [token.text for token in tokens]
        self.taken = taken
        self._gallon = gallon
        self._gallon = self._system_apart() or gallon

    def _system_apart(self) -> Gallon | None:
        """The system that a text names away from any unit: "a gallon at one in 32, imperial"; None: none, or two."""
        places = [at for at, word in enumerate(self.words) if word in SYSTEM_WORDS and at not in self.taken]
        named = {SYSTEM_WORDS[self.words[at]] for at in places if self.words[at] != "us" or self.tokens[at].raw == "US"}
        apart = [at for at in places if self.unit(at) is None and self.word(at - 1) not in _ANOTHER_SYSTEM]
        return named.pop() if len(named) == 1 and apart else None

    def word(self, at: int) -> str:
        """The word there; empty past either end."""
        return self.words[at] if 0 <= at < len(self.words) else ""

    def unit(self, at: int, strict: bool = False, gallon: Gallon | None = None) -> tuple[str, int] | None:
        """The unit that begins there, and where it ends.

        gallon: whose gallon it is when unsaid; None: the keeper's.
        Fails, when strict: BadQuantity for a spelling that means something else ("ML", "T").
        """
        for length in range(min(LONGEST_UNIT, len(self.tokens) - at), 0, -1):
            if any(place in self.taken for place in range(at, at + length)):
                continue
            spelling = " ".join(self.words[at : at + length])
            if length == 1:
                if spelling in NO_UNIT and not self._letter_is_unit(at):
                    continue
                raw = self.tokens[at].raw
                spelling = raw if raw in ("ML", "Ml", "T", "t") else spelling
            spelling = SAID.get(spelling, spelling)
            try:
                return self._of_its_system(spelling, read_unit(spelling, gallon or self._gallon), at + length)
            except BadQuantity as bad:
                if strict and spelling in ("ML", "Ml", "T", "t"):
                    raise BadQuantity(bad.given, bad.why, bad.fix) from bad
        return self._slipped_unit(at)

    def _of_its_system(self, spelling: str, unit: str, end: int) -> tuple[str, int]:
        """The unit with the system that is named behind it: "2 pints imperial", "a gallon, UK"."""
        at = end + (self.word(end) == ",")
        system = SYSTEM_WORDS.get(self.word(at))
        if system is None or not unit.startswith(("US ", "imp ")) or at in self.taken:
            return unit, end
        if self.word(at) == "us" and not (self.tokens[at].raw.isupper() or self.word(at + 1) in ENDS_A_UNIT):
            return unit, end  # "do the two pints us lot need"
        try:
            return read_unit(spelling, system), at + 1
        except BadQuantity:
            return unit, end

    def _letter_is_unit(self, at: int) -> bool:
        """A lone letter is a unit only right behind a figure: "25 C", "10m", never "one in"."""
        before = self.word(at - 1)
        return self.words[at] in ("c", "f", "h", "s", "m", "d") and bool(before) and before[0].isdecimal()

    def _slipped_unit(self, at: int) -> tuple[str, int] | None:
        word = self.word(at)
        if len(word) < 5 or word in NUMBER_WORDS or at in self.taken:
            return None
        slip = process.extractOne(word, LONG_UNITS, scorer=fuzz.ratio, score_cutoff=SLIPPED_UNIT)
        return (read_unit(slip[0], self._gallon), at + 1) if slip is not None else None
