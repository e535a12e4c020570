"""How words sound, in the ARPABET letters that the English model was trained on.

A word is looked up in the recogniser's own dictionary; then as an inflection of a word that is there ("rinsed"); then
asked of the speech library, whose phonemes are mapped to ARPABET; and without that library it is spelled out by rule.
A few trade words that keepers say in more than one way are given below.
"""

from __future__ import annotations

import ctypes
from collections.abc import Callable, Iterable, Mapping
from pathlib import Path
from typing import Any

Sounds = str
"""Phones with a space between: "B L IY CH"."""
SoundOut = Callable[[str], "Sounds | None"]

TRADE: Mapping[str, tuple[Sounds, ...]] = {
    "chlorhexidine": (
        *("K L AO R HH EH K S IH D IY N", "K L AO R HH EH K S AH D AY N"),
        *("K L AO R HH EH K S AY D IY N", "K L AO R HH EH K S IH D AY N"),
        # Without the h, as it is mostly said in haste, and as it is read off a label by who never heard it.
        *("K L AO R EH K S IH D IY N", "K L AO R EH K S IH D AY N", "K L AO R AH K S AY D AY N"),
    ),
    "chlorhex": ("K L AO R HH EH K S", "K L AO R EH K S"),
    "povidone": ("P OW V AH D OW N", "P AA V AH D OW N"),
    "hypochlorite": ("HH AY P AH K L AO R AY T", "HH AY P OW K L AO R AY T"),
    "peroxymonosulfate": ("P ER AA K S IY M AA N OW S AH L F EY T",),
    "isopropyl": ("AY S AH P R OW P AH L",),
    "mil": ("M IH L",),
    "mils": ("M IH L Z",),
    "millilitre": ("M IH L AH L IY T ER",),
    "millilitres": ("M IH L AH L IY T ER Z",),
    "litre": ("L IY T ER",),
    "litres": ("L IY T ER Z",),
    # The t is swallowed before most digits; "plain five percent" for "point five percent" would be ten times the dose.
    "point": ("P OY N T", "P OY N"),
}
"""From memory: how keepers say them."""


def pronounce(
    words: Iterable[str], dictionary: Mapping[str, tuple[Sounds, ...]], sound_out: SoundOut | None = None
) -> dict[str, tuple[Sounds, ...]]:
    """Every word's sounds.

    words: in lower case.
    dictionary: the model's own.
    sound_out: says how an unknown word sounds (`speech_library`); None: by rule.
    """
    found: dict[str, tuple[Sounds, ...]] = {}
    for word in words:
        known = TRADE.get(word) or dictionary.get(word) or _inflected(word, dictionary)
        if not known:
            spoken = sound_out(word) if sound_out else None
            known = (spoken or by_rule(word),)
        found[word] = known
    return found


def read_dictionary(path: Path) -> dict[str, tuple[Sounds, ...]]:
    """A dictionary in the recogniser's format: a word a line, a second pronunciation as "word(2)"."""
    sounds: dict[str, tuple[Sounds, ...]] = {}
    for line in path.read_text(encoding="utf-8").splitlines():
        word, _, phones = line.partition(" ")
        word = word.partition("(")[0] or word
        sounds[word] = (*sounds.get(word, ()), phones.strip())
    return sounds


def dictionary_text(sounds: Mapping[str, tuple[Sounds, ...]]) -> str:
    """The same format, for the recogniser to load."""
    lines = [
        f"{word} {phones}" if n == 1 else f"{word}({n}) {phones}"
        for word, ways in sorted(sounds.items())
        for n, phones in enumerate(dict.fromkeys(ways), start=1)
    ]
    return "\n".join([*lines, ""])


# ---------------------------------------------------------------- a known word with an ending


_HISSING = ("S", "Z", "SH", "ZH", "CH", "JH")
_VOICELESS = ("P", "T", "K", "F", "TH", "S", "SH", "CH")


