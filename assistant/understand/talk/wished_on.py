"""What goes on from a wish to treat an animal: its numbers, told one turn later, are of that wish, and refused again.

And the other way about: after a dose, "can I put him in it" is such a wish.
"""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Reading, Slots
from assistant.core.round.rounds import is_open
from assistant.understand.look import BY_RULE, Look
from assistant.understand.named.animal_words import ANIMALS
from assistant.understand.text.patterns import Pattern

_AMOUNTS = frozenset({"dose", "mix_strength", "measure_with", "make_up", "convert", "read_ratio"})
_MIXED = frozenset({"dose", "mix_strength", "top_up", "mixed"})
_FEW = 9
"""Words of a turn that only goes on."""
_IN_IT = Pattern(
    rf"\b(?:put|pop|sit|stand|dip|soak|bathe|dunk|lower|place)\w* (?:the |my )?(?:ANIMAL|him|her|{ANIMALS}) "
    r"(?:\w+ )?in(?:to)?(?: (?:it|that|there|this))?$"
    rf"|^(?:(?:and|so|then|now) )*(?:he|she|ANIMAL|the (?:{ANIMALS}))(?: will| 'll| can| is going to)? "
    r"(?:sit|soak|stand|lie|swim|bathe|stay)s? in (?:it|that|there)\b"
)


def wished_on(look: Look) -> Reading | None:
    """The wish to treat, once more; None: this is of something else."""
    before, last = look.world.talk.last_reading, look.world.talk.last
    if before is None or last is None or len(look.parsed.words) > _FEW:
        return None
    if before.intent == "wound":
        asks_how_much = look.top in _AMOUNTS or bool(look.parsed.amounts.found)
        of_a_thing = look.parsed.mentions or look.claims.done or look.claims.mentioned
        if asks_how_much and not of_a_thing:
            return replace(before, question=look.parsed.text, spoken=look.spoken, doubts=())
    cleaning = any(is_open(round_) for round_ in look.world.state.rounds.values())
    if last.intent in _MIXED and not cleaning and _IN_IT.search(look.parsed.plain.strip(" .!?,")):
        return look.reading("wound", Slots(), BY_RULE)
    return None
