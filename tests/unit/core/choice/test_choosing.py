"""Choosing: what is never offered, how the rest is ranked, and what is said of each that is passed over."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime
from fractions import Fraction

import pytest

from assistant.core.choice.choosing import Choosing, Need, choose
from assistant.core.facts import Facts
from assistant.core.household import Bottle, Enclosure, Household, Stock
from assistant.core.quantities.amounts import Amount, Percent
from assistant.core.record.state import Touch

BLEACH, CHX, VINEGAR = "sodium hypochlorite", "chlorhexidine", "acetic acid"
SIX = Stock("plain six percent", BLEACH, Amount(Fraction(6), "%"))
AMBER = Bottle("amber bottle", Amount(Fraction(750), "mL"), stock=SIX.name, mix=Percent(Fraction("0.2")))
HOME = Household(stocks=(SIX, Stock("blue", CHX), Stock("white vinegar", VINEGAR)), bottles=(AMBER,))
NOW = datetime(2026, 3, 2, tzinfo=UTC)


def why_not(found: Choosing) -> dict[str, str]:
    return {one.id: one.why for one in found.passed_over}


def ids(found: Choosing) -> list[str]:
    return [offer.id for offer in found.offers]


def test_a_cleaner_is_never_offered_as_a_disinfectant(facts: Facts) -> None:
    for organism in (None, *facts.organisms):
        for job in ("routine", "illness", "quarantine", "mites"):
            offered = choose(Need(job, organism), HOME, facts).offers  # type: ignore[arg-type]
            assert all(offer.agent is None or offer.agent.disinfects for offer in offered)


@pytest.mark.parametrize("organism", ["salmonella", "cryptosporidium", "mycobacterium", "reptarenavirus"])
def test_what_is_refused_near_reptiles_or_is_the_vets_is_never_offered(organism: str, facts: Facts) -> None:
    found = choose(Need("illness", organism), HOME, facts)
    assert not {"phenolic", "pine oil", "ammonia", "povidone-iodine"} & set(ids(found))
    assert why_not(found)["phenolic"] == "refused"
    assert why_not(found)["ammonia"] == "vet"


def test_every_agent_is_either_offered_or_passed_over_with_a_reason(facts: Facts) -> None:
    for organism in facts.organisms:
        found = choose(Need("illness", organism), HOME, facts)
        told = {*ids(found), *why_not(found)} - set(facts.methods)
        assert told == set(facts.agents) - {"other"}


def test_against_crypto_heat_comes_first_and_bleach_is_passed_over(facts: Facts) -> None:
    found = choose(Need("illness", "cryptosporidium"), HOME, facts)
    best = found.offers[0]
    assert (best.id, best.minutes, best.verdict) == ("heat", 1, "works")
    assert best.evidence is not None
    assert best.evidence.degrees == Fraction("72.4")  # Fayer (1994)
    assert why_not(found)[BLEACH] == "fails"
    assert why_not(found)[CHX] == "nothing"


def test_no_disinfectant_is_offered_for_mites(facts: Facts) -> None:
    found = choose(Need("mites"), HOME, facts)
    assert ids(found) == ["heat"]
    assert not found.works
    assert why_not(found)[BLEACH] == "nothing"


def test_the_keepers_own_bottle_is_taken_where_it_is_strong_enough(facts: Facts) -> None:
    best = choose(Need("illness", "adenovirus"), HOME, facts).offers[0]
    assert (best.id, best.percent, best.bottle) == (BLEACH, Fraction("0.2"), AMBER)
    assert best.minutes == 10


def test_a_bottle_that_is_too_weak_gives_the_strength_to_mix(facts: Facts) -> None:
    weak = replace(AMBER, mix=Percent(Fraction("0.05")))
    best = choose(Need("illness", "adenovirus"), replace(HOME, bottles=(weak,)), facts).offers[0]
    assert (best.id, best.percent, best.bottle) == (BLEACH, Fraction("0.19"), None)


def test_a_strength_that_the_study_doesnt_state_vouches_for_no_mix(facts: Facts) -> None:
    best = choose(Need("illness", "ophidiomyces"), HOME, facts).offers[0]
    assert (best.id, best.percent, best.bottle) == (BLEACH, None, None)


def test_what_is_on_the_shelf_comes_before_what_is_not(facts: Facts) -> None:
    found = choose(Need("illness", "serpentovirus"), HOME, facts)
    assert found.offers[0].id == BLEACH
    drink = replace(HOME, stocks=(Stock("spirit", "ethanol", Amount(Fraction(70), "%")),), bottles=())
    assert choose(Need("illness", "serpentovirus"), drink, facts).offers[0].id == "ethanol"


@pytest.mark.parametrize(
    "need",
    [
        Need("routine", near_water=True),
        Need("routine", enclosure=Enclosure("pond", water="all")),
        Need("routine", enclosure=Enclosure("shelf", rack="north")),
    ],
)
def test_chlorhexidine_is_passed_over_where_water_life_is_near(need: Need, facts: Facts) -> None:
    neighbour = Enclosure("frog box", rack="north", water="part")
    found = choose(need, replace(HOME, enclosures=(neighbour,)), facts)
    assert why_not(found)[CHX] == "water"


def test_the_material_takes_agents_out(facts: Facts) -> None:
    acrylic = choose(Need("routine", material=facts.materials["acrylic"]), HOME, facts)
    assert why_not(acrylic)["isopropyl alcohol"] == "never there"
    wood = choose(Need("routine", material=facts.materials["raw wood"]), HOME, facts)
    assert ids(wood) == []


def test_what_is_on_the_surface_takes_out_what_must_not_meet_it(facts: Facts) -> None:
    touched = (Touch(BLEACH, NOW),)
    found = choose(Need("routine", touches=touched), HOME, facts)
    assert ids(found) == [BLEACH]
    assert why_not(found)["quaternary ammonium"] == "rinse first"
    scale = choose(Need("scale", touches=touched), HOME, facts)
    assert (scale.offers, scale.passed_over[0].why) == ((), "rinse first")


@pytest.mark.parametrize(("job", "agent"), [("scale", VINEGAR), ("dirt", "detergent")])
def test_a_cleaning_job_gets_a_cleaner_with_no_strength_and_no_time(job: str, agent: str, facts: Facts) -> None:
    (offer,) = choose(Need(job), HOME, facts).offers  # type: ignore[arg-type]
    assert (offer.id, offer.percent, offer.minutes, offer.verdict) == (agent, None, None, "unknown")


def test_an_agent_without_a_time_comes_after_those_with_one(facts: Facts) -> None:
    offers = choose(Need("illness", "ranavirus"), HOME, facts).offers
    assert [offer.minutes is None for offer in offers] == sorted(offer.minutes is None for offer in offers)
