"""Ways that someone might get "ready" too soon, each tried with whole turns. None may work."""

from __future__ import annotations

from datetime import timedelta

import pytest
from tool import Tool

from assistant.contract import Outcome
from assistant.core.household import Bottle, Enclosure, Household, Room, Stock
from assistant.core.quantities.amounts import Amount, SaidRatio
from assistant.core.round.gate import may_go_back

TUB = "left tub"
AGENTS = {
    "red": "sodium hypochlorite",
    "blue": "chlorhexidine",
    "clear": "isopropyl alcohol",
    "soap": "detergent",
    "sour": "acetic acid",
}
HOUSEHOLD = Household(
    room=Room(airing=2.0),
    stocks=tuple(
        Stock(f"{name} stock", agent, Amount(5, "%"), label_minutes=10 if agent != "detergent" else None)  # type: ignore[arg-type]
        for name, agent in AGENTS.items()
    ),
    bottles=tuple(
        Bottle(name, Amount(500, "mL"), stock=f"{name} stock", mix=SaidRatio(1, 32, "in"))  # type: ignore[arg-type]
        for name in AGENTS
    ),
    enclosures=(Enclosure(TUB, animal="snake"), Enclosure("right tub", animal="gecko")),
)


class Keeper:
    """Says things of one tub, and looks at the gate."""

    def __init__(self, bottle: str = "red", upto: str = "wash") -> None:
        self.tool = Tool(HOUSEHOLD)
        self.bottle = bottle
        self.tool.say("start", enclosures=(TUB,), bottles=(bottle,))
        steps = ("move out", "clear", "wash", "apply")
        self.done(*steps[: steps.index(upto) + 1])

    def done(self, *steps: str, **slots: object) -> Keeper:
        heat = {"heat_cold": True} if self.bottle == "clear" else {}
        self.last = self.tool.say("done", enclosures=(TUB,), steps=steps, **{**heat, **slots})
        return self

    def yes(self) -> Keeper:
        self.last = self.tool.say("yes")
        return self

    def say(self, intent: str, **slots: object) -> Keeper:
        self.last = self.tool.say(intent, **slots)
        return self

    def after(self, **span: float) -> Keeper:
        self.tool.after(**span)
        return self

    def away(self, **span: float) -> Keeper:
        """Nobody was there to see whether it stayed wet."""
        since = self.tool.closed_for(**span)
        self.tool.say("status", away=since)
        return self

    def finish(self) -> Keeper:
        """Everything by hand that may still be wanted, and time without end; but nobody vouches for the wet time."""
        for steps in (("rinse",), ("dry",)):
            self.done(*steps)
        return self.after(hours=30)

    def blocked_by(self) -> tuple[str, ...]:
        verdict = may_go_back(self.tool.state.rounds.get(TUB), self.tool.now)
        assert not verdict.ready, self.last.say
        return verdict.blocked_by


def test_the_plain_way_does_get_there() -> None:
    keeper = Keeper(upto="apply").after(minutes=10).done("rinse").done("dry").after(hours=3)
    assert may_go_back(keeper.tool.state.rounds[TUB], keeper.tool.now).ready


# ---------------------------------------------------------------- a wet time in doubt


@pytest.mark.parametrize(("bottle", "needless"), [("clear", "rinse"), ("blue", "air")])
def test_a_needless_step_does_not_vouch_for_a_wet_time_in_doubt(bottle: str, needless: str) -> None:
    """Alcohol takes no rinse and chlorhexidine no airing: saying one is noted, and stands for nothing before it."""
    keeper = Keeper(bottle, upto="apply").away(minutes=12).done(needless)
    assert "hold" in keeper.blocked_by()
    keeper.finish()
    assert "hold" in keeper.blocked_by()


def test_a_needless_step_before_spraying_serves_nothing() -> None:
    keeper = Keeper("blue").done("air").done("apply").away(minutes=12)
    assert "hold" in keeper.blocked_by()


@pytest.mark.parametrize("later", ["rinse", "dry"])
def test_a_later_step_does_not_vouch_by_itself(later: str) -> None:
    keeper = Keeper(upto="apply").away(minutes=12).done(later)
    assert keeper.last.outcome is Outcome.ASK
    assert "hold" in keeper.blocked_by()


def test_spraying_again_from_the_same_bottle_does_not_take_a_doubt_away() -> None:
    keeper = Keeper(upto="apply").away(minutes=4).done("apply").after(minutes=6)
    assert "hold" in keeper.blocked_by()


def test_undoing_the_turn_that_noted_an_absence_does_not_take_the_doubt_away() -> None:
    keeper = Keeper(upto="apply")
    since = keeper.tool.closed_for(minutes=12)
    keeper.tool.say("done", away=since, enclosures=(TUB,), steps=("clear",))
    keeper.say("undo").after(minutes=1)
    assert "hold" in keeper.blocked_by()


# ---------------------------------------------------------------- a wipe for a rinse


def test_a_wipe_after_bleach_is_no_rinse_when_the_wet_time_had_to_be_vouched_for_first() -> None:
    keeper = Keeper(upto="apply").away(minutes=12).done("wipe").yes().done("dry").after(hours=30)
    assert "rinse" in keeper.blocked_by()


