"""Who is left out of what is said of many."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from assistant.contract import Reading

Ask = Callable[..., Reading]


@pytest.mark.parametrize(
    ("said", "remain"),
    [
        ("spot cleaned everyone except biscuit", ("pond tub", "new arrival box")),
        ("spot cleaned them all apart from the pond tub", ("east tank", "new arrival box")),
        ("fresh water for everybody but the new ones", ("east tank", "pond tub")),
        ("spot cleaned all the healthy ones but not the pond tub", ("east tank",)),
        ("deep cleaned the pond tub, not the east tank", ("pond tub",)),
    ],
)
def test_who_is_left_out_is_not_recorded(said: str, remain: tuple[str, ...], ask: Ask) -> None:
    reading = ask(said)
    assert reading.intent == "log_clean"
    assert reading.slots.enclosures == remain
    assert not reading.slots.every_enclosure


def test_left_out_of_nobody_in_particular_names_nobody(ask: Ask) -> None:
    reading = ask("spot cleaned except the pond tub")
    assert reading.intent == "log_clean"
    assert reading.slots.enclosures == ()


def test_a_step_that_not_all_have_done_is_none(ask: Ask) -> None:
    assert ask("rinsed everything except the pond tub").intent != "done"
