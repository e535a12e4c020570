"""The parts that harm is told in: what hurts, how it gets at somebody, where, who, and its signs."""

from __future__ import annotations

from typing import Literal, TypeAlias

from assistant.understand.named.animal_words import ANIMAL_WORDS
from assistant.understand.text.patterns import Pattern

Place: TypeAlias = Literal["eye", "skin", "mouth", "lungs"]


def words_of(words: str) -> frozenset[str]:
    return frozenset(words.split())


HAZARDS = words_of(
    """
    AGENT STOCK BOTTLE MIX OTHER disinfectant disinfectants cleaner cleaners chemical chemicals concentrate acid
    chlorine ammonia fumes fume vapour vapours gas spray sprayer mist solution stuff bleach bleachy bleech blech
    leech breach detergent product antiseptic alcohol ethanol powder nozzle trigger tablet tablets tab quat mop
    droplet droplets squirt jet sanitiser sanitizer
    """
)
"""What can hurt, masked or as it is said, and as bleach is misheard."""
VAGUE = words_of("it some something stuff this drop drops splash bit lot load loads fleck blob")
USED = words_of(
    "sprayed spraying spray misted misting mixed mixing bleached bleaching disinfecting disinfected cleaning"
)
AFTER_WORK = Pattern(
    r"\b(?:since|after|from) (?:i |the |that |a |my )*(?:cleaned|clean|cleaning|used|disinfect\w*|spray\w*|bleach\w*"
    r"|washed|misted)\b"
    r"|\b(?:put|popped|moved|rehoused|rehomed) (?:him|her|them|it|(?:the |my )?ANIMAL)\b.*\b"
    r"(?:wet|damp|early|too soon)\b|\b(?:cleaner|disinfectant|rinse|the clean|wrong bottle)\b"
    r"|\bi (?:have )?used (?:the |my )?(?:\w+ )?(?:AGENT|BOTTLE)"
)
"""An animal's sign that comes after the work is asked about as the work's doing."""
FUMES = words_of("fumes fume vapour vapours gas smell chlorine mist")
VESSELS = words_of("bucket pail mop bottle jug siphon hose tube")
DIRTY_WATER = Pattern(r"\b(?:soak|soaking|bath|mop|bucket|cleaning|rinse|wash|washing|dip|dirty) water\b")
"""Water with what was washed off in it, and maybe the product."""

PLACES: dict[str, Place] = {
    **dict.fromkeys(
        words_of(
            "eye eyes eyeball eyeballs eyelid eyelids eyesight vision sight goggles glasses lens contacts pupil pupils"
        ),
        "eye",
    ),
    **dict.fromkeys(words_of("mouth lips lip tongue gums teeth gob"), "mouth"),
    **dict.fromkeys(words_of("throat chest lungs lung nose nostril nostrils airway airways"), "lungs"),
    **dict.fromkeys(
        words_of(
            """
            face skin hand hands arm arms leg legs foot feet finger fingers fingertip fingertips fingernails nails
            cuticles knuckle knuckles wrist wrists forearm elbow neck knee knees thigh thighs shin shins ankle
            ankles
            lap belly tummy stomach chin cheek cheeks forehead toe toes scalp hair ear ears palm palms thumb thumbs
            shoulder back front bum jeans trousers shirt jumper top dress clothes sleeve sock socks shoe shoes
            boot boots
            glove gloves nappy paw paws claws fur tail scales shell head
            """
        ),
        "skin",
    ),
}
WORN = words_of("glove gloves sock socks shoe shoes boot boots")
HELD = words_of("hand hands palm lap arms fingers")
MINE = words_of("my me mi our ours")
OWNERS = MINE | words_of("his her their its your own bare 's both left right")
PEOPLE = words_of(
    """
    me myself us himself herself themselves someone somebody everyone everybody anyone anybody kid kids son daughter
    wife husband partner child children toddler baby babies infant friend mate mum mom dad brother sister flatmate
    roommate housemate neighbour student pupil guy man woman boy boys girl girls lad lass nan gran grandma granny
    grandad grandpa grandson granddaughter grandkid grandkids helper keeper uncle aunt cousin nephew niece colleague
    boyfriend girlfriend teenager visitor
    """
)
ANIMALS = ANIMAL_WORDS | words_of(
    """
    ANIMAL animal animals geck tort beardie crestie royal reptile hatchling hatchlings pet pets dog dogs
    cat cats puppy pup kitten hamster rabbit bunny bird parrot budgie rat mouse ferret
    """
)
BEINGS = words_of("he she him her they them")

