"""Bottles on record: fills, top-ups, rinses, lives, and what is drawn from the shelf."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from fractions import Fraction

import pytest

from assistant.core.facts import Facts
from assistant.core.household import Bottle, Stock
from assistant.core.quantities.amounts import Amount, Neat, Percent, Ppm, SaidRatio
from assistant.core.quantities.quantity import read_mix
from assistant.core.record.events import BottleMixed
from assistant.core.record.state import State
from assistant.core.shelf.bottles import (
    DRAWS_KEPT,
    as_filled,
    drawn_for,
    filled,
    left_of,
    life_of,
    poured,
    rinsed_out,
    taken_back,
    written,
)

NOW = datetime(2026, 3, 4, 15, tzinfo=UTC)
DAY = timedelta(days=1)
LEFT = Amount(Fraction(100), "mL")
FILL = BottleMixed(
    "red", "bleach", "jug", "1 in 50", concentrate=Amount(Fraction(10), "mL"), left=LEFT, kept_until=NOW + DAY,
    basis="published",
)  # fmt: skip
JUG = Stock("jug", "bleach", left=LEFT)


def test_a_top_up_with_an_earlier_end_brings_the_end_forward() -> None:
    state = filled(State(), FILL, NOW)
    sooner = replace(FILL, topped_up=True, kept_until=NOW + timedelta(hours=1))
    fill = filled(state, sooner, NOW).bottles["red"].fill
    assert fill is not None
    assert fill.kept_until == NOW + timedelta(hours=1)


def test_a_top_up_of_what_nobody_knows_stays_unknown() -> None:
    state = filled(State(), replace(FILL, kept_until=None, basis="unknown"), NOW)
    fill = filled(state, replace(FILL, topped_up=True), NOW).bottles["red"].fill
    assert fill is not None
    assert (fill.basis, fill.kept_until) == ("unknown", None)


def test_what_was_in_a_bottle_counts_until_it_is_rinsed_out() -> None:
    state = poured(filled(State(), FILL, NOW), "red", ("vinegar",), unknown_mix=True)
    assert state.bottles["red"].held == ("bleach", "vinegar")
    assert state.unknown_mixes == ("red",)
    clean = rinsed_out(state, "red", NOW)
    assert (clean.bottles["red"].held, clean.bottles["red"].fill, clean.unknown_mixes) == ((), None, ())


def test_a_fill_taken_back_gives_its_draw_back_but_was_in_there() -> None:
    state = drawn_for(filled(State(), FILL, NOW), FILL, NOW)
    back = taken_back(state, "red")
    assert left_of(JUG, back) == LEFT
    assert back.bottles["red"].fill is None
    assert back.bottles["red"].held == ("bleach",)


def test_another_figure_in_keeping_toml_starts_the_count_anew() -> None:
    state = drawn_for(State(), FILL, NOW)
    assert left_of(JUG, state) == Amount(Fraction(90), "mL")
    assert left_of(replace(JUG, left=Amount(Fraction(1), "L")), state) == Amount(Fraction(1000), "mL")


def test_draws_beyond_those_kept_one_by_one_still_count() -> None:
    state, big = State(), Amount(Fraction(10_000), "mL")
    for day in range(DRAWS_KEPT + 5):
        state = drawn_for(state, replace(FILL, left=big), NOW + day * DAY)
    assert len(state.drawn["jug"].draws) == DRAWS_KEPT
    assert left_of(replace(JUG, left=big), state) == Amount(10_000 - 10 * Fraction(DRAWS_KEPT + 5), "mL")


def test_a_bottle_is_what_it_was_filled_with_not_what_it_is_for() -> None:
    meant = Bottle("red", Amount(Fraction(500), "mL"), stock="other", mix=Neat())
    bottle = as_filled(meant, filled(State(), FILL, NOW))
    assert (bottle.stock, bottle.mix) == ("jug", read_mix("1 in 50"))


@pytest.mark.parametrize(
    "mix",
    [Neat(), Percent(Fraction(3, 50)), Ppm(Fraction(500)), SaidRatio(Fraction(1), Fraction(65, 2), "in")],
)
def test_a_mix_that_is_written_is_read_back_the_same(mix: Neat | Percent | Ppm | SaidRatio) -> None:
    assert read_mix(written(mix)) == mix


def test_the_stocks_own_label_wins_over_the_published_life(facts: Facts) -> None:
    stock = Stock("jug", "sodium hypochlorite", label_keeps=Amount(Fraction(8), "h"))
    life = life_of(facts.agents["sodium hypochlorite"], stock, NOW, facts)
    assert (life.until, life.basis) == (NOW + timedelta(hours=8), "label")


def test_what_is_made_for_the_day_ends_at_the_midnight_after_it_was_made(facts: Facts) -> None:
    life = life_of(facts.agents["quaternary ammonium"], None, NOW - DAY, facts)
    assert (life.until, life.basis) == (datetime(2026, 3, 4, tzinfo=UTC), "made today")
