"""What a likeness to a question can't be without: a text that merely sounds like one is none."""

from __future__ import annotations

from assistant.understand.bottles import fills
from assistant.understand.bottles.fill_words import tells_a_fill
from assistant.understand.named.animal_words import ANIMALS
from assistant.understand.numbers.mixing_words import MIXING_NEEDS
from assistant.understand.parsing import Parsed
from assistant.understand.steps.claimed_steps import Claims
from assistant.understand.steps.of_the_keeper import of_the_keeper
from assistant.understand.steps.smell_told import of_another_thing
from assistant.understand.steps.surface import OF_THE_SURFACE
from assistant.understand.text.asking import ASKED, WHICH_WORDS
from assistant.understand.text.known_words import AIRS, ASKS_WHO, HURT, SHARED
from assistant.understand.text.patterns import Pattern

LOOKS_BACK = Pattern(
    r"^(?:so |and |but |wait |ok |um )*(?:did|have|has|had|is|are|was|were)\b|, (?:did|have) (?:i|we) \?$"
    r"|\b(?:not i|not it|right|yes|yeah) \?$|^(?:\S+ ){0,3}\S+ \?$"
    r"|\b(?:remember|sure|know|see|check|tell me|forget|forgot) (?:if|whether)\b"
)
_TOOLS = frozenset({"hook", "hooks", "tongs", "tweezers", "forceps", "scoop", "net", "gloves", "bowl", "hide", "tub"})
_FOR_ITS_HOME = Pattern(r"\bfor (?:his|her|its|their) (?:tank|tub|box|cage|viv|bowl|hide|enclosure|vivarium)$")
_ITS_HOME = Pattern(
    r"\b(?:ANIMAL|ENCLOSURE) 's (?:\w+ )?(?:hide|tank|tub|box|cage|viv|vivarium|enclosure|bowl|dish|glass|floor|lid"
    r"|branch|branches|water|food|perch|log|cork|rocks?|stuff|things|mat|plants?|hides|walls?)\b"
)
_NEARBY = Pattern(
    rf"\b(?:near|around|beside|next to|close to) (?:the |my |a |our |any )*(?:\w+ )?(?:ANIMAL|{ANIMALS})\b"
)
_NOT_A_START = Pattern(
    r"\b(?:not|never|without) (?:\w+ )?(?:start|begin|starting)\b"
    r"|\b(?:tomorrow|later|tonight|this evening|next week|at the weekend|another day)\b"
)

_NOT_TOLD = Pattern(
    rf"{ASKED}|\? no$|^(?:(?:so|and|but|ok|wait|um|right|hey) )*(?:remind|pretend|let)\b"
    r"|\b(?:not|never|nobody|no one|noone|none of (?:us|them)|about to|going to|go to|i will|we will|let me|need to"
    r"|needs to|want to|have to|has to|meant to|forgot to(?! (?:say|tell|log|mention|note|record)\b)|forget to"
    r"|remember to|nearly|almost|trying to|tried to|if i|should i|when i|once i|before i)\b"
)


_DENIES_ANOTHER = Pattern(
    r"(?:i|we) (?:did not|never|have not) (?!(?:do|did|mean|say|said|done|want)\b)\w+ (?:it|them)$"
    r"|undo (?:the |that |my )?undo$|put (?:it|that) back$"
)
""" "I didn't shake it", "undo the undo": nothing more is taken back by it."""


def is_told(plain: str) -> bool:
    """False for a text that asks, or speaks of what isn't so, or not yet: it tells of nothing that happened."""
    return _NOT_TOLD.search(plain) is None


