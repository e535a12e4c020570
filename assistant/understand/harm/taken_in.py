"""Harm by its parts: what was swallowed, and what somebody's hand, cut or coat got into."""

from __future__ import annotations

import re

from assistant.understand.harm.said import Found, Said
from assistant.understand.harm.words import (
    ANIMALS,
    DRANK,
    HAZARDS,
    MISTAKEN,
    NO_MEAL,
    PEOPLE,
    USED,
    VESSELS,
)
from assistant.understand.text.patterns import Pattern, words_in

_INTO_WHAT_HURTS = Pattern(
    r"\b(?:hands?|fingers?|thumb|arms?|face|head|foot|feet|paws?|toes?|tongue|nose) (?:right |straight |deep )?"
    r"(?:in|into) (?:the |my |a |that |some )?(?:bucket|BOTTLE|AGENT|STOCK|MIX|disinfectant|cleaner|puddle)\b"
)
_FELT = Pattern(
    r"\bcan not (?:\w+ )?feel (?:my|his|her) (?:\w+ )?(?:fingers?|fingertips?|hands?|arms?|face|lips|tongue|feet|foot"
    r"|toes|legs?)\b"
    r"|\b(?:ran|run|runs|leaked|dripped|trickled|seeped|poured) (?:down |right |straight )*(?:inside|into|down) my "
    r"(?:\w+ )?(?:boots?|shoes?|socks?|gloves?|sleeves?|neck|back|collar|shirt)\b"
    r"|\bgloves? (?:has |have |is |are |was )?(?:all )?(?:filled|full|filling|flooded)(?: up)? (?:with|of) "
    r"(?:it|AGENT|BOTTLE|STOCK|disinfectant|cleaner)\b"
)
_NOT_RINSED = Pattern(
    r"\b(?:did not|forgot to|never|not) rins\w*\b.*\b(?:he|she|they|him|her|ANIMAL|ENCLOSURE)\b.*\b"
    r"(?:been in|in there|back in|sat in|put in)\b"
)
_FELL_IN = Pattern(
    r"\b(?:dropped|fell|fallen|slipped|jumped|knocked)(?: (?:him|her|it|(?:the |my )?ANIMAL))? (?:in|into) "
    r"(?:the |my |a )?(?:\w+ )?(?:bucket|AGENT|STOCK|BOTTLE|tray of \w+|puddle)\b"
)
_IN_A_CUT = Pattern(
    r"\b(?:it|AGENT|STOCK|BOTTLE|MIX|disinfectant|cleaner|some|stuff|concentrate)\b(?: \S+){0,4} (?:in|into|inside) "
    r"(?:the |a |my |this )?(?:\w+ )?(?:cut|graze|scratch|sore|blister|wound) (?:on|of) my\b"
)
_INJECTED = Pattern(
    r"\b(?:pricked|jabbed|stabbed|stuck|poked|injected|needled) (?:the (?:needle|syringe) (?:in|into) )?"
    r"(?:myself|me|himself|herself|my \w+)\b.*\b(?:syringe|needle|MEASURE|AGENT|STOCK|BOTTLE|MIX|concentrate)\b"
    r"|\b(?:injected|needled) (?:myself|himself|herself|my (?:own )?(?:hand|finger|thumb|arm|leg|palm))\b"
    r"|\b(?:syringe|needle|MEASURE) (?:went|has gone|is|got|stuck|slipped)(?: \w+)? (?:in|into|through) my \w+",
    *("syringe", "needle", "inject", "prick", "jab", "stab", "stuck", "poke", "MEASURE"),
)
_OVER_ONE = Pattern(
    r"\b(?:sprayed|misted|poured|squirted|spritzed|tipped|hosed)\b(?: \S+){0,5}? (?:over|on|onto|across|at)"
    rf"(?: the top of| top of)? (?:the |my |a |our )?(?:\w+ )?(?P<who>{'|'.join(sorted(ANIMALS | PEOPLE))})\b(?! ?'s)"
    r"(?=.*\b(?:accident\w*|mistake|oops|whoops|oh no|help)\b)"
)


