"""Mixing concentrate with water: how much of each, how strong, and in how many parts. Exact throughout.

Volumes are taken to add up. Strengths are shares or percentages on one basis; what ppm of chlorine a percentage is
belongs to `chlorine`.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.errors import OutOfRange, WrongUnit
from assistant.core.quantities.units import convert, dimension, system

POURED_IN = {"metric": "mL", "US": "US fl oz", "imperial": "imp fl oz"}
"""The unit that concentrate and water are given in, by the system of the whole."""


@dataclass(frozen=True, slots=True)
class Mixed:
    """A mix in its parts."""

    concentrate: Amount
    water: Amount
    total: Amount
    """In the unit it was asked in."""


def mix(total: Amount, share: Fraction) -> Mixed:
    """How much concentrate and water make a total at that share of concentrate.

    total: the finished mix; a volume above 0.
    share: concentrate in the finished mix, above 0 and at most 1 (1 is undiluted).
    Gives: concentrate and water in mL, US or imperial fluid ounces, after the total's own system; exact.
    Fails: WrongUnit if the total is no volume; OutOfRange.
    Valid: any size; no change of volume on mixing is assumed.
    Source: arithmetic (C1 V1 = C2 V2).

    >>> mix(Amount(Fraction(500), "mL"), Fraction(1, 32)).concentrate
    Amount(amount=Fraction(125, 8), unit='mL')
    """
    if dimension(total.unit) != "volume":
        raise WrongUnit(total.unit, "volume")
    if total.amount <= 0:
        raise OutOfRange("the total", total.amount, "more than 0")
    if not 0 < share <= 1:
        raise OutOfRange("the share of concentrate", share, "above 0 and at most 1")
    whole = convert(total, POURED_IN[system(total.unit)])
    concentrate = whole.amount * share
    return Mixed(Amount(concentrate, whole.unit), Amount(whole.amount - concentrate, whole.unit), total)


def mix_with_water(water: Amount, share: Fraction) -> Mixed:
    """How much concentrate goes into an amount of water, and what that makes.

    water: a volume above 0; share: as in `mix`, below 1, since undiluted takes no water.
    Gives: concentrate, water and total in mL, US or imperial fluid ounces, after the water's own system; exact.
    Fails, Valid: as `mix`.
    Source: arithmetic; one part to N of water.

    >>> mix_with_water(Amount(Fraction(320), "mL"), Fraction(1, 33)).concentrate
    Amount(amount=Fraction(10, 1), unit='mL')
    """
    if not 0 < share < 1:
        raise OutOfRange("the share of concentrate", share, "above 0 and below 1")
    return mix(_over(water, 1 - share), share)


def mix_of_all(concentrate: Amount, share: Fraction) -> Mixed:
    """What an amount of concentrate makes when all of it is used.

    concentrate: a volume above 0; share: as in `mix`.
    Gives: as `mix_with_water`.
    Source: arithmetic.

    >>> mix_of_all(Amount(Fraction(10), "mL"), Fraction(1, 32)).total
    Amount(amount=Fraction(320, 1), unit='mL')
    """
    if not 0 < share <= 1:
        raise OutOfRange("the share of concentrate", share, "above 0 and at most 1")
    return mix(_over(concentrate, share), share)


def topped_up(left: Amount, capacity: Amount, share: Fraction) -> Mixed:
    """What fills up a bottle that still holds some of the same mix.

    left: a volume, 0 or more and less than the capacity.
    Gives: concentrate and water to add, and as the total what is added.
    Fails: OutOfRange if nothing more goes in; else as `mix`.
    Source: arithmetic: what is added is mixed like what is there.

    >>> topped_up(Amount(Fraction(180), "mL"), Amount(Fraction(500), "mL"), Fraction(1, 32)).concentrate
    Amount(amount=Fraction(10, 1), unit='mL')
    """
    room = convert(capacity, POURED_IN[system(capacity.unit)])
    there = convert(left, room.unit).amount
    if not 0 <= there < room.amount:
        raise OutOfRange("what is left", there, f"less than the {room.amount} that it holds")
    return mix(Amount(room.amount - there, room.unit), share)


def thinned(there: Amount, share: Fraction, wanted: Fraction) -> Mixed:
    """How much water brings a ready mix down to a weaker one, and how much of it there is then.

    there: the mix that is there, a volume above 0. share: concentrate in it. wanted: the same when it is thinned.
    Gives: the mix as it was, the water that goes to it, and the whole, in mL, US or imperial fluid ounces; exact.
    Fails: OutOfRange if `wanted` isn't above 0 and below `share`: water makes nothing stronger; else as `mix`.
    Source: arithmetic (C1 V1 = C2 V2).

    >>> thinned(Amount(Fraction(500), "mL"), Fraction(1, 32), Fraction(1, 64)).water
    Amount(amount=Fraction(500, 1), unit='mL')
    """
    if not 0 < wanted < share:
        raise OutOfRange("the share wanted", wanted, f"above 0 and below {share}")
    return mix_of_all(there, wanted / share)


def _over(part: Amount, share: Fraction) -> Amount:
    """The whole of which a volume is that share, in the unit that it is poured in."""
    if dimension(part.unit) != "volume":
        raise WrongUnit(part.unit, "volume")
    if part.amount <= 0:
        raise OutOfRange("the volume", part.amount, "more than 0")
    poured = convert(part, POURED_IN[system(part.unit)])
    return Amount(poured.amount / share, poured.unit)


def share_for(wanted: Fraction, stock: Fraction) -> Fraction:
    """The share of concentrate that brings a stock down to a strength.

    wanted, stock: strengths above 0 in the same unit and on the same basis.
    Gives: at most 1.
    Fails: OutOfRange if one isn't above 0, or the stock is weaker than what is wanted.
    Source: arithmetic; mixing-parts-of-water is the same as 1 over this, less 1.

    >>> share_for(Fraction("0.5"), Fraction("3.5"))
    Fraction(1, 7)
    """
    if wanted <= 0 or stock <= 0:
        raise OutOfRange("a strength", min(wanted, stock), "more than 0")
    if wanted > stock:
        raise OutOfRange("the strength wanted", wanted, f"no more than the stock's {stock}")
    return wanted / stock


def parts_of_water(wanted: Fraction, stock: Fraction) -> Fraction:
    """Parts of water for each one part of concentrate.

    As `share_for`.
    Source: mixing-parts-of-water (CDC, Appendix E, examples 1 and 3).

    >>> parts_of_water(Fraction("0.5"), Fraction("3.5"))
    Fraction(6, 1)
    """
    return 1 / share_for(wanted, stock) - 1


def share_of(concentrate: Amount, total: Amount) -> Fraction:
    """Concentrate as a share of a finished mix, whatever units the two are in.

    Fails: WrongUnit if one is no volume; OutOfRange if there is more concentrate than mix, or none of either.
    """
    part = convert(concentrate, "mL").amount
    whole = convert(total, "mL").amount
    if not 0 < part <= whole:
        raise OutOfRange("the concentrate", part, f"above 0 and at most the whole, {whole} mL")
    return part / whole
