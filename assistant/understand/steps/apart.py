"""Steps that are told of several enclosures in one breath, other ones of each: "sprayed the tank, washed the box"."""

from __future__ import annotations

from assistant.contract import World
from assistant.core.round.rounds import is_open
from assistant.understand.named.names import Mention
from assistant.understand.parsing import Parsed
from assistant.understand.steps.claimed_steps import claims_in
from assistant.understand.steps.named_in_clauses import named_in_clauses
from assistant.understand.text.patterns import Pattern

_ENDS = frozenset((",", ".", ";", "!", "and", "then", "but", "while", "plus"))
_HOMES = frozenset(("ENCLOSURE", "ANIMAL"))


_ONLY_A_NAME = Pattern(
    r"(?:(?:ok|so|right|both|the|my|in|of|for|also) )*(?:ENCLOSURE|ANIMAL)(?: 's)?(?: too| as well| also)?"
)
_NOT_SO = Pattern(r"\b(?:not|still|waits?|waiting|yet|stays)\b", "not", "still", "wait", "yet", "stay")


def steps_apart(parsed: Parsed, world: World) -> tuple[tuple[str, tuple[str, ...]], ...]:
    """Each enclosure with what is told of it; empty unless each is told of apart, and not the same of all.

    A clause without a name goes with the one before that has one, or else with the first that follows; but "he's in,
    the snake isn't" is of the other one of two.
    """
    open_ones = [name for name, round_ in world.state.rounds.items() if is_open(round_)]
    told: dict[str, list[str]] = {}
    before: list[str] = []
    bare: list[str] = []  # "the tank and the box": as the clause that they are joined to
    home: str | None = None
    latest: list[str] = []
    for clause, mentions in named_in_clauses(parsed, _ENDS, _HOMES):
        homes = [name for mention in mentions for name in _only(mention, open_ones)]
        claims = claims_in(clause)
        if claims.polarity == "asked" and claims.mentioned:
            return ()
        if len(homes) > 1:
            return ()
        if homes and _ONLY_A_NAME.fullmatch(clause):
            if latest:
                told.setdefault(homes[0], []).extend(latest)
            else:
                bare.append(homes[0])
            continue
        home = homes[0] if homes else home
        if claims.done:
            latest = list(claims.done)
            for name in bare:
                told.setdefault(name, []).extend(claims.done)
            bare = []
        if home is None:
            before += claims.done
            continue
        if before and not claims.done and _NOT_SO.search(clause) and len(open_ones) == 2 and home in open_ones:
            told[next(name for name in open_ones if name != home)] = before
            before = []
        told.setdefault(home, []).extend((*before, *claims.done))
        before = []
    apart = tuple((name, tuple(dict.fromkeys(steps))) for name, steps in told.items() if steps)
    return apart if apart and len(told) > 1 and len({tuple(steps) for steps in told.values()}) > 1 else ()


def _only(mention: Mention, open_ones: list[str]) -> list[str]:
    """The enclosure that is named; of several that a name may stand for, the one with an open clean."""
    homes = {thing.name for thing in mention.things if thing.kind in ("enclosure", "animal")}
    under_way = [name for name in homes if name in open_ones]
    return list(homes) if len(homes) == 1 else under_way if len(under_way) == 1 else []
