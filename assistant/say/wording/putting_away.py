"""How keeping, pouring away and unknown bottles are spoken of."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from assistant.contract import Answer, Line
from assistant.say.wording.alarms import NOT_INSTEAD
from assistant.say.wording.plain import capital, listed

PLACES = {
    "kitchen sink": "the kitchen sink",
    "street drain": "a street drain",
    "garden": "the garden or any soil",
    "water": "a pond or ditch",
}


def _shown(say: str, answer: Answer, *more: str) -> Line:
    facts = answer.details["facts"]
    lines = [f"- {fact.says}." + (f" ({fact.conditions})" if fact.conditions else "") for fact in facts]
    notes = [f"Note: {fact.note}" for fact in facts if fact.note]
    return Line(say, "\n".join([say, *more, *lines, *notes]))


def _pour_what(answer: Answer) -> Line:
    return Line("Pour what away? Say the bottle or the product.")


def _pour(answer: Answer) -> Line:
    product = answer.details["product"]
    keep = "nothing acid in there" if product.agent.family == "chlorine" else "no other cleaner in there"
    say = f"1 cup at a time, slowly, water running a minute: laundry sink or toilet, {keep}. Never the kitchen sink."
    return _shown(say, answer)


def _pour_septic(answer: Answer) -> Line:
    return _shown(
        "1 bucket of weak mix a day at most into a septic tank. The rest, and concentrate, to collection.", answer
    )


def _pour_concentrate(answer: Answer) -> Line:
    return _shown("Use it up or take it to waste collection. Concentrate doesn't go down a drain.", answer)


def _pour_alcohol(answer: Answer) -> Line:
    return _shown("Use it up or take it to collection. No drain, and never left to evaporate near heat.", answer)


def _pour_unknown(answer: Answer) -> Line:
    say = "Don't pour it, nobody knows what it is. Lid on, mark it unknown, upright, alone. Ring your waste collection."
    return _shown(say, answer, NOT_INSTEAD)


def _never_there(answer: Answer) -> Line:
    where = PLACES[answer.details["drain"]]
    alcohol = answer.details["product"].agent is not None and answer.details["product"].agent.needs_cold
    instead = "Waste collection." if alcohol else "Laundry sink or toilet, a cup at a time, plenty of water."
    return _shown(f"No, never into {where}. {instead}", answer)


def _unknown(answer: Answer) -> Line:
    bottle = answer.details["bottle"]
    say = "Don't open, sniff, shake, pour or use it. Mark it unknown, upright, alone. Ring your waste collection."
    if len(answer.details["bottles"]) > 1:
        bottles = answer.details["bottles"]
        which = capital(listed(bottles)) if len(bottles) == 2 else "All your bottles"
        say = f"{which}: marked unknown. Don't use any until it is rinsed out and filled afresh."
        return _shown(say, answer)
    if bottle is not None:
        marked = f"{capital(bottle)}: unknown, don't use, on my record until rinsed out."
        return _shown(
            f"{capital(bottle)}: marked unknown. Don't sniff, mix, pour or use it. Ring your waste collection.",
            answer,
            marked,
        )
    return _shown(say, answer)


def _unknown_wish(answer: Answer) -> Line:
    wish = answer.details["wish"]
    say = f"No. {capital(wish)} tells nobody what it is. Mark it unknown, upright, alone; ring your waste collection."
    return _shown(say, answer)


KEPT = {
    "bleach": (
        "Below {degrees} degrees, dark, upright, own bottle, locked, high up. "
        "Apart from acids, alcohol, ammonia and peroxide."
    ),
    "alcohol": "Cool and aired, away from lamps, flames and bleach. Own bottle, cap tight, locked, high up.",
    "acid": "Own bottle, cap on, locked, high up, in its own tray. Well apart from bleach.",
    "peroxide": "Dark and cool, own bottle, locked, high up. Apart from bleach, vinegar and alcohol.",
    "quat": "Own bottle, cap on, locked, high up, apart from bleach. No sponge left soaking in it.",
    "any": (
        "Own bottle, label on, cap closed, upright, locked, high up. "
        "Acids well apart from bleach. Never a drink bottle."
    ),
}


def _store(answer: Answer) -> Line:
    hottest = answer.details["hottest"]
    degrees = f"{float(hottest.value):g}" if hottest is not None else ""
    return _shown(KEPT[answer.details["kind"]].format(degrees=degrees), answer)


def _apart(answer: Answer) -> Line:
    first, second, pair = answer.details["first"], answer.details["second"], answer.details["pair"]
    because = f": together it {pair.because}" if pair is not None else ": nobody knows what they do together"
    return _shown(f"Keep {first.name} and {second.name} apart{because}. Separate trays, upright, locked.", answer)


def _beside(answer: Answer) -> Line:
    first, second = answer.details["first"], answer.details["second"]
    return _shown(
        f"{capital(first.name)} and {second.name} may stand on one shelf: own bottles, upright, caps on, locked.",
        answer,
    )


LINES: Mapping[str, Callable[[Answer], Line]] = {
    "putting_away.pour_what": _pour_what,
    "putting_away.pour": _pour,
    "putting_away.pour_septic": _pour_septic,
    "putting_away.pour_concentrate": _pour_concentrate,
    "putting_away.pour_alcohol": _pour_alcohol,
    "putting_away.pour_unknown": _pour_unknown,
    "putting_away.never_there": _never_there,
    "putting_away.unknown": _unknown,
    "putting_away.unknown_wish": _unknown_wish,
    "putting_away.store": _store,
    "putting_away.apart": _apart,
    "putting_away.beside": _beside,
}
