"""The eleven rules of a round that no path may break: one test a clause, through whole turns, by number."""

from __future__ import annotations

from datetime import timedelta
from fractions import Fraction

import pytest
from tool import FACTS, Tool

from assistant.contract import Doubt, Outcome, Reading, Reply, Slots
from assistant.core.household import Bottle, Enclosure, Household, Room, Stock
from assistant.core.quantities.amounts import Amount, Neat, SaidRatio

BLEACH, VINEGAR, PINK, SPIRIT = "sodium hypochlorite", "acetic acid", "chlorhexidine", "isopropyl alcohol"
OFFERED = tuple(
    agent.id for agent in FACTS.agents.values() if agent.id != "other" and agent.refused is None and not agent.vet_only
)
"""Agents with which a round can come to its end."""
NOT_BY_HAND = ("hold", "air", "return")


def household(label_minutes: int | None = 10) -> Household:
    """Two tubs in one room with a figure of its own, and a stock and a bottle of every agent offered."""
    agents = dict.fromkeys((*OFFERED, BLEACH, VINEGAR, PINK, SPIRIT))
    return Household(
        room=Room(airing=2.0),
        stocks=tuple(
            Stock(
                f"{agent} stock",
                agent,
                Amount(Fraction(6), "%"),
                label_minutes=label_minutes if "hold" in FACTS.agents[agent].steps else None,
            )
            for agent in agents
        ),
        bottles=tuple(
            Bottle(
                f"{agent} bottle",
                Amount(Fraction(500), "mL"),
                stock=f"{agent} stock",
                mix=SaidRatio(Fraction(1), Fraction(32), "in") if agent == BLEACH else Neat(),
            )
            for agent in agents
        ),
        enclosures=(
            Enclosure("oak box", animal="corn snake", material="glass"),
            Enclosure("fern tank", animal="gecko"),
        ),
    )


@pytest.fixture
def tool() -> Tool:
    return Tool(household())


def start(tool: Tool, agent: str = BLEACH, enclosure: str = "oak box", **slots: object) -> Reply:
    return tool.say("start", enclosures=(enclosure,), bottles=(f"{agent} bottle",), **slots)


def done(tool: Tool, *steps: str, **slots: object) -> Reply:
    return tool.say("done", steps=steps, **slots)


def gate(tool: Tool, enclosure: str = "oak box") -> Reply:
    return tool.say("return_check", enclosures=(enclosure,))


def sprayed(tool: Tool, agent: str = BLEACH, enclosure: str = "oak box") -> Tool:
    start(tool, agent, enclosure)
    before = [s for s in ("move out", "clear", "wash", "apply") if s in FACTS.agents[agent].steps]
    assert done(tool, *before, enclosures=(enclosure,), heat_cold=True).values["recorded"] is True
    return tool


def rinsed(tool: Tool, enclosure: str = "oak box") -> Tool:
    """Sprayed, kept wet for its time, and rinsed."""
    sprayed(tool, BLEACH, enclosure).after(minutes=10)
    done(tool, "hold", stayed_wet=True, enclosures=(enclosure,))
    assert done(tool, "rinse", enclosures=(enclosure,)).values["recorded"] is True
    return tool


def ready(tool: Tool, enclosure: str = "oak box") -> Tool:
    done(rinsed(tool, enclosure), "dry", enclosures=(enclosure,))
    tool.after(hours=5)
    assert gate(tool, enclosure).values["ready"] is True
    return tool


def gone_through(agent: str, without: str | None) -> Tool:
    """A whole clean, but for one step or one clock, each claim answered with nothing more."""
    tool = Tool(household())
    start(tool, agent)
    for step in FACTS.agents[agent].steps:
        if step == "hold" and without != "hold":
            tool.after(minutes=30)
            done(tool, "hold", stayed_wet=True)
        elif step == "air" and without != "air":
            tool.after(hours=5)
        elif step not in (without, *NOT_BY_HAND):
            done(tool, step, heat_cold=True)
    return tool


# ---------------------------------------------------------------- 1


@pytest.mark.parametrize("agent", OFFERED)
def test_1_ready_once_every_required_step_is_done_in_order_and_its_time_served(agent: str) -> None:
    reply = gate(gone_through(agent, None))
    assert (reply.values["ready"], reply.values["blocked_by"]) == (True, ())


