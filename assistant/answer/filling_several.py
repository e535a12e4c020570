"""Several bottles filled, told in one breath: each is recorded, or what stands against one is said."""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Answer, Handler, Outcome, Reading, World
from assistant.core.record.events import Recorded
from assistant.core.record.fold import fold

_WORST_FIRST = (Outcome.REFUSE, Outcome.CONFIRM, Outcome.ASK, Outcome.UNSURE, Outcome.ANSWER)


def mixed_each(reading: Reading, world: World, mixed: Handler) -> Answer:
    """The fills one after the other; what is refused or asked of one is said, and the others are recorded.

    Only the first that asks is asked: of what is left over the reply says that it wasn't noted.
    """
    answers: list[Answer] = []
    for slots in reading.slots.each:
        answer = mixed(replace(reading, slots=slots), world)
        for event in answer.events:
            world = replace(world, state=fold(world.state, Recorded(world.now, "", event)))
        answers.append(answer)
    told = min(answers, key=lambda answer: _WORST_FIRST.index(answer.outcome))
    noted = tuple(_bottle(answer) for answer in answers if answer.values.get("recorded"))
    events = tuple(event for answer in answers for event in answer.events)
    values = {**told.values, "bottles_recorded": noted}
    if len(noted) == len(answers):
        return replace(told, message="shelf.mixed_each", details={"answers": answers}, values=values, events=events)
    again = tuple(
        slots.bottles[0]
        for slots, answer in zip(reading.slots.each, answers, strict=True)
        if not answer.values.get("recorded") and answer is not told
    )
    details = {**told.details, "noted_too": noted, "tell_again": again}
    return replace(told, details=details, values=values, events=events)


def _bottle(answer: Answer) -> str:
    return str(answer.values["bottle"])
