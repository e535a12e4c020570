"""How doses are spoken of: the number first, one dose only; everything else is on the screen."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from fractions import Fraction
from math import floor, log10
from typing import Any

from assistant.contract import Answer, Doubt, Line
from assistant.core.amounts import Amount, Mix, Percent, Ppm, SaidRatio
from assistant.core.decay import Age
from assistant.core.measuring import Measured
from assistant.core.ratio import Ratio
from assistant.core.units import spoken
from assistant.say.wording.plain import capital, count, digits, listed

MOST_WORDS = 25
FIGURES = 3
"""Significant figures of an amount that no tool rounds."""

ALWAYS, HEARD, OFTEN, ROOM = range(4)
"""How much a clause is needed: the last to go, the first to go."""


def _dose(answer: Answer) -> Line:
    details = answer.details
    clauses = [
        (ALWAYS, f"{_spoken_dose(details)}, {_spoken_mix(details)}:"),
        (OFTEN, _spoken_marks(details["measured"])),
        (HEARD if details["spoken"] else ROOM, _spoken_whole(details)),
        (ROOM, _spoken_warning(details)),
    ]
    if details["buy_fresh"] and not details["is_ratio"]:
        clauses.insert(1, (HEARD, "that bleach is old, buy fresh."))
    return Line(_fitted(clauses), _shown(details))


def _confirm(answer: Answer) -> Line:
    """The digits heard, the dose in the same breath, and a question."""
    details = answer.details
    doubts: tuple[Doubt, ...] = details["doubts"]
    dose = _spoken_dose(details)
    wanted: Mix = details["wanted"]
    heard = doubts[0].heard
    if len(doubts) == 1 and isinstance(wanted, SaidRatio) and heard == _number(wanted.second):
        word = "in" if details["ratio"].reading == "in" else "to"
        say = f"{capital(_said_part(wanted.first))} {word} {_read_back(heard)} takes {dose}. Right?"
    else:
        say = f"I heard {listed(_read_back(doubt.heard) for doubt in doubts)}: {dose}. Right?"
    return Line(say, "\n".join([say, _shown(details)]))


# ---------------------------------------------------------------- spoken


def _spoken_dose(details: Mapping[str, Any]) -> str:
    """ "15.2 mils of bleach": to the tool's mark, else to three figures."""
    measured: Measured | None = details["measured"]
    amount = measured.amount if measured is not None else details["mixed"].concentrate
    number = _number(amount.amount) if measured is not None else _rounded(amount.amount)
    return f"{number} {spoken(amount.unit, amount.amount)} of {details['name']}"


def _spoken_mix(details: Mapping[str, Any]) -> str:
    """Which mix, and which reading of it: "one to 32", "for 500 parts per million"."""
    wanted: Mix = details["wanted"]
    if isinstance(wanted, Percent):
        return f"for {_number(wanted.percent)} percent"
    if isinstance(wanted, Ppm):
        return f"for {_number(wanted.ppm)} parts per million"
    if isinstance(wanted, SaidRatio):
        if details["ratio"].why == "equal parts":
            return "equal parts"
        word = "in" if details["ratio"].reading == "in" else "to"
        return f"{_said_part(wanted.first)} {word} {_number(wanted.second)}"
    return "undiluted"


def _spoken_marks(measured: Measured | None) -> str:
    """ "big syringe once full, then to 5.2." """
    if measured is None:
        return ""
    times = _times(measured.full_fills)
    tool, mark, full = measured.tool.name, measured.mark.amount, measured.full.amount
    if mark == full and measured.full_fills == 0:
        return f"one full {tool}."
    if mark == full:
        return f"{measured.fills} full {tool}s." if not tool.endswith("s") else f"{tool}, {measured.fills} times full."
    if measured.full_fills == 0:
        return f"{tool} to {_number(mark)}."
    return f"{tool} {times} full, then to {_number(mark)}."


def _times(fills: int) -> str:
    return {1: "once", 2: "twice"}.get(fills, f"{fills} times")


def _spoken_whole(details: Mapping[str, Any]) -> str:
    total: Amount = details["mixed"].total
    whole = f"{_number(total.amount)} {spoken(total.unit, total.amount)}"
    return f"Into water, {whole} in all." if details["mixed"].water.amount else f"That is all {whole}."


def _spoken_warning(details: Mapping[str, Any]) -> str:
    measured: Measured | None = details["measured"]
    if not details["tools"] or not details["mixed"].water.amount:
        return ""
    if measured is None:
        return "None of your tools measures that."
    return "" if measured.good_enough else "Roughly: no tool of yours measures that well."


def _fitted(clauses: Iterable[tuple[int, str]]) -> str:
    """As many clauses as 25 words hold, in their order, the least needed left out first."""
    kept = [(need, text) for need, text in clauses if text]
    for need in (ROOM, OFTEN, HEARD):
        while _words(kept) > MOST_WORDS and any(found == need for found, _ in kept):
            last = max(place for place, (found, _) in enumerate(kept) if found == need)
            del kept[last]
    say = " ".join(text for _, text in kept)
    say = say if len(kept) > 1 else f"{say.rstrip(':')}."
    return say.replace(": Into", ". Into").replace(": None", ". None").replace(": That", ". That")


