"""Which numbers of a hearing must be read back before they count.

A number is certain when each of its words, and the word before it, has a posterior of 0.99 or more and no other number
stands among the alternatives. Where the whole sentence was heard well that is more than is needed for numbers that no
other number sounds like: of 1,248 clips, no number without a "-teen" or "-ty" came out wrong there.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from difflib import SequenceMatcher
from fractions import Fraction

from assistant.contract import Doubt, Heard, Reading
from assistant.core.harms import HARMS
from assistant.core.quantities.amounts import RatioWord, SaidRatio
from assistant.understand.numbers.corrections import numbers_in, said_number
from assistant.understand.numbers.spoken_numbers import NUMBER_WORDS, ONES, TENS, ZEROS
from assistant.understand.parsing import Parsed

CERTAIN = 0.99
"""Posterior that each word of a number needs (DESIGN: measured, no wrong number got through)."""
UNLIKE = 0.5
"""The same for a number that no other sounds like, in a sentence that was heard well."""
WHOLE = 0.8
"""Mean posterior of a sentence that was heard well."""
NEAREST = 3
"""Alternatives of such a sentence in which another number counts; of any other sentence they all count."""
LIKE_POINT = frozenset(("plain", "pine", "pint", "play", "fine", "pain", "paint", "line", "join"))
"""Words that a half-heard "point" may come out as: "plain nine percent" would be a dose ten times too strong."""
MUMBLED = 0.4
"""Mean posterior under which nothing but a cry is taken. On the even half of the clips in tests/bench/recognition.md,
under a fan at 10 dB: wrong questions 22.7 % with no such limit, 4.7 % at 0.3, none at 0.4; right 15, 8 and 5 %. Clean
clips are untouched by it."""

_ALIKE = ("teen", "ty")
"""How the words end that are taken for one another, by people and machines: fifteen, fifty; sixty, sixty-four."""
_NUMBERS = NUMBER_WORDS | ONES.keys() | TENS.keys() | ZEROS.keys()
_JOINTS = ("in", "to")

Parse = Callable[[str], Parsed]


@dataclass(frozen=True, slots=True)
class _Number:
    value: Fraction
    told: Fraction
    """What is read back for it: of a ratio's "one" the other part, since "one" tells nothing."""
    joint: RatioWord | None = None
    """What stood before the second part of a ratio: 1 in 2 isn't 1 to 2."""


def mean_posterior(heard: Heard) -> float:
    """How well a text was heard as a whole; an engine that tells nothing is neither trusted nor doubted."""
    if not heard.words:
        return MUMBLED
    return sum(word.posterior for word in heard.words) / len(heard.words)


def number_doubts(reading: Reading, text: str, heard: Heard, parse: Parse) -> list[Doubt]:
    """A doubt for each number that wasn't heard for certain: all of them are read back, not only the worst."""
    taken = _numbers_of(parse(text))
    if not taken or reading.intent in (None, *HARMS):
        return []
    others: dict[int, list[Fraction]] = {}
    alternatives = [_numbers_of(parse(other)) for other in dict.fromkeys((heard.text, *heard.alternatives))]
    certain = _certainty_of(text, heard, taken)
    for place, looked_at in enumerate(certain):
        if looked_at is None:
            others[place] = []
    for rank, theirs in enumerate(alternatives):
        for place, rivals in _rivals(taken, theirs):
            looked_at = certain[place]
            if looked_at is None or rank <= looked_at:
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


def with_guess_doubted(reading: Reading, parsed: Parsed) -> Reading:
    """The reading with its number in doubt, where a small word was taken for one: "one in thirty too"."""
    taken = _numbers_of(parsed)
    if not taken or reading.doubts or reading.intent in (*HARMS, None):
        return reading
    ratios = [mix.second for mix in reading.slots.mixes if isinstance(mix, SaidRatio)]
    return replace(reading, doubts=(Doubt("number", said_number(ratios[0] if ratios else taken[-1].told)),))


def _numbers_of(parsed: Parsed) -> list[_Number]:
    """Every number of a text, in order."""
    numbers: list[_Number] = []
    for found in parsed.amounts.found:
        value = found.value
        if isinstance(value, SaidRatio):
            numbers.append(_Number(value.first, value.second if value.first == 1 else value.first))
            numbers.append(_Number(value.second, value.second, value.word))
        else:
            numbers += [_Number(number, number) for number in numbers_in((value,))]
    return numbers


def _rivals(mine: Sequence[_Number], theirs: Sequence[_Number]) -> Iterator[tuple[int, list[Fraction]]]:
    """The numbers, by their place, that an alternative has otherwise, or has not, with what it has there."""
    one, other = ([(number.value, number.joint) for number in numbers] for numbers in (mine, theirs))
    for kind, begin, end, other_begin, other_end in SequenceMatcher(None, one, other, autojunk=False).get_opcodes():
        if kind in ("replace", "delete"):
            for place in range(begin, end):
                yield place, [value for value, _ in other[other_begin:other_end] if value != mine[place].value]


# ---------------------------------------------------------------- by the words it was heard as


def _certainty_of(text: str, heard: Heard, taken: Sequence[_Number]) -> list[int | None]:
    """For each number in how many alternatives another would make it doubtful; None: it is doubtful as it is."""
    runs = _runs(heard)
    if not heard.words or text != heard.text:
        return [None] * len(taken)
    if len(runs) != len(taken):  # "a litre and a half": which words are which number isn't told
        return [len(heard.alternatives) if all(_certain(heard, run) for run in runs) else None] * len(taken)
    return [_looked_at(heard, run) for run in runs]


def _looked_at(heard: Heard, run: range) -> int | None:
    if mean_posterior(heard) >= WHOLE and _unlike_others(heard, run):
        return NEAREST
    return len(heard.alternatives) if _certain(heard, run) else None


def _certain(heard: Heard, run: range) -> bool:
    """Every word of the number, and the word before it, was heard for certain; and no "point" can have been lost."""
    before = heard.words[max(0, run.start - 1) : run.start]
    if any(word.text.lower() in LIKE_POINT for word in before):
        return False
    return all(word.posterior >= CERTAIN for word in (*before, *heard.words[run.start : run.stop]))


def _unlike_others(heard: Heard, run: range) -> bool:
    """No other number sounds like it: no "-teen", no "-ty", and no percentage that may have lost its "point"."""
    words = [word.text.lower() for word in heard.words]
    said, after = words[run.start : run.stop], words[run.stop : run.stop + 1]
    if any(word.endswith(_ALIKE) and word != "twenty" for word in said) or after == ["percent"]:
        return False
    if set(words[max(0, run.start - 1) : run.start]) & LIKE_POINT:
        return False
    head = said == ["one"] and after and after[0] in _JOINTS
    return head or all(word.posterior >= UNLIKE for word in heard.words[run.start : run.stop])


def _runs(heard: Heard) -> list[range]:
    """Number words that stand together, with "and" between them: the words of one number."""
    runs: list[range] = []
    for place, word in enumerate(heard.words):
        if not _is_number(word.text):
            continue
        end = runs[-1].stop if runs else -1
        joined = place == end or (place == end + 1 and heard.words[end].text == "and")
        if joined:
            runs[-1] = range(runs[-1].start, place + 1)
        else:
            runs.append(range(place, place + 1))
    return runs


def _is_number(word: str) -> bool:
    return word.lower() in _NUMBERS or word.isdecimal()
