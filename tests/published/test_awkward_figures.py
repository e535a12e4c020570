"""Figures of spills, items, tools, tubs, outbreaks and disposal, typed again from their sources."""

from __future__ import annotations

from typing import Any

import pytest

from assistant.core.facts import Facts

# fact, a name that its source must carry, value, unit: each line typed from the source's own words
FIGURES: list[tuple[str, str, Any, str]] = [
    # The Chlorine Institute's chart: rows "acids" (chlorine, may be violent) and "hydrogen peroxide" (oxygen).
    ("spill-no-neutralising", "Chlorine Institute", None, ""),
    # Data sheet, isopropyl alcohol 90-100 %: ventilate, no ignition, inert absorbent, no sawdust.
    ("spill-alcohol", "isopropyl alcohol", None, ""),
    # NIOSH Pocket Guide: clothing, "Remove: when wet (flammable)".
    ("spill-alcohol-clothes", "NIOSH", None, ""),
    # New Jersey Department of Health, sodium hypochlorite, 2008: contaminated clothing off at once.
    ("spill-bleach-clothes", "New Jersey", None, ""),
    # Vets 4 Exotics: rigid, secure, ventilated, one animal each, no holes or loose threads.
    ("escape-tub", "Vets 4 Exotics", None, ""),
    # Canadian shelter standards, chapter 5: bowls washed, rinsed and disinfected before another animal.
    ("item-bowl", "shelter care standards", None, ""),
    ("item-sink", "stay healthy around pets", None, ""),
    # Niagara Falls animal hospital 2014: "boil ... for up to half an hour".
    ("item-stone-boil", "Niagara Falls", 30, "min"),
    # Japanese Journal of Environmental Infections 30(5), abstract: 0.1 % hypochlorite corroded all three after one day.
    ("item-metal", "Environmental Infections", 1, "d"),
    # ISPM 15: 56 degrees at the core for 30 continuous minutes.
    ("item-wood-core", "ISPM 15", [56, 30], "degC, min"),
    ("item-wood-porous", "Divers", None, ""),
    ("item-scratches", "Springthorpe", None, ""),
    # ABCD guidelines (Addie 2015): machine wash at 60 degrees or more.
    ("item-cloth", "Addie", 60, "degC"),
    # UK Department of Health 2010: 60 degrees for 10 minutes.
    ("item-cloth-home", "Department of Health", [60, 10], "degC, min"),
    # CDC 2003 in table 4 of PMC7453921: above 71 degrees (160 F) for 25 minutes.
    ("item-cloth-hospital", "PMC7453921", [71, 25], "degC, min"),
    # UK HSE: 65 degrees for 10 minutes or 71 for 3.
    ("item-cloth-britain", "Health and Safety Executive", [65, 10, 71, 3], "degC, min, degC, min"),
    ("item-wiping-cloth", "Kusumaningrum", None, ""),
    ("item-substrate", "Boston", None, ""),
    ("item-plant", "Madcham", None, ""),
    # Madcham: wash with hot water, at least 40 degrees.
    ("item-hot-water", "Madcham", 40, "degC"),
    ("tool-quarantine", "Association of Zoos", None, ""),
    ("tool-never-swap", "Tabaka", None, ""),
    ("tool-between-animals", "serpentovirus leaflet", None, ""),
    # PMC5841743, abstract: risk of death about 30 times higher with gloves not changed.
    ("tool-gloves", "PMC5841743", 30, "times"),
    # Tacoma-Pierce County: scrub at least 20 seconds.
    ("tool-hands", "Tacoma-Pierce", 20, "s"),
    # mwatoday.com: about one cup, then run water one minute.
    ("disposal-small", "mwatoday", 1, "cup"),
    ("disposal-order", "Oregon Metro", None, ""),
    ("disposal-toilet-acid", "Illinois Poison Center", None, ""),
    ("disposal-kitchen", "WikiVet", None, ""),
    ("disposal-storm", "Arlington", None, ""),
    # City of Sammamish: below 0.1 ppm chlorine.
    ("disposal-ground", "Sammamish", 0.1, "ppm"),
    ("disposal-quat-fish", "US EPA", None, ""),
    # Gross (1987), abstract: 1.85 US gal in a 1000 US gal tank, back to the start about 30 h later.
    ("disposal-septic", "Gross", [1.85, 30], "US gal, h"),
    ("disposal-alcohol-sewer", "ERG 2008", None, ""),
    # Defend Your Drains North Texas: about a cup at most.
    ("disposal-concentrate", "North Texas", 1, "cup"),
    ("disposal-unknown", "Calgary", None, ""),
    ("storage-original", "familydoctor.org", None, ""),
    ("storage-sink", "poison storage", None, ""),
    ("storage-apart", "Calgary", None, ""),
    # Popular chemistry page: below 25 degrees; 10 degrees warmer, about 3.5 times faster loss.
    ("storage-bleach", "chemistry page", 25, "degC"),
    ("storage-bleach-warm", "chemistry page", 3.5, "times"),
    ("storage-flammable", "Calgary", None, ""),
    # Sanitiser labels: below 110 F, 43 degrees.
    ("storage-alcohol-max", "utilities newsletter", 43, "degC"),
    ("storage-alcohol-sparks", "NIRMA", None, ""),
    ("storage-peroxide", "Slovak", None, ""),
    ("storage-drink-bottle", "ANSES", None, ""),
    ("storage-quat", "benzalkonium", None, ""),
    ("outbreak-vet-plan", "Madcham", None, ""),
    ("outbreak-tools", "Association of Zoos", None, ""),
    ("outbreak-order", "Association of Zoos", None, ""),
    # WikiVet, snake cryptosporidiosis: four consecutive negative droppings.
    ("outbreak-crypto-negative", "WikiVet", 4, "tests"),
    # DeNardo and Wozniak (1997): life cycle 7 to 16 days at room temperature.
    ("outbreak-mites-cycle", "DeNardo", [7, 16], "d"),
    # Mite treatment guide: eggs hatch in 40 to 56 h, adults up to 40 days.
    ("outbreak-mites-live", "mite treatment guide", [40, 56, 40], "h, h, d"),
    ("outbreak-mites-carry", "WikiVet", None, ""),
    ("outbreak-serpentovirus", "Nidovirus", None, ""),
]


@pytest.mark.parametrize(("fact", "source", "value", "unit"), FIGURES, ids=[row[0] for row in FIGURES])
def test_a_figure_is_as_its_source_has_it(fact: str, source: str, value: Any, unit: str, facts: Facts) -> None:
    found = facts[fact]
    assert found.kind == "published"
    assert source in found.source
    assert found.place
    assert (found.value, found.unit) == (value, unit)


TOPICS = ("spills", "escapes", "items", "tools", "disposal", "storage", "outbreaks")


def test_every_published_fact_of_these_topics_has_its_row_here(facts: Facts) -> None:
    rows = {row[0] for row in FIGURES}
    unnamed = {
        fact.id
        for fact in facts.all()
        if fact.kind == "published"
        and fact.value is not None
        and fact.id.startswith(tuple(t.rstrip("s") for t in TOPICS))
    }
    assert unnamed - rows == set()
