"""What sort of clean a round is, and what that changes. Most of what a round takes is decided by its agent.

- spot clean: the same steps, for whatever is sprayed has to come off again however small the spot; put back, it counts
  as a spot clean in the schedule and never as a disinfection of the enclosure.
- deep clean: every step of the agent; what a clean is taken for when nothing is said.
- scale clean: with an acid alone; it counts for no chore of the schedule.
- quarantine clean: the wet time is the longer of label and published, as for a new animal's enclosure.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

from assistant.core.choice.choosing import CLEANING
from assistant.core.household import Enclosure


@dataclass(frozen=True, slots=True)
class Job:
    """One sort of clean."""

    fact: str
    """Id of the fact that says why it is so."""
    chore: str | None = "deep clean"
    """From `chores.CHORES`, what it counts as once the animal is back in; None: none."""
    only: str | None = None
    """The agent that alone does it; None: any."""
    longer: bool = False
    """The wet time is the longer of label and published, whatever the enclosure's group."""


JOBS: Mapping[str, Job] = {
    "spot clean": Job("job-spot-clean", chore="spot clean"),
    "deep clean": Job("job-deep-clean"),
    "scale clean": Job(CLEANING["scale"][1], chore=None, only=CLEANING["scale"][0]),
    "quarantine clean": Job("job-quarantine-clean", longer=True),
}
"""Every sort by name; "" is one of which nothing was said."""


def chore_of(job: str) -> str | None:
    """What a finished clean counts as in the schedule; None: nothing."""
    return JOBS[job].chore if job in JOBS else "deep clean"


def as_kept_for(enclosure: Enclosure | None, job: str) -> Enclosure | None:
    """The enclosure as its wet time is reckoned for that job: for quarantine a healthy one's as a new one's."""
    if enclosure is None or job not in JOBS or not JOBS[job].longer or enclosure.group != "healthy":
        return enclosure
    return replace(enclosure, group="new")
