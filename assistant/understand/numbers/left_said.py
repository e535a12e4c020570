"""How much was left, or into how much it went, told in a turn of its own: "half", "200 mils", "no, a quarter".

A part is of the bottle, never so many mils; a number with a word behind it that is no unit ("three fingers") is asked
about again.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from fractions import Fraction
from typing import Any

from assistant.contract import Reading, Slots, World
from assistant.core.household import Bottle
from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.units import in_ml
from assistant.understand.parsing import Parsed
from assistant.understand.text.known_words import words_of
from assistant.understand.text.patterns import Pattern

_BESIDE_A_NUMBER = words_of(
    """
    a about actually around at be bottle but by er exactly full guess have i in is it just keep left like make maybe
    mean meant nearly no not of oh ok only or reckon remaining roughly said say should so sorry still that the then
    there think to um wait what with yes {number} {bottle} and mils ml
    """
)


_A_PART = words_of("half third quarter quarters thirds empty gone of there {volume}")


def tells_what_is_left(parsed: Parsed) -> bool:
    """ "It's half full", "a third of it's gone": hardly more than a part or a volume, and small words."""
    return bool(parsed.words) and set(parsed.words) <= _BESIDE_A_NUMBER | _A_PART


def what_is_left(
    before: Reading, given: Mapping[str, Any], missing: tuple[str, ...], parsed: Parsed, world: World
) -> dict[str, Any]:
    """What a turn gives to a top-up that waits: what is left stays beside the bottle, and a bottle beside what is left.

    given: the slots that the turn fills.
    """
    answer = dict(given)
    if before.intent != "top_up":
        return answer
    names = given.get("bottles", before.slots.bottles)
    bottle = world.household.bottle(names[0]) if len(names) == 1 else None
    volumes = tuple(given.get("volumes", ()))
    if bottle is None and "bottle" in missing and len(volumes) == 1:  # "how much does it hold?"
        left = before.slots.volumes[:1]
        return {**answer, "volumes": (*left, *volumes), "roles": (*("left" for _ in left), "total")}
    if bottle is not None and "left" in missing:
        answer.pop("numbers", None)
        left_now = _left(parsed, Slots(**{key: given[key] for key in _OF_AN_AMOUNT if key in given}), bottle)
        return {**answer, **(left_now or {}), "bottles": names}
    if "bottles" in given and not volumes and before.slots.volumes:
        return {**answer, "volumes": before.slots.volumes, "roles": before.slots.roles}
    return answer


def left_again(before: Reading, now: Slots, parsed: Parsed, world: World) -> Slots | None:
    """The slots of a top-up with what is left put right: "make that 100 mL", "no, a quarter"; None: it says no such.

    Only where it names nothing else; a volume that is said to be the whole is left alone.
    """
    if before.intent != "top_up" or now.bottles or now.agents or now.stocks or now.mixes or "total" in now.roles:
        return None
    slots = before.slots
    bottle = world.household.bottle(slots.bottles[0]) if len(slots.bottles) == 1 else None
    if bottle is not None:
        left = _left(parsed, now, bottle)
        return None if left is None else replace(slots, **{**_NOTHING_LEFT, **left}, choices=(), faulty=())
    if len(slots.volumes) != 2 or len(now.volumes) != 1:
        return None
    whole = max(slots.volumes, key=in_ml)
    return replace(slots, volumes=(now.volumes[0], whole), roles=("left", "total"), share_left=None, faulty=())


_OF_AN_AMOUNT = ("volumes", "roles", "numbers", "share_left")
_NOTHING_LEFT: Mapping[str, Any] = {"volumes": (), "roles": (), "numbers": (), "share_left": None}


def _left(parsed: Parsed, slots: Slots, bottle: Bottle) -> dict[str, Any] | None:
    """What is said to be left in that bottle, as slots; None: nothing that can be taken without guessing."""
    if len(slots.volumes) == 1 and not slots.numbers:
        return {"volumes": slots.volumes, "roles": ("left",)}
    if slots.volumes or (slots.share_left is None and len(slots.numbers) != 1):
        return None
    if slots.share_left is not None:
        return {"share_left": slots.share_left}
    number = slots.numbers[0]
    if not tells_what_is_left(parsed):
        return None
    if number < 1:
        return None if _is_decimal(parsed, number) else {"share_left": number}
    return {"volumes": (Amount(number, bottle.capacity.unit),), "roles": ("left",)}


def _is_decimal(parsed: Parsed, number: Fraction) -> bool:
    """ "0.5" by itself may be of a litre or of the bottle; "half" is of the bottle."""
    return any(
        "." in token.text or token.text == "point"
        for found in parsed.amounts.found
        if found.value == number
        for token in parsed.tokens[found.start : found.end]
    )


def left_in_it(slots: Slots, parsed: Parsed, world: World) -> Slots:
    """ "Top up pink, 250 left": so many of the bottle's own unit."""
    if len(slots.bottles) != 1 or _LEFT.search(parsed.plain) is None:
        return slots
    bottle = world.household.bottle(slots.bottles[0])
    numbers = slots.numbers
    if bottle is not None and not slots.volumes and len(numbers) == 2 and _UP_TO.search(parsed.plain) is not None:
        whole, rest = numbers  # "top the yellow up to 500, 200 left"
        unit = bottle.capacity.unit
        if 1 <= rest < whole:
            both = (Amount(rest, unit), Amount(whole, unit))
            return replace(slots, volumes=both, roles=("left", "total"), numbers=())
    if slots.volumes or len(numbers) != 1:
        return slots
    if bottle is None or slots.numbers[0] < 1:
        return slots
    left = Amount(slots.numbers[0], bottle.capacity.unit)
    return replace(slots, volumes=(left,), roles=("left",), numbers=())


_UP_TO = Pattern(r"\bup to NUMBER\b.*\bNUMBER\b")
_LEFT = Pattern(r"\bNUMBER(?: or so)? (?:left|remaining|still in)\b")


def into_how_much(before: Reading, given: Mapping[str, Any], missing: tuple[str, ...]) -> dict[str, Any]:
    """ "500 mL", when it was asked in how much water: beside what was poured, and not in its place."""
    answer, poured = dict(given), before.slots.volumes
    if before.intent != "mix_strength" or "water" not in missing or len(poured) != 1 or "bottles" in given:
        return answer
    volumes, numbers = tuple(given.get("volumes", ())), given.get("numbers", ())
    if not volumes and len(numbers) == 1 and poured[0].unit == "mL":
        answer.pop("numbers")
        volumes = (Amount(numbers[0], "mL"),)
    if len(volumes) != 1:
        return answer
    said = tuple(given.get("roles", ()))
    role = said[0] if said and said[0] in ("water", "total") else ""
    return {**answer, "volumes": (*poured, *volumes), "roles": ("product", role)}
