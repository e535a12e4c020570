"""Compares ways to match a text with a question, by five-fold cross-validation on the phrasings of intents/.

    python tests/bench/scorers.py            # some two minutes

For each: share of in-scope phrasings given the right question, given a wrong one (the rest is refused), share of the
lines outside that are refused, and milliseconds a text. No rule, slot or threshold takes part: only the likeness.
"""

from __future__ import annotations

import hashlib
import itertools
import math
import sys
import time
from collections import Counter, defaultdict
from collections.abc import Callable, Iterable, Sequence
from pathlib import Path

from rapidfuzz import fuzz, process
from rapidfuzz.distance import JaroWinkler

from assistant.store.packaged import outside_lines, read_questions
from assistant.understand.matching.learning import OUTSIDE, Row, by_label
from assistant.understand.matching.matching import Matcher, rows_of

sys.path.insert(0, str(Path(__file__).parent))
from train_matcher import RECIPE
from training import train

Guess = Callable[[str], str]
Maker = Callable[[Sequence[Row]], Guess]
FOLDS = 5


def nearest(scorer: Callable[..., float]) -> Maker:
    """The label of the nearest phrasing by a scorer of rapidfuzz."""

    def make(rows: Sequence[Row]) -> Guess:
        texts = [text for text, _ in rows]
        return lambda text: rows[process.extractOne(text, texts, scorer=scorer)[2]][1]

    return make


def cosine(features: Callable[[str], Iterable[str]]) -> Maker:
    """The label of the nearest phrasing by cosine of features weighted by rarity (TF-IDF)."""

    def make(rows: Sequence[Row]) -> Guess:
        counted = [Counter(features(text)) for text, _ in rows]
        seen = Counter(feature for counts in counted for feature in counts)
        rarity = {feature: math.log((len(rows) + 1) / (many + 0.5)) for feature, many in seen.items()}
        index: dict[str, list[tuple[int, float]]] = defaultdict(list)
        for place, counts in enumerate(counted):
            length = math.sqrt(sum((many * rarity[f]) ** 2 for f, many in counts.items())) or 1.0
            for feature, many in counts.items():
                index[feature].append((place, many * rarity[feature] / length))

        def guess(text: str) -> str:
            scores: dict[int, float] = defaultdict(float)
            for feature, many in Counter(features(text)).items():
                for place, weight in index.get(feature, ()):
                    scores[place] += many * rarity[feature] * weight
            return rows[max(scores, key=lambda place: scores[place])][1] if scores else OUTSIDE

        return guess

    return make


def linear(rows: Sequence[Row]) -> Guess:
    """The learned weights alone."""
    model = train(rows, RECIPE).model
    return lambda text: _top(dict(zip(model.labels, model.scores(text.split()), strict=True)))


def used(rows: Sequence[Row]) -> Guess:
    """Learned weights and rapidfuzz's nearest phrasing together, as the reader has them."""
    matcher = Matcher(by_label(rows), train(rows, RECIPE).model)
    return lambda text: _top(matcher.chances(text.split()))


def _top(scores: dict[str, float]) -> str:
    return max(scores, key=lambda label: scores[label])


def words(text: str) -> list[str]:
    return text.split()


def words_and_pairs(text: str) -> list[str]:
    padded = ["^", *text.split(), "$"]
    return text.split() + [f"{a} {b}" for a, b in itertools.pairwise(padded)]


def letters(*sizes: int) -> Callable[[str], list[str]]:
    def features(text: str) -> list[str]:
        padded = f" {text} "
        return [padded[at : at + size] for size in sizes for at in range(len(padded) - size + 1)]

    return features


