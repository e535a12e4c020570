"""Which tool, to which mark, and when none is good enough. Tolerances are checked in tests/published."""

from __future__ import annotations

from fractions import Fraction

import pytest

from assistant.core.facts import Facts
from assistant.core.household import Measure, MeasureKind
from assistant.core.mixing.measuring import best_measure, measured_with, why_unmeasured
from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.errors import OutOfRange, WrongUnit


def ml(size: str) -> Amount:
    return Amount(Fraction(size), "mL")


def tool(name: str, capacity: str, graduation: str | None, kind: MeasureKind = "syringe") -> Measure:
    return Measure(name, ml(capacity), None if graduation is None else ml(graduation), kind)


ONE, TEN = tool("one", "1", "0.01"), tool("ten", "10", "0.2")
CUP, JUG = tool("cup", "60", "5", "cup"), tool("jug", "500", "25", "jug")
SHELF = (ONE, TEN, CUP, JUG)


@pytest.mark.parametrize(
    ("wanted", "name", "full_fills", "mark"),
    [
        ("0.05", "one", 0, "0.05"),
        ("0.5", "one", 0, "0.5"),
        ("2.5", "one", 2, "0.5"),
        ("5", "ten", 0, "5"),  # five fills of the small one would be hardly better
        ("15.1515", "ten", 1, "5.2"),
        ("20", "ten", 1, "10"),
        ("23.4375", "ten", 2, "3.4"),
        ("50", "ten", 4, "10"),
        ("60", "cup", 0, "60"),  # one cup within a tenth, against six fills of the syringe
        ("375", "jug", 0, "375"),
        ("1000", "jug", 1, "500"),
    ],
)
def test_the_best_tool_and_its_mark(wanted: str, name: str, full_fills: int, mark: str, facts: Facts) -> None:
    found = best_measure(ml(wanted), SHELF, facts)
    assert found is not None
    assert (found.tool.name, found.full_fills, found.mark) == (name, full_fills, ml(mark))
    assert found.amount.amount == full_fills * found.full.amount + Fraction(mark)


def test_the_error_of_each_fill_counts(facts: Facts) -> None:
    # 15.2 of a 10 mL syringe: 4 percent of each fill, and half of 0.2 by eye for each.
    found = measured_with(TEN, ml("15.2"), facts)
    assert found is not None
    assert found.error == Fraction("0.04") * Fraction("15.2") + 2 * Fraction("0.1")


def test_the_keepers_own_tolerance_wins(facts: Facts) -> None:
    own = Measure("own", ml("10"), ml("0.2"), "syringe", Amount(Fraction(1), "%"))
    found = measured_with(own, ml("8"), facts)
    assert found is not None
    assert (found.error, found.fact) == (Fraction("0.18"), "")


def test_a_tool_that_would_need_too_many_fills_is_passed_over(facts: Facts) -> None:
    assert measured_with(ONE, ml("10"), facts) is not None
    assert measured_with(ONE, ml("10.02"), facts) is None


def test_below_its_first_mark_a_tool_measures_nothing(facts: Facts) -> None:
    assert best_measure(ml("0.004"), SHELF, facts) is None
    assert best_measure(ml("0.004"), (), facts) is None


def test_a_measure_with_no_good_tool_is_said_to_be_rough(facts: Facts) -> None:
    found = best_measure(ml("0.05"), SHELF, facts)
    assert found is not None
    assert not found.good_enough


def test_a_tool_that_may_be_off_by_more_than_half_measures_nothing(facts: Facts) -> None:
    found = measured_with(ONE, ml("0.02"), facts)
    assert found is not None
    assert found.off_by > found.wanted / 2
    assert best_measure(ml("0.02"), SHELF, facts) is None


@pytest.mark.parametrize(
    ("wanted", "tools", "why"),
    [
        ("0.02", SHELF, "too little"),
        ("5001", SHELF, "too much"),
        ("12", (ONE, JUG), "between"),
        ("0.5", (ONE,), "too little"),
        ("1", (ONE,), "between"),
        ("10.1", (ONE,), "too much"),
    ],
)
def test_why_no_tool_measures_it(wanted: str, tools: tuple[Measure, ...], why: str, facts: Facts) -> None:
    assert why_unmeasured(ml(wanted), tools, facts) == why


def test_a_spoon_has_only_its_full_measure(facts: Facts) -> None:
    spoon = Measure("teaspoon", Amount(Fraction(1), "tsp"), None, "spoon")
    found = measured_with(spoon, ml("14"), facts)
    assert found is not None
    assert (found.fills, found.mark) == (3, Amount(Fraction(1), "tsp"))


def test_marks_in_another_unit_than_the_capacity_count_up_to_the_highest(facts: Facts) -> None:
    beaker = Measure("beaker", Amount(Fraction(1, 2), "imp pt"), ml("10"), "jug")
    found = measured_with(beaker, ml("300"), facts)
    assert found is not None
    assert (found.full, found.full_fills, found.mark) == (ml("280"), 1, ml("20"))


def test_a_mark_half_way_goes_up_to_the_stronger(facts: Facts) -> None:
    found = measured_with(TEN, ml("12.5"), facts)
    assert found is not None
    assert found.amount == ml("12.6")


def test_nothing_and_lengths_are_not_measured(facts: Facts) -> None:
    with pytest.raises(OutOfRange):
        best_measure(ml("0"), SHELF, facts)
    with pytest.raises(WrongUnit):
        best_measure(Amount(Fraction(1), "cm"), SHELF, facts)
