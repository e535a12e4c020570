"""The round, one enclosure cleaned once: its questions in one place, and here the wet time and the return gate.

`start` is in `starting`, `next` and what is asked of an open clean in `under_way`, `done` in `claimed`.
"""

from __future__ import annotations

from dataclasses import replace

from assistant.answer.animal_first import what_comes_first
from assistant.answer.claimed import done as done_alone
from assistant.answer.due import wet_question
from assistant.answer.ending import clean_only, leave_off
from assistant.answer.kept_wet import dried_early, rewet
from assistant.answer.named import germ_unheard_of, nothing_on
from assistant.answer.on_record import Ledger, told_of
from assistant.answer.plan import (
    ask_agent,
    basis_of,
    supply_in,
    supply_of,
    too_weak,
    wet_time_of,
)
from assistant.answer.senses import still_smells
from assistant.answer.starting import start
from assistant.answer.tubs import into_the_tub
from assistant.answer.tubs_left import out_of_the_tub
from assistant.answer.under_way import next, status, time_left
from assistant.answer.which import open_rounds, which_rounds
from assistant.contract import Answer, Outcome, Pending, Reading, Slots, World
from assistant.core.record.events import Event, Remarked
from assistant.core.record.state import Round
from assistant.core.round.gate import Verdict, may_go_back
from assistant.core.round.jobs import as_kept_for
from assistant.core.round.rounds import hold_is_running, is_open

__all__ = [
    "clean_only",
    "done",
    "dried_early",
    "hold_time",
    "leave_off",
    "next",
    "return_check",
    "rewet",
    "start",
    "status",
    "still_smells",
    "time_left",
]

TUB_FACT = "workflow-tub-temperature"


def done(reading: Reading, world: World) -> Answer:
    """Records the steps that were claimed, and the tub that the animal went into or is back from."""
    return out_of_the_tub(into_the_tub(done_alone(reading, world), reading, world), reading, world)


def hold_time(reading: Reading, world: World) -> Answer:
    """How long it must stay wet, by label or published figure, with common practice beside it."""
    slots, unheard_of = reading.slots, germ_unheard_of(reading)
    if unheard_of is not None:
        return nothing_on(unheard_of, reading, verdict="unknown")
    name = slots.enclosures[0] if slots.enclosures else None
    round_ = _round_meant(name, world)
    supply = supply_in(reading, world)
    if supply is None and round_ is not None:
        supply = supply_of(round_.agent, round_.bottle, world)
    if supply is None:
        return ask_agent(reading, world)
    enclosure = world.household.enclosure(name or (round_.enclosure if round_ else None))
    organism = slots.organisms[0] if slots.organisms else (round_.organism if round_ else None)
    job = slots.clean_as or (round_.job if round_ is not None else "")
    wet = wet_time_of(supply, as_kept_for(enclosure, job), organism, world, slots.mixes)
    timed = "hold" in supply.agent.steps
    fails = wet.organism_verdict == "fails"
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "the_round.hold_time",
        details={
            "supply": supply,
            "wet": wet,
            "timed": timed,
            "organism": world.facts.organisms.get(organism) if organism else None,
        },
        values={
            "minutes": wet.minutes if timed and not fails else None,
            "agent": supply.agent.id,
            "basis": basis_of(wet, enclosure, world.facts),
            "verdict": wet.organism_verdict,
        },
        cautions=(*too_weak(wet, supply.agent), "caution-label-first"),
        sources=wet.sources,
    )


def _round_meant(name: str | None, world: World) -> Round | None:
    if name is not None:
        round_ = world.state.rounds.get(name)
        return round_ if is_open(round_) else None
    rounds = open_rounds(world)
    return rounds[0] if len(rounds) == 1 else None


