"""Harm: a splash, a swallow, fumes; and every wish to put a disinfectant on an animal. Escapes and spills: `alarms`.

These answer at once, whatever else is going on, and ask for nothing first. Of a round only the air is
touched by them.
"""

from __future__ import annotations

from dataclasses import replace

from assistant.answer.alarms import escape, spill
from assistant.answer.fumes import with_the_air
from assistant.answer.named import agents_named
from assistant.contract import Answer, Outcome, Pending, Reading, World
from assistant.core.facts import Agent
from assistant.core.harms import gas_or_fumes
from assistant.core.record.events import RinseBegun, RinseEnded
from assistant.core.round.rounds import rinse_left_s

__all__ = ["escape", "spill", "splash", "wound"]

FIRST_AID: dict[tuple[str, str], tuple[str, ...]] = {
    ("person", "eye"): ("first-aid-rinse", "first-aid-eye", "first-aid-eye-urgent", "first-aid-rinse-shorter"),
    ("person", "skin"): ("first-aid-rinse", "first-aid-skin", "first-aid-rinse-shorter"),
    ("person", "mouth"): ("first-aid-swallowed", "first-aid-swallowed-water"),
    ("person", "lungs"): ("first-aid-fumes",),
    ("animal", "eye"): ("first-aid-animal-flush", "first-aid-animal-lukewarm", "first-aid-animal-nothing"),
    ("animal", "skin"): ("first-aid-animal-flush", "first-aid-animal-lukewarm", "first-aid-animal-nothing"),
    ("animal", "mouth"): ("first-aid-animal-nothing", "first-aid-animal-mouth"),
    ("animal", "lungs"): ("first-aid-fumes", "first-aid-animal-nothing"),
}
"""Facts by who and where; where a rinse has a length it is the first one's value."""
BURNING = ("first-aid-fumes", "caution-alcohol-fire")
"""Of a fire nothing but these is on file: out, and what burns."""

SAID_OF = {"eye": "harm.eye", "skin": "harm.skin", "mouth": "harm.mouth", "lungs": "harm.lungs"}
"""The wording of each place."""

RINSED = ("eye", "skin")

ANEW = frozenset({"again", "another", "more", "other"})
"""Words that make it a new splash, so that its rinse starts over. Taken for too much, they only lengthen a rinse."""


def splash(reading: Reading, world: World) -> Answer:
    """What to do at once after a splash, a swallow or fumes, then whom to call; fumes re-open the airing."""
    return with_the_air(_first_aid_told(reading, world), reading, world)


def _first_aid_told(reading: Reading, world: World) -> Answer:
    """What to do, and whom to call; starts the rinse's clock."""
    place, victim = reading.slots.place, reading.slots.victim or "person"
    if reading.slots.asked_of_harm is not None:
        return _followed(reading, world, place, victim)
    if place is None:
        return _place_unknown(reading, world, victim)
    if place == "lungs" and reading.slots.got_out:
        return _answer(reading, world, "harm.out_of_it", place, victim)
    if place == "lungs" and victim == "animal" and _gas_was_made(world):
        return _answer(reading, world, "harm.animal_in_gas", place, victim)
    if place not in RINSED:
        return _answer(reading, world, SAID_OF[place], place, victim)
    left = _rinse_left_s(place, victim, world)
    if left > 0 and not ANEW & set(reading.words):
        return _answer(reading, world, "harm.keep_rinsing", place, victim, left)
    return _answer(reading, world, SAID_OF[place], place, victim)


