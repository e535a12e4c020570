"""Fills as they are told: "filled the amber one", "topped it up", "rinsed it out and filled it with vinegar".

A fill that is asked about, not done yet or denied is none: what a bottle holds decides what may be sprayed.
"""

from __future__ import annotations

import re
from dataclasses import replace

from assistant.contract import Doubt, Outcome, Pending, Reading, Slots, World
from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.quantity import read_mix
from assistant.core.round.rounds import is_open
from assistant.core.shelf.bottles import ONLY_EMPTIED
from assistant.understand.bottles.emptied import rinsed_in_part
from assistant.understand.steps.claimed_steps import not_yet
from assistant.understand.text.asking import BEGINS_AS_ASKED
from assistant.understand.text.known_words import words_of
from assistant.understand.text.patterns import Pattern

_BARE = Pattern(
    r"^(?:(?:ok|right|done|all|it is|that is it|that is|that 's|it 's|got it|and|now|i|have|just|yes|so|well|great"
    r"|there) ?,? ?)*"
    r"(?:filled|mixed|made up|topped up|topped(?= it| that)|refilled|poured|poured in|made|mixed up|filled up)"
    r"(?: (?:it|that|them|up|in|now|then|the|bottle|BOTTLE|for today|and shaken|,|too|all"
    r"|(?:bottle )?(?:is|'s) full|and (?:the )?water(?: is| 's)? on top|to the (?:line|top)))*$"
    r"|^(?:(?:ok|right|done|well|there) ?,? ?)*(?:that|it) is (?:all )?in ,? ?(?:and )?(?:the )?water(?: is"
    r"| 's)? on top(?: now)?$"
)
_TIME_LAST = Pattern(
    r" (?:(?:about |around )?(?:half an?|an?(?: couple of| few)?|\w+(?: and a half)?|NUMBER) \w+ ago"
    r"|earlier(?: today| on)?|just now"
    r"|(?:earlier )?this (?:morning|afternoon|evening)"
    r"|yesterday(?: (?:morning|afternoon|evening|night))?|last night|(?:at|around) \S+(?: \S+){0,3})$"
)
_TOPPED = Pattern(
    r"\btopped (?!(?:it |that |her )?(?:up )?to the (?:line|top|mark|brim|neck))(?:up )?(?:\S+ ){0,3}?"
    r"(?:up\b|with the same|with more|BOTTLE|it\b)|\btopped up\b|\btop up (?:is )?done\b"
)
_WITH_WATER = Pattern(
    r"\b(?:topped|filled|made|fill) (?:it |that |the rest |BOTTLE )?(?:up )?with (?:\w+ ){0,2}water\b"
)
_WATER = Pattern(r"\bwater\b", "water")
_OF_WATER = Pattern(r"\bVOLUME (?:of )?(?:(?!and\b)\w+ ){0,2}water\b", "water")
_RINSED_FIRST = Pattern(
    r"\b(?:rinsed|washed|flushed|swilled|cleaned|emptied and rinsed) (?:\S+ ){0,3}?(?:out|through)\b"
    r"|\bemptied and rinsed\b|\brinsed first\b|\bafter (?:a rinse|rinsing)\b|\bclean (?:and )?empty bottle\b"
)
_ASKS = Pattern(rf"{BEGINS_AS_ASKED}(?! filled\b| mixed\b)")


_ASKS_LATER = Pattern(
    r"[,;.] (?:and )?(?:is|can|may|does|do|did|how|what|when|will|should|would|shall|any|still)\b"
    r"|\b(?:any good|still good|still ok|what happens|is it ok|how long)\b"
)
_BY_THE_WAY = Pattern(r"^.*\bbut (?=.*\b(?:filled|mixed|made up|topped up|refilled)\b)")
"""What else is told first: "my hands are still shaking but I got it filled"."""
_TELLS = Pattern(
    r"^(?:(?:i|we|have|has|just|ok|okay|right|so|and|then|now|well|yes|log|note|record|that|it|finally|only"
    r"|half) ,? ?)*(?:filled|refilled|topped up|made up|mixed)\b.*\bBOTTLE\b"
    r"|\bBOTTLE (?:is |has been |'s |now |all )*(?:filled|refilled|topped up|made up|mixed)\b"
)
_BEFORE = Pattern(r"\bbefore (?:breakfast|lunch|dinner|tea|work|school|bed|noon|that)\b", "before")
_FORGOTTEN = Pattern(
    r"^(?:\w+ ){0,2}forgot(?:ten)? to (?:say|tell|log|mention|note|record)(?: (?:you|that|it))*(?: ,| but| that)? "
)
""" "I forgot to say, ...": what follows is told now."""
_AGO = Pattern(r"\b(?:half )?(?:an? )?(?:NUMBER |\w+ )?(?:minutes?|hours?|days?) ago\b", "ago")
_ONE_PRODUCT = Pattern(r"\b(?:AGENT|STOCK)\b")


