"""Bowls, tongs, branches and cloths in a text: which, and what is done with them; `from_to` has where they go."""

from __future__ import annotations

import re
from functools import lru_cache

from assistant.core.facts import Facts
from assistant.understand.named.from_to import PLACE
from assistant.understand.text.patterns import Pattern

_WAYS: tuple[tuple[str, Pattern], ...] = (
    ("soak", Pattern(r"\b(?:soak\w*|dunk\w*|dip|dipped|steep\w*|submerge\w*|leave (?:it|them) in)\b")),
    ("boil", Pattern(r"\b(?:boil\w*|simmer\w*|scald\w*|boiling water|kettle|pot|pan|stove|hob)\b")),
    ("bake", Pattern(r"\b(?:bak(?:e|ed|ing)|oven|roast\w*|grill)\b")),
    ("wash hot", Pattern(r"\b(?:launder\w*|washing machine|machine wash\w*|hot wash|in the wash|wash(?:ed)? hot)\b")),
    ("bin", Pattern(r"\b(?:bin|binned|binning|throw\w*|chuck\w*|discard\w*|trash|bag (?:it|them) up|dump)\b")),
    ("wipe", Pattern(r"\b(?:wipe|wiped|wiping)\b(?! (?:off|down) the)")),
    ("dishwasher", Pattern(r"\bdish ?washer\b")),
    ("microwave", Pattern(r"\bmicrowav\w*\b")),
    ("freeze", Pattern(r"\b(?:freez\w*|froze|frozen)\b(?! (?:mouse|mice|rat|rats|feeder))")),
    ("steam", Pattern(r"\bsteam\w*\b")),
    ("sun", Pattern(r"\b(?:in the sun|sunlight|uv light)\b")),
)
_BEGUN = Pattern(
    r"(?:\b(?:is|are|have|has)|'s)(?: now| all| been| just| gone)* "
    r"(?:in(?:to)? the (?:oven|pot|pan|wash|washing machine|machine|soak|bleach|AGENT|BOTTLE)|soaking|boiling|baking"
    r"|in (?:soak|AGENT)|on (?:the )?boil)\b"
    r"|\b(?:put|popped|chucked|stuck|got)(?: \S+){1,5} (?:in(?:to)? the (?:oven|pot|pan|wash|washing machine|machine)"
    r"|(?:on )?to (?:soak|boil|bake)|in (?:to )?soak|on (?:the )?boil)\b"
    r"|^(?:i am |i 'm |now |ok |right )*(?:soaking|boiling|baking) (?:the|my|his|her|its|their|all the|both)\b"
    r"|\bstarted (?:soaking|boiling|baking|washing)\b|\b(?:soaking|boiling|baking) (?:it|them|the \w+) now\b"
)
_WET_YET = Pattern(
    r"\b(?:sprayed|soaked|bleached|misted|treated|wet)\b"
    r"|\b(?:fell|fallen|dropped|landed|slipped)(?: \w+)? in(?:to)? (?:the |a )?(?:\w+ )?"
    r"(?:AGENT|STOCK|BOTTLE|bucket|mix|solution)\b"
)
_RINSED_AND_DRY = Pattern(r"\brinsed\b.*\b(?:dry|dried)\b|\b(?:dry|dried)\b.*\brinsed\b")


def items_in(plain: str, facts: Facts) -> tuple[str, ...]:
    """Ids of the items named, in the order said; the longer name wins ("cork hide" is cork)."""
    names, pattern = _names_of(facts)
    found = [names[match.group(1)] for match in pattern.finditer(plain)]
    return tuple(dict.fromkeys(found))


@lru_cache(maxsize=4)
def _names_of(facts: Facts) -> tuple[dict[str, str], re.Pattern[str]]:
    names = {
        name: str(row["id"]) for row in facts.table("items", "item") for name in (row["id"], row["name"], *row["also"])
    }
    longest_first = sorted(names, key=len, reverse=True)
    return names, re.compile(rf"\b({'|'.join(map(re.escape, longest_first))})\b")


def ways_in(plain: str) -> tuple[str, ...]:
    """What is to be done with them, in the order of `_WAYS`."""
    return tuple(way for way, pattern in _WAYS if pattern.search(plain))


def begun_in(plain: str) -> bool:
    """True when one is said to be in the oven, the pot, the machine or the soak by now."""
    return _BEGUN.search(plain) is not None and not plain.endswith("?")


_CRACKED = Pattern(r"\b(?:crack\w*|chip(?:ped|s)?|scratch\w*|split|broke|broken|shattered|smashed|worn)\b")


def cracked_in(plain: str) -> bool:
    """True when a thing is said to be cracked, chipped or scratched."""
    return _CRACKED.search(plain) is not None


def still_wet_in(plain: str) -> bool:
    """True when a thing is said to have been sprayed or soaked, and not to be rinsed and dry since."""
    return _WET_YET.search(plain) is not None and _RINSED_AND_DRY.search(plain) is None


_ASKS = Pattern(
    r"^(?:(?:and|so|ok|um|right|hey|wait|but) )*"
    r"(?:how|what|which|can|could|may|should|do|does|is|are|would|will|shall|must)\b"
    r"|\?$|, (?:can|could|may|same|is|will|would)\b|\bbest way\b|^same\b"
)
"""What may be done with a thing. Fewer words than `text.asking` has: "has the tub had its clean" and "when did I wash
the bowls" ask what was done, which is another question."""
_TREAT = Pattern(
    r"\b(?:clean|cleaning|disinfect\w*|steril\w*|steral\w*|sanitis\w*|sanitiz\w*|wash|washing|boil\w*|bak(?:e|ing)"
    r"|soak\w*|oven|freez\w*|microwav\w*|dishwasher|bin|throw|chuck|reuse|save|keep|rid|steam\w*)\b"
)
_SHARE = Pattern(
    r"\b(?:use|used|using|share|sharing|same|take|taking|move|go|goes|have|swap|borrow|change|give|lend|both|one)\b"
)
_TOOLS = frozenset({"tongs", "wiping cloth", "gloves", "bowl", "hide", "branch", "tub", "fabric", "stone", "substrate"})


def asked_of_items(plain: str, facts: Facts) -> str | None:
    """ "treat_item" or "share_tool", for a question about a thing that the phrasings don't cover; None: neither."""
    if not _ASKS.search(plain) and not begun_in(plain):
        return None
    items = items_in(plain, facts)
    if not items:
        return None
    if set(items) & _TOOLS and _SHARE.search(plain) and PLACE.search(plain) and "AGENT" not in plain:
        return "share_tool"
    return "treat_item" if _TREAT.search(plain) or begun_in(plain) else None
