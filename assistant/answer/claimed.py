"""`done`: the keeper says that steps are done. Each is judged; what fits is recorded, what doesn't is answered.

Of several steps in one sentence those up to the gap are recorded. A claim that an agent touched a surface is kept even
where it can't count as a step, because agents that must not meet don't care about the order of a round.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace

from assistant.answer.asking import ask
from assistant.answer.meeting import agent_of, gas_made
from assistant.answer.plan import (
    Supply,
    airing_with,
    basis_of,
    forbidden,
    seconds_of,
    supply_in,
    supply_of,
    wet_time_of,
)
from assistant.answer.which import open_rounds, which_rounds
from assistant.contract import Answer, Outcome, Pending, Reading, World
from assistant.core.claims import Judgement, judge
from assistant.core.events import (
    AgentTouched,
    BackTooSoon,
    DriedEarly,
    Event,
    HoldDoubted,
    Recorded,
    StayedWet,
    StepDone,
    SurfaceDried,
    SurfaceRinsed,
    WindowsOpened,
)
from assistant.core.fold import fold
from assistant.core.rounds import airing_left_s, in_order, is_open, next_step
from assistant.core.state import Round, State
from assistant.core.together import uncleared


@dataclass(frozen=True)
class _Told:
    """What one enclosure's claim came to."""

    enclosure: str
    recorded: tuple[str, ...] = ()
    trouble: Answer | None = None


@dataclass
class _Ledger:
    """The state as it grows while the steps of one sentence are judged in turn."""

    state: State
    world: World
    wiped: bool
    """The rinse was a wiping with clean water."""
    events: list[Event] = field(default_factory=list)

    def note(self, *events: Event) -> None:
        for event in events:
            self.state = fold(self.state, Recorded(self.world.now, "", event))
            self.events.append(event)


def done(reading: Reading, world: World) -> Answer:
    """Records the steps that were claimed, as far as they fit, and says what is next or what is missing."""
    said = reading.slots.steps
    ledger = _Ledger(world.state, world, wiped="wipe" in said and "rinse" not in said)
    claim = _with_steps(reading, world)
    if isinstance(claim, Answer):
        return claim
    steps = claim.slots.steps
    names = which_rounds(claim, world, lambda round_: _would_fit(round_, steps[0], world)) if steps else ()
    if isinstance(names, Answer):
        return names
    if steps and not names:
        return _nothing_open(claim, world)
    told = [_claims_for(name, claim, ledger) for name in names]
    _windows(claim, ledger)
    return _answer(claim, told, ledger)


def _with_steps(reading: Reading, world: World) -> Reading | Answer:
    """The reading with its steps in order; a bare "done" means the step that the tool last asked for."""
    slots = reading.slots
    steps = in_order(frozenset("rinse" if step == "wipe" else step for step in slots.steps))
    if steps or slots.openings is not None:
        return replace(reading, slots=replace(slots, steps=steps))
    rounds = [r for r in open_rounds(world) if not slots.enclosures or r.enclosure in slots.enclosures]
    if not rounds:
        return _nothing_open(reading, world)
    if len(rounds) > 1:
        return ask(reading, world, ("step",), "the_round.done_what", {})
    return replace(reading, slots=replace(slots, steps=(next_step(rounds[0], world.now),)))


def _would_fit(round_: Round, step: str, world: World) -> bool:
    return judge(round_, step, world.now).fit in ("fits", "vouch", "early")


# ---------------------------------------------------------------- one enclosure


def _claims_for(name: str, reading: Reading, ledger: _Ledger) -> _Told:
    """Judges each step claimed for one enclosure in turn; stops at the first that can't be recorded.

    What is on record already doesn't stop it. What the rest of the sentence says of the surface and the animal is kept.
    """
    recorded: list[str] = []
    already: Answer | None = None
    for place, step in enumerate(reading.slots.steps):
        trouble = _claim(name, step, reading, ledger)
        if trouble is None:
            recorded.append(step)
        elif trouble.message == "the_round.already":
            already = trouble
        else:
            _keep_the_rest(name, reading.slots.steps[place + 1 :], reading, ledger)
            return _Told(name, tuple(recorded), trouble=trouble)
    return _Told(name, tuple(recorded), trouble=None if recorded else already)


