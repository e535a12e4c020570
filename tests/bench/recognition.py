"""How well speech is heard and read: python tests/bench/recognition.py [--half 0|1] [--models FOLDER] [--show]

Says every sentence of tests/audio/unseen.py by the voices of two speech programs, clean and with a fan's noise, lets
the recogniser hear it, and compares the reading with that of the same words typed. Needs flite, espeak-ng and sox.
Settings are tuned on the even half of the sentences and reported on the odd half. The table is kept in recognition.md.
"""

from __future__ import annotations

import argparse
import sys
import tempfile
import time
from pathlib import Path

sys.path[:0] = [str(Path(__file__).resolve().parents[1]), str(Path(__file__).resolve().parents[2])]

from audio.listening import DemoListener, Judged, Tally  # noqa: E402
from audio.spoken_clips import ESPEAK, FLITE, speak, under_a_fan  # noqa: E402
from audio.unseen import TEXTS  # noqa: E402

from assistant.hear.recogniser import RATE_HZ, hear_all, pieces  # noqa: E402
from assistant.hear.wav import read_file  # noqa: E402

VERDICTS = ("right", "confirmed", "missed", "wrong")


def main() -> None:
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--half", type=int, choices=(0, 1), help="even or odd sentences; both unless given")
    options.add_argument("--models", type=Path, help="a folder with a Vosk model, to measure that engine")
    options.add_argument("--show", action="store_true", help="print every clip that came out otherwise than typed")
    given = options.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        place = Path(folder)
        listener = DemoListener(place, given.models)
        print(listener.recogniser.name, "\n")
        print(f"{'':49}{'wrong:':>7}{'':>24}{'word':>7}{'cpu s per':>11}")
        heads = f"{'clips':22}{'n':>4}{'right':>7}{'confirmed':>10}{'missed':>7}{'all':>6}"
        print(f"{heads}{'number':>8}{'question':>9}{'name':>6}{'errors':>9}{'s of sound':>12}")
        for name, speakers, noise_db in (
            ("flite, clean", FLITE, None),
            ("flite, fan 20 dB", FLITE, 20),
            ("flite, fan 10 dB", FLITE, 10),
            ("espeak-ng, clean", ESPEAK, None),
        ):
            tally, load = Tally(), Load()
            for number, text in enumerate(TEXTS):
                if given.half is not None and number % 2 != given.half:
                    continue
                for speaker in speakers:
                    sound = read_file(speak(text, speaker, place / "clip.wav"))
                    if noise_db is not None:
                        sound = under_a_fan(sound, noise_db, place)
                    judged = load.timed(listener, text, sound)
                    tally.add(judged)
                    if given.show and judged.verdict in ("missed", "wrong"):
                        print(f"  {judged.verdict} {judged.wrong} | {speaker.voice} | {text} | {judged.heard.text}")
            print(_row(name, tally, load))


class Load:
    """Processor time against length of sound."""

    def __init__(self) -> None:
        self.processor_s = self.sound_s = 0.0

    def timed(self, listener: DemoListener, text: str, sound: bytes) -> Judged:
        began = time.process_time()
        heard = hear_all(listener.recogniser, pieces(sound))
        self.processor_s += time.process_time() - began
        self.sound_s += len(sound) / 2 / RATE_HZ
        return listener.judged(text, heard)


def _row(name: str, tally: Tally, load: Load) -> str:
    right, confirmed, missed, wrong = (f"{100 * tally.share(verdict):.0f} %" for verdict in VERDICTS)
    kinds = [sum(clip.wrong == kind for clip in tally.clips) for kind in ("number", "question", "name")]
    shares = f"{name:22}{len(tally.clips):>4}{right:>7}{confirmed:>10}{missed:>7}{wrong:>6}"
    counts = f"{kinds[0]:>8}{kinds[1]:>9}{kinds[2]:>6}"
    return f"{shares}{counts}{tally.word_error_rate:>9.3f}{load.processor_s / load.sound_s:>12.3f}"


if __name__ == "__main__":
    main()
