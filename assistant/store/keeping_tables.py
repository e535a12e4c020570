"""The tables of keeping.toml: which keys each has, how each is read, and which it can't do without.

A new key is a field of its type in `core.household` and a line here.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import partial
from typing import Any

from assistant.core.facts import Facts
from assistant.core.household import Bottle, Enclosure, Habits, Measure, People, Stock
from assistant.core.quantities.quantity import Gallon
from assistant.store import keeping_values as read
from assistant.store.keeping_values import Read


@dataclass(frozen=True)
class Table:
    """One kind of table: the type it makes, how each key is read, and which it can't do without."""

    makes: Callable[..., Any]
    keys: Mapping[str, Read]
    needs: tuple[str, ...] = ()


def tables_of(facts: Facts, gallon: Gallon) -> dict[str, Table]:
    def quantity(kind: str) -> Read:
        return partial(read.amount_of, kind=kind, gallon=gallon)

    volume, length, time = quantity("volume"), quantity("length"), quantity("time")
    temperature, percent = quantity("temperature"), quantity("percent")
    names = partial(read.list_of, of=read.name)
    return {
        "room": Table(
            dict,
            {
                "name": read.name,
                "volume": volume,
                "length": length,
                "width": length,
                "height": length,
                "airing": read.airing,
                "temperature": temperature,
                "humidity": percent,
            },
        ),
        "habits": Table(
            Habits,
            {
                "ratio": partial(read.one_of, choices=("to", "in")),
                "gallon": partial(read.one_of, choices=("US", "imperial")),
                "call_word": read.text,
                "speak": read.yes_or_no,
                "tub_minutes": read.count,
            },
        ),
        "people": Table(
            People,
            {
                "poison_centre": read.text,
                "emergency": read.text,
                "vet": read.text,
                "at_risk": partial(
                    read.list_of, of=partial(read.one_of, choices=("under 5", "over 65", "pregnant", "immune"))
                ),
            },
        ),
        "measure": Table(
            Measure,
            {
                "name": read.name,
                "also": names,
                "capacity": volume,
                "graduation": volume,
                "tolerance": percent,
                "kind": partial(read.one_of, choices=("syringe", "spoon", "cup", "jug")),
            },
            needs=("name", "capacity"),
        ),
        "stock": Table(
            Stock,
            {
                "name": read.name,
                "also": names,
                "agent": partial(read.agent, facts=facts),
                "strength": percent,
                "basis": partial(read.one_of, choices=("w/w", "w/v", "v/v")),
                "made": read.day,
                "kept_at": temperature,
                "left": volume,
                "label_minutes": read.number,
                "label_mix": read.mix,
                "label_claim": read.claim,
                "label_organisms": partial(read.list_of, of=partial(read.organism, facts=facts)),
                "label_keeps": time,
                "pictograms": partial(read.list_of, of=read.pictogram),
            },
            needs=("name", "agent"),
        ),
        "bottle": Table(
            Bottle,
            {
                "name": read.name,
                "also": names,
                "colour": read.text,
                "capacity": volume,
                "stock": read.name,
                "mix": read.mix,
                "ml_a_stroke": read.number,
            },
            needs=("name", "capacity"),
        ),
        "enclosure": Table(
            Enclosure,
            {
                "name": read.name,
                "also": names,
                "rack": read.text,
                "animal": read.text,
                "animals": read.count,
                "material": read.text,
                "length": length,
                "width": length,
                "height": length,
                "water": partial(read.one_of, choices=("dry", "part", "all")),
                "group": partial(read.one_of, choices=("healthy", "new", "sick")),
                "arrived": read.day,
                "quarantine": time,
                "spot_clean_every": time,
                "deep_clean_every": time,
                "water_every": time,
            },
            needs=("name",),
        ),
    }
