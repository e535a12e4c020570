"""A wish to treat an animal, by its parts: a sore or an animal, a way of treating, and something to treat it with.

`patterns.WOUND` knows whole phrases. Here only the parts count, so that a wish in words nobody has written down is
refused as well: "is a bath in diluted quat any good, mites all over her". What is asked of its tank, tub or bowl is no
such wish, however sore the animal is; and what got onto an animal by accident is for `cries`.
"""

from __future__ import annotations

import re

from assistant.understand.harm.patterns import ANIMAL
from assistant.understand.text.patterns import Pattern

_LIQUID = (
    r"(?:AGENT|STOCK|BOTTLE|MIX|OTHER|disinfectants?|cleaners?|antiseptics?|concentrate|solution|spray|spritz|squirt"
    r"|dilution|diluted?|chemicals?|salt|(?:\w+ )?(?:one|stuff|liquid|bottle|mix)|percent)"
)
"""What it would be treated with; a strength alone stands for it, and so does a bottle by its colour."""
_PLAIN_LIQUID = (
    r"(?:(?:pink|blue|green|red|yellow|orange|purple|violet|white|clear|brown|weak|weaker|strong) "
    r"(?:one|stuff|liquid|bottle|mix)|AGENT|STOCK|BOTTLE|MIX|OTHER|disinfectants?|cleaners?|antiseptics?|concentrate"
    r"|solution|dilution|diluted?|percent|chemicals?|(?:dish|hand) soap|washing up liquid)"
)
_HOMES = (
    r"(?:tubs?|tanks?|box|boxes|cages?|vivs?|vivarium|enclosures?|home|house|room|bowls?|dish|hides?|racks?|glass"
    r"|floor|lid|walls?|branch\w*|cork|perch\w*|wood|bedding|substrate|towels?|cloths?|surfaces?|tray|tongs|tools?"
    r"|nets?|things|mat|plants?|logs?|rocks?|stones?|tiles?|incubator|carrier|setup|gear|equipment)"
)
_NOT_HOME = rf"(?! ?'s)(?! (?:\w+ )?{_HOMES}\b)(?! (?:ORGANISM|eggs?|poo\w*|urates?|waste|germs?|blood|shed ?skin)\b)"
_HIM = (
    rf"(?:(?:(?:the |my |a |our |this |that |whole |poor |little )+(?:\w+ )?)?{ANIMAL}|him|her|them|himself|herself"
    r"|itself)"
)
_HIS = rf"(?:his|her|its|their|(?:the |my |a )?(?:\w+ )?{ANIMAL} 's|the \w+ 's|ENCLOSURE 's)"
_BODY = (
    r"(?:skin|shell|scales?|scutes?|tail|mouth|belly|bely|bellies|foot|feet|legs?|nose|nostrils?|nares|eyes?|vent"
    r"|cloaca|head|toes?|gums?|back|body|face|neck|jaw|tongue|plastron|carapace|sides?|stump|claws?|ears?|throat"
    r"|lips?|wattle|frill|spine|paws?|fur)"
)
_SORE = (
    r"(?:wounds?(?! (?:up|down|round|back|on the clock))|sores?|abscess\w*|ulcers?|lesions?|stomatitis|canker|"
    r"(?:mouth|scale|shell|tail|belly|skin|foot) rot|rot|blisters?|prolapse\w*|stitches|scabs?|scrapes?|gash\w*|"
    r"(?:stuck|retained) shed|infect(?:ion|ions|ed)|punctures?|swelling|stump|"
    r"(?:a|an|his|her|its|their|the|thermal|bad|open|on|for|this) "
    r"(?:cuts?(?! (?:edge|end|side|piece|corner|bit|in half|to|down|off|up))|burns?|bites?|graz\w+|scratch\w*)|cut "
    r"(?:on|to)|burns? on|bite on)"
)
_HURT = (
    rf"(?:{_SORE}|burn(?:t|ed) (?:\w+ )?(?:himself|herself|itself|{_BODY})|bitten|bit by|rubbed {_HIS} (?:\w+ )?raw"
    r"|bleeding|swollen|crust\w*|puffy|dropped (?:his|her|its|their) tail|"
    rf"(?:red|black|white|soft|smelly|raw|sticky|cloudy|rotting|rotten) (?:legs?|toes?|feet|{_BODY})|{_BODY} "
    r"(?:is |are |'s |has |gone |turned )+(?:\w+ ){0,2}(?:soft|smelly|red|black|white|raw|sore|rotten|rotting|swollen"
    rf"|crust\w*|sticky|cloudy|bad|infected|flaky)|(?:his|her|its|their) {_BODY} where (?:it|he|she) is (?:\w+ )?"
    r"(?:raw|sore|red|split|open|cut|burnt|burned))"
)
_TREAT = (
    r"(?:treat\w*|dab\w*|swab\w*|flush\w*|rins\w+|soak\w*|bath\w*|bathe|dip\w*|paint\w*|rub\w*|smear\w*|wip\w+"
    r"|wash\w*|clean(?:s|ed|ing)?|disinfect(?:ed|ing|s)?|scrub\w*|spray\w*|spritz\w*|mist\w*|pour\w*|put\w*|apply\w*"
    r"|drip\w*|gargl\w*|irrigat\w*|us(?:e|ing)|go on|do|squirt\w*|drops?|help\w*|heal\w*|steep\w*|dunk\w*|sponge"
    r"|bathing)"
)
_ASKED = Pattern(
    r"\b(?:can|could|may|might|shall|should|would|will|is|are|does|do|how|what|which|want\w*|wanna|need|gonna"
    r"|going to|thought|thinking|wonder\w*|reckon|maybe|ok|okay|fine|safe|good|any good|for|enough|strong|dilute)\b"
    rf"|\?|^(?:please |just |so |and )*{_TREAT}\b|\bto {_TREAT}\b"
    r"|^(?:AGENT|STOCK|BOTTLE|MIX|VOLUME(?: of \w+)?) (?:\w+ )?(?:in|on|onto|into) "
)
"""Asked or wished for, or put as an order or a thing in hand ("putting ... on")."""

