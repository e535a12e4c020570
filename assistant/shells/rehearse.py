"""`rehearse`: a script of turns on a clock of its own, with a record that is thrown away.

One turn a line. "+9m30s" moves the clock on (w d h m s, in any mix; "+-30m" back), "@2026-05-04T09:00" sets it as if
the program hadn't run in between, "#" is a comment. Times are UTC unless they say otherwise, so that a script gives the
same replies everywhere. While the clock moves on, what comes due is said as the chat would say it: shown at its time,
or, with --json, among the next reply's reminders.
"""

from __future__ import annotations

import re
import sys
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

from assistant.contract import Heard, Reply
from assistant.shells.clocks import ClockWatch
from assistant.shells.folder import ShellFault
from assistant.shells.options import EARLIEST, LATEST, Options, opened_folder
from assistant.shells.out import show
from assistant.shells.sitting import Sitting, open_sitting

START = datetime(2026, 1, 5, 9, tzinfo=UTC)

_SPAN = re.compile(r"\+(-?)((?:\d{1,9}[wdhms])+)")
_UNITS = {"w": "weeks", "d": "days", "h": "hours", "m": "minutes", "s": "seconds"}
_FINEST = timedelta(seconds=1)
LONGEST = timedelta(weeks=520)
MOST_STOPS = 500
"""Reminders that one move of the clock stops for; what is left by then is said at its end."""


def rehearse(options: Options) -> int:
    """Runs the script; 0 when it ran to its end."""
    lines = _script(options.what)
    with opened_folder(options) as folder, open_sitting(folder, ":memory:") as sitting:
        rehearsal = _Rehearsal(sitting, options, options.at or START)
        sitting.clocks = ClockWatch(lambda now: rehearsal.set_back_s)
        rehearsal.run(lines)
    return 0


@dataclass
class _Rehearsal:
    sitting: Sitting
    options: Options
    now: datetime
    came_due: tuple[str, ...] = ()
    """Said by itself since the last reply; only kept for --json, else it was shown at its time."""
    set_back_s: float = 0.0
    """By how much the wall's clock was set back against the other, below 0."""

    def run(self, lines: list[str]) -> None:
        for number, line in enumerate(lines, start=1):
            if not line or line.startswith("#"):
                continue
            try:
                self._take(line)
            except ShellFault as fault:
                raise ShellFault(f"{self.options.what}, line {number}: {fault}") from fault

    def _take(self, line: str) -> None:
        if line.startswith("@"):
            self.now = _time(line[1:])
            self.sitting.begin_anew()
        elif line.startswith("+"):
            self._move(_span(line))
        else:
            self._turn(line)

    def _turn(self, line: str) -> None:
        reply = self.sitting.hear(Heard(line), self.now)
        if self.options.json:
            reply = replace(reply, reminders=self.came_due + reply.reminders)
            self.came_due = ()
        else:
            print(f"\n{self._stamp()} > {line}")
        show(reply, self.options)

    def _move(self, span: timedelta) -> None:
        """Moves the clock as if the program ran all the while."""
        until = self.now + span
        if not EARLIEST <= until.year <= LATEST:
            raise ShellFault(f"that moves the clock out of the years {EARLIEST} to {LATEST}")
        if span < timedelta():
            self._set_back(until)
        for stop in range(MOST_STOPS + 1):
            if self.now >= until:
                break
            reply, self.now = self._next_due(until) if stop < MOST_STOPS else (self.sitting.speak_up(until), until)
            self.sitting.log.touch(self.now)
            if reply is not None:
                self._speak_up(reply)
        self.now = until
        self.sitting.log.touch(self.now)

    def _set_back(self, until: datetime) -> None:
        """Sets the wall's clock back; the other takes no notice."""
        if self.sitting.clocks is not None:
            self.sitting.clocks.look(self.now)
        self.set_back_s += (until - self.now).total_seconds()
        reply = self.sitting.speak_up(until)
        self.now = until
        if reply is not None:
            self._speak_up(reply)

    def _next_due(self, until: datetime) -> tuple[Reply | None, datetime]:
        """What comes due first by then, and when, to the second; found by halving, since due things only add up."""
        before = self.sitting.talk
        if self.sitting.speak_up(until) is None:
            return None, until
        early, late = self.now, until
        while late - early > _FINEST:
            self.sitting.talk = before
            middle = early + (late - early) / 2
            early, late = (early, middle) if self.sitting.speak_up(middle) is not None else (middle, late)
        self.sitting.talk = before
        for whole in (late.replace(microsecond=0), late.replace(microsecond=0) + _FINEST):
            reply = self.sitting.speak_up(whole) if early < whole <= until else None
            if reply is not None:
                return reply, whole
        return self.sitting.speak_up(until), until

    def _speak_up(self, reply: Reply) -> None:
        if self.options.json:
            self.came_due = latest(self.came_due + reply.reminders)
        else:
            print(f"\n{self._stamp()}")
            show(reply, self.options)

    def _stamp(self) -> str:
        return f"[{self.now:%Y-%m-%d %H:%M:%S}]"


_COUNT = re.compile(r"\b\d+ (?:minutes?|hours?)(?: \d+)?\b")


def latest(told: tuple[str, ...]) -> tuple[str, ...]:
    """Of what was told again with another length of time only the last: "has waited 60 minutes", then 120, then 180."""
    last = {_COUNT.sub("", line): place for place, line in enumerate(told)}
    return tuple(
        line
        for place, line in enumerate(told)
        if last[_COUNT.sub("", line)] == place or _COUNT.search(line) is None  # first aid is repeated on purpose
    )


def _script(what: str) -> list[str]:
    try:
        raw = sys.stdin.buffer.read() if what == "-" else Path(what).read_bytes()
        return [line.strip() for line in raw.decode("utf-8-sig").splitlines()]
    except UnicodeDecodeError as error:
        line = error.object[: error.start].count(b"\n") + 1
        raise ShellFault(f"{what}, line {line}: this isn't UTF-8 text; save the file as UTF-8") from error
    except OSError as error:
        raise ShellFault(f"{what}: {(error.strerror or 'unreadable').lower()}; name a script of turns") from error


def _span(line: str) -> timedelta:
    found = _SPAN.fullmatch(line.replace(" ", ""))
    if found is None:
        raise ShellFault(f'"{line[:40]}" moves no clock; write it like +9m30s (w d h m s) or +-30m')
    span = timedelta()
    for number, unit in re.findall(r"(\d+)([wdhms])", found[2]):
        span += timedelta(**{_UNITS[unit]: int(number)})
    if span > LONGEST:
        raise ShellFault(f'"{line[:40]}" is more than ten years')
    return -span if found[1] else span


def _time(text: str) -> datetime:
    try:
        given = datetime.fromisoformat(text.strip())
    except ValueError:
        given = None
    if given is None or not EARLIEST <= given.year <= LATEST:
        raise ShellFault(f'"@{text[:40]}" sets no clock; write it like @2026-05-04T09:00')
    return given if given.tzinfo is not None else given.replace(tzinfo=UTC)
