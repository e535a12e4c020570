"""A ready mix that is to be made weaker: "I have 500 ml of 1 in 32, make it 1 in 64". Water alone goes to it."""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Slots
from assistant.understand.parsing import Parsed
from assistant.understand.text.patterns import Pattern

THINNED = "thinned"
_OF_IT = r"(?: of)?(?: the| my| some)*(?: (?:AGENT|STOCK|BOTTLE|mix|solution|spray))?"
_THINNED = Pattern(
    rf"\b(?:have|got|there is|with|take|dilute|thin|bring|weaken) VOLUME{_OF_IT}(?: at| of)? MIX{_OF_IT}\b"
    r".*\b(?:make|making|get|bring|turn|dilute|to|into|it)(?: (?:it|that|this|up|down|to|into|a|at|of))* MIX\b",
    "MIX",
)


def thinned_again(before: Slots, now: Slots, text: str) -> Slots:
    """ "1 in 100", after a mix was to be made weaker: the mix that is there stays, and it is thinned to that."""
    if before.setting is None or before.setting[0] != THINNED or len(before.mixes) != 2 or not now.mixes:
        return now
    return replace(now, mixes=(before.mixes[0], now.mixes[-1]), setting=(THINNED, text))


def thinning(parsed: Parsed) -> tuple[str, str] | None:
    """That a mix said first is to become the one said last; None: nothing of the kind."""
    kinds = [found.kind for found in parsed.amounts.found]
    both = kinds == ["volume", "mix", "mix"] and _THINNED.search(parsed.plain) is not None
    return (THINNED, parsed.text) if both else None
