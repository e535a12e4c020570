"""Steps that are told of several enclosures in one breath, other ones of each: "sprayed the tank, washed the box"."""

from __future__ import annotations

from assistant.understand.named.names import Mention
from assistant.understand.parsing import Parsed
from assistant.understand.steps.claimed_steps import claims_in
from assistant.understand.steps.named_in_clauses import named_in_clauses

_ENDS = frozenset((",", ".", ";", "!", "and", "then", "but", "while", "plus"))
_HOMES = frozenset(("ENCLOSURE", "ANIMAL"))


def steps_apart(parsed: Parsed) -> tuple[tuple[str, tuple[str, ...]], ...]:
    """Each enclosure with what is told of it; empty unless each is told of apart, and not the same of all.

    A clause without a name goes with the one before that has one, or else with the first that follows.
    """
    told: dict[str, list[str]] = {}
    before: list[str] = []
    home: str | None = None
    for clause, mentions in named_in_clauses(parsed, _ENDS, _HOMES):
        homes = [name for mention in mentions for name in _only(mention)]
        claims = claims_in(clause)
        if claims.polarity == "asked" and claims.mentioned:
            return ()
        if len(homes) > 1:
            return ()
        home = homes[0] if homes else home
        if home is None:
            before += claims.done
            continue
        told.setdefault(home, []).extend((*before, *claims.done))
        before = []
    apart = tuple((name, tuple(dict.fromkeys(steps))) for name, steps in told.items() if steps)
    return apart if apart and len(told) > 1 and len({tuple(steps) for steps in told.values()}) > 1 else ()


def _only(mention: Mention) -> list[str]:
    homes = {thing.name for thing in mention.things if thing.kind in ("enclosure", "animal")}
    return list(homes) if len(homes) == 1 else []
