"""`add`: what the keeper owns grows by a thing. Asking about it and writing it down is the chat's, as in `setup`.

The answer only says what and where: keeping.toml belongs to the shells, and a script, a recording or a rehearsal has
nobody to ask.
"""

from __future__ import annotations

from assistant.answer.asking import ask
from assistant.contract import Answer, Outcome, Reading, World


def add(reading: Reading, world: World) -> Answer:
    """What is to be added, and how; asks what it is where that wasn't said."""
    kind = reading.slots.adds
    if kind is None:
        return ask(reading, world, ("adds",), "adding.what", adds=None)
    return Answer(reading.intent, Outcome.ANSWER, "adding.how", {"adds": kind}, {"adds": kind, "recorded": False})
