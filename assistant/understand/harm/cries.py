"""Harm in a text: a splash, a swallow, fumes; and any wish to put a disinfectant or a medicine on an animal.

Looked for first, by rules and not by likeness, in the middle of whatever else was said: nobody with bleach in the eye
is read as a question about bleach. Where it got to and whom it hit are read here too.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from typing import Literal

from assistant.contract import Outcome, Reply
from assistant.core.harms import Place, Victim
from assistant.understand.harm.gas_told import gas_told
from assistant.understand.harm.idioms import IDIOMS
from assistant.understand.harm.in_a_bad_way import licked_it_up
from assistant.understand.harm.on_somebody import lies_on_somebody, put_back_wet, reacts
from assistant.understand.harm.parts import harm_by_parts
from assistant.understand.harm.patterns import (
    ANIMAL,
    EYE,
    HAPPENED,
    HEARD_AS_EYE,
    ITS,
    LEFT_INSIDE,
    LICKED,
    LIMBS,
    LUNGS,
    ME,
    MOUTH,
    MY_OWN,
    OUCH,
    POISONED,
    PREPARING,
    REACHED_IT,
    SKIN,
    SOMEONE,
    SPRAYED_ANIMAL,
    THERE_IS,
    WISH,
    WOUND,
)
from assistant.understand.harm.treating import its_home_is_done, of_its_home, treats, treats_plainly
from assistant.understand.text.patterns import Pattern


@dataclass(frozen=True, slots=True)
class Cry:
    """What harm a text is about."""

    intent: Literal["splash", "wound"]
    place: Place | None = None
    victim: Victim | None = None
    too: tuple[Place, ...] = ()
    """Where else it got to."""
    got_out: bool = False
    """After fumes: everybody is out, or it is asked when to go back in."""
    certain: bool = False
    """Not to be overruled by its words all together: a mix that reacts is told in words that mixing has too."""


def cry_after(text: str, last: Reply | None) -> Cry | None:
    """Right after a reply about a gas or fumes: that somebody is still where it is, or that everybody is out."""
    fumes = last is not None and last.intent == "splash" and last.values.get("place") == "lungs"
    if fumes and _MIXED_THEM.search(text):
        return Cry("splash", "lungs", "person")
    if fumes and _GOT_OUT.search(text):
        return Cry("splash", "lungs", "person", got_out=True)
    if last is not None and last.intent == "unknown_bottle" and _SMELLS_OF_IT.search(text):
        return Cry("splash", "lungs", "person")
    if last is not None and last.intent in ("dose", "make_up") and _TO_SOAK_IN.search(text):
        return _treated(text)
    gas_told = last is not None and last.outcome is Outcome.REFUSE and last.values.get("gas") is True
    if (gas_told or fumes) and (_WHAT_NOW.match(text) or _STINKS.match(text)):
        return Cry("splash", "lungs", "person")
    gas = last is not None and ((last.outcome is Outcome.REFUSE and last.values.get("gas") is True) or fumes)
    return Cry("splash", "lungs", "animal") if gas and LEFT_INSIDE.search(text) else None


def cry_in(text: str) -> Cry | None:
    """The harm that a masked text is about; None: none.

    text: small words, slips mended, names masked as AGENT, ANIMAL ..., signs apart.
    """
    whole = text
    text = HEARD_AS_EYE.sub(lambda eye: f"{eye['my'] or 'in my'} eye", IDIOMS.sub(" ", text))
    on_one = _OK_ON_ONE.search(text) is not None
    if (SPRAYED_ANIMAL.search(text) or REACHED_IT.search(text)) and not on_one and not _is_wish(text):
        return Cry("splash", _part_of_it(text), "animal")
    if _HIT_IT.search(text) and not text.endswith("?") and not _is_wish(text):
        return Cry("splash", _part_of_it(text), "animal")
    if (got := _GOT_AT_IT.search(text)) is not None and not text.endswith("?"):
        return Cry("splash", "mouth", "animal" if got["pet"] else "person", certain=True)
    if licked_it_up(text):
        return Cry("splash", "mouth", "animal", certain=True)
    if treats_plainly(text):
        return replace(_treated(text), certain=True)
    if on_one:
        return _treated(text)
    if _GIVES_A_HEADACHE.search(text):
        return Cry("splash", "lungs", "person", certain=True)
    if _HEAD.search(text):
        return Cry("splash", "lungs", "person")
    if _WOULD_IT_HURT.search(text) or its_home_is_done(text) or _MIX_IS_MADE.search(text):
        return None
    if _IN_ITS_EYE.match(text):
        return Cry("splash", _part_of_it(text), "animal")
    if reacts(text) or gas_told(whole):
        return Cry("splash", "lungs", "person", certain=True)
    if put_back_wet(text) and not _of_people(text):
        return Cry("splash", "skin", "animal", certain=True)
    if lies_on_somebody(text):
        at: Place = "eye" if re.search(r"\beyes?\b", text) else "skin"
        return Cry("splash", at, _victim(text, at), _places_too(text, at))
    own = MY_OWN.search(text) is not None and not re.search(ANIMAL, text)
    if not own and not _of_people(text) and not _A_TOOL.search(text) and treats(whole):
        return _treated(text)
    splashed = _splash(text)
    if splashed is not None and (MY_OWN.search(text) or _of_people(text) or not _is_wish(text)):
        return splashed
    if (
        WOUND.search(text)
        and not _A_GERM_ALONE.search(text)
        and not _A_TOOL.search(text)
        and not own
        and not of_its_home(text)
    ):
        return _treated(text)
    return splashed or _by_parts(text)


_MIX_IS_MADE = Pattern(
    r"\bhow much (?:of )?(?:the |my )?(?:concentrate|AGENT|STOCK|bleach|stuff)\b(?: \S+){0,5} to make (?:up )?"
    r"(?:a |an |it )?(?:up )?(?:to )?MIX\b(?! (?:for|on) (?:his|her|its|the ANIMAL))",
    "MIX",
)
""" "How much of the concentrate do I put in to make one in forty", whatever the lizard does meanwhile."""


def cry_like(harm: str, text: str) -> Cry | None:
    """What a masked text that is like a cry, though no rule knows it, tells of where it got to and whom it hit."""
    if harm == "wound":
        return _treated(text)
    if harm != "splash":
        return None
    named = [place for place, words in _NAMES_A_PLACE.items() if words.search(text)]
    place = named[0] if len(named) == 1 else None
    return Cry("splash", place, _victim(text, place))


def _part_of_it(text: str) -> Place:
    """Where on an animal it got to."""
    if re.search(r"\beyes?\b", text):
        return "eye"
    return "mouth" if re.search(r"\b(?:in|into) (?:\S+ ){0,3}mouth\b", text) else "skin"


def _treated(text: str) -> Cry:
    return Cry("wound", "eye" if re.search(r"\beyes?\b", text) else None, "animal")


def _by_parts(text: str) -> Cry | None:
    if PREPARING.search(re.sub(r"\bwearing (?:it|most|half|the lot)\b", "", text)) and not HAPPENED.search(text):
        return None
    found = harm_by_parts(text)
    return None if found is None else Cry("splash", found.place, "animal" if found.animal else "person")


_OK_ON_ONE = Pattern(
    r"^(?!.*\b(?:there|that|got|sprayed|splashed|dripped|landed|spilled|spilt|help|oh|accident\w*|mistake)\b).*\b"
    rf"(?:AGENT|STOCK|BOTTLE|spray|drops|powder|shampoo|MIX) (?:on|onto|over) (?:the |my |a )?(?:\w+ )?{ANIMAL}"
    r"(?! ?'s)(?: (?:ok|okay|safe|fine|alright|all right|allowed|itself|directly|then|for mites|or not))* ?\?$",
    "?",
)
""" "Mite spray on the snake ok?": asked beforehand, so a wish to treat."""
_HIT_IT = Pattern(
    r"^(?:(?:oh|no|i|we|have|just|accidentally|god|shit|help|my \w+|and|so|then) ,? ?)*"
    r"(?:wiped|rubbed|bathed|washed|cleaned|rinsed|soaked|misted|dabbed|sprayed|dipped|dunked|doused) "
    rf"(?:the |my |poor )*(?:\w+ )?{ANIMAL}(?: \w+){{0,2}}? (?:with|in) (?:the |my |some |a bit of )*(?:\w+ )?"
    r"(?:AGENT|STOCK|BOTTLE)\b"
    r"|\b(?:spray|mist|AGENT|STOCK|BOTTLE|some of it) (?:has |just |accidentally )*"
    r"(?:hit|caught|reached|landed on|went on|went over|got on|got onto|splashed|drenched) (?:the |my |poor )*"
    rf"(?:\w+ )?{ANIMAL}\b"
)
""" "I wiped the gecko down with alcohol", "the spray hit the snake"."""
_HEAD = Pattern(
    r"\b(?:my |got a |have a |a )?(?:head (?:hurts|aches|is (?:pounding|spinning|banging|splitting|killing me))"
    r"|headache)\b(?=.*\b(?:smell\w*|fumes?|stinks?|reeks?|AGENT|STOCK|spray\w*)\b)"
    r"|\b(?:smell\w*|fumes?|stinks?|reeks?|AGENT|STOCK|spray\w*)\b.*\b(?:headache|head (?:hurts|aches|spinning))\b"
)
_GIVES_A_HEADACHE = Pattern(
    r"\bheadache (?:from|off) (?:this|that|it|here)[ .!]*$"
    r"|\b(?:it|this|that|AGENT|STOCK|the (?:smell|stuff|spray|AGENT))(?: is| 's| really| always| has)* (?:giv\w+|gave) "
    r"(?:me|us|him|her) (?:a |an )?(?:\w+ )?headache[ .!]*$",
    "headache",
)
_SMELLS_OF_IT = Pattern(r"\b(?:it |that )?(?:smells|stinks|reeks|smelt|smelled|sniffed|gassy|fumes|fizz\w*)\b")
_TO_SOAK_IN = Pattern(rf"\b(?:{ANIMAL}|him|her|it|them) to (?:soak|bathe|bath|sit|swim|lie|drink)\b")
_WHAT_NOW = Pattern(
    r"^(?:(?:oh|so|and|ok|help|god|shit|quick|please|but|no) ,? ?)*"
    r"(?:what (?:do|should|shall|can|must) (?:i|we) do|what now|now what|help|then what|and now|do i "
    r"(?:rinse|pour|open|air)\w*)\b"
)
_STINKS = Pattern(
    r"^(?:(?:oh|and|now|it|that|the room|god|,) ?)*(?:is |really )*"
    r"(?:stinks?|reeks?|fizz\w*|bubbl\w*|smok\w*|steam\w*)\b"
)
HIT_BY_MISTAKE = Pattern(
    r"\b(?:sprayed|squirted|misted|splashed) (?:the |my |poor |little )*ENCLOSURE with (?:the |my )?"
    r"(?:BOTTLE|AGENT|STOCK) (?:instead of|not|rather than) (?:the |his |her |its )?(?:\w+ )?water\b"
    r"|^(?=.*\b(?:crap|shit|damn|dammit|oops|whoops|oh no|oh god|god|bugger|help|accident\w*|mistake)\b).*\b"
    r"(?:sprayed|squirted|splashed|misted|hit|doused|soaked) (?:the |my |poor |little )*ENCLOSURE\b(?! 's)"
)
_IN_ITS_EYE = Pattern(
    r"^(?:(?:oh|no|help|quick|shit|god) ?,? ?)*(?:there is )?(?:the |some )?(?:AGENT|STOCK|BOTTLE|MIX) (?:\w+ )?"
    rf"(?:in|into) (?:the |my )?(?:(?:\w+ )?{ANIMAL}|ENCLOSURE) 's (?:eyes?|mouth)(?: [!.].*)?$"
)
""" "Bleach in the gecko's eye": so short it is a cry, and no wish to put it there."""
_A_GERM_ALONE = Pattern(rf"^(?!.*\b(?:{ANIMAL}|him|her|his|he|she|its|my|skin|ENCLOSURE)\b).*\bringworm\b")
"""Ringworm asked of as a germ to be killed, and nobody who has it."""


_GOT_OUT = Pattern(
    r"^(?:ok |right |phew |yes |,)*(?:i am|we are|i got|we got|everyone is|everybody is|they are|all)"
    r"(?: all| both| now)* out(?:side)?\b"
    r"|\b(?:how long|when|can i|can we|may i|is it ok)\b.*\b(?:go|get|come|walk|be) back in(?:side)?\b"
    r"(?! (?:his|her|its|the tub))"
    r"|^(?:i am |we are |she is |he is |feeling |i feel )?(?:a bit )?better(?: now| out here)*$"
)
"""Right after fumes."""
_MIXED_THEM = Pattern(
    r"^(?:(?:oh|no|i think|because|maybe|i|we|have|just|may have|must have|accidentally) ,? ?)*"
    r"(?:mixed|combined|put|poured|used) (?:them|the two|both|two(?: of them)?|it all)\b(?! (?:away|back|down|out))"
    r"|^(?:the |it was (?:the )?|with (?:the )?)?(?:AGENT|STOCK|BOTTLE) (?:and|with|plus) (?:the )?"
    r"(?:AGENT|STOCK|BOTTLE)\b"
)
"""Right after fumes: what made them."""
_EYES_STING = Pattern(r"^(?!.*\b(?:in|into|splash\w*|squirt\w*|drip\w*) (?:\w+ )?eyes?\b).*\beyes?\b")
"""Eyes that sting with a cough, and nothing said to have got in them: fumes, so out first."""
_A_TOOL = Pattern(
    r"^(?!.*\b(?:AGENT|STOCK|BOTTLE|MIX|wounds?|cuts?|burns?|sores?|bites?|clean|treat|disinfect\w*|spray)\b).*\b"
    r"(?:use|using|take|swap|share) (?:\w+ (?:'s )?){0,3}?"
    r"(?:hooks?|tongs|tweezers|forceps|scoops?|nets?|brush(?:es)?|gloves?|bowls?|hides?|tubs?|cloths?) "
    r"(?:on|for|with|in)\b"
)
"""A tool that goes from one animal to another: asked of sharing, not of treating."""
_A_HAND = Pattern(
    r"\b(?:his|her|their|the|its) (?:\w+ )?(?:hands?|fingers?|arms?|wrists?|thumbs?|palms?|elbows?|shirt|clothes"
    r"|trousers|sleeves?|socks?|shoes?|jumper|dress)\b"
)
"""What no animal in a tub has: then it is a person's."""


