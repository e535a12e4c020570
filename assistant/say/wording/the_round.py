"""How the round is spoken of."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from typing import Any

from assistant.contract import Answer, Line
from assistant.core.household import Enclosure
from assistant.core.record.state import Round
from assistant.say.wording import claimed, clocks, round_told
from assistant.say.wording.no_time import VETS_PLAN, without_a_time
from assistant.say.wording.plain import MOST_WORDS, capital, clock, clock_aloud, listed, span
from assistant.say.wording.steps import (
    ADD_MINUTES,
    AS_A_CLEAN,
    DID,
    NAMES,
    NO_TIME,
    OR_ADD,
    name_of,
    steps_done,
    to_do,
    to_do_now,
)

WHY = {
    "weaker than label": "The mix is weaker than the label's own, so the longer of label and published figure counts.",
    "label only sanitises": "The label claims to sanitise, which is less than to disinfect.",
    "not on label": "The label doesn't list it, so the longer of label and published figure counts.",
    "new or sick": "A new or sick animal's enclosure takes the longer of label and published figure.",
    "organism": "The figure for what you named is the longer one.",
    "too weak for study": "The study that has it work used a stronger mix, or one that can't be compared.",
    "too weak for any": "The mix is weaker than every figure behind that time: it is kept, but counts as a clean.",
    "studies disagree": "Studies disagree: one has it work, another at least as strong has it fail.",
}
"""Why a wet time is what it is."""

TOO_WEAK = "Too weak a mix to call it disinfected."

BASIS = {
    "label": "by its label",
    "published": "by published figures",
    "none": "by its label, but nothing vouches that this disinfects",
}
"""On whose word a wet time is."""

HANDS_FIRST = "Wash hands, new gloves first."
"""On the way from a sick animal to a healthier one."""
JOB_SHOWN = {
    "spot clean": "A spot clean takes every step that its product takes. It counts as no disinfection of the whole.",
    "quarantine clean": "For quarantine the longer of label and published wet time counts.",
}
"""What a sort of clean changes, where that isn't plain from its name."""

# ---------------------------------------------------------------- start, next, status


def _started(answer: Answer) -> Line:
    details = answer.details
    enclosures: tuple[Enclosure, ...] = details["enclosures"]
    supply, wet = details["supply"], details["wet"]
    names = capital(listed(e.name for e in enclosures))
    already = details["already"]
    step = next(step for step in supply.agent.steps if step not in already)
    first = capital(to_do(step, enclosures[0], supply.agent))
    if already:
        first = f"{capital(steps_done(already))}. Next: {first[0].lower()}{first[1:]}"
    elif len(enclosures) > 1:
        first = "Move the animals out, one a tub, unplug the heat"
    bottle = f", {supply.bottle.name}" if supply.bottle is not None else ""
    sort = details["job"]
    if sort:
        names = f"{names}, {sort}"
    shown = [
        f"{names}: {'' if sort else 'a clean '}with {supply.agent.name}{bottle}. First: {first[0].lower()}{first[1:]}."
    ]
    shown.append("Steps: " + ", ".join(NAMES[step] for step in supply.agent.steps) + ".")
    if details["taken_as_set"] is not None:
        bottle_name = supply.bottle.name
        shown.append(f"No fill of {bottle_name} is on record: taken as {supply.agent.name}, as keeping.toml says.")
    if sort in JOB_SHOWN:
        shown.append(JOB_SHOWN[sort])
    if details["timed"]:
        shown.append(_wet_time_shown(supply, wet))
    else:
        shown.append("This cleans; it doesn't disinfect.")
    extra = "" if supply.agent.disinfects and details["timed"] else " It cleans, it doesn't disinfect."
    if wet.organism_verdict == "fails" and details["organism"] is not None:
        extra = f" But it failed against {details['organism'].name}: ask your vet."
        shown += [f"{capital(details['organism'].name)} is on record there."] * details["germ_on_record"]
        shown.append(
            f"{capital(supply.agent.name)} failed against it in the figures I have, so this counts as a clean."
        )
    if wet.organism_verdict == "unknown" and details["organism"] is not None and details["timed"]:
        extra = f" Nothing shows it works on {details['organism'].name}: ask your vet."
        shown.append("Nothing I have vouches for it there, so this counts as a clean.")
    if details["timed"] and wet.minutes is None:
        extra = without_a_time(supply.agent, wet)
        if extra == VETS_PLAN:
            shown[-1] = "No time is offered for it: that is your vet's plan."
    if details["label_told"] and wet.minutes is not None:
        extra = f" Wet time: {span(float(wet.minutes) * 60)}."
    if wet.too_weak:
        extra = f" {TOO_WEAK}"
        shown.append(WHY["too weak for any"])
    if details["spent"]:
        shown.append(f"What {supply.bottle.name} holds is past its life: mix fresh before you spray.")
        extra = f" {capital(supply.bottle.name)} is past its life: mix fresh first."
    elif details["taken_as_set"] is not None and not extra:
        extra = f" {capital(supply.bottle.name)}: no fill on record, taken as {supply.agent.name}."
    say = f"{names}, {supply.agent.name}. {first}."
    if len(say.split()) > MOST_WORDS:
        say = f"{len(enclosures)} enclosures{f', {sort}' if sort else ''}, {supply.agent.name}. {first}."
    if details["hands"]:
        shown.append(HANDS_FIRST)
        say = f"{HANDS_FIRST} {say}"
    if len(say.split()) > MOST_WORDS:
        say = f"{HANDS_FIRST} {names if len(enclosures) == 1 else f'{len(enclosures)} enclosures'}. {first}."
    groups = {enclosure.group for enclosure in enclosures}
    if len(groups) > 1:
        apart = "Healthy ones first, the sick last; new gloves and tools for each group."
        shown.append(apart)
        extra = extra or f" {apart}"
    if len(f"{say}{extra}".split()) <= MOST_WORDS:
        say += extra
    elif len(groups) > 1 and len(f"{say} New gloves for each group.".split()) <= MOST_WORDS:
        say += " New gloves for each group."
    return Line(say, "\n".join(shown))


