"""The record read back: one entry an event, with what it was about and whether it was taken back; and a month by days.

Nothing is left out or mended here: what was undone stays, marked, for whoever reads the record has to see that.
How an entry is put into words is `say.wording.logged`.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from datetime import date, datetime
from typing import Literal, TypeAlias

from assistant.core.record.events import (
    AgentPoured,
    AgentsMet,
    AgentTouched,
    Away,
    BottleMixed,
    CleanOnly,
    ClocksParted,
    ClocksSettled,
    DriedEarly,
    Event,
    GasMade,
    HoldDoubted,
    ItemBegun,
    KeptWet,
    Paused,
    Recorded,
    Remarked,
    Resumed,
    RoundStarted,
    Sensed,
    StayedWet,
    StepDone,
    StepReopened,
    SurfaceDried,
    SurfaceRinsed,
    TubLeft,
    TubUsed,
    Voided,
    WindowsOpened,
)
from assistant.core.record.fold import fold_knowing
from assistant.core.record.state import State
from assistant.core.round.gate import Verdict, may_go_back
from assistant.core.round.jobs import chore_of

Done: TypeAlias = Literal["disinfected", "cleaned", "part", "spot clean", "water", "other"]

RANKS: tuple[Done, ...] = ("disinfected", "cleaned", "part", "spot clean", "water", "other")
"""The most thorough first: one day has one, however much was done on it."""

OF_CHORE: Mapping[str, Done] = {"spot clean": "spot clean", "deep clean": "cleaned", "water": "water"}
"""What a chore that was only told amounts to: never to a disinfection."""

OF_A_CLEAN = (
    RoundStarted,
    StayedWet,
    DriedEarly,
    StepReopened,
    Remarked,
    KeptWet,
    Sensed,
    Paused,
    Resumed,
    CleanOnly,
    SurfaceRinsed,
    SurfaceDried,
    WindowsOpened,
    ItemBegun,
    TubUsed,
    TubLeft,
)
"""What goes with a clean, and is no news of its own in a month; whatever isn't here, known or not, is."""

NOTES = (Away, ClocksParted, ClocksSettled, HoldDoubted)
"""What the tool noted for its own clocks; nobody did it."""


@dataclass(frozen=True, slots=True)
class Entry:
    """One event as the record has it."""

    at: datetime
    """When it was done: as told, where the telling came later."""
    told_at: datetime
    """When it was recorded."""
    turn: str
    event: Event
    enclosure: str = ""
    """Empty: it is about none."""
    bottle: str = ""
    agents: tuple[str, ...] = ()
    """Ids of the agents that the event itself names."""
    clean_with: str = ""
    """For a part of a clean: what it was last sprayed with, or is to be."""
    undone_at: datetime | None = None
    """When it was taken back; None: it stands."""
    lasts: bool = False
    """Taken back, but what it means for agents that must not meet stays."""
    done: Done | None = None
    """What it makes of its day in its enclosure; None: nothing."""

    @property
    def is_note(self) -> bool:
        """True for what the tool noted by itself."""
        return isinstance(self.event, NOTES)

    @property
    def all_agents(self) -> tuple[str, ...]:
        """Every agent it has to do with."""
        return tuple(dict.fromkeys((*self.agents, *((self.clean_with,) if self.clean_with else ()))))


def entries(record: Iterable[Recorded]) -> tuple[Entry, ...]:
    """The whole record, an entry an event, in the order it was told.

    record: oldest first, undone turns included.
    """
    record = tuple(record)
    undone = {entry.event.turn: entry.at for entry in record if isinstance(entry.event, Voided)}
    of_turn: dict[str, list[Recorded]] = {}
    for entry in record:
        of_turn.setdefault(entry.turn, []).append(entry)
    state, made = State(), []
    for recorded in record:
        before, state = state, fold_knowing(state, recorded, frozenset(undone))
        made.append(_entry(recorded, before, state, undone.get(recorded.turn), of_turn))
    return tuple(made)


