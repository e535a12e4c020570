"""A microphone that goes away and comes back, with a stand-in for the program that records."""

from __future__ import annotations

import json
import subprocess
import sys
import threading
from dataclasses import dataclass
from pathlib import Path

import pytest

from assistant.hear import microphone
from assistant.hear.microphone import PIECE, Back, Lost, Microphone
from assistant.hear.recogniser import BYTES_A_SAMPLE, CannotListen

RECORDS = """
import json, pathlib, sys, time
acts = json.loads(pathlib.Path(sys.argv[1]).read_text())
print(json.dumps(acts["fault"]), flush=True)
if not acts["fault"]:
    sys.stdout.buffer.write(bytes(acts["bytes"]))
    sys.stdout.flush()
    sys.stdin.read() if acts["stays"] else None
"""
"""Tells its fault, or gives so much sound and then none."""


@dataclass(frozen=True)
class Device:
    """What the stand-in does when it is next started."""

    acts: Path

    def set(self, pieces: int = 3, *, stays: bool = True, fault: dict[str, str] | None = None) -> None:
        sound = pieces * PIECE * BYTES_A_SAMPLE
        self.acts.write_text(json.dumps({"bytes": sound, "stays": stays, "fault": fault or {}}))

    @property
    def command(self) -> tuple[str, ...]:
        return (sys.executable, "-c", RECORDS, str(self.acts))


@pytest.fixture
def device(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> Device:
    made = Device(tmp_path / "acts.json")
    made.set()
    monkeypatch.setattr(microphone, "NEXT_S", 0.05)
    monkeypatch.setattr(microphone, "TRIES_EVERY_S", 0.01)
    return made


@pytest.mark.parametrize("stays", [True, False], ids=["falls silent", "its program ends"])
def test_no_more_sound_is_told_and_it_is_tried_again_until_it_is_back(device: Device, stays: bool) -> None:
    device.set(stays=stays)
    listener = Microphone(source=lambda: None, command=device.command)
    came = []
    for piece in listener.listen():
        came.append(type(piece))
        if came.count(Back) == 1:
            listener.close()
    assert came == [bytes, bytes, bytes, Lost, Back]


def test_one_that_is_gone_and_one_without_sound_are_not_taken_for_its_return(
    device: Device, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(microphone, "FIRST_S", 0.5)
    listener = Microphone(source=lambda: None, command=device.command)
    acts = iter([{"fault": {"what": "none", "where": "there", "fix": "plug one in"}}, {"pieces": 0}, {"pieces": 1}])
    tries = []

    def ours() -> bool:
        act = next(acts)
        tries.append(act)
        device.set(**act)
        return True

    monkeypatch.setattr(listener, "_ours", ours)
    for piece in listener.listen():
        if isinstance(piece, Back):
            listener.close()
    assert len(tries) == 3


def test_another_source_in_its_place_is_a_loss(device: Device) -> None:
    device.set(200)
    sources = iter(["mic", "mic", "room.monitor", "room.monitor", "mic", "mic", "mic", "mic", "mic", "mic"])
    listener = Microphone(source=lambda: next(sources), command=device.command)
    came = []
    for piece in listener.listen():
        came.append(piece)
        if isinstance(piece, Back):
            listener.close()
    losses = [piece for piece in came if isinstance(piece, Lost)]
    assert losses == [Lost("the system put another source in its place")]
    assert came.index(losses[0]) == 99, "it listened on to the wrong source"


def test_none_to_begin_with_is_one_line(device: Device) -> None:
    device.set(fault={"what": "no such device", "where": "left one", "fix": "see `rinseback check`"})
    with pytest.raises(CannotListen, match="no such device"):
        next(Microphone(command=device.command).listen())


def test_a_program_that_dies_or_isnt_there_is_one_line() -> None:
    with pytest.raises(CannotListen, match="the program that records stopped"):
        next(Microphone(command=(sys.executable, "-c", "")).listen())
    with pytest.raises(CannotListen, match="doesn't start"):
        next(Microphone(command=("/no/such/program",)).listen())


def test_closing_ends_it_from_another_thread(device: Device, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(microphone, "NEXT_S", 0.3)
    listener = Microphone(source=lambda: None, command=device.command)
    ended = threading.Event()

    def listen() -> None:
        for _ in listener.listen():
            threading.Thread(target=listener.close).start()
        ended.set()

    threading.Thread(target=listen, daemon=True).start()
    assert ended.wait(5)


def test_the_program_that_records_ends_with_the_one_that_listens(tmp_path: Path) -> None:
    """Even while its device gives no sound at all."""
    (tmp_path / "sounddevice.py").write_text(
        "import time\n"
        "class PortAudioError(Exception): pass\n"
        "class RawInputStream:\n"
        "    def __init__(self, **settings): print('a library that prints')\n"
        "    def start(self): pass\n"
        "    def read(self, size): time.sleep(1000)\n"
    )
    paths = f"{tmp_path}:{Path(__file__).resolve().parents[3]}"
    program = subprocess.Popen(
        (sys.executable, "-m", "assistant.hear.microphone_worker"),
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        env={"PYTHONPATH": paths},
    )
    assert program.stdin is not None
    assert program.stdout is not None
    with program.stdout as told:
        assert json.loads(told.readline()) == {}
        program.stdin.close()
        assert program.wait(timeout=10) == 0
