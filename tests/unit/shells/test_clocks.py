"""The watch on the two clocks, with both of them set by hand."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from assistant.contract import Heard
from assistant.core.record.events import ClocksParted
from assistant.shells.clocks import ClockWatch, boot_seconds, offset_now
from assistant.shells.folder import Folder
from assistant.shells.sitting import Sitting, open_sitting

from .conftest import HOUSEHOLD

NINE = datetime(2026, 1, 5, 9, tzinfo=UTC)


class Computer:
    """One whose wall clock can be set, and which can sleep."""

    def __init__(self, wall: datetime = NINE) -> None:
        self.wall = wall
        self.boot = 1000.0

    def runs(self, **span: float) -> None:
        self.wall += timedelta(**span)
        self.boot += timedelta(**span).total_seconds()

    def clock_set(self, **span: float) -> None:
        self.wall += timedelta(**span)

    def offset(self, now: datetime) -> float:
        return now.timestamp() - self.boot


@pytest.fixture
def computer() -> Computer:
    return Computer()


@pytest.fixture
def home(understood: None, tmp_path: Path) -> Folder:
    (tmp_path / "keeping.toml").write_bytes(HOUSEHOLD.read_bytes())
    return Folder(tmp_path)


@contextmanager
def watching(home: Folder, computer: Computer) -> Iterator[Sitting]:
    with open_sitting(home) as sitting:
        sitting.clocks = ClockWatch(computer.offset)
        sitting.speak_up(computer.wall)
        yield sitting


def sprayed(sitting: Sitting, computer: Computer) -> None:
    for said in ("start east tank", "moved out", "cleared", "washed", "sprayed"):
        sitting.hear(Heard(said), computer.wall)


def left(sitting: Sitting, computer: Computer) -> float | None:
    seconds = sitting.hear(Heard("time_left"), computer.wall).values["seconds"]
    assert seconds is None or isinstance(seconds, float)
    return seconds


def partings(sitting: Sitting) -> list[ClocksParted]:
    return [entry.event for entry in sitting.log.record() if isinstance(entry.event, ClocksParted)]


# ---------------------------------------------------------------- the watch


def test_clocks_that_go_alike_have_not_parted(computer: Computer) -> None:
    watch = ClockWatch(computer.offset)
    for _ in range(5):
        assert watch.look(computer.wall) is None
        computer.runs(hours=3)


@pytest.mark.parametrize(("seconds", "parts"), [(5, False), (-5, False), (5.5, True), (-5.5, True)])
def test_more_than_five_seconds_are_a_parting(seconds: float, parts: bool, computer: Computer) -> None:
    watch = ClockWatch(computer.offset)
    watch.look(computer.wall)
    computer.clock_set(seconds=seconds)
    assert (watch.look(computer.wall) is not None) is parts


def test_many_small_steps_add_up(computer: Computer) -> None:
    watch = ClockWatch(computer.offset)
    watch.look(computer.wall)
    computer.clock_set(seconds=4)
    assert watch.look(computer.wall) is None
    computer.clock_set(seconds=4)
    parting = watch.look(computer.wall)
    assert parting is not None
    assert parting.ahead_s == pytest.approx(8)


@pytest.mark.parametrize("day", ["2026-03-29T02:30", "2026-10-25T02:30"])
def test_summer_time_parts_nothing(day: str) -> None:
    """The night when Berlin's clocks change, looked at in Berlin's time."""
    computer = Computer(datetime.fromisoformat(day).replace(tzinfo=UTC) - timedelta(hours=3))
    watch = ClockWatch(computer.offset)
    for _ in range(12):
        assert watch.look(computer.wall.astimezone(ZoneInfo("Europe/Berlin"))) is None
        computer.runs(minutes=30)


def test_this_computers_own_clocks_go_alike() -> None:
    watch = ClockWatch()
    assert watch.look(datetime.now(UTC)) is None
    assert watch.look(datetime.now().astimezone()) is None
    assert boot_seconds() > 0
    assert abs(offset_now(datetime.now(UTC)) - offset_now(datetime.now().astimezone())) < 1


# ---------------------------------------------------------------- a sitting


def test_a_clock_set_forward_is_recorded_at_once_and_said_with_a_question(home: Folder, computer: Computer) -> None:
    with watching(home, computer) as sitting:
        sprayed(sitting, computer)
        computer.runs(minutes=4)
        computer.clock_set(hours=1)
        reply = sitting.speak_up(computer.wall)
        assert reply is not None
        told = reply.reminders[-1]
        assert "jumped ahead 60 minutes" in told
        assert "is it really 64 minutes since spraying?" in told
        assert len(told.split()) <= 25
        assert [parting.ahead_s for parting in partings(sitting)] == [pytest.approx(3600)]
        assert left(sitting, computer) == pytest.approx(360)


@pytest.mark.parametrize(("answer", "seconds"), [("yes", 360), ("no", 600)])
def test_a_clock_set_back_counts_as_the_keeper_says(
    answer: str, seconds: float, home: Folder, computer: Computer
) -> None:
    with watching(home, computer) as sitting:
        sprayed(sitting, computer)
        computer.runs(minutes=4)
        computer.clock_set(minutes=-30)
        reply = sitting.speak_up(computer.wall)
        assert reply is not None
        assert "went back 30 minutes" in reply.say
        assert left(sitting, computer) == pytest.approx(600)
        sitting.hear(Heard(answer), computer.wall)
        assert left(sitting, computer) == pytest.approx(seconds)


def test_an_unanswered_question_is_asked_again_when_the_clocks_are_asked(home: Folder, computer: Computer) -> None:
    with watching(home, computer) as sitting:
        sprayed(sitting, computer)
        computer.runs(minutes=4)
        computer.clock_set(minutes=-30)
        sitting.speak_up(computer.wall)
        sitting.begin_anew()
        sitting.speak_up(computer.wall)
        assert any("went back" in line for line in sitting.hear(Heard("time_left"), computer.wall).reminders)
        assert sitting.hear(Heard("yes"), computer.wall).values == {"recorded": True}
        assert sitting.hear(Heard("time_left"), computer.wall).reminders == ()


def test_what_a_turn_finds_it_records_before_it_answers(home: Folder, computer: Computer) -> None:
    """No tick came between: the wet time is not served by the clock that was set."""
    with watching(home, computer) as sitting:
        sprayed(sitting, computer)
        computer.clock_set(minutes=15)
        reply = sitting.hear(Heard("return_check"), computer.wall)
        assert "hold" in reply.values["blocked_by"]
        assert any("jumped ahead" in line for line in reply.reminders)


def test_two_shells_tell_of_one_parting(home: Folder, computer: Computer) -> None:
    with watching(home, computer) as one, watching(home, computer) as other:
        sprayed(one, computer)
        computer.runs(minutes=4)
        computer.clock_set(hours=1)
        for sitting in (one, other, one, other):
            sitting.speak_up(computer.wall)
        assert left(one, computer) == left(other, computer) == pytest.approx(360)


def test_with_nothing_running_a_parting_is_recorded_without_a_word(home: Folder, computer: Computer) -> None:
    with watching(home, computer) as sitting:
        computer.clock_set(hours=2)
        assert sitting.speak_up(computer.wall) is None
        assert len(partings(sitting)) == 1


def test_a_laptop_that_slept_while_its_count_went_on_counts_the_whole_span(home: Folder, computer: Computer) -> None:
    with watching(home, computer) as sitting:
        sprayed(sitting, computer)
        computer.runs(minutes=25)
        reply = sitting.hear(Heard("return_check"), computer.wall)
        assert partings(sitting) == []
        assert left(sitting, computer) is None
        assert "hold" in reply.values["blocked_by"], "nobody watched it: it is to be vouched for"


def test_a_shell_that_answers_once_watches_nothing(home: Folder, computer: Computer) -> None:
    with open_sitting(home) as sitting:
        sprayed(sitting, computer)
        computer.clock_set(minutes=1)
        sitting.hear(Heard("status"), computer.wall)
        assert partings(sitting) == []


def test_a_reminder_still_comes_after_the_clock_was_set_back(home: Folder, computer: Computer) -> None:
    with watching(home, computer) as sitting:
        sprayed(sitting, computer)
        computer.runs(minutes=1)
        computer.clock_set(minutes=-1)
        sitting.speak_up(computer.wall)
        computer.runs(minutes=9, seconds=59)
        sitting.watch(computer.wall)
        sitting.speak_up(computer.wall)
        computer.runs(seconds=2)
        reply = sitting.speak_up(computer.wall)
        assert reply is not None
        assert "wet time is over" in reply.say
