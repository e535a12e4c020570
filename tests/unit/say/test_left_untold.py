"""What one sentence told besides, and nobody recorded, is said."""

from __future__ import annotations

import pytest
from talk import Talk


@pytest.mark.parametrize(
    ("text", "left"),
    [
        ("spot cleaned river tank and filled yellow with bleach", "chore isn't logged"),
        ("watered everyone, topped up yellow", "chore isn't logged"),
        ("spot cleaned all the healthy ones and refilled pink", "bottle isn't recorded"),
    ],
)
def test_what_was_told_besides_is_said_not_to_be_recorded(text: str, left: str) -> None:
    reply = Talk().tell(text)
    assert left in reply.say
    assert len(reply.say.split()) <= 25


@pytest.mark.parametrize("text", ["filled yellow with bleach", "spot cleaned river tank", "gave everyone fresh water"])
def test_of_what_was_told_alone_nothing_is_left(text: str) -> None:
    assert "tell me that alone" not in Talk().tell(text).say
