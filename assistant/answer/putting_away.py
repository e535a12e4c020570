"""Where products are kept, where leftovers go, and what is done with a bottle that nobody knows."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any

from assistant.answer.asking import ask
from assistant.answer.meeting import UNKNOWN_FACT, agent_of
from assistant.answer.named import agent_in, agents_named
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.choice.together import BLEACH, UNKNOWN, worst
from assistant.core.facts import Agent, Fact
from assistant.core.quantities.amounts import Amount
from assistant.core.record.events import BottleDoubted

NEVER_THERE = {
    "kitchen sink": "disposal-kitchen",
    "street drain": "disposal-storm",
    "garden": "disposal-ground",
    "water": "disposal-storm",
}
"""Where nothing goes, and why."""

OF_ALCOHOL = ("disposal-alcohol", "disposal-alcohol-sewer")


@dataclass(frozen=True, slots=True)
class Product:
    """What is asked about: an agent, undiluted or mixed; in which bottle."""

    agent: Agent | None = None
    concentrate: bool = False
    bottle: str | None = None


def pour_away(reading: Reading, world: World) -> Answer:
    """Where a leftover goes: a little with water, or to collection; never the kitchen sink, never outdoors."""
    product = _product(_with_product(reading, world), world)
    drain = reading.slots.drains[0] if reading.slots.drains else None
    last = world.talk.last
    if last is not None and last.intent == "unknown_bottle" and "it" in reading.words:
        return _poured(reading, world, "putting_away.pour_unknown", Product(), drain, ("disposal-unknown",))
    if product.bottle is not None and product.bottle in world.state.unknown_mixes:
        return _poured(
            reading, world, "putting_away.pour_unknown", product, drain, ("disposal-unknown", "disposal-gas")
        )
    if drain in NEVER_THERE:
        return _poured(reading, world, "putting_away.never_there", product, drain, (NEVER_THERE[drain], *_of(product)))
    if product.agent is None:
        return ask(reading, world, ("agent", "bottle", "stock"), "putting_away.pour_what", verdict=None)
    if product.agent.family == UNKNOWN:
        return _poured(reading, world, "putting_away.pour_unknown", product, drain, ("disposal-unknown",))
    return _poured(reading, world, f"putting_away.{_kind_of_pouring(product, drain)}", product, drain, _of(product))


def _with_product(reading: Reading, world: World) -> Reading:
    """ "And down the toilet?": the product of the question before."""
    before, slots = world.talk.last_reading, reading.slots
    if before is None or before.intent != reading.intent or slots.agents or slots.stocks or slots.bottles:
        return reading
    named = replace(slots, agents=before.slots.agents, stocks=before.slots.stocks, bottles=before.slots.bottles)
    return replace(reading, slots=named, question=f"{reading.question} {before.question}")


def _kind_of_pouring(product: Product, drain: str | None) -> str:
    if product.agent is not None and product.agent.needs_cold:
        return "pour_alcohol"  # "putting_away.pour_alcohol"
    if product.concentrate:
        return "pour_concentrate"  # "putting_away.pour_concentrate"
    return "pour_septic" if drain == "septic" else "pour"  # "putting_away.pour_septic", "putting_away.pour"


def _of(product: Product) -> tuple[str, ...]:
    """The facts on pouring it away."""
    agent = product.agent
    if agent is None:
        return ("disposal-order", "disposal-one-product")
    if agent.needs_cold:
        return OF_ALCOHOL
    own = {"quat": ("disposal-quat-fish",), "biguanide": ("disposal-chlorhexidine",)}.get(agent.family, ())
    if agent.family == BLEACH:
        own = ("disposal-toilet-acid",)
    if product.concentrate:
        return ("disposal-concentrate", "disposal-order", *own)
    return (
        "disposal-small",
        "disposal-one-product",
        *own,
        "disposal-septic",
        "disposal-septic-bucket",
        "disposal-storm",
    )


def _poured(
    reading: Reading, world: World, message: str, product: Product, drain: str | None, facts: tuple[str, ...]
) -> Answer:
    refused = message in ("putting_away.never_there", "putting_away.pour_unknown")
    found = tuple(world.facts[fact] for fact in facts)
    return Answer(
        reading.intent,
        Outcome.REFUSE if refused else Outcome.ANSWER,
        message,
        details={"product": product, "drain": drain, "facts": found, "people": world.household.people},
        values={
            "agent": product.agent.id if product.agent is not None else None,
            "where": drain,
            "verdict": "never" if refused else "collection" if message in COLLECTED else "small_amounts",
            "amount": _first_amount(found) if message == "putting_away.pour" else None,
        },
        cautions=("caution-never-mix", "caution-label-first"),
        sources=tuple(fact.cited() for fact in found),
    )


COLLECTED = ("putting_away.pour_alcohol", "putting_away.pour_concentrate")


def _first_amount(facts: tuple[Fact, ...]) -> Amount | None:
    fact = facts[0]
    return Amount(fact.exact(), "US cup") if fact.unit == "cup" else None


def _product(reading: Reading, world: World) -> Product:
    slots, household = reading.slots, world.household
    if slots.bottles:
        bottle = household.bottle(slots.bottles[0])
        inside = agent_in(bottle, world) if bottle is not None else None
        said = agent_of(slots.agents[0], world) if slots.agents else inside
        return Product(said or agent_of("other", world), bottle=slots.bottles[0])
    if slots.stocks:
        stock = household.stock(slots.stocks[0])
        return Product(agent_of(stock.agent, world) if stock is not None else None, concentrate=True)
    concentrate = not {"concentrate", "concentrated", "undiluted"}.isdisjoint(reading.words)
    return Product(agent_of(slots.agents[0], world), concentrate) if slots.agents else Product()


# ---------------------------------------------------------------- a bottle that nobody knows


def unknown_bottle(reading: Reading, world: World) -> Answer:
    """Never opened, sniffed, mixed or guessed from its colour; one of the household's own is marked unknown."""
    bottle = reading.slots.bottles[0] if reading.slots.bottles else None
    marked = tuple(BottleDoubted(name) for name in reading.slots.bottles)
    facts = tuple(
        world.facts[fact] for fact in ("disposal-unknown-hands-off", "disposal-unknown", "disposal-own-unnamed")
    )
    wish = reading.slots.wish
    return Answer(
        reading.intent,
        Outcome.REFUSE if wish else Outcome.ANSWER,
        "putting_away.unknown_wish" if wish else "putting_away.unknown",
        details={
            "bottle": bottle,
            "bottles": reading.slots.bottles,
            "wish": wish,
            "facts": facts,
            "people": world.household.people,
        },
        values={"bottle": bottle, "use": False},
        cautions=("caution-poison-centre",),
        sources=tuple(fact.cited() for fact in facts),
        events=marked if not wish else (),
    )


