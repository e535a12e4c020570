"""How a choice is spoken of: the best with strength and wet time, why, and on the screen why not the others."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from assistant.contract import Answer, Line
from assistant.core.choice.choosing import Choosing, Offer, PassedOver
from assistant.say.wording.evidence_said import (
    ASK_VET,
    fitting,
    heat_said,
    minutes_said,
    on_what,
    percent_said,
)
from assistant.say.wording.harm import numbers_shown
from assistant.say.wording.plain import capital

LABELS = "Your products' own labels come first."
CLEANS = "That cleans; it doesn't disinfect."

WHY_NOT = {
    "refused": "not near reptiles",
    "water": "harms water life",
    "vet": "your vet's plan, no strength or time from me",
    "cleans": "a cleaner, no disinfectant",
    "never there": "never on that material",
    "porous": "the material soaks it up",
    "rinse first": "must not meet what is on the surface: rinse, and dry, first",
    "fails": "published to fail",
    "partly": "published to do only part",
    "disagree": "studies disagree",
    "nothing": "nothing published on it",
    "contents": "I don't know what is in it",
}
"""Why an agent is passed over, in a few words."""


def _choose(answer: Answer) -> Line:
    found: Choosing = answer.details["found"]
    need = answer.details["need"]
    if need.job == "mites":
        say = "No disinfectant treats mites. Hot water on the tub, bin what's porous; your vet treats the animal."
    elif need.job in ("scale", "dirt"):
        say = _cleaner(answer, found)
    elif found.works:
        say = _best(answer, found.offers[0])
    elif found.offers:
        say = _not_sure(answer, found.offers[0])
    else:
        say = _none(answer)
    vet = numbers_shown(answer.details["people"])[-1:] if answer.details["vet"] else []
    return Line(say, "\n".join([say, *_shown(answer, found), *vet, LABELS]))


def _none(answer: Answer) -> str:
    germ = answer.details["germ"]
    on = f" on {germ.name}" if germ is not None else " there"
    part = "".join(f" {says}." for says in answer.details["partly"][:1])
    return fitting(f"Nothing I have works{on} for sure.{part} {ASK_VET}", f"{part.strip()} {ASK_VET}".strip())


def _best(answer: Answer, offer: Offer) -> str:
    evidence = offer.evidence
    assert evidence is not None, "a cleaner is worded by its job"
    ask_vet = " Ask your vet." if answer.details["vet"] else ""
    if offer.agent is None:
        heat = heat_said(evidence)
        if not heat and evidence.figure is not None:
            return fitting(f"Heat. {evidence.figure.fact.says}. Bin what's porous.{ask_vet}", f"Heat.{ask_vet}")
        return f"Heat: {heat}, all the way through, {on_what(evidence)}. Bin what's porous.{ask_vet}"
    name = capital(offer.name)
    if answer.details["water"]:
        return fitting(
            f"{name}, {_amount(offer)}. It harms water life: rinse well, not a drop near their water.",
            f"{name}. It harms water life: not a drop near their water.",
        )
    if offer.percent is None and evidence.figure is not None and answer.details["germ"] is not None:
        time = f" Keep it wet {minutes_said(offer.minutes)}." if offer.minutes is not None else ""
        return fitting(f"{name}. {evidence.figure.fact.says}.{time}{ask_vet}", f"{name}, {_amount(offer)}.{ask_vet}")
    whence = f": {offer.bottle.name}" if offer.bottle is not None else ""
    end = f" It worked {on_what(evidence)}." if answer.details["germ"] is not None else " Wash first, rinse after."
    return fitting(f"{name}, {_amount(offer)}{whence}.{end}{ask_vet}", f"{name}, {_amount(offer)}{whence}.{ask_vet}")


def _amount(offer: Offer) -> str:
    """Strength and wet time, as much as is known."""
    strength = percent_said(offer.percent) if offer.percent is not None else "at its label's strength"
    if offer.minutes is None:
        return f"{strength}, wet as long as its label says"
    return f"{strength}, {minutes_said(offer.minutes)} wet"


def _not_sure(answer: Answer, offer: Offer) -> str:
    germ = answer.details["germ"]
    on = f" on {germ.name}" if germ is not None else " for sure"
    if offer.agent is None:
        return f"Nothing published works{on}. Heat did part. {ASK_VET}"
    return fitting(
        f"Nothing published works{on}. Nearest: {offer.name}, {_amount(offer)}, {KIND}. Ask your vet.",
        f"Nothing published works{on}. Nearest: {offer.name}, {_amount(offer)}. Ask your vet.",
        f"Nothing published works{on}. Nearest: {offer.name}. Ask your vet.",
    )


KIND = "on another of its kind"


def _cleaner(answer: Answer, found: Choosing) -> str:
    if not found.offers:
        out = found.passed_over[0]
        if out.why == "rinse first":
            return f"Not {out.name} yet: it must not meet what is on there. Rinse and dry first."
        return f"Not {out.name}: {WHY_NOT[out.why]}. Warm water and a soft cloth."
    offer = found.offers[0]
    if answer.details["need"].job == "scale":
        return f"{capital(offer.name)}, then rinse. {CLEANS} Never onto bleach."
    return f"{capital(offer.name)} and warm water, then rinse. {CLEANS}"


# ---------------------------------------------------------------- shown


def _shown(answer: Answer, found: Choosing) -> list[str]:
    details = answer.details
    lines = [f"{place}. {_offer_line(offer)}" for place, offer in enumerate(found.offers, 1)]
    lines += [f"In part: {says}." for says in details["partly"]]
    if found.passed_over:
        lines.append("Not offered:")
        lines += [f"- {_out_line(out, details['reasons'])}" for out in found.passed_over]
    lines += [f"{says}." for says in details["extra"]]
    lines += list(details["near_water"])
    lines += [f"At home: {says}." for says in details["at_risk"]]
    return lines


def _offer_line(offer: Offer) -> str:
    if offer.agent is None and offer.evidence is not None:
        return f"{capital(offer.name)}: {heat_said(offer.evidence) or 'as hot as it takes'}, {on_what(offer.evidence)}"
    if offer.evidence is None:
        return f"{capital(offer.name)}: cleans only"
    shelf = (
        f"your {offer.bottle.name}"
        if offer.bottle
        else f"your {offer.stock.name}"
        if offer.stock
        else "not on your shelf"
    )
    said = {"works": f"works {on_what(offer.evidence)}"}.get(offer.verdict, "not shown to work on it")
    return f"{capital(offer.name)}, {_amount(offer)} ({said}; {shelf})"


def _out_line(out: PassedOver, reasons: Mapping[str, str]) -> str:
    because = f" ({reasons[out.fact]})" if out.fact is not None else ""
    return f"{capital(out.name)}: {WHY_NOT[out.why]}{because}"


def _porous(answer: Answer) -> Line:
    material, facts = answer.details["material"], answer.details["facts"]
    say = f"{facts[0].says}."
    return Line(say, "\n".join([say, *(f"{fact.says}." for fact in facts[1:]), f"Material: {material.name}."]))


def _for_what(_: Answer) -> Line:
    return Line("For what: dirt, scale, routine disinfecting, a named illness, or mites?")


LINES: Mapping[str, Callable[[Answer], Line]] = {
    "what_to_use.choose": _choose,
    "what_to_use.porous": _porous,
    "what_to_use.for_what": _for_what,
}
