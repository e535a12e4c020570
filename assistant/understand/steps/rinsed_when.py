"""When a rinse is told to have been, held against the wet time before it."""

from __future__ import annotations

from datetime import timedelta

from assistant.core.round.rounds import hold_is_running, is_open
from assistant.understand.look import Look
from assistant.understand.text.patterns import Pattern

DRY_TO_COME = Pattern(r"\bdr(?:y|ied) (?:with)?in (?:about |another |a |the next )*(?:minute|moment|DURATION|NUMBER)\b")
""" "Rinsed, dry in a minute": no word of when it was rinsed."""


def rinsed_before_its_end(look: Look) -> bool:
    """ "Rinsed it at five past", told later, where the wet time wasn't over by then."""
    if "rinse" not in look.claims.done or DRY_TO_COME.search(look.parsed.plain):
        return False
    when, named = look.slots("done").when, look.slots("done").enclosures
    if when is None or when.to_the != "minute":
        return False
    holds = [
        round_.hold
        for name, round_ in look.world.state.rounds.items()
        if is_open(round_) and not hold_is_running(round_, look.world.now) and (not named or name in named)
    ]
    ends = [hold.began + timedelta(seconds=hold.seconds) for hold in holds if hold is not None and hold.seconds]
    return bool(ends) and all(hold.began <= when.at < max(ends) for hold in holds if hold is not None)
