"""When a fill that is told later was made: the earliest that it may have been, so that its end never comes too late.

"This morning" and "yesterday" are no times to reckon from; what they may mean at the earliest is. The keeper who knows
the hour better says it.
"""

from __future__ import annotations

from datetime import datetime, timedelta

from assistant.contract import SaidTime

FIRST_HOUR = 5
"""Nobody is taken to have filled a bottle in the small hours, unless the hour was said so."""
PART_BEGINS = timedelta(hours=4)
"""How long before the round hour that a part of the day is read as it may have begun."""
WEEK = timedelta(days=7)


def earliest(said: SaidTime, now: datetime) -> datetime:
    """The earliest moment that was meant, of a time of day the earliest after the small hours.

    now: aware. Gives a moment later than now only where nothing but what is still to come was said.
    """
    if said.to_the == "minute":
        may_be = [at for at in (said.at, *said.others) if at <= now]
        awake = [at for at in may_be if at.hour >= FIRST_HOUR]
        return min(awake or may_be, default=said.at)
    day = min(said.at, *said.others) if said.others else said.at
    if said.to_the == "part":
        return day - PART_BEGINS
    if said.to_the == "week":
        day -= WEEK
    begins = day.replace(hour=FIRST_HOUR, minute=0, second=0, microsecond=0)
    return begins if begins <= now or day > now else day.replace(hour=0, minute=0, second=0, microsecond=0)
