"""Two products that are told to have met, in whatever words: "bleach and vinegar got mixed", "mixed yellow and green".

`meeting` knows who put what onto what. Here nobody need have done it: two products that went into one vessel, became
one mix, or stood in each other. Colours stand for bottles, for two of them are told by nothing else.
"""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Slots
from assistant.core.choice.together import worst
from assistant.understand.bottles.fills import bottle_of_before
from assistant.understand.look import Look
from assistant.understand.met.meeting import ASKED, MET
from assistant.understand.named.by_colour import agents_of, products_by_colour
from assistant.understand.named.names import Thing
from assistant.understand.named.unknown_names import OF_WHAT_NOBODY_KNOWS
from assistant.understand.question.may_be import is_told
from assistant.understand.text.asking import asks
from assistant.understand.text.patterns import Pattern

_P = r"(?:AGENT|STOCK|BOTTLE|OTHER)"
_POURED = r"(?:AGENT|STOCK|OTHER)"
"""A product as stuff: "the yellow and green are in the sink" may be two bottles that stand there."""
_SOME = (
    r"(?:(?:the|my|some|a|an|of|bit|little|drop|drops|splash|squirt|neat|old|rest|leftover|leftovers|last|more|both"
    r"|all|that|this|other) )*"
)
_AND = r"(?:and|with|plus|,|and then)"
_PAIR = rf"{_P}(?: bottles?)? {_AND} {_SOME}{_P}(?: bottles?)?"
_PAIR_POURED = rf"{_POURED} {_AND} {_SOME}{_POURED}"
_VESSEL = (
    r"(?:(?:the|my|a|an|one|this|that|same|kitchen|mop|spray|old|empty|cleaning|utility|bathroom|floor) )*"
    r"(?:bucket|pail|bottle|sprayer|sink|drain|plughole|bowl|tub|jug|toilet|loo|bath|basin|shower|cup|tray|puddle"
    r"|pump|container|canister|BOTTLE|it|there|here)"
)
_ON_IT = (
    r"(?:it|that|there|them|ENCLOSURE|the (?:\w+ )?(?:glass|walls?|tank|cage|viv\w*|floor|tiles|lid|inside|sides?))"
)
_WENT = r"(?: (?:have|has|had|both|all|just|must|may|accidentally|were|was|are|is|been|being|somehow|now|'s))*"
_CLOTH = r"(?:rag|cloth|sponge|brush|mop|towel|wipe|bucket|scrubber|flannel|scourer|gloves?)"
_POUR = r"(?:poured|tipped|emptied|chucked|threw|dumped|flushed|drained|sloshed)"
_PUT = rf"(?:{_POUR}|put|added|squirted|splashed|got|had|stuck|used|mixed)"
_MET = Pattern(
    # the two, and what became of them
    rf"\b{_PAIR}{_WENT} (?:mixed(?! up)|combined|blended|reacted|touched|met)\b"
    rf"|\b{_PAIR}{_WENT} (?:got|gotten|went|gone|ended up|came|ran|flowed)(?: \w+)? "
    r"(?:mixed(?! up)|combined|blended|together|in together|in one|into each other|into one another"
    r"|on top of each other)\b"
    rf"|\b{_PAIR_POURED}{_WENT}(?: (?:got|gotten|went|gone|ended up|came|ran|flowed|poured|tipped|dripped))?"
    rf"(?: \w+)? (?:in|into|down|inside) {_VESSEL}\b"
    rf"|\b{_PAIR_POURED}{_WENT} (?:got|went|ended up)(?: \w+)? on {_ON_IT}"
    rf"|\b{_POURED}{_WENT} (?:got|went|gone|ended up|came|fell|ran|dripped) (?:in |into |on )?"
    rf"(?:with|together with|onto) {_SOME}{_POURED}\b"
    rf"|\b{_POURED}{_WENT} (?:tipped|fell|ran|leaked|dripped|spilled|spilt|went|got|came|knocked)(?: over| down)?"
    rf" (?:in|into|onto|on) {_SOME}{_P}(?: 's)?(?: puddle| pool| bucket| mix| spray)?\b"
    rf"|\bthere (?:is|was) {_SOME}{_P}(?: \w+)? (?:on|in|all over) {_ON_IT}(?: ,)? (?:and|but) (?:i |we |i have "
    rf"|we have )?"
    rf"(?:just |already )?(?:sprayed|put|used|misted|poured|wiped)(?: \S+){{0,2}}? {_SOME}{_P}\b"
    # both spilled: in one puddle, as far as anybody knows
    rf"|\b{_PAIR}{_WENT} (?:spilled|spilt|tipped|leaked|fell|knocked|went over|burst)\b"
    rf"|\b(?:spilled|spilt|knocked|tipped|dropped|kicked|smashed)(?: \w+){{0,3}}? ?,? ?{_SOME}{_PAIR}\b"
    # the two put somewhere in one breath
    rf"|\b{_PUT}(?: \w+)? {_SOME}{_PAIR_POURED}(?: \w+)? (?:(?:in|into|down|inside) {_VESSEL}|together|at once"
    rf"|at the same time|on {_ON_IT})"
    rf"|\b{_POUR}(?: \w+)? {_SOME}{_PAIR}(?: \w+)? (?:(?:in|into|down|inside) {_VESSEL}|together)\b"
    rf"|\b(?:{_PUT}|emptied|poured|tipped)(?: \w+)? {_SOME}{_P}(?: bucket| mix| bottle)? (?:in|into|down) {_VESSEL}"
    r"(?: \S+){0,2}? "
    r"(?:after|right after|straight after|on top of|followed by|and then|then|with|where there was|that had"
    rf"|as well as) {_SOME}{_P}\b"
    rf"|\b{_POURED}{_WENT}(?: (?:went|got|gone|poured))? (?:in|into|down) {_VESSEL} (?:where|that|which|and) "
    rf"(?:there was|there is|had|has|i had|we had|held|still had)(?: \w+){{0,2}} {_POURED}\b"
    rf"|\b{_POURED} (?:mix |water |solution |bucket )?(?:has|had|still had|contained|has got)"
    rf"(?: \w+){{0,2}} {_POURED} in (?:it|there)\b"
    r"|\b(?:made|made up|got|have|brewed|concocted|it is|that is|that was|it was|there is|using|used|created)"
    rf"(?: \w+){{0,2}} (?:mix|mixture|cocktail|blend|brew|combo|combination|concoction|solution) of {_SOME}{_PAIR}\b"
    # one on the cloth, the other under it
    rf"|\b(?:used|wiped|mopped|dipped|put|cleaned|soaked|dropped|dunked)(?: \S+){{0,4}}? {_P} {_CLOTH}"
    rf"(?: \S+){{0,3}}? (?:for|on|with|in|into|over) {_SOME}{_P}\b"
    rf"|\b(?:wiped|mopped|soaked|cleaned|dabbed|took) {_SOME}{_P} (?:\w+ )?(?:with|using) {_SOME}{_P} {_CLOTH}\b"
    # what was in the bottle still
    rf"|{_SOME}{_P}{_WENT}(?: still| left)* (?:in|at the bottom of|inside) (?:it|there|the bottle|BOTTLE) "
    r"(?:when|before|as|and then) (?:i|we|he|she|my \w+|somebody|someone)(?: \w+)? "
    rf"(?:put|poured|added|filled|tipped|mixed|sprayed|used)(?: \S+){{0,4}}? {_P}\b"
    rf"|\b(?:filled|refilled|made up|topped up)\b(?: \S+){{0,6}}? {_POURED} (?:and|with|plus) {_SOME}{_POURED}\b",
    *("AGENT", "STOCK", "BOTTLE", "OTHER"),
)
_UNRINSED = Pattern(
    rf"\b(?:did not|never|forgot to|without|not) (?:\w+ )?rins\w*(?: out| off)? {_SOME}{_P}(?: bottle| out| off)* "
    rf"(?:before|when|and then|then|first when) (?:i |we )?(?:put|putting|fill\w*|us\w+|add\w*|pour\w*|spray\w*"
    rf"|switch\w*"
    rf"|refill\w*|went|going|start\w*)(?: \S+){{0,4}}? {_P}\b"
    rf"|\b{_SOME}{_P} (?:was|is|were) (?:all |not |still |yet |even )*(?:wet|damp|on(?: it| there)?|in there|there|dry"
    rf"|rinsed(?: off)?|on the \w+) (?:when|as|and|while|before) (?:i|we) (?:then )?(?:used|sprayed|put|wiped"
    rf"|poured|added"
    rf"|did|misted|squirted)(?: \S+){{0,4}}? {_P}\b",
    "not",
    "never",
    "forgot",
    "without",
    "when",
    "as ",
    "while",
    "before",
)
""" "Bleach was still wet when I used the vinegar"; "I didn't rinse the bleach bottle before putting vinegar in"."""
_BOTTLES = Pattern(
    r"^(?:(?:oh|no|oops|shit|and|so|i|we|have|has|had|just|accidentally|think|went|my \w+|he|she|they|somebody"
    rf"|someone) ,? ?)*(?:mixed|combined|blended)(?: up)? {_SOME}BOTTLE(?: bottles?)? "
    rf"(?P<with>and|with|into|,) {_SOME}BOTTLE(?: bottles?)?"
    r"(?P<sure>(?: (?:together|in one|by mistake|by accident|accidentally|now|oops|help|just now|what now|!|\.|,))*)$",
    "BOTTLE",
)
""" "Mixed yellow and green", and no more: no strength, no day for which it is. Each by itself is "made up"."""
_WASHED_BETWEEN = Pattern(
    r"\b(?:rins|hos|flush|swill)\w*|\b(?:washed|dried|aired) (?:it|that|in between|out|off|first)\b"
)
_NOT_SO = Pattern(
    r"\b(?:separate\w*|each|respectively|apart|shopping|list|order\w*|buy|bought|cupboard|shelf|stored)\b"
)
_AS_IT_WAS_PUT_IN = Pattern(r"\b(?:when|before|as) (?:i|we|he|she|my \w+) ")
"""Tells of what was there already, and of nothing still to come."""
_DID_I_JUST = Pattern(r"^(?:(?:oh|no|god|wait|so|ok) ,? ?)*did (?:i|we) just (?:mix|combine|blend)\b", "just")
""" "Did I just mix bleach and vinegar": it was done, whatever is asked of it."""
_SPILLED = Pattern(r"\b(?:spil|knock|tipp|leak|dropp|smash|burst)\w*")
""" "Both spilled on the shelf": they don't stand there."""
_FEW = 2