_RINSED_OUT = Pattern(
    r"\b(?:rins\w*|wash\w*|flush\w*|swill\w*|swish\w*|clean\w*|empt\w+|sluic\w+|pump\w*|squeez\w+|drain\w*"
    r"|scrub\w*|hos\w+|shook|shak\w+|run through|ran through|through|tipped|poured|chucked|dumped|got rid|rid of"
    r"|out)\b"
)
_RINSED_WITH_IT = Pattern(
    r"\b(?:used|using|took) (?:the |my |some |a bit of )*(?:BOTTLE|(?!water|soap)\w+|\w+ one) (?:to|for)\b"
    r"|\b(?:rinsed|cleaned|washed|wiped) (?:\w+ )?with (?:was |is |the |my |some )*(?:BOTTLE|AGENT|STOCK)\b"
)
""" "Used the green to rinse": with that bottle, and not that bottle."""
_HAS_LEFT = Pattern(r"(?:so |and |i am |i )*(?:left with|have|got|there is) (?:VOLUME|NUMBER)\b")
""" "Left with 200 mils of chlorhexidine": what is there, not how to be rid of it."""
LIKELY = 0.85
"""Least chance of what is told of a surface in words that no rule knows."""
SURE = 0.93
"""Least chance of a question of mixing or sharing in words that are none of those it mostly has."""
SURELY_ASKED = 0.93
"""Least chance of who waits where, or of a wish for quiet, in words that these mostly lack, or with names in them."""
_AGREES = frozenset({"yes", "correct", "right", "sure", "ahead", "exactly", "indeed"})
_DOUBTS = frozenset({"no", "not", "but", "wait", "what", "never", "nearly", "almost", "think", "maybe"})
_DRY = Pattern(r"\b(?:dry|dried)\b")
_OF_DRYING = Pattern(
    r"\b(?:dr[iy]\w*|evaporat\w*|wet\w*|damp|moist\w*|patch\w*|bare|gone|vanish\w*|disappear\w*|drops?|film|liquid"
    r"|spray|shin\w*|sheen|soak\w*|time|early|soon|AGENT|BOTTLE|STOCK|air|nothing left|off)\b"
)
_SOMEBODY_IS_BACK = Pattern(r"(?:(?:ok|oh|so|and|hi|hey) ,? ?)*(?:my |the |our |her |his )?\w+(?: is| 's| are) back\b")
""" "My wife's back" takes nothing back."""
_OF_AN_ILLNESS = Pattern(
    r"\b(?:ORGANISM|mites?|ticks?|worms?|parasites?|sick\w*|ill\w*|unwell|poorly|positive|test\w*|results?|swab\w*"
    r"|vet|outbreak|isolat\w*|contag\w*|spread\w*|quarantin\w*|healthy|well|better|clear\w*|wheez\w*|bubbl\w*|specks?"
    r"|infect\w*|caught|catch|going round|germs?|diseases?|symptoms?|letharg\w*|regurgitat\w*|runny|diarrh\w*|rot"
    r"|mark|hospital|new|dots?|bugs?|crawl\w*|blood|thin|losing|lost|eating|mouth|nose|breath\w*|died|dead|dying)\b"
)
_NO_HUSH = Pattern(r"^(?:ok |just |right |so )*(?:keep (?:going|at it)|carry on|go on|cut the \w+)(?: please)?[ .!]*$")
_I_DRIED_OFF = Pattern(r"(?:i|we)(?: have)?(?: just)? dried off\b")
_NEVER_DRY = Pattern(r"\b(?:before|never|not|without|stop\w*|keep\w*)\b(?: \w+){0,4} (?:dry|dried|drying)\b")


