"""Harm that is denied, only nearly came about, or is asked of beforehand, and what was no harm to eat or drink.

Read as a whole text only: "not in my mouth, but it's in my eye" denies nothing that matters; and "no bleach in my eye",
as it is heard, may be "no! bleach in my eye", so it denies nothing either.
"""

from __future__ import annotations

from assistant.understand.harm.patterns import LIMBS
from assistant.understand.text.known_words import words_of
from assistant.understand.text.patterns import Pattern, words_in

_LEAD = r"^(?:(?:no|oh|ok|okay|well|phew|luckily|and|so|but|yes|it is|there is|i think|actually|thankfully) ,? ?)*"
_END = r"(?: (?:at all|though|thankfully|luckily|this time|either|any ?more|again|once|today))*(?: ?[.!])*$"
_PLACE = rf"(?:eyes?|mouth|throat|nose|skin|belly|back|head|tail|{LIMBS})"
_WHOSE = r"(?:my|his|her|their|its|the|your|our|anybody 's|anyone 's|ANIMAL 's|the ANIMAL 's|ENCLOSURE 's)"
_ONE = (
    r"(?:i|we|he|she|it|they|you|nobody|no one|none(?: of (?:it|us|them))?|nothing|(?:the |my )?(?:ANIMAL|ENCLOSURE"
    r"|AGENT|BOTTLE|STOCK|spray|mist|\w+))"
)
_DID = (
    r"(?:get|got|gets|go|gone|went|hit|have|had|swallow|swallowed|drink|drank|drunk|eat|ate|lick|licked|splash|splashed"
    r"|spray|sprayed|touch|touched|reach|reached|inhale|inhaled|spill|spilled|spilt|escape|escaped|drop|dropped|knock"
    r"|knocked|get out|got out|lose|lost)"
)
_NOT_GONE = (
    r"(?!.*\b(?:out of|off|all of it|rid|enough|stop\w*|away|from|yet|rins\w*|wash\w*|better|but|except|though it)\b)"
)
_DENIED = Pattern(
    rf"{_LEAD}(?:nothing|none(?: of it)?|(?<=is )no (?:AGENT|STOCK|BOTTLE|product|spray)|not)"
    rf" (?:got |went |has |is |was |landed )*(?:in|on|into|onto) {_WHOSE} (?:\w+ )?{_PLACE}{_END}"
    rf"|{_LEAD}{_NOT_GONE}(?:did not|have not|never)(?: \w+)? (?:get|got|have|had) (?:any|anything|a drop|it)"
    rf" (?:of it )?(?:in|on|into|onto) {_WHOSE} (?:\w+ )?{_PLACE}{_END}"
    rf"|{_LEAD}{_NOT_GONE}{_ONE} (?:did not|do not|does not|has not|have not|had not|never)(?: \w+)? {_DID}\b"
    r"(?: (?!but\b|and\b|,|then\b|because\b|so\b)\S+){0,6}$"
    rf"|{_LEAD}(?:nobody|no one|nothing|none of (?:us|them|it))(?: has| have| was| were| is)? (?:been |got )?{_DID}\b"
    r"(?: (?!but\b|and\b|,)\S+){0,5}$"
    r"|^(?!.*\b(?:but|except|feel\w*)\b)(?:\S+ ){0,6}?(?:nobody|no one)(?: has| have| was| were| is|'s| 's)*"
    rf"(?: been| got| ever)* (?:sick|ill|poorly|unwell)(?: (?:in|on) (?:there|here|it|the \w+|ENCLOSURE))?{_END}"
    rf"|{_LEAD}(?:{_ONE} )?(?:has |have |had |only |very )*(?:nearly|almost) {_DID}\b(?: (?!but\b|and\b|,)\S+){{0,6}}$",
    *("noth", "none", "no ", "not", "never", "nobody", "nearly", "almost"),
)
_OF_ALL = Pattern(r"\b(?:can|could) not\b|\b(?:breath\w*|mov\w*|respond\w*|wak\w*|see)\b")
_MEAL = Pattern(
    r"^(?:so |and |oh |ok )*(?:(?:i|we|he|she|they|(?:the |my )?(?:\w+ )?(?:ANIMAL|ENCLOSURE|kids?|son|daughter)) )?"
    r"(?:(?:have|has|just|already|only|am|is) )*"
    r"(?:drank|drunk|had|ate|eaten|finished|drinking|eating|swallowed) (?:(?:some|a|an|my|his|her|its|their|the|one"
    r"|two|all"
    r"|of|cup|glass|bowl|bit|lot|little|fresh|clean|plain) )*(?:coffee|tea|juice|cola|beer|wine|milk|lunch|dinner"
    r"|breakfast"
    r"|sandwich|biscuits?|mouse|mice|rats?|crickets?|locusts?|worms?|mealworms?|salad|greens|lettuce|(?<!the )water"
    r"|spit|saliva|(?<=my )(?:pill|pills|tablets?|medicine|vitamins?)"
    r"|(?<=my )(?:own )?(?:spit|drink|vitamin))"
    r"(?: (?:today|now|again|already|first|just now|this morning))*(?: ?[.!])*$",
    *words_of("drank drunk had ate eaten finished drinking eating swallowed"),
)
_AIRED = Pattern(
    r"^(?:so |and |but |well )*(?:(?:the |both |all the )?(?:windows?|doors?|fans?)(?: is| are| has| have| 's| was|"
    r" were| been| all)*"
    r" (?:open|ajar|on)|(?:i|we) (?:have |am |are |was |were )*(?:been |stayed |kept |gone )?(?:out of|outside|away"
    r" from) the room)"
    r"(?: (?:all the time|the whole time|ever))? since (?:i|we|the|that) ?(?:\w+ ){0,2}(?:sprayed|spraying|misted"
    r"|applied|started|rinsed|rinsing|wiped|washed|dried)(?: it| that)?(?: down| off| dry)?(?: ?[.!])*$",
    "since",
)
_GETS = (
    r"(?:get|gets|goes|swallow|swallows|drink|drinks|splash|splashes|breathe|breathes|inhale|inhales|touch|touches|lick"
    r"|licks|eat|eats|is splashed|is sprayed|hits?|drips?)"
)
_SUPPOSED = Pattern(
    rf"\bif (?:i|we|he|she|it|they|someone|somebody|anyone|a \w+|my \w+|(?:the |my )?(?:\w+ )?(?:ANIMAL|ENCLOSURE|AGENT"
    rf"|BOTTLE|STOCK)|some|some of it|the kids?|the spray)(?: \w+)? {_GETS}\b"
    r"|^(?:so |and |but )*(?:is|are|how) (?:\w+ )?(?:the )?(?:AGENT|STOCK|BOTTLE|MIX|it|this|they) (?:\w+ )?"
    r"(?:dangerous|harmful|bad|toxic|poisonous|corrosive|irritating|safe) (?:\w+ )?(?:in|to|on|for|near)"
    r" (?:the |your |my |an |people 's )?"
    r"(?:eyes?|skin|hands?|mouth|lungs?)\b",
    *("if ", "is ", "are ", "how "),
)
_WOULD = Pattern(
    r"^(?:so |and |but |hey )*(?:would|could|can|does|will|might) (?:it|this|that|AGENT|STOCK|MIX|the \w+)(?: \w+)? "
    r"(?:burn|hurt|sting|damage|harm|irritate|blind|bother)\b.*\b(?:eyes?|skin|hands?|lungs?|throat|nose)\b"
    r"|^(?:so |and |but |hey )*what (?:happens )?if (?:i|we|he|she|it|they|some|someone|somebody|my \w+)"
    r"(?: \w+)? (?:got|splashed|swallowed|drank|inhaled|breathed|touched|licked|ate)\b",
    *("would", "could", "can", "does", "will", "might", "what"),
)
_NOW = Pattern(r"\b(?:help|just|now|already|hurts?|stings?|burns?|burning|stinging|ow|ouch|my eyes? (?:is|are))\b")


