"""Rehearsals: the script's lines, its clock, and what comes due while the clock moves."""

from __future__ import annotations

from pathlib import Path

import pytest

from assistant.shells.rehearse import latest

from .conftest import Command, Ran

UP_TO_SPRAYED = "start east tank\nmoved out\ncleared\nwashed\nsprayed\n"


def rehearsed(run: Command, script: str, *options: str) -> Ran:
    path = run.home / "script.txt"
    path.write_text(script, encoding="utf-8")
    return run("rehearse", str(path), *options)


def test_comments_blank_lines_and_clock_lines_print_no_json(run: Command) -> None:
    ran = rehearsed(run, "# a comment\n\n@2026-05-04T09:00\n+1w2d3h4m5s\n+ 1m\n+-30m\nstatus\n", "--json")
    assert (ran.code, len(ran.replies)) == (0, 1)


def test_nothing_is_left_behind(run: Command) -> None:
    before = sorted(path.name for path in run.home.iterdir())
    rehearsed(run, UP_TO_SPRAYED)
    assert sorted(path.name for path in run.home.iterdir()) == [*before, "script.txt"]


def test_the_clock_starts_on_a_monday_morning_in_utc_unless_the_script_says_otherwise(run: Command) -> None:
    script = UP_TO_SPRAYED + "return_check\n"
    assert "[2026-01-05 09:00:00] > sprayed" in rehearsed(run, script).out
    assert "[2026-05-04 07:30:00] > sprayed" in rehearsed(run, "@2026-05-04T07:30\n" + script).out
    first, moved, zoned = (
        rehearsed(run, top + script, "--json").replies[-1]["values"]["earliest"]
        for top in ("", "@2026-01-05T10:00\n", "@2026-01-05T09:00+02:00\n")
    )
    assert first.startswith("2026-01-05T")
    assert first.endswith("+00:00")
    assert moved != first
    assert zoned.endswith("+02:00")


def test_one_move_of_the_clock_is_as_good_as_many(run: Command) -> None:
    once = rehearsed(run, UP_TO_SPRAYED + "+9m30s\ntime_left\n", "--json").replies[-1]["values"]
    often = rehearsed(run, UP_TO_SPRAYED + "+9m\n+10s\n+1m\n+-40s\ntime_left\n", "--json").replies[-1]["values"]
    assert once == often
    assert once["seconds"] == 30


def test_what_comes_due_is_kept_for_the_next_reply(run: Command) -> None:
    replies = rehearsed(run, UP_TO_SPRAYED + "+10m\n+1m\nstatus\nstatus\n", "--json").replies
    assert [len(reply["reminders"]) for reply in replies[-2:]] == [2, 0]  # half-way, and at its end
    assert "East tank: wet time is over" in replies[-2]["reminders"][1]


def test_what_comes_due_is_shown_at_its_time(run: Command) -> None:
    lines = rehearsed(run, UP_TO_SPRAYED + "+25m\nstatus\n").out.splitlines()
    at = lines.index("[2026-01-05 09:10:00]")
    assert lines[at + 1].startswith("East tank: wet time is over")
    assert sum("wet time is over" in line for line in lines) == 1


def test_a_reminder_may_be_answered_like_any_question(run: Command) -> None:
    reply = rehearsed(run, UP_TO_SPRAYED + "+10m\nyes\n", "--json").replies[-1]
    assert (reply["intent"], reply["values"]["recorded"], reply["values"]["steps"]) == ("done", True, ["hold"])


def test_reminders_come_one_after_the_other_however_long_the_move(run: Command) -> None:
    """An animal in its tub is asked after every 45 minutes, as the tests' household has it."""
    ran = rehearsed(run, "start east tank\nmoved out\n+3h\nstatus\n")
    stamps = [line for line in ran.out.splitlines() if line.startswith("[") and ">" not in line]
    assert stamps == [f"[2026-01-05 {at}:00]" for at in ("09:45", "10:30", "11:15", "12:00")]


def test_a_jump_is_as_if_the_program_had_not_run(run: Command) -> None:
    """Nobody was watched keeping it wet, so a wet time that ended meanwhile must be vouched for."""
    script = UP_TO_SPRAYED + "{}\nrinsed\n"
    watched = rehearsed(run, script.format("+5m\n+6m"), "--json").replies[-1]
    unwatched = rehearsed(run, script.format("+5m\n@2026-01-05T09:11"), "--json").replies[-1]
    assert watched["reminders"]
    assert unwatched["values"]["recorded"] is False


def test_a_jump_forgets_the_pending_question(run: Command) -> None:
    reply = rehearsed(run, "start\n@2026-01-05T09:00:10\nyes\n", "--json").replies[-1]
    assert reply["outcome"] == "unsure"


def test_a_clock_set_back_takes_nothing_away(run: Command) -> None:
    replies = rehearsed(run, UP_TO_SPRAYED + "+-30m\ntime_left\n+40m\ntime_left\n", "--json").replies
    assert replies[-2]["values"]["seconds"] == 600


@pytest.mark.parametrize(
    ("line", "says"),
    [
        ("+9", '"+9" moves no clock'),
        ("+9x", '"+9x" moves no clock'),
        ("+", '"+" moves no clock'),
        ("+99999999w", "more than ten years"),
        ("@noon", '"@noon" sets no clock'),
        ("@1066-10-14T09:00", "sets no clock"),
    ],
)
def test_a_clock_line_that_cannot_be_read_is_named(run: Command, line: str, says: str) -> None:
    ran = rehearsed(run, f"# first\nstatus\n{line}\n")
    assert ran.code == 2
    assert ran.err.count("\n") == 1
    assert "script.txt, line 3: " in ran.err
    assert says in ran.err


def test_a_script_that_is_not_utf8_is_named_with_its_line(run: Command) -> None:
    path = run.home / "script.txt"
    path.write_bytes(b"status\ncaf\xe9\n")
    ran = run("rehearse", str(path))
    assert ran.code == 2
    assert "line 2: this isn't UTF-8 text" in ran.err


def test_a_script_may_come_from_stdin(run: Command) -> None:
    ran = run("rehearse", "-", "--json", stdin=b"status\r\nstatus\r\n")
    assert len(ran.replies) == 2


def test_the_demo_household_can_be_rehearsed(run: Command, tmp_path: Path) -> None:
    (tmp_path / "script.txt").write_text("start river tank\n", encoding="utf-8")
    assert "River tank" in run("rehearse", str(tmp_path / "script.txt"), "--demo").out


def test_of_what_is_told_again_with_a_longer_time_only_the_latest_is_given() -> None:
    waits = "Oak box: the gecko has waited {} minutes in the tub."
    told = (waits.format(60), "Eye: keep rinsing.", waits.format(120), "Eye: keep rinsing.", waits.format(180))
    assert latest(told) == ("Eye: keep rinsing.", "Eye: keep rinsing.", waits.format(180))
