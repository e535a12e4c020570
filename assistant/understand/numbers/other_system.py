""" "And imperial?", right after an amount in pints: the same in the other country's."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from assistant.contract import Reading, Slots
from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.quantity import BadQuantity, Gallon, read_unit
from assistant.core.quantities.units import UNITS
from assistant.understand.numbers.unit_words import SAID, SYSTEM_WORDS
from assistant.understand.text.words import SIGNS, Token

_ASKED_OF = frozenset({"convert", "dose", "mix_strength", "measure_with", "top_up", "make_up"})
_SMALL = frozenset(
    {
        "and",
        "what",
        "about",
        "how",
        "in",
        "i",
        "mean",
        "meant",
        "no",
        "sorry",
        "make",
        "it",
        "that",
        "is",
        "or",
        "one",
        "ones",
    }
    | {
        "but",
        "for",
        "if",
        "an",
        "a",
        "the",
        "measure",
        "please",
        "actually",
        "wait",
        "was",
        "they",
        "are",
        "then",
        "not",
    }
)
_PREFIX = {"US": "US ", "imperial": "imp "}


def of_the_other_system(before: Reading, tokens: Sequence[Token]) -> Slots | None:
    """The slots with their gallons, pints and ounces of the system now named; None: it names none, or more than that.

    A unit named along with it has to be the one that was asked of: "imperial pint" is no ounce.
    """
    words = [token.text for token in tokens if token.text not in SIGNS]
    named = {SYSTEM_WORDS[word] for word in words if word in SYSTEM_WORDS}
    rest = [word for word in words if word not in SYSTEM_WORDS and word not in _SMALL]
    if len(named) != 1 or before.intent not in _ASKED_OF or _is_recipe(before.slots):
        return None
    system = named.pop()
    units = {volume.unit for volume in before.slots.volumes} | {before.slots.to_unit or ""}
    ours = {unit for unit in units if unit.startswith(("US ", "imp "))}
    ours = {unit for unit in ours if _in_system(unit, system) != unit}
    if not ours or (rest and not {_in_system(unit, system) for unit in ours} <= {_unit_of(rest, system)}):
        return None
    volumes = tuple(Amount(one.amount, _in_system(one.unit, system)) for one in before.slots.volumes)
    to_unit = before.slots.to_unit
    return replace(before.slots, volumes=volumes, to_unit=_in_system(to_unit, system) if to_unit else None)


def _is_recipe(slots: Slots) -> bool:
    return any(getattr(mix, "part", None) is not None for mix in slots.mixes)


def _in_system(unit: str, system: Gallon) -> str:
    """The unit of that name in a system; the same where that system has none: there is no imperial cup."""
    for prefix in _PREFIX.values():
        if unit.startswith(prefix):
            other = _PREFIX[system] + unit.removeprefix(prefix)
            return other if other in UNITS else unit
    return unit


def _unit_of(words: list[str], system: Gallon) -> str:
    spelling = " ".join(words)
    try:
        return read_unit(SAID.get(spelling, spelling), system)
    except BadQuantity:
        return ""
