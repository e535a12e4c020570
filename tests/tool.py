"""The tool without ears: whole turns from readings, with a hand-set clock and the record kept in a list."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from datetime import UTC, datetime, timedelta

from assistant.contract import Heard, Question, Reading, Reply, Slots, Talk, Turn, World
from assistant.core.facts import Facts
from assistant.core.household import Household
from assistant.core.record.events import ClocksParted, Event, Recorded, Voided
from assistant.core.record.fold import fold, fold_all
from assistant.core.record.state import State
from assistant.store.packaged import packaged_facts, read_questions
from assistant.turn import speak_up, take_turn

FACTS: Facts = packaged_facts()
QUESTIONS: Mapping[str, Question] = read_questions()
SILENCE = Reading("", None)


@dataclass
class Tool:
    """One sitting."""

    household: Household
    now: datetime = datetime(2026, 5, 1, 8, tzinfo=UTC)
    record: list[Recorded] = field(default_factory=list)
    state: State = field(default_factory=State)
    talk: Talk = field(default_factory=Talk)
    ahead: timedelta = timedelta()
    """By how much the wall's clock, which `now` is, is ahead of the true time."""
    slept: timedelta = timedelta()
    """By how much the computer's count of seconds is behind the true time."""

    def world(self, reading: Reading = SILENCE, away: datetime | None = None) -> World:
        return World(self.now, self.household, FACTS, QUESTIONS, lambda _, __: reading, self.state, self.talk, away)

    def say(self, intent: str, away: datetime | None = None, **slots: object) -> Reply:
        """One turn, from the question's name and its slots."""
        return self.hear(Reading("", intent, Slots(**slots), confidence=1.0), away)  # type: ignore[arg-type]

    def hear(self, reading: Reading, away: datetime | None = None) -> Reply:
        """One turn, from a whole reading."""
        return self._keep(take_turn(Heard(""), self.world(reading, away)))

    def after(self, **span: float) -> str:
        """Lets time pass; gives what the tool says by itself."""
        self.now += timedelta(**span)
        turn = speak_up(self.world())
        return self._keep(turn).say if turn is not None else ""

    def clock_set(self, **span: float) -> str:
        """Sets the wall's clock while a shell watches; gives what the tool says of it by itself."""
        ahead = timedelta(**span)
        self.now, self.ahead = self.now + ahead, self.ahead + ahead
        return self._clocks_parted(ahead)

    def sleep(self, **span: float) -> str:
        """Lets time pass while the computer sleeps and its count of seconds stands still."""
        asleep = timedelta(**span)
        self.now, self.slept = self.now + asleep, self.slept + asleep
        return self._clocks_parted(asleep)

    def _clocks_parted(self, ahead: timedelta) -> str:
        offset = (self.ahead + self.slept).total_seconds()
        self._append((ClocksParted(ahead.total_seconds(), offset),))
        turn = speak_up(replace(self.world(), clocks_parted=True))
        return self._keep(turn).say if turn is not None else ""

    def closed_for(self, **span: float) -> datetime:
        """Lets time pass with no shell running; gives since when, for the next turn's `away`."""
        since = self.now
        self.now += timedelta(**span)
        self.talk = Talk()
        return since

    def _keep(self, turn: Turn) -> Reply:
        self._append(turn.events)
        self.talk = turn.talk
        return turn.reply

    def _append(self, events: tuple[Event, ...]) -> None:
        name = f"turn {len(self.record)}"
        entries = [Recorded(self.now, name, event) for event in events]
        self.record += entries
        if any(isinstance(event, Voided) for event in events):
            self.state = fold_all(self.record)
        else:
            for entry in entries:
                self.state = fold(self.state, entry)
