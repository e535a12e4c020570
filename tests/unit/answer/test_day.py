"""The end of the day: what is open, who waits, what was only a clean, what ends. It closes and readies nothing."""

from __future__ import annotations

from datetime import timedelta

import pytest
from tool import Tool

from assistant.contract import Outcome, Reading, Reply, Slots
from assistant.core.household import Household


@pytest.fixture
def tool(household: Household) -> Tool:
    return Tool(household)


def words(reply: Reply) -> str:
    assert len(reply.say.split()) <= 25, reply.say
    return reply.say.casefold()


def cleaned_with_vinegar(tool: Tool) -> None:
    tool.say("start", enclosures=("east tank",), bottles=("white bottle",))
    tool.say("done", enclosures=("east tank",), steps=("move out",), tubs=("blue tub",))
    for step in ("clear", "apply", "rinse", "dry"):
        tool.say("done", steps=(step,))
    tool.now += timedelta(hours=5)
    tool.say("still_smells", smell=False)
    tool.say("done", steps=("return",))


def test_an_empty_day_still_sends_to_the_tap(tool: Tool) -> None:
    reply = tool.say("day_end")
    assert reply.values["closed"] is True
    assert "nothing open" in words(reply)
    assert "hands" in words(reply)


def test_an_open_clean_and_its_animal_are_named(tool: Tool) -> None:
    tool.say("start", enclosures=("east tank",), bottles=("orange bottle",))
    tool.say("done", steps=("move out",), tubs=("blue tub",))
    reply = tool.say("day_end")
    assert (reply.values["open"], reply.values["waiting"], reply.values["closed"]) == (
        ("east tank",),
        ("east tank",),
        False,
    )
    assert "east tank" in words(reply)
    assert "corn snake" in words(reply)
    assert "Next: clear out" in reply.show


def test_what_vinegar_cleaned_is_told_as_not_disinfected_and_its_tub_as_to_wash(tool: Tool) -> None:
    cleaned_with_vinegar(tool)
    reply = tool.say("day_end")
    assert reply.values["open"] == ()
    assert reply.values["cleaned_only"] == ("east tank",)
    assert "not disinfected" in words(reply)
    assert reply.values["tubs"] == ("blue tub",)
    tool.say("tub", tubs=("blue tub",), cleaned="disinfected")
    assert tool.say("day_end").values["tubs"] == ()


def test_yesterdays_clean_is_no_news_today(tool: Tool) -> None:
    cleaned_with_vinegar(tool)
    tool.now += timedelta(days=1)
    assert tool.say("day_end").values["cleaned_only"] == ()


def test_a_mix_that_ends_by_tomorrow_and_a_loose_animal_are_told(tool: Tool) -> None:
    tool.say("mixed", bottles=("orange bottle",))
    tool.say("escape", enclosures=("east tank",))
    reply = tool.say("day_end")
    assert [one["bottle"] for one in reply.values["ending"]] == ["orange bottle"]
    assert reply.values["loose"] == ("east tank",)
    assert "loose" in words(reply)
    assert reply.values["closed"] is False


def test_a_bowl_still_soaking_keeps_the_day_open(tool: Tool) -> None:
    tool.say("treat_item", items=("bowl",), ways=("soak",), agents=("sodium hypochlorite",), begun=True)
    reply = tool.say("day_end")
    assert (reply.values["items"][0]["item"], reply.values["closed"]) == ("bowl", False)
    tool.now += timedelta(hours=1)
    reply = tool.say("day_end")
    assert reply.values["closed"] is True
    assert "Out, rinsed and dry?" in reply.show  # whether it was taken out is on no record


def test_asking_records_nothing_and_readies_nothing(tool: Tool) -> None:
    tool.say("start", enclosures=("east tank",), bottles=("orange bottle",))
    before = list(tool.record)
    tool.say("day_end")
    assert tool.record == before
    assert tool.say("return_check").values["ready"] is False


# ---------------------------------------------------------------- what is due, and quarantine


def test_due_knows_the_tubs_to_wash_and_what_soaks(tool: Tool) -> None:
    cleaned_with_vinegar(tool)
    tool.say("treat_item", items=("bowl",), ways=("soak",), agents=("sodium hypochlorite",), begun=True)
    reply = tool.say("due")
    assert (reply.values["tubs"], reply.values["items"]) == (("blue tub",), ("bowl",))
    assert "blue tub" in words(reply)


def test_a_tub_in_use_is_not_due_for_a_wash_yet(tool: Tool) -> None:
    tool.say("start", enclosures=("east tank",), bottles=("orange bottle",))
    tool.say("done", steps=("move out",), tubs=("blue tub",))
    assert tool.say("due").values["tubs"] == ()


def test_a_newcomer_starts_the_count_again_once_yes_is_said(tool: Tool) -> None:
    # Day of arrival in the household file: 28 December 2025. The rule: facts/outbreaks.toml, outbreak-restart.
    before = tool.say("quarantine").values
    assert before["day"] > 90
    asked = tool.say("quarantine", restart="newcomer")
    assert asked.outcome is Outcome.CONFIRM
    assert tool.say("quarantine").values["day"] == before["day"]
    tool.say("quarantine", restart="newcomer")
    tool.say("yes")
    after = tool.say("quarantine").values
    assert (after["day"], after["days_left"]) == (0, 90)
    assert "began again" in tool.say("quarantine").show
    tool.say("undo")
    assert tool.say("quarantine").values["day"] == before["day"]


