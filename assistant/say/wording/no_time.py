"""What is said aloud of a product that has no wet time, as a clean with it starts."""

from __future__ import annotations

from typing import Any

ASKS_THE_LABEL = " How many minutes wet does its label say?"
VETS_PLAN = " Its wet time is your vet's plan."


def without_a_time(agent: Any, wet: Any) -> str:
    """What is said aloud as a clean starts that has no wet time: the label's is asked for, or the vet is named."""
    if "vet's plan" in wet.why:
        return VETS_PLAN
    return ASKS_THE_LABEL if "ask label" in wet.why and wet.organism_verdict != "fails" else ""
