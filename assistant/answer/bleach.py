"""How strong the bleach on the shelf still is."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from fractions import Fraction
from typing import Literal, TypeAlias

from assistant.answer.asking import ask
from assistant.answer.product import Product, product_in
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.choice.together import BLEACH
from assistant.core.facts import Source
from assistant.core.mixing.chlorine import Chlorine, available_chlorine
from assistant.core.mixing.decay import Kept, fraction_left_after
from assistant.core.quantities.errors import OutOfRange
from assistant.core.quantities.units import convert

Warmth: TypeAlias = Literal["said", "shelf", "room"]
HOTTEST = "bleach-age-hottest-shelf"
HYPOCHLORITE = "sodium hypochlorite"


@dataclass(frozen=True, slots=True)
class _Shelved:
    """A bleach and how it was kept."""

    product: Product
    percent: Fraction
    kept: tuple[Kept, ...]
    warmth: Warmth
    """Where the temperature came from."""

    @property
    def days(self) -> float:
        return sum(one.days for one in self.kept)


def bleach_now(reading: Reading, world: World) -> Answer:
    """How strong a bleach still is, by the published rate law; None of it where the law doesn't hold."""
    shelved = _shelved(reading, world)
    if isinstance(shelved, Answer):
        return shelved
    chlorine = available_chlorine(shelved.percent, shelved.product.basis, world.facts)
    try:
        left = fraction_left_after(float(chlorine.ppm) / 1000, shelved.kept, world.facts)
    except OutOfRange as beyond:
        return _outside(shelved, beyond, reading, world)
    return _found(shelved, chlorine, left, reading, world)


# ---------------------------------------------------------------- what is asked about


def _shelved(reading: Reading, world: World) -> _Shelved | Answer:
    product = _bleach_in(reading, world)
    if isinstance(product, Answer):
        return product
    if product.percent is None:
        return ask(reading, world, ("stock_strength",), "mixing.how_strong", {"name": product.name})
    spans = tuple(float(convert(one, "d").amount) for one in reading.slots.durations)
    warm = tuple(float(convert(one, "degC").amount) for one in reading.slots.temperatures)
    if len(spans) == len(warm) > 1:
        kept = tuple(Kept(degrees, days) for degrees, days in zip(warm, spans, strict=True))
        return _Shelved(product, product.percent, kept, "said")
    days = sum(spans) if spans else _days_old(product, reading, world)
    if days is None:
        return ask(reading, world, ("age",), "bleach.how_old", {"name": product.name})
    if days < 0:
        return ask(reading, world, ("age",), "bleach.not_yet_made", {"name": product.name})
    if max(warm, default=0) > world.facts[HOTTEST].value:
        return ask(reading, world, ("temperature",), "bleach.which_degrees", {"degrees": max(warm)})
    degrees = _warmth(warm, product, world)
    if degrees is None:
        return ask(reading, world, ("temperature",), "bleach.how_warm", {"name": product.name})
    return _Shelved(product, product.percent, (Kept(degrees[0], days),), degrees[1])


def _bleach_in(reading: Reading, world: World) -> Product | Answer:
    """The bleach named, or the only one on the shelf."""
    product = product_in(reading, world)
    if isinstance(product, Answer):
        return product
    if product.agent is not None and product.agent.family != BLEACH:
        return Answer(
            reading.intent,
            Outcome.UNSURE,
            "bleach.no_law",
            details={"name": product.name},
            values=_unknown(),
        )
    if product.agent is not None:
        return product
    stocks = world.household.stocks_of(HYPOCHLORITE)
    if len(stocks) > 1 and product.said_strength is None:
        names = tuple(stock.name for stock in stocks)
        return ask(reading, world, ("stock",), "mixing.which_product", {"candidates": names})
    stock = stocks[0] if len(stocks) == 1 else None
    return Product(world.facts.agents[HYPOCHLORITE], stock, None, product.said_strength)


def _days_old(product: Product, reading: Reading, world: World) -> float | None:
    """By the day or month said, else the shelf's date; None: neither is known. A day ahead counts from that date."""
    today = world.now.date()
    made = product.stock.made if product.stock is not None else None
    if reading.slots.when is not None:
        then = reading.slots.when.at.date()
        if then <= today:
            return (today - then).days
        return (then - made).days if made is not None else None
    if reading.slots.month is not None:
        year, month = reading.slots.month
        if year is None:
            year = today.year if month <= today.month else today.year - 1
        return (today - date(year, month, 1)).days  # from its first day: sooner too old than too fresh
    return (today - made).days if made is not None else None


def _warmth(said: tuple[float, ...], product: Product, world: World) -> tuple[float, Warmth] | None:
    if said:
        return said[0], "said"
    if product.stock is not None and product.stock.kept_at is not None:
        return float(convert(product.stock.kept_at, "degC").amount), "shelf"
    room = world.household.room.temperature
    return (float(convert(room, "degC").amount), "room") if room is not None else None


# ---------------------------------------------------------------- the answer


def _found(shelved: _Shelved, chlorine: Chlorine, left: float, reading: Reading, world: World) -> Answer:
    percent = float(shelved.percent) * left
    weak = left < float(world.facts["bleach-age-least-left"].value) / 100
    old = shelved.days > world.facts["bleach-age-oldest"].value
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "bleach.now",
        details={
            "name": shelved.product.name,
            "label": shelved.percent,
            "percent": percent,
            "left": left,
            "days": shelved.days,
            "kept": shelved.kept,
            "warmth": shelved.warmth,
            "weak": weak,
            "old": old,
        },
        values={
            "strength_percent": percent,
            "fraction_left": left,
            "strength_ppm": float(chlorine.ppm) * left,
            "label_percent": shelved.percent,
        },
        cautions=("caution-label-first",),
        sources=_sources(shelved, chlorine, world),
    )


def _outside(shelved: _Shelved, beyond: OutOfRange, reading: Reading, world: World) -> Answer:
    """The formula doesn't hold: no figure, and which limit it is."""
    facts = ("bleach-age-law", "bleach-age-range-strength", "bleach-age-range-warmth")
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "bleach.outside",
        details={
            "name": shelved.product.name,
            "label": shelved.percent,
            "days": shelved.days,
            "kept": shelved.kept,
            "warmth": shelved.warmth,
            "what": "strength" if beyond.what == "the hypochlorite" else "warmth",
            "warmth_range": world.facts["bleach-age-range-warmth"].value,
        },
        values={**_unknown(), "label_percent": shelved.percent},
        cautions=("caution-label-first",),
        sources=tuple(world.facts[fact].cited() for fact in facts),
    )


def _unknown() -> dict[str, None]:
    return {"strength_percent": None, "fraction_left": None, "strength_ppm": None, "label_percent": None}


def _sources(shelved: _Shelved, chlorine: Chlorine, world: World) -> tuple[Source, ...]:
    facts = ("bleach-age-law", "bleach-age-second-order", *chlorine.facts)
    cited = tuple(world.facts[fact].cited() for fact in facts)
    product = shelved.product
    if product.stock is None or product.said_strength is not None:
        return cited
    text = f"{product.stock.name}: {float(shelved.percent):g} percent, as you set it"
    return (*cited, Source("setting-strength", "setting", text))
