"""The bottle that is sprayed from, held against the record: is it what was said, is it known, is it still good?

keeping.toml says what a bottle is for; only events say what it holds.
"""

from __future__ import annotations

from dataclasses import replace

from assistant.answer.asking import ask
from assistant.answer.meeting import agent_of
from assistant.answer.plan import Supply
from assistant.contract import Answer, Reading, World
from assistant.core.household import Bottle
from assistant.core.shelf.bottles import NOTHING, held_in, is_past_its_life


def holds_another(reading: Reading, supply: Supply, world: World) -> Answer | None:
    """Asks when the bottle holds something else on record than what is to be sprayed from it; None: it doesn't.

    What is named can't settle it by itself: the bottle has to be rinsed out on record, or filled with that.
    """
    bottle = supply.bottle
    if bottle is None or bottle.name in world.state.unknown_mixes:
        return None
    fill = world.state.bottles.get(bottle.name, NOTHING).fill
    if fill is not None and fill.agent == supply.agent.id:
        return None
    if fill is None and held_in(bottle, world.state) == (supply.agent.id,) and not reading.slots.mixes:
        details = {"bottle": bottle.name, "said": supply.agent}
        return ask(reading, world, ("mix",), "the_round.not_how_strong", details)
    holds = world.state.bottles.get(bottle.name)
    if holds is not None and fill is None and holds.rinsed_at is None and not holds.held:
        if reading.slots.mixes:
            return None
        details = {"bottle": bottle.name, "said": supply.agent}
        return ask(reading, world, ("mix",), "the_round.nothing_in_it", details)
    others = tuple(agent for agent in held_in(bottle, world.state) if agent != supply.agent.id)
    if not others:
        return None
    details = {"bottle": bottle.name, "holds": agent_of(others[-1], world), "said": supply.agent}
    without = replace(reading, slots=replace(reading.slots, agents=()))
    return ask(without, world, ("agent", "bottle"), "the_round.holds_another", details)


def taken_as_set(supply: Supply, world: World) -> Bottle | None:
    """The bottle, where no fill of it is on record and it is taken as what keeping.toml says; None: one is."""
    bottle = supply.bottle
    if bottle is None or world.state.bottles.get(bottle.name, NOTHING).fill is not None:
        return None
    return bottle


def is_spent(supply: Supply, world: World) -> bool:
    """Whether what the bottle holds on record is past its life, so that nothing vouches that it still disinfects."""
    return supply.bottle is not None and is_past_its_life(supply.bottle, world.state, world.now)


def agents_in(supply: Supply, world: World) -> tuple[str, ...]:
    """Every agent that comes out of it: of an unknown mix all that went in."""
    bottle = supply.bottle
    mixed = held_in(bottle, world.state) if bottle is not None and bottle.name in world.state.unknown_mixes else ()
    return mixed or (supply.agent.id,)
