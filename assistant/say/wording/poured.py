"""How the strength of what was poured is spoken of: the number first."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from assistant.contract import Answer, Line
from assistant.core.mixing.decay import BUY_FRESH
from assistant.core.quantities.ratio import Ratio
from assistant.say.wording.amounts import number, rounded, said_whole, shown
from assistant.say.wording.dose_shown import shown_age, shown_chlorine
from assistant.say.wording.plain import capital


def _strength(answer: Answer) -> Line:
    details = answer.details
    ratio: Ratio = details["ratio"]
    parts = f"one to {rounded(ratio.n)}" if ratio.n else "undiluted"
    percent, ppm = details["percent"], details["ppm"]
    if percent is None:
        say = f"{capital(parts)}. How strong the {details['name']} itself is I don't know."
    elif ppm is None:
        say = f"{rounded(percent)} percent, {parts}."
    else:
        say = f"{rounded(percent)} percent, {rounded(ppm)} parts per million: {parts}."
    if details["again"] and details["poured"].concentrate is not None:
        say = f"{say[:-1]}, {_said_sum(details['poured'])}."
    age = details["age"]
    if age is not None and age.verdict in BUY_FRESH:
        say = f"{say[:-1]}, were it fresh."
    if details["too_strong"] is not None:
        say += " Too strong for a surface."
    return Line(say, "\n".join(_shown(details)))


def _said_sum(poured: Any) -> str:
    """Of a follow-up ("and forty?"): the amounts that it was taken for."""
    return f"with {said_whole(poured.concentrate)} in {said_whole(poured.second)}"


def _shown(details: Mapping[str, Any]) -> list[str]:
    lines = [_sum(details)]
    ratio: Ratio = details["ratio"]
    if ratio.n:
        lines.append(f"1 to {rounded(ratio.n, 4)}: one part in {rounded(ratio.as_in[1], 4)} in all.")
    if details["percent"] is not None:
        of = f"{number(details['stock_percent'])} % {details['name']}"
        line = f"Strength: {rounded(details['percent'])} % from {of}"
        chlorine = shown_chlorine(details["ppm"], details["chlorine"])
        lines.append(f"{line}{chlorine}.")
    if details["too_strong"] is not None:
        lines.append(f"Stronger than any use on a surface that I can cite. {details['too_strong'].says}.")
    lines += shown_age(details["age"], makes_up=False)
    return lines


def _sum(details: Mapping[str, Any]) -> str:
    poured, name = details["poured"], details["name"]
    if poured.concentrate is None or poured.total is None:
        bottle = details["bottle"]
        return f"The {bottle.name}'s mix, as it is meant to be." if bottle is not None else "The mix as said."
    how = {
        "water": f"in {shown(poured.second)} water",
        "taken as water": f"added to {shown(poured.second)}, taken as water",
        "total": f"made up to {shown(poured.second)} in all",
        "bottle": f"in a bottle filled up to {shown(poured.second)}",
        "mix": "",
    }[poured.whole]
    return f"{shown(poured.concentrate)} {name} {how}: {shown(poured.total)} in all."


def _into_what(answer: Answer) -> Line:
    return Line(f"{capital(said_whole(answer.details['concentrate']))} in how much water, or which bottle?")


def _how_much(answer: Answer) -> Line:
    return Line(f"How much {answer.details['name']} did you put in, and in how much water?")


def _two_volumes(_: Answer) -> Line:
    return Line("How much concentrate, and in how much water? I heard more than two amounts.")


def _more_than_whole(answer: Answer) -> Line:
    details = answer.details
    part, whole = said_whole(details["concentrate"]), said_whole(details["total"])
    return Line(f"{capital(part)} won't go in {whole}. How much was it, and in how much?")


def _what_it_holds(answer: Answer) -> Line:
    return Line(f"How much does the {answer.details['tool']} hold? Say it in mils.")


LINES: Mapping[str, Callable[[Answer], Line]] = {
    "poured.strength": _strength,
    "poured.into_what": _into_what,
    "poured.how_much": _how_much,
    "poured.what_it_holds": _what_it_holds,
    "poured.two_volumes": _two_volumes,
    "poured.more_than_whole": _more_than_whole,
}
