"""What to use on this job. `core.choice.choosing` chooses; here it is told what was asked, and what is missing."""

from __future__ import annotations

from assistant.answer.asking import ask
from assistant.answer.named import germ_named, germ_unheard_of, nothing_on
from assistant.answer.protecting import at_risk_lines
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.choice.choosing import Choosing, Need, Offer, choose, water_near
from assistant.core.facts import Source
from assistant.core.shelf.bottles import all_as_filled

JOBS = ("scale", "dirt", "routine", "illness", "quarantine", "mites")


def choose_agent(reading: Reading, world: World) -> Answer:
    """What to use for this job: ranked, with strength and wet time, why, and why not the others."""
    if reading.slots.choices and any(choice.kind == "enclosure" for choice in reading.slots.choices):
        choice = next(choice for choice in reading.slots.choices if choice.kind == "enclosure")
        return ask(reading, world, ("enclosure",), "talk.choose", {"choice": choice})
    unheard_of = germ_unheard_of(reading)
    if unheard_of is not None:
        return nothing_on(unheard_of, reading, **{**_top(Choosing(())), "ranked": (), "passed_over": ()})
    need = _need(reading, world)
    if need is None:
        return ask(reading, world, ("organism", "job", "enclosure"), "what_to_use.for_what")
    if need.material is not None and need.material.porous and need.job not in ("scale", "dirt"):
        return _porous(need, reading, world)
    found = _of_those_named(choose(need, all_as_filled(world.household, world.state), world.facts), reading)
    germ = world.facts.organisms[need.target]
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "what_to_use.choose",
        details={
            "need": need,
            "found": found,
            "germ": germ if need.organism or need.job == "mites" else None,
            "people": world.household.people,
            "vet": _vets_plan(need),
            "partly": _partly(need, found, world),
            "near_water": _water_lines(need, found, world),
            "water": water_near(need, world.household) and bool(found.offers) and found.offers[0].id in HARMS_WATER,
            "at_risk": at_risk_lines(world),
            "reasons": {one.fact: world.facts[one.fact].says for one in found.passed_over if one.fact is not None},
            "extra": tuple(world.facts[fact].says for fact in _extra(need)),
        },
        values={**_top(found), "ranked": tuple(_ranked(offer) for offer in found.offers), **_passed(found, need)},
        cautions=_cautions(need, found),
        sources=_sources(found, need, world),
    )


def _of_those_named(found: Choosing, reading: Reading) -> Choosing:
    """ "Bleach or chlorhexidine?": of the two named only; with fewer named, all."""
    named = set(reading.slots.agents)
    if len(named) < 2:
        return found
    return Choosing(
        tuple(offer for offer in found.offers if offer.id in named or offer.agent is None),
        tuple(one for one in found.passed_over if one.id in named),
    )


def _need(reading: Reading, world: World) -> Need | None:
    """What is to be done; None: nothing says what, so it is asked."""
    slots, facts = reading.slots, world.facts
    enclosure = world.household.enclosure(slots.enclosures[0]) if slots.enclosures else None
    organism = germ_named(reading, world)
    if organism == "mites" or slots.job == "mites":
        organism, job = None, "mites"
    elif organism is not None:
        job = "illness"
    else:
        job = slots.job or ("routine" if enclosure is not None or slots.materials or slots.near_water else "")
        if enclosure is not None and job == "routine" and enclosure.group != "healthy":
            job = "quarantine" if enclosure.group == "new" else "illness"
    if job not in JOBS:
        return None
    named = slots.materials[0] if slots.materials else None
    material = facts.materials[named] if named else facts.material_named(enclosure.material) if enclosure else None
    touches = world.state.surfaces.get(enclosure.name, ()) if enclosure is not None else ()
    return Need(job, organism, material, enclosure, slots.near_water, touches)  # type: ignore[arg-type]


def _porous(need: Need, reading: Reading, world: World) -> Answer:
    """A material that soaks things up: no agent is offered for it."""
    assert need.material is not None
    fact = need.material.fact or "choosing-porous"
    facts = tuple(world.facts[one] for one in dict.fromkeys((fact, "choosing-porous")))
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "what_to_use.porous",
        details={"material": need.material, "facts": facts},
        values={**_top(Choosing(())), "ranked": (), "passed_over": (), "job": need.job, "organism": need.organism},
        cautions=("caution-vet",) if need.organism else (),
        sources=tuple(one.cited() for one in facts),
    )


# ---------------------------------------------------------------- what the reply carries


