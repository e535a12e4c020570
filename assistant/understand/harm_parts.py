"""Harm by its parts, however it is put: something that hurts, a way of getting at somebody, a place or a being, a sign.

The patterns of `harm_patterns` know whole phrases. Here only the parts count and how near they stand, so that a phrase
nobody has written down is heard as well: any hazard with any place of anybody's, any swallowing of any hazard, any sign
of breath alone. What is read here is asked back about where the place isn't plain.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Literal

from rapidfuzz import fuzz, process

Place = Literal["eye", "skin", "mouth", "lungs"]


def _set(words: str) -> frozenset[str]:
    return frozenset(words.split())


HAZARDS = _set(
    """
    AGENT STOCK BOTTLE MIX OTHER disinfectant disinfectants cleaner cleaners chemical chemicals concentrate acid
    chlorine ammonia fumes fume vapour vapours gas spray sprayer mist solution stuff bleach bleachy bleech blech
    leech breach detergent product antiseptic alcohol ethanol powder nozzle trigger tablet tablets tab quat mop
    droplet droplets squirt jet sanitiser sanitizer
    """
)
"""What can hurt, masked or as it is said, and as bleach is misheard."""
_VAGUE = _set("it some something stuff this drop drops splash bit lot load loads fleck blob")
_USED = _set("sprayed spraying spray misted misting mixed mixing bleached bleaching disinfecting disinfected cleaning")
_FUMES = _set("fumes fume vapour vapours gas smell chlorine mist")
_VESSELS = _set("bucket pail mop bottle jug")

PLACES: dict[str, Place] = {
    **dict.fromkeys(_set("eye eyes eyeball eyeballs eyelid eyelids eyesight vision sight goggles lens contacts"), "eye"),
    **dict.fromkeys(_set("mouth lips lip tongue gums teeth gob"), "mouth"),
    **dict.fromkeys(_set("throat chest lungs lung nose nostril nostrils airway airways"), "lungs"),
    **dict.fromkeys(
        _set(
            """
            face skin hand hands arm arms leg legs foot feet finger fingers fingertip fingertips fingernails nails
            cuticles knuckle knuckles wrist wrists forearm elbow neck knee knees thigh thighs shin shins ankle ankles
            lap belly tummy stomach chin cheek cheeks forehead toe toes scalp hair ear ears palm palms thumb thumbs
            shoulder back front bum jeans trousers shirt jumper top dress clothes sleeve sock socks shoe shoes boot boots
            glove gloves nappy
            """
        ),
        "skin",
    ),
}
_WORN = _set("glove gloves sock socks shoe shoes boot boots")
_HELD = _set("hand hands palm lap arms fingers")
_MINE = _set("my me mi our ours")
_OWNERS = _MINE | _set("his her their your own bare 's both left right")
PEOPLE = _set(
    """
    me myself us himself herself themselves someone somebody everyone everybody anyone anybody kid kids son daughter
    wife husband partner child children toddler baby babies infant friend mate mum mom dad brother sister flatmate
    roommate housemate neighbour student pupil guy man woman boy boys girl girls lad lass nan gran grandma granny
    grandad grandpa grandson granddaughter grandkid grandkids helper keeper uncle aunt cousin nephew niece colleague
    boyfriend girlfriend teenager visitor
    """
)
ANIMALS = _set(
    """
    ANIMAL animal animals snake snakes lizard geck gecko geckos tortoise turtle terrapin frog frogs toad toads dragon
    python boa skink monitor iguana chameleon newt salamander axolotl reptile hatchling hatchlings pet pets dog dogs
    cat cats puppy pup kitten hamster rabbit bunny bird parrot budgie rat mouse ferret
    """
)
_BEINGS = _set("he she him her they them")

_SIGNS = _set(
    """
    sting stings stinging stung burning burns burnt burned hurt hurts hurting throb throbbing throbs smarting smarts
    itch itching itches itchy tingle tingles tingling tingly numb peel peeling raw swollen swelling blister blisters
    blistered blistering rash blotchy sore streaming weeping blurry blurred blurring agony pain painful gritty fire
    bleeding scratchy tickly closing throbs stingy watering
    """
)
_WEAK_SIGNS = _set("red white pink hot slimy slippery soapy cloudy cracked tight funny killing dry yellow wet covered")
_BREATH = _set(
    """
    cough coughs coughing coughin coughed choke chokes choking chokin choked wheeze wheezy wheezing wheezes gasp gasping
    suffocating dizzy woozy lightheaded giddy nauseous nauseated nausea queasy vomiting vomited puking puked retching
    spluttering spluttrin unconscious asthma
    """
)
_BREATH_SAID = re.compile(
    r"\b(?:can not|can hardly|could not|hard to|hardly|barely|struggl\w+ to|trouble|hurts to|carn ?'?t|cant) "
    r"(?:\w+ )?(?:breathe|breath|breathing)\b|\bshort(?:ness)? of breath\b"
    r"|\b(?:can not|can hardly|hardly|trying to|struggling to) (?:catch|get) (?:my|his|her|their) breath\b"
    r"|\blight headed\b|\b(?:feel\w*|going|went|nearly|bit|about to) (?:\w+ )?faint\b|\bfaint(?:ed|ing)\b"
    r"|\bpass(?:ed|ing) out\b|\bkeel(?:ed|ing) over\b|\bseeing stars\b|\b(?:threw|throwing|throw) up\b"
    r"|\bhead (?:is |'s )?(?:spinning|swimming|pounding|thumping|banging)\b"
    r"|\b(?:feel\w*|been|being|makes? me|making me|made me) (?:\w+ )?(?:sick|ill|poorly|rough)\b(?! of)"
)
_TURNED = _set("gone going turned feels feel come coming")
_TIGHT = _set("tight tightening catching closing rattling constricted burny clogged")
_HEAVY = re.compile(r"\b(?:head ?aches?|migraine|collapsed?|sick|ill|unwell|ambulance|hospital|a and e|screaming)\b")
_DRANK = _set(
    """
    swallow swallowed swallowing swallows drank drunk drinking gulped gulp swig swigged sip sipped lick licked licking
    licks lapped lapping lap ate eaten eating chewed chewing suck sucked sucking tasted mouthful downed necked ingested
    nibbled bit taste
    """
)
_BREATHED = _set("breathe breathed breathing inhale inhaled inhaling inhaled lungful whiff sniffed sniff snorted")
_MISTAKEN = re.compile(
    r"\b(?:wrong|by (?:mistake|accident)|accident\w*|thought it was|thinking it was|instead of|poison\w*|before i noticed"
    r"|without thinking)\b"
)
_NO_MEAL = _set("rat mouse mice crickets cricket locust food dinner meal pinky coffee tea whole worms bowl rats water")

_WET_VERBS = _set(
    """
    splash splashed splashes splashing splattered spattered spilled spilt spill dripped drips dripping drip squirted
    squirts squirting sprayed spraying sprays misted poured tipped knocked dropped blew trickled dribbled seeped bounced
    flicked flew hit spat sloshed leaked ran rubbed wiped soaked soaking soaks drenched doused shot caught copped landed
    fell came went gone got getting get goes burst rolled wearing stuck put dipped dunked touched had has
    """
)
_WETTED = _set("soaked soaking drenched doused covered splashed splattered spattered sprayed squirted dripping hit wearing")
_INTO = _set("in into on onto over down up under underneath at through inside across around round off to behind near")
_IN = _set("in into through inside under over across down on")
_ANIMAL_SIGNS = re.compile(
    r"\b(?:gap(?:ing|es)|froth\w*|foam\w*|drool\w*|dribbl\w+|limp|floppy|twitch\w*|convuls\w*|fitting|seizures?"
    r"|sneez\w+|gasp\w*|wheez\w*|bubbl\w+|retch\w+|vomit\w*|collapsed?|unresponsive|lethargic|shaking|trembling|dying"
    r"|(?:breathing|breathes|moving|acting|walking) (?:\w+ )?(?:funny|odd\w*|weird\w*|strange\w*|fast|hard|heav\w+|badly)"
    r"|not (?:moving|breathing|right)|rubbing (?:his|her|its|their) (?:face|eyes?|nose|mouth)|cough\w*|chok\w+"
    r"|gone (?:red|white|raw|pale))\b"
)
_INSIDE = re.compile(
    r"\b(?:was|were|is|are|been|had)(?: all)* (?:in there|inside|in it|in the ENCLOSURE)\b|\bstill in (?:there|it|the \w+)\b"
)
_FIRST_AID = re.compile(
    r"\bfirst (?:aid|thing to do)\b|\bmake (?:myself|himself|herself|him|her|them) (?:be )?(?:sick|vomit|throw up)\b"
    r"|\b(?:poison (?:centre|center|control|line)|ambulance)\b"
    r"|\b(?:someone|somebody|anyone|a person|a kid|a child) (?:gets|is|has|'s|has been|'s been|is been) (?:\w+ )?"
    r"(?:splashed|sprayed|burnt|burned|poisoned|swallowed|drunk|hurt)\b"
    r"|\bhurt (?:myself|himself|herself)\b|\b(?:it|this|that) (?:really |does |bloody )*(?:hurts|stings|burns)\b"
    r"|\b(?:rinse|flush|wash)(?: \w+)?(?: out| out of| from)? (?:my|the|his|her) (?:own |left |right |poor )?eyes?\b(?! cap)"
    r"|\b(?:everything|it|all|vision)(?: is| 's| has)? (?:all )?(?:gone|going|went) (?:all )?(?:blurr\w+|fuzzy|misty|double)"
    r"|\b(?:burnt|burned|burning|poisoned|poisoning|stung|choking|killing) me\b"
    r"|^(?:burning|stinging|dizzy|choking|it burns|it stings)(?: burning| stinging| here| help)*$"
)
_BACK = re.compile(r"\bmy (?:back|feet|legs|knees|arms?|hands|shoulder|neck) (?:is|are|'s|hurts?|aches?)\b")
_GENERAL = re.compile(
    r"^(?:so |and |um |ok )*(?:do|does|will|would|can|could|may|should|shall|is|are|how (?:long|much|many|do)|which"
    r"|what (?:kills?|is the best|should|do i (?:need|wear|use|put|want)))\b"
)
_WASHED = re.compile(
    r"\b(?:wash|washed|washing|rinse|rinsed|scrub|dry|dried|clean|cleaned)(?: \w+)? (?:my|your) (?:\w+ )?(?:hands?|gloves?|boots)"
)
_NO_HARM = re.compile(
    r"\b(?:no|not|nobody|never|nothing|stopped|without)(?: \w+){0,2} (?:cough\w*|chok\w*|dizzy|hurt|stings?|burns?|sick)\b"
    r"|\bout of puff\b|\bsick (?:of|one|animal|tank|snake)\b|\b(?:head|hair) ?(?:start|band)\b"
)


@dataclass(frozen=True, slots=True)
class Found:
    """What the parts add up to."""

    place: Place | None
    animal: bool


def harm_by_parts(text: str) -> Found | None:
    """The harm that the parts of a masked text add up to; None: they add up to none."""
    said = _Said(_NO_HARM.sub(" ", text))
    for rule in (_swallowed, _reached_a_place, _slip_of_a_place, _breath, _sore_place, _wetted, _animal_in_it, _animal_ill, _asked_aid):
        found = rule(said)
        if found is not None:
            return found
    return None


class _Said:
    """A text with the places of its parts."""

    def __init__(self, text: str) -> None:
        self.text = text
        self.words = text.split()
        self.present = frozenset(self.words)
        self.general = _GENERAL.search(text) is not None
        self.hazard = not self.present.isdisjoint(HAZARDS)
        self.used = self.hazard or not self.present.isdisjoint(_USED)
        named = not self.present.isdisjoint(ANIMALS) or re.search(r"(?<!the )\bENCLOSURE\b", text) is not None
        person = not self.present.isdisjoint(PEOPLE) or re.search(r"\b(?:my|me) \w*", text) is not None
        self.animal = named
        self.of_animal = named and (self.present.isdisjoint(PEOPLE - {"me"}))
        self.person = person

    def at(self, kind: frozenset[str]) -> Iterator[int]:
        return (place for place, word in enumerate(self.words) if word in kind)

    def near(self, place: int, kind: frozenset[str], before: int, after: int) -> bool:
        return not kind.isdisjoint(self.words[max(0, place - before) : place + after + 1])

    def bodies(self) -> Iterator[tuple[int, Place, bool]]:
        """Each place of somebody's body that is named: where in the text, what, and whether it is a person's."""
        for at, word in enumerate(self.words):
            if self.words[at + 1 : at + 2] and self.words[at + 1] in _HOMES_AFTER - {"'s", "hide", "lid"}:
                continue
            if word in PLACES and not (_OWNERS | ({"the"} if "eye" in word else set())).isdisjoint(
                self.words[max(0, at - 3) : at]
            ):
                before = self.words[max(0, at - 4) : at]
                animal = not ANIMALS.isdisjoint(before) or "ENCLOSURE" in before
                own = not _MINE.isdisjoint(before) and not animal
                yield at, PLACES[word], own or (not animal and not self.of_animal)


def _before(words: Sequence[str], at: int, kind: frozenset[str]) -> int | None:
    """Where the word of a kind stands that leads to a place, over whose it is: "into his left eye"."""
    for back in range(at - 1, max(-1, at - 5), -1):
        if words[back] in kind:
            return back
        if words[back] not in _OWNERS | ANIMALS | PEOPLE | {"ENCLOSURE", "a", "the", "one", "bad", "of", "poor", "little"}:
            return None
    return None


def _swallowed(said: _Said) -> Found | None:
    for at in said.at(_DRANK):
        word = said.words[at]
        near = said.words[max(0, at - 7) : at + 10]
        hurtful = not HAZARDS.isdisjoint(near) or not _VESSELS.isdisjoint(near) or _MISTAKEN.search(said.text)
        if word == "bit" and not said.near(at, frozenset(("into", "through")), 0, 1):
            continue
        if word in ("lap", "taste", "sip", "suck") and said.general:
            continue
        if word in ("lick", "licked", "licking", "lapped") and not said.present.isdisjoint(_USED):
            hurtful = True
        eaten = not _NO_MEAL.isdisjoint(near) and HAZARDS.isdisjoint(near) and not _MISTAKEN.search(said.text)
        if word.startswith("swallow") and not eaten and not said.of_animal:
            hurtful = True
        if hurtful and not eaten:
            animal = said.of_animal or (word.startswith("lick") and "i" not in said.present and not said.person)
            return Found("mouth", animal)
    if re.search(r"\b(?:down|in|into) (?:my|his|her|their) (?:throat|mouth|gob)\b", said.text) and not said.general:
        return Found("mouth", said.of_animal)
    if re.search(r"\bhad (?:some|a bit|a drop|a drink) (?:of|from|out of) (?:the )?(?:BOTTLE|AGENT|STOCK)\b(?! left)", said.text):
        return Found("mouth", said.of_animal)
    return None


def _reached_a_place(said: _Said) -> Found | None:
    for at, place, persons in said.bodies():
        word, words = said.words[at], said.words
        lead = _before(words, at, _INTO)
        wet = said.near(at, _WET_VERBS - {"has", "had", "put"}, 8, 5)
        if word in _HELD and lead is not None and words[lead] in ("in", "to", "at"):
            continue  # held, not wetted
        if word in _WORN and not (lead is not None and words[lead] in ("in", "into", "inside", "through", "down", "under")):
            continue
        if word == "back" and lead is None:
            continue
        hazard = said.near(at, HAZARDS, 9, 6)
        if _WASHED.search(said.text) and not said.near(at, _SIGNS, 6, 6):
            continue
        if persons and lead is not None and hazard and not said.general:
            return Found(place, False)
        vague = said.near(at, _VAGUE, 8, 0) and wet
        if lead is not None and vague and not said.general and (persons or place in ("eye", "mouth")):
            if place == "skin" and not said.near(at, _WET_VERBS - _set("got went had has ran came fell put get"), 8, 0):
                continue
            return Found(place, not persons)
        if not persons and hazard and wet and lead is not None and not said.general:
            return Found(place, True)
        if persons and hazard and said.near(at, _WET_VERBS, 4, 6) and not said.general and lead is None:
            return Found(place, False)
    return None


_CUT_OFF = re.compile(
    r"\b(?:AGENT|STOCK|BOTTLE|MIX|disinfectant|cleaner|concentrate|spray)(?: \w+)? (?:in|on|into|onto|over|up|down|inside) "
    r"(?:all )?(?:my|me|mi) (?P<place>[a-z]{2,7})\b"
)
_LIKE = 77.0
"""Of rapidfuzz's ratio, for a place cut off or misspelt: "on my han" 86, "in my ey" 80; "list" is 75 like "lips"."""


