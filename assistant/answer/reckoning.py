"""Reckoning on the side: units, and what a ratio means."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from typing import Any

from assistant.answer.asking import ask
from assistant.answer.product import Product, product_in
from assistant.answer.strength import ratio_of
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.facts import Source
from assistant.core.mixing.chlorine import available_chlorine
from assistant.core.mixing.dilution import share_for
from assistant.core.quantities.amounts import Amount, Mix, Neat, Percent, Ppm, SaidRatio
from assistant.core.quantities.errors import OutOfRange
from assistant.core.quantities.ratio import Ratio, of_share
from assistant.core.quantities.units import UNITS, dimension, system
from assistant.core.quantities.units import convert as converted

PINTS = {"US": "imp", "imp": "US"}
LAST_AMOUNTS = ("concentrate", "solution", "amount", "total")
"""Keys of the last reply's values that "what's that in ounces?" may mean, the likeliest first."""


# ---------------------------------------------------------------- convert


def convert(reading: Reading, world: World) -> Answer:
    """An amount in another unit, US and imperial kept apart."""
    share = _ratio_as_share(reading, world)
    if share is not None:
        return share
    amount = _amount_to_convert(reading, world)
    if isinstance(amount, Answer):
        return amount
    if amount is None:
        return ask(reading, world, ("volume", "amount"), "reckoning.convert_what")
    unit = reading.slots.to_unit or _usual_unit(amount.unit)
    ratio = next((mix for mix in reading.slots.mixes if isinstance(mix, SaidRatio)), None)
    if ratio is not None and unit is not None and dimension(amount.unit) == dimension(unit) == "volume":
        return _per(amount, unit, ratio, (reading, world))
    if unit is None:
        return ask(reading, world, ("unit",), "reckoning.to_which_unit", {"amount": amount})
    if {dimension(amount.unit), dimension(unit)} == {"percent", "ppm"}:
        return _by_convention(amount, unit, reading, world)
    if dimension(amount.unit) != dimension(unit):
        return ask(reading, world, ("unit",), "reckoning.unlike", {"amount": amount, "unit": unit})
    found = converted(amount, unit)
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "reckoning.convert",
        details={"from": amount, "to": found, "other": _other_system(amount, unit), "spoken": reading.spoken},
        values={"amount": found},
        sources=_unit_sources((amount.unit, unit), world),
    )


def _ratio_as_share(reading: Reading, world: World) -> Answer | None:
    """ "What's one in 32 as a percent": the part that is concentrate, and of a product named how strong that makes it.

    None: no ratio alone is to be turned into percent or parts per million.
    """
    slots = reading.slots
    if slots.to_unit not in ("%", "ppm") or len(slots.mixes) != 1 or not isinstance(slots.mixes[0], SaidRatio):
        return None
    if slots.volumes or slots.temperatures or slots.durations:
        return None
    ratio, product = ratio_of(slots.mixes[0], reading, world), product_in(reading, world)
    if isinstance(ratio, Answer):
        return ratio
    if isinstance(product, Answer):
        return product
    chlorine = product.chlorine(world.facts)
    percent = product.percent * ratio.share if product.percent is not None else None
    ppm = chlorine.ppm * ratio.share if chlorine is not None else None
    if slots.to_unit == "ppm" and ppm is None:
        return ask(reading, world, ("stock", "agent"), "reckoning.share_of_what", {"ratio": ratio})
    part = Amount(100 * ratio.share, "%")
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "reckoning.share",
        details={
            "ratio": ratio,
            "part": part.amount,
            "wanted": slots.to_unit,
            "name": product.name,
            "percent": percent,
            "ppm": ppm,
        },
        values={
            "amount": part if slots.to_unit == "%" or ppm is None else Amount(ppm, "ppm"),
            **_ratio_values(ratio),
            "strength_percent": percent,
            "strength_ppm": ppm,
        },
        sources=_ratio_sources(slots.mixes[0], ratio, world),
    )


