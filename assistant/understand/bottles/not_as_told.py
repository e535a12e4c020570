"""Right after a dose or a fill: what went in is told, and it isn't what was said. "Filled, but I put 25 in"."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from assistant.contract import Outcome, Reading, Reply, Slots
from assistant.core.quantities.amounts import Amount
from assistant.understand.bottles.fills import DOSES, before_it_is_put_right, may_be_fill
from assistant.understand.look import BY_RULE, Look
from assistant.understand.text.patterns import Pattern

_OPENS = r"(?:(?:ok|oh|filled|mixed|made|done|it|up|but|and|i|we|have|so|actually|only|well|oops|sorry|then) ,? ?|, )*"
_PUT_IN = Pattern(
    rf"{_OPENS}(?:put|poured|added|used|measured|drew|tipped)(?: it| that)?(?: (?:a (?:bit|little)|too|much|more|over"
    r"|few|slightly|way))*(?: in| up)?(?: ,)?(?: about| around| only| maybe| like)? (?:VOLUME|NUMBER)(?: ?ish)?"
    r"(?: (?:of|the|AGENT|STOCK|concentrate|it|in|instead|there|up))*"
)
_UP_TO = Pattern(
    rf"{_OPENS}(?:(?:filled|mixed|made)(?: it| that| up)* ,? ?)?(?:but )?(?:only )?(?:up )?to (?:the )?"
    r"(?:VOLUME|NUMBER)(?: (?:mark|line))?"
)
"""To which mark of the bottle it was filled."""


def filled_otherwise(look: Look) -> Reading | None:
    """The fill of a dose just told, with another amount put in, or made up to another mark; None: nothing of it."""
    last, dose = look.world.talk.last, look.world.talk.last_reading
    plain = look.parsed.plain.strip(" .!,")
    if last is None or dose is None or last.intent not in DOSES or dose.intent != last.intent:
        return None
    if last.outcome is not Outcome.ANSWER or len(look.parsed.amounts.found) != 1 or not may_be_fill(plain):
        return None
    told = look.parsed.amounts.found[0].value
    put_in, up_to = _PUT_IN.fullmatch(plain), _UP_TO.fullmatch(plain)
    if put_in is None and (up_to is None or dose.intent == "top_up"):
        return None
    concentrate, total = _amount(last, "concentrate"), _amount(last, "added") or _amount(last, "total")
    if concentrate is None or total is None:
        return None
    unit = concentrate.unit if put_in is not None else total.unit
    amount = Amount(told, unit) if isinstance(told, Fraction) else told
    if not isinstance(amount, Amount):
        return None
    slots = replace(dose.slots, numbers=(), steps=(), topped_up=dose.intent == "top_up", share_left=None)
    if put_in is not None:
        slots = replace(slots, mixes=(), volumes=(amount, total), roles=("product", "total"), scoops=None)
    else:
        slots = replace(slots, volumes=(amount,), roles=("total",))
    return look.reading("mixed", slots, BY_RULE)


def fill_taken_back(look: Look) -> Reading | None:
    """ "Nah, didn't in the end", "actually only half of it", right after a fill was recorded; None: nothing of it."""
    plain, fill = look.parsed.plain.strip(" .!,"), before_it_is_put_right(look.world)
    if fill is None or look.world.waiting is not None or len(fill.slots.bottles) != 1:
        return None
    if _NEVER_FILLED.fullmatch(plain):
        return look.reading("undo", Slots(bottles=fill.slots.bottles), BY_RULE)
    if _ONLY_HALF.fullmatch(plain) and not fill.slots.volumes:
        return look.reading("mixed", replace(fill.slots, share_wanted=Fraction(1, 2)), BY_RULE)
    return None


_NEVER_FILLED = Pattern(
    r"(?:(?:no|nah|oh|but|well|actually|sorry|wait|in fact|i|we) ,? ?)*(?:did not|have not|never did|never)"
    r"(?: (?:do|fill|filled|mix|mixed|bother|it|that|the BOTTLE|BOTTLE|actually|really))* (?:in the end|after all)"
    r"|(?:(?:no|nah|oh|actually|sorry|wait) ,? ?)+(?:i |we )?(?:did not|never)(?: (?:fill|filled|mix|mixed))"
    r"(?: it| that)?"
)
_ONLY_HALF = Pattern(
    r"(?:(?:no|oh|but|well|actually|sorry|wait|i|it was|that was) ,? ?)*(?:only|just) (?:filled |did |made |about )*"
    r"half(?: of it| full| it| way| filled)*"
)


def _amount(reply: Reply, name: str) -> Amount | None:
    value = reply.values.get(name)
    return value if isinstance(value, Amount) else None
