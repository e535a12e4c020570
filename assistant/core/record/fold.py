"""The present as a fold over the events: one small function an event.

`fold` takes one recorded event on; `fold_all` folds a whole record, leaving out the turns that were undone. An undone
turn still counts for what must not be forgotten: an agent that touched a surface did touch it, whatever is taken back.

Change what a case does, or a field of `state`, and FOLD_VERSION goes up by one: stores then rebuild their state row.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace
from datetime import datetime, timedelta

from assistant.core.record import clocks
from assistant.core.record.beside_rounds import after_step, folded_beside
from assistant.core.record.events import (
    AgentPoured,
    AgentsMet,
    AgentTouched,
    Away,
    BackTooSoon,
    BottleMixed,
    BottleRinsed,
    ChoreDone,
    CleanOnly,
    ClocksParted,
    ClocksSettled,
    DriedEarly,
    Event,
    GasMade,
    HoldDoubted,
    KeptWet,
    Paused,
    Recorded,
    Resumed,
    RinseBegun,
    RinseEnded,
    RoundStarted,
    Sensed,
    StayedWet,
    StepDone,
    StepReopened,
    SurfaceDried,
    SurfaceRinsed,
    Voided,
    WindowsOpened,
)
from assistant.core.record.state import Deed, Hold, Opening, PastTurn, Rinse, Round, State, Touch
from assistant.core.round.jobs import chore_of
from assistant.core.round.rounds import STEPS, hold_is_running, in_order, is_open
from assistant.core.shelf.bottles import drawn_for, filled, poured, rinsed_out
from assistant.core.shelf.chores import with_chore

FOLD_VERSION = 17

UNDO_DEPTH = 100
"""How many turns back "undo" can go; bounds the state row."""


def fold(state: State, recorded: Recorded) -> State:
    """The state after one more event. Voided events need `fold_all`: a fold can't be run backwards.

    Fails: ValueError for `Voided`.
    """
    at, event = recorded.at, recorded.event
    if isinstance(event, Voided):
        raise ValueError("an undo is folded from the whole record, by fold_all")
    state = _folded(state, event, at)
    return replace(state, last_at=at, turns=_with_deed(state.turns, recorded))


def fold_all(record: Iterable[Recorded], onto: State | None = None) -> State:
    """The state that a whole record amounts to, oldest event first.

    onto: what everything before it amounts to; only turns of `record` itself can then be undone in it.
    """
    record = tuple(record)
    undone = frozenset(entry.event.turn for entry in record if isinstance(entry.event, Voided))
    state = onto if onto is not None else State()
    for entry in record:
        state = fold_knowing(state, entry, undone)
    return state


def fold_knowing(state: State, recorded: Recorded, undone: frozenset[str]) -> State:
    """The state after one more event of a record whose undone turns are known beforehand."""
    if isinstance(recorded.event, Voided):
        return replace(state, last_at=recorded.at)
    if recorded.turn in undone:
        return replace(_unforgotten(state, recorded.event, recorded.at), last_at=recorded.at)
    return fold(state, recorded)


def _folded(state: State, event: Event, at: datetime) -> State:
    match event:
        case RoundStarted():
            return _with_round(state, _begun(event, at, state))
        case StepDone():
            state = after_step(_step_done(state, event, at), event, at)
            return _counted_as_chore(state, event, at)
        case StayedWet():
            return _on_hold(state, event.enclosure, vouched=True)
        case HoldDoubted():
            return _on_hold(state, event.enclosure, doubted=True)
        case DriedEarly():
            return _reopened(state, event.enclosure, "apply")
        case StepReopened():
            return _reopened(state, event.enclosure, event.step)
        case ClocksSettled():
            return clocks.settled(state, event, at)
        case KeptWet():
            return _kept_wet(state, event, at)
        case Sensed():
            return _sensed(state, event)
        case Paused():
            return _paused(state, event.enclosure, at)
        case Resumed():
            return _paused(state, event.enclosure, None)
        case CleanOnly():
            return _clean_only(state, event)
        case BackTooSoon():
            return _put_back_too_soon(state, event.enclosure)
        case WindowsOpened():
            return _windows_opened(state, event, at)
        case RinseBegun():
            rinse = Rinse(event.place, event.victim, at, event.seconds)
            others = tuple(r for r in state.rinses if (r.place, r.victim) != (rinse.place, rinse.victim))
            return replace(state, rinses=(*others, rinse))
        case RinseEnded():
            ended = (event.place, event.victim)
            return replace(state, rinses=tuple(r for r in state.rinses if (r.place, r.victim) != ended))
        case ChoreDone():
            return with_chore(state, event.enclosure, event.chore, event.done_at)
        case BottleMixed():
            return drawn_for(filled(state, event, at), event, at)
        case BottleRinsed():
            return rinsed_out(state, event.bottle, at)
        case SurfaceRinsed():
            return _rinsed(_reopened(state, event.enclosure, "dry"), event.enclosure, event.wiped)
        case SurfaceDried():
            return _dried(state, event.enclosure)
        case _:
            return _unforgotten(folded_beside(state, event, at), event, at)


def _unforgotten(state: State, event: Event, at: datetime) -> State:
    """What an event means even after it was undone: what touched a surface or made a gas, that nobody watched."""
    match event:
        case StepDone(step="apply", agent=str() as agent):
            state = _touched(state, event.enclosure, agent, at)
            state = _needs_as_well(state, event.enclosure, event.steps or ())
            return _off_again(state, event.enclosure, agent)
        case KeptWet(agent=str() as agent):
            return _touched(state, event.enclosure, agent, at)
        case AgentTouched():
            state = _touched(state, event.enclosure, event.agent, at)
            return _needs_as_well(_reopened(state, event.enclosure, "apply"), event.enclosure, event.steps)
        case BottleMixed():
            return poured(state, event.bottle, (event.agent,))
        case AgentPoured():
            return poured(state, event.bottle, (event.agent,))
        case AgentsMet():
            return poured(state, event.bottle, event.agents, unknown_mix=True)
        case GasMade():
            if event.bottle is not None:
                state = poured(state, event.bottle, event.agents, unknown_mix=True)
            if event.enclosure is not None:
                for agent in event.agents:
                    state = _touched(state, event.enclosure, agent, at)
                state = _reopened(state, event.enclosure, "apply")
                state = _needs_as_well(state, event.enclosure, event.steps)
            return state
        case CleanOnly():
            return _on_hold(state, event.enclosure, doubted=True)  # given up for a while: nobody kept it wet for it
        case Away():
            return _unwatched(state, event.since, at)
        case ClocksParted():
            return clocks.parted(state, event.ahead_s, event.offset_s, at)
        case _:
            return state


# ---------------------------------------------------------------- rounds


def _begun(event: RoundStarted, at: datetime, state: State) -> Round:
    """A new round; one that was open is replaced, but a smell reported in it or a touch isn't gone by that."""
    before = state.rounds.get(event.enclosure)
    was_open = before is not None and is_open(before)
    return Round(
        enclosure=event.enclosure,
        started_at=at,
        agent=event.agent,
        steps=event.steps,
        hold_s=event.hold_s,
        air_changes_per_hour=event.air_changes_per_hour,
        air_changes=event.air_changes,
        stock=event.stock,
        bottle=event.bottle,
        organism=event.organism,
        basis=event.basis,
        touched=event.enclosure in state.surfaces or (before is not None and was_open and before.touched),
        smells=before is not None and was_open and before.smells,
        job=event.job,
    )


