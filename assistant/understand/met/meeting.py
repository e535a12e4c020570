"""Agents that meet: asked about, or said to have met already.

Found by rule beside the matcher, because a claim that a gas pair met must not be taken for a step or for nothing.
"""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import timedelta

from assistant.contract import Outcome, Slots, World
from assistant.core.choice.together import meet
from assistant.understand.harm.gas_told import just_told_of_gas
from assistant.understand.named.unknown_names import OF_WHAT_NOBODY_KNOWS
from assistant.understand.parsing import Parsed
from assistant.understand.text.known_words import MATERIALS
from assistant.understand.text.patterns import Pattern

_PRODUCT = r"(?:AGENT|STOCK|BOTTLE|OTHER|soap|detergent|dish soap)"
MET = Pattern(
    r"\b(?:poured|added|tipped|put|squirted|dumped|chucked|got|splashed|topped(?: up)?|emptied|dropped|knocked"
    rf"|spilled|spilt|kicked)\b(?: \S+){{0,4}}? {_PRODUCT}(?: \S+){{0,3}}? "
    rf"(?:in|into|to|on|onto|over|with|on top of|top of|in with) (?:the |my |some |a |top of )*(?:\S+ )?{_PRODUCT}"
    rf"|\b(?:sprayed|used|applied|misted|wiped)\b(?: \S+)? {_PRODUCT}(?: \S+){{0,4}}? "
    rf"(?:on top of|over|on|onto|after|right after|straight after|with|and) (?:the |some |my )?{_PRODUCT}"
    rf"|\b(?:sprayed|used|applied|misted|put)\b(?: \S+){{0,4}}? {_PRODUCT}"
    r"(?: (?!rins|wash|dr[iy]|wip|hos|flush)\S+){0,7}? (?:then|followed by|and after that)"
    rf"(?: the| some| my)? {_PRODUCT}"
    rf"|\b(?:mixed|combined|blended)(?: up| together)? (?:the |some |my |in )*{_PRODUCT}(?: \S+){{0,3}}? "
    rf"(?:and|with|in|into|to) (?:the |some |my )*{_PRODUCT}"
    r"|\b(?:filled|refilled|mixed|made up|topped up)\b(?: \S+){0,6}? (?:AGENT|STOCK) (?:and|with|plus) "
    r"(?:the |some |my )*(?:AGENT|STOCK)\b"
    rf"|\b{_PRODUCT}(?: \S+){{0,3}} (?:got|went|fell|dripped|ran|spilled|splashed|leaked|is|was) "
    rf"(?:in|into|on|onto|over|on top of|mixed with) (?:the |some |my )?{_PRODUCT}"
    rf"|\b{_PRODUCT} and (?:the |some )?{_PRODUCT}(?: are| is)? (?:both |all |now )*on (?:it|there|that|ENCLOSURE)\b"
    rf"|\bthere (?:was|is) (?:still |some )?{_PRODUCT} (?:in|on) (?:the |my )?{_PRODUCT}"
    rf"|\bthere (?:was|is)(?: \S+){{0,2}} {_PRODUCT} (?:\S+ )?in (?:there|it)\b.*\b"
    rf"(?:poured|added|put|sprayed|filled)(?: \S+){{0,4}} {_PRODUCT}"
)
USE_THAT_BOTTLE = Pattern(
    r"\b(?:use|using|reuse|keep|fill|refill|save|trust)\b(?: \w+)? (?:that|this|the) "
    r"(?:bottle|mix|one|sprayer|stuff)\b"
)
"""A wish to use a bottle again; meant of one that holds an unknown mix."""

