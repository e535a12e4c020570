"""Writing to keeping.toml: what is added is added, and every other line, comments too, stays as the keeper wrote it.

Each change starts from the file as it is at that moment, is checked as a whole by the same reader that every command
uses, and takes the file's place in one step: a fault or a crash leaves the old file.
"""

from __future__ import annotations

import os
import tempfile
import tomllib
from collections.abc import Callable, Mapping
from contextlib import suppress
from copy import deepcopy
from pathlib import Path
from typing import Any

import tomlkit
from tomlkit.container import Container
from tomlkit.items import AbstractTable, AoT, Comment, InlineTable, Table, Whitespace

from assistant.core.facts import Facts
from assistant.core.household import Household
from assistant.store.keeping import KeepingFault, household_of, text_of
from assistant.store.packaged import packaged_facts

Content = dict[str, Any]


class NotWritten(KeepingFault):
    """The file itself can't be changed, whatever would be put in."""


_Trivia = list[Comment | Whitespace]


class KeepingFile:
    """One keeping.toml, changed a little at a time. Every method fails with KeepingFault."""

    def __init__(self, path: Path, facts: Facts | None = None) -> None:
        self.path = path
        self._facts = facts or packaged_facts()

    def household(self) -> Household:
        """What it says now; an empty household when there is no such file."""
        return household_of(self._text(), self.path, self._facts)

    def content(self) -> Content:
        """Its tables as TOML has them."""
        text = self._text()
        household_of(text, self.path, self._facts)
        return tomllib.loads(text)

    def set(self, kind: str, values: Mapping[str, Any]) -> None:
        """Sets keys of a table that stands once: room, habits, people."""

        def plain(content: Content) -> None:
            content.setdefault(kind, {}).update(values)

        def in_file(document: tomlkit.TOMLDocument) -> None:
            if kind not in document:
                _append_table(document, kind, tomlkit.table())
            _set_keys(document[kind], values)

        self._change(plain, in_file)

    def keep(self, kind: str, values: Mapping[str, Any]) -> None:
        """Sets keys of the thing of that name, which is added when there is none: measure, stock, bottle, enclosure.

        values: with its `name`.
        """

        def plain(content: Content) -> None:
            things = content.setdefault(kind, [])
            at = _place(things, values["name"])
            if at is None:
                things.append(dict(values))
            else:
                things[at].update(values)

        def in_file(document: tomlkit.TOMLDocument) -> None:
            at = _place(document.get(kind, []), values["name"])
            if at is None:
                _add_thing(document, kind, values)
            else:
                _set_keys(document[kind][at], values)

        self._change(plain, in_file)

    def forget(self, kind: str, keys: tuple[str, ...], name: str | None = None) -> None:
        """Takes keys out again, of a table or of the thing of that name."""

        def take_out(content: Any) -> None:
            table = content[kind] if name is None else content[kind][_place(content[kind], name)]
            for key in keys:
                table.pop(key, None)

        self._change(take_out, take_out)

    def drop(self, kind: str, name: str) -> None:
        """Takes a thing out again as a whole."""

        def plain(content: Content) -> None:
            del content[kind][_place(content[kind], name)]
            if not content[kind]:
                del content[kind]

        def in_file(document: tomlkit.TOMLDocument) -> None:
            at = _place(document[kind], name)
            del document[kind][at]
            if not document[kind]:
                del document[kind]

        self._change(plain, in_file)

    # ------------------------------------------------------------ inside

    def _text(self) -> str:
        return text_of(self.path) or ""

    def _change(self, plain: Callable[[Content], None], in_file: Callable[[tomlkit.TOMLDocument], None]) -> None:
        text = self._text()
        household_of(text, self.path, self._facts)
        wanted = tomllib.loads(text)
        plain(wanted)
        try:
            document = tomlkit.parse(text)
            in_file(document)
            new = tomlkit.dumps(document)
            kept = tomllib.loads(new) == wanted
        except (tomlkit.exceptions.TOMLKitError, tomllib.TOMLDecodeError, KeyError, TypeError, ValueError):
            kept = False
        if not kept:
            raise NotWritten(
                self.path, None, "it is laid out so that nothing can be added here", "add this line to it yourself"
            )
        household_of(new, self.path, self._facts)
        self._write(new)

    def _write(self, text: str) -> None:
        """In the file's place in one step, with the line ends and the rights that the old one had."""
        target = self.path.resolve()  # a link stays one
        try:
            old = target.read_bytes() if target.exists() else b""
            if b"\r\n" in old:
                text = text.replace("\n", "\r\n")
            mark = b"\xef\xbb\xbf" if old.startswith(b"\xef\xbb\xbf") else b""
            put_file(target, mark + text.encode("utf-8"))
        except OSError as error:
            why = (error.strerror or "it can't be written").lower()
            raise NotWritten(
                self.path, None, f"can't be written: {why}", "nothing was changed; make the folder writable"
            ) from error


def put_file(target: Path, content: bytes) -> None:
    """Writes a file so that a crash leaves either the old one or the new one.

    Fails: OSError.
    """
    number, name = tempfile.mkstemp(prefix=f".{target.name}-", dir=target.parent)
    part = Path(name)
    try:
        with open(number, "wb") as out:
            out.write(content)
            out.flush()
            os.fsync(out.fileno())
        if target.exists():
            part.chmod(target.stat().st_mode & 0o7777)
        part.replace(target)
    except BaseException:
        with suppress(OSError):
            part.unlink()
        raise


def _place(things: Any, name: str) -> int | None:
    return next((at for at, thing in enumerate(things) if " ".join(str(thing.get("name")).split()) == name), None)


def _add_thing(document: tomlkit.TOMLDocument, kind: str, values: Mapping[str, Any]) -> None:
    things = document.get(kind)
    if things is not None and not isinstance(things, AoT):
        inline = tomlkit.inline_table()
        inline.update(values)
        things.append(inline)
        return
    table = tomlkit.table()
    for key, value in values.items():
        table.add(key, deepcopy(value))
    if things is None:
        things = tomlkit.aot()
        things.append(table)
        _append_table(document, kind, things)
        return
    after = _cut_off(things[-1].value)
    things[-1].value.add(tomlkit.nl())
    things.append(table)
    for item in after:
        table.value.add(item)


def _append_table(document: tomlkit.TOMLDocument, kind: str, table: Table | AoT) -> None:
    if document.as_string().strip():
        document.add(tomlkit.nl())
    document.append(kind, table)


def _set_keys(table: Any, values: Mapping[str, Any]) -> None:
    new = [key for key in values if key not in table]
    after = _cut_off(table.value) if new and isinstance(table, AbstractTable) else []
    if isinstance(table, InlineTable):
        after = []
    for key, value in values.items():
        if key in new or table[key] != value:
            table[key] = deepcopy(value)
    for item in after:
        table.value.add(item)


def _cut_off(container: Container) -> _Trivia:
    """Takes off what follows a table's last key after a blank line: it speaks of the table that comes next."""
    body = container.body
    begin = len(body)
    while begin and body[begin - 1][0] is None and isinstance(body[begin - 1][1], Comment | Whitespace):
        begin -= 1
    blank = next((at for at in range(begin, len(body)) if isinstance(body[at][1], Whitespace)), None)
    if blank is None:
        return []
    after = [item for _, item in body[blank:] if isinstance(item, Comment | Whitespace)]
    del body[blank:]
    return after