def _slip_of_a_place(said: _Said) -> Found | None:
    """ "Bleach on my han": a place that is only nearly one, right where one must stand."""
    cut = _CUT_OFF.search(said.text)
    if cut is None or said.general or cut["place"] in PLACES:
        return None
    like = process.extractOne(cut["place"], [p for p in PLACES if p[0] == cut["place"][0]], scorer=fuzz.ratio, score_cutoff=_LIKE)
    return None if like is None or like[0] in _WORN else Found(PLACES[like[0]], False)


def _breath(said: _Said) -> Found | None:
    sign = not said.present.isdisjoint(_BREATH) or _BREATH_SAID.search(said.text)
    if sign and not said.general and (not said.of_animal or said.used):
        return Found("lungs", said.of_animal)
    if _HEAVY.search(said.text) and (said.used or not said.present.isdisjoint(_FUMES)) and not said.animal:
        if re.search(r"\b(?:i|me|my|he|she|they|we|us)\b", said.text) and not said.general:
            return Found("lungs", False)
    fumes = said.hazard or not said.present.isdisjoint(_FUMES)
    for at in said.at(_BREATHED):
        if said.words[at] in ("sniff", "whiff") and said.present.isdisjoint(_SIGNS | _BREATH):
            continue
        if (fumes or said.near(at, frozenset(("it", "that", "this", "them")), 0, 5)) and not said.general:
            return Found("lungs", said.of_animal)
    return None


