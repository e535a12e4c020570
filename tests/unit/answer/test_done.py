"""`done`, and what it asks and refuses, through whole turns."""

from __future__ import annotations

from fractions import Fraction

import pytest
from tool import Tool

from assistant.contract import Doubt, Outcome, Reading, Reply, Slots
from assistant.core.household import Bottle, Enclosure, Household, Stock
from assistant.core.quantities.amounts import Amount, Neat, SaidRatio

HOUSEHOLD = Household(
    stocks=(
        Stock("kitchen bleach", "sodium hypochlorite", Amount(Fraction(6), "%"), label_minutes=10),
        Stock("pink mix", "chlorhexidine", Amount(Fraction(2), "%"), label_minutes=5),
        Stock("cider vinegar", "acetic acid", Amount(Fraction(5), "%")),
        Stock("spirit", "isopropyl alcohol", Amount(Fraction(70), "%"), label_minutes=3),
        Stock("foam", "accelerated hydrogen peroxide", Amount(Fraction(4), "%")),
    ),
    bottles=(
        Bottle(
            "red bottle",
            Amount(Fraction(500), "mL"),
            stock="kitchen bleach",
            mix=SaidRatio(Fraction(1), Fraction(32), "in"),
        ),
        Bottle(
            "pink bottle", Amount(Fraction(500), "mL"), stock="pink mix", mix=SaidRatio(Fraction(1), Fraction(40), "in")
        ),
        Bottle("white bottle", Amount(Fraction(500), "mL"), stock="cider vinegar", mix=Neat()),
        Bottle("clear bottle", Amount(Fraction(250), "mL"), stock="spirit", mix=Neat()),
        Bottle("grey bottle", Amount(Fraction(500), "mL"), stock="foam", mix=Neat()),
    ),
    enclosures=(
        Enclosure("oak box", animal="corn snake"),
        Enclosure("fern tank", animal="gecko"),
        Enclosure("pool", animal="musk turtle", water="all"),
    ),
)
BEFORE_SPRAYING = ("move out", "clear", "wash")


@pytest.fixture
def tool() -> Tool:
    return Tool(HOUSEHOLD)


def started(tool: Tool, bottle: str = "red bottle", enclosure: str = "oak box") -> Reply:
    return tool.say("start", enclosures=(enclosure,), bottles=(bottle,))


def done(tool: Tool, *steps: str, **slots: object) -> Reply:
    return tool.say("done", steps=steps, **slots)


def sprayed(tool: Tool, bottle: str = "red bottle", enclosure: str = "oak box") -> None:
    started(tool, bottle, enclosure)
    reply = done(tool, *BEFORE_SPRAYING, "apply", enclosures=(enclosure,))
    assert reply.values["recorded"] is True


def blocked_by(tool: Tool, enclosure: str = "oak box") -> tuple[str, ...]:
    return tool.say("return_check", enclosures=(enclosure,)).values["blocked_by"]


# ---------------------------------------------------------------- in order, and not


def test_several_steps_in_one_sentence_are_recorded_in_order(tool: Tool) -> None:
    started(tool)
    reply = done(tool, "wash", "move out", "clear")
    assert reply.values["recorded"] is True
    assert reply.values["next"] == "apply"


def test_of_several_steps_those_up_to_the_gap_are_recorded(tool: Tool) -> None:
    started(tool)
    reply = done(tool, "move out", "wash", "apply")
    assert (reply.outcome, reply.values["recorded"]) == (Outcome.ASK, False)
    assert "clearing" in reply.say
    assert blocked_by(tool)[0] == "clear"


def test_a_step_ahead_is_asked_about_and_yes_records_both(tool: Tool) -> None:
    started(tool)
    done(tool, "move out")
    assert done(tool, "wash").outcome is Outcome.ASK
    reply = tool.say("yes")
    assert reply.intent == "done"
    assert reply.values["recorded"] is True
    assert blocked_by(tool)[0] == "apply"


def test_no_to_was_that_done_records_nothing(tool: Tool) -> None:
    started(tool)
    done(tool, "wash")
    assert "Nothing recorded" in tool.say("no").say
    assert blocked_by(tool)[0] == "move out"