def _words(clauses: Iterable[tuple[int, str]]) -> int:
    return len(" ".join(text for _, text in clauses).split())


# ---------------------------------------------------------------- shown


def _shown(details: Mapping[str, Any]) -> str:
    lines = [
        _shown_sum(details),
        _shown_reading(details),
        _shown_marks(details["measured"], details["tools"] and details["mixed"].water.amount > 0),
        _shown_strength(details),
        *_shown_age(details),
        *_shown_notes(details),
    ]
    return "\n".join(line for line in lines if line)


def _shown_sum(details: Mapping[str, Any]) -> str:
    mixed = details["mixed"]
    if not mixed.water.amount:
        return f"{_shown_amount(mixed.total)} {details['name']}, undiluted"
    water = f"{_shown_amount(mixed.water)} water"
    return f"{_shown_amount(mixed.concentrate)} {details['name']} + {water} = {_shown_amount(mixed.total)}"


def _shown_reading(details: Mapping[str, Any]) -> str:
    ratio: Ratio = details["ratio"]
    if not isinstance(details["wanted"], SaidRatio):
        return "" if ratio.n == 0 else f"The same as 1 to {_rounded(ratio.n)}."
    line = f"Read as {_shown_ratio(ratio)}"
    if ratio.why == "setting":
        line += ", as you set it"
    if ratio.why == "default":
        line += ' (a colon means "to" until keeping.toml says otherwise: [habits] ratio)'
    if details["other"] is not None:
        other, concentrate = details["other"]
        line += f"; 1 {other.reading} {_rounded(other.n)} would take {_shown_amount(concentrate)}"
    return f"{line}."


def _shown_ratio(ratio: Ratio) -> str:
    if ratio.why == "equal parts":
        return "equal parts"
    if ratio.reading == "in":
        return f"1 in {_rounded(ratio.n)}: one part, {_rounded(ratio.as_to[1])} of water"
    return f"1 to {_rounded(ratio.n)}: one part in {_rounded(ratio.as_in[1])} in all"


def _shown_marks(measured: Measured | None, tools: bool) -> str:
    if measured is None:
        return "None of the tools in keeping.toml measures that." if tools else ""
    fills = f"{_times(measured.full_fills)} full, then " if measured.full_fills else ""
    percent = _rounded(measured.off_by / measured.wanted * 100, 2)
    line = (
        f"{capital(measured.tool.name)}: {fills}to the {_shown_amount(measured.mark)} mark; off by {percent} % at most."
    )
    return line if measured.good_enough else f"{line} That is rough: use a finer tool, or mix more at once."


def _shown_strength(details: Mapping[str, Any]) -> str:
    percent, ppm, (low, high) = details["percent"], details["ppm"], details["range"]
    if percent is None:
        return "Strength: not known, the concentrate's own isn't."
    line = f"Strength: {_rounded(percent)} %"
    if low is not None and low != high:
        line += f" ({_rounded(low)} to {_rounded(high)} % by the tool)"
    if ppm is None:
        return f"{line}."
    way = {
        "convention": "taking 1 percent as 10,000 ppm",
        "weight in volume": "from its percent weight in volume",
        "weight in weight": "from its percent by weight and density",
    }[details["chlorine"].way]
    return f"{line}, {_rounded(ppm)} ppm available chlorine, {way}."


def _shown_age(details: Mapping[str, Any]) -> list[str]:
    """What is known of a bleach's age, and whether the dose makes up for it."""
    age: Age | None = details["age"]
    if age is None or age.verdict == "no date":
        return []
    if age.verdict == "not yet made":
        return ["Its date in keeping.toml lies ahead, so its age is left out."]
    days = f"{count(age.days or 0, 'day')} old"
    if age.verdict == "no temperature":
        return [f"Bleach {days}; how warm it is kept isn't set, so nothing is made up for its age."]
    if age.verdict == "too old":
        return [f"Bleach {days}: buy fresh. Nothing is made up for its age."]
    if age.verdict == "outside the law":
        return [f"Bleach {days}; what it lost can't be worked out at its strength and warmth. If in doubt, buy fresh."]
    left = f"about {_rounded(Fraction(age.left or 0) * 100, 2)} % of its strength left"
    if age.verdict == "too weak":
        return [f"Bleach {days}, {left}: buy fresh. Nothing is made up for its age."]
    if details["is_ratio"]:
        return [f"Bleach {days}, {left}; a ratio is kept as said, so the mix is that much weaker."]
    return [f"Bleach {days}, {left}; the dose makes up for it."]


