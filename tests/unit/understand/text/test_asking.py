"""What opens a question, and what only begins with the same word and tells."""

from __future__ import annotations

import pytest

from assistant.understand.text.asking import ASKS_FIRST, asks, begins_as_asked


@pytest.mark.parametrize(
    "plain",
    [
        "is it dry",
        "so where does ENCLOSURE go",
        "must it be rinsed",
        "have i filled BOTTLE yet",
        "have the bottles been filled",
        "has ENCLOSURE dried",
        "ok , did it stay wet",
        "if it dried",
    ],
)
def test_what_begins_as_a_question_asks_without_its_sign(plain: str) -> None:
    assert begins_as_asked(plain)
    assert asks(plain)


@pytest.mark.parametrize(
    "plain",
    [
        "have filled BOTTLE",
        "has dried already",
        "had the window open",
        "did a second coat",
        "dry now",
        "whatever , rinsed",
    ],
)
def test_what_leaves_out_who_did_it_tells(plain: str) -> None:
    assert not begins_as_asked(plain)
    assert not asks(plain)
    assert asks(f"{plain} ?")


def test_a_hint_of_a_question_is_any_word_that_one_begins_with() -> None:
    assert {"have", "did", "who", "would"} <= ASKS_FIRST
