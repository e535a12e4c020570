"""`export` and `import`: everything into one file, and back out of it."""

from __future__ import annotations

import json
import tempfile
from itertools import chain, count
from pathlib import Path

from assistant.shells.folder import Folder, ShellFault
from assistant.shells.options import Options, opened_folder
from assistant.store.bundle import BadBundle, Held, put_in_place, read_bundle, set_aside, write_bundle
from assistant.store.keeping import read_household
from assistant.store.log import Log, StoreFault
from assistant.store.packaged import packaged_facts


def export(options: Options) -> int:
    """Writes keeping.toml and the record to the file named, or to a new one in the backups folder; 0."""
    with opened_folder(options) as folder:
        target = Path(options.what).expanduser() if options.what else _backup(folder, options, "rinseback")
        read_household(folder.keeping)  # a file with a fault couldn't be brought back
        try:
            held = write_bundle(target, folder.keeping, folder.record, options.now())
        except BadBundle as fault:
            raise ShellFault(str(fault)) from fault
    _tell(options, target, held, f"{target}: written, with {_in_words(held)}.")
    return 0


def bring_back(options: Options) -> int:
    """Puts what a file holds in place of what is here, which is written to the backups folder first; 0."""
    source = Path(options.what).expanduser()
    with opened_folder(options) as folder, tempfile.TemporaryDirectory(prefix=".import-", dir=folder.path) as name:
        place = Path(name)
        try:
            held = read_bundle(source, place, packaged_facts())
            kept = _kept_first(folder, options)
            put_in_place(place, folder.keeping, folder.record)
        except BadBundle as fault:
            raise ShellFault(str(fault)) from fault
        told = f"{folder.path} now has {_in_words(held)} from {source}."
        _tell(options, source, held, f"{told}\nWhat was here before: {kept}." if kept else told)
    return 0


def _kept_first(folder: Folder, options: Options) -> str:
    """Writes what is here to a backup; where it went, or "" if there was nothing."""
    if not folder.keeping.exists() and not folder.record.exists():
        return ""
    aside = ""
    if folder.record.exists():
        try:
            with Log.open(folder.record) as log:
                log.record()
        except StoreFault as fault:
            if not _is_damaged(fault):
                raise  # another version's or another program's: never moved
            aside = f"{set_aside(folder.record, options.now())}"
    target = _backup(folder, options, "before-import")
    if aside and not folder.keeping.exists():
        return aside
    write_bundle(target, folder.keeping, folder.record, options.now())
    return f"{target} and {aside}" if aside else str(target)


def _is_damaged(fault: StoreFault) -> bool:
    return any(sign in str(fault) for sign in ("damaged", "not a record of rinseback's", "can't be read"))


def _backup(folder: Folder, options: Options, name: str) -> Path:
    """A name that no file there has yet."""
    first = folder.path / "backups" / f"{name}-{options.now():%Y-%m-%d-%H%M%S}.zip"
    others = (first.with_stem(f"{first.stem}-{number}") for number in count(2))
    return next(path for path in chain((first,), others) if not path.exists())


def _in_words(held: Held) -> str:
    record = "no record" if held.events is None else f"a record of {held.events} event{'s' * (held.events != 1)}"
    return f"{'keeping.toml' if held.keeping else 'no keeping.toml'} and {record}"


def _tell(options: Options, path: Path, held: Held, text: str) -> None:
    print(json.dumps({"file": str(path), "keeping": held.keeping, "events": held.events}) if options.json else text)
