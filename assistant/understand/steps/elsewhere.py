"""A step that was recorded for the wrong enclosure: "sprayed both", then "no, just the window cage"."""

from __future__ import annotations

import re
from dataclasses import replace

from assistant.contract import Outcome, Slots
from assistant.core.household import Enclosure
from assistant.core.round.rounds import is_open
from assistant.understand.look import Look
from assistant.understand.named.names import HOMES

_HOME = f"(?:{'|'.join(sorted(HOMES))})"
_CORRECTS = re.compile(
    r"^(?:(?:no|nope|wait|sorry|oops|oh|hang on|hold on|whoops|actually|not both) ,? ?)+"
    rf"(?:(?:i (?:meant|mean)|it was|that was|i said|just|only) )*(?:the |my )?(?P<home>ENCLOSURE|ANIMAL|\w+ one"
    rf"|(?:\w+ )?{_HOME}|neighbou?r|wrong \w+|next door)(?: 's)?(?: (?:that )?i (?:just )?(?:did|sprayed|rinsed|washed|dried"
    rf"|cleared|wiped|moved out|emptied))?(?: (?:i meant|i mean|only|not both|that was|it was))?(?: ?[.!])*$"
)


def meant_elsewhere(look: Look) -> Slots | None:
    """The steps recorded by the turn before and the enclosure they are said to be of instead; None: no such thing.

    Its enclosures are empty where it isn't told which: then the turn is only taken back.
    """
    last, before = look.world.talk.last, look.world.talk.last_reading
    if last is None or before is None or last.intent != "done" or last.outcome is not Outcome.ANSWER:
        return None
    recorded = last.values.get("enclosures") or ()
    found = _CORRECTS.match(look.parsed.plain)
    if found is None or last.values.get("recorded") is not True or set(look.claims.done) - set(before.slots.steps):
        return None
    slots = look.slots("done")
    named = slots.enclosures or _by_its_looks(found["home"], look)
    if len(named) > 1 or tuple(recorded) == named:
        return None
    return replace(before.slots, enclosures=named)


def _by_its_looks(said: str, look: Look) -> tuple[str, ...]:
    """ "The glass one", "the cage": the only enclosure with an open clean that is made of that, or called so."""
    world = look.world
    word = said.split()[-1] if said.split()[-1] != "one" else said.split()[0]
    homes = [home for home in world.household.enclosures if home.name in world.state.rounds]
    fitting = [home.name for home in homes if is_open(world.state.rounds[home.name]) and word in _words_of(home)]
    return tuple(fitting) if len(fitting) == 1 else ()


def _words_of(home: Enclosure) -> set[str]:
    return {*home.name.split(), *(home.material or "").split()}
