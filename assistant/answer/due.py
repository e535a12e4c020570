"""What comes due by itself: wet times and airings that ended, animals that wait."""

from __future__ import annotations

from datetime import datetime

from assistant.contract import Answer, Pending, Reading, Slots, World
from assistant.core.gate import Reminder, came_due


def due_since(since: datetime, world: World) -> tuple[Reminder, ...]:
    """What came due after `since`, up to now, oldest first."""
    return came_due(world.state, since, world.now, world.household.habits.tub_minutes)


def pending_after_reminder(reminders: tuple[Reminder, ...], answer: Answer | None, world: World) -> Pending | None:
    """The question that a reminder leaves open: did it stay wet? Only when it is the one thing asked."""
    if answer is not None and answer.pending is not None:
        return None
    asking = [reminder for reminder in reminders if reminder.kind in ("hold over", "vouch")]
    if len(asking) != 1:
        return None
    return wet_question(asking[0].thing, world)


def wet_question(enclosure: str, world: World) -> Pending:
    """ "Did it stay wet the whole time?": yes serves the hold, no opens it again."""

    def said(stayed_wet: bool) -> Reading:
        slots = Slots(enclosures=(enclosure,), steps=("hold",), stayed_wet=stayed_wet)
        return Reading("", "done", slots, confidence=1.0)

    return Pending(said(True), world.now, on_yes=said(True), on_no=said(False))
