"""How a dose is spoken of: the number first, one dose only, as many clauses as 25 words hold."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from fractions import Fraction
from typing import Any

from assistant.core.mixing.batch import Better
from assistant.core.mixing.decay import Age
from assistant.core.mixing.dilution import Mixed
from assistant.core.mixing.measuring import Measured, Unmeasured
from assistant.core.quantities.amounts import Amount, Mix, Percent, Ppm, SaidRatio, Scoops
from assistant.core.quantities.units import convert, spoken
from assistant.say.wording.amounts import number, rounded, said_mark, said_unmeasured, said_whole
from assistant.say.wording.plain import MOST_WORDS, capital, listed

ALWAYS, HEARD, OFTEN, ROOM = range(4)
"""How much a clause is needed: the last to go, the first to go."""

UNMEASURED: Mapping[Unmeasured, str] = {
    "too little": "Too little for your tools.",
    "too much": "Too much for your tools.",
    "between": "None of your tools measures that well.",
}


_AS_CHECKED: Mapping[str, str] = {"right": "Yes, ", "wrong": "No, "}
""" "So 15 mils?", said back by the keeper."""


def said(details: Mapping[str, Any]) -> str:
    """The whole reply."""
    clauses = [
        (ALWAYS, f"{_AS_CHECKED.get(details['checked'], '')}{_first(details)}, {said_mix(details)}:"),
        (HEARD, _age(details)),
        (OFTEN, _as_asked(details["in_unit"])),
        (OFTEN, _marks(details["measured"])),
        (OFTEN, scooped(details)),
        (OFTEN, unmeasured(details) if not _in_two_steps(details["better"]) else ""),
        (OFTEN, _better(details["better"])),
        (HEARD, _short(details["short"])),
        (HEARD if details["spoken"] else ROOM, _whole(details)),
    ]
    return _fitted(clauses)


def _first(details: Mapping[str, Any]) -> str:
    """The number that was asked for: the concentrate, or the water where the concentrate is there already."""
    mixed = details["mixed"]
    if details["of"] != "concentrate" or not mixed.water.amount:
        return said_dose(details)
    return f"{said_unmeasured(mixed.water)} of water to {said_unmeasured(mixed.concentrate)} of {details['name']}"


def _in_two_steps(better: Better | None) -> bool:
    """Whether it takes two steps: then no room is left to say why."""
    return better is not None and better.two_steps is not None


def _as_asked(in_unit: Amount | None) -> str:
    """ "6.34 teaspoons", where it was asked in these; in mils it is told anyway."""
    if in_unit is None or in_unit.unit in ("mL", "L"):
        return ""
    figures = rounded(in_unit.amount)
    return f"{figures} {spoken(in_unit.unit, Fraction(figures))}."


def scooped(details: Mapping[str, Any]) -> str:
    """ "2.3 caps of 10 mils", "5 mil syringe twice full, then 2.5 mils"; empty where no such tool was spoken of."""
    scoops: Scoops | None = details["scoops"]
    if scoops is None or not details["mixed"].water.amount:
        return ""
    if scoops.holds is None:
        return f"Say what a {scoops.tool} holds, and I count them." if scoops.wanted else ""
    holds = convert(scoops.holds, "mL").amount
    times = convert(details["mixed"].concentrate, "mL").amount / holds
    each = said_whole(scoops.holds)
    if scoops.tool == "syringe":
        full, rest = int(times), Amount((times - int(times)) * holds, "mL")
        if not full:
            return f"the syringe of {each} to {rounded(rest.amount)}."
        then = f", then {said_unmeasured(rest)}" if rest.amount else ""
        return f"the syringe of {each} {_times(full)} full{then}."
    counted = rounded(times)
    return f"{counted} {scoops.tool if times == 1 else scoops.tool + 's'} of {each}."


def _better(better: Better | None) -> str:
    """The smallest batch that can be measured well, or the first of two steps and the second."""
    if better is None:
        return ""
    steps = better.two_steps
    if steps is not None:
        first = f"{said_mark(steps.first_measured.amount)} into {said_unmeasured(steps.first.water)} of water"
        return f"in two steps: {first}, then {said_mark(steps.second_measured.amount)} of that."
    return f"better make {said_unmeasured(better.batch.total)} at once." if better.batch is not None else ""


def _short(short: tuple[Amount, Mixed] | None) -> str:
    if short is None:
        return ""
    return f"only {said_unmeasured(short[0])} left, enough for {said_unmeasured(short[1].total)}."


def said_strength(wanted: Mix) -> str:
    """ "0.5 percent", "500 parts per million"."""
    if isinstance(wanted, Percent):
        return f"{number(wanted.percent)} percent"
    return f"{number(wanted.ppm)} {spoken('ppm', wanted.ppm)}" if isinstance(wanted, Ppm) else "that"


def said_dose(details: Mapping[str, Any]) -> str:
    """ "15.2 mils of bleach": to the tool's mark, else to three figures."""
    measured: Measured | None = details["measured"]
    if measured is not None:
        return f"{said_mark(measured.amount)} of {details['name']}"
    mixed = details["mixed"]
    amount = said_unmeasured(mixed.concentrate) if mixed.water.amount else said_whole(mixed.total)
    return f"{amount} of {details['name']}"


