"""Enclosures that are named beside the one to begin: done already, put off, or for later.

"The hospital tub's done, now the river tank with pink" begins one clean.
"""

from __future__ import annotations

from assistant.understand.parsing import Parsed
from assistant.understand.steps.named_in_clauses import named_in_clauses
from assistant.understand.text.patterns import Pattern

_ENDS = frozenset((",", ".", ";", "!", "but", "then", "before", "while"))
_HOMES = frozenset(("ENCLOSURE", "ANIMAL"))
_NOT_NOW = Pattern(
    r"(?<!\S)(?:is|are|'s|has been|have|has|just|already|i) (?:\w+ )?(?:did|done|finished|cleaned|sorted)\b"
    r"|\b(?:did|finished) (?:the |my )?(?:ENCLOSURE|ANIMAL)\b|\b(?:can|must|will|has to|have to) wait\b"
    r"|\b(?:skip(?:ping)?|leave|leaving|forget) (?:out )?(?:the |my )?(?:ENCLOSURE|ANIMAL)\b"
    r"|\bnot (?:the |my )?(?:ENCLOSURE|ANIMAL)\b"
    r"|\b(?:later|tomorrow|another day|next time|some other time|afterwards)\b"
)
_FIRST = Pattern(r"\bfirst\b", "first")


def not_this_time(parsed: Parsed) -> frozenset[str]:
    """The enclosures that no clean is to be begun of, of all that are named; empty where none would be left."""
    now: set[str] = set()
    later: set[str] = set()
    in_turn = _FIRST.search(parsed.plain) is not None
    for clause, mentions in named_in_clauses(parsed, _ENDS, _HOMES):
        homes = {
            thing.name for mention in mentions for thing in mention.things if thing.kind in ("enclosure", "animal")
        }
        after_the_first = in_turn and bool(now) and _FIRST.search(clause) is None
        (later if _NOT_NOW.search(clause) or after_the_first else now).update(homes)
    return frozenset(later - now) if now else frozenset()
