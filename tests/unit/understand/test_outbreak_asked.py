"""Of an outbreak: whether its end is asked about, and whether a test was spoken of."""

from __future__ import annotations

import pytest

from assistant.understand.named.good_news import of_illness
from assistant.understand.named.illness_told import speaks_of_a_test


@pytest.mark.parametrize("plain", ["when are the ORGANISM gone ?", "how do i know it is over", "is it over"])
def test_its_end_is_asked(plain: str) -> None:
    assert of_illness(plain) == "ends"


@pytest.mark.parametrize("plain", ["the ORGANISM are gone", "she tested positive for ORGANISM", "when do i mop up"])
def test_its_end_is_not_asked(plain: str) -> None:
    assert of_illness(plain) != "ends"


def test_a_test_is_told_from_what_was_only_seen() -> None:
    assert speaks_of_a_test("she tested positive for ORGANISM")
    assert not speaks_of_a_test("i saw a ORGANISM on ENCLOSURE")
