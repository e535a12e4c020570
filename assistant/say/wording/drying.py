"""How a film's drying is spoken of: a forecast, and whose eyes decide."""

from __future__ import annotations

from collections.abc import Callable
from math import floor

from assistant.contract import Answer, Line
from assistant.say.wording.plain import count, span

MOVES = {"still": "still air", "draught": "a light draught", "fan": "a fan on it"}
MANY = 4
"""More rewettings than that are hard to keep up."""


def _dry_time(answer: Answer) -> Line:
    details = answer.details
    soonest, rewets = details["span"].soonest, details["rewets"]
    where = f", {details['enclosure']}" if details["enclosure"] else ""
    if soonest is None:
        say = f"It won't dry{where}: that air can't take up any more water. Open a window."
    elif soonest < 1 / 12 and details["running"]:
        say = f"It may be dry by now{where}. Look. Still wet, mist it; dry, tell me it dried."
    elif soonest < 1 / 12:
        say = f"It may be dry by now{where}: look and feel."
    elif rewets is None:
        say = f"About {_about(soonest)}{where}, likely longer. Your eyes and fingers decide."
    elif rewets == 0:
        say = f"About {_about(soonest)}{where}: longer than its wet time, by the figures. Keep an eye on it."
    else:
        hard = " Soaking is surer." if rewets > MANY else ""
        say = f"About {_about(soonest)}{where}: mist it {_times(rewets)} more to stay wet.{hard} Your eyes decide."
    return Line(say, "\n".join((say, *_shown(answer))))


def _shown(answer: Answer) -> list[str]:
    details = answer.details
    span_, new, found = details["span"], details["new"], details["conditions"]
    lines = []
    if span_.soonest is not None:
        lines.append(f"Dry in {_about(span_.soonest)} at the soonest, {_about(span_.latest)} in calm air.")
    agent = details["agent"].name if details["agent"] is not None else "water"
    lines.append(
        f"Worked out for {found.film.ml_per_m2:.0f} mL/m2 of {agent} at {found.air.celsius:.3g} °C, "
        f"{found.air.humidity * 100:.3g} % humidity, {MOVES[found.draught]}."
    )
    if details["wet_minutes"] is not None:
        still = " still" if details["running"] else ""
        each = f"; each new film lasts {_about(new.soonest)}" if new.soonest is not None else ""
        lines.append(f"{count(round(details['wet_minutes'], 1), 'minute')} to be wet{still}{each}.")
    lines += [f"Taken: {fact.says}." for fact in found.taken]
    lines.append(
        "A forecast for a smooth, sprayed surface: wiped, on wood, in the sun or on a heat mat it dries sooner, "
        "in a deep tub later. Your eyes decide."
    )
    return lines


def _about(minutes: float) -> str:
    """Rounded down, so that nobody waits for a film that is gone."""
    if minutes < 1.5:
        return count(max(5, floor(minutes * 12) * 5), "second")
    return span(floor(minutes) * 60)


def _times(number: int) -> str:
    return {1: "once", 2: "twice"}.get(number, f"{number} times")


def _how_warm(answer: Answer) -> Line:
    return Line(
        "How warm is the room?", "How warm is the room, in degrees? (temperature under [room] in keeping.toml sets it.)"
    )


def _out_of_range(answer: Answer) -> Line:
    error = answer.details["error"]
    needed = error.needed.replace("degC", "degrees").replace("-20", "minus 20")
    return Line(f"I can't work that out: {error.what} must be {needed}. How warm is it?")


LINES: dict[str, Callable[[Answer], Line]] = {
    "drying.dry_time": _dry_time,
    "drying.how_warm": _how_warm,
    "drying.out_of_range": _out_of_range,
}
