"""What to do where no tool is good enough for a dose: a larger batch, or two steps by way of a weaker mix.

Which tool measures how well is `measuring`'s.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from assistant.core.facts import Facts
from assistant.core.household import Measure
from assistant.core.mixing.dilution import Mixed, mix, mix_of_all
from assistant.core.mixing.measuring import Measured, best_measure, least_measured_well
from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.units import convert

TWO_STEPS = "mixing-two-steps"


@dataclass(frozen=True, slots=True)
class TwoSteps:
    """A dose by way of a weaker mix: some of it is made first, and a part of that goes in for the concentrate."""

    first: Mixed
    """The weaker mix."""
    first_measured: Measured
    """How its concentrate is measured."""
    second: Amount
    """Of the weaker mix, for the mix that is wanted."""
    second_measured: Measured
    water: Amount
    """For the second step."""
    parts: int
    """The weaker mix is one in so many."""


@dataclass(frozen=True, slots=True)
class Better:
    """How a dose can be measured well."""

    batch: Mixed | None = None
    """The smallest batch whose concentrate a tool measures well; None: there is none, or two steps are saner."""
    measured: Measured | None = None
    """How the batch's concentrate is measured."""
    two_steps: TwoSteps | None = None


def better(wanted: Mixed, tools: tuple[Measure, ...], facts: Facts) -> Better | None:
    """How to do with these tools what can't be measured well in one go; None: there is no way.

    The smallest batch that a tool measures well, unless that is more than a few times what is wanted and two steps do
    it. The first step of two is one in ten.

    wanted: the mix as asked for, with water in it.
    Source: measure-good-enough; mixing-two-steps.
    """
    least = least_measured_well(tools, facts)
    if least is None:
        return None
    whole = convert(wanted.total, wanted.concentrate.unit).amount
    share = wanted.concentrate.amount / whole
    batch = mix_of_all(least.amount, share)
    most_times, parts = facts[TWO_STEPS].value
    if convert(batch.total, "mL").amount <= convert(wanted.total, "mL").amount:
        return None  # the dose is more than the least: it lies between the tools, and a larger batch is no help
    if convert(batch.total, "mL").amount > most_times * convert(wanted.total, "mL").amount:
        steps = _two_steps(wanted, least, parts, (tools, facts))
        if steps is not None:
            return Better(two_steps=steps)
    return Better(batch, least)


def _two_steps(wanted: Mixed, least: Measured, parts: int, given: tuple[tuple[Measure, ...], Facts]) -> TwoSteps | None:
    """By way of one in `parts`; None where it would have to be stronger than that, or is measured no better."""
    tools, facts = given
    second = Amount(wanted.concentrate.amount * parts, wanted.concentrate.unit)
    whole = convert(wanted.total, second.unit).amount
    if second.amount >= whole:
        return None
    measured = best_measure(second, tools, facts)
    if measured is None or not measured.good_enough:
        return None
    enough = max(convert(least.amount, "mL").amount, convert(second, "mL").amount / parts)
    concentrate = best_measure(Amount(enough, "mL"), tools, facts)
    if concentrate is None or not concentrate.good_enough:
        return None
    first = mix(Amount(convert(concentrate.amount, "mL").amount * parts, "mL"), Fraction(1, parts))
    if first.total.amount < convert(second, "mL").amount:
        return None
    return TwoSteps(first, concentrate, second, measured, Amount(whole - second.amount, second.unit), parts)
