"""Talk about the talk: help, repeat, why, yes, no, undo."""

from __future__ import annotations

from dataclasses import replace

from assistant.answer import answer_to
from assistant.answer.asking import ask
from assistant.answer.kept_wet import dried_early
from assistant.answer.which import open_rounds
from assistant.contract import Answer, Outcome, Pending, Reading, Slots, World
from assistant.core.facts import Source, UnknownFact
from assistant.core.record.events import DriedEarly, Event, HabitChanged, Sensed, StepReopened, Voided
from assistant.core.record.state import Deed, PastTurn
from assistant.core.round.rounds import hold_is_over


def help(reading: Reading, world: World) -> Answer:
    """What can be asked, with an example of each."""
    questions = tuple(world.questions.values())
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "talk.help",
        details={"questions": questions},
        values={"questions": tuple(question.name for question in questions)},
    )


def repeat(reading: Reading, world: World) -> Answer:
    """The last reply again; the turn puts its words in."""
    said = world.talk.prompt or world.talk.last
    if said is None:
        return Answer(reading.intent, Outcome.UNSURE, "talk.nothing_said")
    return Answer(reading.intent, Outcome.ANSWER, "talk.repeat", values=said.values)


def hush(reading: Reading, world: World) -> Answer:
    """Silence; nothing is repeated unasked, and the clocks run on."""
    return Answer(reading.intent, Outcome.ANSWER, "talk.hushed", values={"hushed": True})


def slower(reading: Reading, world: World) -> Answer:
    """The last reply again, slowly; the mouth keeps that pace until told otherwise. The turn puts its words in."""
    slow = not FASTER & set(reading.words)
    if world.talk.last is None and world.talk.prompt is None:
        return Answer(reading.intent, Outcome.ANSWER, "talk.pace", {"slow": slow}, {"slower": slow})
    return Answer(reading.intent, Outcome.ANSWER, "talk.repeat_at_pace", {"slow": slow}, {"slower": slow})


FASTER = frozenset({"faster", "quicker", "normal", "usual", "speed"})


def units(reading: Reading, world: World) -> Answer:
    """Changes what a gallon or a colon means, once "yes" is said."""
    setting = reading.slots.setting
    if setting is None:
        now = world.household.habits
        return ask(reading, world, ("setting",), "talk.which_units", {"gallon": now.gallon or "US"}, setting=None)
    habit, value = setting
    if habit == "metric":
        return Answer(reading.intent, Outcome.ANSWER, "talk.metric", values={"setting": "metric", "value": None})
    values = {"setting": habit, "value": value}
    was = getattr((world.written or world.household).habits, habit) or ""
    if getattr(world.household.habits, habit) == value:
        return Answer(reading.intent, Outcome.ANSWER, "talk.set_already", {"habit": habit, "value": value}, values)
    done = Answer(
        reading.intent,
        Outcome.ANSWER,
        "talk.set",
        {"habit": habit, "value": value},
        values,
        events=(HabitChanged(habit, value, was),),
    )
    pending = Pending(reading, world.now, on_yes=done)
    details = {"habit": habit, "value": value}
    return Answer(reading.intent, Outcome.CONFIRM, "talk.set_confirm", details, values, pending=pending)


def why(reading: Reading, world: World) -> Answer:
    """Where the last answer's number comes from: what its sources say, and which of them is no more than habit."""
    last = world.talk.last
    if last is None:
        return Answer(reading.intent, Outcome.UNSURE, "talk.nothing_said")
    told = tuple((source, _says(source, world)) for source in last.sources)
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "talk.why" if told else "talk.why_unsourced",
        details={"told": told, "last": last},
        values={
            "of": last.values.get("of", last.intent),
            "said": last.values.get("said", last.say) if last.intent == "why" else last.say,
            "organism": last.values.get("organism"),
            "sources": tuple({"id": source.id, "kind": source.kind, "says": says} for source, says in told),
        },
        sources=last.sources,
    )


