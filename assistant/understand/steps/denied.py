"""A step on record that is said never to have been done: "actually I never rinsed", "I skipped the washing"."""

from __future__ import annotations

import re
from dataclasses import replace

from assistant.contract import Slots
from assistant.core.round.rounds import is_open
from assistant.understand.look import Look
from assistant.understand.steps.claimed_steps import Claims, claims_in
from assistant.understand.steps.wet_answered import is_a_hedge
from assistant.understand.text.asking import asks
from assistant.understand.text.parts_of_it import FILLING, FITTING, PART, WHICH
from assistant.understand.text.patterns import Pattern

_AHEAD = Pattern(
    r"\b(?:about to|going to|gonna|will|later|soon|next|should|shall|again|if|before(?! ?$)|until|till|sure|know"
    r"|(?<!do not )(?<!come to )think|remember|tell|why|when|what|how|who)\b"
    r"|^(?:(?:did|do(?! not (?:think|believe|reckon))|does|has(?! not been)|can)\b"
    r"|have\b(?! not (?!(?:i|we|you|they)\b)))"
)
"""To come, in doubt, or asked: nothing that contradicts the record."""
_DENIES = Pattern(
    r"\b(?:not|never|no|none|nothing|neither|nor|without|skip(?:ped)?|forgot(?:ten)?|missed|left out|only|half|un\w+"
    r"|doubt|almost|nearly|mostly|hardly|barely|apart from|except|but for|needs?|could do with)\b"
)
_SOAP = Pattern(r"\b(?:soap|soapy|suds|detergent)\b")
_ONLY_PARTLY = Pattern(r"\bonly (?:\w+ ){0,2}(?:half|NUMBER)(?: of (?:it|them|that))?(?: so far| yet)?$")


def contradicts_the_record(look: Look, slots: Slots) -> Slots | None:
    """The step and the enclosures whose record may be what is said to be wrong; None: nothing contradicts it.

    slots: what else is named.
    """
    return _contradicted(look.parsed.plain, look.claims, slots, look)


def denied_beside(look: Look, slots: Slots) -> Slots | None:
    """The same, of what is told before it is asked whether the animal may go back: "it's almost dry, can she"."""
    told = (
        part.strip(" ?.!") for part in re.split(r"[,.;]| (?:so|but|and) (?=can|may|could|is|should)", look.parsed.plain)
    )
    parts = (part for part in told if part and not asks(part))
    return next((found for part in parts if (found := _contradicted(part, claims_in(part), slots, look))), None)


def _contradicted(plain: str, claims: Claims, slots: Slots, look: Look) -> Slots | None:
    if claims.polarity != "not yet" or not claims.mentioned or plain.endswith("?") or _AHEAD.search(plain):
        return None
    if not _DENIES.search(plain):
        return None  # "I had to spray it twice" denies nothing
    step = claims.mentioned[0]
    if step == "rinse" and _SOAP.search(plain):
        step = "wash"  # the soap is rinsed off as a part of it
    return _taken_back(step, slots, look)


_LIED = Pattern(
    r"\b(?:lied|fibbed|cheated|made it up|was not true)\b(?: (?:about|on|with))? (?:the |that |my )?(?:rinse|rinsing"
    r"|washing"
    r"|wash|drying|clearing|airing)\b",
    *("lied", "fibbed", "cheated", "made it", "true"),
)
""" "I lied about the rinsing"."""
_STEP_NAMED = {
    **{"rins": "rinse", "wip": "rinse", "wash": "wash", "dry": "dry", "dri": "dry", "clear": "clear", "air": "air"},
    **{"spray": "apply", "mist": "apply"},
}
"""Each step by how a word for it begins."""


def lied_about(look: Look) -> Slots | None:
    """The step that is said never to have been done, in those words; None: none is on record."""
    found = _LIED.search(look.parsed.plain)
    if found is None:
        return None
    step = next(step for stem, step in _STEP_NAMED.items() if stem in found.group())
    return _taken_back(step, look.slots("status"), look)


_IN_ANOTHER_HOME = Pattern(
    r"(?:(?:no|oh|oops|sorry|wait|actually|hang on|argh) ,? ?)*(?:(?:it|that) was (?:in |on )?(?:the |my )?"
    r"(?:ENCLOSURE|ANIMAL)(?: 's)?(?: \w+)? (?:that |which )?i (?:just |actually )?(?P<there>\w+)"
    r"|i (?:just |have |have just )?(?P<wrong>rinsed|dried|washed|cleared|wiped) the wrong (?:one|tank|box|cage"
    r"|tub|viv\w*"
    r"|enclosure|ENCLOSURE))(?: just now| by mistake)?",
    "was",
    "wrong",
)


