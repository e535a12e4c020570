"""The record: what was acknowledged is there, whatever happens; faults are one line and lose nothing."""

from __future__ import annotations

import itertools
import os
import random
import signal
import sqlite3
import sys
from collections.abc import Sequence
from datetime import UTC, datetime, timedelta, timezone
from fractions import Fraction
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest
from hypothesis import given, settings
from hypothesis import strategies as some

from assistant.core.quantities.amounts import Amount
from assistant.core.record import events as happened
from assistant.core.record.events import Away, Event, Recorded, RoundStarted, StayedWet, StepDone, Voided
from assistant.core.record.fold import FOLD_VERSION, fold_all, fold_knowing
from assistant.core.record.state import State
from assistant.store.log import Log, Overtaken, StoreFault
from assistant.store.migrations import APPLICATION_ID, VERSION

NOON = datetime(2026, 1, 5, 12, tzinfo=UTC)
STEPS = ("move out", "clear", "wash", "apply", "hold", "rinse", "dry", "air", "return")


def started(enclosure: str = "east tank") -> RoundStarted:
    return RoundStarted(enclosure, "sodium hypochlorite", STEPS, 600.0, 1.5, 4.6)


def done(step: str, enclosure: str = "east tank") -> StepDone:
    return StepDone(enclosure, step)


def record(log: Log, *events: Event, at: datetime = NOON) -> State:
    return log.append(events, log.next_turn(), at)


# ---------------------------------------------------------------- keeping and reading back


EVERY_EVENT: tuple[Event, ...] = (
    started(),
    StepDone("east tank", "apply", agent="sodium hypochlorite", bottle="orange bottle", hold_s=600.0, steps=STEPS),
    StayedWet("east tank"),
    happened.DriedEarly("east tank"),
    happened.StepReopened("east tank", "wash"),
    happened.Remarked("east tank", "the rock is damp underneath"),
    happened.KeptWet("east tank", "sodium hypochlorite"),
    happened.Sensed("east tank", smell=True, wet=None),
    happened.Paused("east tank"),
    happened.Resumed("east tank"),
    happened.CleanOnly("east tank", ("move out", "clear", "wash", "dry", "return")),
    happened.HoldDoubted("east tank"),
    happened.BackTooSoon("east tank"),
    happened.AgentTouched("east tank", "acetic acid"),
    happened.SurfaceRinsed("east tank", wiped=True),
    happened.SurfaceDried("east tank"),
    happened.WindowsOpened("east tank", 2, 2.3),
    happened.GasMade(("sodium hypochlorite", "acetic acid"), bottle="orange bottle"),
    happened.ChoreDone("east tank", "water", NOON - timedelta(hours=2)),
    happened.BottleMixed(
        "orange bottle",
        "sodium hypochlorite",
        stock="shed bleach",
        mix="1 in 65/2",
        total=Amount(Fraction(1), "imp pt"),
        concentrate=Amount(Fraction(40, 65), "imp fl oz"),
        left=Amount(Fraction(13, 10), "L"),
        kept_until=NOON + timedelta(hours=24),
        basis="published",
    ),
    happened.AgentPoured("orange bottle", "pine oil"),
    happened.AgentsMet("orange bottle", ("sodium hypochlorite", "chlorhexidine")),
    happened.BottleRinsed("orange bottle"),
    happened.BottleDoubted("blue bottle"),
    happened.BottleUnsettled("blue bottle"),
    happened.AnimalLoose("shelf box"),
    happened.AnimalFound("shelf box"),
    happened.TubUsed("square tub", "shelf box", "new"),
    happened.TubCleaned("square tub"),
    happened.TubUnclean("square tub"),
    happened.TubLeft("tub"),
    happened.GroupChanged("shelf box", "sick", "healthy", "mites"),
    happened.QuarantineRestarted("shelf box", "newcomer"),
    happened.HabitChanged("gallon", "imperial", "US"),
    happened.SprayerMeasured("amber", 0.9, None),
    happened.ItemBegun("branch", "bake", 7200.0, "shelf box"),
    happened.RinseBegun("eye", "person", 900.0),
    happened.RinseEnded("eye", "person"),
    happened.ClocksParted(3600.0, 1.7e9),
    happened.ClocksSettled("east tank", "hold", passed=True, offset_s=1.7e9),
    Away(NOON - timedelta(hours=1)),
    Voided("1"),
)


