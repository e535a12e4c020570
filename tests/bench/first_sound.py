"""From the end of what was said to the first sound of the reply: python tests/bench/first_sound.py [options]

Also what listening costs. The whole program runs in the room made of software of tests/audio/sound_room.py (PulseAudio,
flite) in real time. The silence that ends a turn (0.6 s, or 0.9 s after a number) is taken off, so that what is left
runs from the decided end of the turn; the way of the sound into the program and out of it, some 50 ms, and the fading
of the last word, some 100 ms, are in it. Kept in recognition.md.
"""

from __future__ import annotations

import argparse
import os
import sys
import tempfile
import time
from pathlib import Path

sys.path[:0] = [str(Path(__file__).resolve().parents[1]), str(Path(__file__).resolve().parents[2])]

import numpy as np  # noqa: E402
from audio.live_program import Live  # noqa: E402
from audio.noises import fan  # noqa: E402
from audio.sound_room import RATE_HZ, SoundRoom, sound_room  # noqa: E402
from audio.spoken_clips import FLITE, speak  # noqa: E402

from assistant.hear.end_of_turn import silence_needed  # noqa: E402
from assistant.hear.wav import read_file  # noqa: E402

ASKED = (
    "how long does bleach have to stay wet",
    "what's next for river tank",
    "how much bleach for the yellow bottle at one in thirty two",
    "can i mix bleach with vinegar",
    "can the leopard gecko go back in",
    "what can you do for me",
    "i got bleach in my eye",
    "where am i with the desert box",
)
LISTENED_S = 20
NOISE_SETTLES_S = 5.0
"""Until the room's noise is known."""


def main() -> None:
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--rounds", type=int, default=3, help="how often each question is asked")
    options.add_argument("--noise", type=float, help="a fan so many dB below the speech, all the time")
    given = options.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        place = Path(folder)
        (place / "room").mkdir()
        with sound_room(place / "room") as room, Live(room, place / "home", "--listen", "always") as live:
            live.ready()
            _listening(live.pid)
            if given.noise is not None:
                room.noise = _fan(given.noise, place)
                time.sleep(NOISE_SETTLES_S)
            waits = [_asked(text, room, live, place) for _ in range(given.rounds) for text in ASKED]
            waits.sort()
            n = len(waits)
            median, late = waits[n // 2], waits[min(n - 1, n * 9 // 10)]
            print(f"first sound after the decided end: median {median:.0f} ms, nine in ten within {late:.0f} ms, n {n}")
            _memory(live.pid)


def _asked(text: str, room: SoundRoom, live: Live, place: Path) -> float:
    """Milliseconds from the decided end of the turn to the first sound."""
    sound = read_file(speak(text, FLITE[3], place / "clip.wav"))
    mark = len(room.recorded)
    ended = room.say(sound[: _spoken_bytes(sound)])
    try:
        live.reply()
    except AssertionError:
        print(f"        no reply | {text}", flush=True)
        return float("inf")
    waited = room.wait_for_sound(mark, 10) - ended - silence_needed(text) / 1000
    print(f"  {1000 * waited:5.0f} ms | {text}", flush=True)
    room.wait_for_quiet(40)
    return 1000 * waited


def _fan(db: float, place: Path) -> np.ndarray:
    """The noise of a fan, so many dB below the mean power of one of the sentences."""
    said = np.frombuffer(read_file(speak(ASKED[0], FLITE[3], place / "clip.wav")), dtype="<i2").astype(np.float64)
    return fan(10) * np.sqrt((said[said != 0] ** 2).mean()) / 10 ** (db / 20)


def _spoken_bytes(sound: bytes) -> int:
    """Without the silence at the clip's end, which would count as the tool's time."""
    whole = len(sound) // 2
    step = RATE_HZ // 100
    while whole > step and max(map(abs, memoryview(sound).cast("h")[whole - step : whole]), default=0) < 300:
        whole -= step
    return 2 * whole


def _listening(program: int) -> None:
    before, began = _processor_s(program), time.monotonic()
    time.sleep(LISTENED_S)
    used = (_processor_s(program) - before) / (time.monotonic() - began)
    print(f"listening to a quiet room: {1000 * used:.0f} ms of processor time a second", flush=True)


def _processor_s(program: int) -> float:
    ticks = 0
    for process in _all(program):
        fields = Path(f"/proc/{process}/stat").read_text().rpartition(")")[2].split()
        ticks += int(fields[11]) + int(fields[12])
    return ticks / os.sysconf("SC_CLK_TCK")


def _memory(program: int) -> None:
    sizes = []
    for process in _all(program):
        lines = Path(f"/proc/{process}/smaps_rollup").read_text().splitlines()
        sizes.append(sum(int(line.split()[1]) for line in lines if line.startswith("Private_")) / 1000)
    print(f"memory of its own: {sizes[0]:.0f} MB, and {sum(sizes[1:]):.0f} MB of the program that speaks")


def _all(program: int) -> list[int]:
    children = Path(f"/proc/{program}/task").glob("*/children")
    return [program, *(int(child) for listed in children for child in listed.read_text().split())]


if __name__ == "__main__":
    main()
