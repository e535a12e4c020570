"""How bowls, tongs, branches and cloths are spoken of."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from assistant.contract import Answer, Line
from assistant.core.round.gate import DOING
from assistant.say.wording.plain import MOST_WORDS, capital, count, listed, span

FIRST_ASKED = "bowl, tongs, branch, cloth, hide or tub"

SAID_OF_GROUP = {"healthy": "a healthy one", "new": "quarantine", "sick": "a sick one"}


def _shown(say: str, answer: Answer, *more: str) -> Line:
    facts = answer.details["facts"]
    lines = [f"- {fact.says}." + (f" ({fact.conditions})" if fact.conditions else "") for fact in facts]
    notes = [f"Note: {fact.note}" for fact in facts if fact.note]
    return Line(say, "\n".join([say, *more, *lines, *notes]))


def _which(answer: Answer) -> Line:
    return Line(f"Which thing: {FIRST_ASKED}?", f"Which thing: {listed(answer.details['known'], 'or')}?")


def _not_wet_into_heat(answer: Answer) -> Line:
    return Line("No. Rinse it, dry it right through first; then heat. What was sprayed never goes in wet.")


def _treat(answer: Answer) -> Line:
    details = answer.details
    say = WAYS_SAID[details["way"].way](details)
    wished = details["wished"]
    if wished:
        no = "No soaking. " if wished[0] == "soak" else f"{capital(wished[0])}: nothing I have vouches for it. "
        if len((no + say).split()) <= MOST_WORDS:
            return _shown(no + say, answer)
        return _shown(say, answer, f"For {wished[0]} there is nothing here that vouches.")
    return _shown(say, answer)


def _soak(details: Mapping[str, Any]) -> str:
    if details["lasting"]:
        return "It stays with that animal for good. Wash it, heat it if it stands that, dry for days. Ask your vet."
    where = " Never in the kitchen sink." if details["item"].id == "bowl" else ""
    hang = "hang it dry" if details["item"].id == "tongs" else "dry it fully"
    agent = details["agent"]
    if details["minutes"] is not None:
        return (
            f"{count(float(details['minutes']), 'minute')} in {agent.name}: wash it, soap rinsed off, soak it, rinse, "
            f"{hang}.{where}"
        )
    product = agent.name if agent is not None else "your disinfectant"
    return f"Wash it, soap rinsed off; soak it in {product} for its label's time. Rinse, {hang}.{where}"


def _boil(details: Mapping[str, Any]) -> str:
    minutes = float(details["minutes"])
    if details["item"].id == "branch":
        return (
            f"{minutes:g} minutes boiling, then dried for days: keepers' practice, no trial. After an illness, bin it."
        )
    return f"{minutes:g} minutes boiling at most: scrub it first, let it cool, then dry it fully."


def _bake(details: Mapping[str, Any]) -> str:
    hours = span(float(details["minutes"]) * 60)
    degrees = float(details["way"].degrees)
    return (
        f"{degrees:g} degrees Celsius, {hours}, watched: keepers' practice, no trial. "
        "Rinsed and dry first if it was sprayed."
    )


def _wash_hot(details: Mapping[str, Any]) -> str:
    degrees = float(details["way"].degrees)
    return f"{degrees:g} degrees or hotter, washed alone, no softener, then dried fully. Shake nothing out."


def _wipe(_: Mapping[str, Any]) -> str:
    return "Unplug it, let it go cold, wipe it only. Never soak it. Dry before power."


def _bin(details: Mapping[str, Any]) -> str:
    item, home = details["item"].id, details["home"]
    if item == "wiping cloth":
        return "Bin it after droppings, or boil it. A fresh one for each enclosure."
    if item == "gloves":
        return "Bin them, new ones for each. Wash your hands, 20 seconds, soap."
    if item == "plant":
        return "It can't be disinfected well enough: after an infection it goes, or it stays there."
    if home is not None and home.group != "healthy":
        return "Two bags, the first tied in the room, then straight to the outdoor bin. None used again."
    return "Bag it for the household bin: no compost, no drain, none used again after an illness."


WAYS_SAID: Mapping[str, Callable[[Mapping[str, Any]], str]] = {
    "soak": _soak,
    "boil": _boil,
    "bake": _bake,
    "wash hot": _wash_hot,
    "wipe": _wipe,
    "bin": _bin,
}


def _infected(answer: Answer) -> Line:
    item, organism = answer.details["item"], answer.details["organism"]
    after = f"after {organism.name}" if organism is not None else "from a sick animal"
    if item.id == "gloves":
        return _shown("Bin them there. New gloves, and wash your hands, 20 seconds, soap.", answer)
    say = f"Bin it, {after}: two bags, the first tied in the room. Nothing porous moves on."
    return _shown(say, answer)


def _cracked(answer: Answer) -> Line:
    return _shown("Bin it, pieces wrapped, gloves on. Germs lodge in cracks, where no product reaches.", answer)


def _begun(answer: Answer) -> Line:
    details = answer.details
    minutes = span(float(details["minutes"]) * 60)
    stay = " Stay with the oven." if details["way"].way == "bake" else ""
    say = f"{minutes}, I'm counting: {details['item'].name} {DOING[details['way'].way]}.{stay}"
    return _shown(capital(say), answer)


# ---------------------------------------------------------------- from one enclosure to another


def _name(place: Any) -> str:
    return str(place.home.name) if place.home is not None else SAID_OF_GROUP[place.group]


def _share_from(answer: Answer) -> Line:
    return Line("Where has it been used last?")


def _share_to(answer: Answer) -> Line:
    return Line("Where is it to go?")


def _share(answer: Answer) -> Line:
    details = answer.details
    share, source, target = details["share"], details["source"], details["target"]
    heads = f"From {_name(source)} to {_name(target)}."
    return _shown(SHARED[share.verdict](details), answer, heads)


def _never(details: Mapping[str, Any]) -> str:
    item, source, target = details["item"], details["source"], details["target"]
    if item is not None and item.id == "gloves":
        return f"New gloves for {_name(target)}: the old ones off there, hands washed."
    if item is not None and item.id == "wiping cloth":
        return f"Never that cloth: bin it or boil it. A fresh one for {_name(target)}, new gloves too."
    why = {"sick": "the animal is sick", "new": "it's quarantine"}.get(source.group, "")
    if details["share"].fact == "item-crypto":
        why = "disinfectant doesn't clear crypto"
    return (
        f"Never: it stays with {_name(source)}, {why}. {capital(_name(target))} has its own. New gloves, hands washed."
    )


def _disinfect_first(details: Mapping[str, Any]) -> str:
    return "Not unless it's washed, disinfected, rinsed and dry first. New gloves too."


def _fine(details: Mapping[str, Any]) -> str:
    source, target = details["source"], details["target"]
    if source.home is not None and source.home == target.home:
        if details["item"] is not None and details["item"].id == "gloves":
            return f"The same gloves will do within {_name(target)}. Torn, or another animal: new ones."
        return "Fine, it's the same animal's. Wash it after use."
    if target.group != "healthy":
        return f"Fine, but one way: it stays with {_name(target)} then. New gloves when you leave."
    if details["item"] is not None and details["item"].id == "gloves":
        return "The same gloves will do, both are healthy: wash them between. New ones are better."
    return "Fine, both are healthy: wash it between, and your hands. One set each is better."


SHARED: Mapping[str, Callable[[Mapping[str, Any]], str]] = {
    "never": _never,
    "disinfect_first": _disinfect_first,
    "fine": _fine,
}


LINES: Mapping[str, Callable[[Answer], Line]] = {
    "items.which": _which,
    "items.not_wet_into_heat": _not_wet_into_heat,
    "items.treat": _treat,
    "items.infected": _infected,
    "items.cracked": _cracked,
    "items.begun": _begun,
    "items.share_from": _share_from,
    "items.share_to": _share_to,
    "items.share": _share,
}
