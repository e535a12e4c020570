"""A mouth whose voice or loudspeaker fails: told once, tried again, and not for ever."""

from __future__ import annotations

from pathlib import Path

import pytest

from assistant.say.playing import NoSound, Speaker
from assistant.say.voice import NoVoice, Voice
from assistant.shells.mouth import GIVES_UP_AFTER, Mouth

FAULT = NoVoice("the engine stopped", "say it again")


class FailingVoice(Voice):
    """Fails as often as it is told to, one entry a text."""

    def __init__(self, *faults: NoVoice | None) -> None:
        super().__init__(command=("never-started",))
        self._faults = list(faults)
        self.asked: list[str] = []

    def render(self, text: str, path: Path) -> NoVoice | None:
        self.asked.append(text)
        return self._faults.pop(0)


class MuteSpeaker(Speaker):
    def __init__(self) -> None:
        super().__init__()
        self.played = 0

    def play(self, path: Path) -> NoSound | None:
        self.played += 1
        return None


def test_one_failure_is_told_and_the_next_reply_is_said(capsys: pytest.CaptureFixture[str]) -> None:
    voice, speaker = FailingVoice(FAULT, None), MuteSpeaker()
    with Mouth(voice, speaker) as mouth:
        mouth.say("ten minutes")
        mouth.say("nine minutes")
    assert speaker.played == 1
    assert capsys.readouterr().err.count("can't speak: the engine stopped; say it again") == 1


def test_after_a_few_failures_in_a_row_it_is_not_tried_again(capsys: pytest.CaptureFixture[str]) -> None:
    voice = FailingVoice(*[FAULT] * GIVES_UP_AFTER)
    with Mouth(voice, MuteSpeaker()) as mouth:
        for minute in range(GIVES_UP_AFTER + 2):
            mouth.say(f"{minute} minutes")
    assert len(voice.asked) == GIVES_UP_AFTER
    assert capsys.readouterr().err.count("can't speak") == 1


def test_a_reply_that_was_said_begins_the_count_anew() -> None:
    faults = [FAULT] * (GIVES_UP_AFTER - 1)
    voice, speaker = FailingVoice(*faults, None, *faults, None), MuteSpeaker()
    with Mouth(voice, speaker) as mouth:
        for minute in range(2 * GIVES_UP_AFTER):
            mouth.say(f"{minute} minutes")
    assert speaker.played == 2
