"""What every test may use: the tests' household, the facts and questions, a moment, and a record in memory."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import UTC, datetime
from pathlib import Path

import pytest

from assistant.contract import Question
from assistant.core.facts import Facts
from assistant.core.household import Household
from assistant.store.keeping import read_household
from assistant.store.log import Log
from assistant.store.packaged import packaged_facts, read_questions


@pytest.fixture(scope="session")
def facts() -> Facts:
    return packaged_facts()


@pytest.fixture(scope="session")
def questions() -> Mapping[str, Question]:
    return read_questions()


@pytest.fixture(scope="session")
def household(facts: Facts) -> Household:
    return read_household(Path(__file__).parent / "household.toml", facts)


@pytest.fixture
def now() -> datetime:
    return datetime(2026, 1, 5, 9, tzinfo=UTC)


@pytest.fixture
def log() -> Iterator[Log]:
    with Log.open(":memory:") as opened:
        yield opened
