"""Doses through whole turns: what is asked back, refused, taken from the shelf, and said."""

from __future__ import annotations

import os
import subprocess
import sys
from dataclasses import replace
from datetime import UTC, date, datetime
from fractions import Fraction
from pathlib import Path
from typing import Any

import pytest
from tool import Tool

from assistant.contract import Doubt, Outcome, Reading, Reply, Slots
from assistant.core.household import Bottle, Enclosure, Habits, Household, Measure, Stock
from assistant.core.quantities.amounts import Amount, SaidRatio
from assistant.core.quantities.quantity import read_amount, read_mix
from assistant.core.record.events import GasMade

BLEACH, VINEGAR, CHLORHEXIDINE = "sodium hypochlorite", "acetic acid", "chlorhexidine"
KEYS = {
    *("concentrate", "water", "total", "strength_percent", "strength_ppm", "parts", "reading", "mark"),
    *("full_fills", "strength_low", "strength_high", "smallest_batch", "two_steps"),
}

# Invented.
HOME = Household(
    habits=Habits(ratio="to"),
    measures=(
        Measure("thin syringe", read_amount("1 mL"), read_amount("0.01 mL"), also=("thin one",)),
        Measure("fat syringe", read_amount("10 mL"), read_amount("0.2 mL")),
    ),
    stocks=(
        Stock("shed bleach", BLEACH, read_amount("6 percent")),
        Stock("malt vinegar", VINEGAR, read_amount("5 percent")),
        Stock("pink stuff", CHLORHEXIDINE, read_amount("2 percent"), label_mix=read_mix("1 in 40")),
        Stock("blue stuff", CHLORHEXIDINE, read_amount("4 percent")),
        Stock("spirit", "isopropyl alcohol", read_amount("70 percent")),
    ),
    bottles=(
        Bottle("tall bottle", read_amount("750 mL"), stock="shed bleach", mix=read_mix("1 in 32")),
        Bottle("short bottle", read_amount("500 mL"), stock="malt vinegar", mix=read_mix("1 to 1")),
        Bottle("round bottle", read_amount("500 mL"), stock="pink stuff"),
        Bottle("spare bottle", read_amount("250 mL")),
        Bottle("flat bottle", read_amount("250 mL"), stock="spirit", mix=read_mix("neat")),
    ),
    enclosures=(Enclosure("pond", water="all"), Enclosure("box")),
)


def asked(*, volume: str = "", mix: str = "", **more: Any) -> Reading:
    volumes = tuple(read_amount(text) for text in volume.split(" and ") if text)
    mixes = tuple(read_mix(text) for text in mix.split(" and ") if text)
    turn = {key: more.pop(key) for key in ("spoken", "doubts") if key in more}
    return Reading("", "dose", Slots(volumes=volumes, mixes=mixes, **more), confidence=1.0, **turn)


def dose(home: Household = HOME, **said: Any) -> Reply:
    return Tool(home).hear(asked(**said))


def shelf(stock: Stock, **more: Any) -> Household:
    """The household with one bleach only."""
    return replace(HOME, stocks=(stock, *HOME.stocks[1:]), **more)


# ---------------------------------------------------------------- answered


def test_a_ratio_in_a_volume() -> None:
    reply = dose(volume="500 mL", mix="1 in 32", agents=(BLEACH,))
    assert reply.outcome is Outcome.ANSWER
    assert reply.values == {
        "concentrate": Amount(Fraction("15.625"), "mL"),
        "water": Amount(Fraction("484.375"), "mL"),
        "total": Amount(Fraction(500), "mL"),
        "strength_percent": Fraction("0.1875"),
        "strength_ppm": 1875,
        "parts": (1, 32),
        "reading": "in",
        "mark": {"tool": "fat syringe", "amount": Fraction("5.6"), "unit": "mL"},
        "full_fills": 1,
        # 15.6 mL, off by 4 percent and by 0.1 by eye for each of two fills, of 500 mL of a 6 percent stock
        "strength_low": Fraction("6") * (Fraction("15.6") * Fraction("0.96") - Fraction("0.2")) / 500,
        "strength_high": Fraction("6") * (Fraction("15.6") * Fraction("1.04") + Fraction("0.2")) / 500,
        "smallest_batch": None,
        "two_steps": None,
    }
    assert reply.say == (
        "15.6 mils of bleach, one in 32: fat syringe once full, then to 5.6. Into water, 500 mils in all."
    )


