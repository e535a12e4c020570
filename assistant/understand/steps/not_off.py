"""What was to come off and is told to be there still: a part not rinsed, a film, a puddle of product, the soap.

In doubt it counts as not off: the rinse, or the washing, is taken back.
"""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Slots
from assistant.core.record.state import Round
from assistant.core.round.rounds import is_open
from assistant.understand.look import Look
from assistant.understand.steps.done_over import PARTS, THING
from assistant.understand.text.asking import ASKED
from assistant.understand.text.parts_of_it import FITTING
from assistant.understand.text.patterns import Pattern, words_in

_SOMETHING = r"(?:AGENT|BOTTLE|STOCK|spray|product|disinfectant|liquid|residue|stuff|BOTTLE stuff)"
_LEFT_ON = Pattern(
    r"\b(?:still|bit of|little|some|traces? of|see|smear of|puddle of|left over|drops? of)(?: \w+){0,3}? "
    r"(?:soap|suds|bubbles|foam|residue|AGENT|BOTTLE|STOCK)(?: \w+){0,2}? (?:in|on|at|down|along|under|left)\b"
    r"|\bstill (?:a |some )?(?:bit|little|trace|smear|drop)s? of \w+ (?:on|in)\b"
    r"|\b(?:soap|suds|bubbles|foam|residue) (?:is |are |'s )?(?:still|left|in|on)\b"
    r"|\bstill (?:feels? |feeling |a bit |quite |very )*(?:soapy|slimy|slippery|slick|greasy|sticky|sudsy|foamy)\b"
    r"|\bfeels? (?:still )?(?:a bit |quite |very )*(?:soapy|slimy|slippery|sticky)\b"
    r"|\brinse water (?:was|is|came|looked|ran) (?:\w+ )?(?:dirty|cloudy|soapy|brown|foamy|bleachy)\b"
    r"|\b(?:film|residue|streaks?|smears?) (?:on|left on|all over|across|down)\b"
    r"|\b(?:is|looks|'s)(?: all| a bit| still)? (?:streaky|smeary|filmy)\b"
    r"|\bonly rinsed (?:the|one|half|part|some|a)\b"
    r"|\b(?:there is|is|are|'s|see|found|spotted)(?: still| some| more| a (?:bit|little|puddle|pool|drop|drip) of"
    rf"| the)* {_SOMETHING}(?: left| sitting| pooled| pooling| trapped| stuck| standing)* "
    rf"(?:in|on|under|along|behind|inside) (?:the |a |one )*{PARTS}\b"
    r"|\bstill (?:has|have|got) (?:some |a bit of |a little )?\w+(?: \w+)? (?:on|in|under) (?:it|them)\b"
    r"|\b(?:full of|still (?:soaking|sitting|standing) in) (?:the |some )?(?:AGENT|STOCK|BOTTLE)\b"
    rf"|\b{_SOMETHING}(?: is| has| 's)* (?:pooled|pooling|collected|trapped|sitting|left|puddled)(?: up)? "
    r"(?:in|on|under|along|behind|inside)\b",
    *("soap", "suds", "bubbl", "foam", "residue", "AGENT", "BOTTLE", "STOCK", "still", "rinse", "film", "streak"),
    *("smear", "only", "spray", "product", "stuff", "liquid", "feel", "disinfectant"),
)
_NOT_ALL_RINSED = Pattern(
    rf"\b(?:missed|forgot|skipped|left out|overlooked) (?:to do )?{THING} (?:when|with|while|in|during|on) "
    rf"(?:i |the |my )*rins\w+\b|\b(?:missed|forgot|skipped) (?:to rinse|rinsing) {THING}\b"
    rf"|\b(?:not|never)(?: yet| even| actually)? rinsed (?:the |his |her |its |any of the )?{FITTING}\b"
    rf"|\b{FITTING}(?: is| are| was| were| 's| has| have| got| in| back| ,| but)* (?:not|never)"
    r"(?: been| got| yet)* rinsed\b|\bstill (?:need|needs|have|has|got)?(?: got)? ?to (?:rinse|hose)\b"
    r"|\bhave still got to (?:rinse|hose)\b"
    rf"|\b(?:need|needs|have|has|got|ought) to (?:rinse|hose) (?:{THING} )?again\b"
    r"|\b(?:not|hardly) (?:so |too |very |really )?(?:sure|certain)(?: that| if| whether)? i (?:have )?"
    rf"(?:(?:rinsed|got|did)(?: off)? {THING}\b|rinsed$)"
    r"|\b(?:do not|can not) (?:think|remember|know)(?: that| if| whether)? (?:i )?(?:have )?rins(?:ed|ing)"
    rf"(?: {THING}\b|$)|\b(?:one|another|a second) (?:more )?rinse (?:to go|left|needed|to do|still)\b"
    r"|\b(?:needs?|wants?) (?:another|a second|one more) rinse\b",
    "rins",
)
_SOAP_ON = Pattern(
    r"\b(?:soap|suds|detergent|bubbles|foam)(?: is| are| 's)? (?:still )?(?:on|in|there|left|all over)\b"
    r"|\bstill (?:a bit |all |quite )*(?:soapy|sudsy|foamy)\b|\bstill (?:some |a bit of )?(?:soap|suds)\b"
    r"|\b(?:not|never|without)(?: yet| been| even)? (?:rins\w+|got|gotten|taken|wash\w+)(?: off)? "
    r"(?:the |all the |that )?(?:soap|suds|detergent)\b"
    r"|\b(?:soap|suds|detergent)(?: is| was| has| are)? (?:not|never)(?: been)? (?:off|rinsed|gone)\b",
    *("soap", "suds", "detergent", "bubbles", "foam", "sudsy"),
)
_NO_SOAP = Pattern(
    r"\b(?:no|without(?: any)?|did not use(?: any)?|never used(?: any)?) (?:soap|detergent|washing up liquid)\b"
    r"|\b(?:just|only) (?:with |used |rinsed (?:it |that )?(?:with )?|plain |a rinse with )*(?:water|a rinse)\b"
    r"(?=.*\bno (?:soap|detergent)\b)",
    *("soap", "detergent", "washing up"),
)
_NO_SOAP_THEN = Pattern(
    r"\b(?:forgot|skipped|left out) (?:to use )?(?:the |any )?(?:soap|detergent)\b"
    r"|\b(?:not|never|forgot to)(?: ever| even)? (?:rinse|rinsed|wash|washed) (?:off )?(?:the |all the )?"
    r"(?:soap|suds|detergent)(?: off)?(?: off)? (?:before|first)\b",
    *("soap", "suds", "detergent"),
)
""" "She didn't rinse the soap off before": before the spraying, whatever was rinsed later."""
_ASKS_OR_AHEAD = Pattern(
    rf"{ASKED}(?! not)"
    r"|\b(?:if|in case|make sure|nothing|nowhere|none|no (?:more|longer)|about to|going to|will|before|until|all off"
    r"|gone)\b"
)


