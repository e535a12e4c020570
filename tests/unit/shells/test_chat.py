"""The chat: its bottom line at any width, reminders that come by themselves, and leaving it."""

from __future__ import annotations

import asyncio
import io
import os
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from prompt_toolkit.application import create_app_session
from prompt_toolkit.data_structures import Size
from prompt_toolkit.history import InMemoryHistory
from prompt_toolkit.input import PipeInput, create_pipe_input
from prompt_toolkit.output.vt100 import Vt100_Output

from assistant.contract import Heard, Reply, Talk
from assistant.core.record.events import RinseBegun, RoundStarted, StepDone
from assistant.core.record.fold import fold_all
from assistant.shells.chat import Chat, bottom_line, completions
from assistant.shells.folder import Folder
from assistant.shells.sitting import Sitting, open_sitting
from assistant.store.log import Log

from .conftest import HOUSEHOLD, Command

NINE = datetime(2026, 1, 5, 9, tzinfo=UTC)
STEPS = ("move out", "clear", "wash", "apply", "hold", "rinse", "dry", "air", "return")


class HandClock:
    """A clock set by hand."""

    def __init__(self) -> None:
        self.time = NINE

    def __call__(self) -> datetime:
        return self.time


@pytest.fixture
def sitting(understood: None, tmp_path: Path) -> Iterator[Sitting]:
    (tmp_path / "keeping.toml").write_bytes(HOUSEHOLD.read_bytes())
    with open_sitting(Folder(tmp_path)) as opened:
        yield opened


# ---------------------------------------------------------------- the bottom line


def _busy(log: Log) -> Log:
    for name, minutes in (("east tank", 0), ("pond tub", 2)):
        at = NINE + timedelta(minutes=minutes)
        steps = [StepDone(name, step) for step in STEPS[:3]]
        spray = StepDone(name, "apply", agent="sodium hypochlorite", hold_s=600.0)
        log.append([RoundStarted(name, "sodium hypochlorite", STEPS, 600.0, 1.5, 4.6), *steps, spray], name, at)
    log.append([RinseBegun("eye", "person", 900.0)], "rinse", NINE)
    return log


def test_the_bottom_line_shows_running_clocks_the_soonest_first(log: Log) -> None:
    line = bottom_line(_busy(log).state(), Talk(), NINE + timedelta(minutes=3), 80)
    assert line == " east tank wet 7:00 | pond tub wet 9:00 | rinse eye 12:00"


@pytest.mark.parametrize(
    ("width", "shown"),
    [
        (57, " east tank wet 7:00 | pond tub wet 9:00 | rinse eye 12:00"),
        (56, " east tank wet 7:00 | pond tub wet 9:00 +1"),
        (40, " east tank wet 7:00 +2"),
        (20, " east tank wet 7:00 "),
    ],
)
def test_a_narrow_terminal_shows_the_soonest_and_counts_the_rest(log: Log, width: int, shown: str) -> None:
    assert bottom_line(_busy(log).state(), Talk(), NINE + timedelta(minutes=3), width) == shown


def test_no_clock_is_said_to_run_when_none_does() -> None:
    assert bottom_line(fold_all(()), Talk(), NINE, 80) == " no clock is running"


def test_the_bottom_line_tells_that_an_answer_is_waited_for(sitting: Sitting) -> None:
    sitting.hear(Heard("start"), NINE)
    assert sitting.talk.pending is not None
    assert bottom_line(sitting.state(), sitting.talk, NINE, 80).startswith(" still needed: ")


def test_tab_offers_the_households_names_and_the_questions(sitting: Sitting) -> None:
    offered = completions(sitting)
    assert {"orange bottle", "carrot", "east tank", "biscuit", "example of start"} <= set(offered)


# ---------------------------------------------------------------- what it does by itself


@dataclass
class MuteMouth:
    """Keeps what would be said aloud."""

    said: list[Reply] = field(default_factory=list)
    speaking: bool = False

    def answer(self, reply: Reply) -> None:
        self.said.append(reply)


def test_a_reminder_is_shown_by_itself_once(sitting: Sitting, capsys: pytest.CaptureFixture[str]) -> None:
    clock, mouth = HandClock(), MuteMouth()
    chat = Chat(sitting, clock, InMemoryHistory(), mouth)  # type: ignore[arg-type]
    for text in ("start east tank", "moved out", "cleared", "washed", "sprayed"):
        sitting.hear(Heard(text), clock())
    for _ in range(20):
        clock.time += timedelta(seconds=60)
        chat.tick()
    shown = capsys.readouterr().out
    assert shown.count("East tank: wet time is over") == 1
    assert [reply.say.split(". ")[0] for reply in mouth.said] == [
        "East tank: still wet?",
        "East tank: wet time is over",
    ]


def test_what_came_due_waits_until_a_reply_is_said(sitting: Sitting) -> None:
    clock, mouth = HandClock(), MuteMouth()
    chat = Chat(sitting, clock, InMemoryHistory(), mouth)  # type: ignore[arg-type]
    for text in ("start east tank", "moved out", "cleared", "washed", "sprayed"):
        sitting.hear(Heard(text), clock())
    mouth.speaking = True
    for _ in range(11):
        clock.time += timedelta(seconds=60)
        chat.tick()
    assert not mouth.said
    mouth.speaking = False
    chat.tick()
    assert [reply.say.split(". ")[0] for reply in mouth.said] == ["East tank: wet time is over"]


