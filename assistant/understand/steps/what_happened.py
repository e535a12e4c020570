"""Whether a text tells, in plain words, of something that happened to a surface or that was found there.

There is no end to what may happen to one: a mouse runs through it, the mix was a guess, the roof was out of reach. So
it isn't what matters that is listed, but what surely is of something else: the keeper, the house, the talk itself.
"""

from __future__ import annotations

from assistant.understand.named.animal_words import ANIMALS
from assistant.understand.steps.of_the_keeper import WORN
from assistant.understand.text.parts_of_it import FILLING, PART
from assistant.understand.text.patterns import Pattern

_IRREGULAR = (
    r"broke|came|caught|crept|cut|dealt|did|drew|dripped|drove|fell|flew|found|froze|gave|got|grew|had|held|hid|hit"
    r"|hung|kept|knew|laid|left|lent|let|lost|made|meant|met|put|ran|reached|rose|rubbed|said|sat|saw|sent|shed|shook"
    r"|shot|shut|slept|slid|spat|spilt|spread|sprang|stood|stuck|swept|took|threw|touched|trod|went|wore|wrote|began"
    r"|blew|brought|chose|forgot|skimped|cheated"
)
_HAPPENED = Pattern(
    rf"\b(?:{_IRREGULAR}|was|were|been|gone|(?:did|could|have|has|had|was|were) not|used|[a-z]{{3,}}(?<!ne)(?<!fe)ed)\b"
)
_IS_SO = Pattern(
    r"\b(?:is|are|'s|looks?|feels?|seems?|keeps?|goes|comes|has|have|[a-z]{3,}ing)\b|^(?:still |all |a bit )\w+",
)
_OF_IT = Pattern(
    rf"\b(?:(?:in|on|onto|into|through|over|across|under|inside|near|next to|against|off|behind|around|by) (?:it|them"
    rf"|there|that one)|(?:the |its |my |one |both |some |all )(?:\w+ )?(?:{PART}|{FILLING}|walls?)"
    rf"|(?:{PART}) ?(?:is|are|'s|still|was)|\w+ed (?:it|them)|ENCLOSURE|the (?:tank|box|cage|viv|vivarium"
    r"|enclosure|tub)"
    r"|mix|concentrate|BOTTLE|bottle|AGENT|STOCK|product|spray\w*|water|wet|gave it|did it|done it|strength|dose"
    r"|wetting|beading|weeping|sick one|dirty|weak|pale|cloudy|foggy|greasy|sticky|gunk\w*|grime|grimy|crud\w*"
    r"|filth\w*|rust\w*|chalky)\b"
)
_BEGUN = r"(?:(?:oh|ok|well|so|and|but|just|sorry|um|er|ah|no|yeah|actually|honestly|to be honest|now|also) ?,? ?)*"
_NOBODY = (
    r"(?:wife|husband|partner|mum|mom|dad|mother|father|son|daughter|sister|brother|nan|gran\w*|aunt\w*|uncle|cousin"
    r"|boss|neighbou?rs?|postman|man|woman|lady|bloke|kids?|children|bairns?|lads?|boys?|girls?|friend|mate|teacher"
    r"|doctor|dentist|baby|wifi|internet|phone|mobile|telly|tv|radio|computer|laptop|car|truck|bus|train|kettle|oven"
    r"|fridge|freezer|boiler|heating|washing machine|incubator|hamster|goldfish|bathroom|ironing|fuse|till"
    r"|tumble dryer|dishwasher|dryer|printer|charger|bulb|lamps?|lights?"
    r"|light|heat mat|mat|thermostat|hob|microwave|toaster|alarm|clock|parcel|post|news|film|match|game|bill|shop"
    r"|weather|sun|rain|traffic|dinner|lunch|tea|coffee|breakfast|supper|cake|milk|bread|doorbell|bell)"
)
_OF_OTHERS = Pattern(
    rf"^{_BEGUN}(?:(?:the|my|our|his|her|their|a|some|this) )?(?:\w+ )?{_NOBODY}(?: |'s|$)"
    rf"|^{_BEGUN}(?:i am|we are|i have(?! not)|i feel|i need|i want|i think|i hope|i love|i like|i hate|i wish|i would"
    r"|i could do|i better|we should|let us|you|your|there is a cloud|time)\b"
    rf"|^{_BEGUN}(?:he|she|they|ANIMAL|the (?:{ANIMALS})|my (?:{ANIMALS}))(?: is| are| 's| has| have| just| looks?)+\b"
    rf"|\b(?:my|our|his|her|your) (?!ENCLOSURE|BOTTLE|ANIMAL)(?:\w+ )?(?:{WORN}|eyes?|nose|throat|head|neck|knees?"
    r"|legs?"
    rf"|chest|stomach|tooth|teeth|ears?|face|skin|fingers?|nails?|ring|watch|keys?|glasses|wallet|purse|bag|{_NOBODY})\b"
    rf"|\b(?:a|the|some|of|for|to|had|ate|drank|at) (?:my )?(?:lunch|dinner|breakfast|tea|coffee|supper|beer|sandwich"
    r"|biscuits?|snack|work|home|school|church|bed|telly|kitchen|bathroom|toilet|garden|bus|car|truck|shops?|street"
    r"|hallway|landing|stairs|sofa|phone|radio|washing|ironing|hoovering|cricket|film|match|game|score|oven|fridge"
    r"|carpet|rug|bin|bins|cupboard|door behind)\b"
)
"""Surely of the keeper, of those who live there, or of the house. "Glass" and "door" are parts of what is cleaned."""
_OF_THE_TALK = Pattern(
    rf"^{_BEGUN}(?:that (?:was|is)|it (?:is|was)|this is)(?: (?:so|very|too|really|a bit|all|not|just|quite))*"
    r" (?:quick|fun|fast|good|great|nice|lovely|easy|hard|work|fine|ok|okay|right|wrong|all|it|me|you|him|her|them"
    r"|enough|better|helpful|silly|rude|funny|late|early|cold|hot|warm|dark|noisy|loud|quiet|boring|monday|tuesday"
    r"|wednesday|thursday|friday|saturday|sunday|time|true|clear|handy|back on|interesting|annoying|tiring|nothing)\b"
    r"|\b(?:you|told you|i (?:said|meant|heard|asked|thought|knew)|never ?mind|nothing (?:happened|else)|what i (?:said"
    r"|meant)|keep going|misheard|undo|thanks?|cheers|sorry about)\b"
    r"|^(?:[a-z']+(?: ,)? )?(?:[a-z']+)$"
)
"""Of what was said, or the small talk of a sitting; or no more than two words."""
_ASKS_AFTER_ALL = Pattern(
    r"(?:, ?|\band |\bbut )(?:so )?(?:how|what|when|where|which|who|why|is (?:it|that|he|she|this|there)|are they|does"
    r"|do (?:i|you|we|they)|did (?:i|he|she)|will it|should i|shall i|can i|may i)\b|\?"
)
_OF_A_BODY = Pattern(
    rf"\b(?:his|her|their|its|ANIMAL 's|the (?:{ANIMALS}) 's|my (?:{ANIMALS}) 's) (?:tail|toes?|eyes?|nostrils"
    r"|skin|shed|nose|mouth"
    r"|head|tongue|droppings|belly|scales?|vent)\b(?!.* (?:on|in|through|across|over) (?:it|there)\b)"
    r"|\bold skin\b|\bto hatch\b|\beggs? take\b|\brefused\b|\boutside (?:is|was)\b|^i breathed\b"
)
_OF_OTHER_TIMES = Pattern(
    r"\b(?:last (?:week|month|year|time)|years? ago|used to|once upon|when i was|tomorrow|next (?:week|month|year"
    r"|time|day))\b"
)
_NO_OTHER_SUBJECT = Pattern(
    rf"^{_BEGUN}(?:only |just |then |i |we |it |that |this |they |all |some |one )*"
    rf"(?:{_IRREGULAR}|was|were|been|used|(?:did|could|have|has|had|was|were)(?: not)?|[a-z]{{3,}}ed)\b"
)
_OWN_LIFE = Pattern(
    rf"^{_BEGUN}(?:i |we |(?:he|she|they|it) )?(?:just )?(?:had|ate|drank|slept|woke|watched|read|heard|saw|called|rang"
    r"|texted|paid|bought|sold|sneezed|coughed|yawned|laughed|cried|worked|drove|walked|cooked|wanted|needed|played"
    r"|thought|hoped|wondered|knew|came|went(?! (?:over|round|easy|light|past|by))|learned|slipped|tripped|burned"
    r"|burnt|broke|lost|closed|cut|got"
    r"|dropped|has|opened|been)\b"
)
""" "Drank my tea", "lost my gloves": of the clean only where it is said to be."""


