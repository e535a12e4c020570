"""A mix weaker than every figure behind the agent's default wet time: the time is kept, nothing vouches for it.

The figures: bleach of 1,000 ppm and more (CDC leaflet CS316270A, 2020, five tablespoons of bleach a US gallon, restated
as at least 1,000 ppm), alcohol of 70 percent (University of Iowa, 8.2.1 Alcohols); facts/wet_times.toml. A study of the
very germ named at a lower strength still counts (Johnson et al. 2003, Diseases of Aquatic Organisms 57:255-260).
"""

from __future__ import annotations

from fractions import Fraction

import pytest

from assistant.core.facts import Facts
from assistant.core.household import Stock
from assistant.core.quantities.amounts import Amount, Mix, Neat, Percent, Ppm, SaidRatio
from assistant.core.round.wet_time import Use, WetTime, wet_time

BLEACH = "sodium hypochlorite"


def one_in(parts: int) -> SaidRatio:
    return SaidRatio(Fraction(1), Fraction(parts), "in")


def held(facts: Facts, mix: Mix | None, agent: str = BLEACH, strength: int | None = 6, **kept: object) -> WetTime:
    percent = Amount(Fraction(strength), "%") if strength is not None else None
    stock = Stock("shelf bottle", agent, strength=percent, **kept)  # type: ignore[arg-type]
    return wet_time(Use(facts.agents[agent], stock, mix), facts)


@pytest.mark.parametrize(
    "mix",
    [Ppm(Fraction(50)), Ppm(Fraction(999)), Percent(Fraction(1, 20)), one_in(100)],
)
def test_bleach_below_all_that_the_default_is_for_is_no_disinfection(mix: Mix, facts: Facts) -> None:
    wet = held(facts, mix)
    assert (wet.minutes, wet.basis, wet.too_weak) == (10, "none", True)
    assert "wet-time-bleach-least" in [source.id for source in wet.sources]
    assert not wet.disinfects


@pytest.mark.parametrize("mix", [Ppm(Fraction(1000)), Percent(Fraction(1, 10)), one_in(32), None])
def test_bleach_as_strong_as_that_or_of_a_strength_nobody_knows_still_counts(mix: Mix | None, facts: Facts) -> None:
    wet = held(facts, mix)
    assert (wet.minutes, wet.basis, wet.too_weak) == (10, "published", False)


def test_a_ratio_of_a_stock_of_unknown_strength_isnt_known_to_be_weak(facts: Facts) -> None:
    assert held(facts, one_in(500), strength=None).basis == "published"


def test_a_label_vouches_for_its_own_weak_mix_and_for_no_weaker(facts: Facts) -> None:
    label = {"label_minutes": 5, "label_mix": Ppm(Fraction(200)), "label_claim": "disinfect"}
    wet = held(facts, Ppm(Fraction(200)), **label)
    assert (wet.minutes, wet.basis, "too weak for any" in wet.why) == (5, "label", False)
    wet = held(facts, Ppm(Fraction(100)), **label)
    assert (wet.minutes, wet.basis, wet.too_weak) == (10, "none", True)


def test_the_very_germ_studied_at_that_strength_counts_and_a_relative_doesnt(facts: Facts) -> None:
    weak = Ppm(Fraction(500))
    stock = Stock("shelf bottle", BLEACH)
    for germ, basis in (("chytrid", "published"), ("ferlavirus", "none"), ("salmonella", "none")):
        assert wet_time(Use(facts.agents[BLEACH], stock, weak, germ), facts).basis == basis


@pytest.mark.parametrize(("percent", "basis"), [(70, "published"), (35, "none")])
def test_alcohol_below_seventy_percent_is_no_disinfection(percent: int, basis: str, facts: Facts) -> None:
    assert held(facts, Neat(), "isopropyl alcohol", percent).basis == basis


def test_what_no_wet_time_vouches_for_is_no_yes(facts: Facts) -> None:
    """700 ppm killed Salmonella in a study that gives no time (Rutala et al. 1998); the default is for more."""
    stock = Stock("shelf bottle", BLEACH)
    weak = wet_time(Use(facts.agents[BLEACH], stock, Ppm(Fraction(700)), "salmonella"), facts)
    assert weak.organism_verdict == "unknown"
    enough = wet_time(Use(facts.agents[BLEACH], stock, Ppm(Fraction(1875)), "salmonella"), facts)
    assert enough.organism_verdict == "works"
