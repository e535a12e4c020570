"""Of what a step is told: of what is being cleaned, a part of it, or of something else.

"Rinsed my glasses" and "my throat's dry" are no steps of a clean. What is certainly something else counts for nothing;
of a part ("rinsed the walls") and of a thing that nobody here knows ("rinsed the doorstop"), which may be one, it is
asked whether all of it is done.
"""

from __future__ import annotations

import re
from typing import Literal, TypeAlias

from assistant.understand.named.animal_words import ANIMAL_WORDS, ANIMALS
from assistant.understand.named.names import HOMES
from assistant.understand.steps.part_told import whole_too
from assistant.understand.text.known_words import words_of
from assistant.understand.text.parts_of_it import ALONG_IT_ALL, PART, PARTS, WHICH
from assistant.understand.text.patterns import Pattern

OfWhat: TypeAlias = Literal["own", "part", "else", "unknown"]

_OWN = HOMES | words_of(
    """
    ENCLOSURE it its everything lot all whole thing things both inside insides interior surface surfaces place home
    rest unit setup plastic wood
    one ones two three four NUMBER other others them these those that this stuff
    AGENT STOCK BOTTLE soap suds detergent foam film residue disinfectant spray bleach mix streaks stains stain spot
    spots poop poo dirt mess urates muck
    tanks boxes cages vivs vivariums enclosures tubs
    """
)
_ELSE = ANIMAL_WORDS | words_of(
    """
    brow sweat bench sofa windowsill
    throat mouth eye eyes skin lip lips tongue nose face head forehead hair ear ears neck arm arms hand hands finger
    fingers nail nails fingernails thumb leg legs knee knees foot feet toe toes chest belly tummy back's beard teeth
    myself yourself me
    glasses goggles specs spectacles visor mask gloves glove sock socks shoe shoes boots clothes shirt sleeve sleeves
    trousers jeans jumper apron coat hat ring watch phone
    cup cups mug mugs plate plates fork spoon knife pan pans kettle dishes dish glassware sink basin bath bathtub
    shower toilet loo kitchen bathroom hallway bedroom car bike curtains curtain carpet rug fridge freezer oven
    worktop counter table desk chair doorknob handle doorstep doormat mop mops bucket buckets pail
    sponge sponges cloth cloths rag rags towel towels flannel laundry washing brush brushes toothbrush
    bin bins bed beds dustpan pockets hoover vacuum dishwasher drain
    bottle bottles sprayer nozzle syringe syringes jug jugs funnel
    weather air outside outdoors garden lawn grass paper kitchenroll humour wine coffee tea
    dog cat
    he she him her ANIMAL i we kid kids baby son daughter wife husband
    """
)
_SMALL = r"(?:off|out|down|over|up|all|of|both|just|only|well|really|nicely|quickly|and)"
_DET = r"(?:the|my|his|her|its|their|our|your|a|an|some|one|two|every|each|another|this|that|these|those)"
_ENDS = (
    r"(?:and|or|but|then|so|with|in|on|at|for|to|from|by|into|onto|using|is|are|was|were|has|have|had|as|again|now"
    r"|twice|once|already|too|well|first|yet|just|fully|properly|completely|thoroughly|carefully|quickly|off|out|down"
    r"|over|up|all|of|it|i|we|he|she|they|there|here|because|while|before|after|until|till|dry|clean|yes|ok|'s"
    r"|today|yesterday|earlier|NUMBER|DURATION|TIME|inside|outside|everywhere|several|two|three|both|nicely|really)"
)
_WORD = rf"(?!{_ENDS}\b)[\w]+"
_SHARE = Pattern(
    rf"(?: {_SMALL}\b)*(?: (?:it|that|them))?(?: about| only)* (?:half(?! (?:an?|VOLUME|(?:the |a )?(?:bottle|BOTTLE"
    rf"|STOCK"
    rf"|AGENT|mix))\b)|most|part(?! \w)|NUMBER(?= of it|$| ,)|(?:some|a part) of|three quarters|(?:a bit|a little)(?!"
    rf" (?:more|of|later|ago)\b)"
    rf"|(?:one|two|three|four|NUMBER|several|a couple of|a few|some|both|most)(?: of)?(?: the)? {WHICH}{PART})\b"
    r"(?! (?:again|more)\b)"
)
""" "Half", "three sides", "it a bit"."""
_OBJECT = Pattern(rf"(?: {_SMALL}\b)*(?: (?P<det>{_DET})\b)+(?P<noun>(?: {_WORD}){{0,4}})(?P<of> of\b)?(?P<whose> 's)?")
_BARE_OBJECT = Pattern(rf"(?: {_SMALL}\b)*(?P<noun> {_WORD})")
_IS = r"(?:is|are|am|'s|was|were|feels?|looks?|got|gets|has been|have been)"
_LATER = r"(?: (?:all|now|already|finally|both|just|nice and|bone|completely|totally|fully|really|so|very|quite|too))*"
_SUBJECT = Pattern(
    rf"(?:^|[ ,.])(?P<noun>(?:(?!(?:and|then|but|so|is|are|'s|because|with|in|on|of)\b)\w+ ){{1,4}}?){_IS}{_LATER} $"
)
_ONESELF = Pattern(r" (?:off|up)(?: (?:now|a bit|again|first|nicely|after that|for \w+))*$", "off", "up")
""" "I dried off", "washed up": oneself, and the dishes."""
_NOUN_BEFORE = Pattern(r"(?:^|.* )(?P<noun>\w+) $")
_SHAPE = ("the", "my", "his", "her", "its", "their", "our", "your", "a", "an", "some", "this", "that")


