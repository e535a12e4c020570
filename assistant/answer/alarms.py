"""An animal that got out, a product that was spilled: what to do at once. No round is touched by either."""

from __future__ import annotations

import re

from assistant.answer.meeting import agent_of, gas_made
from assistant.answer.named import agents_named
from assistant.answer.which import open_rounds
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.choice.together import BLEACH, uncleared
from assistant.core.facts import Agent
from assistant.core.record.events import AgentTouched, AnimalFound, AnimalLoose, Event

ESCAPE_FACTS = ("escape-first", "escape-touched", "escape-tub")
OF_BLEACH = ("spill-order", "spill-bleach", "spill-no-neutralising", "spill-bleach-clothes", "spill-animals-back")
OF_ALCOHOL = ("spill-order", "spill-alcohol", "spill-alcohol-clothes", "spill-animals-back")
OF_ANY = ("spill-order", "spill-litter", "spill-animals-back")


_SUPPOSES = re.compile(
    r"(?:(?:so|and|but|ok|hey|oh) ,? ?)*(?:what (?:if|do|does|should|to|happens)|if|when|how|can|could|may|should|do"
    r"|does)\b(?!['’])"
)
"""How a text begins that supposes or asks; "he escaped when I opened the tub" tells."""


def escape(reading: Reading, world: World) -> Answer:
    """Stop spraying, shut the door, look; and when it is found, what to see to. Never takes it for moving out."""
    home = _whose(reading, world)
    if reading.slots.found:
        return _found(reading, home, world)
    facts = tuple(world.facts[fact] for fact in ESCAPE_FACTS)
    claims = _is_claim(reading)
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "harm.escape",
        details={
            "enclosure": world.household.enclosure(home),
            "wet": _wet_agents(world),
            "people": world.household.people,
            "steps": tuple(fact.says for fact in facts),
        },
        values={"enclosure": home or None, "loose": True if claims else None, "stop_spraying": True},
        cautions=("caution-ventilate",),
        sources=tuple(fact.cited() for fact in facts),
        events=(AnimalLoose(home),) if claims else (),
    )


def _found(reading: Reading, home: str, world: World) -> Answer:
    """Found: skin wet with a product, cold, hurt? It goes into a shut tub, not home, while its round is open."""
    home = home or (world.state.loose[-1].enclosure if world.state.loose else "")
    fact = world.facts["escape-touched"]
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "harm.found",
        details={
            "enclosure": world.household.enclosure(home),
            "home": home,
            "cleaning": any(not home or round_.enclosure == home for round_ in open_rounds(world)),
            "people": world.household.people,
            "steps": (fact.says, world.facts["escape-tub"].says),
        },
        values={"enclosure": home or None, "loose": False, "stop_spraying": False},
        cautions=("caution-hands",),
        sources=(fact.cited(), world.facts["escape-tub"].cited()),
        events=(AnimalFound(home),) if world.state.loose else (),
    )


def _whose(reading: Reading, world: World) -> str:
    """The home of the one meant: named, or the only one that waits outside; empty where it can't be told."""
    if reading.slots.enclosures:
        return reading.slots.enclosures[0]
    outside = tuple(round_.enclosure for round_ in open_rounds(world) if "move out" in round_.done)
    return outside[0] if len(outside) == 1 else ""


def _is_claim(reading: Reading) -> bool:
    """ "What if he escapes?" is answered, but nothing is loose on record."""
    return not reading.asks and _SUPPOSES.match(reading.said) is None


def _wet_agents(world: World) -> tuple[str, ...]:
    """What stands on surfaces, in words, that a loose animal may have crossed."""
    touches = (touch for touched in world.state.surfaces.values() for touch in touched)
    return tuple(dict.fromkeys(agent_of(touch.agent, world).name for touch in touches))


# ---------------------------------------------------------------- a spill


def spill(reading: Reading, world: World) -> Answer:
    """People and animals out, air, soak up, rinse; never one product onto another."""
    if reading.slots.wish is not None:
        return _nothing_on_it(reading, world)
    home = reading.slots.enclosures[0] if len(reading.slots.enclosures) == 1 else None
    agent = next(iter(agents_named(reading, world)), None) or _spilled_before(world)
    met = _met_another(reading, agent, home, world)
    if met is not None:
        return met
    facts = tuple(world.facts[fact] for fact in _spill_facts(agent))
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "harm.spill_at_home" if home is not None and not _is_out(home, world) else "harm.spill",
        details={
            "agent": agent,
            "kind": _kind(agent),
            "enclosure": home,
            "people": world.household.people,
            "steps": tuple(fact.says for fact in facts),
            "notes": tuple(fact.note for fact in facts if fact.note),
        },
        values={"agent": agent.id if agent is not None else None, "enclosure": home},
        cautions=("caution-gloves-eyes", "caution-never-mix", "caution-poison-centre", "caution-not-instead"),
        sources=tuple(fact.cited() for fact in facts),
        events=_touched(reading, agent, home),
    )


def _spilled_before(world: World) -> Agent | None:
    """The product of the spill that the latest reply was about: "how do I clean up the puddle?"."""
    last = world.talk.last
    agent = last.values.get("agent") if last is not None and last.intent == "spill" else None
    return agent_of(str(agent), world) if agent is not None else None


def _is_out(home: str, world: World) -> bool:
    """Its animal was moved out for a clean that is open."""
    return any(round_.enclosure == home and "move out" in round_.done for round_ in open_rounds(world))


def _nothing_on_it(reading: Reading, world: World) -> Answer:
    """ "Vinegar on it, to neutralise it?": nothing but water goes onto a spill."""
    fact = world.facts["spill-no-neutralising"]
    return Answer(
        reading.intent,
        Outcome.REFUSE,
        "harm.spill_nothing_on_it",
        details={"people": world.household.people, "steps": (fact.says,)},
        values={"agent": None, "enclosure": None},
        cautions=("caution-never-mix", "caution-poison-centre"),
        sources=(fact.cited(),),
    )


def _met_another(reading: Reading, agent: Agent | None, home: str | None, world: World) -> Answer | None:
    """Spilled where another agent still stands: as if the two had been said to meet."""
    if agent is None or not _is_claim(reading):
        return None
    named = tuple(dict.fromkeys(reading.slots.agents))
    if len(named) > 1:
        return gas_made(reading.intent, named, None, home, world)  # one spilled onto the other
    if home is None:
        return None
    touch = uncleared(world.state.surfaces.get(home, ()), agent, world.facts)
    return gas_made(reading.intent, (touch.agent, agent.id), None, home, world) if touch is not None else None


def _touched(reading: Reading, agent: Agent | None, home: str | None) -> tuple[Event, ...]:
    """A product spilled into an enclosure did touch its surface."""
    if agent is None or home is None or not _is_claim(reading):
        return ()
    return (AgentTouched(home, agent.id),)


def _kind(agent: Agent | None) -> str:
    if agent is None:
        return "unknown"
    if agent.family == BLEACH:
        return "bleach"
    return "alcohol" if agent.needs_cold else "acid" if agent.acidic else "other"


def _spill_facts(agent: Agent | None) -> tuple[str, ...]:
    return {"bleach": OF_BLEACH, "alcohol": OF_ALCOHOL}.get(_kind(agent), OF_ANY)
