"""How a bleach's age is spoken of: the strength first, and when it is time to buy fresh."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from fractions import Fraction
from typing import Any

from assistant.contract import Answer, Line
from assistant.core.mixing.decay import Kept
from assistant.say.wording.amounts import number, rounded
from assistant.say.wording.plain import capital, count, listed

WEEKS_FROM, MONTHS_FROM = 21, 90
"""Days from which an age is said in weeks, and in months."""


def _now(answer: Answer) -> Line:
    details = answer.details
    percent, left = rounded(Fraction(details["percent"]), 2), rounded(Fraction(details["left"]) * 100, 2)
    fresh = " Buy fresh." if details["weak"] or details["old"] else ""
    age = _age(details["days"])
    warm = listed(f"{one.degrees:g}" for one in details["kept"])
    say = f"About {percent} percent: {left} percent of its strength is left after {age} at {warm} degrees.{fresh}"
    return Line(say, "\n".join([*_shown(details, percent, left), *_advice(details)]))


def _shown(details: Mapping[str, Any], percent: str, left: str) -> list[str]:
    return [
        f"{capital(details['name'])}, {number(details['label'])} % when made, now about {percent} % "
        f"({left} % of it left).",
        _kept(details),
        "By formula, for plain bleach kept closed and dark; stored bleach has been found a twentieth off either way. "
        "A test strip knows better.",
    ]


def _advice(details: Mapping[str, Any]) -> list[str]:
    if details["old"]:
        return ["Over a year old: buy fresh. No dose is raised for it."]
    if details["weak"]:
        return ["Under four fifths of its strength: buy fresh. No dose is raised for it."]
    return ["With its date in keeping.toml a dose in percent or ppm is raised for that; a ratio is kept as said."]


def _kept(details: Mapping[str, Any]) -> str:
    kept: tuple[Kept, ...] = details["kept"]
    where = {"said": "", "shelf": ", as keeping.toml has it", "room": ", your room's: no other is set"}
    times = listed(f"{_age(one.days)} at {one.degrees:g} °C" for one in kept)
    return f"Kept {times}{where[details['warmth']]}."


def _outside(answer: Answer) -> Line:
    details = answer.details
    if details["what"] == "strength":
        say = "That I can't work out: the formula holds for bleach of about five percent and more. In doubt, buy fresh."
    else:
        low, high = details["warmth_range"]
        say = f"That I can't work out: the formula holds from {low} to {high} degrees. In doubt, buy fresh."
    return Line(say, "\n".join([say, f"{capital(details['name'])}: {number(details['label'])} %.", _kept(details)]))


def _how_old(answer: Answer) -> Line:
    return Line(f"How old is the {answer.details['name']}? Say so many weeks, or the month it was made.")


def _not_yet_made(answer: Answer) -> Line:
    return Line(f"Its date in keeping dot toml lies ahead. How old is the {answer.details['name']}, in weeks?")


def _how_warm(answer: Answer) -> Line:
    return Line(f"How warm is the {answer.details['name']} kept, in degrees?")


def _which_degrees(answer: Answer) -> Line:
    return Line(f"{answer.details['degrees']:g} degrees in what? Say it in Celsius, or as so many Fahrenheit.")


def _no_law(answer: Answer) -> Line:
    name = answer.details["name"]
    return Line(f"I know how bleach weakens, not {name}. Go by the date on its label.")


def _age(days: float) -> str:
    """ "10 days", "9 weeks", "6 months"."""
    if days >= MONTHS_FROM:
        return count(float(rounded(Fraction(days) / Fraction("30.4375"), 2)), "month")
    return count(round(days / 7), "week") if days >= WEEKS_FROM else count(round(days), "day")


LINES: Mapping[str, Callable[[Answer], Line]] = {
    "bleach.now": _now,
    "bleach.outside": _outside,
    "bleach.how_old": _how_old,
    "bleach.not_yet_made": _not_yet_made,
    "bleach.how_warm": _how_warm,
    "bleach.which_degrees": _which_degrees,
    "bleach.no_law": _no_law,
}
