"""What is told in mid-clean and records nothing, but may matter: it is kept, and asked about before "ready".

Either it fits no question, or it was taken for one that only asks: "found a bit of poo, wiped it off" is none of how a
clean stands.
"""

from __future__ import annotations

from collections.abc import Mapping

from assistant.contract import Question, Reading
from assistant.core.round.rounds import a_hold_runs, a_surface_is_touched, is_open
from assistant.understand.look import Look
from assistant.understand.steps.claimed_steps import claims_in
from assistant.understand.steps.of_the_keeper import speaks_of_the_keeper
from assistant.understand.steps.plainly_told import beside_it
from assistant.understand.steps.smell_told import of_another_thing
from assistant.understand.steps.what_happened import tells_an_event, tells_what_happened
from assistant.understand.talk.takes import asks_only
from assistant.understand.text.asking import ASKED
from assistant.understand.text.parts_of_it import PART
from assistant.understand.text.patterns import Pattern

_MATTERS = Pattern(
    r"\b(?:wet|damp|moist|soggy|soak\w*|puddl\w*|drip\w*|pool\w*|leak\w*|flood\w*|rain|came in|only (?:put|used"
    r"|did|had)|smell\w*|smelt|stink\w*|reek\w*|whiff"
    r"|fumes?|poo\w*|pee\w*|wee|urates?|turds?|dirt\w*|muck\w*|mou?ld\w*|slim\w*|stain\w*|film|residue|streak\w*"
    r"|smear\w*"
    r"|tack\w*|stick\w+|steam\w*|fogg\w*|greas\w*|slipp\w+|spill\w*|mopp\w*|bucket|crawl\w*|juice"
    r"|mess|mites?|missed|skipped|forgot|left|not (?:done|rinsed|washed|sprayed|wiped|dry|clean)|never|rins\w+"
    r"|(?:over)?spray\w*|wash\w*|drying|dried|walked|climbed|(?:went|got|fell|ran|dripped) (?:in|on|onto|into)"
    r"|wip\w+|bleach\w*|product|AGENT|STOCK|BOTTLE|OTHER|soap\w*|suds|damaged|cracked|happened|still in|is in there"
    r"|sitting"
    r"|are in there)\b"
)
_ASKS = Pattern(
    rf"{ASKED}|^(?:(?:so|and|but|ok|right|now|um|oh|hey|wait|please) ,? ?)*(?:please|remind|tell|give|show|say|set|turn"
    r"|play|stop|open|call)\b"
)
_NO_SMELL = Pattern(r"\bno (?:smells?|fumes?|whiff)\b", "no ")
_OF_OTHER_THINGS = Pattern(
    r"\b(?:towels?|buckets?|sponges?|shelf|shelves|cupboard|carpet|cloths?|rags?|mop|tap|sink|phone|call|lunch"
    r"|dinner|breakfast|tea|coffee|bus"
    r"|kettle|telly|news|post|car|garden|bath|hides?|bowls?|last of the (?:AGENT|STOCK))\b"
    r"|\b(?:BOTTLE|bottle|STOCK|AGENT)(?: is| 's)? (?:nearly |almost |all )?(?:empty|gone|low|strong|back|away"
    r"|finished)\b"
)
_INTO_IT = Pattern(r"\b(?:in there|in it|inside|on it|back in|put (?:\w+ ){1,4}(?:back|in))\b")
""" "Put the hide back in wet": what was beside it is inside by now."""
_SPRAYED_BESIDE = Pattern(
    r"\b(?:sprayed|misted|spritzed|squirted|overspray|used (?:the|a|my|some) (?:dirty|same|old|wrong))\b"
)
""" "Sprayed the hide": what was beside it has product on it, and goes back in."""
_ONLY_WET = Pattern(r"\b(?:wet|dripping|soak\w*|shiny|glistening)\b")
_FEWEST, _MOST = 2, 20


def is_remark(look: Look) -> bool:
    """Whether a text that wasn't understood tells something of a surface that a product is or was on.

    Only while a clean is open whose surface was sprayed: before that, every step is still to come.
    """
    if not a_surface_was_touched(look):
        return False
    plain = look.parsed.plain.strip(" .!,")
    beside = _OF_OTHER_THINGS.search(plain) and not (_INTO_IT.search(plain) or _SPRAYED_BESIDE.search(plain))
    if speaks_of_the_keeper(plain) or _NO_SMELL.search(plain) or beside or of_another_thing(plain):
        return False
    if _ONLY_WET.search(plain) and a_hold_runs(look.world.state.rounds.values(), look.world.now):
        return False  # wet is what it should be
    told = not _asks(plain) and _FEWEST <= len(look.parsed.words) <= _MOST
    return told and (_MATTERS.search(plain) is not None or tells_what_happened(plain))


def a_surface_was_touched(look: Look) -> bool:
    """Whether a clean is open whose surface a product is or was on."""
    return a_surface_is_touched(look.world.state.rounds.values())


def _asks(plain: str) -> bool:
    """Whether it asks or bids. "Did not do the ledge" begins as a question does, and tells."""
    return _ASKS.search(plain) is not None and not (_BEGINS_DENIED.match(plain) and "?" not in plain)


