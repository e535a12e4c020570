"""Going on in the fields beside the round, each by its own rule: "will vinegar do", "rubber?", "all shut".

Only right after an answer of that field, and only where asking again records nothing.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace

from assistant.contract import Outcome, Reading, Slots
from assistant.core.choice.together import meet
from assistant.core.quantities.amounts import Neat
from assistant.core.quantities.quantity import BadQuantity, read_mix
from assistant.core.round.rounds import is_open
from assistant.understand.look import Look
from assistant.understand.named.animal_words import ONE_ANIMAL
from assistant.understand.named.items_said import items_in
from assistant.understand.text.patterns import Pattern

_FEW = 7
"""Words of a turn that only goes on; more is a question of its own."""


def goes_on_in_its_field(look: Look) -> Reading | None:
    """The question before, asked again with what is said now; None: it is something else."""
    last, before = look.world.talk.last, look.world.talk.just_answered
    if last is None or before is None or before.intent is None:
        return None
    if last.outcome not in (Outcome.ANSWER, Outcome.ASK) or len(look.parsed.words) > _FEW or before.doubts:
        return None
    rule = _RULES.get(before.intent)
    found = rule(look, before) if rule is not None and not before.slots.met else None
    if found is None:
        return None
    intent, slots = found
    slots = replace(slots, steps=(), choices=(), faulty=())
    return replace(before, intent=intent, question=look.parsed.text, slots=slots, confidence=0.9, spoken=look.spoken)


_Found = tuple[str, Slots] | None


def _plain(look: Look) -> str:
    return look.parsed.plain.strip(" .!?,")


# ---------------------------------------------------------------- does it work, what to use

_ANOTHER_PRODUCT = Pattern(
    r"(?:(?:and|or|but|so|then|ok|will|would|does|is|can|could|do|what about|how about|what if i use|i use|use|the|my"
    r"|some|just) )*(?:AGENT|STOCK|BOTTLE)(?: (?:do|work|help|then|ok|enough|any good|any use|good enough|instead|be"
    r"|kill it|on it|for it|against it|do it|as well|too))*"
)
_HOW_STRONG = Pattern(
    r"(?:and |ok |at )?(?:how strong|what strength|what mix|how much of it)(?: then| is that| for that)?"
)


def _of_a_germ(look: Look, before: Reading) -> _Found:
    """ "Will vinegar do", of the germ just spoken of."""
    last = look.world.talk.last
    organisms = before.slots.organisms or ((last.values.get("organism"),) if last is not None else ())
    germs = tuple(germ for germ in organisms if isinstance(germ, str))
    if _HOW_STRONG.fullmatch(_plain(look)):
        return (before.intent or "works_on"), before.slots
    if not germs or _ANOTHER_PRODUCT.fullmatch(_plain(look)) is None:
        return None
    said = look.slots("works_on")
    named = replace(Slots(), organisms=germs, agents=said.agents, stocks=said.stocks, bottles=said.bottles)
    return "works_on", named


# ---------------------------------------------------------------- surfaces, products that meet

_A_MATERIAL = Pattern(
    r"(?:(?:and|or|but|then|on|onto|what about|how about|is it ok on|the|a|my|bare|some) )*[a-z]+(?: [a-z]+)?"
)


def _on_a_material(look: Look, before: Reading) -> _Found:
    """ "Rubber?", of the product just asked about."""
    said = look.slots("surface")
    product = before.slots.agents or before.slots.stocks or before.slots.bottles
    if not product or not said.materials or said.agents or said.stocks or said.bottles or look.claims.done:
        return None
    return ("surface", replace(before.slots, materials=said.materials)) if _is_short_of(look, _A_MATERIAL) else None


_AND_A_PRODUCT = Pattern(r"(?:and|or|what about|how about|and what about)(?: with)?(?: the| my)? (?:AGENT|STOCK)")


def _another_to_meet(look: Look, before: Reading) -> _Found:
    """ "And alcohol", of one of the two just asked about: of that one with which the answer is stricter."""
    said = look.slots("together")
    if _AND_A_PRODUCT.fullmatch(_plain(look)) is None or len(before.slots.agents) < 2 or len(said.agents) != 1:
        return None
    pairs = [(agent, said.agents[0]) for agent in before.slots.agents if agent != said.agents[0]]
    agents, facts = look.world.facts.agents, look.world.facts
    found = [(pair, meet(agents[pair[0]], agents[pair[1]], facts)) for pair in pairs]
    worst = [pair for pair, met in found if met is not None and met.verdict == "never"]
    return "together", replace(before.slots, agents=(worst or pairs)[0], stocks=(), bottles=())  # the stricter answer


def _is_short_of(look: Look, pattern: Pattern) -> bool:
    return pattern.fullmatch(_plain(look)) is not None


# ---------------------------------------------------------------- items, bottles

_AND_AN_ITEM = Pattern(r"(?:(?:and|or|what about|how about|the|a|my|some|same for) )*[a-z]+(?: [a-z]+)?")
_HOW = Pattern(r"(?:and |for )*how (?:hot|long|strong|warm|much)(?: for| then| do i (?:bake|boil|soak) (?:it|them))?")


def _of_an_item(look: Look, before: Reading) -> _Found:
    """ "And the cork", "how hot", of what is to be done with the branches."""
    if _HOW.fullmatch(_plain(look)):
        return "treat_item", before.slots
    items = items_in(look.parsed.plain, look.world.facts)
    if not items or look.parsed.mentions or _AND_AN_ITEM.fullmatch(_plain(look)) is None:
        return None
    return "treat_item", replace(before.slots, items=items)


_HOW_STRONG_IS_IT = Pattern(r"(?:and |so )*how strong is (?:it|that|this|the mix)(?: now| then)?")


def _of_a_bottle(look: Look, before: Reading) -> _Found:
    """ "How strong is it", of what a bottle holds on record; with no fill there, of what it is meant for."""
    last = look.world.talk.last
    if last is None or len(before.slots.bottles) != 1 or _HOW_STRONG_IS_IT.fullmatch(_plain(look)) is None:
        return None
    if last.values.get("unknown_mix") or (last.values.get("held") and not last.values.get("mix")):
        return None
    mix, stock = last.values.get("mix"), last.values.get("stock")
    if not isinstance(mix, str):
        return "mix_strength", Slots(bottles=before.slots.bottles)
    try:
        told = read_mix(mix)
    except BadQuantity:
        return None
    stocks = (stock,) if isinstance(stock, str) else ()
    return ("mix_strength", Slots(stocks=stocks, mixes=(told,))) if stocks and not isinstance(told, Neat) else None


# ---------------------------------------------------------------- air, drying, how much mix

_OPEN = Pattern(
    r"(?:(?:and|or|with|what about|how about|if|only|just|then|i open|i opened|i had) )*"
    r"(?P<many>one|two|three|both|1|2|3|NUMBER)"
    r"(?: windows?| doors?| openings?)?(?: open)?(?: ,? ?(?:then|instead))?"
)
_SHUT = Pattern(
    r"(?:(?:and|or|with|if|what about|it|they|the|windows?|doors?) )*(?:all |everything |both )?(?:is |are )?"
    r"(?:shut|closed)(?: up)?"
)
_ONE_MORE = Pattern(
    r"(?:(?:and|so|what|would|will|does|if|i|is it|be|it|that|quicker|faster|how much|opening|open|opened|with|get me"
    r"|about|how|a|the) )*(?P<which>second|third|both|another)(?: (?:one|window|door|open|opened|get me|help"
    r"|speed it up|be|quicker|faster|do|save me|make|difference|any|much|too|as well|it|then|opening|a))*",
    *("second", "third", "both", "another"),
)
""" "Would a second window speed it up", of how long a room takes to air."""
_WHICH = {"second": 2, "both": 2, "third": 3}
_MANY = {"one": 1, "1": 1, "two": 2, "2": 2, "both": 2, "three": 3, "3": 3}


def _of_the_air(look: Look, before: Reading) -> _Found:
    """ "And one", "all shut", of how long a room takes to air."""
    under_way = any(is_open(round_) for round_ in look.world.state.rounds.values())
    if under_way and _plain(look).split(" ", 1)[0] not in ("and", "with", "what", "if", "or"):
        return None  # "one window open" is then told of the room
    if _SHUT.fullmatch(_plain(look)):
        return "air_time", replace(before.slots, openings=0, air_changes=None)
    said = " ".join(token.text for token in look.parsed.tokens).strip(" .!?,")
    more = _ONE_MORE.fullmatch(said)  # "a second" is else a time, "a third" a number
    if more is not None:
        openings = _WHICH.get(more["which"]) or (before.slots.openings or 1) + 1
        return "air_time", replace(before.slots, openings=openings, air_changes=None)
    found = _OPEN.fullmatch(said)
    if found is None or found["many"] not in _MANY:
        return None
    return "air_time", replace(before.slots, openings=_MANY[found["many"]], air_changes=None)


def _of_drying(look: Look, before: Reading) -> _Found:
    said = look.slots("dry_time")
    more = said.draught is not None or said.humidity is not None or said.materials or look.parsed.mentions
    if said.temperatures and not more:
        return "dry_time", replace(before.slots, temperatures=said.temperatures)
    materials = look.slots("surface").materials
    return ("dry_time", before.slots) if materials and _is_short_of(look, _A_MATERIAL) else None


_OF_SOME = Pattern(r"(?:(?:and|or|but|just|only|no|what about|how about|for|what if it is|with) ?,? ?)+\S.*")


def _of_mix_needed(look: Look, before: Reading) -> _Found:
    """ "Just the floor", "and all the healthy ones", of how much mix is needed."""
    said = look.slots("make_up")
    if _LEAVES_OUT.match(_plain(look)) is not None:
        return _without_them(look, before)
    if _OF_SOME.fullmatch(_plain(look)) is None or look.parsed.amounts.found or said.bottles or said.agents:
        return None
    if said.inside is not None and not said.enclosures:
        return "make_up", replace(before.slots, inside=said.inside)
    if said.enclosures or said.every_enclosure:
        return "make_up", replace(before.slots, enclosures=said.enclosures, every_enclosure=said.every_enclosure)
    return None


_LEAVES_OUT = Pattern(
    r"(?:(?:and|but|or|so|ok|no|sorry|just|what about|how about) ,? ?)*(?:without|not|except|excluding|minus|bar"
    r"|leave out|leaving out|skip|skipping|apart from|all but)\b"
)


def _without_them(look: Look, before: Reading) -> _Found:
    """ "And without the hospital tub": of the others that were reckoned with."""
    named = look.slots("dry_time").enclosures
    homes = before.slots.enclosures
    if before.slots.every_enclosure:
        homes = tuple(home.name for home in look.world.household.enclosures)
    left = tuple(home for home in homes if home not in named)
    if not named or not left or len(left) == len(homes):
        return None
    return "make_up", replace(before.slots, enclosures=left, every_enclosure=False)


def _of_aged_bleach(look: Look, before: Reading) -> _Found:
    """ "Six months then", "it was opened in March", of how strong bleach still is."""
    said = look.slots("bleach_now")
    if said.stock_strength is not None or look.parsed.mentions:
        return None
    kept = replace(before.slots, temperatures=said.temperatures or before.slots.temperatures)
    if said.month is not None and not said.durations:
        return "bleach_now", replace(kept, month=said.month, durations=())
    if len(said.durations) == 1:
        return "bleach_now", replace(kept, durations=said.durations, month=None)
    return None


_STILL_THERE = Pattern(
    rf"(?:(?:but|and|what if|so|if) )*(?:the |my |our )?(?:ANIMAL|ENCLOSURE|{ONE_ANIMAL}|he|she|they|it)"
    r"(?: is| are| 's)? (?:still )?in (?:the|this|that|here|there)(?: same)?(?: room)?"
)


def of_the_room(look: Look) -> Reading | None:
    """ "The lizard's still in the room", right after what to wear: no animal got out, and it is to be taken out."""
    last, before = look.world.talk.last, look.world.talk.last_reading
    if last is None or before is None or last.intent != "protect" or before.intent != "protect":
        return None
    return replace(before, question=look.parsed.text) if _STILL_THERE.fullmatch(_plain(look)) else None


def _of_a_ratio(look: Look, before: Reading) -> _Found:
    """ "As a percent", of the ratio just read."""
    unit = look.slots("convert").to_unit
    if unit not in ("%", "ppm") or look.parsed.amounts.found or look.parsed.mentions:
        return None
    return "read_ratio", replace(before.slots, to_unit=unit)


_AND_HOME = Pattern(
    r"(?:(?:and|also|oh|so is|so are|same for|the same for|same with) )*(?:the |my )?(?:ENCLOSURE|ANIMAL)"
    r"(?: ,? ?(?:too|as well|also|same time|at the same time))*"
)
_NOW = Pattern(r"(?:and|so|how about|what about) now")
_GERM = Pattern(r"(?:(?:and|but|so|what) )*(?:if it (?:is|was|were)|for|with|against|about) (?:the |a )?ORGANISM")


def _of_another_home(look: Look, before: Reading) -> _Found:
    """ "Same for the river tank", of a chore just logged."""
    last, said = look.world.talk.last, look.slots("log_clean")
    logged = last is not None and last.values.get("recorded") is True
    if not logged or not said.enclosures or said.choices or _AND_HOME.fullmatch(_plain(look)) is None:
        return None
    return "log_clean", replace(before.slots, enclosures=said.enclosures, groups=(), racks=(), every_enclosure=False)


def _and_now(look: Look, before: Reading) -> _Found:
    """ "And now?", after "not yet"."""
    return ("return_check", before.slots) if _NOW.fullmatch(_plain(look)) else None


def _against_a_germ(look: Look, before: Reading) -> _Found:
    """ "And if it was salmonella?", of how long a product has to stay wet."""
    organisms = look.slots("hold_time").organisms
    if not organisms or _GERM.fullmatch(_plain(look)) is None:
        return None
    return "hold_time", replace(before.slots, organisms=organisms)


_RULES: Mapping[str, Callable[[Look, Reading], _Found]] = {
    "works_on": _of_a_germ,
    "choose_agent": _of_a_germ,
    "surface": _on_a_material,
    "together": _another_to_meet,
    "treat_item": _of_an_item,
    "in_bottle": _of_a_bottle,
    "air_time": _of_the_air,
    "log_clean": _of_another_home,
    "return_check": _and_now,
    "hold_time": _against_a_germ,
    "dry_time": _of_drying,
    "make_up": _of_mix_needed,
    "read_ratio": _of_a_ratio,
    "bleach_now": _of_aged_bleach,
}
