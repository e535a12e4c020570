"""An answer given once more by likeness says so, and what follows it doesn't."""

from __future__ import annotations

from talk import Talk

from assistant.contract import Outcome


def test_what_one_answer_left_out_is_not_said_to_be_left_out_of_the_next() -> None:
    talk = Talk()
    aside = talk.tells("how much bleach for the yellow bottle", "in boiling water")
    assert (aside.say[:13], aside.show[:13]) == ("Without that:", "Without that:")
    assert talk.tell("and for two litres").say.startswith("62.6 mils of bleach")


def test_what_was_asked_for_in_full_is_answered_when_it_comes() -> None:
    talk = Talk()
    unclear = talk.tells("how much chlorhexidine in 500 mils at 1 in 40", "there's vinegar already in it")
    assert (unclear.outcome, unclear.values) == (Outcome.ASK, {})
    again = talk.tell("no, one in fifty")
    assert again.outcome is Outcome.ANSWER
    assert again.say.startswith("10 mils")


def test_an_answer_to_what_was_asked_then_is_a_plain_one() -> None:
    talk = Talk()
    asked = talk.tells("how long does it have to stay wet", "is that really right?")
    assert asked.outcome is Outcome.ASK
    assert talk.tell("bleach").say.startswith("10 minutes")