def _top(found: Choosing) -> dict[str, object]:
    """The best offer's own keys; null where there is none."""
    best = _ranked(found.offers[0]) if found.offers else {}
    keys = ("agent", "kind", "strength_percent", "minutes", "degrees", "verdict", "bottle", "stock")
    return {key: best.get(key) for key in keys}


def _ranked(offer: Offer) -> dict[str, object]:
    kind = "method" if offer.agent is None else "disinfectant" if offer.agent.disinfects else "cleaner"
    evidence = offer.evidence
    return {
        "agent": offer.id,
        "kind": kind,
        "verdict": offer.verdict,
        "strength_percent": _number(offer.percent),
        "minutes": _number(offer.minutes),
        "degrees": _number(evidence.degrees) if evidence is not None else None,
        "directness": evidence.figure.directness if evidence is not None and evidence.figure is not None else None,
        "bottle": offer.bottle.name if offer.bottle is not None else None,
        "stock": offer.stock.name if offer.stock is not None else None,
    }


def _passed(found: Choosing, need: Need) -> dict[str, object]:
    passed = tuple({"agent": one.id, "why": one.why} for one in found.passed_over)
    return {"passed_over": passed, "job": need.job, "organism": need.organism}


def _number(value: object) -> float | None:
    return None if value is None else float(value)  # type: ignore[arg-type]


def _sources(found: Choosing, need: Need, world: World) -> tuple[Source, ...]:
    """What the best rest on, then why the others are passed over."""
    cited: list[Source] = []
    for offer in found.offers[:3]:
        rows = offer.evidence.rows if offer.evidence is not None else ()
        figure = offer.evidence.figure if offer.evidence is not None else None
        cited += [row.fact.cited() for row in ((figure,) if figure is not None else rows[:1])]
        cited += list(offer.wet.sources) if offer.wet is not None else []
    if water_near(need, world.household):
        cited += [world.facts[HARMS_WATER[offer.id]].cited() for offer in found.offers if offer.id in HARMS_WATER]
    cited += [world.facts[fact].cited() for fact in _extra(need)]
    cited += [world.facts[one.fact].cited() for one in found.passed_over if one.fact is not None]
    return tuple({source.id: source for source in cited}.values())


ABOUT_JOB: dict[str, tuple[str, ...]] = {
    "scale": ("choosing-scale",),
    "dirt": ("choosing-dirt",),
    "mites": ("choosing-mites", "choosing-porous"),
}
"""Facts about a job itself."""


def _extra(need: Need) -> tuple[str, ...]:
    """Facts about the job, whatever is chosen for it."""
    if need.organism is not None:
        return ("choosing-vet-plan", "choosing-porous")
    return ABOUT_JOB.get(need.job, ("protection-carriers",))


def _cautions(need: Need, found: Choosing) -> tuple[str, ...]:
    cautions = ["caution-label-first"]
    if _vets_plan(need):
        cautions.append("caution-vet")
    if found.offers and found.offers[0].agent is not None and found.offers[0].agent.needs_cold:
        cautions.append("caution-alcohol-fire")
    return tuple(cautions)


def _vets_plan(need: Need) -> bool:
    return need.organism is not None or need.job in ("illness", "mites")


def _partly(need: Need, found: Choosing, world: World) -> tuple[str, ...]:
    """What is published to do part, where nothing is published to work."""
    if found.works:
        return ()
    ids = [one.fact for one in found.passed_over if one.why in ("partly", "disagree") and one.fact is not None]
    return tuple(world.facts[fact].says for fact in ids)


HARMS_WATER: dict[str, str] = {
    "sodium hypochlorite": "choosing-bleach-water",
    "chlorhexidine": "refusal-chlorhexidine-water",
    "quaternary ammonium": "choosing-quat-water",
}
"""Agents that are published to harm water life, with the fact that says so."""


def _water_lines(need: Need, found: Choosing, world: World) -> tuple[str, ...]:
    """What is published of the agents offered on water life, where some is near or in the household."""
    wet = [home.name for home in world.household.enclosures if home.water != "dry" and home is not need.enclosure]
    if not wet and not water_near(need, world.household):
        return ()
    near = (f"Water life in {', '.join(wet)}: no spray, drip or rinse water may reach there.",) if wet else ()
    told = [world.facts[HARMS_WATER[offer.id]].says for offer in found.offers if offer.id in HARMS_WATER]
    return (*near, *(f"{says}." for says in told))
