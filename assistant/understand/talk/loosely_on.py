"""What fits no question by itself, right after an answer: the same question once more, with what is named now.

"How about the pink, same thing?", "tomorrow as well?", "and if it said in?"; and after a refusal "just a drop, really
watered down", which gets the same answer. The last resort before "I don't know that one", and only where asking again
records nothing.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Literal

from assistant.contract import Doubt, Outcome, Reading
from assistant.core.quantities.amounts import SaidRatio
from assistant.understand.look import ENOUGH, Look
from assistant.understand.matching.learning import OUTSIDE
from assistant.understand.talk import follow_up
from assistant.understand.talk.follow_up import Answering
from assistant.understand.talk.takes import given_to
from assistant.understand.text.asking import asks
from assistant.understand.text.patterns import Pattern

_LONGEST = 12
"""Words of a turn that only goes on."""
_FEW = 8
_OUTSIDE_FOR_SURE = 0.97
_A_QUESTION = 0.9
"""Chance from which on a turn is a question of its own, however it opens."""
_GOES_ON = Pattern(
    r"^(?:(?:sorry|no|oh|ok|well|so|but|hm|right|ah) ,? ?)*(?:and|or|by|what (?:about|if)|how about|same|the same|also"
    r"|then|with|for|at|if|in|say|make (?:it|that)|now|only|just|even|instead|this time|it is|i meant|i mean)\b"
    r"|\b(?:too|as well|instead|then|same (?:thing|again|question)|this time|maybe|either)(?: ?[?.!])*$"
    r"|^(?:sorry|no|oops|whoops|wait) ?,"
)
_PLEADS = Pattern(
    r"^(?:(?:oh|but|and|well|come on|please|go on|surely|ok) ,? ?)*(?:even|not even|only|just|what if|if|surely|maybe"
    r"|please|come on|all in one|outside|outdoors|a (?:tiny|little|small) (?:bit|drop))\b"
)
_A_LITTLE = 0.05
"""Chance of the question just answered from which on it is taken once more, where the turn is no other question: of
796 follow-ups all 29 that were left unknown and reach it are right, and of 906 lines outside, put after any answer, 2
do (tests/bench/README.md)."""
_LIKELY = 0.25
_QUITE_LIKELY = 0.4
_SAME_FOR_ALL = frozenset({"together", "protect", "store_it", "pour_away", "treat_item", "unknown_bottle", "air_time"})
_HAS_AN_END = frozenset({"still_good", "in_bottle", "quarantine", "time_left"})
_TILL_WHEN = Pattern(
    r"(?:and |so |ok |good )*(?:until|till|til|up to|by) (?:when|what time|what day|which day)"
    r"(?: then| is that| exactly)?"
)
_TOO = Pattern(
    r"(?:and |so |ok |i |have |just )*(?:did |done |rinsed )?(?:the |my )?BOTTLE(?: one)?(?: (?:too|as well|also)"
    r"| ?,? (?:i )?(?:have )?(?:done|did|rinsed) (?:that|it|that one)(?: (?:the same|too|as well|also))*)",
    "BOTTLE",
)
_AND_WITH = Pattern(
    r"(?:(?:and|then|also|i) )*(?:did |filled )?(?:the |my )?BOTTLE(?: one)? (?:too"
    r"|as well) ?,? (?:with )?(?:the |some )?"
    r"(?:AGENT|STOCK)(?: ?,? (?:at |in )*MIX)?"
    r"|(?:and |then |also )+(?:the |my )?BOTTLE(?: one)? (?:with|is|has|got) (?:the |some )?(?:AGENT"
    r"|STOCK)(?: ?,? (?:at |in )*MIX)?",
    "BOTTLE",
)
""" "And the pink one with chlorhexidine", right after a fill was told: likely another one, and asked about."""
_THE_WORD = Pattern(r"\b(?:said|says|say|was|meant|means|read|reads) (?:\W )?(in|to)\b")
_THE_OTHER = Pattern(r"\b(?:the )?other (?:reading|way(?: (?:round|around|about))?)\b", "other")
_HOLDS = frozenset({"wound", "together", "share_tool", "return_check", "pour_away"})
"""Questions whose answer doesn't change for being pleaded with, where it is a refusal..."""
_REFUSED = frozenset({"never", "rinse_between", "disinfect_first"})
_NEW = Pattern(
    r"\b(?:wet|damp|moist|dirt\w*|smell\w*|whiff|fumes|miss\w*|forgot\w*|skipp\w*|rins\w+|wip\w+|wash\w*|spray\w*|used"
    r"|lid|floor|corner|part|both|together|not|[A-Z]{3,})\b"
)
"""...and nothing new is named or told by it: "just the lid's wet" is no plea."""


