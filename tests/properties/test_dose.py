"""What holds of every dose: parts add up, more water is never stronger, units don't matter, nothing is rounded."""

from __future__ import annotations

from fractions import Fraction
from typing import Any, Literal

from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st
from tool import FACTS, Tool

from assistant.contract import Outcome, Reading, Reply, Slots
from assistant.core.household import Habits, Household, Measure, Stock
from assistant.core.mixing.decay import fraction_left
from assistant.core.mixing.dilution import POURED_IN, mix, parts_of_water, share_for, share_of
from assistant.core.mixing.measuring import best_measure, measured_with
from assistant.core.quantities.amounts import Amount, Mix, Neat, Percent, Ppm, SaidRatio
from assistant.core.quantities.ratio import EitherWay, Ratio, of_share, read
from assistant.core.quantities.units import UNITS, convert, system

fixed = settings(derandomize=True, deadline=None, max_examples=200)

VOLUME_UNITS = sorted(name for name, unit in UNITS.items() if unit.dimension == "volume")
sizes = st.fractions(min_value=Fraction(1, 100), max_value=10_000, max_denominator=100)
volumes = st.builds(Amount, sizes, st.sampled_from(VOLUME_UNITS))
shares = st.fractions(min_value=Fraction(1, 1000), max_value=1, max_denominator=1000)
parts = st.fractions(min_value=Fraction(1, 10), max_value=1000, max_denominator=10)
words = st.sampled_from(("in", "to", "colon"))
colons: st.SearchStrategy[Literal["in", "to"] | None] = st.sampled_from(("in", "to", None))
ratios = st.builds(SaidRatio, parts, parts, words)
percents = st.fractions(min_value=Fraction(1, 1000), max_value=100, max_denominator=1000)


def possible(said: SaidRatio) -> bool:
    """Not more than the whole."""
    return said.second >= said.first


# ---------------------------------------------------------------- mixing


@fixed
@given(volumes, shares)
def test_concentrate_and_water_add_up_to_the_total_exactly(total: Amount, share: Fraction) -> None:
    made = mix(total, share)
    whole = convert(total, made.concentrate.unit).amount
    assert made.concentrate.unit == made.water.unit == POURED_IN[system(total.unit)]
    assert made.concentrate.amount + made.water.amount == whole
    assert made.concentrate.amount == whole * share
    assert share_of(made.concentrate, total) == share


@fixed
@given(volumes, shares, st.sampled_from(VOLUME_UNITS))
def test_the_unit_of_the_total_does_not_change_the_dose(total: Amount, share: Fraction, unit: str) -> None:
    one, two = mix(total, share), mix(convert(total, unit), share)
    assert convert(one.concentrate, "mL") == convert(two.concentrate, "mL")


@fixed
@given(volumes, shares, st.integers(2, 50))
def test_twice_the_total_takes_twice_the_concentrate(total: Amount, share: Fraction, times: int) -> None:
    larger = Amount(total.amount * times, total.unit)
    assert mix(larger, share).concentrate.amount == times * mix(total, share).concentrate.amount


@fixed
@given(percents, percents)
def test_a_target_is_met_exactly_and_parts_of_water_agree(wanted: Fraction, stock: Fraction) -> None:
    assume(wanted <= stock)
    share = share_for(wanted, stock)
    assert share * stock == wanted
    assert share == 1 / (1 + parts_of_water(wanted, stock))
    assert of_share(share).share == share


# ---------------------------------------------------------------- ratios


@fixed
@given(ratios, colons)
def test_both_wordings_of_a_ratio_are_the_same_mix(said: SaidRatio, setting: Literal["in", "to"] | None) -> None:
    assume(possible(said))
    found = read(said, setting)
    for ratio in (found,) if isinstance(found, Ratio) else (found.as_in, found.as_to):
        as_in = read(SaidRatio(*ratio.as_in, "in"), setting)
        assert isinstance(as_in, Ratio)
        assert as_in.share == ratio.share == 1 / (1 + ratio.as_to[1])
        assert ratio.as_in[1] == ratio.as_to[1] + 1
        assert 0 < ratio.share <= 1


@fixed
@given(parts, parts)
def test_more_water_is_never_stronger(n: Fraction, more: Fraction) -> None:
    for word in ("in", "to"):
        weak, strong = (Ratio(1 + size, word) for size in (n + more, n))  # type: ignore[arg-type]
        assert weak.share < strong.share
    assert Ratio(1 + n, "to").share < Ratio(1 + n, "in").share


@fixed
@given(ratios, colons, st.integers(2, 9))
def test_a_ratio_scaled_up_is_the_same_ratio(said: SaidRatio, setting: Literal["in", "to"] | None, times: int) -> None:
    assume(possible(said))
    assert read(SaidRatio(said.first * times, said.second * times, said.word), setting) == read(said, setting)


@fixed
@given(ratios)
def test_a_colon_is_asked_about_only_with_nothing_set_and_never_from_words(said: SaidRatio) -> None:
    assume(possible(said))
    assert isinstance(read(said, "in"), Ratio)
    assert isinstance(read(said, "to"), Ratio)
    if isinstance(read(said, None), EitherWay):
        assert said.word == "colon"
        assert said.first < said.second <= 5 * said.first


# ---------------------------------------------------------------- tools

graduated = st.builds(
    lambda step, marks, kind: Measure("tool", Amount(step * marks, "mL"), Amount(step, "mL"), kind),
    st.sampled_from([Fraction(text) for text in ("0.01", "0.1", "0.2", "0.5", "1", "5", "25")]),
    st.integers(1, 100),
    st.sampled_from(("syringe", "cup", "jug")),
)