def tells(plain: str) -> bool:
    """One bottle was filled with one product, in plain words: it is a fill, even where the two must not meet."""
    told = _TELLS.search(plain) or _WRONG_INTO.search(plain)
    return len(_ONE_PRODUCT.findall(plain)) <= 1 and told is not None and may_be_fill(plain)


def put_into(plain: str) -> bool:
    """So much of one product is said to have been put into a bottle: a fill, and no spraying."""
    return len(_ONE_PRODUCT.findall(plain)) <= 1 and _PUT_INTO.search(plain) is not None and may_be_fill(plain)


def only_emptied(plain: str) -> bool:
    """Said to be empty, or rinsed in part: what it held may still cling to it."""
    return _RINSED.search(plain) is None or rinsed_in_part(plain)


_PUT_INTO = Pattern(
    r"^(?:(?:i|we|have|has|just|ok|okay|right|so|and|then|now|well|yes|there|also) ,? ?)*"
    r"(?:put|poured|added|tipped|squirted|bunged|chucked|popped|measured)\b(?: \S+){0,5}? (?:AGENT|STOCK|MIX|VOLUME)"
    r"(?:(?: \S+){0,4}?|(?: AGENT| STOCK)?(?: and| then| ,)* (?:topped|filled|made)(?: it| that)? up with water)"
    r" in(?:to)? (?:the |my |this |that )?BOTTLE\b"
    r"|^(?:(?:ok|oh|so|and|the|my|,) ?)*BOTTLE (?:has|has got|holds|contains|is full of|is filled with|'s got)"
    r" (?:the |some |fresh |neat )*(?:AGENT|STOCK)(?: in it| in there| inside| in)* (?:now|instead)(?: ?[.!])*$"
)
_WRONG_INTO = Pattern(
    r"\b(?:used|put|poured|got|tipped|added)(?: in)? (?:the |a )?wrong (?:\w+ )?(?:in|into|for) (?:the |my )?BOTTLE\b"
    r".*\b(?:AGENT|STOCK)\b"
)
""" "I used the wrong concentrate in yellow, vinegar": that is what went in."""
_RINSED = Pattern(
    r"\b(?:rins\w*|wash\w*|flush\w*|swill\w*|swish\w*|hos(?:ed|ing)|pump\w*|clean\w*|scrub\w*|sluic\w*"
    r"|through)\b"
)


def poured_into_it(plain: str, world: World) -> str | None:
    """The bottle of the turn before, where a product is said to have been poured "in it"; None: none, or more of it.

    What it held is judged by `mixed`, as for a bottle that is named.
    """
    plain = plain.replace("a bit of ", "")  # else it reads as a part of it
    if _POURED_IN.search(plain) is None or "more" in plain or not may_be_fill(plain):
        return None
    return bottle_of_before(world)


def filled_it(plain: str, world: World) -> str | None:
    """The bottle of the turn before, or of the clean begun in it, where "it" is said to have been filled; None: none,
    or a dose was just told.

    After a dose what went in is the dose's (`of_the_dose`).
    """
    told = _FILLED_IT.match(plain)
    if told is None or not may_be_fill(plain):
        return None
    rest = _TIME_LAST.sub("", but_for_when(plain[told.end() :])).replace(",", " ").split()
    plainly = set(rest) <= _OF_A_FILL
    if not (told["it"] and "fill" in told.group()) and not (plainly and (told["it"] or _OF_A_MIX & set(rest))):
        return None  # "filled it a bit weak" is a fill, and how strong is asked
    last = world.talk.last
    of_a_dose = last is not None and last.intent in DOSES and bare_fill(plain)
    if of_a_dose:
        return None
    being_cleaned = [one.bottle for one in world.state.rounds.values() if is_open(one) and one.bottle is not None]
    return bottle_of_before(world) or (being_cleaned[0] if plainly and len(being_cleaned) == 1 else None)


