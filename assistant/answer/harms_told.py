"""Which harm a turn was about, kept for what is said of it later: "in her eyes", "may I go back in?"."""

from __future__ import annotations

from assistant.contract import Answer, Reading, World
from assistant.core.harms import HarmTold


def harms_told(reading: Reading, answer: Answer, world: World) -> tuple[HarmTold, ...]:
    """Every harm told of in this sitting, the latest last."""
    return (*world.talk.harms, *_told_now(reading, answer, world))


def _told_now(reading: Reading, answer: Answer, world: World) -> tuple[HarmTold, ...]:
    slots, values = reading.slots, answer.values
    if answer.message == "choosing.gas_made":
        return (HarmTold("lungs", "person", world.now, gas=True),)
    if answer.message == "harm.fire":
        return (HarmTold("lungs", "person", world.now),)
    place, victim = values.get("place"), values.get("victim")
    if answer.message == "harm.animal_down":
        return ()  # nobody knows what did it
    if answer.intent != "splash" or place is None or victim is None or slots.asked_of_harm == "if":
        return ()
    before = world.talk.harms[-1] if world.talk.harms else None
    if slots.got_out and before is not None:
        return ()
    if slots.asked_of_harm is not None and before is not None and (before.place, before.victim) == (place, victim):
        return ()  # asked about it, not told anew
    return (*(HarmTold(other, victim, world.now) for other in slots.places_too), HarmTold(place, victim, world.now))
