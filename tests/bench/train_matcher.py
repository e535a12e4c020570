"""Trains what is learned from intents/ and writes its three files; run it after changing a phrasing or a rule's words.

    python tests/bench/train_matcher.py

Takes a minute and gives the same files every time. A unit test fails while one is older than what it was trained
on.
"""

from __future__ import annotations

import sys
from collections.abc import Sequence
from pathlib import Path

from assistant.store.packaged import LEARNED, LEARNED_CRIES, LEARNED_FOLLOW_UPS
from assistant.understand.matching.learning import Row
from assistant.understand.matching.weights import packed

sys.path[:0] = [str(Path(__file__).parent), str(Path(__file__).parents[1])]
from learned import rows_of_harm, rows_of_questions, rows_of_talk, shown_in_talk  # noqa: E402
from training import Recipe, Trained, train, train_on  # noqa: E402

FOLDER = Path(__file__).parents[2] / "intents"
RECIPE = Recipe(seen=1, smallest=0.03)
"""Masked phrasings are short and few: here even a feature seen once helps (tests/bench/scorers.py). Leaving out weights
up to 0.03 in place of 0.012 costs nothing on unseen phrasings, and a quarter of the size."""
RECIPE_OF_CRIES = Recipe(seen=2, smallest=0.03)
"""Of seven sets of cries, each left out in turn, it found 74 % at 3 % false alarms; with every feature 72 % at 3 %, and
twice the size."""
RECIPE_OF_TALK = Recipe(seen=1, smallest=0.02)
"""Of eight sets of follow-ups, each left out in turn, this was right as often as with features seen twice."""


def main() -> None:
    rows = rows_of_questions()
    _write(LEARNED, train(rows, RECIPE), rows, keep=rows)
    cries = rows_of_harm()
    _write(LEARNED_CRIES, train(cries, RECIPE_OF_CRIES), cries)
    in_talk = shown_in_talk((FOLDER / LEARNED).read_bytes())
    _write(LEARNED_FOLLOW_UPS, train_on(in_talk, RECIPE_OF_TALK), rows_of_talk())


def _write(file: str, trained: Trained, rows: Sequence[Row], keep: Sequence[Row] = ()) -> None:
    """rows: for the mark of what it was trained on; keep: those whose texts are kept beside the weights."""
    content = packed(trained.labels, trained.bias, trained.weights, rows, keep)
    (FOLDER / file).write_bytes(content)
    print(f"{file}: {len(rows)} rows, {len(trained.weights)} features, {len(content) // 1024} kB")


if __name__ == "__main__":
    main()