def test_a_question_of_the_tools_lapses_after_five_minutes(tool: Tool) -> None:
    started(tool)
    done(tool, "move out")
    done(tool, "wash")
    tool.after(minutes=5, seconds=1)
    reply = tool.say("yes")
    assert (reply.intent, reply.outcome) == ("yes", Outcome.UNSURE)
    assert blocked_by(tool)[0] == "clear"


def test_a_question_of_the_tools_lapses_after_three_other_turns(tool: Tool) -> None:
    started(tool)
    done(tool, "wash")
    for _ in range(3):
        tool.say("status")
    assert tool.say("yes").outcome is Outcome.UNSURE


def test_harm_and_a_look_at_the_clocks_do_not_use_the_question_up(tool: Tool) -> None:
    started(tool)
    done(tool, "move out")
    done(tool, "wash")
    for _ in range(4):
        tool.say("time_left")
        tool.say("splash", place="eye", victim="person")
    assert tool.say("yes").values["recorded"] is True


def test_yes_with_nothing_waiting_changes_nothing(tool: Tool) -> None:
    started(tool)
    before = tool.state
    reply = tool.say("yes")
    assert (reply.intent, reply.outcome) == ("yes", Outcome.UNSURE)
    assert tool.state == before


def test_a_bare_done_is_the_step_asked_for(tool: Tool) -> None:
    started(tool)
    assert done(tool).values["steps"] == ("move out",)


def test_a_step_this_agent_does_not_take_does_no_harm(tool: Tool) -> None:
    sprayed(tool, "pink bottle")
    tool.after(minutes=5)
    done(tool, "rinse", "dry")
    assert done(tool, "air").values["recorded"] is True
    assert tool.say("return_check").values["ready"] is True


def test_what_is_on_record_already_does_not_hide_what_follows(tool: Tool) -> None:
    sprayed(tool)
    tool.after(minutes=10)
    done(tool, "rinse", "dry")
    done(tool, *BEFORE_SPRAYING, "apply")
    assert blocked_by(tool) == ("hold", "rinse", "dry", "air")


def test_nothing_open_asks_what_it_takes_to_start(tool: Tool) -> None:
    reply = done(tool, "rinse", enclosures=("oak box",))
    assert (reply.outcome, reply.values["recorded"]) == (Outcome.ASK, False)
    assert "bottle" in reply.missing


# ---------------------------------------------------------------- the wet time


def test_done_holding_five_seconds_short_says_what_is_left(tool: Tool) -> None:
    sprayed(tool)
    tool.after(minutes=9, seconds=55)
    reply = done(tool, "hold")
    assert (reply.outcome, reply.values["recorded"], reply.values["seconds"]) == (Outcome.ANSWER, False, 5)
    assert "5 seconds" in reply.say


def test_done_holding_asks_and_yes_serves_it(tool: Tool) -> None:
    sprayed(tool)
    tool.after(minutes=10)
    reply = done(tool, "hold")
    assert (reply.outcome, reply.values["recorded"]) == (Outcome.ASK, False)
    assert tool.say("yes").values["recorded"] is True
    assert blocked_by(tool)[0] == "rinse"


def test_done_holding_asks_and_no_starts_it_over(tool: Tool) -> None:
    sprayed(tool)
    tool.after(minutes=10)
    done(tool, "hold")
    reply = tool.say("no")
    assert (reply.intent, reply.values["recorded"]) == ("done", False)
    assert blocked_by(tool)[:2] == ("apply", "hold")


def test_the_reminder_at_the_end_asks_and_may_be_answered(tool: Tool) -> None:
    sprayed(tool)
    assert "stay wet" in tool.after(minutes=10)
    assert tool.say("no").intent == "done"
    assert blocked_by(tool)[0] == "apply"


def test_rinsed_at_three_minutes_is_asked_and_puts_the_wet_time_in_doubt(tool: Tool) -> None:
    sprayed(tool)
    tool.after(minutes=3)
    reply = done(tool, "rinse")
    assert (reply.outcome, reply.values["recorded"]) == (Outcome.ASK, False)
    tool.after(minutes=8)
    assert blocked_by(tool)[0] == "hold"  # nobody vouched for it yet


def test_it_dried_said_in_words_that_are_no_step_puts_the_wet_time_in_doubt(tool: Tool) -> None:
    sprayed(tool)
    tool.after(minutes=3)
    assert tool.hear(Reading("", None, Slots(stayed_wet=False))).outcome is Outcome.UNSURE
    tool.after(minutes=8)
    assert done(tool, "rinse").values["recorded"] is False
    assert blocked_by(tool)[0] == "hold"


