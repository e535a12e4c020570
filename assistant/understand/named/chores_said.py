"""Chores, and which sort of clean, as they are said: "spot-cleaned all the healthy ones, fresh water too"."""

from __future__ import annotations

from assistant.understand.named.groups_said import groups_named
from assistant.understand.text.patterns import Pattern

PLANNING = ("due", "order", "last_done", "log_clean", "quarantine")
"""Questions that are about chores."""

_CHORES = (
    (
        "water",
        Pattern(
            r"\b(?:fresh|new|clean|changed?|gave|given|refilled|topped up) (?:\S+ ){0,3}?waters?\b"
            r"|\b(?:did|done|do|needs?) (?:\S+ ){0,3}waters?\b|\bthe waters\b|^(?:just |only )*waters?$"
            r"|\b(?:get|gets|got|had|have|has) (?:(?:some|its|his|her|the|more|any) )*waters?\b"
            r"|\bwaters? (?:is |are |was |bowls? )?(?:change\w*|done|fresh)\b|\bwater(?:ed|ing)\b"
        ),
    ),
    (
        "spot clean",
        Pattern(r"\bspot (?:clean|check)\w*\b|\bpoo pick\w*\b|\bpicked up (?:the )?(?:poo|poop|droppings)\b"),
    ),
    (
        "deep clean",
        Pattern(
            r"\b(?:deep|full|big|proper|thorough) (?:clean|scrub)\w*\b|\bcleaned \S+ (?:fully|properly|thoroughly)\b"
        ),
    ),
)
IN_ORDER = tuple(chore for chore, _ in _CHORES)
"""Chores in the order of the schedule's list."""
_CLEANS = (
    (
        "quarantine clean",
        Pattern(r"\bquarantine (?:deep |full |big )?clean\w*\b|\bclean\w* (?:\S+ ){0,5}for quarantine\b"),
    ),
    (
        "scale clean",
        Pattern(
            r"\bde ?scal(?:e|es|ed|ing)\b|\b(?:lime ?)?scale clean\w*\b"
            r"|\b(?:get|getting|take|taking|clean|cleaning|scrub|scrubbing) (?:\S+ ){0,2}(?:lime ?)?scale off\b"
        ),
    ),
    ("spot clean", Pattern(r"\bspot clean\w*\b")),
    ("deep clean", Pattern(r"\b(?:deep|full|thorough) (?:clean|scrub)\w*\b")),
)
_ANYTHING = Pattern(r"\bwhat (?:did|have|was the last thing) (?:\S+ ){0,3}(?:do|did|done) (?:to|in|with|for)\b")
"""Asks for whatever was done, so every chore counts."""
_EVERYBODY = Pattern(
    r"\b(?:everybody|everyone|everything|the (?:whole )?lot|all of them|all (?:of )?(?:the |my )?"
    r"(?:waters?|water bowls|water dishes|bowls|dishes)|all the (?:tanks|tubs|boxes|enclosures|cages|animals))\b"
)


_WATERED = Pattern(
    r"^(?:(?:i|we|and|also|just|have|ok|so|then|already|he|she|they|my \w+) )*"
    r"(?:did(?! (?:i|we|you|he|she|they|any\w*|some\w*|my (?!ANIMAL|ENCLOSURE)) )|done|changed|refilled|filled"
    r"|topped up|freshened|gave|given)\b(?: \S+){0,5}? waters?\b(?! (?:to|into|in) )"
)


def watered(plain: str) -> bool:
    """ "Did basil's water", "I did all the water bowls": told of somebody, with no product in it."""
    of_somebody = _HOME.search(plain) is not None or every_one(plain) or bool(groups_named(plain))
    return of_somebody and _WATERED.match(plain) is not None and not _PRODUCT.search(plain)


_HOME = Pattern(r"\b(?:ENCLOSURE|ANIMAL)\b")
_PRODUCT = Pattern(r"\b(?:AGENT|STOCK|BOTTLE|VOLUME|MIX)\b")


def chores_in(plain: str) -> tuple[str, ...]:
    """The chores named, in the order of the schedule's list."""
    plain = plain.replace("-", " ")
    if _ANYTHING.search(plain):
        return IN_ORDER
    return tuple(chore for chore, pattern in _CHORES if pattern.search(plain))


def clean_in(plain: str) -> str | None:
    """The sort of clean named, from `jobs.JOBS`; None: none is."""
    plain = plain.replace("-", " ")
    return next((clean for clean, pattern in _CLEANS if pattern.search(plain)), None)


def every_one(plain: str) -> bool:
    """Everybody, with no group named."""
    return _EVERYBODY.search(plain) is not None
