"""What the keeper sprays to the square metre, in an answer on drying and of a bottle whose stroke isn't known."""

from __future__ import annotations

from dataclasses import replace

from talk import Talk, demo

from assistant.contract import Outcome


def test_more_to_the_square_metre_takes_longer_to_dry() -> None:
    thin, thick = (
        Talk().tell(f"how long does it take to dry if I spray {ml} mL a square metre").values["minutes"]
        for ml in (30, 100)
    )
    assert thick > 3 * thin


def test_strokes_of_a_bottle_that_nobody_measured_are_no_volume() -> None:
    bottles = tuple(replace(bottle, ml_a_stroke=None) for bottle in demo().bottles)
    talk = Talk(household=replace(demo(), bottles=bottles))
    reply = talk.tell("river tank with the yellow bottle, 30 strokes a square metre")
    assert reply.outcome is Outcome.ANSWER
    assert (reply.values["strokes"], reply.values["solution"]) == (87, None)
