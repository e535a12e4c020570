"""Does this agent work on that germ, as studied or as the keeper's bottle is mixed; and what does, if it doesn't."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from assistant.answer.asking import ask
from assistant.answer.named import (
    germ_named,
    germ_unheard_of,
    nothing_on,
    of_an_unknown_mix,
    supply_named,
    unknown_product,
)
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.choice.choosing import Need, Offer, choose
from assistant.core.choice.evidence import Evidence, weigh
from assistant.core.choice.together import UNKNOWN
from assistant.core.facts import Agent, Organism, Source
from assistant.core.household import Bottle, Stock
from assistant.core.quantities.amounts import Mix
from assistant.core.round.wet_time import Use, percent_of, wet_time
from assistant.core.shelf.bottles import all_as_filled


def works_on(reading: Reading, world: World) -> Answer:
    """Does this agent work on that organism, how strong and how long; and what does, where it doesn't."""
    unknown = of_an_unknown_mix(reading, world, verdict="unknown", minutes=None, strength_percent=None)
    if unknown is not None:
        return unknown
    organism, unheard_of = germ_named(reading, world), germ_unheard_of(reading)
    if unheard_of is not None:
        return nothing_on(unheard_of, reading, verdict="unknown", strength_percent=None)
    agent, bottle, stock = supply_named(reading, world)
    if organism is None:
        return _on_what(reading, world, agent)
    germ = world.facts.organisms[organism]
    if agent is None and reading.slots.methods:
        return _said(weigh(reading.slots.methods[0], organism, world.facts), germ, reading, world)
    if agent is None:
        before = _last_methods(reading, world)
        if before is not None:
            return _said(weigh(before, organism, world.facts), germ, reading, world)
        return ask(reading, world, ("agent",), "does_it_work.with_what", {"germ": germ})
    if agent.family == UNKNOWN:
        return unknown_product(reading, world, verdict="unknown")
    mix = _mix_said(reading) or (bottle.mix if bottle is not None else None)
    if mix is not None:
        stock = stock or _only_stock(agent, reading, world)
        return _as_mixed(agent, germ, _Supply(bottle, stock, mix), reading, world)
    return _said(weigh(agent.id, organism, world.facts), germ, reading, world, agent)


@dataclass(frozen=True, slots=True)
class _Supply:
    """What it is asked of: a bottle as it is mixed, or a mix that was said."""

    bottle: Bottle | None
    stock: Stock | None
    mix: Mix


def _mix_said(reading: Reading) -> Mix | None:
    """ "At 0.1 percent", "one in 32": the strength asked about, and no other."""
    mixes = tuple(dict.fromkeys(reading.slots.mixes))
    return mixes[0] if len(mixes) == 1 else None


def _only_stock(agent: Agent, reading: Reading, world: World) -> Stock | None:
    """The shelf's only stock of that agent, so that a ratio of it has a strength; one that was said overrides it."""
    stocks = world.household.stocks_of(agent.id)
    return stocks[0] if len(stocks) == 1 and reading.slots.stock_strength is None else None


def _said(evidence: Evidence, germ: Organism, reading: Reading, world: World, agent: Agent | None = None) -> Answer:
    """The agent, or heat or drying, at its best."""
    wet = None
    if agent is not None:
        wet = wet_time(Use(agent, None, None, germ.id), world.facts)
    verdict = "fails" if agent is not None and not agent.disinfects else evidence.verdict
    told = agent is None or (agent.disinfects and not agent.vet_only and agent.refused is None)
    wet_minutes = wet.minutes if wet is not None and told and verdict == "works" else None
    figures = _figures(evidence) if told else {}
    return Answer(
        reading.intent,
        Outcome.REFUSE if agent is not None and agent.refused is not None else Outcome.ANSWER,
        "does_it_work.works_on",
        details={
            "agent": agent,
            "name": agent.name if agent is not None else world.facts.methods[evidence.agent].name,
            "germ": germ,
            "evidence": evidence,
            "verdict": verdict,
            "wet": wet_minutes,
            "refused": world.facts[agent.refused].says if agent is not None and agent.refused is not None else None,
            "instead": _instead(germ.id, evidence.agent, world) if verdict != "works" else None,
            "people": world.household.people,
            "cleans": world.facts[agent.no_time].says if agent and agent.no_time and not agent.disinfects else None,
        },
        values={
            "agent": evidence.agent,
            "organism": germ.id,
            "verdict": verdict,
            "minutes": figures.get("minutes"),
            "strength_percent": figures.get("percent"),
            "degrees": figures.get("degrees"),
            "wet_minutes": _number(wet_minutes),
            "directness": evidence.figure.directness if evidence.figure is not None else None,
        },
        cautions=("caution-label-first", "caution-vet"),
        sources=_evidence_sources(evidence, agent, world),
    )


