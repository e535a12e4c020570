"""How a top-up is spoken of: the concentrate first, then the water."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from assistant.contract import Answer, Line
from assistant.core.mixing.measuring import Measured
from assistant.core.record.state import Fill
from assistant.say.wording.amounts import number, said_unmeasured, said_whole, shown, shown_part
from assistant.say.wording.dose_said import fills, said_dose, said_mix
from assistant.say.wording.plain import MOST_WORDS, capital, clock_aloud


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
    if details["bottle"] is not None and details["fill"] is None:
        say += NOT_ON_RECORD if len(f"{say}{NOT_ON_RECORD}".split()) <= MOST_WORDS else " No fill on record."
    return Line(capital(say), "\n".join(_shown(details, measured)))


NOT_ON_RECORD = " No fill on record: is it the same mix?"


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
    fill: Fill | None = details["fill"]
    if fill is not None:
        end = "" if fill.kept_until is None else f", good until {clock_aloud(fill.kept_until, details['now'])}"
        return [
            f"On record it holds {details['name']}, {fill.mix or 'mix unknown'}{end}.",
            "Only the same goes on top, and the top-up keeps the old mix's end.",
        ]
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


def _past_its_end(answer: Answer) -> Line:
    return Line(f"No. The {answer.details['name']}'s mix is past its end. Empty it, rinse it and mix fresh.")


def _not_settled(answer: Answer) -> Line:
    return Line(f"No. What's in the {answer.details['name']} isn't settled on my record. Empty it and mix fresh.")


def _rinsed_out(answer: Answer) -> Line:
    name = answer.details["name"]
    return Line(f"No. On record the {name} was rinsed out, so I don't know what that is. Empty it and mix fresh.")


def _another_agent(answer: Answer) -> Line:
    details = answer.details
    return Line(f"No. On record the {details['name']} holds {details['holds']}: only the same goes on top.")


def _another_mix(answer: Answer) -> Line:
    details = answer.details
    return Line(f"No. On record the {details['name']} holds {spoken_mix(details['holds'])}: only the same goes on top.")


def spoken_mix(written: str) -> str:
    """A mix as the record writes it, speakable: "one in 32" from "1 in 32"."""
    return f"one{written[1:]}" if written.startswith("1 ") else written


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
    "topping.past_its_end": _past_its_end,
    "topping.not_settled": _not_settled,
    "topping.rinsed_out": _rinsed_out,
    "topping.another_agent": _another_agent,
    "topping.another_mix": _another_mix,
    "topping.which_bottle": _which_bottle,
    "topping.which_mix": _which_mix,
    "topping.how_much_left": _how_much_left,
    "topping.no_room": _no_room,
}
