from __future__ import annotations

import itertools
import math

import pytest

from assistant.hear.language_model import arpa

SENTENCES = [("one", "in", "fifty"), ("one", "in", "fifteen"), ("rinse", "one"), ("one", "to", "fifty")]


class _Arpa:
    """Reads ARPA text by the format's own rule: the longest run that is listed, else back off."""

    def __init__(self, text: str) -> None:
        self.chance: dict[tuple[str, ...], float] = {}
        self.back_off: dict[tuple[str, ...], float] = {}
        for line in text.splitlines():
            parts = line.split("\t")
            if len(parts) >= 2:
                gram = tuple(parts[1].split())
                self.chance[gram] = float(parts[0])
                self.back_off[gram] = float(parts[2]) if len(parts) > 2 else 0.0

    def log10(self, gram: tuple[str, ...]) -> float:
        if gram in self.chance:
            return self.chance[gram]
        return self.back_off.get(gram[:-1], 0.0) + self.log10(gram[1:])


@pytest.mark.parametrize("order", [1, 2, 3, 4])
def test_after_any_words_the_chances_of_the_next_word_add_up_to_one(order: int) -> None:
    model = _Arpa(arpa(SENTENCES, order))
    words = {gram[0] for gram in model.chance if len(gram) == 1} - {"<s>"}
    for before in itertools.chain(((),), ((word,) for word in words), (("<s>", "one"), ("one", "in"), ("in", "fifty"))):
        if order == 1 and before:
            continue
        total = sum(10 ** model.log10((*before, word)[-order:]) for word in words)
        assert total == pytest.approx(1, abs=0.002), before


def test_what_was_seen_is_likelier_than_what_was_not() -> None:
    model = _Arpa(arpa(SENTENCES))
    assert model.log10(("one", "in", "fifty")) > model.log10(("one", "in", "rinse"))


def test_a_witten_bell_bigram_worked_by_hand() -> None:
    # Witten and Bell 1991, method C, interpolated: (c + T p) / (C + T). Here "in" was followed twice (C), by two
    # kinds of word (T); p("fifty") = (2 + 7/7 x 1) / (15 + 7): 15 words and ends in all, of 7 kinds, each 1/7 at first.
    model = _Arpa(arpa(SENTENCES, 2))
    alone = (2 + 7 / 7) / (15 + 7)
    assert model.log10(("fifty",)) == pytest.approx(math.log10(alone), abs=0.0001)
    assert model.log10(("in", "fifty")) == pytest.approx(math.log10((1 + 2 * alone) / (2 + 2)), abs=0.0001)


@pytest.mark.audio
def test_the_recognisers_own_reader_gives_the_same_chances(tmp_path) -> None:  # type: ignore[no-untyped-def]
    pocketsphinx = pytest.importorskip("pocketsphinx")
    text = arpa(SENTENCES)
    path = tmp_path / "model.lm"
    path.write_text(text)
    theirs = pocketsphinx.NGramModel.readfile(str(path))
    log = pocketsphinx.LogMath()
    ours = _Arpa(text)
    for gram in (("one", "in", "fifty"), ("one", "in", "rinse"), ("in", "rinse"), ("rinse", "fifty", "to")):
        # Its reader takes the newest word first.
        got = log.exp(theirs.prob(list(reversed(gram))))
        assert math.log10(got) == pytest.approx(ours.log10(gram), abs=0.01), gram
