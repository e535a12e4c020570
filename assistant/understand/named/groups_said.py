"""Groups of enclosures and racks that are named, and the homes that are in them."""

from __future__ import annotations

import re

from assistant.core.household import Household
from assistant.understand.named.animal_words import ANIMALS
from assistant.understand.text.patterns import Pattern

_OF_CHORES: tuple[tuple[str, Pattern], ...] = (
    ("healthy", Pattern(r"\bhealthy\b|\bresidents?\b")),
    ("new", Pattern(r"\bnew (?:ones?|arrivals?|animals?)\b|\bnewcomers?\b|\bquarantined?(?: ones| animals)?\b")),
    ("sick", Pattern(r"\bsick\b|\bill (?:ones|animals)\b|\bhospital ones\b")),
)
"""By what a group is called where chores are spoken of: there "clear" and "normal" are of the work, and a hospital tub
is one enclosure."""


def groups_named(plain: str) -> tuple[str, ...]:
    """The groups whose chores are spoken of: "spot cleaned all the healthy ones"."""
    return tuple(group for group, pattern in _OF_CHORES if pattern.search(plain))


_GROUPS: tuple[tuple[str, Pattern], ...] = (
    ("sick", Pattern(r"\b(?:sick|ill|poorly|unwell|infected|hospital)\b")),
    ("new", Pattern(r"\b(?:quarantined?|isolation|newcomers?|new (?:ones?|arrivals?|animals?))\b")),
    ("healthy", Pattern(r"\b(?:healthy|well again|all clear|recovered|better|cleared|normal)\b")),
)
"""The same where an animal is put into one."""
_MARKS = Pattern(
    r"\b(?:mark|move|put|set|change|make|list|record|note|log|flag|switch|add|treat|count)\b"
    r"|\b(?:is|are|'s|looks?|seems?) (?:now )?(?:sick|ill|poorly|unwell|healthy|well again|better|clear|cleared"
    r"|recovered|in quarantine)\b|\bcleared by\b|\bvet (?:has |'s )?(?:cleared|passed)\b"
)


def groups_marked(plain: str) -> tuple[str, ...]:
    """The groups into which an animal is to be put: "mark her sick", "she's healthy again"."""
    return _groups_in(plain) if _MARKS.search(plain) else ()


def _groups_in(plain: str) -> tuple[str, ...]:
    return tuple(group for group, pattern in _GROUPS if pattern.search(plain))


_OF_A_GROUP = r"(?:healthy|sick|ill|new|quarantined?|hospital)"
_ALL_OF_A_GROUP = Pattern(
    rf"\b(?:all|every|each|both|only)(?: of)?(?: the| my)? {_OF_A_GROUP}\b"
    rf"|\b(?:the |my )?{_OF_A_GROUP} (?:ones|animals|tanks|tubs|boxes|enclosures|lot|group|reptiles|{ANIMALS})\b"
    r"|\bthe (?:sick|quarantined?) one\b"
)
_THE_RACK = Pattern(r"\bthe (?:whole )?rack\b")


def homes_of(plain: str, household: Household) -> tuple[str, ...]:
    """Every enclosure of the racks or groups that are named: "rack a", "all the healthy ones"."""
    racks = racks_in(plain, household) or _the_only_rack(plain, household)
    groups = _groups_in(plain) if _ALL_OF_A_GROUP.search(plain) else ()
    if not racks and not groups:
        return ()
    return tuple(
        home.name
        for home in household.enclosures
        if (not racks or home.rack in racks) and (not groups or home.group in groups)
    )


def racks_in(plain: str, household: Household) -> tuple[str, ...]:
    """The household's racks that are named."""
    racks = dict.fromkeys(home.rack for home in household.enclosures if home.rack)
    return tuple(rack for rack in racks if re.search(rf"\b{re.escape(rack.casefold())}s?\b", plain.casefold()))


def _the_only_rack(plain: str, household: Household) -> tuple[str, ...]:
    """ "The rack", where the household has just one that is called so."""
    if not _THE_RACK.search(plain):
        return ()
    racks = {home.rack for home in household.enclosures if home.rack}
    called = tuple(rack for rack in racks if "rack" in rack.casefold().split())
    return called if len(called) == 1 else tuple(racks) if len(racks) == 1 else ()
