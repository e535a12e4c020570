"""What a ratio means: "1 to N" is one part and N of water, "1 in N" is one part in N in all; a colon could be either.

Both readings are kept apart from the first word on: every ratio read here carries its reading.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal, TypeAlias

from assistant.core.quantities.amounts import SaidRatio
from assistant.core.quantities.errors import OutOfRange

Reading: TypeAlias = Literal["in", "to"]
Why: TypeAlias = Literal["said", "setting", "default", "equal parts"]

SHIPPED: Reading = "to"
"""How a colon is read while the keeper has set nothing."""

ASKED_UP_TO = 5
"""With nothing set, a colon between 1:1 and this is asked about: there the two readings lie a fifth or more apart."""


@dataclass(frozen=True, slots=True)
class Ratio:
    """A ratio with its one reading."""

    n: Fraction
    """The second number when the first is 1: parts of water with "to", parts in all with "in"."""
    reading: Reading
    why: Why = "said"
    """What decided the reading: the word said, the keeper's setting, the shipped default, or 1:1, read alike by all."""

    @property
    def share(self) -> Fraction:
        """Concentrate as a share of the finished mix, above 0 and at most 1."""
        return 1 / self.n if self.reading == "in" else 1 / (1 + self.n)

    @property
    def parts(self) -> tuple[Fraction, Fraction]:
        """[1, N] as said; what N counts is the reading's."""
        return Fraction(1), self.n

    @property
    def as_in(self) -> tuple[Fraction, Fraction]:
        """The same mix worded "1 in N"."""
        return Fraction(1), 1 / self.share

    @property
    def as_to(self) -> tuple[Fraction, Fraction]:
        """The same mix worded "1 to N"."""
        return Fraction(1), 1 / self.share - 1

    @property
    def other(self) -> Ratio | None:
        """The mix that the same numbers make under the other word; None where only one reading is possible."""
        if self.why == "equal parts" or (self.reading == "to" and self.n < 1):
            return None
        return Ratio(self.n, "in" if self.reading == "to" else "to", self.why)


@dataclass(frozen=True, slots=True)
class EitherWay:
    """A colon that must be asked about: the two mixes it could mean."""

    as_in: Ratio
    as_to: Ratio


def read(said: SaidRatio, setting: Reading | None) -> Ratio | EitherWay:
    """What a ratio means.

    A ratio that doesn't start with 1 is scaled: "2 to 50" is 1 to 25. "1 in 1" is undiluted; 1 to 1 and 1:1 are equal
    parts whatever is set. A colon follows the keeper's setting; without one it is "to", but up to 1:5 it is asked.

    said: as said or written; both parts above 0.
    setting: what this keeper's colon means; None when nothing is set.
    Gives: the ratio with its reading, or both readings where only the keeper can say.
    Fails: OutOfRange if a part isn't above 0, or with "in" the whole is less than the part.
    Source: mixing-ratio-in, mixing-ratio-to; that a bare colon can't be trusted: mixing-ratio-colon.

    >>> read(SaidRatio(Fraction(1), Fraction(32), "in"), None).share
    Fraction(1, 32)
    >>> read(SaidRatio(Fraction(1), Fraction(32), "to"), None).share
    Fraction(1, 33)
    """
    for part in (said.first, said.second):
        if part <= 0:
            raise OutOfRange("each part of a ratio", part, "more than 0")
    n = said.second / said.first
    if said.word == "in":
        return _in_all(n, "said")
    if n == 1:
        return Ratio(n, "to", "equal parts")
    if said.word == "to":
        return Ratio(n, "to")
    if setting is None:
        return EitherWay(Ratio(n, "in"), Ratio(n, "to")) if 1 < n <= ASKED_UP_TO else Ratio(n, SHIPPED, "default")
    return _in_all(n, "setting") if setting == "in" else Ratio(n, "to", "setting")


def of_share(share: Fraction) -> Ratio:
    """A mix as "1 to N", from its share of concentrate; undiluted is 1 to 0.

    share: concentrate in the finished mix, above 0 and at most 1.
    Fails: OutOfRange.
    """
    if not 0 < share <= 1:
        raise OutOfRange("the share of concentrate", share, "above 0 and at most 1")
    return Ratio(1 / share - 1, "to")


def _in_all(n: Fraction, why: Why) -> Ratio:
    if n < 1:
        raise OutOfRange('the whole of "1 in N"', n, "1 or more")
    return Ratio(n, "in", why)
