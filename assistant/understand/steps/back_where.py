"""Where an animal is said to be back: in the tub that it waits in, or in its own home.

"She's back in her tub" is no return, unless what is cleaned is a tub as well; then, and of a hide, it is asked.
"""

from __future__ import annotations

import re
from dataclasses import replace

from assistant.contract import Doubt, Reading
from assistant.understand.look import BY_RULE, Look
from assistant.understand.named.by_kind import open_homes, words_of_home
from assistant.understand.steps.back_words import HIDE, IS_BACK, IT_IS_IN, UNSURE, WAITING


def back_where(look: Look) -> Reading | None:
    """An animal that is said to be back in a tub, a bag or a hide; None: nothing of the kind."""
    plain = look.parsed.plain.strip(" .!")
    found, it_is_in = IS_BACK.search(plain), IT_IS_IN.match(plain)
    slots = look.slots("done")
    homes = [home.name for home in open_homes(look.world)]
    homes = [name for name in homes if name in slots.enclosures] or homes
    if (found is None and it_is_in is None) or not homes or UNSURE.search(plain):
        return None
    slots = replace(
        slots, enclosures=tuple(homes) if len(homes) == 1 else (), steps=("move out",), choices=(), numbers=()
    )
    if found is None:
        return _asked(look.reading("done", replace(slots, steps=("return",)), BY_RULE))
    where = found["where"] or found["where_too"]
    there = found["there"] or found["there_too"]
    may_be_home = re.fullmatch(HIDE, where) is not None or (WAITING.search(there) is None and _is_called(where, look))
    return (
        _asked(look.reading("done", replace(slots, steps=("return",)), BY_RULE))
        if may_be_home
        else (look.reading("done", slots, BY_RULE))
    )


def _is_called(where: str, look: Look) -> bool:
    """Whether a home that is being cleaned is called so: "rack tub seven"."""
    return any(where.removesuffix("s") in words_of_home(home) for home in open_homes(look.world))


def _asked(reading: Reading) -> Reading:
    return replace(reading, doubts=(Doubt("polarity", "return"),))
