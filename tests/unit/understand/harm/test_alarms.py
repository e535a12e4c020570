"""Escapes and spills by rule: none missed, none taken for moving out, and idle talk left alone."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from assistant.contract import Reading
from assistant.understand.harm.alarms import escaped, found, spilled


@pytest.mark.parametrize(
    "text",
    [
        "he is out of the tub !",
        "the ANIMAL 's got out",
        "ENCLOSURE has escaped",
        "he has gone behind the fridge",
        "i can not find him",
        "she slipped out of my hands and got away",
        "the ANIMAL is loose",
    ],
)
def test_an_escape_is_heard(text: str) -> None:
    assert escaped(text, one_waits=False)


@pytest.mark.parametrize(
    "text",
    [
        "he is out",
        "he is out , all three are out",
        "i got him out",
        "i have taken the ANIMAL out",
        "got ENCLOSURE out of the tank",
        "he is out of quarantine",
        "the smell has got out",
        "lost the lid of the bottle",
        "i lost count",
        "the stain came off",
        "he is off his food",
        "can i see him",
    ],
)
def test_what_is_no_escape_is_left_alone(text: str) -> None:
    assert not escaped(text, one_waits=True)


def test_out_of_the_tub_is_an_escape_only_while_one_waits_in_it_or_when_it_is_cried() -> None:
    assert not escaped("he is out of the tub", one_waits=False)
    assert escaped("he is out of the tub", one_waits=True)
    assert escaped("he is out of the tub !", one_waits=False)


def test_found_is_no_question() -> None:
    assert found("i found him")
    assert found("caught the ANIMAL")
    assert not found("have you found him ?")


@pytest.mark.parametrize("text", ["spilled AGENT", "knocked BOTTLE over", "BOTTLE is leaking", "puddle of AGENT"])
def test_a_spill_is_heard(text: str) -> None:
    assert spilled(text)


@pytest.mark.parametrize(
    "text", ["spilled my tea", "do not spill the beans", "dropped off the AGENT", "AGENT on ENCLOSURE"]
)
def test_what_is_no_spill_is_left_alone(text: str) -> None:
    assert not spilled(text)


def test_an_accident_to_an_eye_comes_before_the_spill_that_made_it(ask: Callable[..., Reading]) -> None:
    assert ask("I spilled bleach in my eye").intent == "splash"
    assert ask("I spilled bleach all over my hand").intent == "splash"
    assert ask("the snake escaped and licked the bleach").intent == "splash"
