"""It dried, it was kept wet; smell and wet; paused and finished as a clean: through whole turns."""

from __future__ import annotations

import pytest
from tool import Tool
from unit.answer.test_done import BEFORE_SPRAYING, HOUSEHOLD, blocked_by, done, sprayed, started

from assistant.contract import Outcome, Reply

AFTER_SPRAYING = ("hold", "rinse", "dry", "air")
BLEACH = "sodium hypochlorite"


@pytest.fixture
def tool() -> Tool:
    return Tool(HOUSEHOLD)


def airing(tool: Tool) -> None:
    """Bleached, held, rinsed and dry; the airing has begun."""
    sprayed(tool)
    tool.after(minutes=10)
    done(tool, "hold", stayed_wet=True)
    done(tool, "rinse", "dry", openings=2)


def ready(tool: Tool) -> bool:
    return bool(tool.say("return_check", enclosures=("oak box",)).values["ready"])


def events(tool: Tool) -> list[str]:
    return [type(entry.event).__name__ for entry in tool.record]


# ---------------------------------------------------------------- it dried


def test_it_dried_while_the_wet_time_runs_opens_spraying_again(tool: Tool) -> None:
    sprayed(tool)
    tool.after(minutes=3)
    reply = tool.say("dried_early")
    assert (reply.outcome, reply.values["recorded"], reply.values["next"]) == (Outcome.ANSWER, True, "apply")
    assert reply.say == "Oak box: then the wet time starts over. Spray again, say sprayed, 10 minutes from there."
    assert blocked_by(tool) == ("apply", *AFTER_SPRAYING)


def test_a_part_that_dried_is_as_good_as_all_of_it(tool: Tool) -> None:
    sprayed(tool)
    reply = tool.say("dried_early", part="lid")
    assert "Spray the lid" in reply.say
    assert blocked_by(tool)[0] == "apply"


def test_after_it_dried_the_wet_time_starts_in_full(tool: Tool) -> None:
    sprayed(tool)
    tool.after(minutes=9)
    tool.say("dried_early")
    done(tool, "apply")
    assert tool.say("time_left").values["seconds"] == 600


def test_it_dried_when_the_time_is_up_is_asked_about(tool: Tool) -> None:
    sprayed(tool)
    tool.after(minutes=11)
    reply = tool.say("dried_early")
    assert reply.outcome is Outcome.ASK
    assert reply.values["recorded"] is False
    assert "stay wet the whole time" in reply.say
    assert blocked_by(tool)[0] == "hold"


@pytest.mark.parametrize(("answer", "first"), [("yes", "rinse"), ("no", "apply")])
def test_and_the_answer_settles_it(answer: str, first: str, tool: Tool) -> None:
    sprayed(tool)
    tool.after(minutes=11)
    tool.say("dried_early")
    tool.say(answer)
    assert blocked_by(tool)[0] == first


def test_it_dried_before_its_time_counts_however_late_it_comes_out(tool: Tool) -> None:
    airing(tool)
    tool.say("dried_early", too_early=True)
    assert blocked_by(tool) == ("apply", *AFTER_SPRAYING)


def test_it_dried_after_the_rinse_is_the_step_of_drying(tool: Tool) -> None:
    sprayed(tool)
    tool.after(minutes=10)
    done(tool, "hold", "rinse", stayed_wet=True)
    reply = tool.say("dried_early")
    assert (reply.intent, reply.values["recorded"]) == ("done", True)
    assert blocked_by(tool) == ("air",)


def test_a_part_that_dried_after_the_rinse_is_not_all_of_it(tool: Tool) -> None:
    sprayed(tool)
    tool.after(minutes=10)
    done(tool, "hold", "rinse", stayed_wet=True)
    reply = tool.say("dried_early", part="lid")
    assert (reply.outcome, reply.values["recorded"]) == (Outcome.ASK, False)
    assert "all of it dry" in reply.say
    assert "dry" in blocked_by(tool)
    tool.say("dried_early", part="lid")
    tool.say("yes")
    assert blocked_by(tool) == ("air",)


def test_with_two_wet_it_is_asked_which_dried_and_neither_counts_unvouched(tool: Tool) -> None:
    sprayed(tool)
    sprayed(tool, enclosure="fern tank")
    reply = tool.say("dried_early")
    assert (reply.outcome, reply.missing) == (Outcome.ASK, ("enclosure",))
    tool.after(minutes=10)
    assert [blocked_by(tool, name)[0] for name in ("oak box", "fern tank")] == ["hold", "hold"]