def _inflected(word: str, dictionary: Mapping[str, tuple[Sounds, ...]]) -> tuple[Sounds, ...]:
    for ending, with_ending in (("'s", _with_s), ("s", _with_s), ("ed", _with_ed), ("ing", _with_ing)):
        if not word.endswith(ending) or len(word) - len(ending) < 3:
            continue
        stem = word[: -len(ending)]
        doubled = stem[:-1] if stem[-1] == stem[-2] else stem
        for base in (stem + "e", stem, doubled) if ending in ("ed", "ing") else (stem,):
            if base in dictionary:
                return tuple(with_ending(phones) for phones in dictionary[base])
    return ()


def _with_s(phones: Sounds) -> Sounds:
    last = phones.split()[-1]
    return f"{phones} {'IH Z' if last in _HISSING else 'S' if last in _VOICELESS else 'Z'}"


def _with_ed(phones: Sounds) -> Sounds:
    last = phones.split()[-1]
    return f"{phones} {'IH D' if last in ('T', 'D') else 'T' if last in _VOICELESS else 'D'}"


def _with_ing(phones: Sounds) -> Sounds:
    return f"{phones} IH NG"


# ---------------------------------------------------------------- the speech library's phonemes


_FROM_IPA: Mapping[str, Sounds] = {
    **{"p": "P", "b": "B", "t": "T", "d": "D", "k": "K", "ɡ": "G", "g": "G", "f": "F", "v": "V", "θ": "TH", "ð": "DH"},
    **{"s": "S", "z": "Z", "ʃ": "SH", "ʒ": "ZH", "h": "HH", "tʃ": "CH", "dʒ": "JH", "m": "M", "n": "N", "ŋ": "NG"},
    **{"l": "L", "ɹ": "R", "r": "R", "j": "Y", "w": "W", "ɾ": "T", "ʔ": "T", "x": "K", "ɬ": "L", "ç": "HH", "ɲ": "N Y"},
    **{"n̩": "AH N", "l̩": "AH L", "əl": "AH L", "m̩": "AH M", "ʍ": "W"},
    **{"iː": "IY", "i": "IY", "ɪ": "IH", "ᵻ": "IH", "ɛ": "EH", "e": "EH", "æ": "AE", "a": "AA", "aː": "AA", "ɑː": "AA"},
    **{"ɑ": "AA", "ɒ": "AA", "ɔː": "AO", "ɔ": "AO", "o": "OW", "oː": "OW", "ʊ": "UH", "uː": "UW", "u": "UW", "ʌ": "AH"},
    **{"ə": "AH", "ɐ": "AH", "ɚ": "ER", "ɜː": "ER", "ɜ": "ER", "iə": "IY AH", "eɪ": "EY", "aɪ": "AY", "ɔɪ": "OY"},
    **{"oʊ": "OW", "əʊ": "OW", "aʊ": "AW", "aɪə": "AY AH", "aɪɚ": "AY ER", "aʊɚ": "AW ER", "ɪɹ": "IH R", "ɛɹ": "EH R"},
    **{"ʊɹ": "UH R", "ɑːɹ": "AA R", "ɔːɹ": "AO R", "oːɹ": "AO R", "y": "UW", "ø": "ER", "ɑ̃": "AA N", "ɔ̃": "AO N"},
}


def from_ipa(phonemes: str) -> Sounds | None:
    """ARPABET for phonemes with "_" between; None when one of them has no match."""
    found: list[str] = []
    for phoneme in phonemes.replace("ˈ", "").replace("ˌ", "").replace(" ", "_").split("_"):
        if not phoneme:
            continue
        sound = _FROM_IPA.get(phoneme) or _FROM_IPA.get(phoneme.replace("ː", "").replace("ʲ", ""))
        if sound is None:
            return None
        for phone in sound.split():
            if not (found and found[-1] == phone):
                found.append(phone)
    return " ".join(found) or None