def met_told(look: Look) -> Slots | None:
    """The slots of two products that are told to have met; None: nothing of the kind is told."""
    plain = _DID_I_JUST.sub("i just mixed", look.parsed.plain)
    unrinsed = _UNRINSED.search(plain) is not None and not asks(plain)
    if unrinsed and len(agents_of(both := _products(look)[1], look.world)) >= _FEW:
        return _met(look, both)
    if ASKED.search(plain) is not None or not is_told(_AS_IT_WAS_PUT_IN.sub(" ", plain)):
        return None
    masked, things = _products(look)
    masked = _DID_I_JUST.sub("i just mixed", masked)
    if len(agents_of(things, look.world)) < _FEW or _WASHED_BETWEEN.search(masked):
        return None
    if _NOT_SO.search(masked) and not _SPILLED.search(masked):
        return None
    return _met(look, things) if _MET.search(masked) or (masked != look.parsed.plain and MET.search(masked)) else None


def spilled_too(look: Look) -> Slots | None:
    """ "And the vinegar too", right after bleach was spilled: they have met; None: nothing of the kind is told."""
    last = look.world.talk.last
    spilled = last.values.get("agent") if last is not None and last.intent == "spill" else None
    masked, things = _products(look)
    if spilled is None or _TOO.fullmatch(masked.strip(" .!")) is None:
        return None
    agents = tuple(dict.fromkeys((str(spilled), *agents_of(things, look.world))))
    return replace(_met(look, things), agents=agents) if len(agents) == _FEW else None