_ACCIDENT = Pattern(
    r"\b(?:accident\w*|mistake|oops|splash\w*|dripped|landed|spilled|spilt|swallowed|drank|licked|fell|"
    r"(?:just|have|i) (?:sprayed|misted|doused|squirted)|got(?: \S+){0,4} (?:in|on|into)|gone (?:in|on)|went "
    r"(?:in|on|into)|has been in|been (?:sat|sitting|lying) in)\b"
)
_IS_ON_IT = Pattern(
    rf"\bthere (?:is|was)(?: \w+){{0,2}}? {_PLAIN_LIQUID} (?:in|on|all over|near) (?:it|them|{_HIS} \w+|{_HIM})\b",
    "there is",
    "there was",
)
""" "There's bleach in it, can I rinse her eye?": it got there, and nobody wishes it to."""
_RUBS_ITSELF = Pattern(r"\b(?:is|'s|keeps|been) rubbing (?:his|her|its|their) (?:\w+ )?(?:eyes?|face|nose|mouth)\b")
_AT_IT = Pattern(
    # treated itself, or a part of it, or a sore
    rf"\b{_TREAT}\b(?: (?!(?:near|around|by|beside|with|if|when|and|where|after|before|while|than|behind|under|about"
    r"|for)\b)\S+){0,4} (?:(?:on|off|onto|over|in|into|to|up|out|down|from) )?"
    rf"(?:{_HIM}{_NOT_HOME}|(?:of |for )?{_HIS} (?:\w+ )?(?:{_BODY}|{_SORE}){_NOT_HOME})"
    r"|\b(?:on|in|into|onto|over|for|to|out|of|from) (?:(?:a|an|the|his|her|its|their|my|open|raw|deep) )*(?:\w+ )?"
    rf"(?:{_SORE}|burn(?:t|ed) (?:\w+ )?{_BODY})\b"
    rf"|\b(?:in|into|on|of|for|to|out) (?:the )?{_BODY} of (?:the |my |a )?(?:\w+ )?{ANIMAL}{_NOT_HOME}"
    rf"|\b(?:for|on|in|into|over|to|up|out|of) {_HIS} (?:\w+ )?(?:{_BODY}|{_SORE}){_NOT_HOME}"
    rf"|\bkill\w*\b(?: \S+){{0,4}} on {_HIM}{_NOT_HOME}"
    rf"|\b(?:ORGANISM|fungus|ringworm|mites?|ticks?) (?:off|on) {_HIM}{_NOT_HOME}"
    rf"|\b(?:hole|place|spot|patch|bit|area) where (?:\w+ ){{0,2}}?(?:{_SORE})\b"
)
_HURT_TEXT = Pattern(rf"\b{_HURT}\b|\b(?:{ANIMAL}|he|she) (?:has|is|got)(?: got| covered in)? (?:\w+ )?ORGANISM\b")
_WITH_PLAINLY = Pattern(
    rf"\bto (?:kill|heal|treat|cure|get rid of|stop)\b|\b{_PLAIN_LIQUID}\b|\bspritz\b|\bspray\b|\bbottles?\b"
    r"|\bthe (?:pink|blue|yellow|clear)$"
)
_TREATED = Pattern(rf"\b{_TREAT}\b")
_IT_THEN = Pattern(
    # the hurt is told, and then it is "it" that is treated
    rf"\b(?:soak|dip|bathe|dab|swab|wash|clean|rinse|flush|wipe) the {_BODY}\b"
    r"|\b(?:clean|wash|rinse|wipe|scrub|soak|bathe|bath|dab|swab|flush|treat|disinfect|spray|paint|put|pour|rub|dip"
    r"|use|dunk|go|dress)\b(?: \S+){0,4}? (?:it|them|that|on|him|her)\b"
    rf"|\b{_PLAIN_LIQUID} (?:\w+ )?(?:do|help|work|ok|any good|on|then)\b|\bnow (?:the|some) (?:\w+ )?"
    + _PLAIN_LIQUID
    + r"|\b(?:put|use|dab|try|need)\w* (?:\S+ ){0,3}?"
    + _PLAIN_LIQUID
)
_BATH = Pattern(
    r"\b(?:baths?|bathe|bathing|soak|soaking|dip|dipping|swim|swimming|paddle|shower|dunk)\b(?: \w+){0,3} "
    rf"(?:in|with) (?:\w+ ){{0,2}}?{_LIQUID}|{_LIQUID} (?:\w+ )?(?:baths?|soak|dip)\b(?! (?:the |my |a )?{_HOMES})",
    "bath",
    "soak",
    "dip",
    "swim",
    "paddle",
    "shower",
    "dunk",
)
_SOMEBODY = Pattern(rf"\b(?:{ANIMAL}|him|her|them|his|its|their|\w+self|{_SORE}|burnt|burned|the \w+ 's)\b")
"""Looked for first: it is compiled in a tenth of the time."""
_DIP_OF_IT = Pattern(r"\b(?:MIX|percent|AGENT|BOTTLE)\b.*\b(?:a|the) (?:dip|bath|soak)\b")
_BATH_FOR = Pattern(
    rf"\b(?:baths?|soak|dip) for {_HIM}{_NOT_HOME}(?=.*\b(?:how|what|strong|strength|weak|dilute\w*|MIX|percent)\b)",
    "bath",
    "soak",
    "dip",
)
_MADE_WET = Pattern(
    rf"\b(?:for|if|can|may|could|should) {_HIM} (?:to )?(?:be|get|gets|is) (?:\w+ )?"
    rf"(?:wet|damp|soaked|sprayed|misted|covered|bathed|dipped|wiped|treated|rubbed)\b.*{_PLAIN_LIQUID}",
    *("wet", "damp", "soaked", "sprayed", "misted", "covered", "bathed", "dipped", "wiped", "treated", "rubbed"),
)
_BEING = Pattern(rf"\b(?:{ANIMAL}|he|she|him|her|them)\b{_NOT_HOME}")
_ROUTES = Pattern(
    r"\bnebuli[sz]\w*"
    r"|\b(?:nasal|nostril|sinus|ear|oral|wound|abscess) (?:flush|rinse|wash|drops?|bath|irrigation|dip|soak)\b"
    r"|\bgargl(?:e|ing)\b|\b(?:swab|dab|bathe) the (?:mouth|gums|vent|nose|wound|shell|belly)\b"
    r"|\bwound (?:safe|strength|care|cleaner|mix)\b|\bsafe (?:for|on) wounds?\b"
    rf"|\bsafe (?:for|on)\b.*\b(?:reptiles?|{ANIMAL})(?: 's)? {_BODY}\b"
    r"|\b(?:humidifier|fogger|steam|vaporiser|vaporizer)\b.*\b(?:breathing|respiratory|infection|nose|wheez\w*)\b"
    r"|\b(?:breathing|respiratory) infection\b.*\b(?:humidifier|fogger|steam\w*|mist)\b"
    rf"|\b(?:mouth ?wash|eye ?(?:wash|drops|bath))\b(?=.*(?:{ANIMAL}|\b(?:him|her|his)\b|{_PLAIN_LIQUID}))"
    rf"|{_PLAIN_LIQUID}.*\b(?:mouth ?wash|eye ?(?:wash|drops|bath))\b",
    *("nebuli", "flush", "rinse", "wash", "drops", "bath", "irrigation", "dip", "gargl", "wound", "infection", "nose"),
    *("soak", "wheez", "swab", "dab", "bathe", "safe"),
)
_DRUG = (
    r"(?:\w{3,}(?:mycin|cillin|azole|mectin|oxacin|oxicam|cycline|azuril|antel|quantel|cef\w*|sulfas?|solone"
    r"|cortisone|profen|endazole|amide)|medicines?|medications?|meds|antibiotics?|(?:de)?worm(?:er|ers|ing)|deworm"
    r"|pain ?killers?|ointments?|antifungals?|antiparasitics?)"
)
_DOSED = (
    r"(?:how (?:much|many)|dos(?:e|es|age|ing)|mils?|ml|mg|milligrams?|drops?|VOLUME|tablets?|pills?|give|giving"
    r"|inject\w*|squirt|strength|per kilo|for (?:a|an|my|the|his|her|ORGANISM))"
)
_MEDICINE = Pattern(
    rf"\b{_DRUG}\b(?! (?:syringes?|spoons?|cups?|bottles?|cupboard|box|fridge))(?=.*\b{_DOSED}\b)"
    rf"|\b{_DOSED}\b.*\b{_DRUG}\b(?! (?:syringes?|spoons?|cups?|bottles?|cupboard|box|fridge))"
    r"|\b(?:de)?worm (?:my|the|him|her|a)\b"
    # so much of something for so heavy an animal, or just for an animal: no cleaning is measured so
    rf"|\b(?:NUMBER|VOLUME|\w+) (?:kilos?|kgs?|grams?|g|pounds?|lbs?) (?:\w+ )?{ANIMAL}\b"
    r"|\b(?:mils?|ml|mg|drops?|tablets?|how much) (?:of )?"
    r"(?!AGENT|STOCK|BOTTLE|MIX|water|the|it|that|this|soap|solution|OTHER)\w{4,} (?:\w+ )?"
    rf"(?:for|does|do|to|should|can|into) (?:the |my |a |an )?(?:\S+ ){{0,2}}?(?:{ANIMAL}|him|her)\b{_NOT_HOME}",
    *(
        "mycin",
        "cillin",
        "azole",
        "mectin",
        "oxacin",
        "oxicam",
        "cycline",
        "azuril",
        "antel",
        "sulfa",
        "solone",
        "profen",
    ),
    *("cef", "cortisone", "amide", "medicine", "medication", "meds", "antibiotic", "worm", "pain", "ointment", "anti"),
    *("kilo", "kg", "gram", " g ", "pound", "lb", "mil", "ml", "mg", "drop", "tablet", "how much"),
)
_SO_MUCH = Pattern(
    rf"^(?!.*\b(?:{_PLAIN_LIQUID}|{_HOMES}|water|soap|bleach|left|ENCLOSURE)\b)(?:(?:what|how many) )?\w{{4,}} "
    rf"(?:mils?|ml|mg|drops?|dose|dosage)\b.*\b{ANIMAL}\b{_NOT_HOME}"
)
"""A word that is no product of cleaning, an amount and an animal: "wormex mils, ball python"."""
_IN_ITS_WATER = Pattern(
    r"^(?!.*\b(?:soak|scrub|wash|clean the|disinfect) (?:the |his |her )?(?:\w+ )?(?:bowl|dish)\b)"
    r"(?!.*\bto (?:soak|clean|disinfect|wash|bleach|sterili[sz]e) (?:it|them)\b).*\b"
    r"(?:put|add|pour|drop|use|mix|squirt|splash|give)\b.*\b(?:AGENT|STOCK|BOTTLE)\b.*\b(?:in|into|to) "
    r"(?:the |his |her |its |their )?(?:water (?:bowl|dish)|drinking water|drinking bowl|drink)\b"
    rf"|\bgive (?:the |my )?(?:\w+ )?(?:{ANIMAL}|ENCLOSURE|him|her|it|them) (?:a |some )?"
    r"(?:drink|sip|bit|little|drop)\b.*\b(?:AGENT|STOCK|BOTTLE)\b"
    rf"|\b(?:AGENT|STOCK|BOTTLE|MIX)\b.*\b(?:{ANIMAL}|him|her|them) to (?:soak|bathe|bath|sit|swim|drink)\b",
    *("water", "drink", "soak", "bath", "swim", "give"),
)
""" "A drop of bleach in the water bowl": what it drinks is no surface."""
_OF_A_HOME = Pattern(
    r"\b(?:on|onto|for|in|into|of|clean|disinfect|wash|do|strip|soak|spray|treat|scrub|wipe|bleach) "
    rf"(?:(?:the|his|her|my|its|their|a|an|this|that|whole|new|old) )*(?:\w+ )?{_HOMES}\b"
)
_OF_A_SYRINGE = Pattern(r"\b(?:syringe|spoon|cup|jug|scales?)\b.*\b(?:after|for|use|measure)\b")


