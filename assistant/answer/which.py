"""Which enclosure is meant: named, the only one it can be, or asked."""

from __future__ import annotations

from collections.abc import Callable

from assistant.answer.asking import ask
from assistant.contract import Answer, Reading, World
from assistant.core.record.state import Round
from assistant.core.round.rounds import is_open


def open_rounds(world: World) -> tuple[Round, ...]:
    """Every open round, in the order begun."""
    rounds = (round_ for round_ in world.state.rounds.values() if is_open(round_))
    return tuple(sorted(rounds, key=lambda round_: (round_.started_at, round_.enclosure)))


def which_rounds(reading: Reading, world: World, fits: Callable[[Round], bool]) -> tuple[str, ...] | Answer:
    """The enclosures whose rounds are meant; an answer that asks when it can't be told.

    Named ones as named. "All": every open round; "both" of more than two: the two that it fits. Unnamed: the only open
    round, or the only one that it fits; never a guess between two. No open round and none named gives ().
    """
    slots = reading.slots
    if slots.enclosures:
        return slots.enclosures
    rounds = open_rounds(world)
    of_two = slots.every_enclosure and slots.both and len(rounds) > 2
    if (slots.every_enclosure and not of_two) or len(rounds) <= 1:
        return tuple(round_.enclosure for round_ in rounds)
    fitting = tuple(round_.enclosure for round_ in rounds if fits(round_))
    if len(fitting) == (2 if of_two else 1):
        return fitting
    candidates = fitting or tuple(round_.enclosure for round_ in rounds)
    return ask(reading, world, ("enclosure",), "the_round.which", {"candidates": candidates})
