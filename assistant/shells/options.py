"""What was asked for on the command line, as values."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import datetime

from assistant.shells.folder import Folder, ShellFault, data_folder, demo_folder

EARLIEST, LATEST = 2000, 2999
"""Years that `--at` takes; far enough from the calendar's ends that no sum of times leaves it."""


@dataclass(frozen=True)
class Options:
    """One call of the program."""

    command: str
    what: str = ""
    """The text or file that the command is about; "-" is stdin."""
    home: str | None = None
    demo: bool = False
    json: bool = False
    at: datetime | None = None
    speak: bool = False
    say_to: str | None = None
    sha256: str = ""
    """What the checksum of a model's archive must be; empty: not known."""
    voice: bool = False
    """Listen to the microphone and speak."""
    listen: str | None = None
    """When to listen: "key", "call" or "always"; None: by the call word if the household has one, else by the key."""
    microphone: str | None = None
    """Its name, or part of it; None: the usual one."""
    bottles: tuple[str, ...] = ()
    """Whose labels; none: all of them."""
    png: str | None = None
    """The one bottle whose label is a picture."""
    to: str | None = None
    """The file that is written."""
    paper: str = "a4"
    csv: bool = False
    month: str | None = None
    """Of the log, as "2026-05"."""
    enclosure: str | None = None
    agent: str | None = None
    first: str | None = None
    """The first day of the log, as "2026-01-31"."""
    last: str | None = None
    notes: bool = False
    """With what the tool noted for its own clocks."""

    def now(self) -> datetime:
        """The time to answer at, with its offset."""
        return self.at if self.at is not None else datetime.now().astimezone()


@contextmanager
def opened_folder(options: Options) -> Iterator[Folder]:
    """The data folder that the options name; the demo's own is thrown away afterwards."""
    if options.demo:
        with demo_folder() as folder:
            yield folder
    else:
        yield data_folder(options.home)


def read_time(text: str) -> datetime:
    """A time from the command line; the computer's own zone when it names none.

    Fails: ShellFault.
    """
    try:
        given = datetime.fromisoformat(text.strip())
        if EARLIEST <= given.year <= LATEST:
            return given if given.tzinfo is not None else given.astimezone()
    except (ValueError, OverflowError, OSError):
        pass
    raise ShellFault(f'"{text[:40]}" is no time known here; write one like 2026-01-31T09:00')
