"""A dose said back by the keeper: "so 15 mils?", "did you say fifty", "at the label's mix?". No new dose.

Fifteen and fifty are what the tool is there to tell apart, so a number that isn't the dose's is answered with a "no".
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from assistant.contract import Reading, Slots, World
from assistant.core.household import Stock
from assistant.core.quantities.amounts import Amount, SaidRatio
from assistant.core.quantities.units import dimension, in_ml
from assistant.understand.look import Look
from assistant.understand.text.patterns import Pattern

RIGHT, WRONG = "right", "wrong"
_OPENS = r"(?:(?:so|ok|wait|sorry|hang on|right|and|um) ,? ?)*"
_CHECKS = Pattern(
    rf"{_OPENS}(?:(?:that is|that 's|is that|is it|it is|was that|was it|you said|did you say|you mean|do you mean) )?"
    r"(?P<told>VOLUME|NUMBER)(?: (?:of (?:the )?)?(?:AGENT|STOCK|concentrate|it))?"
    r"(?: or (?P<other>VOLUME|NUMBER))?(?: ,| then| right| yes| correct| is that right| yeah)*"
)
_OPENS_AS_CHECK = Pattern(r"(?:so|is|was|that|you|did|do|it|wait|sorry|hang)\b")
_ENDS_AS_CHECK = Pattern(r"\b(?:right|yes|correct|yeah)$")
_NEARLY = Fraction(1, 50)
_FARTHEST = 4
"""So many times the dose is taken for it misheard; more is another volume to mix: "so 500 mils"."""


def checked_back(look: Look, before: Reading, plain: str) -> Slots | None:
    """The slots of the dose just told, with whether it was said back right; None: nothing is said back."""
    match = _CHECKS.fullmatch(plain)
    last = look.world.talk.last
    told = [found.value for found in look.parsed.amounts.found]
    if match is None or before.intent != "dose" or last is None or before.doubts or look.parsed.mentions:
        return None
    either = match["other"] is not None
    if not either and not (_OPENS_AS_CHECK.match(plain) or _ENDS_AS_CHECK.search(plain)):
        return None
    if len(told) != 1 + either:
        return None
    concentrate, total = last.values.get("concentrate"), last.values.get("total")
    if not isinstance(concentrate, Amount) or not isinstance(total, Amount):
        return None
    if either:
        return before.slots
    said = _in_ml(told[0])
    if said is None or said > _FARTHEST * max(in_ml(concentrate), Fraction(1)):
        return before.slots if said == in_ml(total) else None
    right = abs(said - in_ml(concentrate)) <= _NEARLY * in_ml(concentrate)
    parts = {mix.second for mix in before.slots.mixes if isinstance(mix, SaidRatio)}
    if not right and match["told"] == "NUMBER" and said in parts:
        return before.slots  # "did you say fifteen", of one in fifteen
    return replace(before.slots, setting=(RIGHT if right else WRONG, look.parsed.text))


def _in_ml(value: object) -> Fraction | None:
    if isinstance(value, Amount):
        return in_ml(value) if dimension(value.unit) == "volume" else None
    return value if isinstance(value, Fraction) else None


_LABEL = Pattern(
    rf"{_OPENS}(?:what about |how about |and )*(?:(?:what is|what 's|what does|how much is|at|by|with|going by) )*"
    r"(?:the |its )?label(?: 's)?(?: (?:mix|ratio|dilution|strength|one|say|says|own|rate))*"
)


def by_the_label(look: Look, before: Reading, plain: str) -> Slots | None:
    """ "And at the label?", after a dose: at the dilution of the label; None: nothing of it, or none is known."""
    if before.intent != "dose" or _LABEL.fullmatch(plain) is None:
        return None
    stock = _stock_of(before.slots, look.world)
    return replace(before.slots, mixes=(stock.label_mix,), numbers=()) if stock and stock.label_mix else None


def _stock_of(slots: Slots, world: World) -> Stock | None:
    """What the dose was of: the stock named, the bottle's, or the only one of that agent."""
    household = world.household
    if len(slots.stocks) == 1:
        return household.stock(slots.stocks[0])
    bottle = household.bottle(slots.bottles[0]) if len(slots.bottles) == 1 else None
    own = household.stock(bottle.stock) if bottle is not None else None
    if own is not None and (not slots.agents or own.agent in slots.agents):
        return own
    found = household.stocks_of(slots.agents[0]) if len(slots.agents) == 1 else ()
    return found[0] if len(found) == 1 else None