def test_with_one_of_two_wet_it_is_that_one(tool: Tool) -> None:
    sprayed(tool)
    started(tool, enclosure="fern tank")
    assert tool.say("dried_early").values["enclosure"] == "oak box"


def test_it_dried_with_nothing_open_records_nothing(tool: Tool) -> None:
    reply = tool.say("dried_early")
    assert reply.values["recorded"] is False
    assert tool.record == []


# ---------------------------------------------------------------- kept wet


def test_sprayed_again_while_it_is_wet_the_clock_runs_on(tool: Tool) -> None:
    sprayed(tool)
    tool.after(minutes=4)
    reply = tool.say("rewet", steps=("apply",))
    assert (reply.values["recorded"], reply.values["seconds"]) == (True, 360)
    assert "6 minutes left" in reply.say
    tool.after(minutes=6)
    assert blocked_by(tool)[0] == "rinse"


def test_seen_still_wet_the_clock_runs_on(tool: Tool) -> None:
    sprayed(tool)
    tool.after(minutes=4)
    assert tool.say("rewet").values["seconds"] == 360


def test_sprayed_again_after_it_dried_is_a_new_wet_time(tool: Tool) -> None:
    sprayed(tool)
    tool.after(minutes=4)
    tool.say("dried_early")
    tool.say("rewet", steps=("apply",))
    assert tool.say("time_left").values["seconds"] == 600


def test_sprayed_again_after_the_wet_time_opens_everything_after_it(tool: Tool) -> None:
    airing(tool)
    tool.after(minutes=20)
    tool.say("rewet", steps=("apply",))
    assert blocked_by(tool) == AFTER_SPRAYING
    assert tool.say("time_left").values["seconds"] == 600


def test_sprayed_again_with_something_else_is_no_keeping_wet(tool: Tool) -> None:
    sprayed(tool, "pink bottle")
    tool.after(minutes=4)
    reply = tool.say("rewet", steps=("apply",), bottles=("grey bottle",))
    assert reply.outcome is Outcome.REFUSE
    assert blocked_by(tool)[0] == "apply"


def test_still_wet_when_the_time_is_up_still_asks_about_the_whole_of_it(tool: Tool) -> None:
    sprayed(tool)
    tool.after(minutes=12)
    reply = tool.say("rewet")
    assert (reply.outcome, reply.values["recorded"]) == (Outcome.ASK, False)
    tool.say("yes")
    assert blocked_by(tool)[0] == "rinse"


def test_still_wet_after_the_rinse_is_not_dry(tool: Tool) -> None:
    airing(tool)
    reply = tool.say("rewet")
    assert (reply.intent, reply.values["wet"]) == ("still_smells", True)
    assert "dry" in blocked_by(tool)


def test_keeping_it_wet_does_not_lift_a_doubt(tool: Tool) -> None:
    sprayed(tool)
    tool.after(minutes=3)
    done(tool, "rinse")  # asked back, so the wet time is in doubt
    tool.say("rewet", steps=("apply",))
    tool.after(minutes=7)
    assert blocked_by(tool)[0] == "hold"


# ---------------------------------------------------------------- smell and wet


def test_a_smell_opens_the_airing_whatever_the_clock_says(tool: Tool) -> None:
    airing(tool)
    tool.after(hours=5)
    assert ready(tool)
    reply = tool.say("still_smells", smell=True)
    assert (reply.values["smell"], reply.values["wet"], reply.values["blocked_by"]) == (True, None, ("air",))
    tool.after(hours=50)
    assert blocked_by(tool) == ("air",)
    assert done(tool, "air").values["recorded"] is False


def test_only_the_keeper_clears_a_smell_and_the_clock_ran_on(tool: Tool) -> None:
    airing(tool)
    tool.say("still_smells", smell=True)
    tool.after(hours=5)
    reply = tool.say("still_smells", smell=False)
    assert (reply.values["smell"], reply.values["ready"]) == (False, True)
    assert "Nothing" in reply.say or "nothing" in reply.say


def test_no_smell_does_not_shorten_the_airing(tool: Tool) -> None:
    airing(tool)
    reply = tool.say("still_smells", smell=False)
    assert (reply.values["ready"], reply.values["blocked_by"]) == (False, ("air",))


