"""What a hearing came to, judged against the same words typed."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import UTC, datetime
from pathlib import Path

from assistant.contract import Heard, Outcome, Reading, World
from assistant.hear.choose import open_recogniser
from assistant.hear.spoken_form import words_of
from assistant.hear.vocabulary import sayable
from assistant.store.english import usage
from assistant.store.keeping import read_household
from assistant.store.packaged import packaged_facts, packaged_weights, read_questions
from assistant.turn import take_turn
from assistant.understand.numbers.corrections import numbers_in, said_number
from assistant.understand.reader import Reader

DEMO = Path(__file__).resolve().parents[2] / "assistant" / "demo" / "keeping.toml"


@dataclass(frozen=True)
class Judged:
    """One clip."""

    said: str
    heard: Heard
    verdict: str
    """right: the same question with the same slots, not asked back. confirmed: the same, after one "yes" to what was
    read back. missed: unsure or refused, or something is asked for, or what is wrong is read back. wrong: another
    number, name or question was taken for certain, or a number let through by a "yes" to others read back right."""
    wrong: str = ""
    """What was wrong when silently so: number, question or name."""
    errors: int = 0
    words: int = 0


@dataclass
class Tally:
    """Counts of many clips."""

    clips: list[Judged] = field(default_factory=list)

    def add(self, judged: Judged) -> None:
        self.clips.append(judged)

    def share(self, *verdicts: str) -> float:
        return sum(clip.verdict in verdicts for clip in self.clips) / len(self.clips)

    @property
    def word_error_rate(self) -> float:
        return sum(clip.errors for clip in self.clips) / sum(clip.words for clip in self.clips)

    @property
    def silently_wrong_numbers(self) -> list[tuple[str, str]]:
        return [(clip.said, clip.heard.text) for clip in self.clips if clip.wrong == "number"]

    def __str__(self) -> str:
        counted = Counter(clip.verdict for clip in self.clips)
        return f"{len(self.clips)} clips, word errors {self.word_error_rate:.3f}, {dict(counted)}"


class DemoListener:
    """The recogniser and the reader of the demo household."""

    def __init__(self, cache: Path, models: Path | None = None) -> None:
        facts = packaged_facts()
        household = read_household(DEMO, facts)
        questions = read_questions()
        said = sayable(questions.values(), household, facts.agents.values(), facts.organisms.values())
        self.recogniser = open_recogniser(said, models or cache / "no models", cache)
        self._reader = Reader(household, facts, questions, *packaged_weights(), usage)
        self._world = World(datetime(2026, 1, 5, 9, tzinfo=UTC), household, facts, questions, self._reader)

    def read(self, heard: Heard) -> Reading:
        return self._reader(heard, self._world)

    def judged(self, said: str, heard: Heard) -> Judged:
        meant, taken = self.read(Heard(said)), self.read(heard)
        verdict, wrong = _verdict(meant, taken, take_turn(heard, self._world).reply.outcome)
        spoken = words_of(said)
        return Judged(said, heard, verdict, wrong, word_errors(spoken, heard.text.split()), len(spoken))


def _verdict(meant: Reading, taken: Reading, outcome: Outcome) -> tuple[str, str]:
    if taken.intent is None:
        return ("right" if meant.intent is None else "missed"), ""
    if taken.intent == meant.intent and taken.slots == meant.slots:
        return ("confirmed" if outcome is Outcome.CONFIRM else "right"), ""
    if outcome in (Outcome.ASK, Outcome.UNSURE, Outcome.REFUSE):
        return "missed", ""
    if outcome is Outcome.CONFIRM:
        return ("wrong", "number") if _waved_through(meant, taken) else ("missed", "")
    if taken.intent != meant.intent:
        return "wrong", "question"
    if not _within(_numbers(taken), _numbers(meant)):
        return "wrong", "number"
    if not _within(_names(taken), _names(meant)):
        return "wrong", "name"
    # Part of what was said is lacking: the tool asks for it.
    return "missed", ""


def _waved_through(meant: Reading, taken: Reading) -> bool:
    """Whether all that is read back is right, so that a "yes" lets through a wrong number beside it."""
    if taken.intent != meant.intent or any(doubt.kind == "hearing" for doubt in taken.doubts):
        return False  # all of it is read back
    right = {said_number(number) for number in numbers_in(_numbers(meant))}
    wrong = {said_number(number) for number in numbers_in(_numbers(taken))} - right
    return bool(wrong) and not wrong & {doubt.heard for doubt in taken.doubts}


def _numbers(reading: Reading) -> list[object]:
    slots = reading.slots
    return [*slots.mixes, *slots.volumes, *slots.durations, *slots.numbers, *slots.temperatures]


def _names(reading: Reading) -> list[object]:
    slots = reading.slots
    named = (slots.agents, slots.stocks, slots.bottles, slots.enclosures, slots.organisms, slots.steps)
    return [name for kind in named for name in kind]


def _within(taken: list[object], meant: list[object]) -> bool:
    return all(thing in meant for thing in taken)


def word_errors(said: Sequence[str], heard: Sequence[str]) -> int:
    """Words put in, left out or changed (edit distance)."""
    row = list(range(len(heard) + 1))
    for i, word in enumerate(said, start=1):
        corner, row[0] = row[0], i
        for j, other in enumerate(heard, start=1):
            corner, row[j] = row[j], min(row[j] + 1, row[j - 1] + 1, corner + (word != other))
    return row[-1]
