"""`done`: the keeper says that steps are done. Each is judged; what fits is recorded, what doesn't is answered.

Of several steps in one sentence those up to the gap are recorded. A claim that an agent touched a surface is kept even
where it can't count as a step, because agents that must not meet don't care about the order of a round.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from assistant.answer.asking import ask
from assistant.answer.bottle_used import is_spent, taken_as_set
from assistant.answer.claimed_where import of_its_own_bottle, which_are_meant
from assistant.answer.meeting import agent_of, touched_by
from assistant.answer.on_record import Ledger, about, asking, nothing_open, steps_from, told_of, unrecorded, was_it_done
from assistant.answer.plan import Supply, airing_with, supply_in, supply_of
from assistant.answer.spraying import sprayed
from assistant.answer.way_on import give_up_question, no_figure, step_now, way_on
from assistant.answer.which import open_rounds
from assistant.contract import Answer, Outcome, Pending, Reading, World
from assistant.core.record.events import (
    BackTooSoon,
    DriedEarly,
    HoldDoubted,
    Remarked,
    StayedWet,
    StepDone,
    SurfaceDried,
    SurfaceRinsed,
    WindowsOpened,
)
from assistant.core.record.state import Round
from assistant.core.round.claims import Judgement, judge
from assistant.core.round.rounds import airing_left_s, hold_left_s, in_order, is_open, waits_on_hold


@dataclass(frozen=True)
class _Told:
    """What one enclosure's claim came to."""

    enclosure: str
    recorded: tuple[str, ...] = ()
    trouble: Answer | None = None


def done(reading: Reading, world: World) -> Answer:
    """Records the steps that were claimed, as far as they fit, and says what is next or what is missing."""
    if reading.slots.asked_of_harm == "bare" and not reading.slots.enclosures:
        return ask(reading, world, ("enclosure",), "the_round.of_the_clean", {"rounds": open_rounds(world)})
    claim = _with_steps(reading, world)
    if isinstance(claim, Answer):
        return claim
    claim = of_its_own_bottle(claim, world)
    ledger = Ledger(world.state, world, wiped=claim.slots.wiped)
    steps = claim.slots.steps
    names = which_are_meant(claim, steps[0], world) if steps else ()
    if isinstance(names, Answer):
        return names
    if steps and not names:
        return nothing_open(claim, world)
    apart = dict(claim.slots.apart)
    names = tuple(name for name in names if name in apart) if apart else names
    told = []
    for name in names:
        its_own = apart.get(name)
        ledger.wiped = claim.slots.wiped if its_own is None else "wipe" in its_own and "rinse" not in its_own
        told.append(_claims_for(name, claim if its_own is None else _of_one(claim, name, its_own), ledger))
    ledger.note(*told_of(names, claim))
    _windows(claim, ledger)
    return _answer(claim, told, ledger)


def _of_one(claim: Reading, name: str, said: tuple[str, ...]) -> Reading:
    """What is told of one enclosure, where others are told of otherwise."""
    wet = name not in claim.slots.dried_apart if "hold" in said and claim.slots.dried_apart else None
    return about(claim, name, _as_steps(said), wet)


def _as_steps(said: tuple[str, ...]) -> tuple[str, ...]:
    """Steps as they were said, in the order of a round: a wipe stands where the rinse does."""
    return in_order(frozenset("rinse" if step == "wipe" else step for step in said))


def _with_steps(reading: Reading, world: World) -> Reading | Answer:
    """The reading with its steps in order; a bare "done" means the step that the tool last asked for."""
    slots = reading.slots
    if "wipe" in slots.steps:
        slots = replace(slots, wiped="rinse" not in slots.steps)  # kept for whatever a later "yes" records
    steps = _as_steps(slots.steps)
    if steps or slots.openings is not None:
        return replace(reading, slots=replace(slots, steps=steps))
    rounds = [r for r in open_rounds(world) if not slots.enclosures or r.enclosure in slots.enclosures]
    if not rounds:
        return nothing_open(reading, world)
    if any(doubt.kind == "meaning" for doubt in reading.doubts):
        return _which_step(replace(reading, doubts=()), rounds, world)
    if len(rounds) > 1:
        return ask(reading, world, ("step",), "the_round.done_what", {})
    waits = waits_on_hold(rounds[0]) and not no_figure(rounds[0])  # whether it stayed wet is to be told first
    return replace(reading, slots=replace(slots, steps=("hold" if waits else step_now(rounds[0], world),)))