def may_be(intent: str, parsed: Parsed, claims: Claims, chance: float = 0.0) -> bool:
    """A likeness that lacks what the question can't be without is none."""
    words = set(parsed.words)
    if intent in ("yes", "no"):
        return chance >= LIKELY and _plain_answer(intent, words, parsed.plain)
    if intent == "start" and (_NOT_A_START.search(parsed.plain) or LOOKS_BACK.search(parsed.plain)):
        return False
    if intent == "repeat" and claims.mentioned and not words & {"say", "said", "tell", "repeat"}:
        return False  # "do I spray again"
    if intent == "mixed" and not (
        fills.may_be_fill(parsed.plain) and fills.names_what(parsed.plain) and tells_a_fill(parsed.plain)
    ):
        return False
    if intent == "rinsed_out" and (
        parsed.plain.endswith("?")
        or _RINSED_WITH_IT.search(parsed.plain)
        or LOOKS_BACK.search(parsed.plain)
        or not _RINSED_OUT.search(parsed.plain)
    ):
        return False
    if intent == "undo" and (_SOMEBODY_IS_BACK.match(parsed.plain) or _DENIES_ANOTHER.match(parsed.plain)):
        return False
    if intent == "undo" and parsed.plain.split(" ", 1)[0] in WHICH_WORDS:
        return False
    if intent == "pour_away" and chance < SURE and _HAS_LEFT.match(parsed.plain):
        return False
    if intent in OF_THE_SURFACE:
        return _likely_of_the_surface(intent, parsed.plain, chance)
    asked = parsed.plain.endswith("?") and not words & {"pause", "clean"}
    if intent in ("leave_off", "clean_only") and asked and chance < SURE:
        return False
    if intent == "splash":
        return bool(words & HURT)
    if intent == "outbreak" and chance < LIKELY and _OF_AN_ILLNESS.search(parsed.plain) is None:
        return False
    if intent == "hush" and _NO_HUSH.match(parsed.plain):
        return False
    if intent == "hush":
        named = any(word[0] == "{" and word != "{duration}" for word in words) or bool(
            words & {"window", "door", "lid"}
        )
        return chance >= SURELY_ASKED or (len(words) <= (6 if chance < LIKELY else 10) and not named)
    if intent == "tub":
        return bool(words & ASKS_WHO) or chance >= SURELY_ASKED
    if intent == "air_time":
        return chance >= SURE or bool(words & AIRS)
    if intent == "share_tool":
        return bool(words & SHARED) or _surely(parsed, chance)
    if intent == "wound" and words & _TOOLS and not words & {"{agent}", "{bottle}", "{stock}", "{mix}"}:
        return False  # a hook from one to another is lent, not dabbed on
    if intent == "wound" and _NEARBY.search(parsed.plain):
        return False  # what may be used with the frogs in the next tank
    if intent == "wound" and (_ITS_HOME.search(parsed.plain) or _FOR_ITS_HOME.search(parsed.plain)):
        return False
    if intent == "wound":
        return bool(words & {"{animal}", "him", "his", "it", "wound", "burn", "cut"})
    if intent == "start":
        return chance >= SURE or bool(
            words & {"{enclosure}", "{animal}", "start", "begin", "clean", "round", "starting", "doing", "cleaning"}
        )
    if intent in MIXING_NEEDS:
        return _surely(parsed, chance) or all(words & needed for needed in MIXING_NEEDS[intent])
    if intent == "dose":
        return bool(
            words
            & {"{agent}", "{bottle}", "{mix}", "{volume}", "{number}", "concentrate", "dose", "mix", "dilute", "put"}
        )
    return True


def _surely(parsed: Parsed, chance: float) -> bool:
    """So likely, in more than a word or two, that none of the words that it mostly has is needed."""
    return chance >= SURE and len(parsed.words) > 2


def _plain_answer(intent: str, words: set[str], plain: str) -> bool:
    """A yes or a no in more than its own words, that names nothing, asks nothing and isn't half the other."""
    if len(words) < 3 or any(word[0] == "{" for word in words) or plain.endswith("?"):
        return False
    return not words & _AGREES if intent == "no" else bool(words & _AGREES) and not words & _DOUBTS


def _likely_of_the_surface(intent: str, plain: str, chance: float) -> bool:
    """Told in words that no rule knows, and surely so; that it stayed wet also only where nothing in it is dry."""
    of_drying = _OF_DRYING.search(plain) is not None and "outside" not in plain.split()
    if intent == "dried_early" and (not of_drying or _I_DRIED_OFF.match(plain)):
        return False  # "it's ten minutes already", "the floor outside is dry"
    told = _NEVER_DRY.sub(" ", plain)
    if of_the_keeper(plain):
        return False
    if chance < LIKELY or not is_told(told):
        return False
    if intent == "still_smells":
        return _OF_WATER_OR_PRODUCT.search(told) is not None and not of_another_thing(plain)
    return intent == "dried_early" or (intent == "rewet" and _DRY.search(told) is None)


_OF_WATER_OR_PRODUCT = Pattern(r"\b(?:AGENT|STOCK|BOTTLE|water|wet|damp|moist|puddle|pooled|pooling|drips?|fumes)\b")
