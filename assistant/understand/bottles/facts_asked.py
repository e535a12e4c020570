"""Whether what was asked last is so in general: then "and chlorhexidine" tells of no bottle."""

from __future__ import annotations

from assistant.contract import World


def facts_were_asked(world: World) -> bool:
    """Whether the turn before asked what is so in general, or for an amount: what goes on from it tells nothing."""
    last = world.talk.last
    return last is not None and last.intent in _OF_FACTS


_OF_FACTS = frozenset(
    {"works_on", "choose_agent", "surface", "together", "protect", "treat_item", "hold_time", "dry_time", "air_time"}
    | {"dose", "mix_strength", "top_up", "make_up", "convert", "read_ratio", "bleach_now", "measure_with", "store_it"}
    | {"still_good", "stock_left", "in_bottle", "pour_away", "why"}
)
