"""Ratios: in, to, a colon under each setting, and what is asked or refused."""

from __future__ import annotations

from fractions import Fraction
from typing import Literal

import pytest

from assistant.core.quantities.amounts import RatioWord, SaidRatio
from assistant.core.quantities.errors import OutOfRange
from assistant.core.quantities.ratio import EitherWay, Ratio, of_share, read


def said(first: str | int, word: RatioWord, second: str | int) -> SaidRatio:
    return SaidRatio(Fraction(first), Fraction(second), word)


@pytest.mark.parametrize(
    ("given", "setting", "share", "reading", "why"),
    [
        (said(1, "in", 32), "to", "1/32", "in", "said"),
        (said(1, "to", 32), "in", "1/33", "to", "said"),
        (said(1, "colon", 32), "to", "1/33", "to", "setting"),
        (said(1, "colon", 32), "in", "1/32", "in", "setting"),
        (said(1, "colon", 32), None, "1/33", "to", "default"),
        (said(1, "colon", 4), "in", "1/4", "in", "setting"),
        (said(1, "colon", 1), "in", "1/2", "to", "equal parts"),
        (said(1, "colon", 1), None, "1/2", "to", "equal parts"),
        (said(3, "colon", 3), "in", "1/2", "to", "equal parts"),
        (said(1, "to", 1), None, "1/2", "to", "equal parts"),
        (said(1, "in", 1), None, "1", "in", "said"),
        (said(2, "to", 50), None, "1/26", "to", "said"),
        (said(2, "in", 50), None, "1/25", "in", "said"),
        (said("0.5", "to", 4), None, "1/9", "to", "said"),
        (said(2, "to", 1), None, "2/3", "to", "said"),
    ],
)
def test_a_ratio_has_one_reading(
    given: SaidRatio, setting: Literal["in", "to"] | None, share: str, reading: str, why: str
) -> None:
    found = read(given, setting)
    assert isinstance(found, Ratio)
    assert (found.share, found.reading, found.why) == (Fraction(share), reading, why)


@pytest.mark.parametrize("n", ["2", "3", "4", "5", "1.5"])
def test_a_small_colon_with_nothing_set_is_asked_about(n: str) -> None:
    found = read(said(1, "colon", n), None)
    assert isinstance(found, EitherWay)
    assert (found.as_in.share, found.as_to.share) == (1 / Fraction(n), 1 / (1 + Fraction(n)))


def test_one_to_32_is_one_in_33() -> None:
    found = read(said(1, "to", 32), None)
    assert isinstance(found, Ratio)
    assert (found.parts, found.as_in, found.as_to) == ((1, 32), (1, 33), (1, 32))
    assert found.other == Ratio(Fraction(32), "in")


@pytest.mark.parametrize("given", [said(1, "colon", 1), said(1, "to", 1), said(2, "to", 1)])
def test_some_ratios_have_no_other_reading(given: SaidRatio) -> None:
    found = read(given, "to")
    assert isinstance(found, Ratio)
    assert found.other is None


@pytest.mark.parametrize(
    "given", [said(1, "in", "0.5"), said(3, "in", 2), said(0, "to", 3), said(1, "to", 0), said(-1, "in", 3)]
)
def test_more_than_the_whole_and_nothing_at_all_are_refused(given: SaidRatio) -> None:
    with pytest.raises(OutOfRange):
        read(given, "to")


def test_a_colon_set_to_in_that_is_more_than_the_whole_is_refused() -> None:
    with pytest.raises(OutOfRange):
        read(said(2, "colon", 1), "in")


@pytest.mark.parametrize(("share", "n"), [("1", "0"), ("1/2", "1"), ("0.01", "99")])
def test_a_share_is_worded_as_one_to_n(share: str, n: str) -> None:
    assert of_share(Fraction(share)) == Ratio(Fraction(n), "to")


@pytest.mark.parametrize("share", ["0", "-1", "1.01"])
def test_a_share_is_above_nothing_and_at_most_all(share: str) -> None:
    with pytest.raises(OutOfRange):
        of_share(Fraction(share))
