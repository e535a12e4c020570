"""The record in words: each entry as a line of a log that a keeper can show to a vet."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import fields
from datetime import datetime
from typing import Any

from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.quantity import read_mix
from assistant.core.record import events as happened
from assistant.core.record.history import Entry
from assistant.say.wording.amounts import shown
from assistant.say.wording.fill_said import mix_said
from assistant.say.wording.plain import count, listed, span

Named = Callable[[str], str]
"""From an agent's or organism's id to its name."""

STEPS = {
    "move out": "animal moved out",
    "clear": "cleared out",
    "wash": "washed, soap rinsed off",
    "hold": "wet time over",
    "dry": "dry",
    "air": "aired",
    "return": "animal back in",
}
"""A step as done; spraying and rinsing say more."""

SIMPLE: Mapping[type, str] = {
    happened.StayedWet: "stayed wet for the whole wet time, as the keeper saw",
    happened.DriedEarly: "dried before the wet time was over; to be sprayed again",
    happened.HoldDoubted: "wet time in doubt",
    happened.Paused: "paused, to be gone on with",
    happened.Resumed: "gone on with",
    happened.CleanOnly: "finished as a clean, not a disinfection",
    happened.BackTooSoon: "animal was put back before the clean was over",
    happened.SurfaceDried: "surface dry",
    happened.BottleRinsed: "bottle emptied, rinsed out and pumped through",
    happened.BottleUnsettled: "filled with what is no mix that I know: water, or a product not heard of",
    happened.BottleDoubted: "nobody knows what it holds: don't use",
    happened.AnimalLoose: "animal got out",
    happened.AnimalFound: "animal found again",
    happened.TubLeft: "animal back from its waiting tub, with no clean open",
    happened.TubCleaned: "waiting tub washed and disinfected",
    happened.TubUnclean: "waiting tub not disinfected after all",
}
"""What needs nothing but its name."""

WHOSE = {"person": "a person's", "animal": "an animal's"}
"""Whose eye or skin was rinsed, where that was said."""

RESTARTED = {"newcomer": "a newcomer", "test": "a positive test", "sign": "a sign of illness"}
"""Why a quarantine began again."""


def what_was_done(entry: Entry, all_of: tuple[Entry, ...], named: Named) -> str:
    """One entry's line, with its correction if it was taken back.

    all_of: the whole record, for an undo names what it takes back.
    """
    event = entry.event
    if isinstance(event, happened.Voided):
        return f"took back: {_taken_back(event, all_of, named)}"
    return told(event, named)


def _taken_back(event: happened.Voided, all_of: tuple[Entry, ...], named: Named) -> str:
    those = [entry for entry in all_of if entry.turn == event.turn and not entry.is_note]
    return "; ".join(told(entry.event, named) for entry in those) or "what an earlier turn recorded"


def correction(entry: Entry, local: Callable[[datetime], datetime]) -> str:
    """ "taken back 2026-05-04 10:15"; empty where the entry stands and was told when it was done."""
    parts = []
    if entry.undone_at is not None:
        parts.append(f"taken back {local(entry.undone_at):%Y-%m-%d %H:%M}")
    if entry.lasts:
        parts.append("what touched or was poured in still counts")
    if entry.told_at != entry.at:
        parts.append(f"told {local(entry.told_at):%Y-%m-%d %H:%M}")
    return "; ".join(parts)


def told(event: happened.Event, named: Named) -> str:
    """One event in a few words; one that has no words of its own is told by its name and fields."""
    simple = SIMPLE.get(type(event))
    if simple is not None:
        return simple
    of_clean = _of_a_clean(event, named)
    return of_clean or _of_bottles(event, named) or _of_animals(event, named) or _of_clocks(event) or _by_name(event)


def _of_a_clean(event: happened.Event, named: Named) -> str:
    match event:
        case happened.RoundStarted():
            bottle = f", from the {event.bottle}" if event.bottle else ""
            against = f", against {named(event.organism)}" if event.organism else ""
            return f"{event.job or 'clean'} begun with {named(event.agent)}{bottle}{against}"
        case happened.StepDone(step="apply"):
            with_ = f" with {named(event.agent)}" if event.agent else ""
            wet = f", wet time {span(event.hold_s)}" if event.hold_s is not None else ""
            return f"sprayed{with_}{_from(event.bottle)}{wet}"
        case happened.StepReopened():
            return f"{STEPS.get(event.step, event.step)}: not so after all, to be done again"
        case happened.Remarked():
            if event.settled or not event.said:
                return "what wasn't understood is settled"
            return f"told, and not understood: {event.said}"
        case happened.StepDone(step="rinse"):
            return "wiped twice with clean water" if event.wiped else "rinsed with clean water"
        case happened.StepDone():
            return STEPS.get(event.step, event.step)
        case happened.KeptWet():
            return f"sprayed again with {named(event.agent)}, kept wet" if event.agent else "seen still wet"
        case happened.Sensed():
            return listed(_sensed(event)) or "looked at and smelt"
        case happened.AgentTouched():
            return f"{named(event.agent)} was on it, outside a clean"
        case happened.SurfaceRinsed():
            return "surface wiped with clean water" if event.wiped else "surface rinsed with clean water"
        case happened.WindowsOpened():
            return f"{count(event.openings, 'window or door', 'windows or doors')} open" if event.openings else "shut"
        case happened.GasMade():
            return f"{listed(map(named, event.agents))} met and made a gas: don't use"
    return ""


def _from(bottle: str | None) -> str:
    return f" from the {bottle}" if bottle else ""


def _sensed(event: happened.Sensed) -> list[str]:
    smell = {True: "smells of product", False: "no smell", None: ""}[event.smell]
    wet = {True: "a wet patch", False: "no wet patch", None: ""}[event.wet]
    return [word for word in (smell, wet) if word]


def _of_bottles(event: happened.Event, named: Named) -> str:
    match event:
        case happened.BottleMixed():
            did = "topped up" if event.topped_up else "filled"
            mix = mix_said(read_mix(event.mix)) if event.mix else ""
            total = f", {shown(event.total)} in all" if event.total is not None else ""
            return f"{did} with {named(event.agent)}{mix}{total}"
        case happened.AgentPoured():
            return f"{named(event.agent)} was in it"
        case happened.AgentsMet():
            return f"{listed(map(named, event.agents))} met in it: don't use"
        case happened.SprayerMeasured():
            return f"one stroke measured: {event.ml_a_stroke:g} mL"
    return ""


def _of_animals(event: happened.Event, named: Named) -> str:
    match event:
        case happened.GroupChanged():
            why = f" ({named(event.organism)})" if event.organism else ""
            return f"moved to the group {event.group}{why}"
        case happened.QuarantineRestarted():
            return f"quarantine began again ({RESTARTED.get(event.why, event.why)})"
        case happened.TubUsed():
            return f"animal put in the {event.tub} to wait"
        case happened.ItemBegun():
            return f"{event.item} put to {event.way}, {span(event.seconds)}"
        case happened.RinseBegun():
            whose = WHOSE.get(event.victim, "somebody's")
            return f"splash: {whose} {event.place} rinsed under running water, {span(event.seconds)}"
        case happened.RinseEnded():
            whose = WHOSE.get(event.victim, "somebody's")
            return f"splash: rinsing of {whose} {event.place} ended by the keeper"
        case happened.HabitChanged():
            return f"setting {event.habit} changed to {event.value}"
    return ""


def _of_clocks(event: happened.Event) -> str:
    match event:
        case happened.Away():
            return f"nobody was watching from {event.since:%Y-%m-%d %H:%M} UTC until then"
        case happened.ClocksParted():
            which = "ahead" if event.ahead_s > 0 else "back"
            return f"the computer's clock was moved {which} by {span(abs(event.ahead_s))}"
        case happened.ClocksSettled():
            which = "longer" if event.passed else "shorter"
            return f"after the clock was moved, the {which} time counts for {event.thing}"
    return ""


def _by_name(event: happened.Event) -> str:
    """ "splint made: colour blue": whatever is on record is told, also what has no words here yet."""
    chore = getattr(event, "chore", None)
    if chore is not None:
        return f"{'fresh water' if chore == 'water' else chore}, as told"
    name = "".join(f" {letter.lower()}" if letter.isupper() else letter for letter in type(event).__name__).strip()
    parts = [
        f"{field.name.replace('_', ' ')} {_plainly(value)}"
        for field in fields(event)
        if field.name not in ("enclosure", "bottle", "done_at") and (value := getattr(event, field.name)) is not None
    ]
    return f"{name}: {', '.join(parts)}" if parts else name


def _plainly(value: Any) -> str:
    if isinstance(value, Amount):
        return shown(value)
    if isinstance(value, tuple):
        return listed(map(_plainly, value))
    return f"{value}"
