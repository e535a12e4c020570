"""What comes due by itself is said between turns: on top of neither the keeper nor a reply."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime
from types import SimpleNamespace
from typing import Any

import pytest
from prompt_toolkit.history import InMemoryHistory

from assistant.contract import Outcome, Reply
from assistant.shells.chat import Chat
from assistant.shells.live import Lines

NINE = datetime(2026, 1, 5, 9, tzinfo=UTC)
DUE = Reply("", None, Outcome.ANSWER, say="River tank: rinse now.", show="River tank: rinse now.")


class Due:
    """A sitting in which something is due."""

    def speak_up(self, now: datetime) -> Reply:
        return DUE

    def watch(self, now: datetime) -> None:
        pass


@dataclass
class Spoken:
    """A mouth that says nothing aloud."""

    speaking: bool = False
    said: str = ""

    def answer(self, reply: Reply) -> None:
        self.said = reply.say


def told(shell: str, *, keeper: bool, reply: bool) -> str:
    """What is said in one tick of that shell."""
    mouth = Spoken(speaking=reply)
    ears: Any = SimpleNamespace(busy=keeper, replied=lambda reply: None)
    sitting: Any = Due()
    options: Any = SimpleNamespace(json=True)
    if shell == "lines":
        lines = Lines(sitting, options, lambda: NINE, mouth)  # type: ignore[arg-type]
        lines._tick(ears)
    else:
        voiced: Any = SimpleNamespace(ears=ears, mouth=mouth, answer=mouth.answer)
        Chat(sitting, lambda: NINE, InMemoryHistory(), mouth, voiced).tick()  # type: ignore[arg-type]
    return mouth.said


@pytest.mark.parametrize("shell", ["lines", "chat"])
def test_it_waits_for_the_keeper_and_for_a_reply(shell: str) -> None:
    assert told(shell, keeper=True, reply=False) == ""
    assert told(shell, keeper=False, reply=True) == ""
    assert told(shell, keeper=False, reply=False) == DUE.say
