"""Spraying: an agent put on a surface, as a step of its round or at least as a touch that isn't forgotten."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from assistant.answer.asking import ask
from assistant.answer.bottle_used import agents_in, holds_another, is_spent
from assistant.answer.meeting import gas_made, touched_by
from assistant.answer.on_record import Ledger, about, asking, nothing_open, steps_from, unrecorded, was_it_done
from assistant.answer.plan import (
    Supply,
    ask_agent,
    basis_of,
    forbidden,
    most_careful,
    seconds_of,
    supply_in,
    supply_of,
    wet_time_of,
)
from assistant.answer.way_on import way_on
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.choice.together import uncleared
from assistant.core.quantities.amounts import Mix
from assistant.core.record.events import DriedEarly, StepDone
from assistant.core.record.state import Round
from assistant.core.round.claims import Judgement, judge
from assistant.core.round.jobs import as_kept_for
from assistant.core.round.rounds import in_order
from assistant.core.round.wet_time import WetTime
from assistant.core.shelf.bottles import held_in


def sprayed(name: str, round_: Round | None, reading: Reading, ledger: Ledger) -> Answer | None:
    """Records that an agent was put on, or keeps at least that it touched the surface."""
    world = replace(ledger.world, state=ledger.state)
    enclosure = world.household.enclosure(name)
    said = supply_in(reading, world)
    if reading.slots.corrects:
        if said is None:
            return _with_what_then(name, reading, ledger)
        world = _without_the_mistaken(name, round_, world)
    if said is None and round_ is not None and not _sprays(round_, world):
        return ask_agent(reading, world)  # soap isn't sprayed, so it was something else
    supply = said or (supply_of(round_.agent, round_.bottle, world) if round_ else None)
    if supply is None or enclosure is None:
        return nothing_open(reading, world, name)
    touch = uncleared(world.state.surfaces.get(name, ()), supply.agent, world.facts)
    refusal = forbidden(reading, supply, enclosure, world)
    if touch is not None and refusal is not None:
        ledger.note(touched_by(name, supply.agent.id, world))
        met = gas_made(reading.intent, (touch.agent, supply.agent.id), None, name, world)
        return met if met is not None else refusal
    if refusal is not None or round_ is None:
        ledger.note(*(touched_by(name, agent, world) for agent in agents_in(supply, world)))
        return refusal or nothing_open(reading, world, name)
    other = holds_another(reading, supply, world)
    if other is not None:
        held = held_in(supply.bottle, world.state) if supply.bottle is not None else ()
        ledger.note(*(touched_by(name, agent, world) for agent in dict.fromkeys((supply.agent.id, *held))))
        return other
    if reading.slots.too_early:
        ledger.note(DriedEarly(name))  # a part was dry, or was missed: from here, not from the first spraying
        round_ = ledger.state.rounds[name]
    judgement = judge(round_with(round_, supply), "apply", world.now)
    if judgement.fit == "gap":
        ledger.note(touched_by(name, supply.agent.id, world))
        if round_.put_back:
            return unrecorded(reading, "the_round.animal_inside", world, name, judgement, Outcome.REFUSE)
        return was_it_done(judgement, name, reading, world)
    if "hold" in round_.steps and "hold" not in supply.agent.steps:
        ledger.note(touched_by(name, supply.agent.id, world))
        return _only_cleans(judgement, supply, name, reading, ledger)
    if supply.agent.needs_cold and not reading.slots.heat_cold:
        ledger.note(touched_by(name, supply.agent.id, world))
        cold = replace(reading, slots=replace(about(reading, name, steps_from("apply", reading)).slots, heat_cold=True))
        return asking(reading, "the_round.is_it_cold", world, name, judgement, cold)
    step = step_of_spraying(name, round_, supply, world, reading.slots.mixes)
    ledger.note(replace(step, basis="none") if reading.slots.old_mix else step)
    return None


def _with_what_then(name: str, reading: Reading, ledger: Ledger) -> Answer:
    """ "I used the wrong bottle": what was sprayed counts for nothing, and with what it was is asked.

    Of several that are named, each: the bottles were swapped.
    """
    ledger.note(*(DriedEarly(other) for other in dict.fromkeys((name, *reading.slots.enclosures))))
    known = tuple(bottle.name for bottle in ledger.world.household.bottles)
    asked = replace(reading, slots=replace(reading.slots, enclosures=(name,)))
    details = {"enclosure": name, "known": known}
    return ask(asked, ledger.world, ("bottle", "stock", "agent"), "the_round.which_was_it", details)


def _without_the_mistaken(name: str, round_: Round | None, world: World) -> World:
    """The world for judging what was sprayed in truth: what was said in its place hadn't met it.

    That it may have touched the surface stays on record, and has to come off like the rest.
    """
    mistaken = round_.agent if round_ is not None else None
    touches = tuple(touch for touch in world.state.surfaces.get(name, ()) if touch.agent != mistaken)
    return replace(world, state=replace(world.state, surfaces={**world.state.surfaces, name: touches}))


def _only_cleans(judgement: Judgement, supply: Supply, name: str, reading: Reading, ledger: Ledger) -> Answer:
    """A cleaner on what is to be disinfected is no spraying: it comes off again first."""
    after = replace(ledger.world, state=ledger.state)
    answer = unrecorded(reading, "the_round.only_cleans", after, name, judgement)
    details = {**answer.details, "said": supply.agent, "way": way_on(after.state.rounds[name], after)}
    return replace(answer, details=details)


def _sprays(round_: Round, world: World) -> bool:
    """Whether a round takes spraying, or its agent would."""
    return "apply" in round_.steps or "apply" in world.facts.agents[round_.agent].steps


def round_with(round_: Round, supply: Supply) -> Round:
    """The round with the steps that this agent adds to it; one that was to be a clean only disinfects after all."""
    return replace(round_, steps=in_order(frozenset(round_.steps) | frozenset(supply.agent.steps)))


def step_of_spraying(name: str, round_: Round, supply: Supply, world: World, said: tuple[Mix, ...] = ()) -> StepDone:
    home = as_kept_for(world.household.enclosure(name), round_.job)
    wet = wet_time_of(supply, home, round_.organism, world, said)
    wet = _as_begun(round_, supply, wet, world)
    steps = round_with(round_, supply).steps
    return StepDone(
        name,
        "apply",
        agent=supply.agent.id,
        bottle=supply.bottle.name if supply.bottle else None,
        hold_s=seconds_of(wet),
        basis="none" if is_spent(supply, world) else basis_of(wet, home, world.facts),
        steps=steps if steps != round_.steps else None,
    )


def _as_begun(round_: Round, supply: Supply, wet: WetTime, world: World) -> WetTime:
    """The wet time with what was said as the clean began: of a weaker mix, or by a label that isn't in keeping.toml.

    It only ever lengthens; another bottle, or a fill since then, is judged by itself.
    """
    bottle = supply.bottle.name if supply.bottle is not None else None
    if round_.hold_s is None or (round_.agent, round_.bottle) != (supply.agent.id, bottle):
        return wet
    holds = world.state.bottles.get(bottle) if bottle is not None else None
    fill = holds.fill if holds is not None else None
    if fill is not None and fill.at > round_.started_at:
        return wet
    minutes = Fraction(str(round_.hold_s)) / 60
    if wet.minutes is None:
        return replace(wet, minutes=minutes, basis="label" if round_.basis == "label" else "none")
    begun = replace(wet, minutes=minutes, basis="none" if round_.basis == "none" else "published")
    return most_careful((wet, begun)) if minutes > wet.minutes else wet
