"""Dates and times of day in a text: "yesterday at four", "on the third of may", "ten minutes ago".

Found without knowing what day it is; `moments` puts them beside now. Ratios ("one to four") and ordinary words
("may I") are none.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from assistant.understand.numbers.spoken_numbers import number_at
from assistant.understand.text.words import Token
from assistant.understand.times.time_words import BARE_CLOCK, CLOCKS, DATES, HINT, MINUTES

_LITERAL = frozenset({"today", "tonight", "tomorrow"})
"""Words that stay as they are when a text is matched: what is asked of today isn't what is told of yesterday."""


@dataclass(frozen=True, slots=True)
class SaidWhen:
    """A date, a time of day or both in a text, tokens `start` up to `end`."""

    start: int
    end: int
    date: Said | None = None
    clock: Said | None = None
    literal: bool = False
    """It stays in the text when names and numbers are masked."""


@dataclass(frozen=True, slots=True)
class Said:
    """One part of it: what kind of wording, and its pieces by name."""

    kind: str
    parts: tuple[tuple[str, str], ...] = ()
    minutes: Fraction | None = None
    """Of "two hours ago"."""

    def __getitem__(self, name: str) -> str:
        return dict(self.parts).get(name, "")


@dataclass(frozen=True, slots=True)
class _Span:
    start: int
    end: int
    said: Said


def when_in(tokens: Sequence[Token], bare: bool = False) -> SaidWhen | None:
    """The first date or time said in a text; None: there is none.

    bare: "at four" counts by itself, with no day beside it; else only beside one.
    """
    text = " ".join(token.text for token in tokens)
    if not HINT.search(text):
        return None
    places = _places_of(tokens)
    dates = _dates_in(text, tokens, places)
    date = dates[0] if dates else None
    clock = _clock_in(text, places, date, bare)
    if date is None and clock is None:
        return None
    ends = [span for span in (date, clock) if span is not None]
    literal = clock is None and text.split()[ends[0].end - 1] in _LITERAL
    return SaidWhen(
        start=min(span.start for span in ends) if _beside(date, clock, text) else ends[0].start,
        end=max(span.end for span in ends) if _beside(date, clock, text) else ends[0].end,
        date=date.said if date else None,
        clock=clock.said if clock else None,
        literal=literal,
    )


# ---------------------------------------------------------------- finding


def _places_of(tokens: Sequence[Token]) -> dict[int, int]:
    """Where each token begins and ends in the joined text."""
    places, at = {}, 0
    for number, token in enumerate(tokens):
        places[at] = number
        at += len(token.text) + 1
    places[at] = len(tokens)
    return places


def _dates_in(text: str, tokens: Sequence[Token], places: dict[int, int]) -> list[_Span]:
    for kind, pattern in DATES:
        for match in pattern.finditer(text):
            said = Said(kind, tuple((name, part) for name, part in match.groupdict().items() if part))
            start, end = match.start(), match.end()
            if kind in ("ago", "ahead"):
                counted = _counted(said["count"], tokens, places, match)
                if counted is None:
                    continue
                said, start = replace(said, minutes=counted[0]), counted[1]
            if start in places and end + 1 in places:
                return [_Span(places[start], places[end + 1], said)]
    return []


def _counted(
    count: str, tokens: Sequence[Token], places: dict[int, int], match: re.Match[str]
) -> tuple[Fraction, int] | None:
    """The minutes of "two and a half hours", and where they begin; None: no count."""
    words = count.split()
    half = words[-3:] == ["and", "a", "half"]
    words = words[:-3] if half else words
    size = words[-1].removesuffix("s") if words else ""
    minutes = 43200.0 if size == "month" else 525600.0 if size == "year" else MINUTES.get(size)
    if minutes is None:
        return None
    first, last = places[match.start("count")], places[match.start("count")] + len(words) - 1
    for at in range(first, last + 1):
        number = number_at(tokens, at)
        if number is not None and number.value >= 1 and number.end < last:
            continue  # "1 in 40 an hour ago": the forty is no hours
        if number is not None and number.faulty == "" and _reaches(tokens, number.end, last):
            return (number.value + Fraction(half, 2)) * Fraction(minutes), _begin(at, places)
        if tokens[at].text in ("a", "an") and at + 1 == last:
            return (1 + Fraction(half, 2)) * Fraction(minutes), _begin(at, places)
        if tokens[at].text == "couple":
            at = at - 1 if at > first and tokens[at - 1].text == "a" else at
            return 2 * Fraction(minutes), _begin(at, places)
    return None


def _reaches(tokens: Sequence[Token], at: int, last: int) -> bool:
    return all(tokens[place].text in ("a", "an", "of") for place in range(at, last))


def _begin(at: int, places: dict[int, int]) -> int:
    return next(begin for begin, number in places.items() if number == at)


def _clock_in(text: str, places: dict[int, int], date: _Span | None, bare: bool) -> _Span | None:
    taken = range(date.start, date.end) if date is not None else range(0)
    for pattern in CLOCKS:
        for match in pattern.finditer(text):
            span = _clock(match, places)
            if span is not None and span.start not in taken:
                return span
    for match in BARE_CLOCK.finditer(text):
        span = _clock(match, places)
        if span is None or span.start in taken:
            continue
        if (bare and _ends_there(text, match.end())) or _beside(date, span, text):
            return span
    return None


def _ends_there(text: str, at: int) -> bool:
    """Nothing follows that the number could count."""
    rest = text[at:].split()
    return not rest or rest[0] in (",", ".", "?", "!", "and", "on", "yesterday", "today")


def _clock(match: re.Match[str], places: dict[int, int]) -> _Span | None:
    if match.start() not in places or match.end() + 1 not in places:
        return None
    parts = tuple((name, part) for name, part in match.groupdict().items() if part)
    return _Span(places[match.start()], places[match.end() + 1], Said("clock", parts))


def _beside(date: _Span | None, clock: _Span | None, text: str) -> bool:
    """The two stand together, but for a comma or "at"."""
    if date is None or clock is None:
        return False
    first, second = sorted((date, clock), key=lambda span: span.start)
    return set(text.split()[first.end : second.start]) <= {",", "at", "around", "about", "on", "from"}
