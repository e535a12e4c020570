"""Training the learned part of the matcher: one linear classifier a label, each against all the rest.

Dual coordinate descent on the squared hinge loss with L2 weights (Hsieh et al., "A Dual Coordinate Descent Method for
Large-scale Linear SVM", ICML 2008, algorithm 1), all labels at a time, in a fixed order, so that it comes out the same.
Needs numpy; nothing here is imported when a turn is read.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from assistant.understand.matching.learning import STRANGE, Linear, Row, Weights, features_of


@dataclass(frozen=True)
class Recipe:
    """How a model is trained."""

    rounds: int = 12
    cost: float = 1.0
    """Of a row on the wrong side."""
    seen: int = 2
    """Rows that a feature must be seen in: one seen once tells more of the row than of the question."""
    smallest: float = 0.012
    """Weights up to this are left out, and so is a feature with none above."""


@dataclass(frozen=True)
class Trained:
    """A model's parts, weights by feature."""

    labels: tuple[str, ...]
    bias: tuple[float, ...]
    weights: dict[str, Weights]

    @property
    def model(self) -> Linear:
        return Linear(self.labels, self.bias, self.weights.get)


def train(rows: Sequence[Row], recipe: Recipe = Recipe()) -> Trained:
    """A model of the rows."""
    return train_on([(features_of(text.split()), label) for text, label in rows], recipe)


def train_on(rows: Sequence[tuple[Sequence[list[str]], str]], recipe: Recipe) -> Trained:
    """The same of what texts show, by kind, with their labels."""
    labels = tuple(sorted({label for _, label in rows}))
    shown = [kinds for kinds, _ in rows]
    seen = Counter(feature for kinds in shown for kind in kinds for feature in kind)
    place_of = {feature: place for place, feature in enumerate(f for f, many in seen.items() if many >= recipe.seen)}
    examples = [_example(kinds, place_of) for kinds in shown]
    signs = np.full((len(rows), len(labels)), -1.0, dtype=np.float32)
    signs[np.arange(len(rows)), [labels.index(label) for _, label in rows]] = 1.0
    weights = _descended(examples, signs, len(place_of) + 1, recipe)
    bias = tuple(float(weight) for weight in weights[-1])
    kept = {feature: _kept(weights[place], recipe.smallest) for feature, place in place_of.items()}
    return Trained(labels, bias, {feature: row for feature, row in kept.items() if row})


def _example(kinds: Sequence[list[str]], place_of: dict[str, int]) -> tuple[np.ndarray, np.ndarray]:
    """A row's places and values, as `Linear.scores` weighs them, and the bias as one more feature."""
    places: list[int] = []
    values: list[float] = []
    for kind in kinds:
        met = [place_of[feature] for feature in kind if feature in place_of]
        if met:
            places += met
            values += [1 / math.sqrt(len(met) + STRANGE * (len(kind) - len(met)))] * len(met)
    return np.array([*places, len(place_of)]), np.array([*values, 1.0], dtype=np.float32)


def _descended(
    examples: Sequence[tuple[np.ndarray, np.ndarray]], signs: np.ndarray, size: int, recipe: Recipe
) -> np.ndarray:
    weights = np.zeros((size, signs.shape[1]), dtype=np.float32)
    duals = np.zeros_like(signs)
    slack = 1 / (2 * recipe.cost)
    lengths = [float(values @ values) + slack for _, values in examples]
    order = np.random.default_rng(0)
    for _ in range(recipe.rounds):
        for number in order.permutation(len(examples)):
            places, values = examples[number]
            sign, dual = signs[number], duals[number]
            gradient = sign * (values @ weights[places]) - 1 + slack * dual
            moved = np.maximum(dual - gradient / lengths[number], 0)
            step = (moved - dual) * sign
            active = np.flatnonzero(step)
            if active.size:
                weights[places[:, None], active] += values[:, None] * step[active]
                duals[number] = moved
    return weights


def _kept(row: np.ndarray, smallest: float) -> Weights:
    return [(int(place), float(row[place])) for place in np.flatnonzero(np.abs(row) > smallest)]
