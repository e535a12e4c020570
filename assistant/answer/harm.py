"""Harm: a splash, a swallow, fumes; and every wish to put a disinfectant on an animal. Escapes and spills: `alarms`.

These answer at once, whatever else is going on, and ask for nothing first. No round is touched by them.
"""

from __future__ import annotations

from assistant.answer.alarms import escape, spill
from assistant.answer.named import agents_named
from assistant.contract import Answer, Outcome, Pending, Reading, World
from assistant.core.events import RinseBegun
from assistant.core.facts import Agent
from assistant.core.rounds import rinse_left_s

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

SAID_OF = {"eye": "harm.eye", "skin": "harm.skin", "mouth": "harm.mouth", "lungs": "harm.lungs"}
"""The wording of each place."""

RINSED = ("eye", "skin")

ANEW = frozenset({"again", "another", "more", "other"})
"""Words that make it a new splash, so that its rinse starts over. Taken for too much, they only lengthen a rinse."""


def splash(reading: Reading, world: World) -> Answer:
    """What to do at once after a splash, a swallow or fumes, then whom to call; starts the rinse's clock."""
    place, victim = reading.slots.place, reading.slots.victim or "person"
    if place is None:
        return _place_unknown(reading, world, victim)
    if place == "lungs" and reading.slots.got_out:
        return _answer(reading, world, "harm.out_of_it", place, victim)
    if place == "lungs" and victim == "animal" and _gas_was_made(world):
        return _answer(reading, world, "harm.animal_in_gas", place, victim)
    if place not in RINSED:
        return _answer(reading, world, SAID_OF[place], place, victim)
    left = _rinse_left_s(place, victim, world)
    if left > 0 and not ANEW & set(reading.question.casefold().split()):
        return _answer(reading, world, "harm.keep_rinsing", place, victim, left)
    return _answer(reading, world, SAID_OF[place], place, victim)


def _answer(reading: Reading, world: World, message: str, place: str, victim: str, left_s: float = 0.0) -> Answer:
    facts = tuple(world.facts[fact] for fact in (*FIRST_AID[victim, place], "first-aid-label"))
    seconds = float(facts[0].exact() * 60) if place in RINSED else None
    begun = (RinseBegun(place, victim, seconds),) if seconds is not None and left_s == 0 else ()
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        message,
        details={
            "place": place,
            "victim": victim,
            "minutes": None if seconds is None else round(seconds / 60),
            "left_s": left_s,
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
        events=begun,
    )


def _rinse_left_s(place: str, victim: str, world: World) -> float:
    """Seconds still to rinse, by the clock that runs; 0: none does."""
    for rinse in world.state.rinses:
        if (rinse.place, rinse.victim) == (place, victim):
            return rinse_left_s(rinse, world.now)
    return 0.0


def _gas_was_made(world: World) -> bool:
    """The last reply was about a gas."""
    last = world.talk.last
    return last is not None and last.outcome is Outcome.REFUSE and last.values.get("gas") is True


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
