"""Which agents may meet: the table over every pair, and what an earlier agent on a surface forbids."""

from __future__ import annotations

from datetime import UTC, datetime
from itertools import combinations, product

import pytest

from assistant.core.choice.together import meet, standoff, uncleared, wipe_will_do, worst
from assistant.core.facts import Facts
from assistant.core.record.state import Touch

AT = datetime(2026, 3, 2, 9, tzinfo=UTC)
BLEACH = "sodium hypochlorite"
VINEGAR = "acetic acid"

GAS_WITH_BLEACH = {
    # Chlorine Institute chart (acids, ammonia, organics, hydrogen peroxide); NFPA list of April 2020 (vinegar,
    # rubbing alcohol); Washington State DoH (peroxymonosulfate). Iodine: an acid, from memory, kept apart as one.
    VINEGAR,
    "citric acid",
    "ammonia",
    "isopropyl alcohol",
    "ethanol",
    "hydrogen peroxide",
    "accelerated hydrogen peroxide",
    "potassium peroxymonosulfate",
    "povidone-iodine",
    "phenolic",
    "pine oil",
}


def every_pair(facts: Facts) -> list[tuple[str, str]]:
    return list(combinations(sorted(facts.agents), 2))


def test_every_pair_has_the_same_verdict_in_either_order(facts: Facts) -> None:
    pairs = every_pair(facts)
    assert len(pairs) == len(facts.agents) * (len(facts.agents) - 1) // 2
    for first, second in pairs:
        one, other = (
            meet(facts.agents[first], facts.agents[second], facts),
            meet(facts.agents[second], facts.agents[first], facts),
        )
        if one is None or other is None:
            assert one is other is None
        else:
            assert (one.verdict, one.gas, one.fact) == (other.verdict, other.gas, other.fact)


def test_bleach_makes_gas_with_exactly_these(facts: Facts) -> None:
    bleach = facts.agents[BLEACH]
    found = {a.id for a in facts.agents.values() if (pair := meet(bleach, a, facts)) is not None and pair.gas}
    assert found == GAS_WITH_BLEACH


def test_no_pair_without_bleach_is_called_gas(facts: Facts) -> None:
    for first, second in every_pair(facts):
        pair = meet(facts.agents[first], facts.agents[second], facts)
        assert pair is None or not pair.gas or BLEACH in (first, second)


def test_bleach_is_fine_with_nothing_but_itself(facts: Facts) -> None:
    bleach = facts.agents[BLEACH]
    for agent in facts.agents.values():
        pair = meet(bleach, agent, facts)
        assert pair is None or agent is bleach or pair.verdict != "fine"


@pytest.mark.parametrize(
    ("first", "second", "verdict"),
    [
        (BLEACH, "chlorhexidine", "never"),
        (BLEACH, "quaternary ammonium", "never"),
        (BLEACH, "detergent", "rinse_between"),
        (VINEGAR, "hydrogen peroxide", "never"),
        ("quaternary ammonium", "detergent", "rinse_between"),
        ("quat-biguanide blend", "detergent", "rinse_between"),
        ("chlorhexidine", "detergent", "rinse_between"),
        ("quaternary ammonium", "hydrogen peroxide", "never"),
        ("chlorhexidine", "isopropyl alcohol", "fine"),
        (VINEGAR, "chlorhexidine", "rinse_between"),
        ("isopropyl alcohol", "ethanol", "rinse_between"),
        ("chlorhexidine", "chlorhexidine", "fine"),
    ],
)
def test_verdicts(first: str, second: str, verdict: str, facts: Facts) -> None:
    pair = meet(facts.agents[first], facts.agents[second], facts)
    assert pair is not None
    assert pair.verdict == verdict


def test_what_is_unknown_meets_nothing_not_even_itself(facts: Facts) -> None:
    other = facts.agents["other"]
    for agent in facts.agents.values():
        assert meet(other, agent, facts) is None
        assert meet(agent, other, facts) is None


