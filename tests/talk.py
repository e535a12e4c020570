"""The tool as it is talked to: whole turns from text, on the demo household, with a hand-set clock."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import datetime
from functools import cache
from importlib.resources import as_file, files

from tool import FACTS, QUESTIONS, Tool

from assistant.contract import Heard, Reply, World
from assistant.core.household import Household
from assistant.store.english import usage
from assistant.store.keeping import read_household
from assistant.store.packaged import packaged_weights
from assistant.turn import take_turn
from assistant.understand.reader import Reader


@cache
def demo() -> Household:
    with as_file(files("assistant.demo") / "keeping.toml") as file:
        return read_household(file, FACTS)


@cache
def _reader() -> Reader:
    return Reader(demo(), FACTS, QUESTIONS, *packaged_weights(), usage)


@dataclass
class Talk(Tool):
    """One sitting, in the keeper's words."""

    household: Household = field(default_factory=demo)

    def tell(self, text: str, away: datetime | None = None) -> Reply:
        """One typed turn."""
        world = World(self.now, self.household, FACTS, QUESTIONS, _reader(), self.state, self.talk, away)
        return self._keep(take_turn(Heard(text), world))

    def tells(self, *texts: str) -> Reply:
        """Several turns; gives the last reply."""
        return [self.tell(text) for text in texts][-1]
