"""How harm is said: what got where, whom it hit, what is wished for. What it amounts to is `cries`."""

from __future__ import annotations

from assistant.understand.harm.idioms import IDIOMS
from assistant.understand.named.animal_words import ANIMALS, KINDS
from assistant.understand.text.patterns import Pattern, words_in


def _set(words: str) -> frozenset[str]:
    return frozenset(words.split())


ANIMAL = rf"(?:ANIMAL|(?:{ANIMALS}|geckoes|animals?|reptiles?|hatchlings?|pets?|dogs?|cats?|puppy|kitten))"
_WHOSE = rf"(?:my|his|her|their|its|the|one|both|your|our|{ANIMAL} 's|\w+ 's)"
_PRODUCT = (
    r"(?:AGENT|STOCK|BOTTLE|MIX|disinfectants?|cleaners?|cleaning \w+|chemicals?|concentrate|solution|spray|mix"
    r"|product|antiseptic|detergent|soap)"
)
LIMBS = (
    r"(?:hands?|arms?|skin|legs?|face|foot|feet|fingers?|wrists?|neck|knees?|thighs?|lap|stomach|chin|cheeks?"
    r"|forehead|elbows?|toes?|scalp|ears?|lips?|palms?|thumbs?|shirt|clothes|trousers|glove|gloves|sleeve|socks?"
    r"|shoes?)"
)
_HURTS = (
    r"(?:sting\w*|stung|burn\w*|burnt|hurt\w*|water(?:ing|y)|sore|itch\w*|red|blurr\w*|smart\w*|tingl\w*|on fire"
    r"|killing|swollen|raw|blister\w*)"
)
_GOT = (
    r"(?:splash\w*|spill\w*|spilt|drip\w*|dripped|squirt\w*|sprayed|spraying|poured|got|get|getting|gotten|have|had"
    r"|tipped|knocked|dropped|blew|blown|trickl\w*|dribbl\w*|seep\w*|fell|bounced|flicked|flew|hit|went|landed|spat"
    r"|spattered|splattered|sloshed|leaked|ran|rubbed|touched|soaked)"
)

_HIT = (
    rf"(?:{_PRODUCT}|drops?|droplets?|mist|splash|it|some|stuff) (?:\w+ )?"
    r"(?:hit|caught|struck|touched|touches|contacts|reached)"
)
_SOAPY = rf"(?:{_PRODUCT}|soapy|sponge|suds|cloth)"

_ANIMALS = frozenset(KINDS) | _set("ANIMAL animal reptile hatchling pet dog cat puppy kitten")
# Bits of text without one of which that pattern can't match; a test holds them to it.
_HINTS: dict[str, frozenset[str]] = {
    "eye": frozenset({"vision", "eye", "see", "contacts", "lens"}),
    "mouth": _set(
        "suck gargl nibbl swallow ingest drank drunk drink gulp sip swig chew lick lap ate eaten tast bit mouth tongue"
    ),
    "lungs": _set(
        """
        cough chok wheez breath inhal reek dizzy light woozy fume chlorine gas throat chest lung nose feel
        pass faint smoke cloud vapo smell
        """
    ),
    "skin": _ANIMALS
    | {" me", "myself", " him", " her", " us"}
    | _set(
        """
        hand arm skin leg face foot feet finger wrist neck knee thigh lap stomach chin cheek forehead elbow
        sat knelt stood stepped trod rash soak seep toe scalp ear lip palm thumb shirt cloth trouser glove
        sleeve sock shoe burns stings hurts wet sprayed
        """
    ),
    "sprayed animal": _ANIMALS,
    "reached it": frozenset({"there is", " i sprayed", " i misted", "i applied", " i doused", " i soaked", "i sprayed"})
    | {
        "i misted",
        "i doused",
        "ran ",
        "sat ",
        "got ",
        "lay ",
        "laid ",
        "puddle",
        "pool",
        "got up",
        "got in",
        "went up",
        "went in",
        "jumped",
        "dived",
        "climbed",
        "is on",
        "is in",
    }
    | {"was in", "were in", "still in", "swimming", "sitting", "lying"}
    | _set("dripp splash land spill spilt squirt dropped blew fell ran walked stepped crawled slither stood swam roll"),
    "heard as eye": frozenset({"my ", "his ", "her ", "the "}),
    "wound": _ANIMALS
    | _set(
        """
        kilo gram pound torn tore pus bitten bled
        mouth flesh enough surface skin scales shell bleed woond womb bath soak bathe
        his him her its their 's wound cut burn bit sore absc ulcer rot disease blister infect lesion scrape
        graze scratch stitch injur shed prolapse scab swell rash ringworm gash puncture water food feed dip
        bath soak medic meds antibiotic antiseptic ivermectin metronidazole fenbendazole enrofloxacin
        meloxicam ceftazidime praziquantel painkiller wormer ointment drops injection tablet paracetamol
        aspirin ibuprofen steroid sulfadiazine
        """
    ),
}

