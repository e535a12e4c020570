"""Training the learned part of the matcher: a development command, tests/bench/train_matcher.py, runs it.

Nothing here is imported when a turn is read.
"""

from __future__ import annotations

import hashlib
import math
from collections.abc import Iterable, Sequence

from assistant.understand.learning import Linear, Row, features_of, softmax


def fingerprint(rows: Iterable[Row]) -> str:
    """A short mark of what a model was trained on."""
    text = "\n".join(f"{label}\t{words}" for words, label in sorted(set(rows)))
    return hashlib.sha256(text.encode()).hexdigest()[:16]


def train(rows: Sequence[Row], *, rounds: int = 12, rate: float = 0.3, decay: float = 2e-3) -> Linear:
    """A linear model of the rows: softmax regression by AdaGrad, in a fixed order, so that it comes out the same."""
    labels = tuple(sorted({label for _, label in rows}))
    place_of = {label: place for place, label in enumerate(labels)}
    count = len(labels)
    weights: dict[str, list[float]] = {}
    squares: dict[str, list[float]] = {}
    bias = [0.0] * count
    examples = [(features_of(words.split()), place_of[label]) for words, label in rows]
    share = [0] * count
    for _, label in examples:
        share[label] += 1
    balance = [math.sqrt(len(examples) / (count * many)) if many else 1.0 for many in share]
    for features, _ in examples:
        for feature in features:
            weights.setdefault(feature, [0.0] * count)
            squares.setdefault(feature, [1e-8] * count)
    for turn in range(rounds):
        for number in _shuffled(len(examples), turn):
            features, label = examples[number]
            scale = 1 / math.sqrt(len(features) or 1)
            scores = list(bias)
            for feature in features:
                row = weights[feature]
                for place in range(count):
                    scores[place] += row[place] * scale
            errors = softmax(scores)
            errors[label] -= 1
            errors = [error * balance[label] for error in errors]
            active = [(place, error) for place, error in enumerate(errors) if abs(error) > 0.002]
            for place, error in active:
                bias[place] -= 0.01 * error
            for feature in features:
                row, square = weights[feature], squares[feature]
                for place, error in active:
                    slope = error * scale + decay * row[place]
                    square[place] += slope * slope
                    row[place] -= rate * slope / math.sqrt(square[place])
    return Linear(labels, tuple(bias), {feature: tuple(enumerate(row)) for feature, row in weights.items()})


def _shuffled(count: int, turn: int) -> list[int]:
    """The numbers below `count`, in an order that looks random and is the same every time."""
    return sorted(range(count), key=lambda number: hashlib.md5(f"{turn} {number}".encode()).digest())
