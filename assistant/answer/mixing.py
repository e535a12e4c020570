"""Mixing: so far, how much concentrate for a bottle or volume."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from fractions import Fraction
from typing import Any

from assistant.answer.asking import ask
from assistant.answer.mix_wanted import mix_in
from assistant.answer.plan import too_weak
from assistant.answer.product import Product, allowed_product, meant_for_another, own_stock
from assistant.answer.scooped import as_used_up
from assistant.answer.strength import Strength, strength_of
from assistant.answer.thinned import as_thinned, said_in_this_turn
from assistant.contract import Answer, Outcome, Pending, Reading, World
from assistant.core.facts import Source
from assistant.core.household import Bottle
from assistant.core.mixing.batch import Better, TwoSteps, better
from assistant.core.mixing.decay import BUY_FRESH
from assistant.core.mixing.dilution import Mixed, mix, mix_of_all, mix_with_water, share_of
from assistant.core.mixing.measuring import Measured, Unmeasured, best_measure, why_unmeasured
from assistant.core.quantities.amounts import Amount, Neat, Percent, SaidRatio
from assistant.core.quantities.errors import OutOfRange
from assistant.core.quantities.ratio import Ratio, read
from assistant.core.quantities.units import convert, dimension, in_ml
from assistant.core.round.wet_time import Use, wet_time
from assistant.core.shelf.bottles import left_of

WANTED_FROM_BOTTLE = "bottle"
WANTED_FROM_LABEL = "label"


@dataclass(frozen=True, slots=True)
class _Dose:
    """All that an answer is made from."""

    product: Product
    mixed: Mixed
    strength: Strength
    measured: Measured | None
    unmeasured: Unmeasured | None
    """Why none of the tools asked about measures it; None: one does, there is none, or none is needed."""
    taken_from: str
    """Where the mix came from: "" as asked, or the bottle's or label's own."""
    better: Better | None = None
    """What would measure well, where none of the tools does; None: one does, or there is no way."""


def dose(reading: Reading, world: World) -> Answer:
    """How much concentrate for this bottle or volume, at this ratio, percentage or ppm, and to which mark."""
    told = as_thinned(reading, world) or as_used_up(reading, world)
    return told if isinstance(told, Answer) else _dose(told, world)


def _dose(reading: Reading, world: World) -> Answer:
    product = allowed_product(reading, world)
    if isinstance(product, Answer):
        return product
    wanted = mix_in(product, reading, world)
    if isinstance(wanted, Answer):
        return wanted
    total = total_in(product, reading, world)
    strength = strength_of(wanted, product, reading, world) if wanted is not None else None
    if isinstance(strength, Answer) and strength.outcome is Outcome.REFUSE:
        return strength
    if isinstance(total, Answer):
        return total
    if reading.slots.uses_up and not reading.slots.volumes and product.stock is not None:
        total = left_of(product.stock, world.state)  # "use up the last of the bleach"
    total = total or _just_reckoned(reading, world)
    if total is None or strength is None:
        return _ask_for(total, strength, product, reading, world)
    if isinstance(strength, Answer):
        return strength
    mixed = _mixed(total, strength.share, reading)
    bottle = product.bottle
    if bottle is not None and in_ml(mixed.total) > in_ml(bottle.capacity):
        details = {"bottle": bottle, "volume": mixed.total}
        return ask(reading, world, ("volume", "bottle"), "mixing.too_much", details)
    return _answer(_measured(product, mixed, strength, reading, world), reading, world)


def _just_reckoned(reading: Reading, world: World) -> Amount | None:
    """The solution that was told right before: "how much bleach for that"; the reply says the whole back."""
    last = world.talk.last
    if last is None or last.intent != "make_up" or reading.slots.volumes or reading.slots.bottles:
        return None
    solution = last.values.get("solution")
    return solution if isinstance(solution, Amount) else None


def _mixed(volume: Amount, share: Fraction, reading: Reading) -> Mixed:
    """The volume as what was said of it: water that is there, the concentrate that is used up, or the whole."""
    if reading.slots.uses_up:
        return mix_of_all(volume, share)
    if "water" in reading.slots.roles and share < 1:
        return mix_with_water(volume, share)
    return mix(volume, share)


# ---------------------------------------------------------------- what is asked


def total_in(product: Product, reading: Reading, world: World) -> Amount | Answer | None:
    """The finished mix: the volume said, else what of the bottle is to be filled; None: neither was named."""
    volumes = tuple(dict.fromkeys(reading.slots.volumes))
    if len(volumes) > 1:
        return ask(reading, world, ("volume",), "mixing.which_volume", {"candidates": volumes})
    bottle = product.bottle
    if not volumes:
        return _to_be_filled(bottle, reading) if bottle is not None else None
    if bottle is not None and convert(volumes[0], "mL").amount > convert(bottle.capacity, "mL").amount:
        return ask(reading, world, ("volume", "bottle"), "mixing.too_much", {"bottle": bottle, "volume": volumes[0]})
    return volumes[0]


def _to_be_filled(bottle: Bottle, reading: Reading) -> Amount | None:
    """The whole bottle, or the part that was said; None: it is half full of something, so it must be asked."""
    share = reading.slots.share_wanted
    if share is not None:
        return Amount(bottle.capacity.amount * share, bottle.capacity.unit)
    return None if reading.intent == "dose" and reading.slots.share_left is not None else bottle.capacity


def _taken_from(product: Product, reading: Reading, world: World) -> str:
    if reading.slots.mixes:
        return ""
    own = product.bottle is not None and product.bottle.mix is not None and own_stock(product, world)
    return WANTED_FROM_BOTTLE if own else WANTED_FROM_LABEL


def _ask_for(
    total: Amount | None, strength: Strength | Answer | None, product: Product, reading: Reading, world: World
) -> Answer:
    """Asks for the total, the mix, or both; either may be answered next."""
    missing = ("total",) * (total is None) + ("mix",) * (strength is None)
    kinds = ("bottle", "volume") * (total is None) + ("mix",) * (strength is None)
    asked = {slot.kind: slot.ask for slot in world.questions["dose"].slots}
    details = {"ask": asked.get(missing[0], ""), "kind": missing[0], "name": product.name}
    return replace(ask(reading, world, kinds, "mixing.missing", details), missing=missing)


# ---------------------------------------------------------------- the answer


def _has_room(batch: Mixed, asked: Mixed, world: World) -> bool:
    """Whether a larger batch goes into anything: a bottle of the household's, or what was asked for."""
    largest = max((in_ml(bottle.capacity) for bottle in world.household.bottles), default=Fraction(0))
    return in_ml(batch.total) <= max(largest, in_ml(asked.total))