def pleads(look: Look) -> bool:
    """ "Just a drop, really watered down", after a refusal: no question of its own, whatever it is a little like."""
    before = _just_answered(look)
    few = len(look.parsed.words) <= _FEW and (look.top == OUTSIDE or look.chances[look.top] < _A_QUESTION)
    told = bool(look.claims.mentioned) and not look.parsed.plain.endswith("?")  # "only rinsed half"
    pleading = few and not told and _PLEADS.match(look.parsed.plain) is not None
    new = _NEW.search(look.parsed.plain) is not None or look.parsed.when is not None
    return before is not None and before.intent in _HOLDS and pleading and not new and _was_refused(look)


def _was_refused(look: Look) -> bool:
    last = look.world.talk.last
    if last is None:
        return False
    no = last.values.get("ready") is False or last.values.get("verdict") in _REFUSED
    return no or last.outcome is Outcome.REFUSE or last.intent == "pour_away"


def goes_on_loosely(look: Look) -> Reading | None:
    """The question before with what is named now, or the same again; None: this goes on from nothing."""
    before = _just_answered(look)
    if before is None or before.intent is None or look.claims.done or len(look.parsed.words) > _LONGEST:
        return None
    if pleads(look) or _asks_till_when(look, before) or _is_a_little_the_same(look, before):
        return look.once_more(before)
    slots = look.slots(before.intent)
    given = given_to(look.world.questions[before.intent], slots)
    if not given and _is_quite_the_same(look, before):
        return look.once_more(before)
    if look.claims.mentioned or look.chances[OUTSIDE] >= _OUTSIDE_FOR_SURE or not _GOES_ON.search(look.parsed.plain):
        return None
    word = _other_word(look) if before.intent in ("read_ratio", "dose") else None
    if word is not None and before.slots.mixes:
        mixes = tuple(replace(m, word=word) if isinstance(m, SaidRatio) else m for m in before.slots.mixes)
        return replace(before, question=look.parsed.text, slots=replace(before.slots, mixes=mixes), spoken=look.spoken)
    if not given and _is_likely_the_same(look, before):
        return look.once_more(before)
    if not given or (before.intent == "still_good" and "when" in given):
        return None  # what keeps until tomorrow needn't keep until Sunday
    return follow_up.corrected(Answering(look.parsed, slots, look.spoken), before, look.world)


def _is_quite_the_same(look: Look, before: Reading) -> bool:
    """ "Could I just sniff at it", right after a bottle that nobody knows: it, however the turn opens."""
    few = len(look.parsed.words) <= _FEW and not look.claims.mentioned and look.top == before.intent
    return few and before.intent in _SAME_FOR_ALL and look.chances[look.top] >= _QUITE_LIKELY


def _is_a_little_the_same(look: Look, before: Reading) -> bool:
    """ "How far out could that be", after which syringe: hardly like any question, and like none more than like it.

    Whatever has a name or a number in it changes the answer, and is looked at further on.
    """
    last = look.world.talk.last
    if last is not None and last.values.get("ready") is True:
        return False  # it is never vouched for once more
    names_nothing = not (look.parsed.mentions or look.parsed.amounts.found or look.claims.mentioned)
    return names_nothing and look.chances[before.intent or ""] >= _A_LITTLE


def _asks_till_when(look: Look, before: Reading) -> bool:
    return before.intent in _HAS_AN_END and _TILL_WHEN.fullmatch(look.parsed.plain.strip(" .?!")) is not None