def test_a_smell_asks_for_airing_where_the_agent_takes_none(tool: Tool) -> None:
    sprayed(tool, "pink bottle")
    tool.after(minutes=30)
    done(tool, "hold", "rinse", "dry", stayed_wet=True)
    assert ready(tool)
    tool.say("still_smells", smell=True)
    assert blocked_by(tool) == ("air",)
    tool.say("still_smells", smell=False)
    assert ready(tool)


def test_a_wet_patch_opens_drying_and_the_airing_runs_on(tool: Tool) -> None:
    sprayed(tool)
    tool.after(minutes=10)
    done(tool, "hold", "rinse", "dry", stayed_wet=True)  # no opening said: the airing counts from dry
    before = tool.say("time_left").values["seconds"]
    tool.after(minutes=30)
    reply = tool.say("still_smells", wet=True)
    assert (reply.values["wet"], reply.values["blocked_by"]) == (True, ("dry", "air"))
    assert tool.say("time_left").values["seconds"] == before - 1800
    done(tool, "dry")
    assert tool.say("time_left").values["seconds"] == before - 1800


def test_dry_but_it_smells(tool: Tool) -> None:
    sprayed(tool)
    tool.after(minutes=10)
    done(tool, "hold", "rinse", stayed_wet=True, openings=2)
    tool.after(hours=5)
    reply = tool.say("still_smells", smell=True, wet=False)
    assert (reply.values["smell"], reply.values["wet"], reply.values["blocked_by"]) == (True, False, ("air",))


def test_dry_before_the_rinse_is_not_taken_with_the_smell_but_the_smell_is(tool: Tool) -> None:
    sprayed(tool)
    tool.after(minutes=10)
    done(tool, "hold", stayed_wet=True)
    reply = tool.say("still_smells", smell=True, wet=False)
    assert (reply.outcome, reply.values["recorded"], reply.values["smell"]) == (Outcome.ASK, False, True)
    tool.say("no")
    assert blocked_by(tool) == ("rinse", "dry", "air")
    assert "Sensed" in events(tool)


def test_no_smell_said_with_the_question_is_noted_and_answered_at_once(tool: Tool) -> None:
    airing(tool)
    tool.say("still_smells", smell=True)
    tool.after(hours=5)
    reply = tool.say("return_check", smell=False)
    assert reply.values["ready"] is True
    assert "Sensed" in [type(entry.event).__name__ for entry in tool.record[-1:]]


def test_a_smell_right_after_it_went_back_takes_the_animal_out_again(tool: Tool) -> None:
    airing(tool)
    tool.after(hours=5)
    done(tool, "return")
    reply = tool.say("still_smells", smell=True)
    assert "out again" in reply.say
    assert blocked_by(tool) == ("move out", "air")


def test_a_smell_days_later_is_not_that_cleans(tool: Tool) -> None:
    airing(tool)
    tool.after(hours=5)
    done(tool, "return")
    tool.after(days=3)
    assert tool.say("still_smells", smell=True, enclosures=("oak box",)).values["recorded"] is False


def test_with_two_open_and_rinsed_a_smell_is_asked_about(tool: Tool) -> None:
    airing(tool)
    sprayed(tool, enclosure="fern tank")
    assert tool.say("still_smells", smell=True).values["enclosure"] == "oak box"  # the other one isn't rinsed yet
    tool.after(minutes=10)
    done(tool, "hold", "rinse", stayed_wet=True, enclosures=("fern tank",))
    assert tool.say("still_smells", smell=True).outcome is Outcome.ASK


def test_the_smell_that_is_gone_is_the_one_that_was_there(tool: Tool) -> None:
    airing(tool)
    sprayed(tool, enclosure="fern tank")
    tool.say("still_smells", smell=True, enclosures=("oak box",))
    assert tool.say("still_smells", smell=False).values["enclosure"] == "oak box"


# ---------------------------------------------------------------- paused


def test_a_pause_is_confirmed_first_and_goes_on_blocking(tool: Tool) -> None:
    sprayed(tool)
    reply = tool.say("leave_off")
    assert (reply.outcome, reply.values["recorded"]) == (Outcome.CONFIRM, False)
    assert "Paused" not in events(tool)
    reply = tool.say("yes")
    assert (reply.intent, reply.values["recorded"]) == ("leave_off", True)
    assert blocked_by(tool) == AFTER_SPRAYING


