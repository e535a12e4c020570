"""The film on a surface and the air over it: what was said, what the room is set to, what is taken where neither is.

Offers `dries_at` to whatever wants to know when an open round's surface may be dry.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta

from assistant.answer.laid_down import ml_a_square_metre
from assistant.contract import Draught, Slots, World
from assistant.core.air.drying import Air, Film, Forecast, forecast
from assistant.core.facts import Agent, Fact
from assistant.core.household import Enclosure
from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.errors import OutOfRange
from assistant.core.quantities.units import convert
from assistant.core.record.state import Round
from assistant.core.round.rounds import hold_is_running

SPEEDS: dict[Draught, str] = {"still": "drying-still-air", "draught": "drying-draught", "fan": "drying-fan"}
"""Facts for how fast the air moves, by what was said of it."""


@dataclass(frozen=True, slots=True)
class Conditions:
    """What a forecast is made from."""

    film: Film
    air: Air
    draught: Draught
    taken: tuple[Fact, ...]
    """Figures that were taken because nothing was said or set."""


def conditions(slots: Slots, round_: Round | None, agent: Agent | None, world: World) -> Conditions | None:
    """The film and the air that are meant; None: nothing is known of how warm it is.

    What was said comes before what the room is set to. How the air moves goes by what was said, then by the windows
    said to be open, then by how the room is usually aired.
    """
    room = world.household.room
    warmth = slots.temperatures[0] if slots.temperatures else room.temperature
    if warmth is None:
        return None
    taken: list[Fact] = []
    humidity = slots.humidity if slots.humidity is not None else room.humidity.amount if room.humidity else None
    if humidity is None:
        taken.append(world.facts["drying-humidity"])
        humidity = taken[-1].exact()
    film = _film_said(slots, world)
    if film is None:
        taken.append(world.facts["drying-film"])
        film = float(taken[-1].value)
    draught: Draught = slots.draught or _draught_of(round_, world)
    moves = world.facts[SPEEDS[draught]]
    air = Air(float(convert(warmth, "degC").amount), float(humidity) / 100, float(moves.value))
    return Conditions(Film(film, volatility(agent, world)), air, draught, (*taken, moves))


def volatility(agent: Agent | None, world: World) -> float | None:
    """How many times as fast as water an agent evaporates; None: as water."""
    if agent is None or agent.evaporates is None:
        return None
    return float(world.facts[agent.evaporates].value) / float(world.facts["drying-rate-water"].value)


def dries_at(round_: Round, world: World, wetted_at: datetime | None = None) -> datetime | None:
    """When the film on an open round's surface may be dry, at the soonest, while its wet time runs.

    wetted_at: when it was last wetted; None: when its wet time began.
    Gives None where nothing runs, the room's temperature isn't known or is outside the equation, or it never dries.
    """
    span = lasts(round_, world)
    if span is None or span.soonest is None or round_.hold is None or not hold_is_running(round_, world.now):
        return None
    return (wetted_at or round_.hold.began) + timedelta(minutes=span.soonest)


def lasts(round_: Round, world: World) -> Forecast | None:
    """How long a film sprayed in that round lasts; None: that can't be known."""
    agent = world.facts.agents.get(round_.agent)
    found = conditions(Slots(), round_, agent, world)
    if found is None:
        return None
    try:
        return forecast(found.film, found.air, world.facts)
    except OutOfRange:
        return None


def area_m2(enclosure: Enclosure | None) -> float | None:
    """Floor and four walls inside, in square metres; None: its size isn't known."""
    if enclosure is None or enclosure.length is None or enclosure.width is None or enclosure.height is None:
        return None
    long, wide, high = (_metres(side) for side in (enclosure.length, enclosure.width, enclosure.height))
    return long * wide + 2 * high * (long + wide)


def _metres(side: Amount) -> float:
    return float(convert(side, "m").amount)


def _film_said(slots: Slots, world: World) -> float | None:
    """So much to the square metre as said, or from so much said to be sprayed in an enclosure of known size."""
    said = ml_a_square_metre(slots, world.household.bottle(slots.bottles[0]) if slots.bottles else None)
    if said is not None:
        return float(said)
    area = area_m2(world.household.enclosure(slots.enclosures[0])) if slots.enclosures else None
    if not slots.volumes or area is None:
        return None
    return float(convert(slots.volumes[0], "mL").amount) / area


def _draught_of(round_: Round | None, world: World) -> Draught:
    if round_ is not None and round_.openings:
        usual = float(world.facts["airing-shut"].value)
        return "draught" if round_.openings[-1].air_changes_per_hour > usual else "still"
    return "still" if world.household.room.airing in (None, "shut") else "draught"
