"""Who else got wet while a clean is open: the keeper, or what lives in the enclosure next to it.

Neither is the spraying of what is being cleaned, which is said in much the same words.
"""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Slots
from assistant.core.round.rounds import is_open
from assistant.understand.harm.cries import Cry
from assistant.understand.harm.patterns import SOMEONE
from assistant.understand.look import Look
from assistant.understand.named.animal_words import ONE_ANIMAL
from assistant.understand.question.may_be import is_told
from assistant.understand.text.known_words import words_of
from assistant.understand.text.patterns import Pattern

_OH = r"^(?:(?:oh|no|help|ugh|now|and|crap|god|shit|great|damn|yuck|well|,) ?)*"
_END = r"(?: (?:now|too|through|right through|all over|again|wet|with (?:it|that)))*(?: ?[.!])*$"
_WITH = (
    r"(?: (?:in|with|from|by) (?:it|that|this|(?:the |some )?"
    r"(?:AGENT|STOCK|BOTTLE|MIX|spray|mist|stuff|product|disinfectant)))?"
)
_WORN = (
    r"(?:sleeves?|shirt|top|jumper|jeans|trousers|clothes|apron|socks?|shoes?|dress|hands?|arms?|gloves?|face|hair"
    r"|feet|foot|legs?|lap|front)"
)
_I_AM_WET = Pattern(
    rf"{_OH}(?:i am|i was|i got|i have got|i have been|we are)"
    r"(?: all| completely| totally| a bit| really| just| absolutely)* "
    rf"(?:soaked|drenched|doused|soaking|sopping|dripping|sprayed|splashed){_WITH}{_END}"
    rf"|{_OH}my (?:\w+ )?{_WORN}(?: is| are| 's| got| have| has)(?: all| completely| totally| really| just| been)* "
    rf"(?:soaked|drenched|sopping|soaking|dripping){_WITH}{_END}"
    rf"|{_OH}my (?:\w+ )?{_WORN}(?: is| are| 's| got)(?: all)? wet (?:in|with|from) "
    rf"(?:it|that|(?:the )?(?:AGENT|STOCK|BOTTLE|MIX|spray|mist|stuff|product)){_END}",
    *words_of("soak drench dous sopping dripping sprayed splashed wet"),
)
_SOMEBODY_SPRAYED = Pattern(rf"{_OH}(?:just )?got (?:sprayed|splashed|soaked|drenched){_WITH}{_END}", "got")

_FEELS_IT = Pattern(
    rf"{_OH}(?:my )?heart (?:is |'s )?(?:racing|pounding|fluttering|thumping|beating (?:so |very |really )?fast){_END}"
    rf"|{_OH}(?:i am|i|we) (?:feel|feeling|do not feel|not feeling)(?: a bit| a little| really| so| very| kind of)* "
    rf"(?:off|odd|weird|wrong|shaky|right|well|too good|too well){_END}",
    *words_of("heart feel"),
)
_IT_FOAMS = Pattern(
    rf"{_OH}(?:it|this|that)(?: is| has| 's| all| just| started| to)* (?:foam\w*|froth\w*|bubbl\w*)(?: (?:up"
    rf"|over))+{_END}",
    *words_of("foam froth bubbl"),
)
"""With a product at work: the soap is washed off, so it is no suds."""

