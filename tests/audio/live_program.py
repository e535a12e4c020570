"""The whole program, running in the room of `sound_room`: what is said goes in, its replies come out."""

from __future__ import annotations

import json
import queue
import subprocess
import sys
import threading
import time
from pathlib import Path
from typing import Any

import pytest
from audio.sound_room import SoundRoom, wait_for

DEMO = Path(__file__).resolve().parents[2] / "assistant" / "demo" / "keeping.toml"
CALL = "marigold lantern"


class Live:
    """`rinseback --voice --json`, running in the room."""

    def __init__(self, room: SoundRoom, home: Path, *options: str) -> None:
        home.mkdir(exist_ok=True)
        kept = DEMO.read_text("utf-8").replace("[habits]\n", f'[habits]\ncall_word = "{CALL}"\n')
        (home / "keeping.toml").write_text(kept, "utf-8")
        self.room = room
        self.replies: queue.Queue[dict[str, Any]] = queue.Queue()
        self.complaints: list[str] = []
        command = [sys.executable, "-m", "assistant", "chat", "--voice", "--json", "--home", str(home), *options]
        self._program = subprocess.Popen(
            command, env=room.environment, stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.PIPE
        )
        self._reading = [threading.Thread(target=read, daemon=True) for read in (self._read, self._complain)]
        for reading in self._reading:
            reading.start()

    @property
    def pid(self) -> int:
        return self._program.pid

    def _read(self) -> None:
        assert self._program.stdout is not None
        for line in self._program.stdout:
            self.replies.put(json.loads(line))

    def _complain(self) -> None:
        assert self._program.stderr is not None
        for line in self._program.stderr:
            if line.startswith(b"rinseback:"):
                self.complaints.append(line.decode())

    def ready(self) -> None:
        """Listening: the first sound has come, how silent the room is is known, and what loads ahead is loaded."""
        wait_for(lambda: any("listening" in line for line in self.complaints), 30, "the program to listen")
        time.sleep(2.0)

    def reply(self, seconds: float = 10) -> dict[str, Any]:
        try:
            return self.replies.get(timeout=seconds)
        except queue.Empty:
            raise AssertionError(f"no reply; it complains: {self.complaints}") from None

    def no_reply(self, seconds: float = 2.5) -> None:
        with pytest.raises(queue.Empty):
            self.replies.get(timeout=seconds)

    def type(self, text: str) -> None:
        assert self._program.stdin is not None
        self._program.stdin.write(f"{text}\n".encode())
        self._program.stdin.flush()

    def close(self) -> None:
        self._program.kill()
        self._program.wait()
        for reading in self._reading:
            reading.join()
        for pipe in (self._program.stdin, self._program.stdout, self._program.stderr):
            assert pipe is not None
            pipe.close()

    def __enter__(self) -> Live:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()