SIGNS = words_of(
    """
    sting stings stinging stung burning burns burnt burned hurt hurts hurting throb throbbing throbs smarting smarts
    itch itching itches itchy tingle tingles tingling tingly numb peel peeling raw swollen swelling blister blisters
    blistered blistering rash blotchy sore streaming weeping blurry blurred blurring agony pain painful gritty
    scald scalded scalding prickling prickly welt welts hives shut swells fire
    bleeding scratchy tickly closing throbs stingy watering
    """
)
WEAK_SIGNS = words_of(
    "red white pink hot slimy slippery soapy cloudy cracked tight funny killing dry yellow wet covered"
)
BREATH = words_of(
    """
    cough coughs coughing coughin coughed choke chokes choking chokin choked wheeze wheezy wheezing wheezes gasp
    gasping
    suffocating gag gagging gagged dizzy woozy lightheaded giddy nauseous nauseated nausea queasy vomiting
    vomited puking puked retching
    spluttering spluttrin unconscious asthma
    """
)
BREATH_SAID = Pattern(
    r"\b(?:can not|can hardly|could not|hard to|hardly|barely|struggl\w+ to|trouble|hurts to|carn ?'?t|cant) "
    r"(?:\w+ )?(?:breathe|breath|breathing)\b|\bshort(?:ness)? of breath\b"
    r"|\b(?:can not|can hardly|hardly|trying to|struggling to) (?:catch|get) (?:my|his|her|their) breath\b"
    r"|\b(?:my|his|her) breathing (?:is |'s |has |feels )*(?:gone |going |a bit |all )*"
    r"(?:tight|funny|bad|hard|odd|fast|laboured|shallow|wrong|weird)\b|\bdown the wrong way\b"
    r"|\broom (?:is |'s )?(?:going round|spinning|swimming|tilting)\b|\blight headed\b"
    r"|\b(?:feel\w*|going|went|nearly|bit|about to) (?:\w+ )?faint\b|\bfaint(?:ed|ing)\b|\bpass(?:ed|ing) out\b"
    r"|\bkeel(?:ed|ing) over\b|\bseeing stars\b|\b(?:threw|throwing|throw) up\b"
    r"|\bhead (?:is |'s )?(?:spinning|swimming|pounding|thumping|banging)\b"
    r"|\b(?:feel\w*|been|being|makes? me|making me|made me) (?:\w+ )?(?:sick|ill|poorly|rough)\b(?! of)"
)
TURNED = words_of("gone going turned feels feel come coming")
TIGHT = words_of("tight tightening catching closing rattling constricted burny clogged")
HEAVY = Pattern(r"\b(?:head ?aches?|migraine|collapsed?|sick|ill|unwell|ambulance|hospital|a and e|screaming)\b")
DRANK = words_of(
    """
    swallow swallowed swallowing swallows drank drunk drinks drinking gulped gulp swig swigged sip sipped lick licked
    licking
    licks lapped lapping lap ate eaten eating chewed chewing suck sucked sucking tasted mouthful downed necked
    ingested
    nibbled bit taste mouthful swallowing
    """
)
BREATHED = words_of(
    "breath breathe breathed breathing inhale inhaled inhaling inhaled lungful whiff sniffed sniff snorted"
)
MISTAKEN = Pattern(
    r"\b(?:wrong|by (?:mistake|accident)|accident\w*|thought it was|thinking it was|instead of|poison\w*"
    r"|before i noticed|without thinking)\b"
)
NO_MEAL = words_of(
    "rat mouse mice crickets cricket locust food dinner meal pinky coffee tea whole worms bowl rats water"
)