def _per(whole: Amount, unit: str, said: SaidRatio, asked: tuple[Reading, World]) -> Answer:
    """ "How many ounces per gallon is one to 32?": so much to that much water, or in that much in all."""
    reading, world = asked
    ratio = ratio_of(said, reading, world)
    if isinstance(ratio, Answer):
        return ratio
    found = converted(Amount(whole.amount / ratio.n, whole.unit), unit) if ratio.n else whole
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "reckoning.per",
        details={"whole": whole, "part": found, "ratio": ratio},
        values={"amount": found, **_ratio_values(ratio)},
        sources=(*_ratio_sources(said, ratio, world), *_unit_sources((whole.unit, unit), world)),
    )


def _amount_to_convert(reading: Reading, world: World) -> Amount | Answer | None:
    slots = reading.slots
    strengths = tuple(
        Amount(mix.percent, "%") if isinstance(mix, Percent) else Amount(mix.ppm, "ppm")
        for mix in slots.mixes
        if isinstance(mix, Percent | Ppm)
    )
    stock = (slots.stock_strength,) if slots.stock_strength is not None else ()
    named = (*slots.volumes, *slots.lengths, *slots.temperatures, *slots.durations, *strengths, *stock)
    said: tuple[Amount, ...] = tuple(dict.fromkeys(named))
    if len(said) > 1:
        return ask(reading, world, ("volume",), "reckoning.one_at_a_time", {"candidates": said})
    if said:
        return said[0]
    last = world.talk.last
    if last is None or slots.numbers:
        return None
    known = (last.values.get(key) for key in LAST_AMOUNTS)
    return next((value for value in known if isinstance(value, Amount)), None)


def _usual_unit(unit: str) -> str | None:
    """What someone who names no unit wants: the metric one of a customary measure."""
    metric = {"volume": "mL", "length": "cm", "temperature": "degC", "percent": "ppm", "ppm": "%"}
    kind = dimension(unit)
    return metric.get(kind) if system(unit) != "metric" or kind in ("percent", "ppm") else None


def _by_convention(amount: Amount, unit: str, reading: Reading, world: World) -> Answer:
    """Percent and ppm of bleach, by the public-health convention; how far the exact ways lie from it is shown."""
    a_percent = world.facts["mixing-chlorine-convention"].exact()
    percent = amount.amount if amount.unit == "%" else amount.amount / a_percent
    found = Amount(percent * a_percent if unit == "ppm" else percent, unit)
    by_volume = available_chlorine(percent, "w/v", world.facts) if 0 < percent <= 100 else None
    known = available_chlorine(percent, None, world.facts) if by_volume is not None else None
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "reckoning.by_convention",
        details={
            "from": amount,
            "to": found,
            "off": known.off if known is not None else None,
            "grams": by_volume.ppm / 1000 if by_volume is not None else percent * 0,
        },
        values={"amount": found},
        sources=tuple(world.facts[fact].cited() for fact in ("mixing-chlorine-convention", "mixing-chlorine-masses")),
    )


def _other_system(amount: Amount, unit: str) -> tuple[Amount, Amount] | None:
    """The same question with the other country's gallon, pint, quart or fluid ounce; None: there is no other."""
    for at, name in enumerate((amount.unit, unit)):
        country, _, rest = name.partition(" ")
        other = f"{PINTS.get(country, '')} {rest}"
        if other in UNITS:
            have = Amount(amount.amount, other) if at == 0 else amount
            return have, converted(have, unit if at == 0 else other)
    return None


def _unit_sources(units: tuple[str, str], world: World) -> tuple[Source, ...]:
    if dimension(units[0]) == "temperature":
        return (world.facts["measure-kelvin"].cited(),) if units[0] != units[1] else ()
    facts = {"US": "measure-us-gallon", "imperial": "measure-imperial-gallon"}
    systems = dict.fromkeys(system(unit) for unit in units if dimension(unit) == "volume")
    return tuple(world.facts[facts[name]].cited() for name in systems if name in facts)