def test_every_kind_of_event_reads_back_as_it_was(tmp_path: Path) -> None:
    assert {type(event) for event in EVERY_EVENT} == set(happened.EVENTS), "a new kind needs its row here"
    with Log.open(tmp_path / "record") as log:
        for event in EVERY_EVENT:
            record(log, event)
        left = log.state()
    with Log.open(tmp_path / "record") as log:
        assert tuple(entry.event for entry in log.record()) == EVERY_EVENT
        assert all(entry.at == NOON for entry in log.record())
        assert log.state() == left


def test_the_state_row_is_the_full_fold(tmp_path: Path) -> None:
    with Log.open(tmp_path / "record") as log:
        for event in EVERY_EVENT[:-1]:
            record(log, event)
    with Log.open(tmp_path / "record") as log:
        assert log.state() == fold_all(log.record())


def test_times_are_kept_as_the_same_moment(tmp_path: Path) -> None:
    tokyo = NOON.astimezone(timezone(timedelta(hours=9)))
    with Log.open(tmp_path / "record") as log:
        record(log, started(), at=tokyo)
        assert log.record()[0].at == NOON
        assert log.record()[0].at.utcoffset() == timedelta(0)


def test_a_new_record_is_empty_and_nothing_appended_is_nothing(log: Log) -> None:
    assert log.append((), log.next_turn(), NOON) == State()
    assert log.record() == ()


def test_an_undo_takes_a_turn_out_of_the_present(log: Log) -> None:
    record(log, started())
    turn = log.next_turn()
    before = log.state()
    log.append([done("move out")], turn, NOON)
    after = record(log, Voided(turn))
    assert after.rounds == before.rounds
    assert len(log.record()) == 3


@settings(derandomize=True, deadline=None, max_examples=40)
@given(turns=some.lists(some.integers(1, 7), min_size=4, max_size=20), back=some.integers(1, 4))
def test_an_undo_after_the_record_was_folded_anew_is_the_same_as_from_the_whole(turns: list[int], back: int) -> None:
    """Turns of several events each, so that a checkpoint could fall inside one."""
    with pytest.MonkeyPatch.context() as patch, TemporaryDirectory() as folder:
        patch.setattr("assistant.store.log.CHECKPOINT_EVERY", 3)
        path = Path(folder) / "record"
        with Log.open(path) as log:
            record(log, started())
            for events in turns:
                record(log, *(done(STEPS[number]) for number in range(events)))
        _run(path, f"UPDATE state SET fold_version = {FOLD_VERSION - 1}")
        with Log.open(path) as log:
            for _ in range(back):
                record(log, Voided(log.state().turns[-1].turn))
                assert log.state() == fold_all(log.record())


@settings(derandomize=True, deadline=None, max_examples=60)
@given(steps=some.lists(some.integers(-12, 8), min_size=1, max_size=40))
def test_an_undo_from_a_checkpoint_is_the_same_as_from_the_whole_record(steps: list[int]) -> None:
    """A number below zero undoes the turn that many back; another does a step. Two shells take turns at it."""
    with pytest.MonkeyPatch.context() as patch, TemporaryDirectory() as folder:
        patch.setattr("assistant.store.log.CHECKPOINT_EVERY", 3)
        path = Path(folder) / "record"
        with Log.open(path) as one, Log.open(path) as other:
            record(one, started())
            for number, step in enumerate(steps):
                log = (one, other)[number % 2]
                turns = [turn.turn for turn in log.state().turns]
                if step >= 0:
                    record(log, done(STEPS[step]), at=NOON + timedelta(minutes=number))
                elif len(turns) >= -step:
                    record(log, Voided(turns[step]), at=NOON + timedelta(minutes=number))
                assert log.state() == fold_all(log.record())
            assert one.state() == other.state()
        with Log.open(path) as log:
            assert log.state() == fold_all(log.record())


