"""Ears for the shells: a recording becomes what was heard, by the recogniser that this computer has."""

from __future__ import annotations

import sys
from pathlib import Path

from assistant.contract import Heard
from assistant.hear.choose import open_recogniser
from assistant.hear.recogniser import CannotListen, hear_all, pieces
from assistant.hear.vocabulary import Sayable, sayable
from assistant.hear.wav import BadRecording, read_file, read_stream
from assistant.shells.folder import Folder, ShellFault
from assistant.shells.sitting import Sitting


def heard_from(recording: str, sitting: Sitting, folder: Folder) -> Heard:
    """What was said in a WAV file; "-" reads one from stdin.

    Fails: ShellFault, for a recording or a recogniser that can't be used.
    """
    try:
        sound = read_stream(sys.stdin.buffer) if recording == "-" else read_file(Path(recording))
        recogniser = open_recogniser(words_of(sitting), folder.models, folder.cache)
        return hear_all(recogniser, pieces(sound))
    except (BadRecording, CannotListen) as fault:
        raise ShellFault(str(fault)) from fault


def words_of(sitting: Sitting, call_word: str = "") -> Sayable:
    """What this keeper may say: the questions, filled with the household's names, after a call word if there is one."""
    facts = sitting.facts
    agents, organisms = facts.agents.values(), facts.organisms.values()
    return sayable(sitting.questions.values(), sitting.household, agents, organisms, call_word)