def _not_with_that(answer: Answer) -> Line:
    agent = answer.details["agent"].name
    return Line(f"Nothing begun: {agent} takes no scale off. A scale clean is with vinegar. With which bottle?")


def _wet_time_shown(supply: Any, wet: Any) -> str:
    if wet.minutes is None:
        return (
            f"No wet time is on record for {supply.agent.name}: add label_minutes from its label to keeping.toml; "
            "until then the wet time can't be served."
        )
    by = "which nothing vouches for at this strength" if wet.too_weak else BASIS[wet.basis]
    return f"Wet time: {span(float(wet.minutes) * 60)}, {by}."


def _open_already(answer: Answer) -> Line:
    name = capital(answer.details["enclosure"])
    step = NAMES[answer.details["next"]]
    return Line(f"{name} has a clean open, next is {step}. Go on, or start over?")


def _next(answer: Answer) -> Line:
    """The one thing to do; on the way from a sick animal to a healthier one, hands and gloves before it."""
    line = _next_step(answer)
    round_ = answer.details["round"]
    if round_.job:
        line = Line(line.say, f"{line.show or line.say}\n({capital(round_.enclosure)}: {round_.job}.)")
    if not answer.details["hands"]:
        return line
    return Line(f"{HANDS_FIRST} {line.say}", f"{HANDS_FIRST} {line.show or line.say}")


def _next_step(answer: Answer) -> Line:
    details = answer.details
    enclosure, round_, step, left_s = details["enclosure"], details["round"], details["step"], details["left_s"]
    name = capital(name_of(enclosure))
    if step == "hold" and left_s is not None:
        return Line(f"{span(left_s)} of wet time left in {name_of(enclosure)}. Keep it wet.")
    if step == "hold" and round_.hold is not None and round_.hold.seconds is None:
        agent = details["agent"]
        return Line(
            f"{name}: {NO_TIME.format(agent.name)} {AS_A_CLEAN}",
            f"{name}: {NO_TIME.format(agent.name)} {AS_A_CLEAN} {OR_ADD}",
        )
    if step == "hold":
        return Line(f"{name}: wet time is over. Did it stay wet the whole time?")
    if details["smells"]:
        return Line(f"{name}: leave it open until the smell is gone, then tell me.")
    if step == "air" and left_s is not None:
        return Line(f"{span(left_s)} of airing left in {name_of(enclosure)}. A second opening shortens it.")
    return Line(f"{name}: {to_do_now(details['way'], enclosure, details['agent'])}.")


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
            spoken.append(
                f"{capital(round_.enclosure)}: finished, {clock_aloud(round_.done['return'], details['now'])}."
            )
        else:
            spoken.append(f"{capital(round_.enclosure)}: next {NAMES[left[0]] if left else NAMES['return']}.")
        times = ", ".join(f"{DID[step]} {clock(round_.done[step], details['now'])}" for step in done)
        sort = f", {round_.job}" if round_.job else ""
        shown.append(f"{capital(round_.enclosure)}{sort}: {times or 'nothing done yet'}.")
        if left and "return" not in round_.done:
            shown.append(f"  Left: {', '.join(NAMES[step] for step in left)}.")
    for timer in details["timers"]:
        if timer.enclosure is not None:
            shown.append(f"  {capital(timer.enclosure)}: {span(timer.seconds)} of {NAMES[timer.step]} left.")
    say = " ".join(spoken)
    if len(rounds) == 1 and (done_ := list(rounds[0].done)) and "return" not in rounds[0].done:
        say = f"{capital(rounds[0].enclosure)}: {steps_done(done_[-3:])}. Next: {spoken[0].partition('next ')[2]}"
    if len(say.split()) > MOST_WORDS:
        say = f"{len(rounds)} cleans open. The screen shows where each stands."
    return Line(say, "\n".join(shown))


