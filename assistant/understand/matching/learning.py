"""The part of the matcher that is learned ahead: which words and letters speak for which question.

A linear model over four kinds of feature: words, neighbouring words, words with one between, and letters in a row. Each
kind weighs the same however long the text is, and what the model has never met weighs as well: a text full of strange
words comes near to nothing. tests/bench/training.py makes one from phrasings, `weights` holds it in a file.
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Protocol

OUTSIDE = "outside"
"""The label of what is not answered."""
STRANGE = 2.25
"""What a feature that was never met counts in its kind's length, against 1 for one that was. On the validation part of
the open data of tests/bench/clinc150.py: 93.5 % right at 1, 93.8 % at 2.25 and 4; as seldom wrong outside at 2.25."""

Row = tuple[str, str]
"""A masked text and its label."""
Weights = Iterable[tuple[int, float]]
"""Of one feature: label's place and weight, for the labels that it speaks for or against."""


def features_of(words: Sequence[str]) -> tuple[list[str], ...]:
    """What a text shows, by kind: its words, two in a row, two with one between, and letters of its words in a row."""
    padded = ["^", *words, "$"]
    own = dict.fromkeys(words)
    pairs = dict.fromkeys(f"{first} {second}" for first, second in itertools.pairwise(padded))
    apart = dict.fromkeys(f"{first} _ {second}" for first, second in zip(padded, padded[2:], strict=False))
    letters: dict[str, None] = {}
    for word in own:
        edged = f"<{word}>"
        if word[0] == "{":
            letters["~" + edged] = None
            continue
        for size in (3, 4):
            for at in range(len(edged) - size + 1):
                letters["~" + edged[at : at + size]] = None
    return list(own), list(pairs), list(apart), list(letters)


class Looks(Protocol):
    """Whatever holds the weights: gives a feature's, or None for one that was never met."""

    def __call__(self, feature: str) -> Weights | None: ...


@dataclass(frozen=True)
class Linear:
    """A score for each label: above 0 it speaks for the label, towards -1 and below against it."""

    labels: tuple[str, ...]
    bias: tuple[float, ...]
    weights_of: Looks

    def scores(self, words: Sequence[str]) -> list[float]:
        """Each label's score for a masked text, in the order of `labels`."""
        return self.scores_of(features_of(words))

    def scores_of(self, kinds: Iterable[Sequence[str]]) -> list[float]:
        """Each label's score for what a text shows, by kind."""
        scores = list(self.bias)
        for kind in kinds:
            met = [weights for feature in kind if (weights := self.weights_of(feature)) is not None]
            if not met:
                continue
            scale = 1 / math.sqrt(len(met) + STRANGE * (len(kind) - len(met)))
            for weights in met:
                for place, weight in weights:
                    scores[place] += weight * scale
        return scores


def softmax(scores: Mapping[str, float]) -> dict[str, float]:
    """Scores as chances that add up to 1."""
    top = max(scores.values())
    powers = {label: math.exp(score - top) for label, score in scores.items()}
    total = sum(powers.values())
    return {label: power / total for label, power in powers.items()}


def by_label(rows: Iterable[Row]) -> dict[str, list[str]]:
    """The texts of each label, in the order in which they come."""
    texts: dict[str, list[str]] = {}
    for text, label in rows:
        texts.setdefault(label, []).append(text)
    return texts


def fingerprint(rows: Iterable[Row]) -> str:
    """A short mark of what a model was trained on."""
    text = "\n".join(f"{label}\t{words}" for words, label in sorted(set(rows)))
    import hashlib  # only where something is trained or tested

    return hashlib.sha256(text.encode()).hexdigest()[:16]