def _followed(reading: Reading, world: World, place: str | None, victim: str) -> Answer:
    """What is asked right after: no new splash, so no clock starts over."""
    asked = reading.slots.asked_of_harm
    if asked == "fire":
        return _fire(reading, world)
    if asked == "number":
        return _numbers(reading, world, place, victim)
    if asked == "help":
        return _help_called(reading, world, place, victim)
    left = _rinse_left_s(place, victim, world) if place is not None else 0.0
    if asked == "collapsed" and not (victim == "animal" and place == "lungs"):
        message = "harm.animal_down" if victim == "animal" and place is None else "harm.collapsed"
        return _told_on(_answer(reading, world, message, place or "lungs", victim, left), left)
    if asked == "give":
        return _told_on(_answer(reading, world, "harm.nothing_given", place or "mouth", victim, left), left)
    if asked == "over":
        return _rinse_called_off(reading, world)
    if place is None:
        return _place_unknown(reading, world, victim)
    if asked == "if":
        return _told_on(_answer(reading, world, SAID_OF[place], place, victim), 0.0)
    if asked == "onto it" and place in RINSED:
        return _told_on(_answer(reading, world, "harm.only_water", place, victim, left), left)
    if asked == "lens" and place == "eye" and victim == "person":
        return _told_on(_answer(reading, world, "harm.lens", place, victim, left), left)
    if place not in RINSED:
        return _answer(reading, world, SAID_OF[place], place, victim)
    message = "harm.keep_rinsing" if left > 0 else "harm.see_it"
    answer = _told_on(_answer(reading, world, message, place, victim, left), left)
    return replace(answer, details={**answer.details, "bare": asked == "bare"})


def _told_on(answer: Answer, left_s: float) -> Answer:
    """The same, with no clock begun by it and what is left of the one that runs."""
    details = {**answer.details, "counting": False}
    return replace(answer, events=(), details=details, values={**answer.values, "seconds": left_s or None})


def _help_called(reading: Reading, world: World, place: str | None, victim: str) -> Answer:
    """ "Help me!": the emergency number first; then what goes on, or where it got to."""
    if place is not None:
        left = _rinse_left_s(place, victim, world)
        return _told_on(_answer(reading, world, "harm.help_called", place, victim, left), left)
    plain = replace(reading, slots=replace(reading.slots, asked_of_harm=None))  # what the next turn goes on from
    return replace(_place_unknown(plain, world, victim), message="harm.help_called")


def _rinse_called_off(reading: Reading, world: World) -> Answer:
    """ "False alarm", "the poison centre says I'm fine": the rinse that was begun last ends."""
    running = [rinse for rinse in world.state.rinses if rinse_left_s(rinse, world.now) > 0]
    ended = max(running, key=lambda rinse: rinse.began, default=None)
    fact = world.facts["first-aid-eye-urgent"]
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "harm.called_off",
        details={
            "ended": ended.place if ended is not None else None,
            "victim": ended.victim if ended is not None else "person",
            "people": world.household.people,
            "steps": (fact.says,),
        },
        values={"place": None, "victim": None, "minutes": None, "seconds": None},
        cautions=("caution-not-instead",),
        sources=(fact.cited(),),
        events=(RinseEnded(ended.place, ended.victim),) if ended is not None else (),
    )


def _fire(reading: Reading, world: World) -> Answer:
    """Something burns or smokes: out, and the emergency number. How to put it out is not on file."""
    facts = tuple(world.facts[fact] for fact in BURNING)
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "harm.fire",
        details={"people": world.household.people, "steps": tuple(fact.says for fact in facts)},
        values={"place": None, "victim": None, "minutes": None, "seconds": None},
        cautions=("caution-not-instead",),
        sources=tuple(fact.cited() for fact in facts),
    )


def _numbers(reading: Reading, world: World, place: str | None, victim: str) -> Answer:
    """Whom to call: the numbers of keeping.toml."""
    fact = world.facts["first-aid-label"]
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "harm.numbers",
        details={"victim": victim, "people": world.household.people, "steps": (fact.says,)},
        values={"place": place, "victim": victim, "minutes": None, "seconds": None},
        cautions=("caution-not-instead",),
        sources=(fact.cited(),),
    )


