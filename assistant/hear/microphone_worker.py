"""A program of its own that records: one line of JSON, then pieces of 20 ms of sound on standard output.

It is run by `microphone` and never imported by it. A recogniser at work keeps all other Python of its program waiting
for up to half a second, in which a recording there would lose sound; and a sound library looks for devices only once
in a program's life, so that one plugged in again is found only by a new program.
"""

from __future__ import annotations

import json
import os
import sys
import threading
from typing import IO

from assistant.hear.microphone import PIECE, sound_library
from assistant.hear.recogniser import RATE_HZ, CannotListen


def main() -> None:
    """Record from the device named as the first argument, else from the usual one, until standard input ends."""
    device = sys.argv[1] if len(sys.argv) > 1 else None
    threading.Thread(target=_leave_with_the_program, daemon=True).start()
    sound = _private_output()
    try:
        devices = sound_library()
        try:
            stream = devices.RawInputStream(
                samplerate=RATE_HZ, blocksize=PIECE, device=device, channels=1, dtype="int16"
            )
            stream.start()
        except (devices.PortAudioError, ValueError) as fault:
            raise CannotListen(
                f"the microphone can't be used ({fault})", device or "microphone", "see `rinseback check`"
            ) from fault
    except CannotListen as fault:
        _tell(sound, {"what": fault.what, "where": fault.where, "fix": fault.fix})
        return
    _tell(sound, {})
    while True:
        piece, _ = stream.read(PIECE)
        sound.write(bytes(piece))
        sound.flush()


def _tell(out: IO[bytes], fault: dict[str, str]) -> None:
    out.write(json.dumps(fault).encode() + b"\n")
    out.flush()


def _private_output() -> IO[bytes]:
    """Standard output kept for sound alone: whatever a library prints goes nowhere."""
    out = os.fdopen(os.dup(1), "wb")
    nowhere = os.open(os.devnull, os.O_WRONLY)
    os.dup2(nowhere, 1)
    os.dup2(nowhere, 2)
    return out


def _leave_with_the_program() -> None:
    """A device that gives no sound would keep this one waiting long after the program that listens has gone."""
    while os.read(0, 1024):
        pass
    os._exit(0)


if __name__ == "__main__":
    main()