def _which_step(reading: Reading, rounds: list[Round], world: World) -> Answer:
    """Something is said to be done, in words that name no step: is it the one that comes next?"""
    details = {"rounds": {round_.enclosure: step_now(round_, world) for round_ in rounds}}
    asked = ask(reading, world, ("step",), "the_round.which_step", details)
    if len(rounds) != 1 or waits_on_hold(rounds[0]):
        return asked  # whether it stayed wet is a question of its own
    step = step_now(rounds[0], world)
    done = about(reading, rounds[0].enclosure, (step,))
    return replace(asked, pending=Pending(reading, world.now, missing=("step",), on_yes=done))


# ---------------------------------------------------------------- one enclosure


def _claims_for(name: str, reading: Reading, ledger: Ledger) -> _Told:
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
        elif trouble.message == "the_round.early" and step == "hold" and _COMES_OFF & {*reading.slots.steps[place:]}:
            continue  # "ten minutes are up, rinsed it", while it runs: of the rinse it has to be asked
        else:
            rest = reading.slots.steps[place + 1 :]
            _keep_the_rest(name, rest, reading, ledger)
            if "return" in rest and is_open(ledger.state.rounds.get(name)):
                trouble = _back_too_soon(
                    Judgement("too soon back", "return"), name, reading, ledger
                )  # the most pressing
            return _Told(name, tuple(recorded), trouble=trouble)
    return _Told(name, tuple(recorded), trouble=None if recorded else already)


_COMES_OFF = frozenset({"rinse", "dry"})
"""Steps that end a wet time, whatever the clock says."""


def _keep_the_rest(name: str, steps: tuple[str, ...], reading: Reading, ledger: Ledger) -> None:
    """Of steps claimed after one that wasn't recorded: that an agent touched the surface, that the animal is inside."""
    round_ = ledger.state.rounds.get(name)
    if round_ is None or not is_open(round_):
        return
    if "apply" in steps:
        supply = supply_in(reading, ledger.world) or supply_of(round_.agent, round_.bottle, ledger.world)
        ledger.note(touched_by(name, supply.agent.id, ledger.world))
    if "return" in steps:
        ledger.note(BackTooSoon(name))


def _claim(name: str, step: str, reading: Reading, ledger: Ledger) -> Answer | None:
    """Records one step of one enclosure, or gives what stands against it."""
    round_ = ledger.state.rounds.get(name)
    world = replace(ledger.world, state=ledger.state)
    if step == "apply":
        return sprayed(name, round_ if is_open(round_) else None, reading, ledger)
    if round_ is None or not is_open(round_):
        return None if _off_the_surface(name, step, ledger) else nothing_open(reading, world, name)
    judgement = judge(round_, step, world.now, stayed_wet=reading.slots.stayed_wet)
    if step == "hold" and reading.slots.stayed_wet is False and round_.hold is not None:
        # Whatever else stands open, an animal put back among it: that it dried is never dropped.
        ledger.note(DriedEarly(name))
        if reading.slots.confirmed and round_.remarks:
            ledger.note(Remarked(name, round_.remarks[-1], settled=True))
        return unrecorded(reading, "the_round.dried", world, name, judgement)
    if step == "move out" and round_.put_back and not (reading.slots.shut_in or reading.slots.confirmed):
        return _out_and_shut_in(judgement, name, reading, world)
    if step == "return" and judgement.fit == "fits" and round_.remarks:
        if not reading.slots.confirmed:
            return _settled_first(judgement, name, reading, world)
        ledger.note(Remarked(name))
    if judgement.fit in ("fits", "not needed"):
        if step == "rinse" and ledger.wiped and not _wipe_will_do(round_, ledger):
            return unrecorded(reading, "the_round.wipe_will_not_do", world, name, judgement)
        if ("hold" in round_.steps and judgement.gap == "hold") or (step == "hold" and judgement.fit == "fits"):
            ledger.note(StayedWet(name))
        ledger.note(StepDone(name, step, wiped=ledger.wiped))
        return None
    if judgement.fit == "gap" and _off_the_surface(name, step, ledger):
        return None
    return _against(judgement, name, reading, ledger)


def _wipe_will_do(round_: Round, ledger: Ledger) -> bool:
    """Whether two wipes may stand for the rinse: not after bleach, the round's own or another's on that surface."""
    on_it = {round_.agent, *(touch.agent for touch in ledger.state.surfaces.get(round_.enclosure, ()))}
    return all(agent_of(agent, ledger.world).wipe_will_do for agent in on_it)


