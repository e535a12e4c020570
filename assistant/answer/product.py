"""What is being mixed: which agent, from which stock, how strong, into which bottle; and whether that may be."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction

from assistant.answer.asking import ask
from assistant.answer.meeting import UNKNOWN_FACT, agent_of
from assistant.answer.named import agents_said
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.choice.together import BLEACH, UNKNOWN, danger, meet, worst
from assistant.core.facts import Agent, Facts
from assistant.core.household import Basis, Bottle, Stock
from assistant.core.mixing.chlorine import Chlorine, available_chlorine
from assistant.core.shelf.bottles import held_in, is_on_record


@dataclass(frozen=True, slots=True)
class Product:
    """What is poured in, and where."""

    agent: Agent | None = None
    """None: nothing was named, so it is just "concentrate"."""
    stock: Stock | None = None
    bottle: Bottle | None = None
    said_strength: Fraction | None = None
    """Percent, stated in the question: overrides the shelf's."""

    @property
    def name(self) -> str:
        """As spoken."""
        if self.agent is None:
            return "concentrate"
        return self.stock.name if self.agent.family == UNKNOWN and self.stock is not None else self.agent.name

    @property
    def percent(self) -> Fraction | None:
        """Its strength; None: not known."""
        if self.said_strength is not None:
            return self.said_strength
        return self.stock.strength.amount if self.stock is not None and self.stock.strength is not None else None

    @property
    def basis(self) -> Basis | None:
        """Of the shelf's strength; a strength stated in the question has none."""
        return self.stock.basis if self.stock is not None and self.said_strength is None else None

    @property
    def is_bleach(self) -> bool:
        """True for what gives off available chlorine."""
        return self.agent is not None and self.agent.family == BLEACH

    def chlorine(self, facts: Facts) -> Chlorine | None:
        """Its available chlorine undiluted; None: no bleach, or its strength isn't known."""
        if not self.is_bleach or self.percent is None:
            return None
        return available_chlorine(self.percent, self.basis, facts)


def product_in(reading: Reading, world: World) -> Product | Answer:
    """What a reading names: by stock, by agent, or by its bottle; an answer where it can't be told or may not be.

    An agent on the shelf once is that stock; on the shelf twice it is asked which, unless the bottle or a stated
    strength tells; not on the shelf at all it is still an agent.
    """
    bottle = _bottle_in(reading, world)
    if isinstance(bottle, Answer):
        return bottle
    agents = agents_said(reading, world)
    if len(agents) > 1:
        return _two_products(agents, reading, world)
    stock = _stock_in(reading, bottle, world)
    if isinstance(stock, Answer):
        return stock
    agent = agent_of(stock.agent, world) if stock is not None else agents[0] if agents else None
    strength = reading.slots.stock_strength
    return Product(agent, stock, bottle, strength.amount if strength is not None else None)


def allowed_product(reading: Reading, world: World) -> Product | Answer:
    """What a reading names, where nothing forbids mixing it; else the answer that says why not, or asks."""
    product = product_in(reading, world)
    if isinstance(product, Answer):
        return product
    return forbidden(product, reading, world) or product


def forbidden(product: Product, reading: Reading, world: World) -> Answer | None:
    """Why it is not to be mixed, or not in that bottle; None: nothing forbids it."""
    bottle, agent = product.bottle, product.agent
    if bottle is not None and bottle.name in world.state.unknown_mixes:
        return _refused(reading, "the_round.unknown_mix", {"bottle": bottle.name})
    if agent is None:
        return None
    if agent.refused is not None:
        return _refused(reading, "the_round.refused_agent", {"agent": agent}, world, agent.refused)
    if agent.refused_in_water is not None:
        for name in reading.slots.enclosures:
            enclosure = world.household.enclosure(name)
            if enclosure is not None and enclosure.water != "dry":
                details = {"agent": agent, "enclosure": enclosure}
                return _refused(reading, "the_round.refused_in_water", details, world, agent.refused_in_water)
    other = other_in_bottle(product, world)
    if other is not None and bottle is not None:
        pair = meet(other, agent, world.facts)
        if pair is None or pair.verdict == "never":
            reason = world.facts[pair.fact if pair is not None else UNKNOWN_FACT]
            details = {"bottle": bottle, "first": other, "second": agent, "pair": pair, "reason": reason}
            details["on_record"] = is_on_record(bottle, world.state)
            return _refused(reading, "mixing.other_in_bottle", details, world, reason.id)
    return None