def _is_likely_the_same(look: Look, before: Reading) -> bool:
    """Likelier that than any other question, by its words; of questions whose answer no number in them would change."""
    rest = [chance for label, chance in look.chances.items() if label not in (before.intent, OUTSIDE, "repeat")]
    chance = look.chances[before.intent or ""]
    return before.intent in _SAME_FOR_ALL and chance >= _LIKELY and chance >= max(rest)


def told_too(look: Look) -> Reading | None:
    """ "And also new water for the sick one", right after a chore was logged: likely that again, and asked about.

    "The green one too", right after a bottle was rinsed out, is that in so many words.
    """
    before = look.world.talk.just_answered
    last = look.world.talk.last
    rinsed = before is not None and before.intent == "rinsed_out" and last is not None and last.values.get("recorded")
    if rinsed and _TOO.fullmatch(look.parsed.plain.strip(" .!")):
        return look.reading("rinsed_out", look.slots("rinsed_out"), ENOUGH)
    filled = before is not None and before.intent == "mixed" and last is not None and last.values.get("recorded")
    if filled and _AND_WITH.fullmatch(look.parsed.plain.strip(" .!")):
        return replace(look.reading("mixed", look.slots("mixed"), ENOUGH), doubts=(Doubt("meaning", "mixed"),))
    if before is None or before.intent != "log_clean" or look.top != "log_clean" or look.chances[look.top] < _LIKELY:
        return None
    if _GOES_ON.search(look.parsed.plain) is None or asks(look.parsed.plain):
        return None
    return replace(look.reading("log_clean", look.slots("log_clean"), ENOUGH), doubts=(Doubt("meaning", "log_clean"),))


def _other_word(look: Look) -> Literal["in", "to"] | None:
    """How a ratio is now to be read: "and if it said in", "and by the other reading"."""
    said, last = _THE_WORD.search(look.parsed.plain), look.world.talk.last
    if said is not None:
        return "in" if said[1] == "in" else "to"
    if _THE_OTHER.search(look.parsed.plain) is None or last is None:
        return None
    return "to" if last.values.get("reading") == "in" else "in"


_FIELDS = (
    {"dose", "measure_with", "mix_strength", "in_bottle", "still_good", "top_up", "stock_left", "read_ratio", "make_up"}
    | {"mixed", "rinsed_out", "bleach_now", "store_it", "pour_away", "unknown_bottle"},
    {"choose_agent", "works_on", "surface", "hold_time", "together", "protect", "bleach_now", "stock_left", "dose"},
    {"start", "done", "status", "next", "time_left", "hold_time", "air_time", "dry_time", "return_check", "leave_off"}
    | {"day_end", "surface", "make_up", "protect", "tub"},
    {
        "due",
        "order",
        "last_done",
        "log_clean",
        "quarantine",
        "outbreak",
        "share_tool",
        "choose_agent",
        "works_on",
        "tub",
    },
    {"spill", "escape", "unknown_bottle", "pour_away", "store_it", "together", "protect", "air_time"},
)
"""Questions that are asked one after another: of mixes, products, a clean, the plan of the days, what went wrong."""
_LIKELY_HERE = 0.35


def likely_in_its_field(look: Look) -> str | None:
    """ "Isn't there some in there already", after a dose: the likeliest question, of the field just spoken of.

    Only one that records nothing, and less likely than a turn that stands by itself has to be; None: there is none.
    """
    last = look.world.talk.last
    inside = [label for label in look.chances if label not in (OUTSIDE, "yes", "no")]
    top = max(inside, key=lambda label: look.chances[label])
    if last is None or last.intent is None or look.claims.mentioned or len(look.parsed.words) > _LONGEST:
        return None
    one_field = any({top, last.intent} <= field for field in _FIELDS)
    only_asks = follow_up.may_be_asked_again(top, look.world)
    vouches = top == "return_check"  # that is never asked by half a likeness
    return top if one_field and only_asks and not vouches and look.chances[top] >= _LIKELY_HERE else None


def _just_answered(look: Look) -> Reading | None:
    """The reading before, where it was answered last and asking it again records nothing."""
    before = look.world.talk.just_answered
    if before is None or before.slots.met:
        return None
    again = before.intent == "wound" or follow_up.may_be_asked_again(before.intent, look.world)
    return before if again else None
