"""The cited data as it ships: complete, unique, and every reference to a fact leads to one."""

from __future__ import annotations

import re
from collections import Counter

import pytest

from assistant.core.facts import Agent, Fact, Facts, UncitedFact, UnknownFact
from assistant.core.round.rounds import STEPS


def test_every_id_is_there_once_and_in_kebab_case(facts: Facts) -> None:
    ids = Counter(fact.id for fact in facts.all())
    assert len(ids) > 150
    assert [fact for fact, times in ids.items() if times > 1] == []
    assert [fact for fact in ids if not re.fullmatch(r"[a-z0-9]+(-[a-z0-9]+)*", fact)] == []


def test_every_fact_says_something_that_can_be_spoken(facts: Facts) -> None:
    for fact in facts.all():
        assert fact.says.strip()
        assert not re.search(r"[%/:°<>=]", fact.says.replace(": ", " ")), fact.id


def test_no_published_fact_lacks_source_or_place(facts: Facts) -> None:
    assert {fact.kind for fact in facts.all()} == {"published", "practice", "memory"}
    assert [fact.id for fact in facts.all() if fact.kind == "published" and not (fact.source and fact.place)] == []


@pytest.mark.parametrize("missing", ["source", "place"])
def test_a_published_figure_without_source_or_place_cant_be_made(missing: str) -> None:
    cited = {"source": "Somebody (2001)", "place": "table 2", missing: ""}
    with pytest.raises(UncitedFact):
        Fact("x", "published", "something", **cited)


def test_a_kind_that_isnt_known_cant_be_made() -> None:
    with pytest.raises(UncitedFact):
        Fact("x", "rumour", "something")  # type: ignore[arg-type]


def test_a_file_with_an_uncited_figure_doesnt_load() -> None:
    rows = {"fact": [{"id": "airing-bad", "kind": "published", "says": "so it is", "value": 3}]}
    with pytest.raises(UncitedFact):
        Facts(lambda topic: rows, ("airing",))["airing-bad"]


def test_a_figure_names_its_source_or_owns_that_it_has_none(facts: Facts) -> None:
    assert "CDC/HICPAC" in facts["airing-removal"].cited().text
    assert facts["wet-time-bleach-habit"].cited().text.endswith("(common practice, no source)")
    assert facts["together-urine"].cited().text.endswith("(from memory, no source)")


def test_an_unknown_fact_is_an_error(facts: Facts) -> None:
    with pytest.raises(UnknownFact):
        facts["no-such-fact"]


def test_every_agent_leads_to_facts_that_exist(facts: Facts) -> None:
    for agent in facts.agents.values():
        for named in (agent.hold, agent.habit, agent.no_time, agent.refused, agent.refused_in_water, agent.soiling):
            assert named is None or facts[named].says
        assert agent.hold is None or facts[agent.hold].unit == "min"


def test_every_pair_leads_to_a_fact_and_to_families_that_exist(facts: Facts) -> None:
    families = {agent.family for agent in (*facts.agents.values(), *facts.residues.values())}
    for pair in facts.pairs.values():
        assert {pair.first, pair.second} <= families
        assert facts[pair.fact].says
        assert pair.verdict in ("never", "rinse_between", "fine")
        assert pair.verdict == "never" or not pair.gas


def test_every_result_is_of_an_agent_and_an_organism_that_exist(facts: Facts) -> None:
    seen = 0
    for agent in (*facts.agents, *facts.methods):
        for organism in facts.organisms:
            for row in facts.efficacy(agent, organism):
                assert row.outcome in ("works", "fails", "partly")
                assert row.fact.kind == "published"
                seen += 1
    assert seen == len([fact for fact in facts.all() if fact.id.startswith("efficacy-")])


def test_steps_are_in_the_order_of_a_round(facts: Facts) -> None:
    for agent in facts.agents.values():
        assert list(agent.steps) == [step for step in STEPS if step in agent.steps]
        assert {"move out", "clear", "dry", "return"} <= set(agent.steps)
        assert ("hold" in agent.steps) == ("apply" in agent.steps and agent.disinfects)


