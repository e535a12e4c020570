""" "And imperial?", right after an amount in pints: the same in the other country's."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from assistant.contract import Reading, Slots
from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.quantity import BadQuantity, Gallon, read_unit
from assistant.core.quantities.units import UNITS, dimension
from assistant.understand.numbers.unit_words import SAID, SYSTEM_WORDS
from assistant.understand.parsing import Parsed
from assistant.understand.text.known_words import words_of
from assistant.understand.text.patterns import Pattern
from assistant.understand.text.words import SIGNS, Token

_ASKED_OF = frozenset({"convert", "dose", "mix_strength", "measure_with", "top_up", "make_up"})
_SMALL = words_of(
    "and what about how in i mean meant no sorry make it that is or one ones but for if an a the measure please"
    " actually wait was they are then not should have of said say other ours kind sort type oh ok okay my here"
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
    if not ours or (rest and not {_in_system(unit, system) for unit in ours} <= {_unit_of(rest, system)}):
        return None
    volumes = tuple(Amount(one.amount, _in_system(one.unit, system)) for one in before.slots.volumes)
    to_unit = before.slots.to_unit
    return replace(before.slots, volumes=volumes, to_unit=_in_system(to_unit, system) if to_unit else None)


_AS_A_UNIT = Pattern(
    r"(?:(?:and|so|ok|or|but|what is|what 's|how much is|what about|that|it|is) )*(?:in|as|into) "
    r"(?:\w+ ){0,2}\w+"
)
_WITH_A_SPOON = Pattern(
    r"(?:(?:and|so|ok|or|but|what if|what about|i have only got|i only have|can i do it|could i do it) )*"
    r"(?:with|using|by) (?:just |only )?VOLUME(?: measure| then| instead)?"
)
""" "With a teaspoon": how many of those the dose is, and no dose for one spoon of mix."""
_POURED = frozenset({"dose", "top_up", "convert", "measure_with"})


def in_another_unit(before: Reading, parsed: Parsed, unit: str | None) -> Slots | None:
    """ "In fluid ounces", "and imperial", right after a dose: that amount once more, and no change of the setting.

    unit: the one that is named. None: nothing of the kind, or the system changes what was asked, and not the answer.
    """
    plain, found = parsed.plain.strip(" .?!,").removesuffix(" please").strip(" ,"), parsed.amounts.found
    if before.intent in _POURED and len(found) == 1 and _WITH_A_SPOON.fullmatch(plain) is not None:
        spoon = found[0].value
        return Slots(to_unit=spoon.unit) if isinstance(spoon, Amount) and spoon.amount == 1 else None
    if before.intent not in _POURED or found or parsed.mentions:
        return None
    if unit is not None and dimension(unit) == "volume" and _AS_A_UNIT.fullmatch(plain):
        return Slots(to_unit=unit)
    words = [token.text for token in parsed.tokens if token.text not in SIGNS]
    named = {SYSTEM_WORDS[word] for word in words if word in SYSTEM_WORDS}
    units = {volume.unit for volume in before.slots.volumes} | {before.slots.to_unit or ""}
    ours = any(one.startswith(("US ", "imp ")) for one in units)
    if len(named) != 1 or ours or not words or words[0] not in ("and", "or", "in") or len(words) > MOST_WORDS:
        return None
    if any(word not in SYSTEM_WORDS and word not in _SMALL for word in words):
        return None
    return Slots(to_unit=f"{_PREFIX[named.pop()]}fl oz")


MOST_WORDS = 3
""" "And in imperial"; a wish for a setting is said in more."""


def _is_recipe(slots: Slots) -> bool:
    return any(getattr(mix, "part", None) is not None for mix in slots.mixes)


def _in_system(unit: str, system: Gallon) -> str:
    """The unit of that system; one that the system lacks, as a cup, stays what it was."""
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
