"""`log`: what was done, as a table, CSV or JSON, and a month as a picture. It changes nothing."""

from __future__ import annotations

import csv
import json
import shutil
import sys
from collections.abc import Sequence
from dataclasses import asdict
from datetime import date, datetime
from fractions import Fraction
from textwrap import wrap

from assistant.core.facts import Facts
from assistant.core.household import Household
from assistant.core.record.history import Entry, Wanted, by_day, chosen, entries
from assistant.say.wording.logged import correction, what_was_done
from assistant.say.wording.month_drawn import days_of, month_lines
from assistant.shells.folder import Folder, ShellFault
from assistant.shells.options import EARLIEST, LATEST, Options, opened_folder
from assistant.store.keeping import read_household
from assistant.store.log import Log
from assistant.store.packaged import packaged_facts

WIDEST_NAME = 18
NARROWEST = 40
COLUMNS = ("when", "enclosure", "bottle", "with", "what", "correction", "event", "turn")


def show_log(options: Options) -> int:
    """Prints what was asked for; 0 also when that is nothing."""
    with opened_folder(options) as folder:
        facts = packaged_facts()
        household = read_household(folder.keeping, facts) if folder.keeping.exists() else Household()
        all_of = _record(folder)
    view = _View(options, facts, all_of)
    wanted = _wanted(options, household, view)
    if options.month is not None and not (options.json or options.csv):
        _print_month(_month(options.month), wanted, household, view)
        return 0
    found = chosen(all_of, wanted, view.local)
    (_print_json if options.json else _print_csv if options.csv else _print_table)(found, view)
    return 0


class _View:
    """How the record is looked at: in which zone, by which names."""

    def __init__(self, options: Options, facts: Facts, all_of: tuple[Entry, ...]) -> None:
        self.options, self.facts, self.all_of = options, facts, all_of
        self.today = options.now().date()

    def local(self, at: datetime) -> datetime:
        """In the zone of --at, else the computer's, with summer time as it was then."""
        return at.astimezone(self.options.at.tzinfo) if self.options.at is not None else at.astimezone()

    def named(self, of: str) -> str:
        """An agent or organism as spoken."""
        known = self.facts.agents.get(of) or self.facts.organisms.get(of)
        return known.name if known is not None else of

    def what(self, entry: Entry) -> str:
        return what_was_done(entry, self.all_of, self.named)

    def correction(self, entry: Entry) -> str:
        return correction(entry, self.local)


def _record(folder: Folder) -> tuple[Entry, ...]:
    if not folder.record.exists():
        return ()
    with Log.open(folder.record) as log:
        return entries(log.record())


# ---------------------------------------------------------------- which part of it


def _wanted(options: Options, household: Household, view: _View) -> Wanted:
    if options.json and options.csv:
        raise ShellFault("--json and --csv are two forms of the same; leave one of them out")
    if options.month is not None:
        if options.first is not None or options.last is not None:
            raise ShellFault("--month goes without --from and --to; leave one of them out")
        days = days_of(_month(options.month))
        return _of(options, household, view, days[0], days[-1])
    first = _day(options.first) if options.first is not None else None
    last = _day(options.last) if options.last is not None else None
    if first is not None and last is not None and last < first:
        raise ShellFault(f"--to {last} lies before --from {first}; swap them")
    return _of(options, household, view, first, last)


def _of(options: Options, household: Household, view: _View, first: date | None, last: date | None) -> Wanted:
    enclosure = _enclosure(options.enclosure, household, view) if options.enclosure is not None else None
    agent = _agent(options.agent, view.facts) if options.agent is not None else None
    return Wanted(enclosure, agent, first, last, options.notes)


def _enclosure(said: str, household: Household, view: _View) -> str:
    """By its name or another of its names; one that is only on the record as well."""
    plain = said.strip().casefold()
    for enclosure in household.enclosures:
        if plain in (name.casefold() for name in (enclosure.name, *enclosure.also)):
            return enclosure.name
    on_record = dict.fromkeys(entry.enclosure for entry in view.all_of if entry.enclosure)
    for name in on_record:
        if plain == name.casefold():
            return name
    known = dict.fromkeys((*(enclosure.name for enclosure in household.enclosures), *on_record))
    raise ShellFault(f'no enclosure "{said[:40]}"; known are: {", ".join(known) or "none yet"}')


def _agent(said: str, facts: Facts) -> str:
    agent = facts.agent_named(said)
    if agent is None:
        raise ShellFault(f'no agent "{said[:40]}"; name one like bleach, chlorhexidine or vinegar')
    return agent.id