def treats(text: str) -> bool:
    """True when a masked text wishes to put something on or into an animal, or asks the dose of a medicine."""
    if _ACCIDENT.search(text) or _RUBS_ITSELF.search(text) or _IS_ON_IT.search(text):
        return False
    if _ROUTES.search(text) or _IN_ITS_WATER.search(text):
        return True
    if (_MEDICINE.search(text) or _SO_MUCH.search(text)) and not _OF_A_SYRINGE.search(text):
        return not (_OF_A_HOME.search(text) and not re.search(rf"\b{_DOSED}\b", text))
    if not _ASKED.search(text) or of_its_home(text):
        return False
    if _HURT_TEXT.search(text) and (_IT_THEN.search(text) or _DIP_OF_IT.search(text)):
        return True
    with_it = _TREATED.search(text) or _WITH_PLAINLY.search(text)
    if _HURT_TEXT.search(text) and with_it and _AT_IT.search(text):
        return True
    if _MADE_WET.search(text) or _BATH_FOR.search(text) or (_BATH.search(text) and _BEING.search(text)):
        return True
    return bool(_SOMEBODY.search(text) and _WITH_PLAINLY.search(text) and _AT_IT.search(text))


_ITS_BATH = Pattern(
    rf"^(?:please )?kill (?:the |these |those )?ORGANISM on {_HIM}{_NOT_HOME}"
    r"|\b(?:in|into|to) (?:(?:the|his|her|its|a) )*(?:VOLUME )?(?:of )?(?:the |his |her |its )?drinking water"
    r"(?! (?:bowl|dish|bottle))|"
    rf"\b(?:baths?|soak|dip) for {_HIM}{_NOT_HOME}|\b(?:bathe|bathing|soak|soaking|dip|dipping|dunk) {_HIM}{_NOT_HOME}"
    rf"|\bfor (?:the |my |a )?(?:\w+ )?{ANIMAL} 's (?:\w+ )?{_BODY}{_NOT_HOME}|\bfleas?\b(?=.*\b{ANIMAL}\b{_NOT_HOME})",
    *("bath", "soak", "dip", "dunk", "'s", "flea", "kill", "drinking water"),
)
_OF_A_DRUG = Pattern(
    rf"\bVOLUME (?:of )?(?:the |his |her |its )?{_DRUG}\b(?! (?:syringes?|spoons?|cups?|bottles?))"
    rf"|\b(?:measur\w+|syring\w+|draw\w*|squirt|give|drip) (?:up )?VOLUME (?:\w+ )?(?:for|in|into|to|on) {_HIS} "
    rf"(?:\w+ )?{_BODY}\b|^(?:please |can i |could i |should i )*(?:fog|spray|mist|disinfect|AGENT) "
    r"(?:(?:the|his|her|its) (?:tank|tub|box|cage|viv|vivarium|enclosure)|ENCLOSURE|it) with "
    rf"{_HIM} (?:still )?(?:in|inside)(?: it| there)?(?: ?\?)?$",
    "VOLUME",
    " with ",
)
""" "0.2 mil of wormer", "into his mouth", and what is sprayed with her in it."""
_PRODUCT = Pattern(r"\b(?:AGENT|STOCK|BOTTLE|disinfectant|cleaner|concentrate)\b")


