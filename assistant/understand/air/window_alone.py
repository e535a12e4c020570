"""A turn that tells of the window and of nothing else."""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Reading
from assistant.understand.air.windows_told import windows_told
from assistant.understand.look import BY_RULE, Look


def window_alone(look: Look) -> Reading | None:
    """What is told of the window alone, since when too."""
    if look.claims.done or windows_told(look.parsed, look.world) is None:
        return None
    return look.reading("done", replace(look.slots("done"), steps=()), BY_RULE)
