"""What is told in mid-clean and records nothing, but may matter: it is kept, and asked about before "ready".

Either it fits no question, or it was taken for one that only asks: "found a bit of poo, wiped it off" is none of how a
clean stands.
"""

from __future__ import annotations

from collections.abc import Mapping

from assistant.contract import Question, Reading
from assistant.core.round.rounds import a_hold_runs, is_open
from assistant.understand.look import Look
from assistant.understand.steps.claimed_steps import claims_in
from assistant.understand.steps.of_the_keeper import speaks_of_the_keeper
from assistant.understand.steps.plainly_told import beside_it
from assistant.understand.steps.smell_told import of_another_thing
from assistant.understand.talk.takes import asks_only
from assistant.understand.text.asking import ASKED
from assistant.understand.text.patterns import Pattern

_MATTERS = Pattern(
    r"\b(?:wet|damp|moist|soggy|soak\w*|puddl\w*|drip\w*|pool\w*|leak\w*|flood\w*|rain|came in|only (?:put|used"
    r"|did|had)|smell\w*|smelt|stink\w*|reek\w*|whiff"
    r"|fumes?|poo\w*|pee\w*|wee|urates?|turds?|dirt\w*|muck\w*|mou?ld\w*|slim\w*|stain\w*|film|residue|streak\w*"
    r"|smear\w*"
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
_SPRAYED_BESIDE = Pattern(r"\b(?:sprayed|misted|spritzed|squirted|overspray)\b")
""" "Sprayed the hide": what was beside it has product on it, and goes back in."""
_ONLY_WET = Pattern(r"\b(?:wet|dripping|soak\w*|shiny|glistening)\b")
_FEWEST, _MOST = 2, 20


def is_remark(look: Look) -> bool:
    """Whether a text that wasn't understood tells something of a surface that a product is or was on.

    Only while a clean is open whose surface was sprayed: before that, every step is still to come.
    """
    if not any(is_open(r) and r.touched for r in look.world.state.rounds.values()):
        return False
    plain = look.parsed.plain.strip(" .!,")
    beside = _OF_OTHER_THINGS.search(plain) and not (_INTO_IT.search(plain) or _SPRAYED_BESIDE.search(plain))
    if speaks_of_the_keeper(plain) or _NO_SMELL.search(plain) or beside or of_another_thing(plain):
        return False
    if _ONLY_WET.search(plain) and a_hold_runs(look.world.state.rounds.values(), look.world.now):
        return False  # wet is what it should be
    told = _ASKS.search(plain) is None and _FEWEST <= len(look.parsed.words) <= _MOST
    return told and _MATTERS.search(plain) is not None


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
    if intent is None or intent in _OF_THE_AIR_OR_FLOOR:
        return False
    if not (asks_only(questions.get(intent)) or intent in (*_TELLS_BESIDE, "done")):
        return False
    if not any(is_open(r) and r.touched for r in look.world.state.rounds.values()):
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


def _rinsed(look: Look) -> bool:
    return any(is_open(r) and "rinse" in r.done for r in look.world.state.rounds.values())


_GOT_IN = Pattern(
    r"\b(?:went|got|dripped|ran|splashed|leaked) (?:in|into|on|onto)\b(?! (?:my|his|her|the floor|me|him))"
)
