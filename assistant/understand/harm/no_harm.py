"""Ordinary talk that sounds like harm: sick of cleaning, water on a sleeve, a bottle back on its shelf.

Each is read as a whole text, so that nothing told beside it is lost; and none while somebody is being rinsed.
"""

from __future__ import annotations

import re

from assistant.contract import World
from assistant.core.harms import latest
from assistant.core.round.rounds import rinse_left_s
from assistant.understand.harm.everyday import everyday
from assistant.understand.text.patterns import Pattern

_LEAD = r"^(?:(?:oh|ok|okay|well|and|so|but|yes|no|now|just|i think|ugh|right|there is|it is|,) ?)*"
_END = r"(?: (?:now|again|today|already|though|too|by the way|this morning|earlier|here))*[ .!]*$"
_ONE = r"(?:he|she|it|they|(?:the |my )?(?:\w+ )?(?:ANIMAL|ENCLOSURE))"
_P = r"(?:AGENT|STOCK|BOTTLE)"
_AWAY = (
    r"(?:\w+ )?(?:shelf|cupboard|rack|drawer|counter|table|desk|bench|windowsill|cabinet|shed|garage|kitchen|house"
    r"|fridge|bathroom|room|bag|bucket|sink|car|hall|pantry|utility)"
)
_DIRT = r"(?:soil|dirt|mud|substrate|poop|poo|urates|coconut|sand|bark|moss|dust|peat|compost)"
_WEAR = r"(?:jeans|shirt|t shirt|trousers|clothes|top|socks|jumper|carpet|towels?|apron)"
_ORDINARY = Pattern(
    rf"{_LEAD}(?:nobody|no one|none of us) (?:is |was |has been )?(?:coughing|hurt|sick|dizzy|choking){_END}"
    rf"|{_LEAD}{_ONE}(?: is| 's)? breathing (?:nice and |nicely and |all )*"
    rf"(?:slow\w*|normal\w*|fine|well|calm\w*|easy|easily|steadily|regularly|ok|okay){_END}"
    rf"|{_LEAD}(?:i am|i feel|we are|i 'm)(?: so| really| getting| a bit)* sick of "
    r"(?!(?:the |this |that )?(?:smell|fumes|stink|air|gas))(?:\S+ ?){1,5}$"
    rf"|{_LEAD}i (?:am |have |keep |just |was )*cough\w*(?: a bit)? ?(?:,|but|and|from)? ?(?:it is |that is |'s )*"
    r"(?:only |just )*(?:from )?(?:a|my|the|some)? ?(?:cold|hay ?fever|allerg\w+|asthma|(?:\w+ )?dust)"
    rf"(?: from the \w+)?{_END}"
    rf"|{_LEAD}{_ONE}(?: is| has| 's| just)* (?:had|having|taking|taken|got) (?:a |some |another |her |his )*"
    rf"(?:drink|sip|water)(?: of (?:fresh |clean |her |his |some )*water)?{_END}"
    rf"|{_LEAD}my (?:knees?|back|feet|shoulders?|legs?|neck|arms?)(?: is| are) killing me{_END}"
    rf"|{_LEAD}my (?:hands?|fingers?)(?: is| are) (?:\w+ )?(?:raw|itchy|sweaty|wrinkl\w+|prun\w+) from "
    rf"(?:the |these )?gloves{_END}"
    rf"|{_LEAD}(?:i )?(?:have )?(?:got|have|had) (?:some |a bit of )*{_DIRT} (?:on|all over|under) my "
    rf"(?:hands?|nails|fingers?|knees?|arms?|gloves?|{_WEAR}){_END}"
    rf"|{_LEAD}(?:i )?(?:splashed|spilled|spilt|dripped|got|flicked) "
    r"(?:some |a bit of |plain |clean |tap |fresh )*water (?:on|over|all over|down) "
    rf"(?:me|myself|my (?:feet|legs?|shoes?|sleeves?|arms?|{_WEAR})|the (?:ANIMAL|floor)|ANIMAL){_END}"
    rf"|{_LEAD}(?:i )?bleached my {_WEAR}{_END}"
    rf"|{_LEAD}(?:i )?(?:dried|rubbed|wiped) my (?:eyes|tears|nose|face|forehead){_END}"
    rf"|{_LEAD}(?:my )?eyes(?: are)? watering from (?:the )?onions{_END}"
    rf"|{_LEAD}(?:i )?washed my (?:face|hands|hair){_END}"
    rf"|{_LEAD}(?:i )?(?:got )?(?:some|a bit|it|a drop)(?: has)? (?:of it )?(?:dripped |ran |splashed |got |went )?"
    rf"(?:on|onto|down) the outside(?: of (?:ENCLOSURE|it|the \w+))?{_END}"
    rf"|{_LEAD}(?:i )?(?:have )?(?:got|put|left|dropped) (?:a|the|my) (?:sponge|brush|cloth|scraper) in the "
    rf"(?:bucket|sink|basin){_END}|{_LEAD}(?:the )?gas (?:man|engineer|bill|meter|company|fitter)\b[^?]*$"
    rf"|{_LEAD}i (?:have )?(?:have|got|have got) a (?:\w+ )?headache from (?:the |last |too much |my |no )*"
    rf"(?:game|night|wine|beer|party|work|heat|sun|screen|coffee|music|kids|weather)(?: last night)?{_END}"
    rf"|{_LEAD}(?:poop?|towels?|suds|water|substrate|soap|hair|feathers?|cables)(?: is| 's| are)? everywhere{_END}"
    rf"|{_LEAD}(?:a )?puddle (?:on|in|at) the (?:floor|bottom|corner)(?: of)? ?(?:ENCLOSURE|the tank|the box)?{_END}"
    rf"|{_LEAD}(?:i )?(?:filled the (?:water )?bowl ?,? ?(?:and |but )?)?(?:spilled|spilt) "
    r"(?:a bit|some|a little|(?:some |the |a bit of )*(?:soapy |clean |fresh |plain |bowl |rinse )?water|the "
    rf"(?:water )?bowl)(?: of it)?{_END}",
    *("nobody", "no one", "none of", "breathing", "sick of", "cough", "drink", "sip", "water", "killing", "glove"),
    *(
        "soil",
        "dirt",
        "mud",
        "substrate",
        "poo",
        "urates",
        "coconut",
        "sand",
        "bark",
        "moss",
        "dust",
        "peat",
        "compost",
    ),
    *("bleached", "my ", "outside", "sponge", "brush", "cloth", "scraper", "gas ", "headache", "everywhere", "puddle"),
    *("spil", "bowl"),
)
_BACK_ON_ITS_SHELF = Pattern(
    rf"{_LEAD}(?:the |my )?{_P}(?: is| 's| are| goes)* (?:back |safe |away )*(?:on|in|at|standing on|under) "
    rf"(?:the |my |its )?{_AWAY}{_END}"
    rf"|{_LEAD}(?:i )?(?:have )?(?:put|left|stood|placed) (?:the |my )?{_P} (?:back |away )*(?:on|in|under) "
    rf"(?:the |my |its )?{_AWAY}{_END}"
    rf"|{_LEAD}(?:the |my )?{_P} (?:is |'s )?(?:standing|sitting|right|just|still) (?:right |just )?"
    rf"(?:next to|beside|by) (?:it|me|ENCLOSURE|the \w+){_END}",
    "AGENT",
    "STOCK",
    "BOTTLE",
)
_OTHER_THING = (
    r"(?:(?:the|my|a|her|his) (?:\w+ )?(?:bowls?|dish|dishes|kitchen|worktop|counter|sink|bath|bathroom|table|desk"
    r"|kettle|car|toilet|shower|fridge|cooker|oven|outside|tongs|hook|(?:front |back )?glass outside|front "
    r"(?:glass )?outside|outside of (?:ENCLOSURE|the \w+)))"
)
_DID = r"(?:used|wiped|cleaned|scrubbed|descaled|washed|sprayed|soaked|rinsed|polished|put|did)"
_ON_SOMETHING_ELSE = Pattern(
    rf"{_LEAD}(?:i |we )?(?:have )?{_DID} (?:down )?(?:{_OTHER_THING}|the (?:front )?(?:glass )?outside)(?: down)? "
    rf"(?:with|in|using) (?:the |some |a bit of |my )*{_P}{_END}"
    rf"|{_LEAD}(?:i |we )?(?:have )?{_DID} (?:the |some |a bit of |my )*{_P} on {_OTHER_THING}{_END}",
    *("AGENT", "STOCK", "BOTTLE"),
)
"""A product on what stands outside the enclosure: nothing that touched it. The bowl is rinsed by itself."""