WET_VERBS = words_of(
    """
    splash splashed splashes splashing splattered spattered spilled spilt spill dripped drips dripping drip squirted
    squirts squirting sprayed spraying sprays misted poured tipped knocked dropped run running blew trickled
    dribbled seeped bounced
    flicked flew hit spat sloshed leaked ran rubbed wiped soaked soaking soaks drenched doused shot caught
    copped landed
    fell came went gone got getting get goes burst rolled wearing stuck put dipped dunked touched had has
    """
)
THROWN = words_of(
    "splash splashed splashes splashing splattered spattered squirted squirts dripped dripping sprayed spat spilled"
    " spilt"
)
"""What needs no product named: whatever it was got there."""
WETTED = words_of(
    "soaked soaking drenched doused covered splashed splattered spattered sprayed squirted dripping hit wearing"
)
INTO = words_of(
    "in into on onto over down up under underneath at through inside across around round off to behind near above"
)
IN = words_of("in into through inside under over across down on")
ANIMAL_SIGNS = Pattern(
    r"\b(?:gap(?:ing|es)|froth\w*|foam\w*|drool\w*|dribbl\w+|limp|floppy|twitch\w*|convuls\w*|fitting|seizures?"
    r"|sneez\w+|gasp\w*|wheez\w*|bubbl\w+|retch\w+|vomit\w*|collapsed?|unresponsive|lethargic|shaking|trembling|dying"
    r"|(?:breathing|breathes|moving|acting|walking) (?:\w+ )?"
    r"(?:funny|odd\w*|weird\w*|strange\w*|fast|hard|heav\w+|badly)|not (?:moving|breathing|right|eating)|gone stiff"
    r"|on the (?:\w+ )?(?:floor|bottom|ground)|(?:lying|laid|flipped|is) on (?:his|her|its) (?:back|side)$|rubbing "
    r"(?:his|her|its|their) (?:face|eyes?|nose|mouth)|cough\w*|chok\w+|gone (?:red|white|raw|pale))\b"
)
INSIDE = Pattern(
    r"\b(?:was|were|is|are|been|had)(?: all)* (?:in there|inside|in it|in the ENCLOSURE)\b"
    r"|\bin (?:the|his|her|its|their) hide\b|\bstill in (?:there|it|the \w+)\b"
)
FIRST_AID = Pattern(
    r"\bfirst (?:aid|thing to do)\b|\bmake (?:myself|himself|herself|him|her|them) (?:be )?(?:sick|vomit|throw up)\b"
    r"|\b(?:poison (?:centre|center|control|line)|ambulance)\b"
    r"|\b(?:someone|somebody|anyone|a person|a kid|a child) (?:gets|is|has|'s|has been|'s been|is been) (?:\w+ )?"
    r"(?:splashed|sprayed|burnt|burned|poisoned|swallowed|drunk|hurt)\b|\bhurt (?:myself|himself|herself)\b"
    r"|\b(?:it|this|that) (?:is |really |does |bloody |so )*(?:hurts|stings|burns|hurting|stinging|burning)\b"
    r"(?! (?:smell|plastic|oil|wood|bright))|\b(?:burn\w*|stung|poison\w*) (?:myself|himself|herself|my \w+)\b"
    r"|\b(?:AGENT|chemical|acid|disinfectant|cleaner) (?:splash|splashes|burns?|poisoning|inhalation)\b"
    r"(?! (?:off|through|a hole|the|in|plastic|goggles|guard|proof))"
    r"|\b(?:rinse|flush|wash)(?: \w+)?(?: out| out of| from)? (?:my|the|his|her) (?:own |left |right |poor )?eyes?\b"
    r"(?! cap)|\beye ?wash\b"
    r"|(?<!keep )(?<!keeping )\b(?:AGENT|STOCK|MIX|it|disinfectant|cleaner) (?:off|out of|from) (?:my|his|her) "
    r"(?:own )?(?:skin|hands?|eyes?|face|arms?|legs?|hair|mouth|feet|fingers)\b"
    r"|\b(?:everything|it|all|vision)(?: is| 's| has)? (?:all )?(?:gone|going|went) (?:all )?"
    r"(?:blurr\w+|fuzzy|misty|double)|\b(?:burnt|burned|burning|poisoned|poisoning|stung|choking) me\b"
    r"|\b(?:fumes|gas|smell|AGENT|stuff|spray) (?:is |are |'s )?killing me\b"
    r"|^(?:burning|stinging|dizzy|choking|it burns|it stings)(?: burning| stinging| here| help)*$"
)
BACK = Pattern(
    r"\bmy (?:back|feet|legs|knees|arms|shoulders?|neck)(?: (?:is|are|'s|really|so|bit|\w+ing))* "
    r"(?:hurts?|ach\w+|killing|sore|stiff|in pain)\b"
)
GENERAL = Pattern(
    r"^(?:so |and |um |ok )*(?:do|does|will|would|can|could|may|should|shall|is|are|how (?:long|much|many|do)|which"
    r"|what (?:kills?|is the best|should|do i (?:need|wear|use|put|want)))\b(?! not\b)"
)
WASHED = Pattern(
    r"\b(?:wash|washed|washing|rinse|rinsed|scrub|dry|dried|clean|cleaned)(?: \w+)? (?:my|your) (?:\w+ )?"
    r"(?:hands?|gloves?|boots)"
)
NO_HARM = Pattern(
    r"\bhand (?:gel|saniti[sz]er|cream|soap|wash)\b|\bsting\w* nettles?\b"
    r"|\b(?:drinking|drinks?|water) (?:bowl|dish|bottle)\b"
    r"|\b(?:no|not|nobody|never|nothing|stopped|without)(?: \w+){0,2} "
    r"(?:cough\w*|chok\w*|dizzy|hurt|stings?|burns?|sick)\b|\bout of puff\b|\bsick (?:of|one|animal|tank|snake)\b"
    r"|\b(?:head|hair) ?(?:start|band)\b"
)