def test_what_is_not_understood_doubts_nothing(tool: Tool) -> None:
    sprayed(tool)
    tool.after(minutes=3)
    tool.hear(Reading("", None))
    tool.after(minutes=8)
    assert done(tool, "rinse").values["recorded"] is True


def test_rinsed_at_three_minutes_and_yes_starts_it_over(tool: Tool) -> None:
    sprayed(tool)
    tool.after(minutes=3)
    done(tool, "rinse")
    tool.say("yes")
    assert blocked_by(tool)[0] == "apply"


def test_rinsed_after_the_program_was_closed_asks_whether_it_stayed_wet(tool: Tool) -> None:
    sprayed(tool)
    since = tool.closed_for(minutes=15)
    reply = tool.say("done", since, steps=("rinse",))
    assert (reply.outcome, reply.values["recorded"]) == (Outcome.ASK, False)
    reply = tool.say("yes")
    assert reply.values["recorded"] is True
    assert blocked_by(tool)[0] == "dry"


def test_without_a_figure_the_wet_time_cannot_be_served(tool: Tool) -> None:
    sprayed(tool, "grey bottle")
    tool.after(hours=2)
    assert done(tool, "hold").values["recorded"] is False
    assert blocked_by(tool)[0] == "hold"
    assert done(tool, "rinse").values["recorded"] is False
    assert blocked_by(tool)[:2] == ("apply", "hold")  # what was rinsed off is to be sprayed anew


def test_alcohol_waits_for_the_heat_to_be_off_and_cold(tool: Tool) -> None:
    started(tool, "clear bottle")
    done(tool, *BEFORE_SPRAYING)
    reply = done(tool, "apply")
    assert (reply.outcome, reply.values["recorded"]) == (Outcome.ASK, False)
    assert tool.say("yes").values["recorded"] is True
    assert tool.say("time_left").values["seconds"] == 180


# ---------------------------------------------------------------- which enclosure


def test_with_two_open_a_step_that_fits_only_one_goes_there_and_its_name_is_said(tool: Tool) -> None:
    sprayed(tool)
    started(tool, enclosure="fern tank")
    reply = done(tool, "move out")
    assert reply.values["enclosure"] == "fern tank"
    assert "Fern tank" in reply.say


def test_with_two_open_a_step_that_fits_both_is_asked(tool: Tool) -> None:
    started(tool)
    started(tool, enclosure="fern tank")
    reply = done(tool, "move out")
    assert (reply.outcome, reply.values["recorded"], reply.missing) == (Outcome.ASK, False, ("enclosure",))


def test_both_at_once(tool: Tool) -> None:
    started(tool)
    started(tool, enclosure="fern tank")
    reply = done(tool, "move out", every_enclosure=True)
    assert set(reply.values["enclosures"]) == {"oak box", "fern tank"}
    assert blocked_by(tool, "oak box")[0] == blocked_by(tool, "fern tank")[0] == "clear"


def test_the_gate_with_two_open_and_none_named_asks(tool: Tool) -> None:
    started(tool)
    started(tool, enclosure="fern tank")
    assert tool.say("return_check").outcome is Outcome.ASK


def test_a_window_counts_for_every_open_round(tool: Tool) -> None:
    for enclosure in ("oak box", "fern tank"):
        sprayed(tool, enclosure=enclosure)
    tool.after(minutes=10)
    for enclosure in ("oak box", "fern tank"):
        done(tool, "rinse", enclosures=(enclosure,))
    reply = done(tool, openings=1)
    assert reply.values["recorded"] is True
    assert len([t for t in tool.say("time_left").values["timers"] if t["step"] == "air"]) == 2


# ---------------------------------------------------------------- back too soon


def test_back_too_soon_is_recorded_as_that(tool: Tool) -> None:
    sprayed(tool)
    reply = done(tool, "return")
    assert reply.values["recorded"] is False
    assert reply.say.startswith("Take the corn snake out again")
    assert blocked_by(tool)[0] == "move out"


