"""The command line: exit codes, what goes to stdout, and one line on stderr for everything that can't be done."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from assistant.store.log import Log, StoreFault

from .conftest import Command

AT = ("--at", "2026-01-05T09:00+00:00")
PROGRAM = [sys.executable, "-m", "assistant"]


def one_line(text: str) -> bool:
    return text.startswith("rinseback: ") and text.count("\n") == 1 and "Traceback" not in text


# ---------------------------------------------------------------- exit codes and stdout


def test_an_answer_exits_with_nought(run: Command) -> None:
    ran = run("ask", "start east tank", *AT)
    assert (ran.code, ran.err) == (0, "")
    assert "East tank" in ran.out


def test_a_question_asked_back_exits_with_nought(run: Command) -> None:
    ran = run("ask", "start", "--json", *AT)
    assert (ran.code, ran.replies[0]["outcome"]) == (0, "ask")


def test_what_is_not_understood_exits_with_two(run: Command) -> None:
    ran = run("ask", "tell me a story", "--json", *AT)
    assert (ran.code, ran.replies[0]["outcome"], ran.replies[0]["intent"]) == (2, "unsure", None)


def test_a_refusal_exits_with_three(run: Command) -> None:
    ran = run("ask", "wound", "--json", *AT)
    assert (ran.code, ran.replies[0]["outcome"]) == (3, "refuse")


def test_json_is_one_line_on_stdout_and_nothing_else(run: Command) -> None:
    ran = run("ask", "status", "--json", *AT)
    assert ran.out.count("\n") == 1
    assert ran.err == ""
    assert list(ran.replies[0]) == [
        "question",
        "intent",
        "outcome",
        "say",
        "show",
        "values",
        "missing",
        "cautions",
        "sources",
        "reminders",
        "confidence",
    ]


def test_what_was_recorded_carries_over_to_the_next_start(run: Command) -> None:
    for text in ("start east tank", "moved out"):
        assert run("ask", text, *AT).code == 0
    with Log.open(run.home / "record.sqlite") as log:
        assert set(log.state().rounds["east tank"].done) == {"move out"}


def test_a_pending_question_does_not_carry_over_to_the_next_start(run: Command) -> None:
    assert run("ask", "start", "--json", *AT).replies[0]["outcome"] == "ask"
    assert run("ask", "yes", "--json", *AT).replies[0]["outcome"] == "unsure"


# ---------------------------------------------------------------- ask -


def test_every_line_of_stdin_gets_one_reply_a_blank_one_too(run: Command) -> None:
    ran = run("ask", "-", "--json", *AT, stdin=b"start east tank\n\nnonsense\r\nmoved out")
    assert ran.code == 0
    assert [reply["outcome"] for reply in ran.replies] == ["answer", "unsure", "unsure", "answer"]
    assert [reply["question"] for reply in ran.replies] == ["start east tank", "", "nonsense", "moved out"]


def test_lines_of_stdin_stand_alone_but_for_what_is_recorded(run: Command) -> None:
    ran = run("ask", "-", "--json", *AT, stdin=b"start\nyes\nstart east tank\nmoved out\n")
    assert [reply["outcome"] for reply in ran.replies] == ["ask", "unsure", "answer", "answer"]


def test_no_lines_get_no_replies(run: Command) -> None:
    ran = run("ask", "-", "--json", *AT)
    assert (ran.code, ran.out) == (0, "")


def test_a_line_that_is_not_utf8_is_complained_of_and_never_guessed(run: Command) -> None:
    ran = run("ask", "-", "--json", *AT, stdin=b"\xef\xbb\xbfstatus\nrins\xe9d\nstatus\n")
    assert one_line(ran.err)
    assert "line 2 of the input isn't UTF-8" in ran.err
    assert [reply["intent"] for reply in ran.replies] == ["status", None, "status"]


# ---------------------------------------------------------------- faults, one line each


@pytest.mark.parametrize(
    ("arguments", "says"),
    [
        (("ask",), "the following arguments are required: TEXT"),
        (("ask", "status", "--at", "tomorrow"), '"tomorrow" is no time known here'),
        (("ask", "status", "--at", "0001-01-01T00:00"), "is no time known here"),
        (("ask", "status", "--at", "9999-12-31T23:59"), "is no time known here"),
        (("ask", "status", "--loudly"), "unrecognized arguments: --loudly"),
        (("clean",), "invalid choice: 'clean'"),
        (("rehearse", "nowhere.txt"), "nowhere.txt: no such file"),
        (("rehearse", "."), ".: is a directory"),
    ],
)
def test_a_wrong_call_is_one_line_and_exits_with_two(run: Command, arguments: tuple[str, ...], says: str) -> None:
    ran = run(*arguments)
    assert ran.code == 2
    assert ran.out == ""
    assert one_line(ran.err), ran.err
    assert says in ran.err


def test_a_broken_household_is_one_line_that_names_its_line(run: Command) -> None:
    (run.home / "keeping.toml").write_text('[[bottle]]\nname = "a"\ncapacity = "500 ML"\n', encoding="utf-8")
    ran = run("ask", "status")
    assert (ran.code, ran.out) == (2, "")
    assert one_line(ran.err)
    assert "keeping.toml, line 3: " in ran.err


def test_a_home_that_cannot_be_made_is_one_line(run: Command) -> None:
    run.home = run.home / "keeping.toml" / "below a file"
    ran = run("ask", "status")
    assert ran.code == 2
    assert one_line(ran.err)
    assert "not a directory; choose another folder with --home" in ran.err


def test_a_home_that_is_missing_is_made(run: Command) -> None:
    run.home = run.home / "new" / "one"
    assert run("ask", "status", *AT).code == 0
    assert (run.home / "record.sqlite").exists()


def test_a_record_that_is_none_is_one_line_and_there_is_no_reply(run: Command) -> None:
    (run.home / "record.sqlite").write_bytes(b"not a record at all, but long enough to look like one" * 30)
    ran = run("ask", "status")
    assert (ran.code, ran.out) == (2, "")
    assert one_line(ran.err)


def test_when_recording_fails_there_is_no_reply(run: Command, monkeypatch: pytest.MonkeyPatch) -> None:
    assert run("ask", "start east tank", *AT).code == 0
    recorded = _events(run)

    def full(log: Log, *_: object) -> None:
        raise StoreFault("record.sqlite: the disk is full; make room; nothing was recorded")

    monkeypatch.setattr(Log, "append", full)
    ran = run("ask", "moved out", *AT)
    assert (ran.code, ran.out) == (2, "")
    assert one_line(ran.err)
    assert "the disk is full" in ran.err
    monkeypatch.undo()
    assert _events(run) == recorded


def _events(run: Command) -> int:
    with Log.open(run.home / "record.sqlite") as log:
        return len(log.record())


# ---------------------------------------------------------------- as a process of its own


def test_help_lists_the_commands() -> None:
    ran = subprocess.run([*PROGRAM, "--help"], capture_output=True, text=True, check=True)
    for command in ("chat", "ask", "hear", "rehearse", "check"):
        assert command in ran.stdout


def test_the_version_is_the_packages() -> None:
    from importlib.metadata import version

    ran = subprocess.run([*PROGRAM, "--version"], capture_output=True, text=True, check=True)
    assert ran.stdout.split() == ["rinseback", version("rinseback")]


def test_a_reader_that_left_is_no_fault(tmp_path: Path) -> None:
    reading, writing = os.pipe()
    os.close(reading)
    try:
        ran = subprocess.run(
            [*PROGRAM, "ask", "help", "--home", str(tmp_path)], stdout=writing, stderr=subprocess.PIPE, check=False
        )
    finally:
        os.close(writing)
    assert ran.stderr == b""


@pytest.mark.skipif(os.name == "nt", reason="no shell to close a stream with")
@pytest.mark.parametrize(
    ("call", "code"),
    [
        ("ask - <&-", 0),
        ("chat <&-", 0),
        ("rehearse - <&-", 0),
        ("ask help >&-", 0),
        ("ask help --at never 2>&-", 2),
    ],
)
def test_a_stream_that_the_caller_closed_is_no_fault(call: str, code: int, tmp_path: Path) -> None:
    command = f"'{sys.executable}' -m assistant {call} --home '{tmp_path}'"
    ran = subprocess.run(["sh", "-c", command], capture_output=True, check=False)
    assert ran.returncode == code, ran.stderr
    assert b"Traceback" not in ran.stderr


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="no device that is always full")
def test_an_output_that_is_full_is_one_line(tmp_path: Path) -> None:
    with open("/dev/full", "wb") as full:
        ran = subprocess.run(
            [*PROGRAM, "ask", "help", "--home", str(tmp_path)],
            stdout=full,
            stderr=subprocess.PIPE,
            text=True,
            check=False,
        )
    assert ran.returncode == 2
    assert one_line(ran.stderr)


# ---------------------------------------------------------------- recordings that can't be used


@pytest.mark.parametrize(
    ("content", "what"),
    [(b"", "empty"), (b"RIFF", "WAV"), (b"not a recording at all, but text", "WAV"), (None, "no such file")],
)
def test_a_recording_that_cannot_be_used_is_one_line(
    content: bytes | None, what: str, run: Command, tmp_path: Path
) -> None:
    path = tmp_path / "clip.wav"
    if content is not None:
        path.write_bytes(content)
    ran = run("hear", str(path), *AT)
    assert ran.code == 2
    assert one_line(ran.err)
    assert what in ran.err
    assert "clip.wav" in ran.err


def test_speech_cannot_go_where_nothing_may_be_written(run: Command, tmp_path: Path) -> None:
    ran = run("ask", "status", "--say-to", str(tmp_path / "no" / "such" / "reply.wav"), *AT)
    assert ran.code == 2
    assert one_line(ran.err)


def test_many_lines_cannot_go_to_one_sound_file(run: Command, tmp_path: Path) -> None:
    ran = run("ask", "-", "--say-to", str(tmp_path / "reply.wav"), *AT)
    assert ran.code == 2
    assert one_line(ran.err)