CANDIDATES: dict[str, Maker] = {
    "rapidfuzz ratio": nearest(fuzz.ratio),
    "rapidfuzz partial_ratio": nearest(fuzz.partial_ratio),
    "rapidfuzz token_sort_ratio": nearest(fuzz.token_sort_ratio),
    "rapidfuzz token_set_ratio": nearest(fuzz.token_set_ratio),
    "rapidfuzz WRatio": nearest(fuzz.WRatio),
    "rapidfuzz Jaro-Winkler": nearest(JaroWinkler.similarity),
    "cosine, words by rarity": cosine(words),
    "cosine, words and pairs by rarity": cosine(words_and_pairs),
    "cosine, 3 letters by rarity": cosine(letters(3)),
    "cosine, 4 letters by rarity": cosine(letters(4)),
    "cosine, 3 to 5 letters by rarity": cosine(letters(3, 4, 5)),
    "learned weights": linear,
    "learned weights and ratio (used)": used,
}


def table() -> Iterable[str]:
    """One line a candidate."""
    rows = sorted(rows_of(read_questions(), outside_lines()), key=lambda row: hashlib.md5(row[0].encode()).digest())
    yield f"{len(rows)} rows, of them {sum(label == OUTSIDE for _, label in rows)} outside; {FOLDS} folds"
    yield "| candidate | right | wrong question | outside refused | ms |\n|---|---|---|---|---|"
    for name, make in CANDIDATES.items():
        hits: Counter[str] = Counter()
        seconds = 0.0
        for fold in range(FOLDS):
            guess = make([row for place, row in enumerate(rows) if place % FOLDS != fold])
            held_out = [row for place, row in enumerate(rows) if place % FOLDS == fold]
            began = time.perf_counter()
            guesses = [guess(text) for text, _ in held_out]
            seconds += time.perf_counter() - began
            for (_, label), guessed in zip(held_out, guesses, strict=True):
                inside = label != OUTSIDE
                hits["inside" if inside else "outside"] += 1
                hits["right" if inside else "refused"] += guessed == label
                hits["wrong"] += inside and guessed not in (label, OUTSIDE)
        inside, outside = hits["inside"], hits["outside"]
        shares = (hits["right"] / inside, hits["wrong"] / inside, hits["refused"] / outside)
        yield f"| {name} | {' | '.join(f'{share:.1%}' for share in shares)} | {1000 * seconds / len(rows):.2f} |"


def reliability() -> Iterable[str]:
    """How often the matcher is right at each chance it gives, and what each threshold lets through, held out."""
    rows = sorted(rows_of(read_questions(), outside_lines()), key=lambda row: hashlib.md5(row[0].encode()).digest())
    judged: list[tuple[float, str, str]] = []
    for fold in range(FOLDS):
        kept = [row for place, row in enumerate(rows) if place % FOLDS != fold]
        matcher = Matcher(by_label(kept), train(kept, RECIPE).model)
        for text, label in (row for place, row in enumerate(rows) if place % FOLDS == fold):
            chances = matcher.chances(text.split())
            judged.append((max(chances.values()), _top(chances), label))
    yield "\n| chance given | texts | right |\n|---|---|---|"
    for low in (0.0, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9):
        inside = [guess == label for chance, guess, label in judged if low <= chance < (low + 0.1 if low else 0.3)]
        yield f"| {low:.1f} and more | {len(inside)} | {sum(inside) / max(1, len(inside)):.0%} |"
    yield "\n| least chance | right | wrong question | outside refused |\n|---|---|---|---|"
    for least in (0.3, 0.4, 0.45, 0.5, 0.55, 0.6, 0.7):
        taken = [(guess if chance >= least else OUTSIDE, label) for chance, guess, label in judged]
        within = [(guess, label) for guess, label in taken if label != OUTSIDE]
        right = sum(guess == label for guess, label in within) / len(within)
        wrong = sum(guess not in (label, OUTSIDE) for guess, label in within) / len(within)
        refused = [guess == OUTSIDE for guess, label in taken if label == OUTSIDE]
        yield f"| {least} | {right:.1%} | {wrong:.1%} | {sum(refused) / len(refused):.1%} |"


if __name__ == "__main__":
    for line in (*(() if "--reliability" in sys.argv else table()), *reliability()):
        print(line, flush=True)
