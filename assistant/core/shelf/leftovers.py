"""What a day leaves behind: tubs to wash, things still soaking, bottles that end, cleans that didn't disinfect."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta

from assistant.core.record.state import ItemTimer, State, TubUse
from assistant.core.round.gate import claim_of
from assistant.core.round.rounds import is_open


@dataclass(frozen=True, slots=True)
class Ending:
    """A mix whose time is up, or will be before this time tomorrow."""

    bottle: str
    at: datetime


def tubs_to_wash(state: State) -> tuple[TubUse, ...]:
    """Waiting tubs that are empty again and not cleaned since, the one left longest first."""
    left = [use for use in state.tubs.values() if use.until is not None and not use.cleaned]
    return tuple(sorted(left, key=lambda use: (use.until or use.since, use.tub)))


def still_in(state: State, now: datetime) -> tuple[ItemTimer, ...]:
    """Items that soak, boil, bake or wash by the clock now, the soonest to end first."""
    running = [item for item in state.items if _ends(item) > now >= item.began]
    return tuple(sorted(running, key=_ends))


def over_today(state: State, now: datetime) -> tuple[ItemTimer, ...]:
    """Items whose time ended today. Whether they were taken out is on no record, so it is asked.

    now: aware; its zone is the keeper's, by which a day ends.
    """
    ended = [item for item in state.items if _ends(item) <= now and _is_today(_ends(item), now)]
    return tuple(sorted(ended, key=_ends))


def _ends(item: ItemTimer) -> datetime:
    return item.began + timedelta(seconds=item.seconds)


def bottles_ending(state: State, now: datetime) -> tuple[Ending, ...]:
    """Bottles on record whose mix is past its life, or will be before this time tomorrow; the soonest first."""
    found = [
        Ending(name, holds.fill.kept_until)
        for name, holds in state.bottles.items()
        if holds.fill is not None and holds.fill.kept_until is not None
        if holds.fill.kept_until <= now + timedelta(days=1)
    ]
    return tuple(sorted(found, key=lambda ending: (ending.at, ending.bottle)))


def cleaned_only_today(state: State, now: datetime) -> tuple[str, ...]:
    """Enclosures whose clean was finished today and was no disinfection."""
    return tuple(
        name
        for name, round_ in sorted(state.rounds.items())
        if not is_open(round_) and "return" in round_.done and _is_today(round_.done["return"], now)
        if claim_of(round_) == "cleaned_only"
    )


def _is_today(at: datetime, now: datetime) -> bool:
    return at.astimezone(now.tzinfo).date() == now.date()