def _step_status(rounds: tuple[Round, ...], steps: tuple[str, ...], now: datetime) -> Line:
    told = []
    for round_ in rounds:
        for step in ("rinse" if step == "wipe" else step for step in steps):
            at = round_.done.get(step)
            if at is not None:
                yes = f"{capital(round_.enclosure)}: yes, {steps_done((step,))}"
                told.append((f"{yes}, {clock_aloud(at, now)}.", f"{yes}, {clock(at, now)}."))
            else:
                no = f"{capital(round_.enclosure)}: no {NAMES[step]} on record."
                told.append((no, no))
    say = " ".join(said for said, _ in told)
    return Line(say if len(say.split()) <= MOST_WORDS else told[0][0], "\n".join(shown for _, shown in told))


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


def _shall_i_begin(answer: Answer) -> Line:
    supply = answer.details["supply"]
    product = supply.bottle.name if supply.bottle is not None else supply.agent.name
    return Line(f"Nothing recorded: no clean is open for {answer.details['enclosure']}. Begin one with {product}?")


def _one_at_a_time(answer: Answer) -> Line:
    names = listed((home.name for home in answer.details["enclosures"]), "or")
    return Line(f"With different bottles, one start each. {capital(names)} first, with which?")


def _done_what(answer: Answer) -> Line:
    return Line("What is done, and in which enclosure?")


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
    if not details["asked"]:  # an eye is told of before any tank, however soon that is over
        first = next((timer for timer in running if timer.step in ("eye", "skin")), first)
    say = f"{span(first.seconds)}, {_timer_name(first)}."
    others = sorted((t for t in running if t is not first), key=lambda t: t.step not in ("eye", "skin"))
    if others and not details["asked"]:
        say += f" {capital(_timer_name(others[0]))}: {span(others[0].seconds)}."
    return Line(say, "\n".join(map(_timer, running)))


def _timer_name(timer: Any) -> str:
    if timer.enclosure is None:
        return f"{timer.step} rinse" if " " not in timer.step else str(timer.step)
    return f"{timer.enclosure} {NAMES.get(timer.step, timer.step)}"


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
    if wet.organism_verdict == "fails":
        say = f"{capital(agent.name)} failed{against} in the figures I have. Ask your vet for the plan."
        return Line(say, "\n".join([say, *_why(wet)]))
    if wet.minutes is None:
        return Line(
            f"I have no wet time for {agent.name}{against}. {ADD_MINUTES}",
            f"No wet time is on record for {agent.name}{against}. Add label_minutes from its label to keeping.toml.",
        )
    length = span(float(wet.minutes) * 60)
    if wet.too_weak:
        say = f"{length}, wet all the time. {TOO_WEAK}"
        return Line(say, "\n".join([say, *_why(wet)]))
    shown = [f"{length} wet with {agent.name}{against}, {BASIS[wet.basis]}.", *_why(wet)]
    say = f"{length}, wet all the time, {BASIS[wet.basis]}."
    if wet.organism_verdict == "unknown":
        doubt = f" Nothing published settles that it works{against}."
        say, shown[0] = say + doubt, shown[0] + doubt
    return Line(say, "\n".join(shown))


def _why(wet: Any) -> list[str]:
    """Why the wet time is what it is, and what keepers do instead."""
    reasons = [WHY[why] for why in wet.why if why in WHY]
    return reasons + [f"Common practice, not counted: {fact.says}." for fact in wet.practice]