_TAKEN_FOR_A_DRINK = Pattern(
    r"\b(?:thought|thinking) (?:it|that|this|the (?:bottle|jug|bucket|cup|stuff)|BOTTLE|AGENT) was "
    r"(?:just |only |a |an |my |some |his |her )*(?:\w+ )?"
    r"(?:squash|tea|coffee|drink|juice|cola|beer|lemonade|pop|milk|wine|cordial|water)$"
)
_ON_IT = Pattern(
    r"\b(?:he|she|ANIMAL|ENCLOSURE)(?: is| 's| has| feels)?(?: all| a bit| really)* "
    r"(?:slimy|sticky|wet|damp|soaked)\b.*\b(?:AGENT|STOCK|disinfectant|cleaner)\b"
    r"|\b(?:he|she|ANIMAL) (?:smells?|reeks?|stinks?) of (?:AGENT|STOCK|disinfectant|cleaner|chemicals?)\b"
    r"|\bthere is (?:\w+ )?(?:AGENT|STOCK|BOTTLE|disinfectant|cleaner) in (?:my |the |our |his |her )?(?:\w+ )?"
    rf"(?:{'|'.join(sorted(ANIMALS))}|fish)(?: 's)? (?:tank|water|pond|bowl)\b"
)


def into_what_hurts(said: Said) -> Found | None:
    """A hand in the bucket, a product in a cut, the lizard sprayed over by accident: no verb of harm need be said."""
    if said.general:
        return None
    if _INTO_WHAT_HURTS.search(said.text) and not re.search(r"\bin gloves|\bgloved\b", said.text):
        return Found("skin", said.of_animal and not said.person)
    if _ON_IT.search(said.text) and said.present.isdisjoint(PEOPLE):
        return Found("skin", True)
    if _NOT_RINSED.search(said.text) or (_FELL_IN.search(said.text) and (said.of_animal or said.animal)):
        return Found("skin", True)
    if _INJECTED.search(said.text):
        return Found("skin", False)
    if _FELT.search(said.text) and "water" not in said.present:
        return Found("skin", False)
    if _IN_A_CUT.search(said.text):
        return Found("skin", False)
    over = _OVER_ONE.search(said.text)
    return Found("skin", over["who"] in ANIMALS) if over else None


def swallowed(said: Said) -> Found | None:
    for at in said.at(DRANK):
        word = said.words[at]
        near = said.words[max(0, at - 7) : at + 10]
        hurtful = not HAZARDS.isdisjoint(near) or not VESSELS.isdisjoint(near) or MISTAKEN.search(said.text)
        if word == "bit" and not said.near(at, frozenset(("into", "through")), 0, 1):
            continue
        if word in ("lap", "taste", "sip", "suck") and said.general:
            continue
        if word in ("ate", "eaten", "eating") and "sprayed" in said.present:
            return Found("mouth", said.of_animal)
        if word in ("lick", "licked", "licking", "lapped") and not said.present.isdisjoint(USED):
            hurtful = True
        eaten = not NO_MEAL.isdisjoint(near) and HAZARDS.isdisjoint(near) and not MISTAKEN.search(said.text)
        if word.startswith("swallow") and not eaten and not said.of_animal:
            hurtful = True
        if hurtful and not eaten:
            animal = said.of_animal or (word.startswith("lick") and "i" not in said.present and not said.person)
            return Found("mouth", animal)
    if re.search(r"\b(?:down|in|into) (?:my|his|her|their) (?:throat|mouth|gob)\b", said.text) and not said.general:
        return Found("mouth", said.of_animal)
    if _TAKEN_FOR_A_DRINK.search(said.text):
        return Found("mouth", False)
    if re.search(
        r"\b(?:mistook|taken|took|mistaken)(?: \S+){1,3} for (?:a |his |her |my |some )?(?:\w+ )?"
        r"(?:squash|tea|coffee|drink|water|juice|cola|beer|lemonade|pop|milk|food|sweets?)\b",
        said.text,
    ):
        return Found("mouth", said.of_animal)
    cup = re.search(r"\bmy (?:\w+ )?(?:squash|tea|coffee|drink|cup|mug|water|juice|cola|beer|glass|soup)\b", said.text)
    if cup and said.hazard and (MISTAKEN.search(said.text) or not said.general):
        return Found("mouth", False)
    if re.search(
        r"\b(?:BOTTLE|bottle|nozzle|AGENT|tube|it|cap|lid|brush|sponge|cloth) (?:\w+ )?(?:to|in|into) "
        r"(?:my|his|her|their) (?:mouth|lips)\b",
        said.text,
    ):
        return Found("mouth", said.of_animal)
    if re.search(
        r"\bhad (?:some|a bit|a drop|a drink) (?:of|from|out of) (?:the )?(?:BOTTLE|AGENT|STOCK)\b(?! left)", said.text
    ):
        return Found("mouth", said.of_animal)
    return None


WORDS = words_in(_INJECTED)
"""Words that this rule turns on."""