OF_SOMETHING_ELSE = Pattern(
    r"(?: off| out| down| over| up)*(?: all)?(?: (?:the|my|his|her|its|their|a|an|some|both|these|those|this|that"
    r"|(?:ANIMAL|ENCLOSURE) 's))*(?: (?:water|food|plastic|other|fake|little|big|old|wet|left|right))*"
    r" (?:hands?|gloves?|bowls?|hides?|plants?|branch(?:es)?|dish(?:es)?|decor|rocks?|logs?|toys?|tongs|tweezers"
    r"|hooks?"
    r"|scoops?|sponges?|cloths?|rags?|brush(?:es)?|buckets?|sink|bath|shower|floor of the room|worktop|counter|table"
    rf"|outside|(?:ANIMAL|{ANIMALS})(?! 's\b)|him|her"
    r"|hair|face|clothes|shirt|syringes?|jugs?|tub (?:he|she|they|it)|tub that (?:he|she|they|it))\b"
)
BY_SOMETHING_ELSE = Pattern(
    r"(?:\b(?:hands?|gloves?|bowls?|hides?|plants?|branch(?:es)?|dish(?:es)?|rocks?|logs?|toys?|tongs|tweezers"
    r"|hooks?|decor"
    r"|sponges?|cloths?|rags?|buckets?|laundry|towels?)|\b(?:friend|mum|mom|dad|sister|brother|neighbou?r|mate"
    r"|boss|wife"
    r"|husband) 's \w+|\b(?:the|my) other \w+)(?: is| are| 's| was| were| all| now| both| nice and| finally)* $"
)
""" "The hides are dry", "my friend's tank is rinsed": no step of what is being cleaned."""


def of_what(before: str, after: str) -> OfWhat:
    """What a step is told of.

    before, after: the clause on both sides of the word of the step.
    """
    told = _of_subject(before)
    if told == "own" and _SHARE.match(after):
        return "part"
    if _ONESELF.match(after) and (after.startswith(" up") or re.search(r"\b(?:i|we)(?: have)?(?: just)? $", before)):
        return "else"
    return told if told != "own" else _of_object(after)


def _of_subject(before: str) -> OfWhat:
    """ "The lid is", "my throat 's": what is said to be so."""
    found = _SUBJECT.search(before)
    if found is not None:
        return _judged(found["noun"].split(), bare=found["noun"].split()[0] not in _SHAPE)
    just = _NOUN_BEFORE.match(before)  # "throat dry"
    return "else" if just is not None and just["noun"] in _ELSE - _DOERS else "own"


_DOERS = frozenset({"i", "we", "he", "she", "wife", "husband", "son", "daughter", "kid", "kids"})
""" "We rinsed", "my son rinsed it": by whom, not of what."""


