"""What listening needs, tried out: for `rinseback check`. Each gives one line, or raises CannotListen with one."""

from __future__ import annotations

from pathlib import Path

import numpy as np

from assistant.hear.choose import find_model, open_recogniser
from assistant.hear.microphone import sound_library
from assistant.hear.recogniser import RATE_HZ, CannotListen, hear_all, pieces
from assistant.hear.vocabulary import Sayable

SPOKEN = "how long is left"
"""What is said to the recogniser to try it: a question that every household has."""


def recogniser_works(said: Sayable, models: Path, cache: Path, clip: bytes | None) -> str:
    """Load the recogniser and let it hear a clip; says which it is, why that one, and what it heard.

    clip: SPOKEN as 16 kHz sound; None: there is nothing here that could say it, and a second of noise is searched.
    Fails: CannotListen, also where it heard another thing than was said.
    """
    recogniser = open_recogniser(said, models, cache)
    found = f"{recogniser.name} ({find_model(models).says})"
    if clip is None:
        noise = np.random.default_rng(1).normal(0, 300, RATE_HZ).astype("<i2").tobytes()
        hear_all(recogniser, pieces(noise))
        return f"{found}; not tried on speech, since there is no voice here to say something"
    heard = hear_all(recogniser, pieces(clip)).text
    missing = set(SPOKEN.split()) - set(heard.split())
    if 2 * len(missing) > len(SPOKEN.split()):
        what = f'of "{SPOKEN}", said by this computer, it heard "{heard}"'
        raise CannotListen(
            f"{recogniser.name}: {what}", str(models), "is its model an English one? see models/README.md"
        )
    return f'{found}; heard "{heard}" of "{SPOKEN}", as this computer says it'


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
