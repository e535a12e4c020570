"""One turn, on one screen: from what was heard to the reply and what to record.

Every entry point (chat, ask, hear, rehearse) calls `take_turn` with the same kind of world and gets the same reply. It
writes nothing: the shell records the events first, then shows and speaks the reply. `speak_up` is the tool's own turn,
for what came due between two of the keeper's.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime

from assistant.answer import answer_to
from assistant.answer.asking import CLAIMS
from assistant.answer.due import clocks_due, due_since, pending_after_reminder
from assistant.answer.harms_told import harms_told
from assistant.contract import Answer, Heard, Outcome, Pending, Reading, Reply, Talk, Turn, World
from assistant.core.harms import KEEPS_WAITING
from assistant.core.record.as_recorded import as_recorded
from assistant.core.record.events import Away, Event, Recorded
from assistant.core.record.fold import fold
from assistant.say.wording import put_into_words, remind

ABOUT_TALK = (None, "repeat", "why", "yes", "no", "undo")
"""Turns that leave what was spoken of as it was."""

PENDING_TURNS = 3
"""Other turns after which a question of the tool's lapses."""


def take_turn(heard: Heard, world: World) -> Turn:
    """One turn of the keeper's: hear -> understand -> answer -> say.

    Gives the reply, the events to record (before the reply is shown), and what the talk remembers.
    """
    world, noted = _caught_up(world)
    reading = world.read(heard, world)
    reminders = due_since(_told_until(world), world) + clocks_due(reading.intent, world)
    answer = answer_to(reading, world)
    reply = put_into_words(answer, reading, tuple(remind(due, world) for due in reminders), world)
    said_last = world.talk.prompt or world.talk.last
    if answer.message in ("talk.repeat", "talk.repeat_at_pace") and said_last is not None:
        reply = replace(reply, say=said_last.say, show=said_last.show)
    pending = _pending_after(world.talk.pending, answer, reading)
    if pending is None or pending.unasked:
        pending = pending_after_reminder(reminders, answer, world) or pending
    return Turn(reply, noted + answer.events, _talk_after(world, reading, answer, reply, pending))


def speak_up(world: World) -> Turn | None:
    """What came due by itself since the last word, as a reply of the tool's own; None: nothing."""
    world = _as_it_stands(world)
    reminders = due_since(_told_until(world), world) + clocks_due(None, world)
    if not reminders:
        return None
    lines = tuple(remind(reminder, world) for reminder in reminders)
    reply = Reply("", None, Outcome.ANSWER, say=" ".join(lines), show="\n".join(lines), reminders=lines)
    before = world.talk.pending
    if before is not None and (world.clocks_parted or before.unasked or not before.waits(world.now)):
        before = None  # a later question takes its place; what was asked before the clocks parted is no longer so
    pending = before or pending_after_reminder(reminders, None, world) or world.talk.pending
    return Turn(reply, (), replace(world.talk, pending=pending, told_until=world.now, prompt=reply))


def _caught_up(world: World) -> tuple[World, tuple[Event, ...]]:
    """The world as it stands, with a note that no shell ran for a while, where a wet time went unwatched."""
    world = _as_it_stands(world)
    if world.away_since is None:
        return world, ()
    away = Away(world.away_since)
    state = fold(world.state, Recorded(world.now, "", away))
    if state.rounds == world.state.rounds:
        return world, ()
    return replace(world, state=state), (away,)


def _as_it_stands(world: World) -> World:
    """The world with the groups and habits that were changed by word of mouth."""
    return replace(world, household=as_recorded(world.household, world.state), written=world.household)


def _told_until(world: World) -> datetime:
    """Never later than now: after a clock was set back, what comes due is told again rather than not at all."""
    return min(world.talk.told_until or world.state.last_at or world.now, world.now)


def _pending_after(before: Pending | None, answer: Answer, reading: Reading) -> Pending | None:
    """What is still waited for: a new question replaces the old; harm and a look at the clocks don't use it up."""
    if answer.pending is not None:
        return answer.pending
    if before is None or reading.intent in ("yes", "no", before.reading.intent):
        return None
    if reading.intent in KEEPS_WAITING:
        return before
    if before.turns_since + 1 >= PENDING_TURNS:
        return None
    return replace(before, turns_since=before.turns_since + 1)


def _talk_after(world: World, reading: Reading, answer: Answer, reply: Reply, pending: Pending | None) -> Talk:
    steps_heard = reading.spoken and answer.intent in CLAIMS and bool(answer.events)
    repeated = answer.message in ("talk.repeat", "talk.repeat_at_pace", "talk.hushed")
    before = world.talk.last_reading
    if before is not None and reading.intent == "yes" and world.talk.pending is not None:
        before = replace(before, doubts=())  # said back, and said yes to
    return Talk(
        pending=pending,
        last=world.talk.last if repeated else reply,
        prompt=world.talk.prompt if repeated else None,
        last_reading=before if reading.intent in ABOUT_TALK else replace(reading, again=""),
        takes_back=steps_heard,
        told_until=world.now,
        harms=harms_told(reading, answer, world),
        germ=(reading.slots.organisms[0], world.now)
        if reading.intent == "outbreak" and reading.slots.organisms
        else world.talk.germ,
    )
