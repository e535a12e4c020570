"""Amounts in a text: volumes, ratios, percentages, ppm, durations, temperatures, and the numbers left over.

A number and one unit from the fixed list of `core.quantities.quantity`; never evaluated, never guessed. What can't be
taken is faulty, with one line on why. Ratios are found before units, so that "1 in 32" is never inches.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal, TypeAlias

from assistant.contract import Faulty
from assistant.core.quantities.amounts import Amount, Mix, Neat, Percent, Ppm, RatioWord, SaidRatio
from assistant.core.quantities.quantity import TOO_MUCH, BadQuantity, Gallon
from assistant.core.quantities.units import convert, dimension
from assistant.understand.numbers.multiples import RANGE, is_range, multiple_at
from assistant.understand.numbers.ratio_sides import PARTS_OF, WORDS_BEHIND, side_of_water
from assistant.understand.numbers.recipes import Part, recipe_of
from assistant.understand.numbers.sides import sides_from
from assistant.understand.numbers.spoken_numbers import Number, number_at
from assistant.understand.numbers.unit_reader import UnitReader
from assistant.understand.numbers.unit_words import EQUAL, NEAT, SPANS
from assistant.understand.text.words import Token

Kind: TypeAlias = Literal["volume", "duration", "temperature", "mix", "number", "length"]

_DURATIONS = frozenset({"s", "min", "h", "d", "week"})
_TEMPERATURES = frozenset({"degC", "degF"})
_LENGTHS = frozenset({"mm", "cm", "m", "in", "ft"})


_BARE_UNITS = frozenset({"litre", "liter", "pint", "quart", "gallon"})
MOST_OF_A_NAME = 2
"""Words of a product's name between the two halves of "half white vinegar, half water"."""


@dataclass(frozen=True, slots=True)
class Found:
    """An amount in a text, tokens `start` up to `end`."""

    kind: Kind
    value: Amount | Mix | Fraction
    start: int
    end: int
    split: bool = False
    """A bare number that could be a ratio as well: "one fifty"."""


@dataclass(frozen=True, slots=True)
class Amounts:
    """Everything that a text says in numbers."""

    found: tuple[Found, ...]
    faulty: tuple[Faulty, ...]
    faulty_spans: tuple[tuple[int, int], ...] = ()
    """Tokens of each that is faulty, from and up to."""

    @property
    def spans_s(self) -> list[Fraction]:
        """The lengths of time that are named, in seconds, in the order said."""
        spans = (found.value for found in self.found if found.kind == "duration")
        return [convert(span, "s").amount for span in spans if isinstance(span, Amount)]


def amounts_in(tokens: Sequence[Token], gallon: Gallon, taken: Iterable[int] = ()) -> Amounts:
    """Every amount in a text, in the order said.

    gallon: which gallon, quart, pint and fluid ounce are meant when unsaid.
    taken: places of tokens that belong to a name, and so to no number.
    """
    search = _Search(tokens, gallon, frozenset(taken))
    return search.run()


BELOW_ZERO = "that is less than zero: write a number above zero"
"""Why a bare number can't be mixed at; of anything else it may be degrees."""


