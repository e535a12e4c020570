"""Measuring: which of the keeper's tools measures a volume best, to which mark, and how far off it may be.

The worst case is what counts: the tool's tolerance and half a graduation for the eye, added up over every fill.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from math import floor
from typing import Literal, TypeAlias

from assistant.core.facts import Facts
from assistant.core.household import Measure
from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.errors import OutOfRange
from assistant.core.quantities.units import convert

SYRINGE_LARGE = "measure-syringe-large-from"
GOOD_ENOUGH = "measure-good-enough"
MOST_FILLS = "measure-most-fills"
EACH_FILL = "measure-each-fill"
TOO_ROUGH = "measure-too-rough"

Unmeasured: TypeAlias = Literal["too little", "too much", "between"]
"""Why no tool measures a volume: all are too coarse, all too small, or some the one and some the other."""


@dataclass(frozen=True, slots=True)
class Measured:
    """One way to measure a volume with one tool."""

    tool: Measure
    full_fills: int
    """Fills to `full` before the last; 0 when one fill does."""
    full: Amount
    """The highest mark, or all it holds if it has none; in the unit of its marks."""
    mark: Amount
    """Where the last fill goes to, above 0; the same unit."""
    wanted: Fraction
    """In that unit."""
    error: Fraction
    """At worst, either way, around what the marks come to; in that unit."""
    good_enough: bool
    """Off by no more than a dosing device may be."""
    fact: str
    """Id of the fact for the tolerance; empty when it is the keeper's own."""

    @property
    def amount(self) -> Amount:
        """What the marks come to."""
        return Amount(self.full.amount * self.full_fills + self.mark.amount, self.mark.unit)

    @property
    def fills(self) -> int:
        """How often it is filled."""
        return self.full_fills + 1

    @property
    def to_the_brim(self) -> bool:
        """Whether a full fill is all the tool holds; False: its highest mark is below that."""
        return convert(self.tool.capacity, self.full.unit).amount == self.full.amount

    @property
    def off_by(self) -> Fraction:
        """At worst, from what was wanted: rounding to the marks and the error."""
        return abs(self.amount.amount - self.wanted) + self.error

    @property
    def least(self) -> Amount:
        """The least that may really have been measured, or what was wanted if a coarse tool comes to more."""
        return Amount(max(Fraction(0), min(self.wanted, self.amount.amount - self.error)), self.mark.unit)

    @property
    def most(self) -> Amount:
        """The most that may really have been measured, or what was wanted if a coarse tool comes to less."""
        return Amount(max(self.wanted, self.amount.amount + self.error), self.mark.unit)


def best_measure(wanted: Amount, tools: tuple[Measure, ...], facts: Facts) -> Measured | None:
    """The tool that measures a volume best; None: none of them can.

    A tool that is good enough for a dose goes before one that isn't; then the least worst-case error wins, with a small
    share of the dose added for every fill after the first, since fills are miscounted. A tool that would need more
    fills than can be counted on, has no mark that low, or may be off by more than half is passed over.

    wanted: a volume above 0.
    tools: as the keeper lists them.
    Fails: WrongUnit if `wanted` is no volume; OutOfRange if it isn't above 0.
    Source: measure-syringe-... (ISO 7886-1), measure-spoon, measure-cup; measure-each-fill,
    measure-most-fills, measure-too-rough.
    """
    if wanted.amount <= 0:
        raise OutOfRange("the volume to measure", wanted.amount, "more than 0")
    ways = [way for tool in tools if (way := measured_with(tool, wanted, facts)) is not None]
    roughest, each_fill = facts[TOO_ROUGH].exact() / 100, facts[EACH_FILL].exact() / 100
    fit = [way for way in ways if _relative(way) <= roughest]
    return min(
        fit, key=lambda way: (not way.good_enough, _relative(way) + way.full_fills * each_fill, way.fills), default=None
    )


def why_unmeasured(wanted: Amount, tools: tuple[Measure, ...], facts: Facts) -> Unmeasured:
    """Why `best_measure` finds no tool for a volume.

    tools: at least one.
    """
    volume = convert(wanted, "mL").amount
    sizes = [convert(tool.capacity, "mL").amount for tool in tools]
    if volume < min(sizes):
        return "too little"
    return "too much" if volume > max(sizes) * facts[MOST_FILLS].value else "between"


