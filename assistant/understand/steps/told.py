"""What a text tells of the surface and the air: dried before time, kept wet, smells or not, a wet patch.

Said so, not asked or feared: "did it dry?", "so it doesn't dry out", "it smells funny, doesn't it?" tell nothing.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Literal

from assistant.understand.steps.of_the_keeper import of_the_keeper
from assistant.understand.steps.smell_told import WET_ELSEWHERE, smell_told
from assistant.understand.steps.smell_told import WORDS as SMELL_WORDS
from assistant.understand.text.asking import ASKS_FIRST
from assistant.understand.text.parts_of_it import FILLING, FITTING, PART, WHICH
from assistant.understand.text.patterns import Pattern, words_in

_PART = (
    r"(?:lid|floor|base|bottom|top|sides?|back wall|back|front|doors?|glass|walls?|corners?|ends?|hide|branch(?:es)?"
    r"|shelf|seams?|edges?|one side|one wall|one corner|one end|(?:one|some|half|part|parts|bits|most) of it|a patch"
    r"|patches|the rest)"
)
_A_PART = Pattern(
    rf"\b({_PART})(?: of (?:ENCLOSURE|it))?(?: is| are| 's| has| have| was| were| looks?)?"
    r"(?: (?!getting|going|nearly|almost|about|starting|still|never|not|will|would|might|could)\w+)? dr(?:y|ied)\b",
    "dr",
)

_EARLY = Pattern(
    r"\bbefore (?:its |the |their |it was )?(?:time|DURATION|(?:ten|five|NUMBER)?(?: minutes?| mins?)|wet time|timer"
    r"|clock)(?: (?:was|were|is|ran|went))?(?: up| out| over| done| off)?\b|\bbefore (?:the |its |my )?DURATION\b"
    r"|\bbefore (?:it|the time) (?:was|should) (?:up|over|done|time|supposed to|meant to|have)?\b|\bbefore time\b"
    r"|\bahead of (?:its )?time\b|\b(?:too|way too|so) (?:early|soon|fast|quick|quickly)\b|\bdried early\b|\bearly\b"
    r"|\bdid not (?:even )?(?:stay|keep|remain|last)\b|\bhas not stayed wet\b|\bdidnt stay\b"
    r"|\bnot (?:had|got|done|served) (?:its|the|his|all its|all the) (?:full |whole )?"
    r"(?:time|minutes|DURATION|NUMBER)\b",
)
_DRIED = Pattern(
    r"^(?:it is |it 's |a bit |getting |quite |looks |it looks |rather )*patchy$"
    r"|\b(?:a bit|bit|slightly|getting|quite) dry (?:on|at|in|near|along|round|around|there|here)\b"
    r"|^(?:it is |it 's )?(?:only |just )?dry (?:on|at|round|along|near) the (?:top|outside|edges?|sides?|front"
    r"|surface)$"
    r"|^(?:it is |it 's )?drying (?:already|out|off|up|fast)\b"
    r"|\bdried off (?:on (?:me|us)|already|too|before|early)\b"
    r"|(?<!\bi )(?<!\bwe )(?<!i have )(?<!we have )(?<!i just )\bdried off"
    r"(?! (?:all|now|nicely|fully|properly|completely|well|everywhere|with|ok)\b)"
    r"|\bdried (?:out|up|early|too|so|way|before|already|again|on me|on us|ahead)\b"
    r"|\b(?:it|that|this|ENCLOSURE|surface|spray|film|AGENT|everything|some of it|half of it|part of it|the lot)"
    r"(?: is| has| 's| have)?(?: all| gone| just| now| already| completely)* dried\b"
    r"(?! (?:it|off with|with|the|that|this|him|her))|\bhas (?:already |gone and |gone )?dried\b"
    r"|\b(?:is|are|gone|has gone|went|'s|going|looks) (?:all |bone |completely |totally )*dry "
    r"(?:already|again|before|too|in (?:places|patches|spots|one corner))\b"
    r"|\b(?:already|gone|went|has gone) (?:all |bone |completely )?dry\b|\bdry already\b"
    r"|\bdry (?:patch|patches|spot|spots)\b|\bdid not (?:stay|keep|remain)(?: \w+){0,2} wet\b|\bhas not stayed wet\b"
    r"|\bnot wet (?:any more|anymore|any longer)\b|\bno longer wet\b|\b(?:is|was) not wet\b|\bdid not stay wet\b"
    r"|\bdid not last\b|\bdry before\b|\b(?:evaporated|dried up|run dry)\b|\bdrying too\b(?=.*\balready dry\b)",
    *("dr", "wet", "last", "evap", "patchy"),
)
_NOT_DRIED = Pattern(
    r"\b(?:if|until|till|unless|will|would|should|could|might|may|going to|gonna|want|wants|let it|let the|how|why"
    r"|what|when will|does|nearly|almost|about to|starting to|never|not dried|not dry|not yet|has not dried"
    r"|did not dry|keep it from|so that|so it|to stop|to keep|prevent|in case|hope|hoping|afraid|worried|supposed"
    r"|wait for|waiting|mealworms?|flowers|herbs|shrimp|mince|my hands|hands|towel|towel dried|gloves|laundry|clothes"
    r"|air is|in here|outside|before it (?:dries|dried)|once it|after it|as soon as|make sure|is dry now|rinsed"
    r"|after rinsing)\b"
)
_GIVES_UP = Pattern(
    r"\b(?:can not|could not|cannot) (?:do|wait|spare|face|stay|manage|be doing with|start|spray|hang)\b"
    r"|\b(?:no|not got|have not got|do not have|out of|run out of|not enough|have not) (?:the |any |enough )?time\b"
    r"|\bnot doing (?:another|it all|that)\b|\bno way (?:i am|i can)\b|\bhave to go\b|\bneed to go\b"
)
_AGAIN = Pattern(
    r"\b(?:misted|sprayed|spritzed|wetted|(?<!\bgot )(?<!\bis )(?<!\bwas )wet|squirted|soaked|rewetted|rewet|re-wet)"
    r"(?: (?:it|that|this|them|ENCLOSURE|'s|the \w+|over|down|all|a bit|some))* "
    r"(?:again|once more|another time|a second time|twice|over again|another)\b"
    r"|\b(?:gave|given|giving|got|had|put|added|laid)(?: (?:it|ENCLOSURE|that|them|the \w+|on|down))* "
    r"(?:another|a second|some more|more|a bit more|a fresh|one more|an extra|a quick|a little) "
    r"(?:light |quick |good |little )?(?:spray|mist|misting|coat|squirt|go|splash|wetting|pass|dose|round|spritz"
    r"|AGENT)\b|\b(?:another|one more|a second) (?:light |quick )?(?:spray|misting|coat|squirt|wetting|spritz)\b"
    r"|\b(?:sprayed|resprayed|misted|spritzed|squirted)(?: \S+){0,3} (?:to keep|so it (?:stays|keeps|is))\b"
    r"|\b(?:sprayed|misted|spritzed|squirted)(?: (?:it|on))? (?:a (?:bit|little|touch|tad)|some) more\b"
    r"|\b(?:rewetted|rewet|re wetted|re wet|remisted|re misted|re sprayed|resprayed)\b|\bmore AGENT on\b"
    r"|\btopped (?:it |the film |the wet |the spray )?up(?: with the (?:BOTTLE|spray))?(?: so it| to keep| while)\b"
    r"|\b(?:kept|keeping|been keeping) (?:it|ENCLOSURE|that|them|everything|the \w+|the whole thing)"
    r"(?: nice and| good and| all)? (?:wet|topped up|damp|soaked|misted)\b"
    r"(?! (?:the |for the )?(?:whole|entire|full|all))",
    *(
        "again",
        "more",
        "another",
        "second",
        "twice",
        "rewet",
        "re",
        "kept",
        "keeping",
        "fresh",
        "extra",
        "quick",
        "little",
        "topped",
    ),
)
_STILL_WET = Pattern(
    r"\bstill (?:all |nice and |good and |properly |soaking |dripping |really |very |glistening |shiny )*"
    r"(?:wet|glistening|dripping|shiny|soaked)\b|\b(?:wet|glistening|dripping|soaking|soaked) (?:all over )?still\b"
    r"|\b(?:has not|have not|not) dried (?:at all|yet|out)?\b|\b(?:staying|stays) (?:nice and )?wet\b"
    r"|\bwet as anything\b|\bwet all over\b|\bnice and wet\b",
    *("wet", "glisten", "dripping", "shiny", "soak", "dried"),
)

_WET_PATCH = Pattern(
    r"\b(?:wet|damp|moist|soggy)(?:ish)? (?:patch|patches|spot|spots|corner|corners|bit|bits|area|areas|edge|edges"
    r"|seam|seams|floor|base|lid|wall|walls|side|places|streaks?|drips?|drops?)\b|\bpuddles?\b"
    r"|\b(?:drops|droplets|drips|water) (?:left|in the|on the|still)\b"
    r"|\bstill (?:a (?:bit|little|touch|tad) |slightly |rather |quite |pretty |cold and |cool and )*"
    r"(?:damp|moist|wettish|dampish)\b"
    rf"|\b{_PART}(?: is| are| 's| feels?| looks?)(?: still| a bit| a little| slightly)* (?:wet|damp|moist)\b"
    r"|\bcondensation\b|\bkeeps? (?:on )?(?:weeping|dripping|seeping|sweating|beading|oozing|trickling|leaking)\b"
    r"|\b(?:water )?bowl(?: has| got| was| is)? (?:tipped|spilled|spilt|knocked|fell|fallen|leaked)\b"
    r"|\b(?:tipped|spilled|spilt|knocked|dropped) (?:over )?(?:the |his |her |some |a bit of )*(?:water|bowl)"
    r"(?: \w+)? (?:in|over|inside)\b|\bput (?:\w+ ){0,3}wet (?:\w+ )?(?:back|in)\b"
    r"|\b(?:feels|is|it is|that is|looks) (?:a (?:bit|little|touch) |slightly |quite )?(?:damp|moist)\b"
    rf"|\b{WHICH}(?:{PART}|{FITTING}|{FILLING})(?: is| are| 's| feels?| looks?| got| still| all| a bit| a little"
    r"| slightly| quite| really)* (?:wet|damp|moist|soggy|dripping|sodden|sopping)\b"
    rf"|\b{WHICH}(?:{PART}|{FITTING}|{FILLING})(?: is| are| 's)? still soaking\b(?! in)"
    rf"|\b{WHICH}(?:{PART}|{FILLING})(?: is| are| 's)?(?: all)? (?:soaking|soaked)\b(?! in)"
    r"|\b(?:wet|damp|moist) (?:under|behind|beneath|below|inside)\b|\bbut (?:still |a bit |it is )*(?:wet|damp)\b"
    r"|\b(?:cold and (?:wet|damp)|clammy)\b|\b(?:fogged|misted|steamed) up$"
    r"|\bwater (?:everywhere|pooled|pooling|standing|got in|came in)\b|\b(?:is|'s) pooling\b"
    r"|\b(?:sprayed|misted|spritzed) (?:some |a bit of |plain |warm )*water\b.*\bhumid"
    r"|\brain (?:came|got|blew) in\b|\b(?:bowl|dish)(?: has| is)? (?:leak\w*|overflow\w*)\b"
    r"|\b(?:rags?|cloths?|sponges?|towels?|bucket)(?: is| are| 's) still (?:standing |sitting |lying )?in "
    r"(?:it|there|here)\b|\bput (?:(?:some|the|in|his|her|a) )*(?:wet|damp|moist|soaking) (?:\w+ ){1,2}(?:back|in)\b",
    *("wet", "damp", "moist", "soggy", "puddle", "drop", "drip", "water", "condens", "bowl", "dish", "rain", "soak"),
    *("still", "sodden", "sopping", "clammy", "up", "pooling", "keep"),
)
_NO_PATCH = Pattern(
    r"\b(?:no|not any|without|zero) (?:more |longer any )?(?:wet|damp|moist) (?:patch\w*|spots?|bits?|corners?)\b"
    r"|\bno puddles?\b|\bno damp\b|\bno (?:more )?water(?: left| in| on|$)|\bnothing(?: is)? wet\b"
    r"|\b(?:patch|patches|spot|puddle|damp|damp bit|wet bit)(?: is| has| are| have| 's)?(?: all| now)* "
    r"(?:gone|dry|dried|dried up|wiped up)\b|\b(?:not|no longer) (?:wet|damp|moist)\b",
    *("patch", "spot", "puddle", "damp", "wet", "moist", "no water", "no more water"),
)


@dataclass(frozen=True, slots=True)
class Told:
    """What a text tells."""

    dried: bool = False
    """It dried while it should have stayed wet, or a part did."""
    too_early: bool = False
    """In so many words before its time."""
    part: str | None = None
    wet_kept: Literal["sprayed", "seen"] | None = None
    """During the wet time: sprayed again, or seen still wet."""
    smell: bool | None = None
    wet: bool | None = None
    """After the rinse."""
    sprayed_again: bool = False
    gives_up: bool = False
    """There is no time to do it over."""


def told_in(plain: str) -> Told:
    """What a masked text tells of the surface and the air.

    plain: small words, names masked as ENCLOSURE, AGENT ..., signs apart.
    """
    if _asks(plain) or of_the_keeper(plain):
        return Told()
    if _OF_THE_BOWLS.match(plain):
        return Told()
    plain = _THEN_ASKS.sub("", _TAG.sub(" ,", plain))
    part = _A_PART.search(plain)
    dried = _dried(plain) or (part is not None and not _doubted(plain))
    again, still = _AGAIN.search(plain) is not None, _STILL_WET.search(plain) is not None
    fears = _NOT_SPRAYED.search(plain)
    kept: Literal["sprayed", "seen"] | None = "sprayed" if again and not fears else "seen" if still else None
    if kept is not None and _partly_dry(plain, kept):
        return Told(dried=True, sprayed_again=again and not fears, part=part.group(1) if part is not None else None)
    if kept == "sprayed" and _DRY_AT_THE_END.search(plain) and not _NEVER_DRY.search(plain):
        dried, kept = True, None  # "misted it again so it's dry now": whatever was meant, it isn't wet
    return Told(
        dried=dried and kept is None,
        too_early=dried and _EARLY.search(plain) is not None,
        part=part.group(1) if part is not None and dried else None,
        wet_kept=kept,
        smell=smell_told(plain),
        wet=_wet(plain),
        sprayed_again=again and not fears and _DRY_AT_THE_END.search(plain) is None,
        gives_up=_GIVES_UP.search(plain) is not None,
    )


def _partly_dry(plain: str, kept: Literal["sprayed", "seen"]) -> bool:
    """Sprayed again because it had dried, or seen wet but for a part: dry it was, whatever it is now."""
    if kept == "sprayed":
        return _HAD_DRIED.search(plain) is not None
    return _BUT_FOR_A_PART.search(plain) is not None


_HAD_DRIED = Pattern(
    r"(?<!is )(?<!was )(?<!nearly )(?<!almost )(?<!never )(?<!not )(?<!before it )\b(?:had |has |have |all |bone )*"
    r"(?:dried|went dry|gone dry|was dry|is dry)(?: out| up| off| on me| a bit| a little| there| here)* ?,? "
    r"(?:so|and|but|then|i|,|gave|sprayed|misted|re)"
    r"|\b(?:the|those|some|a few|any|all) dry (?:bits?|patch(?:es)?|spots?|parts?|areas?|places?|corners?)\b",
    "dr",
)
_BUT_FOR_A_PART = Pattern(
    r"\bwet(?: \w+)? (?:apart from|except(?: for)?|but for|bar|other than|aside from|all but|save for|but not) "
    rf"(?:the |a |one |in |on |at |its )*(?:{_PART}|top|bit|spot|place|rest|middle)\b"
    rf"|\b(?:but|and|,) (?:not )?(?:the |a |one )*{_PART}(?: is| are| 's| has| went| looks?)?"
    r"(?: already| all| bone)* (?:dry|dried)\b",
    "wet",
    "dr",
)
_OF_THE_BOWLS = Pattern(
    r"^(?:(?:ok|and|so|oh|now) ,? ?)*(?:the |his |her |its |their |both )?(?:water |food )?"
    r"(?:bowls?|dish(?:es)?|tongs|towels?|tools?)(?: is| are| 's)(?: \w+){0,3} (?:dry|dried|wet)"
    r"(?: too| now| as well)*[ .!]*$"
)
"""Of what stands beside the enclosure, and not of its surface."""
_DRY_AT_THE_END = Pattern(
    r"\b(?:is|are|'s|has|went|gone)(?: (?:all|now|already|bone|completely|just|still))* (?:dry|dried)"
    r"(?: (?:now|already|again|out|up|through))* ?[.!]?$"
)
_NEVER_DRY = Pattern(r"\b(?:before|until|till|not|never|nothing|no|unless|if)\b(?: \S+){0,4} (?:dry|dried)\b")
_TAG = Pattern(r" ?, ?(?:can|may|is|are|does|did|will|could|should) not (?:he|she|it|they|i|we) ?(?:,|$)", "not")
""" "She can go back, can't she, the smell's nearly gone": what follows is told."""
_THEN_ASKS = Pattern(r" ?[,.;] ?(?:so |and |now )?(?:what|how|now what|can|may|could|should|do|is|shall|where)\b.*$")
"""A question after what is told: "no smell now, can she go in"."""


_NOT_SPRAYED = Pattern(
    r"^(?:not|never|have not|did not|forgot|do i|should i)\b"
    r"|\b(?:have not|did not|forgot to|(?:need|needs|have|has) to|going to|will|should|must|shall|could|can)\b"
    r"(?! not keep)"
)
"""Not sprayed again, or not yet."""


def _asks(plain: str) -> bool:
    words = plain.split()
    if plain.endswith("?") and "," not in plain:
        return True
    return (
        bool(words)
        and words[0] in ASKS_FIRST
        and not re.match(r"(?:has|have) (?:already |gone |all |just )*dried\b|can not\b|(?:does|do|did) not\b", plain)
    )


def _dried(plain: str) -> bool:
    if not _DRIED.search(plain):
        return False
    return (
        not _doubted(_EARLY.sub(" ", plain)) or re.search(r"\bdid not (?:stay|keep|remain|last)\b", plain) is not None
    )


def _doubted(plain: str) -> bool:
    return _NOT_DRIED.search(_GIVES_UP.sub(" ", plain)) is not None


def _wet(plain: str) -> bool | None:
    if _NO_PATCH.search(plain):
        return False
    return True if _WET_PATCH.search(plain) and not WET_ELSEWHERE.search(plain) else None


WORDS = SMELL_WORDS | words_in(_DRIED, _EARLY, _AGAIN, _STILL_WET, _WET_PATCH, _NO_PATCH, _A_PART)
"""Every word that a rule here turns on: known words, so that none is mended into another."""
