"""What happens beside the steps of the rounds, folded: loose animals, waiting tubs, remarks, groups, habits, items."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from datetime import datetime

from assistant.core.record.events import (
    AgentPoured,
    AnimalFound,
    AnimalLoose,
    BottleDoubted,
    BottleUnsettled,
    Event,
    GroupChanged,
    HabitChanged,
    ItemBegun,
    QuarantineRestarted,
    Remarked,
    SprayerMeasured,
    StepDone,
    TubCleaned,
    TubLeft,
    TubUnclean,
    TubUsed,
)
from assistant.core.record.state import GroupNow, HabitNow, ItemTimer, Loose, Restart, Round, SprayerNow, State, TubUse
from assistant.core.shelf.bottles import unfilled


def folded_beside(state: State, event: Event, at: datetime) -> State:
    """The state after one event that is no part of a round; every other event changes nothing here."""
    match event:
        case AnimalLoose():
            others = tuple(loose for loose in state.loose if loose.enclosure != event.enclosure)
            return replace(state, loose=(*others, Loose(event.enclosure, at)))
        case AnimalFound():
            return replace(state, loose=_still_loose(state.loose, event.enclosure))
        case Remarked():
            return _remarked(state, event)
        case TubUsed():
            return _with_tub(
                _left_tubs(state, event.enclosure, at), TubUse(event.tub, event.enclosure, event.group, at)
            )
        case TubLeft():
            return _left_tubs(state, event.enclosure, at)
        case TubCleaned() | TubUnclean():
            use = state.tubs.get(event.tub)
            clean = isinstance(event, TubCleaned)
            return state if use is None else _with_tub(state, replace(use, cleaned=clean))
        case GroupChanged():
            now = GroupNow(event.group, event.was, at, event.organism)
            rounds = _unvouched(state.rounds, event)
            return replace(state, groups={**state.groups, event.enclosure: now}, rounds=rounds)
        case QuarantineRestarted():
            return replace(state, restarts={**state.restarts, event.enclosure: Restart(at, event.why)})
        case HabitChanged():
            return replace(state, habits={**state.habits, event.habit: HabitNow(event.value, event.was)})
        case SprayerMeasured():
            now_lays = SprayerNow(event.ml_a_stroke, event.was)
            return replace(state, sprayers={**state.sprayers, event.bottle: now_lays})
        case ItemBegun():
            begun = ItemTimer(event.item, event.way, at, event.seconds, event.enclosure)
            kept = tuple(t for t in state.items if (t.item, t.enclosure) != (begun.item, begun.enclosure))
            return replace(state, items=(*kept, begun)[-MOST_ITEMS:])
        case AgentPoured() | BottleUnsettled():
            return unfilled(state, event.bottle)
        case BottleDoubted():
            known = state.unknown_mixes
            return state if event.bottle in known else replace(state, unknown_mixes=(*known, event.bottle))
        case _:
            return state


MOST_ITEMS = 20
"""Items whose clocks are kept; bounds the state row."""


def after_step(state: State, step: StepDone, at: datetime) -> State:
    """An animal that is back home has left its tub, and isn't loose."""
    if step.step != "return":
        return state
    found = tuple(loose for loose in state.loose if loose.enclosure != step.enclosure)
    return replace(_left_tubs(state, step.enclosure, at), loose=found)


def _still_loose(loose: tuple[Loose, ...], enclosure: str) -> tuple[Loose, ...]:
    """One found without a name is the latest that got out; one with a name is that one, or the nameless."""
    for wanted in (enclosure, ""):
        named = [one for one in loose if one.enclosure == wanted]
        if named:
            return tuple(one for one in loose if one is not named[-1])
    return loose if enclosure else loose[:-1]


def _left_tubs(state: State, enclosure: str, at: datetime) -> State:
    left = {
        name: replace(use, until=at) if use.enclosure == enclosure and use.until is None else use
        for name, use in state.tubs.items()
    }
    return state if left == state.tubs else replace(state, tubs=left)


def _with_tub(state: State, use: TubUse) -> State:
    return replace(state, tubs={**state.tubs, use.tub: use})


def _unvouched(rounds: Mapping[str, Round], event: GroupChanged) -> Mapping[str, Round]:
    """A germ named while a clean is open: its wet time was chosen without it, so nothing vouches for it any more."""
    open_one = rounds.get(event.enclosure)
    if open_one is None or "return" in open_one.done or event.organism in (None, open_one.organism):
        return rounds
    return {**rounds, event.enclosure: replace(open_one, basis="none")}


def _remarked(state: State, event: Remarked) -> State:
    round_ = state.rounds.get(event.enclosure)
    if round_ is None:
        return state
    if event.settled:
        remarks = tuple(said for said in round_.remarks if said != event.said)
    else:
        remarks = (*round_.remarks, event.said) if event.said else ()
    return replace(state, rounds={**state.rounds, event.enclosure: replace(round_, remarks=remarks)})
