"""How the end of the day is spoken of: the most pressing first, the rest on the screen."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from assistant.contract import Answer, Line
from assistant.core.household import Enclosure
from assistant.core.record.state import Round
from assistant.core.round.gate import DOING
from assistant.say.wording.plain import MOST_WORDS, capital, clock, count, listed
from assistant.say.wording.steps import to_do_now

HANDS = "Wash your hands: soap, 20 seconds."


def _animal(home: Enclosure | None, fallback: str = "an animal") -> str:
    return home.animal if home is not None and home.animal else home.name if home is not None else fallback


def _pressing(details: Mapping[str, Any]) -> list[str]:
    """What is spoken, the most pressing first; each a whole sentence."""
    said = []
    if details["loose"]:
        said.append(f"{capital(listed(_animal(home) for home in details['loose'][:2]))} still loose: find it first.")
    rounds, waiting = details["rounds"], details["waiting"]
    if rounds:
        names = listed(round_.enclosure for round_ in rounds[:3]) if len(rounds) <= 3 else "named on the screen"
        said.append(f"{len(rounds)} still open: {names}.")
    tubbed = [one for one in waiting if not one["loose"]]
    if tubbed:
        said.append(f"Still out: {listed(_animal(one['home'], one['enclosure']) for one in tubbed[:3])}.")
    if details["items"]:
        said.append(f"{capital(listed(item.item for item in details['items'][:2]))} still in.")
    if details["cleaned_only"]:
        said.append(f"Cleaned, not disinfected: {listed(details['cleaned_only'][:2])}.")
    spent = [ending for ending in details["ending"] if ending.at <= details["now"]]
    if spent:
        said.append(f"Past its life: {listed(ending.bottle for ending in spent[:2])}.")
    if details["tubs"]:
        said.append(f"To wash: {listed(use.tub for use in details['tubs'][:2])}.")
    return said


def _end(answer: Answer) -> Line:
    details = answer.details
    said = _pressing(details)
    say = "" if details["rounds"] or details["loose"] or details["waiting"] else "Nothing open on my record."
    for sentence in said:
        if len(f"{say} {sentence} {HANDS}".split()) <= MOST_WORDS:
            say = f"{say} {sentence}".strip()
    say = f"{say} {HANDS}".strip()
    return Line(say, "\n".join([say, *_shown(details)]))


def _todo(round_: Round, details: Mapping[str, Any]) -> str:
    way, home, agent, asks_wet = details["next"][round_.enclosure]
    if asks_wet:
        return "say whether it stayed wet"
    return to_do_now(way, home, agent)


def _shown(details: Mapping[str, Any]) -> list[str]:
    now = details["now"]
    lines = [f"- Loose: {_animal(home)}, not found on my record." for home in details["loose"]]
    lines += [f"- {capital(r.enclosure)}: open. Next: {_todo(r, details)}." for r in details["rounds"]]
    lines += [
        f"- {capital(_animal(one['home'], one['enclosure']))}: {one['tub'] or 'out'} since {clock(one['since'], now)}."
        for one in details["waiting"]
        if not one["loose"]
    ]
    lines += [f"- {capital(item.item)}: still {DOING[item.way]}." for item in details["items"]]
    lines += [f"- {capital(item.item)}: {DOING[item.way]} is over. Out, rinsed and dry?" for item in details["over"]]
    lines += [f"- {capital(name)}: cleaned today, not disinfected." for name in details["cleaned_only"]]
    for ending in details["ending"]:
        over = "past its life: don't spray it" if ending.at <= now else f"good until {clock(ending.at, now)}"
        lines.append(f"- {capital(ending.bottle)}: {over}.")
    lines += [f"- {capital(use.tub)}: used, not washed since." for use in details["tubs"]]
    if details["dues"]:
        lines.append(f"- {count(len(details['dues']), 'chore')} due and not on record today.")
    return [*lines, f"- {details['hands'].says}."]


LINES: Mapping[str, Callable[[Answer], Line]] = {"day.end": _end}
