"""How protection is spoken of: what to wear and open, who stays out, and what a mask can't do."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from assistant.contract import Answer, Line
from assistant.say.wording.evidence_said import fitting

OUT = "Animals and small children out."


def _protect(answer: Answer) -> Line:
    details = answer.details
    facts, topic = details["facts"], details["topic"]
    if details["refused"] is not None:
        say = f"Don't use it near reptiles. {details['refused']}."
    elif topic == "mask":
        say = "A dust mask stops no gas. Open a window, stay back from the spray; if it stings, get out."
    elif topic == "sink":
        say = "Never the kitchen. Outside, or a laundry sink or bathtub, and disinfect that straight after."
    elif topic == "hands":
        say = "Soap and running water, 20 seconds, after gloves too. Gel only when there is no soap."
    elif topic == "eating":
        say = f"{facts[0].says}. Wash your hands with soap first."
    elif topic == "at risk":
        say = _risk(answer)
    else:
        say = _wear(answer)
    lines = [say, *(f"- {fact.says}." for fact in facts), *(f"At home: {line}." for line in details["at_risk"])]
    return Line(say, "\n".join(dict.fromkeys([*lines, "The product's own label comes first."])))


def _wear(answer: Answer) -> str:
    cold = " Heat off and cold, no flame." if answer.details["needs_cold"] else ""
    return f"Gloves, eyes covered, a window open.{cold} {OUT} A dust mask stops no gas."


def _risk(answer: Answer) -> str:
    meant = answer.details["meant"]
    lines = (
        ((meant,) if meant else ())
        or answer.details["at_risk"]
        or tuple(fact.says for fact in answer.details["facts"][:1])
    )
    return fitting(f"{lines[0]}. Out of the room while you clean, hands washed after.", f"{lines[0]}.")


LINES: Mapping[str, Callable[[Answer], Line]] = {"protecting.protect": _protect}