def speech_library(folder: Path, library: Path) -> SoundOut:
    """A way to sound words out by the espeak-ng library, in its American voice.

    folder: its data, `espeak-ng-data`.
    library: the shared object.
    Fails: OSError when it can't be loaded or refuses to start.
    """
    speech: Any = ctypes.CDLL(str(library))
    retrieval, no_exit, utf8, ipa, separator = 1, 0x8000, 1, 2, ord("_") << 8
    if speech.espeak_Initialize(retrieval, 0, str(folder).encode(), no_exit) < 0:
        raise OSError(f"the speech library {library} doesn't start with the data in {folder}")
    if speech.espeak_SetVoiceByName(b"en-us") != 0:
        raise OSError(f"the speech library's data in {folder} lacks the voice en-us")
    speech.espeak_TextToPhonemes.restype = ctypes.c_char_p
    speech.espeak_TextToPhonemes.argtypes = [ctypes.POINTER(ctypes.c_char_p), ctypes.c_int, ctypes.c_int]

    def sound_out(word: str) -> Sounds | None:
        text = ctypes.c_char_p(word.encode())
        said: list[str] = []
        while text.value:
            said.append(speech.espeak_TextToPhonemes(ctypes.byref(text), utf8, ipa | separator).decode())
        return from_ipa("_".join(said))

    return sound_out


def speech_library_of_the_wheel() -> SoundOut | None:
    """`speech_library` with the library that espeakng-loader brings; None where there is no such wheel."""
    try:
        import espeakng_loader

        return speech_library(Path(espeakng_loader.get_data_path()), Path(espeakng_loader.get_library_path()))
    except (ImportError, OSError, RuntimeError):
        return None


# ---------------------------------------------------------------- spelled out by rule


_SPELLINGS: Mapping[str, Sounds] = {
    **{"tion": "SH AH N", "sion": "ZH AH N", "ough": "AO", "eigh": "EY", "augh": "AO", "igh": "AY", "tch": "CH"},
    **{"sch": "S K", "chl": "K L", "chr": "K R", "dge": "JH", "ch": "CH", "sh": "SH", "th": "TH", "ph": "F"},
    **{"wh": "W", "ck": "K", "ng": "NG", "qu": "K W", "kn": "N", "wr": "R", "gh": "G", "ee": "IY", "ea": "IY"},
    **{"oo": "UW", "ou": "AW", "ow": "OW", "oa": "OW", "oi": "OY", "oy": "OY", "ai": "EY", "ay": "EY", "au": "AO"},
    **{"aw": "AO", "ie": "IY", "ei": "EY", "ey": "IY", "ue": "UW", "ew": "UW", "ar": "AA R", "er": "ER", "ir": "ER"},
    **{"or": "AO R", "ur": "ER", "a": "AE", "b": "B", "c": "K", "d": "D", "e": "EH", "f": "F", "g": "G", "h": "HH"},
    **{"i": "IH", "j": "JH", "k": "K", "l": "L", "m": "M", "n": "N", "o": "AA", "p": "P", "q": "K", "r": "R"},
    **{"s": "S", "t": "T", "u": "AH", "v": "V", "w": "W", "x": "K S", "y": "IY", "z": "Z"},
}
_LONG: Mapping[str, Sounds] = {"a": "EY", "e": "IY", "i": "AY", "o": "OW", "u": "UW", "y": "AY"}
_VOWELS = "aeiouy"
_UNSPEAKABLE = "AH"
"""For a word with no letter that the rules know."""


def by_rule(word: str) -> Sounds:
    """A rough guess from the spelling: longest group of letters first, a silent e makes the vowel before it long."""
    letters = "".join(letter for letter in word.casefold() if letter in _SPELLINGS)
    found: list[str] = []
    at = 0
    while at < len(letters):
        if at == len(letters) - 1 and letters[at] == "e" and found and len(letters) > 2:
            break
        sounds, length = _sounds_at(letters, at)
        found += [phone for phone in sounds.split() if not (found and found[-1] == phone)]
        at += length
    return " ".join(found) or _UNSPEAKABLE


def _sounds_at(letters: str, at: int) -> tuple[Sounds, int]:
    if letters[at] in _LONG and len(letters) - at == 3 and letters[at + 2] == "e" and letters[at + 1] not in _VOWELS:
        return _LONG[letters[at]], 1
    if letters[at] == "c" and letters[at + 1 : at + 2] in ("e", "i", "y"):
        return "S", 1
    if letters[at] == "y" and at == 0:
        return "Y", 1
    for length in (4, 3, 2, 1):
        group = letters[at : at + length]
        if group in _SPELLINGS and len(group) == length:
            return _SPELLINGS[group], length
    return "", 1
