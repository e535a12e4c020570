"""Planning: what is due, in what order to go round, what was done when, and when a quarantine ends."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime, time, timedelta
from typing import Any

from assistant.answer.asking import ask, names_of
from assistant.answer.back_dated import earliest
from assistant.answer.outbreaks import in_quarantine
from assistant.contract import ASKED_WHY, Answer, Outcome, Pending, Reading, SaidTime, World
from assistant.core.facts import Source
from assistant.core.household import Enclosure
from assistant.core.quantities.units import convert
from assistant.core.record.events import ChoreDone, QuarantineRestarted, Voided
from assistant.core.record.state import Restart
from assistant.core.round.rounds import is_open
from assistant.core.shelf.chores import CHORES, CLEANS, Due, due_of, in_working_order, missed_first
from assistant.core.shelf.leftovers import still_in, tubs_to_wash

ORDER_FACTS = ("order-quarantine-last", "order-sick-last", "order-water-first")
QUARANTINE_FACTS = ("order-quarantine-30", "order-quarantine-60-90", "order-quarantine-90", "order-quarantine-180")


def due(reading: Reading, world: World) -> Answer:
    """What is due today or was missed, missed ones first; of one enclosure or chore also when it comes next."""
    homes = _homes(reading, world) or world.household.enclosures
    chores = reading.slots.chores or CHORES
    every = missed_first(tuple(d for home in homes for d in due_of(home, world.state, world.now) if d.chore in chores))
    asked_of_one = bool(reading.slots.enclosures or reading.slots.chores)
    until = _until(reading.slots.when, world.now)
    ahead = (until - world.now.date()).days if until is not None else 0
    now_due = tuple(one for one in every if one.overdue_days is None or one.overdue_days >= -ahead)
    told = now_due or (every[:1] if not asked_of_one else every)
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "planning.due",
        details={
            "due": now_due,
            "every": every,
            "told": told,
            "homes": homes,
            "now": world.now,
            "until": until,
            "tubs": () if asked_of_one else tubs_to_wash(world.state),
            "items": () if asked_of_one else still_in(world.state, world.now),
        },
        values={
            "due": tuple(_as_value(one) for one in (every if asked_of_one else now_due)),
            "next": _as_value(every[0]) if every and not now_due else None,
            "due_count": len(now_due),
            "tubs": tuple(use.tub for use in tubs_to_wash(world.state)),
            "items": tuple(item.item for item in still_in(world.state, world.now)),
        },
        sources=(Source("setting-intervals", "setting", "how often each is done, as you set it"),) if every else (),
    )


def _until(when: SaidTime | None, now: datetime) -> date | None:
    """The day up to which is asked, when it is later than today: tomorrow, a weekday, the end of a week."""
    if when is None:
        return None
    day = when.at.astimezone(now.tzinfo).date()
    if when.to_the == "week" and day >= now.date():
        day += timedelta(days=6 - day.weekday())
    if when.to_the == "day" and (now.date() - day).days in range(2, 8):
        day += timedelta(days=7)  # "on friday", of what is due, is the next one
    return day if day > now.date() else None


def _as_value(one: Due) -> dict[str, Any]:
    return {
        "enclosure": one.enclosure.name,
        "chore": one.chore,
        "last": one.last,
        "due": one.due,
        "overdue_days": one.overdue_days,
    }


def order(reading: Reading, world: World) -> Answer:
    """In what order to go round today: healthy first, then new, sick last of all."""
    named = _homes(reading, world)
    dues = {home.name: tuple(d for d in due_of(home, world.state, world.now) if d.is_due) for home in _all(world)}
    today = tuple(home for home in _all(world) if dues[home.name])
    asked = named[0] if len(named) == 1 and len(_all(world)) > 1 else None
    around = tuple(home for home in _all(world) if home in today or home == asked) if asked is not None else ()
    homes = in_working_order(around or named or today or _all(world))
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "planning.order",
        details={"homes": homes, "dues": dues, "of_today": bool(today) and not named, "asked": asked},
        values={
            "order": tuple(home.name for home in homes),
            "groups": tuple(home.group for home in homes),
            "due": tuple({"enclosure": home.name, "chores": tuple(d.chore for d in dues[home.name])} for home in homes),
        },
        cautions=("caution-hands",),
        sources=tuple(world.facts[fact].cited() for fact in ORDER_FACTS),
    )


def _all(world: World) -> tuple[Enclosure, ...]:
    return world.household.enclosures


def _homes(reading: Reading, world: World) -> tuple[Enclosure, ...]:
    """The enclosures named, by name, group or rack, or all of them; () when nothing was said."""
    slots = reading.slots
    if slots.enclosures:
        return tuple(home for home in _all(world) if home.name in slots.enclosures)
    homes = _all(world)
    if slots.groups:
        homes = tuple(home for home in homes if home.group in slots.groups)
    if slots.racks:
        homes = tuple(home for home in homes if home.rack in slots.racks)
    return homes if slots.groups or slots.racks or slots.every_enclosure else ()


# ---------------------------------------------------------------- what was done


def last_done(reading: Reading, world: World) -> Answer:
    """When an enclosure was last cleaned; when it was last watered, if that is asked."""
    when = reading.slots.when
    homes = _homes(reading, world) or (_all(world) if when is not None and when.to_the != "minute" else ())
    if not homes:
        return ask(reading, world, ("enclosure",), "planning.of_which", {"known": names_of("enclosure", world)})
    day = when.at.astimezone(world.now.tzinfo).date() if when is not None and when.to_the != "week" else None
    chores = reading.slots.chores or (CHORES if day is not None else CLEANS)
    told = sorted(
        (
            (at.astimezone(world.now.tzinfo), home.name, chore)
            for home in homes
            for chore in chores
            if (at := world.state.chores.get(home.name, {}).get(chore)) is not None
            if day is None or at.astimezone(world.now.tzinfo).date() == day
        ),
        reverse=True,
    )
    at, name, chore = told[0] if told else (None, homes[0].name, None)
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "planning.last_done",
        details={"told": told, "homes": homes, "chores": reading.slots.chores, "now": world.now, "day": day},
        values={
            "enclosure": name,
            "chore": chore,
            "at": at,
            "days_ago": (world.now.date() - at.date()).days if at is not None else None,
            "done": tuple({"enclosure": home, "chore": chore, "at": at} for at, home, chore in told),
        },
    )


def log_clean(reading: Reading, world: World) -> Answer:
    """Records chores for the record and the schedule; nothing becomes ready by it."""
    slots = reading.slots
    each = dict(slots.apart)
    homes = tuple(home for home in _all(world) if home.name in each) or _homes(reading, world)
    if not homes:
        return ask(reading, world, ("enclosure",), "planning.logged_where", {"known": names_of("enclosure", world)})
    if not slots.chores and not each:
        return ask(reading, world, ("chore",), "planning.logged_what", {"homes": homes})
    if slots.some_time_ago:
        values = {
            "recorded": False,
            "enclosures": tuple(home.name for home in homes),
            "chores": slots.chores,
            "at": None,
        }
        return Answer(reading.intent, Outcome.ASK, "planning.logged_two_days", values=values, missing=("when",))
    at = _done_at(slots.when, world.now)
    if at > world.now:
        return ask(reading, world, ("when",), "planning.logged_ahead")
    names = tuple(home.name for home in homes)
    each = each or dict.fromkeys(names, slots.chores)
    chores = tuple(chore for chore in CHORES if any(chore in got for got in each.values()))
    before = _logged_before(world) if slots.corrects else None
    logged = Answer(
        reading.intent,
        Outcome.ANSWER,
        "planning.logged",
        details={
            "homes": homes,
            "chores": chores,
            "each": each,
            "at": at,
            "when": slots.when,
            "now": world.now,
            "open": tuple(name for name in names if is_open(world.state.rounds.get(name))),
            "corrects": before is not None,
        },
        values={
            "recorded": True,
            "enclosures": names,
            "chores": chores,
            "each": tuple({"enclosure": name, "chores": each[name]} for name in names),
            "at": at,
        },
        events=(
            *((Voided(before),) if before is not None else ()),
            *(ChoreDone(name, chore, at) for name in names for chore in each[name]),
        ),
    )
    return _if_all_the_same(logged, reading, world)


def _done_at(when: SaidTime | None, now: datetime) -> datetime:
    """When it was done: "this morning", said in it, is by now; later than now only where what is to come was said."""
    if when is None or when.at <= now:
        return when.at if when is not None else now
    first = earliest(when, now)
    return first if when.to_the == "minute" or first > now else now


def _if_all_the_same(logged: Answer, reading: Reading, world: World) -> Answer:
    """A clean told of an enclosure whose clean is open: by finishing that it is logged, so it is asked first."""
    details = logged.details
    cleans = [n for n in details["open"] if set(details["each"][n]) & set(CLEANS) and details["at"] >= _begun(n, world)]
    if not cleans:
        return logged
    return replace(
        logged,
        outcome=Outcome.CONFIRM,
        message="planning.logged_open",
        details={**details, "still_open": tuple(cleans)},
        values={**logged.values, "recorded": False},
        events=(),
        pending=Pending(reading, world.now, on_yes=logged),
    )


def _begun(name: str, world: World) -> datetime:
    return world.state.rounds[name].started_at


def _logged_before(world: World) -> str | None:
    """The turn that logged chores last, whose day is now said to have been another; None: the last logged none."""
    last = world.state.turns[-1] if world.state.turns else None
    return last.turn if last is not None and any(deed.event == "ChoreDone" for deed in last.deeds) else None


# ---------------------------------------------------------------- quarantine


def quarantine(reading: Reading, world: World) -> Answer:
    """When an animal's quarantine ends, by the keeper's own number of days, and what is published."""
    if reading.slots.restart is not None:
        return _again(reading, world)
    homes = _homes(reading, world) or tuple(home for home in _all(world) if home.group == "new" or home.quarantine)
    if len(homes) > 1:
        known = tuple(home.name for home in homes)
        return ask(reading, world, ("enclosure",), "planning.quarantine_which", {"known": known})
    home = homes[0] if homes else None
    days = int(convert(home.quarantine, "d").amount) if home is not None and home.quarantine is not None else None
    restart = world.state.restarts.get(home.name) if home is not None else None
    arrived = home.arrived if home is not None else None
    if restart is not None:
        again = restart.since.astimezone(world.now.tzinfo).date()
        arrived = max(arrived, again) if arrived is not None else again
    day = (world.now.date() - arrived).days if arrived is not None else None
    ends = None
    if arrived is not None and days is not None:
        ends = datetime.combine(arrived + timedelta(days=days), time(), world.now.tzinfo)
    newer = tuple(
        other
        for other in _all(world)
        if home is not None and arrived is not None and other.name != home.name and other.group == "new"
        if other.arrived is not None and other.arrived > arrived
    )
    setting = (
        (
            Source(
                "setting-quarantine",
                "setting",
                f"{days} days from {arrived}, as you set it{_began_again(restart, arrived)}",
            ),
        )
        if ends
        else ()
    )
    facts = (*QUARANTINE_FACTS, "order-quarantine-tests")
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "planning.quarantine",
        details={
            "home": home,
            "day": day,
            "days": days,
            "ends": ends,
            "newer": newer,
            "now": world.now,
            "again": restart.why if restart is not None else None,
            "why": reading.slots.setting == ASKED_WHY,
            "published": (world.facts["order-quarantine-30"].value, *world.facts["order-quarantine-60-90"].value),
        },
        values={
            "enclosure": home.name if home is not None else None,
            "ends": ends,
            "day": day,
            "of_days": days,
            "days_left": max(0, days - day) if days is not None and day is not None else None,
        },
        sources=(*setting, *(world.facts[fact].cited() for fact in facts)),
    )


def _began_again(restart: Restart | None, start: date | None) -> str:
    return "" if restart is None or start is None or restart.since.date() < start else ", where it began again"


def _again(reading: Reading, world: World) -> Answer:
    """A newcomer, a positive test, a sign: the room's quarantines begin again once "yes" is said."""
    named = tuple(home for home in _homes(reading, world) if home.group == "new")
    homes = named or in_quarantine(world)
    why = reading.slots.restart or "newcomer"
    fact = world.facts["outbreak-restart"]
    values = {"enclosure": homes[0].name if homes else None, "ends": None, "day": 0, "of_days": None, "days_left": None}
    if not homes:
        return Answer(
            reading.intent,
            Outcome.ANSWER,
            "planning.newcomer",
            details={"why": why, "fact": fact},
            values={**values, "day": None},
            cautions=("caution-hands",),
            sources=(fact.cited(),),
        )
    done = Answer(
        reading.intent,
        Outcome.ANSWER,
        "planning.restarted",
        details={"homes": homes, "why": why, "fact": fact},
        values=values,
        sources=(fact.cited(),),
        events=tuple(QuarantineRestarted(home.name, why) for home in homes),
    )
    return replace(
        done,
        outcome=Outcome.CONFIRM,
        message="planning.restart",
        events=(),
        cautions=("caution-vet",),
        pending=Pending(reading, world.now, on_yes=done),
    )
