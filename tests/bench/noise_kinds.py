"""Kinds of noise, and speeds: python tests/bench/noise_kinds.py [--half 0|1] [--digits FOLDER]

Each sentence of one half of tests/audio/unseen.py by one of four voices of flite, clean, slower and faster, and with a
fan, running water, and a mask with a fan (tests/audio/noises.py) 20, 10 and 5 dB below the speech. With --digits, also
the single digits that three people say in an open data set (Free Spoken Digit Dataset: files DIGIT_SPEAKER_TAKE.wav),
by a vocabulary of the digits and ordinary talk; left out, saying so, where the folder is absent. Needs flite. Kept in
recognition.md.
"""

from __future__ import annotations

import argparse
import sys
import tempfile
from pathlib import Path

sys.path[:0] = [str(Path(__file__).resolve().parents[1]), str(Path(__file__).resolve().parents[2])]

from audio.listening import DemoListener, Tally  # noqa: E402
from audio.noises import Kind, with_noise  # noqa: E402
from audio.spoken_clips import FLITE, speak  # noqa: E402
from audio.unseen import TEXTS  # noqa: E402

from assistant.hear.pocketsphinx_engine import Pocketsphinx, vocabulary  # noqa: E402
from assistant.hear.recogniser import hear_all, pieces  # noqa: E402
from assistant.hear.spoken_form import ONES  # noqa: E402
from assistant.hear.vocabulary import Sayable  # noqa: E402
from assistant.hear.wav import read_file  # noqa: E402

KINDS: tuple[Kind, ...] = ("fan", "water", "mask")
SPEEDS = {"said slowly": 1.3, "clean": 1.0, "said fast": 0.8}


def main() -> None:
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--half", type=int, choices=(0, 1), default=1, help="even or odd sentences")
    options.add_argument("--digits", type=Path, help="the folder of spoken digits")
    given = options.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        place = Path(folder)
        listener = DemoListener(place)
        texts = list(enumerate(TEXTS))[given.half :: 2]
        heads = f"{'clips':16}{'n':>4}{'right':>7}{'confirmed':>11}{'missed':>8}"
        print(f"{heads}{'wrong':>7}{'number':>8}{'word errors':>13}")
        for name, slower in SPEEDS.items():
            _print(name, _heard(listener, [(text, _said(at, text, place, slower)) for at, text in texts]))
        for kind in KINDS:
            for db in (20, 10, 5):
                clips = [(text, with_noise(_said(at, text, place), kind, db, seed=at)) for at, text in texts]
                _print(f"{kind} {db} dB", _heard(listener, clips))
        print(_digits(given.digits, place))


def _said(at: int, text: str, place: Path, slower: float = 1.0) -> bytes:
    return read_file(speak(text, FLITE[at // 2 % 4], place / "clip.wav", slower=slower))


def _heard(listener: DemoListener, clips: list[tuple[str, bytes]]) -> Tally:
    tally = Tally()
    for text, sound in clips:
        tally.add(listener.judged(text, hear_all(listener.recogniser, pieces(sound))))
    return tally


def _print(name: str, tally: Tally) -> None:
    counts = [
        sum(clip.verdict == verdict for clip in tally.clips) for verdict in ("right", "confirmed", "missed", "wrong")
    ]
    numbers = len(tally.silently_wrong_numbers)
    counted = "".join(f"{count:>{width}}" for count, width in zip(counts, (7, 11, 8, 7), strict=True))
    print(f"{name:16}{len(tally.clips):>4}{counted}{numbers:>8}{tally.word_error_rate:>13.3f}", flush=True)


def _digits(folder: Path | None, place: Path) -> str:
    """Digits that people said, one a recording, heard by a vocabulary of the digits and ordinary talk."""
    files = sorted(folder.glob("*.wav")) if folder is not None else []
    if not files:
        return "spoken digits: left out, no folder of recordings given"
    recogniser = Pocketsphinx(vocabulary(Sayable({"digit": ONES[:10]}, {}), place / "digits"))
    right = sure = sure_and_wrong = 0
    for file in files:
        heard = hear_all(recogniser, pieces(read_file(file)))
        said = ONES[int(file.name[0])]
        certain = bool(heard.words) and min(word.posterior for word in heard.words) >= 0.99 and len(heard.words) == 1
        right += heard.text == said
        sure += certain
        sure_and_wrong += certain and heard.text != said
    return f"spoken digits: {right} of {len(files)} right; {sure} at 0.99 and more, {sure_and_wrong} of these wrong"


if __name__ == "__main__":
    main()
