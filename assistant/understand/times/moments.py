"""When a date or time that was said is, beside now.

What is past is meant unless the words say otherwise. A clock time without morning or afternoon, and a date in figures
alone, may be two things: both are given.
"""

from __future__ import annotations

import re
from datetime import datetime, timedelta
from fractions import Fraction
from typing import Literal

from assistant.contract import SaidTime
from assistant.core.quantities.amounts import Amount
from assistant.understand.numbers.spoken_numbers import ONES
from assistant.understand.times.said_times import Said, SaidWhen
from assistant.understand.times.time_words import MONTHS, ORDINALS, PARTS, SHORT_DAYS, SHORT_MONTHS, WEEKDAYS


def moment(said: SaidWhen, now: datetime) -> SaidTime | None:
    """When that is, in the zone of `now`; None: there is no such day ("the thirty-first of june").

    now: aware. A time later today may be given: whether it makes sense is for the question that is asked.
    """
    if said.date is not None and said.date.minutes is not None:
        return _counted_from(said.date, now)
    if said.date is not None and said.date.kind == "just":
        return SaidTime(now, "minute")
    days = [now] if said.date is None else _days(said.date, now)
    if not days:
        return None
    if said.clock is not None:
        times = [time for day in days for time in _times(said.clock, said.date, day, now)]
        return SaidTime(times[0], "minute", tuple(times[1:])) if times else None
    part = said.date["part"] or said.date["part2"] if said.date is not None else ""
    if said.date is not None and said.date["near"] == "tonight":
        part = "evening"
    hour = PARTS.get(part, 12)
    at = [day.replace(hour=hour, minute=0, second=0, microsecond=0) for day in days]
    if at[0] > now and at[0].date() == now.date() and not part:
        at[0] = now
    size: Literal["part", "week", "day"] = "part" if part else "day"
    if said.date is not None and said.date.kind == "span":
        size = "week"
    return SaidTime(at[0], size, tuple(at[1:]))


def age_since(said: SaidWhen, now: datetime) -> tuple[Amount, ...]:
    """How old a thing is that is from then, in days; empty where that is less than one: "how strong is it today"."""
    then = moment(said, now)
    days = round((now - then.at) / timedelta(days=1)) if then is not None else 0
    return (Amount(Fraction(days), "d"),) if days >= 1 else ()


def _counted_from(said: Said, now: datetime) -> SaidTime:
    minutes = float(said.minutes or 0)
    at = now - timedelta(minutes=minutes) if said.kind == "ago" else now + timedelta(minutes=minutes)
    return SaidTime(at, "minute" if minutes < 1440 else "day" if minutes < 10080 or minutes % 10080 == 0 else "week")


def _days(said: Said, now: datetime) -> list[datetime]:
    """The days that may be meant, the likelier first."""
    if said.kind in ("iso", "figures", "dated", "of month"):
        return _dated(said, now)
    if said.kind == "weekday":
        return [_weekday(said, now)]
    if said.kind == "span":
        back = {"week": 7, "month": 30, "weekend": (now.weekday() - 5) % 7 or 7}[said["size"]]
        return [now + timedelta(days={"last": -back, "next": back}.get(said["which"], 0))]
    steps = {"before": -2, "after": 2}.get(said.kind)
    if steps is None:
        steps = {"yesterday": -1, "tomorrow": 1, "last": -1}.get(said["near"], 0)
    return [now + timedelta(days=steps)]


def _weekday(said: Said, now: datetime) -> datetime:
    name = said["weekday"]
    day = {**WEEKDAYS, **SHORT_DAYS, "wed": 2, "sat": 5, "sun": 6}[name]
    if said["which"].strip() == "next":
        return now + timedelta(days=(day - now.weekday()) % 7 or 7)
    back = (now.weekday() - day) % 7
    if said["which"].strip() == "this":
        return now + timedelta(days=day - now.weekday())
    return now - timedelta(days=back or 7)


def _dated(said: Said, now: datetime) -> list[datetime]:
    if said.kind == "iso":
        return _on(now, int(said["year"]), int(said["month"]), int(said["day"]))
    if said.kind == "figures":
        first, second = (int(part) for part in said["pair"].split("/"))
        both = _on(now, int(said["year"]), second, first) + _on(now, int(said["year"]), first, second)
        return list(dict.fromkeys(both))
    day = _ordinal(said["ordinal"])
    if said.kind == "of month":
        this = _on(now, now.year, now.month, day)
        if this and this[0] <= now:
            return this
        before = now.replace(day=1) - timedelta(days=1)
        return _on(now, before.year, before.month, day)
    month = MONTHS.get(said["name"]) or SHORT_MONTHS[said["name"]]
    if said["year"]:
        return _on(now, int(said["year"]), month, day)
    this_year = _on(now, now.year, month, day)
    return this_year if this_year and this_year[0] <= now else _on(now, now.year - 1, month, day)


def _on(now: datetime, year: int, month: int, day: int) -> list[datetime]:
    try:
        return [now.replace(year=year, month=month, day=day)]
    except ValueError:
        return []


def _ordinal(said: str) -> int:
    return ORDINALS.get(said) or int(re.sub(r"\D", "", said))


def _times(said: Said, date: Said | None, day: datetime, now: datetime) -> list[datetime]:
    """The times of that day that may be meant, the likelier first."""
    part = date["part"] or date["part2"] if date is not None else ""
    if said["named"]:
        hours, minute = [0 if said["named"] == "midnight" else 12], 0
    else:
        hour, minute = ONES.get(said["hour"]) or int(said["hour"]), _minute(said)
        hours = _hours(hour, said["half"] or part)
    if said["side"] in ("to", "before"):
        minute, hours = 60 - minute, [(hour - 1) % 24 for hour in hours]
    if date is not None and "night" in (said["half"] or part) and max(hours) < SMALL_HOURS:
        day += timedelta(days=1)  # one o'clock of last night is after midnight
    times = [day.replace(hour=hour, minute=minute, second=0, microsecond=0) for hour in hours]
    if len(times) > 1 and day.date() == now.date():
        past = sorted((time for time in times if time <= now), reverse=True)
        return past or sorted(times)
    return times


def _minute(said: Said) -> int:
    spoken = said["to"] or said["minute"] or said["half_past"]
    if not spoken:
        return 0
    named = {"half": 30, "quarter": 15, "oh five": 5}.get(spoken)
    if named is not None:
        return named
    if spoken.isdecimal():
        return int(spoken)
    tens = {"ten": 10, "fifteen": 15, "twenty": 20, "thirty": 30, "forty": 40, "fifty": 50}
    return sum(tens.get(word, ONES.get(word, 0)) for word in spoken.split())


def _hours(hour: int, half: str) -> list[int]:
    """Hours of the day that a clock's hour may be: working hours before the small ones."""
    if hour > 12 or hour == 0:
        return [hour]
    morning, evening = hour % 12, hour % 12 + 12
    if not half:
        return [evening, morning] if hour < 7 or hour == 12 else [morning, evening]
    if "night" in half:
        return [hour if hour < SMALL_HOURS else (hour + 12) % 24]
    return [morning if "morning" in half or half.startswith(("am", "a .", "a.", "a m")) else evening]


SMALL_HOURS = 6
"""Hour before which a time "at night" is one after midnight."""
