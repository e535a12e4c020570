"""Short talks on the demo household: each turn's intent and outcome, and those of its values that are fixed."""

from __future__ import annotations

import json
import re
import tomllib
from collections.abc import Callable, Mapping
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest

from assistant.contract import Heard, Question
from assistant.core.facts import Facts
from assistant.shells.json_reply import json_line
from assistant.shells.sitting import Sitting
from assistant.store.english import usage
from assistant.store.keeping import read_household
from assistant.store.log import Log
from assistant.store.packaged import packaged_weights
from assistant.understand.reader import Reader

HERE = Path(__file__).parent
KEEPING = HERE.parents[1] / "assistant" / "demo" / "keeping.toml"
BEGIN = datetime(2026, 1, 5, 9, tzinfo=UTC)
A_TURN = timedelta(seconds=3)
SECONDS = {"s": 1, "m": 60, "h": 3600, "d": 86400}
DIALOGUES = [
    pytest.param(dialogue["turns"], id=f"{path.stem}: {dialogue['about']}")
    for path in sorted(HERE.glob("*.toml"))
    for dialogue in tomllib.loads(path.read_text(encoding="utf-8"))["dialogue"]
]


Talk = Callable[[Log], Sitting]


@pytest.fixture(scope="module")
def talk(facts: Facts, questions: Mapping[str, Question]) -> Talk:
    household = read_household(KEEPING, facts)
    reader = Reader(household, facts, questions, *packaged_weights(), usage)
    return lambda log: Sitting(log, household, facts, questions, reader)


def wait_of(said: str) -> timedelta:
    return timedelta(seconds=sum(int(many) * SECONDS[unit] for many, unit in re.findall(r"(\d+)([smhd])", said)))


def value_at(values: Any, path: str) -> Any:
    for key in path.split("."):
        values = values[int(key)] if isinstance(values, list) else values[key]
    return values


@pytest.mark.parametrize("turns", DIALOGUES)
def test_a_talk_goes_on_as_it_should(turns: list[dict[str, Any]], talk: Talk) -> None:
    now = BEGIN
    with Log.open(":memory:") as log:
        sitting = talk(log)
        for turn in turns:
            now += A_TURN + wait_of(turn.get("wait", ""))
            reply = json.loads(json_line(sitting.hear(Heard(turn["said"]), now)))
            told = f"{turn['said']!r}: [{reply['intent']}, {reply['outcome']}] {reply['say']}"
            wanted = turn.get("intent", reply["intent"])  # none given: what follows tells that nothing was taken of it
            intent = None if wanted == "unsure" else wanted
            assert reply["intent"] == intent or (intent is None and reply["outcome"] == "unsure"), told
            if "outcome" in turn:
                assert reply["outcome"] == turn["outcome"], told
            assert turn.get("says", "") in reply["say"], told
            assert turn.get("shows", "") in reply["show"], f"{told}\n{reply['show']}"
            for path, expected in turn.get("values", {}).items():
                found = value_at(reply["values"], path)
                assert found == (pytest.approx(expected) if isinstance(expected, float) else expected), told
