"""The whole path, as a user takes it: a recording goes into `rinseback hear`, speech comes out of `--say-to`."""

from __future__ import annotations

import json
import subprocess
import sys
import wave
from pathlib import Path
from typing import Any

import pytest
from audio.spoken_clips import Speaker, need, speak

from assistant.hear.pocketsphinx_engine import Pocketsphinx, vocabulary
from assistant.hear.recogniser import hear_all, pieces
from assistant.hear.vocabulary import Sayable
from assistant.hear.wav import read_file

pytestmark = pytest.mark.audio

PROGRAM = [sys.executable, "-m", "assistant"]
SLT = Speaker("flite", "slt")


def rinseback(*arguments: str, stdin: bytes | None = None) -> dict[str, Any]:
    ran = subprocess.run([*PROGRAM, *arguments, "--json"], capture_output=True, input=stdin, check=False)
    assert ran.returncode in (0, 3), ran.stderr.decode()
    (line,) = ran.stdout.decode().splitlines()
    reply: dict[str, Any] = json.loads(line)
    return reply


def test_a_recorded_question_is_answered_and_its_number_said_back(tmp_path: Path) -> None:
    need("flite")
    clip = speak("how much bleach for the yellow bottle at one in thirty two", SLT, tmp_path / "clip.wav")
    reply = rinseback("hear", str(clip), "--demo")
    assert reply["intent"] == "dose"
    assert reply["outcome"] in ("answer", "confirm")
    assert reply["values"]["parts"] == [1, 32]
    assert "32" in reply["say"] or "three-two" in reply["say"]


def test_a_recording_is_read_from_stdin(tmp_path: Path) -> None:
    need("flite")
    clip = speak("what is next", SLT, tmp_path / "clip.wav")
    assert rinseback("hear", "-", "--demo", stdin=clip.read_bytes())["intent"] == "next"


def test_a_heard_step_is_recorded_in_the_home_folder(tmp_path: Path) -> None:
    need("flite")
    (tmp_path / "keeping.toml").write_text('[[enclosure]]\nname = "river tank"\nanimal = "corn snake"\n', "utf-8")
    home = ("--home", str(tmp_path))
    rinseback("ask", "start the river tank with bleach", *home)
    clip = speak("the snake is out", SLT, tmp_path / "clip.wav")
    heard = rinseback("hear", str(clip), *home)
    assert heard["intent"] == "done"
    blocked = rinseback("ask", "can the snake go back", *home)["values"]["blocked_by"]
    # Said back as a fact or as a question: nothing is recorded on a doubtful hearing.
    assert blocked[0] == ("clear" if heard["outcome"] == "answer" else "move out")


def test_a_reply_is_written_as_sound(tmp_path: Path) -> None:
    out = tmp_path / "reply.wav"
    reply = rinseback("ask", "how long must bleach stay wet", "--demo", "--say-to", str(out))
    assert reply["values"]["minutes"] == 10
    with wave.open(str(out)) as opened:
        assert opened.getnframes() / opened.getframerate() > 1


REPLIES = (
    "{number} minutes wet all the time by published figures",
    "{number} minutes river tank wet time",
    "{number} mils of bleach one in {number} ten mil syringe to {number} into water {volume} in all",
    "not yet river tank wet time rinsing drying and airing are left",
    "rinse that eye now running water lens out {duration} i'm counting then call the poison centre {number} {number}",
    "no bleach is for surfaces never for an animal ask your vet",
)


@pytest.mark.parametrize(
    ("question", "words"),
    [
        ("how long must bleach stay wet", "ten minutes"),
        ("bleach in my eye", "rinse that eye now running water lens out"),
        ("can I put bleach on the wound", "never for an animal"),
    ],
)
def test_a_reply_said_to_a_file_is_heard_back(question: str, words: str, tmp_path: Path) -> None:
    """The recogniser knows the tool's kinds of reply, with any number in them, and has to find which was said."""
    out = tmp_path / "reply.wav"
    said = rinseback("ask", question, "--demo", "--say-to", str(out))["say"]
    engine = Pocketsphinx(vocabulary(Sayable({"reply": REPLIES}, {}), tmp_path / "cache"))
    heard = hear_all(engine, pieces(read_file(out)))
    assert words in heard.text, (said, heard.text)
