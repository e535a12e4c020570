"""How harm is spoken of: what to do first, in ten words at most; then whom to call."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping

from assistant.contract import Answer, Line
from assistant.core.household import People
from assistant.say.wording.alarms import LINES as ALARM_LINES
from assistant.say.wording.alarms import MOST_WORDS_IN_A_NUMBER, NOT_INSTEAD
from assistant.say.wording.plain import capital, span


def spoken_number(number: str, name: str) -> str:
    """A place to call as spoken: its name, and its number if that is short."""
    words = re.sub(r"[^\w ]", " ", number).split()
    if not words:
        return name
    if len(words) > MOST_WORDS_IN_A_NUMBER:
        return f"{name}, number on screen"
    return f"{name}, {' '.join(words)}"


def poison_centre(people: People) -> str:
    """The poison centre as spoken."""
    return spoken_number(
        people.poison_centre, "the poison centre" if people.poison_centre else "your local poison centre"
    )


def emergency(people: People) -> str:
    """The emergency number as spoken."""
    return spoken_number(people.emergency, "emergency" if people.emergency else "your emergency number")


def vet(people: People) -> str:
    """The vet as spoken."""
    return spoken_number(people.vet, "your vet")


def numbers_shown(people: People) -> list[str]:
    """The numbers of keeping.toml, a line each; those that aren't set say so."""
    return [
        f"Poison centre: {people.poison_centre or 'your local one (set poison_centre in keeping.toml)'}",
        f"Emergency: {people.emergency or 'your local number (set emergency in keeping.toml)'}",
        f"Vet: {people.vet or 'yours (set vet in keeping.toml)'}",
    ]


# ---------------------------------------------------------------- a splash


def _line(say: str, answer: Answer) -> Line:
    """What is spoken, and below it the steps, the numbers, and how the sources differ."""
    steps = [f"- {step}." for step in answer.details["steps"]]
    notes = [f"Note: {note}" for note in answer.details.get("notes", ())]
    return Line(say, "\n".join([say, *steps, *numbers_shown(answer.details["people"]), *notes, NOT_INSTEAD]))


def _then_call(answer: Answer) -> str:
    people = answer.details["people"]
    if answer.details["victim"] == "either":
        return f"A person: {poison_centre(people)}. An animal: {vet(people)}."
    return f"Then call {poison_centre(people) if answer.details['victim'] == 'person' else vet(people)}."


def _clock(answer: Answer) -> str:
    counting = ", I'm counting" if answer.details["counting"] else ""
    return f"{answer.details['minutes']} minutes{counting}."


def _eye(answer: Answer) -> Line:
    if answer.details["too"]:
        return _several(answer)
    clock = _clock(answer)
    if answer.details["victim"] == "either":
        return _line(
            f"Running water on that eye now. {answer.details['minutes']} minutes. {_then_call(answer)}", answer
        )
    if answer.details["victim"] == "animal":
        return _line(f"Running water on its eye now, lukewarm. {clock} Nothing by mouth. {_then_call(answer)}", answer)
    return _line(f"Rinse that eye now, running water. Lens out. {clock} {_then_call(answer)}", answer)


def _skin(answer: Answer) -> Line:
    if answer.details["too"]:
        return _several(answer)
    clock = _clock(answer)
    if answer.details["victim"] == "either":
        return _line(f"Running water on it now. {answer.details['minutes']} minutes. {_then_call(answer)}", answer)
    if answer.details["victim"] == "animal":
        return _line(f"Running water over it now, lukewarm. {clock} Nothing by mouth. {_then_call(answer)}", answer)
    return _line(f"Running water on it now. Wet clothes off. {clock} {_then_call(answer)}", answer)


def _mouth(answer: Answer) -> Line:
    if answer.details["too"]:
        return _several(answer)
    people = answer.details["people"]
    if answer.details["victim"] == "either":
        return _line(f"Call now. {_then_call(answer)} Nothing by mouth unless they say.", answer)
    if answer.details["victim"] == "animal":
        return _line(f"Call {vet(people)}, now. Nothing by mouth, don't make it vomit. Label in hand.", answer)
    return _line(
        f"Call {poison_centre(people)}, now. Take nothing more unless they say. Collapsed: {emergency(people)}.", answer
    )


