"""Soap in what is said to be done: it is what was washed with, and not what was sprayed.

"Washed, soap rinsed off, and sprayed": sprayed with the bottle of the clean. Taken for the soap, the wet time would be
lost; so a product that isn't sprayed counts only where it stands right behind the spraying.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from assistant.contract import Slots
from assistant.core.facts import Agent
from assistant.core.household import Household
from assistant.understand.named.names import Mention
from assistant.understand.parsing import Parsed

_PUTTING_ON = ("spray", "spritz", "mist", "squirt", "appl", "coat", "dous", "put", "pour", "slather")
_CLAUSE_ENDS = frozenset((",", ".", ";", "!", "and", "then", "but"))
_REACH = 4
"""Words between the spraying and what was sprayed: "sprayed the whole tank with soap"."""


def without_the_washing_up(slots: Slots, parsed: Parsed, household: Household, agents: Mapping[str, Agent]) -> Slots:
    """The slots without the products that are only washed with, where nothing says that they were sprayed."""
    dropped: set[str] = set()
    kept: set[str] = set()
    for mention in parsed.mentions:
        names = _washed_with(mention, household, agents)
        (kept if _put_on(mention, parsed) else dropped).update(names)
    gone = dropped - kept
    return replace(
        slots,
        stocks=tuple(name for name in slots.stocks if name not in gone),
        agents=tuple(name for name in slots.agents if name not in gone),
    )


def _washed_with(mention: Mention, household: Household, agents: Mapping[str, Agent]) -> set[str]:
    """What a name stands for, stock and agent, where that is never sprayed."""
    names: set[str] = set()
    for thing in mention.things:
        stock = household.stock(thing.name) if thing.kind == "stock" else None
        agent = stock.agent if stock is not None else thing.name if thing.kind == "agent" else ""
        if agent in agents and "apply" not in agents[agent].steps and "wash" in agents[agent].steps:
            names |= {thing.name, agent}
    return names


def _put_on(mention: Mention, parsed: Parsed) -> bool:
    """Whether the spraying stands right before it, with nothing else done between."""
    for token in reversed(parsed.tokens[max(0, mention.start - _REACH) : mention.start]):
        if token.text in _CLAUSE_ENDS:
            return False
        if token.text.startswith(_PUTTING_ON):
            return True
    return False