HOMES_AFTER = words_of(
    "'s tank tub box cage viv vivarium enclosure home house setup hide bowl glass lid wall walls room rack"
)
DONE_TO = words_of("been got gone had just all covered completely fallen sat sitting")
SAT = words_of(
    "sat sitting sits fell fallen been jumped walked trod rolled swam swimming slid slithered "
    "crawled paddled waded dived hopped landed lay lying laid stood stepped got went climbed"
)
PLAIN_WORK = words_of("bought buy order label labelled share store stored keep kept ready away asleep vet")
WORDS = frozenset(
    word
    for word in (
        *HAZARDS,
        *PLACES,
        *PEOPLE,
        *ANIMALS,
        *SIGNS,
        *WEAK_SIGNS,
        *BREATH,
        *DRANK,
        *BREATHED,
        *WET_VERBS,
        *WETTED,
    )
    if word.islower() and len(word) > 2
) - {"bleech", "blech", "sanitiser", "sanitizer"} | words_of(
    "pounding thumping rehoused rehomed gaping frothing foaming drooling limp twitching faint faceful "
    "headache collapsed seeing stars "
    "crying vomiting drooling retching puking dying having seizure fits fish neutralise neutralize screaming"
    " overspray drifted drenched "
    "spinning throwing threw breath breathe feel feeling eyewash breathing"
)
"""Every word that a rule here turns on: known words, so that none is mended into another."""
CUT_OFF = Pattern(
    r"\b(?:AGENT|STOCK|BOTTLE|MIX|disinfectant|cleaner|concentrate|spray)(?: \w+)? "
    r"(?:in|on|into|onto|over|up|down|inside) (?:all )?(?:my|me|mi) (?P<place>[a-z]{2,7})\b"
)
LIKE = 77.0
"""Of rapidfuzz's ratio, for a place cut off or misspelt: "on my han" 86, "in my ey" 80; "list" is 75 like "lips"."""

ASKS_OF_WORK = Pattern(
    r"\b(?:how (?:long|strong|much|often)|what strength|which (?:one|bottle|product|agent|disinfectant|of)|what "
    r"(?:should|do|can) i use|what is (?:best|safest)|how (?:toxic|poisonous|dangerous|bad|harmful)|"
    r"(?:AGENT|STOCK) or (?:AGENT|STOCK))\b"
)
"""A question about the work, that no hurt person asks."""
