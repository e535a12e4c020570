"""Whether a turn is cut out of a noisy room whole: python tests/bench/turns_in_noise.py [--half 0|1]

Every sentence of tests/audio/unseen.py by one of four voices of flite, after four seconds of the room's noise and
before two. "Whole": it begins within 0.38 s (what lies before is kept), ends within a quarter second of its end, and no
pause in it is taken for its end (0.6 s). Then what is no speech: how often four minutes of each noise, of a spray
bottle, of clatter, and of a tap and a fan turned on and off are taken for a voice. All is made by numpy, none of it a
recording. Needs flite. Kept in recognition.md.
"""

from __future__ import annotations

import argparse
import sys
import tempfile
from pathlib import Path

sys.path[:0] = [str(Path(__file__).resolve().parents[1]), str(Path(__file__).resolve().parents[2])]

import numpy as np  # noqa: E402
from audio.noises import NO_SPEECH, Kind, in_a_noisy_room  # noqa: E402
from audio.spoken_clips import FLITE, speak  # noqa: E402
from audio.unseen import TEXTS  # noqa: E402

from assistant.hear.end_of_turn import SILENCE_MS  # noqa: E402
from assistant.hear.recogniser import PIECE_MS, RATE_HZ, pieces  # noqa: E402
from assistant.hear.turns import BEFORE_MS  # noqa: E402
from assistant.hear.voice_activity import VoiceActivity  # noqa: E402
from assistant.hear.wav import read_file  # noqa: E402

ROOMS: tuple[tuple[Kind | None, float], ...] = (
    (None, 0.0),
    *(("fan", db) for db in (20.0, 10.0, 5.0)),
    *(("water", db) for db in (20.0, 10.0)),
    *(("mask", db) for db in (20.0, 10.0)),
)
BEFORE_S, AFTER_S = 4.0, 2.0
NOISE_S = 240
END_MS = 250


def main() -> None:
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--half", type=int, choices=(0, 1), help="even or odd sentences; both unless given")
    given = options.parse_args()
    texts = [(n, text) for n, text in enumerate(TEXTS) if given.half in (None, n % 2)]
    with tempfile.TemporaryDirectory() as folder:
        said = [(n, read_file(speak(text, FLITE[n // 2 % 4], Path(folder) / "clip.wav"))) for n, text in texts]
    for kind, db in ROOMS:
        found = [_found(*in_a_noisy_room(sound, kind, db, BEFORE_S, AFTER_S, seed=n)) for n, sound in said]
        whole, early = sum(whole for whole, _ in found), sum(early for _, early in found)
        print(f"{kind or 'clean'} {db:.0f} dB: {whole} of {len(found)} whole, {early} begun before", flush=True)
    for name, noise in NO_SPEECH.items():
        speech = _speech(noise(NOISE_S * RATE_HZ, np.random.default_rng(7)))
        begins = int((np.diff(speech.astype(int)) == 1).sum())
        print(f"{name}: {begins} times in {NOISE_S // 60} minutes", flush=True)


def _speech(sound: bytes) -> np.ndarray:
    """For each piece whether it is taken for speech."""
    activity = VoiceActivity()
    return np.array([activity.take(piece) for piece in pieces(sound)])


def _found(sound: bytes, end_s: float) -> tuple[bool, bool]:
    """Whether what was said is one turn from its beginning to its end, and whether one began before it."""
    speech = np.flatnonzero(_speech(sound)) * PIECE_MS
    if not len(speech):
        return False, False
    begin, end = 1000 * BEFORE_S, 1000 * end_s
    one = bool((np.diff(speech) <= SILENCE_MS).all())
    early = speech[0] < begin - 50
    whole = one and not early and speech[0] - begin < BEFORE_MS - PIECE_MS and abs(speech[-1] - end) < END_MS
    return bool(whole), bool(early)


if __name__ == "__main__":
    main()
