""" "And forty?", after "20 mils in a litre, how strong": which of the two it stands for."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from assistant.contract import Slots, VolumeRole
from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.units import convert
from assistant.understand.text.patterns import Pattern

_INTO = Pattern(r"\b(?:in|into|with|to)(?: about| only| just| up to)*(?: VOLUME| NUMBER)")
FAR_NEARER = 4
"""Times nearer the whole than the concentrate from which on an amount is taken for the whole, unasked."""


def poured_again(before: Slots, now: Slots, plain: str) -> Slots | None:
    """The slots of "how strong" with the one amount now said in its place; None: it says no single amount.

    What could be either of the two is left alone, so that it is asked in how much.
    """
    at = _concentrate_at(before)
    if at is None:
        return None
    rest = [volume for place, volume in enumerate(before.volumes) if place != at]
    if now.bottles and not now.volumes and not now.numbers:
        return replace(before, volumes=(before.volumes[at],), roles=("product",), bottles=now.bottles)
    if (
        len(now.volumes) + len(now.numbers) != 1
        or now.bottles
        or now.scoops
        or len(rest) > 1
        or not _whole(rest, before)
    ):
        return None
    concentrate = before.volumes[at]
    part, whole = _either(concentrate, rest, now)
    into = "" if not rest else _role_of_the_rest(before, at)
    as_part = replace(before, volumes=(part, *rest), roles=("product", into)[: 1 + len(rest)], numbers=())
    if whole is None:
        return as_part
    role = now.roles[0] if now.roles else ""
    role = role if role in ("water", "total") else into or ""
    as_whole = replace(before, volumes=(concentrate, whole), roles=("product", role), bottles=(), numbers=())
    if _INTO.search(plain) or (now.roles and now.roles[0] in ("water", "total")):
        return as_whole
    if now.roles and now.roles[0] == "product":
        return as_part
    if not rest:  # into a bottle: a bare amount is what was poured
        return as_part
    if _ml(part) >= _ml(rest[0]):
        return as_whole
    off_part, off_whole = _apart(part, concentrate), _apart(whole, rest[0])
    if _ml(whole) <= _ml(concentrate) or off_part <= off_whole:
        return as_part
    if off_part >= FAR_NEARER * off_whole:
        return as_whole
    return replace(before, volumes=(part,), roles=("product",), numbers=())


def poured_times(before: Slots, times: Fraction) -> Slots | None:
    """ "Half of that": that part of the concentrate, in as much as before; None: no concentrate was named."""
    at = _concentrate_at(before)
    if at is None:
        return None
    volumes = list(before.volumes)
    volumes[at] = replace(volumes[at], amount=volumes[at].amount * times)
    return replace(before, volumes=tuple(volumes))


def _concentrate_at(slots: Slots) -> int | None:
    """Which of the volumes is the concentrate: said to be, else the first that is said to be nothing else."""
    roles = slots.roles if len(slots.roles) == len(slots.volumes) else tuple("" for _ in slots.volumes)
    for wanted in ("product", ""):
        for place, role in enumerate(roles):
            if role == wanted:
                return place
    return None


def _role_of_the_rest(slots: Slots, at: int) -> VolumeRole:
    roles = slots.roles if len(slots.roles) == len(slots.volumes) else ()
    return next((role for place, role in enumerate(roles) if place != at), "")


def _whole(rest: list[Amount], slots: Slots) -> bool:
    return bool(rest) or len(slots.bottles) == 1


def _either(concentrate: Amount, rest: list[Amount], now: Slots) -> tuple[Amount, Amount | None]:
    """What was said as the concentrate and as the whole; a bare number has the unit of either."""
    if now.volumes:
        return now.volumes[0], now.volumes[0]
    number = now.numbers[0]
    units = dict.fromkeys((rest[0].unit, concentrate.unit)) if rest else ()
    wholes = [Amount(number, unit) for unit in units]  # "and a thousand", after a litre: mils, not litres
    return replace(concentrate, amount=number), min(wholes, key=lambda one: _apart(one, rest[0]), default=None)


def _ml(amount: Amount) -> Fraction:
    return convert(amount, "mL").amount


def _apart(one: Amount, other: Amount) -> Fraction:
    """How many times the larger of two is the smaller."""
    first, second = _ml(one), _ml(other)
    return max(first / second, second / first)