def test_a_wipe_after_bleach_is_no_rinse_when_a_step_before_was_missing() -> None:
    keeper = Keeper(upto="apply").after(minutes=10)
    keeper.tool.say("done", enclosures=(TUB,), steps=("wipe", "dry"))
    assert "rinse" in keeper.blocked_by()


# ---------------------------------------------------------------- starting over


@pytest.mark.parametrize(("first", "then"), [("red", "soap"), ("blue", "soap"), ("red", "blue")])
def test_starting_over_with_another_product_leaves_the_first_to_be_rinsed_off(first: str, then: str) -> None:
    keeper = Keeper(first, upto="apply").after(minutes=10)
    keeper.say("start", enclosures=(TUB,), bottles=(then,), start_over=True)
    keeper.bottle = then
    for step in ("move out", "clear", "wash"):
        keeper.done(step)
    if then != "soap":
        return  # the other takes a rinse of its own
    keeper.done("dry").after(hours=30)
    assert "rinse" in keeper.blocked_by()


def test_undoing_a_start_does_not_make_an_older_round_ready_again_once_something_was_sprayed() -> None:
    keeper = Keeper("soap").done("dry").say("start", enclosures=(TUB,), bottles=("red",), start_over=True)
    keeper.done("move out", "clear", "wash", "apply").say("undo").say("undo")
    assert set(keeper.blocked_by()) >= {"rinse", "dry"}


def test_spraying_in_a_clean_without_spray_is_asked_about_and_not_taken_for_soap() -> None:
    keeper = Keeper("soap").done("apply")
    assert keeper.last.outcome is Outcome.ASK
    assert keeper.last.values["recorded"] is False


# ---------------------------------------------------------------- finished as a clean only


def test_a_clean_only_still_rinses_dries_and_airs_what_was_sprayed() -> None:
    keeper = Keeper(upto="apply").say("clean_only", enclosures=(TUB,)).yes().after(hours=30)
    assert keeper.blocked_by() == ("rinse", "dry", "air")


def test_what_touches_the_surface_after_a_clean_only_is_to_come_off_again() -> None:
    keeper = Keeper(upto="move out").say("clean_only", enclosures=(TUB,)).yes()
    keeper.done("apply", bottles=("red",)).done("clear").done("wash").done("dry").after(hours=30)
    assert "rinse" in keeper.blocked_by()


def test_a_clean_only_is_never_called_a_disinfection() -> None:
    keeper = Keeper(upto="apply").say("clean_only", enclosures=(TUB,)).yes()
    keeper.done("rinse").done("dry").after(hours=3)
    verdict = may_go_back(keeper.tool.state.rounds[TUB], keeper.tool.now)
    assert verdict.claim in (None, "cleaned_only")
    assert verdict.ready


def test_a_clean_only_taken_back_after_a_rinse_was_taken_back_is_no_disinfection_by_the_clock_alone() -> None:
    """Rinsed during the wet time as a clean only; both undone, rinsed again long after: the film was off in between."""
    keeper = Keeper(upto="apply").say("clean_only", enclosures=(TUB,)).yes().done("rinse").done("dry")
    keeper.after(hours=6).say("undo").say("undo").say("undo")
    keeper.finish()
    assert "hold" in keeper.blocked_by()


def test_a_clean_only_taken_back_wants_its_wet_time_again() -> None:
    keeper = Keeper(upto="apply").say("clean_only", enclosures=(TUB,)).yes().done("rinse")
    keeper.say("undo").say("undo").after(minutes=11)
    assert keeper.blocked_by() == ("hold", "rinse", "dry", "air")  # nobody kept it wet for it meanwhile
    keeper.done("hold", stayed_wet=True)
    assert keeper.blocked_by() == ("rinse", "dry", "air")
    early = Keeper(upto="apply").say("clean_only", enclosures=(TUB,)).yes().done("rinse").say("undo").say("undo")
    assert "hold" in early.blocked_by()


# ---------------------------------------------------------------- it dried, it was kept wet


@pytest.mark.parametrize("intent", ["dried_early", "rewet"])
def test_what_is_said_of_the_film_serves_no_wet_time(intent: str) -> None:
    keeper = Keeper(upto="apply").after(minutes=4).say(intent, enclosures=(TUB,)).after(minutes=5)
    assert "hold" in keeper.blocked_by()


def test_it_dried_early_said_when_the_time_is_over_undoes_the_wet_time() -> None:
    keeper = Keeper(upto="apply").after(minutes=12).say("dried_early", enclosures=(TUB,), too_early=True)
    assert keeper.blocked_by()[:2] == ("apply", "hold")


def test_it_dried_early_said_after_the_rinse_undoes_that_too() -> None:
    keeper = Keeper(upto="apply").after(minutes=12).done("rinse")
    keeper.say("dried_early", enclosures=(TUB,), too_early=True)
    assert keeper.blocked_by() == ("apply", "hold", "rinse", "dry", "air")