def rinsed_out_too(plain: str, world: World) -> str | None:
    """The bottle of the turn before, where "it" is said to have been rinsed out; None: it may be something else.

    With a clean open only one that two products had just met in: anything else may be meant of the enclosure.
    """
    if _RINSED_IT.match(plain) is None or not may_be_fill(plain):
        return None
    if world.waiting is not None and asks_whether_rinsed(world.waiting):
        return None  # then it is the answer
    last, before = world.talk.last, world.talk.last_reading
    met = last is not None and last.intent == "together" and before is not None and before.slots.met is True
    if met and before is not None and len(before.slots.bottles) == 1 and not before.slots.enclosures:
        return before.slots.bottles[0]  # told to rinse out what something else was poured into
    if any(map(is_open, world.state.rounds.values())):
        return None
    return bottle_of_before(world)


def bottle_of_before(world: World) -> str | None:
    """The one bottle that the turn before was about; None: it was about none, or several."""
    last, before = world.talk.last, world.talk.last_reading
    if last is None or before is None or last.intent not in _OF_A_BOTTLE or len(before.slots.bottles) != 1:
        return None
    return before.slots.bottles[0]


NOT_ONLY_EMPTIED = Doubt("polarity", ONLY_EMPTIED)
"""What is asked of a bottle that was said to be empty."""
_RINSED_IT = Pattern(
    r"^(?:(?:ok|right|i|have|and|so|now|just|yes|well|then|also) ,? ?)*(?:(?:rinsed|washed|flushed|emptied|swilled)"
    r"(?: and (?:rinsed|washed|flushed))? (?:it|that|that one|the bottle) (?:out|through)\b"
    r"|(?:emptied|drained) (?:it|that|that one|the bottle)$"
    r"|(?:poured|tipped|chucked|threw|dumped) (?:it|that|the rest|the lot|it all|all of it)(?: of it)?"
    r" (?:out|away|down the (?:\w+ )?(?:drain|sink|toilet|loo))$)"
)


_OF_A_BOTTLE = frozenset(
    {"mixed", "in_bottle", "dose", "top_up", "still_good", "stock_left", "rinsed_out", "mix_strength", "pour_away"}
)
_FILLED_IT = Pattern(
    r"^(?:(?:ok|right|i|have|and|so|now|just|yes|well|then|also) ,? ?)*"
    r"(?:filled|refilled|made|topped|mixed)(?P<it> (?:it|that)\b)?"
)
_OF_A_MIX = frozenset({"MIX", "AGENT", "STOCK"})
_OF_A_FILL = words_of(
    "up again fresh afresh back now too with the some my at in of and a an to water concentrate bleach top line brim"
    " MIX AGENT STOCK VOLUME NUMBER . ! full all but instead whoops oops accidentally"
)
_POURED_IN = Pattern(
    r"\b(?:poured|put|added|tipped|chucked|squirted|dumped|splashed|dropped|mixed|got)(?: \S+){0,3}? (?:AGENT|STOCK)"
    r"(?: \w+){0,2}? (?:in|into|to) (?:it|that|there|that one|this one|the same (?:one|bottle)|the bottle)\b"
    r"|\b(?:poured|put|added|tipped|chucked|dumped) (?:in|it in|into it) (?:some |a bit of |the )?(?:AGENT|STOCK)\b"
    r"|^(?:(?:and|then|i|we|have|also|ok|so|oh|,) ?)*(?:poured|put|added|tipped|chucked|dumped|splashed)(?: \S+){0,4}?"
    r" (?:AGENT|STOCK)(?: in| on top| as well| too)*$"
)


def asks_whether_rinsed(pending: Pending) -> bool:
    """It was asked whether a bottle was rinsed out before something else went in."""
    yes = pending.on_yes
    return isinstance(yes, Reading) and yes.intent == "mixed" and yes.slots.rinsed_first is True


