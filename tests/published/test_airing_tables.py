"""Airing against two published tables of minutes by air changes an hour."""

from __future__ import annotations

import pytest

from assistant.core.air.airing import air_changes_needed, minutes
from assistant.core.facts import Facts
from assistant.core.quantities.errors import OutOfRange

# CDC/HICPAC, Guidelines for Environmental Infection Control in Health-Care Facilities (2003), Appendix B, Table B.1:
# air changes an hour, minutes for 99 percent, minutes for 99.9 percent. Printed in whole minutes.
CDC_B1 = [
    (2, 138, 207),
    (4, 69, 104),
    (6, 46, 69),
    (8, 35, 52),
    (10, 28, 41),
    (12, 23, 35),
    (15, 18, 28),
    (20, 14, 21),
    (50, 6, 8),
]

# Health Canada, Guidelines for preventing transmission of tuberculosis in Canadian health care facilities (1996),
# Appendix F: air changes an hour, minutes for 90, 99 and 99.9 percent. (Its row 13 misprints 99.9 percent: left out.)
HEALTH_CANADA_F = [
    (1, 138, 276, 414),
    (3, 46, 92, 138),
    (5, 28, 55, 83),
    (7, 20, 39, 59),
    (9, 15, 31, 46),
]


@pytest.mark.parametrize(("air_changes", "most", "nearly_all"), CDC_B1)
def test_minutes_as_in_cdc_table_b1(air_changes: int, most: int, nearly_all: int) -> None:
    # Within half a minute, the rounding of a table in whole minutes; 10 an hour at 99.9 percent is 41.45.
    assert minutes(air_changes, 0.99) == pytest.approx(most, abs=0.5)
    assert minutes(air_changes, 0.999) == pytest.approx(nearly_all, abs=0.5)


@pytest.mark.parametrize(("air_changes", "ninety", "most", "nearly_all"), HEALTH_CANADA_F)
def test_minutes_as_in_health_canada_appendix_f(air_changes: int, ninety: int, most: int, nearly_all: int) -> None:
    # The table multiplies a rounded 138 minutes, so it may be half a minute more off at 1 an hour.
    assert minutes(air_changes, 0.9) == pytest.approx(ninety, abs=0.6)
    assert minutes(air_changes, 0.99) == pytest.approx(most, abs=0.6)
    assert minutes(air_changes, 0.999) == pytest.approx(nearly_all, abs=0.6)


@pytest.mark.parametrize(
    ("fact", "figure"),
    [
        ("airing-shut", 0.41),  # Howard-Reed, Wallace, Ott (2002), abstract: mean with windows shut
        ("airing-one-opening", 1.5),  # Johnson et al. (2004), as cited in the ASHRAE study: 1.51
        ("airing-two-openings", 2.3),  # the same
        ("airing-three-openings", 2.75),  # the same, three or more
        ("airing-removal", 99),  # CDC/HICPAC (2003), Table B.1, the column used
    ],
)
def test_figures_carried(fact: str, figure: float, facts: Facts) -> None:
    assert facts[fact].value == figure
    assert facts[fact].kind == "published"


def test_one_window_takes_about_three_hours_and_two_take_two() -> None:
    assert minutes(1.5, 0.99) == pytest.approx(184, abs=1)
    assert minutes(2.3, 0.99) == pytest.approx(120, abs=1)


def test_poor_mixing_multiplies_the_time() -> None:
    assert minutes(2, 0.99, mixing=3) == pytest.approx(3 * minutes(2, 0.99))


@pytest.mark.parametrize("removal", [0, 1, -0.1, 1.5])
def test_no_share_removed_but_between_nothing_and_all(removal: float) -> None:
    with pytest.raises(OutOfRange):
        air_changes_needed(removal)


@pytest.mark.parametrize(("rate", "mixing"), [(0, 1), (-1, 1), (2, 0.5)])
def test_no_rate_below_or_at_nothing_and_no_mixing_better_than_perfect(rate: float, mixing: float) -> None:
    with pytest.raises(OutOfRange):
        minutes(rate, 0.99, mixing)
