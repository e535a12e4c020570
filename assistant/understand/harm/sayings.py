"""Sayings with the words of harm in them, as a whole text: "that caught my eye", "my eyes are bigger than my stomach".

They tell of nothing, so no question is guessed from what else they sound like.
"""

from __future__ import annotations

from assistant.understand.text.patterns import Pattern

_SAYINGS = (
    r"(?:that|it|this|something)(?: has| really| just)* (?:caught|catches|catch) my eye",
    r"(?:at )?eye level",
    r"(?:that|it|this)(?: is| was|'s)?(?: so| really| very| quite| an?)* eye (?:- )?open(?:ing|er)",
    r"(?:(?:that|it|this|she|he|ENCLOSURE)(?: is| was|'s) )?a sight for sore eyes",
    r"my eyes (?:are|were) bigger than my (?:stomach|belly|tummy)",
    r"(?:i am|we are|you are) (?:burning|going|getting|running) through (?:the |my |so much )*(?:AGENT|BOTTLE|STOCK)",
    r"(?:i )?(?:had to |have to |will )?choke(?:d)? down (?:the|my|that|a) (?:\w+ )*\w+",
    r"(?:do not|no use|no point|no point in|it is no use) cry(?:ing)? over (?:spilt|spilled) milk",
    r"(?:i )?(?:will |want to |am going to |should i )?AGENT my (?:own )?hair",
    r"(?:a |the |my )?AGENT(?:ed)? blonde?(?: (?:ANIMAL|ENCLOSURE|\w+))*",
    r"(?:i|we)(?: will| am going to| have been| am| are)* keep(?:ing)? an eye (?:on|out for) (?:it|that|this"
    r"|him|her|them"
    r"|things|ENCLOSURE|the \w+)",
    r"(?:that|this|it)(?: is|'s)(?: so| really| pretty| well| just)* sick",
    r"(?:a |the |my )?red eyed? (?:crocodile |tree )?(?:ANIMAL|ENCLOSURE|skinks?|frogs?)",
)
_LEAD = r"(?:(?:oh|ok|okay|well|and|so|but|yes|no|now|wow|haha|hey|,) ?)*"
_END = r"(?: (?:now|today|too|though|lately|fast|quickly|again|from here|for me))*[ .!]*"
_SAID = Pattern(
    rf"^{_LEAD}(?:{'|'.join(_SAYINGS)}){_END}$",
    *("eye", "through", "chok", "cry", "hair", "blond", "sick"),
)


def is_a_saying(text: str) -> bool:
    """Whether a masked text is such a saying and nothing more."""
    return _SAID.match(text) is not None
