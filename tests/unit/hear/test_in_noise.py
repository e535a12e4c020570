"""Features of speech without the noise over it."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from assistant.contract import Heard, Word
from assistant.hear.in_noise import CEPSTRA, HALVINGS, Speech, cepstra, read_speech
from assistant.hear.pocketsphinx_engine import UNCERTAIN, never_certain
from assistant.hear.recogniser import RATE_HZ
from assistant.understand.certainty import HEARD_WHOLE
from assistant.understand.numbers.number_doubts import mean_posterior


def written(path: Path, values: np.ndarray) -> None:
    """A file as the acoustic model has it: of each sound and stream, so many vectors."""
    sounds, streams, many, _ = values.shape
    sizes = np.array([0x11223344, sounds, streams, many, *(CEPSTRA,) * streams, values.size], "<i4")
    path.write_bytes(b"s3\nversion 1.0\nendhdr\n" + sizes.tobytes() + values.astype("<f4").tobytes())


def model_in(folder: Path) -> np.ndarray:
    means = np.random.default_rng(3).normal(0, 5, (2, 3, 128, CEPSTRA))
    written(folder / "means", means)
    written(folder / "variances", np.full(means.shape, 4.0))
    return means


def test_the_gaussians_of_each_sound_are_merged_by_nearness_and_keep_the_whole_spread(tmp_path: Path) -> None:
    means = model_in(tmp_path)[:, 0]
    speech = read_speech(tmp_path)
    assert speech.means.shape == speech.variances.shape == (2 * 2**HALVINGS, CEPSTRA)
    first = slice(0, 2**HALVINGS)
    assert np.allclose(speech.means[first].mean(axis=0), means[0].mean(axis=0), atol=1e-4)
    whole = (speech.variances[first] + speech.means[first] ** 2).mean(axis=0) - means[0].mean(axis=0) ** 2
    assert np.allclose(whole, 4.0 + means[0].var(axis=0), atol=1e-3)


def tone(noise: float) -> bytes:
    at = np.arange(2 * RATE_HZ) / RATE_HZ
    said = 4000 * np.sin(2 * np.pi * 700 * at) * ((at > 0.7) & (at < 1.3))
    return (said + np.random.default_rng(2).normal(0, noise, len(said))).astype("<i2").tobytes()


def features(sound: bytes, speech: Speech) -> np.ndarray:
    return np.frombuffer(cepstra(sound, speech), "<f4").reshape(-1, CEPSTRA)


def test_noise_is_heard_as_quieter_than_it_is_and_speech_as_loud(tmp_path: Path) -> None:
    loud = np.zeros((1, CEPSTRA))
    silence = loud - 40.0 * (np.arange(CEPSTRA) == 0)
    speech = Speech(np.concatenate([loud, silence]), np.full((2, CEPSTRA), 50.0))
    with_noise = features(tone(400), speech)[:, 0]
    assert with_noise[90:130].mean() > with_noise[20:50].mean() + 15


@pytest.mark.parametrize("samples", [RATE_HZ // 4, 5001, 3 * RATE_HZ])
def test_a_quarter_of_a_second_and_more_has_features_even_where_nothing_stirs(tmp_path: Path, samples: int) -> None:
    model_in(tmp_path)
    found = features(b"\1\0" * samples, read_speech(tmp_path))
    assert found.shape[1] == CEPSTRA
    assert np.isfinite(found).all()


def heard(posterior: float) -> Heard:
    return Heard("one in fifty", spoken=True, words=tuple(Word(word, posterior) for word in ("one", "in", "fifty")))


def test_what_was_heard_in_noise_is_never_certain() -> None:
    taken = never_certain(heard(1.0))
    assert all(word.posterior <= UNCERTAIN < 0.99 for word in taken.words)


def test_what_was_heard_half_well_in_noise_is_read_back_as_a_whole() -> None:
    assert mean_posterior(never_certain(heard(0.71))) < HEARD_WHOLE
    assert mean_posterior(never_certain(heard(0.79))) < HEARD_WHOLE
    assert mean_posterior(never_certain(heard(0.85))) == pytest.approx(0.85)
    assert mean_posterior(never_certain(heard(0.5))) == pytest.approx(0.5)
