"""The answers: one module a family of questions, one function a question, all pure.

A question's file in intents/ names its family; the function of the question's own name there answers it.
"""

from __future__ import annotations

from dataclasses import replace
from importlib import import_module
from typing import cast

from assistant.answer.asked_of_which import with_the_report_kept
from assistant.answer.asking import ask, trouble_in
from assistant.answer.meeting import touched_by
from assistant.answer.which import open_rounds
from assistant.contract import Answer, Doubt, Handler, Outcome, Pending, Reading, World
from assistant.core.record.events import (
    AgentTouched,
    AnimalFound,
    BackTooSoon,
    BottleRinsed,
    BottleUnsettled,
    Event,
    HoldDoubted,
    Recorded,
    Remarked,
    StepDone,
)
from assistant.core.record.fold import fold
from assistant.core.round.gate import timers
from assistant.core.round.rounds import hold_is_running, waits_on_hold
from assistant.core.shelf.bottles import ONLY_EMPTIED


def answer_to(reading: Reading, world: World) -> Answer:
    """The answer to one reading, by the function that its question names."""
    if reading.intent is None:
        return _unsure(reading, world)
    question = world.questions[reading.intent]
    if reading.again == "unclear":
        return replace(ask(reading, world, ("question",), "talk.in_full"), pending=world.waiting)
    reading = replace(reading, again="")  # how it was taken is for the words of this reply alone
    trouble = trouble_in(reading, world, question.family)
    if trouble is not None:
        return trouble
    doubted = (*_doubted(reading, world), *(_remarked(reading, world) if reading.intent == "return_check" else ()))
    for event in doubted:
        world = replace(world, state=fold(world.state, Recorded(world.now, "", event)))
    answer = _with_touches(handler_of(question.family, question.name)(reading, world), reading, world)
    answer = _with_what_is_left(_with_what_comes_first(_with_the_found(answer, reading, world), world), reading)
    answer = replace(answer, events=(*doubted, *answer.events))
    answer = answer if question.family == "harm" else _said_back(answer, reading, world)  # first aid waits for no "yes"
    return _with_the_remark(with_the_report_kept(answer, reading, world), reading, world)


def handler_of(family: str, name: str) -> Handler:
    """The function that answers a question.

    Fails: AttributeError or ModuleNotFoundError when there is none; a test asks for every file in intents/.
    """
    return cast(Handler, getattr(import_module(f"assistant.answer.{family}"), name))


def _unsure(reading: Reading, world: World) -> Answer:
    """Not understood. That something dried is still kept as a doubt: a running wet time then has to be vouched for."""
    if reading.slots.plain_water:
        return handler_of("filling", "water")(reading, world)
    if reading.slots.stock_strength is not None:
        return handler_of("stock_left", "strength_is_set")(reading, world)
    doubted = tuple(
        HoldDoubted(round_.enclosure)
        for round_ in open_rounds(world)
        if reading.slots.stayed_wet is False and waits_on_hold(round_)
    )
    details = {"nearest": _nearest(reading, world), "asked": _waits_for_a_yes(world)}
    remarked = () if doubted else _remarked(reading, world)
    message = "talk.remarked" if remarked else "talk.unsure"
    if doubted:
        runs = any(hold_is_running(round_, world.now) for round_ in open_rounds(world))
        message = "talk.may_have_dried" if runs else "talk.did_it_stay_wet"
    return _with_touches(Answer(None, Outcome.UNSURE, message, details, events=(*doubted, *remarked)), reading, world)


def _waits_for_a_yes(world: World) -> bool:
    """The tool has asked about a step, and nothing is recorded until it is told."""
    pending = world.waiting
    yes = pending.on_yes if pending is not None and not pending.unasked else None
    return isinstance(yes, Reading) and yes.intent == "done"


def _remarked(reading: Reading, world: World) -> tuple[Event, ...]:
    """What may matter is kept in the keeper's words, and asked about before anything is ready."""
    if not reading.slots.remark:
        return ()
    sprayed = [round_ for round_ in open_rounds(world) if round_.touched]
    named = [round_ for round_ in sprayed if round_.enclosure in reading.slots.enclosures]
    kept = (round_ for round_ in named or sprayed if reading.question not in round_.remarks)
    return tuple(Remarked(round_.enclosure, reading.question) for round_ in kept)


def _doubted(reading: Reading, world: World) -> tuple[Event, ...]:
    """ "Probably", asked whether it stayed wet: it is asked again, and what follows doesn't vouch for it."""
    if reading.intent != "next" or reading.slots.stayed_wet is not False:
        return ()
    return tuple(HoldDoubted(name) for name in reading.slots.enclosures if name in world.state.rounds)


BY_RINSE = ("eye", "skin")
"""Steps of the clocks that run while somebody is rinsed."""