def _lungs(answer: Answer) -> Line:
    if answer.details["too"]:
        return _several(answer)
    people = answer.details["people"]
    if answer.details["victim"] == "either":
        return _line(f"Out now, into fresh air. Don't go back. {_then_call(answer)}", answer)
    if answer.details["victim"] == "animal":
        first = "Get yourself to fresh air first. Bring it out only if no fumes sting."
        return _line(f"{first} Then call {vet(people)}.", answer)
    return _line(
        f"Out now, into fresh air. Don't go back. Coughing, stinging: {poison_centre(people)}. "
        f"Can't breathe: {emergency(people)}.",
        answer,
    )


def _out_of_it(answer: Answer) -> Line:
    return _line(
        "Stay out, breathe easy. Coughing or stinging that stays: "
        f"{poison_centre(answer.details['people'])}. Back in only once aired, with no smell at all.",
        answer,
    )


def _animal_in_gas(answer: Answer) -> Line:
    return _line(
        f"Don't go back in. Call {emergency(answer.details['people'])}: gas from mixed cleaners, animal inside.", answer
    )


def _keep_rinsing(answer: Answer) -> Line:
    clean = " Of the clean nothing is recorded: name the enclosure." if answer.details.get("bare") else ""
    return _line(f"Keep rinsing: {span(answer.details['left_s'])} left. {_then_call(answer)}{clean}", answer)


def _several(answer: Answer) -> Line:
    """More than one place: out of fumes first, then water, and one call for all of it."""
    details = answer.details
    places = (details["place"], *details["too"])
    person = details["victim"] != "animal"
    call = poison_centre(details["people"]) if person else vet(details["people"])
    if "lungs" in places:
        wet = next((place for place in places if place in ("eye", "skin")), None)
        then = f" Then running water on the {wet}, 15 minutes." if wet else " Take nothing by mouth."
        return _line(f"Out now, into fresh air.{then} Call {call}.", answer)
    if "mouth" in places:
        wet = next(place for place in places if place in ("eye", "skin"))
        unless = "unless they say" if person else "at all"
        return _line(f"Running water on the {wet} now. Call {call}, while rinsing. Nothing by mouth {unless}.", answer)
    if details["victim"] == "either":
        return _line(f"Running water on both now. {details['minutes']} minutes. {_then_call(answer)}", answer)
    first = "Rinse eye and skin now, running water." if person else "Running water on eye and skin now, lukewarm."
    off = " Lens and wet clothes off." if person else " Nothing by mouth."
    return _line(f"{first}{off} {details['minutes']} minutes, I'm counting. {_then_call(answer)}", answer)


def _nothing_given(answer: Answer) -> Line:
    people = answer.details["people"]
    if answer.details["victim"] == "animal":
        return _line(f"No: nothing by mouth, and don't make it vomit. Call {vet(people)}, now.", answer)
    return _line(f"Nothing of the kind unless they tell you. Call {poison_centre(people)}, now.", answer)


def _only_water(answer: Answer) -> Line:
    goes_on = answer.details["left_s"] and answer.details["victim"] != "either"  # both numbers leave no breath for it
    left = f" Keep rinsing: {span(answer.details['left_s'])} left." if goes_on else ""
    return _line(f"No, nothing on it but running water.{left} {_then_call(answer)}", answer)


def _called_off(answer: Answer) -> Line:
    ended = answer.details["ended"]
    first = f"Stopped: the {ended} rinse." if ended else "No rinse is running."
    call = vet if answer.details["victim"] == "animal" else poison_centre
    return _line(f"{first} If anything hurts after all: rinse, and call {call(answer.details['people'])}.", answer)


def _fire(answer: Answer) -> Line:
    say = f"Get out now, into fresh air. Call {emergency(answer.details['people'])}. Never water on burning alcohol."
    return _line(say, answer)


def _animal_down(answer: Answer) -> Line:
    call = vet(answer.details["people"])
    return _line(f"Call {call}, now. Fresh air. Product on it: lukewarm water over it. Nothing by mouth.", answer)


