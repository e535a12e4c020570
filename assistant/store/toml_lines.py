"""Where in a TOML file a key stands: its line number, for errors that name it.

The standard reader gives values without lines, and the reader that keeps lines is too slow for every start. So the
file is scanned for lines only once something is found to be wrong with it. Just headers and keys are looked at; the
file has parsed already, so the scan may take its grammar for granted.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

Place = tuple[str | int, ...]
"""Keys and, below an array of tables, the number of the table: ("bottle", 1, "capacity")."""

_HEADER = re.compile(r"\s*(\[\[?)([^\]]*)\]")
_PART = re.compile(r"""\s*(?:"((?:[^"\\]|\\.)*)"|'([^']*)'|([A-Za-z0-9_-]+))\s*(\.)?""")
_STRING_OR_COMMENT = re.compile(
    r'"""(?:[^\\]|\\.)*?"""|\'\'\'.*?\'\'\'|"(?:[^"\\\n]|\\.)*"|\'[^\'\n]*\'|#[^\n]*', re.DOTALL
)


def line_of(text: str, place: Place) -> int:
    """The line, from 1, where that key or table stands; its nearest parent's where it doesn't stand by itself."""
    lines: dict[Place, int] = {}
    for key, line in _places(text):
        for length in range(len(key), 0, -1):
            lines.setdefault(key[:length], line)
    for length in range(len(place), 0, -1):
        if place[:length] in lines:
            return lines[place[:length]]
    return 1


def _places(text: str) -> Iterator[tuple[Place, int]]:
    table: Place = ()
    counts: dict[Place, int] = {}
    for statement, line in _statements(text):
        header = _HEADER.match(statement)
        if header is None:
            yield (*table, *_key(statement)), line
            continue
        table = _within_latest(_key(header[2]), counts)
        if header[1] == "[[":
            counts[table] = counts.get(table, -1) + 1
            table = (*table, counts[table])
        yield table, line


def _within_latest(key: Place, counts: dict[Place, int]) -> Place:
    """The key with the number of the latest table put in below each array of tables that it goes through."""
    place: Place = ()
    for part in key[:-1]:
        place = (*place, part)
        if place in counts:
            place = (*place, counts[place])
    return (*place, *key[-1:])


def _key(text: str) -> Place:
    parts: list[str] = []
    at = 0
    while (found := _PART.match(text, at)) is not None:
        parts.append(next(part for part in found.groups()[:3] if part is not None))
        at = found.end()
        if not found[4]:
            break
    return tuple(parts)


def _statements(text: str) -> Iterator[tuple[str, int]]:
    """Each header or key with its value, and the line it begins on; values may run over several lines."""
    held, first, depth = "", 1, 0
    for number, whole in enumerate(_blanked(text).split("\n"), start=1):
        if not held:
            first = number
        held += whole
        bare = _STRING_OR_COMMENT.sub("", whole)
        depth += sum(bare.count(mark) for mark in "[{") - sum(bare.count(mark) for mark in "]}")
        if depth > 0:
            continue
        if held.strip():
            yield held, first
        held, depth = "", 0


def _blanked(text: str) -> str:
    """The text without comments, and with the insides of many-line strings gone but for their line ends."""

    def blank(found: re.Match[str]) -> str:
        whole = found.group()
        if whole.startswith("#"):
            return ""
        return '""' + "\n" * whole.count("\n") if whole.startswith(('"""', "'''")) else whole

    return _STRING_OR_COMMENT.sub(blank, text)
