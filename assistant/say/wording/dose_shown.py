"""How a dose is shown: the sum, the reading and the other one, the mark, the strength and its range, the age."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import Any

from assistant.core.mixing.batch import Better
from assistant.core.mixing.chlorine import Chlorine
from assistant.core.mixing.decay import Age
from assistant.core.mixing.measuring import Measured
from assistant.core.quantities.amounts import SaidRatio
from assistant.core.quantities.ratio import Ratio
from assistant.say.wording.amounts import in_larger, rounded, shown, shown_part
from assistant.say.wording.dose_said import fills, scooped, unmeasured
from assistant.say.wording.plain import capital, count


def shown_dose(details: Mapping[str, Any]) -> str:
    """Everything, a line each."""
    lines = [
        _sum(details),
        f"That is {shown(details['in_unit'])} {details['name']}." if details["in_unit"] is not None else "",
        capital(scooped(details)),
        _reading(details),
        _marks(details["measured"]),
        _unmeasured(details),
        *_better(details["better"], details["name"]),
        *_short(details),
        _strength(details),
        *shown_age(details["age"], makes_up=not details["is_ratio"]),
        *_notes(details),
        *(f"{line}." for line in (details["order"], details["head_room"]) if line),
    ]
    return "\n".join(line for line in lines if line)


def _sum(details: Mapping[str, Any]) -> str:
    mixed, name = details["mixed"], details["name"]
    if not mixed.water.amount:
        return f"{shown(mixed.total)} {name}, undiluted"
    concentrate, water = (shown_part(part, mixed.total) for part in (mixed.concentrate, mixed.water))
    return f"{concentrate} {name} + {water} water = {shown(mixed.total)}"


def _reading(details: Mapping[str, Any]) -> str:
    ratio: Ratio = details["ratio"]
    if not isinstance(details["wanted"], SaidRatio):
        return "" if ratio.n == 0 else f"The same as 1 to {rounded(ratio.n)}."
    line = f"Read as {shown_ratio(ratio)}"
    if ratio.why == "setting":
        line += ", as you set it"
    if ratio.why == "default":
        what = "a colon" if details["wanted"].part is None else '"per"'
        line += f' ({what} means "to" until keeping.toml says otherwise: [habits] ratio)'
    if details["other"] is not None:
        other, concentrate = details["other"]
        line += f"; 1 {other.reading} {rounded(other.n)} would take {shown_part(concentrate, details['mixed'].total)}"
    return f"{line}."


def shown_ratio(ratio: Ratio) -> str:
    """ "1 in 32: one part, 31 of water"."""
    if ratio.why == "equal parts":
        return "equal parts"
    if ratio.reading == "in":
        return f"1 in {rounded(ratio.n)}: one part, {rounded(ratio.as_to[1])} of water"
    return f"1 to {rounded(ratio.n)}: one part in {rounded(ratio.as_in[1])} in all"


def _marks(measured: Measured | None) -> str:
    if measured is None:
        return ""
    percent = rounded(measured.off_by / measured.wanted * 100, 2)
    how = fills(measured, f"the {shown(measured.mark)} mark")
    line = f"{capital(measured.tool.name)}: {how}; off by {percent} % at most."
    return line if measured.good_enough else f"{line} That is rough: use a finer tool, or mix more at once."


def _unmeasured(details: Mapping[str, Any]) -> str:
    if details["unmeasured"] is None:
        return ""
    more = " Name no tool, and the best one is picked." if details["tools_named"] else ""
    return f"{unmeasured(details)}{more}"


def _better(better: Better | None, name: str) -> list[str]:
    """The smallest batch that can be measured well, or both steps of two."""
    if better is None:
        return []
    steps = better.two_steps
    if steps is not None:
        one, two = steps.first_measured, steps.second_measured
        return [
            "Measured well in two steps:",
            f"1. {shown(steps.first.concentrate)} {name} + {shown(steps.first.water)} water: one in {steps.parts}. "
            f"{capital(one.tool.name)}: {fills(one, f'the {shown(one.mark)} mark')}.",
            f"2. {shown(steps.second)} of that + {shown(steps.water)} water. "
            f"{capital(two.tool.name)}: {fills(two, f'the {shown(two.mark)} mark')}. Pour the rest of the first away.",
        ]
    if better.batch is None or better.measured is None:
        return []
    way = f"{better.measured.tool.name}: {fills(better.measured, f'the {shown(better.measured.mark)} mark')}"
    total, concentrate = shown(better.batch.total), shown(better.batch.concentrate)
    return [f"The smallest batch that is measured well: {total}, with {concentrate} {name} ({way})."]


def _short(details: Mapping[str, Any]) -> list[str]:
    if details["short"] is None:
        return []
    left, made = details["short"]
    return [
        f"Only {shown(left)} of the {details['name']} is left: that makes {shown(in_larger(made.total))} of this mix."
    ]


def _strength(details: Mapping[str, Any]) -> str:
    percent, ppm, (low, high) = details["percent"], details["ppm"], details["range"]
    if percent is None:
        return f"Strength: not known, since that of the {details['name']} isn't."
    line = f"Strength: {rounded(percent)} %"
    if low is not None and low != high:
        line += f" ({rounded(low)} to {rounded(high)} % by the tool)"
    return f"{line}{shown_chlorine(ppm, details['chlorine'])}."


def shown_chlorine(ppm: Fraction | None, chlorine: Chlorine | None) -> str:
    """Available chlorine and how it was worked out, with the convention's error; empty where there is none."""
    if ppm is None or chlorine is None:
        return ""
    way = {
        "convention": "taking 1 percent as 10,000 ppm",
        "weight in volume": "from its percent weight in volume",
        "weight in weight": "from its percent by weight and density",
    }[chlorine.way]
    text = f", {rounded(ppm)} ppm available chlorine, {way}"
    if chlorine.off is None:
        return text
    return f"{text} (really {shown_off(chlorine.off)})"


def shown_off(off: tuple[Fraction, Fraction]) -> str:
    """How far the exact meanings of a bleach's percentage lie from the convention: by volume, and by weight."""
    by_volume, by_weight = (f"{rounded(abs(share) * 100, 2)} % {'less' if share < 0 else 'more'}" for share in off)
    return f"{by_volume} where the label means weight in volume, {by_weight} where it means weight"


def shown_age(age: Age | None, *, makes_up: bool) -> list[str]:
    """What is known of a bleach's age, and whether the dose makes up for it."""
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
    left = f"about {rounded(Fraction(age.left or 0) * 100, 2)} % of its strength left"
    if age.verdict == "too weak":
        return [f"Bleach {days}, {left}: buy fresh. Nothing is made up for its age."]
    if not makes_up:
        return [f"Bleach {days}, {left}; nothing is made up for it, so the mix is that much weaker."]
    return [f"Bleach {days}, {left}; the dose makes up for it."]


def _notes(details: Mapping[str, Any]) -> list[str]:
    lines = []
    if details["taken_from"] == "bottle":
        lines.append(f"The {details['bottle'].name}'s own mix, from keeping.toml.")
    if details["taken_from"] == "label":
        lines.append("The label's own dilution, from keeping.toml.")
    if details["weaker_than_label"]:
        label: Ratio = details["label_ratio"]
        lines.append(f"Weaker than its label's 1 {label.reading} {rounded(label.n)}.")
    if details["bottle_for"] is not None:
        lines.append(f"That bottle is meant for {details['bottle_for'].name}: rinse it out and pump it through first.")
    return lines