def _keep_the_rest(name: str, steps: tuple[str, ...], reading: Reading, ledger: _Ledger) -> None:
    """Of steps claimed after one that wasn't recorded: that an agent touched the surface, that the animal is inside."""
    round_ = ledger.state.rounds.get(name)
    if round_ is None or not is_open(round_):
        return
    if "apply" in steps:
        supply = supply_in(reading, ledger.world) or supply_of(round_.agent, round_.bottle, ledger.world)
        ledger.note(AgentTouched(name, supply.agent.id))
    if "return" in steps:
        ledger.note(BackTooSoon(name))


def _claim(name: str, step: str, reading: Reading, ledger: _Ledger) -> Answer | None:
    """Records one step of one enclosure, or gives what stands against it."""
    round_ = ledger.state.rounds.get(name)
    world = replace(ledger.world, state=ledger.state)
    if step == "apply":
        return _sprayed(name, round_ if is_open(round_) else None, reading, ledger)
    if round_ is None or not is_open(round_):
        return None if _off_the_surface(name, step, ledger) else _nothing_open(reading, world, name)
    judgement = judge(round_, step, world.now, stayed_wet=reading.slots.stayed_wet)
    if step == "hold" and reading.slots.stayed_wet is False and judgement.fit in ("early", "vouch"):
        ledger.note(DriedEarly(name))
        return _unrecorded(reading, "the_round.dried", world, name, judgement)
    if judgement.fit in ("fits", "not needed"):
        if step == "rinse" and ledger.wiped and not _wipe_will_do(round_, ledger):
            return _unrecorded(reading, "the_round.wipe_will_not_do", world, name, judgement)
        if ("hold" in round_.steps and judgement.gap == "hold") or (step == "hold" and judgement.fit == "fits"):
            ledger.note(StayedWet(name))
        ledger.note(StepDone(name, step, wiped=ledger.wiped))
        return None
    if judgement.fit == "gap" and _off_the_surface(name, step, ledger):
        return None
    return _against(judgement, name, reading, ledger)


def _wipe_will_do(round_: Round, ledger: _Ledger) -> bool:
    """Whether two wipes may stand for the rinse: not after bleach, the round's own or another's on that surface."""
    on_it = {round_.agent, *(touch.agent for touch in ledger.state.surfaces.get(round_.enclosure, ()))}
    return all(agent_of(agent, ledger.world).wipe_will_do for agent in on_it)


def _against(judgement: Judgement, name: str, reading: Reading, ledger: _Ledger) -> Answer:
    """Why a step isn't recorded, and what is asked."""
    world = replace(ledger.world, state=ledger.state)
    match judgement.fit:
        case "gap":
            return _was_it_done(judgement, name, reading, world)
        case "vouch":
            return _did_it_stay_wet(judgement, name, reading, world)
        case "mid-hold":
            ledger.note(HoldDoubted(name))
            return _really_mid_hold(judgement, name, reading, world)
        case "too soon back":
            ledger.note(BackTooSoon(name))
            return _unrecorded(reading, "the_round.back_too_soon", world, name, judgement)
        case "already":
            return _unrecorded(reading, "the_round.already", world, name, judgement)
        case "no figure":
            return _unrecorded(reading, "the_round.no_figure", world, name, judgement)
        case _:
            return _unrecorded(reading, "the_round.early", world, name, judgement)


def _was_it_done(judgement: Judgement, name: str, reading: Reading, world: World) -> Answer:
    """ "Was that done?": yes records the missing step, then the claimed one."""
    both = _about(reading, name, (judgement.gap, *_from(judgement.step, reading)))
    return _asking(reading, "the_round.gap", world, name, judgement, both)


def _did_it_stay_wet(judgement: Judgement, name: str, reading: Reading, world: World) -> Answer:
    """ "Did it stay wet?": yes serves the hold and records the claim, no opens it again."""
    steps = tuple(dict.fromkeys(("hold", *_from(judgement.step, reading))))
    wet = _about(reading, name, steps, stayed_wet=True)
    dry = _about(reading, name, ("hold",), stayed_wet=False)
    return _asking(reading, "the_round.stayed_wet", world, name, judgement, wet, dry)


def _really_mid_hold(judgement: Judgement, name: str, reading: Reading, world: World) -> Answer:
    """A later step while the wet time runs: if it is true, the wet time is lost; until that is told, it is in doubt."""
    lost = _about(reading, name, ("hold",), stayed_wet=False)
    return _asking(reading, "the_round.mid_hold", world, name, judgement, lost)


