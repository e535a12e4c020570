"""The round, one enclosure cleaned once: start, next, status, time left, wet time, and the return gate.

`done` is long enough for a file of its own, `claimed`.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from assistant.answer.asking import ask
from assistant.answer.bottle_used import holds_another, is_spent, taken_as_set
from assistant.answer.claimed import done as done_alone
from assistant.answer.due import asks_of_wet, wet_question
from assistant.answer.ending import clean_only, leave_off
from assistant.answer.kept_wet import dried_early, rewet
from assistant.answer.meeting import off_again, touched_by
from assistant.answer.on_record import Ledger, told_of
from assistant.answer.plan import (
    STARTING,
    Supply,
    ask_agent,
    basis_of,
    changes_needed,
    forbidden,
    room_airing,
    seconds_of,
    supply_in,
    supply_of,
    too_weak,
    wet_time_of,
    what_soaks_in,
)
from assistant.answer.senses import still_smells
from assistant.answer.sharing import hands_first
from assistant.answer.tubs import into_the_tub
from assistant.answer.way_on import give_up_question, step_now, way_on
from assistant.answer.which import open_rounds, which_rounds
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.household import Enclosure
from assistant.core.record.events import Event, Resumed, RoundStarted
from assistant.core.record.fold import OFF_AGAIN
from assistant.core.record.state import Round
from assistant.core.round.claims import by_hand
from assistant.core.round.gate import Verdict, may_go_back, timers
from assistant.core.round.jobs import JOBS, as_kept_for
from assistant.core.round.rounds import hold_is_over, hold_is_running, in_order, is_open, outstanding
from assistant.core.shelf.bottles import held_in

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
    """Records the steps that were claimed, and the tub that the animal went into."""
    return into_the_tub(done_alone(reading, world), reading, world)


def start(reading: Reading, world: World) -> Answer:
    """Begins a clean of one or several enclosures, with one agent."""
    enclosures = _enclosures_to_start(reading, world)
    if isinstance(enclosures, Answer):
        return enclosures
    supply = supply_in(reading, world) or _what_alone_does_it(reading, world)
    refusal = _refusal(reading, supply, enclosures, world)
    if refusal is not None:
        return refusal
    already = [e for e in enclosures if is_open(world.state.rounds.get(e.name))]
    if already and reading.slots.start_over is None:
        details = {"enclosure": already[0].name, "next": step_now(world.state.rounds[already[0].name], world)}
        return ask(reading, world, ("start_over",), "the_round.open_already", details)
    if already and not reading.slots.start_over:
        return _gone_on(already, reading, world)
    if supply is None:
        return ask_agent(reading, world)
    if not _does(supply, reading.slots.clean_as):
        return _not_with_that(reading, supply, world)
    other = holds_another(reading, supply, world)
    if other is not None:
        return replace(other, events=_touched_as_said(reading, supply, enclosures, world))
    return _started(reading, supply, enclosures, world)


def _what_alone_does_it(reading: Reading, world: World) -> Supply | None:
    """For a job that one agent alone does: that, where the keeper has it; None: it is to be asked."""
    job = JOBS.get(reading.slots.clean_as or "")
    slots = reading.slots
    if job is None or job.only is None or slots.bottles or slots.stocks or slots.agents:
        return None
    return supply_of(job.only, None, world) if world.household.stocks_of(job.only) else None


def _does(supply: Supply, clean_as: str | None) -> bool:
    job = JOBS.get(clean_as or "")
    return job is None or job.only is None or supply.agent.family == "acid"


def _not_with_that(reading: Reading, supply: Supply, world: World) -> Answer:
    """That agent doesn't do that job: asks with what instead, and keeps what may have touched the surface."""
    unnamed = replace(reading, slots=replace(reading.slots, bottles=(), stocks=(), agents=()))
    fact = world.facts[JOBS[str(reading.slots.clean_as)].fact]
    details = {"agent": supply.agent, "clean_as": reading.slots.clean_as}
    asked = ask(unnamed, world, ("bottle", "stock", "agent"), "the_round.not_with_that", details)
    enclosures = tuple(e for e in world.household.enclosures if e.name in reading.slots.enclosures)
    return replace(asked, sources=(fact.cited(),), events=_touched_as_said(reading, supply, enclosures, world))


def _refusal(reading: Reading, supply: Supply | None, enclosures: tuple[Enclosure, ...], world: World) -> Answer | None:
    if supply is None:
        return None
    for enclosure in enclosures:
        refusal = forbidden(reading, supply, enclosure, world)
        if refusal is not None:
            return refusal
    return None


def _touched_as_said(
    reading: Reading, supply: Supply, enclosures: tuple[Enclosure, ...], world: World
) -> tuple[Event, ...]:
    """ "It is sprayed" led to this start: what may have touched the surfaces is kept."""
    if "apply" not in reading.slots.steps:
        return ()
    agents = dict.fromkeys((supply.agent.id, *(held_in(supply.bottle, world.state) if supply.bottle else ())))
    return tuple(touched_by(e.name, agent, world) for e in enclosures for agent in agents)


