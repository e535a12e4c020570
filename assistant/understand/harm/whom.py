"""Whom a harm hit: him or her of the harm told of before, or somebody who is only called he or she.

Where nothing tells whether a person or an animal is meant, both numbers are given: "either".
"""

from __future__ import annotations

from dataclasses import replace

from assistant.core.harms import HarmTold, Victim
from assistant.understand.harm.cries import HIT_BY_MISTAKE, Cry
from assistant.understand.harm.patterns import ANIMAL, ME, SOMEONE
from assistant.understand.harm.words import PLACES
from assistant.understand.named.names import HOMES
from assistant.understand.parsing import Parsed
from assistant.understand.text.patterns import Pattern

_HE = Pattern(r"\b(?:he|she|his|her|him|hers|they|their|them|it|its)\b")
_HE_ALONE = Pattern(r"\b(?:he|she|his|her|him|they|their|them)\b")
_NAMED = Pattern(rf"\b(?:{ANIMAL}|ENCLOSURE|fish|bird|rabbit|hamster)\b")
_OF_AN_ANIMAL = Pattern(
    r"\b(?:tails?|scales?|scutes?|shell|claws?|paws?|fur|vent|wings?|tank|tub|viv|vivs|vivarium|cage|box|enclosure"
    r"|hide|inside|in there|in it|still in|was in|were in|crawl\w*|slither\w*|swam|swimming|climbed|shed|shedding"
    r"|lick\w*|walked|stepped|ran|through|puddle|jumped|dived|waddled|put (?:him|her|them|it)|puffing|hissing"
    r"|gaping)\b"
)
"""What only an animal has or does here."""
_AS_ANIMALS_DO = Pattern(
    r"\b(?:ate|eaten|eating|chew\w*|nibbl\w*|lapp\w*)\b"
    r"|\b(?:drank|drunk|drinking) (?:out of|from|some of) (?:the |a |my )?(?:\w+ )?(?:bucket|puddle|tray|sink"
    r"|tub|pail)\b"
    r"|\b(?:drank|drunk|drinking) (?:the |some |some of the )?(?:rinse|rinsing|soak|mop|dirty|cleaning) water\b"
)
"""Eaten, or drunk from the floor or a bucket: more an animal than a person, and yet it may be a child."""
_PRODUCT = Pattern(r"\b(?:AGENT|STOCK|BOTTLE|MIX)\b")
"""Told anew, and not only on: "she drank bleach", an hour after the gecko was splashed."""
_PERSONS_PLACE = Pattern(r"\b(?:hands?|fingers?|arms?|wrists?|clothes|shirt|trousers|sleeves?|socks?|shoes?|hair)\b")


def of_whom(cry: Cry, text: str, before: HarmTold | None) -> Cry:
    """The cry with its victim by the talk before it, where the text says only he, she or it."""
    if cry.intent != "splash" or SOMEONE.search(text) or _NAMED.search(text) or ME.search(text):
        return cry
    if cry.place == "mouth" and cry.victim == "person" and before is None and _HE_ALONE.search(text):
        return replace(cry, victim="either") if _AS_ANIMALS_DO.search(text) else cry
    anew = before is not None and before.victim == "animal" and cry.victim == "person" and _PRODUCT.search(text)
    if before is not None and not anew and _HE.search(text) and not _OF_AN_ANIMAL.search(text):
        return replace(cry, victim=before.victim)
    if cry.victim != "animal" or cry.place not in ("eye", "skin") or not _HE_ALONE.search(text):
        return cry
    return cry if _OF_AN_ANIMAL.search(text) else replace(cry, victim="either")


_OH = r"(?:(?:oh|no|sorry|and|also|but|now|plus|i mean|ok|quick|,) ?)*"
_WHICH = (
    r"(?:(?:corn|ball|royal|little|big|poor|other|older|younger|oldest|youngest|new|old|baby|crested|leopard"
    r"|bearded) )?"
)
_WHOM_ALONE = Pattern(
    rf"^{_OH}(?:it (?:is|was) |that (?:is|was) |not me )*"
    rf"(?P<who>(?:(?:the|my|our|a) )?{_WHICH}(?:{ANIMAL}|fish)|ENCLOSURE|"
    rf"(?:the|my|our|a|his|her) {_WHICH}{SOMEONE.pattern}|me)(?: 's)?(?: (?:did|has|was|is|i mean|too|as well|drank it"
    r"|swallowed it|(?:got|has|had) (?:it|some|a bit|a drop|splashed|sprayed)|in it|in that))*(?: ?[.!])*$"
    rf"|^{_OH}(?:it |some |that |the spray )(?:has |also )?(?:got|hit|caught) "
    rf"(?P<hit>(?:(?:the|my|our|a) )?{_WHICH}(?:{ANIMAL}|fish)|ENCLOSURE|me)(?: too| as well)*(?: ?[.!])*$"
    rf"|^{_OH}(?:it is )?not (?:mine|me|my eyes?|my own) ?,? (?:it is |but )?"
    rf"(?P<not_me>(?:(?:the|my|our) )?{_WHICH}(?:{ANIMAL}|fish)|ENCLOSURE)(?: 's)?(?: ?[.!])*$"
    rf"|^{_OH}(?:it is |some |some of it )?(?:all )?(?:on|over) (?P<on>me|us|the (?:{ANIMAL}|ENCLOSURE)|ENCLOSURE)"
    r"(?: too| as well)*(?: ?[.!])*$"
)
_THERE_TOO = Pattern(
    rf"^{_OH}(?:(?:it|some|he|she|some of it|they)(?: is| has| got| went| 's)* )?"
    r"(?:(?:got )?(?:it )?(?:in|on|into|onto|over|down) )?(?P<whose>his|her|their|its|my|the|both|both his|both her) "
    r"(?:other |left |right |whole |bare )?(?P<place>[a-z]+)(?: too| as well| also| now| (?:is|are|got) (?:all )?"
    r"(?:wet|soaked|splashed))*(?: ?[.!])*$"
)


def named_after(text: str, before: HarmTold | None, *, just: bool) -> Cry | None:
    """Right after a harm: whom it hit, or where else it got to: "the snake did", "and her hand", "his eyes too".

    just: the last reply was about it, so that a bare name is no answer to something else.
    """
    if before is None:
        return None
    who = _WHOM_ALONE.match(text) if just else None
    if who is not None:
        said = who["who"] or who["hit"] or who["not_me"] or who["on"]
        animal = _NAMED.search(said) is not None
        victim: Victim = "animal" if animal else "person"
        return Cry("splash", before.place, victim)
    there = _THERE_TOO.match(text)
    if there is not None and there["place"] == "one" and " other one" in text and just:
        return Cry("splash", before.place, before.victim)
    if there is None or there["place"] not in PLACES or (there["whose"] == "the" and not just):
        return None
    place = PLACES[there["place"]]
    mine = there["whose"] == "my" or (before.victim == "either" and _PERSONS_PLACE.search(text))
    return Cry("splash", place, "person" if mine else before.victim)


def hit_by_name(parsed: Parsed) -> Cry | None:
    """ "Oh no, I sprayed pepper": an animal's own name stands for its home, but not in that."""
    names = [mention.said for mention in parsed.mentions if any(thing.kind == "enclosure" for thing in mention.things)]
    by_name = any(not set(said.split()) & HOMES for said in names)
    return Cry("splash", "skin", "animal") if by_name and HIT_BY_MISTAKE.search(parsed.plain) else None
