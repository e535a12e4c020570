"""The film during its wet time: it dried before time, or it was seen wet or sprayed again to keep it so."""

from __future__ import annotations

from dataclasses import replace

from assistant.answer.claimed import done
from assistant.answer.on_record import Ledger, about, asking, unrecorded
from assistant.answer.plan import supply_in
from assistant.answer.senses import still_smells
from assistant.answer.which import open_rounds, which_rounds
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.record.events import DriedEarly, Event, HoldDoubted, KeptWet
from assistant.core.record.state import Round
from assistant.core.round.claims import Judgement
from assistant.core.round.rounds import hold_is_running, hold_left_s, is_open, next_step, waits_on_hold


def dried_early(reading: Reading, world: World) -> Answer:
    """It dried before its time: the wet time starts over. Dry when that is the next step, it is just that step."""
    names = which_rounds(reading, world, waits_on_hold)
    if isinstance(names, Answer):
        return replace(names, events=doubts(world, open_rounds(world)))  # until it's told which, no wet time counts
    if not names:
        return none_open(reading, world)
    rounds = [(name, world.state.rounds.get(name)) for name in names]
    lost = tuple(name for name, round_ in rounds if round_ is not None and _is_lost(round_, reading, world))
    if lost:
        return _starts_over(lost, reading, world)
    name, round_ = rounds[0]
    if round_ is not None and waits_on_hold(round_):
        return replace(_was_it_before_time(name, reading, world), events=(HoldDoubted(name),))
    if reading.slots.part is not None and round_ is not None and is_open(round_):
        return _all_of_it(name, reading, world)
    dry = done(replace(reading, intent="done", slots=replace(reading.slots, steps=("dry",))), world)
    return _as_said(dry, reading)


def _as_said(answer: Answer, reading: Reading) -> Answer:
    """Judged as another question, it stays the one that was said unless something is recorded as that."""
    return answer if answer.values.get("recorded") else replace(answer, intent=reading.intent)


def _is_lost(round_: Round, reading: Reading, world: World) -> bool:
    """Dry while the wet time runs; or, said in so many words, before it was over, however late that comes out."""
    if not is_open(round_):
        return False
    if waits_on_hold(round_) and hold_is_running(round_, world.now):
        return True
    return reading.slots.too_early and (waits_on_hold(round_) or "hold" in round_.done)


def doubts(world: World, rounds: tuple[Round, ...]) -> tuple[Event, ...]:
    """A doubt about every wet time that runs: each counts only once the keeper vouches for it."""
    return tuple(HoldDoubted(round_.enclosure) for round_ in rounds if hold_is_running(round_, world.now))


def _starts_over(names: tuple[str, ...], reading: Reading, world: World) -> Answer:
    ledger = Ledger(world.state, world, wiped=False)
    ledger.note(*(DriedEarly(name) for name in names))
    after = replace(world, state=ledger.state)
    first = unrecorded(reading, "the_round.dried", after, names[0], Judgement("early", "hold"))
    seconds = world.state.rounds[names[0]].hold_s
    return replace(
        first,
        details={**first.details, "part": reading.slots.part},
        values={**first.values, "recorded": True, "enclosures": names, "seconds": seconds},
        events=tuple(ledger.events),
    )


def _was_it_before_time(name: str, reading: Reading, world: World) -> Answer:
    """It is dry now, and the wet time is over by the clock: only the keeper knows which came first."""
    wet, dry = (about(reading, name, ("hold",), stayed_wet=stayed) for stayed in (True, False))
    return asking(reading, "the_round.stayed_wet", world, name, Judgement("vouch", "hold", gap="hold"), wet, dry)


def _all_of_it(name: str, reading: Reading, world: World) -> Answer:
    every = replace(about(reading, name, ("dry",)), doubts=())
    return asking(reading, "the_round.all_dry", world, name, Judgement("gap", "dry"), every)


def none_open(reading: Reading, world: World) -> Answer:
    """Nothing is open there, so there is nothing that it could be recorded on."""
    names = reading.slots.enclosures
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "the_round.none_open",
        details={"enclosure": names[0] if names else None},
        values={"recorded": False, "enclosure": names[0] if names else None, "enclosures": names, "seconds": None},
    )


# ---------------------------------------------------------------- kept wet


def rewet(reading: Reading, world: World) -> Answer:
    """Seen wet, or sprayed again from the same bottle, during the wet time: the clock runs on.

    Sprayed again at any other time, or with something else, it is a new spraying; `done` judges that.
    """
    names = which_rounds(reading, world, lambda round_: waits_on_hold(round_) and hold_is_running(round_, world.now))
    if isinstance(names, Answer):
        return names
    if not names:
        return none_open(reading, world)
    again = "apply" in reading.slots.steps
    rounds = [world.state.rounds.get(name) for name in names]
    inside = again and any(r is not None and r.put_back for r in rounds)  # `done` refuses to spray on an animal
    if (
        not inside
        and all(r is not None and waits_on_hold(r) and hold_is_running(r, world.now) for r in rounds)
        and (not again or all(r is not None and _same_bottle(r, reading, world) for r in rounds))
    ):
        return _runs_on(names, again, reading, world)
    if again:
        return _as_said(done(replace(_spraying(names, reading), intent="done"), world), reading)
    first = rounds[0]
    if first is not None and (waits_on_hold(first) or _is_unsprayed(first, world)):
        vouched = replace(reading, intent="done", slots=replace(reading.slots, enclosures=names, steps=("hold",)))
        return _as_said(done(vouched, world), reading)
    wet = still_smells(replace(reading, intent="still_smells", slots=replace(reading.slots, wet=True)), world)
    return wet if open_rounds(world) else replace(wet, intent=reading.intent)


def _is_unsprayed(round_: Round, world: World) -> bool:
    """A product is on it, though no spraying is on record yet: the steps before are asked about."""
    touched = round_.touched or bool(world.state.surfaces.get(round_.enclosure))
    return touched and is_open(round_) and "apply" in round_.steps and {"apply", "rinse"}.isdisjoint(round_.done)


def _spraying(names: tuple[str, ...], reading: Reading) -> Reading:
    return replace(reading, slots=replace(reading.slots, enclosures=names, every_enclosure=False, steps=("apply",)))


def _same_bottle(round_: Round, reading: Reading, world: World) -> bool:
    """What was sprayed again is the round's own, as far as it was said."""
    slots = reading.slots
    if not (slots.bottles or slots.stocks or slots.agents):
        return True
    supply = supply_in(reading, world)
    if supply is None or supply.agent.id != round_.agent:
        return False
    return not slots.bottles or slots.bottles == (round_.bottle,)


def _runs_on(names: tuple[str, ...], again: bool, reading: Reading, world: World) -> Answer:
    rounds = sorted((world.state.rounds[name] for name in names), key=lambda r: _left(r, world) or 0.0)
    names = tuple(round_.enclosure for round_ in rounds)
    seconds = _left(rounds[0], world)
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "the_round.runs_on",
        details={"enclosure": world.household.enclosure(names[0]), "left_s": seconds, "again": again, "several": names},
        values={
            "recorded": True,
            "enclosure": names[0],
            "enclosures": names,
            "seconds": seconds,
            "next": next_step(rounds[0], world.now),
        },
        events=tuple(KeptWet(r.enclosure, r.agent if again else None) for r in rounds),
    )


def _left(round_: Round, world: World) -> float | None:
    return hold_left_s(round_.hold, world.now) if round_.hold is not None else None