def test_a_chat_that_runs_keeps_the_wet_time_watched(sitting: Sitting) -> None:
    clock = HandClock()
    chat = Chat(sitting, clock, InMemoryHistory())
    for text in ("start east tank", "moved out", "cleared", "washed", "sprayed"):
        sitting.hear(Heard(text), clock())
    for _ in range(11 * 60):
        clock.time += timedelta(seconds=1)
        chat.tick()
    sitting.hear(Heard("status"), clock())
    hold = sitting.state().rounds["east tank"].hold
    assert hold is not None
    assert not hold.doubted


def test_a_computer_that_slept_leaves_the_wet_time_doubted(sitting: Sitting) -> None:
    """Even when the chat ticked on for a while before the keeper's next word."""
    clock = HandClock()
    chat = Chat(sitting, clock, InMemoryHistory())
    for text in ("start east tank", "moved out", "cleared", "washed", "sprayed"):
        sitting.hear(Heard(text), clock())
    clock.time += timedelta(minutes=5)
    for _ in range(120):
        clock.time += timedelta(seconds=1)
        chat.tick()
    sitting.hear(Heard("status"), clock())
    hold = sitting.state().rounds["east tank"].hold
    assert hold is not None
    assert hold.doubted


# ---------------------------------------------------------------- typed at a terminal


class Output(Vt100_Output):
    """Answers how much room is below the cursor, which a real terminal is asked for through escape codes."""

    def get_rows_below_cursor_position(self) -> int:
        return 10


class Terminal:
    """A terminal of a given width that is typed at by the test and remembers what it showed."""

    def __init__(self, keys: PipeInput, columns: int) -> None:
        self.keys, self.shown = keys, io.StringIO()
        self.output = Output(self.shown, lambda: Size(rows=24, columns=columns), term="xterm")

    async def until(self, text: str) -> None:
        async with asyncio.timeout(5):
            while text not in self.shown.getvalue():
                await asyncio.sleep(0.002)


@contextmanager
def terminal(columns: int = 80) -> Iterator[Terminal]:
    with create_pipe_input() as keys:
        made = Terminal(keys, columns)
        with create_app_session(input=keys, output=made.output):
            yield made


@pytest.mark.parametrize("leave", ["\x04", "\x03", "quit\r"])
def test_the_chat_replies_and_is_left_cleanly(sitting: Sitting, leave: str) -> None:
    async def talk(chat: Chat, at: Terminal) -> None:
        running = asyncio.create_task(chat.run())
        await at.until("no clock is running")
        at.keys.send_text("start east tank\r")
        await at.until("East tank: ")
        at.keys.send_text(leave)
        await running

    with terminal() as at:
        asyncio.run(talk(Chat(sitting, HandClock(), InMemoryHistory()), at))
    assert "east tank" in sitting.state().rounds


@pytest.mark.parametrize("columns", [24, 40, 200])
def test_the_chat_works_on_a_terminal_of_any_width(sitting: Sitting, columns: int) -> None:
    async def talk(chat: Chat, at: Terminal) -> None:
        running = asyncio.create_task(chat.run())
        for text in ("start east tank", "moved out", "cleared", "washed", "sprayed"):
            at.keys.send_text(text + "\r")
        await at.until("tank wet 10:00")
        at.keys.send_text("\x04")
        await running

    with terminal(columns) as at:
        asyncio.run(talk(Chat(sitting, HandClock(), InMemoryHistory()), at))


def test_a_reminder_comes_while_nothing_is_typed(sitting: Sitting, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("assistant.shells.chat.TICK_S", 0.002)
    clock = HandClock()
    for text in ("start east tank", "moved out", "cleared", "washed", "sprayed"):
        sitting.hear(Heard(text), clock())

    async def talk(chat: Chat, at: Terminal) -> None:
        running = asyncio.create_task(chat.run())
        await at.until("east tank wet 10:00")
        clock.time += timedelta(minutes=10)
        await at.until("wet time is over")
        at.keys.send_text("yes\r")
        await at.until("wet time done")
        at.keys.send_text("\x04")
        await running

    with terminal() as at:
        asyncio.run(talk(Chat(sitting, clock, InMemoryHistory()), at))


def test_without_a_terminal_lines_are_answered_and_the_talk_goes_on(run: Command) -> None:
    ran = run("chat", "--at", "2026-01-05T09:00+00:00", "--json", stdin=b"start\nstart east tank\nmoved out\nquit\nx\n")
    assert ran.code == 0
    assert [reply["outcome"] for reply in ran.replies] == ["ask", "answer", "answer"]


@pytest.mark.skipif(sys.platform == "win32", reason="no pseudo-terminals there")
@pytest.mark.parametrize("term", ["xterm", "dumb"])
def test_the_program_talks_at_a_real_terminal(term: str) -> None:
    import pexpect

    child = pexpect.spawn(
        sys.executable,
        ["-m", "assistant", "--demo"],
        env={**os.environ, "TERM": term, "PYTHONDONTWRITEBYTECODE": "1"},
        dimensions=(24, 60),
        timeout=20,
        encoding="utf-8",
    )
    try:
        if term == "xterm":
            # "Where is the cursor?", as often as it is asked: how much room there is for a bottom line.
            while child.expect_exact(["no clock is running", "\x1b[6n"]) == 1:
                child.send("\x1b[3;1R")
        child.sendline("what can I ask you")
        child.expect("how much")
        # Between two prompts the terminal is nobody's, and a Ctrl-D sent then is lost.
        left = any(child.sendeof() or child.expect([pexpect.EOF, pexpect.TIMEOUT], timeout=2) == 0 for _ in range(8))
    finally:
        child.close()
    assert left
    assert child.exitstatus == 0
