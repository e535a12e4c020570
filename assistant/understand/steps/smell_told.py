"""What a text tells of the smell: there is one, there is none, or of something else than what is being aired."""

from __future__ import annotations

import re

from assistant.understand.named.animal_words import ANIMALS
from assistant.understand.steps.step_patterns import STEPS
from assistant.understand.text.known_words import words_of
from assistant.understand.text.parts_of_it import PART, WHICH
from assistant.understand.text.patterns import Pattern, words_in
from assistant.understand.text.plain_words import first_beside

_SMELL = (
    r"(?:smells?|smelling|smelly|smelled|smelt|stinks?|stinky|stinking|reeks?|whiffs?|whiffy|pongs?|niffs?|fumes?"
    r"|odou?rs?|scents?|vapou?rs?)"
)
_SMELLS = Pattern(
    rf"\b{_SMELL}\b"
    r"|\b(?:bit|hint|trace|touch|little) of (?:a |an )?(?:AGENT )?(?:smell|odou?r|AGENT (?:in the air|left|still))\b"
    r"|\beyes? (?:waters?|stings?|streams?|smarts?)\b.*\b(?:when|as|if) i (?:lean|put|stick|bend|open|get)\b",
)
_NO_SMELL = Pattern(
    r"\b(?:have|has|did|do|can|could) not (?:really )?(?:smell|smelled|smelt|notice|noticed) "
    r"(?:any|anything|a thing|much|it)\b|\bnothing (?:to smell|smells|smelly|there to smell)\b"
    rf"|\b(?:any {_SMELL}|does it smell|is there a smell|{_SMELL}) ?\? ?,? ?(?:no|none|nope|nothing)\b"
    r"|\b(?:no|zero|not any|without|free of|nothing of a|not a|not even a|never a) "
    r"(?:more |longer any |longer a |bad |chemical |AGENT |faint |hint of |trace of |sign of |lingering |trace of a "
    rf"|hint of a )*{_SMELL}\b"
    rf"|\b{_SMELL}(?: of (?:the )?AGENT)?(?: is| are| 's| has| have| seems?)?"
    r"(?: all| now| completely| finally| totally| pretty much)* "
    r"(?:gone|went away|cleared|cleared up|aired out|faded away|disappeared|vanished|over|away)\b"
    r"|\b(?:can|could|do) not (?:really )?(?:smell|detect)"
    r"(?: (?:any|anything|a thing|it|AGENT|much|the|that|any more|anymore|AGENT any|fumes))+"
    r"|\bno longer (?:smells?|smell)\b|\b(?:does|do|did) not (?:smell|stink|reek)\b"
    r"|\bsmells? (?:fine|ok|good|fresh|clean|normal|neutral|of nothing|of water|all right|alright|like nothing"
    r"|perfectly)\b|\b(?:odou?r|smell|scent|fume) free\b|\bsmells? of nothing\b|\bsmell nothing\b"
    r"|\bthe air is (?:clear|clean|fresh)\b",
)
_NOT_GONE = Pattern(
    r"\b(?:not|never|has not|is not|have not)(?: all| quite| completely| really| yet)* (?:gone|cleared|faded|aired)\b"
    r"|\bwill not go\b|\bnot (?:the |any )?(?:smell|odou?r|fumes) (?:is |are |all )*(?:gone|cleared|faded)\b"
)
_NO_ANSWER_TO_SMELL = Pattern(
    r"\b(?:how|why|what|when|where|who|if|will|would|should|could|might|may|get rid|mask|hide|hate|love|like the"
    r"|until|till|wait for|check for|sniff for|waiting|once|before|after|funny|of rain|weird|of poo|of poop|poo|poop"
    r"|shed|gym|dinner|feet|candle|perfume|in my eyes?|cough\w*|dizzy|breathe|breathed|breathing|inhaled)\b"
)


def smell_told(plain: str) -> bool | None:
    """Whether it smells; None: nothing plain is said of it."""
    if _HARDLY_NONE.search(plain) or _DRY_BUT.search(plain) or _BUT_I_CAN.search(plain):
        return True
    if of_another_thing(plain):
        return None
    if not _SMELLS.search(plain) and not _NO_SMELL.search(plain):
        return None
    if _NOT_GONE.search(plain):
        return True
    if _AS_MUCH_AS.search(plain):
        return True
    if _NO_SMELL.search(plain) or _GONE_IN_PART.search(plain):
        if _IN_PART.search(plain):
            return True
        if beside_no_smell(plain) is not None:
            return None  # it is asked about: there is no end to what may take it back
        if _NOT_SURE.search(plain) or _NOT_FROM_THERE.search(plain):
            return None  # only what is surely gone is gone
        return None if re.search(r"\b(?:if|until|till|when|once|wait)\b", plain) else False
    if _NO_ANSWER_TO_SMELL.search(_WITH_MY_HEAD_IN.sub(" ", plain)):
        return None
    return True


