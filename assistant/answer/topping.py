"""Topping up: whether what is left in a bottle may be added to, and with how much concentrate and water."""

from __future__ import annotations

from dataclasses import dataclass

from assistant.answer.asking import ask
from assistant.answer.product import Product, forbidden, own_stock, product_in
from assistant.answer.strength import Strength, strength_of
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.amounts import Amount, Mix
from assistant.core.dilution import Mixed, topped_up
from assistant.core.errors import OutOfRange
from assistant.core.facts import Source
from assistant.core.measuring import Measured, best_measure
from assistant.core.units import convert

LIFE = "mixing-life-cautious"


@dataclass(frozen=True, slots=True)
class _TopUp:
    """What goes in."""

    product: Product
    left: Amount
    capacity: Amount
    added: Mixed
    strength: Strength
    measured: Measured | None


def top_up(reading: Reading, world: World) -> Answer:
    """Whether a bottle that isn't empty may be topped up, and with what: only the same mix, while it is good."""
    product = product_in(reading, world)
    if isinstance(product, Answer):
        return product
    refused = forbidden(product, reading, world) or _past_its_time(product, reading, world)
    if refused is not None:
        return refused
    sizes = _left_and_capacity(product, reading, world)
    if isinstance(sizes, Answer):
        return sizes
    strength = _strength(product, reading, world)
    if isinstance(strength, Answer):
        return strength
    left, capacity = sizes
    try:
        added = topped_up(left, capacity, strength.share)
    except OutOfRange:
        details = {"left": left, "capacity": capacity}
        return ask(reading, world, ("left",), "topping.no_room", details)
    measured = None if strength.share == 1 else best_measure(added.concentrate, world.household.measures, world.facts)
    return _answer(_TopUp(product, left, capacity, added, strength, measured), reading, world)


# ---------------------------------------------------------------- what is asked about


def _left_and_capacity(product: Product, reading: Reading, world: World) -> tuple[Amount, Amount] | Answer:
    volumes, share = reading.slots.volumes, reading.slots.share_left
    bottle = product.bottle
    if len(volumes) > 2 or (len(volumes) == 2 and bottle is not None and share is not None):
        return ask(reading, world, ("left",), "topping.how_much_left", {"name": _name(product)})
    roles = reading.slots.roles if len(reading.slots.roles) == len(volumes) else ("",) * len(volumes)
    whole = next((volume for volume, role in zip(volumes, roles, strict=True) if role == "total"), None)
    rest = [volume for volume in volumes if volume is not whole]
    if len(rest) == 2:
        rest = sorted(rest, key=lambda volume: convert(volume, "mL").amount)
        whole, rest = rest[1], rest[:1]
    capacity = bottle.capacity if bottle is not None else whole
    if capacity is None:
        return ask(reading, world, ("bottle",), "topping.which_bottle")
    if share is not None:
        return Amount(capacity.amount * share, capacity.unit), capacity
    if not rest:
        return ask(reading, world, ("left",), "topping.how_much_left", {"name": _name(product)})
    return rest[0], capacity


def _name(product: Product) -> str:
    return product.bottle.name if product.bottle is not None else "bottle"


def _strength(product: Product, reading: Reading, world: World) -> Strength | Answer:
    """Of the mix said, else the bottle's own."""
    mixes: tuple[Mix, ...] = tuple(dict.fromkeys(reading.slots.mixes))
    if len(mixes) > 1:
        return ask(reading, world, ("mix",), "mixing.which_mix")
    own = product.bottle.mix if product.bottle is not None and own_stock(product, world) else None
    wanted = mixes[0] if mixes else own
    if wanted is None:
        return ask(reading, world, ("mix",), "topping.which_mix", {"name": _name(product)})
    return strength_of(wanted, product, reading, world)


def _past_its_time(product: Product, reading: Reading, world: World) -> Answer | None:
    """What is too old is emptied, not topped up."""
    hours = sum(float(convert(one, "h").amount) for one in reading.slots.durations)
    when = reading.slots.when
    if when is not None and when.at < world.now:
        hours = max(hours, (world.now - when.at).total_seconds() / 3600)
    life = float(world.facts[LIFE].value)
    if not product.is_bleach or hours <= life:
        return None
    return Answer(
        reading.intent,
        Outcome.REFUSE,
        "topping.too_old",
        details={"name": _name(product), "hours": life, "agent": product.name},
        values={"concentrate": None, "water": None},
        cautions=("caution-label-first",),
        sources=(world.facts[LIFE].cited(),),
    )


# ---------------------------------------------------------------- the answer


def _answer(found: _TopUp, reading: Reading, world: World) -> Answer:
    product, measured = found.product, found.measured
    mark = None
    if measured is not None:
        mark = {"tool": measured.tool.name, "amount": measured.mark.amount, "unit": measured.mark.unit}
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "topping.top_up",
        details={
            "name": product.name,
            "bottle": product.bottle,
            "found": found,
            "wanted": found.strength.wanted,
            "ratio": found.strength.ratio,
            "measured": measured,
            "mixed": found.added,
            "buy_fresh": False,
            "is_bleach": product.is_bleach,
            "hours": float(world.facts[LIFE].value),
        },
        values={
            "concentrate": found.added.concentrate,
            "water": found.added.water,
            "added": found.added.total,
            "left": found.left,
            "total": found.capacity,
            "mark": mark,
            "full_fills": measured.full_fills if measured is not None else None,
            "strength_percent": found.strength.mixed_percent,
            "parts": found.strength.ratio.parts,
            "reading": found.strength.ratio.reading,
        },
        cautions=("caution-label-first", "caution-never-mix"),
        sources=_sources(found, world),
    )


def _sources(found: _TopUp, world: World) -> tuple[Source, ...]:
    facts = ["mixing-parts-of-water", *((LIFE,) if found.product.is_bleach else ())]
    if found.measured is not None and found.measured.fact:
        facts.append(found.measured.fact)
    cited = tuple(world.facts[fact].cited() for fact in facts)
    bottle = found.product.bottle
    if bottle is None:
        return cited
    return (*cited, Source("setting-mix", "setting", f"the {bottle.name}'s size and mix, as you set them"))
