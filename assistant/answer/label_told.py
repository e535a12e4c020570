"""The wet time of a clean with what was said as it began: the mix, and what the product's own label gives."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from assistant.answer.plan import Supply, most_careful, wet_time_of
from assistant.contract import Slots, World
from assistant.core.household import Enclosure, Stock
from assistant.core.round.wet_time import WetTime

LABEL = "label minutes"


def wet_time_told(
    supply: Supply, enclosure: Enclosure | None, organism: str | None, world: World, slots: Slots
) -> WetTime:
    """As `wet_time_of`, with the label's minutes as they were told.

    Where there was no time they are it, as if they stood in keeping.toml; where there was one the longer counts, since
    the label's mix and claim weren't told.
    """
    known = wet_time_of(supply, enclosure, organism, world, slots.mixes)
    if slots.setting is None or not is_label_told(slots):
        return known
    bought = supply.stock or Stock(supply.agent.name, supply.agent.id)  # named by what is in it
    stock = replace(bought, label_minutes=float(Fraction(slots.setting[1])))
    told = wet_time_of(replace(supply, stock=stock), enclosure, organism, world, slots.mixes)
    return told if known.minutes is None else most_careful((known, told))


def is_label_told(slots: Slots) -> bool:
    """Whether the minutes of the product's label were told with it."""
    return slots.setting is not None and slots.setting[0] == LABEL