def treats_plainly(text: str) -> bool:
    """A product and a bath for an animal, or a part of its body: whatever mix and volume are given, it is no dose."""
    if _ACCIDENT.search(text):
        return False
    return _OF_A_DRUG.search(text) is not None or (
        _PRODUCT.search(text) is not None and _ITS_BATH.search(text) is not None
    )


def of_its_home(text: str) -> bool:
    """True when a masked text is about what an animal lives in, and treats no part of it."""
    told = _WHERE_IT_HAPPENED.sub(" ", text)
    return _OF_A_HOME.search(told) is not None and _DIRECT.search(told) is None


def its_home_is_done(text: str) -> bool:
    """ "Going to do the gecko with chlorhex": keepers call a home by its animal, and a clean "doing" it."""
    return _DOES_ITS_HOME.match(text) is not None


_DOES_ITS_HOME = Pattern(
    r"^(?:(?:so|ok|right|now|then|and|well|i am|i|we are|we|going to|gonna|about to|just|want to|will|let us|let me"
    rf"|time to|starting to|start|today|next) ,? ?)*(?:do|doing|did) (?:the |my )?(?:\w+ )?{ANIMAL} "
    r"(?:today |next |now |first )?(?:with|using) (?:the |my |some )?(?:AGENT|STOCK|BOTTLE)"
    r"(?: (?:today|next|now|first|then))*$"
)