@pytest.mark.parametrize(
    "said",
    [
        {"volume": "500 mL", "mix": "1 in 32"},
        {"volume": "500 mL", "mix": "0.05 percent", "agents": (BLEACH,)},
        {"volume": "0.4 mL", "mix": "1 in 400", "agents": (BLEACH,)},
        {"bottles": ("flat bottle",)},
        {"volume": "1 US gal", "mix": "1:32", "agents": (VINEGAR,)},
    ],
)
def test_every_key_is_there_whatever_is_known(said: dict[str, Any]) -> None:
    for home in (HOME, replace(HOME, measures=())):
        reply = dose(home, **said)
        assert reply.outcome is Outcome.ANSWER
        assert set(reply.values) == KEYS
        assert "caution" not in "".join(reply.cautions)
        assert reply.cautions[0] == "Your product's own label comes first"
        assert len(reply.say.split()) <= 25


def test_with_no_tools_there_is_no_mark_and_no_range() -> None:
    reply = dose(replace(HOME, measures=()), volume="500 mL", mix="1 in 32", agents=(BLEACH,))
    assert [reply.values[key] for key in ("mark", "full_fills", "strength_low", "strength_high")] == [None] * 4
    assert reply.say.startswith("15.6 mils of bleach, one in 32")


def test_the_tool_named_is_the_tool_used() -> None:
    reply = dose(volume="500 mL", mix="1 in 100", agents=(BLEACH,), measures=("thin syringe",))
    assert reply.values["mark"] == {"tool": "thin syringe", "amount": 1, "unit": "mL"}
    assert reply.values["full_fills"] == 4


def test_a_tool_that_cannot_measure_it_is_said_so() -> None:
    reply = dose(volume="500 mL", mix="1 in 20", agents=(BLEACH,), measures=("thin syringe",))
    assert reply.values["mark"] is None
    assert reply.say.startswith("25 mils of bleach, one in 20. The thin syringe can't measure that.")


@pytest.mark.parametrize(
    ("volume", "mix", "words"),
    [
        (
            "5 mL",
            "1 in 500",
            "0.01 mils of bleach, one in 500. Too little for your tools. Better make 125 mils at once.",
        ),
        ("100 L", "1 in 100", "1 litre of bleach, one in 100. Too much for your tools."),
    ],
)
def test_where_no_tool_is_good_enough_there_is_no_mark_and_it_is_said_why(volume: str, mix: str, words: str) -> None:
    reply = dose(volume=volume, mix=mix, agents=(BLEACH,))
    assert [reply.values[key] for key in ("mark", "full_fills", "strength_low", "strength_high")] == [None] * 4
    assert reply.say.startswith(words)


def test_a_mix_stronger_than_its_stock_is_refused_with_the_reason() -> None:
    reply = dose(stocks=("pink stuff",), volume="1 L", mix="3 percent")
    assert reply.outcome is Outcome.REFUSE
    assert reply.say == "No: the chlorhexidine is only 2 percent, weaker than 3 percent. Mixing only thins it."


def test_so_much_of_water_is_the_water_and_not_the_whole() -> None:
    reply = dose(volume="500 mL", mix="1 to 32", agents=(BLEACH,), roles=("water",))
    assert reply.values["water"] == Amount(Fraction(500), "mL")
    assert reply.values["concentrate"] == Amount(Fraction(500, 32), "mL")
    assert reply.values["total"] == Amount(Fraction(500 * 33, 32), "mL")
    assert reply.say.endswith("Into 500 mils of water.")


def test_water_that_makes_more_than_the_bottle_holds_is_asked_back() -> None:
    reply = dose(volume="500 mL", mix="1 to 1", bottles=("short bottle",), roles=("water",))
    assert reply.outcome is Outcome.ASK
    assert "short bottle holds 500 mils" in reply.say


