"""The steps of a round in the keeper's words: as done, as a thing, and as the one thing to do."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from assistant.core.facts import Agent
from assistant.core.household import Enclosure
from assistant.say.wording.plain import listed

DID = {
    "move out": "out",
    "clear": "cleared",
    "wash": "washed and soap rinsed off",
    "apply": "sprayed",
    "hold": "wet time done",
    "rinse": "rinsed",
    "dry": "dry",
    "air": "aired",
    "return": "back in",
}
"""A step as done."""

NAMES = {
    "move out": "moving out",
    "clear": "clearing",
    "wash": "washing",
    "apply": "spraying",
    "hold": "wet time",
    "rinse": "rinsing",
    "dry": "drying",
    "air": "airing",
    "return": "putting back",
}
"""A step as a thing."""

TO_DO = {
    "move out": "move the animal out, unplug the heat",
    "clear": "clear out droppings, dishes and substrate",
    "wash": "wash with detergent, then rinse the soap off",
    "apply": "spray every surface wet",
    "hold": "keep it wet",
    "rinse": "rinse with clean water",
    "dry": "dry it, corners too",
    "air": "air the room",
    "return": "look, feel, sniff; then it's your call",
}
"""A step as the one thing to do."""

NO_TIME = "no wet time for {}: no disinfection."
AS_A_CLEAN = "Finish it as a clean? Or rinse it off, spray another."
OR_ADD = "With label_minutes from its label in keeping.toml, start over with it."
"""The ways out of a wet time that can't be served."""
ADD_MINUTES = "Its label decides; add its label minutes to your household file."


def steps_done(steps: Sequence[str]) -> str:
    """ "out, cleared and washed"."""
    return listed(_SAID[step] for step in steps)


_SAID = {**DID, "wash": "washed", "wipe": "wiped"}
"""As the keeper says it: a wipe isn't yet taken for the rinse."""


def animal_of(enclosure: Enclosure | None) -> str:
    return f"the {enclosure.animal}" if enclosure is not None and enclosure.animal else "the animal"


def all_of(enclosure: Enclosure | None) -> str:
    """ "both", "all 3" of the animals that live there; "" of one alone. One left behind would be sprayed."""
    animals = enclosure.animals if enclosure is not None else 1
    return "" if animals < 2 else "both" if animals == 2 else f"all {animals}"


def name_of(enclosure: Any) -> str:
    return enclosure.name if isinstance(enclosure, Enclosure) else str(enclosure or "it")


def to_do(step: str, enclosure: Enclosure | None, agent: Agent | None) -> str:
    """The one thing to do, in this enclosure, with this agent."""
    if step == "move out":
        if all_of(enclosure):
            return f"move {all_of(enclosure)} out, one a tub, unplug the heat"
        return f"move {animal_of(enclosure)} out, unplug the heat"
    if step == "apply" and agent is not None:
        cold = "heat off and cold first, then " if agent.needs_cold else ""
        return f"{cold}spray {agent.name}, every surface wet"
    if step == "rinse" and agent is not None and agent.wipe_will_do:
        return "rinse, or wipe twice with clean water"
    return TO_DO[step]


def to_do_now(way: Any, enclosure: Enclosure | None, agent: Agent | None) -> str:
    """The same as things stand on the surface: what mustn't meet the agent comes off before that is sprayed."""
    if way.off is None or agent is None:
        return to_do(way.step, enclosure, agent)
    if way.step == "dry":
        return f"dry it first, corners too, before any {agent.name}"
    clear = "once the air is clear, " if way.fumes else ""
    then = f"{agent.name} only once it's dry" if way.need == "rinse and dry" else f"then spray {agent.name}"
    return f"{clear}rinse {way.off.name} off with clean water; {then}"