def _of_object(after: str) -> OfWhat:
    """ "The walls twice", "my glasses", "off the soap"."""
    after = _ANIMALS_OWN.sub(lambda own: f"{own[1]} the ANIMAL 's ", after)
    found = _OBJECT.match(after)
    if found is None:
        bare = _BARE_OBJECT.match(after)  # "washed dishes", "sprayed walls"
        noun = bare["noun"].strip() if bare is not None else ""
        return "else" if noun in _ELSE - _DOERS else "part" if noun in PARTS else "own"
    nouns = found["noun"].split()
    if found["whose"] is not None:
        rest = re.match(rf"(?: {_WORD}){{1,3}}", after[found.end() :])
        nouns = rest.group().split() if rest is not None else nouns
    if not nouns:
        return "own"
    if found["of"] is not None and nouns[-1] not in _ELSE:
        whole = _of_object(after[found.end() :])  # "the floor of the tank"
        return "part" if whole == "own" and nouns[-1] in PARTS else whole
    if nouns == ["next", "one"]:
        return "else"
    if found["det"] in ("one", "a", "an", "another") and nouns[-1] in (_OWN | PARTS) - {"time", "lot"}:
        return "own" if nouns[-1] in HOMES else "part" if nouns[-1] in PARTS else "unknown"
    return _judged([found["det"], *nouns] if found["det"] == "every" else nouns, bare=False)


_ANIMALS_OWN = Pattern(rf"^((?: {_SMALL}\b)*) ANIMAL 's ", "ANIMAL")
""" "Rinsed juniper's tank": what is hers, as with an article."""


def _judged(nouns: list[str], bare: bool) -> OfWhat:
    """bare: without an article, so that an unknown word may be any word but a thing."""
    if not nouns:
        return "own"
    if nouns[-1] in _ELSE or "outside" in nouns:
        return "else"
    if nouns[0] == "my" and nouns[-1] in ("top", "back", "front", "bottom", "side", "lip"):
        return "else"  # what the keeper wears, or is
    if nouns[-1] in ("tub", "shoebox"):
        return "unknown"  # that the animal waits in, or the one that is cleaned
    if nouns[-1] in PARTS:
        return "own" if nouns[0] in ("all", "every", "each") and nouns[-1] in ALONG_IT_ALL else "part"
    if nouns[-1] in _OWN or nouns[-1] in _SHAPE:
        return "own"
    return "own" if bare else "unknown"


_STEP_WORD = Pattern(
    r"\b(?:cleared|emptied|stripped|gutted|rinsed|hosed|flushed|washed|scrubbed|soaped|wiped|dried|towelled"
    r"|toweled|dry|sprayed|resprayed|spritzed"
    r"|misted|drenched|doused|coated|soaked)\b"
)
_PRODUCT = Pattern(r"\b(?:AGENT|STOCK|BOTTLE)\b")


_PUT_ON_A_PART = Pattern(
    rf"\b(?:AGENT|STOCK|BOTTLE)(?: all)? (?:on|over|onto|to|down|in) (?:the |its |his |her |one |a )+{WHICH}{PART}\b"
    rf"|\b(?:dry|dried|rinsed|sprayed|washed|wet) (?:on|at|in|along|round|near) (?:the |one |a )+{WHICH}{PART}\b",
)


_ALL_OF_SEVERAL = Pattern(r"\ball (?:of )?(?:the )?(?:NUMBER|two|three|four|five)$")
""" "Sprayed all three": enclosures, and no part of one."""


def of_a_part(clause: str) -> bool:
    """Whether a clause tells a step of a part of what is cleaned, and of no more than that."""
    if whole_too(clause) or _ALL_OF_SEVERAL.search(clause):
        return False
    return _PUT_ON_A_PART.search(clause) is not None or any(
        of_what(clause[: word.start()], clause[word.end() :]) == "part" for word in _STEP_WORD.finditer(clause)
    )


_AND_THE_WINDOWS = Pattern(r" and (?:\w+ ){0,2}(?:windows?|doors?|fans?)\b.*$", "window", "door", "fan")
""" "Rinsed and two windows open": they weren't rinsed."""


