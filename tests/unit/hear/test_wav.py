from __future__ import annotations

import io
import struct
import wave
from pathlib import Path

import numpy as np
import pytest

from assistant.hear.recogniser import RATE_HZ
from assistant.hear.wav import LONGEST_S, BadRecording, read_bytes, read_file, read_stream


def tone(rate: int, hz: float = 440, seconds: float = 0.5, channels: int = 1, width: int = 2) -> bytes:
    moments = np.arange(int(rate * seconds)) / rate
    samples = (10_000 * np.sin(2 * np.pi * hz * moments)).astype("<i2")
    held = io.BytesIO()
    with wave.open(held, "wb") as opened:
        opened.setparams((channels, width, rate, 0, "NONE", ""))
        raw = np.repeat(samples, channels)
        opened.writeframes(raw.tobytes() if width == 2 else (raw >> 8).astype("u1").tobytes())
    return held.getvalue()


@pytest.mark.parametrize("rate", [8_000, 11_025, 16_000, 22_050, 44_100, 48_000, 96_000, 16_001])
@pytest.mark.parametrize("channels", [1, 2])
def test_any_rate_comes_out_as_the_same_tone(rate: int, channels: int) -> None:
    sound = np.frombuffer(read_bytes(tone(rate, channels=channels), "here"), dtype="<i2").astype(float)
    assert abs(len(sound) - RATE_HZ / 2) <= 2
    ideal = 10_000 * np.sin(2 * np.pi * 440 * np.arange(len(sound)) / RATE_HZ)
    inner = slice(500, -500)
    assert np.sqrt(((sound - ideal)[inner] ** 2).mean()) < 20


@pytest.mark.parametrize("hz", [8_500, 9_000, 12_000, 15_000, 20_000])
def test_a_pitch_too_high_for_the_recogniser_doesnt_come_back_as_another(hz: int) -> None:
    sound = np.frombuffer(read_bytes(tone(48_000, hz), "here"), dtype="<i2").astype(float)
    # 80 dB below the 10,000 that went in, which leaves room for rounding to whole numbers.
    assert np.sqrt((sound[500:-500] ** 2).mean()) < 1


def test_speech_frequencies_pass_unchanged() -> None:
    for hz in (300, 1_000, 3_000, 6_000, 7_000):
        sound = np.frombuffer(read_bytes(tone(44_100, hz), "here"), dtype="<i2").astype(float)
        level = np.sqrt((sound[500:-500] ** 2).mean()) / (10_000 / np.sqrt(2))
        assert 0.95 < level < 1.05, hz


def _changed(content: bytes, at: int, new: bytes) -> bytes:
    return content[:at] + new + content[at + len(new) :]


GOOD = tone(16_000)
BAD = {
    "empty": (b"", "it is empty"),
    "text": (b"how much bleach for the yellow bottle", "isn't a WAV file"),
    "only the first letters": (b"RIFF", "isn't a WAV file"),
    "header cut": (GOOD[:20], "breaks off in its header"),
    "no sound chunk": (GOOD[:36], "isn't a whole WAV file"),
    "cut off": (GOOD[:5000], "cut off"),
    "8 bits": (tone(16_000, width=1), "8 bits, not 16"),
    "floating point": (_changed(GOOD, 20, struct.pack("<H", 3)), "floating-point"),
    "mu-law": (_changed(GOOD, 20, struct.pack("<H", 7)), "mu-law"),
    "no samples": (tone(16_000, seconds=0), "no sound"),
    "five channels": (tone(16_000, channels=5), "5 channels"),
    "absurd rate": (tone(4_000), "4000 samples a second"),
    "rate of nought": (_changed(GOOD, 24, bytes(4)), "0 samples a second"),
    "no channels": (_changed(GOOD, 22, bytes(2)), "isn't a whole WAV file"),
    "too long": (tone(8_000, seconds=LONGEST_S + 1), f"longer than {LONGEST_S} s"),
}


@pytest.mark.parametrize("name", BAD)
def test_a_bad_recording_gets_one_clear_line(name: str) -> None:
    content, what = BAD[name]
    with pytest.raises(BadRecording) as caught:
        read_stream(io.BytesIO(content), "clip.wav")
    line = str(caught.value)
    assert line.startswith("clip.wav: ")
    assert what in line
    assert "\n" not in line
    assert "; " in line


def test_a_header_of_noise_never_raises_anything_else() -> None:
    chance = np.random.default_rng(7)
    for _ in range(500):
        broken = bytearray(GOOD)
        for at in chance.integers(0, 48, 4):
            broken[at] = chance.integers(0, 256)
        try:
            read_bytes(bytes(broken), "clip.wav")
        except BadRecording:
            continue


def test_a_recording_written_into_a_pipe_has_no_true_lengths_and_is_read_all_the_same() -> None:
    streamed = _changed(_changed(GOOD, 4, b"\xff\xff\xff\xff"), 40, b"\xff\xff\xff\xff")
    assert read_bytes(streamed, "-") == read_bytes(GOOD, "-")


def test_the_extensible_form_of_16_bit_pcm_is_read() -> None:
    guid = b"\x01\x00\x00\x00\x00\x00\x10\x00\x80\x00\x00\xaa\x00\x38\x9b\x71"
    body = struct.pack("<HHIIHHHHI", 0xFFFE, 1, 16_000, 32_000, 2, 16, 22, 16, 4) + guid
    sound = GOOD[44:]
    chunks = b"fmt " + struct.pack("<I", len(body)) + body + b"data" + struct.pack("<I", len(sound)) + sound
    assert read_bytes(b"RIFF" + struct.pack("<I", 4 + len(chunks)) + b"WAVE" + chunks, "-") == read_bytes(GOOD, "-")


def test_files_that_cant_be_opened_say_which(tmp_path: Path) -> None:
    for path, what in ((tmp_path / "none.wav", "no such file"), (tmp_path, "a folder")):
        with pytest.raises(BadRecording, match=what):
            read_file(path)


def test_a_file_and_its_stream_give_the_same_sound(tmp_path: Path) -> None:
    path = tmp_path / "tone.wav"
    path.write_bytes(GOOD)
    assert read_file(path) == read_stream(io.BytesIO(GOOD))