_TOO = Pattern(
    rf"(?:(?:oh|and|no|then|also|plus|,) ?)*{_SOME}{_P}(?: (?:too|as well|also|spilled|spilt|went|over|with it|now))+"
    rf"|(?:and|plus|also) {_SOME}{_P}"
)


def something_in_the_bottle(look: Look) -> Slots | None:
    """ "The yellow had a bit of vinegar in it": what the bottle is for has met that; None: nothing of the kind."""
    masked, things = products_by_colour(look.parsed, look.world.household)
    if (filled := _in_the_one_just_filled(masked, things, look)) is not None:
        return filled
    things = tuple(sorted(things, key=lambda thing: thing.kind != "bottle"))  # whichever is told first
    if _IN_THE_BOTTLE.fullmatch(masked.strip(" .!")) is None or len(things) != _FEW or things[0].kind != "bottle":
        return None
    agents = agents_of(things[1:], look.world)
    if not things[0].name or set(agents) <= set(agents_of(things[:1], look.world)):
        return None
    return replace(_met(look, things[:1]), agents=agents, enclosures=())


def _in_the_one_just_filled(masked: str, things: tuple[Thing, ...], look: Look) -> Slots | None:
    """ "There was vinegar in the bottom still", right after a fill was told: of that bottle."""
    last, bottle = look.world.talk.last, bottle_of_before(look.world)
    if last is None or last.intent != "mixed" or bottle is None or _IN_IT.fullmatch(masked.strip(" .!")) is None:
        return None
    agents = agents_of(things, look.world)
    held = agents_of((Thing("bottle", bottle),), look.world)
    if len(agents) != 1 or set(agents) <= set(held):
        return None
    return replace(_met(look, ()), bottles=(bottle,), agents=agents, enclosures=())


