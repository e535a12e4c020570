"""Fetching one file from an address that the keeper gives: the only connection that the program ever makes.

What has come is kept under another name until it is whole, so that a broken connection costs nothing: the next call
goes on where the last one ended, if the server still has the same file and can.
"""

from __future__ import annotations

import http.client
import json
import shutil
import urllib.error
import urllib.request
from collections.abc import Callable
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path
from typing import Any
from urllib.parse import unquote, urlsplit

PIECE = 1 << 16
TIMEOUT_S = 30
LARGEST = 8 << 30
"""Bytes; the largest speech models are a few gigabytes (from memory)."""

Progress = Callable[[int, int | None], None]
"""Told how many bytes are here, and how many there will be; None: the server doesn't say."""


@dataclass(eq=False)
class NotFetched(Exception):
    """Nothing, or not all of it, could be fetched. One line: what is wrong, where, what to do."""

    what: str
    where: str
    fix: str

    def __str__(self) -> str:
        return f"{self.what} ({self.where}); {self.fix}"


def is_address(text: str) -> bool:
    """Whether it names something on a network, not a file."""
    return "://" in text


def fetch(address: str, folder: Path, progress: Progress = lambda here, of: None) -> Path:
    """The file at that address, in the folder.

    address: http or https.
    Fails: NotFetched; what has come by then stays for the next try.
    """
    parts = urlsplit(address)
    if parts.scheme not in ("http", "https") or not parts.hostname:
        raise NotFetched("this is no web address", address, "give one that begins with https:// or http://")
    name = Path(unquote(parts.path)).name or "model"
    folder.mkdir(parents=True, exist_ok=True)
    part = _Part(folder / f"{name}.part", folder / f"{name}.part.json", address)
    try:
        _receive(part, progress)
        return part.path.replace(folder / name)
    except urllib.error.HTTPError as fault:
        with fault:
            raise NotFetched(f"the server answers {fault.code} {fault.reason}", address, "check the address") from None
    except (urllib.error.URLError, http.client.HTTPException, TimeoutError, ConnectionError) as fault:
        why = getattr(fault, "reason", None) or fault or "it broke off"
        raise NotFetched(f"the connection failed: {why}", address, "call again; it goes on from here") from fault
    except OSError as fault:
        raise NotFetched(
            f"it can't be written: {fault.strerror}", str(folder), "see whether the disk is full"
        ) from fault
    finally:
        if not part.path.exists():
            part.about.unlink(missing_ok=True)


@dataclass(frozen=True)
class _Part:
    """What has come so far, and of which version of which file."""

    path: Path
    about: Path
    address: str

    def begun(self) -> tuple[int, str]:
        """Bytes here, and the server's mark of the version they are of; (0, "") where it can't be gone on with."""
        try:
            about: Any = json.loads(self.about.read_text("utf-8"))
            if about["address"] == self.address and about["version"]:
                return self.path.stat().st_size, str(about["version"])
        except (OSError, ValueError, KeyError, TypeError):
            pass
        return 0, ""

    def note(self, version: str) -> None:
        self.about.write_text(json.dumps({"address": self.address, "version": version}), "utf-8")


def _receive(part: _Part, progress: Progress) -> None:
    here, version = part.begun()
    asked = urllib.request.Request(part.address, headers={"User-Agent": "rinseback"})
    if here:
        asked.add_header("Range", f"bytes={here}-")
        asked.add_header("If-Range", version)
    try:
        answer = urllib.request.urlopen(asked, timeout=TIMEOUT_S)
    except urllib.error.HTTPError as fault:
        if fault.code != 416 or not here:
            raise
        with fault:  # all of it had come, or the file is another one now: from the start
            part.path.unlink(missing_ok=True)
            part.about.unlink(missing_ok=True)
        _receive(part, progress)
        return
    with answer:
        here = here if answer.status == 206 else 0
        whole = _whole_length(answer.headers, here)
        if whole is not None:
            _room_for(whole - here, part)
        # Only a strong mark tells one version from another to the byte.
        mark = answer.headers.get("ETag", "")
        part.note("" if mark.startswith("W/") else mark or answer.headers.get("Last-Modified", ""))
        with part.path.open("ab" if here else "wb") as out:
            while piece := answer.read(PIECE):
                out.write(piece)
                here += len(piece)
                if here > LARGEST:
                    raise NotFetched("it is larger than any speech model", part.address, "check the address")
                progress(here, whole)
    if whole is not None and here != whole:
        raise http.client.IncompleteRead(b"", whole - here)


def _whole_length(headers: Any, here: int) -> int | None:
    with suppress(TypeError, ValueError):
        return here + int(headers["Content-Length"])
    return None


def _room_for(more: int, part: _Part) -> None:
    free = shutil.disk_usage(part.path.parent).free
    # The archive and what comes out of it lie side by side for a while.
    if 3 * more > free:
        needed = f"{3 * more // 1_000_000} MB needed, {free // 1_000_000} free"
        raise NotFetched(f"the disk is too full: {needed}", str(part.path.parent), "make room and call again")
