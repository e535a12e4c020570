"""From a sick animal to a healthy one: hands and gloves come first, whichever question leads there."""

from __future__ import annotations

import pytest
from talk import Talk

HANDS = "Wash hands, new gloves first."


def at_the_sick_one() -> Talk:
    """The sick one was worked on last, and a healthy one is open as well."""
    talk = Talk()
    talk.tells(
        "start the river tank with bleach", "start the hospital tub with bleach", "clover is out, shut in the tub"
    )
    return talk


def test_next_says_so_before_a_healthy_one_and_not_the_other_way() -> None:
    talk = at_the_sick_one()
    assert talk.tell("what's next for the river tank").say.startswith(HANDS)
    talk.tell("juniper is out, shut in the tub")
    assert not talk.tell("what's next for the hospital tub").say.startswith(HANDS)


@pytest.mark.parametrize("home", ["window cage", "desert box", "rack tub seven"])
def test_start_says_so_before_one_that_is_healthier(home: str) -> None:
    reply = at_the_sick_one().tell(f"start the {home} with bleach")
    assert reply.values["enclosure"] == home
    assert reply.say.startswith(HANDS)
    assert len(reply.say.split()) <= 25


def test_start_says_nothing_of_it_among_the_healthy() -> None:
    talk = Talk()
    talk.tells("start the river tank with bleach", "juniper is out, shut in the tub")
    assert HANDS not in talk.tell("start the window cage with bleach").say


def test_the_order_of_the_day_ends_with_the_sick_one_and_its_tools_stay() -> None:
    talk = at_the_sick_one()
    groups = talk.tell("what order shall I clean in").values["groups"]
    assert list(groups) == sorted(groups, key=["healthy", "new", "sick"].index)
    assert talk.tell("can I take the hospital tongs to the river tank").values["verdict"] == "never"
