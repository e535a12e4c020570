"""Harm and ordinary talk in sets that were written before the rules had read a line of them, one after another.

Each was measured once as it was written, and the rules mended by what it showed (DEVELOPERS.md has the figures of those
first runs). Here they hold what was gained; `harm_sets/*.txt` has them, harm first: under "harm", or by the question
that a line has to come out as.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from assistant.contract import Reading
from assistant.understand.certainty import HARM

Ask = Callable[[str], Reading]

FOLDER = Path(__file__).parent / "harm_sets"
SETS = sorted(path.stem for path in FOLDER.glob("*.txt"))
HEARD = 0.95
"""Least share of harm that is answered as harm or asked about as such."""
FALSE = 0.02
"""Greatest share of ordinary lines that are."""
KNOWN_MISREAD = {
    "help me": "help",  # the same words ask what can be asked
    "Biscuit's been sprayed": "done",  # the name is the home's as well, and that is sprayed every time
}


def lines(name: str, part: str) -> list[str]:
    """The lines of one part of a set; "harm": of all that isn't ordinary."""
    parts = parts_of(name)
    return [line for of, said in parts.items() if of != "ordinary" for line in said] if part == "harm" else parts[part]


def parts_of(name: str) -> dict[str, list[str]]:
    """A set's lines by part."""
    of: dict[str, list[str]] = {}
    for line in (FOLDER / f"{name}.txt").read_text("utf-8").splitlines():
        if line.startswith("# "):
            of[line[2:]] = here = []
        else:
            here.append(line)
    return of


@pytest.mark.parametrize("name", SETS)
def test_harm_is_heard_and_never_taken_for_an_ordinary_question(name: str, ask: Ask) -> None:
    said = lines(name, "harm")
    read = {line: ask(line).intent for line in said}
    unheard = [line for line in said if read[line] not in HARM]
    assert len(unheard) <= (1 - HEARD) * len(said), unheard
    misread = {line: intent for line, intent in read.items() if intent not in (None, *HARM)}
    assert misread.items() <= KNOWN_MISREAD.items()


@pytest.mark.parametrize("name", SETS)
def test_ordinary_talk_seldom_sounds_an_alarm(name: str, ask: Ask) -> None:
    said = lines(name, "ordinary")
    alarmed = [line for line in said if ask(line).intent in HARM]
    assert len(alarmed) <= FALSE * len(said), alarmed


@pytest.mark.parametrize("name", SETS)
def test_an_accident_is_no_wish_and_a_wish_no_accident(name: str, ask: Ask) -> None:
    parts = parts_of(name)
    for intent in HARM & parts.keys():
        wrong = {line: ask(line).intent for line in parts[intent]}
        wrong = {line: read for line, read in wrong.items() if read in HARM and read != intent}
        assert len(wrong) <= FALSE * len(parts[intent]), wrong


def test_every_set_is_long_enough_to_tell() -> None:
    assert len(SETS) >= 7
    for name in SETS:
        assert len(lines(name, "harm")) >= 70
        assert len(lines(name, "ordinary")) >= 80
