"""A dose of another product in another bottle, while one is still waited for: it is asked anew.

What goes on from a dose that was answered is in `dose_again`.
"""

from __future__ import annotations

from assistant.contract import Slots, World

_OF_A_PRODUCT = frozenset({"dose", "mix_strength", "top_up"})


def asks_for_another_product(intent: str | None, before: Slots, now: Slots, world: World) -> bool:
    """ "How much vinegar for the green bottle", while "bleach at one in fifty" waits for its bottle.

    With the mix of the one that waits it would be a wrong number. A bottle alone or a product alone only answers.
    """
    if intent == "dose" and now.mixes and (now.bottles or now.volumes) and (now.agents or now.stocks):
        return before.scoops is not None  # all of it is said anew, so no volume in it is what a cap holds
    if intent not in _OF_A_PRODUCT or not (now.bottles or now.volumes) or not (now.agents or now.stocks):
        return False
    was = agents_meant(before, world)
    return bool(was) and was.isdisjoint(_named(now, world))


def agents_meant(slots: Slots, world: World) -> set[str]:
    """What is named, else what the named bottles are meant for."""
    named = _named(slots, world)
    if named:
        return named
    bottles = (world.household.bottle(name) for name in slots.bottles)
    stocks = (world.household.stock(bottle.stock) for bottle in bottles if bottle is not None)
    return {stock.agent for stock in stocks if stock is not None}


def _named(slots: Slots, world: World) -> set[str]:
    stocks = (world.household.stock(name) for name in slots.stocks)
    return {*slots.agents, *(stock.agent for stock in stocks if stock is not None)}