ASKED = Pattern(
    r"^(?:i |we |he |she |my \w+ |have |has |had |only |just )*(?:nearly|almost|about to) "
    r"|^(?:my \w+|someone|somebody|people|a friend|a mate|they|i) (?:\w+ )?(?:mixed|combined|used|put|poured)\b.*\b"
    r"(?:once|years? ago|last year|back then|as a kid|in the past)$|^(?:my \w+|someone|somebody|people|i) once "
    r"|^(?:so |and |um |ok |wait |but |what if |hey )*(?:can|could|may|should|shall|is|are|do|does|will|would|what"
    r"|how|when|why|which|am)\b|\bif i\b|\bwhat happens\b|\bshould i\b|\bcan i\b|\bok to\b|\bsafe to\b"
    r"|[,.] (?:so |now )?(?:is|are|may|could|would|will) "
)
DENIED = Pattern(
    r"\b(?:not|never|nobody|no one)(?: has| have| ever| let| you)* "
    r"(?:mix|mixed|combined?|poured?|added|add|put|use|used)\b",
    *("not", "never", "nobody", "no one"),
)
""" "I never mixed bleach and vinegar"."""
_NOT_AT_ONCE = Pattern(
    r"\b(?:dry|dried|drying|last (?:week|month|time|year)|yesterday|days? ago|weeks? ago|shopping|list)\b"
)
_MEETING = Pattern(
    r"\b(?:mix|mixes|mixed|mixing|together|combine\w*|combining|after|before|meet|meets|react\w*|on top of|over"
    r"|follow\w*|blend|between|compatible|touch\w*|add|pour|plus|topping|topped|tipping|pouring|adding|putting"
    r"|combos?|combination|deadly|gas|go with|goes with|alongside|in with|straight after|next to|then)\b"
)
_DOSES = Pattern(r"\b(?:MIX|VOLUME)\b|\bhow (?:much|many|long)\b")
_BETTER = Pattern(r"\b(?:better|best|which|stronger|cheaper|difference|instead|rather|work|works|kill|kills|or)\b")


def unknown_bottle_again(plain: str, slots: Slots, world: World) -> str | None:
    """The bottle with an unknown mix that "can I use that bottle" is about; None: it isn't."""
    unknown = world.state.unknown_mixes
    if unknown and slots.bottles and slots.bottles[0] in unknown and _MAY_I_USE.search(plain):
        return slots.bottles[0]
    return unknown[-1] if unknown and not slots.bottles and USE_THAT_BOTTLE.search(plain) else None


_MAY_I_USE = Pattern(
    r"^(?:(?:and|so|ok|but|then) )*(?:can|may|could|should|shall|is it ok|am i|do) .*\b"
    r"(?:use|using|reuse|spray|trust|keep) (?:the |my )?BOTTLE\b"
)


def met_in_that_bottle(parsed: Parsed, slots: Slots, world: World) -> Slots | None:
    """ "In the yellow bottle", right after two were said to have made gas: where they met; None: it says nothing of it.

    Later on only what plainly says so ("it was in the yellow bottle") counts, and with what isn't known any more.
    """
    plain = parsed.plain.strip(" .!,")
    if len(slots.bottles) != 1 or slots.agents or slots.stocks or parsed.plain.endswith("?"):
        return None
    last, before = world.talk.last, world.talk.last_reading
    gas = last is not None and last.outcome is Outcome.REFUSE and last.values.get("gas") is True
    if gas and last is not None and not last.values.get("bottle") and not last.values.get("enclosure"):
        agents = tuple(last.values.get("agents", ()))
        if before is not None and _WHERE_IT_WAS.fullmatch(plain) and len(agents) > 1:
            return replace(before.slots, agents=agents, bottles=slots.bottles, stocks=(), met=True, steps=())
    there = _WHERE_IT_WAS.fullmatch(plain) is not None and just_told_of_gas(world)
    if not there and (_THAT_WAS_IN.fullmatch(plain) is None or not _made_gas_lately(world)):
        return None
    return replace(slots, agents=("other",), met=True, steps=())


