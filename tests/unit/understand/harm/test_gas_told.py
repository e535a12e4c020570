"""Gas told in few words, on masked texts."""

from __future__ import annotations

import pytest

from assistant.understand.harm.gas_told import gas_told
from assistant.understand.harm.no_harm import on_nothing_here


@pytest.mark.parametrize(
    "text",
    [
        "gas !",
        "there is gas",
        "oh no i made chlorine gas",
        "the room is full of gas",
        "i smell gas",
        "it is hissing",
        "it bubbles and stinks",
        "i mixed something and it smokes",
    ],
)
def test_gas_in_few_words_is_told(text: str) -> None:
    assert gas_told(text)


@pytest.mark.parametrize(
    "text",
    [
        "no gas",
        "is there gas ?",
        "does AGENT make gas",
        "the gas man is here",
        "the gas stove is on",
        "it bubbles",
        "if it makes gas",
        "there is gas in the stove",
    ],
)
def test_what_is_asked_denied_or_another_gas_is_not(text: str) -> None:
    assert not gas_told(text)


@pytest.mark.parametrize(
    ("text", "elsewhere"),
    [
        ("i used AGENT on the bowl", True),
        ("wiped the kitchen with AGENT this morning", True),
        ("wiped the front outside with the BOTTLE", True),
        ("wiped the front with AGENT", False),
        ("i used AGENT on the floor", False),
        ("i used AGENT on the bowl and the glass", False),
    ],
)
def test_a_product_on_something_else_did_not_touch_the_enclosure(text: str, elsewhere: bool) -> None:
    assert on_nothing_here(text) is elsewhere
