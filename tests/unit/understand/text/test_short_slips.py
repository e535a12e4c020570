"""Very short answers and commands are read though they are misspelt or misheard; half a sentence never is."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

import pytest

from assistant.contract import Pending, Reading, Slots, Talk
from assistant.understand.text.short_slips import mended

Ask = Callable[..., Reading]

SLIPS = """
yess = yes
yesss = yes
yess please = yes
nooo = no
don't = no
er no I don't think so = no
no, hang on, no = no
hlep = help
hepl = help
udno that = undo
undue that = undo
on do that = undo
undoo = undo
repaet = repeat
nxet = next
whats nxt = next
what's necks = next
statsu = status
stay tus on the east tank = status
what was that ewe said = repeat
now what = next
what? = repeat
"""
NEITHER_YES_NOR_NO = """
know
no no know
I know
who knows
yes but
yes what
yes or no
yet
maybe
I think so
no wait what was I
no idea
it was on the
that was on
net
"""


@pytest.mark.parametrize("row", SLIPS.strip().splitlines())
def test_a_slip_in_a_very_short_text_is_mended(row: str, ask: Ask) -> None:
    said, _, question = row.partition(" = ")
    assert ask(said).intent == question


@pytest.mark.parametrize("said", NEITHER_YES_NOR_NO.strip().splitlines())
def test_what_only_sounds_like_an_answer_is_none(said: str, ask: Ask) -> None:
    assert ask(said).intent not in ("yes", "no")


@pytest.mark.parametrize(
    "said",
    ["undo my belt", "cancel the vet", "repeat the song", "what's the next train", "help me lift this", "text him"],
)
def test_a_strange_word_among_few_makes_it_no_question(said: str, ask: Ask) -> None:
    assert ask(said).intent is None


@pytest.mark.parametrize("said", ["know", "no know", "no I haven't rinsed it"])
def test_with_a_question_waiting_it_is_a_no(said: str, ask: Ask) -> None:
    before = Reading("rinsed", "done", Slots(steps=("rinse",)), 0.9)
    waiting = Pending(before, datetime(2026, 1, 5, 9, tzinfo=UTC), on_yes=before)
    assert ask(said, Talk(pending=waiting)).intent == "no"


def test_a_known_word_is_never_mended() -> None:
    assert mended(("text",), {"text"}, asked=False) == ("text",)


def test_a_long_text_is_left_alone() -> None:
    assert mended(("hlep",) * 6, set(), asked=False) == ("hlep",) * 6