def _enclosures_to_start(reading: Reading, world: World) -> tuple[Enclosure, ...] | Answer:
    names = reading.slots.enclosures
    every = world.household.enclosures
    if not names and len(every) == 1:
        return every
    if not names:
        return ask(reading, world, ("enclosure",), "the_round.start_which", {"known": tuple(e.name for e in every)})
    return tuple(e for e in every if e.name in names)


def _started(reading: Reading, supply: Supply, enclosures: tuple[Enclosure, ...], world: World) -> Answer:
    organism = reading.slots.organisms[0] if reading.slots.organisms else None
    job = reading.slots.clean_as or ""
    wet = wet_time_of(supply, as_kept_for(enclosures[0], job), organism, world)
    timed = "hold" in supply.agent.steps
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "the_round.started",
        details={
            "enclosures": enclosures,
            "supply": supply,
            "wet": wet,
            "timed": timed,
            "organism": world.facts.organisms.get(organism) if organism else None,
            "taken_as_set": taken_as_set(supply, world),
            "spent": is_spent(supply, world),
            "job": job,
            "hands": any(hands_first(e.name, world) for e in enclosures),
        },
        values={
            "enclosure": enclosures[0].name,
            "enclosures": tuple(e.name for e in enclosures),
            "agent": supply.agent.id,
            "bottle": supply.bottle.name if supply.bottle else None,
            "steps": supply.agent.steps,
            "minutes": wet.minutes if timed else None,
            "job": job or None,
        },
        cautions=(*too_weak(wet, supply.agent), *what_soaks_in(enclosures, world.facts), *STARTING),
        sources=(*wet.sources, *((world.facts[JOBS[job].fact].cited(),) if job else ())),
        events=(
            *(_round_of(enclosure, supply, organism, job, world) for enclosure in enclosures),
            *(touched_by(e.name, supply.agent.id, world) for e in enclosures if "apply" in reading.slots.steps),
        ),
    )


def _gone_on(enclosures: list[Enclosure], reading: Reading, world: World) -> Answer:
    """The open clean goes on where it stands."""
    paused = [e.name for e in enclosures if world.state.rounds[e.name].paused_at is not None]
    return replace(next(reading, world), events=tuple(Resumed(name) for name in paused))


def _round_of(enclosure: Enclosure, supply: Supply, organism: str | None, job: str, world: World) -> RoundStarted:
    """The round as it is required from now on, whatever changes later in keeping.toml or in the facts."""
    wet = wet_time_of(supply, as_kept_for(enclosure, job), organism, world)
    rate, _ = room_airing(world)
    before = world.state.rounds.get(enclosure.name)
    on_it = tuple(touch.agent for touch in world.state.surfaces.get(enclosure.name, ()))
    still: tuple[str, ...] = ()
    if before is not None and is_open(before) and before.touched:
        still = tuple(step for step in before.steps if step in OFF_AGAIN)  # rinsed off perhaps, not out of the air
    return RoundStarted(
        enclosure=enclosure.name,
        agent=supply.agent.id,
        steps=in_order(frozenset((*supply.agent.steps, *off_again(on_it, world), *still))),
        hold_s=seconds_of(wet),
        air_changes_per_hour=rate,
        air_changes=changes_needed(world),
        stock=supply.stock.name if supply.stock else None,
        bottle=supply.bottle.name if supply.bottle else None,
        organism=organism,
        basis=basis_of(wet, enclosure, world.facts),
        job=job,
    )


def next(reading: Reading, world: World) -> Answer:
    """One thing to do now."""
    named = tuple(world.state.rounds[n] for n in reading.slots.enclosures if is_open(world.state.rounds.get(n)))
    rounds = named or (() if reading.slots.enclosures else open_rounds(world))
    if not rounds:
        names = reading.slots.enclosures
        return _no_round(reading, names[0] if names else None, {"enclosure": None, "step": None, "seconds": None})
    round_ = _most_urgent(rounds, world)
    way = way_on(round_, world)
    step = way.step
    left = {t.step: t.seconds for t in timers(world.state, world.now) if t.enclosure == round_.enclosure}
    asks_wet = step == "hold" and round_.paused_at is None and hold_is_over(round_, world.now)
    smells = step == "air" and round_.smells and "air" not in left
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "the_round.next",
        details={
            "enclosure": world.household.enclosure(round_.enclosure),
            "round": round_,
            "step": step,
            "way": way,
            "left_s": left.get(step),
            "smells": smells,
            "agent": world.facts.agents[round_.agent],
            "hands": hands_first(round_.enclosure, world),
        },
        values={
            "enclosure": round_.enclosure,
            "step": step,
            "seconds": left.get(step),
            "job": round_.job or None,
        },
        pending=wet_question(round_.enclosure, world) if asks_wet else give_up_question(round_, step, world),
        cautions=("caution-new-gloves",) if hands_first(round_.enclosure, world) else (),
    )


