"""How it is spoken of what the keeper sees and smells, and of leaving a clean before it is done."""

from __future__ import annotations

from collections.abc import Callable

from assistant.contract import Answer, Line
from assistant.say.wording.harm import vet
from assistant.say.wording.plain import capital, clock, listed, span
from assistant.say.wording.steps import NAMES, animal_of, name_of, to_do_now

# ---------------------------------------------------------------- the film


def _runs_on(answer: Answer) -> Line:
    left, several = answer.details["left_s"], answer.details["several"]
    name = capital(listed(several[:2])) if len(several) > 1 else capital(name_of(answer.details["enclosure"]))
    if left is None:
        return Line(f"Good, {name}. I have no wet time to count it by; its label decides.")
    if len(several) > 1:
        return Line(f"Good. {name}: the clocks run on, {span(left)} left on the first.")
    return Line(f"Good. {name}: the clock runs on, {span(left)} left.")


def _all_dry(answer: Answer) -> Line:
    return Line(f"{capital(name_of(answer.details['enclosure']))}: is all of it dry, corners too?")


# ---------------------------------------------------------------- smell and wet


def _sensed(answer: Answer) -> Line:
    details = answer.details
    name, verdict = capital(name_of(details["enclosure"])), details["verdict"]
    left = [NAMES[step] for step in verdict.blocked_by]
    if details["smell"]:
        airing = f" About {span(details['left_s'])} by the clock." if details["left_s"] else ""
        say = f"{name}: then not yet. Leave it open; tell me when the smell is gone.{airing}"
    elif details["wet"]:
        say = f"{name}: then not yet. Dry it, corners too; tell me when it's dry."
    elif verdict.ready:
        clean = " It was a clean, not a disinfection." if verdict.claim == "cleaned_only" else ""
        say = f"nothing on my record is left to do. Look, feel, sniff; then it's your call.{clean}"
        return Line(f"{name}: {say}", f"{name}: noted. {capital(say)}\nHeat on, lock shut, hands washed.")
    elif verdict.remarks:
        say = f"{name}: noted. One thing that you told me I didn't follow: ask me before it goes back."
    else:
        say = f"{name}: noted. Still left: {listed(left) if len(left) < 5 else f'{left[0]} and {len(left) - 1} more'}."
    shown = f"{name}: left: {', '.join(left)}." if left else ""
    if verdict.earliest is not None:
        shown += f"\nBy the clocks alone not before {clock(verdict.earliest, details['now'])}."
    return Line(say, f"{say}\n{shown}" if shown else "")


def _smells_still(answer: Answer) -> Line:
    name = capital(name_of(answer.details["enclosure"]))
    return Line(f"{name}: a smell is on record, so it isn't aired yet. Tell me when the smell is gone.")


def _smells_inside(answer: Answer) -> Line:
    enclosure = answer.details["enclosure"]
    name = capital(name_of(enclosure))
    if answer.details["smell"]:
        say = f"{name}: take {animal_of(enclosure)} out again and leave it open. Tell me when the smell is gone."
    else:
        say = f"{name}: take {animal_of(enclosure)} out again and dry it, corners too. Tell me when it's dry."
    return Line(say, f"{say}\nIf the animal touched anything wet: lukewarm running water, and ring your vet.")


def _sensed_no_round(answer: Answer) -> Line:
    if answer.details["bad"]:
        return Line("No clean is open there. Keep the animal out of it, open a window, and look for where it's from.")
    return Line("No clean is open there, so there is nothing to note it on.")


# ---------------------------------------------------------------- leaving it before it is done


def _pause(answer: Answer) -> Line:
    details = answer.details
    running = " The wet time won't count unless you vouch for it." if details["running"] else ""
    return Line(f"Pause {listed(details['names'])}? It stays open and not ready.{running}")


def _paused(answer: Answer) -> Line:
    details = answer.details
    waits = f" {capital(animal_of(details['enclosure']))} stays out." if details["out"] else ""
    return Line(f"{capital(listed(details['names']))}: paused, next is {NAMES[details['next']]}.{waits}")


def _finish_as_clean(answer: Answer) -> Line:
    details = answer.details
    left = [NAMES[step] for step in details["left"]]
    still = f" {capital(listed(left))} still {'counts' if len(left) == 1 else 'count'};" if 0 < len(left) <= 3 else ""
    name = capital(listed(details["names"]))
    return Line(
        f"{name}: finish it as a clean?{still} the log will say not disinfected.",
        f"{name}: finish it as a clean, not a disinfection? Still to do: {', '.join(left) or 'nothing'}. "
        "The log will say not disinfected.",
    )


def _clean_only(answer: Answer) -> Line:
    details = answer.details
    what = to_do_now(details["way"], details["enclosure"], details["agent"])
    return Line(f"{capital(listed(details['names']))}: clean only, not disinfected. Next: {what}.")


def _nothing_to_give_up(answer: Answer) -> Line:
    details = answer.details
    name = capital(name_of(details["enclosure"]))
    what = to_do_now(details["way"], details["enclosure"], details["agent"])
    if details["served"]:
        return Line(f"{name}: the wet time is served, there's nothing to give up. Next: {what}.")
    return Line(f"{name}: it is a clean only already. Next: {what}.")


def _of_the_clean(answer: Answer) -> Line:
    """It may be of the floor, a bottle or a mouth: only with its enclosure named is it recorded."""
    rounds = answer.details["rounds"]
    home = f"the {rounds[0].enclosure}" if len(rounds) == 1 else "an enclosure"
    return Line(f"Of the clean nothing is recorded: it may be of something else. Was it {home}? Then name it.")


def _animal_first(answer: Answer) -> Line:
    """Every step is done, and yet it doesn't go back: it is loose, being rinsed, or hurt."""
    first = answer.details["first"]
    if first == "loose":
        return Line("Not yet: still loose on my record. Find it first, tell me when it's found.")
    doctor = vet(answer.details["people"])
    if first == "rinsing":
        return Line(f"Not yet: keep rinsing it, then call {doctor}. The clean itself is done.")
    return Line(f"Not yet: call {doctor}, first, and do as they say. The clean itself is done.")


LINES: dict[str, Callable[[Answer], Line]] = {
    "the_round.of_the_clean": _of_the_clean,
    "the_round.animal_first": _animal_first,
    "the_round.runs_on": _runs_on,
    "the_round.all_dry": _all_dry,
    "the_round.sensed": _sensed,
    "the_round.smells_still": _smells_still,
    "the_round.smells_inside": _smells_inside,
    "the_round.sensed_no_round": _sensed_no_round,
    "the_round.pause": _pause,
    "the_round.paused": _paused,
    "the_round.finish_as_clean": _finish_as_clean,
    "the_round.clean_only": _clean_only,
    "the_round.nothing_to_give_up": _nothing_to_give_up,
}
