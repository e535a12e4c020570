"""Which of the keeper's tools measures a volume, to which mark, and how far off that may be."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from assistant.answer.asking import ask
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.facts import Source
from assistant.core.household import Measure
from assistant.core.mixing.measuring import Measured, best_measure, least_measured_well, measured_with, why_unmeasured
from assistant.core.quantities.amounts import Amount


@dataclass(frozen=True, slots=True)
class _Tools:
    """What may be measured with."""

    tools: tuple[Measure, ...]
    named: bool
    """The keeper named them."""


def measure_with(reading: Reading, world: World) -> Answer:
    """Which of the keeper's tools measures a volume best, to which mark, and how far off that may be."""
    slots = reading.slots
    own = world.household.measures
    tools = _Tools(
        tuple(tool for tool in own if not slots.measures or tool.name in slots.measures), bool(slots.measures)
    )
    if not own:
        return Answer(reading.intent, Outcome.ANSWER, "measuring.no_tools", values=_no_tool())
    volume = _volume_to_measure(reading, world)
    if isinstance(volume, Answer):
        return volume
    if volume is None:
        return ask(reading, world, ("volume",), "measuring.measure_what")
    measured = best_measure(volume, tools.tools, world.facts)
    if measured is None and tools.named and len(tools.tools) == 1:
        measured = measured_with(tools.tools[0], volume, world.facts)  # asked after by name: told, however rough
    if measured is None:
        return _unmeasured(volume, tools, reading, world)
    mark = {"tool": measured.tool.name, "amount": measured.mark.amount, "unit": measured.mark.unit}
    error = measured.off_by / measured.wanted * 100
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "measuring.measure_with",
        details={"volume": volume, "measured": measured, "error": error},
        values={
            "tool": measured.tool.name,
            "mark": mark,
            "error_percent": error,
            "full_fills": measured.full_fills,
            "amount": measured.amount,
        },
        sources=_tolerance_source(measured, world),
    )


def _volume_to_measure(reading: Reading, world: World) -> Amount | Answer | None:
    """The volume said, or the dose that was just given."""
    volumes = tuple(dict.fromkeys(reading.slots.volumes))
    if len(volumes) > 1:
        return ask(reading, world, ("volume",), "reckoning.one_at_a_time", {"candidates": volumes})
    if volumes:
        return volumes[0]
    last = world.talk.last
    dose = last.values.get("concentrate") if last is not None else None
    return dose if isinstance(dose, Amount) else None


def _unmeasured(volume: Amount, tools: _Tools, reading: Reading, world: World) -> Answer:
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "measuring.unmeasured",
        details={
            "volume": volume,
            "why": why_unmeasured(volume, tools.tools, world.facts),
            "named": tuple(tool.name for tool in tools.tools) if tools.named else (),
            "least": least_measured_well(tools.tools, world.facts),
        },
        values=_no_tool(),
        sources=(world.facts["measure-too-rough"].cited(),),
    )


def _no_tool() -> dict[str, Any]:
    return {"tool": None, "mark": None, "error_percent": None, "full_fills": None, "amount": None}


def _tolerance_source(measured: Measured, world: World) -> tuple[Source, ...]:
    if measured.fact:
        return (world.facts[measured.fact].cited(), world.facts["measure-good-enough"].cited())
    text = f"{measured.tool.name}: its tolerance, as you set it"
    return (Source("setting-tolerance", "setting", text),)
