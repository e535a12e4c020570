"""What is called out in the room is answered only where it is a cry that was heard fairly well."""

from __future__ import annotations

import pytest

from assistant.contract import Heard, Word, World
from assistant.understand.harm.called_out import called_out
from assistant.understand.reader import Reader


def heard(text: str, posterior: float = 0.8) -> Heard:
    return Heard(text, True, (), tuple(Word(word, posterior) for word in text.split()))


@pytest.fixture
def answered(reader: Reader, world: World):  # type: ignore[no-untyped-def]
    return lambda said: called_out(said, lambda text: reader(Heard(text), world))


@pytest.mark.parametrize(
    "text",
    [
        *("i got bleach in my eye", "help there's bleach in my eyes", "i can't breathe in here"),
        *(
            "i swallowed some bleach",
            "the gecko got out",
            "bleach on my skin and it burns",
            "the snake drank the bleach",
        ),
    ],
)
def test_a_cry_that_was_heard_is(answered, text: str) -> None:  # type: ignore[no-untyped-def]
    assert answered(heard(text))


def test_one_heard_badly_is_not(answered) -> None:  # type: ignore[no-untyped-def]
    assert not answered(heard("i got bleach in my eye", 0.6))


@pytest.mark.parametrize(
    "text",
    [
        *(
            "how long is left",
            "i can't find my keys",
            "my chest hurts we need to roll over my for a one cage jumped out",
        ),
        *("what can i put on the cut on his tail", "", "rinsed"),
    ],
)
def test_other_talk_is_not(answered, text: str) -> None:  # type: ignore[no-untyped-def]
    assert not answered(heard(text, 1.0))
