"""A text by its clauses, each with the names that stand in it."""

from __future__ import annotations

from collections.abc import Iterator

from assistant.understand.named.named_at import named_at
from assistant.understand.named.names import Mention
from assistant.understand.parsing import Parsed


def named_in_clauses(
    parsed: Parsed, ends: frozenset[str], wanted: frozenset[str]
) -> Iterator[tuple[str, list[Mention]]]:
    """Each clause, masked, with the mentions in it that are of a wanted kind.

    ends: words and signs that a clause ends at. wanted: masks, as "BOTTLE".
    """
    words: list[str] = []
    mentions: list[Mention] = []
    for word, mention in named_at(parsed):
        if word in ends:
            yield " ".join(words), mentions
            words, mentions = [], []
            continue
        words.append(word)
        if mention is not None and word in wanted:
            mentions.append(mention)
    yield " ".join(words), mentions
