"""What only sounds like an escape, and the way back from one: she's pushing at the lid, false alarm, she's in the tub.

An animal that is loose on record blocks its round. What takes that back must be said of where it is, or that it never
was; "she's not in there" alone stays an escape, for "there" may be the tub.
"""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Doubt, Reading
from assistant.core.harms import OF_SOMETHING_ELSE
from assistant.core.round.rounds import is_open
from assistant.understand.look import BY_RULE, Look, without_troubles
from assistant.understand.named.animal_words import ANIMALS, ONE_ANIMAL
from assistant.understand.named.tub_words import TUB
from assistant.understand.text.patterns import Pattern

_HER_TUB = rf"(?:the|his|her|its|their|that|a) (?:\w+ )?{TUB}"
_ONE = rf"(?:he|she|they|it|(?:the |my )?(?:ANIMAL|animal|{ONE_ANIMAL})|ENCLOSURE)"
_OPENS = r"(?:(?:no|nope|oh|wait|sorry|ok|phew|it is ok|all good|all right|hang on|hold on|actually|ah|yes) ?,? ?)*"
_THAT_ONE = _ONE.replace("they|it|", "they|")  # "it's here" may be a bottle
_SAFE = Pattern(
    rf"^{_OPENS}(?:it was |that was |just )?(?:a )?(?:false alarm|panic over)$"
    rf"|^{_OPENS}(?:i (?:found|see|saw) (?:him|her|it) ?,? )?{_THAT_ONE}(?: is| 's| was)"
    rf"(?: just| only| still| all right| fine| safe)* (?:here|in {_HER_TUB}|under the towel in {_HER_TUB})"
    r"(?: all along| the whole time| after all| still| asleep)*$"
    rf"|^{_OPENS}{_THAT_ONE} (?:only|just) (?:pooped|pooed|peed)\b"
    rf"|^{_OPENS}{_THAT_ONE} (?:is|was|has|did) (?:not|never) (?:out|loose|escape\w*|get out|got out|gone|missing)"
    rf"(?: after all| at all)?$|^{_OPENS}{_THAT_ONE} never (?:got out|escaped|left|was out)$"
    rf"|^{_OPENS}(?:nobody|no one) (?:is loose|escaped|got out)$",
    *("alarm", "panic", "here", " in ", "only", "just", "not", "never", "nobody", "no one"),
)
_DENIED = Pattern(r"\?$|\b(?:if|unless|maybe|perhaps|hope|think|should|might)\b|\b(?:not|nobody|no one) (?:\w+ )?in\b")
_AT_WORK_IN_THE_TUB = Pattern(
    rf"\b{_ONE}(?: is| 's| has| keeps| was)?(?: just| only| still| all)* "
    r"(?:pooped|pooed|peed|pissed|curled up|coiled up|asleep|sleeping|resting|sitting|hiding|digging|climbing"
    rf"|shedding|drinking|soaking)\b(?: \S+){{0,3}}? in(?: the \w+ of)? {_HER_TUB}\b"
    rf"|\b{_ONE}(?: is| 's| keeps| was)?(?: just| only| still)* (?:pushing|bumping|scratching|nosing|rubbing)"
    rf"(?: (?:at|against|on|up))+ (?:the )?(?:lid|sides?|walls?|{_HER_TUB})\b"
    rf"|\b{_ONE}(?: is| 's| keeps| was)?(?: just| only| still| always)* (?:trying|tries|wants|wanting) to "
    r"(?:get out|escape|climb out|come out|push the lid)\b|\blooking for a way out\b"
    rf"|\b(?:i )?(?:took|have taken|lifted|got) (?:him|her|it|them) out of {_HER_TUB} to\b"
    rf"|\bout of {_HER_TUB} ?,? (?:and |but )?(?:i am |i have |i 'm )?(?:holding|got (?:him|her|it)|on my|in my)\b",
    *("in", "at", "on", "against", "out", "to"),
)
_GOT_LOOSE = Pattern(r"\b(?:managed|succeeded|did it|got out|is out|escaped|help|loose)\b(?!.*\bholding\b)")
_LOOKED = Pattern(
    rf"^(?:{_OPENS})(?:i )?(?:have )?(?:checked|looked|had a look|double checked)(?: again)?(?: ,| and)* ?{_ONE}"
    r"(?: is| 's) not (?:still )?(?:in there|inside|in it)$"
    rf"|^{_OPENS}(?:(?:there (?:is|are) )?no (?:ANIMAL|animals?|{ANIMALS})(?: left)?|there is (?:nobody|no one)) "
    r"(?:in there|inside|in it)(?: any ?more| now| right now| at the moment)?$"
    rf"|^{_OPENS}(?:there is )?nothing (?:left )?(?:in there|inside|in it)(?: any ?more| now)$"
    rf"|^{_OPENS}{_ONE}(?: is| 's) not still (?:in there|inside|in it)$",
    *("check", "look", "no ", "nothing", "not still", "nobody"),
)
_A_BOTTLE = Pattern(
    r"^(?:the |my )?(?:BOTTLE|AGENT|STOCK)(?: is| 's) (?:in|under|behind|on) (?:the |my )?\w+(?: \w+)?$"
)
_RUNS_DOWN = Pattern(
    r"(?:(?:oh|so|and|but|most of|some of|all of) ?)*(?:it|the (?:spray|mix|film|AGENT|STOCK|stuff)|AGENT|STOCK)"
    r"(?: is| has| 's| all| just| keeps?)* (?:run|ran|runs|running|slid|sliding|dripped|dripping) (?:off|down)"
    r"(?: (?:of|all|the|its|one|both))* (?:sides?|walls?|glass|lid|roof|ceiling|doors?|front|back)\b"
    r"|(?:(?:oh|so|and|but) ?)*(?:most|some|half|a lot|all) of it(?: is| has| 's| just| all)* (?:run|ran)"
    r" off(?: already)?$"
)
""" "It's run off the sides": the spray, and nobody."""
_TAKING_OUT = Pattern(rf"^{_OPENS}(?:i )?(?:have )?(?:got|caught) (?:him|her|them|ANIMAL|ENCLOSURE)(?: now)?$")
_COMING_OUT = Pattern(rf"^{_OPENS}{_ONE}(?: is| 's) (?:coming|on (?:his|her) way) out(?: now)?$")


