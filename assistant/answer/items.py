"""Bowls, tongs, branches, cloths: how each is treated, and whether one may go from one enclosure to another."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from typing import Any, TypeAlias

from assistant.answer.asking import ask
from assistant.answer.plan import supply_in, wet_time_of
from assistant.answer.sharing import share_tool, sick_home
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.choice.items import LASTING, Item, Way, items_of
from assistant.core.household import Enclosure
from assistant.core.quantities.amounts import Amount
from assistant.core.record.events import Event, ItemBegun

__all__ = ["share_tool", "treat_item"]

Minutes: TypeAlias = Fraction | int | float | None

HOT = ("boil", "bake", "microwave")
"""Ways that what was sprayed must never go, wet."""

FACTS_BESIDE: dict[str, tuple[str, ...]] = {
    "bowl": ("item-sink",),
    "tongs": ("item-metal",),
    "branch": ("item-wood-minutes", "item-wood-core", "item-wood-porous", "item-bake-unsprayed"),
    "hide": ("item-scratches",),
    "fabric": ("item-cloth-home", "item-cloth-hospital", "item-cloth-britain", "item-cloth-alone"),
    "gloves": ("tool-hands",),
}
"""Facts shown beside the one an item's way rests on."""


def treat_item(reading: Reading, world: World) -> Answer:
    """Soak, boil, bake, wash hot, wipe or bin; how long and how hot where a figure is known; and never baked wet."""
    reading = _of_it(reading, world)
    slots = reading.slots
    items = items_of(world.facts)
    if not slots.items or slots.items[0] not in items:
        return ask(reading, world, ("item",), "items.which", {"known": tuple(item.name for item in items.values())})
    item = items[slots.items[0]]
    home = world.household.enclosure(slots.enclosures[0]) if slots.enclosures else sick_home(world)
    organism = _organism(reading, home, world)
    if slots.cracked and item.id in ("bowl", "hide", "tub", "tongs", "stone"):
        return _cracked(reading, item, organism, world)
    if slots.still_wet and (set(slots.ways) & set(HOT) or (not slots.ways and item.ways[0].way in HOT)):
        return _not_wet_into_heat(reading, item, world)
    infected = organism is not None or (home is not None and home.group == "sick")
    if infected and item.infected is not None:
        return _told(reading, item, None, home, organism, world)
    return _told(reading, item, _way_meant(reading, item), home, organism, world)


def _of_it(reading: Reading, world: World) -> Reading:
    """ "Can I bake it?": the thing that the turn before was about, and wet if it was wet then."""
    before, slots = world.talk.last_reading, reading.slots
    if slots.items or before is None or before.intent != "treat_item" or not before.slots.items:
        return reading
    wet = slots.still_wet or (before.slots.still_wet and not slots.begun)
    homes = slots.enclosures or before.slots.enclosures
    return replace(reading, slots=replace(slots, items=before.slots.items, still_wet=wet, enclosures=homes))


def _cracked(reading: Reading, item: Item, organism: str | None, world: World) -> Answer:
    """Cracked or scratched: it goes, for no product reaches into that."""
    fact = world.facts["item-scratches"]
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "items.cracked",
        details={"item": item, "facts": (fact,)},
        values={**_values(item, None, None, organism, infected=False), "way": "bin"},
        cautions=_cautions(item),
        sources=(fact.cited(),),
    )


def _organism(reading: Reading, home: Enclosure | None, world: World) -> str | None:
    """What it was exposed to: named, or on record for that animal."""
    if reading.slots.organisms:
        return reading.slots.organisms[0]
    now = world.state.groups.get(home.name) if home is not None else None
    return now.organism if now is not None and home is not None and home.group == now.group == "sick" else None


def _way_meant(reading: Reading, item: Item) -> Way:
    """The way asked for, where it is one of the item's; else the one offered first."""
    return next((way for said in reading.slots.ways if (way := item.way(said)) is not None), item.ways[0])


def _not_wet_into_heat(reading: Reading, item: Item, world: World) -> Answer:
    fact = world.facts["item-bake-unsprayed"]
    return Answer(
        reading.intent,
        Outcome.REFUSE,
        "items.not_wet_into_heat",
        details={"item": item, "reason": fact},
        values={"item": item.id, "way": None, "minutes": None, "temperature": None},
        cautions=("caution-ventilate",),
        sources=(fact.cited(),),
    )


def _told(
    reading: Reading, item: Item, way: Way | None, home: Enclosure | None, organism: str | None, world: World
) -> Answer:
    """How an item goes; with no way it is past treating and goes out."""
    minutes = way.minutes if way is not None else None
    supply = supply_in(reading, world)
    if way is not None and way.way == "soak" and supply is not None:
        minutes = wet_time_of(supply, home, organism, world).minutes
    said = reading.slots.ways
    begun = reading.slots.begun and way is not None and minutes is not None and (not said or way.way in said)
    facts = _facts(item, way, organism, world)
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "items.begun" if begun else "items.treat" if way is not None else "items.infected",
        details={
            "item": item,
            "way": way,
            "minutes": minutes,
            "agent": supply.agent if supply is not None else None,
            "organism": world.facts.organisms.get(organism) if organism else None,
            "lasting": organism in LASTING,
            "home": home,
            "wished": tuple(one for one in said if way is not None and one != way.way and item.way(one) is None),
            "facts": facts,
        },
        values=_values(item, way, minutes, organism, infected=way is None),
        cautions=_cautions(item),
        sources=tuple(fact.cited() for fact in facts),
        events=_begun(item, way, minutes, home) if begun else (),
    )


def _values(item: Item, way: Way | None, minutes: Minutes, organism: str | None, *, infected: bool) -> dict[str, Any]:
    degrees = way.degrees if way is not None else None
    return {
        "item": item.id,
        "way": way.way if way is not None else "bin",
        "minutes": minutes,
        "temperature": Amount(degrees, "degC") if degrees is not None else None,
        "organism": organism,
        "infected": infected,
    }


def _begun(
    item: Item, way: Way | None, minutes: Fraction | int | float | None, home: Enclosure | None
) -> tuple[Event, ...]:
    if way is None or minutes is None:
        return ()
    return (ItemBegun(item.name, way.way, float(minutes * 60), home.name if home is not None else ""),)


def _facts(item: Item, way: Way | None, organism: str | None, world: World) -> tuple[Any, ...]:
    first = (way.fact,) if way is not None else (item.infected,) if item.infected is not None else ()
    beside = FACTS_BESIDE.get(item.id, ()) if way is not None else ()
    lasting = ("item-crypto",) if organism in LASTING else ()
    return (*first, *(world.facts[fact] for fact in (*lasting, *beside)))


def _cautions(item: Item) -> tuple[str, ...]:
    return ("caution-heat-unplug",) if item.id == "electrics" else ("caution-label-first", "caution-hands")
