"""`start`: a clean begins, of one or several enclosures, with one agent; or with another than was said at first."""

from __future__ import annotations

from dataclasses import replace
from itertools import takewhile

from assistant.answer.asking import ask
from assistant.answer.bottle_used import holds_another, is_spent, taken_as_set
from assistant.answer.label_told import is_label_told, wet_time_told
from assistant.answer.meeting import off_again, touched_by
from assistant.answer.named import germ_there
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
    what_soaks_in,
)
from assistant.answer.product import product_in
from assistant.answer.sharing import hands_first
from assistant.answer.under_way import next
from assistant.answer.way_on import step_now
from assistant.answer.which import open_rounds
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.household import Enclosure
from assistant.core.record.events import Event, Resumed, RoundStarted, StepDone, Voided
from assistant.core.record.fold import OFF_AGAIN
from assistant.core.round.jobs import JOBS, as_kept_for
from assistant.core.round.rounds import in_order, is_open
from assistant.core.shelf.bottles import held_in


def start(reading: Reading, world: World) -> Answer:
    """Begins a clean of one or several enclosures, with one agent."""
    enclosures = _enclosures_to_start(reading, world)
    if isinstance(enclosures, Answer):
        return enclosures
    if len(enclosures) > 1 and len(set(reading.slots.bottles)) > 1:  # "pepper with pink, juniper with yellow"
        one = replace(reading, slots=replace(reading.slots, enclosures=(), bottles=(), agents=(), stocks=()))
        return ask(one, world, ("enclosure",), "the_round.one_at_a_time", {"enclosures": enclosures})
    if not reading.slots.corrects and (len(set(reading.slots.bottles)) > 1 or len(set(reading.slots.agents)) > 1):
        several = product_in(reading, world)  # two in one bottle or on one surface are refused, or it is asked which
        if isinstance(several, Answer):
            return several
    supply = supply_in(reading, world) or _what_alone_does_it(reading, world) or _as_it_was(reading, enclosures, world)
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


def _as_it_was(reading: Reading, enclosures: tuple[Enclosure, ...], world: World) -> Supply | None:
    """ "Start over": with what the open clean was begun with."""
    rounds = [world.state.rounds.get(enclosure.name) for enclosure in enclosures]
    if not reading.slots.start_over or len(rounds) != 1 or rounds[0] is None or not is_open(rounds[0]):
        return None
    return supply_of(rounds[0].agent, rounds[0].bottle, world)


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
    begun = open_rounds(world)
    if not names and reading.slots.start_over and len(begun) == 1:
        names = (begun[0].enclosure,)
    if not names:
        return ask(reading, world, ("enclosure",), "the_round.start_which", {"known": tuple(e.name for e in every)})
    return tuple(e for e in every if e.name in names)


def _started(reading: Reading, supply: Supply, enclosures: tuple[Enclosure, ...], world: World) -> Answer:
    said = reading.slots.organisms[0] if reading.slots.organisms else None
    known = [said or germ_there(enclosure.name, world) for enclosure in enclosures]
    germs = [germ for germ in known if germ is not None]
    organism = germs[0] if germs else None
    job = reading.slots.clean_as or ""
    wet = wet_time_told(supply, as_kept_for(enclosures[0], job), organism, world, reading.slots)
    timed = "hold" in supply.agent.steps
    already = _already(reading, enclosures, supply, world)
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
            "germ_on_record": said is None and organism is not None,
            "taken_as_set": taken_as_set(supply, world),
            "spent": is_spent(supply, world),
            "job": job,
            "already": already,
            "label_told": timed and is_label_told(reading.slots),
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
            *_begun_by_mistake(reading, enclosures, world),
            *(_round_of(home, supply, germ, reading, world) for home, germ in zip(enclosures, known, strict=True)),
            *(StepDone(enclosure.name, step) for enclosure in enclosures for step in already),
            *(touched_by(e.name, supply.agent.id, world) for e in enclosures if "apply" in reading.slots.steps),
        ),
    )


def _already(reading: Reading, enclosures: tuple[Enclosure, ...], supply: Supply, world: World) -> tuple[str, ...]:
    """Steps that are done as it begins: told in the same breath, or done before the product was changed.

    Only those before anything is sprayed, in order and up to the first that is missing in any of the enclosures.
    """
    told = reading.slots.steps
    kept = [
        step for step in BEFORE_ANY_PRODUCT if reading.slots.corrects and all(_did(step, e, world) for e in enclosures)
    ]
    before = (step for step in supply.agent.steps if step in BEFORE_ANY_PRODUCT)
    return tuple(takewhile(lambda step: step in told or step in kept, before))


def _did(step: str, enclosure: Enclosure, world: World) -> bool:
    """Whether that step of its open clean is done; what has no clean open has none done."""
    begun = world.state.rounds.get(enclosure.name)
    return begun is not None and is_open(begun) and step in begun.done


def _begun_by_mistake(reading: Reading, enclosures: tuple[Enclosure, ...], world: World) -> tuple[Event, ...]:
    """What takes back the clean begun in the turn before, where another enclosure was meant."""
    last = world.state.turns[-1] if reading.slots.corrects and world.state.turns else None
    begun = {deed.thing for deed in last.deeds if deed.event == "RoundStarted"} if last is not None else set()
    return (Voided(last.turn),) if last is not None and begun - {e.name for e in enclosures} else ()


BEFORE_ANY_PRODUCT = ("move out", "clear", "wash")


def _gone_on(enclosures: list[Enclosure], reading: Reading, world: World) -> Answer:
    """The open clean goes on where it stands."""
    paused = [e.name for e in enclosures if world.state.rounds[e.name].paused_at is not None]
    return replace(next(reading, world), events=tuple(Resumed(name) for name in paused))


def _round_of(
    enclosure: Enclosure, supply: Supply, organism: str | None, reading: Reading, world: World
) -> RoundStarted:
    """The round as it is required from now on, whatever changes later in keeping.toml or in the facts."""
    job = reading.slots.clean_as or ""
    wet = wet_time_told(supply, as_kept_for(enclosure, job), organism, world, reading.slots)
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
