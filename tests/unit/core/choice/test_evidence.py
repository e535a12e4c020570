"""What the studies come to: the verdict, the figure that is told, and how near it is."""

from __future__ import annotations

from fractions import Fraction

import pytest

from assistant.core.choice.evidence import DIRECTNESS, weigh
from assistant.core.facts import Facts

BLEACH, CHX = "sodium hypochlorite", "chlorhexidine"

# What the sources of efficacy.toml say, verdict by verdict (each row is checked in tests/published).
VERDICTS = [
    (BLEACH, "adenovirus", "works", "0.19", "1"),  # Rutala et al. (2006): 1,900 ppm, 1 min
    (BLEACH, "chytrid", "works", "0.12", "0.5"),  # Becker and Gratwicke (2017)
    (BLEACH, "mycobacterium", "works", "0.5", "15"),  # Leon et al.; undiluted did only part on M. marinum in 10 min
    (BLEACH, "cryptosporidium", "fails", None, None),  # Weir et al. (2002), Barbee et al. (1999)
    (BLEACH, "coccidia", "fails", None, None),  # Dubey et al. (2002)
    (BLEACH, "mites", "unknown", None, None),  # no trial found
    (CHX, "ophidiomyces", "fails", None, None),  # Rzadkowska et al. (2016)
    (CHX, "coccidia", "fails", None, None),  # Dubey et al. (2002)
    (CHX, "cryptosporidium", "unknown", None, None),  # no trial found
    (CHX, "ranavirus", "works", None, "1"),  # Bryan et al. (2009), strength ambiguous
    ("potassium peroxymonosulfate", "ranavirus", "works", "1", "1"),  # Bryan et al. (2009)
    ("quaternary ammonium", "mycobacterium", "fails", None, None),  # Mainous and Smith (2005)
    ("hydrogen peroxide", "cryptosporidium", "works", "6", "20"),  # Barbee et al. (1999); 4 min in Weir: the longer
    ("isopropyl alcohol", "adenovirus", "fails", None, None),  # Rutala et al. (2006)
    (BLEACH, "ferlavirus", "unknown", None, None),  # Frerichs: enough in clean water, not in serum
]


@pytest.mark.parametrize(("agent", "organism", "verdict", "percent", "minutes"), VERDICTS)
def test_the_studies_of_a_pair_come_to_one_verdict(
    agent: str, organism: str, verdict: str, percent: str | None, minutes: str | None, facts: Facts
) -> None:
    evidence = weigh(agent, organism, facts)
    assert evidence.verdict == verdict
    assert evidence.percent == (Fraction(percent) if percent else None)
    assert evidence.minutes == (Fraction(minutes) if minutes else None)


@pytest.mark.parametrize(
    ("organism", "degrees", "minutes"),
    [("cryptosporidium", "72.4", 1), ("coccidia", "60", 1), ("entamoeba", "52", 1), ("pinworm", "100", 30)],
)
def test_heat_has_its_degrees(organism: str, degrees: str, minutes: int, facts: Facts) -> None:
    evidence = weigh("heat", organism, facts)
    assert (evidence.verdict, evidence.degrees, evidence.minutes) == ("works", Fraction(degrees), minutes)


def test_what_is_only_known_of_a_wider_kind_never_makes_it_work(facts: Facts) -> None:
    evidence = weigh(BLEACH, "tortoise herpesvirus", facts)
    assert (evidence.verdict, evidence.doubt, evidence.figure) == ("unknown", "only on others", None)
    assert evidence.rows[0].organism == "enveloped viruses"


def test_studies_that_disagree_are_not_known(facts: Facts) -> None:
    assert weigh(CHX, "enveloped viruses", facts).doubt == "studies disagree"


def test_every_directness_in_the_files_has_its_place(facts: Facts) -> None:
    rows = [
        row for agent in (*facts.agents, *facts.methods) for o in facts.organisms for row in facts.efficacy(agent, o)
    ]
    assert {row.directness for row in rows} <= set(DIRECTNESS)


def test_a_verdict_of_works_always_has_a_row_that_works(facts: Facts) -> None:
    for agent in (*facts.agents, *facts.methods):
        for organism in facts.organisms:
            evidence = weigh(agent, organism, facts)
            assert (evidence.verdict == "works") == (evidence.figure is not None)
            assert evidence.figure is None or evidence.figure.outcome == "works"
            assert (evidence.verdict == "unknown") == (evidence.doubt is not None)
