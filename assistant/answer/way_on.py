"""What is really next: the round's own next step, or first what is on the surface and mustn't meet what is sprayed.

A round asks for spraying again after another product got onto its surface. Told so at once the keeper would put the
second half of a gas onto the first; so the rinse and the drying that lift the refusal are told before it.
"""

from __future__ import annotations

from dataclasses import dataclass

from assistant.answer.meeting import agent_of
from assistant.contract import Pending, Reading, Slots, World
from assistant.core.choice.together import Need, meet, standoff
from assistant.core.facts import Agent
from assistant.core.record.state import Round, Touch
from assistant.core.round.rounds import next_step


@dataclass(frozen=True, slots=True)
class WayOn:
    """The one thing to do now in an open round."""

    step: str
    off: Agent | None = None
    """What has to come off before the round's agent is sprayed; None: nothing."""
    need: Need | None = None
    """What lifts that."""
    fumes: bool = False
    """What is on the surface makes a gas together."""


def way_on(round_: Round, world: World) -> WayOn:
    """The next step of an open round as things stand on its surface."""
    step = next_step(round_, world.now)
    if step != "apply":
        return WayOn(step)
    touches = world.state.surfaces.get(round_.enclosure, ())
    held = standoff(touches, agent_of(round_.agent, world), world.facts)
    if held is None:
        return WayOn(step)
    first = "dry" if held.need == "dry" else "rinse"
    return WayOn(first, agent_of(held.touch.agent, world), held.need, _fumes(touches, world))


def step_now(round_: Round, world: World) -> str:
    """The name of that step."""
    return way_on(round_, world).step


def no_figure(round_: Round) -> bool:
    """True where it was sprayed with something whose wet time nobody knows, so that it can't be served."""
    return round_.hold is not None and round_.hold.seconds is None and "hold" not in round_.done


def give_up_question(round_: Round, step: str, world: World) -> Pending | None:
    """ "Finish it as a clean?", where its wet time is next and nobody knows it: yes gives the disinfection up."""
    if step != "hold" or not no_figure(round_):
        return None
    meant = Reading("", "clean_only", Slots(enclosures=(round_.enclosure,), confirmed=True), confidence=1.0)
    return Pending(meant, world.now, on_yes=meant)


def _fumes(touches: tuple[Touch, ...], world: World) -> bool:
    """Two of what is on it, not rinsed off, make a gas together or may."""
    wet = [agent_of(touch.agent, world) for touch in touches if not touch.rinsed]
    pairs = [meet(one, other, world.facts) for place, one in enumerate(wet) for other in wet[place + 1 :]]
    return any(pair is None or pair.gas for pair in pairs)
