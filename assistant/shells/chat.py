"""The chat: typed turns with live timers in the bottom line, and reminders that come by themselves.

On a terminal that can't do that, or with input from a pipe, or with --json, turns are plain lines and what came due is
told with the next reply.
"""

from __future__ import annotations

import asyncio
import os
import sys
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager, suppress
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING

from prompt_toolkit import PromptSession
from prompt_toolkit.application import get_app_or_none
from prompt_toolkit.auto_suggest import AutoSuggestFromHistory
from prompt_toolkit.completion import DynamicCompleter, WordCompleter
from prompt_toolkit.history import FileHistory, History, InMemoryHistory
from prompt_toolkit.patch_stdout import patch_stdout

from assistant.contract import Heard, Reply, Talk
from assistant.core.household import Bottle, Enclosure, Measure, Stock
from assistant.core.record.state import State
from assistant.core.round.gate import Timer, timers
from assistant.core.round.reminders import Reminder, ReminderKind
from assistant.shells.clocks import ClockWatch
from assistant.shells.folder import Folder, ShellFault, TurnFault
from assistant.shells.once import stdin_lines
from assistant.shells.options import Options, opened_folder
from assistant.shells.out import complain, show
from assistant.shells.screen import clock, screen_lines
from assistant.shells.sitting import Sitting, open_sitting
from assistant.store.keeping import KeepingFault
from assistant.store.log import StoreFault

if TYPE_CHECKING:  # the voice's libraries cost a typed start half a second
    from assistant.shells.mouth import Mouth
    from assistant.shells.voiced import Voiced

TICK_S = 1.0
METER_S = 0.15
"""How often the bottom line is drawn anew while it shows the microphone's level."""
LEAVE = ("quit", "exit")

GREETING = 'Ask, or say what you did. Tab completes, Ctrl-D leaves; "help" lists the questions.'

LISTENING = "Space on an empty line: talk, and stop what is being said. Talking over a reply stops it too."

_STEP_WORDS = {"hold": "wet", "air": "airing", "eye": "rinse eye", "skin": "rinse skin"}

_STANDS: Mapping[ReminderKind, str] = {
    "about to dry": "about to dry",
    "still wet": "still wet?",
    "vouch": "stayed wet?",
    "hold over": "stayed wet?",
    "rinse now": "rinse now",
    "open window": "open a window",
    "air over": "airing is up",
    "animal waits": "animal waits",
    "bottle past its life": "past its life",
}


def chat(options: Options) -> int:
    """Talks until the keeper leaves; 0."""
    with opened_folder(options) as folder, open_sitting(folder) as sitting:
        sitting.clocks = ClockWatch()
        if options.voice:
            _by_voice(sitting, folder, options)
        elif options.json or not _is_a_terminal():
            with _mouth(options.speak) as mouth:
                _plain_lines(sitting, options, mouth)
        else:
            history = FileHistory(str(folder.history)) if _may_write(folder) else InMemoryHistory()
            with _mouth(options.speak or sitting.household.habits.speak) as mouth:
                asyncio.run(Chat(sitting, _clock_from(options), history, mouth, keeping=folder.keeping).run())
    return 0


def _by_voice(sitting: Sitting, folder: Folder, options: Options) -> None:
    """Listening and speaking, on a terminal with all that the typed chat has."""
    from assistant.shells.live import Lines, microphone_of, opened_ears
    from assistant.shells.mouth import Mouth
    from assistant.shells.voiced import Voiced

    now = _clock_from(options)
    with Mouth() as mouth, opened_ears(sitting, folder, options, mouth) as ears:
        if options.json or not _is_a_terminal():
            Lines(sitting, options, now, mouth).run(ears, LEAVE)
            return
        history = FileHistory(str(folder.history)) if _may_write(folder) else InMemoryHistory()
        talk = Chat(sitting, now, history, mouth, Voiced(ears, mouth, microphone_of(options)), folder.keeping)
        asyncio.run(talk.run())


