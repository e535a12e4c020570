"""A report that speaks against "ready", while it is asked which enclosure it is of: kept until that is told.

"It's wet again", of two open cleans: whoever asks next whether one may go back has answered nothing, and the report
must not be lost with the question.
"""

from __future__ import annotations

from dataclasses import replace

from assistant.answer.which import open_rounds
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.record.events import Event, Remarked

_REPORTS = ("rewet", "dried_early", "still_smells")


def with_the_report_kept(answer: Answer, reading: Reading, world: World) -> Answer:
    """The same, with the report kept for each enclosure that it may be of, or settled now that it is told of which."""
    if answer.outcome is Outcome.ASK and "enclosure" in answer.missing:
        return replace(answer, events=(*answer.events, *_kept(answer, reading, world)))
    waiting = world.waiting
    told = waiting is not None and "enclosure" in waiting.missing and reading.intent in (*_REPORTS, "done", "undo")
    if waiting is None or not told or answer.outcome is Outcome.ASK:
        return answer
    said = waiting.reading.question
    settled = (Remarked(r.enclosure, said, settled=True) for r in open_rounds(world) if said in r.remarks)
    return replace(answer, events=(*answer.events, *settled))


def _kept(answer: Answer, reading: Reading, world: World) -> tuple[Event, ...]:
    if not _speaks_against(reading):
        return ()
    candidates = answer.details.get("candidates", ())
    fitting = (r for r in open_rounds(world) if r.enclosure in candidates and r.touched)
    return tuple(Remarked(r.enclosure, reading.question) for r in fitting if reading.question not in r.remarks)


def _speaks_against(reading: Reading) -> bool:
    """Something of a sprayed surface that opens a step again, whichever of them it is of."""
    slots = reading.slots
    if reading.intent == "still_smells" and slots.smell is False and not slots.wet:
        return False
    sprayed = reading.intent == "done" and "apply" in slots.steps
    return reading.intent in _REPORTS or sprayed or (reading.intent == "undo" and slots.corrects)
