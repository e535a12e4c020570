"""Breadth-first over every folded state that can be reached, to the last one: equal states are merged.

Real readings go through the real answers and the real fold, at one moment of time. A clock is not begun, running or
over; that it runs out is an act of its own, for each clock by itself, so that every interleaving is walked. What a
question of the tool's gets for an answer (yes, no, none) branches too. Undo isn't walked, since it goes by the history
and not by the state; the random runs beside this have it.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field, replace
from datetime import UTC, datetime, timedelta
from typing import Any, TypeAlias

from ledger_of_truth import Truth, after, makes_gas
from tool import FACTS, QUESTIONS

from assistant.answer import answer_to
from assistant.contract import Answer, Reading, Slots, World
from assistant.core.household import Household
from assistant.core.record.events import Away, Event, Recorded, StepDone
from assistant.core.record.fold import fold
from assistant.core.record.state import Opening, Round, State
from assistant.core.round.gate import may_go_back
from assistant.core.round.rounds import airing_left_s, hold_left_s, is_open

NOW = datetime(2026, 5, 1, 8, tzinfo=UTC)
PAST = NOW - timedelta(days=2)
"""A clock that began then is over."""

Truths: TypeAlias = Mapping[str, Truth]
Act: TypeAlias = Callable[["Walk", "Place"], Iterator["Place"]]


@dataclass(frozen=True)
class Place:
    """One state, with the truth about each enclosure and how it was come to."""

    state: State
    truths: Truths
    way: tuple[str, ...] = ()


@dataclass
class Walk:
    """A walk and what it found."""

    household: Household
    acts: Mapping[str, Act]
    states: int = 0
    transitions: int = 0
    into_ready: int = 0
    faults: list[str] = field(default_factory=list)
    most_faults: int = 1

    @property
    def names(self) -> tuple[str, ...]:
        return tuple(home.name for home in self.household.enclosures)

    def to_the_end(self) -> Walk:
        """Walks until no state is new, or until a fault is found."""
        start = Place(State(), dict.fromkeys(self.names, Truth()))
        seen = {key_of(start)}
        waiting = deque([start])
        while waiting and len(self.faults) < self.most_faults:
            place = waiting.popleft()
            for name, act in self.acts.items():
                for new in act(self, place):
                    self.transitions += 1
                    new = replace(new, state=tidied(new.state), way=(*place.way, name))
                    self._look(place, new)
                    key = key_of(new)
                    if key not in seen:
                        seen.add(key)
                        waiting.append(new)
        self.states = len(seen)
        return self

    def _look(self, before: Place, new: Place) -> None:
        for name in self.names:
            ready = may_go_back(new.state.rounds.get(name), NOW).ready
            if ready and not may_go_back(before.state.rounds.get(name), NOW).ready:
                self.into_ready += 1
            if ready and not new.truths[name].may_go_back:
                self.faults.append(f"{name} is called ready: {new.truths[name]} by way of {new.way}")

    def said(self, place: Place, intent: str, **slots: Any) -> Iterator[Place]:
        """Where a reading leads: taken, and where it asks, answered "yes" and "no" as well."""
        yield from self._answered(place, Reading("", intent, Slots(**slots), confidence=1.0))

    def _answered(self, place: Place, reading: Reading, deep: int = 0) -> Iterator[Place]:
        answer = answer_to(reading, self._world(place))
        new = self._with(place, answer.events)
        yield new
        pending = answer.pending
        if pending is None or deep > 1:
            return
        for said in (pending.on_yes, pending.on_no):
            if isinstance(said, Answer):
                yield self._with(new, said.events)
            elif isinstance(said, Reading):
                yield from self._answered(new, said, deep + 1)

    def _world(self, place: Place) -> World:
        return World(NOW, self.household, FACTS, QUESTIONS, lambda _, __: Reading("", None), place.state)

    def _with(self, place: Place, events: tuple[Event, ...]) -> Place:
        for event in events:
            place = self.happened(place, event)
        return place

    def happened(self, place: Place, event: Event) -> Place:
        # Away for so long that it reaches over any wet time, whether that began then or now.
        at = NOW + timedelta(seconds=1) if isinstance(event, Away) else NOW
        state = fold(place.state, Recorded(at, "", event))
        about = getattr(event, "enclosure", None)
        whose = self.names if isinstance(event, Away) else (about,) if about else ()
        for name in whose:
            if (
                isinstance(event, StepDone)
                and event.step == "apply"
                and makes_gas(place.truths[name], event.agent or "")
            ):
                self.faults.append(f"{name}: {event.agent} onto {set(place.truths[name].on)} by way of {place.way}")
        truths = {n: after(t, event) if n in whose else t for n, t in place.truths.items()}
        return replace(place, state=state, truths=truths)


# ---------------------------------------------------------------- clocks


def hold_ends(name: str) -> Act:
    """The wet time's clock runs out."""

    def act(walk: Walk, place: Place) -> Iterator[Place]:
        round_ = place.state.rounds.get(name)
        if round_ is None or not is_open(round_) or round_.hold is None or not hold_left_s(round_.hold, NOW):
            return
        truth = place.truths[name]
        over = replace(round_, hold=replace(round_.hold, began=PAST))
        yield _changed(place, over, replace(truth, clock="over" if truth.clock == "running" else truth.clock))

    return act


