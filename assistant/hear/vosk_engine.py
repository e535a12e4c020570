"""The recogniser for a keeper who has put a Vosk model in the models folder.

Three searches run over the same sound. Two know only the household's vocabulary: one gives the words with their
confidences, the other the alternatives (the library gives one or the other, never both). The third listens with the
model's own language, because a search that knows few words is sure of them even when something else was said. What it
hears joins the alternatives, so that another number there makes a number doubtful; and a word that it never hears is
never certain.

Run as a program (`python -m assistant.hear.vosk_engine FOLDER`) it tries a model out: see `try_out`.
"""

from __future__ import annotations

import contextlib
import hashlib
import json
import os
import re
import subprocess
import sys
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from heapq import nlargest
from itertools import product
from pathlib import Path
from typing import Any

from assistant.contract import Heard, Word
from assistant.hear.recogniser import BYTES_A_SAMPLE, RATE_HZ, CannotListen, pieces
from assistant.hear.wav import read_file

ALTERNATIVES = 30
"""Of the vocabulary's search."""
SECOND_OPINIONS = 5
"""Of the search with the model's own language."""
SENTENCES_USED = 3000
"""Sample sentences that the library counts pairs of words in; more only makes the start slower."""
UNHEARD = 0.9
"""Most that a word can be sure of when the model's own language has it nowhere; too little for a certain number."""
LEAD_IN = bytes(RATE_HZ * 3 // 10 * BYTES_A_SAMPLE)
"""Silence before the first sound, for recordings cut close to the first word."""
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


def try_out(folder: Path, cache: Path, clip: Path | None = None) -> None:
    """Load the model and let it listen, in a program of its own: the library ends its process on some broken models.

    clip: a WAV file to listen to; None: silence.
    A model that passed is remembered in the cache and not tried again until its files change.
    Fails: CannotListen with one line.
    """
    absent = lacking(folder)
    if absent:
        raise CannotListen(f"the Vosk model lacks {', '.join(absent)}", str(folder), _MEND)
    passed = cache / f"model-{_fingerprint(folder)}.works"
    if passed.exists():
        return
    command = [sys.executable, "-m", "assistant.hear.vosk_engine", str(folder.absolute())]
    command += [str(clip.absolute())] if clip is not None else []
    here = str(Path(__file__).resolve().parents[2])
    paths = os.pathsep.join(path for path in (here, os.environ.get("PYTHONPATH")) if path)
    tried = subprocess.run(
        command, capture_output=True, text=True, errors="replace", env={**os.environ, "PYTHONPATH": paths}
    )
    complaint = next((line for line in tried.stderr.splitlines() if line.startswith(("ERROR", "ASSERTION_FAILED"))), "")
    if tried.returncode or complaint:
        why = re.sub(r"^[A-Z_]+ \(\S*\):? ", "", complaint) or f"the library stopped, code {tried.returncode}"
        first = why.strip().partition(". ")[0].replace(str(folder.absolute()), folder.name)
        raise CannotListen(f"the Vosk model is broken: {first}", str(folder), _MEND)
    with contextlib.suppress(OSError):
        cache.mkdir(parents=True, exist_ok=True)
        passed.touch()


def _fingerprint(folder: Path) -> str:
    files = sorted(path for path in folder.rglob("*") if path.is_file())
    listed = [f"{path.relative_to(folder)} {path.stat().st_size} {path.stat().st_mtime_ns}" for path in files]
    return hashlib.sha256("\n".join([str(folder.absolute()), *listed]).encode()).hexdigest()[:16]


class Vosk:
    """A `Recogniser`. Not for use from two threads at once."""

    def __init__(self, model: Any, sample: Iterable[Sequence[str]], name: str) -> None:
        """
        model: from `load_model`.
        sample: sentences of the vocabulary; words that the model doesn't know are left out of them.
        name: of the model, as its folder is called.
        """
        import vosk

        phrases, self.unknown = _phrases(model, sample)
        # The library dies of an empty vocabulary, and takes UTF-8, not escapes.
        grammar = (json.dumps(phrases, ensure_ascii=False),) if phrases else ()
        self._words = vosk.KaldiRecognizer(model, RATE_HZ, *grammar)
        self._words.SetWords(True)
        self._others = vosk.KaldiRecognizer(model, RATE_HZ, *grammar)
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
        self._fed = False

    def feed(self, piece: bytes) -> None:
        """Search the next piece. A long pause ends a stretch; its result is kept and the turn goes on."""
        if not self._fed:
            self._fed = True
            piece = LEAD_IN + piece
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

    def settle(self) -> None:
        """Nothing to do: all is searched as it arrives."""

    def unsettle(self) -> None:
        """Nothing to take back."""

    def spots(self, phrase: str, sound: bytes) -> bool:
        """The library has no such search."""
        return False

    def finish(self) -> Heard:
        """End the turn."""
        found = [word for word in (*self._heard, *_words(self._words.FinalResult())) if word.text != UNKNOWN]
        parts = self._parts
        parts["others"].append(_scored(self._others.FinalResult()))
        parts["free"].append(_scored(self._free.FinalResult()))
        self.start()
        free = _joined(parts["free"], SECOND_OPINIONS)
        anywhere = {word for text in free for word in text.split()}
        words = tuple(
            word if word.text in anywhere else Word(word.text, min(word.posterior, UNHEARD)) for word in found
        )
        text = " ".join(word.text for word in words)
        others = dict.fromkeys((*_joined(parts["others"], ALTERNATIVES), *free))
        return Heard(text, spoken=True, alternatives=tuple(other for other in others if other != text), words=words)


def _phrases(model: Any, sample: Iterable[Sequence[str]]) -> tuple[list[str], tuple[str, ...]]:
    """The vocabulary as the library takes it, and the words that the model doesn't know."""
    taken = [tuple(words) for words in sample]
    wanted = {word for words in taken for word in words}
    known = {word for word in wanted if model.vosk_model_find_word(word) >= 0}
    phrases = dict.fromkeys(" ".join(word for word in words if word in known) for words in taken)
    phrases.pop("", None)
    # Every n-th, so that all questions stay in; then each word once, so that none is lost.
    spread = list(phrases)[:: max(1, -(-len(phrases) // SENTENCES_USED))]
    spread += sorted(known)
    if spread and model.vosk_model_find_word(UNKNOWN) >= 0:
        spread.append(UNKNOWN)
    return spread, tuple(sorted(wanted - known))


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


if __name__ == "__main__":
    _search = Vosk(load_model(Path(sys.argv[1])), (), "tried")
    for _piece in pieces(read_file(Path(sys.argv[2])) if sys.argv[2:] else bytes(2 * RATE_HZ)):
        _search.feed(_piece)
    _search.finish()
