"""A program of its own that speaks into files: one JSON request a line in, one JSON reply a line out.

It is run by `voice` and never imported by it. The speech engine is kept out of the main program because it prints on
standard output, can end the process it runs in, and on some systems wants the main thread; here none of that can
reach the keeper's timers.

Run on Linux only (espeak driver). On Windows the same calls go to SAPI 5, which writes WAV; on macOS to
NSSpeechSynthesizer, which writes AIFF, so the system's own afconvert turns it into WAV. Those two were not run for want
of such machines.
"""

from __future__ import annotations

import ctypes
import json
import os
import subprocess
import sys
import threading
from pathlib import Path
from typing import IO, Any

LONGEST_S = 15.0
"""For one text; the main program gives up a little later."""


def main() -> None:
    """Answer requests until standard input ends."""
    replies = _private_replies()
    try:
        engine = _engine()
    except Exception as fault:  # whatever a driver raises, its line goes to the keeper
        _reply(replies, _one_line(fault) or "it gives no reason")
        return
    _reply(replies, "")
    for line in sys.stdin:
        request = json.loads(line)
        try:
            _speak(engine, request)
        except Exception as fault:
            _reply(replies, _one_line(fault) or "it gives no reason")
        else:
            _reply(replies, "")


def _private_replies() -> IO[str]:
    """Keep standard output for replies alone: whatever a library prints goes nowhere."""
    replies = os.fdopen(os.dup(1), "w", encoding="utf-8")
    nowhere = os.open(os.devnull, os.O_WRONLY)
    os.dup2(nowhere, 1)
    os.dup2(nowhere, 2)
    sys.stdout = sys.stderr = open(os.devnull, "w", encoding="utf-8")  # noqa: SIM115 - for the life of the program
    return replies


def _reply(replies: IO[str], fault: str) -> None:
    replies.write(json.dumps({"fault": fault}) + "\n")
    replies.flush()


def _one_line(fault: Exception) -> str:
    return " ".join(str(fault).split())


def _engine() -> Any:
    if sys.platform == "linux":
        _load_speech_library()
    import pyttsx3

    return pyttsx3.init()


def _load_speech_library() -> None:
    """Load the wheel's library and name its data first: pyttsx3's own search finds neither, and the process dies.

    A machine for which there is no such wheel may have the library of its own system.
    """
    try:
        import espeakng_loader
    except ImportError:
        return
    os.environ["ESPEAK_DATA_PATH"] = espeakng_loader.get_data_path()
    ctypes.CDLL(espeakng_loader.get_library_path(), mode=ctypes.RTLD_GLOBAL)


def _speak(engine: Any, request: dict[str, Any]) -> None:
    faults: list[Exception] = []
    finished = threading.Event()
    # The library keeps its drivers' errors to itself unless asked.
    told = engine.connect("error", lambda name, exception: faults.append(exception))
    # Its espeak driver speaks in a thread of its own, and `runAndWait` may return before a long text is done.
    over = engine.connect("finished-utterance", lambda name, completed: finished.set())
    if request["voice"]:
        engine.setProperty("voice", request["voice"])
    engine.setProperty("rate", request["words_a_minute"])
    engine.setProperty("volume", request["volume"])
    if not faults:
        wanted = Path(request["path"])
        spoken = wanted.with_suffix(".aiff") if sys.platform == "darwin" else wanted
        engine.save_to_file(request["text"], str(spoken))
        engine.runAndWait()
        if sys.platform == "linux" and not faults:
            finished.wait(LONGEST_S)
        if spoken != wanted:
            subprocess.run(["afconvert", "-f", "WAVE", "-d", "LEI16", str(spoken), str(wanted)], check=True)
            spoken.unlink()
    engine.disconnect(told)
    engine.disconnect(over)
    if faults:
        raise faults[0]


if __name__ == "__main__":
    main()
