"""Choosing: so far, whether two agents may meet, in a bottle or one after the other."""

from __future__ import annotations

from dataclasses import dataclass, replace

from assistant.answer.asking import ask
from assistant.answer.meeting import UNKNOWN_FACT, agent_of, gas_made, still_on_it, touched_by
from assistant.answer.named import PRODUCTS, unknown_mix
from assistant.answer.put_on import noted
from assistant.answer.which import open_rounds
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.choice.together import BLEACH, NOT_LISTED, SAME, UNKNOWN, danger, meet, worst
from assistant.core.facts import Agent, Pair
from assistant.core.record.events import AgentsMet, Event, GasMade


@dataclass(frozen=True)
class _Meeting:
    """What is said to meet, and where."""

    agents: tuple[Agent, ...]
    bottle: str | None = None
    enclosure: str | None = None
    twice: bool = False
    """More than one thing was named, even if they come to one agent."""


def together(reading: Reading, world: World) -> Answer:
    """May these meet: never, with a rinse between, or fine. A claim that they have is answered by what to do now."""
    named = _named(reading, world)
    meeting = _with_context(named, reading, world)
    refusal = None if reading.slots.met else _still_on_it(named, reading, world)
    if refusal is not None:
        return refusal
    if reading.slots.met:
        return _have_met(meeting, reading, world)
    told = noted(reading, world)
    if told is not None:
        return told
    bottle = meeting.bottle
    if bottle is not None and bottle in world.state.unknown_mixes and len(reading.slots.agents) < 2:
        return unknown_mix(bottle, reading, verdict="never", gas=None, agents=())
    if len(meeting.agents) < 2 and any(agent.family == UNKNOWN for agent in meeting.agents):
        return _verdict(meeting.agents[0], meeting.agents[0], None, reading, world)
    if len(meeting.agents) == 1 and "water" in reading.words:
        return _with_water(meeting.agents[0], reading, world)
    if len(meeting.agents) < 2:
        message = "choosing.with_what" if meeting.agents else "choosing.which_two"
        return ask(reading, world, ("agent",), message, {"agents": meeting.agents}, verdict=None)
    first, second, pair = worst(meeting.agents, world.facts)
    return _verdict(first, second, pair, reading, world)


def _with_water(agent: Agent, reading: Reading, world: World) -> Answer:
    """ "Bleach into water or water into bleach?", "bleach and hot water?": what goes first, and how warm."""
    warm = not {"hot", "warm", "boiling"}.isdisjoint(reading.words) and agent.family == BLEACH
    fact = world.facts["caution-cold-water" if warm else "mixing-into-water"]
    details = {"agent": agent, "fact": fact, "warm": warm}
    values = {"verdict": "never" if warm else "fine", "gas": False, "agents": (agent.id,)}
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "choosing.with_water",
        details,
        values,
        cautions=("caution-label-first",),
        sources=(fact.cited(),),
    )


def _still_on_it(named: _Meeting, reading: Reading, world: World) -> Answer | None:
    """Asked of one product while what it must not meet is still on the surface: no; None: nothing there forbids it.

    With no surface named it is any that has a clean open: a gloved keeper means the one in front of them.
    """
    residues = world.facts.residues  # what an agent is to take off is no agent
    agents = tuple(agent for agent in named.agents if agent.id not in residues)
    if len(agents) != 1 or agents[0].family == UNKNOWN:
        return None
    names = (named.enclosure,) if named.enclosure else tuple(r.enclosure for r in open_rounds(world))
    return still_on_it(reading.intent, agents[0], names, world)


def _named(reading: Reading, world: World) -> _Meeting:
    """Everything that the words name: agents, what stands in stocks and bottles, and products of unknown content."""
    slots, household = reading.slots, world.household
    stocks = [household.stock(name) for name in slots.stocks]
    ids = [*slots.agents, *(stock.agent for stock in stocks if stock is not None)]
    for name in slots.bottles:
        holds = world.state.bottles.get(name)
        ids += holds.held if holds is not None else (_agent_called(name, world),)
    for choice in slots.choices:
        if choice.kind in PRODUCTS:
            ids += [_agent_called(candidate, world) for candidate in choice.candidates]
    ids += ["other" for unknown in slots.unknown if unknown.kind in PRODUCTS]
    residues = tuple(world.facts.residues[residue] for residue in slots.residues)
    return _Meeting(
        (*residues, *(agent_of(agent, world) for agent in dict.fromkeys(ids))),
        slots.bottles[0] if slots.bottles else None,
        slots.enclosures[0] if len(slots.enclosures) == 1 else None,
        twice=len(ids) > 1,
    )


