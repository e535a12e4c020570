"""Harm denied, only nearly come about, or asked of beforehand; and a fire, told from what is only spoken of."""

from __future__ import annotations

import pytest

from assistant.understand.harm.fire import burns
from assistant.understand.harm.unhurt import aired_since, denies_harm, is_supposed

DENIED = """
nothing in my eye
there is no AGENT in my eye
AGENT did not get in my eye
it did not go in her eye
i do not have AGENT in my eye
i did not swallow any
nobody swallowed anything
he has not escaped
i nearly spilled the AGENT
i almost got AGENT in my eye
i drank my coffee
the ANIMAL drank some water
"""
NOT_DENIED = """
not in my eye , on my hand
it is not in my mouth but it is in my eye
i did not get it out of my eye
i did not get all of it off my skin
i have not rinsed my eye
he is not breathing
i can not see
she has not moved
i nearly fainted
the ANIMAL drank the water in the bucket
i drank my coffee and it tasted of AGENT
i drank it
no AGENT in my eye
oh no AGENT in my eye
no no AGENT in my eye
"""
BURNS = """
the AGENT caught fire
the AGENT 's on fire
AGENT on the lamp and it went up
there is a fire
fire !
help the tank is on fire
something is smoking
my sleeve is on fire
something is burning
what do i do if the AGENT catches fire
"""
NO_FIRE = """
my throat is on fire
my hands are on fire
can AGENT catch fire
will the AGENT catch fire near the lamp
is the AGENT burning
my eye is burning
it is burning
fire belly toad
the tank is smoking hot
the lamp is not smoking
the fire alarm went off
i put the fire out
"""


def lines(text: str) -> list[str]:
    return text.strip().splitlines()


@pytest.mark.parametrize("text", lines(DENIED))
def test_what_did_no_harm_is_no_cry(text: str) -> None:
    assert denies_harm(text)


@pytest.mark.parametrize("text", lines(NOT_DENIED))
def test_a_word_of_denial_hides_no_cry(text: str) -> None:
    assert not denies_harm(text)


def test_what_is_supposed_is_told_from_what_happened() -> None:
    assert is_supposed("what do i do if i get AGENT in my eye")
    assert is_supposed("is AGENT dangerous in the eyes")
    assert not is_supposed("what do i do if i got AGENT in my eye")
    assert not is_supposed("what do i do i have AGENT in my eye")


def test_a_window_open_since_the_spraying_is_no_spraying() -> None:
    assert aired_since("window 's been open since i sprayed")
    assert not aired_since("my eye has been red since i sprayed")


@pytest.mark.parametrize("text", lines(BURNS))
def test_a_fire_is_heard(text: str) -> None:
    assert burns(text)


@pytest.mark.parametrize("text", lines(NO_FIRE))
def test_what_only_sounds_like_fire_is_none(text: str) -> None:
    assert not burns(text)