def _counted_as_chore(state: State, event: StepDone, at: datetime) -> State:
    """Once the animal is back in the clean counts in the schedule, as what it was."""
    round_ = state.rounds.get(event.enclosure)
    chore = chore_of(round_.job if round_ is not None else "")
    return with_chore(state, event.enclosure, chore, at) if event.step == "return" and chore is not None else state


def _with_round(state: State, round_: Round) -> State:
    return replace(state, rounds={**state.rounds, round_.enclosure: round_})


def _step_done(state: State, event: StepDone, at: datetime) -> State:
    if event.step == "apply" and event.agent is not None:
        state = _touched(state, event.enclosure, event.agent, at)
    if event.step == "wash":
        state = _reopened(state, event.enclosure, "apply")  # soap undoes a disinfectant
    round_ = state.rounds.get(event.enclosure)
    if round_ is not None:
        state = _with_round(state, _sprayed(round_, event, at) if event.step == "apply" else _done(round_, event, at))
    if event.step == "rinse":
        return _rinsed(state, event.enclosure, event.wiped)
    if event.step == "dry":
        return _dried(state, event.enclosure)
    return state


def _done(round_: Round, event: StepDone, at: datetime) -> Round:
    done = {**round_.done, event.step: at}
    first_dry = round_.first_dry
    if event.step == "rinse":
        done.pop("dry", None)  # rinsed again: wet again
        first_dry = None
    if event.step == "dry":
        first_dry = first_dry or at
    after_hold = event.step in ("hold", "rinse", "dry", "air", "return") and event.step in round_.steps
    if after_hold and "hold" in round_.steps:
        # A later step was accepted on the served hold; a clock set back can't take it away again. One that the round
        # doesn't take is only noted, and was not judged by what comes before it.
        done.setdefault("hold", at)
    put_back = round_.put_back and event.step != "move out"
    return replace(round_, done=done, put_back=put_back, first_dry=first_dry, paused_at=None)