@pytest.mark.parametrize(
    ("agent", "without"),
    [(agent, step) for agent in OFFERED for step in FACTS.agents[agent].steps if step != "return"],
)
def test_1_not_ready_with_any_one_of_them_left_out(agent: str, without: str) -> None:
    reply = gate(gone_through(agent, without))
    assert reply.values["ready"] is False
    assert without in reply.values["blocked_by"]
    assert "return" not in reply.values["blocked_by"]


def test_1_unknown_counts_as_not_done_for_a_wet_time_without_a_figure() -> None:
    tool = Tool(household(label_minutes=None))
    sprayed(tool, "accelerated hydrogen peroxide").after(days=2)
    done(tool, "hold", stayed_wet=True)
    done(tool, "rinse")
    done(tool, "dry")
    tool.after(days=2)
    assert gate(tool).values["ready"] is False


def test_1_with_no_clean_on_record_it_is_not_ready_and_nothing_blocks_it(tool: Tool) -> None:
    reply = gate(tool)
    assert (reply.values["ready"], reply.values["blocked_by"], reply.values["earliest"]) == (False, (), None)
    assert "nothing on record vouches for it" in reply.say


# ---------------------------------------------------------------- 2


def test_2_sprayed_again_after_the_wet_time_every_step_after_spraying_is_open_again(tool: Tool) -> None:
    done(ready(tool), "apply")
    assert gate(tool).values["blocked_by"] == ("hold", "rinse", "dry", "air")
    assert tool.say("time_left").values["seconds"] == 600


def test_2_sprayed_again_after_it_dried_the_wet_time_starts_in_full(tool: Tool) -> None:
    sprayed(tool).after(minutes=6)
    tool.say("dried_early", stayed_wet=False)
    assert gate(tool).values["blocked_by"][0] == "apply"
    done(tool, "apply")
    assert tool.say("time_left").values["seconds"] == 600


def test_2_another_agent_during_the_wet_time_starts_it_in_full(tool: Tool) -> None:
    sprayed(tool, PINK).after(minutes=6)
    done(tool, "apply", bottles=(f"{SPIRIT} bottle",), heat_cold=True)
    assert tool.say("time_left").values["seconds"] == 600
    assert gate(tool).values["ready"] is False


def test_2_kept_wet_from_the_same_bottle_during_the_wet_time_the_clock_runs_on(tool: Tool) -> None:
    sprayed(tool).after(minutes=6)
    tool.say("rewet", steps=("apply",))
    assert tool.say("time_left").values["seconds"] == 240


def test_2_kept_wet_only_after_a_report_of_dry_is_no_keeping_wet(tool: Tool) -> None:
    sprayed(tool).after(minutes=6)
    tool.say("dried_early", stayed_wet=False)
    tool.say("rewet", steps=("apply",))
    assert tool.say("time_left").values["seconds"] in (None, 600)


# ---------------------------------------------------------------- 3


def test_3_a_wet_time_served_dry_does_not_count(tool: Tool) -> None:
    sprayed(tool).after(minutes=10)
    reply = done(tool, "hold", stayed_wet=False)
    assert reply.values["recorded"] is False
    assert gate(tool).values["blocked_by"][0] == "apply"


def test_3_when_its_clock_ends_the_tool_asks_by_itself_whether_it_stayed_wet(tool: Tool) -> None:
    assert "Did it stay wet" in sprayed(tool).after(minutes=10)


def test_3_a_bare_done_holding_gets_that_question(tool: Tool) -> None:
    sprayed(tool)
    tool.now += timedelta(minutes=10)
    reply = done(tool, "hold")
    assert (reply.outcome, reply.values["recorded"]) == (Outcome.ASK, False)
    assert "stay wet" in reply.say
    assert gate(tool).values["ready"] is False


def test_3_a_gap_of_over_two_minutes_with_no_shell_running_gets_it_too(tool: Tool) -> None:
    sprayed(tool).after(minutes=5)
    since = tool.closed_for(minutes=5)
    reply = tool.say("done", away=since, steps=("rinse",))
    assert (reply.outcome, reply.values["recorded"]) == (Outcome.ASK, False)
    assert "stay wet" in reply.say


