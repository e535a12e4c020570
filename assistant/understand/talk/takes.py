"""What a question takes, by its file: which slots its phrasings hold, and whether it records anything.

Follow-ups go by this, so that a new question has them from its file alone: "and for the blue one?" asks again whatever
takes a bottle, as long as asking again records nothing.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import fields
from functools import lru_cache
from typing import Any

from assistant.contract import Question, Slots
from assistant.understand.parsing import phrasing_words
from assistant.understand.text.patterns import Pattern

_FIELDS_OF: Mapping[str, tuple[str, ...]] = {
    "mix": ("mixes",),
    "animal": ("enclosures", "every_enclosure"),
    "enclosure": ("enclosures", "every_enclosure"),
    "bottle": ("bottles", "stocks", "agents", "choices"),
    "stock": ("stocks", "agents", "bottles"),
    "agent": ("agents", "stocks", "bottles"),
    "volume": ("volumes", "bottles", "roles", "numbers"),
    "stock_strength": ("stock_strength",),
    "step": ("steps",),
    "when": ("when",),
}
"""Slots that each kind in braces fills, where it isn't simply the kind's plural."""

_NEVER_GIVEN = frozenset(
    {
        "choices",
        "unknown",
        "faulty",
        "met",
        "victim",
        "found",
        "restart",
        "of_illness",
        "tested",
        "got_out",
        "confirmed",
        "touched",
        "remark",
        "stayed_wet",
        "too_early",
        "beside",
    }
    | {"each"}
    | {"part", "smell", "wet", "start_over", "steps"}
)
"""Slots that tell of an event, or of trouble with reading, and are never put into another question."""
_PLURAL = ("duration", "temperature", "number", "measure", "organism", "material", "item", "chore", "group", "rack")
_OF_A_KIND = frozenset(f"{kind}s" for kind in _PLURAL) | {name for names in _FIELDS_OF.values() for name in names}
"""Slots that a kind in braces fills; a short turn gives them only to a question with that kind."""
_THINGS = ("{material}", "{item}")
"""Kinds that phrasings mostly name by their own words: "glass", "bowl"."""
_EMPTY = Slots()
_SLOT = Pattern(r"\{(\w+)\}")


@lru_cache(maxsize=256)
def kinds_of(question: Question) -> frozenset[str]:
    """The kinds of slot that a question's phrasings hold, or that it asks for when they are missing."""
    held = {kind for text in question.phrasings for kind in _SLOT.findall(text)}
    held |= {word[1:-1] for text in question.phrasings for word in phrasing_words(text) if word in _THINGS}
    return frozenset(held | {slot.kind for slot in question.slots})


@lru_cache(maxsize=256)
def _fields_of(question: Question) -> frozenset[str]:
    return frozenset(field for kind in kinds_of(question) for field in _FIELDS_OF.get(kind, (kind, f"{kind}s")))


def asks_only(question: Question | None) -> bool:
    """True when asking again records nothing, so that a changed word may simply ask it again."""
    return question is not None and not question.records


def all_given(slots: Slots) -> dict[str, Any]:
    """Whatever a short turn names that may be put into another question."""
    return {name: value for name in _GIVEN if (value := getattr(slots, name)) != getattr(_EMPTY, name)}


def given_to(question: Question, slots: Slots) -> dict[str, Any]:
    """Of what a short turn names, the slots that the question takes; and those that belong to no kind in braces."""
    taken = _fields_of(question)
    return {name: value for name, value in all_given(slots).items() if name not in _OF_A_KIND or name in taken}


_GIVEN = tuple(field.name for field in fields(Slots) if field.name not in _NEVER_GIVEN)
