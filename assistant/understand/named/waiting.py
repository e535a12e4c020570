"""Waiting tubs by what the keeper calls them, groups that are named, and racks."""

from __future__ import annotations

import re
from typing import Literal

from assistant.core.household import Household
from assistant.understand.named.tub_words import NAMED_TUB, SCRUBBED_TUB
from assistant.understand.text.known_words import words_of
from assistant.understand.text.patterns import Pattern

_NO_NAME = words_of(
    """
    the a an my his her its their that this our in into to of out and back which what same other another from put got
    is was were are has have him it them one each no any every all i you he she who with for on at by new old wet dry
    not never only just washed cleaned disinfected scrubbed bleached rinsed wash clean disinfect scrub bleach rinse
    """
)
_TUB = Pattern(rf"\b((?:[a-z]+ ){{1,2}})({NAMED_TUB})\b")
_CLEAN = r"(?:clean|cleaned|washed|disinfected|sanitised|sanitized|sterilised|sterilized|scrubbed|bleached|rinsed)"
_CLEANED = Pattern(
    r"\b(?:washed|cleaned|disinfected|sanitised|sanitized|sterilised|sterilized|scrubbed|bleached|rinsed"
    r"|(?:not|never|did \w+) (?:wash|clean|disinfect|sanitise|sanitize|sterilise|sterilize|scrub|bleach|rinse))\b"
    rf"(?: \S+){{0,4}} (?:\w+ ){SCRUBBED_TUB}\b|\b(?:\w+ ){SCRUBBED_TUB}"
    rf"(?: is| are| were| was| 's| has| have| had| been| not| never| yet| still| really| all| now| both)* {_CLEAN}\b"
)
_DISINFECTED = Pattern(r"\b(?:disinfect|saniti[sz]e|sterili[sz]e|bleach)\w*\b")
_ASKS_IF_CLEAN = Pattern(
    r"^(?:(?:and|so|ok|but|wait|um|hey) ,? ?)*(?:(?:is|are|was|were|has)\b|did (?:i|we|he|she|they"
    r"|you|any\w*|some\w*)\b"
    r"|(?:have|had) (?:i|we|you|they|any\w*|some\w*)\b)|\?$"
)
_ASKS_ELSE = Pattern(
    r"^(?:(?:and|so|ok|but) )*(?:how|what|when|where|which|who|why|should|shall|can|could|do|does"
    r"|must|may|will|would)\b"
)
_WASHED_IN_IT = Pattern(
    r"\b(?:washed|cleaned|disinfected|scrubbed|bleached|rinsed|soaked) (?:\S+ ){1,4}in (?:the |a |my )?"
    rf"(?:\w+ ){{1,2}}{SCRUBBED_TUB}\b"
)
""" "Washed the tongs in the blue tub": they, and not the tub."""
_NOT_CLEANED = Pattern(
    r"\b(?:not|never|nobody|no one|noone|none of|neither|without|nearly|almost|half|only|just rinsed|just washed|forgot"
    r"|forgotten|forget|need\w*|should|will|would|going to|gonna|about to|want\w*|have to|has to|must|meant to|supposed"
    r"|trying|tried|thought|think|maybe|perhaps|might|may|if|whether|unless|until|tomorrow|hardly|barely|let me|sure)\b"
)
"""It isn't so, isn't yet, or nobody is sure: not taken as clean."""

GROUPS: tuple[tuple[str, Pattern], ...] = (
    ("sick", Pattern(r"\b(?:sick|ill|poorly|unwell|infected|hospital)\b")),
    ("new", Pattern(r"\b(?:quarantined?|isolation|newcomers?|new (?:ones?|arrivals?|animals?))\b")),
    ("healthy", Pattern(r"\b(?:healthy|well again|all clear|recovered|better|cleared|normal)\b")),
)
_MARKS = Pattern(
    r"\b(?:mark|move|put|set|change|make|list|record|note|log|flag|switch|add|treat|count)\b"
    r"|\b(?:is|are|'s|looks?|seems?) (?:now )?(?:sick|ill|poorly|unwell|healthy|well again|better|clear|cleared"
    r"|recovered"
    r"|in quarantine)\b|\bcleared by\b|\bvet (?:has |'s )?(?:cleared|passed)\b"
)


_STAYS = Pattern(
    r"^(?:please |just |then |ok |so |and )*(?:keep|leave) (?:\S+ ){1,3}?in (?:the|his|her|its|their) (?:\w+ )?"
    rf"{SCRUBBED_TUB}\b|\bstays? in (?:the|his|her|its|their) (?:\w+ )?{SCRUBBED_TUB}\b"
)


def stays_in_the_tub(plain: str) -> bool:
    """ "Keep her in the tub": she waits on, and no step is done by it."""
    return _STAYS.search(plain) is not None


_SHUT_IN = Pattern(
    r"\b(?:shut|closed|locked|clipped|zipped) (?:back )?(?:in|up|away)\b|\blid (?:is )?(?:on|shut|closed|clipped)\b"
    r"|\b(?:secure|secured|tubbed|boxed)\b"
    rf"|\bin(?:to)? (?:the|a|an|his|her|its|their) (?:\w+ )?{NAMED_TUB}\b"
)