_GOT_AT_IT = Pattern(
    r"\b(?:(?:toddler|kids?|child|children|baby|son|daughter|boy|girl|little one|grandson|granddaughter)"
    r"|(?P<pet>dog|cat|puppy|kitten|ANIMAL))\b(?: has| have| 's| is| was| just| must have"
    r"| might have)* (?:been (?:at|into|in"
    r"|drinking)|got (?:at|into|hold of)|chewed|had a go at|had (?:his|her) mouth on) (?:the |my )?(?:AGENT|STOCK"
    r"|BOTTLE)\b",
    *("been", "got", "chewed", "had"),
)
""" "My toddler's been at the yellow bottle": whether any went down nobody saw."""


def _of_people(text: str) -> bool:
    """Somebody is spoken of, and no animal."""
    return SOMEONE.search(text) is not None and not re.search(rf"\b(?:{ANIMAL}|ENCLOSURE|vet)\b", text)


def _is_wish(text: str) -> bool:
    """A wish to treat the animal rather than an accident."""
    if THERE_IS.search(text) and not text.endswith("?"):
        return False
    return bool(WISH.search(text) and WOUND.search(text)) and not re.search(
        r"\b(?:accident\w*|mistake|oops|splash\w*|dripped|landed|spilled|spilt|swallowed|drank|licked|what "
        r"(?:do|should) i do|got (?:\S+ ){0,3}(?:in|on)|puddle"
        r"|(?:went|walked|ran|crawled|slithered|stepped) (?:through|across|over|into))\b",
        text,
    )


