"""What listening needs, tried out: for `rinseback check`. Each gives one line, or raises CannotListen with one."""

from __future__ import annotations

from pathlib import Path

import numpy as np

from assistant.hear.choose import find_model, open_recogniser
from assistant.hear.microphone import sound_library
from assistant.hear.recogniser import RATE_HZ, CannotListen, hear_all, pieces
from assistant.hear.vocabulary import Sayable


def recogniser_works(said: Sayable, models: Path, cache: Path) -> str:
    """Load the recogniser and let it search a second of noise; says which it is and why that one."""
    recogniser = open_recogniser(said, models, cache)
    noise = np.random.default_rng(1).normal(0, 300, RATE_HZ).astype("<i2").tobytes()
    hear_all(recogniser, pieces(noise))
    return f"{recogniser.name} ({find_model(models).says})"


def microphone_works() -> str:
    """Ask for the microphone that would be used, and whether it can give sound at the rate that is needed."""
    sounddevice = sound_library()
    try:
        name = sounddevice.query_devices(kind="input")["name"]
        sounddevice.check_input_settings(samplerate=RATE_HZ, channels=1, dtype="int16")
    except (sounddevice.PortAudioError, ValueError) as fault:
        what = "no microphone is found, or it can't record at 16 kHz"
        raise CannotListen(what, "microphone", "plug one in, or `rinseback hear FILE.wav`") from fault
    return f"{name}, {RATE_HZ} samples a second"