def test_3_a_gap_of_two_minutes_doubts_nothing(tool: Tool) -> None:
    sprayed(tool).after(minutes=8)
    tool.closed_for(minutes=2)
    assert done(tool, "rinse").values["recorded"] is True


# ---------------------------------------------------------------- 4


def test_4_a_start_stops_while_what_must_not_meet_is_on_the_surface(tool: Tool) -> None:
    sprayed(tool)
    reply = start(tool, VINEGAR, start_over=True)
    assert reply.outcome is Outcome.REFUSE
    assert "Rinse" in reply.say


def test_4_a_spraying_stops_and_is_not_recorded_as_a_step(tool: Tool) -> None:
    sprayed(tool, VINEGAR)
    reply = done(tool, "apply", bottles=(f"{BLEACH} bottle",))
    assert reply.outcome is Outcome.REFUSE
    assert reply.values["recorded"] is False


def test_4_a_fill_stops(tool: Tool) -> None:
    tool.say("mixed", bottles=(f"{BLEACH} bottle",), agents=(BLEACH,), rinsed_first=True)
    reply = tool.say("mixed", bottles=(f"{BLEACH} bottle",), agents=(VINEGAR,))
    assert reply.outcome is Outcome.REFUSE


def test_4_a_rinse_alone_does_not_lift_it_for_a_pair_that_makes_gas(tool: Tool) -> None:
    rinsed(tool)
    assert start(tool, VINEGAR, start_over=True).outcome is Outcome.REFUSE


def test_4_rinse_and_dry_lift_it_for_a_pair_that_makes_gas(tool: Tool) -> None:
    done(rinsed(tool), "dry")
    assert start(tool, VINEGAR, start_over=True).outcome is not Outcome.REFUSE


@pytest.mark.parametrize("second", [VINEGAR, SPIRIT, "hydrogen peroxide"])
def test_4_bleach_is_kept_from_acid_alcohol_and_peroxide_alike(tool: Tool, second: str) -> None:
    sprayed(tool)
    assert start(tool, second, start_over=True).outcome is Outcome.REFUSE


def test_4_a_touch_that_can_be_no_step_is_kept_for_it(tool: Tool) -> None:
    start(tool, VINEGAR)
    assert done(tool, "apply").values["recorded"] is False  # nothing before it is on record
    assert start(tool, BLEACH, start_over=True).outcome is Outcome.REFUSE


def test_4_starting_over_undoing_the_start_and_a_pause_clear_no_touch(tool: Tool) -> None:
    sprayed(tool)
    tool.say("leave_off")
    tool.say("yes")
    for _ in range(4):
        tool.say("undo")
    assert start(tool, VINEGAR, start_over=True).outcome is Outcome.REFUSE


# ---------------------------------------------------------------- 5


def test_5_told_that_a_gas_pair_has_met_the_reply_opens_with_getting_out_and_fresh_air(tool: Tool) -> None:
    reply = tool.say("together", agents=(BLEACH, VINEGAR), bottles=(f"{BLEACH} bottle",), met=True)
    assert (reply.intent, reply.outcome) == ("together", Outcome.REFUSE)
    assert "Get out" in reply.say
    assert "fresh air" in reply.say


def test_5_the_bottle_is_an_unknown_mix_until_rinsed_out(tool: Tool) -> None:
    bottle = f"{BLEACH} bottle"
    tool.say("together", agents=(BLEACH, VINEGAR), bottles=(bottle,), met=True)
    assert bottle in tool.state.unknown_mixes
    assert start(tool).outcome is Outcome.REFUSE
    tool.say("rinsed_out", bottles=(bottle,))
    tool.say("yes")
    assert bottle not in tool.state.unknown_mixes


def test_5_the_claim_that_one_was_sprayed_on_the_other_keeps_its_intent(tool: Tool) -> None:
    sprayed(tool)
    reply = done(tool, "apply", bottles=(f"{VINEGAR} bottle",))
    assert (reply.intent, reply.outcome, reply.values["recorded"]) == ("done", Outcome.REFUSE, False)
    assert "Get out" in reply.say


# ---------------------------------------------------------------- 6


def test_6_a_bottle_that_held_another_agent_must_be_told_rinsed_out_before_a_fill_is_recorded(tool: Tool) -> None:
    bottle = f"{PINK} bottle"
    tool.say("mixed", bottles=(bottle,), agents=(PINK,), rinsed_first=True)
    reply = tool.say("mixed", bottles=(bottle,), agents=("quaternary ammonium",))
    assert reply.values["recorded"] is False
    assert reply.outcome in (Outcome.ASK, Outcome.REFUSE)


