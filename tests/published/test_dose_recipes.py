"""Doses and strengths against published recipes. Where a source contradicts its own arithmetic, both stand here."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Any, Literal

import pytest

from assistant.core.facts import Facts
from assistant.core.mixing.chlorine import available_chlorine
from assistant.core.mixing.dilution import mix, parts_of_water, share_for, share_of
from assistant.core.quantities.amounts import Amount, SaidRatio
from assistant.core.quantities.ratio import Ratio, of_share, read
from assistant.core.quantities.units import convert

CDC_2008 = "Premier Safety Institute bulletin (24 Nov 2008), the bleach table of the CDC 2008 disinfection guideline"
CDC_E = "CDC, Environmental cleaning in resource-limited settings, Appendix E"
WHO_2014 = "WHO (2014) Infection prevention and control of epidemic-prone respiratory infections, Annex G, Table G.1"
LAB_TABLE = "Laboratory biosafety manual text on a document site, Table 12"
WAC = "Washington Administrative Code 296-823-14055, note on disinfectants"
CDC_2020 = "CDC (2020) Cleaning and disinfecting your facility, CS316270A, Disinfect"
NCSU = "Fraser, Lackey (2004) North Carolina State University food-safety questions, Sanitation and hygiene"
IERE = "Environmental education site on panleukopenia, 1:32 in kitchen measures"


def ratio(n: str | int, word: Literal["in", "to"]) -> Ratio:
    found = read(SaidRatio(Fraction(1), Fraction(n), word), None)
    assert isinstance(found, Ratio)
    return found


def amount(size: str, unit: str) -> Amount:
    return Amount(Fraction(size), unit)


@dataclass(frozen=True)
class Row:
    source: str
    percent: str
    share: Fraction
    ppm: float
    tolerance: float
    why: str


def added(part: tuple[str, str], water: tuple[str, str]) -> Fraction:
    """So much bleach added to so much water."""
    bleach, whole = convert(amount(*part), "mL").amount, convert(amount(*water), "mL").amount
    return share_of(Amount(bleach, "mL"), Amount(bleach + whole, "mL"))


def made_up(part: tuple[str, str], total: tuple[str, str]) -> Fraction:
    """So much bleach, then water to so much in all."""
    return share_of(amount(*part), amount(*total))


EXACT, WHOLE = "exact in the source", "printed without decimals"
STRENGTHS = [
    Row(CDC_2008, "5.25", Fraction(1), 52500, 0, EXACT),
    Row(CDC_2008, "6.15", Fraction(1), 61500, 0, EXACT),
    Row(CDC_2008, "5.25", ratio(10, "in").share, 5250, 0, EXACT),
    Row(CDC_2008, "6.15", ratio(10, "in").share, 6150, 0, EXACT),
    Row(CDC_2008, "5.25", ratio(100, "in").share, 525, 0, EXACT),
    Row(CDC_2008, "6.15", ratio(100, "in").share, 615, 0, EXACT),
    Row(f"{CDC_2008}; 1:1000 from memory", "5.25", ratio(1000, "in").share, 53, 0.51, WHOLE),
    Row(f"{CDC_2008}; 1:1000 from memory", "6.15", ratio(1000, "in").share, 62, 0.51, WHOLE),
    Row("Copy of the same table in public code, 1:20", "5.25", ratio(20, "in").share, 2625, 0, EXACT),
    Row("Copy of the same table in public code, 1:20", "6.15", ratio(20, "in").share, 3075, 0, EXACT),
    Row("US institution's bleach safety sheet, first paragraph", "5.25", ratio(10, "in").share, 5250, 0, EXACT),
    Row(WHO_2014, "5", ratio(99, "to").share, 500, 0, EXACT),
    Row(WHO_2014, "2.5", share_of(amount("2", "mL"), amount("100", "mL")), 500, 0, EXACT),
    Row(IERE, "5.25", ratio(32, "to").share, 1591, 0.5, WHOLE),
    Row(IERE, "6", ratio(32, "to").share, 1818, 0.5, WHOLE),
    Row(IERE, "8.25", ratio(32, "to").share, 2500, 0, EXACT),
    Row(NCSU, "5.25", added(("1", "tbsp"), ("1", "US gal")), 200, 5, "printed to one figure; its arithmetic is 204"),
    Row(WAC, "5.25", made_up(("94", "mL"), ("946", "mL")), 5250, 40, "its 94 mL stands for a tenth of 946: 0.6 % off"),
    Row(WAC, "5.25", made_up(("10", "mL"), ("946", "mL")), 525, 31, "its 10 mL stands for a hundredth: 5.7 % off"),
    Row(CDC_2020, "5.25", added(("5", "tbsp"), ("1", "US gal")), 1000, 10, '"at least 1000", made from old bleach'),
]


@pytest.mark.parametrize("row", STRENGTHS, ids=lambda row: f"{row.percent}-{float(row.share):.5f}")
def test_strength_as_published(row: Row, facts: Facts) -> None:
    stock = available_chlorine(Fraction(row.percent), None, facts).ppm
    assert float(stock * row.share) == pytest.approx(row.ppm, abs=row.tolerance or 1e-9), row.source


# CDC_2008 prints cups beside its ratios, and ppm beside the cups, that its own arithmetic doesn't give. The rule that
# picks: the ratio is kept to the letter, never the cups. Range: 5.25 to 6.15 percent, added to a US gallon.
CUPS = [("1.5", 6000, 4500, 5271), ("0.25", 600, 808, 946)]


@pytest.mark.parametrize(("cups", "printed", "low", "high"), CUPS)
def test_the_cups_printed_beside_the_ratios_make_something_else(
    cups: str, printed: int, low: int, high: int, facts: Facts
) -> None:
    share = added((cups, "US cup"), ("1", "US gal"))
    made = [float(available_chlorine(Fraction(p), None, facts).ppm * share) for p in ("5.25", "6.15")]
    assert made == pytest.approx([low, high], abs=0.6)
    assert not low <= printed <= high
    assert [float(cups), printed] in facts["mixing-cdc-cups"].value


# State of Alaska DEC, Sanitizing sheet: a teaspoon to a gallon "for 100 ppm" holds for 8.25 percent bleach only.
@pytest.mark.parametrize(("percent", "ppm"), [("5.25", 68), ("6", 78), ("8.25", 107)])
def test_a_teaspoon_to_the_gallon_depends_on_the_bleach(percent: str, ppm: int, facts: Facts) -> None:
    made = available_chlorine(Fraction(percent), None, facts).ppm * added(("1", "tsp"), ("1", "US gal"))
    assert float(made) == pytest.approx(ppm, abs=0.6)  # whole ppm


# source and place, percent of the bleach, percent wanted, parts of water for each part of bleach. All exact.
PARTS = [
    (f"{CDC_E}, Example 1", "3.5", "0.5", 6),
    (f"{CDC_E}, Example 3", "5.0", "0.1", 49),
    (f"{WHO_2014}", "5", "0.05", 99),
    (f"{WHO_2014}, 2 parts with 98", "2.5", "0.05", 49),
    ("CDC and WHO chlorine posters of 2014, from memory", "5", "0.5", 9),
]


@pytest.mark.parametrize(("source", "stock", "wanted", "water"), PARTS)
def test_parts_of_water_as_published(source: str, stock: str, wanted: str, water: int) -> None:
    assert parts_of_water(Fraction(wanted), Fraction(stock)) == water, source
    assert of_share(share_for(Fraction(wanted), Fraction(stock))).n == water


# source, stock percent, wanted percent, total, concentrate in mL (or the total's own unit), tolerance and why.
DOSES = [
    (LAB_TABLE, "5", "0.1", ("1", "L"), 20.0, 0.0, "exact"),
    (LAB_TABLE, "5", "0.5", ("1", "L"), 100.0, 0.0, "exact"),
    ("Worked identity C1 V1 = C2 V2, from memory", "5.25", "0.1", ("1", "L"), 19.05, 0.005, "two decimals"),
    ("Personal site on food-safe bleach, calculation", "7.86", "0.02", ("1", "L"), 2.545, 0.0005, "three decimals"),
]


@pytest.mark.parametrize(("source", "stock", "wanted", "total", "millilitres", "tolerance", "why"), DOSES)
def test_doses_as_published(
    source: str, stock: str, wanted: str, total: tuple[str, str], millilitres: float, tolerance: float, why: str
) -> None:
    made = mix(amount(*total), share_for(Fraction(wanted), Fraction(stock)))
    assert made.concentrate.unit == "mL"
    assert float(made.concentrate.amount) == pytest.approx(millilitres, abs=tolerance or 1e-12), (source, why)
    assert float(made.water.amount) == pytest.approx(1000 - millilitres, abs=tolerance or 1e-12)


# A chemical supplier's dosing page, Water disinfection: 5000 US gal at 100 ppm from 6 and 12 percent.
@pytest.mark.parametrize(("percent", "gallons"), [("6", 8.33), ("12", 4.17)])
def test_a_tank_of_5000_gallons(percent: str, gallons: float, facts: Facts) -> None:
    share = share_for(Fraction(100), available_chlorine(Fraction(percent), None, facts).ppm)
    dosed = convert(mix(amount("5000", "US gal"), share).concentrate, "US gal").amount
    assert float(dosed) == pytest.approx(gallons, abs=0.005)  # two decimals printed


# USP General Chapter <7>, conversion table: ratio strength 1:N (N in all) in mg/mL, weight in volume. All exact.
@pytest.mark.parametrize(
    ("n", "mg_per_ml"), [(1000, 1), (10000, "0.1"), (5000, "0.2"), (50000, "0.02"), (2000, "0.5"), (400, "2.5")]
)
def test_ratio_strength_is_the_in_reading(n: int, mg_per_ml: Any) -> None:
    assert ratio(n, "in").share * 1000 == Fraction(mg_per_ml)


# Clinical chemistry textbook passage; encyclopaedia article Dilution ratio (1:5, two snapshots; 1+49).
@pytest.mark.parametrize(
    ("n", "word", "water", "factor"),
    [(4, "in", 3, "1/4"), (4, "to", 4, "1/5"), (5, "to", 5, "1/6"), (5, "in", 4, "1/5"), (49, "to", 49, "1/50")],
)
def test_in_and_to_as_the_textbook_has_them(n: int, word: Literal["in", "to"], water: int, factor: str) -> None:
    assert ratio(n, word).share == Fraction(factor)
    assert ratio(n, word).as_to == (1, water)


# ---------------------------------------------------------------- ounces to the gallon: two charts, two readings

CHART_TO = [(4, 25.5), (10, 11.5), (12, 10), (15, 8), (20, 6), (32, 4), (40, 3), (50, 2.5), (64, 2), (128, 1)]
CHART_IN = [(4, 32), (5, 26), (10, 12), (12, 10), (15, 8), (20, 6), (32, 4), (40, 3), (50, 2.5), (64, 2), (128, 1)]
CHART_BOTTLE = [(4, 4.75), (10, 2.25), (12, 1.75), (15, 1.5), (20, 1), (32, 0.75), (40, 0.6), (50, 0.5), (64, 0.33)]
CHART_QUART = [(4, 6.5), (10, 3), (12, 2.5), (15, 2), (20, 1.5), (32, 1), (40, 0.8), (50, 0.6), (64, 0.5), (128, 0.25)]


def ounces(n: int, word: Literal["in", "to"], total: Amount) -> float:
    made = mix(total, ratio(n, word).share).concentrate
    assert made.unit == "US fl oz"
    return float(made.amount)


@pytest.mark.parametrize(("n", "printed"), CHART_TO)
def test_ounces_to_make_a_gallon_as_the_to_chart(n: int, printed: float) -> None:
    # Commercial dilution control chart, Gallons table. It prints quarter and half ounces: within 0.25 throughout.
    assert ounces(n, "to", amount("1", "US gal")) == pytest.approx(printed, abs=0.25)


@pytest.mark.parametrize(("n", "printed"), CHART_IN)
def test_ounces_to_make_a_gallon_as_the_in_chart(n: int, printed: float) -> None:
    # Another commercial chart, rule 128 / N. Printed in whole ounces but for 2.5; 1:10 is rounded down from 12.8.
    assert ounces(n, "in", amount("1", "US gal")) == pytest.approx(printed, abs=0.81 if n == 10 else 0.67)


def test_the_two_charts_contradict_each_other_and_the_word_said_picks() -> None:
    # "1:4" is 25.5 ounces on one chart and 32 on the other. Neither is followed: "to" gives the one, "in" the other.
    assert ounces(4, "to", amount("1", "US gal")) == pytest.approx(25.6)
    assert ounces(4, "in", amount("1", "US gal")) == 32


def test_the_in_charts_line_for_1_to_100_breaks_its_own_rule() -> None:
    # It prints 1 ounce for 1:100; 128 / 100 is 1.28, and that is what is given.
    assert ounces(100, "in", amount("1", "US gal")) == pytest.approx(1.28)


@pytest.mark.parametrize(("n", "printed"), CHART_BOTTLE)
def test_ounces_for_a_24_ounce_bottle(n: int, printed: float) -> None:
    # The to-chart's trigger-bottle table, printed to the nearest quarter or tenth of an ounce: within 0.15.
    assert ounces(n, "to", amount("24", "US fl oz")) == pytest.approx(printed, abs=0.15)


@pytest.mark.parametrize(("n", "printed"), CHART_QUART)
def test_ounces_for_a_quart(n: int, printed: float) -> None:
    # The to-chart's first copy, Quarts table, as coarse: within 0.11.
    assert ounces(n, "to", amount("1", "US qt")) == pytest.approx(printed, abs=0.11)


def test_half_a_cup_to_the_gallon_is_exactly_1_to_32() -> None:
    # IERE: "1/2 cup per US gallon"; per litre of water "about 30 mL" is 31.25.
    assert added(("0.5", "US cup"), ("1", "US gal")) == ratio(32, "to").share
    assert added(("31.25", "mL"), ("1", "L")) == ratio(32, "to").share


# ---------------------------------------------------------------- percent and chlorine, exactly


# Pool forum thread listing label values, post 1: percent hypochlorite and percent available chlorine by weight.
@pytest.mark.parametrize(("hypochlorite", "chlorine"), [("5.25", 5.0), ("6.0", 5.7), ("8.25", 7.86)])
def test_hypochlorite_to_available_chlorine_as_labels_pair_them(
    hypochlorite: str, chlorine: float, facts: Facts
) -> None:
    # Two figures printed for the weaker two: half of the last place.
    ppm = available_chlorine(Fraction(hypochlorite), "w/v", facts).ppm
    assert float(ppm) / 10_000 == pytest.approx(chlorine, abs=0.02)


def test_weight_percent_with_density_as_the_specification_of_5_to_6_percent(facts: Facts) -> None:
    # An Indian maker's specification sheet: relative density at least 1.08 at 25 degC for 5 to 6 percent.
    # The straight line comes to 1.082 for 6 percent and 1.068 for 5: within 0.015.
    for percent in ("5", "5.5", "6"):
        by_weight = available_chlorine(Fraction(percent), "w/w", facts).ppm
        by_volume = available_chlorine(Fraction(percent), "w/v", facts).ppm
        assert float(by_weight / by_volume) == pytest.approx(1.08, abs=0.015)


def test_weight_percent_of_120_grams_a_litre_meets_the_published_density(facts: Facts) -> None:
    # Powell Fabrication: 1.157 to 1.168 by caustic. White (1972): weight percent hypochlorite is
    # g/L x 1.05 / (10 x density), so 120 g/L at 1.16 is 10.86 percent; back again within 0.1 percent.
    percent = Fraction(120) * Fraction("1.05") / (10 * Fraction("1.16"))
    assert float(available_chlorine(percent, "w/w", facts).ppm) == pytest.approx(120_000, rel=0.001)