def done_in_another_home(look: Look) -> Slots | None:
    """ "That was the hospital tub I rinsed", "I rinsed the wrong one": a step on record that was of another enclosure.

    None: no such thing, or the one that is named has it on record itself.
    """
    found = _IN_ANOTHER_HOME.fullmatch(look.parsed.plain.strip(" .!,"))
    said = (found["there"] or found["wrong"]) if found is not None else ""
    step = next((step for stem, step in _STEP_NAMED.items() if said.startswith(stem)), None)
    if step is None:
        return None
    named = look.slots("status").enclosures
    if any(
        is_open(one) and step in one.done for name in named if (one := look.world.state.rounds.get(name)) is not None
    ):
        return None
    return _taken_back(step, replace(look.slots("status"), enclosures=()), look)


def _taken_back(step: str, slots: Slots, look: Look) -> Slots | None:
    """The slots with the open cleans, of those named, that have the step on record; None: none has."""
    rounds = [round_ for round_ in look.world.state.rounds.values() if is_open(round_) and step in round_.done]
    names = tuple(r.enclosure for r in rounds if not slots.enclosures or r.enclosure in slots.enclosures)
    return replace(slots, enclosures=names, steps=(step,), corrects=True) if names else None


def meant_ahead(look: Look) -> Slots | None:
    """ "No, I meant I will rinse it", right after it was recorded as done; None: nothing of the kind."""
    last, before = look.world.talk.last, look.world.talk.last_reading
    if last is None or before is None or last.intent != "done" or last.values.get("recorded") is not True:
        return None
    found = _MEANT_AHEAD.match(look.parsed.plain)
    if found is None or not set(look.claims.mentioned) & set(before.slots.steps):
        return None
    step = next(step for step in look.claims.mentioned if step in before.slots.steps)
    return replace(look.slots("undo"), enclosures=tuple(last.values["enclosures"])[:1], steps=(step,), corrects=True)


_MEANT_AHEAD = Pattern(
    r"(?:(?:no|nope|wait|sorry|oh|not yet|hang on|hold on|actually) ,? ?)+(?:(?:i (?:meant|mean|said)|that"
    r"|it is) ?,? ?)*"
    r"i (?:will|am (?:going|about) to|have (?:still )?(?:to|got to)|still (?:have|need) to|need to|must|should)\b"
)


def but_for_a_part(look: Look) -> Slots | None:
    """ "Not the lid", right after a step was recorded: it isn't done all over; nor is it after "well, nearly".

    None: nothing of the kind.
    """
    last, before = look.world.talk.last, look.world.talk.last_reading
    if last is None or before is None or last.intent != "done" or last.values.get("recorded") is not True:
        return None
    steps = [step for step in before.slots.steps if step in ("wash", "apply", "rinse", "dry")]
    homes = tuple(last.values.get("enclosures") or ())
    plain = look.parsed.plain.strip(" .!")
    of_a_part = _BUT_FOR.fullmatch(plain) is not None or _NOT_THAT_PART.fullmatch(plain) is not None
    if not steps or len(homes) != 1 or not (of_a_part or is_a_hedge(plain)):
        return None
    return replace(look.slots("undo"), enclosures=homes, steps=(steps[-1],), corrects=True)


_BUT_FOR = Pattern(
    r"(?:(?:well|oh|but|sorry|wait|no|all) ,? ?)*(?:not|except|except for|apart from|all but|but not"
    r"|but for)(?: the| its| his"
    r"| her)? (?:\w+ )?(?:lid|floor|base|bottom|top|sides?|back|front|doors?|glass|walls?|corners?|ends?|hide|roof"
    r"|mesh|shelf)"
    r"(?: yet| though)?"
)


_NOT_THAT_PART = Pattern(
    rf"(?:(?:well|oh|but|sorry|wait|no|and|,) ?)*(?:the |its |his |her )?{WHICH}(?:{PART}|{FITTING}|{FILLING})"
    r" (?:is|are|was|were|has|have|did) not(?: (?:yet|though|quite|dry|done|been))*"
    rf"|(?:(?:well|oh|but|,) ?)*(?:not|except|except for|apart from|bar|but for|save)(?: (?:the|its|a|few|couple|of"
    rf"|some|one|his|her))* {WHICH}(?:{PART}|{FITTING}|{FILLING}|drops?|drips?|spots?|patch(?:es)?|bits?)"
    r"(?: yet| though)?"
)
""" "The hide isn't", "bar a few drops", right after a step."""


def only_partly(plain: str) -> bool:
    """ "I only rinsed half": no step that is done."""
    return _ONLY_PARTLY.search(plain) is not None
