"""What a turn came to: the answer, its words, the reply; and what an answer is worked out from."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from enum import StrEnum
from typing import Any, Protocol

from assistant.contract.understood import Heard, Reading
from assistant.core.facts import Facts, Source
from assistant.core.harms import HarmTold
from assistant.core.household import Household
from assistant.core.record.events import Event
from assistant.core.record.state import State


class Outcome(StrEnum):
    """How a turn came out."""

    ANSWER = "answer"
    ASK = "ask"
    CONFIRM = "confirm"
    REFUSE = "refuse"
    UNSURE = "unsure"


PENDING_LASTS = timedelta(minutes=5)
"""How long a question of the tool's waits for its answer."""


@dataclass(frozen=True)
class Pending:
    """A question of the tool's that the keeper's next turn may answer."""

    reading: Reading
    """What was being answered; a follow-up adds to its slots and keeps its intent."""
    asked_at: datetime
    missing: tuple[str, ...] = ()
    """Kinds of slot that would answer it; empty for a yes-or-no question."""
    on_yes: Answer | Reading | None = None
    """What "yes" gives: a ready answer and the events it records, or a reading to be answered as things stand then."""
    on_no: Answer | Reading | None = None
    """What "no" gives, in the same way; None: nothing is recorded, and that is said."""
    turns_since: int = 0
    unasked: bool = False
    """It came with a reminder; the next one that asks something takes its place."""

    def waits(self, now: datetime) -> bool:
        """False once it has lapsed."""
        return now - self.asked_at <= PENDING_LASTS

    @property
    def asks_whether_wet(self) -> bool:
        """Whether it waits to be told if a surface stayed wet, perhaps with a step that was claimed beside it."""
        return isinstance(self.on_yes, Reading) and self.on_yes.slots.stayed_wet is not None


@dataclass(frozen=True)
class Answer:
    """What an answering function found, before it is put into words."""

    intent: str | None
    outcome: Outcome
    message: str
    """Name of its wording, "family.name", in `say.wording`."""
    details: Mapping[str, Any] = field(default_factory=dict)
    """What the wording needs."""
    values: Mapping[str, Any] = field(default_factory=dict)
    """The reply's values, unrounded; amounts as Amount."""
    missing: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    """Ids of facts whose words are shown as safety lines."""
    sources: tuple[Source, ...] = ()
    events: tuple[Event, ...] = ()
    """What it records."""
    pending: Pending | None = None
    """What it waits for."""


@dataclass(frozen=True)
class Line:
    """One wording: what is spoken and what is shown."""

    say: str
    """At most 25 words, the number first, no symbol that a voice can't read."""
    show: str = ""
    """May have lines; empty: the same as `say`."""


@dataclass(frozen=True)
class Reply:
    """One turn's reply, as in the contract of DEVELOPERS.md."""

    question: str
    intent: str | None
    outcome: Outcome
    say: str
    show: str
    values: Mapping[str, Any] = field(default_factory=dict)
    missing: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    sources: tuple[Source, ...] = ()
    reminders: tuple[str, ...] = ()
    confidence: float = 0.0


# ---------------------------------------------------------------- the world a turn is taken in


@dataclass(frozen=True, slots=True)
class SlotWanted:
    """A slot that a question can't do without."""

    kind: str
    ask: str
    """What to say when it is missing."""


@dataclass(frozen=True)
class Question:
    """One file of intents/: how it is asked and who answers it."""

    name: str
    family: str
    """The module of `answer` that holds its handler."""
    about: str
    """One line for help and the README's table."""
    example: str
    phrasings: Sequence[str]
    """With {slot} where a name or number stands."""
    slots: tuple[SlotWanted, ...] = ()
    records: bool = True
    """Its answer may record something, so a changed word never asks it again by itself."""
    told: bool = False
    """It is told, not asked: a text that asks, or speaks of what isn't so yet, never comes in by likeness."""


@dataclass(frozen=True)
class Talk:
    """What the talk remembers between turns of one sitting, never recorded. `germ`: an illness told, and when."""

    pending: Pending | None = None
    germ: tuple[str, datetime] | None = None
    harms: tuple[HarmTold, ...] = ()
    last: Reply | None = None
    prompt: Reply | None = None
    """What the tool said by itself since then."""
    last_reading: Reading | None = None
    takes_back: bool = False
    """The last turn recorded a step from a hearing, so a bare "no" takes it back."""
    told_until: datetime | None = None
    """Reminders up to then have been given."""

    @property
    def just_answered(self) -> Reading | None:
        """The last question that was read, where the last reply is of it; None: something else came between."""
        before, last = self.last_reading, self.last
        if before is None or before.intent is None or last is None or last.intent != before.intent:
            return None
        return before


class Reads(Protocol):
    """Whatever turns what was heard into a reading."""

    def __call__(self, heard: Heard, world: World) -> Reading: ...


@dataclass(frozen=True)
class World:
    """Everything a turn is answered from."""

    now: datetime
    """Aware."""
    household: Household
    facts: Facts
    questions: Mapping[str, Question]
    read: Reads
    state: State = field(default_factory=State)
    talk: Talk = field(default_factory=Talk)
    away_since: datetime | None = None
    """No shell ran from then until now; None: one did."""
    clocks_parted: bool = False
    """The wall's clock and the computer's own count were found to have parted since the last word."""
    written: Household | None = None
    """keeping.toml as it is written, where `household` has what was changed by word of mouth laid over it."""

    @property
    def waiting(self) -> Pending | None:
        """The tool's question that still waits; None: none, or it has lapsed."""
        pending = self.talk.pending
        return pending if pending is not None and pending.waits(self.now) else None


Handler = Callable[[Reading, World], Answer]


@dataclass(frozen=True)
class Turn:
    """What one turn gives: the reply, what to record, and what to remember."""

    reply: Reply
    events: tuple[Event, ...]
    talk: Talk
