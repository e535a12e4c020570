"""Amounts and mixes as values: what a keeper says, before and after reading.

Here belong the small frozen types that every room passes around. Arithmetic on them lives with its subject
(`units` converts, `ratio` reads ratios, `dilution` mixes); reading them out of text lives in `understand`.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal, TypeAlias

RatioWord: TypeAlias = Literal["in", "to", "colon"]


@dataclass(frozen=True, slots=True)
class Amount:
    """So much of a unit, exact."""

    amount: Fraction
    unit: str
    """A unit's name as the reply contract spells it: "mL", "US fl oz", "tsp", "min", "degC" ... (see `units.UNITS`)."""


@dataclass(frozen=True, slots=True)
class SaidRatio:
    """A ratio as it was said or written; which reading it has is decided by `ratio.read`."""

    first: Fraction
    second: Fraction
    word: RatioWord
    """What stood between: "1 in 32", "1 to 32", or "1:32" (colon; "an ounce per gallon" leaves it as open)."""
    part: Amount | None = None
    """Of a recipe ("one ounce to the gallon"): the concentrate as said; `first` and `second` are in its unit."""
    whole: Amount | None = None
    """Of a recipe: what it goes to or in, as said."""
    sides: bool = False
    """It was said which side is the water: "three parts vinegar to one of water". `first` is the concentrate."""

    @property
    def may_be_turned(self) -> bool:
        """More of the first than of the second, and no word of which is the water: "40 to 1" may mean 1 to 40."""
        return self.word != "in" and self.first > self.second and self.part is None and not self.sides


@dataclass(frozen=True, slots=True)
class Percent:
    """A strength in percent, in the stock's own terms and basis."""

    percent: Fraction


@dataclass(frozen=True, slots=True)
class Ppm:
    """A strength in parts per million of available chlorine (mg/L)."""

    ppm: Fraction


@dataclass(frozen=True, slots=True)
class Neat:
    """Undiluted."""


@dataclass(frozen=True, slots=True)
class Scoops:
    """What is measured with a tool that keeping.toml doesn't list: "two caps", "a 5 mil syringe"."""

    tool: str
    """ "cap", "spoon", "syringe" ..."""
    holds: Amount | None = None
    """A volume; None: it wasn't said."""
    count: Fraction | None = None
    """How many were poured; None: nothing was said of it, or it is asked."""
    wanted: bool = False
    """It is asked how many."""


Mix: TypeAlias = SaidRatio | Percent | Ppm | Neat