def _sore_place(said: _Said) -> Found | None:
    """A sign at a place of a person's: nobody need say what did it."""
    for at, place, persons in said.bodies():
        if not persons or said.general:
            continue
        strong = said.near(at, _SIGNS, 5, 6)
        weak = said.near(at, _WEAK_SIGNS, 3, 6) and (said.hazard or not said.present.isdisjoint(_USED))
        weak = weak or (said.near(at, _TURNED, 0, 6) and said.near(at, _WEAK_SIGNS - _set("wet dry covered"), 0, 7))
        weak = weak or (place == "lungs" and said.near(at, _TIGHT, 4, 6))
        if _BACK.search(said.text) and not said.used:
            continue
        mine = not (_MINE | {"i"}).isdisjoint(said.present) or not said.present.isdisjoint(PEOPLE) or said.used
        if (strong and mine) or weak:
            return Found(place, False)
    if re.match(r"^(?:the )?eyes? (?:is |are |'s )?", said.text) and not _SIGNS.isdisjoint(said.words[:6]) and not said.animal:
        return Found("eye", False)
    inside = re.search(r"\b(?:burning|stinging|wet|hot)\b.*\binside (?:my|the) (?:glove|boot|shoe|sleeve)", said.text)
    worn = re.search(r"\b(?:rash|blister\w*|hives)\b", said.text) and said.used and not said.animal
    return Found("skin", False) if inside or (worn and not said.general) else None