def _shown_notes(details: Mapping[str, Any]) -> list[str]:
    lines = []
    if details["taken_from"] == "bottle":
        lines.append(f"The {details['bottle'].name}'s own mix, from keeping.toml.")
    if details["taken_from"] == "label":
        lines.append("The label's own dilution, from keeping.toml.")
    if details["weaker_than_label"]:
        label: Ratio = details["label_ratio"]
        lines.append(f"Weaker than its label's 1 {label.reading} {_rounded(label.n)}.")
    if details["bottle_for"] is not None:
        lines.append(f"That bottle is meant for {details['bottle_for'].name}: rinse it out and pump it through first.")
    return lines


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
    said = (f"{_number(volume.amount)} {spoken(volume.unit, volume.amount)}" for volume in volumes)
    return Line(f"How much in all: {listed(said, 'or')}?")


def _which_mix(answer: Answer) -> Line:
    return Line("Which mix? I heard more than one.")


def _which_bottle(answer: Answer) -> Line:
    return Line(f"One bottle at a time: {listed(answer.details['candidates'], 'or')}?")


def _which_product(answer: Answer) -> Line:
    return Line(f"Which one: {listed(answer.details['candidates'], 'or')}?")


def _too_much(answer: Answer) -> Line:
    bottle, volume = answer.details["bottle"], answer.details["volume"]
    holds = f"{_number(bottle.capacity.amount)} {spoken(bottle.capacity.unit, bottle.capacity.amount)}"
    said = f"{_number(volume.amount)} {spoken(volume.unit, volume.amount)}"
    return Line(f"{capital(said)} won't fit: the {bottle.name} holds {holds}. How much in all?")


def _how_strong(answer: Answer) -> Line:
    return Line(f"How strong is the {answer.details['name']}, in percent? It's on the label.")


def _weaker_stock(answer: Answer) -> Line:
    details = answer.details
    percent = _rounded(details["percent"])
    return Line(f"The {details['name']} is only {percent} percent, weaker than that. Another mix, or another product?")


def _either_way(answer: Answer) -> Line:
    n: Fraction = answer.details["n"]
    first, second = Ratio(n, "in"), Ratio(n, "to")
    say = f"One in {_number(n)} in all, or one to {_number(n)} of water?"
    lines = [say, *(f"{capital(_shown_ratio(ratio))}." for ratio in (first, second))]
    return Line(say, "\n".join([*lines, "To settle it for good, set [habits] ratio in keeping.toml."]))


def _bad_ratio(answer: Answer) -> Line:
    said: SaidRatio = answer.details["said"]
    return Line(f"{capital(_said_part(said.first))} in {_number(said.second)} is more than the whole. One in how many?")


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
    say = f"No. The {bottle.name} is for {first.name}: {why}. Take another bottle."
    return Line(say, "\n".join([say, f"{details['reason'].says}."]))


def _must_not_meet(answer: Answer) -> Line:
    details = answer.details
    pair = details["pair"]
    why = "I don't know what they do together" if pair is None else f"that {pair.because}"
    say = f"No, never in one bottle, {details['first'].name} and {details['second'].name}: {why}."
    return Line(say, "\n".join([say, f"{details['reason'].says}."]))


# ---------------------------------------------------------------- numbers


def _number(value: Fraction) -> str:
    """As said or marked: every digit if there are few, else rounded to what a tool or an ear can tell."""
    exact = f"{float(value):.10f}".rstrip("0").rstrip(".")
    return exact if len(exact.replace(".", "").lstrip("0")) <= 6 else _rounded(value, 4)


def _rounded(value: Fraction, figures: int = FIGURES) -> str:
    """To so many significant figures, whole numbers whole, never with an exponent."""
    if value == 0:
        return "0"
    places = max(0, figures - 1 - floor(log10(abs(value))))
    text = f"{float(value):.{places}f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


def _shown_amount(amount: Amount) -> str:
    """ "15.15 mL": four figures."""
    return f"{_rounded(amount.amount, 4)} {amount.unit}"


def _said_part(first: Fraction) -> str:
    return "one" if first == 1 else _number(first)


def _read_back(heard: str) -> str:
    """Digit by digit where it was a number; hyphens keep the digits of one number together."""
    return digits(heard).replace(" ", "-") or heard


LINES: Mapping[str, Callable[[Answer], Line]] = {
    "mixing.dose": _dose,
    "mixing.confirm": _confirm,
    "mixing.missing": _missing,
    "mixing.which_volume": _which_volume,
    "mixing.which_mix": _which_mix,
    "mixing.which_bottle": _which_bottle,
    "mixing.which_product": _which_product,
    "mixing.too_much": _too_much,
    "mixing.how_strong": _how_strong,
    "mixing.weaker_stock": _weaker_stock,
    "mixing.either_way": _either_way,
    "mixing.bad_ratio": _bad_ratio,
    "mixing.say_again": _say_again,
    "mixing.bleach_too_strong": _bleach_too_strong,
    "mixing.other_in_bottle": _other_in_bottle,
    "mixing.must_not_meet": _must_not_meet,
}
