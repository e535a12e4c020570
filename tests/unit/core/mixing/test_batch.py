"""What to do where no tool is good enough."""

from __future__ import annotations

from fractions import Fraction

from assistant.core.facts import Facts
from assistant.core.household import Measure
from assistant.core.mixing.batch import better
from assistant.core.mixing.dilution import mix
from assistant.core.mixing.measuring import best_measure
from assistant.core.quantities.quantity import read_amount

FAT = Measure("fat syringe", read_amount("10 mL"), read_amount("0.2 mL"))
JUG = Measure("jug", read_amount("500 mL"), read_amount("25 mL"), "jug")


def test_the_smallest_batch_is_measured_well_and_a_mark_less_is_not(facts: Facts) -> None:
    found = better(mix(read_amount("100 mL"), Fraction(1, 50)), (FAT,), facts)
    assert found is not None
    assert found.batch is not None
    assert found.measured is not None
    assert found.measured.good_enough
    less = best_measure(read_amount(f"{float(found.batch.concentrate.amount) - 0.2:g} mL"), (FAT,), facts)
    assert less is not None
    assert not less.good_enough


def test_two_steps_come_to_the_share_that_was_wanted(facts: Facts) -> None:
    wanted = mix(read_amount("1 L"), Fraction(1, 2000))
    found = better(wanted, (FAT,), facts)
    assert found is not None
    steps = found.two_steps
    assert steps is not None
    first = steps.first.concentrate.amount / steps.first.total.amount
    second = steps.second.amount / (steps.second.amount + steps.water.amount)
    assert first * second == Fraction(1, 2000)
    assert steps.first_measured.good_enough
    assert steps.second_measured.good_enough
    assert steps.first.total.amount >= steps.second.amount


def test_between_two_tools_a_larger_batch_is_no_help(facts: Facts) -> None:
    assert better(mix(read_amount("1 L"), Fraction(1, 8)), (FAT,), facts) is None


def test_no_tool_at_all_measures_well(facts: Facts) -> None:
    bucket = Measure("bucket", read_amount("10 L"), read_amount("9 L"), "jug")
    assert better(mix(read_amount("1 L"), Fraction(1, 50)), (bucket,), facts) is None
    assert better(mix(read_amount("1 L"), Fraction(1, 50)), (), facts) is None
