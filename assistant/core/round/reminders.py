"""What comes due by itself between two words of the keeper's: each at its own moment, once."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import Literal, TypeAlias

from assistant.core.record.state import Hold, Rinse, Round, State
from assistant.core.round.rounds import airing_ends, hold_ends, hold_is_served, is_open, rinse_ends

ReminderKind: TypeAlias = Literal[
    "still wet",  # half of what is left of the wet time is over since it was last seen wet
    "about to dry",  # by the forecast it may be dry in a moment
    "hold over",
    "vouch",  # the same, in doubt
    "rinse now",  # the wet time was over a while ago
    "open window",  # rinsed a while ago, and no opening was told of
    "air over",
    "keep rinsing",  # a splash's: first aid said again
    "rinse over",  # a splash's
    "animal waits",
    "bottle past its life",
    "item over",  # a bowl's, branch's or cloth's: soaked, boiled, baked or washed long enough
    "clocks parted",  # the wall's and the computer's own: told by `clocks`, never by `came_due`
]

LEAST_TO_ASK_IN = timedelta(minutes=4)
"""With less of the wet time to come it isn't asked again whether it is wet. Chosen."""
BEFORE_DRY = timedelta(seconds=30)
"""So long before a film may be dry it is told: time enough to pick up the bottle. Chosen."""
NUDGE_AFTER = timedelta(minutes=5)
"""So long after a step could have been done it is asked for. Chosen."""


KEEP_RINSING = (timedelta(minutes=1), timedelta(minutes=5), timedelta(minutes=10))
"""When first aid is said again while a splash is being rinsed, counted from its start. Chosen."""


@dataclass(frozen=True, slots=True)
class Reminder:
    """Something that came due by itself."""

    kind: ReminderKind
    at: datetime
    thing: str
    """The enclosure, the bottle, or the place being rinsed; for "clocks parted" the one that they differ on most."""
    minutes: int = 0
    """For "animal waits": how long it has."""
    victim: str = ""
    """Of a splash: "person" or "animal"; of an item: its way."""


def came_due(
    state: State, since: datetime, now: datetime, tub_minutes: int, dries: Mapping[str, datetime] | None = None
) -> tuple[Reminder, ...]:
    """What came due after `since`, up to now, oldest first.

    tub_minutes: how often a waiting animal is asked after; 0: never.
    dries: by enclosure, when its film may be dry at the soonest, where a forecast could be made.
    """
    due = []
    for rinse in state.rinses:
        due += _of_splash(rinse, now)
    for item in state.items:
        due.append(Reminder("item over", item.began + timedelta(seconds=item.seconds), item.item, victim=item.way))
    for round_ in filter(is_open, state.rounds.values()):
        due += _of_hold(round_, now, (dries or {}).get(round_.enclosure))
        due += _after_hold(round_)
        out = round_.done.get("move out")
        due += _waiting(round_.enclosure, out, now, tub_minutes) if out is not None else []
    for use in state.tubs.values():
        if use.until is None and not _is_out_of_a_clean(use.enclosure, state):
            due += _waiting(use.enclosure, use.since, now, tub_minutes)
    for bottle, holds in state.bottles.items():
        if holds.fill is not None and holds.fill.kept_until is not None:
            due.append(Reminder("bottle past its life", holds.fill.kept_until, bottle))
    return tuple(sorted((d for d in due if since < d.at <= now), key=lambda d: (d.at, d.thing)))


STANDS: tuple[ReminderKind, ...] = (
    "about to dry",
    "still wet",
    "vouch",
    "hold over",
    "rinse now",
    "open window",
    "air over",
    "animal waits",
    "bottle past its life",
)
"""What goes on being so until the keeper does something about it, the most pressing first."""


def standing(
    state: State, now: datetime, tub_minutes: int, dries: Mapping[str, datetime] | None = None
) -> tuple[Reminder, ...]:
    """What came due at some time and still waits for the keeper, the most pressing first; as `came_due`."""
    ever = came_due(state, datetime.min.replace(tzinfo=UTC), now, tub_minutes, dries)
    stands = [reminder for reminder in ever if reminder.kind in STANDS]
    return tuple(sorted(stands, key=lambda reminder: STANDS.index(reminder.kind)))


def _of_splash(rinse: Rinse, now: datetime) -> list[Reminder]:
    """Its end, and before that the latest moment to say first aid again."""
    over = rinse_ends(rinse)
    began = over - timedelta(seconds=rinse.seconds)
    again = [began + after for after in KEEP_RINSING if began + after <= min(now, over)]
    said = [Reminder("keep rinsing", at, rinse.place, victim=rinse.victim) for at in again[-1:] if now < over]
    return [*said, Reminder("rinse over", over, rinse.place, victim=rinse.victim)]


def _of_hold(round_: Round, now: datetime, dries_at: datetime | None) -> list[Reminder]:
    hold = round_.hold
    ends = hold_ends(hold) if hold is not None and "hold" not in round_.done else None
    if hold is None or ends is None:
        return []
    kind: ReminderKind = "hold over" if hold_is_served(round_, now) else "vouch"
    check = _check(hold, ends, dries_at)
    over = Reminder(kind, ends, round_.enclosure)
    # Once the wet time is over, whether it stayed wet is asked for the whole of it.
    return [over] if check is None or now >= ends else [Reminder(check[0], check[1], round_.enclosure), over]


def _check(hold: Hold, ends: datetime, dries_at: datetime | None) -> tuple[ReminderKind, datetime] | None:
    """When to look whether it is still wet: before it may dry, else half-way from when it was last seen wet."""
    last = max(hold.began, hold.wetted or hold.began, hold.seen_wet or hold.began)
    if dries_at is not None and last < dries_at - BEFORE_DRY < ends:
        return "about to dry", dries_at - BEFORE_DRY
    return ("still wet", last + (ends - last) / 2) if ends - last >= LEAST_TO_ASK_IN else None


def _after_hold(round_: Round) -> list[Reminder]:
    due = []
    served = round_.done.get("hold")
    if served is not None and "rinse" in round_.steps and "rinse" not in round_.done:
        due.append(Reminder("rinse now", served + NUDGE_AFTER, round_.enclosure))
    rinsed = round_.done.get("rinse" if "rinse" in round_.steps else "dry")
    if rinsed is not None and "air" in round_.steps and not round_.openings:
        due.append(Reminder("open window", rinsed + NUDGE_AFTER, round_.enclosure))
    ends = airing_ends(round_)
    if ends is not None:
        due.append(Reminder("air over", ends, round_.enclosure))
    return due


def _is_out_of_a_clean(enclosure: str, state: State) -> bool:
    """Its open clean asks after it by itself, from when it was moved out."""
    round_ = state.rounds.get(enclosure)
    return is_open(round_) and round_ is not None and "move out" in round_.done


def _waiting(enclosure: str, out: datetime, now: datetime, tub_minutes: int) -> list[Reminder]:
    if tub_minutes <= 0:
        return []
    turns = int((now - out).total_seconds() // (tub_minutes * 60))
    waited = turns * tub_minutes
    return [Reminder("animal waits", out + timedelta(minutes=waited), enclosure, waited)] if turns > 0 else []
