"""What physically happened to an enclosure, told plainly: the truth that the gate must never run ahead of.

Knows nothing of events, folds or clocks of the program; it is written from what a disinfection is: taken out, cleared,
washed, sprayed after that, wet for the whole wet time, rinsed after that, dry after that, and aired since the rinse.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta


@dataclass
class Enclosure:
    """One enclosure, its animal, and what is on its walls."""

    wet_time: timedelta
    changes_needed: float
    rate: float
    """Air changes an hour before anything is opened."""
    inside: bool = True
    cleared: bool = False
    washed: bool = False
    sprayed_at: datetime | None = None
    dried_out_at: datetime | None = None
    """When the film dried or was taken off, if it did."""
    rinsed_at: datetime | None = None
    dry: bool = False
    smells: bool = False
    """What the keeper's nose last found; whatever is sprayed may smell again unnoticed."""
    touched: bool = False
    """Something was sprayed that isn't rinsed off."""
    in_the_air: bool = False
    """Something was sprayed that has to be aired out once it is rinsed off."""
    opened: tuple[tuple[datetime, float], ...] = ()

    def wash(self, now: datetime) -> None:
        """Soap takes a film off and undoes it, and leaves the surface wet."""
        if not self.touched and self.aired(now):
            self.in_the_air = False  # what an earlier clean had aired out doesn't come back
        self.washed = self.cleared
        self.sprayed_at = self.dried_out_at = self.rinsed_at = None
        self.dry = False

    def spray(self, now: datetime) -> None:
        """On a film that is still wet it is kept wet; else it is a new film."""
        if not self.film_is_wet():
            self.sprayed_at = now
        self.dried_out_at, self.rinsed_at, self.dry, self.touched = None, None, False, True
        self.in_the_air = True

    def dry_out(self, now: datetime) -> None:
        if self.sprayed_at is not None and self.dried_out_at is None:
            self.dried_out_at = now

    def rinse(self, now: datetime) -> None:
        self.dry_out(now)
        if self.rinsed_at is not None and not self.touched and self.aired(now):
            self.dry = False  # clean water on what was aired out already puts nothing new into the air
            return
        self.rinsed_at, self.dry, self.touched = now, False, False

    def film_is_wet(self) -> bool:
        return self.sprayed_at is not None and self.dried_out_at is None and self.rinsed_at is None

    def stayed_wet(self, now: datetime) -> bool:
        """Wet without a gap for the whole wet time."""
        if self.sprayed_at is None:
            return False
        served = self.sprayed_at + self.wet_time
        return now >= served and (self.dried_out_at is None or self.dried_out_at >= served)

    def aired(self, now: datetime) -> bool:
        if self.rinsed_at is None:
            return False
        changes, at, rate = 0.0, self.rinsed_at, self.rate
        for opened_at, opened_rate in self.opened:
            if opened_at > at:
                changes += rate * (opened_at - at).total_seconds() / 3600
                at = opened_at
            rate = opened_rate
        return changes + rate * (now - at).total_seconds() / 3600 >= self.changes_needed - 1e-9

    def fit_for_return(self, now: datetime) -> bool:
        """The plain truth of a disinfection."""
        disinfected = self.stayed_wet(now) and self.rinsed_at is not None and self.aired(now)
        return disinfected and self.fit_as_a_clean(now)

    def fit_as_a_clean(self, now: datetime) -> bool:
        """The plain truth of a clean: no claim to have disinfected, but nothing left on it or in the air of it."""
        rinsed_off = not self.touched and (not self.in_the_air or self.aired(now))
        return self.cleared and self.washed and not self.inside and self.dry and rinsed_off and not self.smells