def test_6_a_bottle_that_held_one_half_of_a_gas_pair_is_never_taken_for_the_other(tool: Tool) -> None:
    bottle = f"{VINEGAR} bottle"
    tool.say("mixed", bottles=(bottle,), agents=(VINEGAR,), rinsed_first=True)
    reply = tool.say("start", enclosures=("oak box",), bottles=(bottle,), agents=(BLEACH,))
    assert reply.outcome in (Outcome.ASK, Outcome.REFUSE)
    assert not tool.state.rounds


def test_6_keeping_toml_alone_says_what_it_is_for_and_the_reply_says_so(tool: Tool) -> None:
    start(tool)
    assert tool.say("in_bottle", bottles=(f"{BLEACH} bottle",)).values["agent"] is None
    assert "no fill" in start(tool, enclosure="fern tank").show.casefold()


# ---------------------------------------------------------------- 7


def test_7_a_clean_of_one_enclosure_never_clears_another(tool: Tool) -> None:
    start(tool, enclosure="fern tank")
    ready(tool)
    assert gate(tool, "fern tank").values["ready"] is False


def test_7_with_two_open_and_none_named_a_step_that_fits_one_goes_there_and_its_name_is_said(tool: Tool) -> None:
    sprayed(tool)
    start(tool, enclosure="fern tank")
    reply = done(tool, "move out")
    assert (reply.values["recorded"], reply.values["enclosure"]) == (True, "fern tank")
    assert "Fern tank" in reply.say


def test_7_a_step_that_fits_both_is_asked_and_nothing_recorded(tool: Tool) -> None:
    start(tool)
    start(tool, enclosure="fern tank")
    reply = done(tool, "move out")
    assert (reply.outcome, reply.values["recorded"]) == (Outcome.ASK, False)


def test_7_the_gate_likewise_asks_which(tool: Tool) -> None:
    start(tool)
    start(tool, enclosure="fern tank")
    assert tool.say("return_check").outcome is Outcome.ASK


# ---------------------------------------------------------------- 8


def heard(step: str, doubt: str | None = None) -> Reading:
    doubts = (Doubt("polarity", "out", (doubt,)),) if doubt is not None else ()
    return Reading("", "done", Slots(steps=(step,)), confidence=0.9, spoken=True, doubts=doubts)


def test_8_every_heard_step_says_back_step_and_enclosure_and_no_takes_it_back(tool: Tool) -> None:
    start(tool)
    reply = tool.hear(heard("move out"))
    assert "Oak box" in reply.say
    assert "out" in reply.say
    tool.say("no")
    assert "move out" not in tool.state.rounds["oak box"].done


def test_8_where_an_alternative_holds_a_not_it_is_confirmed_and_nothing_recorded(tool: Tool) -> None:
    start(tool)
    reply = tool.hear(heard("move out", "he is not out"))
    assert reply.outcome is Outcome.CONFIRM
    assert "move out" not in tool.state.rounds["oak box"].done


# ---------------------------------------------------------------- 9


def test_9_a_wet_time_claimed_five_seconds_short_is_not_recorded_and_says_what_is_left(tool: Tool) -> None:
    sprayed(tool).after(minutes=9, seconds=55)
    reply = done(tool, "hold")
    assert (reply.outcome, reply.values["recorded"], reply.values["seconds"]) == (Outcome.ANSWER, False, 5)
    assert "5 seconds" in reply.say


def test_9_aired_before_its_time_is_not_recorded(tool: Tool) -> None:
    done(rinsed(tool), "dry")
    reply = done(tool, "air")
    assert (reply.outcome, reply.values["recorded"]) == (Outcome.ANSWER, False)


def test_9_a_step_out_of_order_is_not_recorded_and_the_one_before_it_is_asked_about(tool: Tool) -> None:
    start(tool)
    done(tool, "move out")
    reply = done(tool, "wash")
    assert (reply.outcome, reply.values["recorded"]) == (Outcome.ASK, False)
    assert "clearing" in reply.say