def of_something_unknown(clause: str) -> bool:
    """Whether a clause tells a step of a thing that may be a part of what is cleaned, and may be none.

    With a product named it counts: that it touched something must not be lost.
    """
    clause = _AND_THE_WINDOWS.sub("", clause)
    if _PRODUCT.search(clause):
        return False
    return any(
        of_what(clause[: word.start()], clause[word.end() :]) == "unknown" for word in _STEP_WORD.finditer(clause)
    )


def sounds_like_it(step: str, said: str, before: str, after: str) -> bool:
    """Whether what sounds like a step is none: "figured it out", "cleared my throat", "streaks of dried poo".

    said: the words taken for it; before, after: the rest of the clause.
    """
    if step == "move out":
        return _no_move(said, before, after)
    if step == "clear" and _GOT_ONLY.match(said + after):
        return True
    if said in ("cleared", "emptied", "stripped", "gutted"):
        return of_what(before, after) == "else"
    return step == "dry" and (
        (said == "dried" and _AS_IT_IS.search(before) is not None) or _RAN_DRY.search(before) is not None
    )


_GOT_ONLY = Pattern(r"got (?!.*\b(?:out|away|off|up)\b)", "got")
""" "Got poo on my glove"."""
_AS_IT_IS = Pattern(r"\b(?:of|some|old|any|more|the) $")
_RAN_DRY = Pattern(r"\b(?:ran|run|running|runs) $")


def _no_move(moved: str, before: str, after: str) -> bool:
    """ "Hosed it out", "he's out cold", "in a second"."""
    if moved.endswith("out") and _NOT_OUT.match(after):
        return True
    done_to = _BY_WHAT.search(before)
    if done_to is None or _OBJECT_OUT.fullmatch(moved) is None or done_to["verb"] in _TAKES:
        return False
    return moved.startswith("it") or _CLEANS.match(done_to["verb"]) is not None


_NOT_OUT = Pattern(
    r" (?:cold|for the count|of it|like a light|in (?:about |a |another )*(?:DURATION|bit|tick|jiffy|mo)|soon)\b"
)
_OBJECT_OUT = Pattern(r"(?:it|him|her|them|ANIMAL)(?: all| now)* out")
_BY_WHAT = Pattern(r"\b(?P<verb>\w+(?:ed|pt|nt|ught|nd)) $")
_TAKES = frozenset(
    {"lifted", "scooped", "removed", "pulled", "fetched", "moved", "coaxed", "carried", "tempted", "led"}
)
_CLEANS = Pattern(
    r"(?:hosed|rinsed|washed|hoovered|vacuumed|brushed|swept|sponged|wiped|dried|mopped|flushed|scrubbed|cleaned"
    r"|cleared|aired|figured|sorted|checked|worked)$"
)


_PUT = Pattern(
    r"\b(?:put|popped|placed|moved|got|transferred|shifted|relocated|boxed|tubbed|bagged|taken|took|have)\b"
    r"(?P<what>(?: (?!in\b|into\b|to\b|over\b|across\b)\S+){0,4}) (?:over |across )?(?:in|into|to)\b"
)
_SOMEBODY = ANIMAL_WORDS | words_of(
    """
    he she they it him her them one ones ANIMAL ENCLOSURE animal animals reptile critter baby babies guy girl boy both
    all everyone everybody two three four NUMBER
    """
)
_NO_ANIMAL = (_ELSE - _DOERS - ANIMAL_WORDS - {"him", "her", "ANIMAL"}) | words_of(
    """
    water soap suds bleach hide hides bowl bowls decor branch branches plant plants rock rocks tongs tweezers hook
    scoop stuff everything things thing substrate bedding food mouse mice rat crickets lid towel AGENT STOCK BOTTLE
    vinegar heat mat lamp wood cork log moss leaves sand soil toys
    """
)


def of_whom(moved: str) -> OfWhat:
    """Whether what is said to be put into a tub is an animal: "got some soap in the bucket" is nobody.

    moved: from the word for the putting on.
    """
    found = _PUT.match(moved)
    what = found["what"].split() if found is not None else []
    what = [word for word in what if word not in _SHAPE and word not in ("safely", "straight", "now", "just", "back")]
    if not what or any(word in _SOMEBODY for word in what):
        return "own"
    return "else" if any(word in _NO_ANIMAL for word in what) else "unknown"
