"""What a round takes: the agent and its stock, the steps, the wet time, the airing, and what forbids it."""

from __future__ import annotations

from dataclasses import dataclass, replace

from assistant.answer import product
from assistant.answer.asking import CLAIMS, ask
from assistant.answer.meeting import agent_of, refused_meeting
from assistant.contract import Answer, Reading, World
from assistant.core.air.airing import AIR_CHANGES, OPENINGS, air_changes_needed
from assistant.core.choice.together import uncleared
from assistant.core.facts import Agent, Facts, Material, Source
from assistant.core.household import Bottle, Enclosure, Stock
from assistant.core.quantities.amounts import Mix, Percent
from assistant.core.round.wet_time import Use, WetTime, wet_time
from assistant.core.shelf.bottles import all_as_filled, as_filled, filled_with

STARTING = ("caution-label-first", "caution-gloves-eyes", "caution-heat-unplug", "caution-ventilate")
"""What is cautioned when a clean starts."""


@dataclass(frozen=True, slots=True)
class Supply:
    """What is sprayed: an agent, from which stock, in which bottle."""

    agent: Agent
    stock: Stock | None = None
    bottle: Bottle | None = None


def supply_in(reading: Reading, world: World) -> Supply | None:
    """The agent that a reading names, by bottle, stock or agent; None: it names none."""
    household, slots = world.household, reading.slots
    if slots.bottles:
        bottle = _as_filled(household.bottle(slots.bottles[0]), world)
        filled = filled_with(bottle, world.state) if bottle is not None else None
        if bottle is not None and filled is not None and slots.agents in ((), (filled,)):
            return Supply(agent_of(filled, world), household.stock(bottle.stock), bottle)
        stock = household.stock(bottle.stock) if bottle else None
        if bottle is not None and stock is not None and slots.agents in ((), (stock.agent,)):
            return Supply(world.facts.agents[stock.agent], stock, bottle)
        if bottle is not None and slots.agents:
            return Supply(world.facts.agents[slots.agents[0]], None, bottle)
        return None
    if slots.stocks:
        stock = household.stock(slots.stocks[0])
        if stock is not None:
            return Supply(world.facts.agents[stock.agent], stock, _only_bottle_of(stock, world))
    if slots.agents:
        return supply_of(slots.agents[0], None, world)
    return None


def supply_of(agent: str, bottle: str | None, world: World) -> Supply:
    """An agent with the bottle named, or with the household's only stock and bottle of it."""
    named = _as_filled(world.household.bottle(bottle), world)
    filled = filled_with(named, world.state) if named is not None else None
    if named is not None and filled == agent:
        return Supply(agent_of(agent, world), world.household.stock(named.stock), named)
    if filled is not None:
        named = None  # it holds something else now
    if named is not None and named.stock is not None:
        stock = world.household.stock(named.stock)
        if stock is not None and stock.agent == agent:
            return Supply(world.facts.agents[agent], stock, named)
    stocks = world.household.stocks_of(agent)
    if len(stocks) != 1:
        return Supply(world.facts.agents[agent], None, named)
    return Supply(world.facts.agents[agent], stocks[0], named or _only_bottle_of(stocks[0], world))


def _only_bottle_of(stock: Stock, world: World) -> Bottle | None:
    filled = all_as_filled(world.household, world.state).bottles
    bottles = [bottle for bottle in filled if bottle.stock == stock.name]
    return bottles[0] if len(bottles) == 1 else None


def _as_filled(bottle: Bottle | None, world: World) -> Bottle | None:
    return as_filled(bottle, world.state) if bottle is not None else None


def forbidden(reading: Reading, supply: Supply, enclosure: Enclosure, world: World) -> Answer | None:
    """Why that agent may not be used on that enclosure now, as a refusal; None: nothing forbids it."""
    there = replace(reading, slots=replace(reading.slots, enclosures=(enclosure.name,)))
    refusal = product.forbidden(product.Product(supply.agent, supply.stock, supply.bottle), there, world)
    if refusal is not None:
        return replace(refusal, values=_unrecorded(reading), cautions=())
    touch = uncleared(world.state.surfaces.get(enclosure.name, ()), supply.agent, world.facts)
    if touch is not None:
        return refused_meeting(reading.intent, touch, supply.agent, enclosure.name, world)
    return None