def _measured(product: Product, mixed: Mixed, strength: Strength, reading: Reading, world: World) -> _Dose:
    names = reading.slots.measures
    tools = tuple(tool for tool in world.household.measures if not names or tool.name in names)
    undiluted = strength.share == 1  # poured straight from its own bottle
    scoops = reading.slots.scoops
    if scoops is not None and scoops.holds is not None:  # with a tool of the keeper's own, whose marks nobody knows
        return _Dose(product, mixed, strength, None, None, _taken_from(product, reading, world))
    measured = None if undiluted else best_measure(mixed.concentrate, tools, world.facts)
    none_fits = bool(tools) and not undiluted and measured is None
    unmeasured = why_unmeasured(mixed.concentrate, tools, world.facts) if none_fits else None
    rough = none_fits or (measured is not None and not measured.good_enough)
    found = better(mixed, tools, world.facts) if rough and not reading.slots.uses_up else None
    if found is not None and found.batch is not None and not _has_room(found.batch, mixed, world):
        found = None
    return _Dose(product, mixed, strength, measured, unmeasured, _taken_from(product, reading, world), found)


def _answer(found: _Dose, reading: Reading, world: World) -> Answer:
    answer = Answer(
        reading.intent,
        Outcome.ANSWER,
        "mixing.dose",
        details=_details(found, reading, world),
        values=_values(found),
        cautions=_cautions(found.product, _too_weak(found, world)),
        sources=_sources(found, world),
    )
    doubts = tuple(doubt for doubt in reading.doubts if doubt.kind == "number")
    if not doubts or len(doubts) < len(reading.doubts):
        return answer  # with more in doubt than numbers the whole question is read back
    certain = replace(reading, doubts=())
    kinds = ("mix", "volume")
    again = Answer(
        reading.intent,
        Outcome.ASK,
        "mixing.say_again",
        missing=kinds,
        pending=Pending(reading, world.now, missing=kinds),
    )
    return replace(
        answer,
        outcome=Outcome.CONFIRM,
        message="mixing.confirm",
        details={**answer.details, "doubts": doubts},
        pending=Pending(certain, world.now, missing=kinds, on_yes=answer, on_no=again),
    )


def _values(found: _Dose) -> Mapping[str, Any]:
    strength, measured = found.strength, found.measured
    low, high = _range(found)
    batch = found.better.batch if found.better is not None else None
    mark = None
    if measured is not None:
        mark = {"tool": measured.tool.name, "amount": measured.mark.amount, "unit": measured.mark.unit}
    return {
        "concentrate": found.mixed.concentrate,
        "water": found.mixed.water,
        "total": found.mixed.total,
        "strength_percent": strength.mixed_percent,
        "strength_ppm": strength.mixed_ppm,
        "parts": strength.ratio.parts,
        "reading": strength.ratio.reading,
        "mark": mark,
        "full_fills": measured.full_fills if measured is not None else None,
        "strength_low": low,
        "strength_high": high,
        "smallest_batch": batch.total if batch is not None else None,
        "two_steps": _steps(found.better.two_steps) if found.better is not None else None,
    }


