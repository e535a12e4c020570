"""Gas told in few words, with nothing of what made it: "there's gas", "the room is full of it", "it fizzes and stinks".

Told whole: whatever else stands beside it is read by the other rules.
"""

from __future__ import annotations

from assistant.contract import World
from assistant.understand.text.patterns import Pattern

_LEAD = r"(?:(?:oh|no|god|my|help|shit|quick|wait|so|and|now|i think|i guess|guys|ok|um|,|!) ?)*"
_SORT = (
    r"(?:(?:a|an|the|some|lots of|loads of|chlorine|chloramine|toxic|poison\w*|green|yellow|BOTTLE|white|AGENT|of) )*"
)
_WHERE = (
    r"(?: (?:in here|in there|here|there|everywhere|now|coming out|coming off it|coming up|rising|all over|in "
    r"(?:the|my|this) (?:\w+ )?(?:room|house|tank|bottle|tub)|in (?:the )?(?:BOTTLE|ENCLOSURE)|already|from it"
    r"|(?:coming )?(?:from|out of|off) (?:the |my |that )?(?:bucket|bottle|jug|sprayer|sink|drain|tank|BOTTLE"
    r"|ENCLOSURE)"
    r"|i think|help|quick|out of it))*"
)
_GAS = Pattern(
    rf"^{_LEAD}(?:(?:there is|there 's|there was|it is|that is|that was|it was|i have|i have got|i got|we have"
    r"|we have got|i made|we made|i have made|i just made|i might have made|it makes|it made|it is making|they made"
    r"|it gave off|it gives off|i smell|i can smell|i am smelling|we smell|smells like|i see|i can see|i am breathing"
    rf"|i breathed in|i breathed) )?{_SORT}(?:gas|gasses|gases|(?<=green )smoke|(?<=BOTTLE )smoke|"
    rf"(?<=yellow )smoke){_WHERE}[ .!]*$"
    rf"|^{_LEAD}(?:(?:there is|there 's|i see|i can see|it is making|it made|it gives off|it gave off) )?"
    r"(?:(?:a|some|this|big|little|thick|the) )*(?:green\w*|yellow\w*|BOTTLE|white|brown|choking|AGENT|toxic) "
    rf"(?:cloud|vapou?r|haze|gas|fumes?)(?: of \w+)?{_WHERE}[ .!]*$"
    rf"|^{_LEAD}(?:it|that|this|the (?:room|bottle|mix|stuff|sink|bucket|tank)|BOTTLE|ENCLOSURE)"
    rf"(?: (?:smells?|stinks?|reeks?|smelt))+ (?:\w+ )?(?:like|of) (?:rotten |bad |off )*eggs?{_WHERE}[ .!]*$"
    rf"|^{_LEAD}(?:the|my|this|whole|our) (?:\w+ )?(?:room|house|kitchen|bathroom|place)(?: is| 's)? (?:now )?"
    rf"(?:full of|filled with|filling(?: up)? with) {_SORT}(?:gas|fumes?|smoke){_WHERE}[ .!]*$",
    *("gas", "smoke", "fumes", "cloud", "vapo", "haze", "egg"),
)
_WORKS = r"(?:fizz\w*|bubbl\w*|hiss\w*|foam\w*|smok\w+|steam\w*|seeth\w*|gass\w+)"
_AND_STINKS = r"(?:stink\w*|smell\w*|reek\w*|sting\w*|burn\w*|smok\w*|steam\w*|fum\w*|get\w* (?:hot|warm))"
_FIZZES = Pattern(
    rf"^{_LEAD}(?:the |my )?(?:bucket|jug|sprayer|bottle|sink|drain|BOTTLE)(?: is| 's| has| just| all| started| to)* "
    r"(?:fizz\w*|hiss\w*|bubbl\w*|foam\w*|smok\w*|steam\w*)(?: (?:now|a lot|like mad|away|in there|up|over))*[ .!]*$"
    rf"|^{_LEAD}(?:it|that|this)(?: is| 's| has| started| all| to)* (?:fizz\w*|bubbl\w*|foam\w*|smok\w*|steam\w*)"
    r"(?: up| over| away)* in (?:the |my )?(?:bucket|bottle|jug|sprayer|sink|BOTTLE)[ .!]*$"
    rf"|^{_LEAD}(?:the |my )?(?:bottle|sprayer|BOTTLE|jug|canister|container)(?: has| just| 's)* "
    r"(?:blew up|blown up|exploded|went bang|gone bang|popped open|burst open)(?: in my hand)?[ .!]*$"
    rf"|^{_LEAD}(?:it|this|that|BOTTLE|the bottle|the mix|the stuff|ENCLOSURE)"
    r"(?: is| 's| has| just| really| all| started| starts| to)* (?:fizz\w*|hiss\w*)"
    r"(?: (?:now|a lot|like mad|away|in there|in here|up|over))*[ .!]*$"
    rf"|^{_LEAD}(?:it|this|that|BOTTLE|the bottle|the mix|the stuff)(?: is| 's| has| all| started| to)* {_WORKS} "
    rf"(?:and|,)(?: it)?(?: is| 's)? (?:\w+ )?(?:{_AND_STINKS}|{_WORKS})\b[^?]*$"
    rf"|^{_LEAD}(?:the |my )?(?:bottle|sprayer|mix|jug|bucket|BOTTLE|STOCK)"
    r"(?: is| 's| has| feels| just| all| really| suddenly| gone| going| got| getting| turned| so)* hot"
    r"(?: now| to touch| to the touch| all by itself| in my hand| and \w+)*[ .!]*$"
    r"|\b(?:poured|mixed|put|tipped|added|emptied)\b.*\b(?:and|,) (?:now )?(?:it|that|the bottle|BOTTLE)"
    rf"(?: is| 's| has| started| to| just| all)* {_WORKS}[^?]*$",
    *(
        "fizz",
        "bubbl",
        "hiss",
        "foam",
        "smok",
        "steam",
        "seeth",
        "gass",
        "hot",
        "blew",
        "blown",
        "explod",
        "bang",
        "open",
    ),
)
_NONE = Pattern(
    r"\?$|(?<!oh )\bno\b"
    r"|\b(?:not|never|without|if|does|is there|can|could|will|would|how|why|what|man|station|stove|hob|boiler|heater"
    r"|bill|meter|cooker|mask)\b"
)
_TELLS_OF_GAS = Pattern(rf"\bgas\w*\b|\bsmoke\b|\b{_WORKS}\b")


def gas_told(text: str) -> bool:
    """Whether a masked text tells of gas, and of hardly anything else."""
    if _NONE.search(text) is not None:
        return False
    return _GAS.match(text) is not None or _FIZZES.search(text) is not None


def just_told_of_gas(world: World) -> bool:
    """The turn before told of gas as harm, so a bottle that is named now is where it comes from."""
    last, before = world.talk.last, world.talk.last_reading
    if last is None or before is None or last.intent != "splash" or last.values.get("place") != "lungs":
        return False
    return _TELLS_OF_GAS.search(before.said) is not None