def least_measured_well(tools: tuple[Measure, ...], facts: Facts) -> Measured | None:
    """The least volume, at a mark of one of the tools, that it measures as well as a dosing device must.

    Gives: that tool and mark; None: no tool does, however much is measured.
    Source: measure-good-enough, and the tools' tolerances.
    """
    found = (way for tool in tools if (way := _least_of(tool, facts)) is not None)
    return min(found, key=lambda way: convert(way.amount, "mL").amount, default=None)


def _least_of(tool: Measure, facts: Facts) -> Measured | None:
    step = tool.graduation if tool.graduation is not None else tool.capacity
    marks = floor(convert(tool.capacity, step.unit).amount / step.amount)
    for mark in range(1, marks + 1):
        way = measured_with(tool, Amount(step.amount * mark, step.unit), facts)
        if way is not None and way.good_enough:
            return way
    return None


def measured_with(tool: Measure, wanted: Amount, facts: Facts) -> Measured | None:
    """How one tool measures a volume, to its nearest mark; None: it is too small, or has no mark that low.

    As `best_measure`.
    """
    unit = tool.graduation.unit if tool.graduation is not None else tool.capacity.unit
    capacity = convert(tool.capacity, unit).amount
    step = tool.graduation.amount if tool.graduation is not None else capacity
    marks_a_fill = floor(capacity / step)
    volume = convert(wanted, unit).amount
    marks = floor(volume / step + Fraction(1, 2))  # the nearest mark; half-way goes up, to the stronger
    if marks < 1 or marks_a_fill < 1:
        return None
    full_fills, last = divmod(marks - 1, marks_a_fill)
    if full_fills + 1 > facts[MOST_FILLS].value:
        return None
    full, mark = marks_a_fill * step, (last + 1) * step
    by_eye = step / 2 if tool.graduation is not None else Fraction(0)
    fact, tolerance = _tolerance(tool, Amount(full, unit), facts)
    last_fact, last_tolerance = _tolerance(tool, Amount(mark, unit), facts)
    error = full_fills * (tolerance + by_eye) + last_tolerance + by_eye
    off_by = abs(marks * step - volume) + error
    return Measured(
        tool,
        full_fills,
        Amount(full, unit),
        Amount(mark, unit),
        volume,
        error,
        off_by <= volume * facts[GOOD_ENOUGH].exact() / 100,
        last_fact if full_fills == 0 else fact,
    )


def tolerance(tool: Measure, expelled: Amount, facts: Facts) -> Amount:
    """How far off one fill may be, without the eye's error; in the unit of `expelled`.

    The keeper's own figure wins. Else syringes by ISO 7886-1: below half the nominal capacity a share of the capacity
    and a share of what is expelled, from half upwards a share of what is expelled. Spoons and cups: a share.

    expelled: what one fill gives, above 0 and at most the capacity.
    Source: measure-syringe-..., measure-spoon, measure-cup.
    """
    return Amount(_tolerance(tool, expelled, facts)[1], expelled.unit)


def _tolerance(tool: Measure, expelled: Amount, facts: Facts) -> tuple[str, Fraction]:
    """The fact's id (empty: the keeper's own figure) and the tolerance."""
    if tool.tolerance is not None:
        return "", expelled.amount * tool.tolerance.amount / 100
    if tool.kind == "spoon":
        fact = facts["measure-spoon"]
        size, plus_minus = (Fraction(str(value)) for value in fact.value)
        return fact.id, expelled.amount * plus_minus / size
    if tool.kind != "syringe":
        return "measure-cup", expelled.amount * facts["measure-cup"].exact() / 100
    return _syringe_tolerance(tool.capacity, expelled, facts)


def _syringe_tolerance(capacity: Amount, expelled: Amount, facts: Facts) -> tuple[str, Fraction]:
    nominal = convert(capacity, expelled.unit).amount
    size = "large" if convert(capacity, "mL").amount >= facts[SYRINGE_LARGE].exact() else "small"
    if expelled.amount >= nominal / 2:
        fact = facts[f"measure-syringe-{size}-high"]
        return fact.id, expelled.amount * fact.exact() / 100
    fact = facts[f"measure-syringe-{size}-low"]
    of_capacity, of_expelled = (Fraction(str(value)) for value in fact.value)
    return fact.id, (nominal * of_capacity + expelled.amount * of_expelled) / 100


def _relative(way: Measured) -> Fraction:
    return way.off_by / way.wanted
