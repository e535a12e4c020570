from __future__ import annotations

from pathlib import Path

import pytest

from assistant.hear.pronunciation import (
    by_rule,
    dictionary_text,
    from_ipa,
    pronounce,
    read_dictionary,
    speech_library_of_the_wheel,
)

PHONES = {
    *(
        "AA",
        "AE",
        "AH",
        "AO",
        "AW",
        "AY",
        "B",
        "CH",
        "D",
        "DH",
        "EH",
        "ER",
        "EY",
        "F",
        "G",
        "HH",
        "IH",
        "IY",
        "JH",
        "K",
    ),
    *("L", "M", "N", "NG", "OW", "OY", "P", "R", "S", "SH", "T", "TH", "UH", "UW", "V", "W", "Y", "Z", "ZH"),
}
"""The 39 phones of the CMU pronouncing dictionary, which the model was trained with."""


@pytest.mark.parametrize(
    ("word", "sounds"),
    [("rinsed", "R IH N S T"), ("misted", "M IH S T IH D"), ("rinsing", "R IH N S IH NG"), ("tubs", "T AH B Z")],
)
def test_an_ending_is_added_to_a_known_word(word: str, sounds: str) -> None:
    known = {"rinse": ("R IH N S",), "mist": ("M IH S T",), "tub": ("T AH B",)}
    assert pronounce([word], known)[word] == (sounds,)


def test_phonemes_of_the_speech_library_become_the_models_phones() -> None:
    assert from_ipa("ɡ_ˈɛ_k_oʊ") == "G EH K OW"
    assert from_ipa("v_ɪ_v_ˈɛ_ɹ_iə_m") == "V IH V EH R IY AH M"


def test_a_phoneme_without_a_match_is_not_guessed() -> None:
    assert from_ipa("k_ǃ_a") is None


def test_without_the_speech_library_words_are_spelled_out() -> None:
    assert pronounce(["zorbit"], {})["zorbit"] == (by_rule("zorbit"),)
    assert by_rule("shine") == "SH AY N"
    assert by_rule("phelsuma") == "F EH L S AH M AE"


@pytest.mark.parametrize("word", ["x", "", "é", "日本", "qqqq", "o'neil", "strength", "vivarium", "crested"])
def test_any_word_gets_sounds_that_the_model_knows(word: str) -> None:
    assert set(by_rule(word).split()) <= PHONES
    assert by_rule(word)


def test_the_dictionary_is_read_as_it_is_written(tmp_path: Path) -> None:
    sounds = {"tub": ("T AH B",), "read": ("R EH D", "R IY D")}
    path = tmp_path / "sounds.dict"
    path.write_text(dictionary_text(sounds))
    assert read_dictionary(path) == sounds


@pytest.mark.audio
def test_the_speech_library_agrees_with_the_dictionary_on_common_words() -> None:
    # Outside reference: the CMU pronouncing dictionary that comes with the recogniser. Vowels differ by accent, so
    # consonants alone are compared.
    pocketsphinx = pytest.importorskip("pocketsphinx")
    sound_out = speech_library_of_the_wheel()
    if sound_out is None:
        pytest.skip("the package espeakng-loader is not installed")
    known = read_dictionary(Path(pocketsphinx.get_model_path("en-us/cmudict-en-us.dict")))
    words = ["bleach", "bottle", "gecko", "snake", "python", "rinse", "window", "minute", "hospital", "yellow"]
    words += ["vinegar", "syringe", "peroxide", "turtle", "box"]
    vowels = {phone for phone in PHONES if phone[0] in "AEIOU"}

    def consonants(sounds: str) -> list[str]:
        return [phone for phone in sounds.split() if phone not in vowels]

    agreed = [
        word for word in words if any(consonants(sound_out(word) or "") == consonants(way) for way in known[word])
    ]
    assert len(agreed) >= len(words) - 1, sorted(set(words) - set(agreed))
