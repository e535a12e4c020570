"""Every question's test phrasings are read as that question with those slots; what lies near them as none."""

from __future__ import annotations

import tomllib
from collections.abc import Callable, Mapping
from pathlib import Path
from typing import Any

import pytest
from learned import rows_of_harm, rows_of_questions, rows_of_talk
from phrasings.said_as import written

from assistant.contract import Question, Reading
from assistant.store.packaged import packaged_weights
from assistant.understand.matching.learning import fingerprint
from assistant.understand.matching.weights import opened
from assistant.understand.parsing import matched_words, phrasing_words
from assistant.understand.text.words import tokens_of

FOLDER = Path(__file__).parents[2] / "phrasings"


_NO_QUESTIONS = ("never", "mid_job")
"""Files of what must not be read as something."""


def _cases() -> list[tuple[str, dict[str, Any]]]:
    files = sorted(file for file in FOLDER.glob("*.toml") if file.stem not in _NO_QUESTIONS)
    return [(file.stem, case) for file in files for case in tomllib.loads(file.read_text("utf-8"))["phrases"]]


CASES = _cases()
NEVER = [
    case for name in _NO_QUESTIONS for case in tomllib.loads((FOLDER / f"{name}.toml").read_text("utf-8"))["phrases"]
]


@pytest.mark.parametrize("file", sorted({name for name, _ in CASES}))
def test_phrasings_are_read_as_their_question_with_their_slots(file: str, ask: Callable[[str], Reading]) -> None:
    missed: list[str] = []
    wrong: list[str] = []
    cases = [case for name, case in CASES if name == file]
    for case in cases:
        reading = ask(case["said"])
        if file == "near":
            missed += [f"{case['said']}: {reading.intent}"] * (reading.intent is not None)
        elif reading.intent is None:
            missed.append(case["said"])
        elif reading.intent != file:
            wrong.append(f"{case['said']}: {reading.intent}")
        else:
            slots = {field: written(reading.slots, field) for field in case.get("slots", {})}
            assert slots == case.get("slots", {}), case["said"]
    # "Not sure" harms nobody; a share of that is the price of refusing what lies outside.
    assert len(missed) <= max(1, round(0.05 * len(cases))), missed
    assert len(wrong) <= round(0.02 * len(cases)), wrong


def test_of_all_phrasings_the_goal_is_met(ask: Callable[[str], Reading]) -> None:
    inside = [(name, ask(case["said"]).intent) for name, case in CASES if name != "near"]
    right = [name == intent for name, intent in inside]
    wrong = [(name, intent) for name, intent in inside if intent not in (name, None)]
    assert sum(right) >= 0.97 * len(right)
    assert len(wrong) <= 0.01 * len(right), wrong


@pytest.mark.parametrize("case", NEVER, ids=[case["said"] for case in NEVER])
def test_what_would_harm_if_misread_is_never_read_so(case: dict[str, Any], ask: Callable[[str], Reading]) -> None:
    reading = ask(case["said"])
    # A step in doubt is asked about, and recorded only on a "yes".
    assert reading.intent not in case["never"] or (reading.intent in ("done", "rinsed_out") and reading.doubts)
    assert (reading.intent or "") in case.get("is", (reading.intent or "",))


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


def test_every_question_has_sixty_phrasings_and_twenty_five_to_test_it(questions: Mapping[str, Question]) -> None:
    for name, question in questions.items():
        masked = {phrasing_words(text) for text in question.phrasings}
        assert len(masked) >= 60, f"{name}: {len(masked)} phrasings"
        assert sum(1 for file, _ in CASES if file == name) >= 25, f"write tests/phrasings/{name}.toml"


def test_three_hundred_lines_lie_outside() -> None:
    assert sum(1 for file, _ in CASES if file == "near") >= 300


def test_no_test_phrasing_is_trained_on(questions: Mapping[str, Question]) -> None:
    trained = {text.casefold() for question in questions.values() for text in question.phrasings if "{" not in text}
    both = [case["said"] for _, case in CASES if case["said"].casefold() in trained]
    # "Yes", "done holding", "what's next" are too short to be said another way.
    assert all(len(said.split()) <= 8 for said in both), both
    assert len(both) <= len(CASES) / 6, f"{len(both)} of {len(CASES)}"


def test_what_was_learned_is_of_these_phrasings_and_lines() -> None:
    learned_from = (rows_of_questions(), rows_of_harm(), rows_of_talk())
    for rows, content in zip(learned_from, packaged_weights(), strict=True):
        assert fingerprint(rows) == opened(content).trained_on, "run: python tests/bench/train_matcher.py"


def test_a_plain_phrasing_is_read_the_same_as_any_text(questions: Mapping[str, Question]) -> None:
    for question in questions.values():
        for text in question.phrasings:
            assert phrasing_words(text) == matched_words([token.text for token in tokens_of(text)])