def no_escape(look: Look) -> Reading | None:
    """What is told of an animal that waits, that nobody is inside, or that a loose one isn't; None: none of it."""
    plain, state = look.parsed.plain.strip(" .!"), look.world.state
    last = look.world.talk.last
    if state.loose:
        safe = _SAFE.search(plain) is not None and _DENIED.search(plain) is None
        safe = safe and (last is None or last.intent not in OF_SOMETHING_ELSE)
        slots = without_troubles(look.slots("escape"))
        named = tuple(one.enclosure for one in state.loose if one.enclosure in slots.enclosures)
        slots = replace(slots, found=True, enclosures=named)
        return look.reading("escape", slots, BY_RULE) if safe else None
    open_ones = [one for one in state.rounds.values() if is_open(one)]
    if look.parsed.plain.endswith(("?", "!")) or not open_ones:
        return None
    waits = any("move out" in one.done for one in open_ones)
    if waits and _AT_WORK_IN_THE_TUB.search(plain) and not _GOT_LOOSE.search(plain.replace("trying to get out", "")):
        return look.reading("tub", replace(look.slots("tub"), enclosures=(), choices=()), BY_RULE)
    if waits and _LOOKED.search(plain):
        return look.reading("done", replace(look.slots("done"), enclosures=(), steps=("move out",)), BY_RULE)
    if any(one.touched for one in open_ones) and _RUNS_DOWN.match(plain):
        return Reading(
            look.parsed.text, None, replace(look.slots(None), remark=True), 0.0, look.nearest, (), look.spoken
        )
    if _A_BOTTLE.match(plain):
        return Reading(look.parsed.text, None, look.slots(None), 0.0, look.nearest, (), look.spoken)
    if not waits and _COMING_OUT.match(plain):
        return look.reading("next", look.slots("next"), BY_RULE)
    if not waits and _TAKING_OUT.match(plain):
        asked = look.reading("done", replace(look.slots("done"), steps=("move out",)), BY_RULE)
        return replace(asked, doubts=(Doubt("polarity", "move out"),))
    return None
