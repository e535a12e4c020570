"""A month as a picture of letters: a row an enclosure, a letter for what was done on the day, no meaning by colour."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from datetime import date, timedelta
from textwrap import wrap

from assistant.core.record.history import RANKS, Done

LETTERS: Mapping[Done, str] = {
    "disinfected": "D",
    "cleaned": "C",
    "part": "P",
    "spot clean": "S",
    "water": "W",
    "other": "N",
}

LEGEND: Mapping[Done, str] = {
    "disinfected": "disinfected: every step done and its time served",
    "cleaned": "cleaned, not disinfected",
    "part": "part of a clean, not finished that day",
    "spot clean": "spot clean",
    "water": "fresh water",
    "other": "a note: see the table",
}

NOTHING, MORE = ".", "+"
NAMES_WIDTH = 17
"""With two columns a day this fills 80 columns."""

Days = Mapping[date, frozenset[Done]]


def month_lines(month: date, rows: Mapping[str, Days], today: date) -> list[str]:
    """The picture's lines.

    month: any day of it. rows: an enclosure each, in the order they are drawn.
    today: days after it are left blank.
    """
    days = days_of(month)
    lines = [f"{month:%B %Y}", "", *_heads(days)]
    for name, done in rows.items():
        first, *rest = wrap(name, NAMES_WIDTH, break_on_hyphens=False) or [""]
        lines.append(f"{first:{NAMES_WIDTH}} {''.join(_cell(day, done, today) for day in days)}".rstrip())
        lines += rest
    return [*lines, "", *_legend(rows, days)]


def days_of(month: date) -> Sequence[date]:
    """Every day of the month that a day lies in."""
    first = month.replace(day=1)
    following = (first + timedelta(days=31)).replace(day=1)
    return [first + timedelta(days=n) for n in range((following - first).days)]


def _heads(days: Sequence[date]) -> Iterator[str]:
    """The days of the month, their tens above their ones."""
    tens = "".join(f"{day.day // 10 or ' '} " for day in days)
    ones = "".join(f"{day.day % 10} " for day in days)
    for row in (tens, ones):
        yield f"{'':{NAMES_WIDTH}} {row}".rstrip()


def _cell(day: date, done: Days, today: date) -> str:
    kinds = [kind for kind in RANKS if kind in done.get(day, ())]
    if not kinds:
        return "  " if day > today else f"{NOTHING} "
    return LETTERS[kinds[0]] + (MORE if len([kind for kind in kinds if kind != "part"]) > 1 else " ")


def _legend(rows: Mapping[str, Days], days: Sequence[date]) -> Iterator[str]:
    """Only of what is drawn."""
    cells = {_cell(day, done, days[-1]) for done in rows.values() for day in days}
    for kind in RANKS:
        if any(cell.startswith(LETTERS[kind]) for cell in cells):
            yield f"{LETTERS[kind]}  {LEGEND[kind]}"
    yield f"{NOTHING}  nothing on record"
    if any(cell.endswith(MORE) for cell in cells):
        yield f"{MORE}  more was done that day; the letter is the most thorough of it"
