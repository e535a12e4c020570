"""The recogniser for a keeper who has put a Vosk model in the models folder.

Three searches run over the same sound. Two know only the household's vocabulary: one gives the words with their
confidences, the other the alternatives (the library gives one or the other, never both). The third listens with the
model's own language, because a search that knows few words is sure of them even when something else was said: what it
hears joins the alternatives, so that another number there makes a number doubtful.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from heapq import nlargest
from itertools import product
from pathlib import Path
from typing import Any

from assistant.contract import Heard, Word
from assistant.hear.recogniser import RATE_HZ, CannotListen

ALTERNATIVES = 30
"""Of the vocabulary's search."""
SECOND_OPINIONS = 5
"""Of the search with the model's own language."""
SENTENCES_USED = 3000
"""Sample sentences that the library counts pairs of words in; more only makes the start slower."""
UNKNOWN = "[unk]"
_MEND = "take it out of the models folder, or unpack the model again; models/README.md says how"
_NEEDED = (
    ("am/final.mdl", "final.mdl"),
    ("conf/mfcc.conf", "mfcc.conf"),
    ("graph/HCLG.fst", "graph/HCLr.fst", "HCLG.fst", "HCLr.fst"),
)


@dataclass(frozen=True)
class Scored:
    """One text that a stretch of sound may be, with the library's score: higher is likelier."""

    text: str
    score: float


def looks_like_model(folder: Path) -> bool:
    """True for a folder that holds an acoustic model where the library looks for it."""
    return any((folder / name).is_file() for name in _NEEDED[0])


def lacking(folder: Path) -> tuple[str, ...]:
    """The files that a model can't do without and that are absent or empty."""
    return tuple(
        names[0]
        for names in _NEEDED
        if not any((folder / name).is_file() and (folder / name).stat().st_size for name in names)
    )


def load_model(folder: Path) -> Any:
    """The model of that folder, for `Vosk`. Fails: CannotListen with one line."""
    absent = lacking(folder)
    if absent:
        raise CannotListen(f"the Vosk model lacks {', '.join(absent)}", str(folder), _MEND)
    try:
        import vosk
    except (ImportError, OSError) as fault:
        raise CannotListen(f"the package vosk can't be loaded ({fault})", str(folder), "pip install vosk") from fault
    vosk.SetLogLevel(-1)
    try:
        return vosk.Model(str(folder))
    except Exception as fault:  # the library raises nothing narrower
        raise CannotListen("the Vosk model can't be loaded", str(folder), _MEND) from fault


class Vosk:
    """A `Recogniser`. Not for use from two threads at once."""

    def __init__(self, model: Any, sample: Iterable[Sequence[str]], name: str) -> None:
        """
        model: from `load_model`.
        sample: sentences of the vocabulary; words that the model doesn't know are left out of them.
        name: of the model, as its folder is called.
        """
        import vosk

        grammar, self.unknown = _grammar(model, sample)
        self._words = vosk.KaldiRecognizer(model, RATE_HZ, grammar)
        self._words.SetWords(True)
        self._others = vosk.KaldiRecognizer(model, RATE_HZ, grammar)
        self._others.SetMaxAlternatives(ALTERNATIVES)
        self._free = vosk.KaldiRecognizer(model, RATE_HZ)
        self._free.SetMaxAlternatives(SECOND_OPINIONS)
        self.name = f"vosk, model {name}" + (f", which lacks: {', '.join(self.unknown)}" if self.unknown else "")
        self.start()

    def start(self) -> None:
        """Begin a turn."""
        for search in (self._words, self._others, self._free):
            search.Reset()
        self._heard: list[Word] = []
        self._parts: dict[str, list[list[Scored]]] = {"others": [], "free": []}

    def feed(self, piece: bytes) -> None:
        """Search the next piece. A long pause ends a stretch; its result is kept and the turn goes on."""
        if self._words.AcceptWaveform(piece):
            self._heard += _words(self._words.Result())
        if self._others.AcceptWaveform(piece):
            self._parts["others"].append(_scored(self._others.Result()))
        if self._free.AcceptWaveform(piece):
            self._parts["free"].append(_scored(self._free.Result()))

    def partial(self) -> str:
        """The text so far."""
        now = str(json.loads(self._words.PartialResult()).get("partial", ""))
        return " ".join(word for word in (*(word.text for word in self._heard), *now.split()) if word != UNKNOWN)

    def finish(self) -> Heard:
        """End the turn."""
        words = tuple(word for word in (*self._heard, *_words(self._words.FinalResult())) if word.text != UNKNOWN)
        parts = self._parts
        parts["others"].append(_scored(self._others.FinalResult()))
        parts["free"].append(_scored(self._free.FinalResult()))
        text = " ".join(word.text for word in words)
        found = dict.fromkeys((*_joined(parts["others"], ALTERNATIVES), *_joined(parts["free"], SECOND_OPINIONS)))
        self.start()
        return Heard(text, spoken=True, alternatives=tuple(other for other in found if other != text), words=words)


def _grammar(model: Any, sample: Iterable[Sequence[str]]) -> tuple[str, tuple[str, ...]]:
    """The vocabulary as the library takes it, and the words that the model doesn't know."""
    taken = [tuple(words) for words in sample]
    wanted = {word for words in taken for word in words}
    known = {word for word in wanted if model.vosk_model_find_word(word) >= 0}
    phrases = dict.fromkeys(" ".join(word for word in words if word in known) for words in taken)
    phrases.pop("", None)
    # Every n-th, so that all questions stay in; then each word once, so that none is lost.
    spread = list(phrases)[:: max(1, -(-len(phrases) // SENTENCES_USED))]
    spread += sorted(known)
    if model.vosk_model_find_word(UNKNOWN) >= 0:
        spread.append(UNKNOWN)
    return json.dumps(spread, ensure_ascii=False), tuple(sorted(wanted - known))


def _words(result: str) -> list[Word]:
    return [Word(found["word"], min(1.0, float(found["conf"]))) for found in json.loads(result).get("result", ())]


def _scored(result: str) -> list[Scored]:
    return [
        Scored(_known(found["text"]), float(found["confidence"]))
        for found in json.loads(result).get("alternatives", ())
    ]


def _known(text: str) -> str:
    return " ".join(word for word in text.split() if word != UNKNOWN)


def _joined(parts: Sequence[list[Scored]], most: int) -> list[str]:
    """Whole texts from the stretches between long pauses, likeliest first."""
    texts = [Scored("", 0.0)]
    for part in parts:
        both = (
            Scored(f"{before.text} {after.text}".strip(), before.score + after.score)
            for before, after in product(texts, part or [Scored("", 0.0)])
        )
        texts = nlargest(most, both, key=lambda whole: whole.score)
    return [whole.text for whole in texts if whole.text]