def _is_it_settled(answer: Answer) -> Line:
    name, said = capital(name_of(answer.details["enclosure"])), answer.details["said"]
    last = said[-1] if len(said[-1].split()) <= MOST_QUOTED else "something that I didn't follow"
    return Line(
        f"{name}: you told me: {last}. Is that put right? Yes or no.",
        f"{name}: nothing else is left to do, but I didn't follow: {'; '.join(said)}. Is that put right?",
    )


MOST_QUOTED = 12
"""Words of the keeper's that a spoken question may repeat."""


def _not_settled(answer: Answer) -> Line:
    name = capital(name_of(answer.details["enclosure"]))
    return Line(f"{name}: then not yet. Tell me what it is: wet, smells, dirty, or a step to do again.")


def _ready(answer: Answer) -> Line:
    claim = answer.values["claim"]
    clean = " It was a clean, not a disinfection." if claim == "cleaned_only" else ""
    say = f"Nothing on my record is left to do. Look, feel, sniff; then it's your call.{clean}"
    name = capital(name_of(answer.details["enclosure"]))
    round_ = answer.details["round"]
    if round_ is not None and round_.job == "spot clean" and not clean:
        say += " Only for the spot you cleaned."
    return Line(say, f"{name}: {say[0].lower()}{say[1:]}\nHeat on, lock shut, hands washed.")


def _blocked(answer: Answer) -> Line:
    details = answer.details
    verdict, now_at = details["verdict"], details.get("now")
    name = name_of(details["enclosure"])
    left = verdict.blocked_by
    if details["vouch"]:
        return Line(
            f"Not yet, {name}: did it stay wet the whole time? Tell me that first.", _left(name, left, verdict, now_at)
        )
    round_ = details["round"]
    if left == ("air",) and round_ is not None and round_.smells:
        return Line(
            f"Not yet, {name}: a smell is on record. Tell me when it's gone.", _left(name, left, verdict, now_at)
        )
    if len(left) > 4:
        spoken = f"{NAMES[left[0]]} and {len(left) - 1} more steps are left"
    else:
        spoken = f"{listed(NAMES[step] for step in left)} {'is' if len(left) == 1 else 'are'} left"
    if details["pressed"]:
        return Line(f"No: {spoken}.", _left(name, left, verdict, now_at))
    warm = details["warm_to"]
    if warm is not None:
        warm_it = f"Warm the tub, {warm:g} degrees at most."
        shown = f"{_left(name, left, verdict, now_at)}\n{warm_it} The heat source must not touch the animal."
        return Line(f"Not yet: {spoken}. {warm_it}", shown)
    return Line(f"Not yet, {name}: {spoken}.", _left(name, left, verdict, now_at))


def _left(name: str, left: tuple[str, ...], verdict: Any, now: datetime | None) -> str:
    shown = f"Not yet, {name}. Left: {', '.join(NAMES[step] for step in left)}."
    if verdict.earliest is not None and now is not None:
        shown += f"\nBy the clocks alone not before {clock(verdict.earliest, now)}."
    return shown


def _not_on_record(answer: Answer) -> Line:
    where = f" for {name_of(answer.details['enclosure'])}" if answer.details["enclosure"] else ""
    return Line(f"No clean is open{where}, so nothing on record vouches for it. Look for yourself, or start one.")


LINES: dict[str, Callable[[Answer], Line]] = {
    **claimed.LINES,
    **clocks.LINES,
    **round_told.LINES,
    "the_round.started": _started,
    "the_round.not_with_that": _not_with_that,
    "the_round.open_already": _open_already,
    "the_round.next": _next,
    "the_round.status": _status,
    "the_round.none_open": _none_open,
    "the_round.with_what": _with_what,
    "the_round.start_which": _start_which,
    "the_round.which": _which,
    "the_round.done_where": _done_where,
    "the_round.done_what": _done_what,
    "the_round.one_at_a_time": _one_at_a_time,
    "the_round.shall_i_begin": _shall_i_begin,
    "the_round.time_left": _time_left,
    "the_round.hold_time": _hold_time,
    "the_round.is_it_settled": _is_it_settled,
    "the_round.not_settled": _not_settled,
    "the_round.ready": _ready,
    "the_round.blocked": _blocked,
    "the_round.not_on_record": _not_on_record,
}