@contextmanager
def _mouth(wanted: bool) -> Iterator[Mouth | None]:
    """What speaks the replies, where that is wanted."""
    if not wanted:
        yield None
        return
    from assistant.shells.mouth import Mouth

    with Mouth() as mouth:
        yield mouth


def _is_a_terminal() -> bool:
    return sys.stdin.isatty() and sys.stdout.isatty() and os.environ.get("TERM") != "dumb"


def _may_write(folder: Folder) -> bool:
    try:
        folder.history.touch()
    except OSError:
        return False
    return True


def _clock_from(options: Options) -> Callable[[], datetime]:
    """A clock that runs on from `--at`, or the computer's own."""
    if options.at is None:
        return options.now
    ahead = options.at - datetime.now().astimezone()
    return lambda: (datetime.now().astimezone() + ahead).astimezone(options.at.tzinfo if options.at else None)


def _plain_lines(sitting: Sitting, options: Options, mouth: Mouth | None) -> None:
    """Line by line; aloud, each reply ends before the next line is read."""
    now = _clock_from(options)
    for line in stdin_lines():
        if line.strip().lower() in LEAVE:
            return
        if line.strip() or options.json:
            reply = sitting.hear(Heard(line), now())
            show(reply, options)
            if mouth is not None:
                mouth.answer(reply)
                mouth.wait()


@dataclass
class Chat:
    """One chat on a terminal."""

    sitting: Sitting
    now: Callable[[], datetime]
    history: History
    mouth: Mouth | None = None
    """None: nothing is said aloud."""
    voiced: Voiced | None = None
    """None: typed only."""
    keeping: Path | None = None
    """Where what is added is written; None: nothing can be added here."""

    async def run(self) -> None:
        """Prompts and replies until Ctrl-D, Ctrl-C or "quit"."""
        session: PromptSession[str] = PromptSession(
            history=self.history,
            completer=DynamicCompleter(self._completer),
            complete_while_typing=False,
            auto_suggest=AutoSuggestFromHistory(),
            bottom_toolbar=self._bottom_line,
            refresh_interval=METER_S if self.voiced else TICK_S,
            key_bindings=self.voiced.keys() if self.voiced else None,
        )
        with patch_stdout():
            print(GREETING)
            self._listen()
            watching = asyncio.create_task(self._watch())
            try:
                await self._talk(session)
            finally:
                watching.cancel()
                with suppress(asyncio.CancelledError):
                    await watching

    def _listen(self) -> None:
        if self.voiced is not None:
            print(LISTENING)
            self.voiced.start(self._heard, lambda note: print(f"* {note}"))

    def _heard(self, heard: Heard) -> None:
        print(f"> {heard.text}")
        self._turn(heard)

    async def _talk(self, session: PromptSession[str]) -> None:
        while True:
            try:
                text = await session.prompt_async("> ")
            except (EOFError, KeyboardInterrupt):
                return
            if text.strip().lower() in LEAVE:
                return
            reply = self._heard_by_the_sitting(Heard(text)) if text.strip() else None
            if reply is not None and reply.intent == "add" and reply.values.get("adds") and self.keeping is not None:
                await self._add(reply.values["adds"], self.keeping)
            elif reply is not None:
                self._give(reply)

    def _turn(self, heard: Heard) -> None:
        reply = self._heard_by_the_sitting(heard)
        if reply is not None:
            self._give(reply)

    def _heard_by_the_sitting(self, heard: Heard) -> Reply | None:
        try:
            return self.sitting.hear(heard, self.now())
        except (StoreFault, TurnFault) as fault:
            complain(str(fault))
            return None

    async def _add(self, kind: str, keeping: Path) -> None:
        """Asks about a new thing, a turn of its own by each question's side; it is known from then on."""
        from assistant.shells.adding import InChat, add_in_chat

        asking = InChat(self._bottom_line, self._interrupted)
        try:
            await add_in_chat(kind, keeping, self.sitting.facts, self.now().date(), asking)
            self.sitting.read_anew(keeping)
        except (KeepingFault, ShellFault) as fault:
            complain(str(fault))
        if self.voiced is not None:
            print("* New names are heard from the next start on; typed, they are known now.")

    async def _interrupted(self, typed: str) -> bool:
        if not typed.strip() or not self.sitting.interrupts(typed, self.now()):
            return False
        self._turn(Heard(typed))
        return True

    def _completer(self) -> WordCompleter:
        return WordCompleter(completions(self.sitting), ignore_case=True, sentence=True, match_middle=True)

    def _give(self, reply: Reply) -> None:
        self._show(reply)
        if self.voiced is not None:
            self.voiced.answer(reply)
        elif self.mouth is not None:
            self.mouth.answer(reply)

    async def _watch(self) -> None:
        while True:
            await asyncio.sleep(TICK_S)
            self.tick()

    def tick(self) -> None:
        """What the chat does by itself every second: says what came due, and notes that it runs."""
        if (self.voiced is not None and self.voiced.ears.busy) or (self.mouth is not None and self.mouth.speaking):
            return  # never on top of the keeper, nor of a reply
        now = self.now()
        try:
            reply = self.sitting.speak_up(now)
            self.sitting.watch(now)
        except StoreFault:
            return  # a busy file or a full disk: the next turn says so
        if reply is not None:
            self._give(reply)

    def _show(self, reply: Reply) -> None:
        print("\n".join(screen_lines(reply, self._width())))

    def _bottom_line(self) -> str:
        try:
            state, now = self.sitting.state(), self.now()
            stands = self.sitting.waiting(now)
        except StoreFault:
            return ""
        width = self._width()
        clocks = bottom_line(state, self.sitting.talk, now, width, stands)
        if self.voiced is None:
            return clocks
        return f"{clocks}\n {self.voiced.ears.line()[: width - 1]}"

    def _width(self) -> int:
        app = get_app_or_none()
        return app.output.get_size().columns if app is not None else 80


