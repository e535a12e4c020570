"""Fetching a file, from a server on this computer."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from web import Served, web_server

from assistant.store.fetching import NotFetched, fetch

CONTENT = bytes(range(256)) * 2000


@pytest.fixture
def served() -> Iterator[Served]:
    with web_server(Served(CONTENT)) as served:
        yield served


def test_it_comes_whole_and_tells_how_far_it_is(served: Served, tmp_path: Path) -> None:
    told: list[tuple[int, int | None]] = []
    got = fetch(served.address, tmp_path / "new", lambda here, of: told.append((here, of)))
    assert got.name == "packed.zip"
    assert got.read_bytes() == CONTENT
    assert told[-1] == (len(CONTENT), len(CONTENT))
    assert [here for here, _ in told] == sorted(here for here, _ in told)
    assert [path.name for path in got.parent.iterdir()] == ["packed.zip"]


def test_a_connection_that_breaks_off_is_gone_on_with(served: Served, tmp_path: Path) -> None:
    served.breaks_after = 200_000
    with pytest.raises(NotFetched, match="goes on from here"):
        fetch(served.address, tmp_path)
    assert not (tmp_path / "packed.zip").exists(), "half a file is never taken for the whole"
    served.breaks_after = None
    assert fetch(served.address, tmp_path).read_bytes() == CONTENT
    assert served.asked == [None, "bytes=200000-"]


def test_what_changed_meanwhile_is_fetched_from_the_start(served: Served, tmp_path: Path) -> None:
    served.breaks_after = 200_000
    with pytest.raises(NotFetched):
        fetch(served.address, tmp_path)
    served.breaks_after, served.version, served.content = None, '"two"', CONTENT[::-1]
    assert fetch(served.address, tmp_path).read_bytes() == CONTENT[::-1]


def test_a_server_that_cant_go_on_gives_it_from_the_start(served: Served, tmp_path: Path) -> None:
    served.breaks_after = 200_000
    with pytest.raises(NotFetched):
        fetch(served.address, tmp_path)
    served.breaks_after, served.ranges = None, False
    assert fetch(served.address, tmp_path).read_bytes() == CONTENT


def test_more_here_than_there_begins_anew(served: Served, tmp_path: Path) -> None:
    served.breaks_after = 200_000
    with pytest.raises(NotFetched):
        fetch(served.address, tmp_path)
    served.breaks_after, served.content = None, CONTENT[:100]
    assert fetch(served.address, tmp_path).read_bytes() == CONTENT[:100]


def test_a_file_that_isnt_there_is_one_line(served: Served, tmp_path: Path) -> None:
    with pytest.raises(NotFetched, match="answers 404") as fault:
        fetch(served.address.replace("packed", "gone"), tmp_path)
    assert "\n" not in str(fault.value)
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("address", ["ftp://example.org/model.zip", "file:///etc/passwd", "https://", "model.zip"])
def test_only_web_addresses_are_fetched(address: str, tmp_path: Path) -> None:
    with pytest.raises(NotFetched, match="no web address"):
        fetch(address, tmp_path)


def test_nobody_at_that_address_is_one_line(tmp_path: Path) -> None:
    with web_server(Served(b"")) as gone:
        address = gone.address
    with pytest.raises(NotFetched, match="the connection failed"):
        fetch(address, tmp_path)
