"""One sitting: the household, the record and the talk, opened; every shell takes its turns here.

The order that keeps the record honest: read what another shell wrote, take the turn, record its events, and only then
give the reply out. If recording fails there is no reply.
"""

from __future__ import annotations

import threading
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager, suppress
from dataclasses import dataclass, field, replace
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Literal

from assistant.answer.due import still_waits
from assistant.contract import Heard, Question, Reads, Reply, Talk, Turn, World
from assistant.core.facts import Facts
from assistant.core.harms import ANSWERED_AT_ONCE
from assistant.core.household import Household
from assistant.core.record.state import State
from assistant.core.round.reminders import Reminder
from assistant.shells.clocks import ClockWatch
from assistant.shells.folder import Folder, TurnFault
from assistant.shells.out import complain
from assistant.store.english import usage
from assistant.store.keeping import read_household
from assistant.store.log import Log, Overtaken, StoreFault
from assistant.store.packaged import packaged_facts, packaged_weights, questions_at_hand
from assistant.turn import speak_up, take_turn

AWAY = timedelta(minutes=2)
"""No shell seen for longer than this: nobody was watched keeping anything wet."""

WATCH_EVERY = timedelta(seconds=30)
"""How often it is put on record that a shell runs: each is a write that waits for the disk."""

TRIES = 5
"""How often a turn is taken anew when another shell keeps recording in between."""


@dataclass
class Sitting:
    """Turns in one household. `talk` is what the conversation remembers; a new one begins without any."""

    log: Log
    household: Household
    facts: Facts
    questions: Mapping[str, Question]
    read: Reads
    talk: Talk = field(default_factory=Talk)
    clocks: ClockWatch | None = None
    """The watch on the two clocks, in a shell that runs on; None: in one that answers once."""
    _watched_at: datetime | None = field(default=None, init=False)

    def begin_anew(self) -> None:
        """Forgets the conversation, as a new start of the program does; what is recorded stays."""
        self.talk = Talk(told_until=self.log.last_seen())
        if self.clocks is not None:
            self.clocks.begin_anew()

    def warm(self) -> threading.Thread:
        """Answers an example of each question into the void, in a thread: what loads at its first use is loaded ahead.

        A first turn takes some 200 ms without, and 20 ms with it; a turn writes nothing by itself.
        """
        world = self._world(self.log.state().last_at or datetime(2000, 1, 1, tzinfo=UTC))
        examples = [question.example for question in self.questions.values()]

        def answer_all() -> None:
            for example in examples:
                take_turn(Heard(example, spoken=True), world)

        warming = threading.Thread(target=answer_all, daemon=True, name="warming")
        warming.start()
        return warming

    def cries(self) -> Callable[[Heard], bool]:
        """What tells a cry that wasn't meant for the tool; it may be asked from any thread."""
        from assistant.understand.harm.called_out import called_out

        world = World(datetime(2000, 1, 1, tzinfo=UTC), self.household, self.facts, self.questions, self.read)
        return lambda heard: called_out(heard, lambda text: self.read(Heard(text), world))

    def read_anew(self, keeping: Path) -> None:
        """Takes keeping.toml as it is now: what was added is known from the next turn on.

        Fails: KeepingFault; the household stays as it was.
        """
        household = read_household(keeping, self.facts)
        self.household, self.read = household, _reader(household, self.facts, self.questions)

    def interrupts(self, text: str, now: datetime) -> bool:
        """Whether a text is about harm, gas or how long is left, and so never the answer to a question of setup's.

        Agents that are told to have met are; "bleach and vinegar" may be a name, and "can they meet" waits.
        """
        reading = self.read(Heard(text), self._world(now))
        return reading.intent in ANSWERED_AT_ONCE or reading.slots.met is True

    def hear(self, heard: Heard, now: datetime) -> Reply:
        """One turn of the keeper's.

        Fails: StoreFault, TurnFault; with nothing recorded.
        """
        parted = False
        for _ in range(TRIES):
            try:
                parted = self._clocks_parted(now) or parted
                turn = _taken(heard, replace(self._world(now), clocks_parted=parted))
                return self._kept(turn, now)
            except Overtaken:
                continue
        raise StoreFault("another rinseback keeps recording in between; nothing was recorded; say it again")

    def speak_up(self, now: datetime) -> Reply | None:
        """What came due by itself since the last word; None: nothing."""
        try:
            parted = self._clocks_parted(now)
        except Overtaken:
            return None  # looked at again in a moment
        turn = speak_up(replace(self._world(now), clocks_parted=parted))
        if turn is None:
            return None
        self.talk = turn.talk
        return turn.reply

    def watch(self, now: datetime) -> None:
        """Notes that a shell is running, while nothing is said.

        After a gap it stays silent until the keeper's next turn has put the gap on record.
        """
        seen = self._watched_at
        if (seen is None or abs(now - seen) >= WATCH_EVERY) and not self._away(now):
            self.log.touch(now)
            self._watched_at = now

    def state(self) -> State:
        """The present, for clocks on the screen."""
        return self.log.state()

    def waiting(self, now: datetime) -> tuple[Reminder, ...]:
        """What came due and still waits for the keeper, for the screen."""
        return still_waits(self._world(now))

    def _world(self, now: datetime) -> World:
        return World(
            now=now,
            household=self.household,
            facts=self.facts,
            questions=self.questions,
            read=self.read,
            state=self.log.state(),
            talk=self.talk,
            away_since=self.log.last_seen() if self._away(now) else None,
        )

    def _clocks_parted(self, now: datetime) -> bool:
        """Records that the wall's clock and the computer's own count have parted; True when they have.

        It is a turn of its own, of the tool's: no "undo" takes it back.
        """
        parting = self.clocks.look(now) if self.clocks is not None else None
        if parting is None or self.clocks is None:
            return False
        self.log.state()
        self.log.append((parting,), self.log.next_turn(), now)
        self.clocks.told(parting)
        return True

    def _away(self, now: datetime) -> bool:
        seen = self.log.last_seen()
        return seen is not None and now - seen > AWAY

    def _kept(self, turn: Turn, now: datetime) -> Reply:
        self.log.append(turn.events, self.log.next_turn(), now)
        with suppress(StoreFault):  # what counts is on record; seen less, a wet time is only doubted sooner
            self.log.touch(now)
        self.talk = turn.talk
        return turn.reply


@contextmanager
def open_sitting(folder: Folder, record: Path | Literal[":memory:"] | None = None) -> Iterator[Sitting]:
    """A sitting on that folder's household and record.

    record: another place for the record; ":memory:" keeps it nowhere.
    Fails: KeepingFault, StoreFault.
    """
    facts = packaged_facts()
    household = read_household(folder.keeping, facts)
    questions = questions_at_hand()
    with Log.open(record or folder.record, tell=complain) as log:
        sitting = Sitting(log, household, facts, questions, _reader(household, facts, questions))
        sitting.begin_anew()
        yield sitting


def _taken(heard: Heard, world: World) -> Turn:
    """A turn; a fault of ours in it is one line, since timers and first aid run on."""
    try:
        return take_turn(heard, world)
    except Exception as fault:
        what = f"that turn failed, by a fault of the program ({type(fault).__name__}: {fault})"
        raise TurnFault(f"{what}; nothing was recorded, the clocks run on; say it another way") from fault


def _reader(household: Household, facts: Facts, questions: Mapping[str, Question]) -> Reads:
    """Understanding, over this household; by itself, so that a test can put a table in its place."""
    from assistant.understand.reader import Reader

    return Reader(household, facts, questions, *packaged_weights(), usage)