def shut_in(plain: str) -> bool:
    """Whether the animal is said to be shut in, or in a waiting tub."""
    return _SHUT_IN.search(plain) is not None


def tubs_in(plain: str) -> tuple[str, ...]:
    """Waiting tubs named by more than "the tub": "blue tub", "small holding tub"."""
    found = []
    for match in _TUB.finditer(plain):
        words = match.group(1).split()
        while words and words[0] in _NO_NAME:
            words = words[1:]
        if words and not set(words) & _NO_NAME:
            found.append(" ".join((*words, match.group(2))))
    if found:
        sort = found[0].split()[-1]
        found += [f"{one[1]} {sort}" for one in _THE_OTHER.finditer(plain) if one[1] not in _NO_NAME]
    return tuple(dict.fromkeys(found))


_THE_OTHER = Pattern(r"\bin(?:to)? the ([a-z]+) one\b", " one")
""" "... in the blue tub and pepper's in the grey one"."""


_INTO = Pattern(
    r"(?:\b|(?='))(?:put|popped|moved|got|placed|shut|stuck|tubbed|taken|lifted|is|are|'s|went|goes|gone"
    r"|has been)\b(?: \S+){0,5} in(?:to)?"
    rf" (?:the |a |my |his |her |their )?(?:[a-z]+ ){{1,2}}{NAMED_TUB}\b"
)
_ASKS = Pattern(
    r"\?$|\b(?:what is|which|best)\b"
    r"|^(?:and |so )?(?:is|are|who|what|which|where|how|did|do|can|could|should|may|was|has|have|since)\b"
)
_NOT_YET = Pattern(r"\b(?:not|never|will|going to|about to|let me|want to|need to|should|before|cannot)\b")


_ALL_OUT = Pattern(
    r"^(?:(?:and|so|ok) )*(?:are |is )?(?:all (?:three|two|four|five|NUMBER|of them)|both|everyone|everybody"
    r"|they all|they both)"
    r"(?: of them)? out ?\?$|^(?:(?:and|so|ok) )*(?:who is where|where is every(?:one|body)"
    r"|where are they all)(?: \?)?$"
)


def asks_who_is_out(plain: str) -> bool:
    """ "All three out?" """
    return _ALL_OUT.search(plain) is not None


def into_a_tub(plain: str) -> bool:
    """True when an animal is said to be in a waiting tub, by its name, by now."""
    return (
        bool(tubs_in(plain))
        and _INTO.search(plain) is not None
        and _ASKS.search(plain) is None
        and _NOT_YET.search(plain) is None
        and "back" not in plain.split()
    )


def only_a_germ(plain: str) -> bool:
    """True when what got onto an animal is a mite or a germ, and no product."""
    return "ORGANISM on" in plain and not re.search(
        r"AGENT|STOCK|BOTTLE|\b(?:spray|disinfectant|cleaner|eye|my)\b", plain
    )


def tub_told(plain: str) -> Literal["disinfected", "washed", "not", "asked"] | None:
    """What is said or asked of whether a waiting tub, by its name, is clean; None: nothing of the kind.

    Only what is told of as done, and as disinfected, is that: a tub taken as clean is one for the next animal.
    """
    if not tubs_in(plain) or _CLEANED.search(plain) is None or _ASKS_ELSE.match(plain) or _WASHED_IN_IT.search(plain):
        return None
    if _ASKS_IF_CLEAN.search(plain):
        return "asked"
    if _NOT_CLEANED.search(plain):
        return "not"
    return "disinfected" if _DISINFECTED.search(plain) else "washed"


def groups_in(plain: str) -> tuple[str, ...]:
    """The groups named."""
    return tuple(group for group, pattern in GROUPS if pattern.search(plain))


def marks_group(plain: str) -> bool:
    """True when an animal is to be put into a group: "mark her sick", "she's healthy again"."""
    return _MARKS.search(plain) is not None and bool(groups_in(plain))


_TOLD = Pattern(
    r"\b(?:tested|came back|come back|swab\w*|results?|test)\b.*\bpositive\b|\bpositive for\b|\b(?:cleared"
    r"|clear) by the vet\b"
    r"|\bvet (?:has |'s )?(?:cleared|passed)\b|\b(?:saw|seen|found|spotted|got|has|have) (?:a |some "
    r"|the )?(?:mites?|ORGANISM)\b"
)


def outbreak_told(plain: str) -> bool:
    """True when a positive test, a mite, or the vet's all clear is told."""
    return _TOLD.search(plain) is not None


