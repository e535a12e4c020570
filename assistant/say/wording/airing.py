"""How an airing is spoken of."""

from __future__ import annotations

from collections.abc import Callable

from assistant.contract import Answer, Line
from assistant.say.wording.plain import capital, count, span

OPEN = ("everything shut", "one window open", "two open", "three open")
"""What stands open, by how many."""
MORE = {1: "one window open", 2: "a second", 3: "a third"}
"""What to open so that so many are."""
REAL_ROOMS = "Real rooms take longer: your nose decides."


def _air_time(answer: Answer) -> Line:
    details = answer.details
    rate, shorter = details["rate"], details["shorter"]
    takes = span(details["minutes"] * 60)
    how = (
        OPEN[rate.openings]
        if rate.openings is not None
        else f"at {count(round(rate.an_hour, 2), 'air change')} an hour"
    )
    shorten = ""
    if shorter is not None:
        shorten = f"; {MORE[shorter[0]]} makes it {span(shorter[1] * 60)}"
    elif details["long"]:
        shorten = "; a fan blowing out of a window shortens it"
    none = f" {capital(details['agent'].name)} itself needs none." if not details["airs"] else ""
    say = f"{takes}, {how}{shorten}.{none} {REAL_ROOMS if not none else 'Your nose decides.'}"
    return Line(say, "\n".join((f"{takes}, {how}{shorten}.", *_shown(answer))))


def _shown(answer: Answer) -> list[str]:
    details = answer.details
    rate, needed, mixing = details["rate"], details["needed"], details["mixing"]
    lines = [
        f"{needed:.2f} air changes clear {details['removal'] * 100:g} % of what hangs in the air; "
        f"{rate.an_hour:.3g} an hour here."
    ]
    if rate.usual:
        lines.append("Taken as the room is set under [room] in keeping.toml; nothing set counts as shut.")
    if mixing != 1:
        lines.append(f"Mixing factor {mixing:g}: {needed * mixing:.2f} air changes in all.")
    if details["air"] is not None:
        lines.append(f"That is {details['air']:.0f} m3 of fresh air through the room.")
    if not details["airs"]:
        lines.append(f"{capital(details['agent'].name)} itself needs no airing; this is for the smell.")
    if details["left_s"] is not None:
        left = f"{span(details['left_s'])} left" if details["left_s"] else "time is up"
        lines.append(f"{capital(details['enclosure'])}: the airing's clock runs, {left}.")
    lines.append("Real rooms mix badly and take longer: air until no smell is left, near the floor as well.")
    return lines


def _how_big(answer: Answer) -> Line:
    return Line(
        "How many air changes an hour is that? I don't know the room's size.",
        "How many air changes an hour is that? Or set the room's volume in keeping.toml: volume under [room].",
    )


def _out_of_range(answer: Answer) -> Line:
    error = answer.details["error"]
    return Line(f"I can't work that out: {error.what} must be {error.needed}. What is it?")


LINES: dict[str, Callable[[Answer], Line]] = {
    "airing.air_time": _air_time,
    "airing.how_big": _how_big,
    "airing.out_of_range": _out_of_range,
}