def test_the_last_of_a_stock_is_used_up() -> None:
    reply = dose(volume="10 mL", mix="1 in 32", agents=(BLEACH,), uses_up=True)
    assert (reply.values["water"], reply.values["total"]) == (
        Amount(Fraction(310), "mL"),
        Amount(Fraction(320), "mL"),
    )
    assert reply.say.startswith("310 mils of water to 10 mils of bleach, one in 32")
    left = shelf(Stock("shed bleach", BLEACH, read_amount("6 percent"), left=read_amount("20 mL")))
    assert dose(left, mix="1 to 9", agents=(BLEACH,), uses_up=True).values["total"] == Amount(Fraction(200), "mL")


def test_a_stock_that_runs_out_first_is_said_to() -> None:
    home = shelf(Stock("shed bleach", BLEACH, read_amount("6 percent"), left=read_amount("10 mL")))
    reply = dose(home, volume="1 L", mix="1 in 50", agents=(BLEACH,))
    assert "Only 10 mils left, enough for 500 mils." in reply.say


def test_a_dose_measured_roughly_comes_with_the_smallest_batch_that_is_not() -> None:
    # ISO 7886-1, below half of 1 mL: 1.5 percent of its size and 2 of the dose, with half a mark: 10 percent at 0.25.
    reply = dose(volume="20 mL", mix="1 in 100", agents=(BLEACH,))
    assert reply.values["smallest_batch"] == Amount(Fraction(25), "mL")
    assert reply.values["two_steps"] is None


def test_far_too_little_for_the_only_tool_goes_in_two_steps() -> None:
    home = replace(HOME, measures=HOME.measures[1:])
    reply = dose(home, volume="1 L", mix="1 in 2000", agents=(BLEACH,))
    first, second = reply.values["two_steps"]
    shares = [step["pour"].amount / (step["pour"].amount + step["water"].amount) for step in (first, second)]
    assert shares[0] * shares[1] == Fraction(1, 2000)
    assert first["pour"].amount + first["water"].amount >= second["pour"].amount
    assert "two steps" in reply.say


def test_a_recipe_is_said_as_it_was_asked() -> None:
    recipe = SaidRatio(Fraction(1), Fraction(128), "to", read_amount("1 US fl oz"), read_amount("1 US gal"))
    reply = Tool(HOME).hear(
        replace(
            asked(volume="500 mL", agents=(BLEACH,)),
            slots=Slots(volumes=(read_amount("500 mL"),), mixes=(recipe,), agents=(BLEACH,)),
        )
    )
    assert reply.values["parts"] == (1, 128)
    assert reply.values["concentrate"] == Amount(Fraction(500, 129), "mL")
    assert "1 US fluid ounce to the US gallon" in reply.say


def test_between_two_tools_neither_is_said_to_be_too_small() -> None:
    home = replace(HOME, measures=(HOME.measures[0], Measure("tub", read_amount("1 L"), read_amount("50 mL"), "jug")))
    assert "None of your tools measures that well" in dose(home, volume="500 mL", mix="1 in 20").say


def test_a_tool_whose_marks_end_below_its_brim_is_filled_to_the_top_mark() -> None:
    home = replace(HOME, measures=(Measure("beaker", read_amount("1/2 imp pt"), read_amount("10 mL"), "jug"),))
    assert "beaker once to the top mark, then to 20." in dose(home, volume="600 mL", mix="1 to 1").say


def test_the_range_reaches_to_the_strength_asked_for_where_only_a_spoon_is_on_hand() -> None:
    home = replace(HOME, measures=(Measure("teaspoon", read_amount("1 tsp"), None, "spoon"),))
    for volume in ("570 mL", "430 mL"):  # 5.7 and 4.3 mL, against 4.93 of the spoon
        values = dose(home, volume=volume, mix="1 in 100", agents=(BLEACH,)).values
        assert values["strength_low"] <= values["strength_percent"] <= values["strength_high"]


def test_a_rough_measure_is_said_to_be_rough() -> None:
    reply = dose(volume="10 mL", mix="1 in 100", agents=(BLEACH,))
    assert "thin syringe to 0.1, roughly." in reply.say
    assert "That is rough" in reply.show


