"""A household of 200 enclosures with years of daily rounds. Run by hand: `python tests/bench/scale.py [events ...]`.

Every line is one length of history: what a start costs, what turns cost that record nothing and one that records, what
it costs to undo on and on, how large the file is, and how long the one start takes that has to fold the whole record
anew, as after an update. Medians; the record on disk, as in use.
"""

from __future__ import annotations

import sqlite3
import statistics
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import closing
from datetime import UTC, datetime, timedelta
from pathlib import Path

import msgspec

from assistant.contract import Heard
from assistant.core.record.events import Event, Recorded, RoundStarted, StepDone
from assistant.shells.folder import Folder
from assistant.shells.sitting import Sitting, open_sitting
from assistant.store.log import Log

ENCLOSURES = 200
HISTORIES = (0, 10_000, 1_000_000)
BEGIN = datetime(2016, 1, 4, 6, tzinfo=UTC)
BLEACH = "sodium hypochlorite"
STEPS = ("move out", "clear", "wash", "apply", "hold", "rinse", "dry", "air", "return")
SAID = ("move out", "clear", "wash", "apply", "rinse", "dry", "return")
encode = msgspec.json.Encoder().encode
NAMES = tuple(f"{colour} tub {number}" for colour in ("north", "south", "east", "west") for number in range(1, 51))
ASKS = (
    "how much bleach for the yellow bottle at one in thirty two",
    "how long is left",
    "can north tub 7 go back",
    "what's next for south tub 12",
    "where am I with everything",
)


def main() -> None:
    for events in [int(argument) for argument in sys.argv[1:]] or HISTORIES:
        with tempfile.TemporaryDirectory() as home:
            print(f"{events:8} events: {_figures(Folder(Path(home)), events)}", flush=True)


def _figures(folder: Folder, events: int) -> str:
    folder.keeping.write_text(household(), encoding="utf-8")
    fill(folder.record, events)
    now = BEGIN + timedelta(days=4000)
    rebuilt = _timed(lambda: _opened(folder, now))
    starts = statistics.median(_timed(lambda: _opened(folder, now)) for _ in range(7))
    with open_sitting(folder) as sitting:
        turn = _turner(sitting, now)
        asks = [_median(lambda text=text: turn(text), 20) for text in ASKS]
        records = _median(lambda: turn("start over north tub 7 with the yellow bottle"), 20)
        undo = [_timed(lambda: turn("undo")) for _ in range(60)]
    size = sum(file.stat().st_size for file in folder.path.glob("record.sqlite*")) / 1e6
    asked = ", ".join(f"{taken * 1000:.1f}" for taken in asks)
    return (
        f"start {starts * 1000:.0f} ms, asks {asked} ms, records {records * 1000:.1f} ms, "
        f"undo {statistics.median(undo) * 1000:.1f} ms, slowest {max(undo) * 1000:.0f} ms; "
        f"{size:.1f} MB on disk; folded anew {rebuilt:.2f} s"
    )


def _opened(folder: Folder, now: datetime) -> None:
    with open_sitting(folder) as sitting:
        sitting.state()


def _turner(sitting: Sitting, now: datetime) -> Callable[[str], None]:
    def turn(text: str) -> None:
        sitting.hear(Heard(text), now)

    return turn


def _timed(work: Callable[[], object]) -> float:
    begun = time.perf_counter()
    work()
    return time.perf_counter() - begun


def _median(work: Callable[[], object], times: int) -> float:
    return statistics.median(_timed(work) for _ in range(times))


# ---------------------------------------------------------------- the household and its years


def household() -> str:
    """A keeping.toml of so many enclosures, one bleach and its bottle."""
    head = """
[room]
name = "long room"
volume = "80 m^3"
airing = "two openings"
temperature = "25 degC"

[[stock]]
name = "plain bleach"
agent = "bleach"
strength = "6 percent"

[[bottle]]
name = "yellow bottle"
capacity = "750 mL"
stock = "plain bleach"
mix = "1 in 32"
"""
    return head + "".join(f'\n[[enclosure]]\nname = "{name}"\nanimal = "corn snake"\n' for name in NAMES)


def years(events: int) -> Iterator[Recorded]:
    """Daily rounds, one enclosure after the other, each step a turn of its own; the last ones are still open."""
    at, turn = BEGIN, 0
    while turn < events:
        for name in NAMES:
            for event in _round(name):
                turn += 1
                at += timedelta(seconds=40)
                yield Recorded(at, str(turn), event)
                if turn == events:
                    return


def _round(name: str) -> Iterator[Event]:
    yield RoundStarted(name, BLEACH, STEPS, 600.0, 2.3, 4.6, stock="plain bleach", bottle="yellow bottle")
    for step in SAID:
        yield StepDone(name, step, agent=BLEACH, hold_s=600.0) if step == "apply" else StepDone(name, step)


def fill(record: Path, events: int) -> None:
    """Writes the rows as the log does, without folding after each: nobody has ten years to wait."""
    with Log.open(record):
        pass
    with closing(sqlite3.connect(record)) as database, database:
        rows = ((e.at.isoformat(), e.turn, type(e.event).__name__, encode(e.event).decode()) for e in years(events))
        database.executemany("INSERT INTO events (at, turn, kind, body) VALUES (?, ?, ?, ?)", rows)
        database.execute("DELETE FROM state")


if __name__ == "__main__":
    main()
