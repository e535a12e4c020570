"""Cold start to the first answer, as a ratio to importing pint with its full registry and rapidfuzz.

Run by hand: `python tests/bench/cold_start.py [runs]`. Whole processes, in turn A B A B, medians; another machine gives
other seconds and much the same ratios. Both run from compiled files, as after an install. Goal: a dose in millilitres
at 0.8 of the baseline or less.
"""

from __future__ import annotations

import os
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

BASELINE = [sys.executable, "-c", "import pint, rapidfuzz.process; pint.UnitRegistry().parse_units('mL')"]
QUESTIONS = {
    "dose in millilitres": "how much bleach for 500 mil at one in thirty two",
    "dose in US fluid ounces": "how much bleach for 16 US fluid ounces at one in thirty two",
    "what's next": "what's next",
    "not understood": "what is the capital of france",
}

COMPILED = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}


def seconds(command: list[str]) -> float:
    begun = time.perf_counter()
    subprocess.run(command, capture_output=True, check=False, env=COMPILED)
    return time.perf_counter() - begun


def main(runs: int) -> None:
    with tempfile.TemporaryDirectory() as home:
        (Path(home) / "keeping.toml").write_bytes(_demo())
        ask = [str(Path(sys.executable).parent / "rinseback"), "ask", "--home", home]
        commands = {"baseline": BASELINE, **{name: [*ask, text] for name, text in QUESTIONS.items()}}
        for command in commands.values():
            seconds(command)
        times: dict[str, list[float]] = {name: [] for name in commands}
        for _ in range(runs):
            for name, command in commands.items():
                times[name].append(seconds(command))
    base = statistics.median(times["baseline"])
    for name, taken in times.items():
        middle = statistics.median(taken)
        best = min(taken)
        print(f"{name:26} {middle * 1000:6.0f} ms  {middle / base:5.2f} of the baseline  ({best * 1000:.0f} at best)")


def _demo() -> bytes:
    from importlib.resources import files

    return (files("assistant.demo") / "keeping.toml").read_bytes()


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 11)
