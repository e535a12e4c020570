"""Asking back: a number that can't be taken, a name that fits two things or nothing, a slot that is missing."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Any

from assistant.contract import Answer, Outcome, Pending, Reading, Slots, World
from assistant.core.household import Bottle, Enclosure, Measure, Stock
from assistant.core.quantities.amounts import SaidRatio

NEVER_ASKED_BACK = ("harm", "choosing", "what_to_use", "does_it_work", "may_touch", "protecting", "talk")
"""Families that answer whatever the slots hold: nobody with bleach in the eye is asked which bottle, and a product of
unknown content is itself an answer to whether it may meet another."""


CLAIMS = ("done", "rewet", "dried_early", "still_smells", "mixed", "rinsed_out", "log_clean")
"""Questions that say how things stand; each tells whether that was recorded."""


def ask(
    reading: Reading,
    world: World,
    missing: tuple[str, ...],
    message: str,
    details: Mapping[str, Any] | None = None,
    **values: Any,
) -> Answer:
    """An answer that asks for what is missing, and waits for it.

    missing: kinds of slot of which any one will do; message: its wording; values: what is known already.
    """
    if reading.intent in CLAIMS:
        values = {"recorded": False, **values}
    return Answer(
        reading.intent,
        Outcome.ASK,
        message,
        details=details or {},
        values=values,
        missing=missing,
        pending=Pending(reading, world.now, missing=missing),
    )


def trouble_in(reading: Reading, world: World, family: str) -> Answer | None:
    """What has to be asked back before any answer; None: nothing."""
    if family in NEVER_ASKED_BACK:
        return None
    slots = reading.slots
    if slots.faulty:
        return ask(reading, world, ("amount",), "talk.faulty", {"faulty": slots.faulty[0]})
    if reading.intent in NO_NUMBER_OVER and is_a_number_over(slots):
        return number_over(reading, world)
    if slots.choices:
        choice = slots.choices[0]
        return ask(reading, world, (choice.kind,), "talk.choose", {"choice": choice})
    named = [unknown for unknown in slots.unknown if unknown.kind != "organism"]  # which is answered as that
    if named:
        unknown = named[0]
        known = names_of(unknown.kind, world)
        return ask(reading, world, (unknown.kind,), "talk.unknown", {"unknown": unknown, "known": known})
    return None


def is_a_number_over(slots: Slots) -> bool:
    """A number beside a mix or an amount that is none of theirs: "one in thirty two, thirty two" says it again."""
    ratios = {part for mix in slots.mixes if isinstance(mix, SaidRatio) for part in (mix.first, mix.second)}
    said = ratios | {volume.amount for volume in slots.volumes}
    return bool(slots.mixes or slots.volumes) and not set(slots.numbers) <= said


def number_over(reading: Reading, world: World) -> Answer:
    """A number that belongs to nothing, beside a mix or an amount: which of the two was meant is asked, not guessed."""
    slots = reading.slots
    kinds = ("mix",) if slots.mixes else ("volume",)
    details = {"number": slots.numbers[-1], "of": (*slots.mixes, *slots.volumes)[0]}
    bare = replace(reading, slots=replace(slots, numbers=()))
    return ask(bare, world, kinds, "mixing.number_over", details)


NO_NUMBER_OVER = frozenset({"read_ratio", "mix_strength", "top_up", "measure_with"})
"""Questions that a bare number beside an amount makes doubtful; a dose and a fill see to it themselves."""


def names_of(kind: str, world: World) -> tuple[str, ...]:
    """The names that the household has for one kind of thing."""
    household = world.household
    things: Mapping[str, Sequence[Bottle | Stock | Enclosure | Measure]] = {
        "bottle": household.bottles,
        "stock": household.stocks,
        "enclosure": household.enclosures,
        "animal": household.enclosures,
        "measure": household.measures,
    }
    return tuple(thing.name for thing in things.get(kind, ()))