def _made_gas_lately(world: World) -> bool:
    """Gas was made in nothing that was named, and nothing else has been recorded since but what harm records."""
    for past in reversed(world.state.turns):
        if world.now - past.at > GAS_REMEMBERED:
            return False
        if any(deed.event == "GasMade" for deed in past.deeds):
            return all(not deed.thing for deed in past.deeds if deed.event == "GasMade")
    return False


GAS_REMEMBERED = timedelta(minutes=30)
"""How long "it was in the yellow bottle" may still be about the gas."""
_AT = r"(?:(?:in|into|inside|it|that|was|is|they|were|are|all|both|i|mixed|did|put|poured|them|the|my|so|oh|no|of) )*"
_WHERE_IT_WAS = Pattern(rf"{_AT}BOTTLE(?: it was| that was| i think)?")
_THAT_WAS_IN = Pattern(
    r"(?:(?:oh|and|so|i think|ok|no) ,? ?)*(?:it|that|they|this|both|i (?:mixed|did|put|poured) (?:it|them|that))"
    r"(?: (?:was|is|were|are|all|both|happened|mixed))*(?: in| into| inside)?(?: the| my)? BOTTLE"
)


def speaks_of_products(parsed: Parsed) -> bool:
    """False for a text that names no product at all, so that nothing in it can meet."""
    kinds = {thing.kind for mention in parsed.mentions for thing in mention.things}
    return bool(kinds & {"agent", "stock", "bottle"}) or OF_WHAT_NOBODY_KNOWS.search(parsed.plain) is not None


def meets(parsed: Parsed, slots: Slots, world: World, chance: float) -> bool | None:
    """True: they are said to have met; False: it is asked whether they may; None: neither.

    chance: the matcher's, of the question `together`.
    """
    plain = OF_WHAT_NOBODY_KNOWS.sub("OTHER", parsed.plain)
    products = _products(slots, world) | {f"other {place}" for place in range(plain.split().count("OTHER"))}
    asked = ASKED.search(plain) is not None or plain.endswith("?")
    if len(products) >= 2 and MET.search(plain):
        return not asked and DENIED.search(plain) is None
    if len(products) < 2:
        return False if products and _WITH_SOMETHING.search(plain) else None
    if len(slots.touched) >= 2 and not asked and _NOT_AT_ONCE.search(plain) is None:
        return True  # rinsed between isn't enough for those that make gas, and the others are answered as such
    if _DOSES.search(plain) and not re.search(r"\b(?:mix|use|put) (?:\S+ ){1,3}(?:and|with) |\btogether\b", plain):
        return None
    if "ENCLOSURE" in plain and re.search(r"\b(?:start|clean|begin|disinfect)\b", plain) and not _MEETING.search(plain):
        return None
    if _BETTER.search(plain) and not _MEETING.search(plain):
        return None
    if _MEETING.search(plain) or (chance >= 0.3 and not slots.touched) or _side_by_side(plain):
        return False
    if asked and _LIES_ON_IT.search(plain):
        return False
    return None


_WITH_SOMETHING = Pattern(
    r"\b(?:can|may|could|should|ok to|safe to) (?:i |we )?(?:mix|combine) "
    r"(?!.*\b(?:water|MIX|VOLUME|NUMBER|together)\b)(?:\S+ ){1,3}(?:with|and) (?:the |my |some )?\w+"
    rf"|\b(?:mix|combine) {_PRODUCT} with (?!water)\w+\?"
)
""" "Can I mix tomato juice with bleach": what the other is, nobody knows, and it is asked."""
_LIES_ON_IT = Pattern(
    rf"\b{_PRODUCT}(?: \S+){{0,2}}? on (?:the |it\b|there\b|that\b|ENCLOSURE)"
    rf"|\b(?:used|put|had) (?:the |some )?{_PRODUCT}\b"
)
"""A product that is on something already: "there's descaler on the glass, can I bleach it"."""

