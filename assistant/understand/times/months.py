"""A month in which something was made or bought: "in June", "last March", "since may 2025"."""

from __future__ import annotations

from assistant.understand.text.words import Token

_MONTHS = (
    *("january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november"),
    "december",
)
_SHORT = {name[:3]: number for number, name in enumerate(_MONTHS, 1) if name != "may"} | {"sept": 9}
_NUMBER = {name: number for number, name in enumerate(_MONTHS, 1)} | _SHORT
_BEFORE = frozenset({"in", "since", "last", "from", "early", "late", "mid", "of", "during", "around", "about"})


def month_in(tokens: tuple[Token, ...]) -> tuple[int | None, int] | None:
    """The year (None: unsaid) and month; None: none is named. "May" alone may be a verb, so a word goes before it."""
    words = [token.text for token in tokens]
    for at, word in enumerate(words):
        before, after = words[at - 1] if at else "", words[at + 1] if at + 1 < len(words) else ""
        if word not in _NUMBER or (word in ("may", "march", "mar", "dec", "sep", "jan") and before not in _BEFORE):
            continue
        year = int(after) if after.isdecimal() and len(after) == 4 else None
        return year, _NUMBER[word]
    return None
