"""keeping.toml: what the keeper owns, read into a Household.

Every fault is one error of one line: the file, the line, what is wrong, what to write. The tables and their keys are
`keeping_tables`, single values `keeping_values`; finding the line is `toml_lines`. No file is an empty household.
"""

from __future__ import annotations

import math
import re
import tomllib
from collections.abc import Mapping, Sequence
from dataclasses import replace
from difflib import get_close_matches
from fractions import Fraction
from pathlib import Path
from typing import Any

from assistant.core.facts import Facts
from assistant.core.household import Bottle, Household, Measure, Room, Stock
from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.quantity import Gallon
from assistant.core.quantities.units import UNITS, convert
from assistant.store.keeping_tables import Table, tables_of
from assistant.store.keeping_values import Wrong
from assistant.store.packaged import packaged_facts
from assistant.store.toml_lines import Place, line_of


class KeepingFault(ValueError):
    """keeping.toml can't be taken: where, what is wrong, and what to write instead; its text is one line."""

    def __init__(self, path: Path, line: int | None, what: str, fix: str) -> None:
        where = f"{path}, line {line}" if line is not None else f"{path}"
        super().__init__(" ".join(f"{where}: {what}; {fix}".split()))
        self.path = path
        self.line = line
        self.what = what
        self.fix = fix


def read_household(path: Path, facts: Facts | None = None) -> Household:
    """The household in that file; an empty one when there is no such file.

    facts: where agents and organisms get their names from; the packaged ones unless given.
    Fails: KeepingFault.
    """
    text = text_of(path)
    return Household() if text is None else household_of(text, path, facts or packaged_facts())


def household_of(text: str, path: Path, facts: Facts) -> Household:
    """The household that a text says; `path` is what its faults name.

    Fails: KeepingFault.
    """
    try:
        content = tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise _not_toml(path, text, error) from error
    except RecursionError as error:
        raise KeepingFault(path, None, "brackets are nested too deep", "write it as the sample file shows") from error
    try:
        return _household(content, facts)
    except Wrong as wrong:
        raise KeepingFault(path, line_of(text, wrong.place), wrong.what, wrong.fix) from wrong


# ---------------------------------------------------------------- the file


def text_of(path: Path) -> str | None:
    """What the file says, lines ended by a line feed alone; None: no such file."""
    try:
        return path.read_bytes().decode("utf-8-sig").replace("\r\n", "\n")
    except FileNotFoundError:
        return None
    except OSError as error:
        why = (error.strerror or "unreadable").lower()
        raise KeepingFault(path, None, f"can't be read: {why}", "make it a file you may read") from error
    except UnicodeDecodeError as error:
        line = error.object[: error.start].count(b"\n") + 1
        raise KeepingFault(path, line, "this isn't UTF-8 text", "save the file as UTF-8") from error


_UNQUOTED = re.compile(r"\s*([\w.-]+)\s*=\s*([^\"'\[{\s][^#]*)")


def _not_toml(path: Path, text: str, error: tomllib.TOMLDecodeError) -> KeepingFault:
    found = re.search(r"\(at line (\d+), column \d+\)", str(error))
    lines = text.split("\n")
    line = int(found[1]) if found else len(text.rstrip("\n").split("\n"))
    bare = _UNQUOTED.match(lines[line - 1])
    why = str(error).split(" (at ")[0].replace("\\n", "line end")
    fix = 'write  key = "value"  on a line of its own, quotes and brackets closed'
    if why == "Illegal character 'line end'":
        why = "the line ends within quotes"
    if bare and re.match(r"\d+-", bare[2]):
        fix = "write a date as 2026-01-31, without quotes and time"
    elif bare and not why.startswith("Cannot"):
        fix = f'write  {bare[1]} = "{bare[2].strip()}"  with quotes'
    elif why.startswith("Cannot"):
        fix = "keep it once"
        why = "this key or table stands twice"
    return KeepingFault(path, line, f"not TOML: {why[:1].lower()}{why[1:]}", fix)


_SINGLE = ("room", "habits", "people")
_MANY = ("measure", "stock", "bottle", "enclosure")


