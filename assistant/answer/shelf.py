"""The shelf: what each bottle holds, whether it is still good, what is left of a stock, and that one was rinsed out.

`mixed`, which records a fill, is long enough for a file of its own, `filling`.
"""

from __future__ import annotations

from datetime import date, datetime, time, timedelta
from math import floor
from typing import Any

from assistant.answer.asking import ask, names_of
from assistant.answer.back_dated import earliest
from assistant.answer.filling import mixed, sources_of
from assistant.answer.meeting import agent_of
from assistant.answer.product import Product, product_in
from assistant.answer.strength import strength_of
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.amounts import Amount, SaidRatio
from assistant.core.bottles import NOTHING, left_of, life_of, ml_a_day
from assistant.core.decay import age_of
from assistant.core.dilution import mix
from assistant.core.errors import OutOfRange
from assistant.core.events import BottleRinsed
from assistant.core.facts import Source
from assistant.core.household import Bottle, Stock
from assistant.core.quantity import read_mix
from assistant.core.ratio import Ratio, read
from assistant.core.state import Fill
from assistant.core.together import BLEACH
from assistant.core.units import in_ml

__all__ = ["in_bottle", "mixed", "rinsed_out", "still_good", "stock_left"]


MIXES_ARE_ASKED_OF = timedelta(days=7)
"""What was made longer ago, with no bottle named, is a product as bought: "the bleach from last march"."""


def rinsed_out(reading: Reading, world: World) -> Answer:
    """Records that a bottle was emptied, rinsed and pumped through, so that nothing it held counts any more."""
    if not reading.slots.bottles:
        known = world.state.unknown_mixes or names_of("bottle", world)
        return ask(reading, world, ("bottle",), "shelf.rinsed_which", {"known": known})
    bottle = reading.slots.bottles[0]
    held = world.state.bottles.get(bottle, NOTHING).held
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "shelf.rinsed_out",
        details={
            "bottle": bottle,
            "was_unknown": bottle in world.state.unknown_mixes,
            "held": tuple(agent_of(agent, world) for agent in held),
        },
        values={"recorded": True, "bottle": bottle, "held": held},
        events=(BottleRinsed(bottle),),
    )


# ---------------------------------------------------------------- what is in it


def in_bottle(reading: Reading, world: World) -> Answer:
    """What a bottle holds on record; with none named, what each of them does."""
    named = [b for name in reading.slots.bottles if (b := world.household.bottle(name)) is not None]
    if len(named) == 1:
        told = _told(named[0], world)
        return Answer(reading.intent, Outcome.ANSWER, "shelf.in_bottle", details=told, values=_values(told, world))
    told_all = tuple(_told(bottle, world) for bottle in named or world.household.bottles)
    if reading.slots.agents:
        told_all = tuple(t for t in told_all if t["agent"] is not None and t["agent"].id in reading.slots.agents)
    agents = tuple(agent_of(agent, world) for agent in reading.slots.agents)
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "shelf.in_bottles",
        details={"bottles": told_all, "agents": agents, "any": bool(world.household.bottles), "now": world.now},
        values={"bottles_held": tuple(_values(told, world) for told in told_all)},
    )


def _told(bottle: Bottle, world: World) -> dict[str, Any]:
    """What is to say of one bottle: what is in it on record, else what it is for."""
    holds = world.state.bottles.get(bottle.name, NOTHING)
    fill = holds.fill
    meant = world.household.stock(bottle.stock)
    stock = world.household.stock(fill.stock) if fill is not None else meant
    agent = agent_of(fill.agent, world) if fill is not None else None
    return {
        "bottle": bottle,
        "fill": fill,
        "wanted": read_mix(fill.mix) if fill is not None and fill.mix is not None else None,
        "meant_for": agent_of(meant.agent, world) if meant is not None else None,
        "meant_mix": bottle.mix,
        "agent": agent or (agent_of(meant.agent, world) if meant is not None and holds == NOTHING else None),
        "stock": stock,
        "unknown": bottle.name in world.state.unknown_mixes,
        "held": tuple(agent_of(agent, world) for agent in holds.held),
        "rinsed_at": holds.rinsed_at,
        "ready": _is_good(fill, world.now),
        "now": world.now,
    }


def _values(told: dict[str, Any], world: World) -> dict[str, Any]:
    fill: Fill | None = told["fill"]
    ratio = _ratio_of(fill, world)
    return {
        "bottle": told["bottle"].name,
        "agent": fill.agent if fill is not None else None,
        "stock": fill.stock if fill is not None else None,
        "mix": fill.mix if fill is not None else None,
        "parts": ratio.parts if ratio is not None else None,
        "reading": ratio.reading if ratio is not None else None,
        "total": fill.total if fill is not None else None,
        "mixed_at": fill.at.astimezone(world.now.tzinfo) if fill is not None else None,
        "expires": _local(fill.kept_until, world) if fill is not None else None,
        "ready": told["ready"],
        "unknown_mix": told["unknown"],
        "held": tuple(agent.id for agent in told["held"]),
        "meant_for": told["meant_for"].id if told["meant_for"] is not None else None,
    }


def _ratio_of(fill: Fill | None, world: World) -> Ratio | None:
    wanted = read_mix(fill.mix) if fill is not None and fill.mix is not None else None
    if not isinstance(wanted, SaidRatio):
        return None
    try:
        ratio = read(wanted, world.household.habits.ratio or "to")
    except OutOfRange:
        return None
    return ratio if isinstance(ratio, Ratio) else None


