"""A reply as one line of JSON: the contract for scripts. Its keys and forms are fixed; see DEVELOPERS.md."""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import fields, is_dataclass
from datetime import date
from enum import Enum
from fractions import Fraction
from typing import Any

from assistant.contract import Reply
from assistant.core.quantities.amounts import Amount


def json_line(reply: Reply) -> str:
    """The reply as one line without its line end; plain ASCII, so that no terminal's encoding can break it."""
    return json.dumps(
        {
            "question": reply.question,
            "intent": reply.intent,
            "outcome": reply.outcome.value,
            "say": reply.say,
            "show": reply.show,
            "values": _plain(reply.values),
            "missing": _plain(reply.missing),
            "cautions": _plain(reply.cautions),
            "sources": _plain(reply.sources),
            "reminders": _plain(reply.reminders),
            "confidence": _plain(reply.confidence),
        },
        allow_nan=False,
    )


def _plain(value: Any) -> Any:
    """Amounts as {amount, unit}, fractions as numbers, times with their offset, everything else as JSON has it."""
    if value is None or (isinstance(value, bool | int | str) and not isinstance(value, Enum)):
        return value
    if isinstance(value, float):
        return int(value) if value.is_integer() else value
    if isinstance(value, Fraction):
        return value.numerator if value.denominator == 1 else float(value)
    if isinstance(value, Enum):
        return value.value
    if isinstance(value, Amount):
        return {"amount": _plain(value.amount), "unit": value.unit}
    if isinstance(value, date):  # a datetime is one too
        return value.isoformat()
    if isinstance(value, Mapping):
        return {str(key): _plain(inner) for key, inner in value.items()}
    if isinstance(value, list | tuple | set | frozenset):
        return [_plain(inner) for inner in value]
    if is_dataclass(value) and not isinstance(value, type):
        return {field.name: _plain(getattr(value, field.name)) for field in fields(value)}
    raise TypeError(f"a reply can't carry a {type(value).__name__}")
