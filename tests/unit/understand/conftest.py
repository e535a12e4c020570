"""A reader of the tests' household, and a way to ask it."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import UTC, datetime

import pytest

from assistant.contract import Heard, Question, Reading, Talk, World
from assistant.core.facts import Facts
from assistant.core.household import Household
from assistant.store.english import usage
from assistant.store.packaged import packaged_weights
from assistant.understand.reader import Reader

Ask = Callable[..., Reading]

NOW = datetime(2026, 1, 5, 9, tzinfo=UTC)


@pytest.fixture(scope="session")
def reader(household: Household, facts: Facts, questions: Mapping[str, Question]) -> Reader:
    return Reader(household, facts, questions, *packaged_weights(), usage)


@pytest.fixture
def world(household: Household, facts: Facts, questions: Mapping[str, Question], reader: Reader) -> World:
    return World(NOW, household, facts, questions, reader)


@pytest.fixture
def ask(reader: Reader, world: World) -> Ask:
    def read(text: str, talk: Talk | None = None) -> Reading:
        from dataclasses import replace

        return reader(Heard(text), world if talk is None else replace(world, talk=talk))

    return read