def _household(content: Mapping[str, Any], facts: Facts) -> Household:
    habits = content.get("habits")
    gallon: Gallon = "imperial" if isinstance(habits, dict) and habits.get("gallon") == "imperial" else "US"
    tables = tables_of(facts, gallon)
    for key, value in content.items():
        if key not in tables:
            raise _unknown(key, tables, "table", (key,))
        if key in _SINGLE and not isinstance(value, dict):
            raise Wrong(f"{key} stands here once, as a table of its own", f"write [{key}]", (key,))
        if key in _MANY and not (isinstance(value, list) and all(isinstance(entry, dict) for entry in value)):
            raise Wrong(f"there may be several of {key}", f"write [[{key}]] in double brackets", (key,))
    single = {kind: _made(tables[kind], content.get(kind, {}), (kind,)) for kind in _SINGLE}
    many = {
        kind: tuple(_made(tables[kind], table, (kind, i)) for i, table in enumerate(content.get(kind, ())))
        for kind in _MANY
    }
    for kind in _MANY:
        _check_names(kind, many[kind])
    _check_marks(many["measure"])
    return Household(
        room=_room(single["room"]),
        habits=single["habits"],
        people=single["people"],
        measures=many["measure"],
        stocks=many["stock"],
        bottles=_with_stocks(many["bottle"], many["stock"]),
        enclosures=many["enclosure"],
    )


def _made(table: Table, content: Mapping[str, Any], place: Place) -> Any:
    kind, title = str(place[0]), _title(place, content)
    values: dict[str, Any] = {}
    for key, value in content.items():
        if key not in table.keys:
            raise _unknown(key, table.keys, f"key of {kind}", (*place, key))
        try:
            values[key] = table.keys[key](value)
        except Wrong as wrong:
            raise Wrong(f"{title}, {key}: {wrong.what}", wrong.fix, (*place, key)) from wrong
    for key in table.needs:
        if key not in values:
            raise Wrong(f"{title} has no {key}", f'add a line  {key} = "..."', place)
    return table.makes(**values)


def _unknown(key: str, known: Mapping[str, Any], what: str, place: Place) -> Wrong:
    near = get_close_matches(key, known, n=1)
    fix = f'did you mean "{near[0]}"?' if near else "write one of " + ", ".join(known)
    return Wrong(f'"{key}" is no {what} known here', fix, place)


def _title(place: Place, content: Mapping[str, Any]) -> str:
    name = content.get("name")
    return f'{place[0]} "{name}"' if len(place) > 1 and isinstance(name, str) else str(place[0])


# ---------------------------------------------------------------- what must agree


def _check_names(kind: str, things: Sequence[Any]) -> None:
    """Names and other names are unique within their kind, whatever their case."""
    taken: dict[str, str] = {}
    for i, thing in enumerate(things):
        for key, names in (("name", (thing.name,)), ("also", thing.also)):
            for name in names:
                if name.lower() in taken:
                    raise Wrong(
                        f'{kind} "{thing.name}": "{name}" already names {kind} "{taken[name.lower()]}"',
                        "give each a name of its own",
                        (kind, i, key),
                    )
                taken[name.lower()] = thing.name


def _check_marks(measures: Sequence[Measure]) -> None:
    for i, measure in enumerate(measures):
        mark = measure.graduation
        if mark is not None and mark.unit == measure.capacity.unit and mark.amount > measure.capacity.amount:
            raise Wrong(
                f'measure "{measure.name}": graduation is more than its capacity',
                "write the step between two marks",
                ("measure", i, "graduation"),
            )


def _with_stocks(bottles: Sequence[Bottle], stocks: Sequence[Stock]) -> tuple[Bottle, ...]:
    """Bottles with the stock they name by its own name."""
    names = {name.lower(): stock.name for stock in stocks for name in (stock.name, *stock.also)}
    found: list[Bottle] = []
    for i, bottle in enumerate(bottles):
        if bottle.stock is not None and bottle.stock.lower() not in names:
            near = get_close_matches(bottle.stock.lower(), names, n=1)
            fix = f'did you mean "{names[near[0]]}"?' if near else f'add a [[stock]] with name = "{bottle.stock}"'
            raise Wrong(f'bottle "{bottle.name}": no stock is called "{bottle.stock}"', fix, ("bottle", i, "stock"))
        found.append(bottle if bottle.stock is None else replace(bottle, stock=names[bottle.stock.lower()]))
    return tuple(found)


def _room(values: dict[str, Any]) -> Room:
    sides = [values.pop(side, None) for side in ("length", "width", "height")]
    given = [side for side in sides if side is not None]
    if given and values.get("volume") is not None:
        raise Wrong("room: give its volume, or length, width and height, not both", "take one out", ("room", "volume"))
    if given and len(given) < 3:
        raise Wrong("room: length, width and height come together", "write all three", ("room",))
    if given:
        values["volume"] = _volume_of(given)
    return Room(**values)


def _volume_of(sides: Sequence[Amount]) -> Amount:
    """Length by width by height; sides in unlike units are turned into metres first, which costs a start some time."""
    unit = sides[0].unit
    if f"{unit}^3" not in UNITS or any(side.unit != unit for side in sides):
        unit, sides = "m", [convert(side, "m") for side in sides]
    return Amount(math.prod((side.amount for side in sides), start=Fraction(1)), f"{unit}^3")
