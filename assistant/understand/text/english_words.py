"""Common words of English as spelled, so that none of them is taken for a slip of a word of the questions.

No word is here for its meaning. The usual endings are taken off a word before it is looked up.
"""

from __future__ import annotations

from collections.abc import Iterator

from assistant.understand.text.known_words import words_of

_STEM = 3
"""Letters of the shortest word that is looked for under an ending."""
_VERBS = ("ed", "er", "ers", "ing", "ings")


def spelled_right(word: str) -> bool:
    """Whether a word in small letters is common English, or is made of such a word with a usual ending.

    >>> spelled_right("batteries"), spelled_right("stopping"), spelled_right("sprayd")
    (True, True, False)
    """
    return word in _WORDS or any(stem in _WORDS for stem in _stems(word))


def _stems(word: str) -> Iterator[str]:
    """The words that a word may be made of: "baked" of "bak" or "bake", "stopping" of "stopp" or "stop"."""
    for ending in ("s", "es", "d", "r", "ly", *_VERBS):
        stem = word.removesuffix(ending)
        if stem == word or len(stem) < _STEM or (ending in ("d", "r") and stem[-1] != "e"):
            continue
        yield stem
        if ending in _VERBS:
            yield stem + "e"
            if stem[-1] == stem[-2]:
                yield stem[:-1]
        if stem[-1] == "i":
            yield stem[:-1] + "y"


