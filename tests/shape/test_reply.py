"""Every reply keeps the contract: the values that its question promises, and lines that a voice can read.

Each question's test phrasings are put to the tool in the tests' household, first with nothing on record, then in the
middle of a clean, so that every branch that the phrasings reach is looked at.
"""

from __future__ import annotations

import json
import re
import tomllib
from collections.abc import Mapping
from dataclasses import replace
from datetime import datetime, timedelta
from functools import cache
from pathlib import Path

import pytest
from tool import Tool

from assistant.contract import Heard, Question, Reply, World
from assistant.core.facts import Facts
from assistant.core.household import Household
from assistant.shells.json_reply import json_line
from assistant.store.english import usage
from assistant.store.packaged import packaged_weights
from assistant.turn import take_turn
from assistant.understand.reader import Reader

PHRASINGS = Path(__file__).parents[1] / "phrasings"
QUESTIONS = sorted(path.stem for path in PHRASINGS.glob("*.toml") if path.stem not in ("near", "never"))

PROMISED = {
    "dose": "concentrate water total strength_percent strength_ppm parts reading mark strength_low strength_high",
    "mix_strength": "strength_percent strength_ppm parts",
    "top_up": "concentrate water",
    "make_up": "solution area bottles",
    "convert": "amount",
    "read_ratio": "parts reading as_in as_to",
    "bleach_now": "strength_percent fraction_left",
    "measure_with": "tool mark error_percent",
    "works_on": "minutes strength_percent verdict",
    "together": "verdict",
    "share_tool": "verdict",
    "done": "recorded",
    "hold_time": "minutes",
    "time_left": "seconds timers",
    "dry_time": "minutes rewets",
    "air_time": "minutes air_changes air_changes_per_hour",
    "still_smells": "smell wet",
    "return_check": "ready blocked_by earliest claim",
    "still_good": "ready expires",
    "stock_left": "fills_left runs_out",
}
"""The values that are always there when a question is answered; null where they can't be known."""

PLAIN_NUMBER = ("seconds", "minutes", "_percent", "_ppm", "fraction_left", "bottles", "air_changes", "fills_left")
"""Endings of keys whose value is a bare number."""

MOST_WORDS = 25
UNREADABLE = re.compile(r"[%/°²³×≈*_{}<>|+=]|\d:\d|\b(?:mL|ppm|min|h)\b")


@cache
def said(question: str) -> tuple[str, ...]:
    return tuple(case["said"] for case in tomllib.loads((PHRASINGS / f"{question}.toml").read_text("utf-8"))["phrases"])


@pytest.fixture(scope="module")
def worlds(household: Household, facts: Facts, questions: Mapping[str, Question]) -> tuple[World, ...]:
    """The same household twice: nothing on record, and three minutes into a wet time of the east tank."""
    tool = Tool(household)
    tool.say("start", enclosures=("east tank",), bottles=("orange bottle",))
    for step in ("move out", "clear", "wash", "apply"):
        tool.say("done", enclosures=("east tank",), steps=(step,))
        tool.now += timedelta(minutes=1)
    tool.now += timedelta(minutes=2)
    reader = Reader(household, facts, questions, *packaged_weights(), usage)
    before = World(datetime(2026, 5, 1, 8, tzinfo=tool.now.tzinfo), household, facts, questions, reader)
    return before, replace(before, now=tool.now, state=tool.state)


def replies(question: str, worlds: tuple[World, ...]) -> list[Reply]:
    return [take_turn(Heard(text), world).reply for world in worlds for text in said(question)]


@pytest.mark.parametrize("question", QUESTIONS)
def test_a_reply_keeps_the_contract(question: str, worlds: tuple[World, ...]) -> None:
    for reply in replies(question, worlds):
        as_json = json.loads(json_line(reply))
        assert len(reply.say.split()) <= MOST_WORDS, reply.say
        assert reply.say.strip(), reply.question
        assert reply.show.strip(), reply.question
        assert not UNREADABLE.search(reply.say), reply.say
        assert 0 <= reply.confidence <= 1
        assert all(source["text"] and source["kind"] for source in as_json["sources"]), reply.question
        if reply.outcome == "ask":
            assert reply.missing, f"{reply.question}: asks, but doesn't say what is missing"
        if reply.outcome == "answer" and reply.intent in PROMISED:
            lacking = set(PROMISED[reply.intent].split()) - set(as_json["values"])
            assert not lacking, f"{reply.question} ({reply.say}): {lacking}"
        for key, value in as_json["values"].items():
            if key.endswith(PLAIN_NUMBER) and key != "earliest":
                assert value is None or isinstance(value, (int, float)), f"{reply.question}: {key}"


@pytest.mark.parametrize("question", sorted(set(PROMISED) & set(QUESTIONS)))
def test_a_question_with_promised_values_is_answered_somewhere(question: str, worlds: tuple[World, ...]) -> None:
    assert any(reply.outcome == "answer" and reply.intent == question for reply in replies(question, worlds))