def test_of_several_the_gas_pair_is_told(facts: Facts) -> None:
    agents = tuple(facts.agents[name] for name in ("detergent", "other", BLEACH, "chlorhexidine", VINEGAR))
    first, second, pair = worst(agents, facts)
    assert (first.id, second.id) == (BLEACH, VINEGAR)
    assert pair is not None
    assert pair.gas


# ---------------------------------------------------------------- on a surface


def touched(agent: str, *, rinsed: bool = False, wiped: bool = False, dried: bool = False) -> tuple[Touch, ...]:
    return (Touch(agent, AT, rinsed, wiped, dried),)


def needs(facts: Facts, earlier: tuple[Touch, ...], new: str) -> str | None:
    held = standoff(earlier, facts.agents[new], facts)
    return None if held is None else held.need


def test_over_every_pair_an_untouched_touch_is_lifted_by_nothing_less_than_a_rinse(facts: Facts) -> None:
    for earlier, new in product(facts.agents, repeat=2):
        pair = meet(facts.agents[earlier], facts.agents[new], facts)
        need = needs(facts, touched(earlier), new)
        if pair is None or pair.gas:
            assert need == "rinse and dry"
            assert needs(facts, touched(earlier, rinsed=True), new) == "dry"
        elif pair.verdict == "fine":
            assert need is None
        else:
            assert need == "rinse"
            assert needs(facts, touched(earlier, rinsed=True), new) is None
        assert needs(facts, touched(earlier, rinsed=True, dried=True), new) is None


def test_bleach_wiped_and_dry_still_forbids_vinegar(facts: Facts) -> None:
    assert needs(facts, touched(BLEACH, wiped=True, dried=True), VINEGAR) == "rinse and dry"


def test_bleach_wiped_still_forbids_chlorhexidine(facts: Facts) -> None:
    assert needs(facts, touched(BLEACH, wiped=True, dried=True), "chlorhexidine") == "rinse"


@pytest.mark.parametrize(
    "acid", [VINEGAR, "potassium peroxymonosulfate", "povidone-iodine", "accelerated hydrogen peroxide"]
)
def test_an_acid_wiped_and_dry_still_forbids_bleach(acid: str, facts: Facts) -> None:
    assert needs(facts, touched(acid, wiped=True, dried=True), BLEACH) == "rinse and dry"


def test_vinegar_wiped_lets_chlorhexidine_on(facts: Facts) -> None:
    assert needs(facts, touched(VINEGAR, wiped=True), "chlorhexidine") is None


def test_alcohol_wiped_lets_bleach_on_only_once_dry(facts: Facts) -> None:
    assert needs(facts, touched("isopropyl alcohol", wiped=True), BLEACH) == "dry"
    assert needs(facts, touched("isopropyl alcohol", wiped=True, dried=True), BLEACH) is None


def test_dry_without_a_rinse_clears_nothing(facts: Facts) -> None:
    assert needs(facts, touched("ammonia", dried=True), BLEACH) == "rinse and dry"


def test_the_same_agent_again_is_not_forbidden(facts: Facts) -> None:
    assert uncleared(touched(BLEACH), facts.agents[BLEACH], facts) is None


def test_the_worst_of_several_touches_is_told(facts: Facts) -> None:
    touches = (*touched("detergent"), *touched(VINEGAR), *touched("chlorhexidine"))
    found = uncleared(touches, facts.agents[BLEACH], facts)
    assert found is not None
    assert found.agent == VINEGAR


def test_an_agent_that_the_facts_no_longer_know_counts_as_unknown(facts: Facts) -> None:
    assert needs(facts, touched("something long gone"), "detergent") == "rinse and dry"


def test_two_products_of_unknown_content_hold_each_other_off(facts: Facts) -> None:
    assert needs(facts, touched("other"), "other") == "rinse and dry"


def test_a_wipe_stands_for_no_rinse_after_what_is_unknown(facts: Facts) -> None:
    assert not wipe_will_do(facts.agents["other"], facts.agents["detergent"])


def test_nothing_on_the_surface_forbids_nothing(facts: Facts) -> None:
    assert uncleared((), facts.agents[BLEACH], facts) is None