class _Search(UnitReader):
    """One pass over a text."""

    def __init__(self, tokens: Sequence[Token], gallon: Gallon, taken: frozenset[int]) -> None:
        super().__init__(tokens, gallon, taken)
        self._found: list[Found] = []
        self._faulty: list[Faulty] = []
        self._faulty_spans: list[tuple[int, int]] = []

    def run(self) -> Amounts:
        at = 0
        while at < len(self.tokens):
            at = at + 1 if at in self.taken else self._next(at)
        return Amounts(tuple(self._found), tuple(self._faulty), tuple(self._faulty_spans))

    def _next(self, at: int) -> int:
        """Takes whatever amount begins at that token; gives where to go on."""
        wording = self._wording(at)
        if wording is not None:
            self._found.append(wording)
            return wording.end
        number = self._number(at)
        if number is None:
            return self._multiple(at) or at + 1
        if number.faulty:
            return self._refuse(at, number.end, number.faulty)
        taken = self._box(number) or self._ratio(number) or self._measured(number) or self._range(number)
        return taken or self._multiple(at) or self._bare(number)

    def _multiple(self, at: int) -> int | None:
        """Takes "twice 400 mils", "half of a quarter gallon"; None: no volume is taken so many times."""
        multiple = multiple_at(self, at)
        if multiple is None or multiple.begin >= len(self.tokens):
            return None
        number = self._number(multiple.begin)
        begin = self._past_of(number) if number is not None else multiple.begin
        unit = self.unit(begin) if number is None or not number.faulty else None
        if unit is None or dimension(unit[0]) != "volume":
            return None
        value = multiple.times * (number.value if number is not None else 1)
        fault = _fault_of(value, unit[0])
        if fault:
            return self._refuse(at, unit[1], fault)
        self._found.append(_found(value, unit[0], at, unit[1]))
        return unit[1]

    def _range(self, number: Number) -> int | None:
        """Refuses "one to two litres"; None: it is no range of volumes."""
        end = is_range(self, number)
        return self._refuse(number.start, end, RANGE) if end is not None else None

    def _number(self, at: int) -> Number | None:
        number = number_at(self.tokens, at)
        if self.words[at] == "won" and self.word(at + 1) in ("in", "to") and number_at(self.tokens, at + 2) is not None:
            return Number(Fraction(1), at, at + 1)  # "one in fifty", as a recogniser may write it
        if number is not None and any(place in self.taken for place in range(number.start, number.end)):
            return None
        if self.word(at + 1) == "second" and self.word(at + 2) in ("window", "door", "opening"):
            return None  # "a second window" is no time
        as_a = self.word(at - 1) in ("as", "in", "to", "into")
        if as_a and self.words[at] in ("a", "an") and self.word(at + 1) in ("percent", "percentage", "%"):
            return None  # "one in 32 as a percentage": a way to say it, and no strength
        if (
            number is None
            and self.words[at] in ("a", "an", "per")
            and (self.unit(at + 1) is not None or self.word(at + 1) in SPANS)
        ):
            return Number(Fraction(1), at, at + 1)
        if number is None and at == 0 and _BARE_UNITS & {self.word(0), self.word(1)} and self.unit(0) is not None:
            return Number(Fraction(1), 0, 0)  # "imperial pint at one in 32": of one, with the article left out
        return number

    def _wording(self, at: int) -> Found | None:
        """ "neat", "equal parts"."""
        for phrase in NEAT:
            if tuple(self.words[at : at + len(phrase)]) == phrase:
                return Found("mix", Neat(), at, at + len(phrase))
        for phrase in EQUAL:
            if tuple(self.words[at : at + len(phrase)]) == phrase and self.unit(at + len(phrase)) is None:
                return Found("mix", SaidRatio(Fraction(1), Fraction(1), "to"), at, at + len(phrase))
        if self._half_of_each(at):
            return Found("mix", SaidRatio(Fraction(1), Fraction(1), "to"), at, at + 1)
        return None

    def _half_of_each(self, at: int) -> bool:
        """ "Half vinegar, half water", in either order, with at most two words for the product."""
        other = next((place for place in range(at + 2, at + 6) if self.word(place) == "half"), None)
        if self.words[at] != "half" or other is None:
            return False
        first = [word for word in self.words[at + 1 : other] if word not in ("and", ",", "of")]
        return first == ["water"] or (self.word(other + 1) == "water" and 1 <= len(first) <= MOST_OF_A_NAME)

    # ------------------------------------------------------------ ratios

    def _ratio(self, first: Number) -> int | None:
        """Takes a ratio that begins with that number; None: it is none."""
        first = self._misheard(first)
        parts = self.word(first.end) in PARTS_OF
        after = self._past_product(first.end + 1) if parts else first.end
        joined = self._joint(after, parts) or (self._next_part(first.end + 1) if parts else None)
        if joined is None:
            return None
        word, begin = joined
        second = number_at(self.tokens, begin)
        if second is None or (self.unit(second.end) is not None and self.word(second.end) != "parts"):
            return None
        end = second.end
        if self.word(end) in PARTS_OF and self.words[end + 1 : end + 3] != ["per", "million"]:
            end = self._past_product(end + 1)
        if word == "in":
            return self._take_ratio(first, second, word, end)
        behind = self.words[second.end : second.end + WORDS_BEHIND]
        water = side_of_water(self.words[first.end : begin], behind)
        if water == "first":
            first, second, word = second, first, "to"
        # "Forty to one water" names the water and says less than it seems: only with its parts is it beyond doubt.
        said = water is not None and (parts or first.value <= second.value or len(behind) > 1)
        return self._take_ratio(first, second, word, end, sides=said)

    def _next_part(self, at: int) -> tuple[RatioWord, int] | None:
        """ "Ten parts water, one part bleach": where the second begins when only its own "part" joins it."""
        for begin in range(at, min(at + 5, len(self.words))):
            number = number_at(self.tokens, begin)
            if number is not None:
                return ("to", begin) if self.word(number.end) in PARTS_OF else None
        return None

    def _take_ratio(self, first: Number, second: Number, word: RatioWord, end: int, *, sides: bool = False) -> int:
        start = min(first.start, second.start)
        fault = first.faulty or second.faulty or _fault_of_parts(first.value, second.value, word)
        if fault:
            return self._refuse(start, end, fault)
        self._found.append(Found("mix", SaidRatio(first.value, second.value, word, sides=sides), start, end))
        return end

    def _misheard(self, first: Number) -> Number:
        """ "one two thirty-two" is "one to thirty-two"; the number stops at "one"."""
        at = first.start
        following = number_at(self.tokens, at + 2)
        heard_to = self.words[at] == "one" and self.word(at + 1) in ("two", "too")
        if heard_to and following is not None and following.value >= 10 and self.word(at + 2) != "point":
            return Number(Fraction(1), at, at + 1)
        return first

    def _joint(self, at: int, parts: bool) -> tuple[RatioWord, int] | None:
        """What stands between the two numbers of a ratio, and where the second begins."""
        word, after = self.word(at), at + 1
        if word in ("in", "into"):
            return "in", after + (self.word(after) in ("every", "all"))
        if word == "out" and self.word(after) == "of":
            return "in", after + 1
        if word in ("to", "two", "too"):
            return "to", after
        if word in ("+", "plus") or (parts and word in ("and", "with")):
            return "to", after
        if word in (":", "colon"):
            return "colon", after
        return None

    def _past_product(self, at: int) -> int:
        """Past "bleach" or "of water" after "one part": at most three words up to a joint."""
        for end in range(at, min(at + 4, len(self.words))):
            if self._joint(end, parts=True) is not None:
                return end
        return at

    def _box(self, first: Number) -> int | None:
        """Takes "90 by 45 by 45 cm"; None: it is none."""
        sides = sides_from(self, first)
        self._found += [Found("length", side, start, end) for side, start, end in sides]
        return sides[-1][2] if sides else None

    # ------------------------------------------------------------ units

    def _measured(self, number: Number) -> int | None:
        """Takes a number with its unit; None: no unit follows."""
        begin = self._past_of(number)
        try:
            unit = self.unit(begin, strict=True)
        except BadQuantity as bad:
            return self._refuse(number.start, begin + 1, bad.fix)
        if unit is None:
            return self._span_of_days(number, begin)
        name, end = unit
        value = number.value
        more = self._and_a_half(end, value)
        if more is not None:
            value, end = value + more[0], more[1]
        value, name, end = self._with_minutes(value, name, end)
        fault = _fault_of(value, name)
        if fault:
            return self._refuse(number.start, end, fault)
        recipe = recipe_of(self, Part(Amount(value, name), begin, end))
        if recipe is not None:
            self._found.append(Found("mix", recipe[0], number.start, recipe[1]))
            return recipe[1]
        self._found.append(_found(value, name, number.start, end))
        return end

    def _span_of_days(self, number: Number, at: int) -> int | None:
        """Takes "two months", "a year and a half", in days."""
        days = SPANS.get(self.word(at))
        if days is None:
            return None
        more = self._and_a_half(at + 1, number.value)
        value, end = (number.value + more[0], more[1]) if more is not None else (number.value, at + 1)
        fault = _fault_of(value * days, "d")
        if fault:
            return self._refuse(number.start, end, fault)
        self._found.append(Found("duration", Amount(value * days, "d"), number.start, end))
        return end

    def _past_of(self, number: Number) -> int:
        """Past "of a", "a" between a part and its unit, and past a hyphen."""
        end = number.end
        if self.word(end) == "-" and end < len(self.tokens) and self.tokens[end].glued:
            return end + 1
        if number.value < 1:
            end += self.word(end) == "of"
            end += self.word(end) in ("a", "an", "one")
        return end

    def _and_a_half(self, at: int, so_far: Fraction) -> tuple[Fraction, int] | None:
        """ "a litre and a half"."""
        if self.word(at) != "and" or so_far.denominator != 1:
            return None
        part = number_at(self.tokens, at + 1)
        if part is None or part.value >= 1 or part.faulty or self.unit(self._past_of(part)) is not None:
            return None
        return part.value, part.end

    def _with_minutes(self, value: Fraction, unit: str, end: int) -> tuple[Fraction, str, int]:
        """ "an hour and twenty minutes" in minutes, "two minutes thirty seconds" in seconds."""
        smaller = {"h": "min", "min": "s"}.get(unit)
        if smaller is None:
            return value, unit, end
        begin = end + (self.word(end) == "and")
        more = number_at(self.tokens, begin)
        if more is None or more.faulty:
            return value, unit, end
        following = self.unit(more.end)
        if following is None or following[0] != smaller:
            return value, unit, end
        return value * 60 + more.value, smaller, following[1]

    # ------------------------------------------------------------ the rest

    def _bare(self, number: Number) -> int:
        """Takes a number that belongs to nothing, unless "one" only stands for a thing."""
        if self.words[number.start : number.end] == ["one"] and not self._one_counts(number.start):
            return number.end
        if (
            self.words[number.start : number.end] in (["half"], ["quarter"], ["a", "half"])
            and self.word(number.end).isalpha()
        ):
            return number.end  # "half rinsed", "half of it"
        if self.word(number.end) in ("window", "windows", "door", "doors"):
            return number.end  # counted as openings
        if abs(number.value) >= TOO_MUCH:
            return self._refuse(number.start, number.end, "that is too large: write a number below a million")
        if number.value < 0:
            end = self._refuse(number.start, number.end, BELOW_ZERO)
            self._faulty_spans.pop()  # "the shed gets to minus four": no volume
            return end
        if number.value > 0:
            self._found.append(Found("number", number.value, number.start, number.end, number.split))
        return number.end

    def _one_counts(self, at: int) -> bool:
        return len([word for word in self.words if word.isalpha()]) <= 2 and self.word(at - 1) in ("", "no", "yes")

    def _refuse(self, start: int, end: int, why: str) -> int:
        said = "".join(
            (" " if place and not token.glued else "") + token.raw for place, token in self._span(start, end)
        )
        self._faulty.append(Faulty(said.strip(), why))
        self._faulty_spans.append((start, end))
        return end

    def _span(self, start: int, end: int) -> list[tuple[int, Token]]:
        return list(enumerate(self.tokens[start:end]))


