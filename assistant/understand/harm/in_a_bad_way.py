"""An animal in a bad way, in few words: birds and fish fail first in fumes, dogs and cats lick floors."""

from __future__ import annotations

from assistant.understand.harm.patterns import ANIMAL
from assistant.understand.text.patterns import Pattern

_PET = (
    r"(?:birds?|budgies?|budgerigar|parrots?|cockatiels?|canary|canaries|finch(?:es)?|lovebirds?|fish|hamsters?"
    r"|rabbits?|bunny|guinea pigs?|ferrets?|dogs?|cats?|puppy|kitten)"
)
_LEAD = r"^(?:(?:oh|no|help|god|shit|quick|please|and|now|i think|all|both|one of|the|my|our|,) ?)*"
_IS = r"(?: is| are| 's| has| have| just| all| both| gone| lying| looks?| seems?| keeps?| does| do| really| now)*"
_END = (
    r"(?: (?:now|help|quick|any ?more|at all|a lot|over|up|in there|and \w+|on the \w+|off (?:his|her|its|the) \w+))*"
)
_DOWN = Pattern(
    rf"{_LEAD}{_PET}{_IS} (?:drool\w*|froth\w*|foam\w*|gasp\w*|dying|limp|floppy|convuls\w*|fitting|twitching|wobbl\w*"
    r"|fell (?:over|off)|fallen (?:over|off)|keeled over|belly up|upside down|floating"
    rf"|not (?:mov\w+|breath\w+|wak\w+)|breathing (?:very |so |really )*(?:fast|hard|heavily)){_END}(?: ?[.!])*$"
)
_PANTS = Pattern(
    rf"{_LEAD}(?:\w+ )?(?:{ANIMAL}|(?<!the )(?<!my )ENCLOSURE)(?: is| 's| seems| are| keeps| looks)* breathing "
    r"(?:very |so |really |too |quite )*(?:fast|hard|heavily|funny|oddly|weird\w*|badly"
    r"|strangely)(?: now)?(?: ?[.!])*$",
    "breathing",
)
_LICKED = Pattern(
    rf"{_LEAD}{_PET}(?: has| have| is| 's| just)* (?:lick\w*|lapp\w*|drank|drinking)"
    r"(?: (?:from|up|off|at|some of))* (?:the |that |my )?(?:\w+ )?(?:floor|puddle|glass|tank|box|cage|tub"
    r"|bottle|BOTTLE"
    r"|ENCLOSURE|cloth|sponge|bucket|sink|surface|wet)(?: now)?(?: ?[.!])*$",
    *("lick", "lapp", "drank", "drinking"),
)


def in_a_bad_way(text: str) -> bool:
    """ "The bird's not moving", "clover is breathing fast": the vet now, and fresh air."""
    return _DOWN.match(text) is not None or _PANTS.match(text) is not None


def licked_it_up(text: str) -> bool:
    """ "The dog licked the floor", told to whoever disinfects it."""
    return _LICKED.match(text) is not None
