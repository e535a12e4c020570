"""Which agents a text says were put on a surface, whatever question it asks besides.

For the rule of agents that must not meet it counts that one was put on, even in a sentence that is answered as
something else: "sprayed bleach, rinsed it, then vinegar: how long?".
"""

from __future__ import annotations

from assistant.core.household import Household
from assistant.understand.named.names import Mention
from assistant.understand.parsing import Parsed
from assistant.understand.steps.claimed_steps import claims_in
from assistant.understand.steps.named_in_clauses import named_in_clauses
from assistant.understand.text.patterns import Pattern

_PRODUCTS = frozenset(("AGENT", "STOCK", "BOTTLE"))
_FOLLOWS = Pattern(
    r"^(?:and |then |and then |after that |followed by |next )*(?:the |some |my |a bit of )*(?:AGENT|STOCK|BOTTLE)"
    r"(?: \w+){0,2}$"
)
"""Hardly more than a product: what was done with the one before was done with this."""
_CLAUSE_ENDS = frozenset((",", ".", ";", "!", "then", "but", ":"))


def touched_in(parsed: Parsed, household: Household) -> tuple[str, ...]:
    """The agents claimed to have been put on, in the order said; nothing of what is asked, planned or denied."""
    found: list[str] = []
    putting_on = False
    for clause, mentions in named_in_clauses(parsed, _CLAUSE_ENDS, _PRODUCTS):
        claims = claims_in(clause)
        agents = [agent for mention in mentions if (agent := _agent_of(mention, household)) is not None]
        if "apply" in claims.done:
            putting_on = True
        elif not (putting_on and _FOLLOWS.match(clause)):
            continue
        found += [agent for agent in agents if agent not in found]
    return tuple(found)


def _agent_of(mention: Mention, household: Household) -> str | None:
    """The agent that a name stands for; None: it can't be told which."""
    agents = {thing.name for thing in mention.things if thing.kind == "agent"}
    for thing in mention.things:
        stock = household.stock(thing.name) if thing.kind == "stock" else None
        bottle = household.bottle(thing.name) if thing.kind == "bottle" else None
        if bottle is not None:
            stock = household.stock(bottle.stock)
        if stock is not None:
            agents.add(stock.agent)
    return agents.pop() if len(agents) == 1 else None