def completions(sitting: Sitting) -> list[str]:
    """What Tab offers: the household's names, and an example of every question."""
    household = sitting.household
    named: tuple[tuple[Bottle | Enclosure | Stock | Measure, ...], ...] = (
        household.bottles,
        household.enclosures,
        household.stocks,
        household.measures,
    )
    names = [name for things in named for thing in things for name in (thing.name, *thing.also)]
    return [*names, *(question.example for question in sitting.questions.values())]


def bottom_line(state: State, talk: Talk, now: datetime, width: int, stands: Sequence[Reminder] = ()) -> str:
    """Whether an answer is waited for, the running clocks, soonest first, and what waits for the keeper; what fits."""
    parts = [_timer(timer) for timer in timers(state, now)]
    parts += [f"{reminder.thing}: {_STANDS[reminder.kind]}" for reminder in stands]
    waits = _waits(talk)
    if waits:
        parts.insert(0, waits)
    if not parts:
        return " no clock is running"
    line, left_out = " " + parts[0], len(parts) - 1
    for part in parts[1:]:
        longer = f"{line} | {part}"
        more = f" +{left_out - 1}" if left_out > 1 else ""
        if len(longer) + len(more) > width:
            break
        line, left_out = longer, left_out - 1
    return (line + (f" +{left_out}" if left_out else ""))[:width]


def _timer(timer: Timer) -> str:
    words = _STEP_WORDS.get(timer.step, timer.step)
    return f"{timer.enclosure} {words} {clock(timer.seconds)}" if timer.enclosure else f"{words} {clock(timer.seconds)}"


def _waits(talk: Talk) -> str:
    if talk.pending is None:
        return ""
    return "still needed: " + ", ".join(talk.pending.missing) if talk.pending.missing else "yes or no?"
