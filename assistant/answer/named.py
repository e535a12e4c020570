"""What a turn names: agents, the product and what is in it, the germ; and a product that nobody knows."""

from __future__ import annotations

from assistant.answer.meeting import UNKNOWN_FACT, agent_of
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.facts import Agent
from assistant.core.household import Bottle, Stock
from assistant.core.shelf.bottles import as_filled, filled_with

PRODUCTS = ("agent", "stock", "bottle")
"""Kinds of slot that stand for something to clean with."""


def supply_named(reading: Reading, world: World) -> tuple[Agent | None, Bottle | None, Stock | None]:
    """The product named, by bottle, stock or agent; a product of unknown content is the agent "other".

    A bottle stands for what it was last filled with on record; with no fill on record, for what keeping.toml says.
    """
    slots, household = reading.slots, world.household
    bottle = household.bottle(slots.bottles[0]) if slots.bottles else None
    bottle = as_filled(bottle, world.state) if bottle is not None else None
    stock = household.stock(slots.stocks[0]) if slots.stocks else None
    if stock is None and bottle is not None:
        stock = household.stock(bottle.stock)
    if slots.agents and (stock is None or stock.agent not in slots.agents):
        return agent_of(slots.agents[0], world), None, None
    if stock is not None:
        return agent_of(stock.agent, world), bottle, stock
    if bottle is not None:
        return agent_in(bottle, world) or agent_of("other", world), bottle, None
    if any(unknown.kind in PRODUCTS for unknown in slots.unknown):
        return agent_of("other", world), None, None
    return None, None, None


def agent_in(bottle: Bottle, world: World) -> Agent | None:
    """The agent that a bottle was last filled with on record, else the one that keeping.toml means it for, if any."""
    filled = filled_with(bottle, world.state)
    if filled is not None:
        return agent_of(filled, world)
    stock = world.household.stock(bottle.stock)
    return agent_of(stock.agent, world) if stock is not None else None


def agents_said(reading: Reading, world: World) -> tuple[Agent, ...]:
    """Each agent once: those said by name, then what stands in the stocks said."""
    stocks = (world.household.stock(name) for name in reading.slots.stocks)
    ids = [*reading.slots.agents, *(stock.agent for stock in stocks if stock is not None)]
    return tuple(agent_of(agent, world) for agent in dict.fromkeys(ids))


def agents_named(reading: Reading, world: World) -> tuple[Agent, ...]:
    """The same, then what is in the bottles said."""
    bottles = (world.household.bottle(name) for name in reading.slots.bottles)
    inside = (agent_in(bottle, world) for bottle in bottles if bottle is not None)
    return tuple(dict.fromkeys((*agents_said(reading, world), *(agent for agent in inside if agent is not None))))


def germ_named(reading: Reading, world: World) -> str | None:
    """The germ named; none named, the one that the last answer was about."""
    if reading.slots.organisms:
        return reading.slots.organisms[0]
    if germ_unheard_of(reading) is not None:
        return None
    last = world.talk.last
    goes_on = last is not None and last.intent in ("works_on", "outbreak") and not _names_a_job(reading)
    if last is None or (reading.intent == "choose_agent" and not goes_on):
        return None
    organism = last.values.get("organism")
    if organism not in world.facts.organisms and reading.intent == "works_on":
        organism = germ_on_record(world)
    return organism if organism in world.facts.organisms else None


def germ_unheard_of(reading: Reading) -> str | None:
    """The germ named that no fact tells of; None: none is, or another one as well that is known."""
    said = [unknown.said for unknown in reading.slots.unknown if unknown.kind == "organism"]
    return said[0] if said and not reading.slots.organisms else None


def nothing_on(germ: str, reading: Reading, **values: object) -> Answer:
    """There is nothing on that germ, and no other germ's figures stand in for it."""
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "does_it_work.unknown_germ",
        details={"germ": germ},
        values={"organism": None, "minutes": None, **values},
        cautions=("caution-label-first", "caution-vet"),
    )


def _names_a_job(reading: Reading) -> bool:
    """False for "what does work, then?", which goes on from the germ just spoken of."""
    slots = reading.slots
    return bool(slots.job or slots.materials or slots.enclosures)


def germ_on_record(world: World) -> str | None:
    """The one germ that any animal is marked sick with on record; None: there is none, or more than one."""
    germs = {now.organism for now in world.state.groups.values() if now.group == "sick" and now.organism is not None}
    return germs.pop() if len(germs) == 1 else None


def germ_there(enclosure: str, world: World) -> str | None:
    """The germ that an enclosure is marked sick with on record; None: none."""
    marked = world.state.groups.get(enclosure)
    return marked.organism if marked is not None and marked.group == "sick" else None


def unknown_product(reading: Reading, world: World, verdict: str | None) -> Answer:
    said = [unknown.said for unknown in reading.slots.unknown if unknown.kind in PRODUCTS]
    fact = world.facts[UNKNOWN_FACT]
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "does_it_work.unknown_product",
        details={"said": said[0] if said else None},
        values={"agent": "other", "verdict": verdict, "minutes": None, "strength_percent": None},
        cautions=("caution-label-first",),
        sources=(fact.cited(),),
    )


def of_an_unknown_mix(reading: Reading, world: World, **values: object) -> Answer | None:
    """A bottle named that holds an unknown mix is put to no use at all; None: none is named."""
    bottle = next((name for name in reading.slots.bottles if name in world.state.unknown_mixes), None)
    return unknown_mix(bottle, reading, **values) if bottle is not None else None


def unknown_mix(bottle: str, reading: Reading, **values: object) -> Answer:
    """The refusal. values: what this question always tells, as far as it can be told."""
    return Answer(
        reading.intent,
        Outcome.REFUSE,
        "the_round.unknown_mix",
        details={"bottle": bottle},
        values={"bottle": bottle, **values},
        cautions=("caution-label-first",),
    )