@pytest.fixture
def folded(monkeypatch: pytest.MonkeyPatch) -> list[Recorded]:
    """Every event that is folded anew, with a checkpoint every ten."""
    monkeypatch.setattr("assistant.store.log.CHECKPOINT_EVERY", 10)
    anew: list[Recorded] = []

    def counted(state: State, entry: Recorded, undone: frozenset[str]) -> State:
        anew.append(entry)
        return fold_knowing(state, entry, undone)

    monkeypatch.setattr("assistant.store.log.fold_knowing", counted)
    return anew


def test_a_late_undo_does_not_go_through_the_whole_record(log: Log, folded: list[Recorded]) -> None:
    for _ in range(60):
        record(log, done("clear"))
    record(log, Voided("60"))
    assert 0 < len(folded) <= 20


def test_undoing_on_and_on_goes_as_far_back_as_it_must_and_no_further(log: Log, folded: list[Recorded]) -> None:
    for _ in range(400):
        record(log, done("clear"))
    for depth in range(1, 61):
        folded.clear()
        record(log, Voided(log.state().turns[-1].turn))
        assert len(folded) <= 4 * depth + 40
        assert log.state() == fold_all(log.record())


def test_turns_of_many_events_each_are_undone_without_the_whole_record(log: Log, folded: list[Recorded]) -> None:
    """ "All of them are washed", in two hundred enclosures."""
    for _ in range(30):
        record(log, *(done("clear", f"tub {number}") for number in range(200)))
    for depth in range(1, 6):
        folded.clear()
        record(log, Voided(log.state().turns[-1].turn))
        assert len(folded) <= 200 * (depth + 8), "of 30 turns"


def test_few_checkpoints_are_kept_however_long_the_record(tmp_path: Path, folded: list[Recorded]) -> None:
    with Log.open(tmp_path / "record") as log:
        for _ in range(600):
            record(log, done("clear"))
    assert len(_run(tmp_path / "record", "SELECT seq FROM checkpoints")) <= 8


def test_a_record_folded_anew_has_its_checkpoints_back(tmp_path: Path, folded: list[Recorded]) -> None:
    with Log.open(tmp_path / "record") as log:
        for _ in range(300):
            record(log, done("clear"))
        record(log, Voided("290"))
        wanted = log.state()
    _run(tmp_path / "record", "DELETE FROM checkpoints")
    _run(tmp_path / "record", f"UPDATE state SET fold_version = {FOLD_VERSION - 1}")
    with Log.open(tmp_path / "record") as log:
        assert log.state() == wanted
        folded.clear()
        record(log, Voided("300"))
        assert 0 < len(folded) <= 40
        assert log.state() == fold_all(log.record())


def test_when_a_shell_was_last_running_is_kept(tmp_path: Path) -> None:
    with Log.open(tmp_path / "record") as log:
        assert log.last_seen() is None
        log.touch(NOON)
        log.touch(NOON + timedelta(seconds=30))
    with Log.open(tmp_path / "record") as log:
        assert log.last_seen() == NOON + timedelta(seconds=30)


def test_a_state_row_of_another_fold_version_is_rebuilt(tmp_path: Path) -> None:
    with Log.open(tmp_path / "record") as log:
        wanted = record(log, started(), done("move out"))
    _run(tmp_path / "record", f"UPDATE state SET fold_version = {FOLD_VERSION + 1}, body = '{{}}'")
    with Log.open(tmp_path / "record") as log:
        assert log.state() == wanted
    assert _run(tmp_path / "record", "SELECT fold_version FROM state") == [(FOLD_VERSION,)]


