"""Answer -> Reply: every word that the tool says or shows, one module a family.

A wording is a function from the answer to a Line, found by the answer's `message`. Numbers come in as details and are
only formatted here. Nothing here decides anything.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from importlib import import_module
from typing import cast

from assistant.contract import Answer, Line, Outcome, Reading, Reply, World
from assistant.core.round.reminders import Reminder
from assistant.say.wording.before_the_work import told_first
from assistant.say.wording.left_untold import with_what_is_left
from assistant.say.wording.plain import MOST_WORDS
from assistant.say.wording.reminders import reminder_line

Wording = Callable[[Answer], Line]

FAMILIES = (
    "mixing",
    "poured",
    "reckoning",
    "measuring",
    "bleach",
    "making",
    "topping",
    "choosing",
    "what_to_use",
    "does_it_work",
    "may_touch",
    "protecting",
    "the_round",
    "drying",
    "airing",
    "planning",
    "day",
    "shelf",
    "adding",
    "items",
    "putting_away",
    "outbreaks",
    "tubs",
    "harm",
    "talk",
)


def put_into_words(answer: Answer, reading: Reading, reminders: tuple[str, ...], world: World) -> Reply:
    """The reply to one turn."""
    line = with_what_is_left(told_first(line_of(answer), answer), answer)
    if reading.again and answer.outcome is not Outcome.ASK:
        line = _once_more(line, aside=reading.again == "aside")
    return Reply(
        question=reading.question,
        intent=answer.intent,
        outcome=answer.outcome,
        say=line.say,
        show=line.show or line.say,
        values=answer.values,
        missing=answer.missing,
        cautions=tuple(world.facts[caution].says for caution in answer.cautions),
        sources=answer.sources,
        reminders=reminders,
        confidence=reading.confidence,
    )


def _once_more(line: Line, aside: bool) -> Line:
    """The same answer once more, told as that, aloud and on the screen.

    aside: what was said may change it, and is told to be left out.
    """
    told = "Without that:" if aside else "As before:"
    room = MOST_WORDS - len(line.say.split())
    opens = f"{told} " if room > 1 else "Otherwise: " if room else ""
    begins = line.say if line.say.startswith("I ") or not opens else line.say[:1].lower() + line.say[1:]
    return Line(f"{opens}{begins}", f"{told}\n{line.show or line.say}")


def line_of(answer: Answer) -> Line:
    """The words of one answer.

    Fails: KeyError when a message has no wording; a test asks for every message in `answer`.
    """
    return lines_of(answer.message.partition(".")[0])[answer.message](answer)


def lines_of(family: str) -> Mapping[str, Wording]:
    """The wordings of one family."""
    return cast(Mapping[str, Wording], import_module(f"assistant.say.wording.{family}").LINES)


def remind(reminder: Reminder, world: World) -> str:
    """One line for something that came due by itself."""
    return reminder_line(reminder, world)