def _found(value: Fraction, unit: str, start: int, end: int) -> Found:
    if unit == "%":
        return Found("mix", Percent(value), start, end)
    if unit == "ppm":
        return Found("mix", Ppm(value), start, end)
    kind: Kind = "volume"
    if unit in _DURATIONS:
        kind = "duration"
    elif unit in _TEMPERATURES:
        kind = "temperature"
    elif unit in _LENGTHS:
        kind = "length"
    return Found(kind, Amount(value, unit), start, end)


def _fault_of(value: Fraction, unit: str) -> str:
    """Why so much of that unit can't be taken; empty: it can."""
    if value <= 0 and unit not in _TEMPERATURES:
        return "that is not more than zero: write a number above zero"
    if abs(value) >= TOO_MUCH:
        return "that is too large: write a number below a million"
    if unit == "%" and value > 100:
        return "that is over 100 percent: write a percentage up to 100"
    return ""


def _fault_of_parts(first: Fraction, second: Fraction, word: RatioWord) -> str:
    if first <= 0 or second <= 0:
        return 'a part of a ratio must be above zero: write it as "1 in 32"'
    if max(first, second) >= TOO_MUCH:
        return "that is too large: write a number below a million"
    if word == "in" and second < first:
        return 'that has more parts than the whole: write it as "1 in 32"'
    return ""