def _wetted(said: _Said) -> Found | None:
    """A being that was wetted, with no place named."""
    text = said.text
    if re.search(r"\bface ?ful+ (?:of )?|\bface full of\b", text) and said.hazard:
        return Found("skin", said.of_animal)
    if said.general:
        return None
    being = PEOPLE | ANIMALS
    for at in said.at(being):
        if _is_home(said.words, at):
            continue
        lead = _before(said.words, at, frozenset(("on", "onto", "over", "at", "off", "up", "by")))
        if lead is not None and said.near(lead, HAZARDS, 6, 0) and (
            said.words[at] in PEOPLE or said.near(lead, _WET_VERBS | {"is"}, 7, 0)
        ):
            return Found("skin", said.words[at] in ANIMALS)
        if said.near(at, _WETTED, 0, 5) and said.near(at, (HAZARDS | _VAGUE | _VESSELS) - {'MIX'}, 0, 9) and "water" not in said.present:
            return Found("skin", said.words[at] in ANIMALS)
    if re.search(
        r"\b(?:i am|i got|i 've been|i have been|i was|we are|we got|he got|she got|^)(?: \w+)? ?"
        r"(?:soaked|drenched|doused|covered|splashed|wearing)\b(?! (?:the|his|her))",
        text,
    ) and said.present.isdisjoint({"water", "sweat", "rain"}) and (said.hazard or {"it", "bucket", "lot"} & said.present):
        return Found("skin", False)
    over = re.search(r"\b(?:went|gone|is|got|poured|tipped|came|spilled|spilt|knocked|dropped|pulled|emptied)\b(?: \S+){0,4} (?:over|on|down) (?:me|us|myself|himself|herself)\b", text)
    barefoot = re.search(r"\bbare ?(?:foot|feet)\b", text)
    return Found("skin", False) if over or (barefoot and (said.used or "trod" in text or "stood" in text)) else None


