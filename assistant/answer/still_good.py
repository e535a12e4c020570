"""Is it still good: a bottle's mix, one told of, or a product as bought."""

from __future__ import annotations

from datetime import date, datetime, time, timedelta

from assistant.answer.asking import ask, names_of
from assistant.answer.back_dated import earliest
from assistant.answer.filling import sources_of
from assistant.answer.held import is_good, local, told_of, values_of
from assistant.answer.meeting import agent_of
from assistant.answer.mix_life import asked_of_any_mix, mix_life
from assistant.answer.product import Product, product_in
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.choice.together import BLEACH
from assistant.core.facts import Source
from assistant.core.household import Bottle, Stock
from assistant.core.mixing.decay import age_of
from assistant.core.record.state import Fill
from assistant.core.shelf.bottles import NOTHING, life_of

MIXES_ARE_ASKED_OF = timedelta(days=7)
"""What was made longer ago, with no bottle named, is a product as bought: "the bleach from last march"."""


def still_good(reading: Reading, world: World) -> Answer:
    """Whether a bottle's mix, or a stock as bought, is still good, and until when."""
    if len(reading.slots.bottles) > 1:  # "is yellow still good and what's in pink"
        return ask(reading, world, ("bottle",), "mixing.which_bottle", {"candidates": reading.slots.bottles})
    bottle = _bottle_asked(reading, world)
    told = _good_as_told(reading, bottle, world)
    if told is not None:
        return told
    if bottle is not None:
        return _good_bottle(reading, bottle, world)
    if not reading.slots.stocks and not reading.slots.agents:
        details = {"known": names_of("bottle", world)}
        return ask(reading, world, ("bottle", "stock"), "shelf.good_which", details)
    product = product_in(reading, world)
    if isinstance(product, Answer):
        return product
    general = mix_life(reading, product, world) if asked_of_any_mix(reading) else None
    return general or _good_stock(reading, product, world)


def _bottle_asked(reading: Reading, world: World) -> Bottle | None:
    """The bottle named; with nothing named at all, the only one that holds a mix on record."""
    if reading.slots.bottles:
        return world.household.bottle(reading.slots.bottles[0])
    if reading.slots.stocks or reading.slots.agents:
        return None
    filled = [b for b in world.household.bottles if world.state.bottles.get(b.name, NOTHING).fill is not None]
    if len(filled) != 1 or reading.slots.when is None:
        return filled[0] if len(filled) == 1 else None
    fill = world.state.bottles[filled[0].name].fill  # "last night's mix" is not the one of this morning
    made_then = fill is not None and fill.at.astimezone(world.now.tzinfo).date() == reading.slots.when.at.date()
    return filled[0] if made_then else None


def _good_as_told(reading: Reading, bottle: Bottle | None, world: World) -> Answer | None:
    """A mix that isn't on record, by when it was said to be made; None: nothing was said, or the record knows it."""
    said = reading.slots.when
    if said is None or (bottle is not None and world.state.bottles.get(bottle.name, NOTHING) != NOTHING):
        return None
    at = earliest(said, world.now)
    product = product_in(reading, world)
    if isinstance(product, Answer) or product.agent is None or at > world.now:
        return None
    if bottle is None and world.now - at > MIXES_ARE_ASKED_OF:
        return None
    life = life_of(product.agent, product.stock, at, world.facts)
    fill = Fill(at, product.agent.id, kept_until=life.until, basis=life.basis, to_the=said.to_the)
    ready = is_good(fill, world.now)
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "shelf.good_told",
        details={"fill": fill, "name": product.name, "agent": product.agent, "ready": ready, "now": world.now},
        values={
            "ready": ready,
            "expires": local(life.until, world),
            "bottle": bottle.name if bottle is not None else None,
            "agent": product.agent.id,
            "stock": product.stock.name if product.stock is not None else None,
            "mixed_at": at,
            "basis": life.basis,
        },
        cautions=("caution-label-first",),
        sources=sources_of(life, product, world),
    )


def _good_bottle(reading: Reading, bottle: Bottle, world: World) -> Answer:
    told = told_of(bottle, world)
    fill: Fill | None = told["fill"]
    ready = False if told["unknown"] else told["ready"]
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "shelf.good_bottle",
        details={**told, "ready": ready},
        values={**values_of(told, world), "ready": ready, "basis": fill.basis if fill is not None else None},
        cautions=("caution-label-first",),
        sources=_life_sources(fill, told["stock"], world),
    )


def _life_sources(fill: Fill | None, stock: Stock | None, world: World) -> tuple[Source, ...]:
    """What the life of a fill on record rests on."""
    if fill is None:
        return ()
    if fill.basis == "label":
        name = stock.name if stock is not None else fill.agent
        return (Source(f"label-{name}", "label", f"{name}: how long its label says the mix keeps"),)
    life = life_of(agent_of(fill.agent, world), None, fill.at, world.facts)
    return (world.facts[life.fact].cited(),) if life.fact is not None else ()


def _good_stock(reading: Reading, product: Product, world: World) -> Answer:
    """A stock as bought: bleach by its age, anything else by the date on its label."""
    stock, agent = product.stock, product.agent
    age = age_of(stock, world.now.date(), world.facts) if stock is not None and product.is_bleach else None
    ready = None
    if age is not None:
        ready = True if age.verdict == "corrected" else False if age.verdict in ("too weak", "too old") else None
    oldest = int(world.facts["bleach-age-oldest"].value)
    made = stock.made if stock is not None and product.is_bleach else None
    expires = _midnight(made + timedelta(days=oldest), world) if made is not None else None
    facts = ("bleach-age-oldest", "bleach-age-least-left") if agent is not None and agent.family == BLEACH else ()
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "shelf.good_stock",
        details={"name": product.name, "stock": stock, "agent": agent, "age": age, "ready": ready, "made": made},
        values={
            "ready": ready,
            "expires": expires,
            "bottle": None,
            "stock": stock.name if stock is not None else None,
            "agent": agent.id if agent is not None else None,
            "fraction_left": age.left if age is not None else None,
        },
        cautions=("caution-label-first",),
        sources=tuple(world.facts[fact].cited() for fact in facts),
    )


def _midnight(day: date, world: World) -> datetime:
    return datetime.combine(day, time(), world.now.tzinfo)
