"""What comes before a return, though every step is served: the animal is loose, or somebody tells of it being hurt."""

from __future__ import annotations

from typing import Literal, TypeAlias

from assistant.contract import World
from assistant.core.harms import latest
from assistant.core.round.rounds import rinse_left_s

First: TypeAlias = Literal["loose", "rinsing", "hurt"]


def what_comes_first(name: str | None, world: World) -> First | None:
    """What has to be seen to before the animal goes back; None: nothing that was told.

    A harm may be another animal's; that can't be told, and an hour of asking the vet is the smaller fault.
    """
    if any(one.enclosure in ("", name) for one in world.state.loose):
        return "loose"
    animals = [rinse for rinse in world.state.rinses if rinse.victim != "person"]
    if any(rinse_left_s(rinse, world.now) > 0 for rinse in animals):
        return "rinsing"
    told, last = latest(world.talk.harms, world.now), world.talk.last
    just = last is not None and last.intent == "splash" and last.values.get("victim") in ("animal", "either")
    return "hurt" if just or (told is not None and told.victim != "person") else None
