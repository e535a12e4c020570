from __future__ import annotations

import sys
import textwrap
import wave
from pathlib import Path

import pytest

from assistant.say.voice import Manner, NoVoice, Voice, speakable


@pytest.mark.parametrize(
    ("written", "said"),
    [
        ("15 mL into 750 mL", "15 mils into 750 mils"),
        ("1:32", "1 to 32"),
        ("0.5 % at 25 °C", "0.5 percent at 25 degrees"),
        ("500 ppm", "500 parts per million"),
        ("0.75 L", "0.75 litres"),
        ("rinse/wipe", "rinse or wipe"),
        ("Rinse.\nThen dry", "Rinse. Then dry"),
        ("Fifty mils. Right?", "Fifty mils. Right?"),
        ("<b>stop</b>", "b stop or b"),
        ("htmL email", "htmL email"),
        ("  ", ""),
    ],
)
def test_signs_that_a_voice_misreads_become_words(written: str, said: str) -> None:
    assert speakable(written) == said


def program(tmp_path: Path, body: str) -> tuple[str, ...]:
    """A speech program of a few lines, in place of the real one."""
    path = tmp_path / "program.py"
    head = """
        import json, sys, wave
        def reply(fault=""):
            print(json.dumps({"fault": fault}), flush=True)
        def write(path, frames):
            with wave.open(path, "wb") as opened:
                opened.setparams((1, 2, 16000, 0, "NONE", ""))
                opened.writeframes(bytes(2 * frames))
        """
    path.write_text(textwrap.dedent(head) + textwrap.dedent(body))
    return (sys.executable, str(path))


SPEAKS = """
    reply()
    for line in sys.stdin:
        request = json.loads(line)
        write(request["path"], 100 * len(request["text"].split()))
        reply()
"""


def test_what_is_rendered_is_in_the_file(tmp_path: Path) -> None:
    with Voice(command=program(tmp_path, SPEAKS)) as voice:
        assert voice.render("ten minutes left", tmp_path / "said.wav") is None
        assert voice.render("nine", tmp_path / "more.wav") is None
    with wave.open(str(tmp_path / "said.wav")) as opened:
        assert opened.getnframes() == 300


@pytest.mark.parametrize(
    ("body", "why"),
    [
        ("sys.exit(6)", "stopped (code 6)"),
        ("reply('no library')", "no library"),
        ("reply()\nsys.stdin.readline()\nsys.exit(9)", "stopped (code 9)"),
        ("reply()\nsys.stdin.readline()\nreply('no such voice')", "no such voice"),
        ("reply()\nsys.stdin.readline()\nreply()", "wrote no WAV file"),
        ("reply()\nwrite(json.loads(sys.stdin.readline())['path'], 0)\nreply()", "without sound"),
    ],
)
def test_an_engine_that_fails_is_one_line(tmp_path: Path, body: str, why: str) -> None:
    with Voice(command=program(tmp_path, body)) as voice:
        fault = voice.render("ten minutes", tmp_path / "said.wav")
    assert isinstance(fault, NoVoice)
    assert why in str(fault)
    assert "\n" not in str(fault)


def test_an_engine_that_died_is_started_again(tmp_path: Path) -> None:
    once = SPEAKS.replace("        reply()\n", "        reply()\n        sys.exit(1)\n")
    with Voice(command=program(tmp_path, once)) as voice:
        assert voice.render("one", tmp_path / "said.wav") is None
        assert voice._engine is not None
        voice._engine.wait()
        assert voice.render("two", tmp_path / "said.wav") is None


def test_a_hung_engine_is_ended(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("assistant.say.voice.LONGEST_WAIT_S", 0.05)
    hangs = program(tmp_path, "import threading\nthreading.Event().wait()")
    with Voice(command=hangs) as voice:
        assert "stopped" in str(voice.render("one", tmp_path / "said.wav"))


def test_a_place_that_cant_be_written_and_an_empty_text_are_one_line(tmp_path: Path) -> None:
    with Voice(command=program(tmp_path, SPEAKS)) as voice:
        assert "can't be written" in str(voice.render("one", tmp_path / "none" / "said.wav"))
        assert "nothing to say" in str(voice.render(" ", tmp_path / "said.wav"))


def test_no_program_is_one_line(tmp_path: Path) -> None:
    assert "doesn't start" in str(Voice(command=(str(tmp_path / "none"),)).render("one", tmp_path / "said.wav"))


def test_slower_keeps_the_voice() -> None:
    assert Manner(160, "en-us").slower() == Manner(120, "en-us")
