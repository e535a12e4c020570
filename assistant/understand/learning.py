"""The part of the matcher that is learned ahead: which words and letters speak for which question.

A linear model over words, neighbouring words and letters in a row. `training` makes one from phrasings, `learned` holds
it as written, `learned_model` reads that, `Linear` uses it. Plain Python, no numpy.
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

OUTSIDE = "outside"
"""The label of what is not answered."""

Row = tuple[str, str]
"""A masked text and its label."""


def features_of(words: Sequence[str]) -> list[str]:
    """What a text shows: its words, two in a row, two with one between, and letters in a row of longer words."""
    padded = ["^", *words, "$"]
    found = list(dict.fromkeys(words))
    found += [f"{first} {second}" for first, second in itertools.pairwise(padded)]
    found += [f"{first} _ {second}" for first, second in zip(padded, padded[2:], strict=False)]
    for word in dict.fromkeys(words):
        if len(word) > 3 and word[0] != "{":
            edged = f"<{word}>"
            found += [f"~{edged[at : at + 4]}" for at in range(len(edged) - 3)]
    return found


@dataclass(frozen=True)
class Linear:
    """Weights for each label; scores become chances by softmax."""

    labels: tuple[str, ...]
    bias: tuple[float, ...]
    weights: Mapping[str, tuple[tuple[int, float], ...]]
    """Of each feature: label's place and weight."""

    def chances(self, words: Sequence[str]) -> dict[str, float]:
        """Each label's chance for a masked text."""
        found = [self.weights[feature] for feature in features_of(words) if feature in self.weights]
        scale = 1 / math.sqrt(len(features_of(words)) or 1)
        scores = list(self.bias)
        for row in found:
            for place, weight in row:
                scores[place] += weight * scale
        return dict(zip(self.labels, softmax(scores), strict=True))


def softmax(scores: Sequence[float]) -> list[float]:
    """Scores as chances that add up to 1."""
    top = max(scores)
    powers = [math.exp(score - top) for score in scores]
    total = sum(powers)
    return [power / total for power in powers]