def test_soap_and_water_again_count_even_while_the_animal_is_back_inside(tool: Tool) -> None:
    sprayed(tool)
    tool.after(minutes=10)
    done(tool, "rinse", "dry")
    done(tool, "return")
    assert done(tool, "rinse").values["recorded"] is True
    assert blocked_by(tool) == ("move out", "dry", "air")
    done(tool, "wash")
    assert blocked_by(tool) == ("move out", "apply", "hold", "rinse", "dry", "air")


def test_sprayed_before_anything_else_is_asked_about_and_the_touch_is_kept(tool: Tool) -> None:
    started(tool)
    reply = done(tool, "apply")
    assert (reply.outcome, reply.values["recorded"]) == (Outcome.ASK, False)
    assert "moving out" in reply.say
    assert [touch.agent for touch in tool.state.surfaces["oak box"]] == ["sodium hypochlorite"]


def test_spraying_is_refused_while_the_animal_is_back_inside(tool: Tool) -> None:
    started(tool)
    done(tool, *BEFORE_SPRAYING)
    done(tool, "return")
    reply = done(tool, "apply")
    assert (reply.outcome, reply.values["recorded"]) == (Outcome.REFUSE, False)
    assert [touch.agent for touch in tool.state.surfaces["oak box"]] == ["sodium hypochlorite"]


# ---------------------------------------------------------------- agents that must not meet


def test_bleach_is_refused_where_vinegar_still_is_until_rinsed_and_dry(tool: Tool) -> None:
    started(tool, "white bottle")
    done(tool, "move out", "clear", "apply")
    for steps in ((), ("rinse",), ("dry",)):
        if steps:
            done(tool, *steps, enclosures=("oak box",))
        reply = tool.say("start", enclosures=("oak box",), bottles=("red bottle",), start_over=True)
        expected = Outcome.ANSWER if steps == ("dry",) else Outcome.REFUSE
        assert reply.outcome is expected, steps


def test_a_wipe_does_not_clear_an_acid_for_bleach(tool: Tool) -> None:
    started(tool, "white bottle")
    done(tool, "move out", "clear", "apply")
    done(tool, "wipe")
    done(tool, "dry")
    assert (
        tool.say("start", enclosures=("oak box",), bottles=("red bottle",), start_over=True).outcome is Outcome.REFUSE
    )


def test_a_start_with_what_must_not_meet_is_refused_before_anything_is_asked(tool: Tool) -> None:
    sprayed(tool)
    assert started(tool, "white bottle").outcome is Outcome.REFUSE


def test_a_wipe_is_no_rinse_after_bleach(tool: Tool) -> None:
    sprayed(tool)
    tool.after(minutes=10)
    reply = done(tool, "wipe")
    assert reply.values["recorded"] is False
    assert "rinse" in reply.say.lower()
    done(tool, "dry")
    tool.after(hours=20)
    assert not tool.say("return_check").values["ready"]
    assert blocked_by(tool)[0] == "rinse"


def test_a_wipe_stands_for_the_rinse_where_it_may(tool: Tool) -> None:
    sprayed(tool, "pink bottle")
    tool.after(minutes=5)
    assert done(tool, "wipe").values["recorded"] is True


def test_rinsed_and_wiped_is_rinsed(tool: Tool) -> None:
    sprayed(tool)
    tool.after(minutes=10)
    assert done(tool, "rinse", "wipe").values["recorded"] is True


@pytest.mark.parametrize("agent", ["acetic acid", "chlorhexidine"])
def test_a_bottle_meant_for_bleach_is_never_taken_for_another(agent: str, tool: Tool) -> None:
    reply = tool.say("start", enclosures=("oak box",), agents=(agent,), bottles=("red bottle",))
    assert reply.outcome is Outcome.REFUSE
    started(tool, "pink bottle")
    done(tool, *BEFORE_SPRAYING)
    reply = done(tool, "apply", agents=(agent,), bottles=("red bottle",))
    assert (reply.outcome, reply.values["recorded"]) == (Outcome.REFUSE, False)
    assert blocked_by(tool)[0] == "apply"


@pytest.mark.parametrize("talk_away", [("undo",), ("undo", "undo"), ("undo", "undo", "undo")])
def test_no_undo_and_no_restart_clears_what_touched_the_surface(tool: Tool, talk_away: tuple[str, ...]) -> None:
    started(tool, "white bottle")
    done(tool, "move out", "clear", "apply")
    for word in talk_away:
        tool.say(word)
    reply = tool.say("start", enclosures=("oak box",), bottles=("red bottle",), start_over=True)
    assert reply.outcome is Outcome.REFUSE


