"""The questions and facts that come with the program: read in order, lazily, and refused by the file's name."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from pathlib import Path

import pytest

from assistant.contract import Question, SlotWanted
from assistant.store.packaged import PackagedFault, packaged_facts, questions_at_hand, read_questions

DOSE = """
name = "dose"
family = "mixing"
about = "how much"
example = "how much for the bottle"
phrasings = ["how much for {bottle}", "how much {agent}"]
[[slot]]
kind = "total"
ask = "For which bottle?"
"""


def asked(folder: Path, text: str, name: str = "dose.toml") -> Mapping[str, Question]:
    (folder / name).write_text(text, encoding="utf-8")
    return read_questions(folder)


def test_a_question_is_one_file(tmp_path: Path) -> None:
    assert asked(tmp_path, DOSE) == {
        "dose": Question(
            "dose",
            "mixing",
            "how much",
            "how much for the bottle",
            ("how much for {bottle}", "how much {agent}"),
            (SlotWanted("total", "For which bottle?"),),
        )
    }


def test_the_questions_at_hand_are_the_same_with_their_phrasings_read_when_looked_at(
    questions: Mapping[str, Question],
) -> None:
    at_hand = questions_at_hand()
    assert list(at_hand) == list(questions)
    for name, question in questions.items():
        assert not isinstance(at_hand[name].phrasings, tuple), f"{name}.toml isn't written so that they can wait"
        assert replace(at_hand[name], phrasings=tuple(at_hand[name].phrasings)) == question


def test_the_packages_own_questions_are_read(questions: Mapping[str, Question]) -> None:
    assert "dose" in questions
    assert list(questions) == sorted(questions)


@pytest.mark.parametrize(
    ("old", "new", "says"),
    [
        ('about = "how much"', "", "no 'about'"),
        ('about = "how much"', 'about = ""', "'about' must be text"),
        ('about = "how much"', 'about = "x"\nexamples = []', "unknown key 'examples'"),
        ('name = "dose"', 'name = "doze"', "its name is 'doze'"),
        ('family = "mixing"', 'family = "mix ing"', "is no module's name"),
        ('phrasings = ["how much for {bottle}", "how much {agent}"]', "phrasings = []", "at least one"),
        ('phrasings = ["how much for {bottle}", "how much {agent}"]', "", "no 'phrasings'"),
        ("{bottle}", "{botle}", "unknown slot in braces"),
        ("{bottle}", "{bottle", "unknown slot in braces"),
        ("how much {agent}", "how much for {bottle}", "phrasing twice"),
        ("[[slot]]", "[slot]", "double brackets"),
        ('ask = "For which bottle?"', "", "'kind' and 'ask'"),
        ('name = "dose"', "name = dose", "not TOML"),
    ],
)
def test_a_broken_question_is_refused_by_its_files_name(tmp_path: Path, old: str, new: str, says: str) -> None:
    assert DOSE.count(old) == 1
    with pytest.raises(PackagedFault) as caught:
        asked(tmp_path, DOSE.replace(old, new))
    assert str(caught.value).startswith("dose.toml: ")
    assert says in str(caught.value)
    assert "\n" not in str(caught.value)


def test_a_topic_is_read_only_when_it_is_asked_for(tmp_path: Path) -> None:
    (tmp_path / "agents.toml").write_text("", encoding="utf-8")
    (tmp_path / "broken.toml").write_text("= 1", encoding="utf-8")
    facts = packaged_facts(tmp_path)
    assert facts.topics == ("agents", "broken")
    assert facts.agents == {}
    with pytest.raises(PackagedFault, match=r"^broken\.toml: not TOML"):
        list(facts.all())