_TO_DRINK = Pattern(
    r"\b(?:drinking|drinks?) (?:water|bowl|dish|bottle)\b|\b(?:fit|fine|safe|ok|good|water) to drink\b"
    r"|\bsting\w* nettles?\b|\bdrinks? (?:from|out of) (?:after|again)\b"
)
"""Drunk by nobody."""
_WOULD_IT_HURT = Pattern(
    r"^(?:so |and |but )*(?:will|would|does|do|could|can|is it going to) (?:it|that|this|AGENT|STOCK|MIX)\b(?: \w+)? "
    r"(?:sting|burn|hurt|irritate|itch)\b(?!.*\b(?:in|into) (?:my|his|her|the) eyes?\b)"
)
_FUMES_ALONE = Pattern(
    r"^(?:so |and |but |ok )*(?:how|what|can|could|may|should|do|does|is|are|when|which|will)\b"
    r"(?!.*\b(?:my|me|i (?:feel|am|have)|cough\w*|chok\w*|dizzy|breath\w*|sick|faint|hurts?|sting\w*|burn\w*|headache"
    r"|inhaled)\b).*\bfumes?\b"
)
"""Asked about fumes, by nobody who feels them."""


def _splash(text: str) -> Cry | None:
    if PREPARING.search(text) and not HAPPENED.search(text):
        return None
    text = _TO_DRINK.sub(" ", text)
    place: Place | None = None
    if EYE.search(text) and not (_EYES_STING.search(text) and LUNGS.search(text)):
        place = "eye"
    elif MOUTH.search(text):
        place = "mouth"
    elif LUNGS.search(text) and not _FUMES_ALONE.search(text):
        place = "lungs"
    elif SKIN.search(text):
        place = "skin"
    elif not POISONED.search(text) and not (OUCH.search(text)):
        return None
    return Cry("splash", place, _victim(text, place), _places_too(text, place))


