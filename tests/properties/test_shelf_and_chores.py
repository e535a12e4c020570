"""What holds of every bottle, shelf and day's round, however they came about."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from fractions import Fraction

from hypothesis import given, settings
from hypothesis import strategies as st

from assistant.answer.back_dated import earliest
from assistant.contract import SaidTime
from assistant.core.household import Enclosure, Stock
from assistant.core.quantities.amounts import Amount
from assistant.core.record.events import BottleMixed, Recorded, Voided
from assistant.core.record.fold import fold, fold_all
from assistant.core.record.state import State
from assistant.core.shelf.bottles import filled, left_of
from assistant.core.shelf.chores import CHORES, GROUPS, due_of, in_working_order, missed_first, with_chore

fixed = settings(derandomize=True, deadline=None, max_examples=150)
NOW = datetime(2026, 3, 4, 15, tzinfo=UTC)
LEFT = Amount(Fraction(100), "mL")

hours = st.integers(min_value=-200, max_value=200).map(lambda count: NOW + timedelta(hours=count))
drawn = st.none() | st.fractions(min_value=0, max_value=90, max_denominator=10).map(lambda ml: Amount(ml, "mL"))
fills = st.builds(
    BottleMixed,
    bottle=st.sampled_from(("red", "blue")),
    agent=st.just("bleach"),
    stock=st.just("jug"),
    mix=st.just("1 in 50"),
    concentrate=drawn,
    left=st.just(LEFT),
    kept_until=st.none() | hours,
    basis=st.sampled_from(("published", "label", "no limit")),
    topped_up=st.booleans(),
    mixed_at=st.none() | hours,
)
homes = st.lists(
    st.builds(
        Enclosure,
        name=st.text("abc", min_size=1, max_size=4),
        rack=st.sampled_from((None, "north", "south")),
        group=st.sampled_from(GROUPS),
        water=st.sampled_from(("dry", "part", "all")),
        spot_clean_every=st.none() | st.integers(1, 40).map(lambda days: Amount(Fraction(days), "d")),
        water_every=st.none() | st.integers(1, 9).map(lambda days: Amount(Fraction(days), "d")),
    ),
    unique_by=lambda home: home.name,
).map(tuple)


def folded(events: list[BottleMixed]) -> State:
    return fold_all(Recorded(NOW + timedelta(minutes=place), f"t{place}", event) for place, event in enumerate(events))


@fixed
@given(st.lists(fills, min_size=1, max_size=6), fills)
def test_a_top_up_never_puts_an_end_off(before: list[BottleMixed], last: BottleMixed) -> None:
    state = folded(before)
    top_up = BottleMixed(before[-1].bottle, "bleach", kept_until=last.kept_until, basis=last.basis, topped_up=True)
    old, new = state.bottles[top_up.bottle].fill, filled(state, top_up, NOW).bottles[top_up.bottle].fill
    assert old is not None
    assert new is not None
    if old.kept_until is not None:
        assert new.kept_until is not None
        assert new.kept_until <= old.kept_until


@fixed
@given(st.lists(fills, max_size=12))
def test_no_stock_is_ever_below_nothing_or_above_what_was_there(events: list[BottleMixed]) -> None:
    left = left_of(Stock("jug", "bleach", left=LEFT), folded(events))
    assert left is not None
    assert 0 <= left.amount <= LEFT.amount


@fixed
@given(st.lists(fills, max_size=6), fills)
def test_undoing_a_fill_leaves_the_shelf_and_every_other_fill_as_they_were(
    before: list[BottleMixed], last: BottleMixed
) -> None:
    record = [Recorded(NOW, f"t{place}", event) for place, event in enumerate((*before, last))]
    undone = fold_all([*record, Recorded(NOW, "undo", Voided(record[-1].turn))])
    earlier = fold_all(record[:-1])
    assert undone.drawn == earlier.drawn
    assert {name: holds.fill for name, holds in undone.bottles.items() if holds.fill is not None} == {
        name: holds.fill for name, holds in earlier.bottles.items() if holds.fill is not None
    }
    assert "bleach" in undone.bottles[last.bottle].held


@fixed
@given(st.lists(fills, min_size=1, max_size=6))
def test_folding_one_by_one_is_folding_all(events: list[BottleMixed]) -> None:
    state = State()
    for place, event in enumerate(events):
        state = fold(state, Recorded(NOW + timedelta(minutes=place), f"t{place}", event))
    assert state == folded(events)


@fixed
@given(homes)
def test_the_order_is_everybody_once_healthy_then_new_then_sick(known: tuple[Enclosure, ...]) -> None:
    ordered = in_working_order(known)
    assert sorted(home.name for home in ordered) == sorted(home.name for home in known)
    ranks = [GROUPS.index(home.group) for home in ordered]
    assert ranks == sorted(ranks)


@fixed
@given(homes, st.lists(st.tuples(st.integers(0, 9), st.sampled_from(CHORES), st.integers(0, 90)), max_size=20))
def test_what_is_late_is_told_latest_first(known: tuple[Enclosure, ...], done: list[tuple[int, str, int]]) -> None:
    state = State()
    for place, chore, days in done:
        if place < len(known):
            state = with_chore(state, known[place].name, chore, NOW - timedelta(days=days))
    every = missed_first(tuple(due for home in known for due in due_of(home, state, NOW)))
    late = [due.overdue_days for due in every if due.overdue_days is not None and due.overdue_days > 0]
    assert late == sorted(late, reverse=True)
    assert [due.overdue_days for due in every[: len(late)]] == late


@fixed
@given(hours, st.sampled_from(("minute", "part", "day", "week")), st.lists(hours, max_size=2).map(tuple))
def test_the_earliest_that_was_meant_is_never_after_what_was_said(
    at: datetime, to_the: str, others: tuple[datetime, ...]
) -> None:
    found = earliest(SaidTime(at, to_the, others), NOW)  # type: ignore[arg-type]
    if at <= NOW and at.hour >= 5:
        assert found <= at
