"""How an escape and a spill are spoken of: what to do first, in ten words at most."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from typing import Any

from assistant.contract import Answer, Line
from assistant.core.household import People
from assistant.say.wording.plain import capital, listed

MOST_WORDS_IN_A_NUMBER = 4
"""A longer one isn't spoken but shown, so that the whole stays short."""
NOT_INSTEAD = "This tool stands in for no label, vet or poison centre."

SPILLS = {
    "bleach": "Gloves and goggles on. Plenty of water, mop it up. No vinegar, no other cleaner.",
    "alcohol": "Heat and flames off at the plug. Soak it up with sand or clay litter.",
    "acid": "Gloves on. Mop with plenty of water. Keep bleach well away from it.",
    "other": "Gloves on. Soak it up, bag it, rinse with water. No other cleaner on it.",
    "unknown": "Gloves on. Read its label before you touch it. No other cleaner on it.",
}
"""What comes after getting everybody out, by what was spilled."""


def _shown(say: str, details: Mapping[str, Any], *more: str) -> Line:
    people: People = details["people"]
    steps = [f"- {step}." for step in details["steps"]]
    notes = [f"Note: {note}" for note in details.get("notes", ())]
    vet = f"Vet: {people.vet or 'yours (set vet in keeping.toml)'}"
    centre = f"Poison centre: {people.poison_centre or 'your local one (set poison_centre in keeping.toml)'}"
    return Line(say, "\n".join([say, *more, *steps, *notes, vet, centre, NOT_INSTEAD]))


def _escape(answer: Answer) -> Line:
    wet = answer.details["wet"]
    if wet:
        say = (
            "Stop spraying. Door shut, gaps blocked; check walls, then warm dark places. "
            "If it crossed the spray: lukewarm water on it, then your vet."
        )
        return _shown(say, answer.details, f"On surfaces by my record: {listed(wet)}.")
    say = "Stop spraying. Bottle down, door shut, gaps blocked. Look along the walls, then warm dark places."
    return _shown(f"{say} Tell me when it's found.", answer.details)


def _found(answer: Answer) -> Line:
    where = "Shut it in a tub, not back home yet." if answer.details["cleaning"] else "Shut it in, check the lid."
    say = f"Good. Look it over: wet, cold, hurt? Product on it: lukewarm water, then your vet. {where}"
    return _shown(say, answer.details)


def _spill(answer: Answer) -> Line:
    details = answer.details
    say = f"Animals and people out, window open. {SPILLS[details['kind']]}"
    home, agent = details["enclosure"], details["agent"]
    noted = (
        f"{capital(home)}: {agent.name} on its surface, noted." if home and agent is not None and answer.events else ""
    )
    return _shown(say, details, *filter(None, [noted]))


def _spill_at_home(answer: Answer) -> Line:
    """Into an enclosure with its animal inside: that comes first."""
    details = answer.details
    people: People = details["people"]
    number = re.sub(r"[^\w ]", " ", people.vet).split()
    call = f"your vet, {' '.join(number)}" if 0 < len(number) <= MOST_WORDS_IN_A_NUMBER else "your vet"
    water = f"Wet with it: lukewarm running water, nothing by mouth, then {call}."
    say = f"{capital(details['enclosure'])}: animals out now. {water}"
    agent = details["agent"]
    noted = f"{agent.name} on its surface, noted." if agent is not None and answer.events else ""
    return _shown(say, details, *filter(None, [capital(noted)]))


def _nothing_on_it(answer: Answer) -> Line:
    say = "No, nothing on it but water: two products may make gas. Gloves, window open, soak it up, rinse it well."
    return _shown(say, answer.details)


LINES: Mapping[str, Callable[[Answer], Line]] = {
    "harm.escape": _escape,
    "harm.found": _found,
    "harm.spill": _spill,
    "harm.spill_at_home": _spill_at_home,
    "harm.spill_nothing_on_it": _nothing_on_it,
}