def test_sprayed_with_both_halves_of_a_gas_opens_with_getting_out(tool: Tool) -> None:
    started(tool, "white bottle")
    done(tool, "move out", "clear", "apply")
    reply = done(tool, "apply", bottles=("red bottle",))
    assert (reply.intent, reply.outcome, reply.values["recorded"]) == ("done", Outcome.REFUSE, False)
    assert "out" in reply.say.split(".")[0].lower() + reply.say.split(".")[1].lower()


def test_a_bottle_with_an_unknown_mix_is_refused_until_rinsed_out(tool: Tool) -> None:
    tool.say("together", agents=("acetic acid", "sodium hypochlorite"), bottles=("red bottle",), met=True)
    assert started(tool).outcome is Outcome.REFUSE
    tool.say("undo")
    assert started(tool).outcome is Outcome.REFUSE
    tool.say("rinsed_out", bottles=("red bottle",))
    assert started(tool).outcome is Outcome.ANSWER


def test_chlorhexidine_is_refused_near_water_animals(tool: Tool) -> None:
    assert started(tool, "pink bottle", "pool").outcome is Outcome.REFUSE


# ---------------------------------------------------------------- heard


def heard(*steps: str, doubts: tuple[Doubt, ...] = ()) -> Reading:
    return Reading("", "done", Slots(steps=steps), confidence=0.9, spoken=True, doubts=doubts)


def test_no_after_a_heard_step_takes_it_back(tool: Tool) -> None:
    started(tool)
    assert tool.hear(heard("move out")).values["recorded"] is True
    assert tool.say("no").intent == "no"
    assert blocked_by(tool)[0] == "move out"


def test_no_after_a_typed_step_takes_nothing_back(tool: Tool) -> None:
    started(tool)
    done(tool, "move out")
    assert tool.say("no").outcome is Outcome.UNSURE
    assert blocked_by(tool)[0] == "clear"


def test_a_doubtful_step_waits_for_yes(tool: Tool) -> None:
    started(tool)
    doubt = Doubt("polarity", "out", ("not out",))
    reply = tool.hear(heard("move out", doubts=(doubt,)))
    assert reply.outcome is Outcome.CONFIRM
    assert reply.values["recorded"] is False
    assert blocked_by(tool)[0] == "move out"


def test_yes_to_a_doubtful_step_records_it(tool: Tool) -> None:
    started(tool)
    tool.hear(heard("move out", doubts=(Doubt("polarity", "out", ("not out",)),)))
    assert tool.say("yes").values["recorded"] is True


def test_no_to_a_doubtful_step_records_nothing(tool: Tool) -> None:
    started(tool)
    tool.hear(heard("move out", doubts=(Doubt("polarity", "out", ("not out",)),)))
    assert "Nothing recorded" in tool.say("no").say
    assert blocked_by(tool)[0] == "move out"


# ---------------------------------------------------------------- every line spoken


def test_every_line_is_short_and_can_be_read_aloud(tool: Tool) -> None:
    """The longest of names, and every reply that the tests above provoke in one sitting."""
    said = []
    for bottle in ("red bottle", "white bottle", "clear bottle", "grey bottle", "pink bottle"):
        fresh = Tool(HOUSEHOLD)
        said += [started(fresh, bottle).say, fresh.say("next").say, fresh.say("hold_time").say]
        for step in ("move out", "wash", "clear", "wash", "apply", "hold", "rinse"):
            said += [done(fresh, step).say, fresh.say("yes").say, fresh.say("status").say, fresh.say("time_left").say]
        said += [fresh.after(minutes=10), done(fresh, "hold").say, fresh.say("yes").say, done(fresh, "rinse").say]
        said += [
            done(fresh, "dry").say,
            fresh.say("return_check").say,
            done(fresh, openings=2).say,
            fresh.say("undo").say,
        ]
        said += [done(fresh, "return").say, fresh.say("next").say, fresh.after(hours=20), fresh.say("return_check").say]
    for line in said:
        assert len(line.split()) <= 25 or "waited" in line, line
        assert not set("%/<>_[]{}°µ") & set(line), line
        assert "mL" not in line, line
