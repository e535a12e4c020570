"""How a claim is kept and answered: the state as it grows, a step that isn't recorded, a question what "yes" means."""

from __future__ import annotations

from dataclasses import dataclass, field, replace

from assistant.answer.asking import ask
from assistant.answer.plan import supply_in
from assistant.answer.way_on import step_now
from assistant.contract import Answer, Outcome, Pending, Reading, World
from assistant.core.record.events import Event, Recorded, Sensed
from assistant.core.record.fold import fold
from assistant.core.record.state import State
from assistant.core.round.claims import Judgement
from assistant.core.round.rounds import is_open


@dataclass
class Ledger:
    """The state as it grows while the steps of one sentence are judged in turn."""

    state: State
    world: World
    wiped: bool
    """The rinse was a wiping with clean water."""
    events: list[Event] = field(default_factory=list)

    def note(self, *events: Event) -> None:
        for event in events:
            self.state = fold(self.state, Recorded(self.world.now, "", event))
            self.events.append(event)


def about(reading: Reading, name: str, steps: tuple[str, ...], stayed_wet: bool | None = None) -> Reading:
    """A claim of those steps in that enclosure, in place of what was said."""
    slots = replace(reading.slots, enclosures=(name,), every_enclosure=False, steps=steps, stayed_wet=stayed_wet)
    of_a_part = tuple(doubt for doubt in reading.doubts if doubt.kind == "part" and steps != ("hold",))
    return replace(reading, intent="done", slots=slots, doubts=of_a_part)


def told_of(names: tuple[str, ...], reading: Reading) -> tuple[Event, ...]:
    """What was said of smell and wet, as events; empty: nothing was."""
    smell, wet = reading.slots.smell, True if reading.slots.wet else None
    return tuple(Sensed(name, smell, wet) for name in names) if smell is not None or wet else ()


def steps_from(step: str, reading: Reading) -> tuple[str, ...]:
    """The steps claimed, from that one on."""
    steps = reading.slots.steps
    return steps[steps.index(step) :] if step in steps else (step,)


def was_it_done(judgement: Judgement, name: str, reading: Reading, world: World) -> Answer:
    """ "Was that done?": yes records the missing step, then the claimed one."""
    both = about(reading, name, (judgement.gap, *steps_from(judgement.step, reading)))
    return asking(reading, "the_round.gap", world, name, judgement, both)


def unrecorded(
    reading: Reading,
    message: str,
    world: World,
    name: str,
    judgement: Judgement,
    outcome: Outcome = Outcome.ANSWER,
) -> Answer:
    """An answer to a step that isn't recorded."""
    round_ = world.state.rounds.get(name)
    return Answer(
        reading.intent,
        outcome,
        message,
        details={
            "enclosure": world.household.enclosure(name),
            "round": round_,
            "judgement": judgement,
            "agent": world.facts.agents[round_.agent] if round_ is not None else None,
        },
        values={
            "recorded": False,
            "enclosure": name,
            "enclosures": (name,),
            "steps": reading.slots.steps,
            "seconds": judgement.left_s,
            "next": step_now(round_, world) if round_ is not None and is_open(round_) else None,
        },
    )


def asking(
    reading: Reading,
    message: str,
    world: World,
    name: str,
    judgement: Judgement,
    on_yes: Reading,
    on_no: Reading | None = None,
) -> Answer:
    """The same, where it asks, and what "yes" and "no" then mean."""
    return replace(
        unrecorded(reading, message, world, name, judgement, Outcome.ASK),
        missing=(judgement.gap or "answer",),
        pending=Pending(on_yes, world.now, on_yes=on_yes, on_no=on_no),
    )


def nothing_open(reading: Reading, world: World, name: str | None = None) -> Answer:
    """No round is open there: asks what it takes to start one; nothing but the touch of an agent is kept.

    With what it was sprayed may come only with the answer, so that it was goes along.
    """
    names = (name,) if name is not None else reading.slots.enclosures[:1] or _about_to_start(world)
    sprayed = tuple(step for step in reading.slots.steps if step == "apply")
    slots = replace(reading.slots, enclosures=names, steps=sprayed, openings=None, stayed_wet=None)
    start = replace(reading, intent="start", slots=slots, doubts=())
    if names and sprayed and supply_in(reading, world) is not None:
        return _shall_i_begin(reading, start, names[0], world)
    missing = ("bottle", "stock", "agent") if names else ("enclosure",)
    details = {"enclosure": names[0] if names else None}
    answer = ask(start, world, missing, "the_round.done_where", details, recorded=False)
    return replace(answer, intent=reading.intent)


def _shall_i_begin(reading: Reading, start: Reading, name: str, world: World) -> Answer:
    """ "Sprayed it with the yellow bottle", and no clean is open there: "yes" begins one with that."""
    supply = supply_in(reading, world)
    answer = ask(
        start, world, ("start",), "the_round.shall_i_begin", {"enclosure": name, "supply": supply}, recorded=False
    )
    return replace(answer, intent=reading.intent, pending=Pending(start, world.now, on_yes=start))


def _about_to_start(world: World) -> tuple[str, ...]:
    """The enclosures of a clean that waits for its product: what is told meanwhile is told of those."""
    waits = world.waiting
    if waits is None or waits.reading.intent != "start":
        return ()
    return waits.reading.slots.enclosures
