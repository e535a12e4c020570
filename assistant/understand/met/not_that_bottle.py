"""One bottle said in the place of another: "not yellow, green". Nothing met, and nothing is asked of the two."""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Reading, Slots
from assistant.understand.bottles import fills
from assistant.understand.look import Look
from assistant.understand.named.by_colour import products_by_colour
from assistant.understand.talk import follow_up
from assistant.understand.talk.follow_up import Answering
from assistant.understand.text.patterns import Pattern

_THE = r"(?:(?:the|my|in|for|into) )*"
_SO = r"(?:(?:no|oh|sorry|wait|i meant|i mean|i said|and|but) ,? ?)*"
_NOT_THIS = Pattern(rf"{_SO}not {_THE}BOTTLE ?,? ?(?:but )?{_THE}BOTTLE(?: one)?")
_THIS_NOT_THAT = Pattern(rf"{_SO}{_THE}BOTTLE ?,? ?not {_THE}BOTTLE(?: one)?")


def not_that_bottle(look: Look) -> Reading | None:
    """The question before, or the fill just recorded, with the bottle that is meant; None: nothing of the kind."""
    masked, things = products_by_colour(look.parsed, look.world.household)
    masked = masked.strip(" .!,")
    names = tuple(dict.fromkeys(thing.name for thing in things if thing.kind == "bottle"))
    if len(names) != 2 or "not" not in masked.split():
        return None
    meant = names[1] if _NOT_THIS.fullmatch(masked) else names[0] if _THIS_NOT_THAT.fullmatch(masked) else None
    fill, before = fills.before_it_is_put_right(look.world), look.world.talk.last_reading
    if fill is None and before is not None and not follow_up.may_be_asked_again(before.intent, look.world):
        return None
    if meant is None or (before := fill or before) is None or before.intent == "together":
        return None
    if fill is None and before.slots.bottles == (meant,):
        return replace(before, question=look.parsed.text, spoken=look.spoken)  # it was that one all along
    said = look.world.talk.last_reading
    if fill is not None and said is not None:  # the other bottle's own mix isn't this one's
        before = replace(fill, slots=replace(fill.slots, mixes=said.slots.mixes, agents=(), stocks=()))
    slots = replace(Slots(), bottles=(meant,))
    return follow_up.corrected(Answering(look.parsed, slots, look.spoken), before, look.world)
