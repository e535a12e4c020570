"""What is told in mid-clean and fits no question, but may matter: it is kept, and asked about before "ready"."""

from __future__ import annotations

from assistant.core.round.rounds import a_hold_runs, is_open
from assistant.understand.look import Look
from assistant.understand.steps.told import of_another_thing
from assistant.understand.text.patterns import Pattern

_MATTERS = Pattern(
    r"\b(?:wet|damp|moist|soggy|soak\w*|puddl\w*|drip\w*|pool\w*|leak\w*|flood\w*|rain|came in|only (?:put|used"
    r"|did|had)|smell\w*|smelt|stink\w*|reek\w*|whiff"
    r"|fumes?|poo\w*|pee\w*|wee|urates?|turds?|dirt\w*|muck\w*|mou?ld\w*|slim\w*|stain\w*|film|residue|streak\w*"
    r"|smear\w*"
    r"|mess|mites?|missed|skipped|forgot|left|not (?:done|rinsed|washed|sprayed|wiped|dry|clean)|never|rins\w+"
    r"|spray\w*|wash\w*"
    r"|wip\w+|bleach\w*|product|AGENT|STOCK|BOTTLE|OTHER|soap\w*|suds|damaged|cracked|still in|is in there"
    r"|are in there)\b"
)
_ASKS = Pattern(
    r"^(?:(?:so|and|but|ok|right|now|um|oh|hey|wait|please) ,? ?)*(?:what|how|why|when|where|which|who|can|could"
    r"|may|should|shall|is|are"
    r"|was|were|do|does|did|will|would|has|have i|remind|tell|give|show|say|set|turn|play|stop|open|call)\b|\?$"
)
_OF_THE_KEEPER = Pattern(
    r"\b(?:i|he|she|we) (?:have )?(?:slipped|fell|tripped|stepped)\b|\bno (?:smells?|fumes?|whiff)\b|\b(?:sick"
    r"|tired|fed up) of\b"
    r"|\b(?:my|his|her) (?:hands?|gloves?|sleeves?|top|shirt|back|knees?|feet|shoes?|socks?|hair)\b"
)
_OF_OTHER_THINGS = Pattern(
    r"\b(?:towels?|buckets?|sponges?|shelf|shelves|cupboard|carpet|cloths?|rags?|mop|tap|sink|phone|call|lunch"
    r"|dinner|breakfast|tea|coffee|bus"
    r"|kettle|telly|news|post|car|garden|bath|hides?|bowls?|last of the (?:AGENT|STOCK))\b"
    r"|\b(?:BOTTLE|bottle|STOCK|AGENT)(?: is| 's)? (?:nearly |almost |all )?(?:empty|gone|low|strong|back|away"
    r"|finished)\b"
)
_INTO_IT = Pattern(r"\b(?:in there|in it|inside|on it|back in|put (?:\w+ ){1,4}(?:back|in))\b")
""" "Put the hide back in wet": what was beside it is inside by now."""
_ONLY_WET = Pattern(r"\b(?:wet|dripping|soak\w*|shiny|glistening)\b")
_FEWEST, _MOST = 2, 20


def is_remark(look: Look) -> bool:
    """Whether a text that wasn't understood tells something of a surface that a product is or was on.

    Only while a clean is open whose surface was sprayed: before that, every step is still to come.
    """
    if not any(is_open(r) and r.touched for r in look.world.state.rounds.values()):
        return False
    plain = look.parsed.plain.strip(" .!,")
    beside = _OF_OTHER_THINGS.search(plain) is not None and _INTO_IT.search(plain) is None
    if _OF_THE_KEEPER.search(plain) or beside or of_another_thing(plain):
        return False
    if _ONLY_WET.search(plain) and a_hold_runs(look.world.state.rounds.values(), look.world.now):
        return False  # wet is what it should be
    told = _ASKS.search(plain) is None and _FEWEST <= len(look.parsed.words) <= _MOST
    return told and _MATTERS.search(plain) is not None