def airing_ends(name: str) -> Act:
    """The airing's clock runs out."""

    def act(walk: Walk, place: Place) -> Iterator[Place]:
        round_ = place.state.rounds.get(name)
        if round_ is None or not is_open(round_) or not airing_left_s(round_, NOW):
            return
        long_ago = {step: PAST if step in ("rinse", "dry") else at for step, at in round_.done.items()}
        openings = tuple(replace(opening, at=PAST) for opening in round_.openings)
        over = replace(round_, done=long_ago, openings=openings, first_dry=PAST if round_.first_dry else None)
        truth = place.truths[name]
        yield _changed(place, over, replace(truth, aired=truth.rinsed or not truth.touched))

    return act


def program_is_closed(walk: Walk, place: Place) -> Iterator[Place]:
    """Nobody watches for a while."""
    yield walk.happened(place, Away(NOW - timedelta(days=3)))


def _changed(place: Place, round_: Round, truth: Truth) -> Place:
    rounds = {**place.state.rounds, round_.enclosure: round_}
    state = replace(place.state, rounds=rounds)
    return replace(place, state=state, truths={**place.truths, round_.enclosure: truth})


# ---------------------------------------------------------------- equal states


def tidied(state: State) -> State:
    """Without what no later verdict depends on: who did what when, and windows opened at the same rate as before."""
    rounds = {name: _tidied(round_) for name, round_ in state.rounds.items()}
    return replace(state, rounds=rounds, turns=(), last_at=None)


def _tidied(round_: Round) -> Round:
    openings: list[Opening] = []
    for opening in round_.openings:
        if not openings or openings[-1].air_changes_per_hour != opening.air_changes_per_hour:
            openings.append(opening)
    done = {step: at if step in ("rinse", "dry") else NOW for step, at in sorted(round_.done.items())}
    hold = replace(round_.hold, wetted=None, seen_wet=None) if round_.hold is not None else None
    return replace(
        round_, started_at=NOW, openings=tuple(openings), done=done, hold=hold, paused_at=round_.paused_at and NOW
    )


def key_of(place: Place) -> tuple[Any, ...]:
    """Equal for equal states of the record and of the truth."""
    state = place.state
    rounds = tuple((name, *_key_of(round_)) for name, round_ in sorted(state.rounds.items()))
    surfaces = tuple((name, frozenset(touches)) for name, touches in sorted(state.surfaces.items()))
    return rounds, surfaces, state.unknown_mixes, tuple(sorted(place.truths.items(), key=lambda pair: pair[0]))


def _key_of(round_: Round) -> tuple[Any, ...]:
    kept = (round_.hold, round_.openings, round_.steps, round_.agent, round_.bottle, round_.basis, round_.hold_s)
    told = (round_.put_back, round_.first_dry, round_.touched, round_.smells, round_.paused_at is None)
    return (tuple(round_.done.items()), *kept, *told)