@pytest.mark.parametrize(
    ("volume", "mix", "words"),
    [
        ("1/2 L", "1 in 50", "10 mils of vinegar, one in 50: fat syringe full. Into water, half a litre in all."),
        ("3/4 imp pt", "1 in 50", "8.6 mils of vinegar, one in 50: fat syringe to 8.6. "),
        ("1/5 L", "1 in 50", "4 mils of vinegar, one in 50: fat syringe to 4. Into water, 200 mils in all."),
        ("1 L", "1 in 50", "20 mils of vinegar, one in 50: fat syringe twice full. Into water, 1 litre in all."),
        ("999999 L", "1 in 32", "31250 litres of vinegar, one in 32. Too much for your tools."),
        ("50 US gal", "1 in 10", "5 US gallons of vinegar, one in 10. Too much for your tools."),
        ("1 mL", "1 ppm", "0.00002 mils of vinegar, for 1 part per million. Too little"),
    ],
)
def test_amounts_are_said_in_plain_numbers(volume: str, mix: str, words: str) -> None:
    assert dose(volume=volume, mix=mix, agents=(VINEGAR,)).say.startswith(words)


@pytest.mark.parametrize(
    ("volume", "line"),
    [
        ("750 mL", "15 mL vinegar + 735 mL water = 750 mL"),
        ("2 L", "40 mL vinegar + 1.96 L water = 2 L"),
        ("2000 mL", "40 mL vinegar + 1960 mL water = 2000 mL"),
        ("1 US gal", "2.56 US fl oz (75.71 mL) vinegar + 125.4 US fl oz (3.71 L) water = 1 US gal"),
        ("10 imp gal", "32 imp fl oz (909.2 mL) vinegar + 9.8 imp gal (44.55 L) water = 10 imp gal"),
    ],
)
def test_the_sum_is_shown_in_the_totals_units_and_in_metric_ones(volume: str, line: str) -> None:
    assert dose(volume=volume, mix="1 in 50", agents=(VINEGAR,)).show.splitlines()[0] == line


def test_an_everyday_dose_converts_nothing() -> None:
    # Importing pint would take a third of a cold answer.
    code = (
        "import sys, test_mixing as test; "
        "print(test.dose(volume='500 mL', mix='1 in 32', agents=(test.BLEACH,)).say, 'pint' in sys.modules)"
    )
    here = Path(__file__)
    path = os.pathsep.join([str(here.parents[2]), str(here.parent), str(here.parents[3])])
    found = subprocess.run(
        [sys.executable, "-c", code], capture_output=True, text=True, check=True, env={**os.environ, "PYTHONPATH": path}
    )
    assert found.stdout.strip().endswith("in all. False")


def test_the_bottles_capacity_and_own_mix_serve_when_nothing_else_is_said() -> None:
    reply = dose(bottles=("tall bottle",))
    assert reply.values["total"] == Amount(Fraction(750), "mL")
    assert reply.values["parts"] == (1, 32)
    assert "setting-mix" in {source.id for source in reply.sources}


def test_a_volume_said_wins_over_the_bottles_capacity() -> None:
    assert dose(volume="300 mL", bottles=("tall bottle",)).values["total"] == Amount(Fraction(300), "mL")


def test_a_bottle_may_be_filled_to_the_brim() -> None:
    assert dose(volume="750 mL", bottles=("tall bottle",)).outcome is Outcome.ANSWER
    assert dose(volume="750.1 mL", bottles=("tall bottle",)).outcome is Outcome.ASK


def test_the_labels_own_dilution_serves_where_the_bottle_has_none() -> None:
    reply = dose(bottles=("round bottle",))
    assert reply.values["parts"] == (1, 40)
    assert "label" in {source.kind for source in reply.sources}


def test_a_mix_weaker_than_the_labels_is_shown_to_be() -> None:
    assert "Weaker than its label's 1 in 40" in dose(bottles=("round bottle",), mix="1 in 50").show
    assert "label's" not in dose(bottles=("round bottle",), mix="1 in 30").show


def test_a_bottle_meant_for_something_else_lends_neither_its_mix_nor_goes_unmentioned() -> None:
    assert dose(bottles=("flat bottle",), agents=(CHLORHEXIDINE,), stocks=("pink stuff",)).values["parts"] == (1, 40)
    assert "meant for rubbing alcohol" in dose(bottles=("flat bottle",), stocks=("blue stuff",), mix="1 in 80").show


