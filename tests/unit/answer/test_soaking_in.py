"""An enclosure of a material that soaks in can't be called disinfected, however well the steps were done."""

from __future__ import annotations

from fractions import Fraction

import pytest

from assistant.answer.plan import basis_of, soaking_in
from assistant.core.facts import Facts
from assistant.core.household import Enclosure
from assistant.core.round.wet_time import WetTime

SERVED = WetTime(Fraction(10), "published")


@pytest.mark.parametrize("material", ["bare wood", "cork", "plywood"])
def test_nothing_vouches_for_what_soaks_in(material: str, facts: Facts) -> None:
    home = Enclosure("oak box", material=material)
    assert soaking_in(home, facts) is not None
    assert basis_of(SERVED, home, facts) == "none"


@pytest.mark.parametrize("material", ["glass", "polypropylene", "sealed wood", "a material that nobody knows", None])
def test_the_wet_time_vouches_for_the_rest(material: str | None, facts: Facts) -> None:
    assert basis_of(SERVED, Enclosure("tub", material=material), facts) == "published"