def _steps(steps: TwoSteps | None) -> list[dict[str, Any]] | None:
    """Both steps of a serial dilution, in order."""
    if steps is None:
        return None
    measured = (steps.first_measured, steps.second_measured)
    parts = ((steps.first.concentrate, steps.first.water), (steps.second, steps.water))
    return [
        {
            "pour": poured,
            "water": water,
            "mark": {"tool": one.tool.name, "amount": one.mark.amount, "unit": one.mark.unit},
            "full_fills": one.full_fills,
        }
        for one, (poured, water) in zip(measured, parts, strict=True)
    ]


def _range(found: _Dose) -> tuple[Fraction | None, Fraction | None]:
    """The weakest and strongest the mix may come out, in percent, by the tool's marks and tolerance."""
    percent, measured = found.strength.percent, found.measured
    if percent is None:
        return None, None
    if measured is None:
        return (percent, percent) if found.strength.share == 1 else (None, None)
    total = found.mixed.total
    most = convert(measured.most, "mL").amount
    whole = convert(total, "mL").amount
    high = percent if most > whole else percent * share_of(measured.most, total)
    low = percent * share_of(measured.least, total) if measured.least.amount > 0 else Fraction(0)
    return low, high


def _details(found: _Dose, reading: Reading, world: World) -> Mapping[str, Any]:
    product, strength = found.product, found.strength
    own_label = _label_ratio(product, world)
    return {
        "name": product.name,
        "mixed": found.mixed,
        "measured": found.measured,
        "unmeasured": found.unmeasured,
        "tools_named": reading.slots.measures,
        "wanted": strength.wanted,
        "ratio": strength.ratio,
        "other": _other_reading(found),
        "percent": strength.mixed_percent,
        "ppm": strength.mixed_ppm,
        "range": _range(found),
        "chlorine": strength.chlorine,
        "age": strength.age,
        "buy_fresh": strength.age is not None and strength.age.verdict in BUY_FRESH,
        "is_ratio": strength.is_ratio,
        "stock_percent": product.percent,
        "taken_from": found.taken_from,
        "bottle": product.bottle,
        "bottle_for": meant_for_another(product, world),
        "weaker_than_label": own_label is not None and strength.share < own_label.share,
        "label_ratio": own_label,
        "spoken": reading.spoken,
        "better": found.better,
        "of": "concentrate" if _wants_the_water(reading) else "water" if "water" in reading.slots.roles else "total",
        "short": _short(found, world),
        "in_unit": _in_unit(found, reading),
        "scoops": reading.slots.scoops,
        "checked": said_in_this_turn(reading),
        "order": world.facts[_order(product)].says if found.mixed.water.amount else "",
        "head_room": world.facts["mixing-head-room"].says if _fills_it(found) else "",
    }


def _wants_the_water(reading: Reading) -> bool:
    """The concentrate is there already, or the water alone was asked for: it is told first."""
    return reading.slots.uses_up or reading.slots.setting == ("told", "water")


def _in_unit(found: _Dose, reading: Reading) -> Amount | None:
    """The concentrate in the unit that it was asked in: "how many teaspoons"; None: none was."""
    unit = reading.slots.to_unit
    told = found.measured.amount if found.measured is not None else found.mixed.concentrate
    if unit is None or dimension(unit) != "volume" or unit == told.unit:
        return None
    return convert(found.mixed.concentrate, unit)


def _short(found: _Dose, world: World) -> tuple[Amount, Mixed] | None:
    """What is left of the stock, and what that makes, where it is less than the dose; None: enough, or not known."""
    stock = found.product.stock
    left = left_of(stock, world.state) if stock is not None else None
    if left is None or left.amount >= in_ml(found.mixed.concentrate):
        return None
    return (left, mix_of_all(left, found.strength.share)) if left.amount else None


def _fills_it(found: _Dose) -> bool:
    bottle = found.product.bottle
    return bottle is not None and in_ml(found.mixed.total) >= in_ml(bottle.capacity)


FOAMS = frozenset({"quat", "biguanide", "soap"})
"""Families that foam when water is run onto them."""


def _order(product: Product) -> str:
    """Id of the fact for what goes in first."""
    if product.is_bleach:
        return "mixing-order-bleach"
    foams = product.agent is not None and product.agent.family in FOAMS
    return "mixing-order-foam" if foams else "mixing-order-plain"


