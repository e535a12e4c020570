"""How long a wet surface takes to dry, and whether it stays wet long enough. A forecast: the keeper's eyes decide."""

from __future__ import annotations

from dataclasses import dataclass, replace

from assistant.answer.asking import ask
from assistant.answer.film import Conditions, conditions
from assistant.answer.plan import Supply, supply_in, supply_of, wet_time_of
from assistant.answer.which import open_rounds
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.air.drying import Forecast, forecast, rewets_needed
from assistant.core.facts import Fact, Source
from assistant.core.quantities.errors import OutOfRange
from assistant.core.record.state import Round
from assistant.core.round.rounds import elapsed_s, hold_elapsed_s, hold_is_running, hold_left_s, is_open, next_step

_USED = ("drying-equation", "drying-undisturbed")


@dataclass(frozen=True, slots=True)
class _Span:
    """Minutes from now until the film meant is dry."""

    now: Forecast
    """Of what is on the surface."""
    wet_minutes: float | None
    """Still to be kept wet; None: no wet time is known, or there is none."""
    running: bool = False
    """A wet time runs, so the span is what is left of it."""
    sources: tuple[Source, ...] = ()
    """Where the wet time is from."""


def dry_time(reading: Reading, world: World) -> Answer:
    """When the film is dry, and how often it needs wetting again to outlast its wet time."""
    round_ = _round_meant(reading, world)
    supply = supply_in(reading, world)
    if supply is None and round_ is not None and "rinse" not in round_.done:
        supply = supply_of(round_.agent, round_.bottle, world)
    agent = supply.agent if supply is not None else None
    if round_ is not None and agent is not None and agent.id != round_.agent and not reading.slots.enclosures:
        round_ = None  # asked of another product than the one on it
    found = conditions(reading.slots, round_, agent, world)
    if found is None:
        return ask(reading, world, ("temperature",), "drying.how_warm")
    try:
        new = forecast(found.film, found.air, world.facts)
    except OutOfRange as error:
        return ask(reading, world, ("temperature",), "drying.out_of_range", {"error": error})
    span = _span(new, round_, supply, reading, world)
    rewets = None
    if span.wet_minutes is not None:
        rewets = rewets_needed(span.wet_minutes, span.now.soonest, new.soonest)
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "drying.dry_time",
        details={
            "span": span.now,
            "new": new,
            "conditions": found,
            "agent": agent,
            "enclosure": round_.enclosure if round_ is not None else None,
            "wet_minutes": span.wet_minutes,
            "running": span.running,
            "rewets": rewets,
        },
        values={
            "minutes": span.now.soonest,
            "rewets": rewets,
            "latest_minutes": span.now.latest,
            "each_minutes": new.soonest,
            "wet_minutes": span.wet_minutes,
            "enclosure": round_.enclosure if round_ is not None else None,
        },
        sources=(
            *(fact.cited() for fact in _facts_used(found, agent.evaporates if agent else None, world)),
            *span.sources,
        ),
    )


def _round_meant(reading: Reading, world: World) -> Round | None:
    """The open round named, the only one, or the only one whose wet time runs; None: none, or it can't be told.

    Nothing is recorded or vouched for by the answer, so it is given for a film in general rather than asking which.
    """
    if reading.slots.enclosures:
        round_ = world.state.rounds.get(reading.slots.enclosures[0])
        return round_ if is_open(round_) else None
    rounds = open_rounds(world)
    wet = tuple(round_ for round_ in rounds if hold_is_running(round_, world.now))
    return wet[0] if len(wet) == 1 else rounds[0] if len(rounds) == 1 else None


def _span(new: Forecast, round_: Round | None, supply: Supply | None, reading: Reading, world: World) -> _Span:
    same = round_ is not None and (supply is None or supply.agent.id == round_.agent)
    if round_ is not None and same and round_.hold is not None and hold_is_running(round_, world.now):
        left = hold_left_s(round_.hold, world.now)
        passed = hold_elapsed_s(round_.hold, world.now) / 60
        if round_.hold.wetted is not None:
            passed = min(passed, elapsed_s(round_.hold.wetted, world.now) / 60)
        return _Span(_less(new, passed), None if left is None else left / 60, running=True)
    if round_ is not None and same and next_step(round_, world.now) == "dry" and "rinse" in round_.done:
        return _Span(_less(new, elapsed_s(round_.done["rinse"], world.now) / 60), None)
    if supply is None or "hold" not in supply.agent.steps:
        return _Span(new, None)
    enclosure = world.household.enclosure(round_.enclosure if round_ else next(iter(reading.slots.enclosures), None))
    organism = next(iter(reading.slots.organisms), round_.organism if round_ else None)
    wet = wet_time_of(supply, enclosure, organism, world, reading.slots.mixes)
    return _Span(new, None if wet.minutes is None else float(wet.minutes), sources=wet.sources)


def _less(new: Forecast, passed: float) -> Forecast:
    """What is left of a film after so many minutes."""
    if new.soonest is None or new.latest is None:
        return new
    return replace(new, soonest=max(0.0, new.soonest - passed), latest=max(0.0, new.latest - passed))


def _facts_used(found: Conditions, evaporates: str | None, world: World) -> tuple[Fact, ...]:
    ids = (*_USED, *((evaporates, "drying-rate-water") if evaporates else ()))
    return (*(world.facts[id_] for id_ in ids), *found.taken)
