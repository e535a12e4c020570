"""A mix told by where it is used: "same as the yellow", "same as last time for the yellow". It is never a fill."""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Pending, Reading, Slots, World
from assistant.core.household import Bottle
from assistant.core.quantities.amounts import Mix
from assistant.core.quantities.quantity import read_mix
from assistant.core.shelf.bottles import NOTHING
from assistant.understand.look import Look
from assistant.understand.numbers.dose_anew import agents_meant
from assistant.understand.text.patterns import Pattern

_SAME_AS = Pattern(
    r"(?:(?:and|the|at|um|ok|make it|just|do|use) ,? ?)*same (?:mix |ratio |strength |dilution )?as "
    r"(?:(?:in|for|with|what is in) )?(?:the |my )?BOTTLE(?: has| is| one| uses| gets)?"
)
_AS_LAST_TIME = Pattern(
    r"(?:(?:and|the|at|um|ok|make it|just|do|use) ,? ?)*same (?:mix |ratio |strength |dilution )?as "
    r"(?:last time|before|usual|always|yesterday|WHEN)(?: (?:for|in) (?:the |my )?BOTTLE)?"
)


def same_as(look: Look, pending: Pending | None) -> Reading | None:
    """The dose asked for, at that bottle's mix; unsure where it is of another product; None: nothing of the kind."""
    plain = look.parsed.plain.strip(" .!?,")
    last_time = _AS_LAST_TIME.fullmatch(plain) is not None
    if not last_time and _SAME_AS.fullmatch(plain) is None:
        return None
    before = pending.reading if pending is not None else look.world.talk.last_reading
    names = look.slots("dose").bottles
    bottle = look.world.household.bottle(names[0]) if len(names) == 1 else None
    if last_time:
        return _once_more(look, before, bottle)
    mix = _mix_of(bottle, look.world) or (bottle.mix if bottle is not None else None)
    if before is None or before.intent != "dose" or bottle is None or mix is None:
        return _unsure(look)
    own, asked = agents_meant(Slots(bottles=(bottle.name,)), look.world), agents_meant(before.slots, look.world)
    if asked and asked != own:
        return _unsure(look)
    slots = replace(before.slots, mixes=(mix,), numbers=(), choices=(), faulty=())
    slots = slots if asked else replace(slots, agents=tuple(own))
    return replace(before, question=look.parsed.text, slots=slots, doubts=(), spoken=look.spoken)


def _once_more(look: Look, before: Reading | None, bottle: Bottle | None) -> Reading:
    """The mix that the bottle named was last filled at; with none named, the dose just told."""
    if bottle is None and before is not None and before.intent == "dose" and before.slots.mixes:
        return replace(before, question=look.parsed.text, spoken=look.spoken)
    mix = _mix_of(bottle, look.world)
    if bottle is None or mix is None:
        return _unsure(look)
    return look.reading("dose", Slots(bottles=(bottle.name,), mixes=(mix,)), 0.9)


def _mix_of(bottle: Bottle | None, world: World) -> Mix | None:
    """The mix of the fill on record."""
    fill = world.state.bottles.get(bottle.name, NOTHING).fill if bottle is not None else None
    return read_mix(fill.mix) if fill is not None and fill.mix is not None else None


def _unsure(look: Look) -> Reading:
    return Reading(look.parsed.text, None, Slots(), 0.0, look.nearest, (), look.spoken)
