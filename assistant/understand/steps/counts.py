"""Whether words that may tell a step tell it: "rinsed my glasses" and "rinsed with vinegar" don't."""

from __future__ import annotations

import re

from assistant.understand.named.tub_words import TUB
from assistant.understand.steps.back_words import is_no_return
from assistant.understand.steps.of_what import BY_SOMETHING_ELSE, OF_SOMETHING_ELSE, of_what, of_whom, sounds_like_it
from assistant.understand.steps.with_what import NOT_CLEAN_WATER
from assistant.understand.text.patterns import Pattern

EARLY = Pattern(
    r"\b(?:dr(?:y|ied) (?:out|up|early|too|before|already|again)|before (?:time|its time|the time)"
    r"|again|dries|drying too|too (?:soon|fast|early|quick))\b"
)


_TOLD_TO = Pattern(
    r"\b(?:use|using|apply|try|stick|pour|squirt|chuck|slap|spray|about|of|for|prefer|like|recommend)"
    r" (?:some |the |my |a |more |any )*$"
)
"""Before "bleach on the tank", which alone is a claim: told or asked to, it is none."""


_WITH_A_PRODUCT = Pattern(
    r"(?: \S+){0,3}? (?:with|in|using) (?:the |some |my |a |a bit of |more )*(?:\w+ )?(?:AGENT|STOCK|BOTTLE)\b"
)


_TAKING = Pattern(
    r"\b(?:take|taking|move|moving|get|getting|lift|lifting|bring|bringing|fetch|fetching|pull|pulling|scoop|scooping)"
    r" (?:the |my |both |all )*$"
)
""" "Taking them out", "move the snake out": it isn't out yet."""


def counts(step: str, match: re.Match[str]) -> bool:
    """Whether words that may tell a step do, by what stands before and after them.

    match: of one of `STEPS` in a clause.
    """
    before, after = match.string[: match.start()], match.string[match.end() :]
    if sounds_like_it(step, match.group(), before, after):
        return False
    if step in ("rinse", "wash", "wipe", "dry", "apply"):
        if OF_SOMETHING_ELSE.match(after) and not (step == "apply" and _WITH_A_PRODUCT.search(after)):
            return False
        if BY_SOMETHING_ELSE.search(match.string[: match.start()]):
            return False
        named = step == "apply" and _WITH_A_PRODUCT.search(after)
        if not named and of_what(match.string[: match.start()], after) == "else":
            return False
    if step in ("rinse", "wipe", "dry", "wash") and _WITH_A_PRODUCT.match(after) and " off" not in after:
        return False  # "rinsed with vinegar": put on, and nothing rinsed off
    if step in ("rinse", "wipe") and NOT_CLEAN_WATER.match(after):
        return False  # soap put on, or dirt carried in
    if step == "wipe" and re.match(r" (?:it|that|them|this|the \w+) up\b", after):
        return False  # off the floor
    if step == "apply" and re.match(
        r"(?: \S+){0,4}? with (?:just |only |plain |clean |warm |some |tap )*water\b", after
    ):
        return False
    if re.search(r"\bto (?:\w+ )?$", match.string[: match.start()]):
        return False  # "fine to put him back" is a wish
    if step == "move out" and re.match(
        r" of (?!(?:the |his |her |their |its |my |a )*(?:\w+ )?(?:ENCLOSURE|there|tank|box|cage|viv"
        r"|vivarium|tub|enclosure|it|home|house|terrarium|hide)\b)",
        after,
    ):
        return False  # out of food, out of his skin
    if step == "move out" and _TAKING.search(before):
        return False
    if step == "move out" and of_whom(match.group()) == "else":
        return False
    if step == "move out":
        return not re.match(
            r" of (?:the |his |her |their |its |a )?(?:\w+ )?(?:"
            + TUB
            + r"|quarantine)\b|.*\b(?:loose|escaped|gone)\b",
            after,
        )
    inside = " in" if match.group().endswith("back in") else ""
    if step == "return" and is_no_return(before, inside + after):
        return False
    if step == "return":  # "on her back wall"
        return not re.match(r" (?:walls?|left|right|corner|end|half|panel|glass|door)\b", after) and not re.search(
            r"\b(?:on|over|down|of|at|along|across|onto|under) (?:the |my )?$", match.string[: match.start()]
        )
    if step == "dry":
        return not EARLY.search(match.group() + after) and " to dry" not in match.string[: match.end()]
    if step in ("rinse", "wash", "wipe"):
        if re.search(r"\b(?:BOTTLE|bottle|sprayer)(?: is| 's| has been| all| now)+ $", match.string[: match.start()]):
            return False  # "the yellow bottle's rinsed" is no step
        return not re.match(
            r"(?: out)?(?: \w+){0,2} (?:hands?|eyes?|mouth|face|gloves|BOTTLE|bottle|syringe|bowls?|tongs|cloth)\b",
            after,
        )
    if step == "apply" and _TOLD_TO.search(match.string[: match.start()]):
        return False
    if step == "apply":
        return not (match.group() == "misted" and "again" in after) and not re.match(
            r"(?: \w+)? (?:in|on) (?:my|me)\b", after
        )
    return True