def _against(judgement: Judgement, name: str, reading: Reading, ledger: Ledger) -> Answer:
    """Why a step isn't recorded, and what is asked."""
    world = replace(ledger.world, state=ledger.state)
    match judgement.fit:
        case "gap":
            return was_it_done(judgement, name, reading, world)
        case "vouch":
            return _did_it_stay_wet(judgement, name, reading, world)
        case "mid-hold":
            ledger.note(HoldDoubted(name), Remarked(name, reading.question))  # left open, it is asked at the end
            return _really_mid_hold(judgement, name, reading, world)
        case "too soon back":
            ledger.note(BackTooSoon(name))
            return _back_too_soon(judgement, name, reading, ledger)
        case "already":
            return unrecorded(reading, "the_round.already", world, name, judgement)
        case "smells":
            return unrecorded(reading, "the_round.smells_still", world, name, judgement)
        case "no figure" if judgement.step == "rinse" and not _only_wiped(ledger.state.rounds.get(name), ledger):
            ledger.note(DriedEarly(name), SurfaceRinsed(name, wiped=ledger.wiped))  # off it is, served it never was
            return unrecorded(reading, "the_round.rinsed_off", world, name, judgement)
        case "no figure":
            return unrecorded(reading, "the_round.no_figure", world, name, judgement)
        case _:
            return unrecorded(reading, "the_round.early", world, name, judgement)


def _back_too_soon(judgement: Judgement, name: str, reading: Reading, ledger: Ledger) -> Answer:
    """An animal that is inside: out again, with water and the vet where it may have touched a product."""
    world = replace(ledger.world, state=ledger.state)
    wet = world.state.rounds[name].touched or bool(world.state.surfaces.get(name))
    return unrecorded(reading, "the_round.back_too_soon" if wet else "the_round.out_first", world, name, judgement)


def _only_wiped(round_: Round | None, ledger: Ledger) -> bool:
    """Wiped where only a rinse will do."""
    return round_ is not None and ledger.wiped and not _wipe_will_do(round_, ledger)


def _did_it_stay_wet(judgement: Judgement, name: str, reading: Reading, world: World) -> Answer:
    """ "Did it stay wet?": yes serves the hold and records the claim, no opens it again."""
    steps = tuple(dict.fromkeys(("hold", *steps_from(judgement.step, reading))))
    wet = about(reading, name, steps, stayed_wet=True)
    dry = about(reading, name, ("hold",), stayed_wet=False)
    return asking(reading, "the_round.stayed_wet", world, name, judgement, wet, dry)


def _settled_first(judgement: Judgement, name: str, reading: Reading, world: World) -> Answer:
    """Back in, though something that was told isn't settled: "yes" settles it and records the return."""
    back = about(reading, name, steps_from("return", reading), reading.slots.stayed_wet)
    back = replace(back, slots=replace(back.slots, confirmed=True))
    asked = asking(reading, "the_round.is_it_settled", world, name, judgement, back)
    return replace(asked, details={**asked.details, "said": world.state.rounds[name].remarks})


def _out_and_shut_in(judgement: Judgement, name: str, reading: Reading, world: World) -> Answer:
    """Out again after it was put back too soon: it counts once it is shut in, so that it goes back no second time."""
    out = about(reading, name, steps_from("move out", reading), reading.slots.stayed_wet)
    out = replace(out, slots=replace(out.slots, confirmed=True))
    return asking(reading, "the_round.out_and_shut_in", world, name, judgement, out)


def _really_mid_hold(judgement: Judgement, name: str, reading: Reading, world: World) -> Answer:
    """A later step while the wet time runs: if it is true, the wet time is lost; until that is told, it is in doubt."""
    lost = about(reading, name, ("hold",), stayed_wet=False)
    lost = replace(lost, slots=replace(lost.slots, confirmed=True))
    not_so = Answer(
        "no",
        Outcome.ANSWER,
        "talk.not_recorded",
        details={"steps": lost.slots.steps},
        events=(Remarked(name, reading.question, settled=True),),
    )
    asked = asking(reading, "the_round.mid_hold", world, name, judgement, lost)
    return replace(asked, pending=Pending(lost, world.now, on_yes=lost, on_no=not_so))


# ---------------------------------------------------------------- off the surface, and windows


def _off_the_surface(name: str, step: str, ledger: Ledger) -> bool:
    """Keeps a rinse or a drying that no round has a place for, where something is still on the surface."""
    touches = ledger.state.surfaces.get(name, ())
    if step == "rinse" and touches:
        ledger.note(SurfaceRinsed(name, wiped=ledger.wiped))
        return True
    if step == "dry" and any(touch.rinsed or touch.wiped for touch in touches):
        ledger.note(SurfaceDried(name))
        return True
    return False


