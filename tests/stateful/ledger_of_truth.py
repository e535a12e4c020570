"""What one enclosure's record amounts to, told a second time: a plain automaton over what happened.

Written from the rules of a round, not from the fold: no step list, no reopening, no times. The walk holds the gate
against it. A clock is not begun, running or over; the walk says which.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from assistant.core.record.events import (
    AgentTouched,
    Away,
    BackTooSoon,
    CleanOnly,
    DriedEarly,
    Event,
    GasMade,
    HoldDoubted,
    KeptWet,
    Paused,
    RoundStarted,
    Sensed,
    StayedWet,
    StepDone,
    StepReopened,
    SurfaceDried,
    SurfaceRinsed,
)

BLEACH, VINEGAR = "sodium hypochlorite", "acetic acid"


@dataclass(frozen=True)
class Truth:
    """One enclosure."""

    open: bool = False
    disinfects: bool = True
    """Not given up, and not a clean from the start."""
    timed: bool = True
    """The agent takes a wet time at all."""
    with_soap: bool = True
    """It has to be washed: vinegar alone needs no soap."""
    out: bool = False
    cleared: bool = False
    washed: bool = False
    sprayed: bool = False
    """Since it was last washed, and not dried early since."""
    clock: str = ""
    """Of the wet time: "", "running", "over"."""
    doubted: bool = False
    vouched: bool = False
    held: bool = False
    """A step after the wet time was taken on its strength."""
    rinsed: bool = False
    dry: bool = False
    aired: bool = False
    """The airing's clock ran out since the rinse."""
    smells: bool = False
    touched: bool = False
    """An agent was on it during this clean."""
    on: frozenset[tuple[str, str]] = frozenset()
    """Agents on the surface: "wet" as sprayed, "rinsed" and not dry yet, "wiped", "wiped dry"."""

    @property
    def served(self) -> bool:
        return self.held or (self.clock == "over" and (self.vouched or not self.doubted))

    @property
    def may_go_back(self) -> bool:
        """Every step that this clean requires is served."""
        washed = self.out and self.cleared and (self.washed or not self.with_soap)
        wet = not self.disinfects or (self.sprayed and (self.served or not self.timed))
        off = not self.touched or (self.rinsed and self.aired)
        return self.open and washed and wet and off and self.dry and not self.smells


def after(truth: Truth, event: Event) -> Truth:
    """The truth after one event about that enclosure."""
    match event:
        case RoundStarted():
            soap = "apply" not in event.steps
            kept = Truth(on=truth.on, touched=bool(truth.on) or (truth.open and truth.touched))
            kept = replace(kept, smells=truth.smells and truth.open, disinfects=not soap, timed="hold" in event.steps)
            return replace(kept, open=True, with_soap="wash" in event.steps)
        case StepDone(step="apply", agent=str() as agent):
            return _sprayed(truth, agent)
        case StepDone():
            return _step(truth, event)
        case KeptWet(agent=str() as agent):
            return replace(truth, on=_with(truth.on, agent), touched=truth.touched or truth.open)
        case AgentTouched():
            return _spoiled(replace(truth, on=_with(truth.on, event.agent), touched=truth.touched or truth.open))
        case GasMade():
            for agent in event.agents:
                truth = replace(truth, on=_with(truth.on, agent), touched=truth.touched or truth.open)
            return _spoiled(truth)
        case DriedEarly():
            return _spoiled(truth)
        case StepReopened():
            return _not_so(truth, event.step)
        case StayedWet():
            return replace(truth, vouched=True)
        case HoldDoubted() | Paused() | Away():
            running = truth.clock == "running" or (truth.clock == "over" and isinstance(event, HoldDoubted | Away))
            return replace(truth, doubted=truth.doubted or running, vouched=truth.vouched and not running)
        case Sensed():
            smells = truth.smells if event.smell is None else event.smell
            return replace(truth, smells=smells and truth.open, dry=truth.dry and not event.wet)
        case SurfaceRinsed():
            return _off(replace(truth, dry=False, aired=truth.aired and not truth.open), event.wiped)
        case SurfaceDried():
            # After a clean was over, water and drying leave it as it was.
            return replace(truth, on=_dried(truth.on), dry=truth.dry or not truth.open)
        case CleanOnly():
            return replace(truth, disinfects=False, timed=False, sprayed=False, clock="", held=False)
        case BackTooSoon():
            reopened = replace(truth, out=False, open=True)
            return _spoiled(reopened) if not truth.open and truth.on else reopened
        case _:
            return truth


def _spoiled(truth: Truth) -> Truth:
    """It has to be sprayed again, and all after that."""
    return replace(
        truth, sprayed=False, clock="", held=False, rinsed=False, dry=False, aired=False, doubted=False, vouched=False
    )


def _sprayed(truth: Truth, agent: str) -> Truth:
    if agent not in (BLEACH, VINEGAR):
        return replace(truth, dry=False)  # soap: no agent to be rinsed off, but it is wet again
    on = _with(truth.on, agent)
    if truth.sprayed and truth.clock == "running" and on == truth.on:
        return truth  # kept wet
    fresh = replace(_spoiled(truth), on=on, touched=True, disinfects=True, timed=agent == BLEACH or truth.timed)
    fresh = replace(fresh, with_soap=agent == BLEACH or truth.with_soap)
    return replace(fresh, sprayed=True, clock="running" if fresh.timed else "")


def _step(truth: Truth, event: StepDone) -> Truth:
    held = truth.held or (event.step in ("hold", "rinse", "dry", "air", "return") and truth.served)
    match event.step:
        case "move out":
            return replace(truth, out=True)
        case "clear":
            return replace(truth, cleared=True)
        case "wash":
            return replace(_spoiled(truth), washed=truth.cleared)
        case "rinse":
            return _off(replace(truth, held=held, dry=False, aired=False), event.wiped, rinsed=True)
        case "dry":
            return replace(truth, held=held, dry=True, on=_dried(truth.on))
        case "return":
            return replace(truth, open=False)
        case _:
            return replace(truth, held=held)


def _not_so(truth: Truth, step: str) -> Truth:
    """Not done after all, and so nothing after it: spray lands on dirt, or water on what was never rinsed."""
    if not truth.open:
        return truth
    off = replace(truth, dry=False, aired=False)
    if step == "dry":
        return off
    off = replace(off, rinsed=False)
    if step == "rinse":
        return off
    return replace(_spoiled(truth), washed=False, cleared=truth.cleared and step != "clear")


def _off(truth: Truth, wiped: bool, rinsed: bool | None = None) -> Truth:
    on = frozenset((agent, "wiped" if wiped and how != "rinsed" else "rinsed") for agent, how in truth.on)
    return replace(truth, on=on, rinsed=truth.rinsed if rinsed is None else rinsed)


def _with(on: frozenset[tuple[str, str]], agent: str) -> frozenset[tuple[str, str]]:
    return frozenset((other, how) for other, how in on if other != agent) | {(agent, "wet")}


def _dried(on: frozenset[tuple[str, str]]) -> frozenset[tuple[str, str]]:
    return frozenset((a, "wiped dry" if how.startswith("wiped") else how) for a, how in on if how != "rinsed")


def makes_gas(truth: Truth, agent: str) -> bool:
    """Bleach and vinegar meet, unless the one that was first is rinsed off and dry."""
    other = {BLEACH: VINEGAR, VINEGAR: BLEACH}.get(agent)
    return any(earlier == other for earlier, _ in truth.on)