STEPS_BY_AGENT = {
    # The table of a round's steps, one row an agent, typed from the design of the round.
    "sodium hypochlorite": STEPS,
    "chlorhexidine": tuple(s for s in STEPS if s != "air"),
    "quaternary ammonium": tuple(s for s in STEPS if s != "air"),
    "isopropyl alcohol": tuple(s for s in STEPS if s != "rinse"),
    "ethanol": tuple(s for s in STEPS if s != "rinse"),
    "acetic acid": ("move out", "clear", "apply", "rinse", "dry", "air", "return"),
    "detergent": ("move out", "clear", "wash", "dry", "return"),
    "hydrogen peroxide": STEPS,
    "accelerated hydrogen peroxide": STEPS,
    "potassium peroxymonosulfate": STEPS,
    "quat-biguanide blend": STEPS,
    "other": STEPS,
}


@pytest.mark.parametrize("agent", STEPS_BY_AGENT)
def test_each_agent_takes_its_steps(agent: str, facts: Facts) -> None:
    assert facts.agents[agent].steps == STEPS_BY_AGENT[agent]


@pytest.mark.parametrize(
    ("said", "agent"),
    [
        ("Bleach", "sodium hypochlorite"),
        ("sodium hypochlorite", "sodium hypochlorite"),
        ("chlorhexidine diacetate", "chlorhexidine"),
        ("Chlorhexidine Gluconate", "chlorhexidine"),
        ("vinegar", "acetic acid"),
        ("rubbing  alcohol", "isopropyl alcohol"),
        ("quat", "quaternary ammonium"),
        ("quat biguanide blend", "quat-biguanide blend"),
        ("povidone-iodine", "povidone-iodine"),
        ("washing-up liquid", "detergent"),
        ("dish soap", "detergent"),
        ("other", "other"),
    ],
)
def test_agents_are_found_by_what_people_call_them(said: str, agent: str, facts: Facts) -> None:
    found = facts.agent_named(said)
    assert found is not None
    assert found.id == agent


@pytest.mark.parametrize("said", ["toilet cleaner", "glass cleaner", "window spray", "descaler", ""])
def test_a_product_whose_content_the_name_doesnt_tell_stays_unknown(said: str, facts: Facts) -> None:
    assert facts.agent_named(said) is None


@pytest.mark.parametrize(
    ("said", "organism"),
    [
        ("crypto", "cryptosporidium"),
        ("Salmonella", "salmonella"),
        ("yellow fungus", "nannizziopsis"),
        ("snake fungal disease", "ophidiomyces"),
        ("mites", "mites"),
        ("nido", "serpentovirus"),
        ("IBD", "reptarenavirus"),
    ],
)
def test_organisms_are_found_by_what_people_call_them(said: str, organism: str, facts: Facts) -> None:
    found = facts.organism_named(said)
    assert found is not None
    assert found.id == organism


def test_no_name_stands_for_two_agents_or_two_organisms(facts: Facts) -> None:
    agents, organisms = tuple(facts.agents.values()), tuple(facts.organisms.values())
    for things in (agents, organisms):
        names = Counter(name.casefold() for thing in things for name in {thing.id, thing.name, *thing.also})
        assert [name for name, times in names.items() if times > 1] == []


def test_agents_are_read_without_any_other_file(facts: Facts) -> None:
    read: list[str] = []

    def load(topic: str) -> dict[str, list[dict[str, object]]]:
        read.append(topic)
        return {"agent": [{"id": "a", "name": "a", "family": "acid", "steps": ["dry"], "disinfects": False}]}

    lazy = Facts(load, ("agents", "airing", "efficacy"))
    assert isinstance(lazy.agents["a"], Agent)
    assert lazy.agents["a"] is lazy.agents["a"]
    assert read == ["agents"]


def test_a_fact_is_looked_for_first_in_the_file_that_its_id_begins_with() -> None:
    read: list[str] = []

    def load(topic: str) -> dict[str, list[dict[str, object]]]:
        read.append(topic)
        return {"fact": [{"id": f"{topic.rstrip('s').replace('_', '-')}-x", "kind": "practice", "says": "x"}]}

    lazy = Facts(load, ("agents", "first_aid", "wet_times"))
    assert lazy["wet-time-x"].says == "x"
    assert lazy["first-aid-x"].says == "x"
    assert read == ["wet_times", "first_aid"]
