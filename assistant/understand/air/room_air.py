"""The room's air in a text: how damp, how it moves, how often it is changed, and how much of it is to be out.

Only for the questions about drying and airing; elsewhere a percentage is a strength and a window is an opening said.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from assistant.contract import Draught, Slots
from assistant.core.quantities.amounts import Amount, Percent
from assistant.understand.air.openings import openings_in, openings_named
from assistant.understand.numbers.amounts import Found
from assistant.understand.parsing import Parsed
from assistant.understand.text.patterns import Pattern

_FAN = Pattern(r"\b(?:fan|fans|blower|hair ?dryer|dehumidifier)\b")
_NO_FAN = Pattern(
    r"\b(?:no|without a|without the) (?:fan|draughts?|drafts?|breeze|air ?flow|wind)\b|\bfan(?: is)? off\b"
)
_STILL = Pattern(
    r"\b(?:still|dead|stuffy|stagnant) air\b|\bair is still\b|\bno air moving\b|\blid on\b"
    r"|\b(?:windows?|doors?|everything|room|vents?)(?: is| are| all)* (?:shut|closed)\b"
    r"|\b(?:shut|closed) (?:windows?|doors?|room)\b"
)
_DRAUGHT = Pattern(
    r"\b(?:draughts?|draughty|drafts?|drafty|breeze|breezy|windy|air ?flow)\b"
    r"|\b(?:windows?|doors?)(?: is| are)?(?: wide)? open\b|\bopen(?:ed)?(?: the| a)? (?:windows?|doors?)\b"
)
_HUMID = ("humidity", "humid", "rh", "damp", "moisture")
_WARMEST = 50
"""Degrees above which a room's are Fahrenheit."""
_CHANGES = ("changes", "change", "exchanges", "ach")


def with_room_air(slots: Slots, parsed: Parsed, intent: str | None) -> Slots:
    """The slots with what a question about drying or airing says of the air; for any other they are as they were."""
    if intent == "dry_time":
        damp = _humidity(parsed)
        warm = _of_a_room(slots.temperatures, parsed) or _temperatures(parsed, damp)
        mixes = tuple(mix for mix in slots.mixes if not isinstance(mix, Percent) or mix.percent != damp)
        moves = draught_in(parsed.plain)
        return replace(slots, humidity=damp, mixes=mixes, draught=moves, temperatures=warm, numbers=())
    if intent == "air_time":
        openings = openings_in(parsed.plain)
        return replace(
            slots,
            openings=openings if openings is not None else openings_named(parsed.plain),
            air_changes=_numbered(parsed, _CHANGES, after=3),
            mixing=_after_words(parsed, ("mixing", "factor")),
            numbers=(),
        )
    return slots


def draught_in(plain: str) -> Draught | None:
    """How the air is said to move; None: nothing is said."""
    if _NO_FAN.search(plain) or _STILL.search(plain):
        return "still"
    if _FAN.search(plain):
        return "fan"
    return "draught" if _DRAUGHT.search(plain) else None


def _humidity(parsed: Parsed) -> Fraction | None:
    """A percentage that no product follows, or a number beside "humidity"."""
    ends = {mention.start for mention in parsed.mentions if mention.things[0].kind in ("agent", "stock")}
    for found in parsed.amounts.found:
        if isinstance(found.value, Percent) and found.end not in ends and found.value.percent >= 1:
            return found.value.percent
    return _numbered(parsed, _HUMID, after=2, before=4)


def _of_a_room(said: tuple[Amount, ...], parsed: Parsed) -> tuple[Amount, ...]:
    """Degrees of Celsius that nobody named so, and that no room has, are Fahrenheit: "at 90 degrees"."""
    if {"celsius", "centigrade", "c"} & {token.text for token in parsed.tokens}:
        return said
    return tuple(Amount(t.amount, "degF") if t.unit == "degC" and t.amount > _WARMEST else t for t in said)


def _temperatures(parsed: Parsed, damp: Fraction | None) -> tuple[Amount, ...]:
    """Bare degrees: of Celsius as far as a room in Celsius may be warm, of Fahrenheit above."""
    bare = [value for found in _bare(parsed) if (value := _value(found)) is not None and value != damp]
    return tuple(Amount(value, "degC" if value <= _WARMEST else "degF") for value in bare[:1])


def _numbered(parsed: Parsed, words: tuple[str, ...], after: int, before: int = 0) -> Fraction | None:
    """The bare number with one of these words close behind it, or close before."""
    texts = [token.text for token in parsed.tokens]
    for found in _bare(parsed):
        near = texts[found.end : found.end + after] + texts[max(0, found.start - before) : found.start]
        if any(word in near for word in words):
            return _value(found)
    return None


def _after_words(parsed: Parsed, words: tuple[str, ...]) -> Fraction | None:
    texts = [token.text for token in parsed.tokens]
    for found in _bare(parsed):
        if set(words) <= set(texts[max(0, found.start - 4) : found.start]):
            return _value(found)
    return None


def _bare(parsed: Parsed) -> list[Found]:
    return [found for found in parsed.amounts.found if found.kind == "number"]


def _value(found: Found) -> Fraction | None:
    return found.value if isinstance(found.value, Fraction) else None