_HOMES_AFTER = _set("'s tank tub box cage viv vivarium enclosure home house setup hide bowl glass lid wall walls room rack")


def _is_home(words: Sequence[str], at: int) -> bool:
    """The word is only whose home it is: "the snake's tank"; "the snake's been" is the snake."""
    after = words[at + 1 : at + 3]
    if after[:1] == ["'s"]:
        return not (len(after) > 1 and (after[1] in _DONE_TO or after[1] in _WETTED))
    return bool(after) and after[0] in _HOMES_AFTER


_DONE_TO = _set("been got gone had just all covered completely fallen sat sitting")


def _animal_in_it(said: _Said) -> Found | None:
    """An animal that was in what hurts, or was there while it was sprayed."""
    if said.general:
        return None
    being = said.animal or not said.present.isdisjoint(_BEINGS)
    if being and re.search(r"\b(?:sprayed|misted|doused|bleached)\b", said.text) and _INSIDE.search(said.text):
        return Found("skin", True)
    if re.search(rf"\b(?:{'|'.join(sorted(ANIMALS))}|ENCLOSURE|he|she) (?:has |have |'s )?(?:got|had) (?:some |a bit of |a drop of |the )*"
                 r"(?:AGENT|STOCK|BOTTLE|spray|mist|cleaner|disinfectant|stuff|it) (?:all )?(?:on|over|in) (?:it|him|her|them)\b", said.text):
        return Found("skin", True)
    for at in said.at(ANIMALS | frozenset(("he", "she", "they", "him", "ENCLOSURE"))):
        beyond = said.words[at + 1 : at + 9]
        if not _SAT.intersection(beyond) or not _IN.intersection(beyond):
            continue
        if beyond and beyond[0] in _HOMES_AFTER - {"'s"}:
            continue
        step = next(place for place, word in enumerate(beyond) if word in _SAT)
        tail = beyond[step + 1 :]
        into = next((place for place, word in enumerate(tail) if word in ("in", "into", "through")), None)
        what = tail[into + 1 : into + 5] if into is not None else []
        if not HAZARDS.isdisjoint(what) and "box" not in what:
            return Found("skin", True)
        if "bucket" in what and said.words[at] not in ("they",):
            return Found("skin", True)
    still = re.search(r"\b(?:AGENT|STOCK|disinfectant|cleaner)(?: still)? (?:in it|in there|in his|in her)\b", said.text)
    put = re.search(r"\bi (?:put|popped|left|dropped) (?:him|her|them|(?:the |my )?ANIMAL)(?: back)? in\b", said.text)
    given = re.search(r"\b(?:gave|given|fed) (?:him|her|them|(?:the |my )?ANIMAL)\b.*\b(?:AGENT|STOCK|BOTTLE)\b", said.text)
    return Found("mouth" if given else "skin", True) if (still and put) or given else None


