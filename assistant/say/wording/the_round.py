"""How the round is spoken of."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import datetime
from typing import Any

from assistant.contract import Answer, Line
from assistant.core.facts import Agent
from assistant.core.household import Enclosure
from assistant.core.state import Round
from assistant.say.wording.plain import DID, NAMES, TO_DO, capital, clock, listed, span, steps_done

WHY = {
    "weaker than label": "The mix is weaker than the label's own, so the longer of label and published figure counts.",
    "label only sanitises": "The label claims to sanitise, which is less than to disinfect.",
    "not on label": "The label doesn't list it, so the longer of label and published figure counts.",
    "new or sick": "A new or sick animal's enclosure takes the longer of label and published figure.",
    "organism": "The figure for what you named is the longer one.",
    "too weak for study": "The study that has it work used a stronger mix, or one that can't be compared.",
    "studies disagree": "Studies disagree: one has it work, another at least as strong has it fail.",
}
"""Why a wet time is what it is."""

ADD_MINUTES = "Its label decides; add its label minutes to your household file."


def _animal(enclosure: Enclosure | None) -> str:
    return f"the {enclosure.animal}" if enclosure is not None and enclosure.animal else "the animal"


def _name(enclosure: Any) -> str:
    return enclosure.name if isinstance(enclosure, Enclosure) else str(enclosure or "it")


def _to_do(step: str, enclosure: Enclosure | None, agent: Agent | None) -> str:
    """The one thing to do, in this enclosure, with this agent."""
    if step == "move out":
        return f"move {_animal(enclosure)} out, unplug the heat"
    if step == "apply" and agent is not None:
        cold = "heat off and cold first, then " if agent.needs_cold else ""
        return f"{cold}spray {agent.name}, every surface wet"
    if step == "rinse" and agent is not None and agent.wipe_will_do:
        return "rinse, or wipe twice with clean water"
    return TO_DO[step]


# ---------------------------------------------------------------- start, next, status


def _started(answer: Answer) -> Line:
    details = answer.details
    enclosures: tuple[Enclosure, ...] = details["enclosures"]
    supply, wet = details["supply"], details["wet"]
    names = capital(listed(e.name for e in enclosures))
    first = capital(_to_do("move out", enclosures[0] if len(enclosures) == 1 else None, supply.agent))
    bottle = f", {supply.bottle.name}" if supply.bottle is not None else ""
    shown = [f"{names}: a clean with {supply.agent.name}{bottle}. First: {first[0].lower()}{first[1:]}."]
    shown.append("Steps: " + ", ".join(NAMES[step] for step in supply.agent.steps) + ".")
    if supply.bottle is not None:
        shown.append(f"Taken from your keeping.toml: {supply.bottle.name} is for {supply.agent.name}.")
    if details["timed"]:
        shown.append(_wet_time_shown(supply, wet))
    else:
        shown.append("This cleans; it doesn't disinfect.")
    extra = "" if supply.agent.disinfects and details["timed"] else " It cleans, it doesn't disinfect."
    return Line(f"{names}, {supply.agent.name}. {first}.{extra}", "\n".join(shown))


def _wet_time_shown(supply: Any, wet: Any) -> str:
    if wet.minutes is None:
        return (
            f"No wet time is on record for {supply.agent.name}: add label_minutes from its label to keeping.toml; "
            "until then the wet time can't be served."
        )
    basis = "by its label" if wet.basis == "label" else "by published figures"
    return f"Wet time: {span(float(wet.minutes) * 60)}, {basis}."


def _open_already(answer: Answer) -> Line:
    name = capital(answer.details["enclosure"])
    step = NAMES[answer.details["next"]]
    return Line(f"{name} has a clean open, next is {step}. Go on, or start over?")


def _next(answer: Answer) -> Line:
    details = answer.details
    enclosure, round_, step, left_s = details["enclosure"], details["round"], details["step"], details["left_s"]
    name = capital(_name(enclosure))
    if step == "hold" and left_s is not None:
        return Line(f"{span(left_s)} of wet time left in {_name(enclosure)}. Keep it wet.")
    if step == "hold" and round_.hold is not None and round_.hold.seconds is None:
        return Line(f"{name}: no wet time on record for {details['agent'].name}. {ADD_MINUTES}")
    if step == "hold":
        return Line(f"{name}: wet time is over. Did it stay wet the whole time?")
    if step == "air" and left_s is not None:
        return Line(f"{span(left_s)} of airing left in {_name(enclosure)}. A second opening shortens it.")
    return Line(f"{name}: {_to_do(step, enclosure, details['agent'])}.")


def _status(answer: Answer) -> Line:
    details = answer.details
    rounds: tuple[Round, ...] = details["rounds"]
    if details["steps"]:
        return _step_status(rounds, details["steps"], details["now"])
    spoken, shown = [], []
    for round_ in rounds:
        done = [step for step in round_.done if step != "hold" or "rinse" in round_.done]
        left = details["left"][round_.enclosure]
        if "return" in round_.done:
            spoken.append(f"{capital(round_.enclosure)}: finished, {clock(round_.done['return'], details['now'])}.")
        else:
            spoken.append(f"{capital(round_.enclosure)}: next {NAMES[left[0]] if left else NAMES['return']}.")
        times = ", ".join(f"{DID[step]} {clock(round_.done[step], details['now'])}" for step in done)
        shown.append(f"{capital(round_.enclosure)}: {times or 'nothing done yet'}.")
        if left and "return" not in round_.done:
            shown.append(f"  Left: {', '.join(NAMES[step] for step in left)}.")
    for timer in details["timers"]:
        if timer.enclosure is not None:
            shown.append(f"  {capital(timer.enclosure)}: {span(timer.seconds)} of {NAMES[timer.step]} left.")
    say = " ".join(spoken)
    if len(rounds) == 1 and (done_ := list(rounds[0].done)) and "return" not in rounds[0].done:
        say = f"{capital(rounds[0].enclosure)}: {steps_done(done_[-3:])}. Next: {spoken[0].partition('next ')[2]}"
    if len(say.split()) > 25:
        say = f"{len(rounds)} cleans open. The screen shows where each stands."
    return Line(say, "\n".join(shown))


def _step_status(rounds: tuple[Round, ...], steps: tuple[str, ...], now: datetime) -> Line:
    told = []
    for round_ in rounds:
        for step in ("rinse" if step == "wipe" else step for step in steps):
            at = round_.done.get(step)
            if at is not None:
                told.append(f"{capital(round_.enclosure)}: yes, {steps_done((step,))}, {clock(at, now)}.")
            else:
                told.append(f"{capital(round_.enclosure)}: no {NAMES[step]} on record.")
    say = " ".join(told)
    return Line(say if len(say.split()) <= 25 else told[0], "\n".join(told))


def _none_open(answer: Answer) -> Line:
    name = answer.details["enclosure"]
    return Line(f"No clean is open{f' for {name}' if name else ''}. Say start, the enclosure, and the bottle.")


# ---------------------------------------------------------------- asking


def _with_what(answer: Answer) -> Line:
    bottles = answer.details["bottles"]
    shown = f"With which bottle or product? You have: {listed(bottles)}." if bottles else ""
    return Line("With which bottle or product?", shown)


def _start_which(answer: Answer) -> Line:
    known = answer.details["known"]
    return Line("Which enclosure?", f"Which enclosure? You have: {listed(known)}." if known else "")


def _which(answer: Answer) -> Line:
    candidates = answer.details["candidates"]
    if len(candidates) > 4:
        return Line("Which enclosure?", f"Which enclosure: {listed(candidates, 'or')}?")
    return Line(f"Which one: {listed(candidates, 'or')}?")


def _done_where(answer: Answer) -> Line:
    name = answer.details["enclosure"]
    if name is None:
        return Line("Nothing recorded: no clean is open. Which enclosure shall I start?")
    return Line(f"Nothing recorded: no clean is open for {name}. Start one, with which bottle?")


def _done_what(answer: Answer) -> Line:
    return Line("What is done, and in which enclosure?")


# ---------------------------------------------------------------- done


def _recorded(answer: Answer) -> Line:
    details = answer.details
    recorded: Mapping[str, tuple[str, ...]] = details["recorded"]
    parts, shown = [], []
    for name, steps in recorded.items():
        round_ = details["rounds"].get(name)
        parts.append(f"{capital(name)}: {steps_done(steps)}.")
        shown.append(f"{capital(name)}: {steps_done(steps)}. {_then(name, steps, round_, answer)}".rstrip())
    first = next(iter(recorded))
    then = _then(first, recorded[first], details["rounds"].get(first), answer)
    if len(recorded) > 1 and len(set(recorded.values())) == 1:
        parts = [f"{capital(listed(recorded))}: {steps_done(recorded[first])}."]
    say = f"{' '.join(parts)} {then}".strip()
    return Line(say, "\n".join(shown))


def _then(name: str, steps: tuple[str, ...], round_: Round | None, answer: Answer) -> str:
    """What comes after the step just recorded."""
    details = answer.details
    if "return" in steps:
        return "Heat on, lock shut, hands washed."
    if round_ is None or name not in details["next"]:
        return ""
    step = details["next"][name]
    agent = details["agents"][name]
    if name in details["soap_again"]:
        return "Soap undoes the spraying, so spray again. If you meant rinsed, say undo."
    if step == "hold" and "apply" in steps and round_.hold is not None:
        if round_.hold.seconds is None:
            return f"No wet time on record for {agent.name}. {ADD_MINUTES}"
        return f"Wet time: {span(round_.hold.seconds)}."
    if step == "hold":
        return "Keep it wet."
    if step == "air":
        left = details["airing"].get(name)
        return f"About {span(left)} of airing left." if left else "Open a window and tell me."
    if step == "return":
        return "Nothing on my record is left to do: look, feel, sniff."
    return f"Next: {_to_do(step, details['enclosures'].get(name), agent)}."


def _windows(answer: Answer) -> Line:
    window = answer.details["windows"][0]
    left = answer.details["airing"].get(window.enclosure)
    opened = {0: "Shut", 1: "One opening", 2: "Two openings"}.get(window.openings, "Three openings")
    if left is None:
        return Line(f"{opened}, noted. The airing counts once it's rinsed.")
    if left == 0:
        return Line(f"{opened}, noted. The airing time is up.")
    shorter = " One more opening shortens it." if left > 7200 and window.openings < 3 else ""
    return Line(
        f"{opened}: about {span(left)} of airing left.{shorter}",
        f"{opened}, {window.air_changes_per_hour:g} air changes an hour: about {span(left)} of airing left.{shorter} "
        "Real rooms take longer than the figure; the nose decides.",
    )


def _gap(answer: Answer) -> Line:
    judgement = answer.details["judgement"]
    name = capital(_name(answer.details["enclosure"]))
    before = _recorded_before(answer)
    return Line(
        f"{before}{name}: {NAMES[judgement.gap]} isn't on record before {NAMES[judgement.step]}. Was that done?"
    )


def _recorded_before(answer: Answer) -> str:
    """What of the same sentence was recorded before the trouble."""
    for name, steps in answer.details.get("recorded", {}).items():
        if steps:
            return f"{capital(name)}: {steps_done(steps)}. "
    return ""


def _stayed_wet(answer: Answer) -> Line:
    name = capital(_name(answer.details["enclosure"]))
    return Line(f"{name}: wet time is over. Did it stay wet the whole time?")


def _mid_hold(answer: Answer) -> Line:
    judgement = answer.details["judgement"]
    name = capital(_name(answer.details["enclosure"]))
    left = span(judgement.left_s or 0)
    return Line(
        f"{name}: {left} of wet time left, not recorded. Is it really {DID[judgement.step]}? Then it starts over."
    )


def _dried(answer: Answer) -> Line:
    name = capital(_name(answer.details["enclosure"]))
    round_ = answer.details["round"]
    again = f", {span(round_.hold_s)} from there" if round_ is not None and round_.hold_s else ""
    return Line(f"{name}: then the wet time starts over. Spray again, say sprayed{again}.")


def _early(answer: Answer) -> Line:
    judgement = answer.details["judgement"]
    name = _name(answer.details["enclosure"])
    if judgement.left_s is None:
        return Line(f"{capital(name)}: not yet, the airing hasn't begun. Not recorded.")
    return Line(f"{capital(span(judgement.left_s))} of {NAMES[judgement.step]} left in {name}. Not recorded yet.")


def _already(answer: Answer) -> Line:
    judgement = answer.details["judgement"]
    return Line(f"{capital(_name(answer.details['enclosure']))}: {steps_done((judgement.step,))} is on record already.")


def _no_figure(answer: Answer) -> Line:
    name, agent = capital(_name(answer.details["enclosure"])), answer.details["agent"]
    return Line(
        f"{name}: I have no wet time for {agent.name}, so I can't count it. Its label decides.",
        f"{name}: no wet time is on record for {agent.name}, so it can't be served. Not recorded. "
        "Put label_minutes from the product's label into keeping.toml and start over.",
    )


def _back_too_soon(answer: Answer) -> Line:
    enclosure = answer.details["enclosure"]
    return Line(
        "Take the animal out again. Running lukewarm water where it touched anything wet. Ring your vet.",
        f"{capital(_name(enclosure))} isn't ready. Take {_animal(enclosure)} out again. Lukewarm running water where "
        "it touched anything wet, nothing by mouth, and ring your vet.",
    )


def _animal_inside(answer: Answer) -> Line:
    enclosure = answer.details["enclosure"]
    name = capital(_name(enclosure))
    return Line(f"Stop: {name} still holds {_animal(enclosure)} on my record. Move it out first, then say it's out.")


def _is_it_cold(answer: Answer) -> Line:
    name = capital(_name(answer.details["enclosure"]))
    return Line(f"{name}: is the heat off and cold? Alcohol burns. Yes, and I start the wet time.")


# ---------------------------------------------------------------- refusals


def _unknown_mix(answer: Answer) -> Line:
    bottle = capital(answer.details["bottle"])
    return Line(f"No. {bottle} holds an unknown mix. Don't use it; rinse it out, pump it through, then tell me.")


def _refused_agent(answer: Answer) -> Line:
    agent = answer.details["agent"]
    return Line(f"No. {capital(agent.name)} isn't for use near reptiles. Ask your vet what to use instead.")


def _refused_in_water(answer: Answer) -> Line:
    agent, enclosure = answer.details["agent"], answer.details["enclosure"]
    name = capital(agent.name)
    return Line(f"No. {name} harms amphibians and water animals, so not in {enclosure.name}. Ask your vet what to use.")


# ---------------------------------------------------------------- clocks and the gate


def _time_left(answer: Answer) -> Line:
    details = answer.details
    first, running = details["first"], details["timers"]
    if first is None:
        over = details["over"]
        if over and not details["asked"]:
            return Line(f"Nothing is running. {capital(over[0])}: wet time is over. Did it stay wet?")
        where = f" for {listed(details['asked'])}" if details["asked"] else ""
        return Line(
            f"No wet time or airing is running{where}.",
            "\n".join([f"No clock is running{where}.", *map(_timer, running)]),
        )
    say = f"{span(first.seconds)}, {_timer_name(first)}."
    others = [t for t in running if t is not first]
    if others and not details["asked"]:
        say += f" {capital(_timer_name(others[0]))}: {span(others[0].seconds)}."
    return Line(say, "\n".join(map(_timer, running)))


def _timer_name(timer: Any) -> str:
    return f"{timer.step} rinse" if timer.enclosure is None else f"{timer.enclosure} {NAMES[timer.step]}"


def _timer(timer: Any) -> str:
    return f"{capital(_timer_name(timer))}: {span(timer.seconds)} left."


def _hold_time(answer: Answer) -> Line:
    details = answer.details
    supply, wet, organism = details["supply"], details["wet"], details["organism"]
    agent = supply.agent
    if not details["timed"]:
        return Line(f"No timed wet time: {agent.name} cleans, it doesn't disinfect.")
    if agent.vet_only:
        return Line(f"I offer no time for {agent.name}: that is your vet's plan.")
    against = f" against {organism.name}" if organism is not None else ""
    if wet.minutes is None:
        return Line(
            f"I have no wet time for {agent.name}{against}. {ADD_MINUTES}",
            f"No wet time is on record for {agent.name}{against}. Add label_minutes from its label to keeping.toml.",
        )
    basis = "by its label" if wet.basis == "label" else "by published figures"
    shown = [f"{span(float(wet.minutes) * 60)} wet with {agent.name}{against}, {basis}."]
    shown += [WHY[why] for why in wet.why if why in WHY]
    shown += [f"Common practice, not counted: {fact.says}" for fact in wet.practice]
    say = f"{span(float(wet.minutes) * 60)}, wet all the time, {basis}."
    if wet.organism_verdict == "fails":
        say = f"{capital(agent.name)} failed{against} in the figures I have. Ask your vet for the plan."
        shown.insert(0, say)
    elif wet.organism_verdict == "unknown":
        say += f" Nothing published says it works{against}."
    return Line(say, "\n".join(shown))


def _ready(answer: Answer) -> Line:
    claim = answer.values["claim"]
    clean = " It was a clean, not a disinfection." if claim == "cleaned_only" else ""
    say = f"Nothing on my record is left to do. Look, feel, sniff; then it's your call.{clean}"
    return Line(
        say,
        f"{capital(_name(answer.details['enclosure']))}: {say[0].lower()}{say[1:]}\nHeat on, lock shut, hands washed.",
    )


def _blocked(answer: Answer) -> Line:
    details = answer.details
    verdict, now_at = details["verdict"], details.get("now")
    name = _name(details["enclosure"])
    left = verdict.blocked_by
    if details["vouch"]:
        return Line(
            f"Not yet, {name}: did it stay wet the whole time? Tell me that first.", _left(name, left, verdict, now_at)
        )
    if len(left) > 4:
        spoken = f"{NAMES[left[0]]} and {len(left) - 1} more steps are left"
    else:
        spoken = f"{listed(NAMES[step] for step in left)} {'is' if len(left) == 1 else 'are'} left"
    return Line(f"Not yet, {name}: {spoken}.", _left(name, left, verdict, now_at))


def _left(name: str, left: tuple[str, ...], verdict: Any, now: datetime | None) -> str:
    shown = f"Not yet, {name}. Left: {', '.join(NAMES[step] for step in left)}."
    if verdict.earliest is not None and now is not None:
        shown += f"\nBy the clocks alone not before {clock(verdict.earliest, now)}."
    return shown


def _not_on_record(answer: Answer) -> Line:
    where = f" for {_name(answer.details['enclosure'])}" if answer.details["enclosure"] else ""
    return Line(f"No clean is open{where}, so nothing on record vouches for it. Look for yourself, or start one.")


LINES: dict[str, Callable[[Answer], Line]] = {
    "the_round.started": _started,
    "the_round.open_already": _open_already,
    "the_round.next": _next,
    "the_round.status": _status,
    "the_round.none_open": _none_open,
    "the_round.with_what": _with_what,
    "the_round.start_which": _start_which,
    "the_round.which": _which,
    "the_round.done_where": _done_where,
    "the_round.done_what": _done_what,
    "the_round.recorded": _recorded,
    "the_round.windows": _windows,
    "the_round.gap": _gap,
    "the_round.stayed_wet": _stayed_wet,
    "the_round.mid_hold": _mid_hold,
    "the_round.dried": _dried,
    "the_round.early": _early,
    "the_round.already": _already,
    "the_round.no_figure": _no_figure,
    "the_round.back_too_soon": _back_too_soon,
    "the_round.animal_inside": _animal_inside,
    "the_round.is_it_cold": _is_it_cold,
    "the_round.unknown_mix": _unknown_mix,
    "the_round.refused_agent": _refused_agent,
    "the_round.refused_in_water": _refused_in_water,
    "the_round.time_left": _time_left,
    "the_round.hold_time": _hold_time,
    "the_round.ready": _ready,
    "the_round.blocked": _blocked,
    "the_round.not_on_record": _not_on_record,
}
