"""An animal by its own name: in the tests' household "biscuit" is the corn snake's, and so the east tank's."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from assistant.contract import Reading

Ask = Callable[..., Reading]


@pytest.mark.parametrize(
    "said",
    [
        "I want to swab out biscuit's mouth with something from the blue bottle, is one in forty ok for that",
        "can I dab chlorhexidine on biscuit's burn",
        "what strength for biscuit's mouth rot",
        "how do I clean biscuit's wound with the blue stuff",
    ],
)
def test_a_wish_to_treat_it_is_refused(said: str, ask: Ask) -> None:
    assert ask(said).intent == "wound"


@pytest.mark.parametrize(
    "said",
    [
        "biscuit drank from the bleach bucket",
        "biscuit's licked the bleach off the glass",
        "biscuit has been soaked in bleach",
    ],
)
def test_what_got_at_it_is_harm(said: str, ask: Ask) -> None:
    assert ask(said).intent == "splash"


@pytest.mark.parametrize(
    ("said", "intent"),
    [
        ("can I use chlorhexidine on biscuit's tank", "surface"),
        ("start biscuit with the blue bottle", "start"),
        ("sprayed biscuit's tank with the orange bottle", "done"),
        ("have I sprayed biscuit yet or only washed it", "status"),
    ],
)
def test_its_home_stays_its_home(said: str, intent: str, ask: Ask) -> None:
    assert ask(said).intent == intent