def test_no_to_a_pause_changes_nothing(tool: Tool) -> None:
    sprayed(tool)
    tool.say("leave_off")
    tool.say("no")
    assert "Paused" not in events(tool)


def test_a_wet_time_left_alone_counts_only_if_vouched_for(tool: Tool) -> None:
    sprayed(tool)
    tool.say("leave_off")
    tool.say("yes")
    tool.after(hours=2)
    assert blocked_by(tool)[0] == "hold"


def test_a_pause_clears_no_agent_from_the_surface(tool: Tool) -> None:
    sprayed(tool)
    tool.say("leave_off")
    tool.say("yes")
    reply = tool.say("start", enclosures=("oak box",), bottles=("white bottle",), start_over=True)
    assert reply.outcome is Outcome.REFUSE


def test_starting_on_a_paused_clean_asks_and_going_on_goes_on(tool: Tool) -> None:
    started(tool)
    done(tool, *BEFORE_SPRAYING)
    tool.say("leave_off")
    tool.say("yes")
    assert started(tool).missing == ("start_over",)
    reply = tool.say("start", enclosures=("oak box",), start_over=False)
    assert reply.values["step"] == "apply"
    assert tool.state.rounds["oak box"].paused_at is None


def test_what_is_next_is_not_what_is_paused(tool: Tool) -> None:
    started(tool)
    started(tool, enclosure="fern tank")
    tool.say("leave_off", enclosures=("oak box",))
    tool.say("yes")
    assert tool.say("next").values["enclosure"] == "fern tank"


def test_a_step_done_takes_the_pause_off(tool: Tool) -> None:
    started(tool)
    tool.say("leave_off")
    tool.say("yes")
    done(tool, "move out")
    assert tool.state.rounds["oak box"].paused_at is None


# ---------------------------------------------------------------- clean only


def clean_only(tool: Tool, **slots: object) -> Reply:
    asked = tool.say("clean_only", **slots)
    assert (asked.outcome, asked.values["recorded"]) == (Outcome.ASK, False)
    return tool.say("yes")


def test_finishing_as_a_clean_asks_first_and_drops_spraying_and_wet_time(tool: Tool) -> None:
    sprayed(tool)
    tool.say("dried_early")
    reply = clean_only(tool)
    assert (reply.intent, reply.values["recorded"]) == ("clean_only", True)
    assert blocked_by(tool) == ("rinse", "dry", "air")


def test_it_then_claims_a_clean_and_says_so(tool: Tool) -> None:
    sprayed(tool)
    clean_only(tool)
    done(tool, "rinse", "dry", openings=3)
    tool.after(hours=5)
    reply = tool.say("return_check")
    assert (reply.values["ready"], reply.values["claim"]) == (True, "cleaned_only")
    assert "not a disinfection" in reply.say


@pytest.mark.parametrize("missing", ["rinse", "dry", "air"])
def test_its_twin_with_one_step_missing_is_not_ready(missing: str, tool: Tool) -> None:
    sprayed(tool)
    clean_only(tool)
    for step in ("rinse", "dry"):
        if step != missing:
            done(tool, step)
            tool.say("no")
    tool.after(hours=0 if missing == "air" else 50)
    assert not ready(tool)


def test_where_nothing_was_sprayed_there_is_nothing_to_rinse_off(tool: Tool) -> None:
    started(tool)
    done(tool, "move out", "clear")
    clean_only(tool)
    assert blocked_by(tool) == ("wash", "dry")


def test_it_dried_and_no_time_counts_as_dried_whatever_is_answered(tool: Tool) -> None:
    sprayed(tool)
    tool.after(minutes=4)
    tool.say("clean_only", stayed_wet=False)
    tool.say("no")
    assert blocked_by(tool) == ("apply", *AFTER_SPRAYING)


def test_no_to_a_clean_only_changes_nothing(tool: Tool) -> None:
    sprayed(tool)
    tool.say("clean_only")
    tool.say("no")
    assert blocked_by(tool) == AFTER_SPRAYING


def test_a_served_wet_time_is_not_given_up(tool: Tool) -> None:
    airing(tool)
    reply = tool.say("clean_only")
    assert (reply.outcome, reply.values["recorded"]) == (Outcome.ANSWER, False)
    tool.after(hours=5)
    assert tool.say("return_check").values["claim"] == "disinfected_by_label"


