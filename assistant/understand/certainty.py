"""How sure a hearing is: which of the recogniser's alternatives to take, and what must be read back.

A number is certain only when each of its words has a posterior of 0.99 or more and no other number stands among the
alternatives. A step is doubtful where an alternative says "not", "about to" or asks.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from fractions import Fraction

from assistant.contract import Doubt, Heard, Reading, Slots
from assistant.core.amounts import Amount, Percent, Ppm, SaidRatio
from assistant.understand.claimed_steps import claims_in
from assistant.understand.corrections import said_number
from assistant.understand.parsing import Parsed
from assistant.understand.spoken_numbers import NUMBER_WORDS, ONES, TENS, ZEROS

CERTAIN = 0.99
"""Posterior that each word of a number needs (DESIGN: measured, no wrong number got through)."""
BETTER = 0.25
"""An alternative is taken only when its reading is surer by this much; the first hearing is mostly right."""
PLAIN = 0.9
"""Mean posterior of a text that needs no alternative: of 128 clean clips, three heard word for word at 0.95 and more
came out as another question by way of an alternative."""
MUMBLED = 0.4
"""Mean posterior under which nothing but a cry is taken. On the even half of the clips in tests/bench/recognition.md,
under a fan at 10 dB: wrong questions 22.7 % with no such limit, 4.7 % at 0.3, none at 0.4; right 15, 8 and 5 %. Clean
clips are untouched by it."""
LIKE_POINT = frozenset(("plain", "pine", "pint", "play", "fine", "pain", "paint", "line", "join"))
"""Words that a half-heard "point" may come out as: "plain nine percent" would be a dose ten times too strong."""
HARM = ("splash", "wound", "escape", "spill")
LOOKED_AT = 8
"""Alternatives that are read in full; the numbers of all of them count."""
HEARD_WELL = 0.5
"""Least posterior of a word of a step, a start or a yes that isn't read back. Chosen, not measured."""

_NUMBERS = NUMBER_WORDS | ONES.keys() | TENS.keys() | ZEROS.keys()


def best_of(heard: Heard, read: Callable[[str], Reading]) -> tuple[str, Reading]:
    """The text to take, of what was heard and its alternatives, with its reading.

    What was heard well and means something is taken as it is. Mumbling is no question, but a cry is heard even there:
    the first hearing's own, or one that half of the alternatives agree on. A cry in a single alternative is mostly
    noise ("I've rinsed" as "I breathed"), and would start a rinse that nobody needs.
    """
    text, best = heard.text, read(heard.text)
    sure = _mean_posterior(heard)
    if sure >= PLAIN and best.intent is not None:
        return text, best
    others = [(other, read(other)) for other in heard.alternatives[:LOOKED_AT] if other != text]
    cries = [(other, reading) for other, reading in others if reading.intent in HARM]
    if best.intent not in HARM and cries and 2 * len(cries) >= len(others):
        return cries[0]
    for other, reading in others:
        better = reading.confidence >= best.confidence + BETTER or best.intent is None
        if reading.intent not in (None, *HARM) and better and best.intent not in HARM:
            text, best = other, reading
    if sure < MUMBLED and best.intent not in HARM:
        return heard.text, replace(best, intent=None, slots=Slots(), confidence=sure, doubts=())
    return text, best


def _mean_posterior(heard: Heard) -> float:
    """How well a text was heard as a whole; an engine that tells nothing is neither trusted nor doubted."""
    if not heard.words:
        return MUMBLED
    return sum(word.posterior for word in heard.words) / len(heard.words)


def doubts_of(reading: Reading, text: str, heard: Heard, parse: Callable[[str], Parsed]) -> tuple[Doubt, ...]:
    """What of a reading was not heard with certainty."""
    doubts = list(reading.doubts)
    doubts += _number_doubts(reading, text, heard, parse)
    if reading.intent in ("done", "start", "mixed", "rinsed_out", "yes") and not any(
        doubt.kind == "polarity" for doubt in doubts
    ):
        doubts += _polarity_doubts(reading, text, heard, parse)
    return tuple(doubts)


