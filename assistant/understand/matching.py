"""Which question a text is: the learned weights and rapidfuzz's nearest phrasing together, as chances.

Compared with the other candidates by tests/bench/scorers.py; its table stands in tests/bench/README.md.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence

from rapidfuzz import fuzz, process

from assistant.contract import Question
from assistant.understand.learning import OUTSIDE, Linear, Row
from assistant.understand.outside import LINES
from assistant.understand.parsing import phrasing_words

SHARE = 0.7
"""Of the learned weights in the mixed score: 0.7 did better than 0.5 and 0.3 (tests/bench/scorers.py)."""
SPREAD = 10.0
"""Points of rapidfuzz's ratio that make a chance e times larger; 10 was better than 5."""
FLOOR = 30.0
"""Likeness of a question none of whose phrasings is among the nearest."""
EXACT = 40.0
"""Points more for a text that is a phrasing word for word."""
NEAREST = 12
SHARPNESS = 1.4
"""Makes the chances mean what they say: held out, of those at 0.7 to 0.8 are 88 % right, from 0.9 on 99 %."""


def rows_of(questions: Mapping[str, Question]) -> list[Row]:
    """Every phrasing and every line outside, as matched, with its label: what a model is trained on."""
    rows = [
        (" ".join(phrasing_words(text)), name) for name, question in questions.items() for text in question.phrasings
    ]
    inside = {text for text, _ in rows}
    rows += [(text, OUTSIDE) for line in LINES if (text := " ".join(phrasing_words(line))) not in inside]
    return list(dict.fromkeys(rows))


class Matcher:
    """Gives each question its chance for a masked text."""

    def __init__(
        self, questions: Mapping[str, Question], learned: Linear | None, rows: Sequence[Row] | None = None
    ) -> None:
        rows = rows if rows is not None else rows_of(questions)
        self._texts = [text for text, _ in rows]
        self._labels = [label for _, label in rows]
        self._learned = learned
        self._all = (*questions, OUTSIDE)
        self.vocabulary = frozenset(word for text in self._texts for word in text.split())

    def chances(self, words: Sequence[str]) -> dict[str, float]:
        """Chance of each question, and of none (`OUTSIDE`), for a masked text; they add up to 1."""
        likeness = self._likeness(" ".join(words))
        learned = self._learned.chances(words) if self._learned is not None else {}
        scores: dict[str, float] = {}
        for label in self._all:
            fuzzy = likeness.get(label, FLOOR) / SPREAD
            # A question that the weights don't know yet is matched by its phrasings alone.
            sure = math.log(learned[label] + 1e-9) if label in learned else fuzzy - 100 / SPREAD
            scores[label] = SHARPNESS * (SHARE * sure + (1 - SHARE) * fuzzy)
        top = max(scores.values())
        powers = {label: math.exp(score - top) for label, score in scores.items()}
        total = sum(powers.values())
        return {label: power / total for label, power in powers.items()}

    def _likeness(self, text: str) -> dict[str, float]:
        best: dict[str, float] = {}
        for _, score, place in process.extract(text, self._texts, scorer=fuzz.ratio, limit=NEAREST):
            label = self._labels[place]
            best[label] = max(best.get(label, FLOOR), score + EXACT * (score == 100))
        return best