# ---------------------------------------------------------------- read_ratio


def read_ratio(reading: Reading, world: World) -> Answer:
    """What "one to thirty-two" means, and the same mix in each wording."""
    share = _ratio_as_share(reading, world)
    if share is not None:
        return share
    mixes = tuple(dict.fromkeys(reading.slots.mixes))
    if reading.slots.to_unit == "%" and len(mixes) == 1 and isinstance(mixes[0], Ppm):
        return convert(replace(reading, intent="convert"), world)  # "what percent is 500 ppm"
    if not mixes:
        return ask(reading, world, ("mix",), "reckoning.which_ratio")
    if len(mixes) > 1:
        return _same_or_not(mixes, reading, world)
    product = product_in(reading, world)
    if isinstance(product, Answer):
        return product
    ratio = _as_ratio(mixes[0], product, reading, world)
    if isinstance(ratio, Answer):
        return ratio
    percent = product.percent
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "reckoning.read_ratio",
        details={
            "mix": mixes[0],
            "ratio": ratio,
            "name": product.name,
            "percent": percent * ratio.share if percent is not None else None,
        },
        values={**_ratio_values(ratio), "strength_percent": percent * ratio.share if percent is not None else None},
        sources=_ratio_sources(mixes[0], ratio, world),
    )


def _ratio_values(ratio: Ratio) -> dict[str, Any]:
    return {"parts": ratio.parts, "reading": ratio.reading, "as_in": ratio.as_in, "as_to": ratio.as_to}


def _as_ratio(mix: Mix, product: Product, reading: Reading, world: World) -> Ratio | Answer:
    """A ratio as read; a percentage or ppm as parts of the product named."""
    if isinstance(mix, SaidRatio):
        return ratio_of(mix, reading, world)
    if isinstance(mix, Neat):
        return of_share(Fraction(1))
    if product.percent is None:
        return ask(reading, world, ("stock_strength",), "mixing.how_strong", {"name": product.name})
    if isinstance(mix, Percent):
        wanted, stock = mix.percent, product.percent
    else:
        chlorine = product.chlorine(world.facts)
        a_percent = world.facts["mixing-ppm-other"].exact()
        wanted, stock = mix.ppm, chlorine.ppm if chlorine is not None else product.percent * a_percent
    try:
        return of_share(share_for(wanted, stock))
    except OutOfRange:
        details = {"name": product.name, "percent": product.percent, "wanted": mix}
        return Answer(reading.intent, Outcome.REFUSE, "mixing.weaker_stock", details=details)


def _same_or_not(mixes: tuple[Mix, ...], reading: Reading, world: World) -> Answer:
    """ "Is one in 32 the same as one to 32?": the first one's values, and how the second compares."""
    ratios = [ratio_of(mix, reading, world) for mix in mixes[:2] if isinstance(mix, SaidRatio)]
    if len(ratios) < 2:
        return ask(reading, world, ("mix",), "mixing.which_mix")
    first, second = ratios
    if isinstance(first, Answer):
        return first
    if isinstance(second, Answer):
        return second
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "reckoning.two_ratios",
        details={"first": first, "second": second, "same": first.share == second.share},
        values=_ratio_values(first),
        sources=tuple(world.facts[f"mixing-ratio-{word}"].cited() for word in ("in", "to")),
    )


def _ratio_sources(mix: Mix, ratio: Ratio, world: World) -> tuple[Source, ...]:
    if not isinstance(mix, SaidRatio):
        return (world.facts["mixing-parts-of-water"].cited(),)
    colon = (world.facts["mixing-ratio-colon"].cited(),) if mix.word == "colon" else ()
    sources = [world.facts[f"mixing-ratio-{ratio.reading}"].cited(), *colon]
    if ratio.why == "setting":
        sources.append(Source("setting-ratio", "setting", f'a colon means "{ratio.reading}", as you set it'))
    return tuple(sources)
