"""How long a mix keeps and a newcomer is kept apart, typed again from the sources; and bottles that end by them."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from tool import FACTS, Tool

from assistant.core.facts import Facts
from assistant.core.household import Household
from assistant.core.shelf.bottles import life_of

NOW = datetime(2026, 3, 4, 15, tzinfo=UTC)

# fact, a name that its source must carry, value, unit: each line typed from the source's own words
FIGURES: list[tuple[str, str, Any, str]] = [
    # CDC leaflet CS316270A (2020): "Bleach solutions will be effective for disinfection up to 24 hours."
    ("bottle-life-bleach", "CS316270A", 24, "h"),
    # Rutala and others 1998, abstract: closed brown bottles, 30 days, 97 to 100 percent of the chlorine.
    ("bottle-life-bleach-closed", "Rutala", 30, "d"),
    # University of Iowa, 8.2.2: up to a week where little organic matter gets in.
    ("bottle-life-bleach-week", "Iowa", 7, "d"),
    # Queensland CHRISP rules, quoted 2010: watery chlorhexidine discarded after 24 hours.
    ("bottle-life-chlorhexidine", "CHRISP", 24, "h"),
    # Japanese Journal of Hospital Pharmacy 22:390: sterile 0.02 percent held for six months.
    ("bottle-life-chlorhexidine-strength", "Hospital Pharmacy", 6, "month"),
    # Contamination of antiseptics 1996, abstract: 9 of 15 in-use jars.
    ("bottle-life-chlorhexidine-grown", "contamination", [9, 15], "jars"),
    # Rhee and others 2023, abstract: 21 days at 4, 20 and 45 degrees.
    ("bottle-life-mixes", "Rhee", 21, "d"),
    # Association of Zoos and Aquariums: a minimum of 30 days.
    ("order-quarantine-30", "Zoos and Aquariums", 30, "d"),
    # Snake.vet: 60 to 90 days for new reptiles.
    ("order-quarantine-60-90", "Snake.vet", [60, 90], "d"),
    # Pasmans and others 2008, as a clinician sums it up: at least 90 days, its own room.
    ("order-quarantine-90", "Pasmans", 90, "d"),
    # Origgi 2019 on inclusion body disease: six months at least.
    ("order-quarantine-180", "Origgi", 180, "d"),
]


@pytest.mark.parametrize(("fact", "source", "value", "unit"), FIGURES, ids=[row[0] for row in FIGURES])
def test_a_figure_is_as_its_source_has_it(facts: Facts, fact: str, source: str, value: Any, unit: str) -> None:
    entry = facts[fact]
    assert (entry.kind, entry.value, entry.unit) == ("published", value, unit)
    assert source.casefold() in f"{entry.source} {entry.place}".casefold()


@pytest.mark.parametrize("fact", ["bottle-life-quat", "bottle-life-peroxide", "bottle-life-peroxymonosulfate"])
def test_what_is_made_for_the_day_rests_on_practice_and_says_so(facts: Facts, fact: str) -> None:
    assert facts[fact].kind == "practice"


# agent, hours by the source above; None: common practice, no source for a limit
LIVES = [("sodium hypochlorite", 24), ("chlorhexidine", 24), ("acetic acid", None), ("isopropyl alcohol", None)]


@pytest.mark.parametrize(("agent", "hours"), LIVES)
def test_a_mix_ends_when_its_source_says(agent: str, hours: int | None) -> None:
    until = life_of(FACTS.agents[agent], None, NOW, FACTS).until
    assert until == (NOW + timedelta(hours=hours) if hours is not None else None)


def test_a_bottle_of_bleach_follows_the_leaflet_not_the_week(household: Household) -> None:
    tool = Tool(household, NOW)
    reply = tool.say("mixed", bottles=("orange bottle",))
    assert reply.values["expires"] == NOW + timedelta(hours=24)


def test_a_quarantine_is_told_with_every_published_length(household: Household) -> None:
    told = {source.id for source in Tool(household, NOW).say("quarantine", enclosures=("new arrival box",)).sources}
    assert {row[0] for row in FIGURES if row[0].startswith("order-quarantine-")} <= told
