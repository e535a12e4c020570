"""Items: every row of the facts makes sense, and the rule by groups is never laxer one way than the groups allow."""

from __future__ import annotations

from itertools import product

import pytest

from assistant.core.choice.items import FURNITURE, WAYS, items_of, may_share
from assistant.core.facts import Facts

GROUPS = ("healthy", "new", "sick")
STRICTNESS = {"fine": 0, "disinfect_first": 1, "never": 2}
THINGS = (None, "tongs", "wiping cloth", "gloves", "tub", *FURNITURE)


def test_every_item_has_a_way_that_is_known_and_cited(facts: Facts) -> None:
    for item in items_of(facts).values():
        assert item.ways
        assert all(way.way in WAYS and way.fact.says for way in item.ways), item.id
        assert item.porous <= (item.infected is not None or item.ways[0].way == "bin"), item.id


def test_no_name_stands_for_two_items(facts: Facts) -> None:
    names = [name for item in items_of(facts).values() for name in {item.id, *item.also}]
    assert sorted({name for name in names if names.count(name) > 1}) == []


def test_wood_is_never_baked_hotter_than_wood_chars(facts: Facts) -> None:
    baked = [way.degrees for item in items_of(facts).values() for way in item.ways if way.way == "bake"]
    assert baked == [93]


@pytest.mark.parametrize(("item", "source", "target"), list(product(THINGS, GROUPS, GROUPS)))
def test_from_a_sick_animal_nothing_goes_to_another(item: str | None, source: str, target: str) -> None:
    verdict = may_share(item, source, target, same=False, organism=None).verdict  # type: ignore[arg-type]
    if source == "sick":
        assert verdict == "never"
    if source == "new":
        assert verdict != "fine"


@pytest.mark.parametrize(("item", "target"), list(product(THINGS, GROUPS)))
def test_a_sicker_source_is_never_judged_more_kindly(item: str | None, target: str) -> None:
    strict = [
        STRICTNESS[may_share(item, source, target, same=False, organism=None).verdict]  # type: ignore[arg-type]
        for source in GROUPS
    ]
    assert strict == sorted(strict)


@pytest.mark.parametrize("item", THINGS)
def test_the_same_animals_own_things_are_fine(item: str | None) -> None:
    assert may_share(item, "sick", "sick", same=True, organism="cryptosporidium").verdict == "fine"


@pytest.mark.parametrize(("item", "source"), list(product(THINGS, GROUPS)))
def test_what_disinfectant_does_not_clear_never_moves(item: str | None, source: str) -> None:
    assert may_share(item, source, "healthy", same=False, organism="cryptosporidium").verdict == "never"  # type: ignore[arg-type]
