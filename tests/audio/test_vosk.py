"""What only the Vosk engine has: a model folder that may be broken, a vocabulary that a model may not know."""

from __future__ import annotations

import shutil
import subprocess
import sys
from pathlib import Path

import pytest
from audio.spoken_clips import Speaker, absent, need, speak
from audio.test_both_engines import KOREAN, korean_model

from assistant.hear.recogniser import CannotListen, hear_all, pieces
from assistant.hear.vocabulary import sentences
from assistant.hear.vosk_engine import UNHEARD, Vosk, _joined, _phrases, _scored, load_model, try_out
from assistant.hear.wav import read_file

pytestmark = pytest.mark.audio


@pytest.fixture(scope="module")
def model() -> object:
    try:
        import vosk  # noqa: F401
    except ImportError:
        absent("the package vosk is not installed")
    return load_model(korean_model())


def test_words_that_the_model_lacks_are_left_out_and_named(model: object) -> None:
    phrases, unknown = _phrases(model, [("노란", "병", "zorbit"), ("zorbit",)])
    assert unknown == ("zorbit",)
    assert "노란 병" in phrases
    assert not any("zorbit" in phrase for phrase in phrases)


def test_a_vocabulary_of_which_the_model_knows_nothing_still_listens(model: object) -> None:
    listener = Vosk(model, [("zorbit",)], "korean")
    assert hear_all(listener, pieces(bytes(16_000))).text == ""
    assert "lacks: zorbit" in listener.name


def test_the_vocabulary_is_what_is_heard_and_the_models_own_language_is_a_second_opinion(
    model: object, tmp_path: Path
) -> None:
    need("espeak-ng")
    listener = Vosk(model, sentences(KOREAN), "korean")
    words = {word for sentence in sentences(KOREAN) for word in sentence}
    sound = read_file(speak("물 이십 리터 넣어 주세요", Speaker("espeak-ng", "ko"), tmp_path / "clip.wav", 130))
    heard = hear_all(listener, pieces(sound))
    assert set(heard.text.split()) <= words
    free = [other for other in heard.alternatives if not set(other.split()) <= words]
    assert free, "no free hearing among them"
    for word in heard.words:
        if not any(word.text in other.split() for other in free):
            assert word.posterior <= UNHEARD, "sure of a word that only the small vocabulary hears"


def test_a_long_pause_doesnt_lose_what_came_before(model: object, tmp_path: Path) -> None:
    need("espeak-ng")
    listener = Vosk(model, sentences(KOREAN), "korean")
    sound = read_file(speak("물 이십 리터 넣어 주세요", Speaker("espeak-ng", "ko"), tmp_path / "clip.wav", 130))
    once = hear_all(listener, pieces(sound))
    twice = hear_all(listener, pieces(sound + bytes(3 * 32_000) + sound))
    assert once.text.split().count("리터") == 1
    assert twice.text.split().count("리터") == 2, twice


@pytest.mark.parametrize(
    ("name", "length"),
    [
        ("am/final.mdl", 0),
        ("am/final.mdl", 1_000),
        ("conf/mfcc.conf", 0),
        ("graph/HCLr.fst", 100),
        ("graph/Gr.fst", 100),
    ],
)
def test_a_broken_model_is_one_line_and_nothing_else(tmp_path: Path, name: str, length: int) -> None:
    broken = tmp_path / "models" / "broken"
    shutil.copytree(korean_model(), broken, symlinks=True, copy_function=_linked)
    content = (broken / name).read_bytes()[:length]
    (broken / name).unlink()
    (broken / name).write_bytes(content)
    program = (
        "import sys\nfrom pathlib import Path\nfrom assistant.hear.recogniser import CannotListen\n"
        "from assistant.hear.choose import open_recogniser\nfrom assistant.hear.vocabulary import Sayable\n"
        "try:\n    open_recogniser(Sayable({}, {}), Path(sys.argv[1]), Path(sys.argv[2]))\n"
        "except CannotListen as fault:\n    print(fault)\n"
    )
    command = [sys.executable, "-c", program, str(broken.parent), str(tmp_path / "cache")]
    done = subprocess.run(command, capture_output=True, text=True)
    assert done.returncode == 0, (done.returncode, done.stderr)
    assert done.stdout.count("\n") == 1
    assert str(broken) in done.stdout
    assert done.stderr == ""


def test_a_model_that_works_is_tried_once(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    try_out(korean_model(), tmp_path)
    monkeypatch.setattr("assistant.hear.vosk_engine.subprocess.run", lambda *_, **__: pytest.fail("tried again"))
    try_out(korean_model(), tmp_path)


def _linked(source: str, target: str) -> str:
    Path(target).symlink_to(source)
    return target


def test_a_folder_that_is_no_model_is_one_line(tmp_path: Path) -> None:
    with pytest.raises(CannotListen, match="am/final"):
        load_model(tmp_path)


def test_stretches_between_pauses_are_joined_likeliest_first() -> None:
    first = _scored(
        '{"alternatives": [{"text": "rinsed", "confidence": 9.0}, {"text": "[unk] not rinsed", "confidence": 5}]}'
    )
    second = _scored('{"alternatives": [{"text": "it", "confidence": 3.0}, {"text": "bits", "confidence": 2.5}]}')
    assert _joined([first, second], 3) == ["rinsed it", "rinsed bits", "not rinsed it"]
    assert _joined([], 3) == []