def _as_mixed(agent: Agent, germ: Organism, supply: _Supply, reading: Reading, world: World) -> Answer:
    """The keeper's own bottle, at the strength it is mixed to, or the mix that was asked about."""
    bottle, stock, mix = supply.bottle, supply.stock, supply.mix
    colon = world.household.habits.ratio
    wet = wet_time(Use(agent, stock, mix, germ.id, "healthy", colon), world.facts)
    evidence = weigh(agent.id, germ.id, world.facts)
    percent = percent_of(Use(agent, stock, mix, colon=colon), world.facts)
    verdict = "fails" if not agent.disinfects else wet.organism_verdict or "unknown"
    if evidence.doubt == "studies disagree":
        verdict = "unknown"
    works = verdict == "works"
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "does_it_work.as_mixed",
        details={
            "agent": agent,
            "name": agent.name,
            "bottle": bottle if bottle is not None and bottle.mix == mix else None,
            "germ": germ,
            "wet": wet,
            "evidence": evidence,
            "verdict": verdict,
            "percent": percent,
            "needs": evidence.percent if evidence.verdict == "works" else None,
            "instead": None if works else _instead(germ.id, agent.id, world),
            "people": world.household.people,
        },
        values={
            "agent": agent.id,
            "organism": germ.id,
            "bottle": bottle.name if bottle is not None else None,
            "verdict": verdict,
            "minutes": _number(wet.minutes) if works else None,
            "strength_percent": _number(percent),
            "degrees": None,
            "wet_minutes": _number(wet.minutes) if works else None,
            "directness": evidence.figure.directness if evidence.figure is not None else None,
        },
        cautions=("caution-label-first", "caution-vet"),
        sources=(*wet.sources, *_evidence_sources(evidence, agent, world)),
    )


def _figures(evidence: Evidence) -> dict[str, float | None]:
    return {
        "percent": _number(evidence.percent),
        "minutes": _number(evidence.minutes),
        "degrees": _number(evidence.degrees),
    }


def _evidence_sources(evidence: Evidence, agent: Agent | None, world: World) -> tuple[Source, ...]:
    first = [evidence.figure] if evidence.figure is not None else []
    facts = [row.fact for row in (*first, *evidence.rows)]
    if agent is not None:
        facts += [world.facts[fact] for fact in (agent.refused, agent.no_time) if fact is not None]
    return tuple(fact.cited() for fact in {fact.id: fact for fact in facts}.values())


def _instead(organism: str, agent: str, world: World) -> Offer | None:
    """What does work there, as it would be chosen; None: nothing published does."""
    found = choose(Need("illness", organism), all_as_filled(world.household, world.state), world.facts)
    return next((offer for offer in found.offers if offer.verdict == "works" and offer.id != agent), None)


def _on_what(reading: Reading, world: World, agent: Agent | None) -> Answer:
    """Nothing was named to work on: a cleaner is answered as that; else the germ is asked."""
    if agent is not None and agent.family == UNKNOWN:
        return unknown_product(reading, world, verdict="unknown")
    if agent is not None and not agent.disinfects and agent.no_time is not None:
        fact = world.facts[agent.no_time]
        values = {"agent": agent.id, "organism": None, "verdict": "fails", "minutes": None, "strength_percent": None}
        return Answer(
            reading.intent,
            Outcome.ANSWER,
            "does_it_work.only_cleans",
            {"agent": agent, "fact": fact},
            {**values, "degrees": None, "wet_minutes": None, "directness": None},
            sources=(fact.cited(),),
        )
    return ask(reading, world, ("organism",), "does_it_work.on_what", {"agent": agent})


def _last_methods(reading: Reading, world: World) -> str | None:
    """ "How hot?" right after a germ was spoken of is about heat."""
    words = set(reading.words)
    return "heat" if words & {"hot", "heat", "degrees", "temperature", "hotter"} else None


def _number(value: Fraction | None) -> float | None:
    return None if value is None else float(value)