KEPT_OFF = Pattern(
    r"^(?:so |and |ok )*how (?:do|can|should|would|could|will) (?:i|we|you) (?:best )?(?:keep|avoid|stop|prevent|not"
    r" get"
    r"|protect)\b.*\b(?:my|our|your|the|any) (?:eyes?|mouth|skin|lungs?|hands?|face|nose)\b(?: ?\?)?$",
    "how ",
)
""" "How do I keep it out of my eyes": what to wear, and nothing is in them yet."""


WORDS = words_in(_MEAL)
"""Words that a meal turns on."""


def denies_harm(text: str) -> bool:
    """ "No bleach in my eye", "he hasn't escaped", "I nearly spilled it", "I drank my coffee": nobody was hurt."""
    if KEPT_OFF.match(text) is not None and _NOW.search(text) is None:
        return True
    if text.endswith("?") or _OF_ALL.search(text):
        return False
    return _DENIED.search(text) is not None or _MEAL.match(text) is not None


def aired_since(text: str) -> bool:
    """ "The window's been open since I sprayed": of the window, and no spraying told anew."""
    return _AIRED.match(text) is not None


def is_supposed(text: str) -> bool:
    """ "What do I do if I get bleach in my eye": asked beforehand, so no clock starts."""
    if _WOULD.match(text) is not None:
        return True
    return _SUPPOSED.search(text) is not None and _NOW.search(text) is None
