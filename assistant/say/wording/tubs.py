"""How waiting animals and their tubs are spoken of."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from assistant.contract import Answer, Line
from assistant.core.household import Enclosure
from assistant.say.wording.plain import capital, clock_aloud, listed, span
from assistant.say.wording.steps import all_of


def _animal(home: Enclosure | None, fallback: str = "the animal") -> str:
    return home.animal if home is not None and home.animal else home.name if home is not None else fallback


def _one(one: Mapping[str, Any], now: Any) -> str:
    waited = span((now - one["since"]).total_seconds()) if now > one["since"] else "just now"
    where = "loose" if one["loose"] else one["tub"] or "out"
    all_out = "" if one["loose"] or one["tub"] else all_of(one["home"])  # a tub named is one animal's
    many = f", {all_out}" if all_out else ""
    return f"{_animal(one['home'], one['enclosure'])}{many}: {where}, {waited}"


def _who(answer: Answer) -> Line:
    details = answer.details
    waiting, now, still_in = details["waiting"], details["now"], details["still_in"]
    facts = [f"- {fact.says}." for fact in details["facts"]]
    if details["warmth"]:
        say = f"{details['facts'][0].says}."
        return Line(say, "\n".join([say, *(f"{capital(_one(one, now))}." for one in waiting), *facts[1:]]))
    if not waiting:
        return _nobody(details)
    say = capital("; ".join(_one(one, now) for one in waiting[:3])) + "."
    if len(waiting) > 3:
        say = f"{len(waiting)} are out. Longest: {_one(waiting[0], now)}."
    elif still_in:
        say += f" Not out yet: {listed(_animal(home) for home in still_in[:2])}."
    long = [one for one in waiting if (now - one["since"]).total_seconds() > details["long"] * 60]
    if long and len(say.split()) <= 20:
        say += " Look in: warm, shut, dry?"
    lines = [f"{capital(_one(one, now))}, since {clock_aloud(one['since'], now)}" for one in waiting]
    return Line(say, "\n".join([say, *lines, *facts]))


def _nobody(details: Mapping[str, Any]) -> Line:
    homes = [home for home in details["homes"] if home is not None]
    if homes:
        return Line(f"{capital(_animal(homes[0]))} isn't out on my record.")
    if details["tub"]:
        return Line(f"{capital(details['tub'])}: empty on my record.")
    if details["still_in"]:
        return Line(f"None out yet on my record: {listed(_animal(home) for home in details['still_in'][:3])}.")
    return Line("Nobody waits in a tub on my record.")


def _cleaned(answer: Answer) -> Line:
    what = "washed and disinfected" if answer.details["disinfected"] else "washed"
    return Line(f"{capital(listed(answer.details['tubs'][:3]))}: {what}, noted.")


def _only_washed(answer: Answer) -> Line:
    group = "a sick one" if answer.details["use"].group == "sick" else "quarantine"
    return Line(f"{capital(answer.details['tub'])} held {group}. Disinfected, rinsed and dry as well?")


def _not_clean(answer: Answer) -> Line:
    return Line(f"{capital(listed(answer.details['tubs'][:3]))}: not taken as clean. Tell me when it's disinfected.")


def _is_clean(answer: Answer) -> Line:
    details = answer.details
    use, name = details["use"], capital(details["tub"])
    if use is None:
        return Line(f"{name}: nothing is on my record. In doubt, wash and disinfect it.")
    animal = _animal(details["home"], use.enclosure)
    if use.until is None:
        return Line(f"{name} holds the {animal} since {clock_aloud(use.since, details['now'])}, on my record.")
    if use.cleaned:
        return Line(f"{name}: cleaned since the {animal} was in it, on my record.")
    return Line(f"{name}: not cleaned on my record since the {animal} was in it.")


def _back(answer: Answer) -> Line:
    animals = capital(listed(_animal(home, str(home)) for home in answer.details["homes"][:3]))
    return Line(f"{animals}: back home, noted. No clean is on record, so I vouch for nothing there.")


def _back_on_it(answer: Answer) -> Line:
    animals = capital(listed(_animal(home, str(home)) for home in answer.details["homes"][:3]))
    agent = answer.details["agent"]
    what = agent.name if agent is not None else "A product"
    return Line(f"Out again: {what} went on there, and no rinse is on record. {animals}: back, noted.")


def _which_back(answer: Answer) -> Line:
    return Line(
        f"Which is back: the {listed((_animal(home, str(home)) for home in answer.details['homes'][:4]), 'or')}?"
    )


def _occupied(answer: Answer) -> Line:
    return Line(
        f"{capital(_animal(answer.details['home']))} waits in {answer.details['tub']} on my record. Move it first."
    )


def _noted(answer: Answer) -> Line:
    return Line(f"{capital(_animal(answer.details['home']))}: {answer.details['tub']}, noted.")


def _taken(answer: Answer) -> Line:
    details = answer.details
    name, animal = details["tub"], capital(_animal(details["home"]))
    if details["other"] is None:
        return Line(f"Out, noted. But one animal a tub: are they apart in {name}?")
    held = f"holds the {_animal(details['other'])} since {clock_aloud(details['use'].since, details['now'])}"
    first = f"{animal}: out, noted. But {name}" if details["moved"] else capital(name)
    return Line(f"{first} {held}. Is that one out of it?")


def _unclean(answer: Answer) -> Line:
    details = answer.details
    group = "a sick one" if details["use"].group == "sick" else "quarantine"
    out = f"{capital(_animal(details['home']))}: out, noted. " if details["moved"] else ""
    return Line(f"{out}{capital(details['tub'])} held {group}. Washed, disinfected, rinsed and dry since?")


def _another(answer: Answer) -> Line:
    return Line("Then another tub: one animal each, clean and dry. Tell me which.")


LINES: Mapping[str, Callable[[Answer], Line]] = {
    "tubs.who": _who,
    "tubs.cleaned": _cleaned,
    "tubs.only_washed": _only_washed,
    "tubs.not_clean": _not_clean,
    "tubs.is_clean": _is_clean,
    "tubs.back": _back,
    "tubs.back_on_it": _back_on_it,
    "tubs.which_back": _which_back,
    "tubs.occupied": _occupied,
    "tubs.noted": _noted,
    "tubs.taken": _taken,
    "tubs.unclean": _unclean,
    "tubs.another": _another,
}
