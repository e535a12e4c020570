"""What is sprayed is what the record says the bottle holds, before what keeping.toml means it for."""

from __future__ import annotations

from fractions import Fraction

import pytest
from tool import Tool

from assistant.answer.due import still_waits
from assistant.contract import Outcome, Reply
from assistant.core.household import Bottle, Enclosure, Household, Room, Stock
from assistant.core.quantities.amounts import Amount, SaidRatio
from assistant.core.round.gate import may_go_back
from assistant.shells.chat import bottom_line

TUB = "left tub"
MIX = SaidRatio(Fraction(1), Fraction(32), "in")
HOUSEHOLD = Household(
    room=Room(airing=2.0),
    stocks=(
        Stock("wash bleach", "sodium hypochlorite", Amount(Fraction(6), "%")),
        Stock("blue concentrate", "chlorhexidine", Amount(Fraction(2), "%"), label_minutes=Fraction(10)),
        Stock("pickle vinegar", "acetic acid", Amount(Fraction(5), "%")),
    ),
    bottles=(
        Bottle("red bottle", Amount(Fraction(500), "mL"), stock="wash bleach", mix=MIX),
        Bottle("spare bottle", Amount(Fraction(500), "mL"), stock="wash bleach", mix=MIX),
    ),
    enclosures=(Enclosure(TUB, animal="corn snake"),),
)


@pytest.fixture
def tool() -> Tool:
    return Tool(HOUSEHOLD)


def fill(tool: Tool, stock: str, bottle: str = "red bottle") -> None:
    tool.say("rinsed_out", bottles=(bottle,))
    reply = tool.say("mixed", bottles=(bottle,), stocks=(stock,), mixes=(MIX,))
    if reply.outcome is not Outcome.ANSWER:
        reply = tool.say("yes")
    assert reply.values["recorded"], reply.say


def start(tool: Tool, **slots: object) -> Reply:
    return tool.say("start", enclosures=(TUB,), bottles=("red bottle",), **slots)


def sprayed(tool: Tool) -> Reply:
    return tool.say("done", enclosures=(TUB,), steps=("move out", "clear", "wash", "apply"))


def test_a_bottle_with_another_agent_on_record_is_taken_for_that(tool: Tool) -> None:
    fill(tool, "blue concentrate")
    reply = start(tool)
    assert reply.values["agent"] == "chlorhexidine"
    assert "keeping.toml" not in reply.show


def test_a_bottle_with_no_fill_on_record_is_taken_as_set_and_the_reply_says_so(tool: Tool) -> None:
    reply = start(tool)
    assert reply.values["agent"] == "sodium hypochlorite"
    assert "no fill on record" in reply.say
    assert "No fill of red bottle is on record: taken as bleach, as keeping.toml says." in reply.show
    assert "as keeping.toml says" in sprayed(tool).show


def test_with_a_fill_on_record_nothing_is_said_of_keeping_toml(tool: Tool) -> None:
    fill(tool, "wash bleach")
    assert "keeping.toml" not in start(tool).show
    assert "keeping.toml" not in sprayed(tool).show


def test_an_agent_named_against_the_record_is_asked_about_and_starts_nothing(tool: Tool) -> None:
    fill(tool, "blue concentrate")
    reply = start(tool, agents=("quaternary ammonium",))
    assert reply.outcome is Outcome.ASK
    assert "holds chlorhexidine on my record" in reply.say
    assert not tool.state.rounds


def test_spraying_from_a_bottle_filled_otherwise_since_is_asked_about_and_both_may_be_on_it(tool: Tool) -> None:
    start(tool)
    fill(tool, "blue concentrate")
    tool.say("done", enclosures=(TUB,), steps=("move out", "clear", "wash"))
    reply = tool.say("done", steps=("apply",), bottles=("red bottle",), agents=("quaternary ammonium",))
    assert reply.outcome is Outcome.ASK
    assert reply.values["recorded"] is False
    assert {touch.agent for touch in tool.state.surfaces[TUB]} == {"quaternary ammonium", "chlorhexidine"}


def test_an_unknown_mix_is_refused_to_start_with(tool: Tool) -> None:
    fill(tool, "wash bleach")
    tool.say("mixed", bottles=("red bottle",), stocks=("pickle vinegar",), met=True)
    assert "red bottle" in tool.state.unknown_mixes
    reply = start(tool)
    assert reply.outcome is Outcome.REFUSE
    assert "unknown mix" in reply.say


