"""What a text's words say all together, for and against harm: learned from many cries and much ordinary talk.

The rules of this folder know what they were told of. This knows what such talk is like: it hears a cry in words that no
rule has, and overrules a rule that fires in the middle of a long story about something else. Trained by
tests/bench/train_matcher.py on `intents/cries.txt`, every phrasing and every line outside; its figures stand in
DEVELOPERS.md.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass

from assistant.contract import Question
from assistant.core.harms import HARMS, Harm
from assistant.understand.matching.learning import Row
from assistant.understand.matching.weights import opened

ORDINARY = "ordinary"

CERTAIN = 0.3
"""Score from which on it is a cry, whatever else it may be."""
LIKELY, LIKELY_SHORT, SHORT = -0.15, 0.1, 8
"""The same for what comes near to no question, and in a text of fewer than so many words, that can say less."""
NEAR = 0.5
"""Chance of a question that is near."""
OVERRULES = (
    (20, -0.5, 0.0),
    (11, -0.6, 0.0),
    (11, -0.4, 0.9),
    (8, -0.5, 0.97),
    (5, -0.9, 0.95),
)
"""A rule is overruled in a text of so many words, below that score, with that chance of being something else: a short
cry says too little to be argued with, a story that is surely a question may well be overruled."""


@dataclass(frozen=True, slots=True)
class Evidence:
    """How far a text is like each harm; 0 is as like as not."""

    scores: Mapping[Harm, float]
    words: int

    @property
    def harm(self) -> Harm:
        """What it is likest to."""
        return max(HARMS, key=lambda harm: self.scores[harm])

    @property
    def score(self) -> float:
        return self.scores[self.harm]

    @property
    def is_another_alarm(self) -> bool:
        """Whether it is rather an escape or a spill than a splash or a wound: "I can't see where it went"."""
        return self.score >= LIKELY_SHORT and self.harm in ("escape", "spill")

    def is_rather(self, one: Harm, other: Harm) -> bool:
        """Whether it is the one and, clearly, not the other."""
        return self.scores[one] >= CERTAIN and self.scores[one] >= self.scores[other] + 1

    def is_cry(self, question: float) -> bool:
        """Whether it is one though no rule knows it. question: chance of the likeliest question that is no harm."""
        if question >= NEAR:
            return self.score >= CERTAIN
        return self.score >= (LIKELY if self.words >= SHORT else LIKELY_SHORT)

    def overrules(self, other: float) -> bool:
        """Whether what a rule took for a cry is none. other: the same, or the chance of being outside."""
        return any(self.words >= words and self.score < below and other >= chance for words, below, chance in OVERRULES)


class LearnedCries:
    """Weighs a masked text."""

    def __init__(self, content: bytes) -> None:
        self._model = opened(content).model

    def __call__(self, plain: str) -> Evidence:
        words = without_stops(plain).split()
        scores = dict(zip(self._model.labels, self._model.scores(words), strict=True))
        return Evidence({harm: scores[harm] for harm in HARMS}, len(words))


def without_stops(plain: str) -> str:
    """A masked text without its full stops, which tell of the writer and not of harm."""
    return " ".join(word for word in plain.split() if word != ".")


def _stopless(plain: Callable[[str], str]) -> Callable[[str], str]:
    return lambda text: without_stops(plain(text))


def rows_of_cries(
    cries: Iterable[tuple[str, str]],
    questions: Mapping[str, Question],
    outside: Iterable[str],
    plain: Callable[[str], str],
) -> list[Row]:
    """What it is trained on.

    cries: lines with what they are, one of `HARMS` or `ORDINARY`. plain: a text as the rules read it.
    """
    plain = _stopless(plain)
    rows = [(plain(text), label) for text, label in cries]
    for name, question in questions.items():
        rows += [(plain(text), name if name in HARMS else ORDINARY) for text in question.phrasings]
    rows += [(plain(text), ORDINARY) for text in outside]
    return list(dict.fromkeys(rows))
