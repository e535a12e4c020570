"""Nothing is fetched and nobody is called: a whole sitting runs where no connection can be made."""

from __future__ import annotations

import socket
from pathlib import Path

import pytest
from sitting import play

CONVERSATIONS = Path(__file__).parents[1] / "conversations"


def test_a_whole_sitting_opens_no_connection(monkeypatch: pytest.MonkeyPatch) -> None:
    def refuse(*_: object) -> None:
        raise AssertionError("a connection was tried")

    monkeypatch.setattr(socket.socket, "connect", refuse)
    monkeypatch.setattr(socket, "getaddrinfo", refuse)
    for name in ("first_round", "mixing", "eye"):
        assert play(CONVERSATIONS / f"{name}.txt")
