"""Spot, deep, scale and quarantine cleans, begun and gone through in whole turns."""

from __future__ import annotations

from fractions import Fraction

import pytest
from tool import FACTS, Tool

from assistant.contract import Outcome, Reply
from assistant.core.household import Bottle, Enclosure, Household, Stock
from assistant.core.quantities.amounts import Amount, Neat, SaidRatio

HOUSEHOLD = Household(
    stocks=(
        Stock("kitchen bleach", "sodium hypochlorite", Amount(Fraction(6), "%"), label_minutes=10),
        Stock("pink mix", "chlorhexidine", Amount(Fraction(2), "%"), label_minutes=5),
        Stock("cider vinegar", "acetic acid", Amount(Fraction(5), "%")),
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
    ),
    enclosures=(Enclosure("oak box", animal="corn snake"),),
)

BLEACH_STEPS = ("move out", "clear", "wash", "apply", "hold", "rinse", "dry", "air", "return")


@pytest.fixture
def tool() -> Tool:
    return Tool(HOUSEHOLD)


def done(tool: Tool, *steps: str, **slots: object) -> Reply:
    return tool.say("done", steps=steps, **slots)


def begun(tool: Tool, clean_as: str, **slots: object) -> Reply:
    return tool.say("start", enclosures=("oak box",), clean_as=clean_as, **slots)


@pytest.mark.parametrize("clean_as", ["spot clean", "deep clean", "quarantine clean"])
def test_a_disinfectant_keeps_every_step_whatever_the_sort(tool: Tool, clean_as: str) -> None:
    reply = begun(tool, clean_as, bottles=("red bottle",))
    assert reply.values["steps"] == BLEACH_STEPS
    assert reply.values["job"] == clean_as
    assert f"Oak box, {clean_as}, bleach." in reply.say


def test_a_scale_clean_takes_the_vinegar_that_is_there_and_says_that_it_disinfects_nothing(tool: Tool) -> None:
    reply = begun(tool, "scale clean")
    assert (reply.outcome, reply.values["agent"], reply.values["bottle"]) == (
        Outcome.ANSWER, "acetic acid", "white bottle",
    )  # fmt: skip
    assert "wash" not in reply.values["steps"]
    assert "doesn't disinfect" in reply.say


def test_a_scale_clean_with_bleach_is_not_begun_and_the_next_turn_may_name_the_vinegar(tool: Tool) -> None:
    reply = begun(tool, "scale clean", bottles=("red bottle",))
    assert reply.outcome is Outcome.ASK
    assert not tool.state.rounds
    assert tool.talk.pending is not None
    waiting = tool.talk.pending.reading.slots
    assert (waiting.clean_as, waiting.bottles) == ("scale clean", ())


def test_a_scale_clean_with_no_vinegar_on_the_shelf_asks_with_what() -> None:
    bare = Household(enclosures=HOUSEHOLD.enclosures)
    reply = begun(Tool(bare), "scale clean")
    assert (reply.outcome, reply.missing) == (Outcome.ASK, ("bottle", "stock", "agent"))


def test_a_scale_clean_is_refused_while_bleach_is_on_the_surface(tool: Tool) -> None:
    begun(tool, "", bottles=("red bottle",))
    done(tool, "move out", "clear", "wash", "apply")
    assert begun(tool, "scale clean", start_over=True).outcome is Outcome.REFUSE


def test_a_quarantine_clean_takes_the_longer_of_label_and_published_when_begun_and_when_sprayed(tool: Tool) -> None:
    begun(tool, "deep clean", bottles=("pink bottle",))
    label = tool.state.rounds["oak box"].hold_s
    assert label == 300  # the label's own five minutes
    reply = begun(tool, "quarantine clean", bottles=("pink bottle",), start_over=True)
    longer = FACTS[FACTS.agents["chlorhexidine"].hold or ""].exact() * 60
    assert longer > label
    assert tool.state.rounds["oak box"].hold_s == reply.values["minutes"] * 60 == longer
    done(tool, "move out", "clear", "wash", "apply")
    hold = tool.state.rounds["oak box"].hold
    assert hold is not None
    assert hold.seconds == longer
    assert tool.say("hold_time").values["minutes"] * 60 == longer


def test_next_status_and_the_record_tell_the_sort(tool: Tool) -> None:
    begun(tool, "spot clean", bottles=("red bottle",))
    assert tool.say("next").values["job"] == "spot clean"
    assert "spot clean" in tool.say("next").show
    status = tool.say("status")
    assert status.values["rounds"][0]["job"] == "spot clean"
    assert "spot clean" in status.show


def test_why_tells_where_the_sort_of_clean_comes_from(tool: Tool) -> None:
    assert "choosing-scale" in {source.id for source in begun(tool, "scale clean").sources}
    assert "choosing-scale" in {source["id"] for source in tool.say("why").values["sources"]}


def test_a_spot_clean_once_ready_holds_only_for_the_spot(tool: Tool) -> None:
    begun(tool, "spot clean", bottles=("red bottle",))
    done(tool, "move out", "clear", "wash", "apply")
    tool.after(minutes=10)
    done(tool, "hold", stayed_wet=True)
    done(tool, "rinse")
    assert tool.say("return_check").values["ready"] is False
    done(tool, "dry")
    tool.after(hours=12)
    reply = tool.say("return_check")
    assert reply.values["ready"] is True
    assert "Only for the spot" in reply.show
