"""Fumes told of as harm are a smell as well: the airing of every clean on which something was sprayed is open again.

Nobody is asked of which clean they come: they are in the room. Only the keeper's "no smell" closes it.
"""

from __future__ import annotations

import re
from dataclasses import replace

from assistant.answer.which import open_rounds
from assistant.contract import Answer, Reading, World
from assistant.core.record.events import Sensed
from assistant.core.record.state import Round

_NOT_TOLD = frozenset({"if", "number", "give", "over", "stop", "lens", "onto it", "fire", "again", "bare"})
"""What is asked of a harm and tells nothing new of the air."""
_IN_THE_AIR = re.compile(
    r"\bin (?:my |the |his |her )?(?:nose|throat|air|here|there|this room|the room)\b|\b(?:fumes?|smells?|reeks?"
    r"|stinks?|stench|vapou?rs?|gas(?:es)?)\b"
)
"""What is breathed in, where it stings an eye or a nose."""
_EYES_STING = re.compile(
    r"^(?!.*\b(?:in|into) (?:my|his|her|their|the) (?:\w+ )?eyes?\b)(?!.*\b(?:splash|squirt|drip)\w*)"
    r".*\beyes(?: \w+){0,2} (?:sting|burn|water|stream|smart|itch)\w*",
    re.IGNORECASE,
)
"""Both eyes, and nothing that got into them: what does that is in the air."""


def with_the_air(answer: Answer, reading: Reading, world: World) -> Answer:
    """The same, with a smell on record where fumes were told of."""
    slots = reading.slots
    if slots.got_out or slots.asked_of_harm in _NOT_TOLD or reading.words[:2] == ("what", "if"):
        return answer
    by_air = slots.place == "eye" and slots.victim == "person" and _EYES_STING.search(reading.said) is not None
    if slots.place != "lungs" and not by_air and _IN_THE_AIR.search(reading.said) is None:
        return answer
    smelt = tuple(
        Sensed(round_.enclosure, smell=True)
        for round_ in open_rounds(world)
        if not round_.smells and _may_fume(round_, world)
    )
    return replace(answer, events=(*answer.events, *smelt))


def _may_fume(round_: Round, world: World) -> bool:
    """Something was sprayed on it, or touched it."""
    return "apply" in round_.done or round_.touched or bool(world.state.surfaces.get(round_.enclosure))
