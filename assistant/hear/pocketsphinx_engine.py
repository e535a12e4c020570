"""The recogniser that works straight after install: pocketsphinx, whose wheel carries an English model.

Its vocabulary (language model and dictionary) is made from the questions and the household and kept in a cache folder.
Sound is decoded as it arrives, for the text so far; at the end the whole turn is decoded once more, since the level of
the sound is better judged over a whole utterance, and the posteriors and alternatives come from that pass's lattice.
"""

from __future__ import annotations

import hashlib
import json
import os
import tempfile
from collections.abc import Iterator
from dataclasses import asdict, dataclass, replace
from itertools import islice
from pathlib import Path
from typing import Any

from assistant.contract import Heard, Word
from assistant.hear.in_noise import cepstra, mean_of, read_speech
from assistant.hear.language_model import arpa
from assistant.hear.pronunciation import dictionary_text, pronounce, read_dictionary, speech_library_of_the_wheel
from assistant.hear.quieter import LOUD_NOISE_DB, is_noisy, without_noise
from assistant.hear.recogniser import CannotListen
from assistant.hear.vocabulary import Sayable, Share, sentences

MADE_BY = 4
"""Raised when the same input would give another vocabulary, so that an older cache isn't taken."""

SILENCE = ("<s>", "</s>", "<sil>", "[NOISE]", "[SPEECH]", "[COUGH]", "[SMACK]", "[UM]", "[UH]", "<s", "</s")
_SPOTTING = "call word"
UNCERTAIN = 0.98
"""Most that a word can be sure of when it was heard with the noise taken out; too little for a certain number."""
HALF_SURE, HALF_SURE_COUNTS = (0.7, 0.8), 0.85
"""Mean posteriors between which a hearing in noise is read back as a whole, and what its words count for then: at 0.71
"bottle one to five hundred parts per million" came of "bottle at five hundred", with nothing but the 500 read back."""


@dataclass(frozen=True)
class Tuning:
    """Settings of the search; the figures were chosen by tests/bench/recognition.py on one half of its clips."""

    order: int = 3
    """Longest run of words that the language model counts."""
    weight: float = 6.5
    """Of the language model against the sound."""
    beam: float = 1e-48
    insertion: float = 0.65
    """Chance of a word's beginning: smaller gives fewer, longer words."""
    alternatives: int = 30
    searched: int = 300
    """Paths of the lattice looked at for so many different texts; most differ in silences only."""
    spotting: float = 1e-20
    """How easily the call word is found: smaller finds it oftener, also where it wasn't said."""
    pad_ms: int = 100
    """Silence put before and after, for recordings cut close to the first word."""


@dataclass(frozen=True)
class Vocabulary:
    """The files that the decoder loads."""

    model: Path
    dictionary: Path
    words: int


