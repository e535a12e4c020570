"""How claimed steps are spoken of: recorded, asked about, or refused."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from assistant.contract import Answer, Line
from assistant.core.household import Enclosure
from assistant.core.record.state import Round
from assistant.core.round.gate import claim_of
from assistant.say.wording.plain import capital, listed, span
from assistant.say.wording.steps import (
    AS_A_CLEAN,
    DID,
    NAMES,
    NO_TIME,
    all_of,
    animal_of,
    name_of,
    steps_done,
    to_do_now,
)


def _recorded(answer: Answer) -> Line:
    details = answer.details
    recorded: Mapping[str, tuple[str, ...]] = details["recorded"]
    parts, shown = [], []
    for name, steps in recorded.items():
        round_ = details["rounds"].get(name)
        done = _done(steps, details["enclosures"].get(name))
        done += (
            f" with {details['agents'][name].name}" if name in details["with_another"] and steps == ("apply",) else ""
        )
        parts.append(f"{capital(name)}: {done}.")
        shown.append(f"{capital(name)}: {done}. {_then(name, steps, round_, answer)}".rstrip())
        if name in details["spent"]:
            shown.append("For a disinfection, mix fresh, spray again and keep it wet from there.")
        if name in details["taken_as_set"] and round_ is not None:
            agent = details["agents"][name].name
            shown.append(f"No fill of {round_.bottle} is on record: taken as {agent}, as keeping.toml says.")
    first = next(iter(recorded))
    then = _then_of_all(answer)
    if len(recorded) > 1 and len(set(recorded.values())) == 1:
        parts = [f"{capital(listed(recorded))}: {steps_done(recorded[first])}."]
    if details["sprayed_instead"]:
        parts = [f"Put right. {capital(listed(recorded))}: sprayed with {details['agents'][first].name}."]
    say = f"{' '.join(parts)} {then}".strip()
    return Line(say, "\n".join(shown))


def _then_of_all(answer: Answer) -> str:
    """What comes next; of several that aren't equally far, of one that isn't through yet, by its name."""
    recorded, rounds = answer.details["recorded"], answer.details["rounds"]
    each = {name: _then(name, steps, rounds.get(name), answer) for name, steps in recorded.items()}
    if len(set(each.values())) == 1:
        return next(iter(each.values()))
    name = next((one for one in each if answer.details["next"].get(one, "return") != "return"), next(iter(each)))
    if each[name].startswith(_NEXT):
        return f"Next, {name_of(answer.details['enclosures'].get(name))}: {each[name].removeprefix(_NEXT)}"
    return f"{capital(name)}: {each[name][:1].lower()}{each[name][1:]}" if each[name] else ""


_NEXT = "Next: "


def _done(steps: tuple[str, ...], enclosure: Enclosure | None) -> str:
    """The steps as done; of several animals it is said that all of them are out, so that one left inside is missed."""
    several = all_of(enclosure) if "move out" in steps else ""
    return f"{several} {steps_done(steps)}".lstrip()


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
            return f"{capital(NO_TIME.format(agent.name))} {AS_A_CLEAN}"
        spent = " But the mix is past its life: this counts as a clean." if name in details["spent"] else ""
        if not spent and round_.basis == "none":
            spent = " It counts as a clean, not a disinfection."
        left = details["hold_left"].get(name)
        if left is not None and left < round_.hold.seconds - 1:
            return f"The clock runs on: {span(left)} left.{spent}"  # the same bottle, in the wet time that runs
        return f"Wet time: {span(round_.hold.seconds)}.{spent}"
    if step == "hold":
        return "Keep it wet."
    if step == "air":
        left = details["airing"].get(name)
        return f"About {span(left)} of airing left." if left else "Open a window and tell me."
    if step == "return":
        if round_.remarks:
            return "One thing that you told me I didn't follow: ask me before it goes back."
        clean = " It was a clean, not a disinfection." if claim_of(round_) == "cleaned_only" else ""
        return f"Nothing on my record is left to do: look, feel, sniff.{clean}"
    return f"Next: {to_do_now(details['ways'][name], details['enclosures'].get(name), agent)}."


def _windows(answer: Answer) -> Line:
    told = answer.details["windows"]
    window = next(one for one in reversed(told) if one.enclosure == told[0].enclosure)
    left = answer.details["airing"].get(window.enclosure)
    opened = {0: "Shut", 1: "One opening", 2: "Two openings"}.get(window.openings, "Three openings")
    if left is None:
        return Line(f"{opened}, noted. The airing counts once it's {answer.details['waits_for']}.")
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
    name = capital(name_of(answer.details["enclosure"]))
    before = _recorded_before(answer)
    if (judgement.gap, judgement.step) == ("apply", "rinse"):  # the soap rinsed off is told in the same word
        return Line(
            f"{before}{name}: {NAMES[judgement.gap]} isn't on record before {NAMES[judgement.step]}. Was that done? "
            "If only the soap is rinsed off, say no."
        )
    told = f"{before[:-2]}, but" if before.startswith(f"{name}: ") else f"{before}{name}:"
    return Line(f"{told} {NAMES[judgement.gap]} isn't on record before {NAMES[judgement.step]}. Was that done?")


def _recorded_before(answer: Answer) -> str:
    """What of the same sentence was recorded before the trouble."""
    for name, steps in answer.details.get("recorded", {}).items():
        if steps:
            return f"{capital(name)}: {steps_done(steps)}. "
    return ""


def _stayed_wet(answer: Answer) -> Line:
    name = capital(name_of(answer.details["enclosure"]))
    return Line(f"{name}: wet time is over. Did it stay wet the whole time?")


def _out_and_shut_in(answer: Answer) -> Line:
    return Line(f"{capital(name_of(answer.details['enclosure']))}: out, and shut in the tub?")


def _mid_hold(answer: Answer) -> Line:
    judgement = answer.details["judgement"]
    name = capital(name_of(answer.details["enclosure"]))
    left = span(judgement.left_s or 0)
    done_ = _recorded_before(answer)
    if done_:
        return Line(f"{done_}{left} of wet time left, so not {DID[judgement.step]}. Or is it? Then it starts over.")
    return Line(
        f"{name}: {left} of wet time left, not recorded. Is it really {DID[judgement.step]}? Then it starts over."
    )


def _dried(answer: Answer) -> Line:
    name = capital(name_of(answer.details["enclosure"]))
    round_ = answer.details["round"]
    part = answer.details.get("part")
    where = f"Spray the {part}" if part else "Spray again"
    again = f", {span(round_.hold_s)} from there" if round_ is not None and round_.hold_s else ""
    return Line(f"{name}: then the wet time starts over. {where}, say sprayed{again}.")


def _early(answer: Answer) -> Line:
    judgement = answer.details["judgement"]
    name = name_of(answer.details["enclosure"])
    if judgement.left_s is None:
        return Line(f"{capital(name)}: not yet, the airing hasn't begun. Not recorded.")
    return Line(f"{capital(span(judgement.left_s))} of {NAMES[judgement.step]} left in {name}. Not recorded yet.")


def _wipe_will_not_do(answer: Answer) -> Line:
    name = capital(name_of(answer.details["enclosure"]))
    return Line(
        f"{name}: a wipe won't do after {answer.details['agent'].name}. Rinse with clean water, then say rinsed."
    )


def _already(answer: Answer) -> Line:
    judgement = answer.details["judgement"]
    return Line(
        f"{capital(name_of(answer.details['enclosure']))}: {steps_done((judgement.step,))} is on record already."
    )


def _no_figure(answer: Answer) -> Line:
    name, agent = capital(name_of(answer.details["enclosure"])), answer.details["agent"]
    return Line(
        f"{name}: I have no wet time for {agent.name}, so I can't count it. Its label decides.",
        f"{name}: no wet time is on record for {agent.name}, so it can't be served. Not recorded. "
        "Put label_minutes from the product's label into keeping.toml and start over.",
    )


def _rinsed_off(answer: Answer) -> Line:
    """Rinsed with a wet time that nobody knows: it is off, and that is all."""
    name, agent = capital(name_of(answer.details["enclosure"])), answer.details["agent"]
    say = f"{name}: {agent.name} is off, noted. Not disinfected. Dry it and spray another, or finish it as a clean."
    return Line(say, f"{say} The rinse counts for what may be sprayed next, not as a step.")


def _only_cleans(answer: Answer) -> Line:
    name, agent, way = capital(name_of(answer.details["enclosure"])), answer.details["said"], answer.details["way"]
    what = to_do_now(way, answer.details["enclosure"], answer.details["agent"])
    return Line(f"{name}: {agent.name} only cleans, so that's no spraying. {capital(what)}.")


def _back_too_soon(answer: Answer) -> Line:
    enclosure = answer.details["enclosure"]
    name = capital(name_of(enclosure))
    animal = animal_of(enclosure)
    return Line(
        f"Take {animal} out again. Running lukewarm water where it touched anything wet. Ring your vet. "
        f"{_recorded_before(answer)}".strip(),
        f"{name} isn't ready. Take {animal_of(enclosure)} out again. Lukewarm running water where it "
        "touched anything wet, nothing by mouth, and ring your vet.",
    )


def _out_first(answer: Answer) -> Line:
    enclosure = answer.details["enclosure"]
    return Line(f"Take {animal_of(enclosure)} out again: spray nothing with an animal inside. Tell me when it's out.")


def _animal_inside(answer: Answer) -> Line:
    enclosure = answer.details["enclosure"]
    name = capital(name_of(enclosure))
    return Line(f"Stop: {name} still holds {animal_of(enclosure)} on my record. Move it out, then say it's out.")


def _is_it_cold(answer: Answer) -> Line:
    name = capital(name_of(answer.details["enclosure"]))
    return Line(f"{name}: is the heat off and cold? Alcohol burns. Yes, and I start the wet time.")


# ---------------------------------------------------------------- refusals


def _unknown_mix(answer: Answer) -> Line:
    bottle = capital(answer.details["bottle"])
    return Line(f"No. {bottle} holds an unknown mix. Don't use it; rinse it out, pump it through, then tell me.")


def _which_was_it(answer: Answer) -> Line:
    known = answer.details["known"]
    say = f"{capital(answer.details['enclosure'])}: then that spraying doesn't count. Which bottle was it?"
    return Line(say, f"{say} {capital(listed(known, 'or'))}?")


def _not_how_strong(answer: Answer) -> Line:
    bottle, agent = answer.details["bottle"], answer.details["said"]
    return Line(f"{capital(bottle)}: {agent.name} went in, but you never told me how strong. One in how many?")


def _which_step(answer: Answer) -> Line:
    steps = answer.details["rounds"]
    if len(steps) != 1:
        return Line("Something is done, but what, and where? Say the step in a word, and the enclosure.")
    name, step = next(iter(steps.items()))
    return Line(f"{capital(name)}: I didn't catch which step. Is it {steps_done((step,))}?")


def _nothing_in_it(answer: Answer) -> Line:
    bottle, agent = answer.details["bottle"], answer.details["said"]
    return Line(f"{capital(bottle)}: no mix in it on my record. Filled with {agent.name} since? One in how many?")


def _holds_another(answer: Answer) -> Line:
    bottle, holds, said = (answer.details[key] for key in ("bottle", "holds", "said"))
    return Line(
        f"{capital(bottle)} holds {holds.name} on my record, not {said.name}. Rinsed out and filled anew? "
        "Tell me that first.",
        f"{capital(bottle)} holds {holds.name} on record since it was last rinsed out, not {said.name}. If it was "
        "rinsed out, pumped through and filled anew, tell me that first. Or name another bottle.",
    )


def _refused_agent(answer: Answer) -> Line:
    agent = answer.details["agent"]
    return Line(f"No. {capital(agent.name)} isn't for use near reptiles. Ask your vet what to use instead.")


def _refused_in_water(answer: Answer) -> Line:
    agent, enclosure = answer.details["agent"], answer.details["enclosure"]
    name = capital(agent.name)
    return Line(f"No. {name} harms amphibians and water animals, so not in {enclosure.name}. Ask your vet what to use.")


LINES: dict[str, Callable[[Answer], Line]] = {
    "the_round.recorded": _recorded,
    "the_round.windows": _windows,
    "the_round.gap": _gap,
    "the_round.stayed_wet": _stayed_wet,
    "the_round.out_and_shut_in": _out_and_shut_in,
    "the_round.mid_hold": _mid_hold,
    "the_round.dried": _dried,
    "the_round.early": _early,
    "the_round.wipe_will_not_do": _wipe_will_not_do,
    "the_round.already": _already,
    "the_round.no_figure": _no_figure,
    "the_round.rinsed_off": _rinsed_off,
    "the_round.only_cleans": _only_cleans,
    "the_round.back_too_soon": _back_too_soon,
    "the_round.out_first": _out_first,
    "the_round.animal_inside": _animal_inside,
    "the_round.is_it_cold": _is_it_cold,
    "the_round.unknown_mix": _unknown_mix,
    "the_round.holds_another": _holds_another,
    "the_round.which_step": _which_step,
    "the_round.not_how_strong": _not_how_strong,
    "the_round.nothing_in_it": _nothing_in_it,
    "the_round.which_was_it": _which_was_it,
    "the_round.refused_agent": _refused_agent,
    "the_round.refused_in_water": _refused_in_water,
}
