"""`model`: fetch or take a packed Vosk model, check it, and put it into the models folder.

The one command that goes to the network, and only where the keeper points it. Nothing is put in place before the model
has been loaded and has listened to a spoken clip.
"""

from __future__ import annotations

import shutil
import sys
import time
from collections.abc import Iterator
from pathlib import Path

from assistant.hear.recogniser import CannotListen
from assistant.shells.folder import Folder, ShellFault, throw_away
from assistant.shells.options import Options, opened_folder
from assistant.store.fetching import NotFetched, fetch, is_address
from assistant.store.unpacking import BadArchive, put_in_place, sha256, unpacked

BAR = 30
REDRAWN_S = 0.2


def model(options: Options) -> int:
    """Puts the model of an address, an archive or a folder in place; 0."""
    with opened_folder(options) as folder:
        try:
            name = _taken(options, folder)
        except (NotFetched, BadArchive) as fault:
            raise ShellFault(str(fault)) from fault
        except CannotListen as fault:
            what = f"{options.what}: {fault.what}"
            raise ShellFault(f"{what}; nothing was put into the models folder; fetch it again, or another") from fault
    print(f"{folder.models / name}: loaded, and a spoken clip was decoded. It is used from now on.")
    return 0


def _taken(options: Options, folder: Folder) -> str:
    folder.models.mkdir(parents=True, exist_ok=True)
    if not is_address(options.what):
        return _put(Path(options.what).expanduser(), options, folder)
    waiting = folder.cache / "fetched"
    archive = fetch(options.what, waiting, Bar())
    name = _put(archive, options, folder)
    shutil.rmtree(waiting, ignore_errors=True)
    return name


def _put(archive: Path, options: Options, folder: Folder) -> str:
    """Checks, unpacks, tries out, puts in place; gives the folder's name."""
    if not archive.exists():
        raise ShellFault(f"{archive}: there is no such file; check the name")
    if archive.is_dir():
        raise ShellFault(f"{archive}: this is a folder; copy it into {folder.models}, or give a packed model")
    digest = sha256(archive)
    if options.sha256 and digest != options.sha256.strip().lower():
        archive.unlink() if is_address(options.what) else None
        raise ShellFault(f"{archive.name}: its checksum is {digest}, not the one you gave; fetch it again")
    print(f"checksum (SHA-256) {digest}")
    with unpacked(archive, folder.models) as place:
        found = _model_in(place, archive)
        name = found.name if found != place else archive.name.split(".")[0]
        _try_out(found)
        put_in_place(found, folder.models / name)
    return name


def _model_in(place: Path, archive: Path) -> Path:
    from assistant.hear.vosk_engine import looks_like_model

    for candidate in _folders(place):
        if looks_like_model(candidate):
            return candidate
    raise ShellFault(f"{archive}: no Vosk model is in it; models/README.md tells what one looks like")


def _folders(place: Path) -> Iterator[Path]:
    yield place
    for depth in ("*", "*/*"):
        yield from sorted(path for path in place.glob(depth) if path.is_dir())


def _try_out(found: Path) -> None:
    """Load it and let it listen to a spoken clip; both in a program of its own, since a broken model ends it."""
    from assistant.hear.vosk_engine import try_out
    from assistant.say.voice import Voice

    with throw_away() as place:
        clip = place.path / "clip.wav"
        with Voice() as voice:
            spoken = voice.render("one two three four five", clip) is None
        try_out(found, place.cache, clip if spoken else None)


class Bar:
    """Progress on stderr: a bar that is drawn anew on a terminal, nothing elsewhere."""

    def __init__(self) -> None:
        self._drawn = 0.0

    def __call__(self, here: int, of: int | None) -> None:
        now = time.monotonic()
        ended = of is not None and here >= of
        if not sys.stderr.isatty() or (now - self._drawn < REDRAWN_S and not ended):
            return
        self._drawn = now
        print(f"\r{bar(here, of)}", end="\n" if ended else "", file=sys.stderr, flush=True)


def bar(here: int, of: int | None) -> str:
    """How far it is: "[######....]  20 of 40 MB"."""
    megabytes = here / 1_000_000
    if not of:
        return f"{megabytes:.0f} MB"
    done = min(BAR, BAR * here // of)
    return f"[{'#' * done}{'.' * (BAR - done)}] {megabytes:.0f} of {of / 1_000_000:.0f} MB"
