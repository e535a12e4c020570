"""What a bottle holds on record, as every answer of the shelf tells it."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from assistant.answer.meeting import agent_of
from assistant.contract import World
from assistant.core.household import Bottle
from assistant.core.quantities.amounts import SaidRatio
from assistant.core.quantities.errors import OutOfRange
from assistant.core.quantities.quantity import read_mix
from assistant.core.quantities.ratio import Ratio, read
from assistant.core.record.state import Fill
from assistant.core.shelf.bottles import NOTHING


def told_of(bottle: Bottle, world: World) -> dict[str, Any]:
    """What is to say of one bottle: what is in it on record, else what it is for."""
    holds = world.state.bottles.get(bottle.name, NOTHING)
    fill = holds.fill
    meant = world.household.stock(bottle.stock)
    stock = world.household.stock(fill.stock) if fill is not None else meant
    agent = agent_of(fill.agent, world) if fill is not None else None
    return {
        "bottle": bottle,
        "fill": fill,
        "wanted": read_mix(fill.mix) if fill is not None and fill.mix is not None else None,
        "meant_for": agent_of(meant.agent, world) if meant is not None else None,
        "meant_mix": bottle.mix,
        "agent": agent or (agent_of(meant.agent, world) if meant is not None and holds == NOTHING else None),
        "stock": stock,
        "unknown": bottle.name in world.state.unknown_mixes,
        "held": tuple(agent_of(agent, world) for agent in holds.held),
        "rinsed_at": holds.rinsed_at,
        "ready": False if bottle.name in world.state.unknown_mixes else is_good(fill, world.now),
        "now": world.now,
    }


def values_of(told: dict[str, Any], world: World) -> dict[str, Any]:
    fill: Fill | None = told["fill"]
    ratio = _ratio_of(fill, world)
    return {
        "bottle": told["bottle"].name,
        "agent": fill.agent if fill is not None else None,
        "stock": fill.stock if fill is not None else None,
        "mix": fill.mix if fill is not None else None,
        "parts": ratio.parts if ratio is not None else None,
        "reading": ratio.reading if ratio is not None else None,
        "total": fill.total if fill is not None else None,
        "mixed_at": fill.at.astimezone(world.now.tzinfo) if fill is not None else None,
        "expires": local(fill.kept_until, world) if fill is not None else None,
        "ready": told["ready"],
        "unknown_mix": told["unknown"],
        "held": tuple(agent.id for agent in told["held"]),
        "meant_for": told["meant_for"].id if told["meant_for"] is not None else None,
    }


def _ratio_of(fill: Fill | None, world: World) -> Ratio | None:
    wanted = read_mix(fill.mix) if fill is not None and fill.mix is not None else None
    if not isinstance(wanted, SaidRatio):
        return None
    try:
        ratio = read(wanted, world.household.habits.ratio or "to")
    except OutOfRange:
        return None
    return ratio if isinstance(ratio, Ratio) else None


def is_good(fill: Fill | None, now: datetime) -> bool | None:
    """True up to its end, False from then on; None: nothing on record, or no limit is known."""
    if fill is None or fill.basis == "unknown":
        return None
    return fill.kept_until is None or now < fill.kept_until


def local(at: datetime | None, world: World) -> datetime | None:
    return at.astimezone(world.now.tzinfo) if at is not None else None
