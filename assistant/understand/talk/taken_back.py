"""What was just recorded, said at once not to be so: "no it isn't", "hang on, I haven't", "not really".

The step is not named; it is the one that the reply told of. Whatever is taken back only puts "ready" further off.
"""

from __future__ import annotations

from assistant.contract import Slots
from assistant.understand.look import Look
from assistant.understand.text.patterns import Pattern

_CLAIMED = frozenset({"done", "mixed", "rinsed_out", "log_clean"})
_OPENS = r"(?:(?:no|nope|nah|not|wait|actually|hang on|hold on|sorry|oh|oops|whoops|well|um|er|but|hm|ah) ,? ?)*"
_NOT_SO = Pattern(
    _OPENS + r"(?:(?:it|that|this|they|he|she|i|we|you|everything|all of it) (?:is|are|am|was|were|has|have|had|did"
    r"|does|do) not(?: (?:been|done|do|yet|actually|really|all|at|quite|completely|true|right|correct|so|finished"
    r"|though|no|it|that|any|of|say|said|mean|meant|now))*"
    r"|(?:(?:that|it|this) (?:is|was) )(?:wrong|untrue|a lie|not (?:right|true|correct|so|it))"
    r"|not (?:really|actually|quite|at all|true|so)(?: no| yet)?)(?: sorry| no| actually| after all)*"
)
_ONLY_ITS_OUTSIDE = Pattern(
    _OPENS + r"(?:i )?(?:only|just|not)? ?(?:rinsed |washed |did )?(?:only |just )?(?:the |its )?(?:\w+ )?(?:outside"
    r"|cap|lid|top|nozzle|trigger|label|neck|head|tube)(?: of (?:it|the bottle|BOTTLE))?(?: only| though| so far| yet)*"
)
""" "No, only the cap", right after a bottle was rinsed out."""


def taken_back(look: Look) -> bool:
    """Whether what the turn before recorded is denied, in words that name nothing else."""
    if _not_after_all(look):
        return True
    talk, waiting = look.world.talk, look.world.waiting
    last = talk.last
    if last is None or last.intent not in _CLAIMED or last.values.get("recorded") is not True:
        return False
    asked_of_another = waiting is not None and not (waiting.unasked and waiting.turns_since)
    if asked_of_another or talk.prompt is not None or look.parsed.plain.endswith("?"):
        return False
    plain = look.parsed.plain.strip(" .!,")
    if last.intent == "rinsed_out" and _ONLY_ITS_OUTSIDE.fullmatch(plain) is not None:
        return True
    return _NOT_SO.fullmatch(plain) is not None


_A_BIT = r"(?:a |an |the |just |still |quite |tiny |very |faint |slight )*(?:bit|little|whiff|hint|trace|touch|tad)"
_THERE_IS = (
    rf"(?:there|it) (?:is|does|might be|may be|could be)(?: (?:still|maybe|actually|a|one|some|something|{_A_BIT}))*"
    rf"|maybe {_A_BIT}|i (?:can|do)(?: still| actually| just)*|i think (?:so|there is|it does|i can)"
)
_SMELLS_AFTER_ALL = Pattern(
    rf"(?:{_OPENS}|hmm+ ,? ?|or ,? ?)(?:(?:yes|yeah|yep|maybe|{_THERE_IS}|{_A_BIT}) ?,? ?)+"
    r"(?:(?:actually|after all|now|there|of it|left|though|sorry|still|in there|in the corner) ?)*"
)
_THERE_IS_A_BIT = Pattern(
    rf"(?:{_OPENS}|hmm+ ,? ?)(?:yes ,? ?)?there is(?: still| maybe| just)* {_A_BIT}(?: \w+){{0,2}}"
)


def smells_after_all(look: Look) -> Slots | None:
    """ "Actually yes", "wait, there is a bit", right after the smell was told to be gone; None: nothing of the kind."""
    talk, waiting = look.world.talk, look.world.waiting
    last = talk.last
    if last is None or talk.prompt is not None or look.parsed.plain.endswith("?"):
        return None
    if waiting is not None and not waiting.unasked:
        return None
    plain = look.parsed.plain.strip(" .!,")
    homes = tuple(last.values.get("enclosures") or filter(None, (last.values.get("enclosure"),)))
    told_gone = (
        last.intent == "still_smells" and last.values.get("recorded") is True and last.values.get("smell") is False
    )
    if told_gone and plain not in _AGREES and _SMELLS_AFTER_ALL.fullmatch(plain) is not None:
        return Slots(enclosures=homes, smell=True)
    if last.intent == "return_check" and _THERE_IS_A_BIT.fullmatch(plain) is not None:
        return Slots(enclosures=homes, smell=True)
    return None


_AGREES = frozenset({"yes", "yeah", "yep", "ok yes"})
"""Alone they may well mean that it is gone."""
_NOT_AFTER_ALL = Pattern(
    r"(?:(?:no|oh|sorry|oops|wait|actually|well) ,? ?)+(?:(?:it is |that is )?(?:fine|ok|all right|wrong) ,? ?)?"
    r"(?:it (?:did not|has not|is not)(?: dry| dried)?(?: out)?|(?:i (?:mean|meant) )?(?:my|her|his) (?:\w+ )?"
    r"(?:hands?|gloves?|hair|sleeves?|shirt|feet|top))$"
)
_ABOUT_HANDS = Pattern(r"\b(?:my|her|his) ")


def _not_after_all(look: Look) -> bool:
    """ "No it's fine, it didn't", "no I mean my hands": what the turn before recorded as dry never was."""
    last, before = look.world.talk.last, look.world.talk.last_reading
    if last is None or before is None or last.values.get("recorded") is not True:
        return False
    plain = look.parsed.plain.strip(" .!").replace(" ,", ",").replace(",", " ,")
    if _NOT_AFTER_ALL.match(plain) is None:
        return False
    dried = last.intent == "dried_early" or before.slots.stayed_wet is False
    return dried or (bool({"dry", "rinse", "wash"} & set(before.slots.steps)) and bool(_ABOUT_HANDS.search(plain)))
