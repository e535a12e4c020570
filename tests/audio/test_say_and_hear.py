"""What the program says is heard back by its own recogniser and read as the same words typed."""

from __future__ import annotations

import subprocess
import sys
import wave
from pathlib import Path

import pytest
from audio.listening import DemoListener

from assistant.contract import Heard
from assistant.hear.recogniser import hear_all, pieces
from assistant.hear.wav import read_file
from assistant.say.voice import Voice, works

pytestmark = pytest.mark.audio


@pytest.fixture(scope="module")
def listener(tmp_path_factory: pytest.TempPathFactory) -> DemoListener:
    return DemoListener(tmp_path_factory.mktemp("cache"))


SAID = (
    "How much bleach for the yellow bottle at one in thirty two?",
    "How much bleach for the yellow bottle at 1:10?",
    "What is next for the river tank?",
    "How long is left?",
    "Can I mix bleach with vinegar?",
    "How much bleach in 500 mL at one in forty?",
)


def test_what_is_said_is_heard_and_read_the_same(listener: DemoListener, tmp_path: Path) -> None:
    same = []
    with Voice() as voice:
        for text in SAID:
            assert voice.render(text, tmp_path / "said.wav") is None
            heard = hear_all(listener.recogniser, pieces(read_file(tmp_path / "said.wav")))
            meant, taken = listener.read(Heard(text)), listener.read(heard)
            numbers = [mix for mix in taken.slots.mixes if mix not in meant.slots.mixes]
            assert not numbers or taken.doubts, (text, heard)
            same.append(meant.intent == taken.intent)
    # No measure of how well people are heard: the default voice was chosen because this recogniser understands it.
    assert sum(same) >= len(SAID) - 1, same


def test_the_voice_works_here(tmp_path: Path) -> None:
    with Voice() as voice:
        found = works(voice, tmp_path / "try.wav")
    assert isinstance(found, str)
    assert "spoke for" in found


def test_speech_puts_nothing_on_standard_output(tmp_path: Path) -> None:
    program = (
        "import sys\nfrom pathlib import Path\nfrom assistant.say.voice import Voice\n"
        "with Voice() as voice:\n    assert voice.render('ten minutes left', Path(sys.argv[1])) is None\n"
    )
    done = subprocess.run([sys.executable, "-c", program, str(tmp_path / "said.wav")], capture_output=True, check=True)
    assert done.stdout == b""
    assert done.stderr == b""


def test_a_voice_that_isnt_there_is_one_line(tmp_path: Path) -> None:
    from assistant.say.voice import Manner

    with Voice(Manner(voice="no such voice")) as voice:
        fault = voice.render("ten minutes", tmp_path / "said.wav")
    assert fault is not None
    assert "no such voice" in str(fault)
    assert "\n" not in str(fault)


def test_a_long_text_is_whole_each_time(tmp_path: Path) -> None:
    """The library may return before a long text is written; a new engine each time, since it was the first text."""
    text = (
        "Rinse that eye now, running water. Lens out. 15 minutes, I'm counting. Then call the poison centre, 555 0110."
    )
    lengths = []
    for number in range(5):
        path = tmp_path / f"{number}.wav"
        with Voice() as voice:
            assert voice.render(text, path) is None
        with wave.open(str(path)) as opened:
            lengths.append(opened.getnframes())
    # The engine's own timing may differ by a breath; a text cut off would lack whole words.
    assert min(lengths) > 0.97 * max(lengths), lengths
