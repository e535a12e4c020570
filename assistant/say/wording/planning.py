"""How what is due, in what order, and what was done when are spoken of."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from datetime import date, datetime

from assistant.contract import Answer, Line
from assistant.core.household import Enclosure
from assistant.core.shelf.chores import Due
from assistant.say.wording.plain import MOST_WORDS, capital, clock, count, listed

CHORE = {"water": "fresh water", "spot clean": "spot clean", "deep clean": "deep clean"}
DONE = {"water": "watered", "spot clean": "spot-cleaned", "deep clean": "deep-cleaned"}


def _when(one: Due) -> str:
    days = one.overdue_days
    if days is None:
        return "nothing on record"
    if days > 0:
        return f"{count(days, 'day')} late"
    return "today" if days == 0 else "tomorrow" if days == -1 else f"in {count(-days, 'day')}"


def _due(answer: Answer) -> Line:
    details = answer.details
    tubs, items = [use.tub for use in details["tubs"]], [item.item for item in details["items"]]
    wash = f" {capital(listed(tubs[:2]))} to wash too." if tubs else f" {capital(items[0])} still in." if items else ""
    due: tuple[Due, ...] = details["due"]
    every: tuple[Due, ...] = details["every"]
    if not every:
        say = f"Nothing is planned: how often it is done isn't set.{wash}"
        return Line(say, f'{say}\nSet spot_clean_every, deep_clean_every or water_every in keeping.toml, as "1 day".')
    lines = [f"- {capital(one.enclosure.name)}: {CHORE[one.chore]}, {_when(one)}." for one in details["told"]]
    lines += [f"- {capital(tub)}: used, not washed and disinfected since." for tub in tubs]
    lines += [f"- {capital(item)}: by the clock still in." for item in items]
    by = f" by {_day_to_come(details['until'], details['now'])}" if details["until"] is not None else ""
    if not due:
        first = every[0]
        coming = f"{first.enclosure.name}, {CHORE[first.chore]}, {_when(first)}"
        say = f"Nothing due{by or ' today'}. Next: {coming}.{wash}"
        return Line(say, "\n".join([say, *lines]))
    first = due[0]
    if len(due) == 1:
        say = f"1 due{by}: {first.enclosure.name}, {CHORE[first.chore]}, {_when(first)}.{wash}"
    else:
        say = f"{len(due)} due{by}. First: {first.enclosure.name}, {CHORE[first.chore]}, {_when(first)}.{wash}"
    return Line(say, "\n".join([say, *lines]))


def _day_to_come(day: date, now: datetime) -> str:
    days = (day - now.date()).days
    return "tomorrow" if days == 1 else f"{day:%A}" if days < 7 else f"{day.day} {day:%B}"


PLACES = ("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth")


def _place(asked: Enclosure, homes: Sequence[Enclosure]) -> str:
    """Where one comes in the round, and why."""
    at = homes.index(asked)
    why = {"sick": ": it's sick", "new": ": it's in quarantine", "healthy": ""}[asked.group]
    if at == len(homes) - 1:
        return f"{capital(asked.name)} last of {len(homes)}{why}. First: {homes[0].name}."
    place = PLACES[at] if at < len(PLACES) else f"number {at + 1}"
    return f"{capital(asked.name)} {place} of {len(homes)}{why}. Last: {homes[-1].name}."


def _order(answer: Answer) -> Line:
    details = answer.details
    homes: tuple[Enclosure, ...] = details["homes"]
    if not homes:
        return Line("No enclosure is set up yet, so there is no order to go round in.")
    names = [home.name for home in homes]
    say = f"{len(homes)} to do: {', then '.join(names)}."
    if len(homes) == 1:
        say = f"Only {names[0]}."
    elif details["asked"] is not None:
        say = _place(details["asked"], homes)
    elif len(say.split()) > 20:
        say = f"{len(homes)} to do: {names[0]} first, {names[-1]} last. The order is on the screen."
    lines = []
    for place, home in enumerate(homes, start=1):
        chores = listed(CHORE[d.chore] for d in details["dues"][home.name])
        lines.append(f"{place}. {capital(home.name)} ({home.group}){': ' + chores if chores else ''}")
    if any(home.group != "healthy" for home in homes) and len(homes) > 1:
        lines.append("Healthy first, then new, sick last of all: fresh gloves, and no tool comes back from them.")
    lines += [f"{source.text}." for source in answer.sources]
    return Line(say, "\n".join([say, *lines]))


def _of_which(answer: Answer) -> Line:
    known = answer.details["known"]
    return Line("Which enclosure?", f"Which enclosure: {listed(known, 'or')}?" if known else "")


def _ago(at: datetime, now: datetime) -> str:
    days = (now.date() - at.date()).days
    return "today" if days == 0 else "yesterday" if days == 1 else f"{count(days, 'day')} ago"


def _that_day(day: date, now: datetime) -> str:
    days = (now.date() - day).days
    return "today" if days == 0 else "yesterday" if days == 1 else f"{day.day} {day:%B}"


def _last_done(answer: Answer) -> Line:
    details = answer.details
    told, now, day = details["told"], details["now"], details["day"]
    if not told and day is not None:
        return Line(f"Nothing finished is on record for {_that_day(day, now)}. The log has every step.")
    if not told:
        what = listed((CHORE[chore] for chore in details["chores"]), "or") or "clean"
        return Line(f"No {what} of {listed(home.name for home in details['homes'])} is on record.")
    at, home, chore = told[0]
    say = f"{capital(_ago(at, now))}: {home}, {CHORE[chore]}."
    if day is not None and len(told) > 1:
        names = list(dict.fromkeys(name for _, name, _ in told))
        say = f"{capital(_that_day(day, now))}: {len(told)} done, {listed(names[:4])}."
    lines = [f"- {capital(home)}: {DONE[chore]} {_ago(at, now)}, {clock(at, now)}." for at, home, chore in told]
    return Line(say, "\n".join([say, *lines]))


def _logged_where(answer: Answer) -> Line:
    known = answer.details["known"]
    return Line("Which enclosure was that?", f"Which enclosure was that: {listed(known, 'or')}?" if known else "")


def _logged_what(answer: Answer) -> Line:
    homes = listed(home.name for home in answer.details["homes"][:3])
    return Line(f"What did you do in {homes}: a spot clean, a deep clean, or fresh water?")


def _logged_ahead(answer: Answer) -> Line:
    return Line("That is still to come, so nothing is logged. When was it done?")


def _logged_two_days(answer: Answer) -> Line:
    return Line("Nothing logged: that's two days at once. Tell me one day at a time.")


def _logged_open(answer: Answer) -> Line:
    still_open = listed(answer.details["still_open"][:2])
    return Line(
        f"The clean of {still_open} is still open, and is logged when it's finished. Log this one all the same?"
    )


def _names(names: Sequence[str]) -> str:
    return listed(names) if len(names) <= 3 else f"{len(names)} enclosures"


def _logged(answer: Answer) -> Line:
    details = answer.details
    homes: tuple[Enclosure, ...] = details["homes"]
    when = "" if details["when"] is None else f", {_ago(details['at'], details['now'])}"
    each: Mapping[str, tuple[str, ...]] = details["each"]
    alike = {got: [name for name in each if each[name] == got] for got in each.values()}
    logged = [f"{_names(names)}, {listed(got)}" for got, names in alike.items()]
    say = f"{'Put right' if details['corrects'] else 'Logged'}: {'; '.join(logged)}{when}."
    if len(say.split()) > MOST_WORDS:
        say = f"{'Put right' if details['corrects'] else 'Logged'}: {len(homes)} enclosures, each its own{when}."
    lines = [say, *(f"- {capital(listed(names))}: {listed(got)}." for got, names in alike.items())]
    if details["open"]:
        lines.append(f"The clean open in {listed(details['open'])} stays open: this readies nothing.")
    return Line(say, "\n".join(lines))


def _quarantine_which(answer: Answer) -> Line:
    return Line(f"Whose quarantine: {listed(answer.details['known'][:4], 'or')}?")


WHY_AGAIN = {"newcomer": "a newcomer", "test": "a positive test", "sign": "a new sign of illness"}


def _restart(answer: Answer) -> Line:
    homes = listed(home.name for home in answer.details["homes"][:2])
    say = f"Yes: {WHY_AGAIN[answer.details['why']]} starts the whole room again. Count {homes} from today?"
    return Line(say, f"{say}\n{answer.details['fact'].says}.\nNote: {answer.details['fact'].note}")


def _restarted(answer: Answer) -> Line:
    homes = listed(home.name for home in answer.details["homes"][:2])
    say = f"Day 0 today: quarantine of {homes}, noted. Your vet may say otherwise."
    more = "Add the newcomer to keeping.toml with its own enclosure." if answer.details["why"] == "newcomer" else ""
    return Line(say, f"{say}\n{more}".strip())


def _newcomer(answer: Answer) -> Line:
    say = "Nobody else is in quarantine. Keep it apart, own tools, cleaned after the healthy ones; hands in between."
    return Line(
        say, f"{say}\nAdd it to keeping.toml with group, arrived and quarantine.\n{answer.details['fact'].says}."
    )


def _quarantine(answer: Answer) -> Line:
    details = answer.details
    home: Enclosure | None = details["home"]
    day, days, ends = details["day"], details["days"], details["ends"]
    if home is None:
        say = "Nobody is in quarantine, as far as keeping.toml says."
    elif ends is None:
        missing = "when it arrived" if day is None else "how long you keep newcomers apart"
        say = f"I can't tell: keeping.toml doesn't say {missing}, for {home.name}. Your vet decides."
    elif day >= days:
        say = f"Day {day}: {home.name}'s {days} days are over. Your vet may want tests before they meet the others."
    else:
        say = f"Day {day} of {days}: {home.name}, until {ends.day} {ends:%B}. Your vet may say otherwise."
    if details["why"]:
        least, low, high = details["published"]
        yours = f" Yours is {days}, as you set it." if days is not None else ""
        say = f"Published: at least {least} days under a vet, {low} to {high} for reptiles, and clear tests.{yours}"
    lines = [say]
    if details["again"] is not None:
        lines.append(f"It began again that day: {WHY_AGAIN[details['again']]}.")
    for other in details["newer"]:
        lines.append(f"{capital(other.name)} came later: zoos start the count again when a newcomer joins.")
    lines += [f"{source.text}." for source in answer.sources]
    return Line(say, "\n".join(lines))


LINES: dict[str, Callable[[Answer], Line]] = {
    "planning.due": _due,
    "planning.order": _order,
    "planning.of_which": _of_which,
    "planning.last_done": _last_done,
    "planning.logged_where": _logged_where,
    "planning.logged_what": _logged_what,
    "planning.logged_ahead": _logged_ahead,
    "planning.logged": _logged,
    "planning.logged_two_days": _logged_two_days,
    "planning.logged_open": _logged_open,
    "planning.quarantine_which": _quarantine_which,
    "planning.quarantine": _quarantine,
    "planning.restart": _restart,
    "planning.restarted": _restarted,
    "planning.newcomer": _newcomer,
}
