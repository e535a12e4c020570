"""A fill told right after a dose, in any words: what the dose said went in, and never the bottle's own mix instead."""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Reading, Slots, World
from assistant.core.quantities.units import in_ml
from assistant.understand.bottles.fills import of_the_dose
from assistant.understand.numbers.dose_anew import agents_meant


def as_the_dose(reading: Reading, plain: str, world: World) -> Reading:
    """The fill with the product, the mix and the volume of the dose just told, where it names none of its own.

    "Filled the pink", after a dose of another product, is of what the pink is for; "put it in the pink" is of the dose.
    """
    slots, dose = reading.slots, world.talk.last_reading
    if reading.intent != "mixed" or dose is None or slots.each or slots.corrects or slots.plain_water:
        return reading
    if slots.mixes or slots.volumes or slots.numbers or slots.scoops is not None or slots.share_wanted is not None:
        return reading
    told = of_the_dose(slots, world)
    if told is None or len(slots.bottles) != 1 or not (dose.slots.mixes or dose.slots.volumes):
        return reading
    filled, doubts = told
    said, meant = agents_meant(replace(slots, bottles=()), world), agents_meant(filled, world)
    own = agents_meant(Slots(bottles=slots.bottles), world)
    if (said and meant and said != meant) or (not said and meant != own and _IT.isdisjoint(plain.split())):
        return reading
    fitting = _fits(filled, world)
    went_in = replace(
        slots,
        agents=filled.agents or slots.agents,
        stocks=filled.stocks or slots.stocks,
        mixes=filled.mixes,
        volumes=filled.volumes if fitting else (),
        roles=filled.roles if fitting else (),
        stock_strength=filled.stock_strength,
        share_wanted=filled.share_wanted,
        topped_up=filled.topped_up,
        scoops=filled.scoops,
    )
    return replace(reading, slots=went_in, doubts=(*reading.doubts, *doubts))


_IT = frozenset({"it", "that", "this", "them"})


def _fits(slots: Slots, world: World) -> bool:
    """A dose for a litre that went into a smaller bottle filled it, and no more."""
    bottle = world.household.bottle(slots.bottles[0]) if len(slots.bottles) == 1 else None
    return bottle is None or all(in_ml(volume) <= in_ml(bottle.capacity) for volume in slots.volumes)