def _sprayed(round_: Round, event: StepDone, at: datetime) -> Round:
    agent, bottle = event.agent or round_.agent, event.bottle or round_.bottle
    vouched_anew = round_.basis == "none" and event.basis != "none"  # a fresh mix in place of one that was spent
    same = agent == round_.agent and bottle == round_.bottle and not vouched_anew
    if same and "apply" in round_.done and round_.hold is not None and hold_is_running(round_, at):
        # Kept wet from the same bottle: the hold runs on.
        return replace(round_, hold=replace(round_.hold, wetted=at), paused_at=None)
    done = {step: when for step, when in round_.done.items() if STEPS.index(step) < STEPS.index("apply")}
    return replace(
        round_,
        agent=agent,
        bottle=bottle,
        steps=event.steps or round_.steps,
        hold_s=event.hold_s,
        basis=event.basis,
        done={**done, "apply": at},
        hold=Hold(at, event.hold_s) if "hold" in (event.steps or round_.steps) else None,
        openings=_latest(round_.openings),
        first_dry=None,
        paused_at=None,
    )


def _latest(openings: tuple[Opening, ...]) -> tuple[Opening, ...]:
    """A window stays open when spraying starts again, but what it aired before is spent."""
    return openings[-1:]


def _on_hold(state: State, enclosure: str, *, vouched: bool = False, doubted: bool = False) -> State:
    round_ = state.rounds.get(enclosure)
    if round_ is None or round_.hold is None or "hold" in round_.done:
        return state
    hold = replace(
        round_.hold, vouched=vouched or (round_.hold.vouched and not doubted), doubted=doubted or round_.hold.doubted
    )
    return _with_round(state, replace(round_, hold=hold))


def _reopened(state: State, enclosure: str, step: str) -> State:
    """That step and all after it are to be done again."""
    round_ = state.rounds.get(enclosure)
    if round_ is None or "return" in round_.done:
        return state
    done = {name: when for name, when in round_.done.items() if STEPS.index(name) < STEPS.index(step)}
    hold = None if STEPS.index(step) <= STEPS.index("hold") else round_.hold
    return _with_round(state, replace(round_, done=done, hold=hold, first_dry=None))


OFF_AGAIN = frozenset(("rinse", "dry", "air"))
"""The steps that take an agent off a surface and out of the air."""


def _needs_as_well(state: State, enclosure: str, steps: tuple[str, ...]) -> State:
    """An open round takes, beside its own steps, what it takes to be rid of an agent that touched the surface."""
    round_ = state.rounds.get(enclosure)
    if round_ is None or "return" in round_.done:
        return state
    more = frozenset(round_.steps) | (OFF_AGAIN & frozenset(steps))
    return _with_round(state, replace(round_, steps=in_order(more)))


def _off_again(state: State, enclosure: str, agent: str) -> State:
    """A spraying that was taken back, with an agent that isn't the round's: if it was true, it is to come off."""
    round_ = state.rounds.get(enclosure)
    if round_ is None or round_.agent == agent or "return" in round_.done:
        return state
    steps = in_order(frozenset(round_.steps) | {"rinse", "dry"})
    done = {step: when for step, when in round_.done.items() if step not in OFF_AGAIN}
    return _with_round(state, replace(round_, steps=steps, done=done, first_dry=None))


def _kept_wet(state: State, event: KeptWet, at: datetime) -> State:
    if event.agent is not None:
        state = _touched(state, event.enclosure, event.agent, at)
    round_ = state.rounds.get(event.enclosure)
    if round_ is None or round_.hold is None or not hold_is_running(round_, at):
        return state
    hold = replace(round_.hold, wetted=at) if event.agent is not None else replace(round_.hold, seen_wet=at)
    return _with_round(state, replace(round_, hold=hold, paused_at=None))


def _sensed(state: State, event: Sensed) -> State:
    """A smell stays until it is said to be gone; a wet patch opens drying, while the airing's clock runs on."""
    round_ = state.rounds.get(event.enclosure)
    if round_ is None or "return" in round_.done:
        return state
    done = {s: at for s, at in round_.done.items() if not ((event.wet and s == "dry") or (event.smell and s == "air"))}
    smells = round_.smells if event.smell is None else event.smell
    return _with_round(state, replace(round_, done=done, smells=smells))


def _paused(state: State, enclosure: str, at: datetime | None) -> State:
    round_ = state.rounds.get(enclosure)
    if round_ is None or "return" in round_.done:
        return state
    state = _with_round(state, replace(round_, paused_at=at))
    # Nobody keeps it wet meanwhile.
    return _on_hold(state, enclosure, doubted=True) if at is not None and hold_is_running(round_, at) else state


