"""Which question a turn is that says little by itself, right after an answer: learned from many that were said so.

"Three, make it", "proof of that?", "even bone dry": no rule has them all, and the matcher, which knows nothing of the
talk, takes them for nothing. Trained by tests/bench/train_matcher.py on `intents/follow_ups.txt`; its figures stand in
tests/bench/README.md.
"""

from __future__ import annotations

import math
from bisect import bisect
from collections.abc import Callable, Mapping, Sequence
from functools import cached_property
from itertools import cycle
from typing import NamedTuple

from assistant.understand.matching.learning import OUTSIDE, Linear, features_of, softmax
from assistant.understand.matching.weights import opened

SAME = "same"
"""The question before is meant once more."""
SHARPNESS = 4.0
"""Of the learned score; with the next two chosen on ten sets, each left out in turn (tests/bench/README.md)."""
MATCHED = 0.3
"""What the matcher's own chance of another question counts besides."""
LEANING = 0.5
"""Towards `OUTSIDE`."""
_LEAST = 0.001
_NOT_LEARNED = -1.0
_BOUNDS = (0.005, 0.02, 0.06, 0.15, 0.3, 0.5, 0.75, 0.93)
"""Of chances, between the steps in which they are looked at."""
_LONGEST = 12
_EVERY = 5
"""Of the lines outside so many-th is put after a question; with all of them it was no better."""

Kinds = list[list[str]]
Chances = Mapping[str, float]


class FollowUp(NamedTuple):
    """A turn as it was said after an answer, and what it was."""

    before: str
    """The question that was answered."""
    meant: str
    """The question that it is, or `OUTSIDE`."""
    text: str
    """In the form of a phrasing."""


def shown(before: str, words: Sequence[str], chances: Chances | None, asks: bool) -> Kinds:
    """What a turn shows, by kind.

    before: the question just answered.
    words, chances: of the turn, as the matcher has them; None where it was trained on this very turn, so that they
    tell nothing. asks: whether it ends as a question.
    """
    of_talk = [f"{{{before}}} {word}" for word in dict.fromkeys(words)]
    evidence = [f"={before}", f"words {min(len(words), _LONGEST)}", f"asks {asks}"]
    if chances is not None:
        own, outside = _step(chances.get(before, 0.0)), _step(chances.get(OUTSIDE, 0.0))
        other = _step(max((chance for label, chance in chances.items() if label not in (before, OUTSIDE)), default=0.0))
        evidence += [f"own {own}", f"outside {outside}", f"other {other}"]
        evidence += [f"own {own} other {other}", f"outside {outside} own {own}"]
    return [*features_of(words), of_talk, evidence]


def _step(chance: float) -> int:
    return bisect(_BOUNDS, chance)


def rows_of_follow_ups(
    lines: Sequence[FollowUp],
    outside: Sequence[str],
    looked_at: Callable[[str], tuple[Sequence[str], Chances]],
) -> list[tuple[Kinds, str]]:
    """What each line shows, and its label: what a model is trained on.

    outside: lines outside, which are so after any question.
    looked_at: gives a phrasing's words as they are matched, and the matcher's chances.
    """
    rows = []
    for line in lines:
        words, chances = looked_at(line.text)
        label = SAME if line.meant == line.before else line.meant
        rows.append((shown(line.before, words, chances, line.text.endswith("?")), label))
    for text, line in zip(outside[::_EVERY], cycle(lines), strict=False):
        rows.append((shown(line.before, looked_at(text)[0], None, text.endswith("?")), OUTSIDE))
    return rows


class LearnedOn:
    """Weighs a turn against the question before it."""

    def __init__(self, content: bytes) -> None:
        self._content = content

    @cached_property
    def _model(self) -> Linear:
        """Opened when a turn first needs it: most do not."""
        return opened(self._content).model

    def __call__(self, before: str, words: Sequence[str], chances: Chances, asks: bool) -> Chances:
        """The chances of `SAME`, `OUTSIDE` and each other question; they add up to 1."""
        scores = dict(zip(self._model.labels, self._model.scores_of(shown(before, words, chances, asks)), strict=True))
        apart = {label for label in (*scores, *chances) if label not in (SAME, OUTSIDE, before)}
        weighed = {label: SHARPNESS * scores.get(label, _NOT_LEARNED) for label in (SAME, OUTSIDE)}
        weighed[OUTSIDE] += LEANING
        for label in apart:
            matched = math.log(max(chances.get(label, 0.0), _LEAST))
            weighed[label] = SHARPNESS * scores.get(label, _NOT_LEARNED) + MATCHED * matched
        return softmax(weighed)
