"""How bottles and what they hold are spoken of."""

from __future__ import annotations

from collections.abc import Callable

from assistant.contract import Answer, Line
from assistant.say.wording.plain import capital, listed


def _rinsed_which(answer: Answer) -> Line:
    known = answer.details["known"]
    return Line("Which bottle did you rinse out?", f"Which bottle: {listed(known, 'or')}?" if known else "")


def _rinsed_out(answer: Answer) -> Line:
    bottle = capital(answer.details["bottle"])
    if answer.details["was_unknown"]:
        return Line(f"{bottle}: rinsed out and pumped through, noted. It no longer counts as an unknown mix.")
    return Line(f"{bottle}: rinsed out and pumped through, noted.")


LINES: dict[str, Callable[[Answer], Line]] = {
    "shelf.rinsed_which": _rinsed_which,
    "shelf.rinsed_out": _rinsed_out,
}
