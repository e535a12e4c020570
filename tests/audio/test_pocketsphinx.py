"""The default recogniser on speech made here and on recordings of people."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest
from audio.listening import DemoListener, Tally, word_errors
from audio.spoken_clips import FLITE, absent, need, people, speak, under_a_fan
from audio.unseen import TEXTS

from assistant.contract import Question
from assistant.core.household import Household
from assistant.hear.checks import SPOKEN, recogniser_works
from assistant.hear.pocketsphinx_engine import Pocketsphinx, vocabulary
from assistant.hear.recogniser import CannotListen, hear_all, pieces
from assistant.hear.spoken_form import ONES, TENS
from assistant.hear.vocabulary import Sayable, sayable
from assistant.hear.wav import read_file

pytestmark = pytest.mark.audio
if os.environ.get("CI") != "true":
    pytest.importorskip("pocketsphinx")


@pytest.fixture(scope="module")
def listener(tmp_path_factory: pytest.TempPathFactory) -> DemoListener:
    need("flite", "sox")
    return DemoListener(tmp_path_factory.mktemp("cache"))


def test_unseen_sentences_are_heard_and_no_wrong_number_gets_through(listener: DemoListener, tmp_path: Path) -> None:
    # Measured by tests/bench/recognition.py; the floors here lie well below, so that only a break is reported.
    clean, noisy = Tally(), Tally()
    for number, text in enumerate(TEXTS):
        sound = read_file(speak(text, FLITE[number % 4], tmp_path / "clip.wav"))
        clean.add(listener.judged(text, hear_all(listener.recogniser, pieces(sound))))
        sound = under_a_fan(sound, 20, tmp_path)
        noisy.add(listener.judged(text, hear_all(listener.recogniser, pieces(sound))))
    assert not clean.silently_wrong_numbers, clean.silently_wrong_numbers
    assert not noisy.silently_wrong_numbers, noisy.silently_wrong_numbers
    assert clean.word_error_rate < 0.12, clean
    assert noisy.word_error_rate < 0.25, noisy
    assert clean.share("right", "confirmed") > 0.6, clean
    assert noisy.share("right", "confirmed") > 0.4, noisy


def test_posteriors_and_alternatives_belong_to_the_final_text(listener: DemoListener, tmp_path: Path) -> None:
    for text in TEXTS[:12]:
        sound = read_file(speak(text, FLITE[0], tmp_path / "clip.wav"))
        heard = hear_all(listener.recogniser, pieces(sound))
        assert heard.spoken
        assert " ".join(word.text for word in heard.words) == heard.text
        assert all(0 <= word.posterior <= 1 for word in heard.words)
        assert heard.text not in heard.alternatives
        assert len(set(heard.alternatives)) == len(heard.alternatives) <= 61
        assert not any(mark in text for text in heard.alternatives for mark in "<>()[]")


def test_a_teen_and_its_ten_are_told_apart_or_the_other_is_offered(listener: DemoListener, tmp_path: Path) -> None:
    for teen, ten in (("thirteen", "thirty"), ("fifteen", "fifty"), ("sixteen", "sixty"), ("eighteen", "eighty")):
        for said in (teen, ten):
            for speaker in FLITE:
                sound = read_file(speak(f"bleach for the yellow bottle at one in {said}", speaker, tmp_path / "c.wav"))
                heard = hear_all(listener.recogniser, pieces(sound))
                assert said in heard.text.split() or any(said in other.split() for other in heard.alternatives), heard


# ---------------------------------------------------------------- people


def spoken_by_people(phrasings: tuple[str, ...], names: dict[str, tuple[str, ...]], cache: Path) -> Pocketsphinx:
    return Pocketsphinx(vocabulary(Sayable({"said": phrasings}, names), cache))


def numbers_of(text: str) -> list[str]:
    return [word for word in text.split() if word in ONES or word in TENS]


# Debian pocketsphinx-testdata, test/data/cards: recordings of one person and their transcription (cards.transcription);
# 005 holds three cards in 2.6 s.
CARDS = {
    "001": "ten of clubs",
    "002": "four queen of clubs",
    "003": "seven of clubs",
    "004": "five five",
    "005": "eight of spades four of clubs seven of hearts",
}


def test_numbers_spoken_by_a_person_are_heard(tmp_path: Path) -> None:
    names = {"rank": (*ONES[1:11], "jack", "queen", "king"), "suit": ("clubs", "hearts", "diamonds", "spades")}
    one = "{rank} of {suit}"
    listener = spoken_by_people((one, "{rank} " + one, "{rank} {rank}", " ".join([one] * 3)), names, tmp_path)
    said = [numbers_of(text) for text in CARDS.values()]
    heard = [numbers_of(hear_all(listener, pieces(read_file(people(f"cards/{name}.wav")))).text) for name in CARDS]
    assert sum(a == b for a, b in zip(said, heard, strict=True)) >= 4, heard


def test_a_person_going_forward_ten_metres_is_heard(tmp_path: Path) -> None:
    # test/data/goforward.raw: "go forward ten meters" (the transcription in that package's own tests).
    listener = spoken_by_people(
        ("go {way} {number} meters", "turn {way}"), {"way": ("forward", "back", "left")}, tmp_path
    )
    sound = people("goforward.raw").read_bytes()
    assert hear_all(listener, pieces(sound)).text == "go forward ten meters"


def test_digits_of_a_person_come_back_in_the_text_or_its_alternatives(tmp_path: Path) -> None:
    # test/data/tidigits/dhd.2934z.raw, named after what is said: two nine three four zero. The household's vocabulary
    # takes digits one by one, as said back when in doubt.
    listener = spoken_by_people(("{digits}",), {}, tmp_path)
    heard = hear_all(listener, pieces(people("tidigits/dhd.2934z.raw").read_bytes()))
    said = ["two", "nine", "three", "four", "zero"]
    assert min(word_errors(said, text.split()) for text in (heard.text, *heard.alternatives)) <= 1, heard


def test_someone_reading_a_novel_asks_no_question(listener: DemoListener) -> None:
    # test/data/librivox: five sentences read from "Sense and Sensibility".
    for name in ("0870", "0880", "0890", "0920", "0930"):
        sound = read_file(people(f"librivox/sense_and_sensibility_01_austen_64kb-{name}.wav"))
        reading = listener.read(hear_all(listener.recogniser, pieces(sound)))
        assert reading.intent not in ("done", "start", "undo", "yes") or reading.doubts, (name, reading)


# ---------------------------------------------------------------- start, cache, quiet


def test_the_second_start_takes_the_vocabulary_from_the_cache(tmp_path: Path) -> None:
    said = Sayable({"next": ("what is next",)}, {})
    first = vocabulary(said, tmp_path / "cache")
    made = first.model.stat().st_mtime_ns
    assert vocabulary(said, tmp_path / "cache") == first
    assert first.model.stat().st_mtime_ns == made
    other = vocabulary(Sayable({"next": ("and now",)}, {}), tmp_path / "cache")
    assert other.model != first.model
    assert first.model.exists(), "with a call word and without are two"
    for text in ("one more", "and more", "and yet more"):
        vocabulary(Sayable({"next": (text,)}, {}), tmp_path / "cache")
    assert not first.model.exists(), "old files are not left behind for ever"


def test_a_cache_that_cant_be_written_is_no_hindrance(tmp_path: Path) -> None:
    (tmp_path / "file").touch()
    kept = vocabulary(Sayable({"next": ("what is next",)}, {}), tmp_path / "file" / "cache")
    assert Pocketsphinx(kept).finish().text == ""


def test_the_recogniser_prints_nothing(tmp_path: Path) -> None:
    program = (
        "import sys\nfrom pathlib import Path\n"
        "from assistant.hear.pocketsphinx_engine import Pocketsphinx, vocabulary\n"
        "from assistant.hear.vocabulary import Sayable\n"
        "listener = Pocketsphinx(vocabulary(Sayable({'next': ('what is next',)}, {}), Path(sys.argv[1])))\n"
        "listener.start(); listener.feed(bytes(range(256)) * 200); listener.partial(); listener.finish()\n"
    )
    done = subprocess.run([sys.executable, "-c", program, str(tmp_path)], capture_output=True, check=True)
    assert done.stdout == b""
    assert done.stderr == b""


def test_a_vocabulary_spoilt_on_the_disk_is_one_line(tmp_path: Path) -> None:
    kept = vocabulary(Sayable({"next": ("what is next",)}, {}), tmp_path)
    kept.model.write_text("not a model")
    with pytest.raises(CannotListen, match="delete that folder"):
        Pocketsphinx(kept)


def test_words_of_a_household_without_anything_are_enough_to_start(
    tmp_path: Path, questions: dict[str, Question]
) -> None:
    if not questions:
        absent("no questions")
    kept = vocabulary(sayable(questions.values(), Household()), tmp_path)
    assert kept.words > 100


def test_check_lets_the_recogniser_hear_a_spoken_clip_and_tells_what_it_heard(
    tmp_path: Path, questions: dict[str, Question]
) -> None:
    need("flite")
    said = sayable(questions.values(), Household())
    folders = tmp_path / "models", tmp_path / "cache"
    line = recogniser_works(said, *folders, read_file(speak(SPOKEN, FLITE[3], tmp_path / "clip.wav")))
    assert line.startswith("pocketsphinx, its own English model")
    assert f'heard "{SPOKEN}"' in line
    with pytest.raises(CannotListen, match="it heard"):
        recogniser_works(said, *folders, read_file(speak("good morning everyone", FLITE[3], tmp_path / "clip.wav")))


def test_check_says_so_where_nothing_can_speak(tmp_path: Path) -> None:
    said = Sayable({"next": ("what is next",)}, {})
    line = recogniser_works(said, tmp_path / "models", tmp_path / "cache", None)
    assert "no models folder" in line
    assert "not tried on speech" in line
