"""Where an open clean stands: `next`, `status`, `time_left`."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from assistant.answer.due import wet_question
from assistant.answer.sharing import hands_first
from assistant.answer.way_on import give_up_question, step_now, way_on
from assistant.answer.which import open_rounds
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.record.state import Round
from assistant.core.round.claims import by_hand
from assistant.core.round.gate import timers
from assistant.core.round.rounds import hold_is_over, hold_is_running, is_open, outstanding


def next(reading: Reading, world: World) -> Answer:
    """One thing to do now."""
    named = tuple(world.state.rounds[n] for n in reading.slots.enclosures if is_open(world.state.rounds.get(n)))
    rounds = named or (() if reading.slots.enclosures else open_rounds(world))
    if not rounds:
        names = reading.slots.enclosures
        return _no_round(reading, names[0] if names else None, {"enclosure": None, "step": None, "seconds": None})
    round_ = _most_urgent(rounds, world)
    way = way_on(round_, world)
    step = way.step
    left = {t.step: t.seconds for t in timers(world.state, world.now) if t.enclosure == round_.enclosure}
    asks_wet = step == "hold" and round_.paused_at is None and hold_is_over(round_, world.now)
    smells = step == "air" and round_.smells and "air" not in left
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "the_round.next",
        details={
            "enclosure": world.household.enclosure(round_.enclosure),
            "round": round_,
            "step": step,
            "way": way,
            "left_s": left.get(step),
            "smells": smells,
            "agent": world.facts.agents[round_.agent],
            "hands": hands_first(round_.enclosure, world),
        },
        values={
            "enclosure": round_.enclosure,
            "step": step,
            "seconds": left.get(step),
            "job": round_.job or None,
        },
        pending=wet_question(round_.enclosure, world) if asks_wet else give_up_question(round_, step, world),
        cautions=("caution-new-gloves",) if hands_first(round_.enclosure, world) else (),
    )


def _most_urgent(rounds: tuple[Round, ...], world: World) -> Round:
    """What is to be rinsed off comes first, then what can be done by hand, then the soonest clock; paused ones last."""
    clocks = {t.enclosure: t.seconds for t in reversed(timers(world.state, world.now))}

    def urgency(round_: Round) -> tuple[int, float]:
        step = step_now(round_, world)
        if round_.paused_at is not None:
            return 3, 0.0
        if step == "rinse" or (step == "hold" and not hold_is_running(round_, world.now)):
            return 0, 0.0
        if step == "return" or by_hand(round_, world.now) is not None:
            return 1, 0.0
        return 2, clocks.get(round_.enclosure, float("inf"))

    return min(rounds, key=urgency)


def status(reading: Reading, world: World) -> Answer:
    """What is done and what is left, of one enclosure or of all; or whether one step is on record."""
    names = reading.slots.enclosures or tuple(round_.enclosure for round_ in open_rounds(world))
    rounds = tuple(r for name in names if (r := world.state.rounds.get(name)) is not None)
    if not rounds:
        return _no_round(reading, names[0] if names else None, {"rounds": ()})
    doubted = [r for r in rounds if is_open(r) and hold_is_over(r, world.now)]
    if doubted and reading.slots.steps in (("dry",), ("hold",)):  # "did it stay wet?": only the keeper can tell
        asked = next(replace(reading, slots=replace(reading.slots, enclosures=(doubted[0].enclosure,))), world)
        return replace(asked, values={**asked.values, "rounds": tuple(_round_values(r, world) for r in rounds)})
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "the_round.status",
        details={
            "rounds": rounds,
            "steps": reading.slots.steps,
            "now": world.now,
            "left": {round_.enclosure: outstanding(round_, world.now) for round_ in rounds},
            "timers": timers(world.state, world.now),
        },
        values={"rounds": tuple(_round_values(round_, world) for round_ in rounds)},
    )


def _round_values(round_: Round, world: World) -> dict[str, Any]:
    return {
        "enclosure": round_.enclosure,
        "agent": round_.agent,
        "job": round_.job or None,
        "open": is_open(round_),
        "done": dict(round_.done),
        "blocked_by": outstanding(round_, world.now) if is_open(round_) else (),
        "next": step_now(round_, world) if is_open(round_) else None,
    }


def time_left(reading: Reading, world: World) -> Answer:
    """What is left on every running wet time and airing, and on a splash being rinsed."""
    running = timers(world.state, world.now)
    asked = [t for t in running if t.enclosure in reading.slots.enclosures]
    asked = [t for t in asked or running if not reading.slots.steps or t.step in reading.slots.steps] or asked
    wanted = asked if reading.slots.enclosures else asked or list(running)
    first = wanted[0] if wanted else None
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "the_round.time_left",
        details={"first": first, "timers": running, "asked": reading.slots.enclosures, "over": _over(world)},
        values={
            "seconds": first.seconds if first else None,
            "timers": tuple({"enclosure": t.enclosure, "step": t.step, "seconds": t.seconds} for t in running),
        },
    )


def _over(world: World) -> tuple[str, ...]:
    """Enclosures whose wet time is over but not rinsed off yet."""
    return tuple(r.enclosure for r in open_rounds(world) if hold_is_over(r, world.now))


def _no_round(reading: Reading, name: str | None, values: dict[str, Any]) -> Answer:
    return Answer(reading.intent, Outcome.ANSWER, "the_round.none_open", details={"enclosure": name}, values=values)
