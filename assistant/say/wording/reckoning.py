"""How conversions and ratios are spoken of."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from fractions import Fraction

from assistant.contract import Answer, Line
from assistant.core.quantities.amounts import Amount, Mix, SaidRatio
from assistant.core.quantities.ratio import Ratio
from assistant.core.quantities.units import spoken
from assistant.say.wording.amounts import rounded, said_whole
from assistant.say.wording.dose_shown import shown_off, shown_ratio
from assistant.say.wording.plain import capital, listed

FIGURES = 6
"""Shown of a conversion; spoken are three, or every digit of a whole number."""


# ---------------------------------------------------------------- convert


def _convert(answer: Answer) -> Line:
    details = answer.details
    have, found = details["from"], details["to"]
    say = f"{capital(said_amount(found))}."
    if details["spoken"]:
        say = f"{capital(said_amount(found))} in {said_whole(have)}."
    lines = [f"{_shown(have)} = {_shown(found)}"]
    if details["other"] is not None:
        other, otherwise = details["other"]
        lines.append(f"Not to be confused: {_shown(other)} = {_shown(otherwise)}")
    return Line(say, "\n".join(lines))


def _by_convention(answer: Answer) -> Line:
    details = answer.details
    have, found = details["from"], details["to"]
    say = f"{capital(said_amount(found))} of bleach, by the usual convention."
    lines = [f"{_shown(have)} = {_shown(found)} available chlorine, taking 1 percent as 10,000 ppm."]
    if details["off"] is not None:
        lines.append(f"Chlorine is {shown_off(details['off'])}.")
    grams = details["grams"]
    lines.append(
        f"Weight in volume that is {rounded(grams, 3)} g/L of chlorine: {rounded(grams / 10, 3)} trade percent."
    )
    return Line(say, "\n".join(lines))


def _per(answer: Answer) -> Line:
    details = answer.details
    ratio: Ratio = details["ratio"]
    word = "to" if ratio.reading == "to" else "in"
    say = f"{capital(said_amount(details['part']))} {word} {said_whole(details['whole'])}."
    what = "of water" if word == "to" else "in all"
    line = f"{_shown(details['part'])} {word} {_shown(details['whole'])} {what}: {shown_ratio(ratio)}."
    return Line(say, line)


def said_amount(amount: Amount) -> str:
    """Three figures, whole numbers whole."""
    whole = amount.amount.denominator == 1 and abs(amount.amount) < 10**6
    figures = str(amount.amount) if whole else rounded(amount.amount)
    return f"{figures.replace('-', 'minus ')} {spoken(amount.unit, Fraction(figures))}"


def _shown(amount: Amount) -> str:
    return f"{rounded(amount.amount, FIGURES)} {amount.unit}"


def _convert_what(_: Answer) -> Line:
    return Line("How much of what? Say it as two cups in mils.")


def _to_which_unit(answer: Answer) -> Line:
    return Line(f"{capital(said_whole(answer.details['amount']))} in what: fluid ounces, cups, pints?")


def _unlike(answer: Answer) -> Line:
    details = answer.details
    have, want = spoken(details["amount"].unit, 2), spoken(details["unit"], 2)
    return Line(f"I can't turn {have} into {want}: they measure different things. Into what?")


def _one_at_a_time(answer: Answer) -> Line:
    return Line(f"One at a time: {listed(map(said_whole, answer.details['candidates']), 'or')}?")


# ---------------------------------------------------------------- read_ratio


def _read_ratio(answer: Answer) -> Line:
    details = answer.details
    ratio: Ratio = details["ratio"]
    parts, water = rounded(ratio.as_in[1], 4), rounded(ratio.as_to[1], 4)
    if ratio.n == 0 or ratio.as_to[1] == 0:
        say = "Undiluted: no water at all."
    elif ratio.why == "equal parts":
        say = "Equal parts: as much water as concentrate."
    else:
        lead = "One part and" if ratio.as_to[1] != 1 else "Equal parts: one and"
        strength = f", {rounded(details['percent'])} percent" if details["percent"] is not None else ""
        say = f"{lead} {water} of water: {parts} parts in all{strength}."
    lines = [say, f"The same mix: 1 in {parts}, or 1 to {water}."]
    mix: Mix = details["mix"]
    if isinstance(mix, SaidRatio) and mix.part is not None and mix.whole is not None:
        lines.insert(0, f"{said_whole(mix.part)} to {said_whole(mix.whole)}, read as 1 {ratio.reading} {_n(ratio)}.")
    if isinstance(mix, SaidRatio) and mix.word == "colon" and ratio.why in ("setting", "default"):
        why = "as you set it" if ratio.why == "setting" else "until keeping.toml says otherwise ([habits] ratio)"
        lines.append(f'A bare colon, or "per", is read as "{ratio.reading}", {why}.')
    other = ratio.other
    if isinstance(mix, SaidRatio) and other is not None:
        lines.append(f"Not the same: {shown_ratio(other)}.")
    if details["percent"] is not None:
        lines.append(f"Of the {details['name']}: {rounded(details['percent'])} %.")
    lines.append(f"{rounded(100 * ratio.share)} % of the mix is concentrate.")
    return Line(say, "\n".join(lines))


def _share(answer: Answer) -> Line:
    details = answer.details
    ratio: Ratio = details["ratio"]
    part, name, ppm = rounded(details["part"]), details["name"], details["ppm"]
    in_all = f"one part in {rounded(ratio.as_in[1], 4)} in all"
    if details["percent"] is None:
        say = f"{part} percent of the mix is {name}: {in_all}. How strong that is depends on the product."
        return Line(say)
    if details["wanted"] == "ppm" and ppm is not None:
        return Line(f"{rounded(ppm)} parts per million, {rounded(details['percent'])} percent: {in_all}.")
    strength = f"{rounded(details['percent'])} percent strong"
    strength += f", {rounded(ppm)} parts per million" if ppm is not None else ""
    return Line(f"{part} percent of the mix is {name}: {in_all}. That is {strength}.")


def _share_of_what(answer: Answer) -> Line:
    return Line("Of which product? Parts per million are of bleach, and depend on how strong it is.")


def _two_ratios(answer: Answer) -> Line:
    first, second = answer.details["first"], answer.details["second"]
    one, other = rounded(first.as_in[1], 4), rounded(second.as_in[1], 4)
    if answer.details["same"]:
        say = f"The same: one part in {one} in all."
    else:
        which = "first" if first.share > second.share else "second"
        say = f"Not the same: one part in {one} in all, against one in {other}. The {which} is stronger."
    return Line(say, "\n".join([say, *(f"{capital(shown_ratio(ratio))}." for ratio in (first, second))]))


def _which_ratio(_: Answer) -> Line:
    return Line("Which ratio? Say one in how many, or one to how many.")


def _n(ratio: Ratio) -> str:
    return rounded(ratio.n, 4)


LINES: Mapping[str, Callable[[Answer], Line]] = {
    "reckoning.convert": _convert,
    "reckoning.by_convention": _by_convention,
    "reckoning.per": _per,
    "reckoning.convert_what": _convert_what,
    "reckoning.to_which_unit": _to_which_unit,
    "reckoning.unlike": _unlike,
    "reckoning.one_at_a_time": _one_at_a_time,
    "reckoning.read_ratio": _read_ratio,
    "reckoning.share": _share,
    "reckoning.share_of_what": _share_of_what,
    "reckoning.two_ratios": _two_ratios,
    "reckoning.which_ratio": _which_ratio,
}