def test_9_of_several_steps_in_one_sentence_those_up_to_the_gap_are_recorded(tool: Tool) -> None:
    start(tool)
    done(tool, "move out", "clear", "apply")
    assert set(tool.state.rounds["oak box"].done) == {"move out", "clear"}


def test_9_a_step_that_this_agent_does_not_take_is_noted_and_does_no_harm(tool: Tool) -> None:
    sprayed(tool, SPIRIT)
    tool.after(minutes=10)
    done(tool, "hold", stayed_wet=True)
    assert done(tool, "rinse").values["recorded"] is True
    assert gate(tool).values["blocked_by"] == ("dry", "air")


# ---------------------------------------------------------------- 10


@pytest.mark.parametrize(("slots", "step"), [({"smell": True}, "air"), ({"wet": True}, "dry")])
def test_10_smell_or_wet_reported_opens_airing_or_drying_again_whatever_the_clock_says(
    tool: Tool, slots: dict[str, bool], step: str
) -> None:
    tool_ = ready(tool)
    tool_.say("still_smells", **slots)
    assert step in gate(tool_).values["blocked_by"]
    tool_.after(days=1)
    assert gate(tool_).values["ready"] is False


def test_10_only_the_keeper_clears_a_smell_and_the_airings_clock_ran_on(tool: Tool) -> None:
    ready(tool).say("still_smells", smell=True)
    tool.say("still_smells", smell=False)
    assert gate(tool).values["ready"] is True


def test_10_an_animal_put_back_too_soon_is_recorded_as_that_and_is_to_come_out_again(tool: Tool) -> None:
    reply = done(rinsed(tool), "return")
    assert reply.values["recorded"] is False
    assert reply.say.startswith("Take")
    assert gate(tool).values["blocked_by"][0] == "move out"


def test_10_out_again_counts_once_it_is_said_to_be_shut_in(tool: Tool) -> None:
    done(rinsed(tool), "return")
    reply = done(tool, "move out")
    assert (reply.outcome, reply.values["recorded"]) == (Outcome.ASK, False)
    assert gate(tool).values["blocked_by"][0] == "move out"
    done(tool, "move out")
    assert tool.say("yes").values["recorded"] is True
    assert gate(tool).values["blocked_by"] == ("dry", "air")


def test_10_out_and_shut_in_said_at_once_is_recorded_at_once(tool: Tool) -> None:
    done(rinsed(tool), "return")
    assert done(tool, "move out", shut_in=True).values["recorded"] is True


def test_4_asked_of_what_must_not_meet_what_is_on_the_surface_the_answer_is_no(tool: Tool) -> None:
    sprayed(tool)
    reply = tool.say("together", agents=(VINEGAR,))
    assert (reply.outcome, reply.values["verdict"]) == (Outcome.REFUSE, "never")
    assert reply.say == "No. Bleach is still on it: that makes chlorine gas. Rinse and dry first."


def test_4_asked_of_the_material_of_such_a_surface_it_is_no_as_well_until_rinsed_and_dry(tool: Tool) -> None:
    rinsed(tool)
    asked = {"agents": (VINEGAR,), "materials": ("glass",)}
    reply = tool.say("surface", **asked)
    assert (reply.outcome, reply.values["material"], reply.values["earlier"]) == (Outcome.REFUSE, "glass", BLEACH)
    done(tool, "dry")
    assert tool.say("surface", **asked).outcome is Outcome.ANSWER


def test_10_spraying_is_refused_while_it_is_inside(tool: Tool) -> None:
    done(rinsed(tool), "return")
    assert done(tool, "apply").outcome is Outcome.REFUSE


# ---------------------------------------------------------------- 11


def test_11_ready_is_said_as_nothing_left_on_record_and_never_as_safe(tool: Tool) -> None:
    reply = gate(ready(tool))
    assert "Nothing on my record is left to do" in reply.say
    assert "safe" not in f"{reply.say} {reply.show}".casefold()


@pytest.mark.parametrize(("agent", "claim"), [(BLEACH, "disinfected_by_label"), (VINEGAR, "cleaned_only")])
def test_11_it_says_when_it_was_a_clean_and_not_a_disinfection(agent: str, claim: str) -> None:
    reply = gate(gone_through(agent, None))
    assert reply.values["claim"] == claim
    assert ("a clean, not a disinfection" in reply.say) == (claim == "cleaned_only")