_NAMES_A_PLACE: dict[Place, re.Pattern[str]] = {
    "eye": re.compile(r"\b(?:eyes?|eyeballs?|eyelids?|contacts?|lens(?:es)?|pupils?)\b"),
    "mouth": re.compile(
        r"\b(?:mouth|mouthful|tongue|lips?|swallow\w*|dr[aiu]nk|gulp\w*|swig\w*|sipp?\w*|slurp\w*|lick\w*|tasted?"
        r"|ate)\b"
    ),
    "lungs": re.compile(r"\b(?:breath\w*|cough\w*|wheez\w*|chok\w*|lungs?|chest|inhal\w*|fumes?|dizzy|lightheaded)\b"),
    "skin": re.compile(rf"\b(?:skin|{LIMBS}|cheeks?|neck|back|belly|scales)\b"),
}
"""Where a cry that no rule knows may have got to. More than one: asked."""

_AND = Pattern(r"\b(?:and|also|too|both|plus|as well)\b|,")


def _places_too(text: str, place: Place | None) -> tuple[Place, ...]:
    """Where else it got to, where more than one place is told of: "I swallowed some and it's in my eye"."""
    if place is None or not _AND.search(text):
        return ()
    found: list[Place] = []
    if place != "eye" and _IN_THE_EYE.search(text):
        found.append("eye")
    if place != "mouth" and _TAKEN.search(text):
        found.append("mouth")
    if place != "lungs" and _CHOKES.search(text) and not _EYES_STING.search(text):
        found.append("lungs")
    if place != "skin" and _ON_SKIN.search(text):
        found.append("skin")
    return tuple(found)


