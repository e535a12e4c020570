"""May this tool, cloth or glove go from there to here: by the groups of the two animals."""

from __future__ import annotations

from dataclasses import dataclass
from typing import cast

from assistant.answer.asking import ask
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.choice.items import Share, items_of, may_share
from assistant.core.household import Enclosure, Group
from assistant.core.record.state import GroupNow, State

GROUPS = ("healthy", "new", "sick")

FACTS_OF = {
    "never": ("tool-hands",),
    "disinfect_first": ("tool-between-animals", "tool-hands"),
    "fine": ("tool-between-animals", "tool-hands"),
}


@dataclass(frozen=True, slots=True)
class Place:
    """Where a tool is from or for: an enclosure, or any of a group."""

    group: Group
    home: Enclosure | None = None


def share_tool(reading: Reading, world: World) -> Answer:
    """never, disinfect_first or fine; asks where it was used, or where it is to go, when that can't be told."""
    source, target = _ends(reading, world)
    if target is None and "gloves" in reading.slots.items:
        target = Place("healthy")  # for gloves it counts only where they were
    if source is None:
        return ask(reading, world, ("enclosure",), "items.share_from", verdict=None)
    if target is None:
        return ask(reading, world, ("enclosure",), "items.share_to", verdict=None)
    item = reading.slots.items[0] if reading.slots.items else None
    same = source.home is not None and source.home == target.home
    share = may_share(item, source.group, target.group, same=same, organism=_organism(source, reading, world.state))
    return _told(reading, item, (source, target), share, world)


def _ends(reading: Reading, world: World) -> tuple[Place | None, Place | None]:
    """From where and to where; what was worked on last stands for an unsaid "from"."""
    said = reading.slots.taken or ("", "")
    source, target = (_place(name, world) for name in said)
    named = [_place(name, world) for name in reading.slots.enclosures]
    spare = [place for place in named if place not in (source, target)]
    if source is None and target is None and len(spare) > 1:
        return spare[0], spare[1]
    if source is None and spare:
        source = spare[0]
    elif target is None and spare:
        target = spare[0]
    if source is None and target is not None:
        last = _last_worked_on(world)
        source = last if last != target or "gloves" in reading.slots.items else None
    return source, target


def hands_first(home: str, world: World) -> bool:
    """True when what was worked on last is of a sicker group, so that hands and gloves come before this one."""
    last, place = _last_worked_on(world), _place(home, world)
    if last is None or place is None or last.home == place.home:
        return False
    return GROUPS.index(last.group) > GROUPS.index(place.group)


def sick_home(world: World) -> Enclosure | None:
    """The sick animal's enclosure that was worked on or spoken of last: with none named, a thing may be from there."""
    last = _last_worked_on(world)
    if last is not None and last.home is not None and last.group == "sick":
        return last.home
    before = world.talk.last_reading
    spoken = [before.slots.taken[0]] if before is not None and before.slots.taken else []
    spoken += before.slots.enclosures if before is not None else ()
    spoken += [name for name, now in world.state.groups.items() if _marked_today(now, world)]
    homes = (world.household.enclosure(name) for name in spoken)
    return next((home for home in homes if home is not None and home.group == "sick"), None)


def _marked_today(now: GroupNow, world: World) -> bool:
    """Marked sick within the last twelve hours: what is asked of things is asked of its things, or may be."""
    return now.group == "sick" and (world.now - now.since).total_seconds() <= 12 * 3600


def _place(name: str, world: World) -> Place | None:
    if name in GROUPS:
        return Place(cast(Group, name))
    home = world.household.enclosure(name)
    return Place(home.group, home) if home is not None else None


def _last_worked_on(world: World) -> Place | None:
    """The enclosure that the latest turns on record were about; None: there is none today."""
    for turn in reversed(world.state.turns):
        if (world.now - turn.at).total_seconds() > 12 * 3600:
            return None
        for deed in reversed(turn.deeds):
            home = world.household.enclosure(deed.thing)
            if home is not None and deed.event != "QuarantineRestarted":
                return Place(home.group, home)
    return None


def _organism(source: Place, reading: Reading, state: State) -> str | None:
    if reading.slots.organisms:
        return reading.slots.organisms[0]
    now = state.groups.get(source.home.name) if source.home is not None else None
    return now.organism if now is not None and now.group == source.group else None


def _told(reading: Reading, item: str | None, ends: tuple[Place, Place], share: Share, world: World) -> Answer:
    source, target = ends
    facts = tuple(world.facts[fact] for fact in dict.fromkeys((share.fact, *FACTS_OF[share.verdict])))
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "items.share",
        details={
            "item": items_of(world.facts).get(item or ""),
            "source": source,
            "target": target,
            "share": share,
            "facts": facts,
        },
        values={
            "verdict": share.verdict,
            "item": item,
            "from": source.home.name if source.home is not None else source.group,
            "to": target.home.name if target.home is not None else target.group,
            "groups": (source.group, target.group),
        },
        cautions=("caution-hands",),
        sources=tuple(fact.cited() for fact in facts),
    )
