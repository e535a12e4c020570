"""`read_ratio`, and recipes of ounces and cups to the gallon, against the sources that say what they mean."""

from __future__ import annotations

from fractions import Fraction
from pathlib import Path

import pytest
from tool import Tool

from assistant.core.facts import Facts
from assistant.core.household import Habits, Household
from assistant.core.quantities.amounts import SaidRatio
from assistant.core.quantities.quantity import Gallon, read_mix
from assistant.core.quantities.ratio import Ratio, read
from assistant.understand.numbers.amounts import amounts_in
from assistant.understand.text.words import tokens_of

HERE = Path(__file__)

TEXTBOOK = "Clinical chemistry textbook, passage on ratios and dilutions"
CHART_A = "Commercial dilution control chart, Tips and end-use cost"
WHO = "WHO (2014), Annex G, Table G.1"
CDC_E = "CDC, Environmental cleaning in resource-limited settings, Appendix E"
SHELTER = "Parvovirus volunteer wiki, disinfectant dilutions, Sodium hypochlorite"

# source, as said, parts in all (as_in), parts of water (as_to). All exact.
MEANINGS = [
    (f"{TEXTBOOK}: 1 part and 3", "1 in 4", 4, 3),
    (f"{TEXTBOOK}: 1 part and 4", "1 to 4", 5, 4),
    ("Encyclopaedia article Dilution ratio, photographic 1+49", "1 to 49", 50, 49),
    ("Encyclopaedia article Dilution ratio, dilution factor 1/5", "1 in 5", 5, 4),
    ("Encyclopaedia article Dilution ratio, dilution ratio 1:5", "1 to 5", 6, 5),
    (f"{CHART_A}: a gallon at 1:32 makes 33", "1 to 32", 33, 32),
    (f"{WHO}: 1 part bleach with 99 of water", "1 in 100", 100, 99),
    (f"{WHO}: 2 parts with 98", "2 in 100", 50, 49),
    (f"{CDC_E}, Example 1: 6 of water", "1 to 6", 7, 6),
    (f"{CDC_E}, Example 3: 49 of water", "1 to 49", 50, 49),
    (f"{SHELTER}: 1 part bleach and 30 parts water", "1 to 30", 31, 30),
    ("Another commercial chart, rule 128 / N", "1 in 128", 128, 127),
    ("USP General Chapter <7>: 1:1000 is 1 g in 1000 mL", "1 in 1000", 1000, 999),
]


@pytest.mark.parametrize(("source", "said", "in_all", "water"), MEANINGS)
def test_a_ratio_means_what_its_source_says(source: str, said: str, in_all: int, water: int) -> None:
    values = Tool(Household()).say("read_ratio", mixes=(read_mix(said),)).values
    assert (values["as_in"], values["as_to"]) == ((1, in_all), (1, water)), source


# The same colon, as two sources of each kind read it: the keeper's setting decides, never the tool.
@pytest.mark.parametrize(
    ("source", "setting", "said", "water"),
    [
        ("CDC 2008 table: 1:10 is 5250 of 52500 ppm", "in", "1:10", 9),
        ("CDC 2008 table: 1:100 is 525 of 52500 ppm", "in", "1:100", 99),
        ("Commercial dilution control chart: large number is parts water", "to", "1:10", 10),
        ("Commercial dilution control chart: large number is parts water", "to", "1:64", 64),
    ],
)
def test_a_colon_is_read_as_the_keeper_set_it(source: str, setting: str, said: str, water: int) -> None:
    home = Household(habits=Habits(ratio=setting))  # type: ignore[arg-type]
    values = Tool(home).say("read_ratio", mixes=(read_mix(said),)).values
    assert values["as_to"] == (1, water), source


# ---------------------------------------------------------------- so much to the gallon


def recipe(said: str, gallon: Gallon = "US") -> Ratio:
    (found,) = amounts_in(tokens_of(said), gallon).found
    assert isinstance(found.value, SaidRatio)
    ratio = read(found.value, None)
    assert isinstance(ratio, Ratio)
    return ratio


# source, as said, whose gallon, parts of water, tolerance in parts and why.
RECIPES: list[tuple[str, str, Gallon, float, float, str]] = [
    ("Environmental education site on panleukopenia", "half a cup to the gallon", "US", 32, 0, "exact"),
    ("Fraser, Lackey (2004), Sanitation and hygiene", "1 tablespoon to a gallon", "US", 256, 0, "exact"),
    ("Fraser, Lackey (2004): final dip", "1/4 cup to every 5 gallons", "US", 320, 0, "exact"),
    ("CDC (2020) CS316270A: 5 tablespoons", "5 tablespoons to the gallon", "US", 51.2, 0, "exact"),
    ("CDC (2020) CS316270A: 4 teaspoons", "4 teaspoons to the quart", "US", 48, 0, "exact"),
    ("State of Alaska DEC, Sanitizing sheet", "1 teaspoon to the gallon", "US", 768, 0, "exact"),
    ("CDC 2008 table, beside 1:10", "one and a half cups to the gallon", "US", 10.67, 0.01, "two decimals"),
    ("CDC 2008 table, beside 1:100", "a quarter cup to the gallon", "US", 64, 0, "exact"),
    ("Northwestern Health Unit, Ontario", "10 mL to every 4 L", "US", 400, 0, "exact"),
    ("Northwestern Health Unit, Ontario", "1 tsp to every 2 cups", "US", 96, 0, "exact"),
    ("Arithmetic of the Act's 160 ounces", "1 ounce to the gallon", "imperial", 160, 0, "exact"),
    ("Arithmetic of Handbook 44's 128 ounces", "1 ounce to the gallon", "US", 128, 0, "exact"),
    ("The same, the system named", "1 ounce to the imperial gallon", "US", 160, 0, "exact"),
    ("The same, the system named", "1 ounce to the american gallon", "imperial", 128, 0, "exact"),
]


@pytest.mark.parametrize(("source", "said", "gallon", "water", "tolerance", "why"), RECIPES)
def test_a_recipe_is_one_mix(source: str, said: str, gallon: Gallon, water: float, tolerance: float, why: str) -> None:
    assert float(recipe(said, gallon).as_to[1]) == pytest.approx(water, abs=tolerance or 1e-12), (source, why)


def test_ounces_to_make_a_gallon_as_the_to_chart_reads_them(facts: Facts) -> None:
    # Commercial dilution control chart, Gallons table: N parts of water. "N ounces to make a gallon" is N in 128. It
    # rounds to quarter ounces and past 1:12 to 128 over N, so its N comes back within a fourteenth.
    for n, printed in facts["mixing-oz-chart-to"].value:
        assert float(recipe(f"{printed} ounces to make a gallon").as_to[1]) == pytest.approx(n, rel=0.07, abs=0.35)


def test_ounces_to_a_gallon_as_the_in_chart_reads_them(facts: Facts) -> None:
    # Another chart, rule 128 over N: N ounces in a gallon in all. Whole ounces: N comes back within a fifteenth.
    for n, printed in facts["mixing-oz-chart-in"].value:
        assert float(recipe(f"{printed} ounces in a gallon").as_in[1]) == pytest.approx(n, rel=0.07)


def test_the_same_words_are_a_quarter_stronger_with_a_us_gallon() -> None:
    # Arithmetic from the definitions: 160 against 128 ounces to the gallon.
    us, imperial = recipe("4 ounces in a gallon", "US"), recipe("4 ounces in a gallon", "imperial")
    assert us.share / imperial.share == Fraction(5, 4)
