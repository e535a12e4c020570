"""Two wet times told of in one breath, and not alike: "the tank stayed wet, the box dried"."""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Reading
from assistant.core.record.state import Round
from assistant.core.round.rounds import is_open
from assistant.understand.look import BY_RULE, Look
from assistant.understand.steps.named_in_clauses import named_in_clauses
from assistant.understand.text.patterns import Pattern

_ENDS = frozenset((",", ".", ";", "!", "and", "but", "while", "though", "whereas"))
_HOMES = frozenset(("ENCLOSURE", "ANIMAL"))
_DRIED = Pattern(
    r"\b(?:dried|dry|patchy|streaky|did not|was not|has not|not so|never stayed)\b"
    r"|(?:^|\b)not (?:the |my )?(?:ENCLOSURE|ANIMAL)"
)
_WET = Pattern(r"\b(?:wet|fine|ok|good|did|was|stayed)\b")
_NOT_TOLD = Pattern(r"\b(?:nearly|almost|if|will|going to|about to|until|before|can|should|when|how|is it)\b|\?$")


def wet_apart(look: Look) -> Reading | None:
    """Each enclosure with its own answer, where one stayed wet and another didn't; None: nothing of the kind.

    Only of those whose wet time isn't served yet, and only where each clause names one of them.
    """
    plain = look.parsed.plain
    if not look.parsed.mentions or ("wet" not in plain.split() and not _asked_lately(look)) or _NOT_TOLD.search(plain):
        return None
    on_hold = {name for name, round_ in look.world.state.rounds.items() if _is_on_hold(round_)}
    wet: dict[str, bool] = {}
    for clause, mentions in named_in_clauses(look.parsed, _ENDS, _HOMES):
        homes = {thing.name for mention in mentions for thing in mention.things} & on_hold
        if len(homes) > 1:
            return None
        dried = _DRIED.search(clause) is not None
        if homes and (dried or _WET.search(clause)):
            wet[homes.pop()] = not dried
    if len(wet) < 2 or len(set(wet.values())) < 2:
        return None
    slots = replace(
        look.slots("done"),
        steps=("hold",),
        enclosures=tuple(wet),
        choices=(),
        stayed_wet=None,
        apart=tuple((name, ("hold",)) for name in wet),
        dried_apart=tuple(name for name, stayed in wet.items() if not stayed),
    )
    return look.reading("done", slots, BY_RULE)


def _asked_lately(look: Look) -> bool:
    """The tool has just asked whether they stayed wet: then "the tank was fine" is an answer."""
    return bool(look.claims.stayed_wet is not None or look.told.dried or "not" in look.parsed.plain.split())


def _is_on_hold(round_: Round) -> bool:
    return is_open(round_) and round_.hold is not None and "hold" not in round_.done
