"""Unpacking an archive that somebody else made, so that nothing lands outside the folder it is meant for.

Taken are plain files and folders only. A path that leads out, a link, a device, or an archive that swells beyond all
measure is refused as a whole, before anything is put where the program would use it.
"""

from __future__ import annotations

import errno
import hashlib
import lzma
import shutil
import tarfile
import tempfile
import zipfile
import zlib
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path, PurePosixPath
from stat import S_IFMT, S_ISDIR, S_ISREG
from typing import IO

LARGEST = 20 << 30
"""Bytes unpacked."""
MOST_FILES = 10_000
SWELLS = 200
"""Unpacked size against packed; a speech model comes to about twice."""
PIECE = 1 << 20


@dataclass(eq=False)
class BadArchive(Exception):
    """An archive that isn't unpacked. One line: what is wrong, where, what to do."""

    what: str
    where: str
    fix: str = "fetch it again, from where you trust it"

    def __str__(self) -> str:
        return f"{self.what} ({self.where}); {self.fix}"


@dataclass(frozen=True)
class _Member:
    path: PurePosixPath
    size: int
    is_folder: bool
    opened: object
    """What the archive knows it by."""


def sha256(path: Path) -> str:
    """The checksum of a file, as 64 digits."""
    whole = hashlib.sha256()
    with path.open("rb") as opened:
        while piece := opened.read(PIECE):
            whole.update(piece)
    return whole.hexdigest()


@contextmanager
def unpacked(archive: Path, beside: Path) -> Iterator[Path]:
    """A folder with the archive's files, for as long as the block lasts; on the same disk as `beside`.

    Fails: BadArchive, with nothing left behind.
    """
    beside.mkdir(parents=True, exist_ok=True)
    with tempfile.TemporaryDirectory(prefix=".unpacking-", dir=beside, ignore_cleanup_errors=True) as name:
        place = Path(name)
        try:
            if zipfile.is_zipfile(archive):
                with zipfile.ZipFile(archive) as packed:
                    _take_zip(packed, place, archive)
            elif tarfile.is_tarfile(archive):
                with tarfile.open(archive) as tape:
                    _take_tar(tape, place, archive)
            else:
                what = "this is neither a zip nor a tar archive, or it is cut off"
                raise BadArchive(what, str(archive), "give the model's archive, or fetch it again")
        except (zipfile.BadZipFile, tarfile.TarError, EOFError, zlib.error, lzma.LZMAError, RuntimeError) as fault:
            raise BadArchive(f"the archive is broken: {fault or 'it breaks off'}", str(archive)) from fault
        except OSError as fault:
            if fault.errno != errno.ENOSPC:
                raise
            raise BadArchive("the disk is too full to unpack it", str(beside), "make room and call again") from fault
        except NotImplementedError as fault:
            raise BadArchive(f"the archive is packed in a way not known here: {fault}", str(archive)) from fault
        yield place


def _take_zip(packed: zipfile.ZipFile, place: Path, archive: Path) -> None:
    members = []
    for info in packed.infolist():
        kind = info.external_attr >> 16
        if S_IFMT(kind) and not (S_ISREG(kind) or S_ISDIR(kind)):
            raise BadArchive(f'it holds a link or a device, "{info.filename}"', str(archive))
        members.append(_Member(_inside(info.filename, archive), info.file_size, info.is_dir(), info))
    _check(members, archive)
    for member in members:
        assert isinstance(member.opened, zipfile.ZipInfo)
        if not member.is_folder:
            with packed.open(member.opened) as source:
                _write(source, place, member, archive)


def _take_tar(tape: tarfile.TarFile, place: Path, archive: Path) -> None:
    members = []
    for info in tape:
        if not (info.isreg() or info.isdir()):
            raise BadArchive(f'it holds a link or a device, "{info.name}"', str(archive))
        members.append(_Member(_inside(info.name, archive), info.size, info.isdir(), info))
        _check(members, archive)
    for member in members:
        assert isinstance(member.opened, tarfile.TarInfo)
        source = None if member.is_folder else tape.extractfile(member.opened)
        if source is not None:
            with source:
                _write(source, place, member, archive)


def _inside(name: str, archive: Path) -> PurePosixPath:
    plain = name.replace("\\", "/")
    path = PurePosixPath(plain)
    drive = len(plain) > 1 and plain[1] == ":"
    if path.is_absolute() or drive or ".." in path.parts or "\0" in name:
        raise BadArchive(f'it would write outside its folder, "{name[:60]}"', str(archive))
    return path


def _check(members: list[_Member], archive: Path) -> None:
    total = sum(member.size for member in members)
    if len(members) > MOST_FILES or total > LARGEST or total > SWELLS * max(archive.stat().st_size, 1 << 16):
        raise BadArchive(f"it swells to {total // 1_000_000} MB in {len(members)} files", str(archive))


def _write(source: IO[bytes], place: Path, member: _Member, archive: Path) -> None:
    """One file, by our own pen: no owner, no rights and no more bytes than were announced."""
    target = place.joinpath(*member.path.parts)
    target.parent.mkdir(parents=True, exist_ok=True)
    left = member.size
    with target.open("xb") as out:
        while piece := source.read(min(PIECE, left + 1)):
            left -= len(piece)
            if left < 0:
                raise BadArchive(f'"{member.path}" is longer than announced', str(archive))
            out.write(piece)
    if left:
        raise BadArchive(f'"{member.path}" breaks off', str(archive))


def put_in_place(folder: Path, target: Path) -> None:
    """Move a folder to where it is used, in place of what stands there under the same name."""
    old = target.with_name(f".old-{target.name}")
    shutil.rmtree(old, ignore_errors=True)
    if target.exists():
        target.rename(old)
    folder.rename(target)
    shutil.rmtree(old, ignore_errors=True)