def _is_good(fill: Fill | None, now: datetime) -> bool | None:
    """True up to its end, False from then on; None: nothing on record, or no limit is known."""
    if fill is None or fill.basis == "unknown":
        return None
    return fill.kept_until is None or now < fill.kept_until


def _local(at: datetime | None, world: World) -> datetime | None:
    return at.astimezone(world.now.tzinfo) if at is not None else None


# ---------------------------------------------------------------- is it still good


def still_good(reading: Reading, world: World) -> Answer:
    """Whether a bottle's mix, or a stock as bought, is still good, and until when."""
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
    return _good_stock(reading, product, world)


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
    ready = _is_good(fill, world.now)
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "shelf.good_told",
        details={"fill": fill, "name": product.name, "agent": product.agent, "ready": ready, "now": world.now},
        values={
            "ready": ready,
            "expires": _local(life.until, world),
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
    told = _told(bottle, world)
    fill: Fill | None = told["fill"]
    ready = False if told["unknown"] else told["ready"]
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "shelf.good_bottle",
        details={**told, "ready": ready},
        values={**_values(told, world), "ready": ready, "basis": fill.basis if fill is not None else None},
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


# ---------------------------------------------------------------- what is left


def stock_left(reading: Reading, world: World) -> Answer:
    """What is left of a stock, for how many fills, and when it runs out at the present pace."""
    slots = reading.slots
    if not (slots.bottles or slots.stocks or slots.agents):
        return _all_left(reading, world)
    product = product_in(reading, world)
    if isinstance(product, Answer):
        return product
    stock = product.stock
    if stock is None:
        known = names_of("stock", world)
        return ask(reading, world, ("stock",), "shelf.left_which", {"known": known, "name": product.name})
    bottle = product.bottle or _usual_bottle(stock, world)
    told = _left(stock, bottle, reading, world)
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "shelf.stock_left",
        details=told,
        values={key: told[key] for key in ("left", "fills_left", "runs_out", "a_day")}
        | {"stock": stock.name, "bottle": bottle.name if bottle is not None else None},
        sources=(Source("setting-left", "setting", f"{stock.name}: what is left, as you set it"),) * bool(stock.left),
    )


def _all_left(reading: Reading, world: World) -> Answer:
    """Every stock whose amount is set, the one that runs out first ahead."""
    stocks = [stock for stock in world.household.stocks if stock.left is not None]
    if not stocks:
        return ask(reading, world, ("stock",), "shelf.left_which", {"known": names_of("stock", world), "name": None})
    told = [_left(stock, _usual_bottle(stock, world), reading, world) for stock in stocks]
    told.sort(key=lambda one: one["fills_left"] if one["fills_left"] is not None else float("inf"))
    first = told[0]
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "shelf.stocks_left",
        details={"stocks": tuple(told)},
        values={key: first[key] for key in ("left", "fills_left", "runs_out", "a_day")}
        | {
            "stock": first["stock"].name,
            "bottle": first["bottle"].name if first["bottle"] is not None else None,
            "stocks": tuple(
                {"stock": one["stock"].name, "left": one["left"], "fills_left": one["fills_left"]} for one in told
            ),
        },
        sources=(Source("setting-left", "setting", "what is left of each stock, as you set it"),),
    )


def _usual_bottle(stock: Stock, world: World) -> Bottle | None:
    """The bottle that was last filled from a stock; else the first that is meant for it."""
    filled = [
        (holds.fill.at, name)
        for name, holds in world.state.bottles.items()
        if holds.fill is not None and holds.fill.stock == stock.name
    ]
    if filled:
        return world.household.bottle(max(filled)[1])
    return next((bottle for bottle in world.household.bottles if bottle.stock == stock.name), None)


def _left(stock: Stock, bottle: Bottle | None, reading: Reading, world: World) -> dict[str, Any]:
    left = left_of(stock, world.state)
    a_fill = _a_fill(stock, bottle, reading, world)
    pace = ml_a_day(stock, world.state)
    fills = floor(left.amount / in_ml(a_fill)) if left is not None and a_fill is not None else None
    runs_out = None
    if left is not None and pace:
        runs_out = world.now + timedelta(days=float(left.amount / pace))
    return {
        "stock": stock,
        "bottle": bottle,
        "left": left,
        "a_fill": a_fill,
        "fills_left": fills,
        "a_day": Amount(pace, "mL") if pace is not None else None,
        "runs_out": runs_out,
        "now": world.now,
    }


def _a_fill(stock: Stock, bottle: Bottle | None, reading: Reading, world: World) -> Amount | None:
    """What one fill of that bottle takes: as it was last filled, else at the bottle's own mix; None: not known."""
    if bottle is None:
        return None
    fill = world.state.bottles.get(bottle.name, NOTHING).fill
    if fill is not None and fill.stock == stock.name and fill.concentrate is not None and not fill.topped_up:
        return fill.concentrate
    if bottle.mix is None or bottle.stock != stock.name:
        return None
    strength = strength_of(bottle.mix, Product(agent_of(stock.agent, world), stock, bottle), reading, world)
    return None if isinstance(strength, Answer) else mix(bottle.capacity, strength.share).concentrate
