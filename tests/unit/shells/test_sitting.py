"""One sitting: recorded before replied, taken anew when overtaken, and honest about gaps."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from assistant.contract import Heard, Outcome, Reading, World
from assistant.shells.folder import Folder
from assistant.shells.sitting import Sitting, open_sitting
from assistant.store.log import Log, StoreFault

from .conftest import HOUSEHOLD, table_reader

NINE = datetime(2026, 1, 5, 9, tzinfo=UTC)
UP_TO_SPRAYED = ("start east tank", "moved out", "cleared", "washed", "sprayed")


@pytest.fixture
def home(understood: None, tmp_path: Path) -> Folder:
    (tmp_path / "keeping.toml").write_bytes(HOUSEHOLD.read_bytes())
    return Folder(tmp_path)


@pytest.fixture
def sitting(home: Folder) -> Iterator[Sitting]:
    with open_sitting(home) as opened:
        yield opened


def doubted(sitting: Sitting) -> bool:
    hold = sitting.state().rounds["east tank"].hold
    assert hold is not None
    return hold.doubted


def test_when_recording_fails_there_is_no_reply_and_the_talk_is_as_it_was(
    sitting: Sitting, monkeypatch: pytest.MonkeyPatch
) -> None:
    sitting.hear(Heard("start east tank"), NINE)
    before, talk = sitting.state(), sitting.talk

    def full(log: Log, *_: object) -> None:
        raise StoreFault("the disk is full")

    monkeypatch.setattr(Log, "append", full)
    with pytest.raises(StoreFault):
        sitting.hear(Heard("moved out"), NINE)
    assert (sitting.state(), sitting.talk) == (before, talk)


def test_a_reply_is_given_even_when_only_the_note_of_running_fails(
    sitting: Sitting, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(log: Log, at: datetime) -> None:
        raise StoreFault("the disk is full")

    monkeypatch.setattr(Log, "touch", full)
    assert sitting.hear(Heard("start east tank"), NINE).outcome is Outcome.ANSWER


def test_two_sittings_see_what_the_other_recorded(home: Folder, sitting: Sitting) -> None:
    with open_sitting(home) as other:
        sitting.hear(Heard("start east tank"), NINE)
        assert other.hear(Heard("moved out"), NINE).values["recorded"] is True
        assert sitting.hear(Heard("cleared"), NINE).values["recorded"] is True


def test_a_turn_that_was_overtaken_is_taken_anew_on_what_is_true_then(home: Folder, sitting: Sitting) -> None:
    """The other shell records the same step while this one is still understanding: it counts once."""
    sitting.hear(Heard("start east tank"), NINE)
    with open_sitting(home) as other:
        interrupted: list[str] = []

        def slow_reader(heard: Heard, world: World) -> Reading:
            if not interrupted:
                interrupted.append(heard.text)
                other.hear(Heard(heard.text), NINE)
            return table_reader(heard, world)

        sitting.read = slow_reader
        sitting.hear(Heard("moved out"), NINE)
        steps = [entry.event for entry in sitting.log.record() if type(entry.event).__name__ == "StepDone"]
    assert interrupted == ["moved out"]
    assert len(steps) == 1


def test_a_shell_that_is_always_overtaken_says_so(home: Folder, sitting: Sitting) -> None:
    with open_sitting(home) as other:

        def never_first(heard: Heard, world: World) -> Reading:
            other.hear(Heard("start pond tub"), NINE)
            other.hear(Heard("undo"), NINE)
            return table_reader(heard, world)

        sitting.read = never_first
        with pytest.raises(StoreFault, match="another rinseback keeps recording"):
            sitting.hear(Heard("start east tank"), NINE)


def test_a_short_gap_between_starts_leaves_the_wet_time_alone(home: Folder) -> None:
    with open_sitting(home) as first:
        for text in UP_TO_SPRAYED:
            first.hear(Heard(text), NINE)
    with open_sitting(home) as second:
        second.hear(Heard("status"), NINE + timedelta(minutes=2))
        assert not doubted(second)


def test_a_long_gap_between_starts_leaves_the_wet_time_doubted(home: Folder) -> None:
    with open_sitting(home) as first:
        for text in UP_TO_SPRAYED:
            first.hear(Heard(text), NINE)
    with open_sitting(home) as second:
        second.hear(Heard("status"), NINE + timedelta(minutes=2, seconds=1))
        assert doubted(second)


def test_a_gap_after_the_wet_time_was_over_and_seen_over_doubts_nothing(home: Folder) -> None:
    with open_sitting(home) as first:
        for text in UP_TO_SPRAYED:
            first.hear(Heard(text), NINE)
        for minute in range(11):
            first.watch(NINE + timedelta(minutes=minute))
    with open_sitting(home) as second:
        second.hear(Heard("status"), NINE + timedelta(hours=5))
        assert not doubted(second)


def test_what_came_due_between_starts_is_told_once(home: Folder) -> None:
    with open_sitting(home) as first:
        for text in UP_TO_SPRAYED:
            first.hear(Heard(text), NINE)
    told = []
    for minutes in (11, 12, 13):
        with open_sitting(home) as later:
            told.append(later.hear(Heard("status"), NINE + timedelta(minutes=minutes)).reminders)
    assert [len(reminders) for reminders in told] == [1, 0, 0]


def test_warming_up_records_nothing_and_leaves_the_talk_as_it_was(sitting: Sitting) -> None:
    before, talk = sitting.state(), sitting.talk
    sitting.warm().join(30)
    assert (sitting.state(), sitting.talk) == (before, talk)
    assert list(sitting.log.record()) == []
