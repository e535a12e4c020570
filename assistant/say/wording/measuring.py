"""How a tool and its mark are spoken of."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from fractions import Fraction

from assistant.contract import Answer, Line
from assistant.core.mixing.measuring import Measured
from assistant.say.wording.amounts import number, rounded, said_mark, said_unmeasured, shown
from assistant.say.wording.dose_said import UNMEASURED, fills
from assistant.say.wording.plain import capital, listed


def _measure_with(answer: Answer) -> Line:
    details = answer.details
    measured: Measured = details["measured"]
    error: Fraction = details["error"]
    percent = rounded(error, 2)
    mark = number(measured.mark.amount)
    verdict = f"off by {percent} percent at most" if measured.good_enough else f"rough, up to {percent} percent off"
    say = f"{said_mark(measured.amount)}: {measured.tool.name} {fills(measured, mark)}; {verdict}."
    low, high = measured.amount.amount - measured.error, measured.amount.amount + measured.error
    unit = measured.mark.unit
    lines = [
        f"{shown(details['volume'])}: {measured.tool.name} {fills(measured, f'the {shown(measured.mark)} mark')}.",
        f"Really between {rounded(max(low, Fraction(0)))} and {rounded(high)} {unit}: its tolerance and half a mark "
        "for the eye, at each fill.",
    ]
    if not measured.good_enough:
        lines.append("A dosing device should be right within 10 %: use a finer tool, or measure more at once.")
    return Line(capital(say), "\n".join(lines))


def _unmeasured(answer: Answer) -> Line:
    details = answer.details
    why = UNMEASURED[details["why"]]
    if details["named"]:
        why = f"The {listed(details['named'], 'or')} can't measure that."
    least: Measured | None = details["least"]
    if least is None or details["why"] != "too little":
        say = why
    else:
        say = f"{why.partition(':')[0].rstrip('.')}: {said_mark(least.amount)} is the least, in the {least.tool.name}."
    return Line(say, f"{said_unmeasured(details['volume'])}: {say}")


def _no_tools(_: Answer) -> Line:
    return Line("None on record. List your syringes and cups in keeping dot toml, and I can tell.")


def _measure_what(_: Answer) -> Line:
    return Line("How much do you want to measure?")


LINES: Mapping[str, Callable[[Answer], Line]] = {
    "measuring.measure_with": _measure_with,
    "measuring.unmeasured": _unmeasured,
    "measuring.no_tools": _no_tools,
    "measuring.measure_what": _measure_what,
}
