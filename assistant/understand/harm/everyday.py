"""Everyday talk with the words of harm: tea that was drunk, hay fever, a tap that dripped, a tongue burnt on soup.

One general rule: the text names what did it, that is no product of the work, and nothing else in it may be one. The
rest are whole texts that tell of water, of a surface, or of what waits in the sink.
"""

from __future__ import annotations

from assistant.understand.named.tub_words import TUB
from assistant.understand.text.patterns import Pattern, words_in

_CAUSE = Pattern(
    r"\b(?:hay ?fever|pollen|onions?|allerg\w+|(?:a|the|this|my|his|her|bad|with) (?:\w+ )?(?:cold|flu)|sunburn\w*"
    r"|sun|hangover|chill?ies|chill?i|curry|nettles?|wasps?|mosquito\w*|midges?|bees?|kettle|tea|coffee|soup|oven|hob"
    r"|iron|dinner|pizza|toast|stove|pan|heat lamp|shampoo|sun ?cream|make ?up|contact lens|dust|cat hair|dog hair)\b",
    *("fever", "pollen", "onion", "allerg", "cold", "flu", "sun", "hang", "chil", "curry", "nettle", "wasp", "mosq"),
    *("midge", "bee", "kettle", "tea", "coffee", "soup", "oven", "hob", "iron", "dinner", "pizza", "toast", "stove"),
    *("pan", "lamp", "shampoo", "make", "lens", "dust", "hair"),
)
_SIGN = Pattern(
    r"\b(?:cough\w*|sneez\w*|itch\w*|burn\w*|burnt|scald\w*|sting\w*|stung|sore|stream\w*|water(?:ing|y)|hurt\w*|red"
    r"|swollen|runny|chok\w*|blister\w*)\b"
)
_A_PRODUCT = Pattern(
    r"\b(?:AGENT|STOCK|BOTTLE|MIX|OTHER|spray\w*|mist\w*|fumes?|smell\w*|clean\w*|disinfect\w*|chemicals?|acid|stuff"
    r"|concentrate|bleach\w*|gas|splash\w*|drip\w*|bottle|bucket|mix\w*|wrong|mistake|accident\w*|thought|instead"
    r"|poison\w*|help|but|ANIMAL|ENCLOSURE|he|she|kid|son|daughter|breathe)\b"
)
"""With any of these it may be harm after all, or somebody else's."""
_LEAD = r"^(?:(?:oh|ok|okay|well|and|so|but|yes|no|now|just|i think|ugh|right|i|have|we|,) ?)*"
_END = r"(?: (?:now|again|today|already|though|too|by the way|a bit|a little|just now|earlier|here))*[ .!]*$"
_HERE = r"(?:it|there|that|ENCLOSURE|the (?:\w+ )?\w+)"
_THINGS = r"(?:decor|hides?|bowls?|dish(?:es)?|branch(?:es)?|plants?|rocks?|logs?|tongs|things|furniture|toys?|cork)"
_ORDINARY = (
    Pattern(rf"{_LEAD}(?:breathed|blew|huffed) on {_HERE}{_END}", "breathed", "blew", "huffed"),
    Pattern(
        rf"{_LEAD}(?:i am|i 'm|everyone is|all)? ?(?:breathing|breathe) (?:just )?"
        rf"(?:fine|ok|okay|normally|easily|well){_END}",
        "breath",
    ),
    Pattern(
        rf"{_LEAD}(?:there is |got |'ve )*(?:a |another )?(?:small |tiny |big )?(?:hole|tear|rip|split) in "
        rf"(?:my|one|the|a) (?:of my )?(?:\w+ )?gloves?{_END}",
        "glove",
    ),
    Pattern(
        rf"{_LEAD}(?:it|some|the rest|that)(?: has| 's| all)* (?:dripped|ran|drained|slid|dripping|running) off"
        rf"(?: {_HERE})?{_END}",
        "off",
    ),
    Pattern(
        rf"{_LEAD}(?:the |my )?(?:tap|rain|shower|water|hose)(?: has| is| 's)? "
        rf"(?:dripp\w+|leak\w+|ran|splash\w+|got) (?:in|into|on|onto) {_HERE}{_END}"
        rf"|{_LEAD}(?:splashed|spilled|spilt|dripped|got|flicked|poured) "
        rf"(?:some |a bit of |plain |clean |tap |fresh )*water (?:in|into|on|onto|over) {_HERE}{_END}",
        *("tap", "rain", "shower", "water", "hose"),
    ),
    Pattern(
        r"^(?:the |my )?(?:ANIMAL|he|she)(?: has| is| just| 's)* lick\w* (?:his|her|its) (?:own )?"
        rf"(?:eyes?|eyeballs?|lips|nose){_END}",
        "lick",
    ),
    Pattern(
        rf"{_LEAD}(?:the |my |his |her |all the )?{_THINGS}(?: is| are| 's)?(?: still| all| now)* (?:soaking )?"
        rf"(?:in|under) the (?:bucket|sink|bath|basin|tap|shower){_END}",
        *("bucket", "sink", "bath", "basin", "tap", "shower"),
    ),
    Pattern(
        rf"{_LEAD}sprayed(?: it| {_HERE})? with (?:the |my )?(?:ANIMAL|him|her) (?:safe )?in (?:the|his|her|a|its) "
        rf"(?:next |other |waiting )?{TUB}{_END}",
        "sprayed",
    ),
)
_MANY = 14


def everyday(text: str) -> bool:
    """Whether a masked text is such talk and nothing more."""
    if len(text.split()) <= _MANY and _CAUSE.search(text) and _SIGN.search(text) and not _A_PRODUCT.search(text):
        return True
    return any(pattern.search(text) for pattern in _ORDINARY)


WORDS = words_in(_CAUSE, *_ORDINARY)
"""Words that this turns on."""
