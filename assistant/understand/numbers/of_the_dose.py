"""What is asked of the dose just told: "and how much water?", "how strong is that?", "how far off could it be?"

All of it stands in that answer; nothing is asked anew but what the words change.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from assistant.contract import Outcome, Reading, Slots
from assistant.core.quantities.amounts import Amount
from assistant.understand.look import Look
from assistant.understand.numbers.checked_back import by_the_label, checked_back
from assistant.understand.numbers.corrections import LEAST_PARTS, kinds_said, with_number
from assistant.understand.numbers.poured import share_wanted
from assistant.understand.text.patterns import Pattern

_SO = r"(?:(?:and|so|ok|but|then|right|um) ,? ?)*"
_CONCENTRATE = Pattern(
    rf"{_SO}how much (?:of the )?(?:concentrate|product|stuff)"
    r"(?: is (?:that|it)| do i (?:need|put in|use|add)| goes in| again| then| was (?:that|it))*"
)
_WATER = Pattern(
    rf"{_SO}(?:(?:how much|what about(?: the)?|the) (?:of the )?water"
    r"(?: is (?:that|it)| do i (?:need|put in|use|add)| goes(?: in)?| is| 's| that| it| to| with| again| then"
    r"| on top)*|how much of "
    r"(?:it|that) is water)"
)
_HOW_STRONG = Pattern(
    rf"{_SO}how strong (?:is|will|would|does) (?:that|it|this|the mix)(?: be| come out| make it)?"
    rf"|{_SO}how strong does that (?:make it|come out)|{_SO}what (?:strength|percent|percentage) is (?:that|it)"
)
_HOW_EXACT = Pattern(
    rf"{_SO}how (?:far off|exact|accurate|precise|wrong|close)\b"
    r"(?: (?:could|can|may|might|would|will|is|be|it|that|i|the dose|get|come))*|(?:and )?what is the error"
)
_WHICH_TOOL = Pattern(
    rf"{_SO}(?:and )?(?:which|what)(?: one)?(?: of (?:my|the|these|those))? (?:syringes?|tools?|spoons?|jugs?"
    rf"|measures?|one)"
    r"(?: (?:is|do|would|should|shall|i|it|that|this|be|use|best|right|for|with|measures?|take|want|the))*"
)
""" "Which of my syringes is right for that"."""
_HOW_MUCH = Pattern(rf"{_SO}how much(?: (?:do i (?:need|put in|use)|is that|of what|then|goes in))?")
_A_PART_OF_IT = Pattern(
    rf"{_SO}(?:what about |how about |only |just )*(?:NUMBER|half)(?: of (?:it|that|the bottle|that one))?"
)
_GOOD_FOR = Pattern(
    rf"{_SO}(?:is |will )?(?:it|that|this)(?: is| 's| be|'ll be| will be)?(?: then| now)? good (?:for|until|till)\b.*"
    rf"|{_SO}(?:does|will) (?:it|that) (?:keep|last)\b.*"
    rf"|{_SO}how long (?:is|does|will) (?:it|that) (?:good|keep|last|be good)\b.*"
)
_OF_A_DOSE = frozenset({"dose", "top_up"})


def of_the_dose(look: Look) -> Reading | None:
    """The reading of what is asked on, right after a dose, a fill or a bottle was told; None: nothing of the kind."""
    last, before = look.world.talk.last, look.world.talk.last_reading
    if last is None or before is None or last.intent != before.intent or last.outcome is not Outcome.ANSWER:
        return None
    plain = look.parsed.plain.strip(" .!?,")
    if before.intent == "measure_with" and _HOW_EXACT.fullmatch(plain):
        return _again(look, before, before.slots)
    bottles = before.slots.bottles
    if before.intent in ("mixed", "top_up") and len(bottles) == 1 and _GOOD_FOR.fullmatch(plain):
        return look.reading("still_good", Slots(bottles=bottles), 0.9)
    if before.intent in ("in_bottle", "rinsed_out") and len(bottles) == 1 and _HOW_MUCH.fullmatch(plain):
        return look.reading("dose", Slots(bottles=bottles), 0.9)
    return _on_from(look, before, plain) if before.intent in _OF_A_DOSE else None


def _on_from(look: Look, before: Reading, plain: str) -> Reading | None:
    slots = before.slots
    if _CONCENTRATE.fullmatch(plain):
        return _again(look, before, slots)
    if _WATER.fullmatch(plain):
        return _again(look, before, replace(slots, setting=("told", "water")))
    if _HOW_EXACT.fullmatch(plain) or _WHICH_TOOL.fullmatch(plain):
        return look.reading("measure_with", Slots(measures=slots.measures), 0.9)
    if before.intent == "dose" and _HOW_STRONG.fullmatch(plain):
        kept = Slots(bottles=slots.bottles, stocks=slots.stocks, agents=slots.agents, mixes=slots.mixes)
        return look.reading("mix_strength", replace(kept, stock_strength=slots.stock_strength), 0.9)
    share = _share(look, before, plain)
    if share is not None:
        return _again(look, before, replace(slots, share_wanted=share, volumes=(), roles=(), numbers=()))
    found = by_the_label(look, before, plain) or checked_back(look, before, plain) or _number_again(look, before, plain)
    if found is not None:
        return _again(look, before, found)
    volume = _volume_again(look, before, plain)
    return _again(look, before, replace(slots, volumes=(volume,), numbers=())) if volume is not None else None


def _again(look: Look, before: Reading, slots: Slots) -> Reading:
    return replace(before, question=look.parsed.text, slots=slots, doubts=(), spoken=look.spoken)


def _share(look: Look, before: Reading, plain: str) -> Fraction | None:
    """ "If I only fill it halfway", and "a quarter of it" after a part of a bottle: so much of that bottle."""
    if before.intent != "dose" or len(before.slots.bottles) != 1 or look.parsed.mentions:
        return None
    if _FILLS_IT.search(plain) is not None:
        return share_wanted(look.parsed)
    if before.slots.share_wanted is None or _A_PART_OF_IT.fullmatch(plain) is None:
        return None
    parts = [one.value for one in look.parsed.amounts.found if isinstance(one.value, Fraction) and 0 < one.value < 1]
    return parts[0] if len(parts) == 1 else Fraction(1, 2) if "half" in plain.split() else None


_FILLS_IT = Pattern(r"\b(?:fill|filled|filling|make|do)\b")


def _volume_again(look: Look, before: Reading, plain: str) -> Amount | None:
    """ "Two and a half", after a dose for so many litres: a number that is far from its mix and near to its volume."""
    found = look.parsed.amounts.found
    if before.intent != "dose" or len(before.slots.volumes) != 1 or len(found) != 1 or before.slots.bottles:
        return None
    number, volume = found[0].value, before.slots.volumes[0]
    if _NUMBER_ALONE.fullmatch(plain) is None or not isinstance(number, Fraction):
        return None
    return replace(volume, amount=number) if is_small(number) and is_small(volume.amount) else None


def _number_again(look: Look, before: Reading, plain: str) -> Slots | None:
    """ "Fifty", right after a dose at one in fifteen: of the kind that was said last, where that is one alone."""
    found = look.parsed.amounts.found
    number = found[0].value if len(found) == 1 and not before.doubts else None
    if before.intent != "dose" or not isinstance(number, Fraction) or number < 1:
        return None
    kinds = kinds_said(before.question) if _NUMBER_ALONE.fullmatch(plain) is not None else set()
    return with_number(before, number) if kinds in ({"mix"}, {"volume"}) else None


_NUMBER_ALONE = Pattern(rf"{_SO}(?:(?:what about|how about|for|or|make it|make that) )*NUMBER(?: then)?")


def is_small(number: Fraction) -> bool:
    """A number that no mix for a surface has for its parts, so that beside one it can only be a volume's."""
    return number < LEAST_PARTS
