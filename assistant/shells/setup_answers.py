"""What a question of `setup` is, and how what is typed becomes values of keeping.toml."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Any

from assistant.core.facts import Facts
from assistant.store.keeping_values import Wrong

EVERY = ("spot_clean_every", "deep_clean_every", "water_every")


@dataclass(frozen=True)
class Known:
    """What has been said by the time of a question."""

    values: Mapping[str, Any]
    """Of the thing that is being asked about."""
    content: Mapping[str, Any]
    """The whole of keeping.toml."""
    facts: Facts
    today: date


Values = dict[str, Any]


@dataclass(frozen=True)
class Ask:
    """One question and the keys that its answer fills."""

    keys: tuple[str, ...]
    text: str
    help: str
    default: Callable[[Known], str] = lambda known: ""
    """What Enter takes; empty: Enter leaves it out."""
    wanted: Callable[[Known], bool] = lambda known: True
    choices: Callable[[Known], tuple[str, ...]] = lambda known: ()
    read: Callable[[str, Known], Values] | None = None
    """The answer as TOML values; None: as text, under its one key."""
    called: str = ""
    """What several keys are together."""
    aside: bool = False
    """Asked of a new thing only: one without it isn't unfinished, so that setup doesn't ask at every run."""


@dataclass(frozen=True)
class Section:
    """One kind of table."""

    kind: str
    title: str
    asks: tuple[Ask, ...]
    needs: tuple[str, ...] = ()
    one: str = ""
    """What one of them is called; empty: the table stands once."""
    example: str = ""


def number(key: str) -> Callable[[str, Known], Values]:
    def read(typed: str, _: Known) -> Values:
        plain = re.sub(r"\s*(minutes?|mins?|animals?)$", "", typed)
        try:
            return {key: int(plain) if plain.isdecimal() else float(plain)}
        except ValueError:
            raise Wrong(f'"{typed[:40]}" is no number', "write one like 10") from None

    return read


def percent(key: str) -> Callable[[str, Known], Values]:
    """The question says percent, so a bare number can be nothing else."""
    return lambda typed, _: {key: f"{typed} percent" if re.fullmatch(r"\d*\.?\d+", typed) else typed}


def day(key: str) -> Callable[[str, Known], Values]:
    def read(typed: str, known: Known) -> Values:
        near = {"today": 0, "yesterday": 1}
        try:
            said = known.today - timedelta(near[typed.lower()]) if typed.lower() in near else date.fromisoformat(typed)
        except ValueError:
            raise Wrong(f'"{typed[:40]}" is no day', "write it as 2026-01-31, or today, or yesterday") from None
        if said > known.today:
            raise Wrong(f"{said} is still to come", "write a day that has been")
        return {key: said}

    return read


def names_listed(key: str) -> Callable[[str, Known], Values]:
    return lambda typed, _: {key: [part.strip() for part in typed.split(",") if part.strip()]}


def airing(typed: str, _: Known) -> Values:
    return {"airing": float(typed) if re.fullmatch(r"\d*\.?\d+", typed) else typed}


def sides(typed: str, _: Known) -> Values:
    """ "4 x 3 x 2.4 m": a unit after the last holds for those without one."""
    parts = [part.strip() for part in re.split(r"\s*(?:[x×*,]|\bby\b)\s*", typed, flags=re.IGNORECASE)]
    unit = re.sub(r"^[\d./\s]+", "", parts[-1])
    if len(parts) != 3 or not unit:
        raise Wrong(f'"{typed[:40]}" is no length, width and height', "write the three and a unit, as 90 x 45 x 45 cm")
    each = [part if re.search(r"[a-z]", part, re.IGNORECASE) else f"{part} {unit}" for part in parts]
    return dict(zip(("length", "width", "height"), each, strict=True))


def room_size(typed: str, known: Known) -> Values:
    if re.search(r"\d\s*(?:[x×*,]|by\b)", typed, re.IGNORECASE):
        return sides(typed, known)
    return {"volume": typed}


def intervals(typed: str, _: Known) -> Values:
    parts = [part.strip() for part in typed.split(",")]
    if len(parts) != 3:
        raise Wrong(
            f'"{typed[:40]}" is not three spans of time', 'write three, as "1 day, 30 day, 1 day"; - leaves one'
        )
    return {key: part for key, part in zip(EVERY, parts, strict=True) if part != "-"}
