"""A mouth for the shells: what is said becomes sound, played or written to a file.

Speech is an extra: where it fails, one line says why, once, and the program goes on in writing; after a few failures
in a row it isn't tried again.
"""

from __future__ import annotations

import tempfile
from collections import deque
from pathlib import Path
from types import TracebackType

from assistant.contract import Reply
from assistant.say.playing import NoSound, Speaker
from assistant.say.voice import Manner, NoVoice, Voice
from assistant.shells.folder import ShellFault
from assistant.shells.out import complain

GIVES_UP_AFTER = 3
"""Failures in a row: a loudspeaker may be busy for a moment, but a computer that can't speak isn't asked for ever."""


class Mouth:
    """Speaks replies. A new one stops what is being said."""

    def __init__(self, voice: Voice | None = None, speaker: Speaker | None = None) -> None:
        self._voice = voice or Voice()
        self._speaker = speaker or Speaker()
        self._folder = tempfile.TemporaryDirectory(prefix="rinseback-voice-", ignore_cleanup_errors=True)
        self._failures = 0
        self.lately: deque[str] = deque(maxlen=3)
        """What was said last, newest at the end."""

    def speak(self, reply: Reply) -> None:
        """Says what came due and the reply, and returns at once."""
        self.say(spoken(reply))

    def answer(self, reply: Reply) -> None:
        """Says a reply and returns at once; "hush" is answered by silence, "slower" from now on."""
        if reply.intent == "hush":
            self.stop()
            return
        if reply.intent == "slower":
            self.pace(slow=reply.values.get("slower") is True)
        self.speak(reply)

    def say(self, text: str) -> None:
        """Says a text, and returns at once; the first failure is told, those that follow it are silent."""
        if self._failures >= GIVES_UP_AFTER:
            return
        self._speaker.stop()
        self.lately.append(text)
        path = Path(self._folder.name) / "reply.wav"
        trouble = self._voice.render(text, path) or self._speaker.play(path)
        if trouble is None:
            self._failures = 0
            return
        self._failures += 1
        if self._failures == 1:
            complain(f"can't speak: {trouble}")

    def warm(self) -> None:
        """Starts the speech engine ahead of the first reply; a fault is told then."""
        self._voice.warm()

    def wait(self) -> None:
        """Until the last reply is said."""
        self._speaker.wait()

    def pace(self, *, slow: bool) -> None:
        """Speak slowly from now on, or as usual again."""
        usual = Manner()
        self._voice.manner = usual.slower() if slow else usual

    def stop(self) -> None:
        """Silence at once."""
        self._speaker.stop()

    @property
    def speaking(self) -> bool:
        """True while sound comes out."""
        return self._speaker.playing

    def now_playing(self) -> bytes:
        """The samples that are on their way to the loudspeaker."""
        return self._speaker.now_playing()

    def __enter__(self) -> Mouth:
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self._speaker.stop()
        self._voice.close()
        self._folder.cleanup()


def spoken(reply: Reply) -> str:
    """The words said aloud: what came due, then the reply."""
    due = [reminder for reminder in reply.reminders if reminder not in reply.say]
    return " ".join((*due, reply.say))


def say_to(reply: Reply, path: str) -> None:
    """Writes the spoken reply to a WAV file.

    Fails: ShellFault.
    """
    with Voice() as voice:
        trouble: NoVoice | NoSound | None = voice.render(spoken(reply), Path(path))
    if trouble is not None:
        raise ShellFault(f"can't speak to {path}: {trouble}")