def return_check(reading: Reading, world: World) -> Answer:
    """May the animal go back: what still blocks it, in order, and the earliest time. Never "safe"."""
    names = which_rounds(reading, world, lambda round_: False)
    if isinstance(names, Answer):
        return names
    told = told_of(names, reading)
    if told:
        return replace(return_check(_without_senses(reading, names), _after(told, world)), events=told)
    verdicts = [(name, may_go_back(world.state.rounds.get(name), world.now)) for name in names]
    if not verdicts:
        return _gate_answer(reading, None, may_go_back(None, world.now), world)
    if reading.slots.confirmed:
        settled = tuple(Remarked(name) for name in names)
        return replace(
            return_check(replace(reading, slots=Slots(enclosures=names)), _after(settled, world)), events=settled
        )
    blocked = [(name, verdict) for name, verdict in verdicts if not verdict.ready]
    by_a_step = [(name, verdict) for name, verdict in blocked if not verdict.remarks]
    if blocked and not by_a_step:
        return _is_it_settled(reading, blocked[0][0], world)
    return _gate_answer(reading, *(by_a_step or verdicts)[0], world)


def _is_it_settled(reading: Reading, name: str, world: World) -> Answer:
    """Nothing is left to do, but for what was told and not understood: "yes" settles it."""
    asked = Reading(reading.question, "return_check", Slots(enclosures=(name,)), confidence=1.0)
    settled = replace(asked, slots=replace(asked.slots, confirmed=True))
    not_yet = Answer(
        "return_check",
        Outcome.ANSWER,
        "the_round.not_settled",
        details={"enclosure": world.household.enclosure(name) or name},
        values={"ready": False, "blocked_by": (), "earliest": None, "claim": None, "enclosure": name},
    )
    return replace(
        not_yet,
        outcome=Outcome.ASK,
        message="the_round.is_it_settled",
        details={**not_yet.details, "said": world.state.rounds[name].remarks},
        missing=("answer",),
        pending=Pending(asked, world.now, on_yes=settled, on_no=not_yet),
    )


def _without_senses(reading: Reading, names: tuple[str, ...]) -> Reading:
    slots = replace(reading.slots, enclosures=names, every_enclosure=False, smell=None, wet=None)
    return replace(reading, slots=slots)


def _after(events: tuple[Event, ...], world: World) -> World:
    ledger = Ledger(world.state, world, wiped=False)
    ledger.note(*events)
    return replace(world, state=ledger.state)


def _gate_answer(reading: Reading, name: str | None, verdict: Verdict, world: World) -> Answer:
    round_ = world.state.rounds.get(name) if name else None
    first = what_comes_first(name, world) if verdict.ready else None
    if first is not None:
        verdict = replace(verdict, ready=False, claim=None)
        message = "the_round.animal_first"
    elif verdict.ready:
        message = "the_round.ready"
    elif verdict.blocked_by:
        message = "the_round.blocked"
    else:
        message = "the_round.not_on_record"
    doubted = bool(round_ and round_.hold and round_.hold.doubted and not hold_is_running(round_, world.now))
    asked = world.waiting is not None and world.waiting.asks_whether_wet
    vouch = doubted and "hold" in verdict.blocked_by and "apply" not in verdict.blocked_by
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        message,
        pending=wet_question(name, world) if vouch and name and not asked else None,
        details={
            "enclosure": world.household.enclosure(name) or name,
            "round": round_,
            "verdict": verdict,
            "now": world.now,
            "warm_to": _warmest_tub(world) if reading.slots.cold else None,
            "pressed": reading.slots.pressed,
            "vouch": vouch,
            "first": first,
            "people": world.household.people,
        },
        values={
            "ready": verdict.ready,
            "blocked_by": verdict.blocked_by,
            "earliest": verdict.earliest,
            "claim": verdict.claim,
            "enclosure": name,
        },
        cautions=("caution-hands",) if verdict.ready else (),
        sources=(world.facts[TUB_FACT].cited(),) if reading.slots.cold and verdict.blocked_by else (),
    )


def _warmest_tub(world: World) -> float:
    """Degrees Celsius, the upper end of what a waiting tub may have."""
    return float(world.facts[TUB_FACT].value[-1])
