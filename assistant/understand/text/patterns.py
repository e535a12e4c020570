"""A pattern that is compiled when it is first needed.

Compiling all the rules' patterns takes longer than answering; most texts need few of them. Hints make that so: a text
that holds none of them can't match, and isn't tried.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator
from functools import cached_property


class Pattern:
    """A regular expression with the bits of text without one of which it can't match; no hints: it is always tried."""

    def __init__(self, source: str, *hints: str) -> None:
        self.source = self.pattern = source
        self._hints = hints

    @cached_property
    def _compiled(self) -> re.Pattern[str]:
        return re.compile(self.source)

    def may_match(self, text: str) -> bool:
        """False when a text holds none of the hints."""
        return not self._hints or any(hint in text for hint in self._hints)

    def search(self, text: str) -> re.Match[str] | None:
        """As re's."""
        return self._compiled.search(text) if self.may_match(text) else None

    def match(self, text: str) -> re.Match[str] | None:
        """As re's."""
        return self._compiled.match(text) if self.may_match(text) else None

    def fullmatch(self, text: str) -> re.Match[str] | None:
        """As re's."""
        return self._compiled.fullmatch(text) if self.may_match(text) else None

    def findall(self, text: str) -> list[str]:
        """As re's, of a pattern with one group at most."""
        return self._compiled.findall(text) if self.may_match(text) else []

    def finditer(self, text: str) -> Iterator[re.Match[str]]:
        """As re's."""
        return self._compiled.finditer(text) if self.may_match(text) else iter(())

    def sub(self, new: str | Callable[[re.Match[str]], str], text: str) -> str:
        """As re's."""
        return self._compiled.sub(new, text) if self.may_match(text) else text

    def split(self, text: str) -> list[str]:
        """As re's."""
        return [part for part in self._compiled.split(text) if part is not None] if self.may_match(text) else [text]


def any_of(words: Iterable[str]) -> str:
    """Any of these, as alternatives in a group; the longer first, so that none is cut short by its beginning."""
    return f"(?:{'|'.join(sorted(words, key=lambda word: (-len(word), word)))})"


def words_in(*patterns: Pattern) -> frozenset[str]:
    """Every word that these turn on."""
    return frozenset(word for pattern in patterns for word in re.findall(r"(?<!\\)[a-z]{3,}", pattern.source))
