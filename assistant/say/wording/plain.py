"""Plain words for times, numbers and lists, shared by every family of wordings.

Spoken words only: no symbol that a voice can't read, and none of the code's own words ("wet time" for hold).
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime

MOST_WORDS = 25
"""Of a spoken line, so that it can be taken in with the hands busy."""


def count(number: float, one: str, many: str | None = None) -> str:
    """ "1 minute", "2 minutes"."""
    return f"{number:g} {one if number == 1 else many or one + 's'}"


def span(seconds: float) -> str:
    """A length of time as said: seconds under a minute and a half, then minutes, then hours; never rounded down."""
    whole = int(-(-seconds // 1))
    if whole < 90:
        return count(whole, "second")
    if whole < 600 and whole % 60:
        return f"{count(whole // 60, 'minute')} {whole % 60}"
    minutes = -(-whole // 60)
    if minutes < 100:
        return count(minutes, "minute")
    hours, rest = divmod(minutes, 60)
    return count(hours, "hour") + (f" {rest}" if rest else "")


def clock(at: datetime, now: datetime) -> str:
    """The time of day in the zone of `now`, with the day when it is another one."""
    there = at.astimezone(now.tzinfo)
    return f"{there.hour}:{there.minute:02d}{_day(there, now)}"


def clock_aloud(at: datetime, now: datetime) -> str:
    """The same as one says it: "4 o'clock", "10 past 4", "20 to 5"; of another day "4 in the afternoon on Sunday"."""
    there = at.astimezone(now.tzinfo)
    hour, next_hour = (there.hour + 11) % 12 + 1, there.hour % 12 + 1
    minute = there.minute
    if minute == 0:
        said = f"{hour} o'clock"
    elif minute <= 30:
        said = f"{'half' if minute == 30 else minute} past {hour}"
    else:
        said = f"{60 - minute} to {next_hour}"
    if there.date() == now.date():
        return said
    part = "morning" if there.hour < 12 else "afternoon" if there.hour < 18 else "evening"
    hour_alone = said.removesuffix(" o'clock")
    return f"{hour_alone} in the {part}{_day(there, now)}"


def _day(there: datetime, now: datetime) -> str:
    return "" if there.date() == now.date() else f" on {there:%A} {there.day} {there:%B}"


def listed(things: Iterable[str], last: str = "and") -> str:
    """ "a", "a and b", "a, b and c"."""
    words = list(things)
    if len(words) < 2:
        return "".join(words)
    return f"{', '.join(words[:-1])} {last} {words[-1]}"


def capital(text: str) -> str:
    """The same with a capital first letter."""
    return text[:1].upper() + text[1:]


DIGITS = {
    "0": "zero",
    "1": "one",
    "2": "two",
    "3": "three",
    "4": "four",
    "5": "five",
    "6": "six",
    "7": "seven",
    "8": "eight",
    "9": "nine",
    ".": "point",
    "/": "over",
}


def digits(number: str) -> str:
    """A number read back digit by digit: "15" is "one five", "0.5" is "zero point five"."""
    return " ".join(DIGITS[char] for char in number if char in DIGITS)
