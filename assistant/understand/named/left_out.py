"""Who is left out of what is said of many: "everyone except pepper", "all the healthy ones but not the river tank"."""

from __future__ import annotations

import re
from dataclasses import replace

from assistant.contract import Slots
from assistant.core.household import Enclosure, Household
from assistant.understand.named.chores_said import every_one
from assistant.understand.named.groups_said import groups_named, racks_in
from assistant.understand.parsing import Parsed

EXCEPT = re.compile(
    r"(?<![\w'])(?:except(?:ing)?|excluding|bar|apart from|aside from|other than|besides|minus|but not|but for"
    r"|save for|just not|(?<=everyone )but|(?<=everybody )but|(?<=everything )but|(?<=all )but|(?<=the lot )but"
    r"|, not)(?= |$)"
)
_ALL = re.compile(r"\b(?:all|every|each|both|any)\b")


def left_out(parsed: Parsed) -> int | None:
    """The token from which on what is named is left out; None: nothing is."""
    text = " ".join(token.text for token in parsed.tokens)
    found = EXCEPT.search(text)
    return len(text[: found.start()].split()) if found is not None else None


def before_the_left_out(plain: str) -> str:
    """A masked text up to where it is said who is left out: "not juniper" denies nothing of the rest."""
    return EXCEPT.split(plain, maxsplit=1)[0]


def without_the_left_out(
    slots: Slots, parsed: Parsed, excepted: tuple[str, ...], start: int, household: Household
) -> Slots:
    """The slots with the enclosures that remain; none where it isn't said of whom the others are left out.

    excepted: enclosures named from token `start` on.
    """
    text = " ".join(token.text for token in parsed.tokens)
    before, after = " ".join(text.split()[:start]), " ".join(text.split()[start:])
    groups, racks = groups_named(before), racks_in(before, household)
    not_these = groups_named(after)
    if not excepted and not not_these:
        return slots

    def meant(home: Enclosure) -> bool:
        of_these = home.group in groups if groups else home.rack in racks if racks else True
        return of_these and home.name not in excepted and home.group not in not_these

    named = tuple(name for name in slots.enclosures if name not in excepted)
    many = bool(groups or racks or every_one(before) or _ALL.search(before))
    remain = named or (tuple(home.name for home in household.enclosures if meant(home)) if many else ())
    return replace(slots, enclosures=remain, every_enclosure=False, groups=(), racks=())