def _number_doubts(reading: Reading, text: str, heard: Heard, parse: Callable[[str], Parsed]) -> list[Doubt]:
    taken = _numbers_of(parse(text))
    if not taken or reading.intent in (None, *HARM):
        return []
    others: list[Fraction] = []
    changed: list[Fraction] = []
    for alternative in dict.fromkeys((heard.text, *heard.alternatives)):
        numbers = _numbers_of(parse(alternative))
        for place, number in enumerate(numbers):
            mine = taken[place] if place < len(taken) else None
            if mine is not None and number != mine:
                others += [number] * (number not in others)
                changed += [mine] * (mine not in changed)
    if not changed and not reading.slots.numbers and _well_heard(text, heard):
        return []  # and no number is left over that fits nothing
    doubted = _telling(changed[-1], reading) if changed else _least_sure(taken, reading)
    return [Doubt("number", said_number(doubted), tuple(said_number(other) for other in others))]


def _well_heard(text: str, heard: Heard) -> bool:
    """Every word of every number, and the word before it, was heard for certain; and no "point" can have been lost."""
    if not heard.words or text != heard.text:
        return False
    matters = []
    for place, word in enumerate(heard.words):
        if not _is_number(word.text):
            continue
        before = heard.words[place - 1] if place else None
        if before is not None and not _is_number(before.text) and before.text.lower() in LIKE_POINT:
            return False
        matters += [word.posterior, before.posterior if before is not None else word.posterior]
    return bool(matters) and min(matters) >= CERTAIN


def _is_number(word: str) -> bool:
    return word.lower() in _NUMBERS or word.isdecimal()


def _telling(number: Fraction, reading: Reading) -> Fraction:
    """The number to read back: of a ratio its last part, since "one" tells nothing."""
    ratios = [mix for mix in reading.slots.mixes if isinstance(mix, SaidRatio)]
    return ratios[0].second if ratios and number == ratios[0].first else number


def _least_sure(taken: Sequence[Fraction], reading: Reading) -> Fraction:
    """The number that is asked about: the one that matters most, the last part of the ratio."""
    for mix in reading.slots.mixes:
        if isinstance(mix, SaidRatio):
            return mix.second
    return taken[-1]


def _numbers_of(parsed: Parsed) -> list[Fraction]:
    """Every number of a text, in order."""
    numbers: list[Fraction] = []
    for found in parsed.amounts.found:
        value = found.value
        if isinstance(value, SaidRatio):
            numbers += [value.first, value.second]
        elif isinstance(value, Percent):
            numbers.append(value.percent)
        elif isinstance(value, Ppm):
            numbers.append(value.ppm)
        elif isinstance(value, Amount):
            numbers.append(value.amount)
        elif isinstance(value, Fraction):
            numbers.append(value)
    return numbers


def _polarity_doubts(reading: Reading, text: str, heard: Heard, parse: Callable[[str], Parsed]) -> list[Doubt]:
    said = reading.slots.steps[0] if reading.slots.steps else reading.intent or ""
    for alternative in (heard.text, *heard.alternatives):
        if alternative == text:
            continue
        plain = parse(alternative).plain
        claims = claims_in(plain)
        against = claims.polarity in ("not yet", "asked") or (not claims.done and set(claims.mentioned) & {said})
        refusal = reading.intent == "yes" and {"no", "not", "nope"} & set(plain.split())
        if (reading.intent == "done" and against and {said} & {*claims.mentioned, *claims.done}) or refusal:
            return [Doubt("polarity", said, (alternative,))]
    if text != heard.text:
        return [Doubt("polarity", said)]  # not the first hearing: nothing is recorded on it unasked
    if heard.words and min(word.posterior for word in heard.words) < HEARD_WELL:
        return [Doubt("polarity", said)]
    return []


def with_doubts(reading: Reading, text: str, heard: Heard, parse: Callable[[str], Parsed]) -> Reading:
    """The reading with its doubts, marked as spoken."""
    return replace(reading, spoken=True, doubts=doubts_of(reading, text, heard, parse))


def with_guess_doubted(reading: Reading, parsed: Parsed) -> Reading:
    """The reading with its number in doubt, where a small word was taken for one: "one in thirty too"."""
    taken = _numbers_of(parsed)
    if not taken or reading.doubts or reading.intent in (*HARM, None):
        return reading
    return replace(reading, doubts=(Doubt("number", said_number(_least_sure(taken, reading))),))
