"""Topping up: whether what is left in a bottle may be added to, and with how much concentrate and water."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime

from assistant.answer.asking import ask
from assistant.answer.choosing import together
from assistant.answer.meeting import agent_of
from assistant.answer.named import agents_named
from assistant.answer.product import Product, forbidden, own_stock, product_in
from assistant.answer.strength import Strength, strength_of
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.facts import Source
from assistant.core.household import Bottle
from assistant.core.mixing.dilution import Mixed, topped_up
from assistant.core.mixing.measuring import Measured, best_measure
from assistant.core.quantities.amounts import Amount, Mix
from assistant.core.quantities.errors import OutOfRange
from assistant.core.quantities.quantity import read_mix
from assistant.core.quantities.units import convert, in_ml
from assistant.core.record.state import Fill
from assistant.core.shelf.bottles import NOTHING, as_filled

LIFE = "bottle-life-bleach"


@dataclass(frozen=True, slots=True)
class _TopUp:
    """What goes in."""

    product: Product
    left: Amount
    capacity: Amount
    added: Mixed
    strength: Strength
    measured: Measured | None
    fill: Fill | None = None
    """What is in it on record."""


def top_up(reading: Reading, world: World) -> Answer:
    """Whether a bottle that isn't empty may be topped up, and with what: only the same mix, while it is good."""
    others = agents_named(reading, world)
    if len(others) > 1 and len(reading.slots.bottles) + len(reading.slots.stocks) > 1:
        return together(replace(reading, slots=replace(reading.slots, agents=tuple(one.id for one in others))), world)
    product = product_in(reading, world)
    if isinstance(product, Answer):
        return product
    fill = _fill(product, world)
    product = _as_filled(product, fill, reading, world)
    refused = forbidden(product, reading, world) or _not_the_same(product, fill, reading, world)
    refused = refused or _past_its_time(product, fill, reading, world)
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
    return _answer(_TopUp(product, left, capacity, added, strength, measured, fill), reading, world)


# ---------------------------------------------------------------- what it holds on record


def _fill(product: Product, world: World) -> Fill | None:
    """The fill on record; None: there is none, so that keeping.toml counts, and that is said."""
    bottle = product.bottle
    return world.state.bottles.get(bottle.name, NOTHING).fill if bottle is not None else None


def _as_filled(product: Product, fill: Fill | None, reading: Reading, world: World) -> Product:
    """The product with the bottle as it was filled; and with what it was filled from, where nothing was named."""
    if fill is None or product.bottle is None:
        return product
    bottle = as_filled(product.bottle, world.state)
    if reading.slots.agents or reading.slots.stocks:
        return replace(product, bottle=bottle)
    return replace(product, bottle=bottle, agent=agent_of(fill.agent, world), stock=world.household.stock(fill.stock))


def _not_the_same(product: Product, fill: Fill | None, reading: Reading, world: World) -> Answer | None:
    """Another agent, another mix, or a bottle that was rinsed out on record: nothing goes on top; None: the same."""
    bottle = product.bottle
    if bottle is None:
        return None
    details: dict[str, object] = {"name": bottle.name}
    if fill is None:
        known = world.state.bottles.get(bottle.name)
        if known is None:
            return None
        return _no(reading, "topping.rinsed_out" if known.rinsed_at is not None else "topping.not_settled", details)
    holds = agent_of(fill.agent, world)
    if product.agent is not None and product.agent.id != holds.id:
        return _no(reading, "topping.another_agent", {**details, "holds": holds.name, "said": product.agent.name})
    if fill.mix is None or not reading.slots.mixes:
        return None
    shares = [strength_of(mix, product, reading, world) for mix in (reading.slots.mixes[0], read_mix(fill.mix))]
    if all(isinstance(one, Strength) for one in shares) and len({getattr(one, "share", None) for one in shares}) > 1:
        return _no(reading, "topping.another_mix", {**details, "holds": fill.mix})
    return None


def _no(reading: Reading, message: str, details: dict[str, object]) -> Answer:
    values = {"concentrate": None, "water": None}
    return Answer(
        reading.intent, Outcome.REFUSE, message, details=details, values=values, cautions=("caution-label-first",)
    )


# ---------------------------------------------------------------- what is asked about


def _up_to(whole: Amount | None, bottle: Bottle | None) -> Amount | None:
    """To where it is filled: as much as was said, if it goes into the bottle; else the whole bottle."""
    if bottle is None or (whole is not None and in_ml(whole) <= in_ml(bottle.capacity)):
        return whole
    return bottle.capacity


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
    capacity = _up_to(whole, bottle)
    if capacity is None:
        return replace(ask(reading, world, ("bottle", "total"), "topping.which_bottle"), missing=("bottle",))
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
    bottle = product.bottle
    on_record = bottle is not None and _fill(product, world) is not None
    own = bottle.mix if bottle is not None and (on_record or own_stock(product, world)) else None
    wanted = mixes[0] if mixes else own
    if wanted is None:
        return ask(reading, world, ("mix",), "topping.which_mix", {"name": _name(product)})
    return strength_of(wanted, product, reading, world)


def _past_its_time(product: Product, fill: Fill | None, reading: Reading, world: World) -> Answer | None:
    """What is too old is emptied, not topped up: by the record, else by what was said of its age."""
    details: dict[str, object] = {"name": _name(product), "agent": product.name}
    if fill is not None:
        over = fill.kept_until is not None and world.now >= fill.kept_until
        return _no(reading, "topping.past_its_end", details) if over else None
    hours = sum(float(convert(one, "h").amount) for one in reading.slots.durations)
    when = reading.slots.when
    if when is not None and when.at < world.now:
        hours = max(hours, (world.now - when.at).total_seconds() / 3600)
    life = float(world.facts[LIFE].value)
    if not product.is_bleach or hours <= life:
        return None
    answer = _no(reading, "topping.too_old", {**details, "hours": life})
    return replace(answer, sources=(world.facts[LIFE].cited(),))


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
            "fill": found.fill,
            "now": world.now,
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
            "expires": _end(found.fill, world),
        },
        cautions=("caution-label-first", "caution-never-mix"),
        sources=_sources(found, world),
    )


def _end(fill: Fill | None, world: World) -> datetime | None:
    """The old mix's end, which the top-up keeps; None: nothing is on record, or it has none."""
    if fill is None or fill.kept_until is None:
        return None
    return fill.kept_until.astimezone(world.now.tzinfo)


def _sources(found: _TopUp, world: World) -> tuple[Source, ...]:
    facts = ["mixing-parts-of-water", *((LIFE,) if found.product.is_bleach else ())]
    if found.measured is not None and found.measured.fact:
        facts.append(found.measured.fact)
    cited = tuple(world.facts[fact].cited() for fact in facts)
    bottle = found.product.bottle
    if bottle is None:
        return cited
    return (*cited, Source("setting-mix", "setting", f"the {bottle.name}'s size and mix, as you set them"))
