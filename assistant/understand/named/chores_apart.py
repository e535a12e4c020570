"""Which chore was done for whom, where one sentence tells of several: "spot cleaned juniper and gave pepper water".

Told part by part, so that no chore is put down for one that another got. What can't be told apart is asked about.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from assistant.core.household import Household
from assistant.understand.named.chores_said import IN_ORDER, chores_in, every_one
from assistant.understand.named.groups_said import groups_named, racks_in
from assistant.understand.named.left_out import EXCEPT
from assistant.understand.text.patterns import Pattern

Apart = tuple[tuple[str, tuple[str, ...]], ...]
"""Enclosures by name, each with the chores it got."""

_PARTS = Pattern(
    r" ?[,;.] ?| (?:and then|and|then|plus|while|whereas) "
    r"|(?<! all)(?<! everyone)(?<! everybody)(?<! everything)(?<! lot) but (?!not\b|for\b)"
)
_HOME = Pattern(r"\b(?:ENCLOSURE|ANIMAL)\b")
_REST = Pattern(r"\b(?:the (?:rest|others?)|every(?:one|body) else|all the (?:rest|others?)|the other ones)\b")
_ALL = Pattern(r"\b(?:all|every|each)\b(?! (?:clean|good|done|right|fine)\b)")
_THAT_ONE = Pattern(r"\b(?:him|her|his|hers|it|its|them|their|theirs|he|she)\b")
_WHO = Pattern(r"^(?:who|which|that one|that)\b|\b(?:that|that one|those)$")
_GIVES = Pattern(r"\b(?:gave|given|give|giving|changed|refilled|filled|topped|put)\b")
""" "Gave basil ...": what it got is told by what comes after."""
_WATER = Pattern(r"\bwaters?\b")
_NOT_FRESH = Pattern(r"\b(?:rins|wash|scrub|clean|soak|disinfect|spill|spilt|boil)\w* (?:\S+ ){0,3}water\b")
_NOT = Pattern(r"^(?:just |but )?not\b")


@dataclass
class _Item:
    chores: tuple[str, ...]
    homes: list[str] = field(default_factory=list)
    rest: bool = False
    named_last: list[str] = field(default_factory=list)
    """Whom "who got a deep clean" goes on about: the ones left out, else the ones named."""


def chores_apart(plain: str, homes: Sequence[str], household: Household) -> Apart | None:
    """Who got what; empty where all got the same or one part alone tells it; None where it can't be told apart.

    homes: the enclosures behind the text's ENCLOSURE and ANIMAL, in the order said; empty for one that is not clear.
    """
    plain = plain.replace("-", " ").strip(" .!?,")
    if len(_HOME.findall(plain)) != len(homes) or "" in homes:
        return ()
    items = _items(_PARTS.split(plain), list(homes), household)
    if items is None:
        return None
    if len(items) < 2:
        return ()
    got = _by_home(items, household)
    return got if len({chores for _, chores in got}) > 1 or any(item.rest for item in items) else ()


def _items(parts: Sequence[str], left: list[str], household: Household) -> list[_Item] | None:
    items: list[_Item] = []
    chores_first: tuple[str, ...] = ()
    homes_first: list[str] = []
    to_come = False
    for part in parts:
        named, excepted, rest = _homes_of(part, left, household)
        chores = _chores_of(part, bool(named or rest))
        if not chores and "both" in part.split() and named:
            chores = tuple(dict.fromkeys(chore for item in items for chore in item.chores))
        if _NOT.match(part) and items and not chores:
            items[-1].homes = [home for home in items[-1].homes if home not in named]
        elif chores and (named or rest):
            if homes_first and items and not to_come:
                return None  # "spot cleaned A, B and C got water": B's part is anybody's guess
            item = _Item((*chores_first, *chores), [*homes_first, *named], rest, excepted or named)
            items.append(item)
            chores_first, homes_first, to_come = (), [], False
        elif chores and items and (len(items) == 1 or _WHO.search(part) or _THAT_ONE.search(part)):
            about = items[-1].named_last if _WHO.search(part) else items[-1].homes
            items.append(_Item(chores, list(about), items[-1].rest and not _WHO.search(part), list(about)))
        elif chores and items:
            return None
        elif chores:
            chores_first = (*chores_first, *chores)
        elif named and (to_come or _GIVES.search(part)):
            homes_first, to_come = [*homes_first, *named], True
        elif named and items and _verb_follows(parts, part):
            homes_first += named
        elif named and items:
            items[-1].homes += named
            items[-1].named_last = list(named)
        else:
            homes_first += named
    left_over = bool(chores_first or homes_first)
    return None if left_over and items else items


def chores_beside(plain: str) -> tuple[str, ...]:
    """Chores of animals told in one breath with something else, in the parts that name no product."""
    parts = [part for part in _PARTS.split(plain.strip(" .!?,")) if not _PRODUCT.search(part)]
    named = [part for part in parts if _HOME.search(part) or _ALL.search(part) or groups_named(part) or every_one(part)]
    return tuple(dict.fromkeys(chore for part in named for chore in chores_in(part)))


def on_two_days(plain: str) -> bool:
    """ "Pepper yesterday and juniper today": no one day is that of both."""
    days = {_TODAY.sub("today", day) for day in _DAY.findall(plain)}
    return len(days) > 1


_TODAY = Pattern(r"this (?:morning|afternoon|evening)|tonight|just now")
_DAY = Pattern(
    r"\b(day before yesterday|yesterday|today|tonight|just now|this (?:morning|afternoon|evening)|last night|"
    r"(?:mon|tues|wednes|thurs|fri|satur|sun)day)\b"
)


def fills_beside(plain: str) -> bool:
    """True when a bottle is told to be filled or emptied in one breath with chores."""
    return any(_BOTTLE.search(part) and _FILLS.search(part) for part in _PARTS.split(plain))


_PRODUCT = Pattern(r"\b(?:AGENT|STOCK|BOTTLE|VOLUME|MIX)\b")
_BOTTLE = Pattern(r"\bBOTTLE\b")
_FILLS = Pattern(r"\b(?:filled|refilled|mixed|made|topped|rinsed|emptied|poured|flushed)\b")


def _verb_follows(parts: Sequence[str], part: str) -> bool:
    """The next part that tells a chore has its home before it: "basil got a deep clean"."""
    after = parts[list(parts).index(part) + 1 :]
    return any(_HOME_FIRST.match(one) for one in after[:2]) and not any(_HOME.search(one) is None for one in after[:1])


_HOME_FIRST = Pattern(r"^(?:the )?(?:ENCLOSURE|ANIMAL) (?:just |only |also )?(?:got|had|was|has|is)\b")


def _homes_of(part: str, left: list[str], household: Household) -> tuple[list[str], list[str], bool]:
    """The enclosures that a part names, those it leaves out, and whether it says "the rest"."""
    names = [left.pop(0) for _ in _HOME.findall(part)]
    cut = EXCEPT.search(part)
    before = part[: cut.start()] if cut is not None else part
    kept, excepted = names[: len(_HOME.findall(before))], names[len(_HOME.findall(before)) :]
    if _REST.search(before):
        return [home for home in kept if home not in excepted], excepted, True
    groups, racks = groups_named(before), racks_in(before, household)
    if not kept and (groups or racks or every_one(before) or _ALL.search(before)):
        kept = [
            home.name
            for home in household.enclosures
            if (not groups or home.group in groups) and (not racks or home.rack in racks)
        ]
    return [home for home in kept if home not in excepted], excepted, False


def _chores_of(part: str, of_somebody: bool) -> tuple[str, ...]:
    chores = chores_in(part)
    if "water" not in chores and of_somebody and _WATER.search(part) and not _NOT_FRESH.search(part):
        return ("water", *chores)
    return chores


def _by_home(items: Sequence[_Item], household: Household) -> Apart:
    named = {home for item in items for home in item.homes if not item.rest}
    got: dict[str, list[str]] = {}
    for item in items:
        others = [home.name for home in household.enclosures if home.name not in named] if item.rest else []
        for home in dict.fromkeys((*item.homes, *others)):
            got.setdefault(home, []).extend(chore for chore in item.chores if chore not in got.get(home, ()))
    return tuple((home, tuple(sorted(chores, key=IN_ORDER.index))) for home, chores in got.items())