EYE = Pattern(
    rf"\b(?:in|into|near|on|to|at) (?:{_WHOSE} )?(?:left |right |own |bad )?eye(?:s|ball|balls|lid)?\b"
    rf"|\beyes?\b(?: \S+){{0,3}} {_HURTS}\b|\b{_HURTS} (?:\S+ ){{0,3}}eyes?\b|\b{_GOT}\b.*\beyes?\b"
    r"|^(?:(?:my|ow|ouch|oh|a+h+|argh|help|quick|please|no|the|,) )*eyes?(?: ?,? ?eyes?)*(?: ?,.*)?$"
    r"|\b(?:contacts|contact lens\w*)\b.*\b(?:got|went|gone|under) (?:in|behind|them|my)\b"
    rf"|\b{_HIT} (?:my|his|her) (?:\w+ )?eye"
    r"|\b(?:eye ?sight|vision)\b(?: \S+){0,3} (?:gone|going|blur\w*|bad|funny)\b"
    r"|\bcan not (?:\w+ )?open (?:my|his|her) (?:\w+ )?eyes?\b|\bcontact(?:s| lens\w*)\b.*\b(?:splash|spray)\w*"
    r"|\bmy eyes?\b.*(?:AGENT|STOCK)|\bcan not see\b|\bmy eyes?$"
    r"|\bmy eyes? (?:my eyes?|oh|god|help|what|how|quick|now|hurry)\b",
    *_HINTS["eye"],
)
MOUTH = Pattern(
    r"\bswallow(?:ed|ing|s)?\b|\bingest\w*"
    r"|\b(?:drank|drunk|drink|drinking|gulped|sipped|licked|licking|lapped|ate|eaten|tasted|bit into)\b(?: \S+){0,5} "
    rf"(?:{_PRODUCT}|it|some of it|stuff)\b|\b(?:in|into) {_WHOSE} mouth\b|\b{_GOT}\b.*\b(?:mouth|tongue)\b"
    rf"|\b(?:mouthful|swig|gulp|sip|taste) of (?:the |some |my )?(?:\S+ )?{_PRODUCT}\b"
    r"|\btast(?:e|ing|es)\b(?: (?:the|some|of|a bit of)){0,2} (?:AGENT|STOCK)\b(?! is)"
    rf"|\b(?:ate|eaten|chewed|licked|swallowed)\b(?: \S+){{0,5}} {_SOAPY}\b"
    r"|\b(?:drank|drunk|sipped|swigged|gulped|necked)\b(?: \S+){0,3} "
    r"(?:BOTTLE|bucket|(?:wrong|spray|other) (?:bottle|cup|glass))\b"
    r"|^(?:i |he |she |they |we |someone )?(?:have |has )?(?:just )?(?:drank|drunk|swallowed) (?:some|a bit|a lot)\b"
    r"|\b(?:took|had|taken|take|having) (?:a |an )?(?:\w+ )?(?:gulp|swig|sip|mouthful)\b"
    r"|\bdrank (?:out of|from|some of) (?:the |a |my )?(?:mop |cleaning |wrong |spray |dirty )?"
    r"(?:bucket|bottle|BOTTLE|sink|tub)\b"
    r"|\b(?:drank|drunk|drinking|lapped)\b(?: \S+){0,2} from (?:the |my |a )?(?:\w+ )?"
    r"(?:bucket|BOTTLE|sprayer|sink|mix|jug)\b"
    rf"|(?=.*\b{_PRODUCT}\b).*\b(?:licked|licking|lick) (?:his|her|its|their) "
    r"(?:feet|foot|paws?|toes|legs?|skin|fur|tail|claws)\b"
    rf"|\b(?:suck|chew|gargl|nibbl)\w*(?: \S+){{0,4}} (?:{_PRODUCT}|stuff)\b"
    r"|\b(?:around|round|on) (?:his|her|my|their) mouth\b"
    rf"|\bmouth (?:\w+ )?(?:touched|hit|got) (?:the |some )?{_PRODUCT}|\bmouth(?: \S+)? {_HURTS}"
    rf"|\b{_HURTS} (?:\S+ )?(?:mouth|tongue)\b",
    *_HINTS["mouth"],
)
LUNGS = Pattern(
    r"\bcough\w*|\bchok(?:ing|ed|e)\b|\bwheez\w*|\bcan not (?:\w+ )?(?:breathe|breath|catch (?:my|his|her) breath)\b"
    r"|\bhead(?: is| 's)? spin\w*|\b(?:hard|hurts|difficult|trouble|struggling|unable)(?: \w+)? breath\w*"
    r"|\bshort of breath\b|\b(?:breathed|inhaled|inhaling|inhale)\b"
    r"|\bbreathing (?:in|it|the|is|feels|hurts|problems|trouble|difficult)|\bbreathing\b.*\b(?:fumes|gas|AGENT)"
    r"|\breek\w*|\bdizzy\b|\blight ?headed\b|\bwoozy\b|\bfumes?\b"
    r"|\bbreath\w* with (?:his|her|its|the|their) mouth open\b|\bopen ?mouth(?:ed)? breath\w*|\bchlorine gas\b"
    r"|\bgassed\b|\bgassing\b"
    r"|\b(?:throat|chest|lungs?|nose)\b(?: \S+){0,3} (?:sting\w*|burn\w*|hurt\w*|sore|tight\w*|raw|on fire|itch\w*"
    r"|scratchy)|\b(?:sting\w*|burn\w*|hurt\w*|sore|tight) (?:\S+ )?(?:throat|chest|lungs?|nose)\b"
    r"|\bup (?:my|his|her) nose\b|\bfeel(?:ing)? (?:\w+ )?(?:sick|faint|ill|dizzy|funny|rough)\b|\bpassed out\b"
    r"|\bfainted\b|\bpass(?:ing)? out\b"
    r"|\b(?:gas|smoke|cloud|vapou?r)(?: is| 's)? (?:coming|everywhere|rising|pouring)"
    r"|\bsmell\w* (?:is )?(?:so|too|really|unbearabl\w*|overpowering) ?(?:strong|bad|awful)?\b"
    r"(?=.*\b(?:head|sick|eyes|breathe|in here|can not|help)\b)",
    *_HINTS["lungs"],
)
SKIN = Pattern(
    r"\b(?:touched|leaned on|leant on|put (?:his|her|a|their|my) (?:hands?|fingers?) (?:on|in))(?: \w+){0,2} "
    r"(?:wet|sprayed) (?:glass|walls?|sides?|tank|cage|box|tub|floor|lid|bit|ENCLOSURE|stuff|AGENT)\b"
    rf"|\b{_GOT}\b(?: \S+){{0,6}} (?:on|over|onto|down|in|inside|into|through|up|at|with) (?:to )?(?:{_WHOSE} )?"
    rf"(?:\w+ )?{LIMBS}\b"
    rf"|\b{_GOT}\b(?: \S+){{0,5}} (?:on|over|onto|down|all over) (?:to )?"
    rf"(?:me|myself|him|her|us|(?:the |my )?{ANIMAL})\b(?! 's)|\b{LIMBS}\b(?: \S+){{0,2}} {_HURTS}\b"
    rf"|\b{_HURTS} (?:my |his |her |the )(?:\w+ )?{LIMBS}\b|\b{_HIT} (?:my|the|his|her|your|our) (?:\w+ )?{LIMBS}\b"
    rf"|\b{_HIT} (?:me|him|her)\b(?! that)"
    rf"|\bi (?:have )?(?:gone and |just )?(?:sat|knelt|stood|stepped|trod) in (?:the |some )?{_PRODUCT}\b"
    rf"|\brash\b.*\bmy (?:\w+ )?{LIMBS}\b|\ball over (?:me|myself)\b|\bface ?full of\b"
    r"|\b(?:soak|seep)\w*(?: \S+){0,5} (?:on|onto|through|into) my \w+|\bit (?:really )?(?:burns|stings|hurts)\b"
    rf"|\b{_PRODUCT}(?: \S+){{0,3}} (?:on|over|down|onto) (?:my|his|her|our|{ANIMAL} 's) (?:\w+ )?{LIMBS}\b"
    rf"|\b{_PRODUCT} (?:all )?(?:on|over) me\b"
    r"|\b(?:splashed|sprayed|squirted|doused|soaked|caught|hit|drenched|misted) "
    rf"(?:myself|me|(?:the |my )?{ANIMAL}|him|her)\b(?! 's)(?! (?:\w+ )?"
    r"(?:tanks?|tubs?|box|cage|viv|vivarium|enclosure|home|hide|bowl|glass|walls?|floor|lid|stuff|branch\w*)\b)"
    r"(?=.*(?:AGENT|STOCK|BOTTLE|accident|mistake|oops|disinfectant|cleaner|concentrate))|\bon my (?:bare )?skin\b"
    r"|\bskin (?:contact|burn)",
    *_HINTS["skin"],
)
OUCH = Pattern(r"\b(?:ow+|ouch+|argh+|aa+h+|aargh+|yeow+)\b")
POISONED = Pattern(
    r"^poison(?:ed|ing)?\b|\bpoison(?:ed|ing)\b(?! cent)|\bfirst aid\b|\bsplashed (?:myself|me)\b|\bgot splashed\b"
    r"|\bemergency\b|\bhelp me\b.*AGENT"
    rf"|\b(?:{ANIMAL}|he|she|it)(?: has| is| 's|'s)?(?: been| being)? "
    r"(?:sick|vomit\w*|throwing up|threw up|thrown up) (?:from|after|because of) "
    r"(?:it|that|this|the (?:fumes|AGENT|smell|spray|stuff|cleaner)|AGENT)\b"
)

