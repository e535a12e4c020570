"""How sure a hearing is: which of the recogniser's alternatives to take, and what must be read back.

A number is certain only when each of its words has a posterior of 0.99 or more and no other number stands among the
alternatives. A step is doubtful where an alternative says "not", "about to" or asks.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from difflib import SequenceMatcher
from fractions import Fraction

from assistant.contract import Doubt, Heard, Reading, Slots
from assistant.core.amounts import SaidRatio
from assistant.understand.claimed_steps import claims_in
from assistant.understand.corrections import numbers_in, said_number
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
HEARD_WHOLE = 0.7
"""Mean posterior under which the whole question is read back."""
AT_ONCE = ("yes", "no", "hush", "slower", "repeat", "help")
"""Never read back: an answer to what was asked, or nothing that could go wrong."""
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
    known = {doubt.heard for doubt in doubts}
    doubts += [doubt for doubt in _number_doubts(reading, text, heard, parse) if doubt.heard not in known]
    if reading.intent in ("done", "start", "mixed", "rinsed_out", "yes") and not any(
        doubt.kind == "polarity" for doubt in doubts
    ):
        doubts += _polarity_doubts(reading, text, heard, parse)
    said_back = any(doubt.kind == "polarity" for doubt in doubts) or reading.intent in (None, *HARM, *AT_ONCE)
    if not said_back and heard.words and _mean_posterior(heard) < HEARD_WHOLE:
        doubts.append(Doubt("hearing", text))
    return tuple(doubts)


def _number_doubts(reading: Reading, text: str, heard: Heard, parse: Callable[[str], Parsed]) -> list[Doubt]:
    """A doubt for each number that wasn't heard for certain: all of them are read back, not only the worst."""
    taken = _numbers_of(parse(text))
    if not taken or reading.intent in (None, *HARM):
        return []
    others: dict[int, list[Fraction]] = {place: [] for place in _unsure_places(text, heard, taken)}
    for alternative in dict.fromkeys((heard.text, *heard.alternatives)):
        for place, rivals in _rivals([one.value for one in taken], _numbers_of(parse(alternative))):
            others[place] = list(dict.fromkeys([*others.get(place, ()), *rivals]))
    if not others and reading.slots.numbers:
        others[len(taken) - 1] = []  # a number is left over that fits nothing
    told: dict[Fraction, list[Fraction]] = {}
    for place, rivals in sorted(others.items()):
        told[taken[place].told] = [*told.get(taken[place].told, ()), *rivals]
    return [
        Doubt("number", said_number(number), tuple(dict.fromkeys(map(said_number, rivals))))
        for number, rivals in told.items()
    ]


def _rivals(mine: list[Fraction], theirs: Sequence[_Number]) -> Iterator[tuple[int, list[Fraction]]]:
    """The numbers, by their place, that an alternative has otherwise, or has not, with what it has there."""
    values = [one.value for one in theirs]
    for kind, begin, end, other_begin, other_end in SequenceMatcher(None, mine, values, autojunk=False).get_opcodes():
        if kind in ("replace", "delete"):
            for place in range(begin, end):
                yield place, values[other_begin:other_end]


def _unsure_places(text: str, heard: Heard, taken: Sequence[_Number]) -> Iterable[int]:
    """The places of the numbers that were not heard for certain, with the word before them."""
    if not heard.words or text != heard.text:
        return range(len(taken))
    runs = _runs(heard)
    if len(runs) != len(taken):  # "a litre and a half": which words are which number isn't told
        return () if all(_well_heard(heard, run) for run in runs) else range(len(taken))
    return [place for place, run in enumerate(runs) if not _well_heard(heard, run)]


def _runs(heard: Heard) -> list[range]:
    """Number words that stand together, with "and" between them: the words of one number."""
    runs: list[range] = []
    for place, word in enumerate(heard.words):
        if not _is_number(word.text):
            continue
        joined = runs and (
            place == runs[-1].stop or (place == runs[-1].stop + 1 and heard.words[place - 1].text == "and")
        )
        runs[-1:] = [range(runs[-1].start, place + 1)] if joined else [*runs[-1:], range(place, place + 1)]
    return runs


def _well_heard(heard: Heard, run: range) -> bool:
    """Every word of the number, and the word before it, was heard for certain; and no "point" can have been lost."""
    before = heard.words[run.start - 1] if run.start else None
    if before is not None and before.text.lower() in LIKE_POINT:
        return False
    return all(
        word.posterior >= CERTAIN for word in (*heard.words[run.start : run.stop], *([before] if before else []))
    )


def _is_number(word: str) -> bool:
    return word.lower() in _NUMBERS or word.isdecimal()


@dataclass(frozen=True, slots=True)
class _Number:
    value: Fraction
    told: Fraction
    """What is read back for it: of a ratio's "one" the other part, since "one" tells nothing."""


def _numbers_of(parsed: Parsed) -> list[_Number]:
    """Every number of a text, in order."""
    numbers: list[_Number] = []
    for found in parsed.amounts.found:
        value = found.value
        if isinstance(value, SaidRatio):
            numbers.append(_Number(value.first, value.second if value.first == 1 else value.first))
            numbers.append(_Number(value.second, value.second))
        else:
            numbers += [_Number(number, number) for number in numbers_in((value,))]
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
    ratios = [mix.second for mix in reading.slots.mixes if isinstance(mix, SaidRatio)]
    return replace(reading, doubts=(Doubt("number", said_number(ratios[0] if ratios else taken[-1].told)),))