def _label_ratio(product: Product, world: World) -> Ratio | None:
    """The label's own dilution, where it is a ratio that can be read."""
    label = product.stock.label_mix if product.stock is not None else None
    if not isinstance(label, SaidRatio):
        return None
    try:
        ratio = read(label, world.household.habits.ratio or "to")
    except OutOfRange:
        return None
    return ratio if isinstance(ratio, Ratio) else None


def _other_reading(found: _Dose) -> tuple[Ratio, Amount] | None:
    """What the same numbers would take under the other word, where a tool could tell the two apart."""
    if not isinstance(found.strength.wanted, SaidRatio):
        return None
    other = found.strength.ratio.other
    if other is None:
        return None
    concentrate = mix(found.mixed.total, other.share).concentrate
    apart = abs(concentrate.amount - found.mixed.concentrate.amount)
    tool = found.measured.tool if found.measured is not None else None
    if tool is not None and tool.graduation is not None:
        graduation = convert(tool.graduation, concentrate.unit).amount
        if apart <= graduation:
            return None
    return other, concentrate


# ---------------------------------------------------------------- cautions and sources

ALCOHOL = "alcohol"


def _too_weak(found: _Dose, world: World) -> tuple[str, ...]:
    """The fact for it where the mix is weaker than all that vouches for its wet time, and no label does."""
    product, percent = found.product, found.strength.mixed_percent
    if product.agent is None or percent is None:
        return ()
    weak = Percent(percent)
    wet = wet_time(Use(product.agent, product.stock, weak, colon=world.household.habits.ratio), world.facts)
    return too_weak(wet, product.agent)


def _cautions(product: Product, weak: tuple[str, ...]) -> tuple[str, ...]:
    """The label first; then what mixing this asks for.

    weak: the fact that tells that it is too weak to disinfect, if it is.
    """
    if product.is_bleach:
        return (
            "caution-label-first",
            *weak,
            "mixing-into-water",
            "caution-cold-water",
            "caution-never-mix",
            "caution-gloves-eyes",
        )
    fire = ("caution-alcohol-fire",) if product.agent is not None and product.agent.family == ALCOHOL else ()
    return ("caution-label-first", *weak, "mixing-into-water", *fire, "caution-never-mix", "caution-gloves-eyes")


def _sources(found: _Dose, world: World) -> tuple[Source, ...]:
    """Every fact and setting that the answer rests on."""
    facts = [*_mix_facts(found)]
    if found.better is not None:
        facts += ["measure-good-enough", *(("mixing-two-steps",) if found.better.two_steps is not None else ())]
    if found.strength.chlorine is not None:
        facts += found.strength.chlorine.facts
    if found.strength.age is not None and found.strength.age.left is not None:
        facts += ["bleach-age-law", "bleach-age-second-order"]
    if found.measured is not None and found.measured.fact:
        facts.append(found.measured.fact)
    cited = tuple(world.facts[fact].cited() for fact in dict.fromkeys(facts))
    return (*cited, *_settings(found, world))


def _mix_facts(found: _Dose) -> tuple[str, ...]:
    wanted = found.strength.wanted
    if isinstance(wanted, SaidRatio):
        colon = ("mixing-ratio-colon",) if wanted.word == "colon" else ()
        return (f"mixing-ratio-{found.strength.ratio.reading}", *colon)
    if isinstance(wanted, Neat):
        return ()
    if isinstance(wanted, Percent) or found.product.is_bleach:
        return ("mixing-parts-of-water",)
    return ("mixing-parts-of-water", "mixing-ppm-other")


def _settings(found: _Dose, world: World) -> tuple[Source, ...]:
    product, ratio = found.product, found.strength.ratio
    sources = []
    if ratio.why == "setting":
        sources.append(Source("setting-ratio", "setting", f'a colon means "{ratio.reading}", as you set it'))
    if ratio.why == "default":
        sources.append(Source("setting-ratio", "setting", 'a colon means "to" until you set it'))
    if found.taken_from == WANTED_FROM_BOTTLE and product.bottle is not None:
        sources.append(Source("setting-mix", "setting", f"the {product.bottle.name}'s own mix, as you set it"))
    if found.taken_from == WANTED_FROM_LABEL and product.stock is not None:
        sources.append(
            Source(f"label-{product.stock.name}", "label", f"{product.stock.name}: its own label's dilution")
        )
    if product.stock is not None and product.percent is not None and product.said_strength is None:
        text = f"{product.stock.name}: {float(product.percent):g} percent, as you set it"
        sources.append(Source("setting-strength", "setting", text))
    if found.measured is not None and not found.measured.fact:
        text = f"{found.measured.tool.name}: its tolerance, as you set it"
        sources.append(Source("setting-tolerance", "setting", text))
    return tuple(sources)
