"""An animal back home from its waiting tub while no clean is open there: noted, and nothing is vouched for by it."""

from __future__ import annotations

from dataclasses import replace

from assistant.answer.asking import ask
from assistant.answer.which import open_rounds
from assistant.contract import Answer, Outcome, Pending, Reading, World
from assistant.core.record.events import TubLeft


def out_of_the_tub(answer: Answer, reading: Reading, world: World) -> Answer:
    """What `done` gave, or, for one that waits in a tub and has no clean open, that it is back."""
    slots = reading.slots
    if answer.message != "the_round.done_where" or slots.steps != ("return",):
        return answer
    waiting = tuple(
        use.enclosure
        for use in sorted(world.state.tubs.values(), key=lambda use: (use.since, use.tub))
        if use.until is None and all(use.enclosure != round_.enclosure for round_ in open_rounds(world))
    )
    homes = slots.enclosures or waiting
    if not waiting or any(home not in waiting for home in homes):
        return answer
    if len(homes) > 1 and not (slots.enclosures or slots.every_enclosure):
        which = ask(reading, world, ("enclosure",), "tubs.which_back", {"homes": _named(homes, world)}, recorded=False)
        return replace(which, pending=Pending(reading, world.now, missing=("enclosure",)))
    on_it = tuple(
        (home, touch.agent)
        for home in homes
        for touch in world.state.surfaces.get(home, ())
        if not (touch.rinsed or touch.wiped)
    )
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "tubs.back_on_it" if on_it else "tubs.back",
        details={
            "homes": _named(homes, world),
            "agent": world.facts.agents.get(on_it[0][1]) if on_it else None,
        },
        values={"recorded": True, "enclosure": homes[0], "enclosures": homes, "steps": ("return",), "next": None},
        cautions=("caution-hands",),
        events=tuple(TubLeft(home) for home in homes),
    )


def _named(homes: tuple[str, ...], world: World) -> tuple[object, ...]:
    return tuple(world.household.enclosure(home) or home for home in homes)
