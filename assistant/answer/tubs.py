"""Waiting tubs: who waits in which, since when; one animal a tub, and after quarantine none before it is clean.

Whether one is clean is `tubs_clean`'s, an animal's way back from one without a clean `tubs_left`'s.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from datetime import datetime
from typing import Any

from assistant.answer.tubs_clean import of_a_clean_tub
from assistant.answer.which import open_rounds
from assistant.contract import Answer, Outcome, Pending, Reading, World
from assistant.core.household import Enclosure
from assistant.core.record.events import Event, StepDone, TubCleaned, TubUsed
from assistant.core.record.state import TubUse
from assistant.core.round.gate import may_go_back

FACTS = ("workflow-tub-temperature", "escape-tub")


def tub(reading: Reading, world: World) -> Answer:
    """Who waits where and since when; or that a tub was cleaned."""
    if reading.slots.cleaned and reading.slots.tubs:
        return of_a_clean_tub(reading, world)
    waiting = waiting_animals(world)
    asked = _asked(reading, waiting)
    homes = reading.slots.enclosures
    still_in = tuple(
        r.enclosure for r in open_rounds(world) if "move out" not in r.done and (not homes or r.enclosure in homes)
    )
    facts = tuple(world.facts[fact] for fact in FACTS)
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "tubs.who",
        details={
            "waiting": asked,
            "tub": reading.slots.tubs[0] if reading.slots.tubs else None,
            "homes": tuple(world.household.enclosure(name) for name in homes),
            "still_in": tuple(world.household.enclosure(name) for name in still_in),
            "now": world.now,
            "facts": facts,
            "warmth": reading.slots.cold,
            "long": world.household.habits.tub_minutes,
        },
        values={"waiting": tuple(_value(one, world.now) for one in asked), "not_out": still_in},
        sources=tuple(fact.cited() for fact in facts),
    )


def waiting_animals(world: World) -> tuple[Mapping[str, Any], ...]:
    """Every animal that is out of its home, the one that waits longest first."""
    tubs = {use.enclosure: use for use in world.state.tubs.values() if use.until is None}
    loose = {one.enclosure for one in world.state.loose}
    since = {r.enclosure: r.done["move out"] for r in open_rounds(world) if "move out" in r.done}
    homes = dict.fromkeys((*since, *tubs))
    found = [
        {
            "home": world.household.enclosure(home),
            "enclosure": home,
            "tub": tubs[home].tub if home in tubs else None,
            "since": since.get(home) or tubs[home].since,
            "loose": home in loose,
            "ready": may_go_back(world.state.rounds.get(home), world.now).ready,
        }
        for home in homes
    ]
    return tuple(sorted(found, key=lambda one: one["since"]))


def _asked(reading: Reading, waiting: tuple[Mapping[str, Any], ...]) -> tuple[Mapping[str, Any], ...]:
    slots = reading.slots
    if slots.enclosures:
        return tuple(one for one in waiting if one["enclosure"] in slots.enclosures)
    return tuple(one for one in waiting if not slots.tubs or one["tub"] in slots.tubs)


def _value(one: Mapping[str, Any], now: datetime) -> dict[str, Any]:
    home: Enclosure | None = one["home"]
    return {
        "enclosure": one["enclosure"],
        "animal": home.animal if home is not None else None,
        "tub": one["tub"],
        "since": one["since"],
        "minutes": max(0.0, (now - one["since"]).total_seconds()) / 60,
    }


# ---------------------------------------------------------------- an animal put into one


def into_the_tub(answer: Answer, reading: Reading, world: World) -> Answer:
    """What `done` gave, with the tub that the animal went into; a tub that is taken or unclean is asked about."""
    names = reading.slots.tubs
    if not names or "move out" not in reading.slots.steps:
        return answer
    if answer.pending is not None and answer.message != "the_round.done_where":
        return answer
    moved = [event.enclosure for event in answer.events if isinstance(event, StepDone) and event.step == "move out"]
    homes = moved or list(reading.slots.enclosures)
    if not homes or not (moved or answer.message in ("the_round.done_where", "the_round.already")):
        return answer
    if len(names) > 1 and len(names) == len(reading.slots.enclosures) and set(homes) == set(reading.slots.enclosures):
        return _one_each(answer, reading, world)
    used = tuple(_used(names[0], home, world) for home in homes)
    use = world.state.tubs.get(names[0])
    if len(homes) > 1 or (use is not None and use.until is None and use.enclosure not in homes):
        return _ask(answer, reading, "tubs.taken", (use, names[0], homes), used, world)
    if use is not None and not use.cleaned and use.enclosure not in homes and use.group != "healthy":
        return _ask(answer, reading, "tubs.unclean", (use, names[0], homes), (TubCleaned(names[0]), *used), world)
    if not moved:
        details = {"home": world.household.enclosure(homes[0]), "tub": names[0]}
        return replace(
            answer, message="tubs.noted", details=details, outcome=Outcome.ANSWER, missing=(), pending=None, events=used
        )
    return replace(answer, events=(*answer.events, *used))


def _one_each(answer: Answer, reading: Reading, world: World) -> Answer:
    """ "Juniper's in the blue tub and pepper's in the grey one": each in its own; one that won't do is asked of."""
    pairs = tuple(zip(reading.slots.tubs, reading.slots.enclosures, strict=True))
    fit = tuple(_used(name, home, world) for name, home in pairs if _will_do(world.state.tubs.get(name), home))
    kept = replace(answer, events=(*answer.events, *fit))
    for name, home in pairs:
        use = world.state.tubs.get(name)
        if use is not None and not _will_do(use, home):
            taken = use.until is None and use.enclosure != home
            cleaned = () if taken else (TubCleaned(name),)
            message = "tubs.taken" if taken else "tubs.unclean"
            return _ask(kept, reading, message, (use, name, [home]), (*cleaned, _used(name, home, world)), world)
    return kept


