"""Rinsing told in one breath with the spraying that followed it: of the soap, and not of a bottle.

"Rinsed, sprayed pink" is neither the pink bottle rinsed out nor a rinse of what was only then sprayed.
"""

from __future__ import annotations

import re
from dataclasses import replace

from assistant.contract import Slots
from assistant.core.round.rounds import is_open
from assistant.understand.look import Look
from assistant.understand.text.patterns import Pattern

_CLAUSES = Pattern(r"\s*(?:[,.;]|\b(?:and|then|but)\b)\s*")
_RINSED = Pattern(r"\b(?:rins\w*|wash\w*|flush\w*|swill\w*|clean\w*|empt\w+|pump\w*|scrub\w*|hos\w+)\b")
_SPRAYED = Pattern(r"\b(?:sprayed|misted|spritzed|squirted|on|wet)\b")
_OF_ONE = ("rinse", "wipe", "dry")


def is_of_no_bottle(look: Look) -> bool:
    """Whether the rinsing that is told isn't a bottle's, though one is named: that was sprayed, or another was rinsed.

    A bottle named before the rinsing ("pink's empty, rinsed it") may be what was rinsed.
    """
    clauses = [clause for clause in _CLAUSES.split(look.parsed.plain) if clause]
    if not any("BOTTLE" in clause for clause in clauses) or len(clauses) < 2:
        return False
    if any("BOTTLE" in clause and _RINSED.search(clause) for clause in clauses):
        return False
    rinsed = [at for at, clause in enumerate(clauses) if _RINSED.search(clause)]
    named = [at for at, clause in enumerate(clauses) if "BOTTLE" in clause]
    if not rinsed or re.search(r"\bthe other\b", clauses[rinsed[0]]):
        return bool(rinsed)
    return all(_SPRAYED.search(clauses[at]) for at in named) or rinsed[-1] < named[0]


def without_the_rinse_before(slots: Slots, look: Look) -> Slots:
    """The slots without a rinse, a wipe or a drying that is told before the first spraying: nothing was on it yet.

    "Washed and rinsed", where nothing has been sprayed, is the washing with its soap off.
    """
    if "apply" not in slots.steps:
        return _without_the_soap_rinse(slots, look)
    at = slots.steps.index("apply")
    if not set(slots.steps[:at]) & set(_OF_ONE):
        return slots
    rounds = look.world.state.rounds
    homes = [name for name, one in rounds.items() if is_open(one)]
    homes = [name for name in homes if name in slots.enclosures] or homes
    if not homes or any("apply" in rounds[name].done for name in homes):
        return slots
    kept = tuple(step for step in slots.steps[:at] if step not in _OF_ONE)
    return replace(slots, steps=(*kept, *slots.steps[at:]))


def _without_the_soap_rinse(slots: Slots, look: Look) -> Slots:
    """ "Washed and rinsed", where nothing has been sprayed: the soap is rinsed off."""
    at = slots.steps.index("wash") if "wash" in slots.steps else -1
    rounds = [one for one in look.world.state.rounds.values() if is_open(one)]
    rounds = [one for one in rounds if one.enclosure in slots.enclosures] or rounds
    unsprayed = bool(rounds) and all("apply" not in one.done for one in rounds)
    if at < 0 or slots.steps[at + 1 : at + 2] != ("rinse",) or not unsprayed:
        return slots
    return replace(slots, steps=(*slots.steps[: at + 1], *slots.steps[at + 2 :]))
