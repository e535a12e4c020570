"""Trains what is learned from intents/ and writes its two files; run it after changing a phrasing or a rule's words.

    python tests/bench/train_matcher.py

Takes some seconds and gives the same files every time. A unit test fails while one is older than what it was trained
on.
"""

from __future__ import annotations

import sys
import time
from collections.abc import Sequence
from pathlib import Path

from assistant.store.packaged import LEARNED, LEARNED_CRIES
from assistant.understand.matching.learning import Row
from assistant.understand.matching.weights import packed

sys.path[:0] = [str(Path(__file__).parent), str(Path(__file__).parents[1])]
from learned import rows_of_harm, rows_of_questions  # noqa: E402
from training import Recipe, train  # noqa: E402

FOLDER = Path(__file__).parents[2] / "intents"
RECIPE = Recipe(seen=1, smallest=0.03)
"""Masked phrasings are short and few: here even a feature seen once helps (tests/bench/scorers.py). Leaving out weights
up to 0.03 in place of 0.012 costs nothing on unseen phrasings, and a quarter of the size."""
RECIPE_OF_CRIES = Recipe(seen=2, smallest=0.03)
"""Of seven sets of cries, each left out in turn, it found 74 % at 3 % false alarms; with every feature 72 % at 3 %, and
twice the size."""


def main() -> None:
    rows = rows_of_questions()
    _write(LEARNED, rows, RECIPE, keep=rows)
    _write(LEARNED_CRIES, rows_of_harm(), RECIPE_OF_CRIES, keep=())


def _write(file: str, rows: Sequence[Row], recipe: Recipe, keep: Sequence[Row]) -> None:
    """keep: rows whose texts are kept beside the weights."""
    begun = time.perf_counter()
    trained = train(rows, recipe)
    content = packed(trained.labels, trained.bias, trained.weights, rows, keep)
    (FOLDER / file).write_bytes(content)
    took = time.perf_counter() - begun
    print(f"{file}: {len(rows)} rows, {len(trained.weights)} features, {len(content) // 1024} kB, {took:.1f} s")


if __name__ == "__main__":
    main()
