"""How it is told whether an agent may touch a material."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from assistant.contract import Answer, Line
from assistant.core.choice.surfaces import Standing
from assistant.say.wording.evidence_said import fitting
from assistant.say.wording.plain import capital

LABELS = "The product's own label comes first."

OPENINGS = {
    "fine": "Yes.",
    "short": "Briefly, then rinse and dry.",
    "wipe": "Wipe only, never spray.",
    "porous": "It won't disinfect that.",
    "never": "No.",
    None: "Not known.",
}
"""The first words, by verdict."""


def _surface(answer: Answer) -> Line:
    held: Standing = answer.details["held"]
    if answer.details["refused"] is not None:
        say = f"No, not near reptiles. {answer.details['refused']}."
        return Line(say, "\n".join([say, LABELS]))
    agent = answer.details["agent"]
    opening = OPENINGS[held.verdict]
    say = fitting(f"{opening} {held.fact.says}.", opening)
    more = [f"{capital(part)}." for part in (held.fact.conditions, held.fact.note) if part]
    if held.about is not None and held.about.id != held.fact.id:
        more.append(f"{held.about.says}.")
    cleans = [f"{capital(agent.name)} cleans; it doesn't disinfect."] if not agent.disinfects else []
    return Line(say, "\n".join([say, f"{capital(agent.name)} on {held.material.name}.", *more, *cleans, LABELS]))


def _on_which(answer: Answer) -> Line:
    agent = answer.details["agent"]
    return Line(f"{capital(agent.name)} on what material?" if agent is not None else "What on which material?")


def _touch_with(answer: Answer) -> Line:
    return Line(f"What do you want to put on {answer.details['material'].name}?")


def _unknown_material(answer: Answer) -> Line:
    say = "Not known: I have nothing on that material. Try its maker, or a hidden corner first."
    return Line(say, f"{say}\nMaterial, as your file says: {answer.details['material']}.\n{LABELS}")


LINES: Mapping[str, Callable[[Answer], Line]] = {
    "may_touch.surface": _surface,
    "may_touch.on_which": _on_which,
    "may_touch.touch_with": _touch_with,
    "may_touch.unknown_material": _unknown_material,
}
