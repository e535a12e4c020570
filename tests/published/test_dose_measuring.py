"""Tools' tolerances against the published ones."""

from __future__ import annotations

from fractions import Fraction

import pytest

from assistant.core.facts import Facts
from assistant.core.household import Measure, MeasureKind
from assistant.core.mixing.measuring import tolerance
from assistant.core.quantities.amounts import Amount

PHILLIPS = "Phillips (2016) Syringe accuracy estimates for ISO 7886-1, Surgical Materials Testing Laboratory"
USP = "USP 29, general chapter 1221, Teaspoon"
MEMORY = "ISO 7886-1, Table 1, from memory"

# source and place, kind, nominal mL, expelled mL, plus or minus mL. All exact arithmetic of the source.
TOLERANCES: list[tuple[str, MeasureKind, str, str, str]] = [
    (f"{PHILLIPS}, Worked examples", "syringe", "10", "4", "0.19"),
    (f"{PHILLIPS}, Introduction", "syringe", "1", "0.1", "0.017"),
    (f"{PHILLIPS}, Introduction", "syringe", "1", "0.49", "0.0248"),
    (f"{PHILLIPS}, Introduction", "syringe", "1", "0.5", "0.025"),
    (f"{PHILLIPS}, Introduction", "syringe", "1", "1", "0.05"),
    (MEMORY, "syringe", "2", "1", "0.05"),
    (MEMORY, "syringe", "3", "1", "0.065"),
    (MEMORY, "syringe", "5", "2", "0.095"),
    (MEMORY, "syringe", "5", "2.5", "0.1"),
    (MEMORY, "syringe", "10", "5", "0.2"),
    (MEMORY, "syringe", "20", "20", "0.8"),
    (MEMORY, "syringe", "60", "10", "1.0"),
    (f"{USP}, chapter", "spoon", "4.93", "4.93", "0.24"),
    ("Household measuring cups, from memory", "cup", "250", "250", "12.5"),
]


@pytest.mark.parametrize(("source", "kind", "nominal", "expelled", "plus_minus"), TOLERANCES)
def test_tolerance_as_published(
    source: str, kind: MeasureKind, nominal: str, expelled: str, plus_minus: str, facts: Facts
) -> None:
    tool = Measure("tool", Amount(Fraction(nominal), "mL"), Amount(Fraction("0.01"), "mL"), kind)
    assert tolerance(tool, Amount(Fraction(expelled), "mL"), facts).amount == Fraction(plus_minus), source


def test_a_level_us_teaspoon_may_hold_4_69_to_5_17(facts: Facts) -> None:
    # USP 29 <1221>, arithmetic: 4.93 plus or minus 0.24; the US teaspoon is 4.929, so within 0.002.
    tool = Measure("teaspoon", Amount(Fraction(1), "tsp"), None, "spoon")
    off = float(tolerance(tool, Amount(Fraction("4.92892159375"), "mL"), facts).amount)
    assert (4.92892 - off, 4.92892 + off) == pytest.approx((4.69, 5.17), abs=0.002)
