"""What the studies of one agent against one organism come to: does it work, how strong, how long, how sure.

Only published rows are weighed (efficacy.toml). What a keeper's own mix comes to is `wet_time`; here it is the agent
at its best that is asked about.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal, TypeAlias

from assistant.core.facts import Efficacy, Facts
from assistant.core.round.wet_time import OrganismVerdict

Doubt: TypeAlias = Literal["nothing published", "studies disagree", "only partly", "only on others"]

DIRECTNESS = (
    "same organism",
    "reptile isolates",
    "same genus",
    "surrogate, same genus",
    "surrogate, same family",
    "surrogate, same order",
    "surrogate",
    "general rule",
)
"""From nearest to farthest; what isn't listed counts as the farthest."""


@dataclass(frozen=True, slots=True)
class Evidence:
    """What is known of one agent, or of heat or drying, against one organism."""

    agent: str
    organism: str
    verdict: OrganismVerdict
    figure: Efficacy | None = None
    """The row that strength and time are taken from; None: none works."""
    rows: tuple[Efficacy, ...] = ()
    """Every row that was weighed, nearest to the organism first."""
    doubt: Doubt | None = None
    """Why the verdict is "unknown"; None: it isn't."""

    @property
    def percent(self) -> Fraction | None:
        """Strength that worked, percent of active; None: not stated, or nothing works."""
        return self.figure.percent if self.figure is not None else None

    @property
    def minutes(self) -> Fraction | None:
        """Minutes that it took there; None: not stated, or nothing works."""
        return self.figure.minutes if self.figure is not None else None

    @property
    def degrees(self) -> Fraction | None:
        """For heat: degrees Celsius."""
        return self.figure.degrees if self.figure is not None else None

    @property
    def distance(self) -> int:
        """How far what was tested is from the organism: 0 is the organism itself."""
        row = self.figure or (self.rows[0] if self.rows else None)
        return distance_of(row.directness) if row is not None else len(DIRECTNESS)


def distance_of(directness: str) -> int:
    """How far a row's organism is from the one asked about, for putting rows in order: 0 is the nearest."""
    return DIRECTNESS.index(directness) if directness in DIRECTNESS else len(DIRECTNESS)


def weigh(agent: str, organism: str, facts: Facts) -> Evidence:
    """What the published rows of one agent against one organism come to.

    It works where some row has it work and none that was at least as strong has it fail or do only part; it fails where
    none has it work and one has it fail. The figure is the nearest row's, then one that states strength and time, then
    the stronger. With no row of its own an organism of a wider kind has that kind's rows for company, which never make
    it more than "unknown".

    agent: an agent's or a method's id; organism: an organism's id.
    Gives: the verdict with its rows; "unknown" where nothing is published, or where studies disagree.
    Source: the rows of efficacy.toml.
    """
    rows = _nearest_first(facts.efficacy(agent, organism))
    if not rows:
        like = facts.organisms[organism].like if organism in facts.organisms else None
        others = _nearest_first(facts.efficacy(agent, like)) if like is not None else ()
        return Evidence(agent, organism, "unknown", None, others, "only on others" if others else "nothing published")
    works = [row for row in rows if row.outcome == "works"]
    standing = [row for row in works if not any(_outdone(row, other) for other in rows)]
    if standing:
        return Evidence(agent, organism, "works", _figure(standing), rows)
    if works:
        return Evidence(agent, organism, "unknown", None, rows, "studies disagree")
    if any(row.outcome == "fails" for row in rows):
        return Evidence(agent, organism, "fails", None, rows)
    return Evidence(agent, organism, "unknown", None, rows, "only partly")


def _nearest_first(rows: tuple[Efficacy, ...]) -> tuple[Efficacy, ...]:
    return tuple(sorted(rows, key=lambda row: distance_of(row.directness)))


def _outdone(row: Efficacy, other: Efficacy) -> bool:
    """Whether the other row speaks against this one: as strong, as hot and as long, as near, and it did not work."""
    if other.outcome == "works" or distance_of(other.directness) > distance_of(row.directness):
        return False
    if row.degrees is not None or other.degrees is not None:
        return row.degrees is not None and other.degrees is not None and other.degrees >= row.degrees
    if row.percent is None or other.percent is None:
        return other.outcome == "fails" and row.percent is None and other.percent is None and not other.weaker
    return other.percent >= row.percent and not _longer(row, other)


def _longer(row: Efficacy, other: Efficacy) -> bool:
    """The row that works was given more time than the other, so both may be true."""
    return row.minutes is not None and other.minutes is not None and row.minutes > other.minutes


def _figure(rows: list[Efficacy]) -> Efficacy:
    """The nearest; of those one that states both strength and time; of those the longer: too short a time harms."""
    nearest = min(distance_of(row.directness) for row in rows)
    close = [row for row in rows if distance_of(row.directness) == nearest]
    return max(close, key=_told)


def _told(row: Efficacy) -> tuple[bool, bool, Fraction, Fraction]:
    strength = row.percent if row.percent is not None else row.degrees
    stated = row.minutes is not None
    return (strength is not None and stated, strength is not None, strength or Fraction(0), row.minutes or Fraction(0))
