"""Leaving a round before it is done: paused for later, or given up as a disinfection and finished as a clean."""

from __future__ import annotations

from dataclasses import replace

from assistant.answer.kept_wet import none_open
from assistant.answer.meeting import agent_of
from assistant.answer.on_record import Ledger
from assistant.answer.way_on import step_now, way_on
from assistant.answer.which import which_rounds
from assistant.contract import Answer, Outcome, Pending, Reading, World
from assistant.core.record.events import CleanOnly, DriedEarly, Event, Paused
from assistant.core.record.state import Round
from assistant.core.round.rounds import hold_is_running, hold_is_served, in_order, is_open, outstanding


def leave_off(reading: Reading, world: World) -> Answer:
    """Pauses a clean, once that is confirmed: it stays open and goes on blocking."""
    names = _names_open(reading, world)
    if isinstance(names, Answer):
        return names
    rounds = tuple(world.state.rounds[name] for name in names)
    ledger = Ledger(world.state, world, wiped=False)
    ledger.note(*(Paused(name) for name in names))
    answer = Answer(
        reading.intent,
        Outcome.ANSWER,
        "the_round.paused",
        details={
            "names": names,
            "enclosure": world.household.enclosure(names[0]),
            "next": step_now(rounds[0], world),
            "out": "move out" in rounds[0].done,
            "running": any(hold_is_running(round_, world.now) for round_ in rounds),
        },
        values={
            "recorded": True,
            "enclosure": names[0],
            "enclosures": names,
            "blocked_by": outstanding(rounds[0], world.now),
            "next": step_now(rounds[0], world),
        },
        events=tuple(ledger.events),
    )
    if reading.slots.confirmed:
        return answer
    return _asked_first(answer, Outcome.CONFIRM, "the_round.pause", reading, names, world)


def clean_only(reading: Reading, world: World) -> Answer:
    """Finishes as a clean, not a disinfection, once that is confirmed."""
    names = which_rounds(reading, world, lambda round_: "hold" in outstanding(round_, world.now))
    if isinstance(names, Answer):
        return names
    names = tuple(name for name in names if is_open(world.state.rounds.get(name)))
    if not names:
        return none_open(reading, world)
    dried = _dried_as_well(names, reading, world)
    state = dried.state
    giving_up = tuple(name for name in names if _disinfects_yet(state.rounds[name], world))
    if not giving_up:
        return _nothing_to_give_up(names[0], reading, world)
    ledger = Ledger(state, world, wiped=False)
    for name in giving_up:
        ledger.note(CleanOnly(name, steps_of_a_clean(state.rounds[name], replace(world, state=state))))
    round_ = ledger.state.rounds[giving_up[0]]
    left = outstanding(round_, world.now)
    answer = Answer(
        reading.intent,
        Outcome.ANSWER,
        "the_round.clean_only",
        details={
            "names": giving_up,
            "enclosure": world.household.enclosure(giving_up[0]),
            "way": way_on(round_, replace(world, state=ledger.state)),
            "agent": agent_of(round_.agent, world),
            "left": left,
        },
        values={
            "recorded": True,
            "enclosure": giving_up[0],
            "enclosures": giving_up,
            "blocked_by": left,
            "next": step_now(round_, replace(world, state=ledger.state)),
            "claim": "cleaned_only",
        },
        events=(*dried.events, *ledger.events),
    )
    if reading.slots.confirmed:
        return answer
    asked = _asked_first(answer, Outcome.ASK, "the_round.finish_as_clean", reading, giving_up, world)
    return replace(asked, missing=("answer",), events=tuple(dried.events))


def steps_of_a_clean(round_: Round, world: World) -> tuple[str, ...]:
    """What is left of a round that no longer disinfects.

    Rinse or wipe, dry and air stay where an agent touched the surface, as the round or that agent asks for them;
    where none did, there is nothing to rinse off or to air out.
    """
    on_it = world.state.surfaces.get(round_.enclosure, ())
    steps = set(round_.steps)
    for touch in on_it:
        steps |= set(agent_of(touch.agent, world).steps)
    dropped = {"apply", "hold"} if on_it or round_.touched else {"apply", "hold", "rinse", "air"}
    return in_order(frozenset(steps - dropped))


def _dried_as_well(names: tuple[str, ...], reading: Reading, world: World) -> Ledger:
    """ "It dried and I can't do ten more": that it dried counts, whatever is answered."""
    ledger = Ledger(world.state, world, wiped=False)
    if reading.slots.stayed_wet is False and not reading.slots.confirmed:
        for name in names:
            if hold_is_running(world.state.rounds[name], world.now):
                ledger.note(DriedEarly(name))
    return ledger


def _disinfects_yet(round_: Round, world: World) -> bool:
    return "hold" in round_.steps and not hold_is_served(round_, world.now)


def _nothing_to_give_up(name: str, reading: Reading, world: World) -> Answer:
    """The wet time is served, or it was a clean all along."""
    round_ = world.state.rounds[name]
    way = way_on(round_, world)
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "the_round.nothing_to_give_up",
        details={
            "enclosure": world.household.enclosure(name),
            "served": "hold" in round_.steps,
            "way": way,
            "agent": agent_of(round_.agent, world),
        },
        values={"recorded": False, "enclosure": name, "enclosures": (name,), "next": way.step},
    )


def _names_open(reading: Reading, world: World) -> tuple[str, ...] | Answer:
    names = which_rounds(reading, world, lambda round_: False)
    if isinstance(names, Answer):
        return names
    names = tuple(name for name in names if is_open(world.state.rounds.get(name)))
    return names or none_open(reading, world)


def _asked_first(
    answer: Answer, outcome: Outcome, message: str, reading: Reading, names: tuple[str, ...], world: World
) -> Answer:
    """The same as a question: nothing is recorded until "yes"."""
    slots = replace(reading.slots, enclosures=names, every_enclosure=False, confirmed=True)
    meant = replace(reading, slots=slots, doubts=())
    none: tuple[Event, ...] = ()
    return replace(
        answer,
        outcome=outcome,
        message=message,
        values={**answer.values, "recorded": False},
        events=none,
        pending=Pending(meant, world.now, on_yes=meant),
    )