# Said of what might be worn or aired, not of what has happened.
PREPARING = Pattern(
    r"\bwhat (?:ought|should|do|must|shall) i (?:to )?(?:have|put|get|keep|need|wear) on (?:my|the|both)\b"
    r"|\b(?:protect\w*|goggles|(?:need|my) glasses on|safety glasses|wear|wearing|mask|respirator|visor|apron"
    r"|gloves for|should i cover|cover (?:my|your) (?:eyes?|face|mouth|hands|arms|skin)|fumes (?:gone|clear\w*)"
    r"|fumes to|(?:clear|get rid of|air out|for) (?:the |all the )?fumes|fumes out|keep an eye|eye level|any fumes"
    r"|without fumes|no fumes|low fumes|less fumes)\b"
)
HAPPENED = Pattern(
    r"\b(?:splashed|splattered|spattered|got|stings?|stinging|burns?|burning|hurts?|swallowed|drank|coughing|choking"
    r"|inhaled|dizzy|ow|ouch|help)\b"
)

ME = Pattern(
    rf"\b(?:my|our) (?:\w+ )?(?:eyes?|mouth|throat|chest|nose|lungs?|head|tongue|{LIMBS})\b|\bme\b|\bmyself\b"
    r"|\bi (?:am|have|just|accidentally|think|feel|can not|breathed|inhaled|swallowed|drank|got|licked|tasted)\b"
)
SOMEONE = Pattern(
    r"\b(?:kid|kids|son|daughter|wife|husband|partner|child|children|toddler|friend|mate|mum|mom|dad|brother|sister"
    r"|someone|somebody|flatmate|roommate|neighbour|student|pupil|guy|man|woman|grandson|granddaughter|helper|keeper"
    r"|baby|infant|boy|girl|lad|lass|nan|gran|grandma|granny|grandad|grandpa|grandfather|grandmother|uncle|aunt)\b"
)
ITS = Pattern(
    rf"\b(?:his|her|its|their|ENCLOSURE 's|{ANIMAL} 's) (?:\w+ )?"
    r"(?:eyes?|face|head|skin|back|tail|scales|shell|nose|belly|body|leg|foot)\b|\b(?:him|her)\b"
)
LICKED = Pattern(r"\b(?:licked|lapped|licking)\b")

