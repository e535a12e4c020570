"""How strong it is, when so much was put in so much."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal, TypeAlias

from assistant.answer.asking import ask
from assistant.answer.product import Product, allowed_product, own_stock
from assistant.answer.scooped import as_poured
from assistant.answer.strength import MOST, STRONGEST, age_in, strength_of
from assistant.contract import Answer, Outcome, Reading, VolumeRole, World
from assistant.core.facts import Source
from assistant.core.mixing.chlorine import Chlorine
from assistant.core.mixing.dilution import share_of
from assistant.core.quantities.amounts import Amount, Mix
from assistant.core.quantities.errors import OutOfRange
from assistant.core.quantities.ratio import of_share
from assistant.core.quantities.units import convert

Whole: TypeAlias = Literal["water", "taken as water", "total", "bottle", "mix"]
"""What the second volume is: said to be water, taken as that, the whole, the bottle's size; or a mix was said."""


UNMEASURED = frozenset({"glug", "glugs", "splash", "slosh", "dash", "drop", "drops", "bit", "dollop", "squeeze"})
"""Amounts that nobody measured."""


@dataclass(frozen=True, slots=True)
class _Poured:
    """A share of concentrate, and how it came about."""

    product: Product
    share: Fraction
    whole: Whole
    total: Amount | None = None
    """None: a mix was said, not volumes."""
    concentrate: Amount | None = None
    second: Amount | None = None
    """The volume that it went into, as said."""


def mix_strength(reading: Reading, world: World) -> Answer:
    """How strong it is when so much was put in so much."""
    product = allowed_product(reading, world)
    if isinstance(product, Answer):
        return product
    told = as_poured(reading, world)
    if isinstance(told, Answer):
        return told
    reading = told
    poured = _poured(product, reading, world)
    return poured if isinstance(poured, Answer) else _how_strong(poured, reading, world)


def _poured(product: Product, reading: Reading, world: World) -> _Poured | Answer:
    volumes, roles = reading.slots.volumes, _roles(reading)
    at = _concentrate_at(roles)
    if at is None:
        return _by_mix(product, reading, world)
    concentrate = volumes[at]
    rest = [place for place in range(len(volumes)) if place != at]
    if len(rest) > 1:
        return ask(reading, world, ("volume",), "poured.two_volumes")
    if rest:
        return _into(product, concentrate, (volumes[rest[0]], roles[rest[0]]), (reading, world))
    if product.bottle is not None:
        return _into(product, concentrate, (product.bottle.capacity, "total"), (reading, world), "bottle")
    return ask(reading, world, ("water",), "poured.into_what", {"concentrate": concentrate, "name": product.name})


def _roles(reading: Reading) -> tuple[VolumeRole, ...]:
    """The volumes' roles; none where a follow-up changed their number."""
    slots = reading.slots
    if len(slots.roles) == len(slots.volumes):
        return slots.roles
    return tuple("" for _ in slots.volumes)


def _concentrate_at(roles: tuple[VolumeRole, ...]) -> int | None:
    """Which of the volumes is the concentrate: said to be, else the first that is said to be nothing else."""
    for wanted in ("product", ""):
        for place, role in enumerate(roles):
            if role == wanted:
                return place
    return None


def _into(
    product: Product,
    concentrate: Amount,
    second: tuple[Amount, VolumeRole],
    asked: tuple[Reading, World],
    whole: Whole | None = None,
) -> _Poured | Answer:
    amount, role = second
    added = role in ("water", "", "product")
    kind: Whole = whole or ("water" if role == "water" else "taken as water" if added else "total")
    part, other = convert(concentrate, "mL"), convert(amount, "mL")
    total = Amount(part.amount + other.amount, "mL") if added else other
    try:
        share = share_of(part, total)
    except OutOfRange:
        details = {"concentrate": concentrate, "total": amount}
        return ask(asked[0], asked[1], ("volume",), "poured.more_than_whole", details)
    return _Poured(product, share, kind, total, concentrate, amount)


def _by_mix(product: Product, reading: Reading, world: World) -> _Poured | Answer:
    """How strong a mix that was said is, or the one that a bottle is for."""
    if reading.slots.numbers and product.bottle is not None:  # "I put 50 in the yellow": of what, isn't told
        return ask(reading, world, ("volume",), "poured.how_much", {"name": product.name})
    mixes = reading.slots.mixes
    if len(mixes) > 1:
        return ask(reading, world, ("mix",), "mixing.which_mix")
    bottle = product.bottle
    if not mixes and not UNMEASURED.isdisjoint(reading.words):  # "a glug of bleach in the yellow": how much was that
        return ask(reading, world, ("concentrate",), "poured.how_much", {"name": product.name})
    mix: Mix | None = mixes[0] if mixes else bottle.mix if bottle is not None and own_stock(product, world) else None
    if mix is None:
        return ask(reading, world, ("concentrate",), "poured.how_much", {"name": product.name})
    strength = strength_of(mix, product, reading, world)
    if isinstance(strength, Answer):
        return strength
    return _Poured(product, strength.share, "mix")


def _how_strong(poured: _Poured, reading: Reading, world: World) -> Answer:
    product, facts = poured.product, world.facts
    chlorine = product.chlorine(facts)
    ratio = of_share(poured.share)
    percent = product.percent * poured.share if product.percent is not None else None
    ppm = chlorine.ppm * poured.share if chlorine is not None else None
    most = facts[MOST].exact() * facts["mixing-chlorine-convention"].exact()
    too_strong = ppm is not None and ppm > most
    age = age_in(product, reading, world)
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "poured.strength",
        details={
            "name": product.name,
            "poured": poured,
            "ratio": ratio,
            "percent": percent,
            "ppm": ppm,
            "stock_percent": product.percent,
            "chlorine": chlorine,
            "age": age,
            "too_strong": facts[STRONGEST] if too_strong else None,
            "bottle": product.bottle,
            "again": world.talk.last is not None and world.talk.last.intent == "mix_strength",
        },
        values={
            "strength_percent": percent,
            "strength_ppm": ppm,
            "parts": ratio.parts,
            "reading": ratio.reading,
            "total": poured.total,
        },
        cautions=("caution-label-first", "caution-never-mix") if product.is_bleach else ("caution-label-first",),
        sources=_strength_sources(product, chlorine, too_strong, world),
    )


def _strength_sources(
    product: Product, chlorine: Chlorine | None, too_strong: bool, world: World
) -> tuple[Source, ...]:
    facts = ["mixing-parts-of-water", *(chlorine.facts if chlorine is not None else ())]
    facts += [STRONGEST] if too_strong else []
    cited = tuple(world.facts[fact].cited() for fact in facts)
    if product.stock is None or product.percent is None or product.said_strength is not None:
        return cited
    text = f"{product.stock.name}: {float(product.percent):g} percent, as you set it"
    return (*cited, Source("setting-strength", "setting", text))
