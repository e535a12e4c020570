"""Trains the matcher on intents/ and writes assistant/understand/learned.py; run it after changing a phrasing.

    python tests/bench/train_matcher.py

Takes some seconds and gives the same file every time. A unit test fails while the file is older than the phrasings.
"""

from __future__ import annotations

from pathlib import Path

from assistant.store.packaged import read_questions
from assistant.understand.learning import Linear
from assistant.understand.matching import rows_of
from assistant.understand.training import fingerprint, train

WHERE = Path(__file__).parents[2] / "assistant" / "understand" / "learned.py"
SMALLEST = 60
"""Weights, in hundredths, that are left out."""


def written(model: Linear, mark: str) -> str:
    """The model as a module: one line a feature, weights in hundredths."""
    lines = []
    for feature in sorted(model.weights):
        kept = [(place, round(weight * 100)) for place, weight in model.weights[feature]]
        kept = [(place, weight) for place, weight in kept if abs(weight) >= SMALLEST]
        if kept:
            lines.append(feature + "\t" + " ".join(f"{place}:{weight}" for place, weight in kept))
    return "\n".join(
        [
            '"""Learned from the phrasings of intents/; written by tests/bench/train_matcher.py."""',
            "",
            "# fmt: off",
            "# ruff: noqa",
            f'TRAINED_ON = "{mark}"',
            f"LABELS = {model.labels!r}",
            f"BIAS = {tuple(round(bias, 4) for bias in model.bias)!r}",
            'WEIGHTS = """\\',
            *lines,
            '"""',
            "",
        ]
    )


def main() -> None:
    rows = rows_of(read_questions())
    text = written(train(rows), fingerprint(rows))
    WHERE.write_text(text, encoding="utf-8")
    print(f"{len(rows)} rows, {len(text) // 1024} kB, {text.count(chr(10)) - 7} features")


if __name__ == "__main__":
    main()