_WORDS = words_of(
    """
    able about abscess absolutely accent accident accurate acetic acid across acrylic actually add adenovirus adult
    affirmative afraid afresh aft afternoon again against age aging ago agree ahead ahh aid air alarm alcohol all allow
    almost along alot already alright also altogether aluminium aluminum always american ammonia ammonium amount and
    animal another answer antibiotic anxious any anybody anyone anything anyway anywhere apart apparently apply
    appointment appreciate approximately aquarium are area arm around arrival arrive ask asleep asthma ate aunt
    authority autumn awake away awful aye baby back background backward bacterial bad bag bake ball banana bandage
    bang bare bark base basil bask bass batch bath bathe bathroom batter battered batteries battering battle beach
    beak bean beard bearing because become bed bedroom been beep before begin behind being belling belly bench bent
    beside best better bettered bettering betting between big bin binding binds birthday biscuit bit bite bitten
    black blah blame blank blast bleach bleed bless blew blink blood bloody blowing blown blue body boil bolt bone
    booing book bookies bot both bothered bothering bottle bottom bought bowing bowl box boy brain branch brand
    bread break breakfast breath breathe breed brim bring british broke broth brotherly brought brown brush bubble
    bucket budding buddy bug build built bulb bullseye buried buries burn burnt burst bus bush busied business bust
    but buy cable cactus cage cake calcium call calm calorie came can canary cancel candle cane cannot cant cap cape
    capital car care carefully carpet carrier carrot carry case cat catch caught celsius centimetre centre ceramic
    certainly chameleon change chap chapter chart chase cheap cheapest check checkup cheek cheer cheered cheering
    chemical chest chicken child chilies chlorine choke christmas chuck class classroom clean clear climb clock
    close closet cloth cloud cloudy clove club clue coast coat coconut coffee cold collect colon colour combine come
    command common complete compute concentrate concentration conservatory contact contagious contain content
    convert convince cooing cook cookies cool copper cork corn cornered cornering correct cost cotton cough could
    count countered countering counties cove covered covering crack crap crawl crazy cream creep crest crib cricket
    cried cross crosses crypto cryptosporidium cub cube cubic cuing cup cupboard curtain cut cute cycle cylinder dab
    dagger damage damp danger dangerous dare dark dart date daughter day dead deal dear decant deep definitely
    defrost degree delete delicate delivering delivery desert dessert detergent did die difference different dilute
    dinner dinning dip dirt disagree disappear disease dish dishwasher dishwashing disinfect disinfectant
    disinfection display dispose distance distract division dizzy doe dog doing done donned donning dons door
    doorbell dose dot dote double down downgrade downstairs dragon drain drank draught draw dreadful dream dreamt
    dress drift driftwood drill drink drip drive drool drop drove drunk dry dude due dump dunning dunno duration
    during dust dwell each ear earlier easing east easterly easy eat eaten effective egg eight eighty elbow electric
    eleven else empty enclosure end english enough enter entered entering entry envelope erase error escape escapee
    evaporate even ever every everybody everyone everything everywhere evidence ewe exact example exotic expire
    explain extra eye eyeball eyelash fabric face fad fade fahrenheit faint fake fallen fan far fast fat fatty fault
    favourite fed feed feel feet fell fella felt female fever few fifteen fifty fight figure filing fill fillies
    film filter finally find fine finger finish fire first fish fit five flank flash flask fleece flesh floor fluid
    flush fluster foam follow food foot for forever forget forgoing forgot forgotten fortune forty forum found four
    fox fraction frame free freeze french fresh fretting friday fridge friend frighten frog from front frown frozen
    full fume fungal fungus funnel funny further furthered furthering future gain gal gallon garage garden gas gasp
    gave gear gecko gentle genuinely get gimme girl girlfriend give given glass glasses glisten glove god goes
    goggle going goldfish gone gonna good goodnight gosh got gotta gown grab gram granddaughter grandson great green
    growing grown guard guess gum gut guttered guttering guy habit had hafta hair half hallway halogen hammock
    hamster hand handle hang happen happy hard haring harm has hatch hate have havens head headache heal healthy
    hear heart heat heaving heavy helicopter hell hello help her here hey hid hide high him himself his hisses hit
    hmm hob hobby hold hole home homework honestly hood hook hopeless horrible hose hospital hot hour house how huh
    humidity hundred hurt husband hush hydrogen hypothetically ice icing idea ill imagine imp imperial inch incubate
    incubator infect infection inject insect inside instead instruct instructor insurance into iodine iron isolation
    its itself january jaw jeans job join joint joke jug july jump june juniper junk just keep kept kettle kick kid
    kill kilo kind kinda kiss kit kitchen knee knife knitted knitting knock know knowingly lab label lad lady laid
    lake lamp land landlord last lat late laundry law lawn leak learn leather leave ledge lee left leftover leg
    lemon lemonade lend length leopard less let level lick lid lie life light like lilies lime limp line linen lip
    liquid list lit lite literally littered littering little live lizard load lock locust log lol long loo look
    loose lose loss losses lost lot love low luck lump lunatic lunch lung lunge machine made make male man many
    march mark markedly mask mat match mate matt matte mattered may maybe meal mean meant measure measurement meet
    melamine merely mesh mess metal metre metric microwave middle might migraine mil mile milk milky mill milliliter
    millilitre million min minded minding minds minute miss misses mist mistake mistaken mite mix moment monday
    money monster month moon mop more morn mos mosses most moth mothering motherly mould mouldy mouse mouth mouthful
    move movies movingly much muck muddle mum music musing must mute myself mystery nagged nagging nah name nasty
    naught naughty near neat necessary neck need negative neighbour neither nephew nervous nettle never new newcomer
    next nice night nine ninety nip nite nobody noise noisy none noodle noon nope nor normal nose not note nothing
    november now nozzle numb numbered numbering objection occupant off offered offering often okay old once one
    online only onto oops open operation option orange orchid order ordered ordering orderly ordinary other ought
    ounce our out outbreak outside outstanding outta oven over overall overdid overdo overdue overnight owing own
    pacing pack packet pain paint pair pan panel panic panicked panicking pap papered papering pardon parent paring
    park parrot part particular partner party pas passes past pasta patch patchy patient pause pea peace peel people
    pepper per percent percentage perish permitted permitting peroxide person pest pet phew phone pick pickle
    picture piece pine pink pinkie pint pipe pitting place plain plan plane plant plastic play pleas please
    plexiglass plus plywood point poke polish polypropylene pond ponies pooh pool poop poor poorer poorly pop posing
    positive possibilities possible post pot potato potatoes pour powder power powered powering precious prefer
    preferably pregnant press pretend pretty price prime probably probe problem proceed producing product promise
    prop properly protection protective prune pseudomonas puddle pull pump punch push put putt pvc python quantity
    quarantine quart quarterly quaternary question quick quiet quite rabbit racing rack radiator radio rag rain ran
    random rang rat rate rather ratio raw reach react read ready real realise reason receptionist recipe reckon
    recommend record red reek refill refrigerator refund regular remain remember remind remove repeat reptile
    require resin respirator rest result return rice rid ride right rind ring rinse rising risk rite river roach
    road roast robot rock roll room roommate root rose rot rough round rove royal rub rubbish ruin rule run runaway
    rundown rune runny rush rust safe safety said salad salmonella same sand sanitize sank sat saturday saucepan
    save saw say scale scar scare school scone scoop scrap scrape scratch scratchy screen scrub seal seam search
    seat sec second see seem seen sell sense sensible sentence separate september septic sequence set settle seven
    seventeen sex shake shaken shall share sharp sharpen she shedding sheds sheet shelf shied shies shift shin shine
    shirt shoe shoo shoot shop shoring short shot should shouldered shouldering shout show showered showering shrunk
    shut sick side sign silence silicone silly sin since sine sing single sink sir sister sit site six sixteen sixty
    size skiing skin skip slate sleep sleeve slip sloppy slow slug small smallest smash smell smoke snake sneeze
    sniff snow soak soap soapy sock sodium sofa soft soften soil solution some somebody someone something sometime
    somewhere son song soon soonest sore sorry sort sound source souvenir space spare speak speck speed spell spider
    spill spillage spilt spirit splash split spoil sponge spore spot spray spread square squeak squirt stack stain
    stainless stair stale stand standard star stare start stash state statue status stay steady steam steel step
    stew stick still sting stink stinky stock stomach stone stood stop store storm story straight strawberries
    streak stream street strength stressful stretch strike stroke strong stuck study stuff stupid substrate such
    suck suggest suing sulk sum sun sunday sunset sup support suppose supposedly sure surface swab swallow swap
    swear sweet sweetheart swig swimming switch swollen syringe tab tablespoon tail take taken tale talk tank tap
    taste tea tearing tears teaspoon teeth tell tellingly telly temp temperature ten test text than thank that thaw
    the their them then there thermostat these they thin thing think third thirty this tho those thought thread
    three thrill throat through throw thru thump thursday tick tight til tile till time tin tingle tiny tip tire
    toast today toddle toe together toilet told tomorrow ton tong tongue tonight too took tool top torch tortoise
    toss total touch towel toxic tracing track trail train translate trash travel treat trick trigger triggered
    triggering trouble trouser trust try tub tube tuesday tumble turkey turn turquoise turtle twelve twenty twice
    two ugh uncle under understand undilute undiluted undo undue unit unite unknowing unknown unlabeled unmarked
    until untreated upholstery upon upside urgent usable use useless using vanish varnish vent ventilate ventilation
    verse versus very vet video vinegar violet vitamin viv voice volume vomit wait walk wall wander waning wanna
    want warm warmest warn was wash washable waste watch water watered watering watt way weak weaken wear weather
    wednesday wee weeded weeding weeds week weekend weeklies weigh well wen went were wet what whatever wheel wheeze
    when where whether which whiff while whisky white who whoa whole whoop why wife wiling will winding window windy
    wine winter wintered wipe wise wish witch with without wives womb won wonder wood wooden wooing wool word work
    worry worse worth would wound wreck wrist writ write written wrong wrote yard yea yeah yearly years yellow yep
    yes yesterday yet you young youngest yours yourself yup zip
    """
)
