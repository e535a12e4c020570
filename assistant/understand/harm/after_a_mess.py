"""A bare "rinsed it", "dried", right after a spill, a swallow, agents that met or a bottle that was filled.

It may be of the floor, the mouth or the bottle, and a rinse that is only guessed would clear a product off the record.
So it is asked of what it is, until an enclosure is named or something else is told.
"""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Outcome, Reading, Reply
from assistant.core.round.rounds import is_open
from assistant.understand.look import BY_RULE, Look, without_troubles
from assistant.understand.named.names import HOMES
from assistant.understand.question.may_be import is_told
from assistant.understand.text.parts_of_it import PARTS

_OF_EITHER = frozenset({"rinse", "wash", "dry", "wipe"})
"""Steps that are done to a floor, a mouth or a bottle as well."""
_NAMES_IT = (HOMES | PARTS | {"ENCLOSURE", "ANIMAL", "inside"}) - {"floor", "floors", "shelf", "all"}
_FLOORS = frozenset({"floor", "floors", "shelf", "shelves"})
"""Of the room, where something was spilled on it."""


def of_the_mess(look: Look) -> Reading | None:
    """The step that was told, to be asked of what it is; None: it is of the clean, or no step."""
    last, steps = look.world.talk.last, frozenset(look.claims.done)
    words = frozenset(look.parsed.plain.split())
    mopped = len(look.parsed.plain.split()) <= _FEW and not _MOPPED.isdisjoint(words) and _told(look)
    if last is not None and last.intent == "spill" and not steps and mopped:
        return look.reading("spill", without_troubles(look.slots("spill")), BY_RULE)
    if last is None or not steps or not steps <= _OF_EITHER or not _NAMES_IT.isdisjoint(words):
        return None
    if not any(is_open(round_) for round_ in look.world.state.rounds.values()) or not _told(look):
        return None
    filled = last.intent == "mixed" and last.outcome is Outcome.ANSWER and "it" in words
    if not (_is_a_mess(last) or filled or _was_asked(look)):
        return None
    if not _FLOORS.isdisjoint(words) and last.intent != "spill":
        return None
    slots = replace(look.slots("done"), steps=look.claims.done, asked_of_harm="bare")
    return look.reading("done", slots, BY_RULE)


_MOPPED = frozenset({"mopped", "mopping"})
_FEW = 5
"""Words of a text that tells of the mopping alone."""


def _told(look: Look) -> bool:
    return is_told(look.parsed.plain)


def _is_a_mess(last: Reply) -> bool:
    """A spill in the room, a mouthful, or agents that met in a bottle or bucket; on a surface it is of the clean."""
    if last.values.get("enclosure") is not None:
        return False
    swallowed = last.intent == "splash" and last.values.get("place") == "mouth"
    gas = last.outcome is Outcome.REFUSE and last.values.get("gas") is True
    return last.intent == "spill" or swallowed or gas


def _was_asked(look: Look) -> bool:
    """The turn before was asked the same."""
    last, before = look.world.talk.last, look.world.talk.last_reading
    asked = last is not None and last.intent == "done" and last.outcome is Outcome.ASK
    return asked and before is not None and before.slots.asked_of_harm == "bare"
