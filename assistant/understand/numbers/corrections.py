"""A number put right: "no, fifty" keeps what kind of amount it was."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from fractions import Fraction
from typing import Any

from assistant.contract import Doubt, Reading, Slots
from assistant.core.quantities.amounts import Amount, Mix, Percent, Ppm, SaidRatio
from assistant.understand.numbers.amounts import amounts_in
from assistant.understand.parsing import Parsed
from assistant.understand.text.words import tokens_of


@dataclass(frozen=True, slots=True)
class NotThat:
    """ "Fifteen, not fifty": the slots without what is denied, and the bare number that is, if it is one."""

    slots: Slots
    number: Fraction | None


def not_that(parsed: Parsed, slots: Slots) -> NotThat | None:
    """What is meant, where an amount is said and another denied; None: none is denied, or nothing else is said."""
    denied = [found for found in parsed.amounts.found if _is_denied(parsed, found.start)]
    if len(denied) != 1 or len(parsed.amounts.found) < 2:
        return None
    value = denied[0].value
    kept: dict[str, Any] = {
        field: tuple(other for other in getattr(slots, field) if other != value)
        for field in ("mixes", "volumes", "numbers", "durations")
    }
    if len(kept["volumes"]) != len(slots.volumes):
        kept["roles"] = ()
    return NotThat(replace(slots, **kept), value if isinstance(value, Fraction) else None)


def _is_denied(parsed: Parsed, start: int) -> bool:
    before = [token.text for token in parsed.tokens[:start]]
    while before and before[-1] in ("the", "a", "my"):
        before.pop()
    return bool(before) and (before[-1] == "not" or before[-2:] in (["instead", "of"], ["rather", "than"]))


def instead_of(before: Reading, denied: Fraction, number: Fraction) -> Slots | None:
    """The number that is denied replaced; None: it stands nowhere in what was asked."""
    named = {said_number(denied)}
    for field in ("mixes", "volumes", "numbers", "durations"):
        values = getattr(before.slots, field)
        for place, value in enumerate(values):
            changed = _put(value, number, named)
            if changed is not None:
                return _with(before.slots, field, (*values[:place], changed, *values[place + 1 :]))
    return None


def with_number(before: Reading, number: Fraction) -> Slots:
    """The doubted number replaced, keeping what kind of amount it was; else the last one said."""
    slots = before.slots
    doubted = {doubt.heard for doubt in before.doubts if doubt.kind == "number"}
    doubted |= {other for doubt in before.doubts if doubt.kind == "number" for other in doubt.others if not doubted}
    for field in ("mixes", "volumes", "numbers"):
        values = getattr(slots, field)
        for place, value in enumerate(values):
            changed = _put(value, number, doubted)
            if changed is not None:
                return _with(slots, field, (*values[:place], changed, *values[place + 1 :]))
    for field in ("mixes", "volumes", "numbers") if not _of_the_volume(before, number) else ("volumes",):
        values = getattr(slots, field)
        if values and (changed := _put(values[-1], number, None)) is not None:
            return _with(slots, field, (*values[:-1], changed))
    return replace(slots, numbers=(number,), faulty=())


def which_number(before: Reading, numbers: tuple[Fraction, ...]) -> Slots | None:
    """ "Fifty", asked which of two it is, or one in what: that mix; None: it was asked something else."""
    mixes = before.slots.mixes
    if before.intent not in ("dose", "mixed") or len(numbers) != 1 or numbers[0] < 1:
        return None
    if len(mixes) == 1 and isinstance(mixes[0], SaidRatio) and mixes[0].first == 1:
        return replace(before.slots, mixes=(replace(mixes[0], second=numbers[0]),), numbers=())
    if not mixes and before.slots.numbers:
        return replace(before.slots, mixes=(SaidRatio(Fraction(1), numbers[0], "in"),), numbers=())
    return None


def _of_the_volume(before: Reading, number: Fraction) -> bool:
    """ "And 300?", after "only 200 mils of it"; "no, two was right", of one litre at one in 32: hardly one in two."""
    slots = before.slots
    if len(slots.volumes) == 1 and not before.doubts and kinds_said(before.question) == {"volume"}:
        return True
    if len(slots.volumes) != 1 or len(slots.mixes) != 1 or not isinstance(slots.mixes[0], SaidRatio):
        return False
    small = number < LEAST_PARTS and slots.volumes[0].amount < LEAST_PARTS
    return small and slots.mixes[0].second >= LEAST_PARTS


def said_values(parsed: Parsed) -> tuple[object, ...]:
    """Whatever stands for the amounts of a turn."""
    return tuple(found.value for found in parsed.amounts.found)


def kinds_said(text: str) -> set[str]:
    """The kinds of amount that a turn named: a bare number right after it is of the same kind."""
    return {found.kind for found in amounts_in(tokens_of(text), "US").found}


LEAST_PARTS = 10
"""Parts in all of the strongest use of bleach that is cited; a lesser number said again is no mix of it."""


def _with(slots: Slots, field: str, values: tuple[Any, ...]) -> Slots:
    changed: dict[str, Any] = {field: values, "faulty": ()}
    return replace(slots, **changed)


def _put(value: Mix | Amount | Fraction, number: Fraction, doubted: set[str] | None) -> Any:
    """A value with that number for its doubted one (any, when None); None: it holds no such."""

    def fits(part: Fraction) -> bool:
        return doubted is None or said_number(part) in doubted

    if isinstance(value, SaidRatio) and value.part is not None and fits(value.part.amount):
        part = replace(value.part, amount=number)  # of a recipe: so much more or less to the gallon
        return replace(value, first=number, part=part)
    if isinstance(value, SaidRatio) and value.part is None and fits(value.second):
        return replace(value, second=number)
    if isinstance(value, SaidRatio) and doubted is not None and fits(value.first):
        return replace(value, first=number)
    if isinstance(value, Percent) and fits(value.percent):
        return Percent(number)
    if isinstance(value, Ppm) and fits(value.ppm):
        return Ppm(number)
    if isinstance(value, Amount) and fits(value.amount):
        return replace(value, amount=number)
    if isinstance(value, Fraction) and fits(value):
        return number
    return None


def numbers_in(values: Iterable[object]) -> list[Fraction]:
    """The numbers of mixes, amounts and bare numbers, in order."""
    numbers: list[Fraction] = []
    for value in values:
        if isinstance(value, SaidRatio):
            numbers += [value.first, value.second]
        elif isinstance(value, Percent):
            numbers.append(value.percent)
        elif isinstance(value, Ppm):
            numbers.append(value.ppm)
        elif isinstance(value, Amount):
            numbers.append(value.amount)
        elif isinstance(value, Fraction):
            numbers.append(value)
    return numbers


def still_doubted(doubts: Iterable[Doubt], slots: Slots) -> tuple[Doubt, ...]:
    """Of the doubts about a reading's numbers those whose number is still in it, after something else was put right."""
    strength = (slots.stock_strength,) if slots.stock_strength is not None else ()
    kept = (*slots.mixes, *slots.volumes, *slots.durations, *slots.temperatures, *slots.numbers, *strength)
    numbers = {said_number(number) for number in numbers_in(kept)}
    return tuple(doubt for doubt in doubts if doubt.kind == "number" and doubt.heard in numbers)


def said_number(number: Fraction) -> str:
    """A number in figures: "15", "0.5", "1/3"."""
    if number.denominator == 1:
        return str(number.numerator)
    decimal = float(number)
    return f"{decimal:g}" if Fraction(f"{decimal:g}") == number else str(number)
