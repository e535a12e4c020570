"""Agents that meet: stopping before it happens, and what to do when they are said to have met.

Asked by the questions that could make it happen ("start", "done", "mixed") and by `together`.
"""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Answer, Outcome, World
from assistant.core.choice.together import NOT_LISTED, standoff, uncleared, worst
from assistant.core.facts import Agent, Source
from assistant.core.record.events import AgentTouched, GasMade
from assistant.core.record.fold import OFF_AGAIN
from assistant.core.record.state import Touch
from assistant.core.round.rounds import in_order

UNKNOWN_FACT = "together-unknown"


def refused_meeting(intent: str | None, touch: Touch, agent: Agent, enclosure: str, world: World) -> Answer:
    """Won't: an earlier agent is still on that surface. Says what they would do to each other, and what lifts it."""
    held = standoff((touch,), agent, world.facts)
    pair = held.pair if held is not None else None
    reason = world.facts[pair.fact if pair is not None else UNKNOWN_FACT]
    return Answer(
        intent,
        Outcome.REFUSE,
        "choosing.must_rinse",
        details={
            "earlier": agent_of(touch.agent, world),
            "agent": agent,
            "enclosure": enclosure,
            "pair": pair,
            "reason": reason,
            "need": held.need if held is not None else "rinse",
            "wiped": touch.wiped and not touch.rinsed,
            "unlisted": pair is not None and pair.fact == NOT_LISTED,
        },
        values={
            "recorded": False,
            "enclosure": enclosure,
            "earlier": touch.agent,
            "agent": agent.id,
            "verdict": pair.verdict if pair is not None else None,
            "gas": pair.gas if pair is not None else None,
            "need": held.need if held is not None else "rinse",
        },
        cautions=("caution-label-first",),
        sources=_cited(reason.id, world),
    )


def still_on_it(intent: str | None, agent: Agent, enclosures: tuple[str, ...], world: World) -> Answer | None:
    """A question about that agent, answered no: what it must not meet is still on one of those; None: on none."""
    for name in enclosures:
        touch = uncleared(world.state.surfaces.get(name, ()), agent, world.facts)
        if touch is not None:
            refusal = refused_meeting(intent, touch, agent, name, world)
            values = {key: value for key, value in refusal.values.items() if key != "recorded"}
            return replace(refusal, values={**values, "agents": (touch.agent, agent.id)})
    return None


def gas_made(
    intent: str | None, agents: tuple[str, ...], bottle: str | None, enclosure: str | None, world: World
) -> Answer | None:
    """What to do when agents that make gas, or one whose content isn't known, are said to have met; None: no such pair.

    Records it: the bottle or surface is an unknown mix until it is rinsed out.
    """
    known = tuple(agent_of(agent, world) for agent in agents)
    if len(known) < 2:
        return None
    first, second, pair = worst(known, world.facts)
    if pair is not None and not pair.gas:
        return None
    reason = pair.fact if pair is not None else UNKNOWN_FACT
    off = off_again(agents, world) if enclosure is not None else ()
    return Answer(
        intent,
        Outcome.REFUSE,
        "choosing.gas_made",
        details={
            "first": first,
            "second": second,
            "pair": pair,
            "bottle": bottle,
            "enclosure": enclosure,
            "people": world.household.people,
            "reason": world.facts[reason],
            "steps": tuple(world.facts[fact].says for fact in ("first-aid-fumes", "first-aid-label")),
        },
        values={
            "verdict": "never" if pair is not None else None,
            "gas": True,
            "agents": tuple(dict.fromkeys(agents)),
            "bottle": bottle,
            "enclosure": enclosure,
            "recorded": False,
        },
        cautions=("caution-poison-centre", "caution-not-instead"),
        sources=_cited(reason, world) + _cited("first-aid-gas", world) + _cited("first-aid-fumes", world),
        events=(GasMade(tuple(dict.fromkeys(agents)), bottle, enclosure, off),),
    )


def touched_by(enclosure: str, agent: str, world: World) -> AgentTouched:
    """That an agent touched a surface, with what it takes to be rid of it."""
    return AgentTouched(enclosure, agent, off_again((agent,), world))


def off_again(agents: tuple[str, ...], world: World) -> tuple[str, ...]:
    """What it takes to be rid of those agents: rinse, dry and air, as their own rounds ask for them."""
    return in_order(OFF_AGAIN & frozenset(step for agent in agents for step in agent_of(agent, world).steps))


def agent_of(agent: str, world: World) -> Agent:
    """The agent of that id; one that the facts don't know is a product of unknown content."""
    return world.facts.agents.get(agent) or world.facts.agents["other"]


def _cited(fact: str, world: World) -> tuple[Source, ...]:
    return (world.facts[fact].cited(),)
