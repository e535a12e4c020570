"""A product's wet time by its own label: asked for aloud as the clean starts, and taken when it is told."""

from __future__ import annotations

from dataclasses import replace

import pytest
from talk import Talk, demo
from tool import FACTS, QUESTIONS

from assistant.contract import Heard, Reply, World
from assistant.core.household import Stock
from assistant.store.english import usage
from assistant.store.packaged import packaged_weights
from assistant.turn import take_turn
from assistant.understand.reader import Reader

HOME = replace(
    demo(),
    stocks=(
        *demo().stocks,
        Stock("pharmacy peroxide", "hydrogen peroxide", also=("peroxide",)),
        Stock("household ammonia", "ammonia", also=("ammonia",)),
    ),
)
READER = Reader(HOME, FACTS, QUESTIONS, *packaged_weights(), usage)


class At(Talk):
    def tell(self, text: str, away: object = None) -> Reply:
        world = World(self.now, self.household, FACTS, QUESTIONS, READER, self.state, self.talk, None)
        return self._keep(take_turn(Heard(text), world))


def test_the_labels_minutes_are_asked_for_aloud() -> None:
    assert At(household=HOME).tell("start river tank with peroxide").say.endswith("does its label say?")


def test_of_what_is_the_vets_plan_no_label_is_asked() -> None:
    assert At(household=HOME).tell("start river tank with ammonia").say.endswith("your vet's plan.")


@pytest.mark.parametrize(
    "said",
    [
        ("start river tank with peroxide, the label says 5 minutes",),
        ("start river tank with peroxide", "5 minutes"),
        ("start river tank with peroxide", "it says five minutes"),
        ("start river tank with peroxide", "out", "the label says 5 minutes"),
        ("start river tank with peroxide", "out, cleared, washed, sprayed", "the label says 5 minutes"),
    ],
)
def test_the_labels_minutes_are_taken_when_told(said: tuple[str, ...]) -> None:
    talk = At(household=HOME)
    reply = talk.tells(*said)
    assert (reply.intent, reply.values["minutes"]) == ("start", 5)
    talk.tells("out, cleared, washed, soap rinsed off, sprayed")
    assert round((talk.tell("how long left").values["seconds"] or 0) / 60) == 5


@pytest.mark.parametrize("said", ["it's been 5 minutes", "5 minutes ago", "what does the label say, 5 minutes?"])
def test_what_is_no_label_is_not_taken_for_it(said: str) -> None:
    talk = At(household=HOME)
    talk.tells("start river tank with peroxide", said, "out, cleared, washed, soap rinsed off, sprayed")
    assert talk.tell("how long left").values["seconds"] is None


def test_what_the_vet_plans_gets_no_time_by_word_of_mouth() -> None:
    assert At(household=HOME).tell("start river tank with ammonia, the label says 5 minutes").values["minutes"] is None


@pytest.mark.parametrize(("minutes", "taken"), [(5, 10), (20, 20)])
def test_a_label_told_shortens_no_published_time(minutes: int, taken: int) -> None:
    said = f"start river tank with bleach, the label says {minutes} minutes"
    assert Talk().tell(said).values["minutes"] == taken