_DROPS = (
    r"(?:AGENT|STOCK|BOTTLE|MIX|(?:over ?)?spray|mist|product|stuff|disinfectant|some(?: of (?:it|that|the \w+))?|a "
    r"(?:bit|drop|few drops|little)(?: of (?:it|that|the \w+))?|drops?|droplets?|the "
    r"(?:yellow|pink|green|clear|red|blue|white|orange|purple)(?: one)?)"
)
_INTO = r"(?:in|into|on|onto|over|through to|across to|over to|under|as far as|inside|down)"
_OTHER = (
    r"(?:(?:the |my )?ENCLOSURE|the neighbour(?: 's (?:tank|box|cage|tub|viv|vivarium|enclosure))?|the (?:other"
    r"|next|one next door|neighbouring)"
    r"(?: (?:one|tank|box|cage|tub|viv|vivarium|enclosure))?)"
)
_NEXT_DOOR = Pattern(
    rf"\b{_DROPS}(?: has| have| just| also| must have| accidentally)* "
    r"(?:drip\w*|ran|run|leaked|leaking|splash\w*|spill\w*|spilt|drift\w*|blew|blown|went|gone|got|came|fell"
    rf"|trickl\w*|seep\w*|floated|landed|sprayed)(?: \w+)? {_INTO} {_OTHER}(?! 's)"
    rf"|^(?:(?:oh|no|and|it|,) ?)*(?:drip\w*|leaked|splash\w*|drift\w*|blew|trickl\w*|seep\w*) {_INTO} {_OTHER}"
    rf"(?! 's)|\bover ?spray (?:(?:has |just )*(?:got|went|hit|landed) )?(?:{_INTO} )?{_OTHER}(?! 's)"
    r"|\bsprayed (?:a bit|a little|some|a few drops|a drop)"
    rf"(?: of it| of (?:the )?(?:AGENT|BOTTLE|STOCK))? {_INTO} {_OTHER}(?! 's)"
    rf"|\bsprayed (?:\w+ )?(?:next to|beside|near|above|right by|too close to|close to) {_OTHER}(?! 's).*\b"
    r"(?:still )?in(?:side| there| it)?(?: ?[.!])*$"
    rf"|{_OH}the (?:other|next)(?: (?:one|tank|box|cage|tub|viv|vivarium|enclosure))? (?:got|has|caught) "
    r"(?:some|a bit|a little|it|sprayed|hit)\b",
    *words_of(
        "drip ran run leak splash spil drift blew blown went gone got came fell trickl seep float land spray has caught"
    ),
)
_NONE_DID = Pattern(r"^(?:(?:ok|and|but|luckily) ,? ?)*(?:none|nothing|hardly)\b")
_A_PRODUCT = Pattern(r"\b(?:AGENT|STOCK|BOTTLE|MIX|(?:over ?)?spray\w*|mist|disinfectant|product)\b")


def keeper_wet(look: Look) -> Cry | None:
    """ "I'm soaked", "my sleeve is soaked", with a product at work: no surface was sprayed by that."""
    plain = look.parsed.plain
    if plain.endswith("?") or not _product_at_work(look):
        return None
    if _I_AM_WET.match(plain):
        return Cry("splash", "skin", "person")
    if _FEELS_IT.match(plain):
        return Cry("splash", "lungs", "person")
    if _IT_FOAMS.match(plain):
        return Cry("splash", "lungs", "person", certain=True)
    return Cry("splash", None, "person") if _SOMEBODY_SPRAYED.match(plain) else None


_WHO = (
    rf"(?:(?:the |my |our )?(?:\w+ )?(?:ANIMAL|ENCLOSURE|{ONE_ANIMAL}|cat|dog|kitten|puppy)|he|she|it|they"
    r"|one of them)(?: has| have| is| are| was| just| 's| went and| then)*"
)
_CHILD = rf"(?:my |the |our |his |her )?(?:\w+ )?{SOMEONE.pattern}(?: has| have| just| 's| went| and| then)*"
_RAN = (
    r"(?:ran|run|sitting|lying|standing|walked|stepped|crawled|slithered|climbed|jumped|trod|rolled|shot|darted"
    r"|scuttled|scurried|bolted"
    r"|slid|stood|sat|lay|landed|leaned|knelt)(?: right| straight| all)?"
)
_OVER = r"(?:across|through|over|on|onto|in|into|along|up)"
_WET_PLACE = r"(?:the |that |all that |some )?(?:still )?(?:wet|sprayed|damp|dripping) (?:\w+)|the (?:spray\b|wet$)"
_ACROSS = Pattern(
    rf"\b{_WHO} {_RAN} {_OVER} (?:{_WET_PLACE})"
    rf"|\b{_WHO} {_RAN} (?:across|through|over) (?:it|the (?:glass|tank|box|cage|floor|walls?|enclosure|viv\w*"
    r"|whole thing)|ENCLOSURE)\b",
    *words_of("across through over on in along up"),
)
_GOT_SOME = Pattern(
    rf"{_OH}(?:the |my )?(?:\w+ )?(?:ANIMAL|ENCLOSURE|cat|dog)(?: has| 's)? got (?:some|a bit|a drop|a little)"
    r"(?: of it)?(?: on (?:him|her|it))?(?: too| as well)*(?: ?[.!])*$",
    "got",
)
_CHILD_ACROSS = Pattern(
    rf"\b{_CHILD} {_RAN} {_OVER} (?:{_WET_PLACE})"
    rf"|\b{_CHILD} {_RAN} (?:across|through|over|in) (?:it|the (?:glass|tank|box|cage|floor|walls?|enclosure|viv\w*"
    rf"|whole thing)|ENCLOSURE)\b",
    *words_of("across through over on in along up"),
)
_ACROSS_BY_ITSELF = Pattern(rf"{_OH}{_RAN} {_OVER} (?:{_WET_PLACE})", *words_of("across through over on in along up"))
"""With nobody named: whoever is loose."""


