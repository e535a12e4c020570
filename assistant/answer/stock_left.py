"""What is left of a stock, for how many fills, and when it runs out at the present pace."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import timedelta
from math import floor
from typing import Any

from assistant.answer.asking import ask, names_of
from assistant.answer.meeting import agent_of
from assistant.answer.product import Product, product_in
from assistant.answer.strength import strength_of
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.facts import Source
from assistant.core.household import Bottle, Stock
from assistant.core.mixing.dilution import mix
from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.units import in_ml
from assistant.core.shelf.bottles import NOTHING, left_of, ml_a_day


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
        details={**told, "told": _told(reading)},
        values={key: told[key] for key in ("left", "fills_left", "runs_out", "a_day")}
        | {"stock": stock.name, "bottle": bottle.name if bottle is not None else None},
        sources=(Source("setting-left", "setting", f"{stock.name}: what is left, as you set it"),) * bool(stock.left),
    )


def strength_is_set(reading: Reading, world: World) -> Answer:
    """Told how strong a product is: keeping.toml says that, so no number is reckoned with another, and that is said."""
    product = product_in(replace(reading, intent="stock_left"), world)
    stock = product.stock if isinstance(product, Product) else None
    details = {
        "name": product.name if isinstance(product, Product) else "it",
        "told": reading.slots.stock_strength,
        "set": stock.strength if stock is not None else None,
    }
    return Answer(None, Outcome.UNSURE, "shelf.strength_is_set", details, {"recorded": False})


def _told(reading: Reading) -> bool:
    """ "I've 200 mils left", "I bought more": told, which changes no count, and that has to be said."""
    if bool(reading.slots.volumes) or _BOUGHT.search(reading.said) is not None:
        return True
    return not reading.asks and _GONE.search(reading.said) is not None


_BOUGHT = re.compile(r"\b(?:bought|got|have|there is|there's|opened) (?:some |a |another )?(?:more|new|fresh)\b")


_GONE = re.compile(
    r"^(?!(?:when|how|am|are|is|will|did|do|have)\b).*\b(?:out of|no more|run out|ran out|used up|finished"
    r"|gone|none left"
    r"|empty|nothing left)\b"
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
