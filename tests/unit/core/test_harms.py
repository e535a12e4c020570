"""What was told of harm in a sitting, and how long it counts."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

from assistant.core.harms import FUMES_LAST, HARM_LASTS, HarmTold, gas_or_fumes, latest

NINE = datetime(2026, 3, 2, 9, tzinfo=UTC)
FUMES = HarmTold("lungs", "person", NINE)
GAS = HarmTold("lungs", "person", NINE, gas=True)
EYE = HarmTold("eye", "animal", NINE)


def test_a_gas_comes_before_plain_fumes_however_old() -> None:
    later = HarmTold("lungs", "animal", NINE + timedelta(hours=2))
    assert gas_or_fumes((GAS, later), NINE + timedelta(hours=3)) == GAS


def test_fumes_count_for_hours_and_no_longer() -> None:
    assert gas_or_fumes((FUMES, EYE), NINE + FUMES_LAST) == FUMES
    assert gas_or_fumes((FUMES,), NINE + FUMES_LAST + timedelta(seconds=1)) is None
    assert gas_or_fumes((EYE,), NINE) is None


def test_the_latest_harm_is_gone_on_from_while_it_is_recent() -> None:
    assert latest((FUMES, EYE), NINE + HARM_LASTS) == EYE
    assert latest((EYE,), NINE + HARM_LASTS + timedelta(seconds=1)) is None
    assert latest((), NINE) is None