def beside_no_smell(plain: str) -> str | None:
    """The first word beside "no smell" that may make it none; None: it is plainly told.

    "Smell's gone, or I've got used to it", "no smell in the kitchen": as of a step, the words that change nothing are
    listed, and with any other it is asked about.
    """
    rest = _NO_SMELL.sub(" ", plain)
    for _, pattern in STEPS:
        rest = pattern.sub(" ", rest)
    return first_beside(_SMELLS.sub(" ", rest), _CHANGES_NOTHING)


_CHANGES_NOTHING = words_of(
    """
    's a after again ago air aired airing all already also and animal any anymore anything anywhere are at away
    been bleach bleachy both box cage can checked chemical clean clear cleared close completely cool corner corners
    could damp did dirt do does dried drips dry drying either enclosure even every everything everywhere finally
    fine first floor fresh from fumes glass go god going gone good goodness great had has have he he's head her
    him his hour hours i in inside into is it it's its itself just lean leaned leaning leave left lid lingering
    longer lovely may me minute minutes more much my nice no none nope nose not nothing now of off ok okay on one
    open or our out over own perfect phew put ready really residue right rinse rinsed room round s she she's should
    since smell sniff sniffed sniffing still tank thank thanks that the them then there they thing this to today
    too totally tub up us vinegar viv vivarium wall walls was we well wet what whatsoever when whole window
    windows wiped with yay yeah yep yes yet
    """
)
"""Words beside "no smell" that leave it so."""
_WITH_MY_HEAD_IN = Pattern(r"\bwhen i (?:put|stick|lean|open|opened|bend|get close|get near|go near)\b", "when i")
"""Where it was smelt, and no question of when."""


_HARDLY_NONE = Pattern(
    r"\b(?:almost|nearly|next to|practically|virtually) (?:no|none|nothing)\b|\b(?:of|but) nothing but\b"
    rf"|\b{_SMELL} of nothing but\b"
    r"|\bnot (?:really |quite |exactly )?smell (?:\w+ )?(?:clean|fresh|right|good|fine|ok|great|nice|normal|all right"
    r"|neutral)\b"
)
""" "Almost no smell": a smell."""
_BUT_I_CAN = Pattern(
    rf"\b(?:can|could|does|do) not smell\b.*\b(?:but|though|only) (?:i|we|he|she) (?:can|do|does|still)\b"
    rf"|\bno {_SMELL}\b.*\b(?:but|though|only) (?:(?:i|we|he|she) (?:can|do|does|still)|something|it is|it smells)\b"
)
""" "My daughter can't smell it but I can"."""
_AS_MUCH_AS = Pattern(
    rf"\bnot {_SMELL} (?:any |much |quite |so |as |that |too |nearly )*(?:worse|better|stronger|less|bad|strong\w*"
    rf"|badly|much)\b|\bno (?:more|less|worse|stronger) (?:of a |{_SMELL} )*(?:{_SMELL} )?than\b"
    rf"|\bno (?:worse|stronger|bad|strong|big) {_SMELL}\b"
)
""" "It doesn't smell as bad", "no more smell than usual": a smell."""
_DRY_BUT = Pattern(
    r"\bdry\b[ ,.]*(?:but |and |with |still )*(?:a |the )*(?:bit|hint|trace|touch|little|faint)\b.*\bAGENT\b"
)
""" "Dry, bit of bleach": a smell, though no word of it is said."""
_IN_PART = Pattern(
    r"\b(?:except|apart from|aside from|other than|but for|bar|save|besides|unless you count|just not|not so|only)\b"
    r"|\bgone from the (?:floor|lid|back|front|top|bottom|sides?|walls?|left|right|glass|door|corners?|inside"
    r"|outside)\b|\bbut (?:a bit|a little|some|there is|still|the|in|at|near|by)\b(?! window)"
)
""" "No smell except in the corner": a smell."""
_GONE_IN_PART = Pattern(r"\bgone from the\b", "gone")
_NOT_SURE = Pattern(
    r"\b(?:i (?:think|guess|suppose|reckon|hope|believe)|maybe|probably|perhaps|not sure|can not (?:tell|say|be sure)"
    r"|hard to (?:say|tell)|should be|nose is|blocked|bunged|stuffed|have a cold|got a cold|mask on|with "
    r"(?:the|my) mask|through (?:the|my) mask|seems?)\b"
)
"""Said with a blocked nose, or as a hope."""
_NOT_FROM_THERE = Pattern(
    rf"\b{_SMELL}\b.* from (?:here|outside|over here|the (?:door|hall|hallway|landing|sofa|kitchen)|across"
    r"|next door)\b|\bgone from (?:the|my) (?!(?:ENCLOSURE|tank|box|cage|viv\w*|tub|room|air|inside|whole)\b)"
    rf"|\b{_SMELL} (?:on|in|at|by|near|under|behind) (?:the |its )?{WHICH}(?:{PART}|left|right)\b"
    r"|\b(?:air freshener|freshener|deodori[sz]er|perfume|scented|incense|candle)\b"
)
"""Nothing smelt from elsewhere, in one place, or over a scent: no word of what it smells of in there."""


def of_another_thing(plain: str) -> bool:
    """Of the hall, the towels or the animal, and not of what is being cleaned as well."""
    return _OF_ANOTHER_THING.search(plain) is not None and _OF_IT_TOO.search(plain) is None