def _answer(reading: Reading, world: World, message: str, place: str, victim: str, left_s: float = 0.0) -> Answer:
    too = tuple(other for other in reading.slots.places_too if other != place)
    told = (*(fact for where in (place, *too) for fact in _first_aid(victim, where)), "first-aid-label")
    facts = tuple(world.facts[fact] for fact in dict.fromkeys(told))
    seconds = float(facts[0].exact() * 60) if place in RINSED else None
    begun = [RinseBegun(place, victim, seconds)] if seconds is not None and left_s == 0 else []
    begun += [
        RinseBegun(other, victim, float(world.facts[_first_aid(victim, other)[0]].exact() * 60))
        for other in too
        if other in RINSED and _rinse_left_s(other, victim, world) == 0
    ]
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        message,
        details={
            "place": place,
            "victim": victim,
            "minutes": None if seconds is None else round(seconds / 60),
            "counting": True,
            "left_s": left_s,
            "too": too,
            "people": world.household.people,
            "steps": tuple(fact.says for fact in facts),
            "notes": tuple(fact.note for fact in facts if fact.note),
        },
        values={
            "place": place,
            "victim": victim,
            "minutes": None if seconds is None else round(seconds / 60),
            "seconds": left_s or seconds,
        },
        cautions=("caution-not-instead",),
        sources=tuple(fact.cited() for fact in facts),
        events=tuple(begun),
    )


def _first_aid(victim: str, place: str) -> tuple[str, ...]:
    """The facts for whom and where; of him or her, who may be either, those of both."""
    whose = ("person", "animal") if victim == "either" else (victim,)
    return tuple(dict.fromkeys(fact for one in whose for fact in FIRST_AID[one, place]))


def _rinse_left_s(place: str, victim: str, world: World) -> float:
    """Seconds still to rinse, by the clock that runs; 0: none does. Of him or her, who may be either: anybody's."""
    whose = {victim, "either"} if victim != "either" else {"either", "person", "animal"}
    running = (rinse for rinse in world.state.rinses if rinse.place == place and rinse.victim in whose)
    return max((rinse_left_s(rinse, world.now) for rinse in running), default=0.0)


def _gas_was_made(world: World) -> bool:
    """The last reply was about a gas, or one was told of in the last hours."""
    last, told = world.talk.last, gas_or_fumes(world.talk.harms, world.now)
    just_now = last is not None and last.outcome is Outcome.REFUSE and last.values.get("gas") is True
    return just_now or (told is not None and told.gas)


def _place_unknown(reading: Reading, world: World, victim: str) -> Answer:
    """One line that helps wherever it got to, and the question where."""
    facts = tuple(world.facts[fact] for fact in ("first-aid-rinse", "first-aid-fumes", "first-aid-swallowed"))
    return Answer(
        reading.intent,
        Outcome.ASK,
        "harm.where",
        details={"victim": victim, "people": world.household.people, "steps": tuple(fact.says for fact in facts)},
        values={"place": None, "victim": victim, "minutes": None, "seconds": None},
        missing=("place",),
        cautions=("caution-not-instead",),
        sources=tuple(fact.cited() for fact in facts),
        pending=Pending(reading, world.now, missing=("place",)),
    )


# ---------------------------------------------------------------- nothing on an animal


def wound(reading: Reading, world: World) -> Answer:
    """Refuses to put any disinfectant on or in an animal, with the published reason; the vet answers that."""
    agent = next(iter(agents_named(reading, world)), None)
    facts = tuple(world.facts[fact] for fact in _reasons(agent, reading.slots.place))
    return Answer(
        reading.intent,
        Outcome.REFUSE,
        "harm.wound",
        details={
            "agent": agent,
            "studied": agent is None or agent.family == "biguanide",
            "people": world.household.people,
            "reasons": tuple(fact.says for fact in facts),
        },
        values={"agent": agent.id if agent is not None else None},
        cautions=("caution-vet",),
        sources=tuple(fact.cited() for fact in facts),
    )


def _reasons(agent: Agent | None, place: str | None) -> tuple[str, ...]:
    """The facts that speak against it."""
    if agent is not None and agent.family == "iodine":
        return ("refusal-wound-iodine",)
    cells = ("refusal-wound-cells", "refusal-wound-fibroblasts")
    return (*cells, "refusal-wound-eye") if place == "eye" else cells
