"""Small words that stand for numbers, and numbers in an odd dress."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from phrasings.said_as import written

from assistant.contract import Reading

Ask = Callable[..., Reading]


@pytest.mark.parametrize(
    ("said", "mixes", "doubted"),
    [
        ("bleach one two thirty two in the orange bottle", ["1 to 32"], False),
        ("bleach won in thirty two in the orange bottle", ["1 in 32"], True),
        ("bleach one in thirty too in the orange bottle", ["1 in 32"], True),
        ("how much bleach for the orange bottle at one in thirty to", ["1 in 32"], True),
        ("bleach one in for hundred in the orange bottle", ["1 in 400"], True),
        ("bleach one in forty ate in the orange bottle", ["1 in 48"], True),
        ("for percent bleach in the orange bottle", ["4 percent"], True),
        ("how much bleach for the orange bottle at 1/32", ["1:32"], False),
        ("bleech one in ten in the orange bottle", ["1 in 10"], False),
        ("how much bleach for the orange bottle at 1 in 5o", ["1 in 50"], True),
        ("how much bleach for the orange bottle at 1:l5", ["1:15"], True),
        ("how much bleach for the orange bottle at 1 in 5 0", ["1 in 50"], True),
        ("how much bleach for the orange bottle at 1 in 32z", ["1 in 32"], True),
        ("how much bleach for the orange bottle at 0.o5 percent", ["0.05 percent"], True),
        ("bleach one part to thirty two parts water in the orange bottle", ["1 to 32"], False),
    ],
)
def test_a_number_is_heard_behind_a_word_that_sounds_like_it(
    said: str, mixes: list[str], doubted: bool, ask: Ask
) -> None:
    reading = ask(said)
    assert (reading.intent, written(reading.slots, "mixes")) == ("dose", mixes)
    assert reading.slots.choices == ()
    assert bool(reading.doubts) is doubted, "a guess is said back before it counts"


@pytest.mark.parametrize(
    "said",
    [
        "how much bleach for the orange bottle",
        "how much bleach do I need to fill the orange bottle",
        "bleach for the orange bottle at thirty to one",
        "it ate thirty crickets",
        "how much bleach for thirty for the orange bottle",
    ],
)
def test_small_words_stay_what_they_are_elsewhere(said: str, ask: Ask) -> None:
    reading = ask(said)
    assert not reading.doubts


def test_a_couple_of_litres_is_two(ask: Ask) -> None:
    assert written(ask("how much bleach for a couple of litres at 1 in 32").slots, "volumes") == ["2 L"]


def test_a_product_before_a_ratio_is_no_bottle(ask: Ask) -> None:
    reading = ask("bleach one in thirty two for half a litre")
    assert (reading.slots.bottles, written(reading.slots, "volumes")) == ((), ["1/2 L"])
