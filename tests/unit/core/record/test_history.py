"""The record read back: nothing is left out, corrections are marked, and a day is what stands of it."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta

from story import BEGIN, DETERGENT_STEPS, Story

from assistant.core.record.events import Away, GroupChanged, Recorded, StepDone, Voided
from assistant.core.record.history import Wanted, by_day, chosen, entries

DAY = BEGIN.date()


def utc(at: datetime) -> datetime:
    return at.astimezone(UTC)


def whole_clean() -> Story:
    story = Story().start().done("move out", "clear", "wash", "apply").after(minutes=11)
    return story.done("hold", "rinse", "dry").after(hours=3).done("air", "return")


def done_on(story: Story, day: date = DAY, enclosure: str = "tub") -> frozenset[str]:
    return frozenset(by_day(entries(story.record), utc).get(enclosure, {}).get(day, frozenset()))


def test_every_event_has_its_entry_in_order() -> None:
    story = whole_clean()
    assert [entry.event for entry in entries(story.record)] == [recorded.event for recorded in story.record]


def test_a_clean_with_every_step_served_disinfected() -> None:
    assert "disinfected" in done_on(whole_clean())


def test_a_clean_without_its_return_is_a_part() -> None:
    assert done_on(Story().start().done("move out", "clear")) == {"part"}


def test_a_return_on_record_before_the_rest_is_no_disinfection() -> None:
    story = Story().start().done("move out", "clear", "wash", "apply", "return")
    assert done_on(story) == {"part"}


def test_a_clean_with_detergent_only_cleaned() -> None:
    story = Story().start(agent="dish soap", steps=DETERGENT_STEPS).done("move out", "clear", "wash", "dry", "return")
    assert "cleaned" in done_on(story)
    assert "disinfected" not in done_on(story)


def test_what_was_taken_back_is_marked_and_not_counted() -> None:
    story = Story().tell(GroupChanged("tub", "sick", "healthy")).after(minutes=3).undo()
    taken, undo = entries(story.record)
    assert taken.undone_at == BEGIN + timedelta(minutes=3)
    assert not taken.lasts
    assert isinstance(undo.event, Voided)
    assert undo.enclosure == "tub"
    assert done_on(story) == frozenset()


def test_spraying_taken_back_still_counts_for_what_must_not_meet() -> None:
    sprayed = entries(Story().start().done("apply").undo().record)[1]
    assert sprayed.undone_at is not None
    assert sprayed.lasts


def test_an_undone_return_leaves_a_part() -> None:
    assert done_on(whole_clean().undo()) == {"part"}


def test_the_clean_s_agent_goes_with_its_steps() -> None:
    found = chosen(entries(whole_clean().record), Wanted(agent="bleach"), utc)
    assert len(found) == 10
    assert chosen(entries(whole_clean().record), Wanted(agent="vinegar"), utc) == ()


def test_days_are_counted_in_the_keepers_zone_and_the_last_is_included() -> None:
    story = Story(now=datetime(2026, 3, 2, 23, 30, tzinfo=UTC)).start()
    record = entries(story.record)
    assert len(chosen(record, Wanted(first=DAY, last=DAY), utc)) == 1
    assert chosen(record, Wanted(first=DAY, last=DAY), lambda at: at + timedelta(hours=1)) == ()


def test_one_enclosure_is_told_from_another() -> None:
    story = Story().start("tub").start("tank")
    assert [e.enclosure for e in chosen(entries(story.record), Wanted("tank"), utc)] == ["tank"]


def test_the_tools_own_notes_are_left_out_unless_wanted() -> None:
    record = entries(Story().tell(Away(BEGIN)).record)
    assert chosen(record, Wanted(), utc) == ()
    assert len(chosen(record, Wanted(notes=True), utc)) == 1


@dataclass(frozen=True)
class ToldLater:
    """An event of another day, told afterwards, of a kind that this room doesn't know."""

    enclosure: str
    done_at: datetime
    chore: str = "spot clean"


def test_what_was_told_afterwards_counts_on_its_own_day() -> None:
    yesterday = BEGIN - timedelta(days=1)
    (entry,) = entries([Recorded(BEGIN, "1", ToldLater("tub", yesterday))])  # type: ignore[arg-type]
    assert (entry.at, entry.told_at, entry.done) == (yesterday, BEGIN, "spot clean")


def test_the_entry_of_a_step_names_its_enclosure_and_agents() -> None:
    entry = entries(Story().start().done("apply").record)[1]
    assert isinstance(entry.event, StepDone)
    assert (entry.enclosure, entry.agents) == ("tub", ("bleach",))
