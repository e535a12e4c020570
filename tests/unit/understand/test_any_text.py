"""No text, however odd, stops the reader or is taken for a yes."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from assistant.contract import Reading

SAID = """
the bleach orange bottle east tank rinsed not have i it dry sprayed at one in thirty two 500 ml ML percent ? , !
his burn eye my can he go back both no yes and for how much long 9**9 1/0 -5 : + tub holding done what 's again undo
"""
WORDS = st.sampled_from(SAID.split())
CHECKS = [HealthCheck.function_scoped_fixture]

ODD = ["", " ", "?", "...", "9**9**9 mL", "🐍", "a" * 5000, "water " * 500, "\x00"]


@given(st.lists(WORDS, max_size=14).map(" ".join) | st.text(max_size=80))
@settings(derandomize=True, max_examples=400, deadline=None, suppress_health_check=CHECKS)
def test_every_text_gets_a_reading(ask: Callable[[str], Reading], text: str) -> None:
    reading = ask(text)
    assert 0 <= reading.confidence <= 1
    assert reading.intent is not None or len(reading.nearest) == 2


@pytest.mark.parametrize("text", ODD)
def test_odd_texts_are_no_question(ask: Callable[[str], Reading], text: str) -> None:
    assert ask(text).intent is None


def test_a_long_run_of_ratios_is_asked_back_or_no_question(ask: Callable[[str], Reading]) -> None:
    assert ask("1 in " * 200).intent in (None, "dose", "read_ratio")


@pytest.mark.parametrize("text", ["it was on the", "I said what I said", "it is the", "is it"])
def test_half_a_sentence_is_no_yes_or_no(ask: Callable[[str], Reading], text: str) -> None:
    assert ask(text).intent not in ("yes", "no")
