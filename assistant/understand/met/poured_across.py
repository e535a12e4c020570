"""One bottle's content told to be in another, by their colours: "the green went into the yellow bottle".

A bottle named for what was in it is no fill of the other with what that one is for: the two have met in it.
"""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Reading
from assistant.understand.bottles import fills
from assistant.understand.look import BY_RULE, Look
from assistant.understand.met.meeting import ASKED
from assistant.understand.named.by_colour import agents_of, products_by_colour
from assistant.understand.text.patterns import Pattern

_SOME = (
    r"(?:(?:the|my|some|of|a|bit|little|rest|last|all|more|drop|half|accidentally|actually|up|it|what was left|what is"
    r" left|whatever was left|whats left|leftover|remaining|remainder) )*"
)
_GO_IN = (
    r"(?:went|got|has gone|have gone|is|was|'s|has been|ran|fell|dripped|leaked|spilled|splashed|ended up|landed"
    r"|has got|have got|is now|was poured|was put|got poured|got put|got tipped|was tipped|is all|is already)"
)
_PUT = (
    r"(?:filled|refilled|poured|emptied|tipped|put|got|decanted|added|dumped|chucked|squirted|splashed|transferred"
    r"|dropped|sprayed|pumped|swapped|mixed|pouring|emptying|filling|tipping|putting|decanting)"
)
_INTO = r"(?:in|into|inside|in with|on top of) (?:the |my |with the )*"
_ACROSS = Pattern(
    rf"\bBOTTLE {_GO_IN}(?: \w+)? {_INTO}(?P<into>BOTTLE)\b"
    rf"|\b{_PUT} {_SOME}BOTTLE (?:\w+ )?(?:{_INTO}|to (?:the |my )?)(?P<poured>BOTTLE)\b"
    rf"|\b{_PUT} {_INTO}(?P<first>BOTTLE) {_SOME}BOTTLE\b"
    rf"|\b(?P<holds>BOTTLE) (?:now )?(?:has got|had got|got|has|holds|had|contains) {_SOME}BOTTLE\b"
    rf"|\b(?:there is|there was|there 's|i have|i have got) {_SOME}BOTTLE {_INTO}(?P<there>BOTTLE)\b"
    r"|\b(?:filled|refilled|topped|filling|topping|refilling)(?: up)? (?:the |my )?(?P<filled>BOTTLE) (?:up )?"
    rf"(?:with|from) {_SOME}BOTTLE\b",
    "BOTTLE",
)
"""Of two bottles the one that is named here as a group took what was in the other."""


def poured_across(look: Look) -> Reading | None:
    """That a bottle took what was in another; None: nothing of the kind is told."""
    plain = look.parsed.plain
    if plain.endswith("?") or ASKED.search(plain) is not None or not fills.may_be_fill(plain):
        return None
    masked, things = products_by_colour(look.parsed, look.world.household)
    if _ONE_ON_ANOTHER.match(masked) is not None and len(things) == 2:
        return _met_somewhere(agents_of(things, look.world), look)
    found = _ACROSS.search(masked)
    if found is None or found.lastgroup is None:
        return None
    both = [place for place, word in _products_of(masked) if found.start() <= place < found.end()]
    order = [place for place, _ in _products_of(masked)]
    if len(both) != 2 or len(order) != len(things):
        return None
    first, second = (things[order.index(place)] for place in both)
    into, other = (first, second) if found.start(found.lastgroup) == both[0] else (second, first)
    if into.kind != "bottle" or other.kind != "bottle" or not into.name or not other.name or into.name == other.name:
        return None
    slots = replace(look.slots("together"), bottles=(into.name,), stocks=(), steps=(), choices=(), unknown=())
    slots = replace(slots, agents=agents_of((other,), look.world), enclosures=(), touched=(), met=True)
    return look.reading("together", slots, BY_RULE)


def _met_somewhere(agents: tuple[str, ...], look: Look) -> Reading | None:
    """ "It was the green on the yellow": on the surface in work, or nobody says where."""
    if len(agents) < 2:
        return None
    slots = replace(look.slots("together"), agents=agents, bottles=(), stocks=(), steps=(), choices=(), unknown=())
    return look.reading("together", replace(slots, touched=agents, met=True), BY_RULE)


def _products_of(masked: str) -> list[tuple[int, str]]:
    """The product's masks with their places."""
    return [(found.start(), found.group()) for found in _MASK.finditer(masked)]


_ONE_ON_ANOTHER = Pattern(
    r"^(?:(?:oh|no|it|that|this|i think|was|is|'s|just) )+(?:the |my |some )*(?:BOTTLE|AGENT|STOCK) "
    r"(?:on|onto|with|and|over|on top of|in) (?:the |my |some )*(?:BOTTLE|AGENT|STOCK)(?: on it| together| i think)?$",
    *("BOTTLE", "AGENT", "STOCK"),
)
_MASK = Pattern(r"\b(?:BOTTLE|STOCK|AGENT)\b")
