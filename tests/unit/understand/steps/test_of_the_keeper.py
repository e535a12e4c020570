"""What is told of the keeper is nothing of what is being cleaned."""

from __future__ import annotations

import pytest

from assistant.understand.steps.of_the_keeper import of_the_keeper, speaks_of_the_keeper


@pytest.mark.parametrize("plain", ["my sleeve is wet", "oh my left sock 's soaked", "our jeans are dripping"])
def test_a_wet_sleeve_is_the_keepers(plain: str) -> None:
    assert of_the_keeper(plain)


@pytest.mark.parametrize("plain", ["my tank is wet", "the lid is wet", "there is a puddle"])
def test_a_wet_tank_is_not(plain: str) -> None:
    assert not of_the_keeper(plain)
    assert not speaks_of_the_keeper(plain)


def test_who_slipped_is_spoken_of() -> None:
    assert speaks_of_the_keeper("i slipped on it")