class Pocketsphinx:
    """A `Recogniser`. Not for use from two threads at once."""

    def __init__(self, vocabulary: Vocabulary, tuning: Tuning | None = None) -> None:
        self._tuning = tuning or Tuning()
        self._decoder = _decoder(vocabulary, self._tuning)
        self._sound = bytearray()
        self._live = False
        self._settled: Heard | None = None
        self._speech = read_speech(_acoustic_model())
        self._usual: str = self._decoder.current_search()
        self._spotted = ""
        self.name = f"pocketsphinx, its own English model, {vocabulary.words} words"

    def start(self) -> None:
        """Begin a turn."""
        self._end_live()
        self._sound.clear()
        self._settled = None

    def feed(self, piece: bytes) -> None:
        """Keep the next piece; it is searched when `partial` asks for the text so far, and at the end."""
        self._sound += piece
        if self._live:
            self._decoder.process_raw(bytes(piece), no_search=False, full_utt=False)

    def partial(self) -> str:
        """The text so far. From the first call on, sound is searched as it arrives."""
        if not self._live:
            self._decoder.start_utt()
            self._live = True
            if self._sound:
                self._decoder.process_raw(bytes(self._sound), no_search=False, full_utt=False)
        hypothesis = self._decoder.hyp()
        return _text(hypothesis.hypstr) if hypothesis else ""

    def settle(self) -> None:
        """Search the whole turn now; silence that follows changes nothing."""
        self._settled = self._whole()

    def unsettle(self) -> None:
        """It goes on: the whole of it is searched at the end."""
        self._settled = None

    def finish(self) -> Heard:
        """What was said, by one search over the whole turn."""
        heard = self._settled if self._settled is not None else self._whole()
        self._sound.clear()
        self._settled = None
        return heard

    def spots(self, phrase: str, sound: bytes) -> bool:
        """Whether a search for nothing but this phrase finds it in the sound. Its words must be in the vocabulary."""
        loud = is_noisy(sound, LOUD_NOISE_DB)
        return self._spots(phrase, sound) or (loud and self._spots(phrase, without_noise(sound)))

    def _spots(self, phrase: str, sound: bytes) -> bool:
        self._end_live()
        if self._spotted != phrase:
            self._decoder.add_keyphrase(_SPOTTING, phrase)
            self._spotted = phrase
        self._decoder.activate_search(_SPOTTING)
        try:
            self._decoder.start_utt()
            self._decoder.process_raw(sound, no_search=False, full_utt=True)
            self._decoder.end_utt()
            return self._decoder.hyp() is not None
        finally:
            self._decoder.activate_search(self._usual)

    def _whole(self) -> Heard:
        """By the sound as it is; where it is noisy, by its features without the noise, and then nothing is certain."""
        self._end_live()
        sound = bytes(self._sound)
        if not any(sound):
            return Heard("", spoken=True)
        return never_certain(self._searched_in_noise(sound)) if is_noisy(sound) else self._searched(sound)

    def _searched_in_noise(self, sound: bytes) -> Heard:
        features = cepstra(sound, self._speech)
        running = self._decoder.get_cmn(False)
        self._decoder.set_cmn(mean_of(features))  # once anything was heard live, it goes by a running mean otherwise
        self._decoder.start_utt()
        self._decoder.process_cep(features, no_search=False, full_utt=True)
        self._decoder.end_utt()
        heard = self._heard()
        self._decoder.set_cmn(running)
        return heard

    def _searched(self, sound: bytes) -> Heard:
        quiet = bytes(self._tuning.pad_ms * 16 * 2)
        self._decoder.start_utt()
        self._decoder.process_raw(quiet + sound + quiet, no_search=False, full_utt=True)
        self._decoder.end_utt()
        return self._heard()

    def _end_live(self) -> None:
        if self._live:
            self._decoder.end_utt()
            self._live = False

    def _heard(self) -> Heard:
        words = tuple(
            Word(_text(part.word), min(1.0, part.prob))
            for part in self._decoder.seg() or ()
            if part.word not in SILENCE
        )
        text = " ".join(word.text for word in words)
        if not text:
            return Heard("", spoken=True)
        others = dict.fromkeys(_text(found) for found in islice(self._found(), self._tuning.searched))
        alternatives = [other for other in others if other and other != text]
        return Heard(text, spoken=True, alternatives=tuple(alternatives[: self._tuning.alternatives]), words=words)

    def _found(self) -> Iterator[str]:
        for hypothesis in self._decoder.nbest() or ():
            if hypothesis is not None:
                yield hypothesis.hypstr


def never_certain(heard: Heard) -> Heard:
    """The same, with no word so sure that a "-teen" or "-ty" would count unasked; half sure, it is read back whole."""
    mean = sum(word.posterior for word in heard.words) / max(len(heard.words), 1)
    least, enough = HALF_SURE
    share = HALF_SURE_COUNTS if least <= mean < enough else 1.0
    words = (Word(word.text, min(word.posterior, UNCERTAIN) * share) for word in heard.words)
    return replace(heard, words=tuple(words))


