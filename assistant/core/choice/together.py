"""Which agents may meet, and which earlier agent on a surface still forbids a new one.

The table of pairs is in the facts, by family. Here are the rules on it: what is unknown meets nothing, a pair that is
not listed is kept apart by a rinse, and a pair that makes gas by a rinse and drying both.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, TypeAlias

from assistant.core.facts import Agent, Facts, Pair
from assistant.core.record.state import Touch

UNKNOWN = "unknown"
"""Family of a product whose content isn't known."""

BLEACH = "chlorine"

SAME = "together-same"
NOT_LISTED = "together-nothing-published"

Need: TypeAlias = Literal["rinse", "dry", "rinse and dry"]

_RANK = {"fine": 0, "rinse_between": 1, "never": 2}


def meet(first: Agent, second: Agent, facts: Facts) -> Pair | None:
    """What happens when two agents meet, in one bottle or one after the other; None: one of them isn't known.

    The order doesn't matter. An agent meets itself well; two that the table doesn't list are kept apart by a rinse.
    Source: the facts of together.toml, named by the pair.
    """
    if UNKNOWN in (first.family, second.family):
        return None
    if first.id == second.id:
        return Pair(first.family, second.family, "fine", False, SAME, "changes nothing")
    listed = facts.pairs.get(frozenset((first.family, second.family)))
    return listed or Pair(first.family, second.family, "rinse_between", False, NOT_LISTED, "is not one I have cleared")


def worst(agents: tuple[Agent, ...], facts: Facts) -> tuple[Agent, Agent, Pair | None]:
    """The two of several agents that least may meet, in the order given; None for the pair where one isn't known.

    agents: two or more. A pair with gas comes before an unknown one, that before any other.
    """
    pairs = [
        (first, second, meet(first, second, facts))
        for place, first in enumerate(agents)
        for second in agents[place + 1 :]
    ]
    return max(pairs, key=lambda found: danger(found[2]))


def danger(pair: Pair | None) -> float:
    """How bad it is that two meet, for putting pairs in order: gas, then a content not known, then the verdict."""
    if pair is None:
        return _RANK["never"] + 0.5
    return _RANK[pair.verdict] + (1 if pair.gas else 0)


# ---------------------------------------------------------------- surfaces


@dataclass(frozen=True, slots=True)
class Standoff:
    """An earlier agent that still forbids a new one, and what lifts that."""

    touch: Touch
    pair: Pair | None
    """None: one of the two isn't known."""
    need: Need


def uncleared(touches: tuple[Touch, ...], new_agent: Agent, facts: Facts) -> Touch | None:
    """The earlier agent on a surface that still forbids the new one; None: nothing does.

    touches: what was put on that surface and isn't rinsed off and dry, as the record's fold keeps it.
    The worst is given where several forbid it.
    """
    found = standoff(touches, new_agent, facts)
    return None if found is None else found.touch


def standoff(touches: tuple[Touch, ...], new_agent: Agent, facts: Facts) -> Standoff | None:
    """As `uncleared`, with the pair and with what must still be done.

    A pair that makes gas, or a product not known, is lifted by a rinse and drying both; any other by the rinse.
    Two wipes stand for the rinse but for bleach, and for an acid before bleach.
    Source: together-bleach-acid-rinsed (a floor rinsed once after acid, then bleached, made people ill).
    """
    found = [held for touch in touches if (held := _held_by(touch, new_agent, facts)) is not None]
    return max(found, key=lambda held: danger(held.pair), default=None)


def _held_by(touch: Touch, new_agent: Agent, facts: Facts) -> Standoff | None:
    earlier = facts.agents.get(touch.agent) or facts.agents["other"]
    if earlier.id == new_agent.id and earlier.family != UNKNOWN:
        return None
    pair = meet(earlier, new_agent, facts)
    if pair is not None and pair.verdict == "fine":
        return None
    off = touch.rinsed or (touch.wiped and wipe_will_do(earlier, new_agent))
    makes_gas = pair is None or pair.gas
    if not off:
        return Standoff(touch, pair, "rinse and dry" if makes_gas else "rinse")
    if makes_gas and not touch.dried:
        return Standoff(touch, pair, "dry")
    return None


def wipe_will_do(earlier: Agent, new_agent: Agent) -> bool:
    """Whether two wipes with clean water take the earlier agent off well enough for the new one.

    Never for bleach, nor for an acid before bleach, nor for what isn't known.
    """
    if not earlier.wipe_will_do or earlier.family == UNKNOWN:
        return False
    return not (earlier.acidic and new_agent.family in (BLEACH, UNKNOWN))