_SMELLS = Pattern(r"\b(?:smell|pong|stink|reek|whiff|niff)\w*", "smell", "pong", "stink", "reek", "whiff", "niff")


def not_rinsed_off(look: Look) -> Slots | None:
    """The slots of a rinse that left something, or wasn't done all over; None: nothing is told."""
    plain = look.parsed.plain
    if _ASKS_OR_AHEAD.search(plain) or _SMELLS.search(plain):
        return None
    doubt = _NOT_ALL_RINSED.search(plain) is not None
    if not doubt and (_LEFT_ON.search(plain) is None or set(look.claims.done) - {"rinse"}):
        return None
    return _taken_back(look, "rinse")


_RINSED_WITHOUT = Pattern(
    r"\brins\w+(?: (?:it|that|them|ENCLOSURE|off|down))* (?:with no|without(?: any)?|no) soap\b", "rins"
)


def soap_not_off(look: Look) -> Slots | None:
    """The slots of a washing whose soap is still on, or that was done with water alone; None: nothing is told.

    Once the rinse after the spraying is done, what is left of soap is of that one.
    """
    plain = look.parsed.plain
    then = _NO_SOAP_THEN.search(plain) is not None or _NO_SOAP.search(plain) is not None
    of_the_rinse = _RINSED_WITHOUT.search(plain) is not None
    if then and not of_the_rinse and not plain.endswith("?") and "wash" not in look.claims.done:
        return _taken_back(look, "wash")
    if _ASKS_OR_AHEAD.search(plain) or set(look.claims.done) - {"rinse"}:
        return None
    if _SOAP_ON.search(plain) is None:
        return None
    return _taken_back(look, "wash", before="rinse")


def _taken_back(look: Look, step: str, before: str = "") -> Slots | None:
    rounds = [one for one in look.world.state.rounds.values() if is_open(one) and _stands(one, step, before)]
    slots = look.slots("undo")
    names = [one.enclosure for one in rounds if not slots.enclosures or one.enclosure in slots.enclosures]
    return replace(slots, enclosures=tuple(names), steps=(step,), corrects=True) if names else None


def _stands(round_: Round, step: str, before: str) -> bool:
    return step in round_.done and before not in round_.done


WORDS = words_in(_LEFT_ON, _NOT_ALL_RINSED, _SOAP_ON, _NO_SOAP, _NO_SOAP_THEN)
"""Words that the rules here turn on."""
