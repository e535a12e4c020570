"""How a fill is told: what went in, until when it is good, and what stood against it."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime, timedelta
from fractions import Fraction
from typing import Any

from assistant.contract import Answer, Line
from assistant.core.quantities.amounts import Amount, Mix, Neat, Percent, SaidRatio
from assistant.core.quantities.ratio import Ratio
from assistant.core.quantities.units import spoken
from assistant.core.record.state import Fill
from assistant.say.wording.amounts import number, shown
from assistant.say.wording.plain import MOST_WORDS, capital, clock, clock_aloud, digits, listed
from assistant.say.wording.reckoning import said_amount


def mix_said(wanted: Mix | None, ratio: Ratio | None = None, *, heard: bool = False) -> str:
    """ ", one in 50", ", 0.06 percent", ", undiluted"; a heard number digit by digit; empty when it isn't known."""

    def figure(value: Fraction) -> str:
        said = "one" if value == 1 else number(value)
        return digits(said).replace(" ", "-") if heard and len(said) > 1 and said[0].isdigit() else said

    if wanted is None:
        return ""
    if isinstance(wanted, Neat):
        return ", undiluted"
    if isinstance(wanted, Percent):
        return f", {figure(wanted.percent)} percent"
    if isinstance(wanted, SaidRatio) and wanted.part is not None:  # "half a cup to a gallon"
        wanted = SaidRatio(Fraction(1), wanted.second / wanted.first, wanted.word)
    if isinstance(wanted, SaidRatio):
        word = ratio.reading if ratio is not None else "to" if wanted.word == "colon" else wanted.word
        return f", {'one' if wanted.first == 1 else number(wanted.first)} {word} {figure(wanted.second)}"
    return f", {figure(wanted.ppm)} {spoken('ppm', wanted.ppm)}"


def good_until(fill: Fill, now: datetime) -> str:
    """ "good until this time tomorrow", "for today only", "I know no limit"."""
    if fill.basis == "made today":
        return "for today unless its label says longer"
    if fill.basis == "no limit":
        return "no limit that I know of"
    if fill.kept_until is None:
        return "how long it keeps is on its label"
    if timedelta(hours=23, minutes=59) <= fill.kept_until - now <= timedelta(hours=24, minutes=1):
        return "good until this time tomorrow"
    return f"good until {clock_aloud(fill.kept_until, now)}"


def mixed_when(fill: Fill, now: datetime) -> str:
    """ "Mixed at 4 o'clock", "mixed on Tuesday": no closer than it was told."""
    there = fill.at.astimezone(now.tzinfo)
    if fill.to_the == "minute":
        return f"mixed at {clock_aloud(fill.at, now)}"
    if fill.to_the == "week":
        return f"mixed after {there.day} {there:%B}"
    days = (now.date() - there.date()).days
    day = "today" if days == 0 else "yesterday" if days == 1 else f"on {there:%A} {there.day} {there:%B}"
    return f"mixed {day}, {clock_aloud(there, there)} at the earliest"


def _mixed(answer: Answer) -> Line:
    details = answer.details
    fill: Fill = details["fill"]
    bottle, agent = details["bottle"], details["agent"]
    did = "topped up now" if details["topped_up"] else "mixed now"
    if details["told"]:
        did = "topped up, the older mix" if details["topped_up"] else mixed_when(fill, details["now"])
    mix = mix_said(details["wanted"], details["ratio"], heard=details["spoken"])
    rinsed = "rinsed out, then " if details["rinsed"] else ""
    say = f"{capital(bottle.name)}: {rinsed}{agent.name}{mix}, {did}, {good_until(fill, details['now'])}."
    if details["corrects"]:
        say = f"Put right. {say}"
    if fill.kept_until is not None and fill.kept_until <= details["now"]:
        say = f"{capital(bottle.name)}: noted, but what was in it is past its time. Pour it away and mix it fresh."
        if details["told"] and not details["topped_up"]:
            did = mixed_when(fill, details["now"])
            say = f"{capital(bottle.name)}: noted, {did}, so it's past its time. Pour it away, mix it fresh."
    return Line(say, "\n".join([say, *_mixed_shown(answer)]))


def _mixed_shown(answer: Answer) -> list[str]:
    details = answer.details
    fill, concentrate = details["fill"], details["concentrate"]
    lines = []
    if concentrate is not None and fill.total is not None:
        lines.append(f"{shown(concentrate)} {details['name']} in {shown(fill.total)}.")
    elif not details["topped_up"]:
        lines.append("How much concentrate that took I can't tell, so the shelf isn't counted down.")
    if details["topped_up"]:
        lines.append("A top-up keeps the older mix's end.")
    left: Amount | None = details["left"]
    if left is not None:
        lines.append(f"{capital(details['stock'].name)}: {shown(left)} left.")
    if fill.kept_until is not None:
        ended = fill.kept_until <= details["now"]
        lines.append(f"{'Past its time since' if ended else 'Good until'} {clock(fill.kept_until, details['now'])}.")
    lines += [f"{source.text}." for source in answer.sources]
    return lines


def _ready_mix(answer: Answer) -> Line:
    details = answer.details
    mix = mix_said(details["bottle"].mix, details["ratio"], heard=False)
    volume = said_amount(details["volume"])
    return Line(f"Is that {volume} of ready mix{mix}? No, and I take it as the concentrate.")


