"""Steps that are told of several enclosures in one breath, other ones of each: "sprayed the tank, washed the box"."""

from __future__ import annotations

from collections.abc import Iterator

from assistant.understand.named.names import Mention
from assistant.understand.parsing import Parsed
from assistant.understand.steps.claimed_steps import claims_in

_ENDS = frozenset((",", ".", ";", "!", "and", "then", "but", "while", "plus"))
_MASKS = frozenset(("AGENT", "STOCK", "BOTTLE", "ENCLOSURE", "ANIMAL", "MEASURE", "ORGANISM"))


def steps_apart(parsed: Parsed) -> tuple[tuple[str, tuple[str, ...]], ...]:
    """Each enclosure with what is told of it; empty unless each is told of apart, and not the same of all.

    A clause without a name goes with the one before that has one, or else with the first that follows.
    """
    told: dict[str, list[str]] = {}
    before: list[str] = []
    home: str | None = None
    for clause, homes in _clauses(parsed):
        claims = claims_in(clause)
        if claims.polarity in ("asked", "not yet") and claims.mentioned:
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
    return apart if len(apart) > 1 and len({steps for _, steps in apart}) > 1 else ()


def _clauses(parsed: Parsed) -> Iterator[tuple[str, list[str]]]:
    """Each clause with the enclosures that it names."""
    mentions = iter(parsed.mentions)
    words: list[str] = []
    homes: list[str] = []
    for word in parsed.plain.split():
        if word in _ENDS:
            yield " ".join(words), homes
            words, homes = [], []
            continue
        words.append(word)
        if word in _MASKS:
            mention = next(mentions, None)
            if mention is not None and word in ("ENCLOSURE", "ANIMAL"):
                homes += _only(mention)
    yield " ".join(words), homes


def _only(mention: Mention) -> list[str]:
    homes = {thing.name for thing in mention.things if thing.kind in ("enclosure", "animal")}
    return list(homes) if len(homes) == 1 else []