def rinsed_and_how_strong(plain: str, slots: Slots, pending: Pending) -> Reading | None:
    """ "Yes, 1 in 32", when it was asked whether it was rinsed out first; None: no yes, or it names more than a mix."""
    opened = _YES_OR_RINSED.match(plain)
    named = {"BOTTLE", "AGENT", "STOCK"} & set(plain.split())
    if opened is None or not slots.mixes or named or not isinstance(pending.on_yes, Reading):
        return None
    return replace(pending.on_yes, slots=replace(pending.on_yes.slots, mixes=slots.mixes))


_YES_OR_RINSED = Pattern(r"(?:yes|yeah|yep|yup|aye|it was|i did|rinsed (?:it )?(?:out )?(?:first|before\w*))\b")


def was_rinsed_first(plain: str) -> bool | None:
    """ "I rinsed it first", "I didn't rinse it", when it was asked whether it was; None: neither is said."""
    plain = plain.strip(" .!,")
    if _NEVER_RINSED.fullmatch(plain) is not None:
        return False
    return True if _WAS_RINSED.fullmatch(plain) is not None else None


_NEVER_RINSED = Pattern(
    r"(?:(?:no|nope|oh|sorry|i|we|it|but) ,? ?)*(?:did not|have not|had not|was not|never|forgot to|not)"
    r"(?: been| was)? ?(?:rins\w+|wash\w+|flush\w+|empt\w+)?"
    r"(?: (?:it|that|out|through|first|before|at all|the bottle))*"
)

_WAS_RINSED = Pattern(
    r"(?:(?:yes|yeah|yep|i|we|it|was|had been|have|had|did|of course|already|always|ok|well) ,? ?)*"
    r"(?:rinsed|washed|flushed|emptied and rinsed|swilled|cleaned)(?: (?:it|that|out|through|first|before|beforehand"
    r"|properly|well|of course|yes|twice|the bottle|and|pumped|already))*"
)


def concentrate_or_mix(plain: str, pending: Pending) -> Reading | None:
    """ "Concentrate", "ready mix", after it was asked which of the two so much was; None: neither is said."""
    if plain.endswith("?") or len(plain.split()) > 8:
        return None
    mix, concentrate = _READY_MIX.search(plain), _CONCENTRATE.search(plain)
    told = pending.on_yes if mix and not concentrate else pending.on_no if concentrate and not mix else None
    return told if isinstance(told, Reading) else None


def volume_put_right(plain: str, slots: Slots, pending: Pending) -> Reading | None:
    """ "No, 23.4", after it was asked what 234 mils were: so much of it, looked at anew; None: it names more."""
    before = pending.reading.slots
    if len(before.volumes) != 1 or slots.mixes or slots.bottles or plain.endswith("?"):
        return None
    said = slots.volumes or tuple(replace(before.volumes[0], amount=number) for number in slots.numbers)
    if len(said) != 1 or said == before.volumes:
        return None
    return replace(pending.reading, slots=replace(before, volumes=said, roles=("product",), mixes=()), doubts=())


_READY_MIX = Pattern(r"\b(?:ready|diluted|(?:already|made|mixed) (?:up|mixed|diluted)|mix)\b")
_CONCENTRATE = Pattern(r"\b(?:concentrate[d]?|neat|undiluted|straight|pure|not diluted)\b")


def asked(plain: str) -> bool:
    """Whether a bottle is filled is asked, not told."""
    return "BOTTLE" in plain and (plain.endswith("?") or _ASKS.search(plain) is not None)


def names_what(plain: str) -> bool:
    """A bottle, a product or a mix stands in it; "filled the tub" is none of ours."""
    return bare_fill(plain) or re.search(r"\b(?:BOTTLE|AGENT|STOCK|MIX|bottle|sprayer)\b", plain) is not None


def bare_fill(plain: str) -> bool:
    """ "filled", "done, filled it": no more than that it was done."""
    plain = plain.strip(" .!,")
    return _BARE.match(plain) is not None or _BARE.match(_TIME_LAST.sub("", plain)) is not None