def test_a_ratio_needs_no_stock() -> None:
    reply = dose(volume="500 mL", mix="1 in 200")
    assert reply.outcome is Outcome.ANSWER
    assert "2.5 mils of concentrate" in reply.say
    assert (reply.values["strength_percent"], reply.values["strength_ppm"]) == (None, None)


def test_percent_and_ppm_of_bleach_agree_by_the_convention() -> None:
    one = dose(volume="1 L", mix="0.05 percent", agents=(BLEACH,))
    two = dose(volume="1 L", mix="500 ppm", agents=(BLEACH,))
    assert one.values["concentrate"] == two.values["concentrate"]
    assert one.values["parts"] == two.values["parts"] == (1, 119)
    assert two.values["reading"] == "to"


def test_ppm_is_exact_where_the_basis_is_known() -> None:
    home = shelf(Stock("shed bleach", BLEACH, read_amount("6 percent"), "w/v"))
    reply = dose(home, volume="1 L", mix="500 ppm", agents=(BLEACH,))
    # 60 g/L hypochlorite are 57.15 g/L available chlorine: 500 / 57150 of a litre.
    assert float(reply.values["concentrate"].amount) == pytest.approx(8.749, abs=0.001)
    assert reply.values["strength_ppm"] == 500
    assert "taking 1 percent" not in reply.show


def test_ppm_of_another_agent_is_ten_thousandth_percent_and_no_chlorine() -> None:
    reply = dose(volume="1 L", mix="500 ppm", stocks=("pink stuff",))
    assert reply.values["concentrate"] == Amount(Fraction(25), "mL")
    assert reply.values["strength_ppm"] is None
    assert "mixing-ppm-other" in {source.id for source in reply.sources}


def test_a_strength_stated_in_the_question_overrides_the_shelf() -> None:
    reply = dose(volume="1 L", mix="0.05 percent", agents=(BLEACH,), stock_strength=read_amount("5 percent"))
    assert reply.values["concentrate"] == Amount(Fraction(10), "mL")
    assert "setting-strength" not in {source.id for source in reply.sources}


def test_us_measures_are_answered_in_us_ounces_and_measured_with_the_tool_on_hand() -> None:
    reply = dose(volume="1 US gal", mix="1 to 127", agents=(VINEGAR,))
    assert reply.values["concentrate"] == Amount(Fraction(1), "US fl oz")
    assert reply.values["water"] == Amount(Fraction(127), "US fl oz")
    assert reply.values["mark"]["unit"] == "mL"
    assert reply.say.startswith("29.6 mils of vinegar")


def test_undiluted_takes_no_measuring() -> None:
    reply = dose(bottles=("flat bottle",))
    assert (reply.values["parts"], reply.values["water"].amount, reply.values["mark"]) == ((1, 0), 0, None)
    assert reply.values["strength_low"] == reply.values["strength_percent"] == 70
    assert any("fire" in caution for caution in reply.cautions)


# ---------------------------------------------------------------- readings of a colon


def test_a_colon_follows_the_setting_and_the_reply_says_so() -> None:
    for setting, share in (("to", 33), ("in", 32)):
        home = replace(HOME, habits=Habits(ratio=setting))  # type: ignore[arg-type]
        reply = dose(home, volume="500 mL", mix="1:32", agents=(BLEACH,))
        assert reply.values["concentrate"].amount == Fraction(500, share)
        assert reply.values["reading"] == setting
        assert f"one {setting} 32" in reply.say
        assert "setting-ratio" in {source.id for source in reply.sources}


def test_the_other_reading_is_shown_only_where_the_tool_can_tell_them_apart() -> None:
    assert "1 to 32 would take" in dose(volume="500 mL", mix="1 in 32", agents=(BLEACH,)).show
    assert "would take" not in dose(volume="100 mL", mix="1 in 32", agents=(BLEACH,), measures=("fat syringe",)).show


def test_a_small_colon_with_nothing_set_is_asked_about() -> None:
    home = replace(HOME, habits=Habits())
    reply = dose(home, volume="500 mL", mix="1:4", stocks=("malt vinegar",))
    assert (reply.outcome, reply.missing) == (Outcome.ASK, ("mix",))
    assert reply.say == "One in 4 in all, or one to 4 of water?"


