"""Arithmetic on the last answer: "what about half of that", "twice as much", "double strength"."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from fractions import Fraction
from typing import Any

from assistant.contract import Reading, Slots, World
from assistant.core.household import Bottle
from assistant.core.quantities.amounts import Amount, Percent, Ppm, SaidRatio
from assistant.understand.numbers.poured_again import poured_times
from assistant.understand.text.patterns import Pattern

_PART = r"half|twice|double|triple|a quarter|a third|three times|two thirds|three quarters"
_AMOUNT = Pattern(
    rf"\b(?P<part>{_PART}) (?:(?:of )?(?:that|it|this|what you said|as much|as many|the "
    r"(?:amount|volume|size|mix|lot)|a batch|that much)|the bottle|a bottle|full)\b"
    rf"|^(?:(?:and|what|how|about|just|only|no|for|make|it|ok|but) )*(?P<alone>{_PART})(?: \?)?$"
    r"|\bonly (?P<only>half)\b"
)
_STRENGTH = Pattern(
    rf"\b(?P<part>{_PART}|quarter|third) (?:of )?(?:the |that |its )?strength\b|\b(?P<as>half|twice"
    rf"|three times) as strong\b"
    r"|\bat (?P<at>half|double|twice)(?: strength| that| it)\b"
)
_FACTORS = {
    "half": Fraction(1, 2), "twice": Fraction(2), "double": Fraction(2), "triple": Fraction(3),
    "three times": Fraction(3), "a quarter": Fraction(1, 4), "a third": Fraction(1, 3),
    "two thirds": Fraction(2, 3), "three quarters": Fraction(3, 4), "quarter": Fraction(1, 4), "third": Fraction(1, 3),
}  # fmt: skip


_OTHER_HALF = Pattern(
    r"(?:(?:and|now|then|what about|how about) )*(?:the|for the) other (?:half|NUMBER)(?: of (?:it|that))?"
)
""" "And the other half", after half of it: as much again."""
_SO_MANY_OF_IT = Pattern(
    r"(?:(?:and|or|what about|how about|just|only|make it|for|ok|but) )*NUMBER(?P<times> times)?"
    r"(?: of)? (?:that|it|this)(?: much)?"
)
MOST_TIMES = 100


@dataclass(frozen=True, slots=True)
class Factor:
    """By how much, and of what."""

    times: Fraction
    of_strength: bool
    """Of how strong it is; else of how much there is."""


def factor_in(plain: str, numbers: Iterable[object] = ()) -> Factor | None:
    """The factor that a text names; None: it names none.

    numbers: what stands for NUMBER in it, as "a third", which is read as one before it comes here.
    """
    if _OTHER_HALF.fullmatch(plain.strip(" .?!,")) is not None:
        return Factor(Fraction(1), of_strength=False)
    parts = [number for number in numbers if isinstance(number, Fraction) and 0 < number < MOST_TIMES]
    counted = _SO_MANY_OF_IT.fullmatch(plain.strip(" .?!,")) if len(parts) == 1 else None
    if counted is not None and (parts[0] < 1) == (counted["times"] is None):
        return Factor(parts[0], of_strength=False)
    for pattern, of_strength in ((_STRENGTH, True), (_AMOUNT, False)):
        found = pattern.search(plain)
        if found is not None:
            said = next(part for part in found.groups() if part)
            return Factor(_FACTORS[said], of_strength)
    return None


def scaled(factor: Factor, before: Reading, world: World) -> Slots | None:
    """The slots of the question before with that part of its amount or strength; None: it had none that is known.

    The amount is the one asked for, else the total of the last answer; so "half of that" after a dose for a whole
    bottle is half a bottle of the same mix.
    """
    slots = before.slots
    if before.intent == "mix_strength" and not factor.of_strength:
        return poured_times(slots, factor.times)
    if factor.of_strength:
        return _of_strength(factor.times, with_own_mix(slots, world))
    if len(slots.volumes) == 1:
        return replace(slots, volumes=(_times(slots.volumes[0], factor.times),))
    last = world.talk.last
    total: Any = last.values.get("total") if last is not None and last.intent == before.intent else None
    return replace(slots, volumes=(_times(total, factor.times),)) if isinstance(total, Amount) else None


def with_own_mix(slots: Slots, world: World) -> Slots:
    """The slots with the mix that the one bottle named is for, where none was said."""
    bottle = world.household.bottle(slots.bottles[0]) if len(slots.bottles) == 1 else None
    if slots.mixes or bottle is None or bottle.mix is None or _is_of_another(slots, bottle, world):
        return slots
    return replace(slots, mixes=(bottle.mix,))


def _is_of_another(slots: Slots, bottle: Bottle, world: World) -> bool:
    stock = world.household.stock(bottle.stock)
    return stock is None or not ({*slots.stocks} <= {stock.name} and {*slots.agents} <= {stock.agent})


def at_another_strength(slots: Slots, plain: str, world: World) -> Slots:
    """ "Double strength in the yellow bottle": of the mix that it is for."""
    factor = factor_in(plain)
    if slots.mixes:
        return slots
    part = next((number for number in slots.numbers if 0 < number < 1), None)
    if part is not None and _SO_STRONG.search(plain) is not None:  # "a quarter" is read as a number first
        own = with_own_mix(replace(slots, numbers=()), world)
        return _of_strength(part, own) or slots
    if factor is None or not factor.of_strength:
        return slots
    return _of_strength(factor.times, with_own_mix(slots, world)) or slots


_SO_STRONG = Pattern(r"\bNUMBER (?:of )?(?:the |that |its |full )*strength\b", "strength")


def _of_strength(times: Fraction, slots: Slots) -> Slots | None:
    if len(slots.mixes) != 1:
        return None
    mix = slots.mixes[0]
    if isinstance(mix, Percent):
        return replace(slots, mixes=(Percent(mix.percent * times),))
    if isinstance(mix, Ppm):
        return replace(slots, mixes=(Ppm(mix.ppm * times),))
    if isinstance(mix, SaidRatio) and mix.word == "in":
        return replace(slots, mixes=(replace(mix, second=mix.second / times),))
    return None  # half of "one to thirty-two" is no ratio that a keeper would say


def _times(amount: Amount, times: Fraction) -> Amount:
    return replace(amount, amount=amount.amount * times)