def may_be_fill(plain: str) -> bool:
    """False where a fill is asked about, denied, or still to come."""
    if plain.endswith("?") or _ASKS.search(plain) or _ASKS_LATER.search(plain):
        return False
    plain = _HALF_THE_BOTTLE.sub("", _HALF_WATER.sub("MIX AGENT", plain))  # a fill all the same
    plain = _TIME_LAST.sub("", plain)
    plain = but_for_when(plain)
    return not not_yet(_RINSED_FIRST.sub(" ", plain))


def but_for_when(plain: str) -> str:
    """The same without what only tells when it was filled, or for when."""
    plain = _FORGOTTEN.sub("", _BY_THE_WAY.sub("", plain))
    for spoken_of_time in (_BEFORE, _SOME_TIME_AGO, _FOR_LATER, _AGO):
        plain = spoken_of_time.sub(" ", plain)
    return plain


_HALF_WATER = Pattern(r"\bMIX (?:AGENT|STOCK|water)(?: ,| and)* half (?:AGENT|STOCK|water)\b", "half")
_HALF_THE_BOTTLE = Pattern(
    r"\bhalf (?=filled\b|the BOTTLE\b|BOTTLE\b|of the BOTTLE\b)| ?\b(?:half ?way|half full)(?: up)?\b", "half"
)
_FOR_LATER = Pattern(
    r"\b(?:for|until|till|by|ready for) (?:the )?(?:whole )?(?:today|tonight|tomorrow|this|next|later|on )\b"
)
_SOME_TIME_AGO = Pattern(
    r"\b(?:a|some|quite a) (?:(?:little|good|long) )?(?:while|time|bit) (?:ago|back)\b"
    r"|\b(?:ages|hours|days|weeks) ago\b"
    r"|\b(?:a )?few (?:minutes|hours|days|weeks) (?:ago|back)\b|\bthe other (?:day|night|week)\b|\blong ago\b"
    r"|\b(?:before|after|at|over|during) (?:breakfast|lunch|dinner|tea|work|school|bed|supper)\b"
    r"|\b(?:at|over|on) the weekend\b|\bin (?:early |late )?(?:january|february|march|april|may|june|july|august"
    r"|september|october|november|december|spring|summer|autumn|winter)\b|\bby (?:the|our|my) (?:last|old) \w+"
    r"|\bfrom (?:the |an? |my )?(?:old|other|last) (?:bottle|batch|lot|mix|one)\b"
    r"|\b(?:earlier|before now|already a while)\b|\b(?:first thing|overnight|back then|previously|recently)\b"
)


def for_later(plain: str) -> bool:
    """ "For today", "until tomorrow": what a mix is for, not when it was made."""
    return _FOR_LATER.search(plain) is not None


def some_time_ago(plain: str) -> bool:
    """ "A while ago", "before lunch": past, and no telling how long."""
    return _SOME_TIME_AGO.search(plain) is not None


def topped_up(plain: str) -> bool:
    """Poured onto what was left; "topped it up with water" is only how a mix is made."""
    return _TOPPED.search(plain) is not None and _WITH_WATER.search(plain) is None


def rinsed_first(plain: str) -> bool | None:
    """True where the rinse is told in the same breath; None: nothing is said of it."""
    if re.search(r"\b(?:not|never|without) (?:\w+ ){0,2}(?:rins|wash|flush)\w*", plain):
        return False
    return True if _RINSED_FIRST.search(plain) else None


def plain_water(plain: str, agents: bool) -> bool:
    """Water and nothing else."""
    measured = "VOLUME" in _OF_WATER.sub("water", plain)
    product = agents or measured or "MIX" in plain or _PRODUCT_TOO.search(plain) is not None
    return not product and _WATER.search(plain) is not None


_PRODUCT_TOO = Pattern(
    r"\b(?:concentrate|disinfectant|product|syringes?|MEASURE|capfuls?|scoops?|dose|NUMBER|everything|the lot"
    r"|and (?:the |some )?water"
    r"|water (?:is|'s) in|(?:then|topped|up) (?:with |to )?(?:the )?water)\b(?<!with water)"
)
""" "Concentrate's in, water's in": no water alone."""


def but_for_water(reading: Reading) -> Reading:
    """The same, but that water alone is no fill: no question then, with what was said of it kept."""
    water = reading.intent == "mixed" and reading.slots.plain_water and bool(reading.slots.bottles)
    return replace(reading, intent=None) if water else reading


