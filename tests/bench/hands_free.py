"""The call word and the end of a turn: python tests/bench/hands_free.py [options]

How often the call word is found in front of a question and alone, clean and under a fan; how often ordinary talk is
taken for it; how often a turn is cut in a pause of half a second. Needs flite and sox. With --chatter, ordinary talk is
so many hours of a file of sentences: one a line, or the JSON of the open data CLINC150 (Larson et al. 2019), shuffled;
without, the program's own general English is said. Kept in recognition.md.
"""

from __future__ import annotations

import argparse
import json
import sys
import tempfile
from pathlib import Path

sys.path[:0] = [str(Path(__file__).resolve().parents[1]), str(Path(__file__).resolve().parents[2])]

import numpy as np  # noqa: E402
from audio.listening import DEMO  # noqa: E402
from audio.spoken_clips import FLITE, speak, under_a_fan  # noqa: E402
from audio.unseen import TEXTS  # noqa: E402

from assistant.hear.call_word import called  # noqa: E402
from assistant.hear.choose import open_recogniser  # noqa: E402
from assistant.hear.general_english import SENTENCES  # noqa: E402
from assistant.hear.recogniser import RATE_HZ, Recogniser, hear_all, pieces  # noqa: E402
from assistant.hear.turns import Turns  # noqa: E402
from assistant.hear.vocabulary import sayable  # noqa: E402
from assistant.hear.wav import read_file  # noqa: E402
from assistant.store.keeping import read_household  # noqa: E402
from assistant.store.packaged import packaged_facts, read_questions  # noqa: E402

CALL = "marigold lantern"


def main() -> None:
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--chatter", type=Path)
    options.add_argument("--hours", type=float, default=0.1, help="of ordinary talk")
    options.add_argument("--most", type=int, default=40, help="clips of each kind")
    options.add_argument("--skip", type=int, help="go on after so many sentences of ordinary talk, and do that alone")
    given = options.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        place = Path(folder)
        recogniser = _recogniser(place)
        if given.skip is not None:
            print(_ordinary_talk(recogniser, _chatter(given.chatter), given.hours, place, given.skip))
            return
        for noise_db in (None, 20, 10):
            for kind, texts in (("before a question", [f"{CALL} {text}" for text in TEXTS]), ("alone", [CALL] * 8)):
                clips = list(_clips(texts[:: max(1, len(texts) // given.most)], noise_db, place))
                found = sum(_called(recogniser, clip) for clip in clips)
                print(f"call word {kind}, noise {noise_db} dB: found {found} of {len(clips)}", flush=True)
        print(_pauses(recogniser, place, given.most), flush=True)
        print(_ordinary_talk(recogniser, _chatter(given.chatter), given.hours, place))


def _chatter(file: Path | None) -> list[str]:
    if file is None:
        return list(SENTENCES)
    text = file.read_text("utf-8")
    if file.suffix != ".json":
        return text.splitlines()
    said = [sentence for part in json.loads(text).values() for sentence, _ in part]
    return [said[at] for at in np.random.default_rng(1).permutation(len(said))]


def _ordinary_talk(recogniser: Recogniser, talk: list[str], hours: float, place: Path, skip: int = 0) -> str:
    """Tells where it is every 200 sentences, so that a run that was stopped is gone on with by `--skip`."""
    spoken, false, told = 0.0, 0, ""
    for sentences, text in enumerate(talk[skip:], start=1):
        (clip,) = _clips([text], None, place, first=skip + sentences)
        if _called(recogniser, clip):
            false += 1
            print(f"taken for the call word: {text!r}", flush=True)
        spoken += len(clip) / 2 / RATE_HZ
        told = f"{false} times in {spoken / 3600:.2f} hours, {sentences} sentences from number {skip} on"
        if spoken >= hours * 3600:
            break
        if sentences % 200 == 0:
            print(f"so far {told}", flush=True)
    return f"ordinary talk: taken for the call word {told}"


def _recogniser(place: Path) -> Recogniser:
    facts, questions = packaged_facts(), read_questions()
    household = read_household(DEMO, facts)
    said = sayable(questions.values(), household, facts.agents.values(), facts.organisms.values(), CALL)
    return open_recogniser(said, place / "none", place / "cache")


def _clips(texts: list[str], noise_db: float | None, place: Path, first: int = 0) -> list[bytes]:
    clips = []
    for number, text in enumerate(texts, start=first):
        sound = read_file(speak(text, FLITE[number % 4], place / "clip.wav"))
        clips.append(sound if noise_db is None else under_a_fan(sound, noise_db, place))
    return clips


def _called(recogniser: Recogniser, sound: bytes) -> bool:
    found = called(hear_all(recogniser, pieces(sound)), CALL)
    return found is not None and (found.sure or recogniser.spots(CALL, sound))


def _pauses(recogniser: Recogniser, place: Path, most: int) -> str:
    """Sentences said with half a second between two words, in the middle."""
    chance, cut, tried = np.random.default_rng(1), 0, 0
    for text in TEXTS[:: max(1, len(TEXTS) // most)]:
        words = text.split()
        middle = len(words) // 2
        halves = [" ".join(words[:middle]), " ".join(words[middle:])]
        first, second = (_trimmed(clip) for clip in _clips(halves, None, place))
        samples = np.concatenate([np.zeros(RATE_HZ), first, np.zeros(RATE_HZ // 2), second, np.zeros(2 * RATE_HZ)])
        sound = (samples + chance.normal(0, 12, len(samples))).astype("<i2").tobytes()
        turns = Turns(recogniser)
        cut += sum(turns.take(piece) is not None for piece in pieces(sound)) > 1
        tried += 1
    return f"a pause of 0.5 s: cut {cut} of {tried} turns"


def _trimmed(sound: bytes) -> np.ndarray:
    samples = np.frombuffer(sound, dtype="<i2")
    loud = np.flatnonzero(np.abs(samples.astype(np.int32)) > 300)
    return samples[loud[0] : loud[-1] + 1].astype(np.float64) if len(loud) else samples.astype(np.float64)


if __name__ == "__main__":
    main()
