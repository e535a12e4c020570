"""Every question has its file, its handler, its wordings and its phrasings; help and the README tell the same."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from shape.remake_question_table import question_table

from assistant.answer import handler_of
from assistant.core.harms import ANSWERED_AT_ONCE, HARMS, KEEPS_WAITING, OF_SOMETHING_ELSE
from assistant.say.wording import FAMILIES, lines_of
from assistant.store.packaged import read_questions

ROOT = Path(__file__).parents[2]
QUESTIONS = read_questions()


@pytest.mark.parametrize("name", sorted(QUESTIONS))
def test_a_question_has_a_handler(name: str) -> None:
    assert callable(handler_of(QUESTIONS[name].family, name))


@pytest.mark.parametrize("name", sorted(QUESTIONS))
def test_a_question_has_an_example_and_phrasings(name: str) -> None:
    question = QUESTIONS[name]
    assert question.about
    assert question.example
    assert len(question.phrasings) >= 10
    assert len(set(question.phrasings)) == len(question.phrasings)


@pytest.mark.parametrize("name", sorted(QUESTIONS))
def test_a_question_has_unseen_phrasings_to_test_it(name: str) -> None:
    assert (ROOT / "tests" / "phrasings" / f"{name}.toml").exists()


def test_every_message_of_an_answer_has_a_wording_and_every_wording_is_used() -> None:
    message = re.compile(rf'"((?:{"|".join(FAMILIES)})\.[a-z_]+)"')
    used = {
        found
        for path in sorted((ROOT / "assistant" / "answer").rglob("*.py"))
        for found in message.findall(path.read_text(encoding="utf-8"))
    }
    worded = {name for family in FAMILIES for name in lines_of(family)}
    assert used - worded == set(), "no wording"
    assert worded - used == set(), "never said"


def test_the_readme_lists_every_question() -> None:
    assert question_table() in (ROOT / "README.md").read_text(encoding="utf-8")


def test_what_is_named_as_harm_are_questions() -> None:
    assert {*HARMS, *ANSWERED_AT_ONCE, *KEEPS_WAITING, *OF_SOMETHING_ELSE} <= set(QUESTIONS)