def of_the_dose(slots: Slots, world: World) -> tuple[Slots, tuple[Doubt, ...]] | None:
    """What "filled" means right after a dose was told, with the dose's doubts while it waits for a yes; None: no dose.

    slots: what is said beside; another bottle than the dose's makes it another fill.
    """
    last, dose = world.talk.last, world.talk.last_reading
    if last is None or dose is None or last.intent not in DOSES or dose.intent not in DOSES:
        return None
    if last.outcome not in (Outcome.ANSWER, Outcome.CONFIRM):
        return None
    if slots.bottles and dose.slots.bottles and slots.bottles != dose.slots.bottles:
        return None
    topped = slots.topped_up or dose.intent == "top_up"
    filled = replace(dose.slots, bottles=slots.bottles or dose.slots.bottles, topped_up=topped, steps=())
    filled = replace(filled, when=slots.when, some_time_ago=slots.some_time_ago)
    if dose.intent == "top_up":  # what was left is no part of what went in
        added = last.values.get("added")
        filled = replace(filled, volumes=(), roles=(), numbers=(), share_left=None)
        if isinstance(added, Amount):
            filled = replace(filled, volumes=(added,), roles=("total",))
    return filled, dose.doubts if last.outcome is Outcome.CONFIRM else ()


def undone(plain: str, world: World) -> str | None:
    """The bottle whose fill was recorded last, where "that fill" is to be taken back; None: it isn't."""
    if _UNDONE.fullmatch(plain.strip(" .!,")) is None:
        return None
    fills = (d.thing for turn in reversed(world.state.turns) for d in turn.deeds if d.event == "BottleMixed")
    return next(fills, None)


_UNDONE = Pattern(
    r"(?:(?:no|oh|sorry|wait|please|can you|actually) ,? ?)*(?:undo|take back|cancel|forget|scrap|void|reverse|delete)"
    r" (?:that|the|this|my|the last|that last) (?:BOTTLE )?(?:fill|filling|mix|top up)(?: again| please| then)?"
    r"|(?:(?:no|oh|sorry|wait|hang on|hold on|actually) ,? ?)*(?:it|that|the first(?: one)?|what i said first)"
    r" was right(?: the first time| before| at first| first| after all)?"
)


def before_it_is_put_right(world: World) -> Reading | None:
    """The fill that was recorded in the turn before, its mix filled in, so that "no, fifty" has what to change.

    None: the turn before recorded none, or topped one up, whose older fill isn't known any more.
    """
    last, before = world.talk.last, world.talk.last_reading
    if last is None or before is None or last.intent != "mixed" or before.intent != "mixed" or before.slots.each:
        return None
    if not (last.values.get("recorded") or last.values.get("too_strong")) or before.slots.topped_up:
        return None
    if last.outcome not in (Outcome.ANSWER, Outcome.REFUSE):
        return None
    mix = last.values.get("mix")
    measured = bool(before.slots.volumes) and set(before.slots.roles) <= {"product", ""}
    mixes = before.slots.mixes or ((read_mix(mix),) if isinstance(mix, str) and not measured else ())
    return replace(before, slots=replace(before.slots, mixes=mixes, corrects=True))


def last_on_record(world: World) -> Reading | None:
    """The fill that the last turn on record told, as it would be told again; None: it told none, or a top-up."""
    turn = world.state.turns[-1] if world.state.turns else None
    bottle = next((d.thing for d in turn.deeds if d.event == "BottleMixed"), None) if turn is not None else None
    fill = world.state.bottles[bottle].fill if bottle is not None and bottle in world.state.bottles else None
    if bottle is None or fill is None or fill.topped_up:
        return None
    slots = Slots(
        bottles=(bottle,),
        stocks=(fill.stock,) if fill.stock is not None else (),
        agents=() if fill.stock is not None else (fill.agent,),
        mixes=(read_mix(fill.mix),) if fill.mix is not None else (),
        corrects=True,
    )
    return Reading("", "mixed", slots, 1.0)


DOSES = ("dose", "top_up")
"""Questions whose answer is what goes into a bottle."""
