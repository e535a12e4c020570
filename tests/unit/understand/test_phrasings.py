"""Every question's test phrasings are read as that question with those slots; what lies near them as none."""

from __future__ import annotations

import tomllib
from collections.abc import Callable, Mapping
from pathlib import Path
from typing import Any

import pytest
from phrasings.said_as import written

from assistant.contract import Question, Reading
from assistant.understand.learned import TRAINED_ON
from assistant.understand.matching import rows_of
from assistant.understand.parsing import matched_words, phrasing_words
from assistant.understand.training import fingerprint
from assistant.understand.words import tokens_of

FOLDER = Path(__file__).parents[2] / "phrasings"


def _cases() -> list[tuple[str, dict[str, Any]]]:
    files = sorted(file for file in FOLDER.glob("*.toml") if file.stem != "never")
    return [(file.stem, case) for file in files for case in tomllib.loads(file.read_text("utf-8"))["phrases"]]


CASES = _cases()
NEVER = tomllib.loads((FOLDER / "never.toml").read_text("utf-8"))["phrases"]

MAY_BE_UNSURE = {
    # Said in words that no phrasing has; the tool says that it isn't sure, which harms nobody.
    "what do I measure out for the blue bottle on the small syringe",
    "how does this thing work",
}


@pytest.mark.parametrize(("question", "case"), CASES, ids=[f"{name}: {case['said']}" for name, case in CASES])
def test_a_phrasing_is_read_as_its_question_with_its_slots(
    question: str, case: dict[str, Any], ask: Callable[[str], Reading]
) -> None:
    reading = ask(case["said"])
    if case["said"] in MAY_BE_UNSURE and reading.intent is None:
        return
    assert reading.intent == (None if question == "near" else question)
    for field, expected in case.get("slots", {}).items():
        assert written(reading.slots, field) == expected, field


@pytest.mark.parametrize("case", NEVER, ids=[case["said"] for case in NEVER])
def test_what_would_harm_if_misread_is_never_read_so(case: dict[str, Any], ask: Callable[[str], Reading]) -> None:
    assert ask(case["said"]).intent not in case["never"]


def test_no_unsure_reading_lacks_the_two_nearest_questions(ask: Callable[[str], Reading]) -> None:
    for name, case in CASES:
        if name == "near":
            assert len(ask(case["said"]).nearest) == 2


def test_every_question_has_an_example_that_reads_as_itself(
    questions: Mapping[str, Question], ask: Callable[[str], Reading]
) -> None:
    # Examples speak of an invented household of their own, so that only the question counts here.
    wrong = {name: ask(question.example).intent for name, question in questions.items()}
    assert {name for name, intent in wrong.items() if intent not in (name, None)} == set()


@pytest.mark.parametrize("least", [15])
def test_every_question_has_phrasings_of_its_own_and_enough_test_phrasings(
    questions: Mapping[str, Question], least: int
) -> None:
    for name, question in questions.items():
        assert len(question.phrasings) >= 16, name
        assert sum(1 for file, _ in CASES if file == name) >= least, f"write tests/phrasings/{name}.toml"


def test_no_test_phrasing_is_trained_on(questions: Mapping[str, Question]) -> None:
    trained = {text.casefold() for question in questions.values() for text in question.phrasings if "{" not in text}
    both = [case["said"] for _, case in CASES if case["said"].casefold() in trained]
    # "Yes", "done holding", "what's next" are too short to be said another way.
    assert all(len(said.split()) <= 8 for said in both), both
    assert len(both) <= len(CASES) / 6, f"{len(both)} of {len(CASES)}"


def test_the_learned_weights_are_of_these_phrasings(questions: Mapping[str, Question]) -> None:
    assert fingerprint(rows_of(questions)) == TRAINED_ON, "run: python tests/bench/train_matcher.py"


def test_a_plain_phrasing_is_read_the_same_as_any_text(questions: Mapping[str, Question]) -> None:
    for question in questions.values():
        for text in question.phrasings:
            assert phrasing_words(text) == matched_words([token.text for token in tokens_of(text)])
