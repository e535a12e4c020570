"""What is said in mid-clean and must not count for more than it says."""

from __future__ import annotations

import pytest
from talk import Talk


def wet() -> Talk:
    talk = Talk()
    talk.tells("start the river tank with bleach", "moved out, cleared and washed, soap rinsed off", "sprayed")
    talk.after(minutes=3)
    return talk


@pytest.mark.parametrize(
    "said",
    ["misted it again so it is dry now", "sprayed it again but it's dry already", "misted it again and it's dry"],
)
def test_what_is_dry_at_the_end_is_not_kept_wet(said: str) -> None:
    talk = wet()
    assert talk.tell(said).intent != "rewet"
    assert talk.tell("can he go back").values["blocked_by"][0] == "apply"


@pytest.mark.parametrize(
    "said", ["misted it again before it dried", "misted it again, nothing is dry", "misted it again"]
)
def test_what_was_misted_before_it_dried_is(said: str) -> None:
    assert wet().tell(said).intent == "rewet"


@pytest.mark.parametrize("said", ["just a spot clean of the river tank", "only a quick spot clean for juniper"])
def test_a_clean_that_is_wanted_is_not_logged_as_done(said: str) -> None:
    talk = Talk()
    reply = talk.tell(said)
    assert reply.intent == "start"
    assert not talk.record
    assert talk.tell("with the yellow bottle").values["job"] == "spot clean"


@pytest.mark.parametrize("said", ["did a spot clean of the river tank", "spot cleaned the river tank"])
def test_a_clean_that_was_done_is_logged(said: str) -> None:
    assert Talk().tell(said).intent == "log_clean"