@fixed
@given(volumes, graduated)
def test_a_mark_is_on_the_tool_and_what_was_wanted_lies_within_its_error(wanted: Amount, tool: Measure) -> None:
    found = measured_with(tool, wanted, FACTS)
    assume(found is not None)
    assert found is not None
    assert tool.graduation is not None
    assert found.mark.amount % tool.graduation.amount == 0
    assert 0 < found.mark.amount <= tool.capacity.amount
    assert found.fills <= 10
    assert abs(found.amount.amount - found.wanted) <= tool.graduation.amount / 2 <= found.error
    assert found.least.amount <= found.wanted <= found.most.amount


@settings(fixed, suppress_health_check=[HealthCheck.filter_too_much])  # few random volumes fit a random tool
@given(volumes, st.one_of(graduated, st.builds(lambda size: Measure("spoon", size, None, "spoon"), volumes)))
def test_what_was_wanted_and_what_the_marks_come_to_lie_within_the_range_given(wanted: Amount, tool: Measure) -> None:
    found = measured_with(tool, wanted, FACTS)
    assume(found is not None)
    assert found is not None
    assert 0 <= found.least.amount <= found.wanted <= found.most.amount
    assert found.least.amount <= max(Fraction(0), found.amount.amount - found.error)
    assert found.most.amount >= found.amount.amount + found.error


@fixed
@given(volumes, st.lists(graduated, min_size=1, max_size=5))
def test_no_tool_left_lying_is_better_in_error_and_fills_than_the_one_picked(
    wanted: Amount, tools: list[Measure]
) -> None:
    found = best_measure(wanted, tuple(tools), FACTS)
    ways = [way for tool in tools if (way := measured_with(tool, wanted, FACTS)) is not None]
    fit = [way for way in ways if way.off_by <= way.wanted / 2]
    if found is None:
        assert fit == []
        return
    assert found.off_by <= found.wanted / 2
    # Nine fills more count nine percent at most.
    assert found.off_by / found.wanted <= min(way.off_by / way.wanted for way in fit) + Fraction(9, 100)
    for way in fit:
        assert way.fills > found.fills or way.off_by / way.wanted >= found.off_by / found.wanted
        assert found.good_enough or not way.good_enough


# ---------------------------------------------------------------- age


@fixed
@given(st.floats(50, 200), st.floats(15, 55), st.floats(0, 365), st.floats(0, 365), st.floats(0, 10))
def test_bleach_never_grows_stronger_and_warmth_never_helps(
    g_per_l: float, degrees: float, days: float, longer: float, warmer: float
) -> None:
    left = fraction_left(g_per_l, degrees, days, FACTS)
    assert 0 < left <= 1
    assert fraction_left(g_per_l, degrees, days + longer, FACTS) <= left
    assert fraction_left(g_per_l, min(55.0, degrees + warmer), days, FACTS) <= left


# ---------------------------------------------------------------- whole turns

HOME = Household(
    habits=Habits(ratio="to"),
    measures=(
        Measure("thin syringe", Amount(Fraction(1), "mL"), Amount(Fraction(1, 100), "mL")),
        Measure("fat syringe", Amount(Fraction(10), "mL"), Amount(Fraction(1, 5), "mL")),
        Measure("jug", Amount(Fraction(1000), "mL"), Amount(Fraction(50), "mL"), "jug"),
    ),
    stocks=(
        Stock("shed bleach", "sodium hypochlorite", Amount(Fraction(6), "%")),
        Stock("pink stuff", "chlorhexidine", Amount(Fraction(2), "%")),
    ),
)
mixes: st.SearchStrategy[Mix] = st.one_of(
    ratios.filter(possible),
    st.builds(Percent, percents),
    st.builds(Ppm, st.fractions(min_value=1, max_value=100_000, max_denominator=1)),
    st.builds(Neat),
)


def answered(total: Amount, wanted: Mix, stock: str, **more: Any) -> Reply:
    slots = Slots(volumes=(total,), mixes=(wanted,), stocks=(stock,))
    return Tool(HOME).hear(Reading("", "dose", slots, confidence=1.0, **more))


@fixed
@given(volumes, mixes, st.sampled_from(("shed bleach", "pink stuff")), st.booleans())
def test_an_answer_adds_up_and_no_other_outcome_gives_a_dose(
    total: Amount, wanted: Mix, stock: str, spoken: bool
) -> None:
    reply = answered(total, wanted, stock, spoken=spoken)
    assert len(reply.say.split()) <= 25
    assert not set("%/°+") & set(reply.say)
    if reply.outcome is not Outcome.ANSWER:
        assert "concentrate" not in reply.values
        return
    values = reply.values
    concentrate, water = values["concentrate"], values["water"]
    assert concentrate.amount + water.amount == convert(total, concentrate.unit).amount
    share = share_of(concentrate, total)
    assert values["strength_percent"] == share * (6 if stock == "shed bleach" else 2)
    n = values["parts"][1]
    assert share == (1 / n if values["reading"] == "in" else 1 / (1 + n))
    if values["mark"] is not None:
        assert values["strength_low"] <= values["strength_percent"] <= values["strength_high"]
    if stock == "shed bleach":
        assert values["strength_ppm"] == share * 60_000 <= 10_000
    else:
        assert values["strength_ppm"] is None
    if isinstance(wanted, Percent):
        assert values["strength_percent"] == wanted.percent
    if isinstance(wanted, Ppm) and stock == "shed bleach":
        assert values["strength_ppm"] == wanted.ppm