def _agent_called(name: str, world: World) -> str:
    """The agent behind a name of the household's or the facts'; one that stands for nothing known is "other"."""
    bottle = world.household.bottle(name)
    stock = world.household.stock(bottle.stock if bottle is not None else name)
    if stock is not None:
        return stock.agent
    agent = world.facts.agent_named(name)
    return agent.id if agent is not None else "other"


def _with_context(meeting: _Meeting, reading: Reading, world: World) -> _Meeting:
    """With one agent named, the other is what stands on the surface meant, or what its round goes with.

    One that was named twice, as agent and as bottle, meets itself where no surface is meant.
    """
    if len(meeting.agents) > 1 and meeting.enclosure is None and meeting.bottle is None and reading.slots.touched:
        return replace(meeting, enclosure=_on_the_surface(meeting, world)[0])
    if len(meeting.agents) != 1:
        return meeting
    agent = meeting.agents[0]
    into_a_bottle = reading.slots.met and meeting.bottle is not None
    enclosure, others = (meeting.enclosure, ()) if into_a_bottle else _on_the_surface(meeting, world)
    if others:
        # Only pairs with the one named matter: what is on the surface already is not asked about.
        other = max(others, key=lambda earlier: danger(meet(agent, earlier, world.facts)))
        return replace(meeting, agents=(other, agent), enclosure=enclosure)
    return replace(meeting, agents=(agent, agent)) if meeting.twice else meeting


def _on_the_surface(meeting: _Meeting, world: World) -> tuple[str | None, tuple[Agent, ...]]:
    """The enclosure meant, the only one with an open round if none was named, and the other agents on it."""
    rounds = open_rounds(world)
    enclosure = meeting.enclosure or (rounds[0].enclosure if len(rounds) == 1 else None)
    if enclosure is None:
        return None, ()
    ids = [touch.agent for touch in world.state.surfaces.get(enclosure, ())]
    ids += [round_.agent for round_ in rounds if round_.enclosure == enclosure]
    return enclosure, tuple(agent_of(a, world) for a in dict.fromkeys(ids) if a != meeting.agents[0].id)


def _verdict(first: Agent, second: Agent, pair: Pair | None, reading: Reading, world: World) -> Answer:
    reason = world.facts[pair.fact if pair is not None else UNKNOWN_FACT]
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "choosing.together",
        details={
            "first": first,
            "second": second,
            "pair": pair,
            "reason": reason,
            "unlisted": pair is not None and pair.fact == NOT_LISTED,
            "same": pair is not None and pair.fact == SAME,
            "said": tuple(unknown.said for unknown in reading.slots.unknown if unknown.kind in PRODUCTS),
        },
        values={
            "verdict": pair.verdict if pair is not None else None,
            "gas": pair.gas if pair is not None else None,
            "agents": (first.id, second.id),
        },
        cautions=("caution-label-first",),
        sources=(reason.cited(),),
    )


# ---------------------------------------------------------------- they have met


def _have_met(meeting: _Meeting, reading: Reading, world: World) -> Answer:
    """Gas, or a content not known: out first. Else what is lost, and what to do."""
    ids = tuple(agent.id for agent in meeting.agents)
    if len(ids) < 2:
        ids = (*ids, "other", "other")[:2]  # something was poured together that wasn't understood
    gas = gas_made(reading.intent, ids, meeting.bottle, meeting.enclosure, world)
    if gas is not None:
        others = (bottle for bottle in reading.slots.bottles if bottle != meeting.bottle)
        return replace(gas, events=(*gas.events, *(GasMade(ids, bottle) for bottle in others)))  # it may be in either
    first, second, pair = worst(meeting.agents, world.facts)
    assert pair is not None, "a product of unknown content is answered as gas"
    reason = world.facts[pair.fact]
    kept: tuple[Event, ...] = ()
    if meeting.enclosure is not None:
        kept = tuple(touched_by(meeting.enclosure, agent, world) for agent in ids)
    elif meeting.bottle is not None and pair.verdict != "fine":
        kept = tuple(AgentsMet(bottle, ids) for bottle in reading.slots.bottles or (meeting.bottle,))
    return Answer(
        reading.intent,
        Outcome.REFUSE if pair.verdict == "never" else Outcome.ANSWER,
        "choosing.have_met",
        details={
            "first": first,
            "second": second,
            "pair": pair,
            "reason": reason,
            "bottle": meeting.bottle,
            "enclosure": meeting.enclosure,
            "unlisted": pair.fact == NOT_LISTED,
        },
        values={"verdict": pair.verdict, "gas": False, "agents": ids},
        cautions=("caution-label-first", "caution-ventilate"),
        sources=(reason.cited(),),
        events=kept,
    )
