"""Whether a product that is told to have been used instead would make gas with what is on record as sprayed.

"Sprayed the green", right after the bleach, may put the record right or be a second spraying. Where the two make gas
it is heard as the second, unless it is plainly said that the first never was ("not bleach").
"""

from __future__ import annotations

from assistant.core.choice.together import worst
from assistant.core.round.rounds import is_sprayed
from assistant.understand.look import Look
from assistant.understand.named.by_colour import agents_of
from assistant.understand.named.names import Thing
from assistant.understand.text.patterns import Pattern

_PUT_RIGHT = Pattern(
    r"\b(?:not|instead|rather|in place|should have|meant|thought|wrong|after all|in the end|turns? out|turned out|never"
    r"|swapped|actually)\b"
)


_TO_BE_USED = Pattern(
    r"^(?:(?:no|nope|wait|oh|sorry|actually|ok|just|please|then|now|i will|let us|i am going to|gonna) ,? ?)*"
    r"(?:use|using|switch\w*|chang\w+|swap\w*|go with|going with)\b"
)
""" "No, use the alcohol instead": not what was sprayed, but what would come on top of it."""


def makes_gas_there(look: Look, thing: Thing) -> bool:
    """For the cleans that were sprayed, or those of them that are named."""
    world, named = look.world, look.slots("done").enclosures
    plain = look.parsed.plain
    if _PUT_RIGHT.search(plain) is not None and _TO_BE_USED.search(plain) is None:
        return False
    on_it = {one.agent for name, one in world.state.rounds.items() if is_sprayed(one) and name in (named or (name,))}
    agents = (*on_it, *agents_of((thing,), world))
    known = tuple(world.facts.agents.get(agent) or world.facts.agents["other"] for agent in dict.fromkeys(agents))
    if len(known) < 2:
        return False
    pair = worst(known, world.facts)[2]
    return pair is not None and pair.gas
