"""Caps, spoons and syringes of the keeper's that keeping.toml doesn't list: so many of them as an amount."""

from __future__ import annotations

from dataclasses import replace

from assistant.answer.asking import ask
from assistant.contract import Answer, Reading, VolumeRole, World
from assistant.core.quantities.amounts import Amount


def as_poured(reading: Reading, world: World) -> Reading | Answer:
    """ "Two capfuls in a litre", with the caps as so much concentrate; asks what one holds where that wasn't said."""
    slots, scoops = reading.slots, reading.slots.scoops
    if scoops is None or scoops.count is None:
        return reading
    if scoops.holds is None:
        return ask(reading, world, ("scoops",), "poured.what_it_holds", {"tool": scoops.tool})
    poured = Amount(scoops.holds.amount * scoops.count, scoops.holds.unit)
    others: tuple[VolumeRole, ...] = slots.roles
    if len(others) != len(slots.volumes):
        others = tuple("" for _ in slots.volumes)
    return replace(reading, slots=replace(slots, volumes=(poured, *slots.volumes), roles=("product", *others)))


def as_used_up(reading: Reading, world: World) -> Reading | Answer:
    """ "How much water for two capfuls": these are the concentrate that is there."""
    if reading.slots.scoops is None or reading.slots.scoops.count is None:
        return reading
    told = as_poured(reading, world)
    if isinstance(told, Answer):
        return told
    if reading.slots.volumes or reading.slots.bottles:
        return reading
    return replace(told, slots=replace(told.slots, uses_up=True))
