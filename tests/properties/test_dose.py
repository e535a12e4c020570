"""What must hold of any dose: parts add up, wording and units change nothing, more water is never stronger."""

from __future__ import annotations

from fractions import Fraction

from hypothesis import assume, given, settings
from hypothesis import strategies as st

from assistant.core.amounts import Amount, SaidRatio
from assistant.core.dilution import mix, parts_of_water, share_for, share_of
from assistant.core.household import Measure
from assistant.core.measuring import best_measure, measured_with
from assistant.core.ratio import Ratio, of_share, read
from assistant.core.units import UNITS, convert
from assistant.store.packaged import packaged_facts

FACTS = packaged_facts()
fixed = settings(derandomize=True, deadline=None)

amounts = st.fractions(min_value=Fraction(1, 100), max_value=10_000, max_denominator=1000)
volume_units = st.sampled_from(sorted(name for name, unit in UNITS.items() if unit.dimension == "volume"))
volumes = st.builds(Amount, amounts, volume_units)
second_parts = st.fractions(min_value=1, max_value=1000, max_denominator=100)
shares = st.fractions(min_value=Fraction(1, 1000), max_value=1, max_denominator=10_000).filter(lambda share: share > 0)


def ml(amount: Amount) -> Fraction:
    return convert(amount, "mL").amount


@fixed
@given(volumes, shares)
def test_concentrate_and_water_add_up_to_the_total_exactly(total: Amount, share: Fraction) -> None:
    mixed = mix(total, share)
    assert ml(mixed.concentrate) + ml(mixed.water) == ml(total)


@fixed
@given(volumes, shares)
def test_the_share_that_was_mixed_is_the_share_asked_for(total: Amount, share: Fraction) -> None:
    assert share_of(mix(total, share).concentrate, total) == share


@fixed
@given(amounts, volume_units, volume_units, shares)
def test_the_unit_of_the_total_changes_nothing(amount: Fraction, one: str, other: str, share: Fraction) -> None:
    total = Amount(amount, one)
    assert ml(mix(total, share).concentrate) == ml(mix(convert(total, other), share).concentrate)


@fixed
@given(volumes, volume_units)
def test_a_conversion_there_and_back_is_exact(amount: Amount, unit: str) -> None:
    assert convert(convert(amount, unit), amount.unit) == amount


@fixed
@given(second_parts, second_parts)
def test_more_water_is_never_stronger(n: Fraction, more: Fraction) -> None:
    for word in ("in", "to"):
        weaker, stronger = (read(SaidRatio(Fraction(1), size, word), None) for size in (n + more, n))
        assert isinstance(weaker, Ratio)
        assert isinstance(stronger, Ratio)
        assert weaker.share < stronger.share


@fixed
@given(second_parts)
def test_one_to_n_is_one_in_n_and_one(n: Fraction) -> None:
    to = read(SaidRatio(Fraction(1), n, "to"), None)
    all_ = read(SaidRatio(Fraction(1), n + 1, "in"), None)
    assert isinstance(to, Ratio)
    assert isinstance(all_, Ratio)
    assert to.share == all_.share
    assert to.as_in == all_.parts
    assert all_.as_to == to.parts


@fixed
@given(second_parts, st.integers(1, 50))
def test_a_ratio_scaled_is_the_same_ratio(n: Fraction, times: int) -> None:
    scaled = read(SaidRatio(Fraction(times), n * times, "to"), None)
    assert scaled == read(SaidRatio(Fraction(1), n, "to"), None)


@fixed
@given(shares)
def test_a_share_worded_and_read_again_is_the_same(share: Fraction) -> None:
    assert of_share(share).share == share


@fixed
@given(amounts, amounts)
def test_a_strength_diluted_by_its_parts_of_water_is_the_strength_wanted(one: Fraction, other: Fraction) -> None:
    wanted, stock = sorted((one, other))
    assume(wanted > 0)
    assert stock / (1 + parts_of_water(wanted, stock)) == wanted
    assert stock * share_for(wanted, stock) == wanted


tools = st.builds(
    lambda steps, graduation, kind: Measure("tool", Amount(graduation * steps, "mL"), Amount(graduation, "mL"), kind),
    st.integers(5, 100),
    st.sampled_from([Fraction(1, 100), Fraction(1, 10), Fraction(1, 5), Fraction(1), Fraction(5)]),
    st.sampled_from(["syringe", "cup", "jug"]),
)


@fixed
@given(tools, st.fractions(min_value=Fraction(1, 10), max_value=500, max_denominator=1000))
def test_the_marks_come_within_half_a_graduation_and_the_range_holds_them(tool: Measure, wanted: Fraction) -> None:
    way = measured_with(tool, Amount(wanted, "mL"), FACTS)
    if way is None:
        return
    assert tool.graduation is not None
    assert abs(way.amount.amount - wanted) <= tool.graduation.amount / 2
    assert way.least.amount <= way.amount.amount <= way.most.amount
    assert 0 < way.mark.amount <= way.full.amount


@fixed
@given(
    st.lists(tools, min_size=1, max_size=4), st.fractions(min_value=Fraction(1, 10), max_value=200, max_denominator=100)
)
def test_no_other_tool_is_clearly_better_than_the_one_picked(found: list[Measure], wanted: Fraction) -> None:
    best = best_measure(Amount(wanted, "mL"), tuple(found), FACTS)
    ways = [way for tool in found if (way := measured_with(tool, Amount(wanted, "mL"), FACTS)) is not None]
    assert (best is None) == (not ways)
    if best is not None:
        slack = FACTS["measure-as-good"].exact() / 100 * wanted
        assert best.off_by <= min(way.off_by for way in ways) + slack
