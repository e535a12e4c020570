"""The reply's JSON: its keys, and how each kind of value is written."""

from __future__ import annotations

import json
from datetime import UTC, date, datetime, timedelta, timezone
from fractions import Fraction

import pytest

from assistant.contract import Outcome, Reply
from assistant.core.facts import Source
from assistant.core.quantities.amounts import Amount
from assistant.shells.json_reply import json_line

KEYS = [
    "question",
    "intent",
    "outcome",
    "say",
    "show",
    "values",
    "missing",
    "cautions",
    "sources",
    "reminders",
    "confidence",
]


def written(**values: object) -> dict[str, object]:
    return json.loads(json_line(Reply("q", "dose", Outcome.ANSWER, "s", "s", values=values)))["values"]


def test_a_reply_is_one_ascii_line_with_all_its_keys_in_order() -> None:
    line = json_line(Reply("quätsch\n", None, Outcome.UNSURE, "say", "two\nlines"))
    assert line.isascii()
    assert "\n" not in line
    reply = json.loads(line)
    assert list(reply) == KEYS
    assert reply["intent"] is None
    assert reply["outcome"] == "unsure"
    assert reply["show"] == "two\nlines"


def test_amounts_are_unrounded_numbers_with_a_unit() -> None:
    assert written(concentrate=Amount(Fraction("1.875"), "mL")) == {"concentrate": {"amount": 1.875, "unit": "mL"}}
    assert written(a=Amount(Fraction(1, 3), "L")) == {"a": {"amount": 1 / 3, "unit": "L"}}


def test_whole_fractions_and_floats_are_whole_numbers() -> None:
    assert json_line(Reply("", None, Outcome.ANSWER, "", "", values={"parts": (Fraction(1), 33.0)})).count("[1, 33]")


def test_nested_values_and_nothing_are_kept() -> None:
    mark = {"tool": "beaker", "amount": Fraction(1, 2), "unit": "mL"}
    assert written(mark=mark, none=None, yes=True) == {"mark": {**mark, "amount": 0.5}, "none": None, "yes": True}


def test_times_carry_their_offset() -> None:
    at = datetime(2026, 1, 5, 9, tzinfo=timezone(timedelta(hours=-5)))
    assert written(expires=at, utc=datetime(2026, 1, 5, tzinfo=UTC), day=date(2026, 1, 5)) == {
        "expires": "2026-01-05T09:00:00-05:00",
        "utc": "2026-01-05T00:00:00+00:00",
        "day": "2026-01-05",
    }


def test_a_source_is_its_id_its_kind_and_its_text() -> None:
    reply = Reply("", "why", Outcome.ANSWER, "", "", sources=(Source("a-b", "published", "words"),))
    assert json.loads(json_line(reply))["sources"] == [{"id": "a-b", "kind": "published", "text": "words"}]


def test_what_is_no_number_is_never_written_as_one() -> None:
    with pytest.raises(ValueError, match="JSON"):
        written(x=float("nan"))
    with pytest.raises(TypeError, match="a reply can't carry a bytes"):
        written(x=b"")
