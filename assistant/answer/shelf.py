"""The shelf: what each bottle holds, and that one was rinsed out.

The longer questions have files of their own: `filling` (mixed), `still_good` and `stock_left`.
"""

from __future__ import annotations

from assistant.answer.asking import ask, names_of
from assistant.answer.filling import mixed
from assistant.answer.held import told_of, values_of
from assistant.answer.meeting import agent_of
from assistant.answer.still_good import still_good
from assistant.answer.stock_left import stock_left
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.record.events import BottleRinsed
from assistant.core.shelf.bottles import NOTHING

__all__ = ["in_bottle", "mixed", "rinsed_out", "still_good", "stock_left"]


def rinsed_out(reading: Reading, world: World) -> Answer:
    """Records that a bottle was emptied, rinsed and pumped through, so that nothing it held counts any more."""
    if not reading.slots.bottles:
        known = world.state.unknown_mixes or names_of("bottle", world)
        return ask(reading, world, ("bottle",), "shelf.rinsed_which", {"known": known})
    bottles = reading.slots.bottles  # "rinsed out yellow and green": each of them
    held = tuple(dict.fromkeys(one for bottle in bottles for one in world.state.bottles.get(bottle, NOTHING).held))
    several = {"bottles_rinsed": bottles} if len(bottles) > 1 else {}
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "shelf.rinsed_out",
        details={
            "bottles": bottles,
            "was_unknown": any(bottle in world.state.unknown_mixes for bottle in bottles),
            "held": tuple(agent_of(agent, world) for agent in held),
        },
        values={"recorded": True, "bottle": bottles[0], "held": held, **several},
        events=tuple(BottleRinsed(bottle) for bottle in bottles),
    )


# ---------------------------------------------------------------- what is in it


def in_bottle(reading: Reading, world: World) -> Answer:
    """What a bottle holds on record; with none named, what each of them does."""
    named = [b for name in reading.slots.bottles if (b := world.household.bottle(name)) is not None]
    if len(named) == 1:
        told = told_of(named[0], world)
        return Answer(reading.intent, Outcome.ANSWER, "shelf.in_bottle", details=told, values=values_of(told, world))
    told_all = tuple(told_of(bottle, world) for bottle in named or world.household.bottles)
    if reading.slots.agents:
        told_all = tuple(t for t in told_all if t["agent"] is not None and t["agent"].id in reading.slots.agents)
    agents = tuple(agent_of(agent, world) for agent in reading.slots.agents)
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "shelf.in_bottles",
        details={"bottles": told_all, "agents": agents, "any": bool(world.household.bottles), "now": world.now},
        values={"bottles_held": tuple(values_of(told, world) for told in told_all)},
    )
