"""Which label a text is: the learned weights and rapidfuzz's nearest phrasing together, as chances.

General: it knows labelled texts and nothing of the questions. Compared with the other candidates by
tests/bench/scorers.py, and on open data by tests/bench/clinc150.py; their tables stand in tests/bench/README.md.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from rapidfuzz import fuzz, process

from assistant.contract import Question
from assistant.understand.matching.learning import OUTSIDE, Linear, Row, softmax
from assistant.understand.parsing import phrasing_words

SHARPNESS = 4.0
"""Of the learned score, fitted so that the chances mean what they say (tests/bench/scorers.py --reliability)."""
LIKENESS = 6.9
"""Of the likeness to the nearest phrasing, 0 to 1; fitted with the above."""
LEANING = 0.7
"""Towards `OUTSIDE`. The fit gives 0.4; with this, of 805 fresh phrasings none is lost, and of 301 lines outside two
fewer are let in."""
FLOOR = 50.0
"""Likeness, in points of 100, of a label none of whose texts is nearer than that."""
NEAREST = 12
NOT_LEARNED = -1.0
"""Score of a label that the weights don't know yet."""


def rows_of(questions: Mapping[str, Question], outside: Iterable[str]) -> list[Row]:
    """Every phrasing and every line outside, as matched, with its label: what a model is trained on."""
    rows = [
        (" ".join(phrasing_words(text)), name) for name, question in questions.items() for text in question.phrasings
    ]
    inside = {text for text, _ in rows}
    rows += [(text, OUTSIDE) for line in outside if (text := " ".join(phrasing_words(line))) not in inside]
    return list(dict.fromkeys(rows))


class Matcher:
    """Gives each label its chance for a masked text."""

    def __init__(self, texts: Mapping[str, Sequence[str]], model: Linear | None) -> None:
        """texts: what is known of each label."""
        self._texts = [text for known in texts.values() for text in known]
        self._of = [label for label, known in texts.items() for _ in known]
        self._model = model
        self._labels = tuple(dict.fromkeys((*texts, *(model.labels if model is not None else ()))))
        self.vocabulary = frozenset(" ".join(self._texts).split())

    def chances(self, words: Sequence[str]) -> dict[str, float]:
        """Chance of each label for a masked text; they add up to 1."""
        likeness = self._likeness(" ".join(words))
        learned = dict(zip(self._model.labels, self._model.scores(words), strict=True)) if self._model else {}
        return softmax(
            {
                label: SHARPNESS * learned.get(label, NOT_LEARNED)
                + LIKENESS * likeness.get(label, FLOOR) / 100
                + LEANING * (label == OUTSIDE)
                for label in self._labels
            }
        )

    def _likeness(self, text: str) -> dict[str, float]:
        best: dict[str, float] = {}
        nearest = process.extract(text, self._texts, scorer=fuzz.ratio, limit=NEAREST, score_cutoff=FLOOR)
        for _, score, place in nearest:
            label = self._of[place]
            best[label] = max(best.get(label, FLOOR), score)
        return best
