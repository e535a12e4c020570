"""`dose` through whole turns: every way of asking, and every way of being refused or asked back."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime
from fractions import Fraction

import pytest
from tool import Tool

from assistant.contract import Doubt, Outcome, Reading, Reply, Slots
from assistant.core.amounts import Amount, Mix, Neat, Percent, Ppm, SaidRatio
from assistant.core.household import Bottle, Habits, Household, Measure, Stock

NOW = datetime(2026, 5, 1, 8, tzinfo=UTC)


def mils(amount: str | int) -> Amount:
    return Amount(Fraction(amount), "mL")


def ratio(n: str | int, word: str = "in", first: int = 1) -> SaidRatio:
    return SaidRatio(Fraction(first), Fraction(n), word)  # type: ignore[arg-type]


SYRINGE = Measure("ten mil syringe", mils(10), mils("0.2"))
HOUSEHOLD = Household(
    measures=(SYRINGE,),
    stocks=(
        Stock("kitchen bleach", "sodium hypochlorite", Amount(Fraction(6), "%")),
        Stock("pink mix", "chlorhexidine", Amount(Fraction(2), "%")),
        Stock("vinegar", "acetic acid", Amount(Fraction(5), "%")),
    ),
    bottles=(
        Bottle("red bottle", mils(500), stock="kitchen bleach", mix=ratio(32)),
        Bottle("pink bottle", mils(500), stock="pink mix"),
        Bottle("white bottle", mils(500), stock="vinegar", mix=Neat()),
    ),
)


@pytest.fixture
def tool() -> Tool:
    return Tool(HOUSEHOLD, NOW)


def bleach(tool: Tool, mix: Mix, total: str | int = 1000, **slots: object) -> Reply:
    return tool.say("dose", agents=("sodium hypochlorite",), mixes=(mix,), volumes=(mils(total),), **slots)


def aged(made: date, degrees: int = 20) -> Household:
    stock = replace(HOUSEHOLD.stocks[0], made=made, kept_at=Amount(Fraction(degrees), "degC"), basis="w/w")
    return replace(HOUSEHOLD, stocks=(stock, *HOUSEHOLD.stocks[1:]))


# ---------------------------------------------------------------- what the numbers are


@pytest.mark.parametrize(
    ("mix", "total", "concentrate"),
    [
        (ratio(50), 750, Fraction(15)),
        (ratio(32), 500, Fraction(125, 8)),
        (ratio(32, "to"), 500, Fraction(500, 33)),
        (ratio(50, "to", first=2), 520, Fraction(20)),
        (Percent(Fraction("0.06")), 1000, Fraction(10)),
        (Ppm(Fraction(600)), 1000, Fraction(10)),
    ],
)
def test_the_concentrate_is_exact_and_the_parts_add_up(mix: Mix, total: int, concentrate: Fraction, tool: Tool) -> None:
    reply = bleach(tool, mix, total)
    assert reply.values["concentrate"] == Amount(concentrate, "mL")
    assert reply.values["water"].amount + concentrate == total


KEYS = (
    *("concentrate", "water", "total", "strength_percent", "strength_ppm"),
    *("parts", "reading", "mark", "strength_low", "strength_high"),
)


def test_every_key_of_the_contract_is_there(tool: Tool) -> None:
    values = bleach(tool, ratio(32)).values
    assert [key for key in KEYS if key not in values] == []
    assert values["strength_low"] <= values["strength_percent"] <= values["strength_high"]


def test_without_tools_there_is_no_mark(tool: Tool) -> None:
    bare = Tool(replace(HOUSEHOLD, measures=()), NOW)
    values = bleach(bare, ratio(32)).values
    assert (values["mark"], values["strength_low"]) == (None, None)


def test_chlorine_is_told_of_bleach_alone(tool: Tool) -> None:
    assert bleach(tool, ratio(100)).values["strength_ppm"] == 600
    reply = tool.say("dose", agents=("chlorhexidine",), mixes=(ratio(40),), volumes=(mils(500),))
    assert reply.values["strength_ppm"] is None


def test_the_bottle_gives_the_total_and_its_own_mix(tool: Tool) -> None:
    reply = tool.say("dose", bottles=("red bottle",))
    assert reply.values["total"] == mils(500)
    assert reply.values["parts"] == (1, 32)
    assert any(source.kind == "setting" for source in reply.sources)


def test_what_is_said_wins_over_the_bottles_own(tool: Tool) -> None:
    reply = tool.say("dose", bottles=("red bottle",), volumes=(mils(250),), mixes=(ratio(50),))
    assert reply.values["concentrate"] == mils(5)


# ---------------------------------------------------------------- readings


@pytest.mark.parametrize(
    ("habit", "concentrate"), [("in", Fraction(25)), ("to", Fraction(500, 21)), (None, Fraction(500, 21))]
)
def test_a_colon_follows_the_keepers_setting_and_the_reply_says_which(habit: str | None, concentrate: Fraction) -> None:
    tool = Tool(replace(HOUSEHOLD, habits=Habits(ratio=habit)), NOW)  # type: ignore[arg-type]
    reply = bleach(tool, ratio(20, "colon"), 500)
    assert reply.values["concentrate"].amount == concentrate
    assert reply.values["reading"] in reply.say


@pytest.mark.parametrize("n", [2, 3, 5])
def test_a_low_colon_with_nothing_set_is_asked(n: int, tool: Tool) -> None:
    reply = tool.say("dose", agents=("acetic acid",), mixes=(ratio(n, "colon"),), volumes=(mils(500),))
    assert reply.outcome is Outcome.ASK


def test_equal_parts_are_equal_parts_whatever_is_set() -> None:
    for habit in ("in", "to", None):
        tool = Tool(replace(HOUSEHOLD, habits=Habits(ratio=habit)), NOW)  # type: ignore[arg-type]
        reply = tool.say("dose", agents=("acetic acid",), mixes=(ratio(1, "colon"),), volumes=(mils(500),))
        assert reply.values["concentrate"] == mils(250)


def test_the_other_reading_is_shown_but_not_spoken(tool: Tool) -> None:
    reply = bleach(tool, ratio(20), 500)
    assert "1 to 20" in reply.show
    assert "to 20" not in reply.say


# ---------------------------------------------------------------- age


def test_a_ratio_is_kept_to_the_letter_however_old_the_bleach() -> None:
    assert bleach(Tool(aged(date(2024, 1, 1)), NOW), ratio(50), 750).values["concentrate"] == mils(15)


def test_a_percent_of_a_dated_bleach_takes_more_of_it_but_a_quarter_at_most() -> None:
    fresh = bleach(Tool(HOUSEHOLD, NOW), Percent(Fraction("0.06"))).values["concentrate"].amount
    older = bleach(Tool(aged(date(2025, 9, 1)), NOW), Percent(Fraction("0.06"))).values["concentrate"].amount
    assert fresh < older <= fresh * Fraction(5, 4)


@pytest.mark.parametrize("made", [date(2025, 4, 1), date(2024, 1, 1)])
def test_a_bleach_over_a_year_old_is_not_corrected_for(made: date) -> None:
    reply = bleach(Tool(aged(made), NOW), Percent(Fraction("0.06")))
    assert reply.values["concentrate"].amount == 10
    assert "fresh" in reply.show.lower()


def test_a_strength_said_overrides_the_shelf(tool: Tool) -> None:
    reply = bleach(tool, Percent(Fraction("0.06")), stock_strength=Amount(Fraction(3), "%"))
    assert reply.values["concentrate"] == mils(20)


# ---------------------------------------------------------------- asked back


@pytest.mark.parametrize(
    ("slots", "missing"),
    [
        ({"agents": ("sodium hypochlorite",), "mixes": (ratio(32),)}, ("total",)),
        ({"agents": ("sodium hypochlorite",), "volumes": (mils(500),)}, ("mix",)),
        ({}, ("total", "mix")),
    ],
)
def test_what_is_missing_is_asked_for(slots: dict[str, object], missing: tuple[str, ...], tool: Tool) -> None:
    reply = tool.say("dose", **slots)
    assert (reply.outcome, reply.missing) == (Outcome.ASK, missing)


def test_a_target_stronger_than_the_stock_is_asked_again(tool: Tool) -> None:
    reply = tool.say("dose", agents=("chlorhexidine",), mixes=(Percent(Fraction(3)),), volumes=(mils(500),))
    assert reply.outcome is Outcome.ASK
    assert "2 percent" in reply.show or "2 %" in reply.show


def test_more_than_the_bottle_holds_is_asked_again(tool: Tool) -> None:
    assert tool.say("dose", bottles=("red bottle",), volumes=(mils(750),)).outcome is Outcome.ASK


def test_a_percent_without_a_known_strength_asks_how_strong(tool: Tool) -> None:
    bare = Tool(Household(), NOW)
    reply = bleach(bare, Percent(Fraction("0.06")))
    assert (reply.outcome, reply.missing) == (Outcome.ASK, ("stock_strength",))


# ---------------------------------------------------------------- refused


@pytest.mark.parametrize("mix", [Neat(), Percent(Fraction("1.1")), Ppm(Fraction(10_001)), ratio(5)])
def test_bleach_above_one_percent_is_refused_with_the_strongest_use_cited(mix: Mix, tool: Tool) -> None:
    reply = bleach(tool, mix)
    assert reply.outcome is Outcome.REFUSE
    assert "one in ten" in reply.say
    assert any(source.kind == "published" for source in reply.sources)


def test_half_of_a_gas_never_goes_in_the_others_bottle(tool: Tool) -> None:
    reply = tool.say("dose", agents=("acetic acid",), bottles=("red bottle",), mixes=(ratio(10),))
    assert reply.outcome is Outcome.REFUSE


# ---------------------------------------------------------------- heard


def heard(mix: Mix, *doubts: Doubt) -> Reading:
    slots = Slots(agents=("sodium hypochlorite",), mixes=(mix,), volumes=(mils(750),))
    return Reading("", "dose", slots, confidence=0.9, spoken=True, doubts=doubts)


def test_a_heard_number_is_said_back(tool: Tool) -> None:
    assert "15" in tool.hear(heard(ratio(15))).say


def test_a_doubtful_number_is_read_back_by_digits_with_the_answer_in_the_same_breath(tool: Tool) -> None:
    reply = tool.hear(heard(ratio(15), Doubt("number", "15", ("50",))))
    assert reply.outcome is Outcome.CONFIRM
    assert "one-five" in reply.say
    assert "50 mils" in reply.say
    assert reply.values["concentrate"] == mils(50)
    assert tool.say("yes").outcome is Outcome.ANSWER


def test_no_to_a_doubtful_number_asks_for_it_again(tool: Tool) -> None:
    tool.hear(heard(ratio(15), Doubt("number", "15", ("50",))))
    assert tool.say("no").outcome is Outcome.ASK


def test_every_spoken_dose_is_short_and_begins_with_the_number(tool: Tool) -> None:
    for total in (1, 37, 250, 500, 999, 5000):
        for mix in (ratio(15), ratio(128, "to"), Percent(Fraction("0.05")), Ppm(Fraction(137))):
            say = bleach(tool, mix, total).say
            assert len(say.split()) <= 25, say
            assert say[0].isdigit() or say.startswith("About"), say
            assert not set("%/<>_[]{}°µ") & set(say), say