def _clean_only(state: State, event: CleanOnly) -> State:
    round_ = state.rounds.get(event.enclosure)
    if round_ is None or "return" in round_.done:
        return state
    done = {step: at for step, at in round_.done.items() if step not in ("apply", "hold")}
    return _with_round(state, replace(round_, steps=event.steps, done=done, hold=None, hold_s=None, basis="none"))


def _put_back_too_soon(state: State, enclosure: str) -> State:
    round_ = state.rounds.get(enclosure)
    if round_ is None:
        return state
    done = {name: when for name, when in round_.done.items() if name not in ("move out", "return")}
    state = _with_round(state, replace(round_, done=done, put_back=True, paused_at=None))
    # A clean that was over and is open again doesn't vouch for what was sprayed since.
    sprayed_since = "return" in round_.done and enclosure in state.surfaces
    return _reopened(state, enclosure, "apply") if sprayed_since else state


def _windows_opened(state: State, event: WindowsOpened, at: datetime) -> State:
    round_ = state.rounds.get(event.enclosure)
    if round_ is None:
        return state
    if event.openings == 0 and not round_.openings:
        # Shut is no opening: the airing still counts from dry, but at no better a rate.
        rate = min(round_.air_changes_per_hour, event.air_changes_per_hour)
        return _with_round(state, replace(round_, air_changes_per_hour=rate))
    if event.since is not None and (round_.air_from or round_.air_by_boot):
        # The clocks have parted, and what was counted can't be told apart from what wasn't: it airs anew.
        anew = Opening(at, event.air_changes_per_hour)
        return _with_round(state, replace(round_, openings=(anew,), air_from=None, air_by_boot=None))
    since = min(event.since or at, at)
    if event.openings == 0 and round_.openings:
        since = max(since, round_.openings[0].at)  # shut is no opening, so the airing began no earlier
    before = tuple(opening for opening in round_.openings if opening.at < since)
    return _with_round(state, replace(round_, openings=(*before, Opening(since, event.air_changes_per_hour))))


def _unwatched(state: State, since: datetime, until: datetime) -> State:
    """Every hold whose wet time overlaps the span counts only once the keeper vouches for it."""
    for enclosure, round_ in state.rounds.items():
        hold = round_.hold
        if hold is None or "hold" in round_.done or hold.vouched:
            continue
        ends = hold.began + timedelta(seconds=hold.seconds or 0.0)
        if hold.seconds is None or (hold.began < until and since < ends):
            state = _on_hold(state, enclosure, doubted=True)
    return state


# ---------------------------------------------------------------- surfaces


def _touched(state: State, enclosure: str, agent: str, at: datetime) -> State:
    others = tuple(touch for touch in state.surfaces.get(enclosure, ()) if touch.agent != agent)
    round_ = state.rounds.get(enclosure)
    if round_ is not None and is_open(round_):
        state = _with_round(state, replace(round_, touched=True))
    return _with_surface(state, enclosure, (*others, Touch(agent, at)))


def _rinsed(state: State, enclosure: str, wiped: bool) -> State:
    touches = state.surfaces.get(enclosure, ())
    return _with_surface(
        state,
        enclosure,
        # Wet again by the water, however dry it was after an earlier wipe.
        tuple(replace(t, wiped=True, dried=False) if wiped else replace(t, rinsed=True, dried=False) for t in touches),
    )


def _dried(state: State, enclosure: str) -> State:
    """Dry after a rinse: what was rinsed off is forgotten; what was only wiped is kept, for some need a rinse."""
    touches = state.surfaces.get(enclosure, ())
    kept = tuple(replace(t, dried=t.wiped) for t in touches if not t.rinsed)
    return _with_surface(state, enclosure, kept)


def _with_surface(state: State, enclosure: str, touches: tuple[Touch, ...]) -> State:
    surfaces: Mapping[str, tuple[Touch, ...]] = {k: v for k, v in state.surfaces.items() if k != enclosure}
    return replace(state, surfaces={**surfaces, enclosure: touches} if touches else surfaces)


# ---------------------------------------------------------------- what can be undone


def _with_deed(turns: tuple[PastTurn, ...], recorded: Recorded) -> tuple[PastTurn, ...]:
    event = recorded.event
    if isinstance(event, Away | ClocksParted):
        return turns
    thing = getattr(event, "enclosure", None) or getattr(event, "bottle", None) or getattr(event, "place", None) or ""
    deed = Deed(type(event).__name__, str(thing), getattr(event, "step", ""))
    if turns and turns[-1].turn == recorded.turn:
        last = turns[-1]
        return (*turns[:-1], replace(last, deeds=(*last.deeds, deed)))
    return (*turns, PastTurn(recorded.turn, recorded.at, (deed,)))[-UNDO_DEPTH:]