# ---------------------------------------------------------------- asked back


@pytest.mark.parametrize(
    ("said", "missing"),
    [
        ({"agents": (BLEACH,), "mix": "1 in 32"}, ("total",)),
        ({"agents": (BLEACH,), "volume": "500 mL"}, ("mix",)),
        ({"agents": (BLEACH,)}, ("total", "mix")),
        ({"agents": (BLEACH,), "volume": "500 mL and 1 L", "mix": "1 in 32"}, ("volume",)),
        ({"agents": (BLEACH,), "volume": "500 mL", "mix": "1 in 32 and 1 in 50"}, ("mix",)),
        ({"bottles": ("tall bottle", "round bottle")}, ("bottle",)),
        ({"agents": (CHLORHEXIDINE,), "volume": "1 L", "mix": "1 in 40"}, ("stock", "stock_strength")),
        ({"stocks": ("pink stuff", "blue stuff"), "volume": "1 L", "mix": "1 in 40"}, ("stock",)),
        ({"bottles": ("spare bottle",), "volume": "1 L", "mix": "1 in 40"}, ("volume", "bottle")),
        ({"agents": ("quaternary ammonium",), "volume": "1 L", "mix": "0.1 percent"}, ("stock_strength",)),
        ({"volume": "1 L", "mix": "0.1 percent"}, ("stock_strength", "stock", "agent")),
        ({"agents": (CHLORHEXIDINE, "detergent"), "volume": "1 L", "mix": "1 in 50"}, ("agent", "stock")),
    ],
)
def test_what_is_missing_or_could_be_two_things_is_asked(said: dict[str, Any], missing: tuple[str, ...]) -> None:
    reply = dose(**said)
    assert (reply.outcome, reply.missing) == (Outcome.ASK, missing)
    assert reply.say.endswith(("?", "."))
    assert len(reply.say.split()) <= 25


def test_the_same_volume_twice_is_one_volume() -> None:
    assert dose(volume="500 mL and 500 mL", mix="1 in 32", agents=(BLEACH,)).outcome is Outcome.ANSWER


def test_a_whole_smaller_than_its_part_is_asked_again() -> None:
    reading = asked(volume="500 mL", agents=(BLEACH,))
    said = replace(read_mix("1 to 2"), second=Fraction(1, 2), word="in")  # type: ignore[arg-type]
    reply = Tool(HOME).hear(replace(reading, slots=replace(reading.slots, mixes=(said,))))
    assert (reply.outcome, reply.missing) == (Outcome.ASK, ("mix",))


def test_bleach_of_unknown_strength_is_asked_about_only_where_it_could_be_too_strong() -> None:
    home = replace(HOME, stocks=HOME.stocks[1:], bottles=())
    assert dose(home, volume="1 L", mix="1 in 32", agents=(BLEACH,)).outcome is Outcome.ANSWER
    assert dose(home, volume="1 L", mix="1 in 8", agents=(BLEACH,)).missing == ("stock_strength",)


# ---------------------------------------------------------------- refused


@pytest.mark.parametrize("mix", ["neat", "1 in 5", "1 to 4", "1.01 percent", "10001 ppm", "8 percent", "1 in 1"])
def test_bleach_above_one_percent_is_refused_with_the_strongest_cited_use(mix: str) -> None:
    reply = dose(volume="500 mL", mix=mix, agents=(BLEACH,))
    assert reply.outcome is Outcome.REFUSE
    assert "one in ten" in reply.say
    assert "mixing-bleach-strongest" in {source.id for source in reply.sources}


@pytest.mark.parametrize("mix", ["1 in 6", "1 percent", "10000 ppm", "1 to 5"])
def test_bleach_of_one_percent_is_not_refused(mix: str) -> None:
    assert dose(volume="500 mL", mix=mix, agents=(BLEACH,)).outcome is Outcome.ANSWER


def test_too_strong_a_bleach_is_refused_before_the_bottle_is_asked_for() -> None:
    assert dose(mix="neat", agents=(BLEACH,)).outcome is Outcome.REFUSE