# ---------------------------------------------------------------- where it is kept


def store_it(reading: Reading, world: World) -> Answer:
    """Where and how a product is kept; two that react are kept apart."""
    agents = agents_named(reading, world)
    if len(agents) > 1:
        return _side_by_side(reading, agents, world)
    if not agents:
        return _stored(
            reading, None, ("storage-original", "storage-apart", "storage-sink", "storage-drink-bottle"), world
        )
    return _stored(reading, agents[0], (*_own(agents[0]), "storage-original", "storage-apart"), world)


def _own(agent: Agent) -> tuple[str, ...]:
    if agent.family == BLEACH:
        return ("storage-bleach", "storage-bleach-warm")
    if agent.needs_cold:
        return ("storage-alcohol-max", "storage-flammable", "storage-alcohol-sparks")
    return {"peroxide": ("storage-peroxide",), "quat": ("storage-quat",)}.get(agent.family, ())


def _stored(reading: Reading, agent: Agent | None, facts: tuple[str, ...], world: World) -> Answer:
    found = tuple(world.facts[fact] for fact in facts)
    hottest = next((fact for fact in found if fact.unit == "degC"), None)
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "putting_away.store",
        details={"agent": agent, "kind": _kind(agent), "hottest": hottest, "facts": found},
        values=_store_values(agent, hottest, None),
        cautions=("caution-label-first",),
        sources=tuple(fact.cited() for fact in found),
    )


def _kind(agent: Agent | None) -> str:
    if agent is None:
        return "any"
    if agent.family == BLEACH:
        return "bleach"
    if agent.needs_cold:
        return "alcohol"
    return "acid" if agent.acidic else agent.family if agent.family in ("peroxide", "quat") else "any"


def _store_values(agent: Agent | None, hottest: Fact | None, verdict: str | None) -> Mapping[str, Any]:
    return {
        "agent": agent.id if agent is not None else None,
        "temperature": Amount(hottest.exact(), "degC") if hottest is not None else None,
        "verdict": verdict,
    }


def _side_by_side(reading: Reading, agents: tuple[Agent, ...], world: World) -> Answer:
    first, second, pair = worst(agents, world.facts)
    reason = world.facts[pair.fact if pair is not None else UNKNOWN_FACT]
    apart = pair is None or pair.verdict == "never"
    facts = (reason, world.facts["storage-apart"], world.facts["storage-original"])
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "putting_away.apart" if apart else "putting_away.beside",
        details={"first": first, "second": second, "pair": pair, "facts": facts},
        values=_store_values(first, None, "apart" if apart else "fine"),
        cautions=("caution-label-first",),
        sources=tuple(fact.cited() for fact in facts),
    )
