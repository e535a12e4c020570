"""A number said twice in one breath: put right ("one in fifteen, I mean fifty"), left open ("one in fifteen or fifty"),
or what a strength is brought down to ("2 percent down to 0.05").

It is joined to what it belongs to as soon as amounts are found, so that no question sees the first number alone. What
can't be joined beyond doubt stays a number of its own, and is asked about by whoever answers.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from fractions import Fraction
from typing import Any

from assistant.core.quantities.amounts import Amount, Mix, Percent, Ppm, SaidRatio
from assistant.understand.numbers.amounts import Amounts, Found
from assistant.understand.text.words import SIGNS, Token

_PUTS_RIGHT = frozenset(
    {"sorry", "no", "nope", "wait", "mean", "meant", "rather", "correction", "actually", "oops", "whoops", "scratch"}
    | {"strike", "scrap", "apologies", "pardon", "damn", "argh", "blast", "mistake"}
)
_BESIDE = SIGNS | frozenset(
    {"i", "er", "um", "uh", "ah", "oh", "make", "that", "it", "is", "was", "the", "or", "well", "hang", "hold", "on"}
    | {"in", "to", "one", "at", "a", "my", "bad", "of", "should", "be", "said", "say", "and", "but", "you", "again"}
)
_WHAT_ELSE = frozenset({"or", "maybe", "perhaps", "possibly", "was", "is", "it", "that", ",", "a", "in", "to", "even"})
_POURED = ("mix", "volume")
_DOWN_TO = ("to", "into")


def with_numbers_said_again(amounts: Amounts, tokens: Sequence[Token], products: Iterable[tuple[int, int]]) -> Amounts:
    """The amounts of a text with each number that belongs to another one joined to it.

    products: from and up to which token each product is named.
    """
    spans = tuple(products)
    found: list[Found] = []
    for one in amounts.found:
        found = _joined(found, _part_of_product(one, spans), tokens)
    return replace(amounts, found=tuple(found))


def _joined(before: list[Found], one: Found, tokens: Sequence[Token]) -> list[Found]:
    if not before:
        return [one]
    last, words = before[-1], [token.text for token in tokens[before[-1].end : one.start]]
    if _put_right(words):
        return _corrected(before, one, alone=set(words) <= _BESIDE | _PUTS_RIGHT)
    if "or" in words and set(words) <= _WHAT_ELSE:
        return [*before[:-1], *_either(last, one)]
    poured = _so_much_water(before, one, tokens)
    if poured is not None:
        return [*before, poured]
    if words and words[-1] in _DOWN_TO:
        return [*before[:-1], *_brought_down(last, one, tokens)]
    return [*before, one]


def _so_much_water(before: Sequence[Found], one: Found, tokens: Sequence[Token]) -> Found | None:
    """ "10 mils in 390 water", "50 mils in 750": mils as well, since it is no less."""
    volumes = [other.value for other in before if other.kind == "volume" and isinstance(other.value, Amount)]
    after = [token.text for token in tokens[one.end : one.end + 2]]
    if not isinstance(one.value, Fraction) or len(volumes) != 1 or volumes[0].unit != "mL":
        return None
    poured_in = before[-1].value is volumes[0] and one.value >= MORE_THAN_PARTS
    poured_in = poured_in and [token.text for token in tokens[before[-1].end : one.start]] in (["in"], ["into"])
    if after[:1] != ["water"] and after != ["of", "water"] and not poured_in:
        return None
    return replace(one, kind="volume", value=Amount(one.value, "mL")) if one.value >= volumes[0].amount else None


def _put_right(words: Sequence[str]) -> bool:
    """Whether what stands before a number says that the one before it was a slip."""
    run: list[str] = []
    for word in reversed(words):
        if word not in _BESIDE and word not in _PUTS_RIGHT:
            break
        run.append(word)
    return not _PUTS_RIGHT.isdisjoint(run)


def _corrected(before: list[Found], one: Found, *, alone: bool) -> list[Found]:
    """What was said with the last number in it, where it can be of one thing alone; else both, and it is asked.

    alone: nothing but the correction stands between the two.
    """
    last = before[-1]
    poured = [other for other in before if other.kind in _POURED]
    if one.kind != "number":
        recipe = last.kind == "volume" and isinstance(one.value, SaidRatio) and one.value.part is not None
        same = one.kind == last.kind and type(one.value) is type(last.value)
        same = alone and (same or recipe or (last.kind == "number" and one.kind in _POURED))
        return [*before[:-1], replace(one, start=last.start)] if same else [*before, one]
    if not isinstance(one.value, Fraction) or (last.kind != "number" and last not in poured):
        return [*before, one]
    if len(poured) > 1 and not (alone and last.kind == "mix"):
        return [*before, one]
    if alone and last.kind == "number":
        return [*before[:-1], replace(one, start=last.start)]
    value = of_the_same_kind(last.value, one.value)
    if value is None:
        return [*before, one]
    return [*before[:-1], replace(last, value=value, end=one.end if alone else last.end)]


def _either(last: Found, one: Found) -> list[Found]:
    """ "One in fifteen or fifty", "fourteen or forty mils": two of a kind."""
    if last.kind in _POURED and isinstance(one.value, Fraction):
        value = of_the_same_kind(last.value, one.value)
        return [last, replace(one, kind=last.kind, value=value)] if value is not None else [last, one]
    if one.kind in _POURED and isinstance(last.value, Fraction):
        value = of_the_same_kind(one.value, last.value)
        return [replace(last, kind=one.kind, value=value), one] if value is not None else [last, one]
    return [last, one]


def _brought_down(last: Found, one: Found, tokens: Sequence[Token]) -> list[Found]:
    """ "2 percent chlorhexidine to 0.05", "from 5 to 0.5 percent": both are percentages."""
    if isinstance(last.value, Percent) and isinstance(one.value, Fraction) and one.value < last.value.percent:
        return [last, replace(one, kind="mix", value=Percent(one.value))]
    after_from = last.start > 0 and tokens[last.start - 1].text in ("from", "take", "bring", "dilute", "turn")
    strong, weak = last.value, one.value
    if not after_from or not isinstance(strong, Fraction) or not isinstance(weak, Percent):
        return [last, one]
    if weak.percent < strong <= 100:
        return [replace(last, kind="mix", value=Percent(strong)), one]
    return [last, one]


def of_the_same_kind(value: Mix | Amount | Fraction, number: Fraction) -> Any:
    """That number as the same kind of amount: of a ratio its second part; None: there is no such amount."""
    if isinstance(value, SaidRatio):
        return replace(value, second=number) if value.part is None and number >= value.first else None
    if isinstance(value, Percent):
        return Percent(number) if number <= 100 else None
    if isinstance(value, Ppm):
        return Ppm(number)
    return replace(value, amount=number) if isinstance(value, Amount) else None


def _part_of_product(one: Found, products: Sequence[tuple[int, int]]) -> Found:
    """ "1/32 bleach", "a tenth bleach": a part right before a product is one in so many."""
    part = one.value
    if one.kind != "number" or not isinstance(part, Fraction) or part.numerator != 1 or part.denominator == 1:
        return one
    if all(start != one.end for start, _ in products) or part.denominator > MOST_PARTS:
        return one
    return replace(one, kind="mix", value=SaidRatio(Fraction(1), Fraction(part.denominator), "in"))


MOST_PARTS = 1000
MORE_THAN_PARTS = 100
"""So many behind "in" are mils; fewer may be parts: "one mil in thirty two"."""
"""Parts in all above which such a fraction is a decimal, and no ratio."""
