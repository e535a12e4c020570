"""The two clocks of this computer, watched while a shell runs: the wall's, and the count of seconds since its start.

The count goes on while a laptop sleeps wherever the system offers such a one; where it stands still meanwhile, the
sleep looks like a clock set forward, the shorter span counts, and the keeper is asked. Summer time moves neither: both
are compared in seconds, whatever the time zone.
"""

from __future__ import annotations

import sys
import time
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import datetime

from assistant.core.record.clocks import PARTED_S
from assistant.core.record.events import ClocksParted

Offset = Callable[[datetime], float]
"""What the wall's clock, reading that, is ahead of the other, in seconds."""


def boot_seconds() -> float:
    """Seconds since this computer was started, sleep included where the system counts it."""
    if hasattr(time, "CLOCK_BOOTTIME"):
        return time.clock_gettime(time.CLOCK_BOOTTIME)
    if sys.platform == "darwin":
        return time.clock_gettime(time.CLOCK_MONOTONIC)  # unlike time.monotonic it goes on during sleep
    return time.monotonic()


def offset_now(now: datetime) -> float:
    """What this computer's wall clock is ahead of its count since the start."""
    return now.timestamp() - boot_seconds()


@dataclass
class ClockWatch:
    """Compares the two clocks at every look with what they differed by at the first, or when last told."""

    offset: Offset = offset_now
    _known: float | None = field(default=None, init=False)

    def look(self, now: datetime) -> ClocksParted | None:
        """That they have parted since; None: they go alike, or this is the first look."""
        offset = self.offset(now)
        if self._known is None:
            self._known = offset
        if abs(offset - self._known) <= PARTED_S:
            return None
        return ClocksParted(ahead_s=offset - self._known, offset_s=offset)

    def told(self, parting: ClocksParted) -> None:
        """It is on record: from now on they are compared with that."""
        self._known = parting.offset_s

    def begin_anew(self) -> None:
        """The next look is the first."""
        self._known = None