_OF_A_GROUP = r"(?:healthy|sick|ill|new|quarantined?|hospital)"
_ALL_OF_A_GROUP = Pattern(
    rf"\b(?:all|every|each|both|only)(?: of)?(?: the| my)? {_OF_A_GROUP}\b|\b(?:the |my )?{_OF_A_GROUP}"
    r" (?:ones|animals|tanks|tubs|boxes|enclosures|lot|group|snakes|geckos|reptiles)\b"
    r"|\bthe (?:sick|quarantined?) one\b"
)
_THE_RACK = Pattern(r"\bthe (?:whole )?rack\b")


def homes_of(plain: str, household: Household) -> tuple[str, ...]:
    """Every enclosure of the racks or groups that are named: "rack a", "all the healthy ones"."""
    racks = racks_in(plain, household) or _the_only_rack(plain, household)
    groups = groups_in(plain) if _ALL_OF_A_GROUP.search(plain) else ()
    if not racks and not groups:
        return ()
    return tuple(
        home.name
        for home in household.enclosures
        if (not racks or home.rack in racks) and (not groups or home.group in groups)
    )


_SETTINGS: tuple[tuple[tuple[str, str], Pattern], ...] = (
    (("gallon", "imperial"), Pattern(r"\b(?:imperial|british|uk|english)\b")),
    (("gallon", "US"), Pattern(r"\b(?:us|american|usa|states)\b")),
    (("metric", ""), Pattern(r"\b(?:metric|litres?|liters?|ml|millilitres?|milliliters?|centi\w+)\b")),
    (("ratio", "in"), Pattern(r"\bcolon\b.*\bin\b|\b(?:one )?part in\b|\bin all\b")),
    (("ratio", "to"), Pattern(r"\bcolon\b.*\bto\b|\b(?:one )?part to\b|\bplus water\b")),
)


def setting_in(plain: str) -> tuple[str, str] | None:
    """A setting that is named: what a gallon or a colon means."""
    if _WHICH_OF_BOTH.search(plain):
        return None  # "are you using US or imperial": neither is wanted
    return next((setting for setting, pattern in _SETTINGS if pattern.search(plain)), None)


_WHICH_OF_BOTH = Pattern(r"\b(?:us|american|imperial|british|uk) or (?:us|american|imperial|british|uk)\b")


def racks_in(plain: str, household: Household) -> tuple[str, ...]:
    """The household's racks that are named."""
    racks = dict.fromkeys(home.rack for home in household.enclosures if home.rack)
    return tuple(rack for rack in racks if re.search(rf"\b{re.escape(rack.casefold())}\b", plain))


def _the_only_rack(plain: str, household: Household) -> tuple[str, ...]:
    """ "The rack", where the household has just one that is called so."""
    if not _THE_RACK.search(plain):
        return ()
    racks = {home.rack for home in household.enclosures if home.rack}
    called = tuple(rack for rack in racks if "rack" in rack.casefold().split())
    return called if len(called) == 1 else tuple(racks) if len(racks) == 1 else ()


_NEW_ONE = r"(?:snake|gecko|lizard|one|animal|python|boa|tortoise|dragon|reptile|frog|ANIMAL)"
_NEWCOMER = Pattern(
    rf"\b(?:new (?:\w+ |ANIMAL )?(?:{_NEW_ONE}|arrival)|newcomer|newbie|rescue)\b.*\b(?:came|comes|coming|arriv\w+"
    r"|join\w*|moved|moving|here|brought|today)\b"
    rf"|\b(?:got|took in|bought|brought(?: home)?|have) (?:a|another|one more) (?:new )?(?:\w+ )?{_NEW_ONE}\b"
    r"|\banother (?:one|newcomer) (?:came|arrived|joined)\b"
)
_BEGINS_AGAIN = Pattern(
    r"\b(?:restarts?|start\w*(?: \S+){0,5} (?:again|over|afresh|from (?:zero|scratch|the start|day one))|begin\w*"
    r"(?: \S+){0,5} (?:again|over)|reset\w*|back to (?:zero|day (?:one|zero)))\b"
)


def restart_in(plain: str) -> str | None:
    """What is said to start a quarantine again, from `QuarantineRestarted`; None: nothing is."""
    if _NEWCOMER.search(plain):
        return "newcomer"
    if not _BEGINS_AGAIN.search(plain):
        return None
    if speaks_of_a_test(plain):
        return "test"
    return "sign" if re.search(r"\b(?:sick|ill|sign|symptoms?|mites?|ORGANISM|cough\w*)\b", plain) else "newcomer"


def speaks_of_a_test(plain: str) -> bool:
    """True when a test, a swab or a result is spoken of."""
    return re.search(r"\b(?:test\w*|positive|swab\w*|results?)\b", plain) is not None


_NEUTRAL = Pattern(
    r"\bneutrali[sz]\w*\b|\b(?:put|pour|tip|use|spray|throw|add)\b(?: \S+){0,3} (?:AGENT|STOCK|BOTTLE|baking soda|soda)"
    r"(?: \w+)? (?:on|onto|over|to) (?:it|that|the (?:puddle|spill|mess)|top)\b"
)


def neutralises(plain: str) -> bool:
    """True when something is to be put onto a spill to make it harmless."""
    return _NEUTRAL.search(plain) is not None
