"""Of what a step is told."""

from __future__ import annotations

import pytest

from assistant.understand.steps.claimed_steps import claims_in
from assistant.understand.steps.of_what import of_what, of_whom


@pytest.mark.parametrize(
    ("before", "after", "told"),
    [
        ("", "", "own"),
        ("", " my glasses", "else"),
        ("", " my nose twice", "else"),
        ("", " the walls twice", "own"),
        ("", " all of it", "own"),
        ("", " the floor of the ENCLOSURE", "own"),
        ("", " the ANIMAL 's box", "own"),
        ("", " the doorstop", "unknown"),
        ("", " one wall", "unknown"),
        ("", " the next one", "else"),
        ("", " with a sponge", "own"),
        ("", " up", "else"),
        ("my wife ", " it", "own"),
        ("i ", " off", "else"),
        ("my throat 's ", "", "else"),
        ("the floor outside is ", "", "else"),
        ("everything is nice and ", "", "own"),
        ("ANIMAL is ", "", "else"),
    ],
)
def test_what_is_cleaned_is_told_from_other_things(before: str, after: str, told: str) -> None:
    assert of_what(before, after) == told


@pytest.mark.parametrize(
    ("moved", "told"),
    [
        ("put him in the tub", "own"),
        ("got the ANIMAL into the tub", "own"),
        ("moved to the tub", "own"),
        ("got some soap in the bucket", "else"),
        ("put the tongs in the tub", "else"),
        ("put noodle in the tub", "unknown"),
    ],
)
def test_only_an_animal_is_moved_out(moved: str, told: str) -> None:
    assert of_whom(moved) == told


def test_a_step_of_an_unknown_thing_is_doubtful() -> None:
    assert claims_in("rinsed the doorstop").polarity == "doubtful"
    assert claims_in("sprayed the doorstop with BOTTLE").polarity == "claimed"
