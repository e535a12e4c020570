"""May this agent touch that material, for how long, and can the material be disinfected at all."""

from __future__ import annotations

import re
from dataclasses import replace

from assistant.answer.asking import ask
from assistant.answer.meeting import still_on_it
from assistant.answer.named import of_an_unknown_mix, supply_named, unknown_product
from assistant.answer.product import Product
from assistant.answer.strength import strength_of
from assistant.answer.which import open_rounds
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.choice.surfaces import standing
from assistant.core.choice.together import UNKNOWN
from assistant.core.facts import Agent, Material
from assistant.core.quantities.amounts import Mix, Neat, Percent


def surface(reading: Reading, world: World) -> Answer:
    """May this agent touch that material, for how long, and can the material be disinfected at all."""
    unknown = of_an_unknown_mix(reading, world, verdict=None)
    if unknown is not None:
        return unknown
    agent, bottle, stock = supply_named(reading, world)
    material = _material(reading, world)
    if agent is not None and agent.family == UNKNOWN:
        return unknown_product(reading, world, verdict=None)
    if material is None and agent is not None and agent.refused is not None:
        fact = world.facts[agent.refused]
        values = {"agent": agent.id, "material": None, "verdict": "never", "disinfectable": None}
        refused = Answer(reading.intent, Outcome.REFUSE, "the_round.refused_agent", {"agent": agent}, values)
        return replace(refused, cautions=("caution-label-first",), sources=(fact.cited(),))
    if material is None:
        return ask(reading, world, ("material", "enclosure"), "may_touch.on_which", {"agent": agent})
    if isinstance(material, str):
        return _unknown_material(material, agent, reading)
    if agent is None:
        return ask(reading, world, ("agent",), "may_touch.touch_with", {"material": material})
    held = standing(agent, material, world.facts)
    refusal = still_on_it(reading.intent, agent, _meant(material, reading, world), world)
    if refusal is not None:
        more = {"material": material.id, "disinfectable": held.disinfectable}
        return replace(refusal, values={**refusal.values, **more})
    strong = _too_strong(Product(agent, stock, bottle), reading, world)
    if strong is not None:
        verdict = "never" if strong.outcome is Outcome.REFUSE else None
        more = {"agent": agent.id, "material": material.id, "verdict": verdict, "disinfectable": held.disinfectable}
        return replace(strong, values={**strong.values, **more})
    about = (held.about,) if held.about is not None and held.about.id != held.fact.id else ()
    return Answer(
        reading.intent,
        Outcome.REFUSE if agent.refused is not None else Outcome.ANSWER,
        "may_touch.surface",
        details={
            "agent": agent,
            "held": held,
            "refused": world.facts[agent.refused].says if agent.refused is not None else None,
        },
        values={
            "agent": agent.id,
            "material": material.id,
            "verdict": held.verdict,
            "disinfectable": held.disinfectable,
        },
        cautions=("caution-label-first",),
        sources=tuple(fact.cited() for fact in (held.fact, *about)),
    )


def _too_strong(product: Product, reading: Reading, world: World) -> Answer | None:
    """What stands against the strength that was said, or has to be asked of it; None: nothing, or none was said."""
    agent, slots = product.agent, reading.slots
    if agent is None or product.stock is None:
        own = world.household.stocks_of(agent.id) if agent is not None else ()
        product = replace(product, stock=own[0] if len(own) == 1 else None)
    said: list[Mix] = [*slots.mixes]
    if slots.stock_strength is not None and not said:
        said.append(Percent(slots.stock_strength.amount))
    if not said and _UNDILUTED.search(reading.said) is not None:
        said.append(Neat())
    for mix in said if product.is_bleach else ():
        strength = strength_of(mix, product, reading, world)
        if isinstance(strength, Answer) and strength.message != "mixing.weaker_stock":
            return strength
    return None


_UNDILUTED = re.compile(
    r"\b(?:neat|undiluted|unmixed|uncut|pure|concentrated?|straight(?! (?:after|away|afterwards|before)\b)"
    r"|full strength"
    r"|(?:not|un|never|without) (?:being )?dilut\w+|with(?:out| no) (?:any )?water)\b"
)


def _meant(material: Material, reading: Reading, world: World) -> tuple[str, ...]:
    """The surfaces that may be meant: those named, else those of that material with a clean open."""
    if reading.slots.enclosures:
        return reading.slots.enclosures
    homes = (world.household.enclosure(round_.enclosure) for round_ in open_rounds(world))
    return tuple(home.name for home in homes if home is not None and _same(home.material, material, world))


def _same(said: str | None, material: Material, world: World) -> bool:
    known = world.facts.material_named(said) if said else None
    return known is not None and known.id == material.id


def _material(reading: Reading, world: World) -> Material | str | None:
    """The material said, or the enclosure's; its own word where the facts don't know it; None: none."""
    slots = reading.slots
    if slots.materials:
        return world.facts.materials[slots.materials[0]]
    enclosure = world.household.enclosure(slots.enclosures[0]) if slots.enclosures else None
    if enclosure is None or not enclosure.material:
        return None
    return world.facts.material_named(enclosure.material) or enclosure.material


def _unknown_material(material: str, agent: Agent | None, reading: Reading) -> Answer:
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "may_touch.unknown_material",
        details={"material": material, "agent": agent},
        values={
            "agent": agent.id if agent is not None else None,
            "material": None,
            "verdict": None,
            "disinfectable": None,
        },
        cautions=("caution-label-first",),
    )