def _will_do(use: TubUse | None, home: str) -> bool:
    """Whether a tub stands empty, and clean where one that isn't healthy was in it."""
    if use is None or use.enclosure == home:
        return True
    return use.until is not None and (use.cleaned or use.group == "healthy")


def _used(name: str, home: str, world: World) -> TubUsed:
    enclosure = world.household.enclosure(home)
    return TubUsed(name, home, enclosure.group if enclosure is not None else "healthy")


def _ask(
    answer: Answer,
    reading: Reading,
    message: str,
    tub_: tuple[TubUse | None, str, list[str]],
    on_yes: tuple[Event, ...],
    world: World,
) -> Answer:
    """The move is recorded; whether the tub will do is asked, and only "yes" puts it on record."""
    use, name, homes = tub_
    details = {
        "home": world.household.enclosure(homes[0]),
        "tub": name,
        "other": world.household.enclosure(use.enclosure) if use is not None else None,
        "use": use,
        "now": world.now,
        "moved": any(isinstance(event, StepDone) for event in answer.events),
    }
    yes = Answer(reading.intent, Outcome.ANSWER, "tubs.noted", details, {**answer.values, "tub": name}, events=on_yes)
    if message == "tubs.taken" and use is not None and use.group != "healthy" and len(homes) == 1:
        yes = _then_is_it_clean(yes, reading, details, world)
    where = replace(reading, slots=replace(reading.slots, enclosures=tuple(homes), tubs=(), steps=("move out",)))
    no = Answer(
        reading.intent,
        Outcome.ASK,
        "tubs.another",
        details,
        {**answer.values, "tub": None},
        missing=("tub",),
        pending=Pending(where, world.now, missing=("tub",)),
    )
    pending = Pending(reading, world.now, on_yes=yes, on_no=no)
    return replace(answer, message=message, details=details, values={**answer.values, "tub": name}, pending=pending)


def _then_is_it_clean(yes: Answer, reading: Reading, details: Mapping[str, Any], world: World) -> Answer:
    """One that isn't healthy has just left it: that it is empty is not that it is clean."""
    clean = replace(yes, events=(TubCleaned(details["tub"]), *yes.events))
    asked = {**details, "moved": False}
    pending = Pending(reading, world.now, on_yes=clean)
    return replace(yes, outcome=Outcome.ASK, message="tubs.unclean", details=asked, events=(), pending=pending)