_WHERE_IT_HAPPENED = Pattern(
    r"\b(?:burn|burnt|burned|cut|scraped|scratched|rubbed|grazed|caught|bitten|bit) "
    rf"(?:himself|herself|itself|{_HIS} (?:\w+ )?{_BODY}) (?:on|by|against|under|with|in) (?:the |a |his |her )?\w+"
)


_DIRECT = Pattern(
    r"\b(?:on|off|onto|over|to|bathe|dab|swab|treat|rinse|spray|soak|wipe|dip|wash|clean|for|in) "
    rf"(?:{_HIM}|{_HIS} (?:\w+ )?(?:{_BODY}|{_SORE})){_NOT_HOME}"
    rf"|\b(?:on|for|into|to) (?:(?:a|an|the|his|her|its|open) )*{_SORE}"
)

WORDS = frozenset(
    [  # known words, so that none is mended into another
        *("gargle", "gargling", "gargled", "nebulise", "nebulize", "nebuliser", "nebulizer", "nasal", "swab", "flush"),
        *("irrigate", "stomatitis", "abscess", "ulcer", "lesion", "prolapse", "stitches", "scab", "scrape", "gash"),
        *("graze", "cloaca", "carapace", "plastron", "antiseptic", "antibiotic", "antibiotics", "medicine", "ointment"),
        *("wormer", "dewormer", "deworm", "worming", "humidifier", "crusty", "swollen", "puffy", "bitten", "stump"),
    ]
)
"""Words that a rule here turns on: known words, so that none is mended into another."""
