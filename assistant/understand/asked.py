"""For what the slots of a text are read."""

from __future__ import annotations

from dataclasses import dataclass

from assistant.contract import World
from assistant.understand.steps.claimed_steps import Claims


@dataclass(frozen=True, slots=True)
class Asked:
    """What the slots are read for."""

    intent: str | None
    claims: Claims
    world: World