@pytest.mark.parametrize(("long", "told"), [(1, True), (2, False)])
def test_folding_a_long_record_anew_is_told_of(
    long: int, told: bool, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("assistant.store.log.LONG_RECORD", long)
    with Log.open(tmp_path / "record") as log:
        record(log, started(), done("move out"))
    said: list[str] = []
    with Log.open(tmp_path / "record", tell=said.append):
        assert said == []
    _run(tmp_path / "record", f"UPDATE state SET fold_version = {FOLD_VERSION - 1}")
    with Log.open(tmp_path / "record", tell=said.append):
        assert bool(said) is told


def test_a_state_row_that_cannot_be_read_is_rebuilt(tmp_path: Path) -> None:
    with Log.open(tmp_path / "record") as log:
        wanted = record(log, started())
    _run(tmp_path / "record", "UPDATE state SET body = 'not json'")
    with Log.open(tmp_path / "record") as log:
        assert log.state() == wanted


def test_a_state_row_behind_the_events_catches_up(tmp_path: Path) -> None:
    with Log.open(tmp_path / "record") as log:
        record(log, started())
        stale = _run(tmp_path / "record", "SELECT last_seq, body FROM state")[0]
        wanted = record(log, done("move out"))
    _run(tmp_path / "record", "UPDATE state SET last_seq = ?, body = ?", stale)
    with Log.open(tmp_path / "record") as log:
        assert log.state() == wanted


def test_every_append_is_on_disk_before_it_returns(tmp_path: Path) -> None:
    """A kill can't show this, only a power cut could; so the settings themselves are looked at."""
    with Log.open(tmp_path / "record") as log:
        settings = {
            name: log._database.execute(f"PRAGMA {name}").fetchone()[0]
            for name in ("journal_mode", "synchronous", "fullfsync", "busy_timeout")
        }
    assert settings == {"journal_mode": "wal", "synchronous": 2, "fullfsync": 1, "busy_timeout": 5000}


# ---------------------------------------------------------------- two shells at once


def test_two_shells_on_one_record_see_each_others_events(tmp_path: Path) -> None:
    with Log.open(tmp_path / "record") as one, Log.open(tmp_path / "record") as other:
        record(one, started())
        assert "east tank" in other.state().rounds
        record(other, started("pond tub"))
        record(other, Voided("1"))
        assert set(one.state().rounds) == {"pond tub"}
        assert one.state() == other.state() == fold_all(one.record())


def test_an_append_that_was_overtaken_writes_nothing(tmp_path: Path) -> None:
    with Log.open(tmp_path / "record") as one, Log.open(tmp_path / "record") as other:
        turn = one.next_turn()
        record(other, started())
        with pytest.raises(Overtaken):
            one.append([started("pond tub")], turn, NOON)
        assert len(other.record()) == 1
        one.state()
        record(one, started("pond tub"))
        assert set(other.state().rounds) == {"east tank", "pond tub"}


def test_no_two_turns_share_a_name(tmp_path: Path) -> None:
    with Log.open(tmp_path / "record") as one, Log.open(tmp_path / "record") as other:
        for log in (one, other, other, one):
            log.state()
            record(log, started(), done("move out"))
        turns = [entry.turn for entry in one.record()]
    assert len(set(turns)) == 4
    assert all(turns[i] == turns[i + 1] for i in range(0, 8, 2))


# ---------------------------------------------------------------- killed in the middle


@pytest.mark.skipif(not hasattr(os, "fork"), reason="needs fork")
def test_everything_acknowledged_survives_being_killed(tmp_path: Path) -> None:
    _kill_often(tmp_path, times=30, seed=1)


@pytest.mark.slow
@pytest.mark.skipif(not hasattr(os, "fork"), reason="needs fork")
def test_everything_acknowledged_survives_being_killed_many_times(tmp_path: Path) -> None:
    for seed in range(20):  # a record of its own each, since every kill is checked against the whole of it
        (tmp_path / str(seed)).mkdir()
        _kill_often(tmp_path / str(seed), times=50, seed=seed)


def _kill_often(folder: Path, times: int, seed: int) -> None:
    chance = random.Random(seed)
    path, acknowledged = folder / "record", 0
    for _ in range(times):
        acknowledged += _appended_until_killed(path, after=chance.randrange(1, 12))
        with Log.open(path) as log:
            turns = [entry.turn for entry in log.record()]
            assert log.state() == fold_all(log.record())
        assert len(turns) % 2 == 0, "a turn's two events came apart"
        assert len(turns) // 2 >= acknowledged, "a turn that was acknowledged is gone"
        acknowledged = len(turns) // 2  # the last may be on disk with its word of it lost in the pipe
    assert _run(path, "PRAGMA integrity_check") == [("ok",)]


def _appended_until_killed(path: Path, after: int) -> int:
    """Turns that a child acknowledged before it was killed, just after so many of them."""
    reading, writing = os.pipe()
    child = os.fork()
    if child == 0:
        try:
            with Log.open(path) as log:
                for event in itertools.cycle(event for event in EVERY_EVENT if not isinstance(event, Voided)):
                    record(log, started(), event)
                    os.write(writing, b".")
        finally:
            os._exit(1)
    os.close(writing)
    counted = 0
    while counted < after:
        counted += len(os.read(reading, after))
    os.kill(child, signal.SIGKILL)
    os.waitpid(child, 0)
    while more := os.read(reading, 4096):
        counted += len(more)
    os.close(reading)
    return counted


# ---------------------------------------------------------------- faults


def test_a_full_disk_is_one_line_and_loses_nothing(tmp_path: Path) -> None:
    with Log.open(tmp_path / "record") as log:
        acknowledged = [record(log, started())]
        pages = log._database.execute("PRAGMA page_count").fetchone()[0]
        log._database.execute(f"PRAGMA max_page_count = {pages}")
        with pytest.raises(StoreFault, match=r"record: the disk is full; make room; nothing was recorded$"):
            _record_on_and_on(log, acknowledged)
        assert len(acknowledged) == len(log.record())
        assert log.state() == acknowledged[-1] == fold_all(log.record())
        log._database.execute(f"PRAGMA max_page_count = {pages + 100}")
        record(log, done("clear"))
    with Log.open(tmp_path / "record") as log:
        assert log.record()[-1].event == done("clear")
        assert log.state() == fold_all(log.record())


@pytest.mark.skipif(sys.platform == "win32", reason="no limit on file sizes there")
def test_a_write_that_the_system_cuts_short_is_one_line_and_loses_nothing(tmp_path: Path) -> None:
    """The nearest thing to a full disk that needs no disk: the system refuses to let the file grow."""
    import resource

    path = tmp_path / "record"
    with Log.open(path) as log:
        acknowledged = [record(log, started())]
        was = resource.getrlimit(resource.RLIMIT_FSIZE)
        ignored = signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
        resource.setrlimit(resource.RLIMIT_FSIZE, (path.with_name("record-wal").stat().st_size + 5000, was[1]))
        try:
            with pytest.raises(StoreFault, match=r"disk .*; nothing was recorded$"):
                _record_on_and_on(log, acknowledged)
        finally:
            resource.setrlimit(resource.RLIMIT_FSIZE, was)
            signal.signal(signal.SIGXFSZ, ignored)
    with Log.open(path) as log:
        assert len(acknowledged) == len(log.record())
        assert log.state() == fold_all(log.record())


def test_a_record_of_a_newer_version_is_left_as_it_is(tmp_path: Path) -> None:
    with Log.open(tmp_path / "record") as log:
        record(log, started())
    _run(tmp_path / "record", f"PRAGMA user_version = {VERSION + 1}")
    before = (tmp_path / "record").read_bytes()
    with pytest.raises(StoreFault, match=r"newer version of rinseback and was left as it is; update rinseback"):
        Log.open(tmp_path / "record")
    assert (tmp_path / "record").read_bytes() == before


def test_an_event_of_a_newer_version_is_named_and_nothing_is_dropped(tmp_path: Path) -> None:
    with Log.open(tmp_path / "record") as log:
        record(log, started())
    _run(tmp_path / "record", "INSERT INTO events (at, turn, kind, body) VALUES ('2026-01-05', '9', 'Moulted', '{}')")
    with pytest.raises(StoreFault, match=r"event 2 is of a kind this version doesn't know \(Moulted\)"):
        Log.open(tmp_path / "record")


def test_a_file_that_is_no_record_is_left_as_it_is(tmp_path: Path) -> None:
    (tmp_path / "record").write_bytes(b"a shopping list, long enough to be looked at as a file header" * 40)
    with pytest.raises(StoreFault, match="this is not a record of rinseback's"):
        Log.open(tmp_path / "record")
    assert (tmp_path / "record").read_bytes().startswith(b"a shopping list")


def test_another_programs_database_is_left_as_it_is(tmp_path: Path) -> None:
    _run(tmp_path / "record", "CREATE TABLE events (title TEXT)")
    with pytest.raises(StoreFault, match="another program's database and was left as it is"):
        Log.open(tmp_path / "record")
    assert _run(tmp_path / "record", "SELECT name FROM sqlite_master") == [("events",)]


def test_a_folder_that_is_not_there_is_one_line(tmp_path: Path) -> None:
    with pytest.raises(StoreFault, match="can't be opened; make its folder writable"):
        Log.open(tmp_path / "nowhere" / "record")


@pytest.mark.skipif(os.name == "nt" or os.geteuid() == 0, reason="permissions don't bind this user")
def test_a_read_only_folder_is_one_line(tmp_path: Path) -> None:
    tmp_path.chmod(0o500)
    try:
        with pytest.raises(StoreFault, match="nothing was recorded"):
            Log.open(tmp_path / "record")
    finally:
        tmp_path.chmod(0o700)


def test_a_record_that_may_only_be_read_is_one_line(tmp_path: Path) -> None:
    with Log.open(tmp_path / "record") as log:
        record(log, started())
        log._database.execute("PRAGMA query_only = ON")  # what a read-only file answers, for any user
        with pytest.raises(StoreFault, match="read-only; make it writable"):
            record(log, done("move out"))
        assert len(log.record()) == 1


def test_a_record_that_another_program_keeps_locked_is_one_line(tmp_path: Path) -> None:
    with Log.open(tmp_path / "record") as log:
        log._database.execute("PRAGMA busy_timeout = 1")
        other = sqlite3.connect(tmp_path / "record", isolation_level=None)
        other.execute("BEGIN EXCLUSIVE")
        with pytest.raises(StoreFault, match="another program keeps it locked"):
            record(log, started())
        other.execute("ROLLBACK")
        other.close()
        record(log, started())


def test_our_files_carry_our_mark(tmp_path: Path) -> None:
    Log.open(tmp_path / "record").close()
    assert _run(tmp_path / "record", "PRAGMA application_id") == [(APPLICATION_ID,)]


def _record_on_and_on(log: Log, acknowledged: list[State]) -> None:
    for _ in range(200):
        acknowledged.append(record(log, done("move out")))


def _run(path: Path, statement: str, values: Sequence[object] = ()) -> list[tuple[object, ...]]:
    database = sqlite3.connect(path, isolation_level=None)
    try:
        return database.execute(statement, values).fetchall()
    finally:
        database.close()