def _day(text: str) -> date:
    try:
        day = date.fromisoformat(text.strip())
        if EARLIEST <= day.year <= LATEST:
            return day
    except ValueError:
        pass
    raise ShellFault(f'"{text[:40]}" is no day known here; write one like 2026-01-31')


def _month(text: str) -> date:
    try:
        month = datetime.strptime(text.strip(), "%Y-%m").date()
        if EARLIEST <= month.year <= LATEST:
            return month
    except ValueError:
        pass
    raise ShellFault(f'"{text[:40]}" is no month known here; write one like 2026-05')


# ---------------------------------------------------------------- how it is shown


def _print_table(found: Sequence[Entry], view: _View) -> None:
    if not found:
        print("Nothing on record" + (" that fits." if view.all_of else " yet."))
        return
    rows = [(f"{view.local(entry.at):%Y-%m-%d %H:%M}", _where(entry), _line(entry, view)) for entry in found]
    wide = min(WIDEST_NAME, max(5, *(len(where) for _, where, _ in rows)))
    for row in (("when", "where", "what was done"), *rows):
        _print_row(row, wide, _width() - 16 - wide - 4)


def _width() -> int:
    return max(shutil.get_terminal_size().columns, NARROWEST)


def _print_row(row: tuple[str, str, str], wide: int, left: int) -> None:
    when, where, what = row
    names, lines = wrap(where, wide) or [""], wrap(what, max(left, 12)) or [""]
    for at in range(max(len(names), len(lines))):
        name, line = (names[at] if at < len(names) else ""), (lines[at] if at < len(lines) else "")
        print(f"{when if at == 0 else '':16}  {name:{wide}}  {line}".rstrip())


def _line(entry: Entry, view: _View) -> str:
    mark = view.correction(entry)
    return view.what(entry) + (f" [{mark}]" if mark else "")


def _where(entry: Entry) -> str:
    return entry.enclosure or entry.bottle or str(getattr(entry.event, "tub", ""))


def _print_csv(found: Sequence[Entry], view: _View) -> None:
    writer = csv.writer(sys.stdout, lineterminator="\n")
    writer.writerow(COLUMNS)
    for entry in found:
        row = _columns(entry, view)
        writer.writerow([_harmless("; ".join(cell) if isinstance(cell, list) else cell or "") for cell in row.values()])


def _columns(entry: Entry, view: _View) -> dict[str, str | list[str] | None]:
    agents = [view.named(agent) for agent in entry.agents]
    cells = (view.local(entry.at).isoformat(timespec="seconds"), entry.enclosure or None, entry.bottle or None, agents)
    told = (view.what(entry), view.correction(entry) or None, type(entry.event).__name__, entry.turn)
    return dict(zip(COLUMNS, (*cells, *told), strict=True))


def _harmless(cell: str) -> str:
    """A name that begins like a formula is kept from being one in a spreadsheet."""
    return f"'{cell}" if cell[:1] in ("=", "+", "-", "@", "\t") else cell


def _print_json(found: Sequence[Entry], view: _View) -> None:
    for entry in found:
        taken_back = view.local(entry.undone_at).isoformat(timespec="seconds") if entry.undone_at is not None else None
        fields = {key: _plain(value) for key, value in asdict(entry.event).items()}
        print(json.dumps({**_columns(entry, view), "taken_back": taken_back, "fields": fields}, ensure_ascii=False))


def _plain(value: object) -> object:
    if isinstance(value, datetime):
        return value.isoformat()
    if isinstance(value, Fraction):
        return float(value)
    if isinstance(value, dict):
        return {key: _plain(inner) for key, inner in value.items()}
    return value


def _print_month(month: date, wanted: Wanted, household: Household, view: _View) -> None:
    found = chosen(view.all_of, wanted, view.local)
    done = by_day(found, view.local)
    names = [enclosure.name for enclosure in household.enclosures if wanted.enclosure in (None, enclosure.name)]
    rows = {name: done.get(name, {}) for name in dict.fromkeys((*names, *done))}
    for line in month_lines(month, rows, view.today):
        print(line)
    corrected = [entry for entry in found if entry.undone_at is not None]
    if corrected:
        print("\nTaken back, and not drawn:")
        for entry in corrected:
            line = f"{view.local(entry.at):%Y-%m-%d %H:%M}  {_where(entry)}: {_line(entry, view)}"
            print("\n".join(wrap(line, _width(), subsequent_indent=" " * 18)))
