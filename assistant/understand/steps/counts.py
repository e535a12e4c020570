"""Whether words that name a step tell of that step of a clean: "rinsed my hands" and "out of food" don't.

Of what a step is told is `of_what`; which clauses claim it, and which deny or ask it, is `claimed_steps`.
"""

from __future__ import annotations

import re

from assistant.understand.named.tub_words import TUB
from assistant.understand.steps.back_words import is_no_return
from assistant.understand.steps.of_what import BY_SOMETHING_ELSE, OF_SOMETHING_ELSE, of_what, of_whom, sounds_like_it
from assistant.understand.steps.with_what import NOT_CLEAN_WATER
from assistant.understand.text.patterns import Pattern

EARLY = Pattern(
    r"\b(?:dr(?:y|ied) (?:out|up|early|too|before|already|again)|before (?:time|its time|the time)|again|dries"
    r"|drying too|too (?:soon|fast|early|quick))\b"
)
"""It dried before its time, which is no step of drying."""
_WISHED = Pattern(r"\bto (?:\w+ )?$", "to ")
""" "Fine to put him back" is a wish."""


def counts(step: str, match: re.Match[str]) -> bool:
    """Whether they tell of that step of what is being cleaned.

    match: the words that name the step, found in their clause.
    """
    words, before, after = match.group(), match.string[: match.start()], match.string[match.end() :]
    if sounds_like_it(step, words, before, after) or _WISHED.search(before):
        return False
    if step == "move out":
        return _is_moving_out(words, before, after)
    if step == "return":
        return _is_return(words, before, after)
    if step in ("rinse", "wash", "wipe", "dry", "apply") and _is_of_something_else(step, before, after):
        return False
    if step == "apply":
        return _is_spraying(words, before, after)
    if step in ("rinse", "wash", "wipe", "dry") and _WITH_A_PRODUCT.match(after) and " off" not in after:
        return False  # "rinsed with vinegar": put on, and nothing rinsed off
    if step == "dry":
        return not EARLY.search(words + after) and " to dry" not in before + words
    return step not in ("rinse", "wash", "wipe") or _is_rinsing(step, before, after)


def _is_moving_out(words: str, before: str, after: str) -> bool:
    if _OUT_OF.match(after) or _TAKING.search(before) or of_whom(words) == "else":
        return False
    return _OUT_OF_A_TUB.match(after) is None and _OF_ITS_OWN.match(after) is None


_OF_ITS_OWN = Pattern(r" (?:and about|(?:it|him|her)self|(?:\w+ ){0,2}in there)\b")
""" "Out and about in there", "moved itself": nobody took it out."""

_TAKING = Pattern(
    r"\b(?:take|taking|move|moving|get|getting|lift|lifting|bring|bringing|fetch|fetching|pull|pulling|scoop|scooping)"
    r" (?:the |my |both |all )*$"
)
""" "Taking them out", "move the snake out": it isn't out yet."""
_OUT_OF = Pattern(
    r" of (?!(?:the |his |her |their |its |my |a )*(?:\w+ )?"
    r"(?:ENCLOSURE|there|tank|box|cage|viv|vivarium|tub|enclosure|it|home|house|terrarium|hide)\b)"
)
""" "Out of food", "out of his skin"."""
_OUT_OF_A_TUB = Pattern(
    rf" of (?:the |his |her |their |its |a )?(?:\w+ )?(?:{TUB}|quarantine)\b|.*\b(?:loose|escaped|gone)\b"
)


def _is_return(words: str, before: str, after: str) -> bool:
    inside = " in" if words.endswith("back in") else ""
    if is_no_return(before, inside + after) or _MAY.search(before):
        return False
    return _BACK_WALL.match(after) is None and _ON_THE_BACK.search(before) is None


_MAY = Pattern(r"\b(?:can|may|could|should|shall|will|would|must|let me) (?:\w+ ){0,2}$")
""" "Tell me I can put him back": not back yet."""
_BACK_WALL = Pattern(r" (?:walls?|left|right|corner|end|half|panel|glass|door)\b")
_ON_THE_BACK = Pattern(r"\b(?:on|over|down|of|at|along|across|onto|under) (?:the |my )?$")
""" "On her back wall"."""


def _is_of_something_else(step: str, before: str, after: str) -> bool:
    """Of hands, bowls or a friend's tank. A product that is named is put on what is being cleaned, whatever is said."""
    named = step == "apply" and _WITH_A_PRODUCT.search(after) is not None
    if (OF_SOMETHING_ELSE.match(after) and not named) or BY_SOMETHING_ELSE.search(before):
        return True
    return not named and of_what(before, after) == "else"


_WITH_A_PRODUCT = Pattern(
    r"(?: \S+){0,3}? (?:with|in|using) (?:the |some |my |a |a bit of |more )*(?:\w+ )?(?:AGENT|STOCK|BOTTLE)\b"
)


def _is_spraying(words: str, before: str, after: str) -> bool:
    if _WITH_WATER.match(after) or _TOLD_TO.search(before):
        return False
    return not (words == "misted" and "again" in after) and _ON_ME.match(after) is None


_WITH_WATER = Pattern(
    r"(?: it| that| them| ENCLOSURE)?(?: a)?(?: quick| good| light)?(?: spray| squirt| mist"
    r"| spritz)? of (?:plain |clean |tap )?water\b|(?: some"
    r"| a bit of| plain| warm| just| only)* water\b|(?: \S+){0,4}? with (?:just |only |plain |clean "
    r"|warm |hot |boiling |cold |soapy |some |a bit of |tap )*water\b",
    "water",
)
_TOLD_TO = Pattern(
    r"\b(?:use|using|apply|try|stick|pour|squirt|chuck|slap|spray|about|of|for|prefer|like|recommend) "
    r"(?:some |the |my |a |more |any )*$"
)
"""Before "bleach on the tank", which alone is a claim: told or asked to, it is none."""
_ON_ME = Pattern(r"(?: \w+)? (?:in|on) (?:my|me)\b")


def _is_rinsing(step: str, before: str, after: str) -> bool:
    """Of a rinse, a washing or a wiping."""
    if step in ("rinse", "wipe") and NOT_CLEAN_WATER.match(after):
        return False  # soap put on, or dirt carried in
    if step == "wipe" and _OFF_THE_FLOOR.match(after):
        return False
    return _BOTTLE_IS.search(before) is None and _OF_A_THING.match(after) is None


_OFF_THE_FLOOR = Pattern(r" (?:it|that|them|this|the \w+) up\b", " up")
_BOTTLE_IS = Pattern(r"\b(?:BOTTLE|bottle|sprayer)(?: is| 's| has been| all| now)+ $")
""" "The yellow bottle's rinsed" is no step."""
_OF_A_THING = Pattern(
    r"(?: out)?(?: \w+){0,2} (?:hands?|eyes?|mouth|face|gloves|BOTTLE|bottle|syringe|bowls?|tongs|cloth)\b"
)