def _text(found: str) -> str:
    """The words of a hypothesis, without silences and the numbers of second pronunciations."""
    return " ".join(word.partition("(")[0] for word in found.split() if word not in SILENCE)


def _acoustic_model() -> Path:
    from pocketsphinx import get_model_path

    return Path(get_model_path("en-us/en-us"))


def _decoder(vocabulary: Vocabulary, tuning: Tuning) -> Any:
    from pocketsphinx import Config, Decoder, set_loglevel

    set_loglevel("FATAL")
    settings = Config(
        lm=str(vocabulary.model),
        dict=str(vocabulary.dictionary),
        lw=tuning.weight,
        beam=tuning.beam,
        wip=tuning.insertion,
        cmn="batch",
        kws_threshold=tuning.spotting,
        loglevel="FATAL",
        logfn=os.devnull,
    )
    try:
        return Decoder(settings)
    except RuntimeError as fault:
        raise CannotListen(
            f"pocketsphinx can't load its vocabulary: {fault}", str(vocabulary.model.parent), "delete that folder"
        ) from fault


# ---------------------------------------------------------------- the vocabulary's files


def vocabulary(said: Sayable, cache: Path, share: Share | None = None, tuning: Tuning | None = None) -> Vocabulary:
    """Make the files for what may be said, or take them from the cache when nothing has changed.

    cache: a folder that may not exist yet; where it can't be written, a throw-away folder takes its place.
    """
    share, tuning = share or Share(), tuning or Tuning()
    key = _key(said, share, tuning)
    try:
        cache.mkdir(parents=True, exist_ok=True)
        return _kept(cache, key) or _made(said, share, tuning, cache, key)
    except OSError:
        return _made(said, share, tuning, Path(tempfile.mkdtemp(prefix="vocabulary-")), key)


def _key(said: Sayable, share: Share, tuning: Tuning) -> str:
    inputs = json.dumps([MADE_BY, tuning.order, asdict(share), asdict(said)], sort_keys=True)
    return hashlib.sha256(inputs.encode()).hexdigest()[:16]


def _kept(cache: Path, key: str) -> Vocabulary | None:
    model, dictionary = cache / f"heard-{key}.lm", cache / f"heard-{key}.dict"
    if not (model.exists() and dictionary.exists()):
        return None
    return Vocabulary(model, dictionary, _count_words(dictionary.read_text(encoding="utf-8")))


def _made(said: Sayable, share: Share, tuning: Tuning, folder: Path, key: str) -> Vocabulary:
    from pocketsphinx import get_model_path

    sample = sentences(said, share)
    words = sorted({word for sentence in sample for word in sentence})
    known = read_dictionary(Path(get_model_path("en-us/cmudict-en-us.dict")))
    sounds = dictionary_text(pronounce(words, known, speech_library_of_the_wheel()))
    _forget_all_but_the_newest(folder)
    dictionary = _written(folder / f"heard-{key}.dict", sounds)
    model = _written(folder / f"heard-{key}.lm", arpa(sample, tuning.order))
    return Vocabulary(model, dictionary, len(words))


KEPT = 3
"""Vocabularies kept beside a new one: with a call word and without are two, and making one takes over a second."""


def _forget_all_but_the_newest(folder: Path) -> None:
    models = sorted(folder.glob("heard-*.lm"), key=lambda file: file.stat().st_mtime, reverse=True)
    kept = {model.stem for model in models[:KEPT]}
    for old in folder.glob("heard-*.*"):
        if old.suffix in (".lm", ".dict") and old.stem not in kept:
            old.unlink(missing_ok=True)


def _written(path: Path, text: str) -> Path:
    """Written under another name first, so that a cut-off write is never taken for the whole."""
    draft = path.with_suffix(f"{path.suffix}.{os.getpid()}")
    draft.write_text(text, encoding="utf-8", newline="\n")
    return draft.replace(path)


def _count_words(dictionary: str) -> int:
    return sum(1 for line in dictionary.splitlines() if "(" not in line.split(" ", 1)[0])
