"""Trains the matcher on intents/ and writes intents/learned.b64; run it after changing a phrasing.

    python tests/bench/train_matcher.py

Takes some seconds and gives the same file every time. A unit test fails while the file is older than the phrasings.
"""

from __future__ import annotations

import sys
import time
from pathlib import Path

from assistant.store.packaged import LEARNED, outside_lines, read_questions
from assistant.understand.matching.matching import rows_of
from assistant.understand.matching.weights import packed

sys.path.insert(0, str(Path(__file__).parent))
from training import Recipe, train

WHERE = Path(__file__).parents[2] / "intents" / LEARNED
RECIPE = Recipe(seen=1)
"""Masked phrasings are short and few: here even a feature seen once helps (tests/bench/scorers.py)."""


def main() -> None:
    begun = time.perf_counter()
    rows = rows_of(read_questions(), outside_lines())
    trained = train(rows, RECIPE)
    content = packed(trained.labels, trained.bias, trained.weights, rows)
    WHERE.write_bytes(content)
    took = time.perf_counter() - begun
    print(f"{len(rows)} rows, {len(trained.weights)} features, {len(content) // 1024} kB, {took:.1f} s")


if __name__ == "__main__":
    main()
