"""An n-gram model of sentences, as the ARPA text that recognisers load.

Pure: sentences in, text out. Which sentences is decided in `vocabulary`. Smoothing is interpolated Witten-Bell: a
word that followed many different words is likelier to be followed by a new one, which suits sentences with slots,
where a name may be anything and "one in" is nearly always followed by a number.
"""

from __future__ import annotations

import math
from collections import Counter, defaultdict
from collections.abc import Iterable, Sequence

BEGIN, END = "<s>", "</s>"
NEVER = -99.0
"""How ARPA text writes the logarithm of nothing: a sentence's beginning is never predicted."""

Gram = tuple[str, ...]


def arpa(sentences: Iterable[Sequence[str]], order: int = 3) -> str:
    """The model of the sentences, as ARPA text.

    sentences: each a sequence of words; a sentence that is given twice counts twice.
    order: longest run of words counted, 1 or more.
    """
    counts = _count(sentences, order)
    model = _witten_bell(counts)
    lines = ["\\data\\"]
    lines += [f"ngram {n}={len(model[n - 1])}" for n in range(1, order + 1)]
    for n, grams in enumerate(model, start=1):
        lines += ["", f"\\{n}-grams:"]
        for gram in sorted(grams):
            chance, back_off = grams[gram]
            line = f"{_log10(chance):.4f}\t{' '.join(gram)}"
            lines.append(line if n == order else f"{line}\t{_log10(back_off):.4f}")
    return "\n".join([*lines, "", "\\end\\", ""])


def _count(sentences: Iterable[Sequence[str]], order: int) -> list[Counter[Gram]]:
    counts: list[Counter[Gram]] = [Counter() for _ in range(order)]
    for sentence, times in Counter(tuple(words) for words in sentences).items():
        words = (BEGIN, *sentence, END)
        for n in range(1, order + 1):
            for begin in range(len(words) - n + 1):
                counts[n - 1][words[begin : begin + n]] += times
    return counts


def _witten_bell(counts: list[Counter[Gram]]) -> list[dict[Gram, tuple[float, float]]]:
    """For each length, each run of words with its chance and its back-off weight (1 where it was never followed)."""
    chances: list[dict[Gram, float]] = []
    back_offs: dict[Gram, float] = {}
    for n, grams in enumerate(counts, start=1):
        total: defaultdict[Gram, int] = defaultdict(int)
        kinds: defaultdict[Gram, int] = defaultdict(int)
        for gram, times in grams.items():
            if gram != (BEGIN,):
                total[gram[:-1]] += times
                kinds[gram[:-1]] += 1
        level: dict[Gram, float] = {}
        for gram, times in grams.items():
            before = gram[:-1]
            shorter = chances[n - 2][gram[1:]] if n > 1 else 1 / kinds[()]
            level[gram] = (times + kinds[before] * shorter) / (total[before] + kinds[before]) if total[before] else 0.0
        if n == 1:
            level[(BEGIN,)] = 0.0
        chances.append(level)
        back_offs.update({before: kinds[before] / (total[before] + kinds[before]) for before in total})
    return [{gram: (chance, back_offs.get(gram, 1.0)) for gram, chance in level.items()} for level in chances]


def _log10(chance: float) -> float:
    return math.log10(chance) if chance > 0 else NEVER