def tells_what_happened(plain: str) -> bool:
    """Whether it may be of a surface: what happened, unless surely of something else; what is so, if it is of it.

    plain: masked, and known not to ask.
    """
    if any(of.search(plain) for of in (_OF_THE_TALK, _OF_OTHERS, _OF_A_BODY, _OF_OTHER_TIMES, _ASKS_AFTER_ALL)):
        return False
    of_it = _OF_IT.search(plain) is not None
    if _HAPPENED.search(plain):
        return of_it or (_NO_OTHER_SUBJECT.match(plain) is not None and _OWN_LIFE.match(plain) is None)
    return of_it and _IS_SO.search(plain) is not None


def tells_an_event(plain: str) -> bool:
    """The same of what was done or happened alone, and not of what is so: of a text that was taken for a question."""
    return _HAPPENED.search(plain) is not None and not _ASKS_SOMEWHERE.search(plain) and tells_what_happened(plain)


_ASKS_SOMEWHERE = Pattern(
    r"\b(?:how|what|when|which|who|where|why|whether|can|should|shall|would|may|tell me|remind me|remember|recall|wear"
    r"|been (?:loose|poorly)|help|(?:is|are|am|was|were|do|does|did|has|have|had|will) (?:i|it|he|she|we|you|they|this"
    r"|that|there|the|ANIMAL|ENCLOSURE)|label\w*|sticker|writing|mystery|unmarked)\b"
)