def ordinary(text: str, world: World) -> bool:
    """Whether a masked text is such talk, with nobody hurt who it could be of."""
    if text.endswith("?") or any(rinse_left_s(rinse, world.now) > 0 for rinse in world.state.rinses):
        return False
    if latest(world.talk.harms, world.now) is not None:
        return False
    return (
        _ORDINARY.search(text) is not None
        or _BACK_ON_ITS_SHELF.search(text) is not None
        or on_nothing_here(text)
        or everyday(text)
    )


_PUT_AWAY = Pattern(
    rf"{_LEAD}(?:i |we )?(?:have )?(?:put|left|stood|placed|got|have|keep|kept|stuck|popped) "
    rf"(?:the |my |some |a )*{_P}(?: bottle)? (?:back |away )*(?:in|on|under) (?:the |my |its )?{_AWAY}{_END}",
    *("AGENT", "STOCK", "BOTTLE"),
)


def on_nothing_here(text: str) -> bool:
    """ "I used vinegar on the bowl", "put the green bottle in the cupboard": not on what is being cleaned."""
    return _ON_SOMETHING_ELSE.search(text) is not None or _PUT_AWAY.search(text) is not None


def only_a_germ(plain: str) -> bool:
    """True when what got onto an animal is a mite or a germ, and no product."""
    return "ORGANISM on" in plain and not re.search(
        r"AGENT|STOCK|BOTTLE|\b(?:spray|disinfectant|cleaner|eye|my)\b", plain
    )
