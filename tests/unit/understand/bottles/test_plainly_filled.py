"""Words beside a fill: those that leave it the bottle's own mix, and all others."""

from __future__ import annotations

import pytest

from assistant.understand.bottles.plainly_filled import beside_it


@pytest.mark.parametrize(
    "marked",
    [
        "filled {bottle}",
        "right , that is {bottle} filled up to the line",
        "my hands are still shaking but i got the {bottle} filled",
        "filled {bottle} with some fresh {agent} and water",
        "i forgot to say , i filled {bottle} {when}",
        "made up {bottle} half {agent} half water".replace("half {agent}", "{mix} {agent}"),
        "put {volume} of {agent} in {bottle} and topped it up with water",
        "spot cleaned {enclosure} and filled {bottle}",
        "half filled the {bottle}",
        "{bottle} 's full again",
    ],
)
def test_plain_words_leave_it_plain(marked: str) -> None:
    assert beside_it(marked.split()) is None


@pytest.mark.parametrize(
    ("marked", "word"),
    [
        ("filled {bottle} a bit weak", "bit"),
        ("filled {bottle} by eye", "by"),
        ("filled {bottle} straight from the concentrate", "straight"),
        ("put a glug of {agent} in {bottle}", "glug"),
        ("put some {agent} in {bottle}", "some"),
        ("filled {bottle} with glim", "with glim"),
        ("filled {bottle} with the blue stuff", "with the blue stuff"),
        ("my mate filled his {bottle}", "mate"),
        ("filled {bottle} stronger than usual", "stronger"),
    ],
)
def test_any_other_word_is_found(marked: str, word: str) -> None:
    assert beside_it(marked.split()) == word