_SORE = (
    r"(?:wounds?|cuts?|burns?|bites?|bitten|sores?|abscess\w*|ulcers?|(?:mouth|scale|shell|tail|belly|skin|blister) "
    r"(?:rot|disease)|rot|blisters?|infect(?:ion|ed|ions)|lesions?|scrapes?|grazes?|scratch\w*|stitches|injur\w+|"
    r"(?:stuck|retained|bad|old) shed|prolapse|scabs?|swelling|rash|ringworm|thermal burn|gash|puncture|bleeding"
    r"|woond|wownd|womb)"
)
_BODY = (
    r"(?:skin|shell|scales?|tail|mouth|belly|foot|feet|legs?|nose|nostrils?|eyes?|vent|cloaca|head|toes?|gums?|back"
    r"|body|face|neck|jaw|tongue|plastron|carapace|side|stump|claws?)"
    r"(?! (?:wall|walls|panel|glass|door|room|cage|of the tank)\b)"
)
_HIS = rf"(?:his|her|its|their|{ANIMAL} 's|(?:the |my |a )?\w* ?{ANIMAL} 's)"
_HURT_ONE = rf"(?:he|she|it|they|{ANIMAL}) (?:is|are|got|was) (?:burnt|burned|bleeding|cut|injured|bitten|hurt|raw)"
_TREAT = (
    r"(?:treat\w*|clean\w*|disinfect\w*|dab\w*|soak\w*|bath\w*|bathe|dip\w*|swab\w*|put\w*|us(?:e|ing)|apply\w*"
    r"|rub\w*|flush\w*|rins\w+|wash\w*|wip\w+|spray\w*|mist\w*|giv\w+|dos\w+|inject\w*|drop\w*|pour\w*|paint\w*"
    r"|sterili\w+|mak\w+|mix\w*|need|help\w*|dilut\w+|safe|ok|okay|good|for)"
)
_SOAK = (
    r"(?:soak|soaking|soaks|bathe|bathing|bath|dip|dipping|dips|dunk|flush|flushing|swab|dab|spray|spraying|mist"
    r"|misting|wash|washing|rinse|rinsing|clean|cleaning|disinfect|disinfecting|wipe|wiping|treat|treating|dose"
    r"|dosing|inject|scrub|scrubbing|sterilise|sterilize|cover|rub)"
)
_NOT_HOME = (
    r"(?! 's)(?! (?:\w+ )?(?:tubs?|tanks?|box|boxes|cages?|viv|vivs|bowls?|dish(?! soap)|hides?|racks?|enclosures?"
    r"|vivarium|home|house|room|stuff|things|glass|floor|lid|walls?|panel|branch\w*)\b)"
)
_WATERED = r"(?:drinking water|his water|her water|its water|water bowl|water dish|soak water|bath water|food|feed)"
_HIS_BATH = rf"{_HIS} (?:bath|soak|dip|drink|tub of water)"
_MEDICINE = (
    r"(?:medicines?|medication|meds|antibiotics?|antiseptic cream|ivermectin|metronidazole|fenbendazole|enrofloxacin"
    r"|meloxicam|ceftazidime|praziquantel|pain ?killers?|dewormer|wormer|ointment|eye drops|drops|injection|tablets?"
    r"|paracetamol|aspirin|ibuprofen|steroids?|silver sulfadiazine)"
)
WOUND = Pattern(
    # a sore of the animal's with anything that treats it, or with a product or strength
    rf"(?=.*\b{_TREAT}\b)(?=.*\b{_SORE}\b)(?=.*(?:{_PRODUCT}|percent|\bon\b|\bfor\b|\btreat|\bclean|\bdisinfect|\bdab"
    r"|\bput|\buse|\bhelp))"
    rf"|\b{_PRODUCT}(?: \S+){{0,3}} (?:on|onto|in|into|for|over|to) (?:a |an |the |his |her |its |this |that )?"
    rf"(?:\w+ )?{_SORE}\b|\b{_HURT_ONE}\b.*(?:{_PRODUCT}|\bspray|\bput\b|\bdab)"
    rf"|\b{_PRODUCT}(?: \S+)? (?:on|for) (?:he|she) is {_SORE}\b|\b(?:disinfect\w*|clean) (?:his|her|its) wood$"
    # so much for so heavy an animal; and a hurt animal with a wish to put something on it
    r"|\bper (?:kilo|kg|kilogram|gram|pound)\b|\b(?:mils|ml|drops|mg|DURATION|VOLUME)\b.* (?:a|each) kilo\b"
    r"|\b(?:bit|bitten|burn|burnt|burned|torn|tore|pus|bleeding|bled|abscess|scabs?|infected|ulcers?|bite"
    r"|blisters?)\b[^.!?]*\b(?:can|shall|do|should|could|may) (?:i|we)\b[^.!?]*\b"
    r"(?:pour|use|spray|swab|dab|put|apply|clean|soak|rinse|wash|treat)\b"
    r"|(?=.*\b(?:NUMBER|percent|MIX|strength|ratio|how (?:strong|weak|dilute)|dilut\w*)\b).*\b(?:his|her|its) "
    rf"(?:\w+ )?{_BODY}\b"
    r"|\bbut (?:for|on) (?:his |her |its |the )?(?:skin|scales|shell|flesh|wounds?|sores?|burns?)\b"
    # bathing, dipping, spraying the animal itself
    r"|(?<!the )\b(?:bathe|bathing|bath|dip|dunk|soak|soaking) ENCLOSURE (?:in|with)\b"
    rf"|\b{_SOAK} (?:the |my |a )?(?:{ANIMAL}|him|her|ENCLOSURE) (?:itself|himself|herself)\b"
    rf"|\b(?:can|could|may|should) (?:the |my )?(?:{ANIMAL}|he|she|ENCLOSURE) (?:soak|bathe|swim|sit|bath) in "
    rf"(?:\S+ )?{_PRODUCT}\b"
    rf"|\b(?:{ANIMAL}|he|she|ENCLOSURE) have a (?:bath|soak|dip|swim|wash)\b.*\b(?:{_PRODUCT}|stuff)\b"
    rf"|(?=.*{_PRODUCT}).*\b{_SOAK} (?:(?:the |my |a )?{ANIMAL} 's|his|her|its) (?:\w+ )?{_BODY}\b(?! wall)"
    rf"|(?=.*{_PRODUCT}).*\b(?:gentle|mild|weak|kind|dilute|diluted|strong|safe) enough (?:for|on|to) "
    rf"(?:his |her |its |the |my )?(?:skin|scales|shell|mouth|{ANIMAL}(?! 's))\b"
    rf"|(?=.*{_PRODUCT}).*\b(?:by mouth|orally|the flesh|his flesh|her flesh)\b"
    rf"|\bsurface\b.*\b(?:is|on|for) {_HIS} (?:\w+ )?{_BODY}\b|(?=.*{_PRODUCT}).*\b(?:in|into|to|with) {_HIS_BATH}\b"
    rf"|(?=.*{_PRODUCT}).*\bwhat (?:strength |ratio |mix )?for (?:the |my )?(?:{ANIMAL}|him|her)\b{_NOT_HOME}"
    rf"|\b{_SOAK} (?:down |off )?(?:the |my |a |our )?(?:\w+ )?(?:{ANIMAL}|him|her|hatchlings)\b{_NOT_HOME}"
    rf"(?=.*(?:{_PRODUCT}|\bin\b|\bwith\b|\bdip\b|\bbath\b|\bmites\b|ORGANISM))"
    rf"|\b(?:give|giving) (?:the |my )?(?:{ANIMAL}|him|her) (?:a |an |some )?(?:\S+ )?"
    rf"(?:{_PRODUCT}|{_MEDICINE}|dose)\b"
    rf"|(?=.*{_PRODUCT}).*\b(?:give|giving) (?:the |my )?(?:{ANIMAL}|him|her) (?:a |an |some )?(?:\S+ )?"
    r"(?:bath|soak|dip)\b"
    # a product on a part of it, in its water, in it
    rf"|(?=.*{_PRODUCT}).*\b(?:on|onto|in|into|over|to|up|around|for) {_HIS} (?:\w+ )?{_BODY}\b"
    rf"|(?=.*{_PRODUCT}).*\b(?:in|into|to|with) (?:{_HIS} |the |my )?(?:\S+ )?{_WATERED}\b"
    rf"|\b(?:put|use|apply|rub|spray|pour|dab)\b(?: \S+){{0,3}} {_PRODUCT}(?: \S+){{0,3}} (?:on|onto|over|in) "
    rf"(?:the |my |a )?(?:{ANIMAL}|him|her)\b{_NOT_HOME}"
    rf"|\b{_PRODUCT}(?: \S+){{0,3}} (?:on|onto|over|in) (?:the |my |a )?(?:{ANIMAL}|him|her)\b{_NOT_HOME}"
    rf"|(?=.*(?:{ANIMAL}|\bhim\b|\bher\b|\bhe\b|\bshe\b)).*\b{_PRODUCT} (?:dip|bath|soak)\b"
    rf"|(?:{_PRODUCT}|percent)\b.*\b(?:on|for) (?:broken|raw|damaged|burnt|open) (?:\w+ )?(?:skin|flesh)\b"
    rf"|\b{_PRODUCT} (?:dip|bath|soak)\b(?=.*(?:{ANIMAL}|\bhim\b|\bher\b))"
    rf"|\b(?:dip|bath|soak) (?:for|of) (?:the |my )?(?:{ANIMAL}|him|her)\b"
    # medicines
    rf"|\b{_MEDICINE}\b(?=.*(?:{ANIMAL}|\bhim\b|\bher\b|\bhe\b|\bshe\b|dose|how much|give))"
    rf"|\b(?:dose|dosage|how much)\b.*\b{_MEDICINE}\b"
    rf"|\b(?:dose|dosage)\b.*\b(?:for|give) (?:the |my )?(?:{ANIMAL}|him|her)\b(?! 's)"
    rf"|\bkill (?:the )?mites on (?:him|her|(?:the |my )?{ANIMAL})\b",
    *_HINTS["wound"],
)
WISH = Pattern(
    r"\b(?:can|could|should|may|might|how|what|which|is it|is|would|do|does|want|need|need to|i will|going to|let me"
    r"|about to|make|mix|ok to|safe to|best|try|to treat|to heal|for his|for her)\b"
    r"|^(?:please |just )?(?:put|use|dab|rub|apply|spray|pour|give|drip|dip|soak|bathe)\b"
)
THERE_IS = Pattern(
    r"^(?:oh |no |help |so |and |wait )*(?:there is|there 's)(?! (?:a |any )?(?:way|wound|cut|burn|sore))\b"
)
MY_OWN = Pattern(rf"\bmy (?:own )?(?:\w+ )?(?:{_SORE}|{LIMBS}|eyes?)\b")


