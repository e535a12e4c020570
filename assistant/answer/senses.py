"""What the keeper's nose and hand found, whatever the clocks say: smell, wet, and that they are gone."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from assistant.answer.claimed import done
from assistant.answer.on_record import Ledger, told_of
from assistant.answer.which import which_rounds
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.record.events import BackTooSoon
from assistant.core.record.state import Round
from assistant.core.round.gate import may_go_back
from assistant.core.round.rounds import airing_left_s, elapsed_s, is_open

JUST_BACK = timedelta(hours=12)
"""A smell told of within this time after the animal went back is taken to be of that clean. Chosen, no source."""


def still_smells(reading: Reading, world: World) -> Answer:
    """Smell or a wet patch re-opens airing or drying; that they are gone is taken only from the keeper."""
    names = which_rounds(reading, world, lambda round_: _may_be_told(round_, reading))
    if isinstance(names, Answer):
        return names
    rounds = [world.state.rounds.get(name) for name in names]
    if not any(is_open(round_) for round_ in rounds):
        return _after_the_end(names, reading, world)
    open_ones = tuple(name for name, round_ in zip(names, rounds, strict=True) if is_open(round_))
    return _sensed(open_ones, reading, world)


def _may_be_told(round_: Round, reading: Reading) -> bool:
    """Where a smell, a patch, or that it is gone can only be meant, when several cleans are open."""
    slots = reading.slots
    if slots.smell is False:
        return round_.smells
    return "rinse" in round_.done or "dry" in round_.done


def _sensed(names: tuple[str, ...], reading: Reading, world: World) -> Answer:
    ledger = Ledger(world.state, world, wiped=False)
    ledger.note(*told_of(names, reading))
    trouble = _dried(names, reading, ledger)
    if trouble is not None:
        return replace(trouble, events=tuple(ledger.events))
    name = names[0]
    round_ = ledger.state.rounds[name]
    verdict = may_go_back(round_, world.now)
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "the_round.sensed",
        details={
            "enclosure": world.household.enclosure(name),
            "names": names,
            "smell": reading.slots.smell,
            "wet": reading.slots.wet,
            "verdict": verdict,
            "left_s": airing_left_s(round_, world.now),
            "now": world.now,
        },
        values={
            "smell": reading.slots.smell,
            "wet": reading.slots.wet,
            "recorded": bool(ledger.events),
            "enclosure": name,
            "enclosures": names,
            "ready": verdict.ready,
            "blocked_by": verdict.blocked_by,
        },
        events=tuple(ledger.events),
    )


def _dried(names: tuple[str, ...], reading: Reading, ledger: Ledger) -> Answer | None:
    """That it is dry now is the step of drying; gives what stands against it."""
    if reading.slots.wet is not False:
        return None
    waiting = tuple(name for name in names if "dry" not in ledger.state.rounds[name].done)
    if not waiting:
        return None
    slots = replace(reading.slots, enclosures=waiting, every_enclosure=False, steps=("dry",), smell=None, wet=None)
    answer = done(replace(reading, intent="done", slots=slots), replace(ledger.world, state=ledger.state))
    ledger.note(*answer.events)
    if answer.outcome is Outcome.ANSWER and answer.values.get("recorded"):
        return None
    values = {**answer.values, "smell": reading.slots.smell, "wet": reading.slots.wet}
    return replace(answer, intent=reading.intent, values=values)


def _after_the_end(names: tuple[str, ...], reading: Reading, world: World) -> Answer:
    """No clean is open. Just put back, the animal comes out again; else only what to do can be said."""
    bad = reading.slots.smell or reading.slots.wet
    name = names[0] if names else _just_back(world) if bad else None
    round_ = world.state.rounds.get(name) if name is not None else None
    fresh = bool(bad) and round_ is not None and _is_just_back(round_, world)
    ledger = Ledger(world.state, world, wiped=False)
    if fresh and name is not None:
        ledger.note(BackTooSoon(name), *told_of((name,), reading))
    verdict = may_go_back(ledger.state.rounds.get(name) if name else None, world.now)
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "the_round.smells_inside" if fresh else "the_round.sensed_no_round",
        details={"enclosure": world.household.enclosure(name), "smell": reading.slots.smell, "bad": bad},
        values={
            "smell": reading.slots.smell,
            "wet": reading.slots.wet,
            "recorded": fresh,
            "enclosure": name,
            "enclosures": (name,) if name else (),
            "ready": verdict.ready,
            "blocked_by": verdict.blocked_by,
        },
        events=tuple(ledger.events),
    )


def _is_just_back(round_: Round, world: World) -> bool:
    back = round_.done.get("return")
    return back is not None and elapsed_s(back, world.now) <= JUST_BACK.total_seconds()


def _just_back(world: World) -> str | None:
    """The only enclosure whose animal went back just now; None: none, or it could be several."""
    names = [round_.enclosure for round_ in world.state.rounds.values() if _is_just_back(round_, world)]
    return names[0] if len(names) == 1 else None
