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
        ("", " the walls twice", "part"),
        ("", " NUMBER", "part"),
        ("", " three sides", "part"),
        ("", " it a bit", "part"),
        ("", " every corner", "own"),
        ("", " all of the tank", "own"),
        ("", " it with half the BOTTLE", "own"),
        ("the vents are ", "", "part"),
        ("my top is ", "", "else"),
        ("", " all of it", "own"),
        ("", " the floor of the ENCLOSURE", "part"),
        ("", " the ANIMAL 's box", "own"),
        ("", " the doorstop", "unknown"),
        ("", " one wall", "part"),
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


@pytest.mark.parametrize(
    "said",
    [
        "rinsed the walls",
        "sprayed the lid with the BOTTLE",
        "put BOTTLE on the lid",
        "sprayed but missed the ceiling",
        "sprayed everything but the ceiling",
        "sprayed , ran dry on the last wall",
        "sprayed but the nozzle clogged halfway",
        "washed with soap but not rinsed",
        "took the dishes out",
    ],
)
def test_a_step_of_a_part_is_doubtful(said: str) -> None:
    claims = claims_in(said)
    assert (claims.polarity, claims.in_part) == ("doubtful", True)


@pytest.mark.parametrize(
    "said",
    [
        "rinsed it",
        "rinsed the tank and the lid",
        "rinsed the lid and everything else",
        "sprayed it all over",
        "dried every corner",
        "took the substrate and the dishes out",
        "washed it with soap and rinsed",
        "rinsed top to bottom",
    ],
)
def test_a_step_of_all_of_it_is_claimed(said: str) -> None:
    assert (claims_in(said).polarity, claims_in(said).in_part) == ("claimed", False)


@pytest.mark.parametrize(
    "said",
    [
        "figured it out",
        "hosed it out",
        "he is out cold",
        "he is out in DURATION",
        "cleared my throat",
        "stripped the bed",
        "emptied the bin",
        "got poo on my glove",
    ],
)
def test_other_things_are_neither_moved_out_nor_cleared(said: str) -> None:
    assert not {"move out", "clear"} & set(claims_in(said).done)