def _about(reading: Reading, name: str, steps: tuple[str, ...], stayed_wet: bool | None = None) -> Reading:
    slots = replace(reading.slots, enclosures=(name,), every_enclosure=False, steps=steps, stayed_wet=stayed_wet)
    return replace(reading, intent="done", slots=slots, doubts=())


def _from(step: str, reading: Reading) -> tuple[str, ...]:
    """The steps claimed, from that one on."""
    steps = reading.slots.steps
    return steps[steps.index(step) :] if step in steps else (step,)


# ---------------------------------------------------------------- spraying


def _sprayed(name: str, round_: Round | None, reading: Reading, ledger: _Ledger) -> Answer | None:
    """Records that an agent was put on, or keeps at least that it touched the surface."""
    world = replace(ledger.world, state=ledger.state)
    enclosure = world.household.enclosure(name)
    supply = supply_in(reading, world) or (supply_of(round_.agent, round_.bottle, world) if round_ else None)
    if supply is None or enclosure is None:
        return _nothing_open(reading, world, name)
    touch = uncleared(world.state.surfaces.get(name, ()), supply.agent, world.facts)
    refusal = forbidden(reading, supply, enclosure, world)
    if touch is not None and refusal is not None:
        ledger.note(AgentTouched(name, supply.agent.id))
        met = gas_made(reading.intent, (touch.agent, supply.agent.id), None, name, world)
        return met if met is not None else refusal
    if refusal is not None or round_ is None:
        ledger.note(AgentTouched(name, supply.agent.id))
        return refusal or _nothing_open(reading, world, name)
    judgement = judge(_round_with(round_, supply), "apply", world.now)
    if judgement.fit == "gap":
        ledger.note(AgentTouched(name, supply.agent.id))
        if round_.put_back:
            return _unrecorded(reading, "the_round.animal_inside", world, name, judgement, Outcome.REFUSE)
        return _was_it_done(judgement, name, reading, world)
    if supply.agent.needs_cold and not reading.slots.heat_cold:
        cold = replace(reading, slots=replace(_about(reading, name, _from("apply", reading)).slots, heat_cold=True))
        return _asking(reading, "the_round.is_it_cold", world, name, judgement, cold)
    ledger.note(_step_of_spraying(name, round_, supply, world))
    return None


def _round_with(round_: Round, supply: Supply) -> Round:
    """The round with the steps that this agent adds to it."""
    if supply.agent.id == round_.agent:
        return round_
    return replace(round_, steps=in_order(frozenset(round_.steps) | frozenset(supply.agent.steps)))


def _step_of_spraying(name: str, round_: Round, supply: Supply, world: World) -> StepDone:
    wet = wet_time_of(supply, world.household.enclosure(name), round_.organism, world)
    steps = _round_with(round_, supply).steps
    return StepDone(
        name,
        "apply",
        agent=supply.agent.id,
        bottle=supply.bottle.name if supply.bottle else None,
        hold_s=seconds_of(wet),
        basis=basis_of(wet),
        steps=steps if steps != round_.steps else None,
    )


# ---------------------------------------------------------------- off the surface, and windows


def _off_the_surface(name: str, step: str, ledger: _Ledger) -> bool:
    """Keeps a rinse or a drying that no round has a place for, where something is still on the surface."""
    touches = ledger.state.surfaces.get(name, ())
    if step == "rinse" and touches:
        ledger.note(SurfaceRinsed(name, wiped=ledger.wiped))
        return True
    if step == "dry" and any(touch.rinsed or touch.wiped for touch in touches):
        ledger.note(SurfaceDried(name))
        return True
    return False


def _windows(reading: Reading, ledger: _Ledger) -> None:
    """An opening said counts for every open round that has to air: they stand in one room."""
    if reading.slots.openings is None:
        return
    rate, _ = airing_with(reading.slots.openings, ledger.world)
    for round_ in open_rounds(replace(ledger.world, state=ledger.state)):
        if "air" in round_.steps:
            ledger.note(WindowsOpened(round_.enclosure, reading.slots.openings, rate))


# ---------------------------------------------------------------- the answer