def test_another_bottle_on_a_film_starts_its_time_anew() -> None:
    keeper = Keeper("blue", upto="apply").after(minutes=9)
    keeper.say("rewet", enclosures=(TUB,), steps=("apply",), bottles=("clear",), heat_cold=True).after(minutes=2)
    assert "hold" in keeper.blocked_by()


def test_a_pause_serves_nothing_by_itself() -> None:
    keeper = Keeper(upto="apply").say("leave_off", enclosures=(TUB,)).yes().after(minutes=30)
    assert "hold" in keeper.blocked_by()


# ---------------------------------------------------------------- airing


def test_windows_said_to_be_shut_are_no_opening() -> None:
    """Shut, the airing counts from dry, as when nothing was said of any window."""
    keeper = Keeper(upto="apply").after(minutes=10).done("rinse", openings=0)
    rinsed = keeper.tool.now
    keeper.after(hours=5).done("dry")
    keeper.tool.now = rinsed + timedelta(hours=4.605 / 0.41 + 0.1)
    assert "air" in keeper.blocked_by()


def test_an_airing_before_the_rinse_counts_for_nothing() -> None:
    keeper = Keeper(upto="apply").say("done", openings=3).after(hours=8)
    keeper.done("rinse", stayed_wet=True).done("dry")
    assert "air" in keeper.blocked_by()


def test_rinsing_again_airs_again_from_then_on() -> None:
    keeper = Keeper(upto="apply").after(minutes=10).done("rinse", openings=3).done("dry").after(hours=1)
    keeper.done("rinse").done("dry").after(hours=1)
    assert "air" in keeper.blocked_by()


def test_a_window_shut_again_slows_what_is_left() -> None:
    keeper = Keeper(upto="apply").after(minutes=10).done("rinse", openings=3).done("dry").after(minutes=10)
    keeper.say("done", openings=0).after(hours=2)
    assert "air" in keeper.blocked_by()


# ---------------------------------------------------------------- the animal, another enclosure, all at once


def test_everything_claimed_in_one_breath_is_not_ready() -> None:
    keeper = Keeper().done("apply", "hold", "rinse", "dry", "air", "return")
    assert "hold" in keeper.blocked_by()


def test_an_animal_put_back_and_taken_out_again_finds_nothing_done_that_was_not() -> None:
    keeper = Keeper(upto="apply").done("return").done("move out")
    assert keeper.blocked_by()[0] == "move out"  # out, but not yet said to be shut in
    assert keeper.yes().blocked_by()[:2] == ("hold", "rinse")


def test_another_tubs_round_lends_nothing() -> None:
    keeper = Keeper("soap", upto="move out")
    keeper.say("start", enclosures=("right tub",), bottles=("soap",))
    keeper.say("done", enclosures=("right tub",), steps=("move out", "clear", "wash", "dry"))
    assert keeper.blocked_by() == ("clear", "wash", "dry")


def test_saying_yes_over_and_over_serves_no_wet_time() -> None:
    keeper = Keeper()
    for _ in range(3):
        for step in ("rinse", "dry", "air", "hold"):
            keeper.done(step).yes().yes()
    assert "hold" in keeper.blocked_by()


def test_a_wet_patch_and_a_smell_each_block_until_they_are_gone() -> None:
    keeper = Keeper(upto="apply").after(minutes=10).done("rinse").done("dry").after(hours=3)
    keeper.say("still_smells", enclosures=(TUB,), smell=True)
    assert "air" in keeper.blocked_by()
    keeper.done("air").done("dry").after(hours=9)
    assert "air" in keeper.blocked_by()


def test_a_cold_animal_waits_all_the_same_and_its_tub_is_warmed_by_the_published_figure() -> None:
    reply = Keeper().say("return_check", enclosures=(TUB,), cold=True).last
    assert reply.values["ready"] is False
    assert "30 degrees at most" in reply.say  # Vets 4 Exotics, How to safely transport a reptile: 17 to 30 degrees
    assert len(reply.say.split()) <= 25
    assert [source.id for source in reply.sources] == ["workflow-tub-temperature"]


def test_with_no_clean_open_no_tub_is_warmed_and_nothing_vouches_for_it() -> None:
    reply = Tool(HOUSEHOLD).say("return_check", enclosures=(TUB,), cold=True)
    assert reply.values["ready"] is False
    assert "degrees" not in reply.say
    assert "degrees" not in reply.show


# ---------------------------------------------------------------- said while an animal was back inside


def test_that_it_dried_is_kept_though_the_animal_is_inside() -> None:
    keeper = Keeper(upto="apply").done("return").after(minutes=10).done("hold", stayed_wet=False)
    keeper.after(hours=1).done("move out").finish()
    assert "apply" in keeper.blocked_by()


@pytest.mark.parametrize("step", ["rinse", "dry"])
def test_a_rinse_or_a_drying_in_the_wet_time_is_kept_though_the_animal_is_inside(step: str) -> None:
    keeper = Keeper(upto="apply").after(minutes=2).done("return").done(step).after(hours=1).done("move out").finish()
    assert {"apply", "hold"} & set(keeper.blocked_by())