def test_a_positive_test_elsewhere_starts_it_again(tool: Tool) -> None:
    tool.say("outbreak", enclosures=("east tank",), organisms=("cryptosporidium",))
    reply = tool.say("yes")
    assert reply.values["quarantine_again"] == ("new arrival box",)
    assert "quarantine starts again" in words(reply)
    assert tool.say("quarantine").values["day"] == 0


def test_no_to_another_tub_waits_for_its_name(tool: Tool) -> None:
    tool.say("start", enclosures=("east tank",), bottles=("orange bottle",))
    tool.say("done", steps=("move out",), tubs=("blue tub",))
    tool.say("start", enclosures=("pond tub",), bottles=("orange bottle",))
    tool.say("done", enclosures=("pond tub",), steps=("move out",), tubs=("blue tub",))
    reply = tool.say("no")
    assert (reply.outcome, reply.missing) == (Outcome.ASK, ("tub",))


def test_a_thing_from_a_sick_animals_home_is_binned_though_the_home_goes_unsaid(tool: Tool) -> None:
    tool.say("outbreak", enclosures=("east tank",), organisms=("cryptosporidium",))
    tool.say("yes")
    assert tool.say("treat_item", items=("branch",)).values["way"] == "bin"


# ---------------------------------------------------------------- what the long rehearsals found


def two_wet_times_over(tool: Tool) -> None:
    for name, bottle in (("east tank", "orange bottle"), ("new arrival box", "blue bottle")):
        tool.say("start", enclosures=(name,), bottles=(bottle,))
        for step in ("move out", "clear", "wash", "apply"):
            tool.say("done", enclosures=(name,), steps=(step,))
    tool.now += timedelta(hours=1)


def test_yes_to_two_wet_times_at_once_vouches_for_neither(tool: Tool) -> None:
    two_wet_times_over(tool)
    reply = tool.say("yes")
    assert (reply.outcome, reply.missing) == (Outcome.ASK, ("enclosure",))
    assert all("hold" not in round_.done for round_ in tool.state.rounds.values())


def test_next_at_the_end_of_a_wet_time_takes_yes_and_no(tool: Tool) -> None:
    tool.say("start", enclosures=("east tank",), bottles=("orange bottle",))
    for step in ("move out", "clear", "wash", "apply"):
        tool.say("done", steps=(step,))
    away = tool.closed_for(hours=1)
    assert "did it stay wet" in words(tool.say("next", away=away))
    assert "starts over" in words(tool.say("no"))


def test_rinsed_is_of_the_one_that_waits_to_be_rinsed(tool: Tool) -> None:
    two_wet_times_over(tool)
    tool.say("done", enclosures=("east tank",), steps=("rinse",), stayed_wet=True)
    reply = tool.say("done", steps=("rinse",), stayed_wet=True)
    assert (reply.outcome, reply.values["enclosure"]) == (Outcome.ANSWER, "new arrival box")


def test_still_wet_of_both_names_both_and_the_soonest_clock(tool: Tool) -> None:
    two_wet_times_over(tool)
    for name in ("east tank", "new arrival box"):
        tool.say("done", enclosures=(name,), steps=("apply",))
    reply = tool.say("rewet", every_enclosure=True)
    assert set(reply.values["enclosures"]) == {"east tank", "new arrival box"}
    assert "new arrival box" in words(reply)
    assert "east tank" in words(reply)


def test_one_product_never_tops_up_another(tool: Tool) -> None:
    reply = tool.say("top_up", bottles=("orange bottle", "white bottle"))
    assert reply.values["verdict"] == "never"
    assert "never" in words(reply)


def test_a_cracked_bowl_is_binned_and_a_sound_one_soaked(tool: Tool) -> None:
    assert tool.say("treat_item", items=("bowl",), cracked=True).values["way"] == "bin"
    assert tool.say("treat_item", items=("bowl",)).values["way"] == "soak"


def test_bake_it_is_of_the_branch_just_spoken_of_and_as_wet(tool: Tool) -> None:
    tool.say("treat_item", items=("branch",), still_wet=True)
    assert tool.say("treat_item", ways=("bake",)).outcome is Outcome.REFUSE


def test_nothing_goes_onto_a_spill(tool: Tool) -> None:
    reply = tool.say("spill", agents=("acetic acid",), wish="neutralising")
    assert reply.outcome is Outcome.REFUSE
    assert "nothing on it but water" in words(reply)


def test_after_fumes_the_way_back_in_is_only_without_smell(tool: Tool) -> None:
    tool.say("splash", place="lungs", victim="person")
    assert "no smell" in words(tool.say("splash", place="lungs", victim="person", got_out=True))


def test_both_tubs_washed_are_both_noted(tool: Tool) -> None:
    cleaned_with_vinegar(tool)
    tool.say("tub", tubs=("blue tub", "red tub"), cleaned="disinfected")
    assert tool.say("due").values["tubs"] == ()


def test_mites_are_over_after_the_weeks_of_the_rule(tool: Tool) -> None:
    reading = Reading(
        "when are the mites gone", "outbreak", Slots(organisms=("mites",), of_illness="ends"), confidence=1.0
    )
    assert "six weeks" in words(tool.hear(reading))  # facts/outbreaks.toml, outbreak-mites-over: practice


def test_a_wet_time_that_nobody_watched_is_asked_at_the_end_of_the_day(tool: Tool) -> None:
    tool.say("start", enclosures=("east tank",), bottles=("orange bottle",))
    for step in ("move out", "clear", "wash", "apply"):
        tool.say("done", steps=(step,))
    away = tool.closed_for(hours=1)
    assert "say whether it stayed wet" in tool.say("day_end", away=away).show