def _windows(reading: Reading, ledger: Ledger) -> None:
    """An opening said counts for every open round that has to air: they stand in one room."""
    if reading.slots.openings is None:
        return
    rate, _ = airing_with(reading.slots.openings, ledger.world)
    shut = reading.slots.openings == 0
    said = reading.slots.when if shut or not reading.slots.steps else None  # "rinsed an hour ago, window's open"
    since = said.at if said is not None and said.at < ledger.world.now else None
    for round_ in open_rounds(replace(ledger.world, state=ledger.state)):
        if "air" in round_.steps:
            if reading.slots.shut_before:
                never, _ = airing_with(0, ledger.world)
                ledger.note(WindowsOpened(round_.enclosure, 0, never, min(round_.done.values(), default=None)))
            ledger.note(WindowsOpened(round_.enclosure, reading.slots.openings, rate, since))


def _airing_waits_for(round_: Round) -> str:
    """What an airing that hasn't begun still needs."""
    return "rinsed" if "rinse" in round_.steps and "rinse" not in round_.done else "dry"


# ---------------------------------------------------------------- the answer


def _answer(reading: Reading, told: list[_Told], ledger: Ledger) -> Answer:
    """One answer for all that was claimed: the first trouble, or what is recorded and what comes next."""
    events = tuple(ledger.events)
    if any(one.recorded for one in told):  # "both are out": of the one that was, there is no more to say
        told = [one for one in told if one.trouble is None or one.trouble.message != "the_round.already"]
    recorded = {one.enclosure: one.recorded for one in told}
    trouble = next((one.trouble for one in told if one.trouble is not None), None)
    if trouble is not None:
        return replace(trouble, events=events, details={**trouble.details, "recorded": recorded})
    if reading.slots.openings is not None and not events:
        return nothing_open(reading, ledger.world)
    rounds = {name: ledger.state.rounds.get(name) for name in recorded}
    after = replace(ledger.world, state=ledger.state)
    ways = {name: way_on(r, after) for name, r in rounds.items() if r is not None and is_open(r)}
    sprayed_now = {n: r for n, r in rounds.items() if r is not None and "apply" in recorded[n]}
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
            "waits_for": _airing_waits_for(ledger.state.rounds[windows[0].enclosure]) if windows else "",
            "sprayed_instead": reading.slots.corrects,
            "soap_again": tuple(n for n in recorded if _soap_again(n, recorded[n], ledger.world)),
            "airing": {
                r.enclosure: airing_left_s(r, ledger.world.now)
                for r in open_rounds(replace(ledger.world, state=ledger.state))
            },
            "hold_left": {
                n: hold_left_s(r.hold, ledger.world.now) for n, r in sprayed_now.items() if r.hold is not None
            },
            "next": {name: way.step for name, way in ways.items()},
            "ways": ways,
            "taken_as_set": tuple(n for n, r in sprayed_now.items() if taken_as_set(_supply(r, ledger), ledger.world)),
            "spent": tuple(
                n for n, r in sprayed_now.items() if reading.slots.old_mix or is_spent(_supply(r, ledger), ledger.world)
            ),
            "with_another": tuple(n for n, r in sprayed_now.items() if _with_another(r, ledger.world)),
            "agents": {n: ledger.world.facts.agents[r.agent] for n, r in rounds.items() if r is not None},
            "enclosures": {n: ledger.world.household.enclosure(n) for n in recorded},
        },
        values={
            "recorded": True,
            "enclosure": first,
            "enclosures": tuple(recorded) or tuple(window.enclosure for window in windows),
            "steps": reading.slots.steps,
            "next": step_now(r, after) if (r := ledger.state.rounds.get(first)) and is_open(r) else None,
        },
        cautions=_cautions(reading.slots.steps),
        events=events,
        pending=give_up_question(after.state.rounds[first], ways[first].step, after) if first in ways else None,
    )


def _supply(round_: Round, ledger: Ledger) -> Supply:
    return supply_of(round_.agent, round_.bottle, ledger.world)


def _with_another(after: Round, before: World) -> bool:
    """Sprayed with another product than the clean was begun with: which, is said back."""
    round_ = before.state.rounds.get(after.enclosure)
    return round_ is not None and round_.agent != after.agent


def _soap_again(name: str, steps: tuple[str, ...], before: World) -> bool:
    """Washed after spraying: soap undoes it."""
    round_ = before.state.rounds.get(name)
    return "wash" in steps and "apply" not in steps and round_ is not None and "apply" in round_.done


def _cautions(steps: tuple[str, ...]) -> tuple[str, ...]:
    """Safety lines that belong to a step just done."""
    if "return" in steps:
        return ("caution-hands",)
    return ("caution-heat-unplug",) if "move out" in steps else ()