def _entry(
    recorded: Recorded, before: State, after: State, undone_at: datetime | None, of_turn: Mapping[str, list[Recorded]]
) -> Entry:
    event = recorded.event
    about = event
    if isinstance(event, Voided):  # it is about whatever it takes back
        about = next((past.event for past in of_turn.get(event.turn, ())), event)
    enclosure = str(getattr(about, "enclosure", None) or "")
    round_ = after.rounds.get(enclosure) if enclosure else None
    return Entry(
        at=getattr(event, "done_at", None) or recorded.at,
        told_at=recorded.at,
        turn=recorded.turn,
        event=event,
        enclosure=enclosure,
        bottle=str(getattr(about, "bottle", None) or ""),
        agents=_agents(about),
        clean_with=round_.agent if round_ is not None else "",
        undone_at=undone_at,
        lasts=undone_at is not None and _lasts(event),
        done=_done(event, before, recorded.at) if undone_at is None else None,
    )


def _agents(event: Event) -> tuple[str, ...]:
    agents = tuple(getattr(event, "agents", ()))
    agent = getattr(event, "agent", None)
    return (*agents, agent) if agent else agents


def _lasts(event: Event) -> bool:
    """As in `fold`: an agent that was somewhere was there, whatever is taken back."""
    if isinstance(event, StepDone):
        return event.step == "apply" and event.agent is not None
    if isinstance(event, KeptWet):
        return event.agent is not None
    return isinstance(event, AgentTouched | GasMade | BottleMixed | AgentPoured | AgentsMet)


def _done(event: Event, before: State, at: datetime) -> Done | None:
    enclosure = getattr(event, "enclosure", None)
    if not enclosure or isinstance(event, NOTES):
        return None
    if isinstance(event, StepDone):
        verdict = may_go_back(before.rounds.get(enclosure), at)
        if event.step != "return" or not verdict.ready:
            return "part"
        return _amounts_to(verdict, before.rounds[enclosure].job)
    if isinstance(event, OF_A_CLEAN):
        return "part"
    return OF_CHORE.get(str(getattr(event, "chore", "")), "other")


def _amounts_to(verdict: Verdict, job: str) -> Done:
    """A spot that was disinfected makes no disinfected enclosure; what counts for no chore was a part of one."""
    if chore_of(job) == "spot clean":
        return "spot clean"
    if chore_of(job) is None:
        return "part"
    return "cleaned" if verdict.claim == "cleaned_only" else "disinfected"


# ---------------------------------------------------------------- a part of it


@dataclass(frozen=True, slots=True)
class Wanted:
    """Which entries are wanted; what is None or empty narrows nothing."""

    enclosure: str | None = None
    agent: str | None = None
    """An agent's id."""
    first: date | None = None
    last: date | None = None
    """That day included."""
    notes: bool = False
    """With what the tool noted for its own clocks."""


def chosen(all_of: Iterable[Entry], wanted: Wanted, local: Callable[[datetime], datetime]) -> tuple[Entry, ...]:
    """The entries wanted, by when they were done, the oldest first.

    local: a time in the keeper's zone, by which days are counted.
    """

    def fits(entry: Entry) -> bool:
        day = local(entry.at).date()
        return (
            (wanted.notes or not entry.is_note)
            and (wanted.enclosure is None or entry.enclosure == wanted.enclosure)
            and (wanted.agent is None or wanted.agent in entry.all_agents)
            and (wanted.first is None or wanted.first <= day)
            and (wanted.last is None or day <= wanted.last)
        )

    return tuple(sorted((entry for entry in all_of if fits(entry)), key=lambda entry: entry.at))


def by_day(
    all_of: Iterable[Entry], local: Callable[[datetime], datetime]
) -> Mapping[str, Mapping[date, frozenset[Done]]]:
    """What was done in each enclosure on each day, without what was taken back."""
    found: dict[str, dict[date, frozenset[Done]]] = {}
    for entry in all_of:
        if entry.done is not None:
            days = found.setdefault(entry.enclosure, {})
            day = local(entry.at).date()
            days[day] = days.get(day, frozenset()) | {entry.done}
    return found
