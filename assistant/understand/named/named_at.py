"""The words of a masked text, each mask with what stands behind it."""

from __future__ import annotations

from collections.abc import Iterator

from assistant.understand.named.names import Mention
from assistant.understand.parsing import SOAPS, Parsed

MASKS = frozenset({"AGENT", "STOCK", "BOTTLE", "ENCLOSURE", "ANIMAL", "MEASURE", "ORGANISM"})
"""Words that stand for a name."""


def named_at(parsed: Parsed) -> Iterator[tuple[str, Mention | None]]:
    """Each word of the masked text, and what a mask stands for; soap is a mention that stays a word."""
    mentions = iter([mention for mention in parsed.mentions if mention.said not in SOAPS])
    for word in parsed.plain.split():
        yield word, next(mentions, None) if word in MASKS else None
