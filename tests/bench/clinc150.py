"""The matching engine on open data that nobody here wrote: 150 intents and what lies outside them.

    python tests/bench/clinc150.py FOLDER       # the folder that holds data_full.json; some two minutes

Larson et al., "An Evaluation Dataset for Intent Classification and Out-of-Scope Prediction", EMNLP-IJCNLP 2019, full
split. Trained on the set's training phrases alone; what score counts as outside is chosen on its validation part; the
test part is looked at once. Beside it in the same run: rapidfuzz's nearest training phrase, and TF-IDF of words and
letters with a linear SVM (needs scikit-learn). Without the folder it says so and ends.
"""

from __future__ import annotations

import json
import sys
import time
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from pathlib import Path

from rapidfuzz import fuzz, process

from assistant.understand.matching.learning import Row, by_label
from assistant.understand.matching.matching import Matcher
from assistant.understand.matching.weights import opened, packed
from assistant.understand.text.words import SIGNS, tokens_of

sys.path.insert(0, str(Path(__file__).parent))
from training import Recipe, train

PUBLISHED = """\
published, Table 2 of the paper, "full" (in scope / outside found): with a class for outside: FastText 89.0 / 9.7, SVM
91.0 / 14.5, CNN 91.2 / 18.9, MLP on sentence embeddings 93.5 / 47.4, fine-tuned BERT 96.9 / 40.3; with a threshold: SVM
88.2 / 18.0, MLP 93.4 / 49.1, BERT 96.2 / 52.3"""
LOSSES = (0.005, 0.0125, 0.025, 0.05, 0.075)
"""Shares of the validation part that may be refused, one threshold each."""

Scored = tuple[str, float]
Scorer = Callable[[str], Scored]
"""Text to its likeliest label and the score of that."""


@dataclass(frozen=True)
class Data:
    """The set's parts that are used, as label and text."""

    train: list[Row]
    val: list[Row]
    test: list[Row]
    outside: list[str]
    """Of the test part."""


def read(folder: Path) -> Data:
    raw = json.loads((folder / "data_full.json").read_text("utf-8"))
    rows = {part: [(text, label) for text, label in raw[part]] for part in ("train", "val", "test")}
    return Data(rows["train"], rows["val"], rows["test"], [text for text, _ in raw["oos_test"]])


def words(text: str) -> list[str]:
    return [token.text for token in tokens_of(text) if token.text not in SIGNS]


def engine(rows: Sequence[Row]) -> Scorer:
    """The weights as the reader holds them: packed, cut to what a file may weigh."""
    trained = train([(" ".join(words(text)), label) for text, label in rows], Recipe(smallest=0.02))
    content = packed(trained.labels, trained.bias, trained.weights)
    print(f"  {len(trained.weights)} features, {len(content) // 1024} kB packed", flush=True)
    model = opened(content).model

    def score(text: str) -> Scored:
        scores = model.scores(words(text))
        top = max(scores)
        return model.labels[scores.index(top)], top

    return score


def engine_with_likeness(rows: Sequence[Row]) -> Scorer:
    """The whole matcher: weights and the nearest phrasing by rapidfuzz, as chances."""
    masked = [(" ".join(words(text)), label) for text, label in rows]
    trained = train(masked, Recipe(smallest=0.02))
    matcher = Matcher(by_label(masked), opened(packed(trained.labels, trained.bias, trained.weights)).model)

    def score(text: str) -> Scored:
        chances = matcher.chances(words(text))
        top = max(chances, key=lambda label: chances[label])
        return top, chances[top]

    return score


def nearest(rows: Sequence[Row]) -> Scorer:
    """The label of the training phrase that rapidfuzz's ratio finds nearest."""
    texts = [text for text, _ in rows]

    def score(text: str) -> Scored:
        _, likeness, place = process.extractOne(text, texts, scorer=fuzz.ratio)
        return rows[place][1], likeness

    return score


def tf_idf_svm(rows: Sequence[Row]) -> Scorer:
    """Words and pairs, and letters in a row, weighted by rarity; a linear support vector machine."""
    from sklearn.feature_extraction.text import TfidfVectorizer
    from sklearn.pipeline import make_pipeline, make_union
    from sklearn.svm import LinearSVC

    by_word = TfidfVectorizer(ngram_range=(1, 2), sublinear_tf=True)
    by_letter = TfidfVectorizer(analyzer="char_wb", ngram_range=(2, 4), sublinear_tf=True)
    model = make_pipeline(make_union(by_word, by_letter), LinearSVC(C=1.0))
    model.fit([text for text, _ in rows], [label for _, label in rows])

    def score(text: str) -> Scored:
        scores = model.decision_function([text])[0]
        return str(model.classes_[scores.argmax()]), float(scores.max())

    return score


def measured(name: str, make: Callable[[Sequence[Row]], Scorer], data: Data) -> Iterable[str]:
    """Lines of the table for one way to match."""
    begun = time.perf_counter()
    score = make(data.train)
    trained = time.perf_counter() - begun
    val = [score(text) for text, _ in data.val]
    begun = time.perf_counter()
    test = [score(text) for text, _ in data.test]
    took = 1000 * (time.perf_counter() - begun) / len(test)
    outside = [score(text)[1] for text in data.outside]
    hits = [guess == label for (guess, _), (_, label) in zip(test, data.test, strict=True)]
    right = sum(hits) / len(hits)
    yield f"{name}: {right:.2%} right with nothing refused; {took:.2f} ms a query; trained in {trained:.1f} s"
    ranked = sorted(one for _, one in val)
    for loss in LOSSES:
        least = ranked[int(loss * len(ranked))]
        kept = sum(hit and one >= least for hit, (_, one) in zip(hits, test, strict=True)) / len(hits)
        refused = sum(one < least for one in outside) / len(outside)
        yield f"    score {least:7.3f} and more: {kept:.1%} in scope right, {refused:.1%} of outside found"


def main(folder: Path) -> None:
    if not (folder / "data_full.json").is_file():
        print(f"skipped: no data_full.json in {folder}; give the folder of the data set")
        return
    data = read(folder)
    ways: dict[str, Callable[[Sequence[Row]], Scorer]] = {
        "learned weights (this engine)": engine,
        "learned weights and likeness (this engine, whole)": engine_with_likeness,
        "rapidfuzz, nearest phrase": nearest,
        "TF-IDF, linear SVM": tf_idf_svm,
    }
    print(
        f"{len(data.train)} to train on, {len(data.test)} in scope and {len(data.outside)} outside to test on",
        flush=True,
    )
    for name, make in ways.items():
        try:
            for line in measured(name, make, data):
                print(line, flush=True)
        except ImportError as missing:
            print(f"{name}: left out, {missing.name} is not installed (pip install 'rinseback[bench]')")
    print(PUBLISHED)


if __name__ == "__main__":
    main(Path(sys.argv[1]) if len(sys.argv) > 1 else Path("clinc150"))
