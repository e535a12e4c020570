"""How a top-up is spoken of: the concentrate first, then the water."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from assistant.contract import Answer, Line
from assistant.core.measuring import Measured
from assistant.say.wording.amounts import number, said_unmeasured, said_whole, shown, shown_part
from assistant.say.wording.dose_said import fills, said_dose, said_mix
from assistant.say.wording.plain import capital


def _top_up(answer: Answer) -> Line:
    details = answer.details
    added, measured = details["mixed"], details["measured"]
    if not added.water.amount:
        say = f"{said_unmeasured(added.concentrate)} of {details['name']}, undiluted."
        return Line(capital(say), "\n".join([capital(say), *_conditions(details)]))
    say = f"{said_dose(details)}, {said_mix(details)}"
    if measured is not None:
        say += f": {measured.tool.name} {fills(measured, number(measured.mark.amount))}"
    say += f". Then water to {said_whole(details['found'].capacity)}."
    return Line(capital(say), "\n".join(_shown(details, measured)))


def _shown(details: Mapping[str, Any], measured: Measured | None) -> list[str]:
    found, added = details["found"], details["mixed"]
    concentrate, water = (shown_part(part, added.total) for part in (added.concentrate, added.water))
    lines = [
        f"{shown(found.left)} left + {concentrate} {details['name']} + {water} water = {shown(found.capacity)}",
    ]
    if measured is not None and not measured.good_enough:
        lines.append("So little is measured roughly: use a finer tool, or mix the whole bottle fresh.")
    return [*lines, *_conditions(details)]


def _conditions(details: Mapping[str, Any]) -> list[str]:
    lines = ["Only onto the same mix, and only while that is still good: the top-up keeps the old mix's end."]
    if details["is_bleach"]:
        lines.append(f"Bleach mixed over {details['hours']:g} hours ago is emptied, not topped up.")
    lines.append("Nothing on record says what is in it: if you aren't sure, empty it, rinse it and mix fresh.")
    return lines


def _too_old(answer: Answer) -> Line:
    details = answer.details
    hours = f"{details['hours']:g}"
    say = f"No. Mixed {details['agent']} counts for {hours} hours. Empty it, rinse it and mix fresh."
    return Line(say)


def _which_bottle(_: Answer) -> Line:
    return Line("Which bottle, or how much does it hold?")


def _which_mix(answer: Answer) -> Line:
    return Line(f"At what mix is the {answer.details['name']}? Only the same goes on top.")


def _how_much_left(answer: Answer) -> Line:
    return Line(f"How much is left in the {answer.details['name']}?")


def _no_room(answer: Answer) -> Line:
    details = answer.details
    left, capacity = said_whole(details["left"]), said_whole(details["capacity"])
    return Line(f"{capital(left)} of {capacity}: it is full. How much is left?")


LINES: Mapping[str, Callable[[Answer], Line]] = {
    "topping.top_up": _top_up,
    "topping.too_old": _too_old,
    "topping.which_bottle": _which_bottle,
    "topping.which_mix": _which_mix,
    "topping.how_much_left": _how_much_left,
    "topping.no_room": _no_room,
}
