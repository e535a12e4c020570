"""Another product told as it is put on what is being cleaned: noted, with what comes before the clean's own."""

from __future__ import annotations

from assistant.answer.meeting import agent_of, off_again
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.choice.together import standoff
from assistant.core.record.state import Touch
from assistant.core.round.rounds import is_open


def noted(reading: Reading, world: World) -> Answer | None:
    """What is noted of the one enclosure, and whether the clean's own product has to wait; None: it isn't told so.

    The touch itself is recorded with whatever is answered.
    """
    slots = reading.slots
    if slots.met or not slots.touched or len(slots.enclosures) != 1:
        return None
    round_ = world.state.rounds.get(slots.enclosures[0])
    if round_ is None or not is_open(round_):
        return None
    own = agent_of(round_.agent, world)
    touches = tuple(Touch(agent, world.now) for agent in slots.touched)
    held = standoff(touches, own, world.facts)
    put_on = agent_of(held.touch.agent if held is not None else slots.touched[-1], world)
    return Answer(
        reading.intent,
        Outcome.REFUSE if held is not None else Outcome.ANSWER,
        "choosing.put_on",
        details={
            "agent": put_on,
            "own": own,
            "enclosure": round_.enclosure,
            "held": held,
            "off": off_again(slots.touched, world),
            "sprayed": "apply" in round_.done,
        },
        values={
            "verdict": held.pair.verdict if held is not None and held.pair is not None else None,
            "gas": held.pair.gas if held is not None and held.pair is not None else None,
            "agents": (put_on.id, own.id),
            "enclosure": round_.enclosure,
            "need": held.need if held is not None else None,
        },
        cautions=("caution-label-first",),
    )
