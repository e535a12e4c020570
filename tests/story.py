"""A round told in events: the record grows, the clock moves, the state is folded anew each time it is asked for."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta

from assistant.core.record.events import Event, Recorded, RoundStarted, StepDone, Voided
from assistant.core.record.fold import fold, fold_all
from assistant.core.record.state import Round, State
from assistant.core.round.claims import Judgement, judge
from assistant.core.round.gate import Timer, Verdict, may_go_back, timers
from assistant.core.round.reminders import came_due
from assistant.core.round.rounds import STEPS

BEGIN = datetime(2026, 3, 2, 9, 0, tzinfo=UTC)
BLEACH_STEPS = STEPS
CHLORHEXIDINE_STEPS = tuple(step for step in STEPS if step != "air")
DETERGENT_STEPS = ("move out", "clear", "wash", "dry", "return")


@dataclass
class Story:
    """Invented: one tub, a ten-minute wet time, one air change an hour, and two air changes needed (two hours)."""

    now: datetime = BEGIN
    record: list[Recorded] = field(default_factory=list)

    def start(self, enclosure: str = "tub", *, agent: str = "bleach", steps: tuple[str, ...] = BLEACH_STEPS) -> Story:
        return self.tell(RoundStarted(enclosure, agent, steps, hold_s=600.0, air_changes_per_hour=1.0, air_changes=2.0))

    def tell(self, *events: Event) -> Story:
        turn = f"t{len(self.record)}"
        self.record += [Recorded(self.now, turn, event) for event in events]
        return self

    def done(self, *steps: str, enclosure: str = "tub", agent: str = "bleach") -> Story:
        for step in steps:
            spray = step == "apply"
            self.tell(StepDone(enclosure, step, agent=agent if spray else None, hold_s=600.0 if spray else None))
        return self

    def after(self, **span: float) -> Story:
        self.now += timedelta(**span)
        return self

    def undo(self) -> Story:
        return self.tell(Voided(self.state.turns[-1].turn))

    @property
    def state(self) -> State:
        return fold_all(self.record)

    @property
    def folded_one_by_one(self) -> State:
        state = State()
        for entry in self.record:
            state = fold(state, entry)
        return state

    def round(self, enclosure: str = "tub") -> Round:
        return self.state.rounds[enclosure]

    def gate(self, enclosure: str = "tub") -> Verdict:
        return may_go_back(self.state.rounds.get(enclosure), self.now)

    def claim(self, step: str, enclosure: str = "tub", *, stayed_wet: bool | None = None) -> Judgement:
        return judge(self.round(enclosure), step, self.now, stayed_wet=stayed_wet)

    def timers(self) -> tuple[Timer, ...]:
        return timers(self.state, self.now)

    def due(self, since: datetime) -> list[str]:
        return [reminder.kind for reminder in came_due(self.state, since, self.now, 60)]


def ready_to_air(story: Story | None = None) -> Story:
    """Everything done but the airing, which begins now."""
    story = (story or Story()).start().done("move out", "clear", "wash", "apply").after(minutes=10)
    return story.done("rinse").after(minutes=5).done("dry")
