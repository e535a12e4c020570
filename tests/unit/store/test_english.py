"""The word list of pyspellchecker is found, and is what keeps English words from being mended."""

from __future__ import annotations

import pytest
from talk import Talk

from assistant.store.english import usage
from assistant.understand.text.english_words import RARE, spelled_right


def test_a_common_word_is_met_often_a_rare_one_hardly_and_a_slip_never() -> None:
    assert usage("guitar") > RARE
    assert usage("vivarium") == RARE
    assert usage("sprayd") == 0


@pytest.mark.parametrize("word", ["medal", "various", "mustard", "crouched", "vivarium", "colour", "hognose"])
def test_an_english_word_is_right(word: str) -> None:
    assert spelled_right(word, usage)


@pytest.mark.parametrize("word", ["sprayd", "bleech", "taht", "botel"])
def test_a_slip_is_not(word: str) -> None:
    assert not spelled_right(word, usage)


def test_no_cry_is_made_of_an_english_word() -> None:
    assert Talk().tell("my knees are screaming crouched under here, is it nearly up?").intent == "time_left"