def _filled_which(answer: Answer) -> Line:
    known = answer.details["known"]
    return Line("Which bottle did you fill?", f"Which bottle did you fill: {listed(known, 'or')}?" if known else "")


def _filled_with(answer: Answer) -> Line:
    unheard = answer.details.get("unheard")
    known = f"I don't know {unheard}. " if unheard else ""
    return Line(f"{known}What did you fill the {answer.details['bottle']} with?")


def _filled_how_strong(answer: Answer) -> Line:
    return Line(f"How strong did you mix the {answer.details['name']}? Say one in how many, or undiluted.")


def _stronger_than_it(answer: Answer) -> Line:
    details = answer.details
    return Line(
        f"Stronger than the {details['name']} itself, which is {number(details['percent'])} percent. "
        f"How strong is the {details['bottle']}?"
    )


def _filled_when(answer: Answer) -> Line:
    if answer.details["ahead"]:
        return Line(f"That is still to come, so nothing is noted. When was the {answer.details['bottle']} filled?")
    return Line(f"When did you fill the {answer.details['bottle']}? Roughly will do: its end counts from then.")


def _water(answer: Answer) -> Line:
    details = answer.details
    name = details["bottle"]
    if details["unknown"]:
        return Line(f"Water is no mix, so no fill is recorded. The {name} still counts as an unknown mix.")
    if details["held"]:
        held = listed(agent.name for agent in details["held"])
        say = f"Water is no mix, so no fill is recorded. The {name} still counts as {held} until it's rinsed out."
        return Line(say)
    return Line(f"Plain water in the {name}, noted: that is no mix, and nothing to disinfect with.")


def _watered(answer: Answer) -> Line:
    name = answer.details["bottle"]
    say = f"Then nobody knows how strong the {name} is: don't use it. Pour it away, rinse it out, mix it fresh."
    return Line(say, "\n".join([say, f"{capital(name)}: unknown mix until it's rinsed out."]))


def _too_strong(answer: Answer) -> Line:
    name = answer.values["bottle"]
    say = f"Too strong for any surface: don't use the {name}. Empty it, rinse it out. At most one percent; one in ten."
    details = answer.details
    return Line(say, "\n".join([say, f"{details['strongest'].says}.", details["most"].note]))


def _topped_unknown(answer: Answer) -> Line:
    say = f"What was in the {answer.details['bottle']} isn't on record, so not topped up. Rinse it out, fill it afresh."
    return Line(say)


def _rinsed_first(answer: Answer) -> Line:
    details = answer.details
    was = "held" if details["on_record"] else "is for"
    other = details["other"].name
    say = f"{capital(details['bottle'])} {was} {other}. Was it rinsed out before the {details['agent'].name} went in?"
    pair: Any = details["pair"]
    if answer.values["gas"] or pair is None:
        why = f"that {pair.because}" if pair is not None else "they may not mix"
        say = f"Stop: {details['bottle']} {was} {other}, {why}. Was it rinsed out first?"
    return Line(say, "\n".join([say, f"{details['reason'].says}.", "Rinsed out: emptied, rinsed, pumped through."]))


def _met(answer: Answer) -> Line:
    details = answer.details
    pair: Any = details["pair"]
    why = f" {capital(details['other'].name)} with {details['agent'].name} {pair.because}." if pair is not None else ""
    say = f"Don't use the {details['bottle']}.{why} Pour it away, rinse it out, then tell me."
    shown_ = [say, f"{details['reason'].says}.", f"{capital(details['bottle'])}: unknown mix until it's rinsed out."]
    return Line(say, "\n".join(shown_))


def _mixed_each(answer: Answer) -> Line:
    """Bottle, product and mix of each, where that is short enough to say; each in full on the screen."""
    fills = answer.details["answers"]
    full = "\n".join(_mixed(fill).show for fill in fills)
    names = [capital(fill.details["bottle"].name) for fill in fills]
    each = [
        f"{name}: {fill.details['agent'].name}{mix_said(fill.details['wanted'], fill.details['ratio'])}."
        for name, fill in zip(names, fills, strict=True)
    ]
    say = f"{' '.join(each)} Both noted." if len(each) == 2 else f"{' '.join(each)} All noted."
    if any(_is_past(fill) for fill in fills):
        past = [fill.details["bottle"].name for fill in fills if _is_past(fill)]
        say = f"All noted, but past its time: {listed(past)}. Pour that away and mix it fresh."
    if len(say.split()) > MOST_WORDS:
        say = f"{capital(listed(fill.details['bottle'].name for fill in fills))}: noted."
    return Line(say, full)


def _is_past(answer: Answer) -> bool:
    kept_until = answer.details["fill"].kept_until
    return kept_until is not None and kept_until <= answer.details["now"]


LINES: dict[str, Callable[[Answer], Line]] = {
    "shelf.mixed": _mixed,
    "shelf.mixed_each": _mixed_each,
    "shelf.ready_mix": _ready_mix,
    "shelf.filled_which": _filled_which,
    "shelf.filled_with": _filled_with,
    "shelf.filled_how_strong": _filled_how_strong,
    "shelf.stronger_than_it": _stronger_than_it,
    "shelf.filled_when": _filled_when,
    "shelf.water": _water,
    "shelf.watered": _watered,
    "shelf.too_strong": _too_strong,
    "shelf.topped_unknown": _topped_unknown,
    "shelf.rinsed_first": _rinsed_first,
    "shelf.met": _met,
}
