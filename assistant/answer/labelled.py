"""What a bottle's label has to tell: what is in it by the record or what it is for, how to fill it and for how long."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime
from typing import Literal, TypeAlias

from assistant.answer.meeting import agent_of
from assistant.answer.product import Product, forbidden
from assistant.answer.protecting import OF_FAMILY
from assistant.answer.strength import Strength, strength_of
from assistant.contract import Answer, Reading, World
from assistant.core.choice.together import BLEACH, meet
from assistant.core.facts import Agent
from assistant.core.household import Bottle, Stock
from assistant.core.mixing.dilution import Mixed, mix
from assistant.core.quantities.quantity import read_mix
from assistant.core.record.state import Fill
from assistant.core.round.wet_time import Use, WetTime, wet_time
from assistant.core.shelf.bottles import NOTHING, Life, life_of, written

Why: TypeAlias = Literal["unknown mix", "rinse first"]

ASKED = Reading("", "dose")
"""A label asks for the dose, as a keeper would."""


GLOVES = "caution-gloves-eyes"


@dataclass(frozen=True, slots=True)
class Label:
    """One bottle's label."""

    bottle: Bottle
    agent: Agent
    stock: Stock | None
    strength: Strength
    mixed: Mixed
    """A full bottle; as filled, where a fill is on record."""
    fill: Fill | None
    """None: none is on record, so that its times are left to be written in by hand."""
    life: Life
    """Of the fill, or of one made now."""
    wet: WetTime
    wet_sick: WetTime
    """In an enclosure of a new or sick animal."""
    cautions: tuple[str, ...]
    now: datetime


@dataclass(frozen=True, slots=True)
class Warned:
    """A bottle that nobody may use: its label says so, and nothing else."""

    bottle: Bottle
    why: Why
    held: tuple[str, ...] = ()
    """Names of what was in it since it was last rinsed out."""


@dataclass(frozen=True, slots=True)
class NoLabel:
    """A bottle that can't have a label."""

    bottle: Bottle
    because: Answer | None
    """What stands against it; None: keeping.toml doesn't say what the bottle is for."""


def label_of(bottle: Bottle, world: World) -> Label | Warned | NoLabel:
    """The label of one bottle, by the record where a fill is on it, else by what keeping.toml means it for."""
    holds = world.state.bottles.get(bottle.name, NOTHING)
    held = tuple(agent_of(agent, world).name for agent in holds.held)
    if bottle.name in world.state.unknown_mixes:
        return Warned(bottle, "unknown mix", held)
    if holds.fill is None and holds.held:
        return Warned(bottle, "rinse first", held)
    product, wanted = _meant(bottle, world), bottle.mix
    if holds.fill is not None:
        stock = world.household.stock(holds.fill.stock)
        product = Product(agent_of(holds.fill.agent, world), stock, bottle)
        wanted = read_mix(holds.fill.mix) if holds.fill.mix is not None else None
    if product is None or product.agent is None or wanted is None:
        return NoLabel(bottle, None)
    against = forbidden(product, ASKED, world)
    strength = against or strength_of(wanted, product, ASKED, world)
    if isinstance(strength, Answer):
        return NoLabel(bottle, strength)
    return _label(product, product.agent, bottle, strength, holds.fill, world)


def _meant(bottle: Bottle, world: World) -> Product | None:
    stock = world.household.stock(bottle.stock)
    return Product(agent_of(stock.agent, world), stock, bottle) if stock is not None else None


def _label(
    product: Product, agent: Agent, bottle: Bottle, strength: Strength, fill: Fill | None, world: World
) -> Label | NoLabel:
    mixed = mix(fill.total if fill is not None and fill.total is not None else bottle.capacity, strength.share)
    if fill is not None and fill.concentrate is not None:
        mixed = replace(mixed, concentrate=fill.concentrate)
    life = life_of(agent, product.stock, world.now, world.facts)
    wanted = read_mix(written(strength.wanted, strength.ratio.reading))
    use = Use(agent, product.stock, wanted, None, "healthy", world.household.habits.ratio)
    return Label(
        bottle,
        agent,
        product.stock,
        strength,
        mixed,
        fill,
        life,
        wet_time(use, world.facts),
        wet_time(replace(use, group="sick"), world.facts),
        _cautions(agent, world),
        world.now,
    )


def _cautions(agent: Agent, world: World) -> tuple[str, ...]:
    """What must be known with the bottle in the hand, the gravest first."""
    says = [world.facts["caution-never-mix"].says] if agent.family == BLEACH else _never_with_bleach(agent, world)
    own = OF_FAMILY.get(agent.family, GLOVES) if agent.family != "biguanide" else GLOVES  # that fact speaks of quats
    says.append(world.facts[own].says)
    if agent.refused_in_water is not None:
        says.append("Not near amphibians or water animals")
    return (
        *says,
        "Animals out of the room first. Surfaces only, never on an animal",
        world.facts["caution-label-first"].says,
    )


def _never_with_bleach(agent: Agent, world: World) -> list[str]:
    bleach = next(known for known in world.facts.agents.values() if known.family == BLEACH)
    pair = meet(bleach, agent, world.facts)
    return [f"Never with bleach: that {pair.because}"] if pair is not None and pair.verdict == "never" else []
