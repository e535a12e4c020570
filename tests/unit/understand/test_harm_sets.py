"""Harm and ordinary talk as nine hands wrote them, each before the tool had read a line of it.

Each set was measured once as it was written, and then learned from and mended by (DEVELOPERS.md has the figures of
those first runs). Here they hold what was gained, in another household than the one they are learned in.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from assistant.contract import Reading
from assistant.core.harms import HARMS
from assistant.store.packaged import cry_lines

Ask = Callable[[str], Reading]

HEARD = 0.97
"""Least share of harm that is answered as harm or asked about as such."""
FALSE = 0.015
"""Greatest share of ordinary lines that are."""
OTHER = 0.03
"""Greatest share of a question's lines that come out as another question of harm."""
KNOWN_MISREAD = {
    "help me": "help",  # the same words ask what can be asked
    "The vinegar went into the bleach by mistake and I was standing directly above it.": "together",  # out first
    "Biscuit's been sprayed": "done",  # the name is the home's as well, and that is sprayed every time
}


def lines(label: str) -> list[str]:
    """Every line of a question, or the ordinary ones."""
    return [line for line, of in cry_lines() if of == label]


@pytest.mark.parametrize("label", sorted(HARMS))
def test_harm_is_heard_and_never_taken_for_an_ordinary_question(label: str, ask: Ask) -> None:
    said = lines(label)
    read = {line: ask(line).intent for line in said}
    unheard = [line for line in said if read[line] not in HARMS]
    assert len(unheard) <= (1 - HEARD) * len(said), unheard
    misread = {line: intent for line, intent in read.items() if intent not in (None, *HARMS)}
    assert misread.items() <= KNOWN_MISREAD.items()
    other = {line: intent for line, intent in read.items() if intent in HARMS and intent != label}
    assert len(other) <= OTHER * len(said), other


def test_ordinary_talk_seldom_sounds_an_alarm(ask: Ask) -> None:
    said = lines("ordinary")
    alarmed = [line for line in said if ask(line).intent in HARMS]
    assert len(alarmed) <= FALSE * len(said), alarmed


def test_there_is_enough_to_tell() -> None:
    assert len(lines("splash")) >= 900
    assert len(lines("wound")) >= 300
    assert len(lines("ordinary")) >= 1500
