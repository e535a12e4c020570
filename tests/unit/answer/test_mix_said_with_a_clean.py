"""A mix named beside a clean or a wet time: it only ever lengthens, and one mention of a product is one."""

from __future__ import annotations

from dataclasses import replace

import pytest
from talk import Talk, demo
from tool import FACTS, QUESTIONS

from assistant.contract import Heard, Outcome, Reply, World
from assistant.core.household import Household
from assistant.core.quantities.amounts import SaidRatio
from assistant.core.quantities.quantity import read_mix
from assistant.store.english import usage
from assistant.store.packaged import packaged_weights
from assistant.turn import take_turn
from assistant.understand.reader import Reader


def _home() -> Household:
    """The demo household with a label on its chlorhexidine, and with bleach called just that."""
    label = read_mix("1 in 40")
    assert isinstance(label, SaidRatio)
    stocks = tuple(
        replace(stock, label_minutes=5, label_mix=label, label_claim="disinfect")
        if stock.agent == "chlorhexidine"
        else replace(stock, also=("bleach",))
        if stock.agent == "sodium hypochlorite"
        else stock
        for stock in demo().stocks
    )
    return replace(demo(), stocks=stocks)


HOME = _home()
READER = Reader(HOME, FACTS, QUESTIONS, *packaged_weights(), usage)


class At(Talk):
    def tell(self, text: str, away: object = None) -> Reply:
        world = World(self.now, self.household, FACTS, QUESTIONS, READER, self.state, self.talk, None)
        return self._keep(take_turn(Heard(text), world))


@pytest.mark.parametrize(
    ("said", "minutes"),
    [
        ("how long should the pink bottle stay wet", 5),
        ("how long should the pink bottle stay wet at 1 in 80", 10),
        ("how long should chlorhexidine stay wet at 1 in 80", 10),
        ("how long should the pink bottle stay wet at 1 in 20", 5),
        ("start river tank with the pink bottle at 1 in 80", 10),
        ("start river tank with the pink bottle", 5),
    ],
)
def test_a_mix_weaker_than_the_label_takes_the_longer_time(said: str, minutes: int) -> None:
    assert At(household=HOME).tell(said).values["minutes"] == minutes


def test_the_spraying_keeps_the_time_of_the_weaker_mix_that_was_said() -> None:
    talk = At(household=HOME)
    talk.tells("start river tank with the pink bottle at 1 in 80", "out, cleared, washed, soap rinsed off, sprayed")
    assert round(talk.tell("how long left").values["seconds"] / 60) == 10


@pytest.mark.parametrize(
    "said",
    ["can I mix tomato juice with bleach", "can foo and bleach meet", "can bleach and bleach meet"],
)
def test_bleach_named_once_does_not_meet_itself(said: str) -> None:
    reply = At(household=HOME).tell(said)
    assert reply.intent == "together"
    assert reply.outcome is Outcome.ASK
    assert reply.values["verdict"] is None


def test_a_bottle_and_what_is_in_it_are_two_mentions() -> None:
    assert At(household=HOME).tell("can bleach and the yellow bottle meet").values["verdict"] == "fine"