@pytest.mark.parametrize(
    "said",
    [
        {"bottles": ("short bottle",), "agents": (BLEACH,), "mix": "1 in 32"},
        {"bottles": ("tall bottle",), "stocks": ("malt vinegar",), "mix": "1 to 1"},
        {"bottles": ("flat bottle",), "agents": (BLEACH,), "mix": "1 in 32"},
        {"volume": "500 mL", "mix": "1 in 32", "agents": (BLEACH, VINEGAR)},
        {"volume": "500 mL", "mix": "1 in 32", "agents": (BLEACH, CHLORHEXIDINE)},
        {"volume": "500 mL", "mix": "1 in 32", "stocks": ("shed bleach", "malt vinegar")},
        {"volume": "500 mL", "mix": "1 in 32", "agents": ("other", BLEACH)},
        {"bottles": ("tall bottle",), "agents": ("other",), "mix": "1 in 32"},
        {"volume": "500 mL", "mix": "1 in 32", "agents": ("phenolic",)},
        {"volume": "500 mL", "mix": "1 in 40", "stocks": ("pink stuff",), "enclosures": ("pond",)},
    ],
)
def test_what_must_not_meet_or_not_be_used_is_refused(said: dict[str, Any]) -> None:
    reply = dose(**said)
    assert reply.outcome is Outcome.REFUSE
    assert "concentrate" not in reply.values
    assert reply.sources


def test_chlorhexidine_for_a_dry_enclosure_is_not_refused() -> None:
    reply = dose(volume="500 mL", mix="1 in 40", stocks=("pink stuff",), enclosures=("box",))
    assert reply.outcome is Outcome.ANSWER


def test_a_bottle_that_holds_an_unknown_mix_takes_nothing() -> None:
    tool = Tool(HOME)
    tool._append((GasMade((BLEACH, VINEGAR), "tall bottle"),))
    assert tool.hear(asked(bottles=("tall bottle",))).outcome is Outcome.REFUSE


# ---------------------------------------------------------------- age

BEGAN = datetime(2026, 5, 1, 8, tzinfo=UTC)


def aged(made: date, degrees: str | None = "25 degC") -> Household:
    kept_at = None if degrees is None else read_amount(degrees)
    return shelf(Stock("shed bleach", BLEACH, read_amount("6 percent"), made=made, kept_at=kept_at))


def test_a_percentage_is_made_up_for_age() -> None:
    reply = dose(aged(date(2026, 1, 1)), volume="1 L", mix="0.06 percent", agents=(BLEACH,))
    fresh = dose(volume="1 L", mix="0.06 percent", agents=(BLEACH,))
    ratio = reply.values["concentrate"].amount / fresh.values["concentrate"].amount
    assert 1.1 < ratio < 1.25
    assert float(reply.values["strength_percent"]) == pytest.approx(0.06)
    assert "makes up for it" in reply.show


def test_ppm_is_made_up_for_age_alike() -> None:
    home = aged(date(2026, 1, 1))
    one = dose(home, volume="1 L", mix="0.06 percent", agents=(BLEACH,))
    two = dose(home, volume="1 L", mix="600 ppm", agents=(BLEACH,))
    assert one.values["concentrate"] == two.values["concentrate"]
    assert float(two.values["strength_ppm"]) == pytest.approx(600)


def test_a_ratio_is_kept_to_the_letter_however_old() -> None:
    for made in (date(2026, 1, 1), date(2020, 1, 1)):
        reply = dose(aged(made), volume="750 mL", mix="1 in 50", agents=(BLEACH,))
        assert reply.values["concentrate"] == Amount(Fraction(15), "mL")
        assert reply.values["strength_ppm"] == 1200  # by the label; what age took is on the screen
        assert reply.values["strength_percent"] == Fraction("0.12")
        assert "day" in reply.show


@pytest.mark.parametrize(
    ("made", "degrees", "words"),
    [
        (date(2025, 4, 1), "20 degC", "buy fresh"),  # over a year
        (date(2025, 8, 1), "30 degC", "buy fresh"),  # below 80 percent
        (date(2026, 1, 1), "10 degC", "buy fresh"),  # outside the law
        (date(2026, 1, 1), None, "isn't set"),
        (date(2027, 1, 1), "20 degC", "lies ahead"),
    ],
)
def test_past_the_limits_nothing_is_made_up_for(made: date, degrees: str | None, words: str) -> None:
    reply = dose(aged(made, degrees), volume="1 L", mix="0.06 percent", agents=(BLEACH,))
    assert reply.values["concentrate"] == Amount(Fraction(10), "mL")
    assert words in reply.show
    assert ("buy fresh" in reply.say) == (words == "buy fresh")
    assert ("is old" in reply.say) == (words == "buy fresh" and degrees != "10 degC")