def _lens(answer: Answer) -> Line:
    left = f" {capital(span(answer.details['left_s']))} left." if answer.details["left_s"] else ""
    return _line(f"Lens out, and rinse on under running water.{left} {_then_call(answer)}", answer)


def _see_it(answer: Answer) -> Line:
    who = answer.details["people"]
    clean = " Of the clean nothing is recorded." if answer.details.get("bare") else ""
    if answer.details["victim"] == "animal":
        return _line(f"The rinse is over. Call {vet(who)}, now.{clean}", answer)
    return _line(
        f"The rinse is over. Still sore, red or blurred: have it seen urgently. Call {poison_centre(who)}.{clean}",
        answer,
    )


def _collapsed(answer: Answer) -> Line:
    people = answer.details["people"]
    if answer.details["victim"] == "animal":
        return _line(
            f"Call {vet(people)}, now. Fresh air, lukewarm water over it on the way. Nothing by mouth.", answer
        )
    if answer.details["victim"] == "either":
        return _line(
            f"A person: {emergency(people)}, now. An animal: {vet(people)}. Fresh air. Nothing by mouth.", answer
        )
    if answer.details["place"] == "mouth":
        return _line(f"Call {emergency(people)}, now. Nothing by mouth. Then {poison_centre(people)}.", answer)
    return _line(
        f"Call {emergency(people)}, now. Fumes: don't go in after them, open doors from outside. Nothing by mouth.",
        answer,
    )


def _numbers(answer: Answer) -> Line:
    people = answer.details["people"]
    if answer.details["victim"] == "either":
        return _line(f"{_then_call(answer)} Label in hand.", answer)
    if answer.details["victim"] == "animal":
        return _line(f"{capital(vet(people))}. Label in hand.", answer)
    return _line(f"{capital(poison_centre(people))}. Collapsed, no breath: {emergency(people)}. Label in hand.", answer)


def _help_called(answer: Answer) -> Line:
    first, place = capital(emergency(answer.details["people"])), answer.details.get("place")
    if place is None:
        return _line(f"{first}. {_WHERE}", answer)
    then = {"lungs": "Stay out, in fresh air.", "mouth": "Nothing by mouth unless they say."}
    return _line(f"{first}. {then.get(place, 'Running water on it until they come.')}", answer)


def _where(answer: Answer) -> Line:
    return _line(_WHERE, answer)


_WHERE = "Running water on it now; from fumes, get out. Eyes, skin, swallowed or breathed in?"


# ---------------------------------------------------------------- nothing on an animal


def _wound(answer: Answer) -> Line:
    details = answer.details
    call = f"Ask {vet(details['people'])}."
    if details["studied"]:
        say = f"No. Cleaning strengths aren't wound strengths: in the lab they killed healing cells. {call}"
    else:
        say = f"No. {capital(details['agent'].name)} is for surfaces, never for an animal. {call}"
    reasons = [f"- {reason}." for reason in details["reasons"]]
    vet_line = numbers_shown(details["people"])[-1]
    return Line(say, "\n".join([say, *reasons, "No strength for an animal is given here.", vet_line, NOT_INSTEAD]))


LINES: Mapping[str, Callable[[Answer], Line]] = {
    "harm.eye": _eye,
    "harm.skin": _skin,
    "harm.mouth": _mouth,
    "harm.lungs": _lungs,
    "harm.out_of_it": _out_of_it,
    "harm.animal_in_gas": _animal_in_gas,
    "harm.keep_rinsing": _keep_rinsing,
    "harm.nothing_given": _nothing_given,
    "harm.lens": _lens,
    "harm.only_water": _only_water,
    "harm.called_off": _called_off,
    "harm.fire": _fire,
    "harm.animal_down": _animal_down,
    "harm.see_it": _see_it,
    "harm.numbers": _numbers,
    "harm.collapsed": _collapsed,
    "harm.where": _where,
    "harm.help_called": _help_called,
    "harm.wound": _wound,
    **ALARM_LINES,
}
