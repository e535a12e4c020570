"""The data folder: where the keeper's files are, and a throw-away one for the demo and for rehearsals."""

from __future__ import annotations

import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from importlib.resources import files
from pathlib import Path


class ShellFault(Exception):
    """Something the keeper asked for can't be done; its text is one line: what is wrong, where, and what to do."""


class TurnFault(ShellFault):
    """A turn couldn't be answered, by a fault of the program; its text is one line."""


@dataclass(frozen=True)
class Folder:
    """A data folder by its path."""

    path: Path

    @property
    def keeping(self) -> Path:
        """What the keeper owns."""
        return self.path / "keeping.toml"

    @property
    def record(self) -> Path:
        """What happened."""
        return self.path / "record.sqlite"

    @property
    def history(self) -> Path:
        """What was typed in the chat."""
        return self.path / "history"

    @property
    def cache(self) -> Path:
        """What can be made again: the recogniser's vocabulary."""
        return self.path / "cache"

    @property
    def models(self) -> Path:
        """Speech models that the keeper put there."""
        return self.path / "models"


def data_folder(home: str | None) -> Folder:
    """The folder named, or the user's own; made when it is missing.

    Fails: ShellFault.
    """
    path = Path(home).expanduser() if home is not None else _users_own()
    try:
        path.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        why = (error.strerror or "no folder can be made there").lower()
        raise ShellFault(f"{path}: {why}; choose another folder with --home") from error
    return Folder(path)


@contextmanager
def demo_folder() -> Iterator[Folder]:
    """A folder with the demo household in it, gone afterwards."""
    with throw_away() as folder:
        folder.keeping.write_bytes(files("assistant.demo").joinpath("keeping.toml").read_bytes())
        yield folder


@contextmanager
def throw_away() -> Iterator[Folder]:
    """An empty folder, gone afterwards."""
    with tempfile.TemporaryDirectory(prefix="rinseback-", ignore_cleanup_errors=True) as name:
        yield Folder(Path(name))


def _users_own() -> Path:
    from platformdirs import user_data_path  # only where --home doesn't say; it costs a start some milliseconds

    return user_data_path("rinseback", appauthor=False)