_OF_ANOTHER_THING = Pattern(
    r"\b(?:hallway|landing|bathroom|kitchen|bedroom|street|garden|car|gloves?|hands?|hair|clothes|shirt|sleeves?|skin"
    r"|towels?|cloths?|sponges?|mop|sink|drain|bin|bowls?|fridge|dog|cat|breath|feet|shoes|fingers)"
    rf"(?: still| all| really| now| just| is| are| do| does| not| 's)* {_SMELL}\b"
    rf"|\b{_SMELL} (?:of|like|a bit like|a bit of) (?:a |the |an |my |old |wet )*"
    rf"(?:ANIMAL|{ANIMALS}|animals?|gas stations?|petrol|paint|coffee|soap|toast|smoke|dogs?|cats?|cooking|food"
    r"|lemons?|flowers|earth|soil|wood)\b",
    *("sm", "st", "reek", "whiff", "pong", "niff", "fume", "odo", "scent", "vapo"),
)
""" "My hands smell of bleach", "it smells of snake": not what is being aired."""
_OF_IT_TOO = Pattern(
    r"\b(?:water bowl|bowls? still|ENCLOSURE|AGENT in|tank|box|cage|viv|vivarium|the room|it still|too|as well|and)\b"
)


def smell_in_short(plain: str) -> bool | None:
    """Right after it was asked: "bit of bleach", "a little", "none"."""
    plain = plain.strip(" .!,")
    if _OF_A_STEP.search(plain):
        return None
    if _SHORT_NONE.match(plain):
        return False
    return True if _SHORT_SMELL.match(plain) else None


_OF_A_STEP = Pattern(r"\b(?:miss\w*|forg\w+|left|skip\w*|\w+ed)\b(?<!smelled)(?<!faded)(?<!aired)")
""" "Missed a bit", "rinsed it a little": no smell."""
_SHORT_NONE = Pattern(
    r"(?:dry ,? ?|and |it is )*(?:none|nothing|nope none|none at all|not a thing|all clear|clear)(?: now)?$"
    r"|(?:no|nope|nah|it is|,| )*(?:all )?gone(?: now)?$"
)
_SHORT_SMELL = Pattern(
    r"(?:\w+ ,? ?){0,4}\b(?:bit|hint|touch|trace|whiff|little|slight|faint)\b(?: \w+)?(?: of (?:a )?| )?"
    r"(?:AGENT|STOCK)?|(?:\w+ ,? ?){0,3}(?:slightly|a bit|a little|some|faint|only just|barely)$"
    r"|(?:hardly|barely|scarcely|next to) (?:any|anything|none|nothing|there)$|not (?:much|a lot|strong(?:ly)?|really)$"
    r"|(?:yes|yeah|yep|yup) (?:,|but| )*(?:not (?:much|a lot|strong(?:ly)?|bad)|only just|faint(?:ly)?|hardly)$"
    r"|(?:(?:yes|yeah|yep|yup|i think|it is|there is|still|,) ?)*(?:still (?:there|is|some|a bit)|there is)(?: still)?$"
    r"|(?:(?:um|er|hm|hmm|well|oh|,) ?)*(?:maybe|perhaps|possibly|probably|i think so|might be)$"
    r"|.*\b(?:mask|nose|cold)\b.*\b(?:can not|could not) (?:really )?(?:tell|say)\b"
    r"|.*\b(?:can not|could not) (?:really )?(?:tell|say)\b.*\b(?:mask|nose|cold|smell)\b"
    r"|(?:i )?(?:can not|could not|hard to) (?:tell|say)(?: really)?$|(?:no idea|not sure|do not know|i do not know)$"
)


def says_it_is_wet(plain: str) -> bool:
    """Asked whether it smells, or is dry: "no, still damp", "it isn't dry yet"."""
    if WET_ELSEWHERE.search(plain):
        return False
    return _IS_WET.search(_NOT_WET.sub(" ", plain)) is not None or _NOT_DRY.search(plain) is not None


WET_ELSEWHERE = Pattern(
    r"\b(?:if|until|how|why|what|my hands?|towel|cloth|grass|floor mat|slipped|slippers|mopp\w+|water in "
    r"(?:the|his|her|its|their) (?:bowl|dish|bucket|jug|kettle|sink))\b"
)
"""Asked, or of what is no surface that is cleaned."""


_NOT_WET = Pattern(
    r"\b(?:(?:not|never|nothing|nowhere|no longer)(?: \w+){0,2}|no(?: more)?) (?:wet|damp|moist|soggy)\b"
)
_IS_WET = Pattern(r"\b(?:wet|damp|moist|soggy|dripping|soaking)\b(?! (?:cloth|towel|sponge|hands?|gloves?|time))")
_NOT_DRY = Pattern(r"\b(?:not|never|nowhere near|far from)(?: \w+){0,2} dry\b(?! (?:spot|patch|bit))")


WORDS = words_in(_NO_SMELL, _SMELLS, _NOT_GONE, _HARDLY_NONE, _NOT_FROM_THERE)
"""Words that the rules here turn on."""
