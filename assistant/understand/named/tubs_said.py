"""Waiting tubs by what the keeper calls them: who is in which, and whether it is clean for the next one."""

from __future__ import annotations

from typing import Literal

from assistant.understand.named.tub_words import NAMED_TUB, SCRUBBED_TUB
from assistant.understand.text.asking import ASKED
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
    r"(?:\b|(?='))(?:put|popped|moved|got|placed|shut|stuck|tubbed|taken|lifted|is|are|'s|went|goes|gone|has been)\b"
    rf"(?: \S+){{0,5}} in(?:to)? (?:the |a |my |his |her |their )?(?:[a-z]+ ){{1,2}}{NAMED_TUB}\b"
)
_ASKS = Pattern(rf"{ASKED}|^(?:and |so )?since\b|\b(?:what is|which|best|is there|any(?:body|one))\b")
_NOT_YET = Pattern(r"\b(?:not|never|will|going to|about to|let me|want to|need to|should|before|cannot)\b")


def into_a_tub(plain: str) -> bool:
    """True when an animal is said to be in a waiting tub, by its name, by now."""
    return (
        bool(tubs_in(plain))
        and _INTO.search(plain) is not None
        and _ASKS.search(plain) is None
        and _NOT_YET.search(plain) is None
        and "back" not in plain.split()
    )


_STAYS = Pattern(
    r"^(?:please |just |then |ok |so |and )*(?:keep|leave) (?:\S+ ){1,3}?in (?:the|his|her|its|their) "
    rf"(?:\w+ )?{SCRUBBED_TUB}\b|\bstays? in (?:the|his|her|its|their) (?:\w+ )?{SCRUBBED_TUB}\b"
)


def stays_in_the_tub(plain: str) -> bool:
    """ "Keep her in the tub": she waits on, and no step is done by it."""
    return _STAYS.search(plain) is not None


_SHUT_IN = Pattern(
    r"\b(?:shut|closed|locked|clipped|zipped) (?:back )?(?:in|up|away)\b|\blid (?:is )?(?:on|shut|closed|clipped)\b"
    rf"|\b(?:secure|secured|tubbed|boxed)\b|\bin(?:to)? (?:the|a|an|his|her|its|their) (?:\w+ )?{NAMED_TUB}\b"
)


def shut_in(plain: str) -> bool:
    """Whether the animal is said to be shut in, or in a waiting tub."""
    return _SHUT_IN.search(plain) is not None


_ALL_OUT = Pattern(
    r"^(?:(?:and|so|ok) )*(?:are |is )?(?:all (?:three|two|four|five|NUMBER|of them)|both|everyone|everybody|they all"
    r"|they both)(?: of them)? out ?\?$"
    r"|^(?:(?:and|so|ok) )*(?:who is where|where is every(?:one|body)|where are they all)(?: \?)?$"
)


def asks_who_is_out(plain: str) -> bool:
    """ "All three out?" """
    return _ALL_OUT.search(plain) is not None


_CLEAN = r"(?:clean|cleaned|washed|disinfected|sanitised|sanitized|sterilised|sterilized|scrubbed|bleached|rinsed)"
_CLEANED = Pattern(
    r"\b(?:washed|cleaned|disinfected|sanitised|sanitized|sterilised|sterilized|scrubbed|bleached|rinsed|"
    r"(?:not|never|did \w+) (?:wash|clean|disinfect|sanitise|sanitize|sterilise|sterilize|scrub|bleach|rinse))\b"
    rf"(?: \S+){{0,4}} (?:\w+ ){SCRUBBED_TUB}\b"
    rf"|\b(?:\w+ ){SCRUBBED_TUB}(?: is| are| were| was| 's| has| have| had| been| not| never| yet| still| really| all"
    rf"| now| both)* {_CLEAN}\b"
)
_DISINFECTED = Pattern(r"\b(?:disinfect|saniti[sz]e|sterili[sz]e|bleach)\w*\b")
_ASKS_IF_CLEAN = Pattern(
    r"^(?:(?:and|so|ok|but|wait|um|hey) ,? ?)*(?:(?:is|are|was|were|has)\b|did "
    r"(?:i|we|he|she|they|you|any\w*|some\w*)\b|(?:have|had) (?:i|we|you|they|any\w*|some\w*)\b)|\?$"
)
_ASKS_ELSE = Pattern(
    r"^(?:(?:and|so|ok|but) )*(?:how|what|when|where|which|who|why|should|shall|can|could|do|does|must|may|will"
    r"|would)\b"
)
_WASHED_IN_IT = Pattern(
    r"\b(?:washed|cleaned|disinfected|scrubbed|bleached|rinsed|soaked) (?:\S+ ){1,4}in (?:the |a |my )?"
    rf"(?:\w+ ){{1,2}}{SCRUBBED_TUB}\b"
)
""" "Washed the tongs in the blue tub": they, and not the tub."""
_NOT_CLEANED = Pattern(
    r"\b(?:not|never|nobody|no one|noone|none of|neither|without|nearly|almost|half|only|just rinsed|just washed"
    r"|forgot|forgotten|forget|need\w*|should|will|would|going to|gonna|about to|want\w*|have to|has to|must|meant to"
    r"|supposed|trying|tried|thought|think|maybe|perhaps|might|may|if|whether|unless|until|tomorrow|hardly|barely"
    r"|let me|sure)\b"
)
"""It isn't so, isn't yet, or nobody is sure: not taken as clean."""


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