def _says(source: Source, world: World) -> str:
    """What a source says, in our words; a label or a setting is its own text."""
    if source.kind in ("label", "setting"):
        return source.text
    try:
        return world.facts[source.id].says
    except UnknownFact:
        return source.text


def yes(reading: Reading, world: World) -> Answer:
    """The answer that a waiting question gives to "yes"; with nothing waiting it changes nothing."""
    pending = world.waiting
    if pending is None:
        return _stayed_wet_which(reading, world) or Answer(reading.intent, Outcome.UNSURE, "talk.nothing_waiting")
    if pending.on_yes is None:
        return Answer(
            reading.intent, Outcome.ASK, "talk.which_then", missing=pending.missing, pending=_kept(pending, world)
        )
    if _is_no_more_than_a_nod(reading) and _was_asked_of_a_step(pending):
        return Answer(reading.intent, Outcome.ASK, "talk.yes_or_no", missing=("answer",), pending=_kept(pending, world))
    return _come_to(pending.on_yes, reading, world)


_NODS = frozenset({"hm", "hmm", "mm", "mhm", "ok", "okay", "right", "fine", "alright", "well"})
""" "Hm", "right": heard, perhaps, but no word for it that a step was done."""


def _is_no_more_than_a_nod(reading: Reading) -> bool:
    return bool(reading.words) and set(reading.words) <= _NODS


def _was_asked_of_a_step(pending: Pending) -> bool:
    """A "yes" would put a step on record that nobody told in so many words."""
    yes = pending.on_yes
    claimed = isinstance(yes, Reading) and yes.intent == "done" and yes.slots.stayed_wet is not False
    return claimed and "start" not in pending.missing


def _stayed_wet_which(reading: Reading, world: World) -> Answer | None:
    """ "Yes", after two wet times were asked about at once: it vouches for neither before it is told which."""
    over = tuple(r.enclosure for r in open_rounds(world) if hold_is_over(r, world.now))
    if len(over) < 2:
        return None
    vouched = Reading("", "done", Slots(steps=("hold",), stayed_wet=True), confidence=1.0)
    if {"both", "all"} & set(reading.words):
        return answer_to(replace(vouched, slots=replace(vouched.slots, enclosures=over)), world)
    return ask(vouched, world, ("enclosure",), "the_round.which", {"candidates": over})


def no(reading: Reading, world: World) -> Answer:
    """The answer that a waiting question gives to "no"; right after a heard step it takes that back."""
    pending = world.waiting
    if pending is not None and pending.on_no is not None:
        return _come_to(pending.on_no, reading, world)
    if pending is not None:
        return Answer(
            reading.intent, Outcome.ANSWER, "talk.not_recorded", details={"steps": pending.reading.slots.steps[:1]}
        )
    if world.talk.takes_back:
        return undo(reading, world)
    return Answer(reading.intent, Outcome.UNSURE, "talk.nothing_waiting")


def undo(reading: Reading, world: World) -> Answer:
    """Takes back what the latest turn recorded; said again, the one before it."""
    if not world.state.turns:
        return Answer(reading.intent, Outcome.ANSWER, "talk.nothing_to_undo", values={"undone": ()})
    last: PastTurn | None = world.state.turns[-1]
    if reading.slots.corrects:
        if len(reading.slots.enclosures) > 1:
            return _not_done_where(reading, world)
        last = _turn_that_recorded(reading, world)
    elif reading.slots.steps:
        return _instead(reading, world)
    elif reading.slots.bottles:
        last = _turn_that_filled(reading.slots.bottles[0], world) or last
    if last is not None and _is_one_of_several(reading, last):
        return _reopened(reading, last, world)
    if last is None:  # told by what followed, or longer ago than undo goes: sprayed again, it starts from there
        return dried_early(_lost(reading), world)
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "talk.undone",
        details={"deeds": last.deeds, "at": last.at, "now": world.now},
        values={"undone": tuple({"event": d.event, "thing": d.thing, "step": d.step} for d in last.deeds)},
        events=(Voided(last.turn), *_to_do_again(reading, world)),
    )