def test_an_unknown_mix_sprayed_all_the_same_counts_for_nothing_and_all_of_it_is_kept(tool: Tool) -> None:
    start(tool)
    tool.say("mixed", bottles=("red bottle",), stocks=("wash bleach",), mixes=(MIX,))
    tool.say("mixed", bottles=("red bottle",), stocks=("pickle vinegar",), met=True)
    reply = sprayed(tool)
    assert reply.outcome is Outcome.REFUSE
    assert {touch.agent for touch in tool.state.surfaces[TUB]} >= {"sodium hypochlorite", "acetic acid"}
    assert "apply" not in tool.state.rounds[TUB].done


def finished(tool: Tool) -> str | None:
    tool.after(minutes=10)
    tool.say("done", enclosures=(TUB,), steps=("rinse",), stayed_wet=True)
    tool.say("done", enclosures=(TUB,), steps=("dry",))
    tool.after(hours=4)
    return may_go_back(tool.state.rounds[TUB], tool.now).claim


def test_a_mix_past_its_life_is_said_at_the_start_and_does_not_count_as_a_disinfection(tool: Tool) -> None:
    fill(tool, "wash bleach")
    tool.after(hours=25)
    assert "past its life" in start(tool).say
    assert "counts as a clean" in sprayed(tool).say
    assert finished(tool) == "cleaned_only"


def test_a_mix_within_its_life_does_count(tool: Tool) -> None:
    fill(tool, "wash bleach")
    tool.after(hours=23)
    assert "past its life" not in start(tool).say
    assert "counts as a clean" not in sprayed(tool).say
    assert finished(tool) == "disinfected_by_published"


def test_a_fresh_mix_sprayed_over_a_spent_one_starts_its_own_wet_time_and_counts(tool: Tool) -> None:
    fill(tool, "wash bleach")
    tool.after(hours=25)
    start(tool)
    sprayed(tool)
    tool.after(minutes=5)
    fill(tool, "wash bleach")
    tool.say("done", enclosures=(TUB,), steps=("apply",))
    tool.after(minutes=6)
    assert "hold" in may_go_back(tool.state.rounds[TUB], tool.now).blocked_by
    assert finished(tool) == "disinfected_by_published"


def test_a_bottle_past_its_life_is_told_once_by_itself_and_stands_in_the_bottom_line(tool: Tool) -> None:
    fill(tool, "wash bleach")
    assert tool.after(hours=23, minutes=59) == ""
    assert bottom_line(tool.state, tool.talk, tool.now, 80, still_waits(tool.world())) == " no clock is running"
    assert "past its life" in tool.after(minutes=1)
    assert tool.after(hours=1) == ""
    assert "red bottle: past its life" in bottom_line(tool.state, tool.talk, tool.now, 80, still_waits(tool.world()))
    tool.say("rinsed_out", bottles=("red bottle",))
    assert "past its life" not in bottom_line(tool.state, tool.talk, tool.now, 80, still_waits(tool.world()))


def test_the_bottom_line_shows_what_waits_for_the_keeper_until_it_is_seen_to(tool: Tool) -> None:
    start(tool)
    sprayed(tool)
    assert "stayed wet?" not in bottom_line(tool.state, tool.talk, tool.now, 80, still_waits(tool.world()))
    tool.after(minutes=10)
    assert "left tub: stayed wet?" in bottom_line(tool.state, tool.talk, tool.now, 80, still_waits(tool.world()))
    tool.say("done", enclosures=(TUB,), steps=("hold",), stayed_wet=True)
    tool.after(minutes=5)
    assert "left tub: rinse now" in bottom_line(tool.state, tool.talk, tool.now, 80, still_waits(tool.world()))
    tool.say("done", enclosures=(TUB,), steps=("rinse",))
    assert "rinse now" not in bottom_line(tool.state, tool.talk, tool.now, 80, still_waits(tool.world()))
    tool.after(minutes=50)
    line = bottom_line(tool.state, tool.talk, tool.now, 120, still_waits(tool.world()))
    assert "left tub: open a window" in line
    assert "left tub: animal waits" in line
