"""How bottles and what they hold are spoken of. How a fill is told is `fill_said`."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import datetime
from typing import Any

from assistant.contract import Answer, Line
from assistant.core.quantities.amounts import Amount
from assistant.core.record.state import Fill
from assistant.say.wording import fill_said
from assistant.say.wording.amounts import said_unmeasured, shown
from assistant.say.wording.fill_said import good_until, mix_said, mixed_when
from assistant.say.wording.plain import capital, clock_aloud, count, listed, span


def _rinsed_which(answer: Answer) -> Line:
    known = answer.details["known"]
    return Line("Which bottle did you rinse out?", f"Which bottle: {listed(known, 'or')}?" if known else "")


def _rinsed_out(answer: Answer) -> Line:
    bottle = capital(listed(answer.details["bottles"]))
    if len(answer.details["bottles"]) > 1:
        return Line(f"{bottle}: rinsed out and pumped through, noted.")
    if answer.details["was_unknown"]:
        return Line(f"{bottle}: rinsed out and pumped through, noted. It no longer counts as an unknown mix.")
    held = listed(agent.name for agent in answer.details["held"])
    if held:
        return Line(f"{bottle}: rinsed out and pumped through, noted. It no longer counts as {held}.")
    return Line(f"{bottle}: rinsed out and pumped through, noted.")


# ---------------------------------------------------------------- what is in it


def _in_bottle(answer: Answer) -> Line:
    told = answer.details
    say = _held(told)
    return Line(say, "\n".join([say, *_held_shown(told)]))


def _held(told: Mapping[str, Any]) -> str:
    """One bottle in one or two sentences."""
    name, fill = capital(told["bottle"].name), told["fill"]
    if told["unknown"]:
        return f"{name}: an unknown mix. Don't use it; rinse it out, pump it through."
    if fill is not None:
        mixed = f"{name}: {told['agent'].name}{mix_said(told['wanted'])}, {mixed_when(fill, told['now'])}"
        return f"{mixed}, {_until(fill, told['now'])}."
    if told["held"]:
        held = listed(agent.name for agent in told["held"])
        return f"{name} held {held}, and no rinse since is on record. Rinse it out before you fill it."
    meant = told["meant_for"]
    purpose = f" It is for {meant.name}{mix_said(told['meant_mix'])}." if meant is not None else ""
    if told["rinsed_at"] is not None:
        return f"{name}: rinsed out, nothing in it on record.{purpose}"
    return f"{name}: no fill on record.{purpose}"


def _until(fill: Fill, now: datetime) -> str:
    if fill.kept_until is not None and fill.kept_until <= now:
        return f"past its time since {clock_aloud(fill.kept_until, now)}"
    return good_until(fill, now)


def _held_shown(told: Mapping[str, Any]) -> list[str]:
    fill: Fill | None = told["fill"]
    lines = []
    if fill is not None and fill.total is not None:
        drawn = f", {shown(fill.concentrate)} of it concentrate" if fill.concentrate is not None else ""
        lines.append(f"Filled with {shown(fill.total)}{drawn}." + (" Topped up since." if fill.topped_up else ""))
    if fill is not None and fill.stock is not None:
        lines.append(f"From {fill.stock}.")
    if fill is None and not told["unknown"] and told["meant_for"] is not None:
        lines.append("What it is for is from your keeping.toml; what is in it, only a recorded fill can tell.")
    return lines


def _in_bottles(answer: Answer) -> Line:
    bottles = answer.details["bottles"]
    agents = listed(agent.name for agent in answer.details["agents"])
    if not answer.details["any"]:
        return Line("No bottle is set up yet.")
    if not bottles:
        return Line(f"No bottle of yours holds {agents} on my record.")
    lines = [f"- {_held(told)}" for told in bottles]
    if agents:
        return Line(f"{capital(agents)}: {listed(told['bottle'].name for told in bottles)}.", "\n".join(lines))
    filled = [told for told in bottles if told["fill"] is not None]
    say = f"{count(len(filled), 'bottle')} of {len(bottles)} with a fill on record. Each is on the screen."
    return Line(say, "\n".join([say, *lines]))


# ---------------------------------------------------------------- is it still good


def _good_which(answer: Answer) -> Line:
    known = answer.details["known"]
    say = "Which one: a bottle, or a product on the shelf?"
    return Line(say, f"{say} Bottles: {listed(known)}." if known else "")


def _good_bottle(answer: Answer) -> Line:
    told = answer.details
    name, fill, now = told["bottle"].name, told["fill"], told["now"]
    if told["unknown"]:
        return Line(f"No. {capital(name)} holds an unknown mix. Don't use it; rinse it out, pump it through.")
    if fill is None:
        say = f"I can't tell: no fill of the {name} is on record. In doubt, pour it away and mix it fresh."
        return Line(say)
    agent = told["agent"].name
    if told["ready"] is None:
        say = f"I can't tell how long mixed {agent} keeps: its label decides. {capital(mixed_when(fill, now))}."
    elif not told["ready"]:
        age = span((now - fill.kept_until).total_seconds())
        say = f"No, past its time by {age}. Pour the {name} away, rinse it, mix it fresh."
    elif fill.kept_until is None:
        say = f"As far as I know, yes: for mixed {agent} I have no limit. {capital(mixed_when(fill, now))}."
    else:
        left = span((fill.kept_until - now).total_seconds())
        say = f"Yes, {left} more: {agent} {mixed_when(fill, now)}, {good_until(fill, now)}."
    return Line(say, "\n".join([say, *_held_shown(told), *_why_so_long(answer)]))


def _good_told(answer: Answer) -> Line:
    told = answer.details
    fill, now, name = told["fill"], told["now"], told["agent"].name
    mixed = mixed_when(fill, now)
    if told["ready"] is None:
        say = f"I can't tell how long mixed {name} keeps: its label decides."
    elif not told["ready"]:
        say = f"No: {name} {mixed}, is past its time. Pour it away, mix it fresh."
    elif fill.kept_until is None:
        say = f"As far as I know, yes: for mixed {name} I have no limit."
    else:
        say = f"Yes: {name} {mixed}, {good_until(fill, now)}."
    return Line(say, "\n".join([say, "By what you said: no fill of it is on record.", *_why_so_long(answer)]))


A_FEW_DAYS = 2
"""From when on a life in hours is told in days."""


def _mix_life(answer: Answer) -> Line:
    details = answer.details
    name, basis, hours = details["name"], details["basis"], details["hours"]
    if basis in ("label", "published") and hours is not None:
        by = ", by its label" if basis == "label" else ""
        days = hours / 24
        kept = count(round(days), "day") if days >= A_FEW_DAYS and days.is_integer() else span(hours * 3600)
        say = f"{capital(kept)} from when it is mixed{by}: that is how long a {name} mix keeps."
    elif basis == "made today":
        say = f"One day: a {name} mix is made fresh each day, unless its label gives longer."
    elif basis == "no limit":
        say = f"For a {name} mix I have no limit. Its label decides."
    else:
        say = f"I can't tell how long a {name} mix keeps: its label decides."
    return Line(say, "\n".join([say, *_why_so_long(answer)]))


def _why_so_long(answer: Answer) -> list[str]:
    return [f"{source.text}." for source in answer.sources[:1]]


def _good_stock(answer: Answer) -> Line:
    details = answer.details
    name, age, ready = details["name"], details["age"], details["ready"]
    if age is None:
        return Line(f"The date on its own label decides for {name}; I have no rule for it.")
    if age.verdict == "too old":
        return Line(f"No. The {name} is {count(age.days, 'day')} old, over a year. Buy fresh.")
    if age.verdict == "too weak":
        return Line(f"No. About {round(age.left * 100)} percent of its strength is left. Buy fresh.")
    if ready:
        return Line(
            f"Yes. About {round(age.left * 100)} percent of its strength is left after {count(age.days, 'day')}."
        )
    if age.verdict in ("no date", "no temperature"):
        need = "when it was made" if age.verdict == "no date" else "how warm it is kept"
        key = "made" if age.verdict == "no date" else "kept_at"
        say = f"I can't tell without {need}. The label has a date; in doubt, buy fresh."
        return Line(say, f"{say}\nSet `{key}` of {name} in keeping.toml.")
    return Line(f"I can't tell what the {name} has lost. In doubt, buy fresh.")


# ---------------------------------------------------------------- what is left


def _left_which(answer: Answer) -> Line:
    known = answer.details["known"]
    say = "Of which product? Its amount goes in keeping.toml, as left."
    return Line(say, f"{say} You have: {listed(known)}." if known else "")


def _strength_is_set(answer: Answer) -> Line:
    details = answer.details
    told, known = said_unmeasured(details["told"]), details["set"]
    counts = f"counts as {said_unmeasured(known)}" if known is not None else "has no strength set"
    say = f"Not noted. {capital(details['name'])} {counts} until your settings file says otherwise. Or ask with {told}."
    return Line(say, f'{say}\nSay it with the question: "from {told} {details["name"]}".')


def _stock_left(answer: Answer) -> Line:
    told = answer.details
    name = told["stock"].name
    if told["left"] is None:
        say = f"I don't know: how much {name} is left isn't set."
        return Line(say, f'{say}\nSet left = "1 L", or what there is, for {name} in keeping.toml.')
    say = f"{said_unmeasured(told['left'])} of {name} left" if told["left"].amount else f"No {name} left, on my record"
    if told["fills_left"] is not None:
        say += f", {count(told['fills_left'], 'fill')} of the {told['bottle'].name}"
    if told["told"]:
        say += ", by my count. I can't change that: your settings file can."
        return Line(say, "\n".join([say, "Write a new amount as left in keeping.toml.", *_left_shown(told)]))
    say += f". At this pace until {_day(told['runs_out'], told['now'])}." if told["runs_out"] is not None else "."
    return Line(say, "\n".join([say, *_left_shown(told)]))


def _day(at: datetime, now: datetime) -> str:
    there = at.astimezone(now.tzinfo)
    year = f" {there.year}" if there.year != now.year else ""
    return f"{there.day} {there:%B}{year}"


def _left_shown(told: Mapping[str, Any]) -> list[str]:
    lines = []
    if told["a_fill"] is not None:
        lines.append(f"One fill of the {told['bottle'].name} takes {shown(told['a_fill'])}.")
    if told["a_day"] is not None:
        lines.append(f"Drawn down by {shown(told['a_day'])} a day, from the first fill on record to the last.")
    elif told["left"] is not None:
        lines.append("When it runs out shows once fills of two days are on record.")
    if told["left"] is not None:
        lines.append("Counted from `left` in keeping.toml; write what there is there when you open a new one.")
    return lines


def _stocks_left(answer: Answer) -> Line:
    stocks = answer.details["stocks"]
    lines = []
    for told in stocks:
        left: Amount = told["left"]
        fills = f", {count(told['fills_left'], 'fill')}" if told["fills_left"] is not None else ""
        until = f", until {_day(told['runs_out'], told['now'])}" if told["runs_out"] is not None else ""
        lines.append(f"- {capital(told['stock'].name)}: {shown(left)}{fills}{until}.")
    first = stocks[0]
    fills = f", {count(first['fills_left'], 'fill')}" if first["fills_left"] is not None else ""
    say = f"{said_unmeasured(first['left'])} of {first['stock'].name}{fills}: the soonest to run out."
    if len(stocks) == 1:
        say = f"{said_unmeasured(first['left'])} of {first['stock'].name} left{fills}."
    return Line(say, "\n".join([say, *lines]))


LINES: dict[str, Callable[[Answer], Line]] = {
    "shelf.rinsed_which": _rinsed_which,
    "shelf.rinsed_out": _rinsed_out,
    "shelf.in_bottle": _in_bottle,
    "shelf.in_bottles": _in_bottles,
    "shelf.good_which": _good_which,
    "shelf.good_bottle": _good_bottle,
    "shelf.good_told": _good_told,
    "shelf.mix_life": _mix_life,
    "shelf.good_stock": _good_stock,
    "shelf.strength_is_set": _strength_is_set,
    "shelf.left_which": _left_which,
    "shelf.stock_left": _stock_left,
    "shelf.stocks_left": _stocks_left,
    **fill_said.LINES,
}
