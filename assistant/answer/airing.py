"""How long to air the room: the published air changes for shut or open windows, or the keeper's own number."""

from __future__ import annotations

from dataclasses import dataclass, replace

from assistant.answer.asking import ask
from assistant.answer.plan import airing_with, room_airing
from assistant.answer.which import open_rounds
from assistant.contract import Answer, Outcome, Reading, Slots, World
from assistant.core.air.airing import OPENINGS, air_changes_needed, minutes
from assistant.core.facts import Source
from assistant.core.quantities.amounts import Amount, Percent
from assistant.core.quantities.errors import OutOfRange
from assistant.core.quantities.units import convert
from assistant.core.record.state import Round
from assistant.core.round.rounds import airing_left_s, is_open

LONG_MIN = 120.0
"""Over so many minutes one way to shorten it is named."""

MOST_OPENINGS = 3


@dataclass(frozen=True, slots=True)
class Rate:
    """How fast the room's air is changed."""

    an_hour: float
    source: Source
    openings: int | None = None
    """Windows or doors open; None: a number of the keeper's own."""
    usual: bool = False
    """Nothing was said of it: the room as it usually is."""


def air_time(reading: Reading, world: World) -> Answer:
    """How long to air the room, from how often its air is changed and how much of it has to be."""
    round_ = _round_meant(reading, world)
    rate = _rate(reading.slots, round_, world)
    if isinstance(rate, str):
        return ask(reading, world, ("amount",), rate)
    removal, mixing = _removal(reading.slots, world), _mixing(reading.slots, world)
    try:
        needed = air_changes_needed(removal)
        takes = minutes(rate.an_hour, removal, mixing)
    except OutOfRange as error:
        return ask(reading, world, ("amount",), "airing.out_of_range", {"error": error})
    left = airing_left_s(round_, world.now) if round_ is not None else None
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "airing.air_time",
        details={
            "minutes": takes,
            "rate": rate,
            "needed": needed,
            "removal": removal,
            "mixing": mixing,
            "shorter": _shorter(rate, removal, mixing, world) if takes > LONG_MIN else None,
            "long": takes > LONG_MIN,
            "left_s": left,
            "enclosure": round_.enclosure if round_ is not None else None,
            "airs": round_ is None or "air" in round_.steps,
            "agent": world.facts.agents[round_.agent] if round_ is not None else None,
            "air": _air_needed(needed * mixing, world),
        },
        values={
            "minutes": takes,
            "air_changes": needed * mixing,
            "air_changes_per_hour": rate.an_hour,
            "openings": rate.openings,
            "enclosure": round_.enclosure if round_ is not None else None,
        },
        cautions=("caution-ventilate",),
        sources=(rate.source, world.facts["airing-removal"].cited(), world.facts["airing-mixing"].cited()),
    )


def _round_meant(reading: Reading, world: World) -> Round | None:
    if reading.slots.enclosures:
        round_ = world.state.rounds.get(reading.slots.enclosures[0])
        return round_ if is_open(round_) else None
    rounds = open_rounds(world)
    return rounds[0] if len(rounds) == 1 else None


def _rate(slots: Slots, round_: Round | None, world: World) -> Rate | str:
    """As said; else as the open round's windows are; else as the room usually is. A message where it can't be told."""
    if slots.air_changes is not None:
        said = float(slots.air_changes)
        return Rate(said, Source("setting-airing", "setting", f"{said:g} air changes an hour, as you said"))
    if slots.openings is not None:
        return Rate(*airing_with(slots.openings, world), min(slots.openings, MOST_OPENINGS))
    if slots.volumes and slots.durations:
        return _fan(slots.volumes[0], slots.durations[0], world)
    usual = _usual(world)
    if round_ is not None and round_.openings:
        now = round_.openings[-1].air_changes_per_hour
        known = next((n for n in range(MOST_OPENINGS + 1) if airing_with(n, world)[0] == now), None)
        return Rate(*airing_with(known, world), known) if known is not None else replace(usual, an_hour=now)
    return usual


def _usual(world: World) -> Rate:
    airing = world.household.room.airing
    openings = OPENINGS.index(airing or "shut") if not isinstance(airing, int | float) else None
    return Rate(*room_airing(world), openings, usual=True)


def _fan(moved: Amount, each: Amount, world: World) -> Rate | str:
    """An extractor fan of so much air an hour, in a room of known size: air changes an hour."""
    volume = world.household.room.volume
    if volume is None:
        return "airing.how_big"
    an_hour = float(convert(moved, "m^3").amount) / float(convert(each, "h").amount)
    rate = an_hour / float(convert(volume, "m^3").amount)
    said = f"{an_hour:g} cubic metres an hour, as you said, in the room's volume"
    return Rate(rate, Source("setting-room", "setting", said))


def _removal(slots: Slots, world: World) -> float:
    said = next((mix.percent for mix in slots.mixes if isinstance(mix, Percent)), None)
    return float(said if said is not None else world.facts["airing-removal"].value) / 100


def _mixing(slots: Slots, world: World) -> float:
    return float(slots.mixing if slots.mixing is not None else world.facts["airing-mixing"].value)


def _shorter(rate: Rate, removal: float, mixing: float, world: World) -> tuple[int, float] | None:
    """The fewest openings that air faster, and the minutes with them; None: windows alone don't."""
    for openings in range(1, MOST_OPENINGS + 1):
        an_hour, _ = airing_with(openings, world)
        if an_hour > rate.an_hour:
            return openings, minutes(an_hour, removal, mixing)
    return None


def _air_needed(changes: float, world: World) -> float | None:
    """Cubic metres of fresh air in all; None: the room's volume isn't known."""
    volume = world.household.room.volume
    return None if volume is None else float(convert(volume, "m^3").amount) * changes