def one_across(look: Look) -> Cry | None:
    """ "She ran across the wet glass", while a product stands on it: it is on her; None: nothing of the kind."""
    plain, rounds = look.parsed.plain, look.world.state.rounds.values()
    wet = any(is_open(r) and "apply" in r.done and _OFF.isdisjoint(r.done) for r in rounds)
    if not wet or not is_told(plain):
        return None
    if _CHILD_ACROSS.search(plain):
        return Cry("splash", "skin", "person")
    ran = (
        _ACROSS.search(plain) or _GOT_SOME.match(plain) or (look.world.state.loose and _ACROSS_BY_ITSELF.search(plain))
    )
    return Cry("splash", "skin", "animal") if ran else None


_OFF = frozenset({"rinse", "wipe", "dry"})
_SOMEBODY = Pattern(
    r"\b(?:ANIMAL|ENCLOSURE|him|her|his|them|their|he|she|wounds?|cuts?|burns?|sores?|bites?|skin|shell|scales?|tail"
    r"|vent|mouth|eyes?|nose|bath|dip|soak)\b|\?$"
)


def put_on_a_surface(look: Look) -> bool:
    """ "Put a drop of ammonia on", with a clean open and nobody named: told of the surface, and no wish to treat."""
    under_way = any(is_open(one) for one in look.world.state.rounds.values())
    return under_way and "apply" in look.claims.done and _SOMEBODY.search(look.parsed.plain) is None


def next_door(look: Look) -> Slots | None:
    """The slots of a product that got to an enclosure whose animal is inside; None: nothing of the kind is told."""
    plain = look.parsed.plain
    if not is_told(plain) or _NONE_DID.match(plain) or _NEXT_DOOR.search(plain) is None:
        return None
    if not (_product_at_work(look) or _A_PRODUCT.search(plain)):
        return None
    slots = look.slots("spill")
    homes = slots.enclosures
    if len(homes) > 1 or (homes and _is_out(look, homes[0])):
        return None
    others = [name for name, r in look.world.state.rounds.items() if is_open(r) and name not in homes]
    if not homes and len(others) != 1:
        return None
    at_work = {look.world.state.rounds[name].agent for name in others}
    if not (slots.agents or slots.bottles or slots.stocks) and len(at_work) == 1:
        slots = replace(slots, agents=tuple(at_work))  # what is sprayed next to it is what got there
    return replace(slots, enclosures=homes, steps=())


def _is_out(look: Look, home: str) -> bool:
    round_ = look.world.state.rounds.get(home)
    return round_ is not None and is_open(round_) and "move out" in round_.done


def _product_at_work(look: Look) -> bool:
    """A clean with a product is open and past its washing: what is wet then is wet with that."""
    return any(
        is_open(r) and "apply" in r.steps and ("wash" in r.done or "wash" not in r.steps)
        for r in look.world.state.rounds.values()
    )