def fills(measured: Measured, mark: str) -> str:
    """ "to 5.2", "twice full", "once full, then to 5.2"."""
    full = "full" if measured.to_the_brim else "to the top mark"
    if measured.mark == measured.full:
        return full if measured.fills == 1 else f"{_times(measured.fills)} {full}"
    return f"{_times(measured.full_fills)} {full}, then to {mark}" if measured.full_fills else f"to {mark}"


def unmeasured(details: Mapping[str, Any]) -> str:
    """Why no tool is named; empty where one is, or where there is none."""
    if details["unmeasured"] is None:
        return ""
    if details["tools_named"]:
        return f"The {listed(details['tools_named'], 'or')} can't measure that."
    return UNMEASURED[details["unmeasured"]]


def said_part(first: Fraction) -> str:
    """The first number of a ratio."""
    return "one" if first == 1 else number(first)


def said_mix(details: Mapping[str, Any]) -> str:
    """Which mix, and which reading of it: "one to 32", "for 500 parts per million"."""
    wanted: Mix = details["wanted"]
    if isinstance(wanted, Percent):
        return f"for {number(wanted.percent)} percent"
    if isinstance(wanted, Ppm):
        return f"for {number(wanted.ppm)} {spoken('ppm', wanted.ppm)}"
    if isinstance(wanted, SaidRatio):
        if wanted.part is not None and wanted.whole is not None:
            return _recipe(wanted.part, wanted.whole, details["ratio"].reading)
        if details["ratio"].why == "equal parts":
            return "equal parts"
        return f"{said_part(wanted.first)} {details['ratio'].reading} {number(wanted.second)}"
    return "undiluted"


def _recipe(part: Amount, whole: Amount, reading: str) -> str:
    """ "1 US fluid ounce to the US gallon"."""
    into = said_whole(whole) if whole.amount != 1 else f"the {spoken(whole.unit, 1)}"
    return f"{said_whole(part)} {reading} {into}"


def _marks(measured: Measured | None) -> str:
    """ "big syringe once full, then to 5.2." """
    if measured is None:
        return ""
    roughly = "" if measured.good_enough else ", roughly"
    return f"{measured.tool.name} {fills(measured, number(measured.mark.amount))}{roughly}."


def _times(count: int) -> str:
    return {1: "once", 2: "twice"}.get(count, f"{count} times")


def _whole(details: Mapping[str, Any]) -> str:
    mixed = details["mixed"]
    if not mixed.water.amount:
        return "Nothing else goes in."
    if details["of"] == "water":
        return f"Into {said_unmeasured(mixed.water)} of water."
    if details["of"] == "concentrate":
        return f"That makes {said_unmeasured(mixed.total)}."
    return f"Into water, {said_whole(mixed.total)} in all."


def _age(details: Mapping[str, Any]) -> str:
    """Only where a strength was asked for that the bleach may no longer give."""
    if details["is_ratio"] or not details["buy_fresh"]:
        return ""
    age: Age = details["age"]
    if age.verdict == "outside the law":
        return "what it lost since I can't tell; in doubt, buy fresh."
    return "that bleach is old, buy fresh."


def _fitted(clauses: Iterable[tuple[int, str]]) -> str:
    """As many clauses as 25 words hold, in their order, the least needed left out first."""
    kept = [(need, text) for need, text in clauses if text]
    for need in (ROOM, OFTEN, HEARD):
        while _words(kept) > MOST_WORDS and any(found == need for found, _ in kept):
            last = max(place for place, (found, _) in enumerate(kept) if found == need)
            del kept[last]
    first, *rest = (text for _, text in kept)
    if not rest or rest[0][0].isupper():
        first = f"{first.rstrip(':')}."
    return " ".join([first, *rest[:1], *map(capital, rest[1:])])


def _words(clauses: Iterable[tuple[int, str]]) -> int:
    return len(" ".join(text for _, text in clauses).split())
