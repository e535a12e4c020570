"""How doses are spoken of and asked back: the number first, one dose only; everything else is on the screen."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from fractions import Fraction

from assistant.contract import Answer, Doubt, Line
from assistant.core.quantities.amounts import Amount, Mix, Percent, SaidRatio
from assistant.core.quantities.ratio import Ratio
from assistant.say.wording.amounts import number, rounded, said_unmeasured, said_whole
from assistant.say.wording.dose_said import said, said_dose, said_part, said_strength
from assistant.say.wording.dose_shown import shown_dose, shown_ratio
from assistant.say.wording.plain import capital, digits, listed


def _dose(answer: Answer) -> Line:
    return Line(said(answer.details), shown_dose(answer.details))


def _confirm(answer: Answer) -> Line:
    """The digits heard, the dose in the same breath, and a question."""
    details = answer.details
    doubts: tuple[Doubt, ...] = details["doubts"]
    dose = said_dose(details)
    wanted: Mix = details["wanted"]
    heard = doubts[0].heard
    if len(doubts) == 1 and isinstance(wanted, SaidRatio) and heard == number(wanted.second):
        word = "in" if details["ratio"].reading == "in" else "to"
        say = f"{capital(said_part(wanted.first))} {word} {_read_back(heard)} takes {dose}. Right?"
    else:
        say = f"I heard {listed(_read_back(doubt.heard) for doubt in doubts)}: {dose}. Right?"
    return Line(say, "\n".join([say, shown_dose(details)]))


# ---------------------------------------------------------------- asked back


def _missing(answer: Answer) -> Line:
    details = answer.details
    if details["ask"]:
        return Line(details["ask"])
    if details["kind"] == "mix":
        return Line("At what mix? Say one in how many, or how many percent.")
    return Line("For which bottle, or how much in all?")


def _which_volume(answer: Answer) -> Line:
    volumes: tuple[Amount, ...] = answer.details["candidates"]
    return Line(f"How much in all: {listed(map(said_whole, volumes), 'or')}?")


def _which_mix(answer: Answer) -> Line:
    return Line("Which mix? I heard more than one.")


def _turned(answer: Answer) -> Line:
    said: SaidRatio = answer.details["said"]
    water, part = number(said.first), number(said.second)
    return Line(f"{water} of water to {part} of concentrate? If not, say how many parts of each.")


def _how_much_stronger(answer: Answer) -> Line:
    return Line("At what mix, then? Say one in how many, or how many percent.")


def _odd_number(answer: Answer) -> Line:
    return Line(f"I heard {number(answer.details['number'])}, and no ratio that I know. One in what?")


def _number_over(answer: Answer) -> Line:
    """ "I heard one in 15, and 50 besides": which was meant."""
    of = answer.details["of"]
    if isinstance(of, SaidRatio):
        heard = f"{said_part(of.first)} {'in' if of.word == 'in' else 'to'} {number(of.second)}"
    elif isinstance(of, Percent):
        heard = f"{number(of.percent)} percent"
    elif isinstance(of, Amount):
        heard = said_whole(of)
    else:
        heard = "a mix"
    return Line(f"I heard {heard}, and {number(answer.details['number'])} besides. Which is it?")


def _which_bottle(answer: Answer) -> Line:
    return Line(f"One bottle at a time: {listed(answer.details['candidates'], 'or')}?")


def _which_product(answer: Answer) -> Line:
    return Line(f"Which one: {listed(answer.details['candidates'], 'or')}?")


def _too_much(answer: Answer) -> Line:
    bottle, volume = answer.details["bottle"], answer.details["volume"]
    holds = said_whole(bottle.capacity)
    return Line(f"{capital(said_whole(volume))} won't fit: the {bottle.name} holds {holds}. How much in all?")


def _how_strong(answer: Answer) -> Line:
    return Line(f"How strong is the {answer.details['name']}, in percent? It's on the label.")


def _weaker_stock(answer: Answer) -> Line:
    details = answer.details
    percent, wanted = rounded(details["percent"]), said_strength(details["wanted"])
    say = f"No: the {details['name']} is only {percent} percent, weaker than {wanted}. Mixing only thins it."
    return Line(say, "\n".join([say, "Ask for a weaker mix, or take a stronger product."]))


def _either_way(answer: Answer) -> Line:
    n: Fraction = answer.details["n"]
    first, second = Ratio(n, "in"), Ratio(n, "to")
    say = f"One in {number(n)} in all, or one to {number(n)} of water?"
    lines = [say, *(f"{capital(shown_ratio(ratio))}." for ratio in (first, second))]
    return Line(say, "\n".join([*lines, "To settle it for good, set [habits] ratio in keeping.toml."]))


def _bad_ratio(answer: Answer) -> Line:
    said: SaidRatio = answer.details["said"]
    return Line(f"{capital(said_part(said.first))} in {number(said.second)} is more than the whole. One in how many?")


def _thinned(answer: Answer) -> Line:
    """Water alone goes to a mix that is made weaker."""
    details, wanted = answer.details, answer.details["wanted"]
    water, there, whole = (said_unmeasured(details[part]) for part in ("water", "there", "total"))
    say = f"{capital(water)} of water to {there} of the mix: {_said_ratio(wanted)}, {whole} in all."
    return Line(say)


def _no_weaker(answer: Answer) -> Line:
    there, wanted = _said_ratio(answer.details["there"]), _said_ratio(answer.details["wanted"])
    return Line(f"Water only makes it weaker, and {wanted} is no weaker than {there}. Down to one in how many?")


def _said_ratio(said: SaidRatio) -> str:
    return f"{said_part(said.first)} {'to' if said.word == 'colon' else said.word} {number(said.second)}"


def _say_again(answer: Answer) -> Line:
    return Line("Say it again, slowly: one in how many, or how much in all?")


# ---------------------------------------------------------------- refused


def _bleach_too_strong(answer: Answer) -> Line:
    details = answer.details
    say = "No. For a surface I mix no bleach above one percent. The strongest use I can cite is one in ten."
    return Line(say, "\n".join([say, f"{details['strongest'].says}.", details["most"].note]))


def _other_in_bottle(answer: Answer) -> Line:
    details = answer.details
    bottle, first, pair = details["bottle"], details["first"], details["pair"]
    why = "I don't know what they do together" if pair is None else f"that {pair.because}"
    if details["on_record"]:
        say = f"No. The {bottle.name} held {first.name}: {why}. Rinse it out first, or take another bottle."
    else:
        say = f"No. The {bottle.name} is for {first.name}: {why}. Take another bottle."
    return Line(say, "\n".join([say, f"{details['reason'].says}."]))


def _must_not_meet(answer: Answer) -> Line:
    details = answer.details
    pair = details["pair"]
    why = "I don't know what they do together" if pair is None else f"that {pair.because}"
    say = f"No, never in one bottle, {details['first'].name} and {details['second'].name}: {why}."
    return Line(say, "\n".join([say, f"{details['reason'].says}."]))


def _read_back(heard: str) -> str:
    """Digit by digit where it was a number; hyphens keep the digits of one number together."""
    return digits(heard).replace(" ", "-") or heard


LINES: Mapping[str, Callable[[Answer], Line]] = {
    "mixing.dose": _dose,
    "mixing.confirm": _confirm,
    "mixing.missing": _missing,
    "mixing.which_volume": _which_volume,
    "mixing.which_mix": _which_mix,
    "mixing.turned": _turned,
    "mixing.how_much_stronger": _how_much_stronger,
    "mixing.odd_number": _odd_number,
    "mixing.number_over": _number_over,
    "mixing.which_bottle": _which_bottle,
    "mixing.which_product": _which_product,
    "mixing.too_much": _too_much,
    "mixing.how_strong": _how_strong,
    "mixing.weaker_stock": _weaker_stock,
    "mixing.either_way": _either_way,
    "mixing.bad_ratio": _bad_ratio,
    "mixing.say_again": _say_again,
    "mixing.thinned": _thinned,
    "mixing.no_weaker": _no_weaker,
    "mixing.bleach_too_strong": _bleach_too_strong,
    "mixing.other_in_bottle": _other_in_bottle,
    "mixing.must_not_meet": _must_not_meet,
}
