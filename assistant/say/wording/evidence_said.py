"""How studies are spoken of: on what they were done, how strong, how long; shared by the wordings of choosing."""

from __future__ import annotations

from fractions import Fraction

from assistant.core.choice.choosing import Offer
from assistant.core.choice.evidence import Evidence
from assistant.say.wording.amounts import rounded
from assistant.say.wording.plain import MOST_WORDS, capital, count, span

ON_WHAT = {
    "same organism": "on the germ itself",
    "reptile isolates": "on strains from reptiles",
    "same genus": "on a close relative",
    "surrogate, same genus": "on a close relative",
    "surrogate, same family": "on a relative",
    "surrogate, same order": "on a distant relative",
    "surrogate": "on a stand-in",
    "general rule": "by a general rule only",
}
"""How near what was tested is to what is asked about."""


def on_what(evidence: Evidence) -> str:
    """ "on a close relative"."""
    row = evidence.figure or (evidence.rows[0] if evidence.rows else None)
    return ON_WHAT.get(row.directness, "on a stand-in") if row is not None else ""


def percent_said(percent: Fraction) -> str:
    """ "0.19 percent"."""
    return f"{rounded(percent)} percent"


def minutes_said(minutes: Fraction) -> str:
    """ "10 minutes", "30 seconds"; two days and more in days."""
    if minutes >= 2 * 24 * 60:
        return f"{rounded(minutes / (24 * 60))} days"
    return count(float(minutes), "minute") if minutes >= 1 else span(float(minutes * 60))


def heat_said(evidence: Evidence) -> str:
    """ "72.4 degrees for 1 minute"; nothing where the heat isn't stated: a time alone would mislead."""
    if evidence.degrees is None:
        return ""
    time = f" for {minutes_said(evidence.minutes)}" if evidence.minutes is not None else ""
    return f"{rounded(evidence.degrees)} degrees{time}"


ASK_VET = "Ask your vet for the plan."


def instead_said(offer: Offer | None) -> str:
    """What does work, and who decides: the second half of a "no"."""
    ask_vet = ASK_VET
    if offer is None:
        return f"Nothing I have surely works there. {ask_vet}"
    if offer.evidence is not None and offer.id == "heat":
        heat = heat_said(offer.evidence)
        return f"Heat worked: {heat}. {ask_vet}" if heat else f"Heat worked. {ask_vet}"
    return f"{capital(offer.name)} worked. {ask_vet}"


def fitting(*choices: str) -> str:
    """The first that is short enough to be spoken; the last if none is."""
    return next((say for say in choices if len(say.split()) <= MOST_WORDS), choices[-1])


def row_lines(evidence: Evidence) -> list[str]:
    """Every study weighed, a line each, with conditions and doubts."""
    lines = []
    for row in evidence.rows:
        more = "; ".join(part for part in (row.fact.conditions, row.fact.note) if part)
        lines.append(f"- {row.fact.says}" + (f" ({more})" if more else "") + f" [{row.directness}]")
    return lines
