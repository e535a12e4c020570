"""Single values of keeping.toml: each reader takes what TOML gave and returns what the household holds.

Which key is read by which is `keeping_tables`.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from datetime import date, datetime
from difflib import get_close_matches
from functools import partial
from typing import Any

from assistant.core.choice.pictograms import SYMBOLS, WARNS, symbol_named
from assistant.core.facts import Facts
from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.quantity import BadQuantity, Gallon, read_amount, read_mix
from assistant.core.quantities.units import dimension
from assistant.store.toml_lines import Place

LONGEST_NAME = 60

Read = Callable[[Any], Any]


class Wrong(Exception):
    """One value that can't be taken; becomes a KeepingFault once its place is known."""

    def __init__(self, what: str, fix: str, place: Place = ()) -> None:
        super().__init__(what)
        self.what = what
        self.fix = fix
        self.place = place


def text(value: Any) -> str:
    if not isinstance(value, str):
        raise Wrong(f"must be text, not {as_given(value)}", "write it in quotes")
    return " ".join(value.split())


def name(value: Any) -> str:
    given = text(value)
    if not given:
        raise Wrong("is empty", "write a name")
    if len(given) > LONGEST_NAME or not given.isprintable():
        raise Wrong("is no name to be spoken", f"write at most {LONGEST_NAME} letters")
    return given


def list_of(value: Any, of: Read) -> tuple[Any, ...]:
    if not isinstance(value, list):
        raise Wrong(f"must be a list, not {as_given(value)}", 'write it as ["first", "second"]')
    return tuple(of(entry) for entry in value)


def one_of(value: Any, choices: Sequence[str]) -> str:
    given = text(value).lower()
    for choice in choices:
        if choice.lower() == given:
            return choice
    raise Wrong(f"can't be {as_given(value)}", "write " + _either([f'"{choice}"' for choice in choices]))


def claim(value: Any) -> str:
    return "sanitise" if value == "sanitize" else one_of(value, ("sanitise", "disinfect"))


def yes_or_no(value: Any) -> bool:
    if not isinstance(value, bool):
        raise Wrong(f"must be true or false, not {as_given(value)}", "write true or false, without quotes")
    return value


def number(value: Any) -> int | float:
    if isinstance(value, bool) or not isinstance(value, int | float):
        raise Wrong(f"must be a number, not {as_given(value)}", "write a number, without quotes and without a unit")
    if not math.isfinite(value) or not 0 < value < 10**6:
        raise Wrong(f"can't be {as_given(value)}", "write a number above zero and below a million")
    return value


def count(value: Any) -> int:
    given = number(value)
    if not isinstance(given, int):
        raise Wrong(f"must be a whole number, not {as_given(value)}", "write 1, 2, 3 or so")
    return given


def day(value: Any) -> date:
    if isinstance(value, datetime) or not isinstance(value, date):
        raise Wrong(f"must be a date, not {as_given(value)}", "write it as 2026-01-31, without quotes and time")
    return value


def airing(value: Any) -> Any:
    if isinstance(value, str):
        return one_of(value, ("shut", "one opening", "two openings", "three openings"))
    return float(number(value))


_EXAMPLES = {
    "volume": "500 mL",
    "length": "90 cm",
    "time": "1 day",
    "temperature": "22 degC",
    "percent": "6 percent",
}


def amount_of(value: Any, kind: str, gallon: Gallon) -> Amount:
    """A quantity of that kind: a dimension's name, or "percent"."""
    example = f'write it as "{_EXAMPLES[kind]}"'
    if not isinstance(value, str):
        raise Wrong(f"needs a unit and quotes, not {as_given(value)}", example)
    amount = _plain(partial(read_amount, gallon=gallon), value)
    if (kind == "percent" and amount.unit != "%") or (kind != "percent" and dimension(amount.unit) != kind):
        raise Wrong(f"{as_given(value)} is no {_KINDS[kind]}", example)
    if kind == "percent" and amount.amount > 100:
        raise Wrong(f"{as_given(value)} is over 100 percent", example)
    return Amount(amount.amount, amount.unit)


_KINDS = {
    "volume": "volume",
    "length": "length",
    "time": "span of time",
    "temperature": "temperature",
    "percent": "percentage",
}


def mix(value: Any) -> Any:
    if not isinstance(value, str):
        raise Wrong(
            f"must be text, not {as_given(value)}", 'write it as "1 in 32", "0.06 percent", "500 ppm" or "neat"'
        )
    return _plain(read_mix, value)


def _plain(read: Callable[[str], Any], value: str) -> Any:
    try:
        return read(value)
    except BadQuantity as fault:
        raise Wrong(fault.why, fault.fix) from fault


def agent(value: Any, facts: Facts) -> str:
    """An agent's id, from any of its names."""
    found = facts.agent_named(text(value))
    if found is not None:
        return found.id
    names = [name for one in facts.agents.values() for name in (one.name, *one.also)]
    near = get_close_matches(text(value).lower(), names, n=1)
    fix = f'did you mean "{near[0]}"?' if near else 'write its plain name, as "bleach", or "other"'
    raise Wrong(f"no agent is known by {as_given(value)}", fix)


def organism(value: Any, facts: Facts) -> str:
    """An organism's id. A label may list germs that the facts say nothing of; those are kept as written."""
    found = facts.organism_named(text(value))
    return found.id if found is not None else text(value).lower()


def pictogram(value: Any) -> str:
    """A hazard sign's name, from its name or code."""
    found = symbol_named(text(value))
    if found is not None:
        return found
    near = get_close_matches(text(value).lower(), WARNS, n=1)
    fix = f'did you mean "{near[0]}"?' if near else f"write {_either([*SYMBOLS, *WARNS])}"
    raise Wrong(f"no hazard sign is known by {as_given(value)}", fix)


def as_given(value: Any) -> str:
    if isinstance(value, str):
        return f'"{value if len(value) <= 40 else value[:37] + "..."}"'
    if isinstance(value, bool):
        return "true" if value else "false"
    return "a list" if isinstance(value, list) else "a table" if isinstance(value, dict) else str(value)


def _either(choices: Sequence[str]) -> str:
    return ", ".join(choices[:-1]) + f" or {choices[-1]}"