def test_sprayed_after_all_it_takes_the_wet_time_again(tool: Tool) -> None:
    started(tool)
    done(tool, *BEFORE_SPRAYING)
    clean_only(tool)
    done(tool, "apply")
    assert blocked_by(tool) == AFTER_SPRAYING


# ---------------------------------------------------------------- what touched a surface must come off


@pytest.mark.parametrize("said", ["gap", "met"])
def test_a_clean_with_soap_that_bleach_touched_is_rinsed_and_aired(said: str, tool: Tool) -> None:
    tool.say("start", enclosures=("oak box",), agents=("detergent",))
    if said == "gap":
        done(tool, "apply", bottles=("red bottle",))
        tool.say("no")
    else:
        tool.say("together", enclosures=("oak box",), agents=(BLEACH, "chlorhexidine"), met=True)
    done(tool, "move out", "clear", "wash")
    left = blocked_by(tool)
    assert {"rinse", "dry", "air"} <= set(left)


def test_starting_over_with_soap_does_not_forget_the_bleach(tool: Tool) -> None:
    sprayed(tool)
    tool.say("start", enclosures=("oak box",), agents=("detergent",), start_over=True)
    done(tool, "move out", "clear", "wash")
    assert {"rinse", "dry", "air"} <= set(blocked_by(tool))


def test_undoing_the_spraying_does_not_forget_the_bleach(tool: Tool) -> None:
    tool.say("start", enclosures=("oak box",), agents=("detergent",))
    done(tool, *BEFORE_SPRAYING)
    done(tool, "apply", bottles=("red bottle",))
    tool.say("undo")
    done(tool, "dry")
    assert not ready(tool)
    assert "rinse" in blocked_by(tool)


@pytest.mark.parametrize("intent", ["hold_time", "together", "status"])
def test_a_touch_said_in_a_sentence_that_asks_something_is_kept(intent: str, tool: Tool) -> None:
    started(tool)
    tool.say(intent, agents=("acetic acid",), touched=("acetic acid",))
    assert [touch.agent for touch in tool.state.surfaces["oak box"]] == ["acetic acid"]
    assert done(tool, *BEFORE_SPRAYING, "apply").outcome is Outcome.REFUSE


def test_a_touch_that_is_on_record_already_opens_nothing(tool: Tool) -> None:
    sprayed(tool)
    tool.say("hold_time", touched=(BLEACH,))
    assert blocked_by(tool) == AFTER_SPRAYING


def test_with_two_open_and_none_named_a_touch_is_nobodys(tool: Tool) -> None:
    started(tool)
    started(tool, enclosure="fern tank")
    tool.say("hold_time", touched=(BLEACH,))
    assert tool.state.surfaces == {}


def test_wiped_dry_and_then_rinsed_it_is_wet_again_for_what_must_not_meet(tool: Tool) -> None:
    sprayed(tool)
    tool.say("dried_early")
    done(tool, "wipe")
    tool.say("no")
    done(tool, "dry")
    done(tool, "rinse")
    reply = tool.say("start", enclosures=("oak box",), bottles=("white bottle",), start_over=True)
    assert reply.outcome is Outcome.REFUSE


def test_starting_over_does_not_forget_a_smell_or_the_airing(tool: Tool) -> None:
    airing(tool)
    tool.say("still_smells", smell=True)
    tool.say("start", enclosures=("oak box",), agents=("detergent",), start_over=True)
    done(tool, "move out", "clear", "wash", "rinse", "dry", openings=3)
    tool.after(hours=5)
    assert blocked_by(tool) == ("air",)
    tool.say("still_smells", smell=False)
    assert ready(tool)


def test_washed_again_after_it_was_dry_it_is_wet_again(tool: Tool) -> None:
    tool.say("start", enclosures=("oak box",), agents=("detergent",))
    done(tool, "move out", "clear", "wash", "dry")
    assert ready(tool)
    done(tool, "wash")
    assert blocked_by(tool) == ("dry",)


def test_every_line_is_short(tool: Tool) -> None:
    sprayed(tool)
    for reply in (
        tool.say("rewet"),
        tool.say("dried_early", part="back wall"),
        tool.say("clean_only"),
        tool.say("leave_off"),
        tool.say("yes"),
        tool.say("still_smells", smell=True),
        tool.say("still_smells", wet=True),
        tool.say("still_smells", smell=False),
    ):
        assert len(reply.say.split()) <= 25, reply.say
        assert not set(reply.say) & set("%/°{}"), reply.say