def other_in_bottle(product: Product, world: World) -> Agent | None:
    """The agent in that bottle that least may meet the new one; None: none but itself.

    What the record says it held since it was last rinsed out; with nothing on record, what keeping.toml means it for.
    """
    bottle, agent = product.bottle, product.agent
    if bottle is None or agent is None:
        return None
    if not is_on_record(bottle, world.state):
        return meant_for_another(product, world)
    others = [agent_of(other, world) for other in held_in(bottle, world.state) if other != agent.id]
    return max(others, key=lambda other: danger(meet(other, agent, world.facts)), default=None)


def meant_for_another(product: Product, world: World) -> Agent | None:
    """The agent that keeping.toml means the bottle for, where it isn't the one to be mixed."""
    stock = world.household.stock(product.bottle.stock) if product.bottle is not None else None
    if stock is None or product.agent is None or stock.agent == product.agent.id:
        return None
    return agent_of(stock.agent, world)


def own_stock(product: Product, world: World) -> bool:
    """Whether the bottle is meant for what is being mixed, so that its own mix holds; True when nothing was named."""
    return product.bottle is not None and meant_for_another(product, world) is None


def _bottle_in(reading: Reading, world: World) -> Bottle | Answer | None:
    names = tuple(dict.fromkeys(reading.slots.bottles))
    if len(names) > 1:
        return ask(reading, world, ("bottle",), "mixing.which_bottle", {"candidates": names})
    return world.household.bottle(names[0]) if names else None


def _two_products(agents: tuple[Agent, ...], reading: Reading, world: World) -> Answer:
    """Two agents for one bottle: never, where they may not meet; else one of them has to be named."""
    first, second, pair = worst(agents, world.facts)
    if pair is None or pair.verdict == "never":
        reason = world.facts[pair.fact if pair is not None else UNKNOWN_FACT]
        details = {"first": first, "second": second, "pair": pair, "reason": reason}
        return _refused(reading, "mixing.must_not_meet", details, world, reason.id)
    names = tuple(agent.name for agent in agents)
    return ask(reading, world, ("agent", "stock"), "mixing.which_product", {"candidates": names})


def _stock_in(reading: Reading, bottle: Bottle | None, world: World) -> Stock | Answer | None:
    slots, household = reading.slots, world.household
    names = tuple(dict.fromkeys(slots.stocks))
    if len(names) > 1:
        return ask(reading, world, ("stock",), "mixing.which_product", {"candidates": names})
    if names:
        return household.stock(names[0])
    bottles_own = household.stock(bottle.stock) if bottle is not None else None
    if not slots.agents:
        return bottles_own
    if bottles_own is not None and bottles_own.agent == slots.agents[0]:
        return bottles_own
    stocks = household.stocks_of(slots.agents[0])
    if len(stocks) > 1 and slots.stock_strength is None:
        candidates = tuple(stock.name for stock in stocks)
        return ask(reading, world, ("stock", "stock_strength"), "mixing.which_product", {"candidates": candidates})
    return stocks[0] if len(stocks) == 1 else None


def _refused(
    reading: Reading, message: str, details: Mapping[str, object], world: World | None = None, fact: str | None = None
) -> Answer:
    sources = (world.facts[fact].cited(),) if world is not None and fact is not None else ()
    return Answer(
        reading.intent,
        Outcome.REFUSE,
        message,
        details=details,
        cautions=("caution-label-first",),
        sources=sources,
    )