_PUTS_ON = Pattern(
    r"\b(?:spray|spraying|mist|misting|wipe|wiping|hit|hitting|squirt|squirting|put|putting|pour|pouring|use|using"
    rf"|apply|applying)\b(?: \S+){{0,4}}? {_PRODUCT}\b"
    rf"|\bgo(?:ing)? over (?:it|that|them|ENCLOSURE|the \w+) with (?:the |some )?{_PRODUCT}\b"
    rf"|\b{_PRODUCT} (?:goes|is going|going) (?:on|over|in)\b"
    rf"|^(?:and |so |ok |right )*(?:now|next|then) (?:for )?(?:the |some )?{_PRODUCT}$"
    rf"|\b(?:do|doing|clean|cleaning|polish\w*|scrub\w*)\b(?: \S+){{0,4}}? with (?:the |some |my )?{_PRODUCT}\b"
    rf"|^(?:and |so |ok |right |now )*(?:the |some )?{_PRODUCT} (?:now|next|then|after that)(?: ?\?)?$"
    rf"|^(?:i |we )(?:now )?(?:wipe|spray|mist|use|put)\b.*{_PRODUCT}\b",
    *("AGENT", "STOCK", "BOTTLE", "OTHER"),
)
_NOT_ON_IT = Pattern(
    r"\b(?:how much|how long|how many|what (?:should|do|can)|which|best|instead|MIX|VOLUME|DURATION|label|bottle up"
    r"|away|down the|neutrali\w*|floor|puddle|spill\w*|carpet|tiles)\b"
)


def is_put_on(parsed: Parsed, slots: Slots, world: World) -> bool:
    """One product that is being put, or asked to be put, on a surface that another one is on: may they meet?"""
    plain = OF_WHAT_NOBODY_KNOWS.sub("OTHER", parsed.plain)
    products = _products(slots, world) | ({"other"} if "OTHER" in plain else set())
    spilled = world.talk.last is not None and world.talk.last.intent == "spill"  # then "it" is the puddle
    if len(products) != 1 or spilled or _PUTS_ON.search(plain) is None or _NOT_ON_IT.search(plain) is not None:
        return False
    if ASKED.search(plain) is not None and not MATERIALS.isdisjoint(plain.split()):
        return False  # "can I use vinegar on glass" is asked of glass
    homes = slots.enclosures or tuple(world.state.surfaces)
    on_it = {touch.agent for home in homes for touch in world.state.surfaces.get(home, ())}
    return bool(on_it - products)


def never_together(slots: Slots, world: World) -> bool:
    """Whether what is named may never meet what those bottles hold on record, or nothing is on record of them."""
    held = [agent for name in slots.bottles if name in world.state.bottles for agent in world.state.bottles[name].held]
    agents = [world.facts.agents[agent] for agent in (*slots.agents, *held) if agent in world.facts.agents]
    pairs = [meet(one, other, world.facts) for one in agents for other in agents]
    return not held or any(pair is None or pair.verdict == "never" for pair in pairs)


def _side_by_side(plain: str) -> bool:
    """Hardly more than two products: "bleach and vinegar?"."""
    return (
        re.match(
            rf"^(?:what about |is |are |and )*(?:the )?{_PRODUCT} (?:and|with|plus|then|after|on) (?:the )?{_PRODUCT}"
            r"(?: \S+){0,3}$",
            plain,
        )
        is not None
    )


def _products(slots: Slots, world: World) -> set[str]:
    """The agents that a text names, as agents, stocks or bottles; a bottle on record is what it held."""
    household, agents = world.household, set(slots.agents)
    for name in slots.bottles:
        if name in world.state.bottles:
            agents.update(world.state.bottles[name].held)
            continue
        bottle = household.bottle(name)
        stock = household.stock(bottle.stock) if bottle is not None else None
        agents.add(stock.agent if stock is not None else name)
    for name in slots.stocks:
        found = household.stock(name)
        agents.add(found.agent if found is not None else name)
    return agents
