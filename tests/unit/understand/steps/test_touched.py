"""Which agents a text says were put on a surface, in whatever sentence."""

from __future__ import annotations

import pytest

from assistant.core.household import Household
from assistant.understand.reader import Reader
from assistant.understand.steps.touched import touched_in

BLEACH, VINEGAR, CHX = "sodium hypochlorite", "acetic acid", "chlorhexidine"


@pytest.mark.parametrize(
    ("said", "agents"),
    [
        ("sprayed bleach, rinsed it, then vinegar", (BLEACH, VINEGAR)),
        ("I sprayed bleach, then some vinegar", (BLEACH, VINEGAR)),
        ("sprayed it with vinegar, how long must it stay wet?", (VINEGAR,)),
        ("how long must it stay wet, I sprayed it with vinegar", (VINEGAR,)),
        ("sprayed the east tank with the blue bottle", (CHX,)),
        ("washed the east tank with soap, sprayed it with vinegar", (VINEGAR,)),
        ("soaped the east tank with soapy water, then sprayed the blue bottle", (CHX,)),
        ("did I spray bleach?", ()),
        ("haven't sprayed the bleach", ()),
        ("about to spray vinegar", ()),
        ("rinsed the bleach off", ()),
        ("sprayed bleach. can I use vinegar now?", (BLEACH,)),
        ("how much bleach for a litre", ()),
    ],
)
def test_only_what_is_said_to_be_on_it_touched(
    said: str, agents: tuple[str, ...], reader: Reader, household: Household
) -> None:
    assert touched_in(reader._parse(said), household) == agents