_IN_THE_EYE = Pattern(r"\b(?:in|into) (?:my|his|her|the|both|one|its|their) (?:\w+ )?eyes?\b")
_TAKEN = Pattern(r"\b(?:swallowed|drank|gulped|in (?:my|his|her|its|their) mouth|licking|licked|mouthful)\b")
_CHOKES = Pattern(
    r"\b(?:cough\w*|chok\w*|can not breathe|wheez\w*|breathed (?:it )?in|chest (?:is |hurts|\w+ tight))\b"
)
_ON_SKIN = Pattern(
    rf"\b(?:on|over|down|up) (?:my|his|her|its|their|the) (?:\w+ )?(?:{LIMBS}|skin|arm|back|belly)\b"
    r"|\ball over (?:me|him|her)\b"
)
"""Each place told of plainly enough to stand beside another."""


def _victim(text: str, place: Place | None) -> Victim:
    """Who was hit: a person unless an animal is named; "he swallowed it" counts as a person, called for first."""
    if ME.search(text) or SOMEONE.search(text):
        return _of_ours(text)
    if re.search(rf"\b{ANIMAL}\b", text) or re.search(
        r"\bENCLOSURE (?:drank|swallowed|licked|ate|tasted|chewed)\b", text
    ):
        return "animal"
    if place == "skin" and _A_HAND.search(text):
        return "person"
    if place in ("eye", "skin") and ITS.search(text):
        return "animal"
    return "animal" if LICKED.search(text) else "person"


def _of_ours(text: str) -> Victim:
    """ "I sprayed the snake": I am named, but the animal was hit."""
    mine = re.search(
        rf"\bmy (?:\w+ )?(?:eyes?|mouth|throat|chest|nose|lungs?|head|tongue|{LIMBS})\b|\bme\b|\bmyself\b"
        r"|\bi (?:am|feel|can not|breathed|inhaled|swallowed|drank)\b",
        text,
    )
    hit = re.search(rf"\b{ANIMAL}\b", text) or ITS.search(text)
    return "person" if mine or SOMEONE.search(text) or not hit else "animal"
