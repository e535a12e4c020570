"""`bleach_now`, through whole turns, against tables of stored bleach and published half-lives."""

from __future__ import annotations

from fractions import Fraction

import pytest
from tool import Tool

from assistant.contract import Outcome, Reply
from assistant.core.facts import Facts
from assistant.core.household import Household
from assistant.core.mixing.decay import Kept, fraction_left, fraction_left_after
from assistant.core.quantities.amounts import Amount


def asked(percent: str, days: float, degrees: float, unit: str = "degC") -> Reply:
    return Tool(Household()).say(
        "bleach_now",
        agents=("sodium hypochlorite",),
        stock_strength=Amount(Fraction(percent), "%"),
        durations=(Amount(Fraction(str(days)), "d"),),
        temperatures=(Amount(Fraction(str(degrees)), unit),),
    )


# Pool-care community wiki, Breakdown of bleach by storage temperature, first table: 12.5 trade percent, degrees F as
# printed, percent after one, two and three months (30, 60, 90 days). Its author admits to fudging: within 0.54.
WIKI = [
    (70, 30, 11.11),
    (70, 60, 10.1),
    (70, 90, 9.28),
    (75, 30, 10.57),
    (75, 60, 9.33),
    (75, 90, 8.4),
    (80, 30, 9.93),
    (80, 60, 8.49),
    (80, 90, 7.48),
    (90, 30, 8.36),
    (90, 60, 6.73),
    (90, 90, 5.72),
]


@pytest.mark.parametrize(("fahrenheit", "days", "printed"), WIKI)
def test_strong_bleach_as_the_table_of_stored_bleach(fahrenheit: int, days: int, printed: float) -> None:
    assert asked("12.5", days, fahrenheit, "degF").values["strength_percent"] == pytest.approx(printed, abs=0.54)


# The same table at 100 F, and after six months, where it and the law part: by up to 1.3. The law is kept, since it was
# fitted to measurements over a stated range; the gap is what "a twentieth off" in the reply leaves unsaid of hot sheds.
@pytest.mark.parametrize(("fahrenheit", "days", "printed"), [(100, 90, 4.27), (90, 180, 4.41), (80, 180, 5.95)])
def test_where_the_table_and_the_law_part_the_law_says_less(fahrenheit: int, days: int, printed: float) -> None:
    found = asked("12.5", days, fahrenheit, "degF").values["strength_percent"]
    assert printed - 1.35 < found < printed


# Half-lives in days at 25 degC, by source; the law's own beside them. Honest spread: they disagree by up to 1.4 times.
HALF_LIVES = [
    ("12.5 trade percent at 24 degC, about 190 days, from memory", "12.5", 24, 190, 1.2),
    ("Older handbook table, 10 percent available chlorine, from memory", "10", 25, 220, 1.4),
    ("Older handbook table, 5 percent available chlorine, from memory", "5", 25, 790, 1.25),
    ("5 to 6 percent, 2 to 2.4 years at 25 degC, from memory", "5.5", 25, 803, 1.2),
]


@pytest.mark.parametrize(("source", "percent", "degrees", "days", "times"), HALF_LIVES)
def test_half_lives_agree_as_far_as_their_sources_do(
    source: str, percent: str, degrees: float, days: float, times: float
) -> None:
    left = asked(percent, days, degrees).values["fraction_left"]
    found = days * left / (1 - left)
    assert days / times < found < days * times, source


# Percent lost in a year. Press articles repeating a maker: 20 percent at room temperature; the law gives that at 20
# degC. A maker's consumer page: 6 percent holds its label for six months at 70 F, since it is over-filled.
@pytest.mark.parametrize(("degrees", "lost"), [(20, 20), (21, 23), (25, 34), (30, 51)])
def test_what_a_year_costs_household_bleach(degrees: int, lost: int, facts: Facts) -> None:
    # 0.87 mol/L (6 percent by weight is 61.8 g/L of chlorine): whole percents of the formula as published.
    assert 100 * (1 - fraction_left(61.7, degrees, 365, facts)) == pytest.approx(lost, abs=0.7)


def test_six_months_at_70_f_cost_six_percent_bleach_no_more_than_an_overfill() -> None:
    assert 0.86 < asked("6", 182.5, 70, "degF").values["fraction_left"] < 0.92


# Powell Fabrication: 200 g/L decays 4 to 5 times as fast as 100 g/L; the Chlorine Institute: half the strength, a
# quarter of the rate. The law with its salt gives about 10 and 3.2 (for 125 g/L): they contradict it as rules of thumb
# for "the same salt", and the law is kept because it counts the salt.
def test_stronger_bleach_decays_much_faster(facts: Facts) -> None:
    def rate(g_per_l: float) -> float:
        left = fraction_left(g_per_l, 25, 1, facts)
        return g_per_l * (1 - left)

    assert 5 < rate(200) / rate(100) < 11
    assert rate(125) / rate(62.5) > 4


def test_periods_add_up_as_the_integral_says(facts: Facts) -> None:
    # 1/C - 1/C0 is the sum of k t, so two half times are one whole, in any order.
    whole = fraction_left(60, 25, 90, facts)
    assert fraction_left_after(60, (Kept(25, 40), Kept(25, 50)), facts) == pytest.approx(whole, rel=1e-12)
    warm_first = fraction_left_after(60, (Kept(30, 30), Kept(20, 60)), facts)
    assert warm_first == pytest.approx(fraction_left_after(60, (Kept(20, 60), Kept(30, 30)), facts), rel=1e-12)
    assert fraction_left(60, 30, 90, facts) < warm_first < fraction_left(60, 20, 90, facts)


# Adam, Gordon (1999), abstract: fitted on 0.7 to 3 mol/L and 15 to 55 degC. Beyond it no figure is given.
@pytest.mark.parametrize(("percent", "degrees"), [("3", 25), ("4.9", 25), ("22", 25), ("6", 14), ("6", 4)])
def test_outside_the_fit_there_is_no_figure_and_it_is_said(percent: str, degrees: float) -> None:
    reply = asked(percent, 60, degrees)
    assert reply.outcome is Outcome.ANSWER
    assert (reply.values["strength_percent"], reply.values["fraction_left"]) == (None, None)
    assert "can't work out" in reply.say
