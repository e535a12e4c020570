"""Bowls, tongs, branches, cloths: what is done with them, as read from the facts, and whether one may change homes.

Which way an item goes and how long is cited data (facts/items.toml); here are its types and the rule by groups.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Any, Literal, TypeAlias

from assistant.core.facts import Fact, Facts
from assistant.core.household import Group

ShareVerdict: TypeAlias = Literal["never", "disinfect_first", "fine"]

WAYS = ("soak", "boil", "bake", "wash hot", "wipe", "bin")
"""What can be done with an item."""

LASTING = ("cryptosporidium",)
"""What ordinary disinfectants don't clear off an item."""


@dataclass(frozen=True, slots=True)
class Way:
    """One way of treating an item."""

    way: str
    fact: Fact
    minutes: Fraction | None = None
    degrees: Fraction | None = None
    """Celsius."""


@dataclass(frozen=True, slots=True)
class Item:
    """A thing of an enclosure."""

    id: str
    name: str
    """As spoken."""
    also: tuple[str, ...]
    ways: tuple[Way, ...]
    """The one offered first."""
    porous: bool = False
    """It holds germs where no product reaches."""
    infected: Fact | None = None
    """What becomes of it after an illness; None: the same as ever."""

    def way(self, name: str) -> Way | None:
        """That way of treating it; None: nothing vouches for it."""
        return next((way for way in self.ways if way.way == name), None)


def items_of(facts: Facts) -> Mapping[str, Item]:
    """Every item by its id, in the file's order."""
    return {row["id"]: _item(row, facts) for row in facts.table("items", "item")}


def _item(row: Mapping[str, Any], facts: Facts) -> Item:
    return Item(
        row["id"],
        row["name"],
        tuple(row["also"]),
        tuple(_way(one, facts) for one in (row, *row.get("other", ()))),
        row.get("porous", False),
        facts[row["infected"]] if "infected" in row else None,
    )


def _way(row: Mapping[str, Any], facts: Facts) -> Way:
    minutes, degrees = (facts[row[key]].exact() if key in row else None for key in ("minutes", "degrees"))
    return Way(row["way"], facts[row["fact"]], minutes, degrees)


# ---------------------------------------------------------------- from one home to another


@dataclass(frozen=True, slots=True)
class Share:
    """Whether an item may go from one enclosure to another."""

    verdict: ShareVerdict
    fact: str
    """Id of the fact with the reason."""


FURNITURE = ("bowl", "stone", "branch", "hide", "plant", "fabric", "substrate")
"""What lives in an enclosure, as against tools that come and go."""


def may_share(item: str | None, source: Group, target: Group, *, same: bool, organism: str | None) -> Share:
    """Whether an item may go from an animal of one group to one of another.

    item: an id of facts/items.toml, None for any tool; source, target: the two groups; same: it is one enclosure;
    organism: what the first animal is known to carry.
    Gives never, disinfect_first or fine, and why.
    Source: facts/tools.toml; where sources differ the stricter holds for what lives in an enclosure.
    """
    if same:
        return Share("fine", "tool-same")
    if organism in LASTING:
        return Share("never", "item-crypto")
    if item == "gloves":
        return Share("fine", "tool-healthy") if source == "healthy" else Share("never", "tool-gloves")
    if source == "sick":
        return Share("never", "tool-sick-stays")
    if item == "wiping cloth":
        return Share("disinfect_first" if source == "healthy" else "never", "item-wiping-cloth")
    if source == "new":
        if item in FURNITURE:
            return Share("never", "tool-never-swap")
        return Share("disinfect_first", "tool-quarantine")
    if item in FURNITURE:
        return Share("disinfect_first", "item-bowl")
    return Share("fine", "tool-healthy" if target == "healthy" else "tool-one-way")
