"""A germ that no fact tells of is named as that; what is no germ isn't."""

from __future__ import annotations

import pytest
from talk import Talk


@pytest.mark.parametrize(
    ("asked", "germ"),
    [
        ("does bleach work on giardia", "giardia"),
        ("what kills black mould", "black mould"),
        ("which one is good against fleas", "fleas"),
        ("does chlorhexidine kill e. coli", "e. coli"),
        ("does bleach work on blorbo", "blorbo"),
    ],
)
def test_it_says_that_it_has_nothing(asked: str, germ: str) -> None:
    assert Talk().tell(asked).say.startswith(f"I have nothing on {germ}")


@pytest.mark.parametrize(
    "asked",
    [
        "does bleach work on salmonella",
        "does bleach work on crypto",
        "what kills yellow fungus",
        "does chlorhexidine kill pinworms",
        "does bleach kill germs",
        "does bleach work on it",
        "is alcohol any good on tongs",
        "how long does bleach need on glass",
        "what should I use for a quick clean",
    ],
)
def test_what_is_known_or_no_germ_is_not_called_unknown(asked: str) -> None:
    assert "nothing on" not in Talk().tell(asked).say