_STILL = r"(?:still|left|already|before|over|though|first|when i filled it|from (?:before|last time))"
_IN_IT = Pattern(
    rf"(?:(?:oh|no|wait|actually|so|and|but|god|shit|oops|i think|i forgot|not rinsed though|,) ?)*(?:there (?:was|is)"
    rf"|it (?:still )?(?:had|has|held)|i left|it is got|had)(?: (?:still|already))* {_SOME}{_POURED}(?: {_STILL})*"
    rf"(?: (?:in it|in there|in|inside|in the bottle|(?:in|at) the bottom)(?: of (?:it|the bottle))?)?(?: {_STILL})*"
    r"(?: ?,.*)?",
    *("AGENT", "STOCK", "OTHER"),
)
_IN_THE_BOTTLE = Pattern(
    rf"(?:(?:oh|no|wait|actually|so|and|but|god|,) ?)*(?:there (?:was|is)|i left) (?:still )?{_SOME}{_POURED}(?: left"
    rf"| still)* (?:in|at the"
    r" bottom of) (?:the |my )?BOTTLE(?: bottle)?(?: still| already| when i filled it(?: up)?| before i filled it)*|"
    r"(?:(?:oh|no|wait|actually|i think|so|and|but|the|my|it|turns out|god|,) ?)*BOTTLE (?:(?:still|actually|already"
    rf"|must have|might have) )*(?:had|has|has got|held|contained|have) {_SOME}"
    rf"(?:bit|little|drop|splash|dash|rest|some) (?:of )?{_SOME}{_P}(?: left| still)* (?:in it|in there|inside)"
    r"(?: still| already| when i filled it)*",
    "BOTTLE",
)


def bottles_mixed(look: Look) -> Slots | None:
    """The slots of two bottles that are told to be mixed; None: they aren't, or each of them was made up.

    Said of two bottles "mixed" may be either; where they would make gas, it is heard as one mix.
    """
    masked, things = _products(look)
    found = _BOTTLES.match(masked)
    agents = agents_of(things, look.world)
    if found is None or len(agents) < _FEW:
        return None
    known = tuple(look.world.facts.agents.get(agent) or look.world.facts.agents["other"] for agent in agents)
    pair = worst(known, look.world.facts)[2]
    one_mix = found["with"] != "and" or found["sure"].strip(" .!,") != ""
    return _met(look, things) if one_mix or (pair is not None and pair.gas) else None


def _products(look: Look) -> tuple[str, tuple[Thing, ...]]:
    masked, things = products_by_colour(look.parsed, look.world.household)
    masked = OF_WHAT_NOBODY_KNOWS.sub("OTHER", masked)
    return masked, (*things, *(Thing("agent", "other") for _ in range(masked.split().count("OTHER"))))


def _met(look: Look, things: tuple[Thing, ...]) -> Slots:
    bottles = tuple(dict.fromkeys(thing.name for thing in things if thing.kind == "bottle" and thing.name))
    slots = replace(look.slots("together"), agents=agents_of(things, look.world), bottles=bottles, stocks=())
    return replace(slots, steps=(), met=True, choices=(), unknown=(), numbers=(), touched=())