_BEGINS_DENIED = Pattern(
    r"could (?:really )?do with\b|(?:(?:so|and|but|ok|well|oh|sorry) ,? ?)*(?:did|have|has|had|was|were|could|can"
    r"|do|does) not\b(?! (?:i|you"
    r"|it|we)\b)"
)
_SEEN = Pattern(
    r"\b(?:damp|moist|soggy|puddl\w*|drip\w*|pool(?:ed|ing)|poo|poop|pee|urates?|turds?|droppings?|dirt\w*|muck\w*"
    r"|mou?ld\w*|slime|stain\w*|residue|smear\w*|crickets?|roach\w*|locusts?|worms?|mites?|cat|dog|spiders?|hairs?"
    r"|missed|skipped|forgot|overspray|went in|got (?:in|on)|fell in|walked|dried (?:out|off|up)|not watching|lied"
    r"|none of (?:it|that) happened|used (?:it|on|in|for|the (?:cage|tank|box|viv|tub)|ENCLOSURE)"
    r"|disinfectant"
    r"|(?:water|it) is (?:sitting|standing))\b"
)
"""What is there, whatever else a sentence asks; steps and products are known by rules of their own."""
_DENIED = Pattern(r"\b(?:no|not|never|without|nothing)\b")
_PARTS = Pattern(r"[.;,!]|\b(?:but|and|so)\b")
_PUT_TO_A_QUESTION = frozenset(
    {
        *("last_done", "unknown_bottle", "protect", "order", "wound", "tub", "status", "why", "hold_time", "surface"),
        *("treat_item", "splash"),
    }
)
"""Questions that a text is taken for which nowhere asks: what it tells is kept."""
_OF_THE_AIR_OR_FLOOR = frozenset(
    {"air_time", "still_smells", "dry_time", "protect", "treat_item", "share_tool", "wound"}
)
_TELLS_BESIDE = frozenset({"log_clean", "spill", "start", "splash"})
"""Questions that record something, though nothing of what is open."""


def remarked_beside(reading: Reading, look: Look, questions: Mapping[str, Question]) -> bool:
    """Whether a text that was taken for a question tells something of a surface beside it.

    Of a part that tells and doesn't ask, and of what is seen there; what a step claims is on record as that.
    """
    intent = reading.intent
    if intent is None or not a_surface_was_touched(look):
        return False
    if intent == "status" and _IN_DOUBT.search(look.parsed.plain) and not _asks(look.parsed.plain):
        return True  # "I think I rinsed it, not sure now": the record may be wrong
    of_somebody = intent == "splash" and (reading.slots.place or not _INTO_IT.search(look.parsed.plain))
    if intent in _PUT_TO_A_QUESTION and not of_somebody and _tells_throughout(look, intent):
        return True
    if intent == "protect" and _FELT_IN_THE_AIR.search(look.parsed.plain) and not _ASKS.search(look.parsed.plain):
        return True
    if intent == "outbreak" and reading.slots.organisms and reading.slots.of_illness is None:
        return not _asks(look.parsed.plain) and _IS_THERE.search(look.parsed.plain) is not None
    if intent in _OF_THE_AIR_OR_FLOOR:
        return False
    if not (asks_only(questions.get(intent)) or intent in (*_TELLS_BESIDE, "done")):
        return False
    parts = (part.strip(" ?") for part in _PARTS.split(look.parsed.plain))
    told = [part for part in parts if part and not _ASKS.search(part) and not _DENIED.search(part)]
    if intent == "done":
        if "wash" in reading.slots.steps and reading.doubts and _rinsed(look):
            return True  # soap on what was rinsed, whatever is answered to that
        told = [part for part in told if not (done := claims_in(part).done) or beside_it(part, done)]
    if intent in ("spill", "splash"):
        return any(_GOT_IN.search(part) for part in told)
    return any(_SEEN.search(part) for part in told) and not (
        speaks_of_the_keeper(look.parsed.plain) or _NO_SMELL.search(look.parsed.plain)
    )


_IN_DOUBT = Pattern(
    r"\b(?:not (?:so |too |quite |really |that )?(?:sure|certain)|can not (?:remember|swear|recall))\b", "not"
)


def _tells_throughout(look: Look, intent: str) -> bool:
    """Whether it asks nowhere and tells of something that happened, whatever question it is most like."""
    plain = look.parsed.plain.strip(" .!,")
    if _asks(plain) or speaks_of_the_keeper(plain) or not tells_an_event(plain):
        return False
    if intent == "status" and _DENIED.search(plain) and not _A_PART.search(plain):
        return False  # a step that isn't on record either
    beside = _OF_OTHER_THINGS.search(plain) or _GLOVED.search(plain)
    return intent == "wound" or not beside or _DONE_TO_IT.search(plain) is not None


_IS_THERE = Pattern(r"\b(?:has|have|had|got|'s got|tested positive|came back positive|is positive|carries|carrying)\b")
""" "She's got crypto": the wet time was chosen without it."""
_FELT_IN_THE_AIR = Pattern(
    r"\b(?:eyes?|nose|throat) (?:(?:is|are|still|really) )*(?:water\w*|sting\w*|stream\w*|tickl\w*|itch\w*"
    r"|prickl\w*|burn\w*)\b"
)
_A_PART = Pattern(rf"\b{PART}\b")
_GLOVED = Pattern(
    r"^(?:changed|swapped|washed|took off|put on|binned|dropped) (?:\w+ ){0,2}(?:gloves?|hands?|mask|apron)\b"
)
_DONE_TO_IT = Pattern(r"\b\w+ed (?:it|them)\b")


def _rinsed(look: Look) -> bool:
    return any(is_open(r) and "rinse" in r.done for r in look.world.state.rounds.values())


_GOT_IN = Pattern(
    r"\b(?:went|got|dripped|ran|splashed|leaked) (?:in|into|on|onto)\b(?! (?:my|his|her|the floor|me|him))"
)
