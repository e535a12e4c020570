"""Airing: how much air has to be changed, and how long that takes. How fast a room airs is a fact or a setting."""

from __future__ import annotations

from math import log

from assistant.core.quantities.errors import OutOfRange

AIR_CHANGES = {
    "shut": "airing-shut",
    "one opening": "airing-one-opening",
    "two openings": "airing-two-openings",
    "three openings": "airing-three-openings",
}
"""Facts for how fast a room airs, by what keeping.toml calls it."""

OPENINGS = tuple(AIR_CHANGES)


def air_changes_needed(removal: float) -> float:
    """Air changes after which that share of what hangs in the air is out.

    removal: share removed, above 0 and below 1 (0.99 is 99 percent).
    Gives: air changes, natural logarithm of 1 over what is left.
    Fails: OutOfRange.
    Valid: an empty room, the source gone, perfect mixing; real rooms need more.
    Source: airing-removal; the formula in the footnote to Table B.1 of the CDC/HICPAC guidelines of 2003.

    >>> round(air_changes_needed(0.99), 3)
    4.605
    """
    if not 0 < removal < 1:
        raise OutOfRange("the share removed", removal, "above 0 and below 1")
    return log(1 / (1 - removal))


def minutes(air_changes_per_hour: float, removal: float, mixing: float = 1.0) -> float:
    """How long to air a room.

    air_changes_per_hour: above 0.
    removal: share removed, above 0 and below 1.
    mixing: factor for imperfect mixing, 1 (perfect) or more; the time is multiplied by it.
    Gives: minutes.
    Fails: OutOfRange.
    Valid: as `air_changes_needed`, and only with clean air coming in.
    Source: airing-removal, airing-mixing.

    >>> round(minutes(2, 0.99))
    138
    """
    if air_changes_per_hour <= 0:
        raise OutOfRange("air changes an hour", air_changes_per_hour, "more than 0")
    if mixing < 1:
        raise OutOfRange("the mixing factor", mixing, "1 or more")
    return air_changes_needed(removal) / air_changes_per_hour * 60 * mixing