_HOME = r"(?:'s|tank|tub|box|cage|viv|vivarium|enclosure|home|house|setup|hide|bowl|glass|lid|walls?)"
SPRAYED_ANIMAL = Pattern(
    r"\b(?:sprayed|misted|spritzed|doused|splashed|squirted|hosed|soaked|drenched)(?: all| right)?(?: over)? "
    rf"(?:the |my |our |a )?(?:\w+ )?{ANIMAL}(?! {_HOME})\b"
    r"|\b(?:sprayed|misted|spritzed|squirted) (?:right |all )?over ENCLOSURE(?: 's head)?(?= by| accident|$)"
    r"|\b(?:oh no|oh god|oops|whoops|help|accident\w*|mistake)\b.*\b(?:sprayed|squirted) ENCLOSURE\b(?! 's)"
    r"|(?<!the )\bENCLOSURE got (?:\w+ )?(?:sprayed|squirted|splashed|soaked|misted)\b"
    rf"|\b(?:{ANIMAL}|he|she|ENCLOSURE) (?:is|'s|got|was) (?:all )?(?:covered|drenched|dripping) "
    rf"(?:in|with) {_PRODUCT}\b"
    rf"|\b{ANIMAL} (?:got|was|has been|'s been|is|has got|had got) (?:\w+ )?"
    r"(?:sprayed|misted|splashed|squirted|soaked|drenched)\b"
    rf"|\b{_PRODUCT} (?:on|over|onto|dripped on|dripped onto|landed on|went on|got on|is on|'s on|all over) "
    rf"(?:the |my |our )?(?:\w+ )?{ANIMAL}(?! {_HOME})\b",
    *_HINTS["sprayed animal"],
    "sprayed ENCLOSURE",
    "over ENCLOSURE",
    "ENCLOSURE got",
    "covered",
    "drenched",
    "dripping",
    "squirted ENCLOSURE",
)
"""An animal that was wetted, by its kind; its tank, tub or glass is another matter."""
REACHED_IT = Pattern(
    r"\b(?:dripp\w*|splash\w*|landed|spill\w*|spilt|squirted|dropped|blew|fell|ran)(?: \S+){0,2}? "
    rf"(?:on|onto|into|over|in|down) (?:(?:the |my |a )?(?:\w+ )?{ANIMAL} 's|ENCLOSURE 's|his|her|its) "
    rf"(?:\w+ )?{_BODY}\b"
    rf"|\b(?:i|we) (?:have |just |accidentally )*(?:got|spilled|spilt|dripped|dropped)(?: \w+){{0,3}}? {_PRODUCT} "
    rf"(?:on|onto|in|into|over) (?:(?:the |my )?(?:\w+ )?{ANIMAL} 's|his|her|its) (?:\w+ )?{_BODY}\b"
    rf"|\b{_PRODUCT} (?:got|went|ran|is) (?:up|in|into|on|down) "
    rf"(?:(?:the |my )?{ANIMAL} 's|ENCLOSURE 's|his|her|its) (?:\w+ )?{_BODY}\b"
    rf"|\b(?:{ANIMAL}|he|she|ENCLOSURE) (?:jumped|dived|climbed) (?:in|into) (?:the |my |a )?{_PRODUCT}"
    rf"|\bthere is {_PRODUCT} (?:\w+ )?(?:on|in|over|under) (?:(?:the |my )?(?:\w+ )?{ANIMAL} 's|his|her|its|their) "
    rf"(?:\w+ )?{_BODY}\b"
    # An animal's own name stands for its home; without "the" it is the animal that was dripped on.
    rf"|\b{_PRODUCT} (?:\w+ )?(?:dripped|splashed|spilled|spilt|landed|fell|squirted) (?:on|onto|over|in) ENCLOSURE\b"
    rf"|\b(?:{ANIMAL}|he|she|they|ENCLOSURE) (?:was|were|is|are)(?: still)? (?:in|inside|under)"
    r"(?: there| it| the ENCLOSURE| (?:his|her|their|the) (?:tank|cage|viv|vivarium|enclosure))? "
    r"(?:when|while|as|and) (?:i )?(?:\w+ )?(?:sprayed|misted|applied|doused|soaked)\b"
    r"|\bi (?:sprayed|misted|doused)(?: \S+){0,4} (?:with|while) (?:him|her|them|the ANIMAL|he|she|they) "
    r"(?:was |were )?(?:still )?(?:in|inside)\b"
    rf"|\b(?:{ANIMAL}|he|she|they|ENCLOSURE)\b[^.;!?]* in (?:a |the |some )?(?:puddle|pool) of {_PRODUCT}"
    rf"|\b(?:{ANIMAL}|he|she|they|ENCLOSURE)(?: is| 's| are| has got| got)(?: back)? in (?:the|that|a) (?:tub"
    rf"|tank|box|cage|one|viv)"
    rf" (?:that |which )?i (?:have )?(?:just )?(?:sprayed|misted|disinfected|soaked|(?:had|put|kept|used)(?: the"
    rf"| my| some)? {_PRODUCT})\b"
    rf"|\b(?:{ANIMAL}|he|she|ENCLOSURE)(?: is| has| 's)?(?: been)? (?:swimming|sitting|lying|got) "
    rf"(?:in |{_PRODUCT} (?:on|in|over) )(?:(?:his|her|its|their) {_BODY}|(?:the |a |some )?{_PRODUCT}(?! bottle))\b"
    rf"|\b(?:{ANIMAL}|he|she|they|ENCLOSURE) (?:has |have )?(?:walked|stepped|crawled|slithered|ran|fell|sat|lay|laid"
    r"|stood|swam|rolled|got|went|gone|came|trod|waded|paddled) (?:through|in|into|over|across|on) (?:the |some "
    r"|my |a )?"
    rf"(?:(?:puddle|pool|trail|film|drop|bit) of )?(?:the |some )?(?:wet )?{_PRODUCT}"
    rf"(?! {_HOME})\b",
    *_HINTS["reached it"],
)
"""An animal that was dripped on, was still inside, or went through it, known by his or her or its own name."""
HEARD_AS_EYE = Pattern(
    r"\b(?P<my>my|his|her) (?:i|ai|aye|ay|iye|eie|eyee+|eys|ies|high|ise|ize)\b"
    r"(?= (?:with|and|it|help|what|hurts?|sting\w*|burn\w*)|$| ?[,.!?])"
    r"|\b(?P<in>in|into|in to) (?P<whose>my|the) (?:ice|ais|ayes|i|aye|ai|high)\b(?= ?[,.!?]|$)",
    *_HINTS["heard as eye"],
)
"""An eye as recognisers and thumbs write it: "bleach in my I"."""

LEFT_INSIDE = Pattern(
    rf"\b(?:{ANIMAL}|he|she|they|ENCLOSURE|everyone|someone)(?: is| are|'s|'re| 's)?(?: \w+)? (?:in|inside|left in) "
    r"(?:there|it|the room|here|with it)\b"
    rf"|\b(?:{ANIMAL}|he|she|they|ENCLOSURE)(?: is| are|'s| 's)? (?:still )?(?:inside|trapped)\b"
    rf"|\bleft (?:the |my |a )?(?:\w+ )?(?:{ANIMAL}|him|her|them|ENCLOSURE)(?: in| inside)\b"
)
"""Somebody is where the fumes are."""

WORDS = words_in(
    *(
        EYE,
        MOUTH,
        LUNGS,
        SKIN,
        OUCH,
        POISONED,
        PREPARING,
        HAPPENED,
        ME,
        SOMEONE,
        ITS,
        WOUND,
        WISH,
        SPRAYED_ANIMAL,
        REACHED_IT,
        HEARD_AS_EYE,
        IDIOMS,
    )
)
"""Every word that a rule here turns on: known words, so that none is mended into another."""
