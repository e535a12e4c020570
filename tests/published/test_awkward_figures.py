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
]


@pytest.mark.parametrize(("fact", "source", "value", "unit"), FIGURES, ids=[row[0] for row in FIGURES])
def test_a_figure_is_as_its_source_has_it(fact: str, source: str, value: Any, unit: str, facts: Facts) -> None:
    found = facts[fact]
    assert found.kind == "published"
    assert source in found.source
    assert found.place
    assert (found.value, found.unit) == (value, unit)


TOPICS = ("spills", "escapes")


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
