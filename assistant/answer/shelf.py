"""What bottles hold: so far, that one was rinsed out."""

from __future__ import annotations

from assistant.answer.asking import ask, names_of
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.events import BottleRinsed


def rinsed_out(reading: Reading, world: World) -> Answer:
    """Records that a bottle was emptied, rinsed and pumped through, so that an unknown mix in it is gone."""
    if not reading.slots.bottles:
        known = world.state.unknown_mixes or names_of("bottle", world)
        return ask(reading, world, ("bottle",), "shelf.rinsed_which", {"known": known})
    bottle = reading.slots.bottles[0]
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "shelf.rinsed_out",
        details={"bottle": bottle, "was_unknown": bottle in world.state.unknown_mixes},
        values={"bottle": bottle},
        events=(BottleRinsed(bottle),),
    )
