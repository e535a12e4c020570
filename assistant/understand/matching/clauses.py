"""The parts of a long turn: people wrap a question in a story, and the story hides it from the matcher.

"Sorry, first time on my own and he's away, how much bleach goes in the yellow bottle": its last part is the question.
Of several sentences each is looked at, and speaks for its question beside the whole; of one, its parts.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from typing import NamedTuple

from assistant.understand.matching.learning import OUTSIDE
from assistant.understand.parsing import matched_words
from assistant.understand.text.asking import WHICH_WORDS
from assistant.understand.text.known_words import words_of
from assistant.understand.text.words import SIGNS

LONG = 9
"""Words from which on a turn is looked at in parts."""
SURE = 0.55
"""Chance of the whole from which on its parts aren't looked at."""
PART_SURE = 0.8
"""Least chance of a part: several are tried, so that each has to be surer than a whole. Of 285 fresh phrasings, a third
of them stories, 12 more were right with it; of 200 lines outside one more was let in."""
TOLD = 0.6
"""What a sentence that asks nothing counts, where one that asks counts 1: the story around a question tells. Of 558
fresh stories 26 more were right with the sentences apart, and one more wrong; of 279 long lines outside not one.
"""
NO_BOUND_HIGHER = 0.97
"""Chance of the whole above which no part makes a difference: every bound on a chance lies below."""
SHORT_SURE = 0.97
"""The same of two words that the turn opens with: "quiet now, I'm counting"."""
_SHORTEST, _LONGEST = 3, 16
_ENDS = frozenset(".?!;:")
_BREAKS = SIGNS - {":", "+", "^", "*", "/", "=", "-"}
_JOINS = frozenset({"but", "so", "and", "because", "cos", "though", "only", "then"})
_ASKS = WHICH_WORDS | words_of("can could may should do does did is are am will would")
_BEGINS = words_of("can could may should shall do does did is are am will would tell")
"""These begin a question only where none has begun: "what bulb do I need" doesn't begin at "do"."""

Chances = Mapping[str, float]


class Spoken(NamedTuple):
    """What a turn is most like, and the words that speak for it."""

    chances: Chances
    words: tuple[str, ...]
    """Of the part that is surest of it; of all of it where no part is."""


def with_clauses(
    marked: Sequence[str],
    words: tuple[str, ...],
    chances: Callable[[Sequence[str]], Chances],
    by_every_word: frozenset[str] = frozenset(),
) -> Spoken:
    """The chances of a long turn's sentences together with the whole's; of one sentence, where the whole says little,
    those of its surest part; else those of the whole.

    words: all of them, as matched.
    by_every_word: questions for which a strange word counts, so that it matters which part speaks.
    """
    whole = chances(words)
    if len(marked) < LONG:
        return Spoken(whole, words)
    sentences = [(part, asks) for part, asks in _sentences(marked) if len(part) >= _SHORTEST]
    if len(sentences) > 1:
        each = [(part, chances(part), asks) for part, asks in sentences]
        together = _together(whole, [(found, asks) for _, found, asks in each])
        return _surest(Spoken(together, words), ((part, found) for part, found, _ in each))
    label = _top(whole)
    if label != OUTSIDE and whole[label] > NO_BOUND_HIGHER and label not in by_every_word:
        return Spoken(whole, words)
    parts = [(part, chances(part)) for part in _parts(marked)]
    if label != OUTSIDE and whole[label] >= SURE:
        return _surest(Spoken(whole, words), parts)
    best = Spoken(whole, words)
    surest = PART_SURE
    for part, found in parts:
        top = _top(found)
        if top != OUTSIDE and found[top] > surest and (len(part) >= _SHORTEST or found[top] >= SHORT_SURE):
            best, surest = Spoken(found, part), found[top]
    return best


def _surest(whole: Spoken, parts: Iterable[tuple[tuple[str, ...], Chances]]) -> Spoken:
    """The whole with the chance of its likeliest as the surest part has it, and that part's words, where one is sure.

    "Be quiet a while, my head's splitting and I can see the clock": four words say it, and the rest is a story.
    """
    label = _top(whole.chances)
    chance, part = max(((found[label], part) for part, found in parts), default=(0.0, whole.words))
    if chance < (PART_SURE if len(part) >= _SHORTEST else SHORT_SURE):
        return whole
    return Spoken({**whole.chances, label: max(whole.chances[label], chance)}, part)


def _together(whole: Chances, sentences: Sequence[tuple[Chances, bool]]) -> Chances:
    """How likely each question is meant by the whole or by a sentence; outside is only what is so throughout."""
    missed = {label: 1 - chance for label, chance in whole.items()}
    for chances, asks in sentences:
        for label, chance in chances.items():
            missed[label] *= 1 - chance * (1 if asks else TOLD)
    outside = min(whole[OUTSIDE], *(chances[OUTSIDE] for chances, _ in sentences))
    return {label: 1 - miss for label, miss in missed.items()} | {OUTSIDE: outside}


def _sentences(marked: Sequence[str]) -> Iterator[tuple[tuple[str, ...], bool]]:
    """Each sentence's words as they are matched, and whether it asks."""
    start = 0
    for at, word in enumerate((*marked, ".")):
        if word not in _ENDS:
            continue
        words = matched_words(marked[start:at])
        if words:
            yield words, word == "?" or words[0] in _ASKS
        start = at + 1


def _top(chances: Chances) -> str:
    return max(chances, key=lambda label: chances[label])


def _parts(marked: Sequence[str]) -> Iterator[tuple[str, ...]]:
    """From each beginning of a part to the next break, and to the end of the turn."""
    breaks = [at for at, word in enumerate(marked) if word in _BREAKS]
    starts, begun = [0], False
    for at, word in enumerate(marked):
        if word in _BREAKS or word in _JOINS:
            starts.append(at + 1)
            begun = False
        elif word in WHICH_WORDS or (word in _BEGINS and not begun):
            starts.append(at)
            begun = begun or word in WHICH_WORDS
    seen = set()
    for start in dict.fromkeys(starts):
        stop = next((at for at in breaks if at > start), len(marked))
        for end in dict.fromkeys((stop, len(marked))):
            words = matched_words(marked[start:end])
            least = _SHORTEST if start else _SHORTEST - 1
            if least <= len(words) <= _LONGEST and words not in seen and (start, end) != (0, len(marked)):
                seen.add(words)
                yield words
