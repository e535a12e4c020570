"""What happens beside the rounds: loose animals, tubs, groups, habits, items, and bottles that nobody knows."""

from __future__ import annotations

from story import BEGIN, Story

from assistant.core.record.beside_rounds import MOST_ITEMS
from assistant.core.record.events import (
    AgentPoured,
    AnimalFound,
    AnimalLoose,
    BottleDoubted,
    BottleMixed,
    BottleRinsed,
    BottleUnsettled,
    GroupChanged,
    HabitChanged,
    ItemBegun,
    RoundStarted,
    TubCleaned,
    TubLeft,
    TubUnclean,
    TubUsed,
)


def loose(story: Story) -> list[str]:
    return [one.enclosure for one in story.state.loose]


def test_a_loose_animal_stays_loose_until_it_is_found() -> None:
    story = Story().tell(AnimalLoose("tub"))
    assert loose(story) == ["tub"]
    assert loose(story.tell(AnimalFound("tub"))) == []


def test_one_found_without_a_name_is_the_latest_that_got_out() -> None:
    story = Story().tell(AnimalLoose("tub")).tell(AnimalLoose("box")).tell(AnimalFound())
    assert loose(story) == ["tub"]


def test_one_found_by_name_may_be_the_nameless_one_but_never_another() -> None:
    assert loose(Story().tell(AnimalLoose()).tell(AnimalFound("tub"))) == []
    assert loose(Story().tell(AnimalLoose("box")).tell(AnimalFound("tub"))) == ["box"]


def test_an_escape_touches_no_round_and_no_step() -> None:
    story = Story().start().done("move out", "clear")
    before = story.round()
    assert story.tell(AnimalLoose("tub")).round() == before


def test_an_animal_back_home_is_neither_loose_nor_in_its_tub() -> None:
    story = Story().start().done("move out").tell(TubUsed("red tub", "tub"), AnimalLoose("tub")).done("return")
    assert loose(story) == []
    assert story.state.tubs["red tub"].until == BEGIN


def test_an_animal_moved_to_another_tub_has_left_the_first() -> None:
    story = Story().tell(TubUsed("red tub", "tub")).after(minutes=5).tell(TubUsed("green tub", "tub"))
    assert story.state.tubs["red tub"].until == story.now
    assert story.state.tubs["green tub"].until is None


def test_a_tub_is_unclean_after_use_until_it_is_cleaned_and_again_after_the_next() -> None:
    story = Story().tell(TubUsed("red tub", "tub", "sick")).tell(TubCleaned("red tub"))
    assert story.state.tubs["red tub"].cleaned
    assert not story.tell(TubUsed("red tub", "box")).state.tubs["red tub"].cleaned


def test_a_tub_that_is_not_clean_after_all_is_unclean_and_a_tub_nobody_used_stays_unknown() -> None:
    story = Story().tell(TubUsed("red tub", "tub", "sick"), TubCleaned("red tub"), TubUnclean("red tub"))
    assert not story.state.tubs["red tub"].cleaned
    assert story.tell(TubUnclean("green tub")).state.tubs.keys() == {"red tub"}


def test_an_animal_back_without_a_clean_has_left_its_tub() -> None:
    story = Story().tell(TubUsed("red tub", "tub")).after(minutes=5).tell(TubLeft("tub"))
    assert story.state.tubs["red tub"].until == story.now


def test_an_item_begun_again_starts_its_clock_anew() -> None:
    story = Story().tell(ItemBegun("branch", "bake", 7200.0)).after(minutes=9).tell(ItemBegun("branch", "bake", 7200.0))
    assert [(timer.item, timer.began) for timer in story.state.items] == [("branch", story.now)]


def test_no_more_items_are_kept_than_the_row_holds() -> None:
    story = Story()
    for number in range(MOST_ITEMS + 5):
        story.tell(ItemBegun(f"bowl {number}", "soak", 600.0))
    assert len(story.state.items) == MOST_ITEMS
    assert story.state.items[-1].item == f"bowl {MOST_ITEMS + 4}"


def test_a_group_a_habit_and_a_doubted_bottle_are_taken_back_by_undo() -> None:
    story = Story().tell(GroupChanged("tub", "sick", "healthy"), HabitChanged("gallon", "imperial", "US"))
    assert story.state.groups["tub"].group == "sick"
    assert story.tell(BottleDoubted("blue")).state.unknown_mixes == ("blue",)
    assert story.undo().undo().state.groups == {}
    assert story.state.habits == {}
    assert story.state.unknown_mixes == ()


def test_a_doubted_bottle_is_known_again_once_rinsed_out() -> None:
    story = Story().tell(BottleDoubted("blue")).tell(BottleDoubted("blue"))
    assert story.state.unknown_mixes == ("blue",)
    assert story.tell(BottleRinsed("blue")).state.unknown_mixes == ()


def test_what_is_no_settled_fill_takes_the_place_of_one_and_is_no_rinse() -> None:
    filled = Story().tell(BottleMixed("blue", "chlorhexidine", mix="1 in 40"))
    for event in (BottleUnsettled("blue"), AgentPoured("blue", "chlorhexidine")):
        holds = filled.tell(event).state.bottles["blue"]
        assert (holds.fill, holds.held) == (None, ("chlorhexidine",))
        assert filled.undo().state.bottles["blue"].fill is not None
    emptied = Story().tell(BottleRinsed("blue")).tell(BottleUnsettled("blue")).state.bottles["blue"]
    assert emptied.rinsed_at is None


STEPS = ("move out", "clear", "wash", "apply", "hold", "rinse", "dry", "air", "return")


def test_a_germ_named_while_a_clean_is_open_takes_its_claim_to_have_disinfected() -> None:
    def claim(*told: GroupChanged, organism: str | None = None) -> str | None:
        story = Story().tell(RoundStarted("tub", "bleach", STEPS, 600.0, 1.0, 2.0, organism=organism))
        story.done("move out", "clear", "wash", "apply").after(minutes=10).tell(*told)
        return story.done("hold", "rinse", "dry").after(hours=3).gate().claim

    assert claim() == "disinfected_by_published"
    assert claim(GroupChanged("tub", "sick", "healthy", "cryptosporidium")) == "cleaned_only"
    assert claim(GroupChanged("box", "sick", "healthy", "cryptosporidium")) == "disinfected_by_published"
    assert (
        claim(GroupChanged("tub", "sick", "healthy", "salmonella"), organism="salmonella") == "disinfected_by_published"
    )


def test_one_that_waits_in_a_tub_without_a_clean_is_asked_after_until_it_is_back() -> None:
    story = Story().tell(TubUsed("red tub", "tub"))
    since = story.now
    assert story.after(minutes=61).due(since) == ["animal waits"]
    later = story.now
    assert story.tell(TubLeft("tub")).after(hours=2).due(later) == []


def test_one_whose_clean_is_open_is_asked_after_once() -> None:
    story = Story().start().done("move out").tell(TubUsed("red tub", "tub"))
    since = story.now
    assert story.after(minutes=61).due(since).count("animal waits") == 1
