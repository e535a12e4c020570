"""Time of a typed turn, and how it grows with the record. Run by hand: `python tests/bench/turn_time.py`.

Each line: median of many turns in one sitting on the demo household, the record on disk as in use. "asks" records
nothing; "records" appends an event, so it ends with a full sync of the disk.
"""

from __future__ import annotations

import statistics
import tempfile
import time
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from pathlib import Path

from assistant.contract import Heard
from assistant.core.record.events import RoundStarted, StepDone
from assistant.shells.folder import Folder
from assistant.shells.sitting import Sitting, open_sitting
from assistant.store.log import Log

BEGIN = datetime(2026, 1, 5, 9, tzinfo=UTC)
QUESTIONS = (
    "how much bleach for the yellow bottle at one in thirty two",
    "how long is left on the river tank",
    "can the corn snake go back",
    "what's next for the desert box",
    "what should I feed him tonight",
)


def main() -> None:
    for events in (10, 1_000, 10_000, 100_000):
        with tempfile.TemporaryDirectory() as home:
            folder = Folder(Path(home))
            folder.keeping.write_bytes(_demo())
            _fill(folder.record, events)
            begun = time.perf_counter()
            with open_sitting(folder) as sitting:
                opened = time.perf_counter() - begun
                asks = [_median(lambda text=text: _turn(sitting, text)) for text in QUESTIONS]
                records = _median(lambda: _turn(sitting, "start over the river tank with the yellow bottle"), 30)
        shown = ", ".join(f"{taken * 1000:.2f}" for taken in asks)
        print(f"{events:7} events: open {opened * 1000:5.1f} ms, asks {shown} ms, records {records * 1000:.2f} ms")


def _turn(sitting: Sitting, text: str) -> None:
    sitting.hear(Heard(text), BEGIN + timedelta(days=400))


def _median(turn: Callable[[], None], times: int = 100) -> float:
    taken = []
    for _ in range(times):
        begun = time.perf_counter()
        turn()
        taken.append(time.perf_counter() - begun)
    return statistics.median(taken)


def _fill(record: Path, events: int) -> None:
    """Rounds in five enclosures, many events a transaction."""
    names = ("river tank", "desert box", "window cage", "rack tub seven", "hospital tub")
    steps = ("move out", "clear", "wash", "apply", "hold", "rinse", "dry", "air", "return")
    with Log.open(record) as log:
        for batch in range(0, events, 50):
            told = []
            for number in range(batch, min(batch + 50, events)):
                name, step = names[(number // 10) % 5], number % 10
                if step == 0:
                    told.append(RoundStarted(name, "sodium hypochlorite", steps, 600.0, 1.51, 4.6))
                else:
                    told.append(StepDone(name, steps[step - 1], hold_s=600.0))
            log.append(tuple(told), log.next_turn(), BEGIN + timedelta(minutes=batch))


def _demo() -> bytes:
    from importlib.resources import files

    return (files("assistant.demo") / "keeping.toml").read_bytes()


if __name__ == "__main__":
    main()
