"""Which agent may touch which material."""

from __future__ import annotations

import pytest

from assistant.core.choice.surfaces import standing
from assistant.core.facts import Facts

ROWS = [
    # Sheet maker and corrosion study 30(5): alcohol clouds and cracks acrylic.
    ("isopropyl alcohol", "acrylic", "never"),
    ("ethanol", "perspex", "never"),
    ("potassium peroxymonosulfate", "acrylic", "fine"),
    # Canadian Plastics (2008): alcohols and vinegar allowed, ammonia forbidden.
    ("isopropyl alcohol", "polycarbonate", "fine"),
    ("acetic acid", "polycarbonate", "fine"),
    ("ammonia", "polycarbonate", "never"),
    # Corrosion study 30(5): a day's immersion corroded all three.
    ("sodium hypochlorite", "stainless steel", "short"),
    ("sodium hypochlorite", "aluminum", "short"),
    # The Chlorine Institute's chart, row metals.
    ("sodium hypochlorite", "carbon steel", "never"),
    # Engelbrecht et al. (2013).
    ("quaternary ammonium", "cotton", "never"),
    # Divers: bare wood soaks up. Common practice: cork, substrate, electrics.
    ("sodium hypochlorite", "plywood", "porous"),
    ("chlorhexidine", "cork bark", "porous"),
    ("sodium hypochlorite", "heat mat", "wipe"),
    ("sodium hypochlorite", "glass", "fine"),
]


@pytest.mark.parametrize(("agent", "material", "verdict"), ROWS)
def test_an_agent_and_a_material_get_on_as_the_sources_say(
    agent: str, material: str, verdict: str, facts: Facts
) -> None:
    found = facts.material_named(material)
    assert found is not None
    assert standing(facts.agents[agent], found, facts).verdict == verdict


def test_a_pair_that_nobody_wrote_of_is_not_taken_for_leave(facts: Facts) -> None:
    held = standing(facts.agents["chlorhexidine"], facts.materials["stone"], facts)
    assert held.verdict is None
    assert held.disinfectable is None


def test_what_soaks_things_up_is_not_disinfected(facts: Facts) -> None:
    for material in facts.materials.values():
        held = standing(facts.agents["sodium hypochlorite"], material, facts)
        assert material.porous == (held.disinfectable is False)


def test_every_row_names_a_material_a_family_and_a_fact(facts: Facts) -> None:
    families = {agent.family for agent in facts.agents.values()} | {"any"}
    for contact in facts.contacts.values():
        assert contact.material in facts.materials
        assert contact.family in families
        assert facts[contact.fact].kind != "memory"
    for material in facts.materials.values():
        assert material.fact is None or facts[material.fact].says
        assert not material.porous or material.fact is not None


def test_no_two_materials_share_a_name(facts: Facts) -> None:
    names = [name for one in facts.materials.values() for name in {one.id, one.name, *one.also}]
    assert len(names) == len(set(names))
