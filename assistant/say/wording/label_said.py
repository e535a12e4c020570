"""A label's words. Figures come in; nothing here decides what the bottle holds."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime, timedelta
from fractions import Fraction
from typing import Any

from assistant.core.choice.pictograms import WARNS
from assistant.core.facts import Agent
from assistant.core.quantities.amounts import Neat, Percent, SaidRatio
from assistant.core.quantities.ratio import Ratio
from assistant.say.wording.amounts import number, rounded, shown
from assistant.say.wording.plain import capital, count, listed, span

BY_HAND = "." * 26
"""For a time that isn't on record."""

STEPS_AFTER = {"rinse": "rinse", "dry": "dry", "air": "air the room"}


@dataclass(frozen=True, slots=True)
class LabelText:
    """What stands on one label, from top to bottom."""

    name: str
    product: str
    """In large letters."""
    lines: tuple[tuple[str, str], ...]
    """What it is about, and what it says."""
    cautions: tuple[str, ...]
    fill_to: str = ""
    """Beside the rule that is stuck at the mark to fill to; empty: there is none."""
    signs: tuple[tuple[str, str], ...] = ()
    """Hazard pictograms that the product's own label carries: symbol, and the words beside it."""


def label_text(label: Any, poison_centre: str, local: Callable[[datetime], datetime]) -> LabelText:
    """The words of a bottle that is ready to use, or to be filled."""
    bottle = label.bottle
    lines = [("Colour", bottle.colour)] if bottle.colour else []
    lines += [("From", label.stock.name)] if label.stock is not None else []
    lines += [("Mix", _mix_read(label)), ("Made with", _parts(label))]
    lines += [*_times(label, local), ("Wet time", _wet(label)), *_after(label.agent)]
    call = f"Splashed, swallowed: rinse, call poison centre {poison_centre}".strip()
    return LabelText(
        capital(bottle.name),
        _product(label),
        tuple(lines),
        (*(f"{line}." for line in label.cautions), f"{call}."),
        f"Fill to this line: {shown(label.mixed.total)}",
        _signs(label),
    )


def warning_text(warned: Any) -> LabelText:
    """The words of a bottle that nobody may use as it is."""
    held = f"It held {listed(warned.held)}. " if warned.held else ""
    do = "Don't use, smell or mix it. Pour it away, rinse the bottle out, pump clean water through."
    what = "UNKNOWN MIX" if warned.why == "unknown mix" else "RINSE OUT FIRST"
    lines = (("Colour", warned.bottle.colour),) if warned.bottle.colour else ()
    return LabelText(capital(warned.bottle.name), what, (*lines, ("Do", held + do)), ())


def _signs(label: Any) -> tuple[tuple[str, str], ...]:
    signs = label.stock.pictograms if label.stock is not None else ()
    return tuple((sign, f"{capital(sign)}: {WARNS[sign]}") for sign in dict.fromkeys(signs))


def _product(label: Any) -> str:
    stock, agent = label.stock, label.agent
    percent = f", {number(stock.strength.amount)} percent" if stock is not None and stock.strength is not None else ""
    return f"{capital(agent.name)}{percent}"


def _mix_read(label: Any) -> str:
    """The mix as set, with what it means: one reading, so that nobody has to know what a ratio is."""
    wanted, ratio, strength = label.strength.wanted, label.strength.ratio, label.strength
    if isinstance(wanted, Neat) or strength.share == 1:
        return "undiluted, no water"
    if isinstance(wanted, SaidRatio):
        return f"1 {ratio.reading} {number(ratio.n)}: {_ratio_read(ratio)}{_comes_to(label)}"
    said = f"{number(wanted.percent)} percent" if isinstance(wanted, Percent) else f"{number(wanted.ppm)} ppm chlorine"
    return f"{said}: 1 part and {rounded(ratio.n)} parts water"


def _ratio_read(ratio: Ratio) -> str:
    if ratio.reading == "in":
        return f"1 part, {number(ratio.n - 1)} of water, {number(ratio.n)} in all"
    return f"1 part, {number(ratio.n)} of water, {number(ratio.n + 1)} in all"


def _comes_to(label: Any) -> str:
    percent: Fraction | None = label.strength.mixed_percent
    return f"; about {rounded(percent, 2)} percent" if percent is not None else ""


def _parts(label: Any) -> str:
    mixed = label.mixed
    if label.strength.share == 1:
        return f"{shown(mixed.total)}, undiluted"
    return f"{shown(mixed.concentrate)} of it, water up to {shown(mixed.total)}"


def _times(label: Any, local: Callable[[datetime], datetime]) -> list[tuple[str, str]]:
    fill = label.fill
    if fill is None:
        return [("Mixed", BY_HAND), ("Good until", f"{BY_HAND} {_keeps(label)}")]
    if fill.kept_until is not None:
        past = fill.kept_until <= label.now
        until = _stamp(local(fill.kept_until)) + (": past its time, pour it away" if past else "")
    else:
        until = _keeps(label)
    return [("Mixed", _stamp(local(fill.at))), ("Good until", until)]


def _stamp(at: datetime) -> str:
    return f"{at:%a} {at.day} {at:%b %Y}, {at.hour}:{at.minute:02d}"


def _keeps(label: Any) -> str:
    life = label.life
    if life.basis == "made today":
        return "(the day it is mixed, unless its label says longer)"
    if life.until is not None:
        left: timedelta = life.until - label.now
        days = left.total_seconds() / 86400
        keeps = count(round(days), "day") if days >= 2 and days == round(days) else span(left.total_seconds())
        return f"({keeps} after mixing)"
    return "(no limit known)" if life.basis == "no limit" else "(see the product's own label)"


def _wet(label: Any) -> str:
    wet, sick = label.wet, label.wet_sick
    if wet.minutes is None:
        if "cleans only" in wet.why:
            return "none: it cleans, it doesn't disinfect"
        return "the vet's plan" if "vet's plan" in wet.why else f"{BY_HAND[:12]} minutes, by the product's own label"
    said = f"{count(float(wet.minutes), 'minute')} ({_by(wet.basis)})"
    if sick.minutes is not None and sick.minutes > wet.minutes:
        said += f"; new or sick animals {count(float(sick.minutes), 'minute')}"
    return f"{said}; some germs need longer"


def _by(basis: str) -> str:
    return {"label": "its own label", "published": "published"}.get(basis, "nothing vouches that it disinfects")


def _after(agent: Agent) -> list[tuple[str, str]]:
    steps = [words for step, words in STEPS_AFTER.items() if step in agent.steps]
    return [("Then", listed(steps))] if steps else []
