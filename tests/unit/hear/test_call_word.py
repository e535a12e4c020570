"""The call word in what was heard."""

from __future__ import annotations

import pytest

from assistant.contract import Heard, Word
from assistant.hear.call_word import called, syllables, unfit

CALL = "marigold lantern"


def heard(text: str, posterior: float = 1.0, *others: str) -> Heard:
    words = tuple(Word(word, posterior) for word in text.split())
    return Heard(text, spoken=True, alternatives=others, words=words)


def test_what_follows_it_is_what_was_said() -> None:
    found = called(heard("marigold lantern what is next", 0.99, "marigold lantern what's next", "what is text"), CALL)
    assert found is not None
    assert found.sure
    assert found.heard.text == "what is next"
    assert found.heard.alternatives == ("what's next",)
    assert [word.text for word in found.heard.words] == ["what", "is", "next"]


@pytest.mark.parametrize("text", ["", "what is next", "marigold what is next", "lantern marigold", "i like a marigold"])
def test_without_it_nothing_was_said_to_the_tool(text: str) -> None:
    assert called(heard(text), CALL) is None


def test_a_word_or_two_may_come_before_it() -> None:
    found = called(heard("okay marigold lantern undo that"), CALL)
    assert found is not None
    assert found.heard.text == "undo that"


def test_in_the_middle_of_a_story_it_doesnt_count() -> None:
    assert called(heard("we bought a pot and a marigold lantern yesterday"), CALL) is None


def test_alone_it_leaves_nothing() -> None:
    found = called(heard(CALL), CALL)
    assert found is not None
    assert found.heard.text == ""


def test_heard_badly_or_only_in_an_alternative_it_isnt_sure() -> None:
    low, other = (
        called(heard(f"{CALL} undo", 0.5), CALL),
        called(heard("my gold lantern undo", 1.0, f"{CALL} undo"), CALL),
    )
    assert low is not None
    assert other is not None
    assert not low.sure
    assert not other.sure
    assert other.heard.text == "undo"
    assert other.heard.words == (), "its words' posteriors belong to another text"


@pytest.mark.parametrize(
    ("text", "count"), [("marigold lantern", 5), ("bottle", 2), ("rinse", 1), ("tub", 1), ("hey you", 2)]
)
def test_syllables_are_counted(text: str, count: int) -> None:
    assert syllables(text) == count


def test_a_short_one_or_one_like_a_name_is_warned_of() -> None:
    assert unfit(CALL, ("river tank", "yellow bottle")) == ""
    assert "four" in unfit("hey tub", ()) or "4" in unfit("hey tub", ())
    assert "river tanker" in unfit("river tank now", ("river tanker",))
