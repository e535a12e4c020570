"""Speech: a text becomes a WAV file. Playing it is `playing`; what is said is `wording`.

pyttsx3 speaks in a program of its own (`voice_worker` says why), started once and kept, so that a reply is spoken
without waiting for the engine to start. A computer that can't speak gets one clear line, and everything else works.
"""

from __future__ import annotations

import json
import os
import re
import subprocess
import sys
import threading
import wave
from dataclasses import dataclass
from pathlib import Path
from typing import IO

LONGEST_WAIT_S = 20.0
"""For one reply; an engine that takes longer hangs."""


@dataclass(frozen=True, slots=True)
class NoVoice:
    """Speech could not be made. One line: why, and what to do."""

    why: str
    fix: str

    def __str__(self) -> str:
        return f"{self.why}; {self.fix}"


@dataclass(frozen=True, slots=True)
class Manner:
    """How it speaks."""

    words_a_minute: int = 165
    voice: str = "en-us+f2" if sys.platform == "linux" else ""
    """The engine's name for a voice; empty: its own choice. Of eight voices of the library, on ten sentences, the
    recogniser understood two women's voices by far the best (0 and 4 words wrong in 100, the usual voice 75);
    this is the plainer of the two. Whether people find it clearer was not tried."""
    volume: float = 1.0
    """0 to 1."""

    def slower(self) -> Manner:
        """The same voice at three quarters of the speed."""
        return Manner(self.words_a_minute * 3 // 4, self.voice, self.volume)


class Voice:
    """Renders speech. The engine starts at `warm` or the first `render`; `close` ends it. Safe from several threads."""

    def __init__(self, manner: Manner | None = None, command: tuple[str, ...] | None = None) -> None:
        """command: starts the program that speaks; for tests."""
        self.manner = manner or Manner()
        self._command = command or (sys.executable, "-m", "assistant.say.voice_worker")
        self._engine: subprocess.Popen[str] | None = None
        self._one_at_a_time = threading.Lock()

    def warm(self) -> NoVoice | None:
        """Start the engine ahead of the first reply; None: it is ready."""
        with self._one_at_a_time:
            return self._started()

    def render(self, text: str, path: Path) -> NoVoice | None:
        """Write the text as speech to a WAV file; None: it is there."""
        said = speakable(text)
        if not said:
            return NoVoice("there is nothing to say", "give some words")
        try:
            path.unlink(missing_ok=True)
            path.touch()
        except OSError as fault:
            return NoVoice(f"{path} can't be written ({fault.strerror})", "choose another place")
        with self._one_at_a_time:
            silent = self._started() or self._spoken(said, path.absolute())
        return silent or _checked(path)

    def close(self) -> None:
        """End the engine. A later `render` starts it again."""
        with self._one_at_a_time:
            self._end()

    def __enter__(self) -> Voice:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    def _started(self) -> NoVoice | None:
        if self._engine is not None and self._engine.poll() is None:
            return None
        self._end()
        here = str(Path(__file__).resolve().parents[2])
        paths = os.pathsep.join(path for path in (here, os.environ.get("PYTHONPATH")) if path)
        try:
            self._engine = subprocess.Popen(
                self._command,
                stdin=subprocess.PIPE,
                stdout=subprocess.PIPE,
                stderr=subprocess.DEVNULL,
                env={**os.environ, "PYTHONPATH": paths},
                text=True,
                encoding="utf-8",
            )
        except OSError as fault:
            return NoVoice(f"the speech program doesn't start ({fault.strerror})", "install rinseback again")
        return self._answer()

    def _spoken(self, text: str, path: Path) -> NoVoice | None:
        request = {"text": text, "path": str(path), **_settings(self.manner)}
        engine = self._engine
        assert engine is not None
        try:
            _pipe(engine.stdin).write(json.dumps(request) + "\n")
            _pipe(engine.stdin).flush()
        except OSError:
            pass  # it has died; `_answer` says so
        return self._answer()

    def _answer(self) -> NoVoice | None:
        engine = self._engine
        assert engine is not None
        hung = threading.Timer(LONGEST_WAIT_S, engine.kill)
        hung.start()
        line = _pipe(engine.stdout).readline()
        hung.cancel()
        if not line:
            code = engine.wait()
            self._end()
            return NoVoice(f"the speech engine stopped (code {code})", "say it again; `rinseback check` tells more")
        fault = json.loads(line)["fault"]
        return NoVoice(f"the speech engine says: {fault}", _mend()) if fault else None

    def _end(self) -> None:
        engine, self._engine = self._engine, None
        if engine is None:
            return
        try:
            _pipe(engine.stdin).close()
            engine.wait(timeout=2)
        except (OSError, subprocess.TimeoutExpired):
            engine.kill()
            engine.wait()
        _pipe(engine.stdout).close()


def works(voice: Voice, path: Path) -> NoVoice | str:
    """Try it: a line on what speaks here, or why nothing does.

    path: a file that may be written and thrown away.
    """
    fault = voice.render("one, two, three", path)
    if fault is not None:
        return fault
    with wave.open(str(path)) as opened:
        seconds = opened.getnframes() / opened.getframerate()
    path.unlink()
    return f"pyttsx3 spoke for {seconds:.1f} s at {voice.manner.words_a_minute} words a minute"


def _settings(manner: Manner) -> dict[str, object]:
    return {"words_a_minute": manner.words_a_minute, "voice": manner.voice, "volume": manner.volume}


def _pipe(pipe: IO[str] | None) -> IO[str]:
    assert pipe is not None
    return pipe


def _checked(path: Path) -> NoVoice | None:
    try:
        with wave.open(str(path)) as opened:
            if opened.getnframes():
                return None
    except (OSError, EOFError, wave.Error) as fault:
        return NoVoice(f"the speech engine wrote no WAV file ({fault or 'it is empty'})", _mend())
    return NoVoice("the speech engine wrote a WAV file without sound", _mend())


def _mend() -> str:
    if sys.platform == "linux":
        return "pip install espeakng-loader, or your system's package espeak-ng"
    return "check that the system's own speech works, then pip install --upgrade pyttsx3"


# ---------------------------------------------------------------- text that a voice can read


_SPOKEN: tuple[tuple[re.Pattern[str], str], ...] = tuple(
    (re.compile(pattern), words)
    for pattern, words in (
        (r"(?<=\d):(?=\d)", " to "),
        (r"(?<![^\W\d_])m[Ll](?![^\W\d_])", " mils "),
        (r"(?<=\d)\s*L(?![^\W\d_])", " litres "),
        (r"(?<=\d)\s*min(?![^\W\d_])", " minutes "),
        (r"(?<![^\W\d_])ppm(?![^\W\d_])", " parts per million "),
        (r"\s*°\s*[Cc]?|(?<=\d)\s*degC(?![^\W\d_])", " degrees "),
        (r"%", " percent "),
        (r"(?<=\d)\s*/\s*(?=\d)", " over "),
        (r"\s*/\s*", " or "),
        (r"[×]", " times "),
        (r"[–—]", ", "),
        (r"\s*\n\s*", ". "),
        # A control sign for one engine or another, or a letter that no voice reads.
        (r"[<>\[\]{}|\\^~*_#`\"=]", " "),
    )
)


def speakable(text: str) -> str:
    """The text without signs that a voice would misread: "1:32" as one to thirty-two, never a time of day."""
    for pattern, words in _SPOKEN:
        text = pattern.sub(words, text)
    text = re.sub(r"\s+([,.;?!])", r"\1", re.sub(r"\s+", " ", text))
    return re.sub(r"([.?!])(?:\s*[.])+", r"\1", text).strip()