_SAT = _set("sat sitting sits fell fallen been jumped walked trod rolled swam swimming lay lying laid stood stepped got went climbed")


def _animal_ill(said: _Said) -> Found | None:
    being = said.animal or not said.present.isdisjoint(_BEINGS)
    if being and not said.general and _ANIMAL_SIGNS.search(said.text) and (said.used or "rinse" in said.text):
        return Found(None, True)
    return None


def _asked_aid(said: _Said) -> Found | None:
    if _FIRST_AID.search(said.text) and not _BACK.search(said.text):
        return Found(None, said.of_animal)
    return None


def hits_nobody(text: str) -> bool:
    """True when a text that only looks like harm names nobody, no place of anybody's and no sign of harm."""
    words = frozenset(text.split())
    return words.isdisjoint(_OF_SOMEBODY) and not _BREATH_SAID.search(text) and not _FIRST_AID.search(text)


_OF_SOMEBODY = frozenset(
    {*PLACES, *PEOPLE, *ANIMALS, *_BEINGS, *_SIGNS, *_BREATH, *(_DRANK - {"bit", "taste"}), *_BREATHED, *_FUMES, "ENCLOSURE", "i", "ow", "ouch"}
) | _set("poison poisoned poisoning reeks faint emergency aid body my")


WORDS = frozenset(
    word
    for word in (
        *HAZARDS, *PLACES, *PEOPLE, *ANIMALS, *_SIGNS, *_WEAK_SIGNS, *_BREATH, *_DRANK, *_BREATHED, *_WET_VERBS, *_WETTED
    )
    if word.islower() and len(word) > 2
) - {"bleech", "blech", "sanitiser", "sanitizer"} | _set("gaping frothing foaming drooling limp twitching faint faceful headache collapsed seeing stars spinning throwing threw breath breathe feel feeling")
"""Every word that a rule here turns on: known words, so that none is mended into another."""