def test_a_stated_strength_has_no_age() -> None:
    six = read_amount("6 percent")
    reply = dose(aged(date(2026, 1, 1)), volume="1 L", mix="0.06 percent", agents=(BLEACH,), stock_strength=six)
    assert reply.values["concentrate"] == Amount(Fraction(10), "mL")


# ---------------------------------------------------------------- heard


def heard(tool: Tool, doubts: tuple[Doubt, ...] = ()) -> Reply:
    return tool.hear(asked(bottles=("tall bottle",), mix="1 in 15", agents=(BLEACH,), spoken=True, doubts=doubts))


def test_a_heard_number_is_said_back_with_the_answer() -> None:
    reply = heard(Tool(HOME))
    assert reply.outcome is Outcome.ANSWER
    assert "one in 15" in reply.say
    assert "750 mils" in reply.say


def test_a_doubtful_number_is_read_back_digit_by_digit_and_waits() -> None:
    tool = Tool(HOME)
    reply = heard(tool, (Doubt("number", "15", ("50",)),))
    assert reply.outcome is Outcome.CONFIRM
    assert reply.say == "One in one-five takes 50 mils of bleach. Right?"
    assert set(reply.values) == KEYS
    assert tool.record == []
    confirmed = tool.say("yes")
    assert confirmed.outcome is Outcome.ANSWER
    assert confirmed.values == reply.values


def test_no_to_a_doubtful_number_asks_for_it_again() -> None:
    tool = Tool(HOME)
    heard(tool, (Doubt("number", "15", ("50",)),))
    assert tool.say("no").outcome is Outcome.ASK


def test_a_doubtful_volume_is_read_back_as_well() -> None:
    doubts = (Doubt("number", "750"), Doubt("number", "15"))
    assert heard(Tool(HOME), doubts).say == "I heard seven-five-zero and one-five: 50 mils of bleach. Right?"


def test_what_records_nothing_waits_for_yes_as_well_where_a_number_is_doubtful() -> None:
    tool = Tool(HOME)
    slots = Slots(durations=(read_amount("15 minutes"),), agents=(BLEACH,))
    reading = Reading("", "hold_time", slots, 1.0, doubts=(Doubt("number", "15", ("50",)),), spoken=True)
    reply = tool.hear(reading)
    assert (reply.outcome, reply.say) == (Outcome.CONFIRM, "One five, is that right?")
    assert tool.say("yes").outcome is Outcome.ANSWER


def test_what_was_heard_badly_is_read_back_whole_and_waits() -> None:
    tool = Tool(HOME)
    whole = Doubt("hearing", "how long must bleach stay wet")
    reading = Reading("", "hold_time", Slots(agents=(BLEACH,)), 1.0, doubts=(whole,), spoken=True)
    reply = tool.hear(reading)
    assert (reply.outcome, reply.say) == (Outcome.CONFIRM, "I heard: how long must bleach stay wet. Is that right?")
    assert tool.say("yes").values["minutes"] == 10


# ---------------------------------------------------------------- spoken


@pytest.mark.parametrize("name", ["x", "the very long and winding name of a syringe that nobody would ever give one"])
@pytest.mark.parametrize("mix", ["1 in 32", "0.05 percent", "500 ppm"])
def test_a_reply_stays_within_25_words_and_keeps_the_dose_and_the_mix(name: str, mix: str) -> None:
    home = replace(HOME, measures=(replace(HOME.measures[1], name=name),))
    reply = dose(home, volume="1 imp gal", mix=mix, agents=(BLEACH,), spoken=True)
    assert len(reply.say.split()) <= 25
    assert "of bleach" in reply.say
    assert any(word in reply.say for word in ("one in 32", "0.05 percent", "500 parts"))
    assert not set("%/:°") & set(reply.say.replace(": ", " "))
