"""How it is told whether an agent works on a germ: yes with strength and time, no with what does, or not known."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from assistant.contract import Answer, Line
from assistant.core.choice.evidence import Evidence
from assistant.say.wording.evidence_said import (
    ON_WHAT,
    fitting,
    heat_said,
    instead_said,
    minutes_said,
    on_what,
    percent_said,
    row_lines,
)
from assistant.say.wording.plain import capital

LABELS = "Your products' own labels come first."


def _works_on(answer: Answer) -> Line:
    details = answer.details
    evidence: Evidence = details["evidence"]
    if details["refused"] is not None:
        say = f"No, not near reptiles. {details['refused']}."
    elif details["cleans"] is not None:
        say = f"No: {details['name']} cleans, it doesn't disinfect. {_instead(answer)}"
    elif details["verdict"] == "works":
        say = _yes(answer, evidence)
    elif details["verdict"] == "fails":
        say = _no(answer, evidence)
    else:
        say = _unknown(answer, evidence)
    return Line(say, "\n".join([say, *_studies(answer, evidence), LABELS]))


def _instead(answer: Answer) -> str:
    return instead_said(answer.details["instead"])


def _yes(answer: Answer, evidence: Evidence) -> str:
    details = answer.details
    agent, ask_vet = details["agent"], "Ask your vet."
    if agent is None:
        heat, figure = heat_said(evidence), evidence.figure
        if not heat and figure is not None:
            return fitting(f"Yes. {figure.fact.says}. {capital(figure.fact.conditions)}.", f"Yes. {figure.fact.says}.")
        return f"{capital(heat)}, {on_what(evidence)}. The thing itself must get that hot, all the way through."
    if agent.vet_only:
        return f"In the lab, {on_what(evidence)}. Strength and time are your vet's plan. {ask_vet}"
    says = evidence.figure.fact.says if evidence.figure is not None else ""
    if evidence.percent is None and details["wet"] is not None:
        time = f"Keep it wet {minutes_said(details['wet'])}."
        return fitting(f"Yes. {says}. {time} {ask_vet}", f"Yes. {says}. {time}", f"Yes. {says}.")
    strength = f": {percent_said(evidence.percent)}" if evidence.percent is not None else ""
    wet = details["wet"]
    time = f"keep it wet {minutes_said(wet)}" if wet is not None else "wet as long as its label says"
    return fitting(
        f"Yes, {on_what(evidence)}{strength}, {time}. Wash first. {ask_vet}",
        f"Yes, {on_what(evidence)}{strength}, {time}. {ask_vet}",
    )


def _no(answer: Answer, evidence: Evidence) -> str:
    says = evidence.rows[0].fact.says
    instead = _instead(answer)
    short, _, ask_vet = instead.partition(". ")
    return fitting(
        f"No. {says}. {instead}",
        f"No. {says}. {short.partition(':')[0]}. {ask_vet}",
        f"No, it failed {on_what(evidence)}. {instead}",
        f"No, it failed {on_what(evidence)}. {short.partition(':')[0]}. {ask_vet}",
    )


def _unknown(answer: Answer, evidence: Evidence) -> str:
    details = answer.details
    germ, name, instead = details["germ"], details["name"], _instead(answer)
    if evidence.doubt == "only partly":
        says = evidence.rows[0].fact.says
        part = f"Not for sure: only in part, {on_what(evidence)}."
        return fitting(f"Not for sure. {says}. {instead}", f"{part} {instead}", part)
    if evidence.doubt == "studies disagree":
        return fitting(
            f"Not known: studies disagree. {instead}",
            "Not known: studies disagree. Ask your vet.",
        )
    if evidence.doubt == "only on others":
        other = ON_WHAT.get(evidence.rows[0].directness, "on a stand-in")
        return fitting(
            f"Not known: nothing published with {name} on {germ.name}, only {other}. {instead}",
            f"Not known: nothing published on {germ.name}, only {other}. Ask your vet.",
        )
    return fitting(
        f"Not known: I have nothing published with {name} on {germ.name}. {instead}",
        f"Not known: nothing published with {name} on {germ.name}. Ask your vet.",
    )


def _studies(answer: Answer, evidence: Evidence) -> list[str]:
    details = answer.details
    lines = [f"In the study: {_figures(evidence)}."] if evidence.figure is not None else []
    if details.get("cleans"):
        lines.append(f"{details['cleans']}.")
    return [*lines, *row_lines(evidence), "Times in a laboratory are on clean things: wash first."]


def _figures(evidence: Evidence) -> str:
    parts = [
        percent_said(evidence.percent) if evidence.percent is not None else "",
        heat_said(evidence) if evidence.degrees is not None else "",
        minutes_said(evidence.minutes) if evidence.minutes is not None and evidence.degrees is None else "",
    ]
    return ", ".join(part for part in parts if part) or "strength and time not stated"


def _as_mixed(answer: Answer) -> Line:
    details = answer.details
    bottle, wet, evidence = details["bottle"], details["wet"], details["evidence"]
    ask_vet = "Ask your vet."
    if details["verdict"] == "works":
        time = f"keep it wet {minutes_said(wet.minutes)}" if wet.minutes is not None else "its label says how long"
        strength = f", {percent_said(details['percent'])}" if details["percent"] is not None else ""
        how = f"as the {bottle.name} is mixed" if bottle is not None else "at that mix"
        say = f"Yes, {how}{strength}: {time}. {ask_vet}"
    elif not details["agent"].disinfects:
        say = f"No: {details['agent'].name} cleans, it doesn't disinfect. {_instead(answer)}"
    elif details["needs"] is not None and details["percent"] is not None and details["percent"] < details["needs"]:
        which = f"the {bottle.name}" if bottle is not None else "that mix"
        weaker = f"{which} is weaker, {percent_said(details['percent'])}"
        say = f"{percent_said(details['needs'])} worked; {weaker}. {ask_vet}"
    elif evidence.verdict == "fails":
        say = _no(answer, evidence)
    elif evidence.verdict == "works":
        name = capital(details["name"])
        say = f"{name} worked, but at a strength I can't compare with your mix. {ask_vet}"
    else:
        say = _unknown(answer, evidence)
    return Line(say, "\n".join([say, *_studies(answer, evidence), LABELS]))


def _only_cleans(answer: Answer) -> Line:
    fact = answer.details["fact"]
    say = f"It cleans; it doesn't disinfect. {fact.says}."
    return Line(say, "\n".join([say, *(f"{more}." for more in (fact.conditions, fact.note) if more), LABELS]))


def _on_what(_: Answer) -> Line:
    return Line("On which germ or illness?")


def _with_what(answer: Answer) -> Line:
    return Line(f"What do you want to use on {answer.details['germ'].name}?")


def _unknown_product(answer: Answer) -> Line:
    said = answer.details["said"]
    product = f" in the {said}" if said else " in it"
    return Line(f"I don't know what is{product}: read its label. Until then, don't mix it with anything.")


def _unknown_germ(answer: Answer) -> Line:
    germ = answer.details["germ"]
    return Line(f"I have nothing on {germ}, so no strength and no time. Read your product's label, ask your vet.")


LINES: Mapping[str, Callable[[Answer], Line]] = {
    "does_it_work.unknown_germ": _unknown_germ,
    "does_it_work.works_on": _works_on,
    "does_it_work.as_mixed": _as_mixed,
    "does_it_work.only_cleans": _only_cleans,
    "does_it_work.on_what": _on_what,
    "does_it_work.with_what": _with_what,
    "does_it_work.unknown_product": _unknown_product,
}
