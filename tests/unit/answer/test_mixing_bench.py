"""The questions of the mixing bench beside the dose, through whole turns: told, asked back, refused, kept."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from fractions import Fraction
from typing import Any

import pytest
from tool import Tool

from assistant.contract import Outcome, SaidTime
from assistant.core.household import Bottle, Enclosure, Habits, Household, Measure, Room, Stock
from assistant.core.quantities.amounts import Amount, Percent
from assistant.core.quantities.quantity import read_amount, read_mix
from assistant.core.record.events import BottleMixed, BottleRinsed, RoundStarted, SprayerMeasured

BLEACH, VINEGAR, QUAT = "sodium hypochlorite", "acetic acid", "quaternary ammonium"


def sized(name: str, length: str, width: str, height: str) -> Enclosure:
    return Enclosure(name, length=read_amount(length), width=read_amount(width), height=read_amount(height))


# Invented.
HOME = Household(
    room=Room(temperature=read_amount("25 degC")),
    habits=Habits(ratio="to"),
    measures=(
        Measure("thin syringe", read_amount("1 mL"), read_amount("0.01 mL")),
        Measure("fat syringe", read_amount("10 mL"), read_amount("0.2 mL")),
    ),
    stocks=(
        Stock("shed bleach", BLEACH, read_amount("6 percent"), made=date(2026, 2, 1), kept_at=read_amount("20 degC")),
        Stock("malt vinegar", VINEGAR, read_amount("5 percent")),
    ),
    bottles=(
        Bottle("tall bottle", read_amount("750 mL"), stock="shed bleach", mix=read_mix("1 in 50"), ml_a_stroke=0.9),
        Bottle("short bottle", read_amount("500 mL"), stock="malt vinegar", mix=read_mix("1 to 1")),
        Bottle("spare bottle", read_amount("250 mL")),
    ),
    enclosures=(
        sized("oak box", "1 m", "50 cm", "50 cm"),
        sized("fern box", "50 cm", "50 cm", "50 cm"),
        Enclosure("pond"),
    ),
)


def volumes(*texts: str) -> tuple[Amount, ...]:
    return tuple(map(read_amount, texts))


# ---------------------------------------------------------------- every key, always


@pytest.mark.parametrize(
    ("intent", "keys", "slots"),
    [
        ("mix_strength", {"strength_percent", "strength_ppm", "parts"}, {"volumes": volumes("10 mL", "1 L")}),
        ("mix_strength", {"strength_percent", "strength_ppm", "parts"}, {"bottles": ("tall bottle",)}),
        ("top_up", {"concentrate", "water"}, {"bottles": ("tall bottle",), "volumes": volumes("200 mL")}),
        ("make_up", {"solution", "area", "bottles"}, {"enclosures": ("oak box",)}),
        ("make_up", {"solution", "area", "bottles"}, {"volumes": volumes("20 L"), "soaks": True}),
        ("convert", {"amount"}, {"volumes": volumes("1 US pt")}),
        ("read_ratio", {"parts", "reading", "as_in", "as_to"}, {"mixes": (read_mix("1 to 32"),)}),
        ("bleach_now", {"strength_percent", "fraction_left"}, {}),
        ("bleach_now", {"strength_percent", "fraction_left"}, {"temperatures": volumes("5 degC")}),
        ("measure_with", {"tool", "mark", "error_percent"}, {"volumes": volumes("12 mL")}),
        ("measure_with", {"tool", "mark", "error_percent"}, {"volumes": volumes("0.001 mL")}),
    ],
)
def test_every_key_is_there(intent: str, keys: set[str], slots: dict[str, Any]) -> None:
    reply = Tool(HOME).say(intent, **slots)
    assert reply.outcome is Outcome.ANSWER
    assert keys <= set(reply.values)
    assert len(reply.say.split()) <= 25


# ---------------------------------------------------------------- convert


def test_what_that_is_in_another_unit_is_the_last_amount_told() -> None:
    tool = Tool(HOME)
    tool.say("dose", volumes=volumes("500 mL"), mixes=(read_mix("1 in 50"),), agents=(BLEACH,))
    assert tool.say("convert", to_unit="tsp").say == "2.03 teaspoons."


def test_with_no_unit_named_a_customary_measure_becomes_metric_and_a_metric_one_is_asked() -> None:
    assert Tool(HOME).say("convert", volumes=volumes("1 US cup")).values["amount"].unit == "mL"
    assert Tool(HOME).say("convert", volumes=volumes("500 mL")).missing == ("unit",)


def test_a_pint_comes_with_the_other_countrys_pint() -> None:
    assert "1 imp pt = 568.261 mL" in Tool(HOME).say("convert", volumes=volumes("1 US pt"), to_unit="mL").show


def test_unlike_units_are_asked_back() -> None:
    reply = Tool(HOME).say("convert", volumes=volumes("1 L"), to_unit="degC")
    assert (reply.outcome, reply.missing) == (Outcome.ASK, ("unit",))


@pytest.mark.parametrize(("mix", "ounces"), [("1 to 32", "4"), ("1 in 32", "4"), ("1 to 128", "1")])
def test_ounces_to_the_gallon_of_a_ratio(mix: str, ounces: str) -> None:
    # Commercial dilution charts: 1:32 is 4 ounces, 1:128 is 1.
    values = Tool(HOME).say("convert", volumes=volumes("1 US gal"), mixes=(read_mix(mix),), to_unit="US fl oz").values
    assert values["amount"] == Amount(Fraction(ounces), "US fl oz")


# ---------------------------------------------------------------- read_ratio


def test_a_percentage_is_told_as_parts_of_the_product_named() -> None:
    values = Tool(HOME).say("read_ratio", mixes=(Percent(Fraction("0.06")),), agents=(BLEACH,)).values
    assert values["parts"] == (1, 99)


def test_a_small_colon_with_nothing_set_is_asked_both_ways() -> None:
    reply = Tool(replace(HOME, habits=Habits())).say("read_ratio", mixes=(read_mix("1:4"),))
    assert reply.outcome is Outcome.ASK
    assert reply.say == "One in 4 in all, or one to 4 of water?"


def test_equal_parts_are_equal_parts() -> None:
    values = Tool(HOME).say("read_ratio", mixes=(read_mix("1:1"),)).values
    assert (values["as_in"], values["as_to"]) == ((1, 2), (1, 1))


@pytest.mark.parametrize(
    ("first", "second", "opens"), [("1 in 10", "1 to 9", "The same"), ("1 in 10", "1 to 10", "Not the same")]
)
def test_two_ratios_are_compared(first: str, second: str, opens: str) -> None:
    assert Tool(HOME).say("read_ratio", mixes=(read_mix(first), read_mix(second))).say.startswith(opens)


# ---------------------------------------------------------------- mix_strength


def test_a_volume_into_a_bottle_counts_as_filled_up() -> None:
    values = Tool(HOME).say("mix_strength", volumes=volumes("15 mL"), bottles=("tall bottle",)).values
    assert (values["strength_percent"], values["parts"]) == (Fraction("0.12"), (1, 49))


def test_a_bare_second_volume_is_taken_as_water_and_that_is_shown() -> None:
    reply = Tool(HOME).say("mix_strength", volumes=volumes("10 mL", "500 mL"), agents=(BLEACH,))
    assert reply.values["parts"] == (1, 50)
    assert "taken as water" in reply.show


def test_the_water_may_be_said_first() -> None:
    reply = Tool(HOME).say(
        "mix_strength", volumes=volumes("500 mL", "10 mL"), roles=("water", "product"), agents=(BLEACH,)
    )
    assert reply.values["parts"] == (1, 50)


def test_more_concentrate_than_whole_is_asked_back() -> None:
    reply = Tool(HOME).say("mix_strength", volumes=volumes("2 L", "1 L"), roles=("product", "total"))
    assert reply.outcome is Outcome.ASK


def test_bleach_that_came_out_too_strong_for_a_surface_is_said_to_be() -> None:
    reply = Tool(HOME).say("mix_strength", volumes=volumes("500 mL", "500 mL"), agents=(BLEACH,))
    assert reply.say.endswith("Too strong for a surface.")


def test_into_what_is_asked() -> None:
    assert Tool(HOME).say("mix_strength", volumes=volumes("20 mL"), agents=(BLEACH,)).missing == ("water",)


# ---------------------------------------------------------------- bleach_now


def test_the_shelfs_date_and_warmth_are_used() -> None:
    reply = Tool(HOME).say("bleach_now")  # 89 days by then, at 20 degrees
    assert reply.values["fraction_left"] == pytest.approx(0.944, abs=0.001)
    assert "after 3 months at 20 degrees" not in reply.say  # 89 days are said in weeks
    assert "after 13 weeks at 20 degrees" in reply.say


def test_without_a_shelf_temperature_the_rooms_is_taken_and_said_to_be() -> None:
    home = replace(HOME, stocks=(Stock("old bleach", BLEACH, read_amount("6 percent"), made=date(2026, 2, 1)),))
    assert "your room's" in Tool(home).say("bleach_now").show


@pytest.mark.parametrize(
    ("home", "missing"),
    [
        (replace(HOME, stocks=(Stock("old bleach", BLEACH, read_amount("6 percent")),)), "age"),
        (replace(HOME, stocks=(Stock("old bleach", BLEACH, made=date(2026, 2, 1)),)), "stock_strength"),
        (
            replace(HOME, room=Room(), stocks=(Stock("b", BLEACH, read_amount("6 percent"), made=date(2026, 2, 1)),)),
            "temperature",
        ),
        (replace(HOME, stocks=(Stock("b", BLEACH, read_amount("6 percent"), made=date(2027, 2, 1)),)), "age"),
    ],
)
def test_what_is_not_known_is_asked(home: Household, missing: str) -> None:
    reply = Tool(home).say("bleach_now")
    assert (reply.outcome, reply.missing) == (Outcome.ASK, (missing,))


def test_eighty_degrees_is_asked_about() -> None:
    assert Tool(HOME).say("bleach_now", temperatures=volumes("80 degC")).missing == ("temperature",)


def test_a_month_counts_from_its_first_day_and_a_date_as_said() -> None:
    tool = Tool(HOME)  # on 1 May 2026
    by_month = tool.say("bleach_now", month=(None, 2)).values["fraction_left"]
    by_day = tool.say("bleach_now", when=SaidTime(tool.now.replace(month=2))).values["fraction_left"]
    assert by_month == by_day


def test_old_and_weak_bleach_is_to_be_bought_fresh() -> None:
    old = Tool(HOME).say("bleach_now", durations=volumes("400 d"))
    weak = Tool(HOME).say("bleach_now", durations=volumes("300 d"), temperatures=volumes("30 degC"))
    assert old.say.endswith("Buy fresh.")
    assert weak.say.endswith("Buy fresh.")


def test_other_agents_have_no_law() -> None:
    assert Tool(HOME).say("bleach_now", agents=(VINEGAR,)).outcome is Outcome.UNSURE


# ---------------------------------------------------------------- measure_with


def test_with_no_volume_said_it_is_the_dose_just_told() -> None:
    tool = Tool(HOME)
    tool.say("dose", volumes=volumes("500 mL"), mixes=(read_mix("1 in 50"),), agents=(BLEACH,))
    assert tool.say("measure_with").values["mark"] == {"tool": "fat syringe", "amount": 10, "unit": "mL"}


def test_a_household_without_tools_says_so() -> None:
    reply = Tool(replace(HOME, measures=())).say("measure_with", volumes=volumes("5 mL"))
    assert (reply.outcome, reply.values["tool"]) == (Outcome.ANSWER, None)


def test_too_little_for_every_tool_comes_with_the_least_that_can_be_measured() -> None:
    reply = Tool(HOME).say("measure_with", volumes=volumes("0.001 mL"))
    assert "0.25 mils is the least, in the thin syringe" in reply.say


def test_a_tool_asked_after_by_name_is_told_however_rough() -> None:
    reply = Tool(HOME).say("measure_with", volumes=volumes("0.2 mL"), measures=("fat syringe",))
    assert reply.values["tool"] == "fat syringe"
    assert "rough" in reply.say


# ---------------------------------------------------------------- top_up


def test_half_full_is_topped_up_from_the_bottles_own_mix() -> None:
    reply = Tool(HOME).say("top_up", bottles=("tall bottle",), share_left=Fraction(1, 2))
    assert reply.values["concentrate"] == Amount(Fraction("7.5"), "mL")
    said = "7.6 mils of bleach, one in 50: fat syringe to 7.6. Then water to 750 mils."
    assert reply.say == f"{said} No fill on record: is it the same mix?"


@pytest.mark.parametrize(
    ("slots", "missing"),
    [
        ({"bottles": ("tall bottle",)}, ("left",)),
        ({"volumes": volumes("200 mL"), "mixes": (read_mix("1 in 32"),)}, ("bottle",)),
        ({"bottles": ("spare bottle",), "volumes": volumes("100 mL")}, ("mix",)),
        ({"bottles": ("tall bottle",), "volumes": volumes("800 mL")}, ("left",)),
    ],
)
def test_what_a_top_up_lacks_is_asked(slots: dict[str, Any], missing: tuple[str, ...]) -> None:
    assert Tool(HOME).say("top_up", **slots).missing == missing


def test_yesterdays_bleach_is_emptied_not_topped_up() -> None:
    reply = Tool(HOME).say("top_up", bottles=("tall bottle",), volumes=volumes("200 mL"), durations=volumes("2 d"))
    assert reply.outcome is Outcome.REFUSE


def filled(**more: Any) -> Tool:
    """The tall bottle, filled with bleach an hour ago."""
    tool = Tool(HOME)
    end = tool.now + timedelta(hours=23)
    fill = {"stock": "shed bleach", "mix": "1 in 32", "kept_until": end, "basis": "published", **more}
    tool._append((BottleMixed("tall bottle", BLEACH, **fill),))
    return tool


def test_a_fill_on_record_says_what_goes_on_top_and_keeps_its_end() -> None:
    tool = filled()
    reply = tool.say("top_up", bottles=("tall bottle",), volumes=volumes("110 mL"))
    assert reply.values["concentrate"] == Amount(Fraction(20), "mL")
    assert reply.values["expires"] == tool.now + timedelta(hours=23)
    assert "Nothing on record" not in reply.show


@pytest.mark.parametrize(
    "slots", [{"mixes": (read_mix("1 in 10"),)}, {"agents": (VINEGAR,)}, {"agents": ("chlorhexidine",)}]
)
def test_only_the_same_goes_on_top_of_a_fill(slots: dict[str, Any]) -> None:
    reply = filled().say("top_up", bottles=("tall bottle",), volumes=volumes("110 mL"), **slots)
    assert reply.outcome is Outcome.REFUSE


def test_a_fill_past_its_end_is_emptied() -> None:
    tool = filled()
    tool.now += timedelta(hours=24)
    assert tool.say("top_up", bottles=("tall bottle",), volumes=volumes("110 mL")).outcome is Outcome.REFUSE


def test_a_bottle_rinsed_out_on_record_holds_nothing_known() -> None:
    tool = filled()
    tool._append((BottleRinsed("tall bottle"),))
    assert tool.say("top_up", bottles=("tall bottle",), volumes=volumes("110 mL")).outcome is Outcome.REFUSE


# ---------------------------------------------------------------- make_up


def test_an_enclosure_takes_floor_and_walls_of_mix_and_so_many_strokes() -> None:
    values = Tool(HOME).say("make_up", enclosures=("oak box",), bottles=("tall bottle",)).values
    # 0.5 + 2 x 0.5 x 1.5 m^2, 50 mL each, 0.9 mL a stroke
    assert values["area"] == Amount(Fraction(2), "m^2")
    assert values["solution"] == Amount(Fraction(100), "mL")
    assert (values["bottles"], values["strokes"]) == (1, 112)


def test_a_whole_round_is_what_is_being_cleaned_and_else_every_enclosure_with_its_measures() -> None:
    tool = Tool(HOME)
    every = tool.say("make_up", every_enclosure=True)
    assert every.values["enclosures"] == ["oak box", "fern box"]
    assert "pond" in every.show
    begun = RoundStarted("fern box", BLEACH, ("move out",), 600.0, 1.0, 2.0, bottle="tall bottle")
    tool._append((begun,))
    now = tool.say("make_up", every_enclosure=True)
    assert (now.values["enclosures"], now.values["bottle"]) == (["fern box"], "tall bottle")


def test_strokes_that_wet_it_count_by_the_keepers_own_sprayer() -> None:
    values = Tool(HOME).say("make_up", enclosures=("oak box",), bottles=("tall bottle",), strokes=Fraction(40)).values
    assert values["solution"] == Amount(Fraction(36), "mL")


def test_a_dose_right_after_is_for_what_was_reckoned() -> None:
    tool = Tool(HOME)
    tool.say("make_up", volumes=volumes("20 L"), soaks=True)
    reply = tool.say("dose", mixes=(read_mix("1 in 50"),), agents=(BLEACH,))
    assert reply.values["total"] == Amount(Fraction(20), "L")


def test_an_enclosure_without_measures_is_asked_after() -> None:
    assert Tool(HOME).say("make_up", enclosures=("pond",)).missing == ("size",)


def test_a_measured_stroke_is_kept_only_once_it_is_said_yes_to() -> None:
    tool = Tool(HOME)
    reply = tool.say("make_up", strokes=Fraction(20), volumes=volumes("24 mL"), bottles=("tall bottle",))
    assert (reply.outcome, tool.record) == (Outcome.CONFIRM, [])
    tool.say("yes")
    assert [entry.event for entry in tool.record] == [SprayerMeasured("tall bottle", 1.2, 0.9)]
    assert tool.say("make_up", enclosures=("oak box",), bottles=("tall bottle",)).values["strokes"] == 84


def test_a_stroke_that_no_trigger_has_is_asked_back() -> None:
    reply = Tool(HOME).say("make_up", strokes=Fraction(20), volumes=volumes("200 mL"), bottles=("tall bottle",))
    assert reply.outcome is Outcome.ASK
