"""A product that was put onto droppings or urine: told, and no spraying that counts.

Dirt spends it, and with bleach what is in urine makes chloramines: what is there goes first, then the wash.
"""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Slots
from assistant.core.round.rounds import is_open
from assistant.understand.look import Look
from assistant.understand.named.by_colour import agents_of, products_by_colour
from assistant.understand.question.may_be import is_told
from assistant.understand.text.patterns import Pattern

_DIRT = r"(?:urine|urates?|wee|pee|piss|poos?|poop|droppings?|faeces|turds?)"
_PUT = r"(?:poured|sprayed|put|squirted|used|tipped|misted|splashed|bleached|got|wiped)"
_P = r"(?:AGENT|STOCK|BOTTLE)"
_OVER = Pattern(
    rf"\b(?:there (?:is|was|were|are)|had|has|with)(?: \w+){{0,3}} {_DIRT} "
    rf"(?:in|on|all over|under|still)\b.*\b{_PUT}\b(?: \S+){{0,3}}? {_P}\b"
    rf"|\b{_PUT}(?: \S+){{0,2}}? {_P}(?: \w+)? (?:on|over|onto|on top of|across) "
    rf"(?:the |his |her |some |old |dried |its )*{_DIRT}\b"
    rf"|\b{_PUT}(?: \w+)? (?:on|over|onto)? ?(?:the |his |her |some )*{_DIRT} (?:with|in) (?:the |some )?{_P}\b",
    *("AGENT", "STOCK", "BOTTLE"),
)
_REMOVED = Pattern(
    r"\b(?:scrub\w*|wash\w*|clean\w*|wiped (?:it|the|up|off|away)|remov\w*|clear\w*|took|picked|scoop\w*|gone|off"
    r"|rins\w*|hos\w*|scrap\w*|got rid)\b"
)


def over_dirt(look: Look) -> Slots | None:
    """The slots of a question whether they may meet, with the touch kept; None: nothing of the kind is told.

    Only where the spraying isn't on record yet: later on it is dirty again.
    """
    plain, rounds = look.parsed.plain, look.world.state.rounds.values()
    if not is_told(plain) or _OVER.search(plain) is None or _REMOVED.search(plain) is not None:
        return None
    open_ones = [one for one in rounds if is_open(one)]
    if len(open_ones) != 1 or "apply" in open_ones[0].done:
        return None
    agents = agents_of(products_by_colour(look.parsed, look.world.household)[1], look.world)
    slots = replace(look.slots("together"), residues=("urates",), agents=agents, bottles=(), stocks=(), steps=())
    return replace(slots, enclosures=(), touched=agents, met=False, choices=(), unknown=(), numbers=())
