"""What is said on an awkward day, and must not be taken for what it is near."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from assistant.contract import Reading
from assistant.understand.air.openings import openings_in
from assistant.understand.harm import alarms
from assistant.understand.harm.alarms import neutralises
from assistant.understand.harm.cries import cry_in
from assistant.understand.named.illness_told import restart_in
from assistant.understand.steps.claimed_steps import claims_in
from assistant.understand.steps.stayed_wet import cannot_tell


@pytest.mark.parametrize(
    "said",
    [
        "it was dark , i could not see if it stayed wet",
        "i do not know whether it stayed wet",
        "no idea , i was not there",
        "i fell asleep",
        "not sure it stayed wet",
    ],
)
def test_what_nobody_saw_wet_is_not_vouched_for(said: str) -> None:
    assert cannot_tell(said)
    assert claims_in(said).stayed_wet is None
    assert "hold" not in claims_in(said).done


@pytest.mark.parametrize("said", ["it stayed wet", "yes it was wet", "it was wet the whole time"])
def test_what_was_seen_wet_is(said: str) -> None:
    assert claims_in(said).stayed_wet is True


@pytest.mark.parametrize(
    ("said", "openings"),
    [
        ("no windows open , it is freezing outside", 0),
        ("the windows are not open", 0),
        ("i did not open the window", 0),
        ("nothing is open", 0),
        ("two windows open", 2),
        ("the window is open", 1),
    ],
)
def test_no_window_open_is_none(said: str, openings: int) -> None:
    assert openings_in(said) == openings


@pytest.mark.parametrize("said", ["got it on her hand", "AGENT on his fingers", "a boy touched the wet glass"])
def test_a_hand_is_a_persons(said: str) -> None:
    cry = cry_in(said)
    assert cry is not None
    assert (cry.place, cry.victim) == ("skin", "person")


def test_eyes_that_sting_with_a_cough_are_fumes_and_a_splash_is_not() -> None:
    fumes, splash = cry_in("my eyes are stinging and i am coughing"), cry_in("AGENT in my eye and i am coughing")
    assert fumes is not None
    assert fumes.place == "lungs"
    assert splash is not None
    assert splash.place == "eye"


def test_a_hook_from_one_to_another_is_no_wound() -> None:
    assert cry_in("can i use her hook on the ANIMAL") is None
    cut = cry_in("can i use the AGENT hook on the ANIMAL 's cut")
    assert cut is not None
    assert cut.intent == "wound"


@pytest.mark.parametrize("said", ["got her !", "there he is", "he is back in the tub", "found him"])
def test_a_catch_is_a_find(said: str) -> None:
    assert alarms.found(said)


@pytest.mark.parametrize("said", ["got it", "got them out", "where is she", "got her ?"])
def test_what_is_no_catch_is_none(said: str) -> None:
    assert not alarms.found(said)


@pytest.mark.parametrize(
    ("said", "why"),
    [
        ("a new snake came today", "newcomer"),
        ("got another gecko", "newcomer"),
        ("does the quarantine start again", "newcomer"),
        ("she tested positive , does it start over", "test"),
        ("he is sick , start it again", "sign"),
        ("when is the new one out of quarantine", None),
        ("how long is quarantine", None),
    ],
)
def test_what_starts_a_quarantine_again(said: str, why: str | None) -> None:
    assert restart_in(said) == why


def test_only_what_is_put_onto_a_spill_neutralises() -> None:
    assert neutralises("can i put AGENT on it to neutralise it")
    assert neutralises("can i pour AGENT on the spill")
    assert not neutralises("i spilled AGENT on the floor")


def test_a_branch_that_is_rinsed_and_dry_is_no_rinsed_tank(ask: Callable[[str], Reading]) -> None:
    reading = ask("can I bake the branch, it's rinsed and dry")
    assert reading.intent == "treat_item"
    assert reading.slots.still_wet is False
