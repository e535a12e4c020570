"""Words without one of which nothing is told to be filled: "bleach in the yellow bottle, 600 ppm" wishes for a dose."""

from __future__ import annotations

from assistant.understand.parsing import Parsed
from assistant.understand.text.known_words import words_of
from assistant.understand.text.patterns import Pattern

_FILLED = words_of(
    """
    added batch bunged chucked did done fill filled filling fresh full got has have holds made measured mix mixed new
    poured put ready refilled squirted there tipped topped
    """
)
_POPPED_IN = Pattern(r"\bpopped (?:\S+ ){0,4}?(?:in|into|it|AGENT|STOCK|VOLUME|MIX)\b")
"""A bottle that popped by itself was filled with nothing."""
_IS_IN = Pattern(r"\b(?:is|are|went|goes|'s) (?:now |all |already |back )*(?:in|inside)\b")
_PUT = Pattern(r"^(?:(?:ok|please|now|and|then|so|just|right) ,? ?)*put (?!in\b)")
_DONE_NOW = Pattern(r"\b(?:just|now|already|earlier|ago|yesterday|again|WHEN|today|this morning|last|there)\b")


def tells_a_fill(plain: str) -> bool:
    """Whether anything in it says that something was filled."""
    said = not _FILLED.isdisjoint(plain.split())
    return said or _POPPED_IN.search(plain) is not None or _IS_IN.search(plain) is not None


def wishes_for_a_mix(parsed: Parsed) -> bool:
    """ "Bleach in the yellow bottle, 600 ppm": a bottle and how strong, and nothing that was done."""
    return not tells_a_fill(parsed.plain) and {"{mix}", "{bottle}"} <= set(parsed.words)


def may_be_an_order(plain: str) -> bool:
    """ "Put bleach in the yellow bottle at one in 50": told of what was done, or wished for; the verb is the same."""
    of_a_mix = "MIX" in plain.split() and "VOLUME" not in plain  # so much of it is measured already
    return of_a_mix and _PUT.match(plain) is not None and _DONE_NOW.search(plain) is None
