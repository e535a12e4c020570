"""What comes due by itself, and the question that it leaves open."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import datetime

from assistant.answer.film import dries_at
from assistant.answer.which import open_rounds
from assistant.contract import Answer, Outcome, Pending, Reading, Slots, World
from assistant.core.record.clocks import differences
from assistant.core.record.events import ClocksSettled
from assistant.core.round.reminders import Reminder, came_due, standing


def due_since(since: datetime, world: World) -> tuple[Reminder, ...]:
    """What came due after `since`, up to now, oldest first."""
    return came_due(world.state, since, world.now, world.household.habits.tub_minutes, _dries(world))


def still_waits(world: World) -> tuple[Reminder, ...]:
    """What came due at some time and still waits for the keeper, the most pressing first."""
    return standing(world.state, world.now, world.household.habits.tub_minutes, _dries(world))


def _dries(world: World) -> dict[str, datetime]:
    """When each film may be dry at the soonest, where that can be forecast."""
    wet = ((r.enclosure, dries_at(r, world, r.hold.wetted)) for r in open_rounds(world) if r.hold is not None)
    return {enclosure: at for enclosure, at in wet if at is not None}


ASKS_THE_CLOCKS = ("time_left", "return_check", "status", "next")
"""Questions whose reply says again that the clocks have parted, as long as that isn't settled."""


def clocks_due(intent: str | None, world: World) -> tuple[Reminder, ...]:
    """That the clocks have parted, where it matters to one that runs: when found, and when asked how far it is."""
    if not (world.clocks_parted or (intent in ASKS_THE_CLOCKS and world.talk.pending is None)):
        return ()
    differ = differences(world.state, world.now)
    return (Reminder("clocks parted", world.now, differ[0].thing),) if differ else ()


def clocks_question(world: World) -> Pending:
    """ "Has it really been so long?": yes counts the longer span, no the shorter; until then it is the shorter."""

    differ = differences(world.state, world.now)[0]

    def said(passed: bool) -> Answer:
        details = {"passed": passed, "difference": differ}
        return Answer(
            "yes" if passed else "no",
            Outcome.ANSWER,
            "the_round.clocks_settled",
            details,
            values={"recorded": True},
            events=(ClocksSettled(differ.thing, differ.step, passed, world.state.clock_offset_s or 0.0),),
        )

    return Pending(Reading("", None), world.now, on_yes=said(True), on_no=said(False))


def pending_after_reminder(reminders: tuple[Reminder, ...], answer: Answer | None, world: World) -> Pending | None:
    """The question that a reminder leaves open. Only when it is the one thing asked."""
    if answer is not None and answer.pending is not None:
        return None
    asking = [reminder for reminder in reminders if reminder.kind in _ASKS or reminder.kind == "clocks parted"]
    if len(asking) != 1:
        return None
    if asking[0].kind == "clocks parted":
        return clocks_question(world)
    return replace(_ASKS[asking[0].kind](asking[0].thing, world), unasked=True)


def wet_question(enclosure: str, world: World) -> Pending:
    """ "Did it stay wet the whole time?": yes serves the hold, no opens it again."""

    def said(stayed_wet: bool) -> Reading:
        slots = Slots(enclosures=(enclosure,), steps=("hold",), stayed_wet=stayed_wet)
        return Reading("", "done", slots, confidence=1.0)

    return Pending(said(True), world.now, on_yes=said(True), on_no=said(False))


def still_wet_question(enclosure: str, world: World) -> Pending:
    """ "Still wet?": yes notes it, no starts the wet time over."""
    wet = Reading("", "rewet", Slots(enclosures=(enclosure,)), confidence=1.0)
    return Pending(wet, world.now, on_yes=wet, on_no=replace(wet, intent="dried_early"))


def smell_question(enclosure: str, world: World) -> Pending:
    """ "Any smell?": with "Dry?" in the same breath a bare yes or no could mean either."""

    def said(smell: bool | None) -> Reading:
        return Reading("", "still_smells", Slots(enclosures=(enclosure,), smell=smell), confidence=1.0)

    round_ = world.state.rounds.get(enclosure)
    if round_ is None or "dry" not in round_.done:
        return Pending(said(None), world.now, missing=("dry", "smell"))
    return Pending(said(None), world.now, missing=("smell",), on_yes=said(True), on_no=said(False))


_ASKS: dict[str, Callable[[str, World], Pending]] = {
    "hold over": wet_question,
    "vouch": wet_question,
    "still wet": still_wet_question,
    "about to dry": still_wet_question,
    "air over": smell_question,
}