def _most_urgent(rounds: tuple[Round, ...], world: World) -> Round:
    """What is to be rinsed off comes first, then what can be done by hand, then the soonest clock; paused ones last."""
    clocks = {t.enclosure: t.seconds for t in reversed(timers(world.state, world.now))}

    def urgency(round_: Round) -> tuple[int, float]:
        step = step_now(round_, world)
        if round_.paused_at is not None:
            return 3, 0.0
        if step == "rinse" or (step == "hold" and not hold_is_running(round_, world.now)):
            return 0, 0.0
        if step == "return" or by_hand(round_, world.now) is not None:
            return 1, 0.0
        return 2, clocks.get(round_.enclosure, float("inf"))

    return min(rounds, key=urgency)


def status(reading: Reading, world: World) -> Answer:
    """What is done and what is left, of one enclosure or of all; or whether one step is on record."""
    names = reading.slots.enclosures or tuple(round_.enclosure for round_ in open_rounds(world))
    rounds = tuple(r for name in names if (r := world.state.rounds.get(name)) is not None)
    if not rounds:
        return _no_round(reading, names[0] if names else None, {"rounds": ()})
    doubted = [r for r in rounds if is_open(r) and hold_is_over(r, world.now)]
    if doubted and reading.slots.steps in (("dry",), ("hold",)):  # "did it stay wet?": only the keeper can tell
        asked = next(replace(reading, slots=replace(reading.slots, enclosures=(doubted[0].enclosure,))), world)
        return replace(asked, values={**asked.values, "rounds": tuple(_round_values(r, world) for r in rounds)})
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "the_round.status",
        details={
            "rounds": rounds,
            "steps": reading.slots.steps,
            "now": world.now,
            "left": {round_.enclosure: outstanding(round_, world.now) for round_ in rounds},
            "timers": timers(world.state, world.now),
        },
        values={"rounds": tuple(_round_values(round_, world) for round_ in rounds)},
    )


def _round_values(round_: Round, world: World) -> dict[str, Any]:
    return {
        "enclosure": round_.enclosure,
        "agent": round_.agent,
        "job": round_.job or None,
        "open": is_open(round_),
        "done": dict(round_.done),
        "blocked_by": outstanding(round_, world.now) if is_open(round_) else (),
        "next": step_now(round_, world) if is_open(round_) else None,
    }


def time_left(reading: Reading, world: World) -> Answer:
    """What is left on every running wet time and airing, and on a splash being rinsed."""
    running = timers(world.state, world.now)
    asked = [t for t in running if t.enclosure in reading.slots.enclosures]
    asked = [t for t in asked or running if not reading.slots.steps or t.step in reading.slots.steps] or asked
    wanted = asked if reading.slots.enclosures else asked or list(running)
    first = wanted[0] if wanted else None
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "the_round.time_left",
        details={"first": first, "timers": running, "asked": reading.slots.enclosures, "over": _over(world)},
        values={
            "seconds": first.seconds if first else None,
            "timers": tuple({"enclosure": t.enclosure, "step": t.step, "seconds": t.seconds} for t in running),
        },
    )


def _over(world: World) -> tuple[str, ...]:
    """Enclosures whose wet time is over but not rinsed off yet."""
    return tuple(r.enclosure for r in open_rounds(world) if hold_is_over(r, world.now))


def hold_time(reading: Reading, world: World) -> Answer:
    """How long it must stay wet, by label or published figure, with common practice beside it."""
    slots = reading.slots
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
    wet = wet_time_of(supply, as_kept_for(enclosure, job), organism, world)
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
    blocked = [(name, verdict) for name, verdict in verdicts if not verdict.ready]
    return _gate_answer(reading, *(blocked or verdicts)[0], world)


def _without_senses(reading: Reading, names: tuple[str, ...]) -> Reading:
    slots = replace(reading.slots, enclosures=names, every_enclosure=False, smell=None, wet=None)
    return replace(reading, slots=slots)


def _after(events: tuple[Event, ...], world: World) -> World:
    ledger = Ledger(world.state, world, wiped=False)
    ledger.note(*events)
    return replace(world, state=ledger.state)


def _gate_answer(reading: Reading, name: str | None, verdict: Verdict, world: World) -> Answer:
    round_ = world.state.rounds.get(name) if name else None
    if verdict.ready:
        message = "the_round.ready"
    elif verdict.blocked_by:
        message = "the_round.blocked"
    else:
        message = "the_round.not_on_record"
    doubted = bool(round_ and round_.hold and round_.hold.doubted and not hold_is_running(round_, world.now))
    vouch = doubted and "hold" in verdict.blocked_by and "apply" not in verdict.blocked_by
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        message,
        pending=wet_question(name, world) if vouch and name and not asks_of_wet(world) else None,
        details={
            "enclosure": world.household.enclosure(name) or name,
            "round": round_,
            "verdict": verdict,
            "now": world.now,
            "warm_to": _warmest_tub(world) if reading.slots.cold else None,
            "pressed": reading.slots.pressed,
            "vouch": vouch,
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


def _no_round(reading: Reading, name: str | None, values: dict[str, Any]) -> Answer:
    return Answer(reading.intent, Outcome.ANSWER, "the_round.none_open", details={"enclosure": name}, values=values)