def _answer(reading: Reading, told: list[_Told], ledger: _Ledger) -> Answer:
    """One answer for all that was claimed: the first trouble, or what is recorded and what comes next."""
    events = tuple(ledger.events)
    recorded = {one.enclosure: one.recorded for one in told}
    trouble = next((one.trouble for one in told if one.trouble is not None), None)
    if trouble is not None:
        return replace(trouble, events=events, details={**trouble.details, "recorded": recorded})
    if reading.slots.openings is not None and not events:
        return _nothing_open(reading, ledger.world)
    rounds = {name: ledger.state.rounds.get(name) for name in recorded}
    windows = tuple(event for event in events if isinstance(event, WindowsOpened))
    first = told[0].enclosure if told else windows[0].enclosure
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "the_round.recorded" if told else "the_round.windows",
        details={
            "recorded": recorded,
            "rounds": rounds,
            "windows": windows,
            "soap_again": tuple(n for n in recorded if _soap_again(n, recorded[n], ledger.world)),
            "airing": {
                r.enclosure: airing_left_s(r, ledger.world.now)
                for r in open_rounds(replace(ledger.world, state=ledger.state))
            },
            "next": {n: next_step(r, ledger.world.now) for n, r in rounds.items() if r is not None and is_open(r)},
            "agents": {n: ledger.world.facts.agents[r.agent] for n, r in rounds.items() if r is not None},
            "enclosures": {n: ledger.world.household.enclosure(n) for n in recorded},
        },
        values={
            "recorded": True,
            "enclosure": first,
            "enclosures": tuple(recorded) or tuple(window.enclosure for window in windows),
            "steps": reading.slots.steps,
            "next": next_step(r, ledger.world.now) if (r := ledger.state.rounds.get(first)) and is_open(r) else None,
        },
        cautions=_cautions(reading.slots.steps),
        events=events,
    )


def _soap_again(name: str, steps: tuple[str, ...], before: World) -> bool:
    """Washed after spraying: soap undoes it."""
    round_ = before.state.rounds.get(name)
    return "wash" in steps and "apply" not in steps and round_ is not None and "apply" in round_.done


def _cautions(steps: tuple[str, ...]) -> tuple[str, ...]:
    """Safety lines that belong to a step just done."""
    if "return" in steps:
        return ("caution-hands",)
    return ("caution-heat-unplug",) if "move out" in steps else ()


def _unrecorded(
    reading: Reading,
    message: str,
    world: World,
    name: str,
    judgement: Judgement,
    outcome: Outcome = Outcome.ANSWER,
) -> Answer:
    """An answer to a step that isn't recorded."""
    round_ = world.state.rounds.get(name)
    return Answer(
        reading.intent,
        outcome,
        message,
        details={
            "enclosure": world.household.enclosure(name),
            "round": round_,
            "judgement": judgement,
            "agent": world.facts.agents[round_.agent] if round_ is not None else None,
        },
        values={
            "recorded": False,
            "enclosure": name,
            "enclosures": (name,),
            "steps": reading.slots.steps,
            "seconds": judgement.left_s,
            "next": next_step(round_, world.now) if round_ is not None and is_open(round_) else None,
        },
    )


def _asking(
    reading: Reading,
    message: str,
    world: World,
    name: str,
    judgement: Judgement,
    on_yes: Reading,
    on_no: Reading | None = None,
) -> Answer:
    """The same, where it asks, and what "yes" and "no" then mean."""
    return replace(
        _unrecorded(reading, message, world, name, judgement, Outcome.ASK),
        missing=(judgement.gap or "answer",),
        pending=Pending(on_yes, world.now, on_yes=on_yes, on_no=on_no),
    )


def _nothing_open(reading: Reading, world: World, name: str | None = None) -> Answer:
    """No round is open there: asks what it takes to start one; nothing but the touch of an agent is kept."""
    names = (name,) if name is not None else reading.slots.enclosures[:1]
    slots = replace(reading.slots, enclosures=names, steps=(), openings=None, stayed_wet=None)
    start = replace(reading, intent="start", slots=slots, doubts=())
    missing = ("bottle", "stock", "agent") if names else ("enclosure",)
    details = {"enclosure": names[0] if names else None}
    answer = ask(start, world, missing, "the_round.done_where", details, recorded=False)
    return replace(answer, intent=reading.intent)