def _unrecorded(reading: Reading) -> dict[str, object]:
    return {"recorded": False} if reading.intent in CLAIMS else {}


def wet_time_of(
    supply: Supply, enclosure: Enclosure | None, organism: str | None, world: World, said: tuple[Mix, ...] = ()
) -> WetTime:
    """The wet time that agent takes there, against that organism.

    said: mixes named beside it; of these and the bottle's own the most careful counts, so that saying one shortens
    nothing. With no bottle's mix a ratio that was said is the mix; a percentage may be the concentrate's.
    """
    own = supply.bottle.mix if supply.bottle is not None else None
    alone = own is None and said and not any(isinstance(mix, Percent) for mix in said)
    group = enclosure.group if enclosure is not None else "healthy"
    colon = world.household.habits.ratio
    uses = (Use(supply.agent, supply.stock, mix, organism, group, colon) for mix in (*(() if alone else (own,)), *said))
    return most_careful(tuple(wet_time(use, world.facts) for use in uses))


def most_careful(times: tuple[WetTime, ...]) -> WetTime:
    """Of several wet times the longest, on the word of the one that vouches for least.

    times: one or more.
    """
    least = max(times, key=lambda one: (_VOUCHES.index(one.basis), one.minutes or 0))
    minutes = [one.minutes for one in times if one.minutes is not None]
    return replace(least, minutes=max(minutes) if len(minutes) == len(times) else None)


_VOUCHES: tuple[str, ...] = ("label", "published", "none")
"""On what a wet time rests, the least careful first."""


def seconds_of(wet: WetTime) -> float | None:
    """A wet time in seconds; None: no figure."""
    return None if wet.minutes is None else float(wet.minutes * 60)


def basis_of(wet: WetTime, enclosure: Enclosure | None, facts: Facts) -> str:
    """On what a claim to have disinfected would rest.

    On nothing where it isn't known to work on the organism named, or where the enclosure's material soaks in.
    """
    return (
        "none"
        if wet.organism_verdict in ("fails", "unknown") or soaking_in(enclosure, facts) is not None
        else wet.basis
    )


def too_weak(wet: WetTime, agent: Agent) -> tuple[str, ...]:
    """The fact that tells that the mix is weaker than all that vouches for its wet time; empty: not known."""
    return (agent.hold_least,) if wet.too_weak and agent.hold_least is not None else ()


def soaking_in(enclosure: Enclosure | None, facts: Facts) -> Material | None:
    """What the enclosure is made of, where that holds germs where no product reaches; None: it isn't known to."""
    named = facts.material_named(enclosure.material) if enclosure is not None and enclosure.material else None
    return named if named is not None and named.porous else None


def what_soaks_in(enclosures: tuple[Enclosure, ...], facts: Facts) -> tuple[str, ...]:
    """The facts that tell why what these are made of can't be called disinfected."""
    materials = (soaking_in(enclosure, facts) for enclosure in enclosures)
    return tuple(dict.fromkeys(material.fact or "choosing-porous" for material in materials if material is not None))


def room_airing(world: World) -> tuple[float, Source]:
    """Air changes an hour as the room usually is, and where the figure is from; nothing set counts as shut."""
    airing = world.household.room.airing
    if isinstance(airing, int | float):
        return float(airing), Source("setting-airing", "setting", f"{airing} air changes an hour, as set for the room")
    fact = world.facts[AIR_CHANGES[airing or "shut"]]
    return float(fact.value), fact.cited()


def airing_with(openings: int, world: World) -> tuple[float, Source]:
    """Air changes an hour with so many windows or doors open; three stands for more."""
    fact = world.facts[AIR_CHANGES[OPENINGS[max(0, min(openings, 3))]]]
    return float(fact.value), fact.cited()


def changes_needed(world: World) -> float:
    """Air changes that the airing needs in all, for the published share removed."""
    return air_changes_needed(float(world.facts["airing-removal"].value) / 100)


def ask_agent(reading: Reading, world: World) -> Answer:
    """Asks with what."""
    bottles = tuple(bottle.name for bottle in world.household.bottles)
    return ask(reading, world, ("bottle", "stock", "agent"), "the_round.with_what", {"bottles": bottles})