def _is_one_of_several(reading: Reading, last: PastTurn) -> bool:
    """Whether the turn told more than the one step that is denied, which stays: "out, cleared and washed"."""
    return bool(reading.slots.corrects) and reading.slots.steps[0] in _CAN_BE_REOPENED and len(last.deeds) > 1


_CAN_BE_REOPENED = ("clear", "wash", "apply", "rinse", "dry")


def _reopened(reading: Reading, last: PastTurn, world: World) -> Answer:
    home, step = reading.slots.enclosures[0], reading.slots.steps[0]
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "talk.undone",
        details={"deeds": (Deed("StepDone", home, step),), "at": last.at, "now": world.now},
        values={"undone": ({"event": "StepDone", "thing": home, "step": step},)},
        events=(StepReopened(home, step),),
    )


def _to_do_again(reading: Reading, world: World) -> tuple[Event, ...]:
    """What was done on top of a step that is denied, and has to be done again: the spraying, or the drying."""
    if not reading.slots.corrects:
        return ()
    name, step = reading.slots.enclosures[0], reading.slots.steps[0]
    round_ = world.state.rounds.get(name)
    if round_ is None:
        return ()
    if step in ("move out", "clear", "wash") and "apply" in round_.done:
        return (DriedEarly(name),)
    return (Sensed(name, None, True),) if step == "rinse" and "dry" in round_.done else ()


def _lost(reading: Reading) -> Reading:
    """The same enclosure's wet time as one that didn't hold, which re-opens everything from the spraying on."""
    slots = Slots(enclosures=reading.slots.enclosures, too_early=True)
    return replace(reading, intent="dried_early", slots=slots)


def _not_done_where(reading: Reading, world: World) -> Answer:
    """ "I never rinsed", with several cleans that have a rinse on record: asked of which."""
    candidates = reading.slots.enclosures
    unnamed = replace(reading, slots=replace(reading.slots, enclosures=()))
    return ask(
        unnamed, world, ("enclosure",), "talk.not_done_where", {"candidates": candidates, "steps": reading.slots.steps}
    )


def _turn_that_recorded(reading: Reading, world: World) -> PastTurn | None:
    """The latest turn that put a step on record which is now said not to have been done; with it goes all it told."""
    home, step = reading.slots.enclosures[0], reading.slots.steps[0]
    turns = (t for t in reversed(world.state.turns) if any(_recorded(d, home, step) for d in t.deeds))
    return next(turns, None)


def _turn_that_filled(bottle: str, world: World) -> PastTurn | None:
    turns = (
        t for t in reversed(world.state.turns) if any((d.event, d.thing) == ("BottleMixed", bottle) for d in t.deeds)
    )
    return next(turns, None)


def _recorded(deed: Deed, home: str, step: str) -> bool:
    return (deed.event, deed.thing, deed.step) == ("StepDone", home, step)


def _instead(reading: Reading, world: World) -> Answer:
    """Takes back the steps that were of another enclosure, and asks whether they are of the one named."""
    plain = undo(replace(reading, slots=Slots()), world)
    meant = replace(reading, intent="done")
    named, steps = reading.slots.enclosures, reading.slots.steps
    details = {**plain.details, "enclosures": named, "steps": steps}
    pending = Pending(meant, world.now, missing=() if named else ("enclosure",), on_yes=meant if named else None)
    missing = () if named else ("enclosure",)
    return replace(
        plain, outcome=Outcome.ASK, message="talk.undone_instead", details=details, missing=missing, pending=pending
    )


def _kept(pending: Pending, world: World) -> Pending:
    return replace(pending, asked_at=world.now)


def _come_to(outcome: Answer | Reading, reading: Reading, world: World) -> Answer:
    if isinstance(outcome, Answer):
        return outcome
    return answer_to(replace(outcome, spoken=reading.spoken), world)