def _with_what_comes_first(answer: Answer, world: World) -> Answer:
    """The same, with what comes before going on with the work: an eye or a skin being rinsed, and animals loose."""
    rinsing = tuple(timer for timer in timers(world.state, world.now) if timer.step in BY_RINSE and timer.seconds > 0)
    if rinsing and answer.message == "the_round.next":
        answer = replace(answer, details={**answer.details, "rinsing": rinsing})
    goes_on = answer.intent == "rewet" or answer.message in ("the_round.started", "the_round.next", "the_round.status")
    if not world.state.loose or not (goes_on or "apply" in answer.values.get("steps", ())):
        return answer
    homes = tuple(world.household.enclosure(one.enclosure) for one in world.state.loose)
    return replace(answer, details={**answer.details, "loose": homes})


def _with_the_remark(answer: Answer, reading: Reading, world: World) -> Answer:
    """The same, with what the sentence told besides of a surface: kept, whatever was recorded or asked."""
    if reading.intent == "return_check":
        return answer
    remarked = _remarked(reading, world)
    if not remarked:
        return answer
    details = {**answer.details, "left_untold": "remark"}
    return replace(answer, events=(*answer.events, *remarked), details=details)


def _with_what_is_left(answer: Answer, reading: Reading) -> Answer:
    """The same, with what the sentence told besides and nobody records: never left out in silence."""
    slots = reading.slots
    left = "chore" if reading.intent in ("mixed", "rinsed_out") and slots.chores else ""
    left = "bottle" if reading.intent == "log_clean" and slots.bottles and answer.events else left
    return replace(answer, details={**answer.details, "left_untold": left}) if left else answer


def _with_touches(answer: Answer, reading: Reading, world: World) -> Answer:
    """The same, with the agents that were said to have been put on: that is kept whatever was asked besides."""
    told = {getattr(event, "enclosure", None) for event in answer.events}
    homes = reading.slots.enclosures or tuple(round_.enclosure for round_ in open_rounds(world))
    if not reading.slots.touched or len(homes) != 1 or homes[0] in told:
        return answer
    on_it = {touch.agent for touch in world.state.surfaces.get(homes[0], ()) if not (touch.rinsed or touch.wiped)}
    kept = tuple(touched_by(homes[0], agent, world) for agent in reading.slots.touched if agent not in on_it)
    return replace(answer, events=(*answer.events, *kept))


def _with_the_found(answer: Answer, reading: Reading, world: World) -> Answer:
    """The same, with a loose animal that is found in the same breath: "found her, there's bleach on her"."""
    if reading.intent != "splash" or not reading.slots.found or not world.state.loose:
        return answer
    return replace(answer, events=(*answer.events, AnimalFound(world.state.loose[-1].enclosure)))


def _nearest(reading: Reading, world: World) -> tuple[tuple[str, str], ...]:
    """The nearest questions, with an example of each."""
    return tuple((name, world.questions[name].example) for name in reading.nearest if name in world.questions)


def _said_back(answer: Answer, reading: Reading, world: World) -> Answer:
    """The same answer, or, where it rests on a doubtful hearing, a question whether that was meant.

    A step that may have been denied matters only where something would be recorded.
    """
    doubts = tuple(one for one in reading.doubts if answer.events or one.kind not in ("polarity", "part", "meaning"))
    if _done_before(answer, world):
        doubts = tuple(one for one in doubts if one.kind != "part")
    if not doubts or answer.outcome is not Outcome.ANSWER:
        return answer
    certain = replace(reading, doubts=())
    return replace(
        answer,
        outcome=Outcome.CONFIRM,
        message="talk.confirm",
        details={
            "doubts": doubts,
            "steps": reading.slots.steps,
            "answer": answer,
            "heard": reading.question if reading.spoken else "",
        },
        values={key: False if key == "recorded" else value for key, value in answer.values.items()},
        events=_kept(answer, doubts, world),
        pending=Pending(certain, world.now, on_yes=certain),
    )


def _done_before(answer: Answer, world: World) -> bool:
    """Whether a step that is recorded is on record already: a part done again opens what follows it, so it counts."""
    again = (event for event in answer.events if isinstance(event, StepDone) and event.step in ("apply", "rinse"))
    return any(event.step in world.state.rounds[event.enclosure].done for event in again)


def _kept(answer: Answer, doubts: tuple[Doubt, ...], world: World) -> tuple[Event, ...]:
    """What counts while it is asked: what got onto a surface, and that an empty bottle holds no fill, rinsed or not."""
    if any(one.kind == "part" for one in doubts):
        return _touches(answer.events, world)
    if not any(one.heard == ONLY_EMPTIED for one in doubts):
        return ()
    return tuple(BottleUnsettled(event.bottle) for event in answer.events if isinstance(event, BottleRinsed))


def _touches(events: tuple[Event, ...], world: World) -> tuple[Event, ...]:
    """Of what was to be recorded, that an agent got onto a surface or an animal is inside: so it is, however many."""
    touched = tuple(event for event in events if isinstance(event, AgentTouched | BackTooSoon))
    sprayed = (event for event in events if isinstance(event, StepDone) and event.agent is not None)
    return (*touched, *(touched_by(event.enclosure, event.agent, world) for event in sprayed if event.agent))
