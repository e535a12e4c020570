"""Every state that can be reached, walked to the last one: no way into "ready" without every required step served."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import replace
from datetime import datetime

import pytest
from ledger_of_truth import BLEACH, VINEGAR
from walk import NOW, Act, Place, Walk, airing_ends, hold_ends, program_is_closed

from assistant.contract import Answer, Reading, World
from assistant.core.household import Bottle, Enclosure, Household, Room, Stock
from assistant.core.quantities.amounts import Amount, Neat, SaidRatio
from assistant.core.record import fold
from assistant.core.record.events import RoundStarted, Sensed, StepDone
from assistant.core.record.state import Round, State
from assistant.core.round import claims, gate, rounds
from assistant.core.round.claims import Judgement

ONE = Household(
    room=Room(airing=0.8),
    stocks=(
        Stock("bleach", BLEACH, Amount(6, "%"), label_minutes=10),  # type: ignore[arg-type]
        Stock("vinegar", VINEGAR, Amount(5, "%")),  # type: ignore[arg-type]
    ),
    bottles=(
        Bottle("red", Amount(500, "mL"), stock="bleach", mix=SaidRatio(1, 32, "in")),  # type: ignore[arg-type]
        Bottle("white", Amount(500, "mL"), stock="vinegar", mix=Neat()),  # type: ignore[arg-type]
    ),
    enclosures=(Enclosure("tub", animal="snake"),),
)


TWO = replace(ONE, enclosures=(*ONE.enclosures, Enclosure("box", animal="gecko")))


def say(intent: str, **slots: object) -> Act:
    def act(walk: Walk, place: Place) -> Iterator[Place]:
        yield from walk.said(place, intent, **slots)

    return act


def done(*steps: str, **slots: object) -> Act:
    return say("done", steps=steps, **slots)


def unnamed(act: Act) -> Act:
    """Said with no enclosure named: where it would be recorded of either, it is recorded of none."""

    def checked(walk: Walk, place: Place) -> Iterator[Place]:
        both = tuple(name for name in walk.names if rounds.is_open(place.state.rounds.get(name)))
        first = True
        for new in act(walk, place):
            changed = [name for name in walk.names if new.state.rounds.get(name) != place.state.rounds.get(name)]
            progress = [name for name in changed if _further(place, new, name)]
            others = [name for name in both if name not in progress]
            if first and progress and any(_same_stage(place, progress[0], other) for other in others):
                walk.faults.append(f"recorded of {progress[0]} unasked, by way of {place.way}")
            first = False
            yield new

    return checked


def _further(before: Place, after: Place, name: str) -> bool:
    """A step more is on record."""
    return set(after.state.rounds[name].done) > set(before.state.rounds[name].done)


def _same_stage(place: Place, one: str, other: str) -> bool:
    first, second = place.state.rounds[one], place.state.rounds[other]
    return rounds.outstanding(first, NOW) == rounds.outstanding(second, NOW)


def of_one(name: str) -> dict[str, Act]:
    """What is said of one enclosure, by name, in the course of a clean; and its clocks."""
    there = {"enclosures": (name,)}
    return {
        f"start {name}": say("start", bottles=("red",), start_over=True, **there),
        f"{name} washed": done("move out", "clear", "wash", **there),
        f"{name} sprayed": done("apply", **there),
        f"{name} dried early": say("dried_early", **there),
        f"{name} rinsed": done("rinse", **there),
        f"{name} dry": done("dry", **there),
        f"{name} smells": say("still_smells", smell=True, **there),
        f"{name} smells no more": say("still_smells", smell=False, **there),
        f"{name} back in": done("return", **there),
        f"hold of {name} ends": hold_ends(name),
        f"airing of {name} ends": airing_ends(name),
    }


CORE = {
    **of_one("tub"),
    "out": done("move out"),
    "done holding": done("hold"),
    "it didn't stay wet": done("hold", stayed_wet=False),
    "misted again": say("rewet", steps=("apply",)),
    "wet patch": say("still_smells", wet=True),
    "program closed": program_is_closed,
}
"""Enough to break each rule; walked in seconds."""

WHOLE = {
    **CORE,
    "start": say("start", bottles=("red",), enclosures=("tub",)),
    "cleared": done("clear"),
    "washed": done("wash"),
    "all up to sprayed": done("move out", "clear", "wash", "apply"),
    "it stayed wet": done("hold", stayed_wet=True),
    "wiped": done("wipe"),
    "aired": done("air"),
    "rinsed and dry": done("rinse", "dry"),
    "window open": say("done", openings=3),
    "still wet": say("rewet"),
    "dried before time": say("dried_early", too_early=True),
    "the lid is dry": say("dried_early", part="lid"),
    "dry, no smell": say("still_smells", wet=False, smell=False),
    "pause": say("leave_off"),
    "clean only": say("clean_only"),
}
"""All that can be said of one clean with bleach."""

WITH_VINEGAR = {
    **CORE,
    "start with vinegar": say("start", bottles=("white",), enclosures=("tub",), start_over=True),
    "start with soap": say("start", agents=("detergent",), enclosures=("tub",), start_over=True),
    "sprayed with vinegar": done("apply", bottles=("white",)),
    "sprayed with bleach": done("apply", bottles=("red",)),
    "wiped": done("wipe"),
    "clean only": say("clean_only"),
}
"""Two agents that must not meet, and soap."""

UNNAMED = {
    "sprayed": done("apply"),
    "rinsed": done("rinse"),
    "dry": done("dry"),
    "it dried": say("dried_early"),
    "it smells": say("still_smells", smell=True),
    "back in": done("return"),
}
TWO_OF_THEM = {
    **of_one("tub"),
    **of_one("box"),
    **{f"{name}, unnamed": unnamed(act) for name, act in UNNAMED.items()},
    "both sprayed": done("apply", every_enclosure=True),
    "both rinsed": done("rinse", every_enclosure=True),
}
"""Two enclosures, named, not named, and both at once."""


def report(name: str, walk: Walk) -> None:
    print(f"{name}: {walk.states} states, {walk.transitions} transitions, {walk.into_ready} into ready")


def test_no_way_into_ready_lacks_a_step() -> None:
    walk = Walk(ONE, CORE).to_the_end()
    report("bleach, in short", walk)
    assert walk.faults == []
    assert walk.into_ready > 20


@pytest.mark.slow
def test_no_way_into_ready_lacks_a_step_whatever_is_said() -> None:
    walk = Walk(ONE, WHOLE).to_the_end()
    report("bleach, all that can be said", walk)
    assert walk.faults == []
    assert walk.into_ready > 1000


@pytest.mark.slow
def test_agents_that_must_not_meet_never_do_and_none_is_left_on_a_surface() -> None:
    walk = Walk(ONE, WITH_VINEGAR).to_the_end()
    report("bleach, vinegar and soap", walk)
    assert walk.faults == []
    assert walk.into_ready > 100


@pytest.mark.slow
def test_with_two_open_one_never_clears_the_other() -> None:
    walk = Walk(TWO, TWO_OF_THEM).to_the_end()
    report("two enclosures", walk)
    assert walk.faults == []
    assert walk.into_ready > 100


# ---------------------------------------------------------------- each rule broken on purpose


def unchanged(state: State, *_: object, **__: object) -> State:
    return state


def forgets_the_smell(state: State, event: Sensed) -> State:
    return sensed(state, Sensed(event.enclosure, False, event.wet))


def forgets_the_patch(state: State, event: Sensed) -> State:
    return sensed(state, Sensed(event.enclosure, event.smell, None))


def counts_in_doubt(round_: Round, now: datetime) -> bool:
    return "hold" in round_.done or (round_.hold is not None and rounds.hold_left_s(round_.hold, now) == 0)


def all_but(step: str) -> Callable[[Round, str, datetime], bool]:
    served = rounds.is_served
    return lambda round_, asked, now: asked == step or served(round_, asked, now)


def runs_on_whatever(round_: Round, event: StepDone, at: datetime) -> Round:
    return round_ if "apply" in round_.done else sprayed(round_, event, at)


def takes_the_first(reading: Reading, world: World, fits: object) -> tuple[str, ...] | Answer:
    open_ones = tuple(name for name, round_ in world.state.rounds.items() if rounds.is_open(round_))
    return reading.slots.enclosures or open_ones[:1]


def restart_clears(event: RoundStarted, at: datetime, state: State) -> Round:
    return replace(begun(event, at, State()), steps=tuple(s for s in event.steps if s not in ("rinse", "air")))


sensed, sprayed, begun = fold._sensed, fold._sprayed, fold._begun

BROKEN: dict[str, tuple[str, object, Mapping[str, Act]]] = {
    "1: a step out of order counts": ("assistant.core.round.claims.gap_before", lambda *_: None, CORE),
    "1: never moved out": ("assistant.core.round.rounds.is_served", all_but("move out"), CORE),
    "1: not rinsed": ("assistant.core.round.rounds.is_served", all_but("rinse"), CORE),
    "1: not dry": ("assistant.core.round.rounds.is_served", all_but("dry"), CORE),
    "1: not aired": ("assistant.core.round.rounds.is_served", all_but("air"), CORE),
    "1: not held": ("assistant.core.round.rounds.is_served", all_but("hold"), CORE),
    "2: sprayed again opens nothing": ("assistant.core.record.fold._sprayed", runs_on_whatever, CORE),
    "2: it dried opens nothing": ("assistant.core.record.fold._reopened", unchanged, CORE),
    "3: a doubted wet time counts": ("assistant.core.round.rounds.hold_is_served", counts_in_doubt, CORE),
    "3: nobody watched, and it counts": ("assistant.core.record.fold._unwatched", unchanged, CORE),
    "4: agents meet on a surface": ("assistant.answer.plan.uncleared", lambda *_: None, WITH_VINEGAR),
    "4: a touch is forgotten": ("assistant.core.record.fold._touched", unchanged, WITH_VINEGAR),
    "4: starting over forgets what is on it": ("assistant.core.record.fold._begun", restart_clears, WITH_VINEGAR),
    "7: with two open it takes the first": (
        "assistant.answer.claimed_where.which_rounds",
        takes_the_first,
        TWO_OF_THEM,
    ),
    "9: done holding counts at once": (
        "assistant.core.round.claims._judge_hold",
        lambda *_: Judgement("fits", "hold"),
        CORE,
    ),
    "10: a smell is forgotten": ("assistant.core.record.fold._sensed", forgets_the_smell, CORE),
    "10: a wet patch is forgotten": ("assistant.core.record.fold._sensed", forgets_the_patch, CORE),
    "10: put back too soon is forgotten": ("assistant.core.record.fold._put_back_too_soon", unchanged, CORE),
}


@pytest.mark.parametrize("rule", BROKEN)
def test_the_walk_finds_a_rule_broken_on_purpose(rule: str, monkeypatch: pytest.MonkeyPatch) -> None:
    where, broken, acts = BROKEN[rule]
    monkeypatch.setattr(where, broken)
    if where.startswith("assistant.core.round.rounds."):
        name = where.rpartition(".")[2]
        for module in (claims, gate):
            if hasattr(module, name):
                monkeypatch.setattr(module, name, broken)
    walk = Walk(TWO if acts is TWO_OF_THEM else ONE, acts).to_the_end()
    assert walk.faults
