"""Whether a wrong number gets through: python tests/bench/heard_numbers.py [--every N] [--show] [--clips FOLDER]

Sentences with numbers (tests/audio/number_texts.py) by four voices of flite, at three speeds, clean and with a fan
20, 10 and 5 dB below the speech. "Outright": right, without asking. "Confirmed": right after one "yes" to what was
read back. "Missed": unsure, asked for, or read back wrong. "Wrong number": another one taken for certain, or let
through by a "yes" to others that were read back right. Needs flite. Kept in recognition.md.
"""

from __future__ import annotations

import argparse
import sys
import tempfile
from pathlib import Path

sys.path[:0] = [str(Path(__file__).resolve().parents[1]), str(Path(__file__).resolve().parents[2])]

from audio.listening import DemoListener, Tally  # noqa: E402
from audio.noises import with_noise  # noqa: E402
from audio.number_texts import number_texts  # noqa: E402
from audio.spoken_clips import FLITE, Speaker, speak  # noqa: E402

from assistant.hear.recogniser import hear_all, pieces  # noqa: E402
from assistant.hear.wav import read_file  # noqa: E402

SLOWER = (1.0, 0.85, 1.2)
"""How much longer everything is said; below 1 faster."""


def main() -> None:
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--every", type=int, default=1, help="take every n-th sentence")
    options.add_argument("--show", action="store_true", help="print every clip that came out wrong")
    options.add_argument("--clips", type=Path, help="where said clips are kept between runs")
    given = options.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        place = given.clips or Path(folder)
        place.mkdir(parents=True, exist_ok=True)
        listener = DemoListener(Path(folder))
        heads = f"{'clips':12}{'n':>6}{'outright':>10}{'confirmed':>11}{'missed':>8}"
        print(f"{heads}{'wrong question or name':>24}{'wrong number':>14}")
        every = Tally()
        for noise_db in (None, 20, 10, 5):
            tally = Tally()
            for at, text in enumerate(number_texts()[:: given.every]):
                for speaker in FLITE:
                    sound = _said(text, speaker, SLOWER[(at + len(speaker.voice)) % 3], place)
                    if noise_db is not None:
                        sound = with_noise(sound, "fan", noise_db, seed=at)
                    judged = listener.judged(text, hear_all(listener.recogniser, pieces(sound)))
                    tally.add(judged)
                    every.add(judged)
                    if given.show and judged.verdict == "wrong":
                        print(f"  {speaker.voice} | {text} | {judged.heard.text}")
            _print("clean" if noise_db is None else f"fan {noise_db} dB", tally)
        _print("all", every)


def _said(text: str, speaker: Speaker, slower: float, place: Path) -> bytes:
    path = place / f"{speaker.voice}-{slower}-{'-'.join(text.split())}.wav"
    return read_file(path if path.exists() else speak(text, speaker, path, slower=slower))


def _print(name: str, tally: Tally) -> None:
    shares = [f"{100 * tally.share(verdict):.1f} %" for verdict in ("right", "confirmed", "missed")]
    numbers = len(tally.silently_wrong_numbers)
    others = sum(clip.verdict == "wrong" for clip in tally.clips) - numbers
    print(
        f"{name:12}{len(tally.clips):>6}{shares[0]:>10}{shares[1]:>11}{shares[2]:>8}{others:>24}{numbers:>14}",
        flush=True,
    )


if __name__ == "__main__":
    main()
