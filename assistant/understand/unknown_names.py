"""Words that stand where a name belongs but fit nothing that is known: "the turquoise bottle"."""

from __future__ import annotations

from assistant.contract import Slots, Unknown
from assistant.understand.known_words import COLOURS, ORDINARY, PRODUCT_ENDS
from assistant.understand.names import HOMES
from assistant.understand.parsing import Parsed

_OF_ONE_ROUND = (
    "start next done status time_left hold_time return_check dry_time air_time"
    " dried_early rewet still_smells leave_off clean_only"
)
ROUND = frozenset(_OF_ONE_ROUND.split())
"""Questions about an enclosure being cleaned."""


def unknown_names(parsed: Parsed, intent: str | None, slots: Slots) -> tuple[Unknown, ...]:
    """Words that stand where a name belongs, but fit nothing known: "the turquoise bottle"."""
    words = [word[1:-1].upper() if word[0] == "{" else word for word in parsed.as_said]
    found: list[Unknown] = []
    for at in range(1, len(words)):
        said, end = words[at - 1], words[at]
        if not said.isalpha() or said.isupper() or said in ORDINARY:
            continue
        if (
            end in ("bottle", "one")
            and (end == "bottle" or said in COLOURS)
            and intent not in ("done", "status", "next", "return_check")
        ):
            found.append(Unknown("bottle", said))
        elif end in HOMES and intent in ROUND and not slots.enclosures and not slots.choices:
            found.append(Unknown("enclosure", f"{said} {end}"))
        elif end in PRODUCT_ENDS and intent == "together":
            found.append(Unknown("agent", f"{said} {end}"))
    last = words[-1] if words else ""
    if last in COLOURS and intent == "dose" and len(words) > 1 and words[-2] in ("the", "my") and not slots.bottles:
        found.append(Unknown("bottle", last))
    return tuple(found)
