"""How meetings of agents are spoken of: the verdict, the reason in one sentence, and what to do instead."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from assistant.contract import Answer, Line
from assistant.core.choice.together import NOT_LISTED
from assistant.core.facts import Agent, Fact
from assistant.say.wording.alarms import NOT_INSTEAD
from assistant.say.wording.harm import emergency, numbers_shown, poison_centre
from assistant.say.wording.plain import capital, listed

LABELS = "Your products' own labels come first."


def _both(answer: Answer) -> str:
    return f"{capital(answer.details['first'].name)} and {answer.details['second'].name}"


def _reason(answer: Answer) -> str:
    """The reason as a sentence. What is from memory is never said as a fact."""
    reason: Fact = answer.details["reason"]
    if reason.kind == "memory":
        return f"{_both(answer)} I keep apart, without a published source."
    if answer.details.get("unlisted"):
        return f"I have nothing published on {listed((answer.details['first'].name, answer.details['second'].name))}."
    return f"{reason.says}."


def _shown(say: str, answer: Answer) -> Line:
    """What is spoken, with the reason's conditions and doubts below."""
    reason: Fact = answer.details["reason"]
    more = [
        f"{capital(text)}." if not text.endswith(".") else capital(text)
        for text in (reason.conditions, reason.note)
        if text
    ]
    return Line(say, "\n".join([say, *more, LABELS]))


# ---------------------------------------------------------------- asked


def _together(answer: Answer) -> Line:
    details = answer.details
    pair = details["pair"]
    if pair is None:
        product = f" in the {details['said'][0]}" if details["said"] else " in it"
        return _shown(
            f"Don't mix. I don't know what is{product}: read its label. On a surface, rinse and dry between.", answer
        )
    if details["same"]:
        return _shown(f"Both are {details['first'].name}: nothing changes. Keep to one product and its label.", answer)
    if pair.verdict == "fine":
        return _shown(f"Fine, by what I have. {_reason(answer)} The labels decide.", answer)
    if pair.verdict == "rinse_between":
        return _shown(f"Rinse between, and not in one bottle. {_reason(answer)}", answer)
    if pair.gas:
        return _shown(f"Never. {_reason(answer)} On a surface, rinse and dry between.", answer)
    return _shown(f"Never in one bottle. {_reason(answer)} On a surface, rinse between.", answer)


def _with_what(answer: Answer) -> Line:
    agents: tuple[Agent, ...] = answer.details["agents"]
    return Line(f"{capital(agents[0].name)} with what?")


def _with_water(answer: Answer) -> Line:
    agent, fact = answer.details["agent"], answer.details["fact"]
    say = f"No hot water. {fact.says}." if answer.details["warm"] else f"{capital(agent.name)} into water. {fact.says}."
    return Line(say)


def _which_two(answer: Answer) -> Line:
    return Line("Which two? Until you know what is in them, don't mix.")


# ---------------------------------------------------------------- refused, or too late


def _must_rinse(answer: Answer) -> Line:
    details = answer.details
    earlier, pair = details["earlier"], details["pair"]
    to_do = {"rinse": "Rinse first", "dry": "Dry it first", "rinse and dry": "Rinse and dry first"}[details["need"]]
    wipe = ", a wipe isn't enough" if details["wiped"] else ""
    where = "still wet there" if details["need"] == "dry" else "still on it"
    if pair is None:
        why = "I don't know what they do together"
    elif details["unlisted"]:
        why = f"nothing I have clears {details['agent'].name} after it"
    else:
        why = f"that {pair.because}"
    say = f"No. {capital(earlier.name)} is {where}: {why}. {to_do}{wipe}."
    return Line(say, "\n".join([say, f"Enclosure: {details['enclosure']}.", f"{details['reason'].says}.", LABELS]))


def _gas_made(answer: Answer) -> Line:
    details = answer.details
    people = details["people"]
    first = "Put it down." if details["bottle"] is not None or details["enclosure"] is None else "Leave it."
    say = f"{first} Get out, shut the door, fresh air. Coughing or stinging: call {poison_centre(people)}."
    held = [thing for thing in (details["bottle"], details["enclosure"]) if thing is not None]
    unknown = (
        f"{capital(listed(held))}: unknown mix, don't use until rinsed out."
        if held
        else "It is an unknown mix: don't use it."
    )
    lines = [
        say,
        f"Can't breathe, or an animal left inside: don't go back, call {emergency(people)}.",
        *(f"- {step}." for step in details["steps"]),
        f"{details['reason'].says}.",
        unknown,
        *numbers_shown(people),
        NOT_INSTEAD,
    ]
    return Line(say, "\n".join(lines))


def _have_met(answer: Answer) -> Line:
    details = answer.details
    pair = details["pair"]
    if pair.verdict == "fine":
        return _shown(f"No harm that I know of. {_reason(answer)} The labels decide.", answer)
    if pair.verdict == "rinse_between":
        return _shown(f"Rinse it off and do that step again. {_reason(answer)}", answer)
    away = "Rinse it out well" if details["enclosure"] is None else "Rinse it off well"
    return _shown(f"Don't use it. {_reason(answer)} {away}; any fumes, get out.", answer)


def _put_on(answer: Answer) -> Line:
    details = answer.details
    held, own = details["held"], details["own"]
    noted = f"{capital(details['agent'].name)} noted on {details['enclosure']}."
    again = ", then spray again" if details["sprayed"] else ""
    if held is None:
        off = listed(details["off"]) or "wipe it off"
        return Line(
            f"{capital(details['agent'].name)} noted on {details['enclosure']}. It comes off again: {off}{again}."
        )
    to_do = "Rinse it off" if held.need == "rinse" else "Rinse it off and let it dry"
    if held.pair is None:
        why = "I don't know what they do together"
    elif held.pair.fact == NOT_LISTED:
        why = "nothing I have clears that"
    else:
        why = f"that {held.pair.because}"
    return Line(f"{noted} {to_do} before any {own.name}: {why}.")


LINES: Mapping[str, Callable[[Answer], Line]] = {
    "choosing.together": _together,
    "choosing.with_what": _with_what,
    "choosing.with_water": _with_water,
    "choosing.which_two": _which_two,
    "choosing.must_rinse": _must_rinse,
    "choosing.gas_made": _gas_made,
    "choosing.have_met": _have_met,
    "choosing.put_on": _put_on,
}
