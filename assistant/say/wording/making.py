"""How much to make is spoken of: the volume first, then how often the bottle is filled and pulled."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from fractions import Fraction
from typing import Any

from assistant.contract import Answer, Line
from assistant.core.quantities.amounts import Amount
from assistant.say.wording.amounts import in_larger, number, rounded, said_unmeasured, said_whole, shown
from assistant.say.wording.plain import capital, count, listed

INSIDE = {
    "floor": "the floor alone",
    "walls": "the four walls",
    "floor and walls": "floor and four walls",
    "all sides": "floor, walls and top",
}
A_FEW = 3


def _spray(answer: Answer) -> Line:
    details = answer.details
    names = [one.name for one in details["sprayed"] if one.name]
    where = "that" if not names else f"the {listed(names)}" if len(names) <= A_FEW else f"all {len(names)}"
    say = f"{capital(said_about(details['solution']))} of mix for {where}"
    bottle, fills, strokes = details["bottle"], details["fills"], details["strokes"]
    if bottle is None and fills is not None:
        say += f": {count(fills, 'fill')} of any of your bottles"
    if bottle is not None:
        say += f": {count(fills, 'fill')} of the {bottle.name}"
        say += f", {strokes} strokes" if strokes is not None and strokes < 1000 else ""
    say = f"{say}."
    rest = details["rest"]
    if rest:
        say += f" Left out, no measures: {listed(rest) if len(rest) < A_FEW else f'{len(rest)} more'}."
    return Line(say, "\n".join([say, *_shown(details)]))


def said_about(amount: Amount) -> str:
    """Two figures: what is sprayed is never more exact."""
    larger = in_larger(amount)
    return said_unmeasured(Amount(Fraction(rounded(larger.amount, 2)), larger.unit))


def _shown(details: Mapping[str, Any]) -> list[str]:
    low, high = details["film"]
    inside = INSIDE[details["inside"]]
    lines = [
        f"{capital(one.name) or 'That'}: {rounded(one.area.amount)} m^2 inside, {inside}; {shown(one.solution)}."
        for one in details["sprayed"]
    ]
    if details["own"]:
        lines = [f"By your own strokes: {shown(details['solution'])} on {rounded(details['area'].amount)} m^2."]
    elif details["film_said"] is not None:
        lines.append(f"By what you spray: {rounded(details['film_said'])} mL a square metre.")
    else:
        least = details["least"]
        lines.append(
            f"Reckoned with {high} mL a square metre, sprayed evenly wet; at {low} it would be {shown(least)}."
        )
    bottle = details["bottle"]
    if bottle is not None and bottle.ml_a_stroke is None:
        lines.append(f"How many strokes: pull the {bottle.name} twenty times into a measure and tell me what is in it.")
    if details["fills_each"]:
        fills = ", ".join(f"{name} {count(each, 'fill')}" for name, each in details["fills_each"])
        lines.append(f"{capital(fills)}.")
    elif bottle is None:
        lines.append("Name a bottle, and I say how many strokes.")
    if details["rest"]:
        lines.append(f"Left out, since keeping.toml has no measures of them: {listed(details['rest'])}.")
    lines.append("That wets it once; what dries early takes more.")
    return lines


def _in_strokes(answer: Answer) -> Line:
    details = answer.details
    return Line(f"{capital(said_about(details['solution']))} in {number(details['strokes'])} strokes.")


def _strokes_alone(answer: Answer) -> Line:
    details = answer.details
    name, strokes = details["bottle"].name, details["strokes"]
    line = f"{strokes} strokes on {rounded(details['area'].amount)} m^2."
    measure = f"Pull the {name} twenty times into a measure and tell me what is in it; then I know it in mils."
    return Line(f"{strokes} strokes. In mils I can't tell: I don't know the {name}'s stroke.", f"{line}\n{measure}")


def _soak(answer: Answer) -> Line:
    details = answer.details
    solution: Amount = in_larger(details["solution"])
    say = f"{capital(said_whole(Amount(Fraction(rounded(solution.amount)), solution.unit)))} fill it."
    each = [f"{capital(name)}: {shown(in_larger(one))}." for name, one in details.get("each", {}).items()]
    lines = [say, *each, "Put the things in first: they push some of it out. Everything has to lie under."]
    if details["box"] is not None:
        box = details["box"]
        sides = " x ".join(shown(side) for side in (box.length, box.width, box.height))
        lines.insert(1, f"Inside {sides}, filled to that height.")
    return Line(say, "\n".join(lines))


def _keep_stroke(answer: Answer) -> Line:
    details = answer.details
    say = f"{capital(_stroke(details))} a stroke for the {details['bottle'].name}. Keep that?"
    return Line(say, "\n".join([say, _reckoned(details)]))


def _stroke_kept(answer: Answer) -> Line:
    details = answer.details
    bottle, stroke = details["bottle"], details["stroke"]
    say = f"Kept: {_stroke(details)} a stroke, {bottle.name}."
    line = f"To have it in keeping.toml as well, write ml_a_stroke = {float(stroke.amount):g} under that bottle."
    return Line(say, "\n".join([say, line]))


def _reckoned(details: Mapping[str, Any]) -> str:
    before = details["bottle"].ml_a_stroke
    line = f"{shown(details['caught'])} over {number(details['strokes'])} strokes."
    return line if before is None else f"{line} Until now: {before:g} mL."


def _stroke(details: Mapping[str, Any]) -> str:
    stroke: Amount = details["stroke"]
    return said_unmeasured(stroke)


def _odd_stroke(answer: Answer) -> Line:
    details = answer.details
    strokes = number(details["strokes"])
    return Line(f"{capital(_stroke(details))} a stroke is no trigger I know. What came out of {strokes} strokes?")


def _whose_strokes(_: Answer) -> Line:
    return Line("Which bottle is that the sprayer of?")


def _which_enclosure(_: Answer) -> Line:
    return Line("For which enclosure? Or say its length, width and height.")


def _how_big(answer: Answer) -> Line:
    name = answer.details["name"]
    what = f"the {name}" if name else "it"
    return Line(f"How big is {what} inside? Say length by width by height.")


LINES: Mapping[str, Callable[[Answer], Line]] = {
    "making.spray": _spray,
    "making.soak": _soak,
    "making.in_strokes": _in_strokes,
    "making.strokes_alone": _strokes_alone,
    "making.keep_stroke": _keep_stroke,
    "making.stroke_kept": _stroke_kept,
    "making.odd_stroke": _odd_stroke,
    "making.whose_strokes": _whose_strokes,
    "making.which_enclosure": _which_enclosure,
    "making.how_big": _how_big,
}
