"""The walk of docs/first-ten-minutes.md, played again: what is typed there, and what comes out.

python tests/shape/first_ten_minutes.py      # writes the outputs into the document anew; read the diff
"""

from __future__ import annotations

import contextlib
import io
import re
import sys
import tempfile
from pathlib import Path
from unittest.mock import patch

from assistant.shells.cli import main

WALK = Path(__file__).parents[2] / "docs" / "first-ten-minutes.md"
SHOWN_HOME = "~/.local/share/rinseback"
AT = "2026-01-05T09:00"
_BLOCK = re.compile(r"(?<=```text\n).*?(?=```)", re.S)


def blocks(text: str) -> list[str]:
    """What was recorded: the setup, the chat, the labels."""
    return _BLOCK.findall(text)


def played(recorded: list[str]) -> list[str]:
    """The same blocks as they come out now, from what is typed in them."""
    with tempfile.TemporaryDirectory() as folder:
        home = Path(folder)
        answers = [
            line.rpartition(" > ")[2] if " > " in line else "" for line in recorded[0].splitlines() if " >" in line
        ]
        setup = _run(["setup", "--home", folder, "--at", AT], "\n".join(answers) + "\n")
        turns = [line.removeprefix("> ") for line in recorded[1].splitlines() if line.startswith(("> ", "+"))]
        (home / "walk.txt").write_text("\n".join(turns) + "\n", encoding="utf-8")
        chat = _run(["rehearse", str(home / "walk.txt"), "--home", folder])
        labels = _run(["labels", "--home", folder, "--to", str(home / "labels.pdf"), "--at", AT])
        return [text.replace(folder, SHOWN_HOME) for text in (_trimmed(setup), _as_chat(chat, turns), labels)]


def _trimmed(setup: str) -> str:
    return "\n".join(line.rstrip() for line in setup.splitlines()) + "\n"


def _as_chat(rehearsed: str, turns: list[str]) -> str:
    """A rehearsal as a chat shows it: the turn, the reply; how the clock moved stands on a line of its own."""
    moves = iter(turn for turn in turns if turn.startswith("+"))
    lines: list[str] = []
    waited = False
    for line in rehearsed.strip().splitlines():
        stamp = re.match(r"\[[^\]]*\](?: > (.*))?$", line)
        if stamp is None:
            lines.append(line)
        elif stamp[1] is not None:
            waited = False
            lines.append(f"> {stamp[1]}")
        elif not waited:
            waited = True
            lines.append(next(moves))
    return re.sub(r"\n\n+", "\n", "\n".join(lines)) + "\n"


def _run(arguments: list[str], typed: str = "") -> str:
    out = io.StringIO()
    with contextlib.redirect_stdout(out), patch.object(sys, "stdin", io.TextIOWrapper(io.BytesIO(typed.encode()))):
        code = main(arguments)
    assert code == 0, f"{arguments[0]} ended with {code}"
    return out.getvalue()


def rewrite() -> None:
    text = WALK.read_text(encoding="utf-8")
    fresh = iter(played(blocks(text)))
    WALK.write_text(_BLOCK.sub(lambda _: next(fresh), text), encoding="utf-8")


if __name__ == "__main__":
    rewrite()
