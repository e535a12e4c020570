"""Learned weights, packed into a file and looked up in it."""

from __future__ import annotations

import pytest

from assistant.understand.matching.learning import STRANGE, features_of
from assistant.understand.matching.weights import opened, packed

WEIGHTS = {"bleach": [(0, 1.27), (1, -0.5)], "^ bleach": [(1, 0.3)], "~<ble": [(0, 0.01)]}
ROWS = [("how much bleach", "dose"), ("what is next", "next")]


def test_what_is_packed_is_found_again_to_a_hundred_and_twenty_seventh() -> None:
    learned = opened(packed(("dose", "next"), (0.1, -0.2), WEIGHTS, ROWS))
    assert (learned.model.labels, learned.model.bias) == (("dose", "next"), (0.1, -0.2))
    for feature, row in WEIGHTS.items():
        found = dict(learned.model.weights_of(feature) or ())
        for place, weight in row:
            assert found[place] == pytest.approx(weight, abs=1.27 / 127)


def test_a_feature_that_was_never_met_is_none() -> None:
    assert opened(packed(("dose",), (0.0,), WEIGHTS)).model.weights_of("vinegar") is None


def test_the_texts_it_was_trained_on_come_with_it() -> None:
    kept = opened(packed(("dose", "next"), (0.0, 0.0), WEIGHTS, ROWS, keep=ROWS))
    assert kept.texts == {"dose": ["how much bleach"], "next": ["what is next"]}


def test_strange_words_bring_every_score_nearer_to_nothing() -> None:
    model = opened(packed(("dose", "next"), (0.0, 0.0), WEIGHTS)).model
    plain, strange = model.scores(["bleach"])[0], model.scores(["bleach", "zebra", "xylophone"])[0]
    assert 0 < strange < plain
    assert STRANGE > 1
    assert sum(map(len, features_of(["bleach"]))) > 1
